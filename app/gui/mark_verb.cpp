// SPDX-License-Identifier: MIT
#include "app/common.h"
#include "app/gui/calls.h"
#include "app/gui/mark_class.h"
#include "app/gui/mark_key.h"
#include "app/verbs.h"
#include "ui/files/files.h"
#include "ui/marking/mark_options.h"
#include "ui/marking/marking_html.h"
#include "ui/marking/marking_json.h"

#include <QCoreApplication>

namespace tailpoint {

namespace {

constexpr const char* kMarkHelp =
    R"(Usage: tailpoint mark FILE --answer NAME=VALUE [--answer NAME=VALUE ...] [--as text|json|html] [-o OUT]
       tailpoint mark FILE --answers CLASS.csv [--as csv|text|json|html] [-o OUT] [--points OUT.csv]
                           [--feedback DIR] [--names]
       tailpoint mark --key DIR --answers CLASS.csv [--as csv|text|json|html] [-o OUT] [--points OUT.csv]
                           [--feedback DIR] [--names]

Marks answers to the question of the sketch in FILE ('-': standard input), and names the slip that gives
exactly a wrong number: a misread given, a changed line of the calculation, another axis, turn or unit.

  --answer NAME=VALUE
                   a value for a quantity that is asked, or for one on the way, by its name in the worked
                   solution (tailpoint report FILE --as json lists them): "R = 335 N", "theta_R = 12.3",
                   "theta_R=N30E", "gamma = 115"; of a question with two answers one, or both: "P = 308; 872"
  --answers CLASS.csv
                   a table of a class, UTF-8, with commas or semicolons: the first row names the columns, who
                   and then quantities; an empty cell is a missing answer. A column 'override' has a marker's
                   own points and a remark ("2: shown orally"), one whose name stands in parentheses is not
                   marked. What can't be read is told on standard error: a cell is 'unread' and the rest of its
                   row is marked. A table that was marked before can be marked again
  --key DIR        the folder of a sheet (tailpoint problems): each row of the class is marked against the
                   question of who stands in front; where the sheet was for all, "Ada Byron, 3" against the third
  --as text|json|html|csv
                   text for people (default of one answer), JSON for scripts, a page; csv (default of a class,
                   and only there): the table with verdict, points, slip and sentence added to each row
  --names          html of a class: names of people beside their slips
  --feedback DIR   of a class: a page for each student, in this folder
  --points OUT.csv of a class: who and points alone
  -o OUT           write to this file instead of standard output

The sketch may say how it is marked: "marking": {"points": {"R": 2, "theta_R": 1}, "followThrough": true,
"credit": {"unit": 0.5, "axis": 0.5, "slip": 0.5}, "bothAnswers": false, "unitRequired": false, "signedSenses": false}.
Exit status: 0 all is right or rounded, or a class is marked; 1 it is not; 2 bad input or usage.
)";

QList<Option> markOptions() {
    const auto words = [](const char* text) { return QString::fromLatin1(text).split(QLatin1Char('|')); };
    return {{QStringLiteral("--answer"), {}, false, true},
            {QStringLiteral("--answers"), {}},
            {QStringLiteral("--key"), {}},
            {QStringLiteral("--as"), words("text|json|csv|html")},
            {QStringLiteral("--names"), {}, true},
            {QStringLiteral("--feedback"), {}},
            {QStringLiteral("--points"), {}},
            {QStringLiteral("-o"), {}}};
}

/// What is wrong with the options together; empty: nothing.
QString clash(const Arguments& arguments) {
    if (arguments.has(QStringLiteral("--key")))
        return clashWithKey(arguments);
    const bool isOne = arguments.has(QStringLiteral("--answer")),
               isClass = arguments.has(QStringLiteral("--answers"));
    const QString form = arguments.value(QStringLiteral("--as"));
    if (isOne == isClass)
        return QStringLiteral(
            "give the answer with --answer NAME=VALUE, or a class with --answers CLASS.csv");
    for (const char* option : {"--feedback", "--points", "--names"})
        if (isOne && arguments.has(QLatin1String(option)))
            return QStringLiteral("%1 goes with --answers; take it out").arg(QLatin1String(option));
    if (isClass && arguments.value(QStringLiteral("--answers")) == QLatin1String("-") &&
        arguments.files.value(0) == QLatin1String("-"))
        return QStringLiteral("FILE and --answers are both standard input; name a file for one of them");
    if (isOne && form == QLatin1String("csv"))
        return QStringLiteral("--as csv goes with --answers; use text, json or html");
    if (arguments.has(QStringLiteral("--names")) && form != QLatin1String("html"))
        return QStringLiteral("--names goes with --as html; take it out");
    return {};
}

std::vector<std::string> answersIn(const Arguments& arguments) {
    std::vector<std::string> answers;
    for (const QString& answer : arguments.repeated.value(QStringLiteral("--answer")))
        answers.push_back(answer.toStdString());
    return answers;
}

std::string markedAs(const QString& form, Marking marking, const MarkedQuestion& question) {
    if (form == QLatin1String("json"))
        return markingJson(marking);
    if (form != QLatin1String("html"))
        return toText(marking);
    MarkedRow row;
    row.of = marking.of;
    row.marking = std::move(marking);
    return studentHtml(question.sketch, row);
}

int markOne(const Arguments& arguments, const MarkedQuestion& question) {
    const auto read = question.marker.read(answersIn(arguments));
    if (const auto* fault = std::get_if<AttemptFault>(&read))
        return complain(QStringLiteral("mark: --answer: ") + QString::fromStdString(fault->message));
    const QString out = arguments.value(QStringLiteral("-o"), QStringLiteral("-"));
    if (const QString fault = faultOfOutputs({out}, {{arguments.files[0], QStringLiteral("the sketch")}});
        !fault.isEmpty())
        return complain(fault);
    Marking marking = question.marker.mark(std::get<Attempt>(read));
    const bool isRight = marking.isRight();
    const int written =
        writeMarking(out, QByteArray::fromStdString(markedAs(arguments.value(QStringLiteral("--as")),
                                                             std::move(marking), question)));
    return written != kDone ? written : isRight ? kDone : kNotRight;
}

int mark(const Arguments& arguments) {
    if (const QString fault = clash(arguments); !fault.isEmpty())
        return complain(QStringLiteral("mark: ") + fault);
    if (arguments.has(QStringLiteral("--key")))
        return markByKey(arguments);
    const auto read = readQuestion(arguments, QStringLiteral("mark"));
    if (const int* status = std::get_if<int>(&read))
        return *status;
    const Result& result = std::get<Result>(read);
    const auto options = markOptionsOf(result.sketch);
    if (const auto* fault = std::get_if<FileError>(&options))
        return complain(nameOfInput(arguments.files[0]) + ": " + fault->line());
    const MarkedQuestion question{result.sketch,
                                  Marker(result.sketch, result.solved, std::get<MarkOptions>(options))};
    if (const auto& refusal = question.marker.refusal())
        return complain(nameOfInput(arguments.files[0]) + ": " + QString::fromStdString(*refusal));
    if (const auto fault = faultOfPoints(std::get<MarkOptions>(options), question.marker))
        return complain(nameOfInput(arguments.files[0]) + ": " + fault->line());
    return arguments.has(QStringLiteral("--answers")) ? markClass(arguments, question)
                                                      : markOne(arguments, question);
}

} // namespace

int runMark(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen"); // a verb needs no display server
    const auto parsed = parseArguments(wordsFrom(2, argc, argv), markOptions());
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(QStringLiteral("mark: ") + *fault);
    const auto& arguments = std::get<Arguments>(parsed);
    if (arguments.help)
        return writeMarking(QStringLiteral("-"), kMarkHelp);
    const QCoreApplication application(argc, argv);
    return mark(arguments);
}

} // namespace tailpoint
