#include "app/common.h"
#include "app/verbs.h"
#include "core/construct/pairs.h"
#include "core/quantity/typed.h"
#include "ui/document/files.h"
#include "ui/handout/figure_job.h"

#include <QFileInfo>
#include <QGuiApplication>

namespace tailpoint {

namespace {

constexpr const char* kFigureHelp =
    R"(Usage: tailpoint figure FILE -o OUT.svg|OUT.pdf|OUT.png|OUT.tex [options]

Draws the sketch in FILE ('-': standard input). The ending of OUT decides the form.

  --construction parallelogram|triangle|polygon
                   what is drawn to the forces; default: parallelogram for two forces, else polygon
  --pairs K|all    of several forces the parallelograms two at a time: the Kth alone, or all of them
  --marks          marks on the parallel sides of the parallelogram
  --stage K|all    only what is on the sheet by then: 0 the given forces, 1 their directions, 2 the angle
                   between them, 3 the construction, 4 its angles, 5 what is found, 6 found magnitudes,
                   7 the triangle's angles, 8 everything (default); all: OUT-0 to OUT-8, or a PDF of 9 pages
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
                   for exercises; a figure that hides something does not carry the sketch

An SVG carries the sketch and opens as one again. A .tex is a document for pdflatex or lualatex (amsmath,
tikz) in which the figure follows the named tips of its forces; its tikzpicture can be taken out.
Exit status: 0 one answer or two; 1 none, endlessly many, too few or too many unknowns (what is given is
drawn); 2 bad input.
)";

constexpr double kLargestSheet = 14'400; ///< points; beyond it PDF readers give up

QList<Option> figureOptions() {
    const auto words = [](const char* text) { return QString::fromLatin1(text).split(QLatin1Char('|')); };
    return {{QStringLiteral("-o"), {}},
            {QStringLiteral("--construction"), words("parallelogram|triangle|polygon")},
            {QStringLiteral("--pairs"), {}},
            {QStringLiteral("--marks"), {}, true},
            {QStringLiteral("--stage"), {}},
            {QStringLiteral("--theme"), words("paper|slate|contrast")},
            {QStringLiteral("--solution"), words("1|2")},
            {QStringLiteral("--width"), {}},
            {QStringLiteral("--height"), {}},
            {QStringLiteral("--scale"), {}},
            {QStringLiteral("--paper"), words("free|a4|a4-landscape|letter|letter-landscape")},
            {QStringLiteral("--per-cm"), {}},
            {QStringLiteral("--dpi"), {}},
            {QStringLiteral("--pixels"), {}},
            {QStringLiteral("--transparent"), {}, true},
            {QStringLiteral("--values"), words("shown|hidden")},
            {QStringLiteral("--names"), words("shown|hidden")},
            {QStringLiteral("--given-only"), {}, true}};
}

/// What was asked for, checked before the sketch is read.
struct Wanted {
    QString out;
    FigureJob job;
};

std::optional<ConstructionKind> constructionNamed(const QString& name) {
    if (name == QLatin1String("parallelogram"))
        return ConstructionKind::parallelogram;
    if (name == QLatin1String("triangle"))
        return ConstructionKind::triangle;
    return name == QLatin1String("polygon") ? std::optional(ConstructionKind::polygon) : std::nullopt;
}

std::optional<QString> takeSize(const Arguments& arguments, const char* name, double most, double& into) {
    const QString option = QString::fromLatin1(name);
    if (!arguments.options.contains(option))
        return std::nullopt;
    const auto value = positiveNumber(arguments.value(option), most);
    if (!value)
        return QStringLiteral("%1 wants a number above 0 and up to %2").arg(option).arg(most);
    into = *value;
    return std::nullopt;
}

std::optional<QString> takeSizes(const Arguments& arguments, FigureJob& job) {
    if (auto fault = takeSize(arguments, "--width", kLargestSheet, job.width))
        return fault;
    if (auto fault = takeSize(arguments, "--height", kLargestSheet, job.height))
        return fault;
    job.pixelsPerPoint = 2;
    if (auto fault = takeSize(arguments, "--scale", 20, job.pixelsPerPoint))
        return fault;
    double dpi = job.pixelsPerPoint * 72;
    if (auto fault = takeSize(arguments, "--dpi", 2400, dpi))
        return fault;
    job.pixelsPerPoint = dpi / 72;
    if (const QString pixels = arguments.value(QStringLiteral("--pixels")); !pixels.isNull()) {
        job.pixelWidth = wholeNumber(pixels, 1, 20'000);
        if (!job.pixelWidth)
            return QStringLiteral("--pixels wants a whole number from 1 to 20000");
    }
    return std::nullopt;
}

std::optional<QString> takeOut(const Arguments& arguments, Wanted& wanted) {
    wanted.out = arguments.value(QStringLiteral("-o"));
    if (wanted.out.isEmpty())
        return QStringLiteral("-o is missing; name a file that ends in .svg, .pdf, .png or .tex");
    const auto form = figureFormFrom(QFileInfo(wanted.out).suffix().toLower());
    if (!form)
        return QStringLiteral(
                   "-o %1: the ending says no form; name a file that ends in .svg, .pdf, .png or .tex")
            .arg(wanted.out);
    wanted.job.form = *form;
    return std::nullopt;
}

std::optional<QString> takeStage(const Arguments& arguments, FigureJob& job) {
    const QString stage = arguments.value(QStringLiteral("--stage"));
    job.allStages = stage == QLatin1String("all");
    if (stage.isNull() || job.allStages)
        return std::nullopt;
    constexpr int last = kFigureStages - 1;
    const auto number = wholeNumber(stage, 0, last);
    if (!number)
        return QStringLiteral("--stage wants a whole number from 0 to %1, or all").arg(last);
    job.options.stage = static_cast<Stage>(*number);
    return std::nullopt;
}

std::optional<QString> takePairs(const Arguments& arguments, FigureJob& job) {
    const QString pairs = arguments.value(QStringLiteral("--pairs"));
    if (pairs.isNull())
        return std::nullopt;
    const auto number = pairs == QLatin1String("all")
                            ? std::optional<int>(kAllPairs)
                            : wholeNumber(pairs, 1, static_cast<int>(kMostPaired) - 1);
    if (!number)
        return QStringLiteral("--pairs wants a whole number from 1 to %1, or all").arg(kMostPaired - 1);
    job.options.pair = *number;
    return std::nullopt;
}

/// Which construction, and whether the sketch has it.
std::optional<QString> takeConstruction(const Arguments& arguments, const Result& result, FigureJob& job) {
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

void takeParts(const Arguments& arguments, FigureJob& job) {
    const auto hidden = [&](const char* option) {
        return arguments.value(QString::fromLatin1(option)) == QLatin1String("hidden");
    };
    const QStringList papers{QStringLiteral("free"), QStringLiteral("a4"), QStringLiteral("a4-landscape"),
                             QStringLiteral("letter"), QStringLiteral("letter-landscape")};
    job.paper =
        static_cast<FigurePaper>(papers.indexOf(arguments.value(QStringLiteral("--paper"), papers.front())));
    job.options.values = !hidden("--values");
    job.options.parallelMarks = arguments.options.contains(QStringLiteral("--marks"));
    job.names = !hidden("--names");
    job.givenOnly = arguments.options.contains(QStringLiteral("--given-only"));
    job.transparent = arguments.options.contains(QStringLiteral("--transparent"));
    job.theme = *themeFrom(arguments.value(QStringLiteral("--theme"), QStringLiteral("paper")));
    job.options.solution = arguments.value(QStringLiteral("--solution")) == QLatin1String("2") ? 1 : 0;
}

/// Options that would have no say where they stand.
std::optional<QString> clashOf(const Arguments& arguments, FigureForm form) {
    const auto given = [&](const char* option) {
        return arguments.options.contains(QString::fromLatin1(option));
    };
    static constexpr const char* sizes[] = {"--scale", "--dpi", "--pixels"};
    const char* first = nullptr;
    for (const char* size : sizes) {
        if (!given(size))
            continue;
        if (form != FigureForm::png)
            return QStringLiteral("%1 goes with a .png; leave it out").arg(QLatin1String(size));
        if (first)
            return QStringLiteral("%1 and %2 both set the pixels; leave one of them out")
                .arg(QLatin1String(first), QLatin1String(size));
        first = size;
    }
    const QString paper = arguments.value(QStringLiteral("--paper"), QStringLiteral("free"));
    for (const char* side : {"--width", "--height"})
        if (given(side) && paper != QLatin1String("free"))
            return QStringLiteral("--paper %1 has a size of its own; leave %2 out")
                .arg(paper, QLatin1String(side));
    return std::nullopt;
}

/// What is written there would be no sketch any more: a slip of the hand that would cost it. Empty: none.
QString lostSketch(const Wanted& wanted, const Arguments& arguments) {
    return losesSketch(wanted.job)
               ? replacedInput(figureNames(wanted.out, wanted.job), arguments.files.value(0))
               : QString();
}

std::variant<Wanted, QString> wantedBy(const Arguments& arguments) {
    Wanted wanted;
    if (auto fault = takeOut(arguments, wanted))
        return *fault;
    if (auto fault = clashOf(arguments, wanted.job.form))
        return *fault;
    if (auto fault = takeSizes(arguments, wanted.job))
        return *fault;
    if (auto fault = takeStage(arguments, wanted.job))
        return *fault;
    if (auto fault = takePairs(arguments, wanted.job))
        return *fault;
    takeParts(arguments, wanted.job);
    if (const QString lost = lostSketch(wanted, arguments); !lost.isEmpty())
        return QStringLiteral(
                   "-o %1: is the sketch itself, and this figure would not carry it; name another file")
            .arg(lost);
    return wanted;
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

int drawTo(const Result& question, Wanted wanted, const Arguments& arguments) {
    FigureJob& job = wanted.job;
    if (job.options.solution >= question.solved.solutions.size() && job.options.solution > 0)
        return complain(
            QStringLiteral("figure: --solution 2: the question has no second answer; leave it out"));
    const Result result = resultOf(question.sketch, job.options.solution);
    if (const auto fault = takeConstruction(arguments, result, job))
        return complain(QStringLiteral("figure: ") + *fault);
    if (const auto fault = takeTrueScale(arguments, result.sketch, job))
        return complain(QStringLiteral("figure: ") + *fault);
    const auto files = figureFiles(result, job);
    if (const auto* fault = std::get_if<FigureFault>(&files))
        return complain(wanted.out + ": " + *fault);
    for (const FigureFile& file : std::get<std::vector<FigureFile>>(files)) {
        const QString path = withSuffix(wanted.out, file.suffix);
        if (const auto error = saveBytes(path, file.bytes))
            return complain(path + ": " + error->line());
    }
    return exitStatus(result.solved.status);
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
    const auto wanted = wantedBy(arguments);
    if (const auto* fault = std::get_if<QString>(&wanted))
        return complain(QStringLiteral("figure: ") + *fault);
    const auto read = readQuestion(arguments, QStringLiteral("figure"));
    if (const int* status = std::get_if<int>(&read))
        return *status;
    return drawTo(std::get<Result>(read), std::get<Wanted>(wanted), arguments);
}

} // namespace tailpoint
