// SPDX-License-Identifier: MIT
#include "ui/sweep/sweep_dialog.h"

#include "core/explain/swept.h"
#include "core/quantity/decimals.h"
#include "core/quantity/typed.h"
#include "ui/document/sketch_document.h"
#include "ui/render/render.h"
#include "ui/style/symbols.h"
#include "ui/sweep/sweep_report.h"
#include "ui/sweep/sweep_view.h"

#include <QAbstractButton>
#include <QBoxLayout>
#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QScreen>
#include <QSpinBox>

namespace tailpoint {

namespace {

constexpr std::size_t kPoints = 10'000;    ///< of the curves at rest
constexpr std::size_t kPointsMoving = 500; ///< while the sheet changes: the grid's own thousand
constexpr int kRest = 150;                 ///< milliseconds until a hand counts as at rest
constexpr double kCopiedScale = 2;         ///< pixels a point

} // namespace

SweepDialog::SweepDialog(SketchDocument& document, std::function<ThemeName()> theme, QWidget* parent)
    : QDialog(parent), m_document(document), m_varied(new QComboBox), m_from(new QLineEdit),
      m_to(new QLineEdit), m_steps(new QSpinBox), m_view(new SweepView(std::move(theme))),
      m_present(new QLabel), m_fault(new QLabel), m_copy(nullptr), m_save(nullptr) {
    setObjectName(QStringLiteral("sweepDialog"));
    setWindowTitle(tr("Sweep"));
    setModal(false);
    build();
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRest);
    connect(&m_rest, &QTimer::timeout, this, [this] { compute(kPoints); });
    connect(m_varied, &QComboBox::activated, this, &SweepDialog::takeVaried);
    for (QLineEdit* field : {m_from, m_to}) {
        connect(field, &QLineEdit::textEdited, this, &SweepDialog::takeEnds);
    }
    connect(&m_document, &SketchDocument::changed, this, &SweepDialog::follow);
    fillVaried();
    takeVaried();
}

void SweepDialog::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 12, 14, 12);
    column->setSpacing(8);
    column->addWidget(buildRow());
    m_fault->setObjectName(QStringLiteral("sweepFault"));
    m_fault->setWordWrap(true);
    m_fault->setForegroundRole(QPalette::BrightText);
    m_fault->hide();
    column->addWidget(m_fault);
    column->addWidget(m_view, 1);
    m_present->setObjectName(QStringLiteral("sweepPresent"));
    m_present->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_present->setWordWrap(true);
    m_present->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_present->setFixedHeight(2 * m_present->fontMetrics().lineSpacing()); // so that nothing moves in a drag
    column->addWidget(m_present);
    column->addWidget(buildButtons());
}

QWidget* SweepDialog::buildRow() {
    auto* holder = new QWidget;
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    const auto add = [row](const QString& title, QWidget* field, const char* name) {
        auto* label = new QLabel(title);
        label->setBuddy(field);
        field->setObjectName(QLatin1String(name));
        row->addWidget(label);
        row->addWidget(field);
    };
    add(tr("&Vary"), m_varied, "sweepVaried");
    add(tr("&from"), m_from, "sweepFrom");
    add(tr("&to"), m_to, "sweepTo");
    add(tr("&steps"), m_steps, "sweepSteps");
    m_steps->setRange(1, static_cast<int>(kMostSweepSteps));
    m_steps->setValue(static_cast<int>(SweepRange{}.steps));
    m_steps->setToolTip(tr("Rows of the values that are copied or saved; the curves have 10,000 points."));
    m_varied->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    row->addStretch(1);
    return holder;
}

QWidget* SweepDialog::buildButtons() {
    auto* buttons = new QDialogButtonBox;
    m_copy = buttons->addButton(tr("&Copy"), QDialogButtonBox::ActionRole);
    m_copy->setObjectName(QStringLiteral("sweepCopy"));
    m_save = buttons->addButton(tr("Save &as…"), QDialogButtonBox::ActionRole);
    m_save->setObjectName(QStringLiteral("sweepSave"));
    buttons->addButton(QDialogButtonBox::Close);
    for (QAbstractButton* button : buttons->buttons()) {
        button->setIcon({});
        qobject_cast<QPushButton*>(button)->setAutoDefault(false); // Return belongs to the fields
    }
    connect(m_copy, &QPushButton::clicked, this, &SweepDialog::copy);
    connect(m_save, &QPushButton::clicked, this, &SweepDialog::chooseAndSave);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    return buttons;
}

void SweepDialog::done(int result) {
    QDialog::done(result);
    emit closed();
}

/// What is chosen stays, by its name, as long as it is given.
void SweepDialog::fillVaried() {
    const Sketch& sketch = m_document.sketch();
    QStringList names;
    for (const Scalar& scalar : variable(sketch)) {
        names << text(wordsOf(scalar, sketch));
    }
    QStringList shown;
    for (int i = 0; i < m_varied->count(); ++i) {
        shown << m_varied->itemText(i);
    }
    if (names == shown) {
        return;
    }
    const QString before = m_varied->currentText();
    m_varied->clear();
    m_varied->addItems(names);
    m_varied->setCurrentIndex(static_cast<int>(std::max<qsizetype>(0, names.indexOf(before))));
    if (m_varied->currentText() != before) {
        takeVaried();
    }
}

std::optional<Scalar> SweepDialog::varied() const {
    const auto all = variable(m_document.sketch());
    const int index = m_varied->currentIndex();
    return index >= 0 && static_cast<std::size_t>(index) < all.size()
               ? std::optional(all[static_cast<std::size_t>(index)])
               : std::nullopt;
}

/// A whole turn, or from nothing to twice what is there.
SweepRange SweepDialog::firstRange(const Scalar& scalar, const Sketch& sketch) {
    const double half = turnIn(sketch.angleUnit) / 2;
    const double now = presentValue(sketch, scalar).value_or(0);
    return scalar.isDirection ? SweepRange{scalar, -half, half}
                              : SweepRange{scalar, 0, now > 0 ? roundedToFigures(2 * now, 2) : 1};
}

void SweepDialog::takeVaried() {
    if (const auto scalar = varied()) {
        m_range = firstRange(*scalar, m_document.sketch());
        if (const auto known = m_ends.constFind(m_varied->currentText()); known != m_ends.constEnd()) {
            m_range.from = known->first;
            m_range.to = known->second;
        }
        showEnds();
    }
    m_shown.reset();
    refuse({});
    follow();
}

void SweepDialog::showEnds() {
    const auto shown = [&](double value) {
        const bool isRound = !m_range.varied.isDirection || m_document.sketch().angleUnit != AngleUnit::rad;
        return onScreen(isRound ? shortest(value) : fixedDecimals(value, 5));
    };
    m_from->setText(shown(m_range.from));
    m_to->setText(shown(m_range.to));
}

std::optional<double> SweepDialog::typedEnd(const QLineEdit& field, QString& fault) const {
    const Sketch& sketch = m_document.sketch();
    const std::string typed = field.text().toStdString();
    if (m_range.varied.isDirection) {
        const auto read = parseDirection(typed, sketch.angleUnit);
        if (const auto* error = std::get_if<TypedError>(&read)) {
            fault = text(error->message);
            return std::nullopt;
        }
        const auto& direction = std::get<TypedDirection>(read);
        if (direction.form != TypedDirection::Form::angle) {
            fault = tr("An angle is wanted here.");
            return std::nullopt;
        }
        return direction.angle;
    }
    const auto read = parseMagnitude(typed, sketch.forceUnit);
    if (const auto* error = std::get_if<TypedError>(&read)) {
        fault = text(error->message);
        return std::nullopt;
    }
    return std::get<TypedMagnitude>(read).value;
}

/// What can't be read is said; the curves stay those of the last range.
void SweepDialog::takeEnds() {
    QString fault;
    const auto from = typedEnd(*m_from, fault), to = typedEnd(*m_to, fault);
    if (!from || !to) {
        refuse(fault);
        return;
    }
    SweepRange range = m_range;
    range.from = *from;
    range.to = *to;
    if (const auto wrong = faultOf(range, m_document.sketch())) {
        refuse(text(*wrong));
        return;
    }
    refuse({});
    m_range = range;
    m_ends[m_varied->currentText()] = {range.from, range.to};
    m_shown.reset();
    follow();
}

void SweepDialog::refuse(const QString& fault) {
    m_fault->setText(fault.isEmpty() ? fault : QStringLiteral("\u25b2 ") + fault);
    m_fault->setVisible(!fault.isEmpty());
}

/// Only the marker moves while nothing but the varied value does.
void SweepDialog::follow() {
    fillVaried();
    const auto scalar = varied();
    if (scalar) {
        m_range.varied = *scalar;
    }
    const bool isAnswered = scalar && !m_document.withholdsAnswer();
    const std::optional<Sketch> base =
        isAnswered ? std::optional(withValue(m_document.sketch(), *scalar, m_range.from)) : std::nullopt;
    if (!base || base != m_shown) {
        const bool changed = m_shown.has_value(); // by a hand on the sheet, or by undo, time and again
        compute(changed ? kPointsMoving : kPoints);
        if (changed) {
            m_rest.start();
        }
        m_shown = base;
    }
    showPresent();
}

void SweepDialog::compute(std::size_t steps) {
    const Sketch& sketch = m_document.sketch();
    m_copy->setEnabled(false);
    m_save->setEnabled(false);
    if (m_document.withholdsAnswer()) {
        m_view->show({}, sketch, tr("The answer is not shown while you work out your own."));
        return;
    }
    const auto scalar = varied();
    if (!scalar) {
        m_view->show({}, sketch, tr("Nothing is given that could be varied."));
        return;
    }
    SweepRange range = m_range;
    range.varied = *scalar;
    range.steps = steps;
    if (const auto fault = faultOf(range, sketch)) {
        m_view->show({}, sketch, text(*fault));
        return;
    }
    Sweep swept = tailpoint::sweep(sketch, range);
    if (!swept.hasAnswer()) {
        m_view->show({}, sketch, tr("There is no answer in the whole range: nothing to draw."));
        return;
    }
    m_view->show(std::move(swept), sketch);
    m_copy->setEnabled(true);
    m_save->setEnabled(true);
}

/// "Now 30.0°: A 5.0908 kN, B 10.432 kN".
void SweepDialog::showPresent() {
    const Sketch& sketch = m_document.sketch();
    const auto scalar = varied();
    const auto now = scalar && m_view->sweep() ? presentValue(sketch, *scalar) : std::nullopt;
    m_view->setPresent(now);
    if (!now) {
        m_present->clear();
        return;
    }
    QStringList values;
    for (const Curve& curve : m_view->sweep()->curves) {
        if (curve.of.kind == Swept::Kind::larger) {
            continue;
        }
        if (const auto value = curve.between(*now)) {
            values << text(wordsOf(curve.of, sketch)) + u' ' +
                          onScreen(sweptValue(*value, curve.of.kind == Swept::Kind::direction, sketch));
        }
    }
    const QString place = onScreen(sweptValue(*now, scalar->isDirection, sketch));
    m_present->setText(values.isEmpty() ? tr("Now %1: no answer, or beyond the range").arg(place)
                                        : tr("Now %1: %2").arg(place, values.join(QStringLiteral(", "))));
}

std::optional<Sweep> SweepDialog::told() const {
    if (!m_view->sweep()) {
        return std::nullopt;
    }
    SweepRange range = m_view->sweep()->range;
    range.steps = static_cast<std::size_t>(m_steps->value());
    return tailpoint::sweep(m_document.sketch(), range);
}

void SweepDialog::copy() {
    const auto swept = told();
    if (!swept) {
        return;
    }
    const Sketch& sketch = m_document.sketch();
    const Provenance from = provenanceOf(m_document.path());
    const QByteArray table = sweepCsv(*swept, sketch, '\t');
    auto* copied = new QMimeData;
    copied->setText(QString::fromUtf8(sweepText(*swept, sketch, from) + '\n' + table));
    copied->setData(QStringLiteral("text/tab-separated-values"), table);
    const DisplayList list = sweepFigure(*swept, sketch, from);
    copied->setData(QStringLiteral("image/svg+xml"), toSvg(list, printTheme(), {}));
    copied->setImageData(toImage(list, printTheme(), kCopiedScale));
    QGuiApplication::clipboard()->setMimeData(copied);
}

std::optional<FileError> SweepDialog::saveTo(const QString& path) const {
    const auto swept = told();
    if (!swept) {
        return FileError{{}, tr("There is nothing to save.")};
    }
    const Sketch& sketch = m_document.sketch();
    const QString ending = QFileInfo(path).suffix().toLower();
    if (ending == QLatin1String("csv")) {
        return saveBytes(path, sweepCsv(*swept, sketch));
    }
    if (ending == QLatin1String("json")) {
        return saveBytes(path, sweepJson(*swept, sketch));
    }
    if (ending == QLatin1String("svg")) {
        return saveBytes(path, sweepSvg(*swept, sketch, printTheme(), provenanceOf(m_document.path())));
    }
    return FileError{{}, tr("The name ends in none of .csv, .svg and .json; give it one of them.")};
}

void SweepDialog::chooseAndSave() {
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save the sweep"), QStringLiteral("sweep.csv"),
                                     tr("Values (*.csv);;Figure (*.svg);;For scripts (*.json)"));
    if (path.isEmpty()) {
        return;
    }
    const auto error = saveTo(path);
    refuse(error ? QFileInfo(path).fileName() + QStringLiteral(": ") + error->line() : QString());
}

void SweepDialog::take(const QVariantMap& choices) {
    constexpr QSize kFrame(16, 64); // what a window manager adds
    resize(choices.value(QStringLiteral("size"), QSize(760, 640))
               .toSize()
               .boundedTo(screen()->availableSize() - kFrame));
    m_steps->setValue(choices.value(QStringLiteral("steps"), m_steps->value()).toInt());
}

QVariantMap SweepDialog::choices() const {
    return {{QStringLiteral("size"), size()}, {QStringLiteral("steps"), m_steps->value()}};
}

} // namespace tailpoint
