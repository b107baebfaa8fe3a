#include "ui/window/figure_output.h"

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/panel/answer_text.h"
#include "ui/render/render.h"

#include <QBuffer>
#include <QMimeData>

namespace tailpoint {

namespace {

constexpr double kPngScale = 300.0 / 72.0; // pixels a point: 300 dots an inch

DisplayList figureOf(const SketchDocument& document, const Canvas& canvas) {
    FigureOptions options = canvas.figureOptions();
    options.highlighted = kNoVector;
    options.note = true; // nothing beside the figure tells the answer there
    const Result& result = document.result();
    const QtTextMeasure measure;
    return compose(result.sketch, result.solved, result.construction, canvas.view(), options, measure).list;
}

QByteArray pngOf(const QImage& image) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

} // namespace

std::optional<QByteArray> figureBytes(const SketchDocument& document, const Canvas& canvas,
                                      const QString& kind) {
    const Theme& theme = themeOf(canvas.theme());
    const DisplayList figure = figureOf(document, canvas);
    if (kind == QLatin1String("svg")) {
        return toSvg(figure, theme, writeSketch(document.sketch()));
    }
    if (kind == QLatin1String("pdf")) {
        return toPdf(figure, theme);
    }
    if (kind == QLatin1String("png")) {
        return pngOf(toImage(figure, theme, kPngScale));
    }
    return std::nullopt;
}

QMimeData* figureForClipboard(const SketchDocument& document, const Canvas& canvas) {
    const Theme& theme = themeOf(canvas.theme());
    const DisplayList figure = figureOf(document, canvas);
    auto* data = new QMimeData;
    data->setData(QStringLiteral("image/svg+xml"), toSvg(figure, theme, writeSketch(document.sketch())));
    data->setImageData(toImage(figure, theme, kPngScale));
    data->setText(valuesAsText(document.result()));
    return data;
}

} // namespace tailpoint
