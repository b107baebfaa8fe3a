// SPDX-License-Identifier: MIT
#include "app/common.h"
#include "app/gui.h"
#include "app/many.h"
#include "app/report_csv.h"
#include "app/verbs.h"
#include "core/explain/cases.h"
#include "core/sketch/cases.h"
#include "ui/files/files.h"
#include "ui/files/report.h"
#include "ui/handout/handout_choice.h"

#include <QCoreApplication>
#include <algorithm>
#include <memory>

namespace tailpoint {

namespace {

constexpr const char* kReportHelp =
    R"(Usage: tailpoint report FILE [--as text|json|html|latex] [--case NAME] [--rounding full|hand]
                              [--uncertainty [--normal K]] [-o OUT]
       tailpoint report FILE... [--as text|json|html|latex] [...] -o DIR
       tailpoint report FILE... --as csv [-o OUT]

Values and worked solution of the sketch in FILE ('-': standard input): what is given, what is found, and how.

  --as text|json   plain text for people (default) or JSON for scripts
  --as html        a handout in one file: statement, figure, worked solution; prints on A4 and Letter
  --as latex       the same for pdflatex (amsmath, tikz)
  --as csv         a table of several FILEs, a row a file, case and solution: file, case, status, then of each
                   found quantity its value, low, high, utilisation and unit; a FILE that can't be read is a
                   row too
  --case NAME      one case of the sketch; default: the sketch as drawn, and of its cases what they give
                   differently, what is found in each, and the envelope with the case that governs
  --rounding full|hand
                   carry as many figures more than the answer's as its last digit takes, so that each line
                   computes as it is printed (default), or round every value as it is shown, as on paper, and
                   say what that costs in the answer
  --method triangle|components
                   by the force triangle or by the sums along x and y; the other one is the check (default:
                   as suits the question)
  --more-after-one one figure more where the first digit of a force is a 1
  --uncertainty    the standard uncertainty too, by first order, of each found magnitude and direction, and
                   how much of it each given value makes; a tolerance is a rectangular distribution
  --normal K       with --uncertainty: a tolerance is K standard uncertainties of a normal distribution
  --adding table|parallelograms
                   a resultant of more than two forces by a component table (default) or two at a time
  --tolerances shown|hidden
                   hidden: the stated values alone, without ranges and shading, as for a student's sheet; a
                   sketch that states limits keeps its tolerances
  --no-solution    html and latex: statement and figure of what is given, as an exercise
  -o OUT           write to this file instead of standard output
  -o DIR           a report each of several FILEs in this folder, which is made where it isn't there: of
                   raft.json raft.txt, .json, .html or .tex. Two FILEs of one name are refused. A FILE that
                   can't be read is one line, the others are written

Exit status: 0 one answer or two; 1 none, infinitely many, too few or too many unknowns; 2 bad input. Of
several FILEs and of a sketch's cases the worst.
)";

QList<Option> reportOptions() {
    const auto words = [](const char* text) { return QString::fromLatin1(text).split(QLatin1Char('|')); };
    return {{QStringLiteral("--as"), words("text|json|html|latex|csv")},
            {QStringLiteral("--rounding"), words("full|hand")},
            {QStringLiteral("--method"), words("triangle|components")},
            {QStringLiteral("--adding"), words("table|parallelograms")},
            {QStringLiteral("--uncertainty"), {}, true},
            {QStringLiteral("--normal"), {}},
            {QStringLiteral("--more-after-one"), {}, true},
            {QStringLiteral("--no-solution"), {}, true},
            {QStringLiteral("--case"), {}},
            {QLatin1String(kTolerancesOption), words("shown|hidden")},
            {QStringLiteral("-o"), {}}};
}

/// The worst of what is drawn and of its cases.
int statusOf(const Result& result) {
    int status = exitStatus(result.solved.status);
    for (const CaseState& state : caseStates(result.sketch))
        status = std::max(status, exitStatus(state.solved.status));
    return status;
}

/// A row each solution of each state.
std::vector<TabledRow> rowsOf(const QString& file, const Result& result) {
    std::vector<TabledRow> rows =
        tabledRows(file, result, result.sketch.cases.empty() ? result.sketch.inCase : std::string(kAsDrawn));
    for (std::size_t i = 0; i < result.sketch.cases.size(); ++i)
        for (TabledRow& row :
             tabledRows(file, resultOf(inCase(result.sketch, i)), result.sketch.cases[i].name))
            rows.push_back(std::move(row));
    return rows;
}

constexpr double kMostK = 100;

std::optional<tolerance::UncertaintyAsked> uncertaintyIn(const Arguments& arguments) {
    if (!arguments.has(QStringLiteral("--uncertainty")))
        return std::nullopt;
    tolerance::UncertaintyAsked asked;
    if (const auto k = positiveNumber(arguments.value(QStringLiteral("--normal")), kMostK)) {
        asked.spread = tolerance::Spread::normal;
        asked.k = *k;
    }
    return asked;
}

QString formIn(const Arguments& arguments) {
    return arguments.value(QStringLiteral("--as"), QStringLiteral("text"));
}

QByteArray reportAs(const Result& result, const QString& file, const Arguments& arguments) {
    const QString form = formIn(arguments);
    const bool byHand = arguments.value(QStringLiteral("--rounding")) == QLatin1String("hand");
    const bool pairs = arguments.value(QStringLiteral("--adding")) == QLatin1String("parallelograms");
    HandoutChoice choice;
    choice.handRounding = byHand;
    choice.parallelograms = pairs;
    choice.method = methodFrom(arguments.value(QStringLiteral("--method")).toStdString());
    choice.solution = !arguments.options.contains(QStringLiteral("--no-solution"));
    choice.uncertainty = uncertaintyIn(arguments);
    choice.from = provenanceOf(file);
    if (form == QLatin1String("html"))
        return gui()->handoutHtml(result, choice);
    if (form == QLatin1String("latex"))
        return gui()->handoutLatex(result, choice);
    ExplainOptions options;
    options.handRounding = byHand;
    options.parallelograms = pairs;
    options.method = choice.method;
    options.uncertainty = choice.uncertainty;
    return form == QLatin1String("json") ? reportJson(result, options)
                                         : reportText(result, options, choice.from);
}

bool isHandout(const Arguments& arguments) {
    const QString form = arguments.value(QStringLiteral("--as"));
    return form == QLatin1String("html") || form == QLatin1String("latex");
}

bool isTable(const Arguments& arguments) {
    return arguments.value(QStringLiteral("--as")) == QLatin1String("csv");
}

/// What is wrong with the options together; empty: nothing.
QString clashOfReport(const Arguments& arguments) {
    for (const char* option : {"--rounding", "--method", "--adding", "--uncertainty", "--normal",
                               "--more-after-one", "--no-solution", kTolerancesOption})
        if (isTable(arguments) && arguments.has(QLatin1String(option)))
            return QStringLiteral("%1 has no say in --as csv, which holds full values; take it out")
                .arg(QLatin1String(option));
    if (arguments.has(QStringLiteral("--normal")) && !arguments.has(QStringLiteral("--uncertainty")))
        return QStringLiteral("--normal goes with --uncertainty; add it, or take this out");
    if (const QString k = arguments.value(QStringLiteral("--normal"));
        arguments.has(QStringLiteral("--normal")) && !positiveNumber(k, kMostK))
        return QStringLiteral("--normal knows no '%1'; use a number above 0 and up to %2").arg(k).arg(kMostK);
    if (arguments.has(QStringLiteral("--uncertainty")) && hidesTolerances(arguments))
        return QStringLiteral("--uncertainty is of the tolerances; take it or --tolerances hidden out");
    if (arguments.has(QStringLiteral("--uncertainty")) && arguments.has(QStringLiteral("--no-solution")))
        return QStringLiteral("--uncertainty is told in the solution; take it or --no-solution out");
    return arguments.options.contains(QStringLiteral("--no-solution")) && !isHandout(arguments)
               ? QStringLiteral("--no-solution goes with --as html or --as latex; take it out")
               : QString();
}

/// A row each, and the worst status.
int table(const Arguments& arguments) {
    const QString out = arguments.value(QStringLiteral("-o"));
    if (arguments.files.isEmpty())
        return complain(
            QStringLiteral("report --as csv wants one FILE or more; see tailpoint report --help"));
    for (const QString& file : arguments.files)
        if (isSameFile(out.isEmpty() ? QStringLiteral("-") : out, file)) // a slip that would cost it
            return complain(nameOfOutput(out.isEmpty() ? QStringLiteral("-") : out) +
                            QStringLiteral(": is one of the sketches; write the table to another file"));
    std::vector<TabledRow> rows;
    int status = kDone;
    for (const QString& file : arguments.files) {
        const auto bad = [&](const QString& line) {
            status = complain(nameOfInput(file) + ": " + line);
            rows.push_back(badRow(file, line));
        };
        const auto read = resultFrom(file);
        if (const auto* error = std::get_if<FileError>(&read)) {
            bad(error->line());
            continue;
        }
        const auto asked = inCaseAsked(arguments, std::get<Result>(read));
        if (const auto* fault = std::get_if<QString>(&asked)) {
            bad(*fault);
            continue;
        }
        status = std::max(status, statusOf(std::get<Result>(asked)));
        for (TabledRow& row : rowsOf(file, std::get<Result>(asked)))
            rows.push_back(std::move(row));
    }
    return std::max(status, writeOut(reportCsv(rows), out));
}

struct Reported {
    QByteArray bytes;
    int status = kDone;
};
/// Of the sketch that was read from `file`; or what is wrong with the case that is asked for.
std::variant<Reported, QString> reported(const Result& read, const QString& file,
                                         const Arguments& arguments) {
    const auto asked = asAsked(arguments, read);
    if (const auto* fault = std::get_if<QString>(&asked))
        return *fault;
    Sketch sketch = std::get<Result>(asked).sketch;
    sketch.moreAfterOne =
        sketch.moreAfterOne || arguments.options.contains(QStringLiteral("--more-after-one"));
    const Result result = resultOf(sketch);
    return Reported{reportAs(result, file, arguments), statusOf(result)};
}

/// A report each, in a folder.
int reportMany(const Arguments& arguments) {
    const QString form = formIn(arguments), ending = form == QLatin1String("text")    ? QStringLiteral(".txt")
                                                     : form == QLatin1String("latex") ? QStringLiteral(".tex")
                                                                                      : '.' + form;
    const QString fault =
        clashOfMany(arguments, [&](const QString& base) { return QStringList{base + ending}; });
    if (!fault.isEmpty())
        return complain(QStringLiteral("report: ") + fault);
    return writeMany(arguments, [&](const QString& file, const QString& base) -> OneOfMany {
        const auto read = resultFrom(file);
        if (const auto* error = std::get_if<FileError>(&read))
            return {{}, kBad, error->line()};
        auto made = reported(std::get<Result>(read), file, arguments);
        if (const auto* asked = std::get_if<QString>(&made))
            return {{}, kBad, *asked};
        const auto& report = std::get<Reported>(made);
        return {{{base + ending, report.bytes}}, report.status, {}};
    });
}

int report(const Arguments& arguments) {
    const QString out = arguments.value(QStringLiteral("-o"));
    if (const QString fault = clashOfReport(arguments); !fault.isEmpty())
        return complain(QStringLiteral("report: ") + fault);
    if (isTable(arguments))
        return table(arguments);
    if (isForMany(arguments))
        return reportMany(arguments);
    const QString target = out.isEmpty() ? QStringLiteral("-") : out;
    if (isSameFile(target, arguments.files.value(0))) // a slip that would cost it
        return complain(nameOfOutput(target) +
                        QStringLiteral(": is the sketch itself; write the report to another file"));
    const auto read = readQuestion(arguments, QStringLiteral("report"));
    if (const int* status = std::get_if<int>(&read))
        return *status;
    const auto made = reported(std::get<Result>(read), arguments.files.front(), arguments);
    if (const auto* fault = std::get_if<QString>(&made))
        return complain(QStringLiteral("report: ") + *fault);
    const auto& [bytes, status] = std::get<Reported>(made);
    const int written = writeOut(bytes, out);
    return written == kDone ? status : written;
}

/// Letters, which a handout's figure needs, cost a start several times that of the bare text.
std::variant<std::unique_ptr<QCoreApplication>, int> applicationForReport(const Arguments& arguments,
                                                                          int& argc, char** argv) {
    if (!isHandout(arguments))
        return std::make_unique<QCoreApplication>(argc, argv);
    const Gui* part = gui();
    if (!part)
        return kBad;
    return part->lettersApplication(argc, argv);
}

} // namespace

int runReport(int argc, char** argv) {
    const auto parsed = parseArguments(wordsFrom(2, argc, argv), reportOptions());
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(QStringLiteral("report: ") + *fault);
    const auto& arguments = std::get<Arguments>(parsed);
    if (arguments.help)
        return writeOut(kReportHelp, {});
    const auto application = applicationForReport(arguments, argc, argv);
    if (const int* status = std::get_if<int>(&application))
        return *status;
    return report(arguments);
}

} // namespace tailpoint
