// SPDX-License-Identifier: MIT
#include "ui/window/export_dialog.h"

#include "core/quantity/decimals.h"
#include "core/quantity/typed.h"
#include "ui/canvas/canvas.h"
#include "ui/files/provenance.h"
#include "ui/window/figure_output.h"
#include "ui/window/figure_preview.h"
#include "ui/window/png_size.h"
#include "ui/window/settings.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMainWindow>
#include <QPushButton>

namespace tailpoint {

namespace {

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

int at(Stage stage) {
    return static_cast<int>(stage);
}

QCheckBox* checkOf(const char* name, const QString& title) {
    auto* box = new QCheckBox(title);
    box->setObjectName(QLatin1String(name));
    return box;
}

} // namespace

ExportDialog::ExportDialog(const WindowParts& parts)
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
      m_size(comboOf("exportSize", {})),
      m_theme(comboOf("exportTheme", {{tr("Paper"), int(ThemeName::paper)},
                                      {tr("Slate"), int(ThemeName::slate)},
                                      {tr("High contrast"), int(ThemeName::contrast)}})),
      m_stage(comboOf("exportStage", {{tr("The whole figure"), -1},
                                      {tr("All stages, one page or file each"), -2},
                                      {tr("Given forces"), at(Stage::given)},
                                      {tr("… with their directions"), at(Stage::directions)},
                                      {tr("… with the angle between the tails"), at(Stage::between)},
                                      {tr("… with the construction"), at(Stage::construction)},
                                      {tr("… with its angles"), at(Stage::interior)},
                                      {tr("… with what is found, named"), at(Stage::found)},
                                      {tr("… with its magnitudes"), at(Stage::magnitudes)},
                                      {tr("… with the triangle's angles"), at(Stage::triangle)}})),
      m_trueScale(checkOf("exportTrueScale", tr("&True scale: 1 cm ="))),
      m_values(checkOf("exportValues", tr("&Values"))), m_names(checkOf("exportNames", tr("&Names"))),
      m_given(checkOf("exportGiven", tr("&Given forces only"))),
      m_transparent(checkOf("exportTransparent", tr("Nothing &behind it"))), m_perCm(new QLineEdit),
      m_fault(new QLabel), m_leftOut(new QLabel), m_stillDrawn(new QLabel),
      m_save(new QPushButton(tr("&Save as…"))), m_copy(new QPushButton(tr("&Copy"))),
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
    m_size->setEditable(true);
    m_size->setInsertPolicy(QComboBox::NoInsert);
    m_size->addItems(usualPngSizes());
    rows->addRow(tr("PNG si&ze"), m_size);
    rows->addRow(tr("Th&eme"), m_theme);
    rows->addRow(QString(), m_transparent);
    rows->addRow(tr("St&age"), m_stage);
    rows->addRow(tr("Show"), shown);
    rows->addRow(QString(), m_given);
    rows->addRow(m_leftOut);
    rows->addRow(m_stillDrawn);
    rows->addRow(m_fault);
}

void ExportDialog::build() {
    m_fault->setObjectName(QStringLiteral("exportFault"));
    m_fault->setForegroundRole(QPalette::BrightText);
    m_fault->setWordWrap(true);
    m_leftOut->setObjectName(QStringLiteral("exportLeftOut"));
    m_leftOut->setWordWrap(true);
    m_values->setToolTip(tr("The numbers at arrows and angles; without them the arrows stay"));
    m_given->setToolTip(tr("Leaves out everything that is found, arrows and numbers: for an exercise"));
    m_stillDrawn->setObjectName(QStringLiteral("exportStillDrawn"));
    m_stillDrawn->setWordWrap(true);
    m_stillDrawn->setText(tr("What is found is drawn without numbers, and can be measured. Tick Given forces "
                             "only to leave it out."));
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
    for (QComboBox* box : {m_form, m_paper, m_theme, m_stage})
        connect(box, &QComboBox::currentIndexChanged, this, again);
    connect(m_size, &QComboBox::currentTextChanged, this, again);
    for (QCheckBox* box : {m_trueScale, m_values, m_names, m_given, m_transparent})
        connect(box, &QCheckBox::toggled, this, again);
    connect(m_stage, &QComboBox::activated, m_leftOut, &QWidget::hide); // seen now
    for (QCheckBox* box : {m_values, m_names, m_given})
        connect(box, &QCheckBox::clicked, m_leftOut, &QWidget::hide);
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
    const auto isOn = [&](const char* key, bool usual) {
        return last.value(QLatin1String(key), usual).toBool();
    };
    choose(m_form, last.value(QStringLiteral("form"), QStringLiteral("svg")));
    choose(m_paper, last.value(QStringLiteral("paper"), -1));
    m_size->setEditText(last.value(QStringLiteral("size"), usualPngSizes().at(1)).toString());
    choose(m_theme, last.value(QStringLiteral("theme"), int(m_parts.canvas.theme())));
    choose(m_stage, last.value(QStringLiteral("stage"), -1));
    m_transparent->setChecked(isOn("transparent", false));
    m_values->setChecked(isOn("values", true));
    m_names->setChecked(isOn("names", true));
    m_given->setChecked(isOn("given", false));
    takeScale(last.value(QStringLiteral("scale")).toString());
    tellLeftOut();
}

/// A scale of last time is taken where this sketch fits the paper at it, too. Empty: none was asked for.
void ExportDialog::takeScale(const QString& last) {
    m_perCm->setText(last);
    m_trueScale->setChecked(!last.isEmpty());
    QString fault;
    unitsPerCm(fault);
    if (!last.isEmpty() && fault.isEmpty() &&
        std::holds_alternative<std::vector<DisplayList>>(figuresOf(m_parts.document.result(), job())))
        return;
    m_trueScale->setChecked(false);
    m_perCm->setText(QString::fromStdString(shortest(divisionOf(m_parts.canvas.view())) + ' ' +
                                            std::string(symbolOf(m_parts.document.sketch().forceUnit))));
}

/// What was left out last time is left out again; nobody should hand that out without having seen it.
void ExportDialog::tellLeftOut() {
    QStringList parts;
    if (!m_values->isChecked())
        parts << tr("values");
    if (!m_names->isChecked())
        parts << tr("names");
    if (m_given->isChecked())
        parts << tr("all but the given forces");
    else if (m_stage->currentData().toInt() >= 0)
        parts << tr("later stages");
    m_leftOut->setText(tr("As last time, without %1.").arg(parts.join(tr(" and "))));
    m_leftOut->setVisible(!parts.isEmpty());
}

void ExportDialog::remember() {
    m_parts.settings.setExportChoices(
        {{QStringLiteral("form"), m_form->currentData()},
         {QStringLiteral("paper"), m_paper->currentData()},
         {QStringLiteral("size"), m_size->currentText()},
         {QStringLiteral("theme"), m_theme->currentData()},
         {QStringLiteral("stage"), m_stage->currentData()},
         {QStringLiteral("transparent"), m_transparent->isChecked()},
         {QStringLiteral("values"), m_values->isChecked()},
         {QStringLiteral("names"), m_names->isChecked()},
         {QStringLiteral("given"), m_given->isChecked()},
         {QStringLiteral("scale"), m_trueScale->isChecked() ? m_perCm->text() : QString()}});
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
    FigureJob job = figureAsSeen(m_parts.canvas);
    job.form = figureFormFrom(m_form->currentData().toString()).value_or(FigureForm::svg);
    job.options.values = m_values->isChecked();
    job.theme = static_cast<ThemeName>(m_theme->currentData().toInt());
    const int paper = m_paper->currentData().toInt();
    job.paper = paper < 0 ? FigurePaper::free : static_cast<FigurePaper>(paper);
    if (paper >= 0)
        job.view.reset();
    if (const auto size = pngSizeFrom(m_size->currentText())) {
        job.pixelsPerPoint = size->dotsPerInch / 72;
        job.pixelWidth = size->pixelWidth;
    }
    job.transparent = m_transparent->isChecked();
    job.names = m_names->isChecked();
    job.givenOnly = job.givenOnly || m_given->isChecked();
    const int stage = m_stage->currentData().toInt();
    job.allStages = stage == -2;
    job.options.stage = stage < 0 ? Stage::all : static_cast<Stage>(stage);
    QString fault;
    job.unitsPerCm = unitsPerCm(fault);
    if (job.form == FigureForm::pdf)
        job.record = record();
    return job;
}

std::vector<std::string> ExportDialog::record() const {
    return figureRecord(m_parts.document.sketch(), provenanceOf(m_parts.document.path()));
}

/// No number of it, and yet the answer to scale.
bool ExportDialog::drawsAnswerUnnumbered(const FigureJob& job) const {
    const bool isDrawn = !job.givenOnly && (job.allStages || tellsAnswer(job.options));
    return !job.options.values && isDrawn && !m_parts.document.result().solved.solutions.empty();
}

void ExportDialog::refresh() {
    QString fault;
    unitsPerCm(fault);
    const FigureJob now = job();
    m_size->setEnabled(now.form == FigureForm::png);
    if (now.form == FigureForm::png && !pngSizeFrom(m_size->currentText()))
        fault = tr("A PNG's size is read like 300 dots per inch or 1920 pixels wide.");
    m_stage->setEnabled(!now.givenOnly);
    m_given->setEnabled(!m_parts.document.withholdsAnswer());
    m_stillDrawn->setVisible(drawsAnswerUnnumbered(now));
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

} // namespace tailpoint
