#include "ui/window/export_dialog.h"

#include "core/quantity/decimals.h"
#include "core/quantity/typed.h"
#include "ui/canvas/canvas.h"
#include "ui/document/files.h"
#include "ui/panel/answer_text.h"
#include "ui/render/render.h"
#include "ui/window/settings.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QMainWindow>
#include <QMimeData>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QPushButton>

namespace tailpoint {

namespace {

constexpr double kMargin = 36; // points round the figure on a printed page

void choose(QComboBox* box, const QVariant& data) {
    box->setCurrentIndex(std::max(0, box->findData(data)));
}

QComboBox* comboOf(const char* name, const QList<QPair<QString, QVariant>>& items) {
    auto* box = new QComboBox;
    box->setObjectName(QLatin1String(name));
    for (const auto& [title, data] : items)
        box->addItem(title, data);
    return box;
}

QCheckBox* checkOf(const char* name, const QString& title) {
    auto* box = new QCheckBox(title);
    box->setObjectName(QLatin1String(name));
    return box;
}

QString withSuffix(const QString& path, const QString& suffix) {
    const qsizetype ending = path.lastIndexOf(QLatin1Char('.'));
    return path.left(ending) + suffix + path.mid(ending);
}

} // namespace

FigurePreview::FigurePreview(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("exportPreview"));
    setAccessibleName(tr("Preview of the figure"));
    setMinimumSize(320, 240);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void FigurePreview::show(std::vector<DisplayList> lists, const FigureJob& job) {
    m_lists = std::move(lists);
    m_job = job;
    update();
}

QSize FigurePreview::sizeHint() const {
    return {520, 400};
}

void FigurePreview::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_lists.empty())
        return;
    const PageRoom room = roomOf(m_job);
    const double scale = std::min((width() - 2) / room.pageWidth, (height() - 2) / room.pageHeight);
    painter.translate((width() - scale * room.pageWidth) / 2, (height() - scale * room.pageHeight) / 2);
    painter.scale(scale, scale);
    const QRectF page(0, 0, room.pageWidth, room.pageHeight);
    const Theme& theme = themeOf(m_job.theme);
    // Behind a transparent figure of a dark theme stands a dark slide, most likely.
    painter.fillRect(page, m_job.transparent ? theme.sheet : QColor(Qt::white));
    painter.setPen(QPen(palette().color(QPalette::Mid), 0));
    painter.drawRect(page);
    painter.setClipRect(page);
    painter.translate(room.left, room.top);
    paint(painter, m_lists.back(), theme);
}

ExportDialog::ExportDialog(const Parts& parts)
    : QDialog(&parts.window), m_parts(parts), m_preview(new FigurePreview),
      m_form(comboOf("exportForm", {{tr("SVG (opens as a sketch again)"), QStringLiteral("svg")},
                                    {tr("PDF"), QStringLiteral("pdf")},
                                    {tr("PNG"), QStringLiteral("png")},
                                    {tr("TikZ, for LaTeX"), QStringLiteral("tex")}})),
      m_paper(comboOf("exportPaper", {{tr("As on the sheet"), -1},
                                      {tr("Plain, 254 mm by 169 mm"), int(FigurePaper::free)},
                                      {tr("A4, upright"), int(FigurePaper::a4)},
                                      {tr("A4, across"), int(FigurePaper::a4Landscape)},
                                      {tr("Letter, upright"), int(FigurePaper::letter)},
                                      {tr("Letter, across"), int(FigurePaper::letterLandscape)}})),
      m_dots(comboOf(
          "exportDots",
          {{tr("150 dots per inch"), 150}, {tr("300 dots per inch"), 300}, {tr("600 dots per inch"), 600}})),
      m_theme(comboOf("exportTheme", {{tr("Paper"), int(ThemeName::paper)},
                                      {tr("Slate"), int(ThemeName::slate)},
                                      {tr("High contrast"), int(ThemeName::contrast)}})),
      m_stage(comboOf("exportStage", {{tr("The whole figure"), -1},
                                      {tr("All stages, one page or file each"), -2},
                                      {tr("Given forces"), stages::given},
                                      {tr("… with their directions"), stages::directions},
                                      {tr("… with the angle between the tails"), stages::between},
                                      {tr("… with the construction"), stages::construction},
                                      {tr("… with its angles"), stages::interior},
                                      {tr("… with what is found, named"), stages::found},
                                      {tr("… with its magnitudes"), stages::magnitudes},
                                      {tr("… with the triangle's angles"), stages::triangle}})),
      m_trueScale(checkOf("exportTrueScale", tr("&True scale: 1 cm ="))),
      m_values(checkOf("exportValues", tr("&Values"))), m_names(checkOf("exportNames", tr("&Names"))),
      m_given(checkOf("exportGiven", tr("&Given forces only"))),
      m_transparent(checkOf("exportTransparent", tr("Nothing &behind it"))), m_perCm(new QLineEdit),
      m_fault(new QLabel), m_save(new QPushButton(tr("&Save as…"))), m_copy(new QPushButton(tr("&Copy"))),
      m_print(new QPushButton(tr("&Print…"))) {
    setObjectName(QStringLiteral("exportDialog"));
    setWindowTitle(tr("Export figure"));
    build();
}

void ExportDialog::addRows(QFormLayout* rows) {
    m_perCm->setObjectName(QStringLiteral("exportPerCm"));
    m_perCm->setAccessibleName(tr("Force in one centimetre"));
    auto* scale = new QHBoxLayout;
    scale->setSpacing(8);
    scale->addWidget(m_trueScale);
    scale->addWidget(m_perCm, 1);
    auto* shown = new QHBoxLayout;
    shown->setSpacing(18);
    shown->addWidget(m_values);
    shown->addWidget(m_names);
    shown->addStretch(1);
    rows->addRow(tr("&Form"), m_form);
    rows->addRow(tr("S&heet"), m_paper);
    rows->addRow(QString(), scale);
    rows->addRow(tr("&Resolution"), m_dots);
    rows->addRow(tr("Th&eme"), m_theme);
    rows->addRow(QString(), m_transparent);
    rows->addRow(tr("St&age"), m_stage);
    rows->addRow(tr("Show"), shown);
    rows->addRow(QString(), m_given);
    rows->addRow(m_fault);
}

void ExportDialog::build() {
    m_fault->setObjectName(QStringLiteral("exportFault"));
    m_fault->setForegroundRole(QPalette::BrightText);
    m_fault->setWordWrap(true);
    auto* rows = new QFormLayout;
    rows->setHorizontalSpacing(14);
    rows->setVerticalSpacing(9);
    addRows(rows);
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(m_save, QDialogButtonBox::AcceptRole);
    buttons->addButton(m_copy, QDialogButtonBox::ActionRole);
    buttons->addButton(m_print, QDialogButtonBox::ActionRole);
    buttons->addButton(QDialogButtonBox::Close)->setIcon({});
    m_save->setObjectName(QStringLiteral("exportSave"));
    m_copy->setObjectName(QStringLiteral("exportCopy"));
    m_print->setObjectName(QStringLiteral("exportPrint"));
    m_save->setDefault(true);
    auto* side = new QVBoxLayout;
    side->addLayout(rows);
    side->addStretch(1);
    auto* both = new QHBoxLayout;
    both->setSpacing(20);
    both->addWidget(m_preview, 1);
    both->addLayout(side);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 18, 20, 16);
    all->setSpacing(14);
    all->addLayout(both, 1);
    all->addWidget(buttons);
    m_soon.setSingleShot(true);
    m_soon.setInterval(0);
    connect(&m_soon, &QTimer::timeout, this, &ExportDialog::refresh);
    const auto again = [this] { m_soon.start(); };
    for (QComboBox* box : {m_form, m_paper, m_dots, m_theme, m_stage})
        connect(box, &QComboBox::currentIndexChanged, this, again);
    for (QCheckBox* box : {m_trueScale, m_values, m_names, m_given, m_transparent})
        connect(box, &QCheckBox::toggled, this, again);
    connect(m_perCm, &QLineEdit::textEdited, this, [this, again] {
        m_trueScale->setChecked(true);
        again();
    });
    connect(m_save, &QPushButton::clicked, this, &ExportDialog::chooseAndSave);
    connect(m_copy, &QPushButton::clicked, this, &ExportDialog::copy);
    connect(m_print, &QPushButton::clicked, this, &ExportDialog::preview);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void ExportDialog::ask(const QString& name) {
    m_name = name;
    takeChoices();
    refresh();
    open();
}

void ExportDialog::takeChoices() {
    const QVariantMap last = m_parts.settings.exportChoices();
    choose(m_form, last.value(QStringLiteral("form"), QStringLiteral("svg")));
    choose(m_paper, last.value(QStringLiteral("paper"), -1));
    choose(m_dots, last.value(QStringLiteral("dots"), 300));
    choose(m_theme, last.value(QStringLiteral("theme"), int(m_parts.canvas.theme())));
    m_transparent->setChecked(last.value(QStringLiteral("transparent"), false).toBool());
    // What is left out is chosen for one figure, not for all that come after.
    choose(m_stage, -1);
    m_values->setChecked(true);
    m_names->setChecked(true);
    m_given->setChecked(false);
    m_trueScale->setChecked(false);
    const Sketch& sketch = m_parts.document.sketch();
    m_perCm->setText(QString::fromStdString(shortest(divisionOf(m_parts.canvas.view())) + ' ' +
                                            std::string(symbolOf(sketch.forceUnit))));
}

void ExportDialog::remember() {
    m_parts.settings.setExportChoices({{QStringLiteral("form"), m_form->currentData()},
                                       {QStringLiteral("paper"), m_paper->currentData()},
                                       {QStringLiteral("dots"), m_dots->currentData()},
                                       {QStringLiteral("theme"), m_theme->currentData()},
                                       {QStringLiteral("transparent"), m_transparent->isChecked()}});
}

std::optional<double> ExportDialog::unitsPerCm(QString& fault) const {
    if (!m_trueScale->isChecked())
        return std::nullopt;
    const auto typed =
        parseMagnitude(m_perCm->text().trimmed().toStdString(), m_parts.document.sketch().forceUnit);
    if (const auto* error = std::get_if<TypedError>(&typed)) {
        fault = QString::fromStdString(error->message);
        return std::nullopt;
    }
    const double value = std::get<TypedMagnitude>(typed).value;
    if (!(value > 0))
        fault = tr("One centimetre must stand for a force above 0.");
    return value > 0 ? std::optional(value) : std::nullopt;
}

FigureJob ExportDialog::job() const {
    FigureJob job;
    job.form = figureFormFrom(m_form->currentData().toString()).value_or(FigureForm::svg);
    job.options = m_parts.canvas.figureOptions();
    job.options.note = true; // nothing beside the figure tells the answer there
    job.options.values = m_values->isChecked();
    job.theme = static_cast<ThemeName>(m_theme->currentData().toInt());
    const int paper = m_paper->currentData().toInt();
    job.paper = paper < 0 ? FigurePaper::free : static_cast<FigurePaper>(paper);
    if (paper < 0)
        job.view = m_parts.canvas.view();
    job.pixelsPerPoint = m_dots->currentData().toInt() / 72.0;
    job.transparent = m_transparent->isChecked();
    job.names = m_names->isChecked();
    job.givenOnly = m_given->isChecked();
    const int stage = m_stage->currentData().toInt();
    job.allStages = stage == -2;
    job.options.stage = stage < 0 ? -1 : stage;
    QString fault;
    job.unitsPerCm = unitsPerCm(fault);
    return job;
}

void ExportDialog::refresh() {
    QString fault;
    unitsPerCm(fault);
    const FigureJob now = job();
    m_dots->setEnabled(now.form == FigureForm::png);
    m_stage->setEnabled(!now.givenOnly);
    auto drawn = figuresOf(m_parts.document.result(), now);
    if (auto* lists = std::get_if<std::vector<DisplayList>>(&drawn))
        m_preview->show(std::move(*lists), now);
    else
        fault = std::get<FigureFault>(drawn);
    if (!fault.isEmpty())
        fault[0] = fault[0].toUpper();
    complain(fault);
    for (QPushButton* button : {m_save, m_copy, m_print})
        button->setEnabled(fault.isEmpty());
}

void ExportDialog::complain(const QString& line) {
    m_fault->setText(line);
}

void ExportDialog::chooseAndSave() {
    const QString ending = m_form->currentData().toString();
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the figure"), m_name + u'.' + ending,
                                                      tr("%1 (*.%2)").arg(ending.toUpper(), ending));
    if (!path.isEmpty() && saveTo(path))
        accept();
}

bool ExportDialog::saveTo(QString path) {
    if (QFileInfo(path).suffix().isEmpty())
        path += u'.' + m_form->currentData().toString();
    const auto form = figureFormFrom(QFileInfo(path).suffix().toLower());
    if (!form) {
        complain(tr("The name must end in .svg, .pdf, .png or .tex."));
        return false;
    }
    choose(m_form, endingOf(*form));
    const auto files = figureFiles(m_parts.document.result(), job());
    if (const auto* fault = std::get_if<FigureFault>(&files)) {
        complain(*fault);
        return false;
    }
    for (const FigureFile& file : std::get<std::vector<FigureFile>>(files)) {
        const QString name = withSuffix(path, file.suffix);
        if (const auto error = saveBytes(name, file.bytes)) {
            complain(QFileInfo(name).fileName() + QStringLiteral(": ") + error->line());
            return false;
        }
    }
    remember();
    const bool several = std::get<std::vector<FigureFile>>(files).size() > 1;
    emit said(
        several ? tr("The figures are in %1 and those beside it").arg(withSuffix(path, QStringLiteral("-0")))
                : tr("The figure is in %1").arg(path));
    return true;
}

/// SVG, PNG and the values as text, at once: who pastes takes what suits.
void ExportDialog::copy() {
    FigureJob now = job();
    now.allStages = false;
    auto* mime = new QMimeData;
    const auto put = [&](FigureForm form, const auto& take) {
        now.form = form;
        const auto files = figureFiles(m_parts.document.result(), now);
        if (const auto* made = std::get_if<std::vector<FigureFile>>(&files))
            take(made->front().bytes);
    };
    put(FigureForm::svg,
        [&](const QByteArray& bytes) { mime->setData(QStringLiteral("image/svg+xml"), bytes); });
    put(FigureForm::png, [&](const QByteArray& bytes) { mime->setImageData(QImage::fromData(bytes)); });
    if (now.options.values && now.names && !now.givenOnly)
        mime->setText(valuesAsText(m_parts.document.result()));
    QGuiApplication::clipboard()->setMimeData(mime);
    remember();
    emit said(tr("The figure is on the clipboard."));
}

bool ExportDialog::paintOn(QPrinter& printer) {
    FigureJob now = job();
    const QRectF page = printer.pageLayout().fullRect(QPageLayout::Point);
    now.paper = FigurePaper::free;
    now.view.reset();
    now.width = page.width() - 2 * kMargin;
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
