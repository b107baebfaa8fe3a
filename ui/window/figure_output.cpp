// SPDX-License-Identifier: MIT
#include "ui/window/figure_output.h"

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/panel/copied_values.h"

#include <QImage>
#include <QMimeData>

namespace tailpoint {

namespace {

QByteArray bytesOf(const Result& result, FigureJob& job, FigureForm form) {
    job.form = form;
    const auto files = figureFiles(result, job);
    const auto* made = std::get_if<std::vector<FigureFile>>(&files);
    return made == nullptr || made->empty() ? QByteArray() : made->front().bytes;
}

} // namespace

FigureJob figureAsSeen(const Canvas& canvas) {
    FigureJob job;
    job.options = canvas.figureOptions();
    job.options.note = true; // nothing beside the figure tells the answer there
    job.theme = canvas.theme();
    job.view = canvas.view();
    job.givenOnly = canvas.document().withholdsAnswer();
    return job;
}

QByteArray figurePng(const Result& result, FigureJob job) {
    job.allStages = false;
    return bytesOf(result, job, FigureForm::png);
}

QMimeData* figureForClipboard(const Result& result, FigureJob job, const ExplainOptions& explained,
                              const Provenance& from) {
    job.allStages = false;
    auto* data = new QMimeData;
    data->setData(QStringLiteral("image/svg+xml"), bytesOf(result, job, FigureForm::svg));
    data->setImageData(QImage::fromData(bytesOf(result, job, FigureForm::png)));
    if (!carriesNoSketch(job))
        data->setText(valuesAsText(result, explained, from));
    return data;
}

} // namespace tailpoint
