// SPDX-License-Identifier: MIT
// What the export dialog makes of its choices: files, the clipboard, printed pages.
#include "ui/files/files.h"
#include "ui/files/provenance.h"
#include "ui/files/sketch_json.h"
#include "ui/panel/panel.h"
#include "ui/render/render.h"
#include "ui/window/export_dialog.h"
#include "ui/window/figure_output.h"
#include "ui/window/save_name.h"

#include <QClipboard>
#include <QComboBox>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMimeData>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrinter>

namespace tailpoint {

namespace {

constexpr double kMargin = 36; // points round the figure on a printed page

/// A sketch that was opened out of a picture may have no other place.
bool holdsSketch(const QString& path) {
    const auto bytes = readBytes(path);
    const auto* found = std::get_if<QByteArray>(&bytes);
    return found != nullptr && std::holds_alternative<Sketch>(readSketch(*found));
}

} // namespace

void ExportDialog::chooseAndSave() {
    const QString ending = m_form->currentData().toString();
    SaveName save{tr("Save the figure"), m_name + u'.' + ending,
                  tr("%1 (*.%2)").arg(ending.toUpper(), ending), ending};
    save.files = [this](const QString& name) {
        const auto form = figureFormFrom(endingMeantBy(name));
        FigureJob named = job();
        named.form = form.value_or(named.form);
        return form ? figureNames(name, named) : QStringList(); // no form: saveTo() says so
    };
    const auto name = askSaveName(this, save);
    if (name && saveTo(*name))
        accept();
}

/// The file whose only sketch would be gone; empty: none.
QString ExportDialog::lostSketch(const QStringList& names, const FigureJob& wanted) const {
    if (!losesSketch(wanted))
        return {};
    const QString path = m_parts.document.path();
    if (!path.isEmpty())
        return replacedInput(names, path);
    for (const QString& name : names)
        if (holdsSketch(name))
            return name;
    return {};
}

bool ExportDialog::saveTo(QString path) {
    if (endingMeantBy(path).isEmpty())
        path += u'.' + m_form->currentData().toString();
    const auto form = figureFormFrom(QFileInfo(path).suffix().toLower());
    if (!form) {
        complain(tr("The name must end in .svg, .pdf, .png or .tex."));
        return false;
    }
    m_form->setCurrentIndex(m_form->findData(endingOf(*form)));
    const FigureJob wanted = job();
    if (const QString lost = lostSketch(figureNames(path, wanted), wanted); !lost.isEmpty()) {
        complain(
            tr("%1 carries a sketch, and this figure would not. Save the sketch first, or choose another "
               "name.")
                .arg(QFileInfo(lost).fileName()));
        return false;
    }
    const auto files = figureFiles(m_parts.document.result(), wanted);
    if (const auto* fault = std::get_if<FigureFault>(&files)) {
        complain(*fault);
        return false;
    }
    std::vector<FileBytes> named;
    for (const FigureFile& file : std::get<std::vector<FigureFile>>(files))
        named.push_back({withSuffix(path, file.suffix), file.bytes});
    if (const auto failed = saveTogether(named)) {
        complain(QFileInfo(failed->path).fileName() + QStringLiteral(": ") + failed->error.line());
        return false;
    }
    remember();
    const bool several = std::get<std::vector<FigureFile>>(files).size() > 1;
    emit said(
        several ? tr("The figures are in %1 and those beside it").arg(withSuffix(path, QStringLiteral("-0")))
                : tr("The figure is in %1").arg(path));
    return true;
}

void ExportDialog::copy() {
    QGuiApplication::clipboard()->setMimeData(figureForClipboard(m_parts.document.result(), job(),
                                                                 m_parts.panel.explainOptions(),
                                                                 provenanceOf(m_parts.document.path())));
    remember();
    emit said(tr("The figure is on the clipboard."));
}

bool ExportDialog::paintOn(QPrinter& printer) {
    FigureJob now = job();
    const QRectF page = printer.pageLayout().fullRect(QPageLayout::Point);
    now.paper = FigurePaper::free;
    now.view.reset();
    now.width = page.width() - 2 * kMargin;
    now.record = record();
    now.height = page.height() - 2 * kMargin;
    if (now.theme == ThemeName::paper)
        now.transparent = true; // the paper is the sheet
    const auto drawn = figuresOf(m_parts.document.result(), now);
    if (const auto* fault = std::get_if<FigureFault>(&drawn)) {
        complain(*fault);
        return false;
    }
    QPainter painter(&printer);
    if (!painter.isActive())
        return false;
    painter.scale(printer.resolution() / 72.0, printer.resolution() / 72.0);
    painter.translate(kMargin, kMargin);
    const auto& lists = std::get<std::vector<DisplayList>>(drawn);
    const Theme& theme = now.theme == ThemeName::paper ? printTheme() : themeOf(now.theme);
    for (std::size_t i = 0; i < lists.size(); ++i) {
        if (i > 0)
            printer.newPage();
        paint(painter, lists[i], theme);
    }
    return true;
}

void ExportDialog::preview() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setFullPage(true);
    printer.setPageOrientation(QPageLayout::Landscape);
    QPrintPreviewDialog dialog(&printer, this);
    dialog.setObjectName(QStringLiteral("figurePrintPreview"));
    connect(&dialog, &QPrintPreviewDialog::paintRequested, this, [this](QPrinter* on) { paintOn(*on); });
    if (dialog.exec() == QDialog::Accepted)
        remember();
}

} // namespace tailpoint
