// SPDX-License-Identifier: MIT
#include "app/common.h"
#include "app/gui/calls.h"
#include "app/gui/figure_options.h"
#include "app/many.h"
#include "app/verbs.h"
#include "core/construct/pairs.h"
#include "core/explain/explain.h"
#include "core/figure/case_arrows.h"
#include "core/quantity/typed.h"
#include "core/sketch/cases.h"
#include "ui/files/files.h"
#include "ui/files/provenance.h"

#include <QGuiApplication>

namespace tailpoint {

namespace {

constexpr const char* kFigureHelp =
    R"(Usage: tailpoint figure FILE -o OUT.svg|OUT.pdf|OUT.png|OUT.tex [options]
       tailpoint figure FILE... [--as svg|pdf|png|tex] -o DIR [options]

Draws the sketch in FILE ('-': standard input). The ending of OUT decides the form.

  -o DIR           a figure each of several FILEs in this folder, which is made where it isn't there: of
                   raft.json raft.svg, or as --as says. Two FILEs of one name are refused. A FILE that can't
                   be read or drawn is one line, the others are written

  --construction parallelogram|triangle|polygon
                   what is drawn to the forces; default: parallelogram for two forces, else polygon
  --pairs K|all    of several forces the parallelograms two at a time: the Kth alone, or all of them
  --method triangle|components
                   the figure of the solution that 'report --method' writes: by the triangle a resultant of
                   several forces is drawn two at a time; in place of --construction and --pairs
  --marks          marks on the parallel sides of the parallelogram
  --stage K|all    only what is on the sheet by then: 0 the given forces, 1 their directions, 2 the angle
                   between them, 3 the construction, 4 its angles, 5 what is found, 6 found magnitudes,
                   7 the triangle's angles, 8 everything (default); all: OUT-0 to OUT-8, or a PDF of 9 pages.
                   0 to 4 are made from what is given alone, scale and sheet too: they are exercises; from 5
                   on the answer is drawn
  --theme paper|slate|contrast
                   default: paper
  --solution 1|2   which of two answers is drawn solid; default: 1
  --width PT --height PT
                   size of the sheet in points of 1/72 inch; default: 720 and 480
  --paper free|a4|a4-landscape|letter|letter-landscape
                   a page with margins instead of a sheet of that size
  --per-cm FORCE   true scale: so much force in one centimetre ("50" or "0.05 kN"), with a bar to check it
  --scale S, --dpi D, --pixels W
                   one of them, of a PNG: pixels in one point (default 2), dots per inch, or its width in pixels
  --transparent    nothing behind the figure
  --values shown|hidden, --names shown|hidden, --given-only
                   for exercises; a figure that hides something does not carry the sketch. With hidden
                   values, too, only what is given is drawn, unless a --stage from 5 on, or all, is asked for

  --tolerances shown|hidden
                   hidden: the stated values alone, without ranges and shading; such a figure does not carry the
                   sketch, and one that states limits keeps its tolerances

  --case NAME      one case of the sketch; default: as drawn
  --with-cases     the other cases laid over it, thin; not with what hides something

An SVG carries the sketch and opens as one again. A .tex is a document for pdflatex or lualatex (amsmath,
tikz) in which the figure follows the named tips of its forces; its tikzpicture can be taken out.
Exit status: 0 one answer or two; 1 none, infinitely many, too few or too many unknowns (what is given is
drawn); 2 bad input.
)";

std::optional<ConstructionKind> constructionNamed(const QString& name) {
    if (name == QLatin1String("parallelogram"))
        return ConstructionKind::parallelogram;
    if (name == QLatin1String("triangle"))
        return ConstructionKind::triangle;
    return name == QLatin1String("polygon") ? std::optional(ConstructionKind::polygon) : std::nullopt;
}

/// As the solution by that method tells it.
std::optional<QString> takeMethod(const Arguments& arguments, const Result& result, FigureJob& job) {
    const QString method = arguments.value(QStringLiteral("--method"));
    if (method.isNull())
        return std::nullopt;
    for (const char* other : {"--construction", "--pairs"})
        if (arguments.options.contains(QLatin1String(other)))
            return QStringLiteral("--method says what is drawn; leave it or %1 out")
                .arg(QLatin1String(other));
    ExplainOptions options;
    options.method = methodFrom(method.toStdString());
    const bool several = !pairsOf(result.sketch, result.solved, job.options.solution).empty();
    job.options.pair = several && addsByParallelograms(options) ? kAllPairs : kNoPairs;
    return std::nullopt;
}

/// Which construction, and whether the sketch has it.
std::optional<QString> takeConstruction(const Arguments& arguments, const Result& result, FigureJob& job) {
    if (auto fault = takeMethod(arguments, result, job))
        return fault;
    const QString named = arguments.value(QStringLiteral("--construction"));
    const bool pairs = job.options.pair != kNoPairs;
    if (pairs && !named.isNull() && named != QLatin1String("parallelogram"))
        return QStringLiteral("--pairs goes with --construction parallelogram; leave one of them out");
    job.options.construction = constructionNamed(named).value_or(pairs || result.construction.parallelogram
                                                                     ? ConstructionKind::parallelogram
                                                                     : ConstructionKind::polygon);
    if (!pairs)
        return std::nullopt;
    if (job.options.pair == kAllPairs && job.options.parallelMarks)
        return QStringLiteral("--marks goes with one parallelogram, --pairs 1 say; leave one of them out");
    const auto count = static_cast<int>(pairsOf(result.sketch, result.solved, job.options.solution).size());
    if (count == 0)
        return QStringLiteral(
                   "--pairs: goes with the resultant of 3 to %1 forces, no two in line on the way; "
                   "leave it out")
            .arg(kMostPaired);
    if (job.options.pair > count)
        return QStringLiteral("--pairs %1: there are %2 parallelograms; take 1 to %2, or all")
            .arg(job.options.pair)
            .arg(count);
    return std::nullopt;
}

/// In the sketch's unit, so it waits for the sketch.
std::optional<QString> takeTrueScale(const Arguments& arguments, const Sketch& sketch, FigureJob& job) {
    const QString typed = arguments.value(QStringLiteral("--per-cm"));
    if (typed.isNull())
        return std::nullopt;
    if (typed.trimmed().startsWith(QLatin1Char('-')) || typed.trimmed().startsWith(QChar(0x2212)))
        return QStringLiteral("--per-cm wants a force above 0");
    const auto force = parseMagnitude(typed.toStdString(), sketch.forceUnit);
    if (const auto* error = std::get_if<TypedError>(&force))
        return QStringLiteral("--per-cm: ") + QString::fromStdString(error->message);
    if (!(std::get<TypedMagnitude>(force).value > 0))
        return QStringLiteral("--per-cm wants a force above 0");
    job.unitsPerCm = std::get<TypedMagnitude>(force).value;
    return std::nullopt;
}

/// The other cases of `whole` laid over what is drawn.
std::optional<QString> takeCases(const Arguments& arguments, const Sketch& whole, const std::string& inCase,
                                 FigureJob& job) {
    if (!arguments.has(QStringLiteral("--with-cases")))
        return std::nullopt;
    const auto states = caseStates(whole);
    if (states.empty())
        return QStringLiteral("--with-cases: the sketch has no cases; leave it out");
    if (carriesNoSketch(job))
        return QStringLiteral("--with-cases tells what this figure hides; leave it out");
    const auto shown = caseNamed(whole, inCase);
    job.options.cases = caseArrows(states, shown ? *shown + 1 : 0, job.options.solution);
    return std::nullopt;
}

/// Ready to be drawn, and the job with all that waited for the sketch.
struct Prepared {
    Result result;
    FigureJob job;
};
/// Of the sketch that was read from `file`; or what the options ask of it in vain.
std::variant<Prepared, QString> prepared(const Result& read, const QString& file, const Wanted& wanted,
                                         const Arguments& arguments) {
    const auto asked = asAsked(arguments, read);
    if (const auto* fault = std::get_if<QString>(&asked))
        return *fault;
    const auto& question = std::get<Result>(asked);
    FigureJob job = wanted.job;
    if (job.options.solution >= question.solved.solutions.size() && job.options.solution > 0)
        return QStringLiteral("--solution 2: the question has no second answer; leave it out");
    Result result = resultOf(question.sketch, job.options.solution);
    if (const auto fault = takeCases(arguments, read.sketch, result.sketch.inCase, job))
        return *fault;
    if (const auto fault = takeConstruction(arguments, result, job))
        return *fault;
    if (const auto fault = takeTrueScale(arguments, result.sketch, job))
        return *fault;
    if (job.form == FigureForm::pdf)
        job.record = figureRecord(result.sketch, provenanceOf(file));
    return Prepared{std::move(result), std::move(job)};
}

int drawOne(const Wanted& wanted, const Arguments& arguments) {
    const auto read = readQuestion(arguments, QStringLiteral("figure"));
    if (const int* status = std::get_if<int>(&read))
        return *status;
    const auto ready = prepared(std::get<Result>(read), arguments.files.front(), wanted, arguments);
    if (const auto* fault = std::get_if<QString>(&ready))
        return complain(QStringLiteral("figure: ") + *fault);
    const auto& [result, job] = std::get<Prepared>(ready);
    const auto files = figureFiles(result, job);
    if (const auto* fault = std::get_if<FigureFault>(&files))
        return complain(wanted.out + ": " + *fault);
    std::vector<FileBytes> named;
    for (const FigureFile& file : std::get<std::vector<FigureFile>>(files))
        named.push_back({withSuffix(wanted.out, file.suffix), file.bytes});
    if (const auto failed = saveTogether(named))
        return complain(failed->path + ": " + failed->error.line());
    return exitStatus(result.solved.status);
}

/// A figure each, in a folder.
int drawMany(const Wanted& wanted, const Arguments& arguments) {
    const QString ending = '.' + endingOf(wanted.job.form);
    const QString fault =
        clashOfMany(arguments, [&](const QString& base) { return figureNames(base + ending, wanted.job); });
    if (!fault.isEmpty())
        return complain(QStringLiteral("figure: ") + fault);
    return writeMany(arguments, [&](const QString& file, const QString& base) -> OneOfMany {
        const auto read = resultFrom(file);
        if (const auto* error = std::get_if<FileError>(&read))
            return {{}, kBad, error->line()};
        const auto ready = prepared(std::get<Result>(read), file, wanted, arguments);
        if (const auto* asked = std::get_if<QString>(&ready))
            return {{}, kBad, *asked};
        const auto& [result, job] = std::get<Prepared>(ready);
        auto files = figureFiles(result, job);
        if (const auto* tooLarge = std::get_if<FigureFault>(&files))
            return {{}, kBad, *tooLarge};
        OneOfMany one{{}, exitStatus(result.solved.status), {}};
        for (FigureFile& figure : std::get<std::vector<FigureFile>>(files))
            one.files.push_back({withSuffix(base + ending, figure.suffix), std::move(figure.bytes)});
        return one;
    });
}

} // namespace

int runFigure(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen"); // a verb needs no display server
    const QGuiApplication application(argc, argv);
    const auto parsed = parseArguments(wordsFrom(2, argc, argv), figureOptions());
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(QStringLiteral("figure: ") + *fault);
    const auto& arguments = std::get<Arguments>(parsed);
    if (arguments.help) {
        const auto error = writeStandardOutput(kFigureHelp);
        return error ? complain(QStringLiteral("standard output: ") + error->line()) : kDone;
    }
    if (const auto status = withoutFonts())
        return *status;
    const auto wanted = wantedBy(arguments);
    if (const auto* fault = std::get_if<QString>(&wanted))
        return complain(QStringLiteral("figure: ") + *fault);
    return isForMany(arguments) ? drawMany(std::get<Wanted>(wanted), arguments)
                                : drawOne(std::get<Wanted>(wanted), arguments);
}

} // namespace tailpoint
