#include "app/common.h"
#include "app/verbs.h"
#include "core/figure/compose.h"
#include "ui/render/render.h"
#include "ui/render/tikz.h"

#include <QBuffer>
#include <QFileInfo>
#include <QGuiApplication>

namespace tailpoint {

namespace {

constexpr const char* kFigureHelp =
    R"(Usage: tailpoint figure FILE -o OUT.svg|OUT.pdf|OUT.png|OUT.tex [options]

Draws the sketch in FILE ('-': standard input). The ending of OUT decides the form.

  --construction parallelogram|triangle|polygon
                   what is drawn to the forces; default: parallelogram for two forces, else polygon
  --stage K        only what is on the sheet by then: 0 the given forces, 1 their directions, 2 the angle
                   between them, 3 the construction, 4 its angles, 5 what is found, 6 found magnitudes,
                   7 the triangle's angles, 8 everything (default)
  --theme paper|slate|contrast
                   default: paper
  --solution 1|2   which of two answers is drawn solid; default: 1
  --width PT --height PT
                   size of the sheet in points of 1/72 inch; default: 720 and 480
  --scale S        pixels of a PNG in one point; default: 2

An SVG carries the sketch and opens as one again. A .tex is a document for pdflatex (amsmath, tikz); its
tikzpicture can be taken out.
Exit status: 0 one answer or two; 1 none, endlessly many, too few or too many unknowns (what is given is
drawn); 2 bad input.
)";

constexpr int kLastStage = 99;
constexpr double kLargestSheet = 14'400; ///< points; beyond it PDF readers give up

QList<Option> figureOptions() {
    const auto words = [](const char* text) { return QString::fromLatin1(text).split(QLatin1Char('|')); };
    return {{QStringLiteral("-o"), {}},
            {QStringLiteral("--construction"), words("parallelogram|triangle|polygon")},
            {QStringLiteral("--stage"), {}},
            {QStringLiteral("--theme"), words("paper|slate|contrast")},
            {QStringLiteral("--solution"), words("1|2")},
            {QStringLiteral("--width"), {}},
            {QStringLiteral("--height"), {}},
            {QStringLiteral("--scale"), {}}};
}

/// What was asked for, checked before the sketch is read.
struct Wanted {
    QString out, form;
    FigureOptions options;
    const Theme* theme = nullptr;
    double width = 720, height = 480, scale = 2;
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

std::optional<QString> takeSizes(const Arguments& arguments, Wanted& wanted) {
    if (auto fault = takeSize(arguments, "--width", kLargestSheet, wanted.width))
        return fault;
    if (auto fault = takeSize(arguments, "--height", kLargestSheet, wanted.height))
        return fault;
    return takeSize(arguments, "--scale", 20, wanted.scale);
}

std::optional<QString> takeOut(const Arguments& arguments, Wanted& wanted) {
    wanted.out = arguments.value(QStringLiteral("-o"));
    wanted.form = QFileInfo(wanted.out).suffix().toLower();
    if (wanted.out.isEmpty())
        return QStringLiteral("-o is missing; name a file that ends in .svg, .pdf, .png or .tex");
    if (!QStringList{QStringLiteral("svg"), QStringLiteral("pdf"), QStringLiteral("png"),
                     QStringLiteral("tex")}
             .contains(wanted.form))
        return QStringLiteral(
                   "-o %1: the ending says no form; name a file that ends in .svg, .pdf, .png or .tex")
            .arg(wanted.out);
    return std::nullopt;
}

std::variant<Wanted, QString> wantedBy(const Arguments& arguments) {
    Wanted wanted;
    if (auto fault = takeOut(arguments, wanted))
        return *fault;
    if (auto fault = takeSizes(arguments, wanted))
        return *fault;
    if (const QString stage = arguments.value(QStringLiteral("--stage")); !stage.isNull()) {
        const auto number = wholeNumber(stage, 0, kLastStage);
        if (!number)
            return QStringLiteral("--stage wants a whole number from 0 to %1").arg(kLastStage);
        wanted.options.stage = *number;
    }
    wanted.theme = &themeOf(*themeFrom(arguments.value(QStringLiteral("--theme"), QStringLiteral("paper"))));
    wanted.options.solution = arguments.value(QStringLiteral("--solution")) == QLatin1String("2") ? 1 : 0;
    return wanted;
}

QByteArray pngOf(const DisplayList& list, const Wanted& wanted) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    return toImage(list, *wanted.theme, wanted.scale).save(&buffer, "PNG") ? bytes : QByteArray();
}

QByteArray draw(const Result& result, const Wanted& wanted) {
    const View view = fittedView(result.sketch, result.solved, result.construction, wanted.options,
                                 wanted.width, wanted.height);
    const DisplayList list =
        compose(result.sketch, result.solved, result.construction, view, wanted.options, QtTextMeasure{})
            .list;
    if (wanted.form == QLatin1String("svg"))
        return toSvg(list, *wanted.theme, writeSketch(result.sketch));
    if (wanted.form == QLatin1String("tex"))
        return toTikzDocument(list, *wanted.theme);
    return wanted.form == QLatin1String("pdf") ? toPdf(list, *wanted.theme) : pngOf(list, wanted);
}

int drawTo(Result result, Wanted wanted, const Arguments& arguments) {
    if (wanted.options.solution >= result.solved.solutions.size() && wanted.options.solution > 0)
        return complain(
            QStringLiteral("figure: --solution 2: the question has no second answer; leave it out"));
    result = resultOf(result.sketch, wanted.options.solution);
    wanted.options.construction =
        constructionNamed(arguments.value(QStringLiteral("--construction")))
            .value_or(result.construction.parallelogram ? ConstructionKind::parallelogram
                                                        : ConstructionKind::polygon);
    const QByteArray bytes = draw(result, wanted);
    if (bytes.isEmpty())
        return complain(wanted.out + ": the figure is too large to draw; take a smaller --scale or sheet");
    if (const auto error = saveBytes(wanted.out, bytes))
        return complain(wanted.out + ": " + error->line());
    return exitStatus(result.solved.status);
}

} // namespace

int runFigure(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen"); // a verb needs no display server
    const QGuiApplication application(argc, argv);
    const auto parsed = parseArguments(wordsBehindVerb(argc, argv), figureOptions());
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
