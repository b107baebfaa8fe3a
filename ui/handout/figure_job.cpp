// SPDX-License-Identifier: MIT
#include "ui/handout/figure_job.h"

#include "core/construct/pairs.h"
#include "core/figure/hold.h"
#include "core/sketch/shown.h"
#include "ui/handout/figure_parts.h"
#include "ui/render/render.h"
#include "ui/render/tikz.h"

#include <QBuffer>
#include <algorithm>
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

/// Sums on the way, parallelogram by parallelogram, and the angles that they make: numbers to be found.
std::vector<QuantityId> foundOnTheWay(const Sketch& sketch) {
    std::vector<QuantityId> found;
    for (std::size_t n = 1; n < std::min(sketch.forces.size(), kMostPaired); ++n) {
        const VectorId sum = partialVector(n);
        found.push_back(magnitudeId(sum));
        found.push_back(betweenId(n == 1 ? forceVector(0) : partialVector(n - 1), forceVector(n), n));
        found.push_back(oppositeId(n + 1 == sketch.forces.size() ? kSumVector : sum, n));
    }
    return found;
}

/// Also where names are left out: then the values stand where they would.
bool hasAngleNames(const FigureJob& job) {
    return job.options.values && !drawsGivenOnly(job);
}

FigureOptions optionsFor(const FigureJob& job, Stage stage) {
    FigureOptions options = job.options;
    options.highlighted = kNoVector;
    options.bearings = true;
    options.names.clear();
    options.stage = drawsGivenOnly(job) ? std::min(stage, Stage::directions) : stage;
    options.note = options.note && !carriesNoSketch(job); // it names the answer
    options.legend = options.legend && !carriesNoSketch(job);
    options.tolerated.reset();
    if (carriesNoSketch(job))
        options.cases.clear();
    return options;
}

/// None on an exercise: it is a student's.
const std::vector<std::string>& recordOf(const FigureJob& job) {
    static const std::vector<std::string> none;
    return drawsGivenOnly(job) || carriesNoSketch(job) ? none : job.record;
}

/// Until something is found on it a figure is an exercise.
FigureOptions asExercise(const FigureJob& job, FigureOptions options, const Sketch& sketch) {
    options.solution = 0;
    options.asGiven = true;
    if (job.options.pair != kNoPairs)
        options.hidden = foundOnTheWay(sketch);
    if (hasAngleNames(job))
        options.names = namesOfGiven(sketch, options.stage);
    return options;
}

std::variant<View, FigureFault> viewFor(const Result& result, const FigureJob& job,
                                        const FigureOptions& options, double height) {
    const PageRoom room = roomOf(job);
    const QtTextMeasure measure;
    const View fitted =
        fittedView(result.sketch, result.solved, result.construction, options, room.width, height, &measure);
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

/// Draws one stage after the other. What is not found yet is drawn from the sketch alone, also its view.
class Drafter {
public:
    Drafter(const Result& result, const FigureJob& job)
        : m_result(result), m_question(unanswered(result.sketch)), m_job(job) {}

    std::variant<DisplayList, FigureFault> draw(Stage stage) const {
        FigureOptions options = optionsFor(m_job, stage);
        const bool answers = tellsAnswer(options);
        if (!answers)
            options = asExercise(m_job, std::move(options), m_result.sketch);
        else
            options = withTolerances(std::move(options));
        if (answers && hasAngleNames(m_job))
            options.names = m_result.angleNames(options.solution, options.pair != kNoPairs);
        const auto view = answers ? answerView() : exerciseView();
        if (const auto* fault = std::get_if<FigureFault>(&view))
            return *fault;
        return drawn(answers ? m_result : m_question, std::get<View>(view), options);
    }

private:
    FigureOptions withTolerances(FigureOptions options) const {
        options.tolerated = m_result.tolerated(options.solution);
        return options;
    }
    double height() const { return roomOf(m_job).height - (m_job.unitsPerCm ? kBarRoom : 0); }

    std::variant<View, FigureFault> exerciseView() const {
        const FigureOptions options = asExercise(m_job, optionsFor(m_job, Stage::given), m_result.sketch);
        return viewFor(m_question, m_job, options, height());
    }

    /// Of several stages the first ones set the view, if all that follows stays on their sheet.
    std::variant<View, FigureFault> answerView() const {
        const FigureOptions options = withTolerances(optionsFor(m_job, Stage::all));
        if (m_job.allStages) {
            const auto first = exerciseView();
            const Seen seen{m_result.sketch, m_result.solved, m_result.construction, options, &m_measure};
            if (const auto* view = std::get_if<View>(&first); view && isWhole(seen, *view))
                return *view;
        }
        if (m_job.view && m_job.paper == FigurePaper::free && !m_job.unitsPerCm)
            return *m_job.view;
        return viewFor(m_result, m_job, withTolerances(m_job.options), height());
    }

    DisplayList drawn(const Result& source, const View& view, const FigureOptions& options) const {
        DisplayList list =
            compose(source.sketch, source.solved, source.construction, view, options, m_measure).list;
        if (m_job.unitsPerCm)
            addScaleBar(list, kBarRoom, *m_job.unitsPerCm, source.sketch, m_measure);
        if (tellsAnswer(options) && !recordOf(m_job).empty())
            addRecord(list, recordOf(m_job), m_measure);
        if (!m_job.names)
            leaveOutNames(list, m_measure);
        if (carriesNoSketch(m_job))
            leaveOutWords(list, m_job.names);
        if (m_job.transparent)
            leaveOutSheet(list);
        return list;
    }

    const Result& m_result;
    Result m_question;
    const FigureJob& m_job;
    QtTextMeasure m_measure;
};

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
        return toSvg(list, theme,
                     carriesNoSketch(job) || !job.tolerances ? QByteArray() : writeSketch(result.sketch));
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

bool drawsGivenOnly(const FigureJob& job) {
    return job.givenOnly || (!job.options.values && !job.stageAsked);
}

bool carriesNoSketch(const FigureJob& job) {
    return !job.names || !job.options.values || job.givenOnly;
}

bool losesSketch(const FigureJob& job) {
    return carriesNoSketch(job) || !job.tolerances || job.form != FigureForm::svg;
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
    const auto strip = [&](double width) {
        const auto& record = recordOf(job);
        return record.empty() ? 0.0 : recordRoom(record, width, QtTextMeasure{});
    };
    const auto page = [&](double width, double height) {
        const double room = width - 2 * kMargin;
        return PageRoom{width, height, kMargin, kMargin, room, height - 2 * kMargin - strip(room)};
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
    if (job.view) // as it is seen: the strip comes to it
        return {job.view->width, job.view->height + strip(job.view->width), 0, 0, job.view->width,
                job.view->height};
    return {job.width, job.height, 0, 0, job.width, job.height - strip(job.width)};
}

std::vector<std::string> figureRecord(const Sketch& sketch, const Provenance& from) {
    Sketch unnamed = sketch;
    unnamed.titleBlock = {};
    return recordLines(unnamed, from);
}

std::variant<std::vector<DisplayList>, FigureFault> figuresOf(const Result& result, const FigureJob& job) {
    const Drafter drafter(result, job);
    std::vector<DisplayList> lists;
    for (const Stage stage : stagesOf(job)) {
        auto drawn = drafter.draw(stage);
        if (const auto* fault = std::get_if<FigureFault>(&drawn))
            return *fault;
        lists.push_back(std::move(std::get<DisplayList>(drawn)));
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
