#include "ui/handout/figure_job.h"

#include "core/explain/explain.h"
#include "core/sketch/shown.h"
#include "ui/handout/figure_parts.h"
#include "ui/render/render.h"
#include "ui/render/tikz.h"

#include <QBuffer>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kPointsPerCm = 72 / 2.54;
constexpr double kMargin = 36;  // points on every side of a page
constexpr double kBarRoom = 34; // points under a figure at true scale, for the bar
constexpr double kMostPixels = 20'000;

/// The least 1, 2 or 5 times a power of ten that is not below.
double roundUp(double value) {
    View view;
    view.scale = kPointsPerCm / value;
    return divisionOf(view);
}

/// The same view at another scale, about the middle of the sheet.
View scaledAbout(const View& view, double scale) {
    const Point middle{view.width / 2, view.height / 2};
    const Eigen::Vector2d at = view.toSketch(middle);
    View scaled = view;
    scaled.scale = scale;
    scaled.origin = {middle.x - scale * at.x(), middle.y + scale * at.y()};
    return scaled;
}

/// The symbols that the worked solution has given to angles by this stage. Three angles round one point would
/// want the room of those from the axis.
std::vector<AngleName> namesBy(Stage stage, const Result& result, std::size_t solution) {
    if (solution >= result.solved.solutions.size())
        return {};
    const Construction construction = result.constructionOf(solution);
    const auto worked = result.worked({}, solution);
    const StepKey others = solution == 0 ? StepKey::second : StepKey::first;
    std::vector<AngleName> names;
    for (const Step& step : worked->steps)
        for (const AngleName& name : step.angles) {
            const bool between = name.angle.what == What::between && !construction.parallelogram;
            if (step.stage <= stage && step.key != others && !between)
                names.push_back(name);
        }
    return names;
}

FigureOptions optionsFor(const FigureJob& job, Stage stage) {
    FigureOptions options = job.options;
    options.highlighted = kNoVector;
    options.stage = stage;
    options.note = options.note && !carriesNoSketch(job); // it names the answer
    if (job.givenOnly)
        options.stage = std::min(options.stage, Stage::directions);
    return options;
}

std::variant<View, FigureFault> viewFor(const Result& result, const FigureJob& job, double height) {
    const PageRoom room = roomOf(job);
    if (job.view && job.paper == FigurePaper::free && !job.unitsPerCm)
        return *job.view;
    const QtTextMeasure measure;
    const View fitted = fittedView(result.sketch, result.solved, result.construction, job.options, room.width,
                                   height, &measure);
    if (!job.unitsPerCm)
        return fitted;
    const double scale = kPointsPerCm / *job.unitsPerCm;
    if (scale <= fitted.scale * (1 + 1e-9))
        return scaledAbout(fitted, scale);
    const double least = roundUp(kPointsPerCm / fitted.scale);
    return QStringLiteral("at 1 cm = %1 the figure is larger than the paper; take 1 cm = %2 or more")
        .arg(QString::fromStdString(shownForceWithUnit(*job.unitsPerCm, result.sketch)),
             QString::fromStdString(shownForceWithUnit(least, result.sketch)));
}

QByteArray pngOf(const DisplayList& list, const FigureJob& job) {
    const double scale = job.pixelWidth ? *job.pixelWidth / list.width : job.pixelsPerPoint;
    if (list.width * scale > kMostPixels || list.height * scale > kMostPixels)
        return {};
    QImage image = toImage(list, themeOf(job.theme), scale, job.transparent);
    image.setText(QStringLiteral("Title"), QString::fromStdString(list.title));
    image.setText(QStringLiteral("Description"), QString::fromStdString(list.description));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    return image.save(&buffer, "PNG") ? bytes : QByteArray();
}

QByteArray bytesOf(const Result& result, const FigureJob& job, const DisplayList& list) {
    const Theme& theme = themeOf(job.theme);
    switch (job.form) {
    case FigureForm::svg:
        return toSvg(list, theme, carriesNoSketch(job) ? QByteArray() : writeSketch(result.sketch));
    case FigureForm::tex:
        return toTikzDocument(list, theme);
    case FigureForm::png:
        return pngOf(list, job);
    case FigureForm::pdf:
        break;
    }
    const PageRoom room = roomOf(job);
    return toPdf({list}, theme, room.pageWidth, room.pageHeight, {room.left, room.top});
}

std::vector<Stage> stagesOf(const FigureJob& job) {
    if (!job.allStages)
        return {job.options.stage};
    std::vector<Stage> stages;
    for (int stage = 0; stage < kFigureStages; ++stage)
        stages.push_back(static_cast<Stage>(stage));
    return stages;
}

/// One a file: a form that has pages has one file.
QStringList suffixesOf(const FigureJob& job) {
    if (!job.allStages || job.form == FigureForm::pdf)
        return {QString()};
    QStringList suffixes;
    for (int stage = 0; stage < kFigureStages; ++stage)
        suffixes << QStringLiteral("-%1").arg(stage);
    return suffixes;
}

} // namespace

bool carriesNoSketch(const FigureJob& job) {
    return !job.names || !job.options.values || job.givenOnly;
}

bool losesSketch(const FigureJob& job) {
    return carriesNoSketch(job) || job.form != FigureForm::svg;
}

std::optional<FigureForm> figureFormFrom(const QString& ending) {
    for (const FigureForm form : {FigureForm::svg, FigureForm::pdf, FigureForm::png, FigureForm::tex})
        if (ending == endingOf(form))
            return form;
    return std::nullopt;
}

QString endingOf(FigureForm form) {
    switch (form) {
    case FigureForm::svg:
        return QStringLiteral("svg");
    case FigureForm::pdf:
        return QStringLiteral("pdf");
    case FigureForm::png:
        return QStringLiteral("png");
    case FigureForm::tex:
        break;
    }
    return QStringLiteral("tex");
}

PageRoom roomOf(const FigureJob& job) {
    // ISO 216: A4 is 210 mm by 297 mm; Letter is 8.5 in by 11 in (ANSI/ASME Y14.1, size A).
    constexpr double a4Width = 210 / 25.4 * 72, a4Height = 297 / 25.4 * 72;
    const auto page = [](double width, double height) {
        return PageRoom{width, height, kMargin, kMargin, width - 2 * kMargin, height - 2 * kMargin};
    };
    switch (job.paper) {
    case FigurePaper::a4:
        return page(a4Width, a4Height);
    case FigurePaper::a4Landscape:
        return page(a4Height, a4Width);
    case FigurePaper::letter:
        return page(612, 792);
    case FigurePaper::letterLandscape:
        return page(792, 612);
    case FigurePaper::free:
        break;
    }
    const double width = job.view ? job.view->width : job.width;
    const double height = job.view ? job.view->height : job.height;
    return {width, height, 0, 0, width, height};
}

std::variant<std::vector<DisplayList>, FigureFault> figuresOf(const Result& result, const FigureJob& job) {
    const PageRoom room = roomOf(job);
    const auto view = viewFor(result, job, room.height - (job.unitsPerCm ? kBarRoom : 0));
    if (const auto* fault = std::get_if<FigureFault>(&view))
        return *fault;
    const QtTextMeasure measure;
    std::vector<DisplayList> lists;
    for (const Stage stage : stagesOf(job)) {
        FigureOptions options = optionsFor(job, stage);
        const bool isOnTheWay = options.stage < Stage::all;
        if (isOnTheWay && !carriesNoSketch(job))
            options.names = namesBy(options.stage, result, options.solution);
        DisplayList list =
            compose(result.sketch, result.solved, result.construction, std::get<View>(view), options, measure)
                .list;
        if (job.unitsPerCm)
            addScaleBar(list, kBarRoom, *job.unitsPerCm, result.sketch, measure);
        if (!job.names)
            leaveOutNames(list, measure);
        if (carriesNoSketch(job))
            leaveOutWords(list, job.names);
        if (job.transparent)
            leaveOutSheet(list);
        lists.push_back(std::move(list));
    }
    return lists;
}

QString withSuffix(const QString& path, const QString& suffix) {
    const qsizetype ending = path.lastIndexOf(QLatin1Char('.'));
    return path.left(ending) + suffix + path.mid(ending);
}

QStringList figureNames(const QString& path, const FigureJob& job) {
    QStringList names;
    for (const QString& suffix : suffixesOf(job))
        names << withSuffix(path, suffix);
    return names;
}

std::variant<std::vector<FigureFile>, FigureFault> figureFiles(const Result& result, const FigureJob& job) {
    const auto drawn = figuresOf(result, job);
    if (const auto* fault = std::get_if<FigureFault>(&drawn))
        return *fault;
    const auto& lists = std::get<std::vector<DisplayList>>(drawn);
    std::vector<FigureFile> files;
    if (job.form == FigureForm::pdf) {
        const PageRoom room = roomOf(job);
        files.push_back(
            {{}, toPdf(lists, themeOf(job.theme), room.pageWidth, room.pageHeight, {room.left, room.top})});
        return files;
    }
    const QStringList suffixes = suffixesOf(job);
    for (std::size_t i = 0; i < lists.size(); ++i)
        files.push_back({suffixes[static_cast<qsizetype>(i)], bytesOf(result, job, lists[i])});
    for (const FigureFile& file : files)
        if (file.bytes.isEmpty())
            return QStringLiteral("the figure is too large to draw; take fewer pixels or a smaller sheet");
    return files;
}

} // namespace tailpoint
