// SPDX-License-Identifier: MIT
#include "app/common.h"
#include "app/gui/calls.h"
#include "app/verbs.h"
#include "core/practice/families.h"
#include "core/quantity/text.h"
#include "ui/files/files.h"
#include "ui/practice/new_folder.h"
#include "ui/practice/problem_sheet.h"
#include "ui/problems/roster.h"
#include "ui/problems/sheet_from.h"
#include "ui/problems/write_sheet.h"

#include <QGuiApplication>
#include <algorithm>
#include <csignal>

namespace tailpoint {

namespace {

constexpr const char* kProblemsHelp =
    R"(Usage: tailpoint problems --family NAME[,NAME...] [--count N] [--seed S] [--level 1|2|3] [--roster NAMES.txt]
                          [--faded [N] | --find-slip] [--as pdf|html|json] [--solutions] [--grid]
                          [--paper a4|letter] [--figures scale|free] -o DIR
       tailpoint problems --from FILE [FILE ...] [--as pdf|html|json] [...] -o DIR
       tailpoint problems --list [--as text|json]

Makes problems with other numbers each, and all that is needed to mark them.

  --family NAME[,NAME...]
                   which kinds, in turn; --list prints them with their levels
  --count N        how many problems, 1 to 9999 (default 10); with a roster so many for each
  --seed S         0 to 999999 (default 1): the same families, level, seed and version give the same problems
  --level 1|2|3    how hard (default 1)
  --roster NAMES.txt
                   a name a line, UTF-8: each gets problems of their own
  --from           the sketches in the FILEs in place of a family's problems, in this order; a text under
                   "statement" in a file is what its problem says
  --faded [N]      solutions to fill in: the last N lines are blank, with a question for the principle of each;
                   without N one line at first, and in the end all of them
  --find-slip      solutions with one line rewritten by a slip, to be found and mended; the key tells the line,
                   the slip and what to do instead
  --as pdf|html|json
                   sheet.pdf to hand out, a page a problem, and key.pdf with the answers and the numbers
                   that common slips would give (default); the same as pages for a browser; or sheet.json,
                   all of it for scripts
  --tolerances shown|hidden
                   of the sketches in the FILEs: hidden (default) asks by the stated values alone; shown keeps the
                   tolerances in the question and tells ranges in the key
  --solutions      in the key: worked solutions
  --grid           squares of 1 cm in the room to draw
  --paper a4|letter
                   of a PDF (default a4)
  --figures scale|free
                   to scale, for ruler and protractor (default); free: nothing can be measured in them, which
                   they say
  -o DIR           a new folder: sketches/0001.json ..., answers.csv as 'tailpoint mark' reads it, and what
                   --as asks for. It is there as a whole or not at all
  --list           the families with their levels, as text (default) or JSON

Exit status: 0 done; 2 bad input or usage.
)";

QList<Option> problemsOptions() {
    const auto words = [](const char* text) { return QString::fromLatin1(text).split(QLatin1Char('|')); };
    return {{QStringLiteral("--family"), {}},
            {QStringLiteral("--count"), {}},
            {QStringLiteral("--seed"), {}},
            {QStringLiteral("--level"), words("1|2|3")},
            {QStringLiteral("--roster"), {}},
            {QStringLiteral("--from"), {}, true},
            {QStringLiteral("--faded"), {}, false, false, true},
            {QStringLiteral("--find-slip"), {}, true},
            {QStringLiteral("--as"), words("pdf|html|json|text")},
            {QStringLiteral("--solutions"), {}, true},
            {QStringLiteral("--grid"), {}, true},
            {QStringLiteral("--paper"), words("a4|letter")},
            {QStringLiteral("--figures"), words("scale|free")},
            {QLatin1String(kTolerancesOption), words("shown|hidden")},
            {QStringLiteral("--list"), {}, true},
            {QStringLiteral("-o"), {}}};
}

/// Options of these that are given beside one that leaves them no say; empty: none.
QString idle(const Arguments& arguments, const char* beside, std::initializer_list<const char*> options) {
    for (const char* option : options)
        if (arguments.has(QLatin1String(option)))
            return QStringLiteral("%1 has no say beside %2; take one of them out")
                .arg(QLatin1String(option), QLatin1String(beside));
    return {};
}

/// What is wrong with the options together; empty: nothing.
QString clashOf(const Arguments& arguments) {
    const QString form = arguments.value(QStringLiteral("--as"));
    const bool isFrom = arguments.has(QStringLiteral("--from")),
               isList = arguments.has(QStringLiteral("--list"));
    if (!isFrom && !arguments.files.isEmpty())
        return QStringLiteral("'%1' is no option; sketches go with --from").arg(arguments.files[0]);
    if (isList) {
        const QString fault =
            idle(arguments, "--list",
                 {"--family", "--count", "--seed", "--level", "--roster", "--from", "--faded", "--find-slip",
                  "--solutions", "--grid", "--paper", "--figures", kTolerancesOption, "-o"});
        const bool isKnown = form.isEmpty() || form == QLatin1String("text") || form == QLatin1String("json");
        return fault.isEmpty() && !isKnown ? QStringLiteral("--list is text or json") : fault;
    }
    if (!isFrom && !isList && arguments.has(QLatin1String(kTolerancesOption)))
        return QStringLiteral("--tolerances goes with --from; take it out");
    if (isFrom)
        if (const QString fault =
                idle(arguments, "--from", {"--family", "--count", "--seed", "--level", "--roster"});
            !fault.isEmpty())
            return fault;
    if (arguments.has(QStringLiteral("--faded")) && arguments.has(QStringLiteral("--find-slip")))
        return QStringLiteral("--faded and --find-slip are two kinds of sheet; take one of them out");
    if (isFrom && arguments.files.isEmpty())
        return QStringLiteral("--from wants one FILE or more");
    if (!isFrom && !arguments.has(QStringLiteral("--family")))
        return QStringLiteral("name a family with --family; --list prints them");
    if (!arguments.has(QStringLiteral("-o")))
        return QStringLiteral("name a new folder with -o DIR");
    if (form == QLatin1String("text"))
        return QStringLiteral("--as text goes with --list; use pdf, html or json");
    if (form == QLatin1String("json"))
        return idle(arguments, "--as json", {"--solutions", "--grid", "--paper", "--figures"});
    return form == QLatin1String("html") ? idle(arguments, "--as html", {"--paper"}) : QString();
}

/// What the sheet is for; a fault, or empty.
QString takeTask(const Arguments& arguments, SheetRequest& request) {
    if (arguments.has(QStringLiteral("--find-slip")))
        request.task = SheetTask::findSlip;
    if (!arguments.has(QStringLiteral("--faded")))
        return {};
    request.task = SheetTask::faded;
    const QString lines = arguments.value(QStringLiteral("--faded"));
    if (lines.isEmpty())
        return {};
    constexpr int most = 99;
    const auto count = wholeNumber(lines, 1, most);
    request.blank = static_cast<std::size_t>(count.value_or(0));
    return count ? QString()
                 : QStringLiteral("--faded wants a whole number of lines from 1 to %1, or none").arg(most);
}

SheetLook lookIn(const Arguments& arguments) {
    SheetLook look;
    look.form = sheetFormFrom(arguments.value(QStringLiteral("--as"))).value_or(SheetForm::pdf);
    look.paper = arguments.value(QStringLiteral("--paper")) == QLatin1String("letter") ? QPageSize::Letter
                                                                                       : QPageSize::A4;
    look.solutions = arguments.has(QStringLiteral("--solutions"));
    look.grid = arguments.has(QStringLiteral("--grid"));
    look.toScale = arguments.value(QStringLiteral("--figures")) != QLatin1String("free");
    return look;
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
    if (QString fault = takeTask(arguments, request); !fault.isEmpty())
        return fault;
    if (!arguments.has(QStringLiteral("--roster")))
        return request;
    Lines roster = readRoster(arguments.value(QStringLiteral("--roster")));
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

/// What the signals that end a program set; asked between two problems, so that nothing is left behind.
SheetWork work;
volatile std::sig_atomic_t interruptedSheetBy = 0;
void interruptSheet(int signal) {
    interruptedSheetBy = signal;
    work.isCancelled = true; // lock-free, so a signal may
}

/// The sheet that is asked for, or a fault.
using Made = std::variant<ProblemSheet, QString>;
Made requestedSheet(const Arguments& arguments) {
    const auto read = requestIn(arguments);
    if (const auto* fault = std::get_if<QString>(&read))
        return *fault;
    return sheetToDraw(std::get<SheetRequest>(read));
}

Made ownSheet(const Arguments& arguments) {
    SheetRequest wanted;
    wanted.tolerances = arguments.value(QLatin1String(kTolerancesOption)) == QLatin1String("shown");
    if (QString fault = takeTask(arguments, wanted); !fault.isEmpty())
        return fault;
    return sheetFrom(arguments.files, wanted);
}

int makeProblems(const Arguments& arguments) {
    const QString out = arguments.value(QStringLiteral("-o"));
    for (const int signal : {SIGINT, SIGTERM, SIGHUP})
        std::signal(signal, interruptSheet);
    NewFolder folder(out);
    if (const auto& fault = folder.fault())
        return complain(QStringLiteral("problems: ") + out + ": " + fault->message);
    Made made = arguments.has(QStringLiteral("--from")) ? ownSheet(arguments) : requestedSheet(arguments);
    if (const auto* fault = std::get_if<QString>(&made))
        return complain(QStringLiteral("problems: ") + *fault);
    auto error = writeSheet(std::get<ProblemSheet>(made), lookIn(arguments), folder, work);
    if (interruptedSheetBy != 0)
        return 128 + static_cast<int>(interruptedSheetBy); // as a shell says that a signal ended it
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
    return makeProblems(arguments);
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
    silenceQt();
    keepMemory();
    const QGuiApplication application(argc, argv); // measures and paints the pages
    if (const auto status = withoutFonts())
        return *status;
    return problems(arguments);
}

} // namespace tailpoint
