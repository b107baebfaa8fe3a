#include "app/common.h"
#include "app/verbs.h"
#include "core/practice/families.h"
#include "core/quantity/text.h"
#include "ui/document/files.h"
#include "ui/practice/new_folder.h"
#include "ui/practice/problem_file.h"
#include "ui/practice/problem_sheet.h"

#include <QCoreApplication>
#include <algorithm>
#include <csignal>

namespace tailpoint {

namespace {

constexpr const char* kProblemsHelp =
    R"(Usage: tailpoint problems --family NAME[,NAME...] [--count N] [--seed S] [--level 1|2|3] [--roster NAMES.txt]
                          [--as json] -o DIR
       tailpoint problems --list [--as text|json]

Makes problems with other numbers each, and all that is needed to mark them.

  --family NAME[,NAME...]
                   which kinds, in turn; --list prints them with their levels
  --count N        how many problems, 1 to 9999 (default 10); with a roster so many for each
  --seed S         0 to 999999 (default 1): the same families, level, seed and version give the same problems
  --level 1|2|3    how hard (default 1)
  --roster NAMES.txt
                   a name a line, UTF-8: each gets problems of their own
  --as json        sheet.json: every problem with its statement, answers, points and what slips would give
  -o DIR           a new folder: sketches/0001.json ..., answers.csv as 'tailpoint mark' reads it, and what
                   --as asks for. It is there as a whole or not at all
  --list           the families with their levels, as text (default) or JSON

Exit status: 0 done; 2 bad input or usage.
)";

QList<Option> problemsOptions() {
    return {{QStringLiteral("--family"), {}},
            {QStringLiteral("--count"), {}},
            {QStringLiteral("--seed"), {}},
            {QStringLiteral("--level"), {QStringLiteral("1"), QStringLiteral("2"), QStringLiteral("3")}},
            {QStringLiteral("--roster"), {}},
            {QStringLiteral("--as"), {QStringLiteral("text"), QStringLiteral("json")}},
            {QStringLiteral("--list"), {}, true},
            {QStringLiteral("-o"), {}}};
}

/// What is wrong with the options together; empty: nothing.
QString clashOf(const Arguments& arguments) {
    if (!arguments.files.isEmpty())
        return QStringLiteral("'%1' is no option; see tailpoint problems --help").arg(arguments.files[0]);
    const bool isList = arguments.has(QStringLiteral("--list"));
    for (const char* option : {"--family", "--count", "--seed", "--level", "--roster", "-o"})
        if (isList && arguments.has(QLatin1String(option)))
            return QStringLiteral("%1 has no say beside --list; take one of them out")
                .arg(QLatin1String(option));
    if (isList)
        return {};
    if (!arguments.has(QStringLiteral("--family")))
        return QStringLiteral("name a family with --family; --list prints them");
    if (!arguments.has(QStringLiteral("-o")))
        return QStringLiteral("name a new folder with -o DIR");
    if (arguments.value(QStringLiteral("--as")) == QLatin1String("text"))
        return QStringLiteral("--as text goes with --list; use json");
    return {};
}

using Lines = std::variant<std::vector<std::string>, QString>; ///< or what is wrong

Lines familiesIn(const QString& names) {
    std::vector<std::string> families;
    for (const QString& name : names.split(QLatin1Char(','))) {
        const std::string id = name.trimmed().toStdString();
        if (familyNamed(id) == nullptr)
            return QStringLiteral("--family: '%1' is no family; --list prints them")
                .arg(QString::fromStdString(oneLine(id)));
        families.push_back(id);
    }
    return families;
}

Lines rosterIn(const QString& file) {
    const auto bytes = readBytes(file, QStringLiteral("roster"));
    if (const auto* error = std::get_if<FileError>(&bytes))
        return file + ": " + error->line();
    std::vector<std::string> roster;
    int number = 0;
    for (QByteArray line : std::get<QByteArray>(bytes).split('\n')) {
        if (++number == 1 && line.startsWith("\xEF\xBB\xBF"))
            line.remove(0, 3);
        const std::string name = line.trimmed().toStdString();
        if (name.empty())
            continue;
        const auto refused = [&](const char* why) {
            return QStringLiteral("%1:%2: '%3' %4")
                .arg(file, QString::number(number), QString::fromStdString(oneLine(name)),
                     QLatin1String(why));
        };
        if (!printableLength(name))
            return refused("can't be printed; save the names as UTF-8, one a line");
        if (std::find(roster.begin(), roster.end(), name) != roster.end())
            return refused("stands twice; tell the two apart");
        roster.push_back(name);
    }
    return roster.empty() ? Lines(file + QStringLiteral(": has no names; write one a line")) : Lines(roster);
}

std::variant<SheetRequest, QString> requestIn(const Arguments& arguments) {
    SheetRequest request;
    Lines families = familiesIn(arguments.value(QStringLiteral("--family")));
    if (const auto* fault = std::get_if<QString>(&families))
        return *fault;
    request.families = std::get<std::vector<std::string>>(std::move(families));
    const auto count = wholeNumber(arguments.value(QStringLiteral("--count"), QStringLiteral("10")), 1,
                                   static_cast<int>(kMostVariants));
    if (!count)
        return QStringLiteral("--count wants a whole number from 1 to %1").arg(kMostVariants);
    const auto seed = wholeNumber(arguments.value(QStringLiteral("--seed"), QStringLiteral("1")), 0, 999'999);
    if (!seed)
        return QStringLiteral("--seed wants a whole number from 0 to 999999");
    request.count = static_cast<std::size_t>(*count);
    request.seed = static_cast<std::uint32_t>(*seed);
    request.level = arguments.value(QStringLiteral("--level"), QStringLiteral("1")).toInt();
    if (!arguments.has(QStringLiteral("--roster")))
        return request;
    Lines roster = rosterIn(arguments.value(QStringLiteral("--roster")));
    if (const auto* fault = std::get_if<QString>(&roster))
        return *fault;
    request.roster = std::get<std::vector<std::string>>(std::move(roster));
    if (request.roster.size() * request.count > kMostVariants)
        return QStringLiteral("--count: %1 for each of %2 names are more than %3 problems; ask for fewer")
            .arg(request.count)
            .arg(request.roster.size())
            .arg(kMostVariants);
    return request;
}

/// Set by the signals that end a program; asked between two problems, so that nothing is left behind.
volatile std::sig_atomic_t interrupted = 0;
void interrupt(int signal) {
    interrupted = signal;
}

std::optional<FileError> writeAll(const ProblemSheet& sheet, const NewFolder& folder) {
    for (std::size_t i = 0; i < sheet.variants.size(); ++i) {
        if (interrupted != 0)
            return std::nullopt;
        if (auto error =
                folder.write(QString::fromStdString(sketchName(i)), writeProblem(sheet.variants[i].problem)))
            return error;
    }
    if (auto error =
            folder.write(QStringLiteral("answers.csv"), QByteArray::fromStdString(answersCsv(sheet))))
        return error;
    return folder.write(QStringLiteral("sheet.json"), QByteArray::fromStdString(sheetJson(sheet)));
}

int makeProblems(const SheetRequest& request, const QString& out) {
    for (const int signal : {SIGINT, SIGTERM, SIGHUP})
        std::signal(signal, interrupt);
    NewFolder folder(out);
    if (const auto& fault = folder.fault())
        return complain(QStringLiteral("problems: ") + out + ": " + fault->message);
    const auto sheet = makeSheet(request, [] { return interrupted != 0; });
    auto error = sheet ? writeAll(*sheet, folder) : std::nullopt;
    if (!sheet || interrupted != 0)
        return 128 + static_cast<int>(interrupted); // as a shell says that a signal ended it
    const std::size_t wanted = request.count * std::max<std::size_t>(1, request.roster.size());
    if (sheet->variants.size() < wanted)
        return complain(
            QStringLiteral("problems: there are no %1 different ones of this family and level, but %2; ask "
                           "for fewer, for more families or for another level")
                .arg(wanted)
                .arg(sheet->variants.size()));
    if (!error)
        error = folder.finish();
    return error ? complain(QStringLiteral("problems: ") + out + ": " + error->message) : kDone;
}

int printed(const std::string& text) {
    const auto error = writeStandardOutput(QByteArray::fromStdString(text));
    return error ? complain(QStringLiteral("standard output: ") + error->line()) : kDone;
}

int problems(const Arguments& arguments) {
    if (const QString fault = clashOf(arguments); !fault.isEmpty())
        return complain(QStringLiteral("problems: ") + fault);
    if (arguments.has(QStringLiteral("--list")))
        return printed(arguments.value(QStringLiteral("--as")) == QLatin1String("json") ? familiesJson()
                                                                                        : familiesText());
    const auto request = requestIn(arguments);
    if (const auto* fault = std::get_if<QString>(&request))
        return complain(QStringLiteral("problems: ") + *fault);
    return makeProblems(std::get<SheetRequest>(request), arguments.value(QStringLiteral("-o")));
}

} // namespace

int runProblems(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen"); // a verb needs no display server
    const auto parsed = parseArguments(wordsFrom(2, argc, argv), problemsOptions());
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(QStringLiteral("problems: ") + *fault);
    const auto& arguments = std::get<Arguments>(parsed);
    if (arguments.help)
        return printed(kProblemsHelp);
    const QCoreApplication application(argc, argv);
    return problems(arguments);
}

} // namespace tailpoint
