// SPDX-License-Identifier: MIT
#include "app/gui/figure_options.h"

#include "app/common.h"
#include "app/many.h"
#include "core/construct/pairs.h"
#include "ui/files/files.h"

#include <QFileInfo>

namespace tailpoint {

namespace {

constexpr double kLargestSheet = 14'400; ///< points; beyond it PDF readers give up

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

/// Of one figure by the ending of its file, of one each in a folder by --as.
std::optional<QString> takeOut(const Arguments& arguments, Wanted& wanted) {
    wanted.out = arguments.value(QStringLiteral("-o"));
    const QString as = arguments.value(QStringLiteral("--as"));
    if (isForMany(arguments)) {
        wanted.job.form = figureFormFrom(as).value_or(FigureForm::svg);
        return std::nullopt;
    }
    if (wanted.out.isEmpty())
        return QStringLiteral("-o is missing; name a file that ends in .svg, .pdf, .png or .tex");
    if (!as.isNull())
        return QStringLiteral("--as goes with -o DIR; of one FILE the ending of its output says the form");
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
    job.stageAsked = !stage.isNull();
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
    job.tolerances = !hidesTolerances(arguments);
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
    return losesSketch(wanted.job) && !isForMany(arguments)
               ? replacedInput(figureNames(wanted.out, wanted.job), arguments.files.value(0))
               : QString();
}

} // namespace

QList<Option> figureOptions() {
    const auto words = [](const char* text) { return QString::fromLatin1(text).split(QLatin1Char('|')); };
    return {{QStringLiteral("-o"), {}},
            {QStringLiteral("--as"), words("svg|pdf|png|tex")},
            {QStringLiteral("--construction"), words("parallelogram|triangle|polygon")},
            {QStringLiteral("--pairs"), {}},
            {QStringLiteral("--method"), words("triangle|components")},
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
            {QStringLiteral("--given-only"), {}, true},
            {QLatin1String(kTolerancesOption), words("shown|hidden")},
            {QStringLiteral("--case"), {}},
            {QStringLiteral("--with-cases"), {}, true}};
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

} // namespace tailpoint
