#include "ui/window/figure_output.h"

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/handout/figure_job.h"
#include "ui/panel/answer_text.h"

#include <QImage>
#include <QMimeData>

namespace tailpoint {

namespace {

FigureJob jobFor(const Canvas& canvas, FigureForm form) {
    FigureJob job;
    job.form = form;
    job.options = canvas.figureOptions();
    job.options.note = true; // nothing beside the figure tells the answer there
    job.theme = canvas.theme();
    job.view = canvas.view();
    job.width = canvas.view().width;
    job.height = canvas.view().height;
    return job;
}

QByteArray bytesOf(const SketchDocument& document, const Canvas& canvas, FigureForm form) {
    const auto files = figureFiles(document.result(), jobFor(canvas, form));
    const auto* made = std::get_if<std::vector<FigureFile>>(&files);
    return made == nullptr || made->empty() ? QByteArray() : made->front().bytes;
}

} // namespace

QMimeData* figureForClipboard(const SketchDocument& document, const Canvas& canvas) {
    auto* data = new QMimeData;
    data->setData(QStringLiteral("image/svg+xml"), bytesOf(document, canvas, FigureForm::svg));
    data->setImageData(QImage::fromData(bytesOf(document, canvas, FigureForm::png)));
    data->setText(valuesAsText(document.result()));
    return data;
}

} // namespace tailpoint
