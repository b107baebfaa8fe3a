// SPDX-License-Identifier: MIT
#include "ui/panel/solution_lines.h"

#include "core/explain/spoken.h"
#include "ui/panel/marked_text.h"
#include "ui/style/symbols.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kLineLeft = 10, kLineIndent = 12, kBar = 3; // pixels
constexpr double kLinePadding = 4, kLineBetween = 4;         // above and below a row, between its blocks
constexpr double kLineSymbols = 1.16, kLineFormula = 1.22;   // by the size of the words
constexpr int kRowRole = Qt::UserRole;

/// A line without anything behind its subject.
bool isBlank(const Working& working) {
    return working.subject && !working.general && !working.substituted && !working.value;
}

Working withGap(Working working) {
    Formula gap;
    gap.kind = FormulaKind::words;
    gap.text = "\u2026";
    working.value = std::move(gap);
    return working;
}

} // namespace

/// Paints what its view has laid out.
class SolutionLineDelegate : public QStyledItemDelegate {
public:
    explicit SolutionLineDelegate(SolutionLines& lines) : QStyledItemDelegate(&lines), m_lines(lines) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const auto& row = m_lines.m_rows[static_cast<std::size_t>(index.row())];
        const Theme& theme = *m_lines.m_theme;
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QRectF box = QRectF(option.rect).adjusted(0.5, 0.5, -0.5, -0.5);
        const bool isCurrent = m_lines.currentRow() == index.row() && m_lines.hasFocus();
        if (isCurrent) {
            painter->setPen(QPen(theme.given, 1.5));
            painter->setBrush(theme.highlight);
            painter->drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
        } else if (row.place && option.state.testFlag(QStyle::State_MouseOver)) {
            painter->fillRect(box, theme.accentGround);
        }
        if (row.isAsked)
            painter->fillRect(QRectF(box.left() + 2, box.top() + 3, kBar, box.height() - 6), theme.given);
        painter->translate(option.rect.topLeft());
        for (const auto& set : row.set) {
            painter->setPen(set.ink == SolutionLines::Ink::warning && !isCurrent ? theme.warning
                            : set.ink == SolutionLines::Ink::quiet && !isCurrent ? theme.quietInk
                                                                                 : theme.ink);
            set.setting.paint(*painter, set.baseline);
        }
        painter->restore();
    }

private:
    SolutionLines& m_lines;
};

SolutionLines::SolutionLines(QWidget* parent) : QListWidget(parent), m_theme(&themeOf(ThemeName::paper)) {
    setObjectName(QStringLiteral("solutionLines"));
    setAccessibleName(tr("Lines of the solution"));
    setItemDelegate(new SolutionLineDelegate(*this));
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSelectionMode(QAbstractItemView::NoSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setMouseTracking(true);
    viewport()->setAutoFillBackground(false);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void SolutionLines::setTheme(const Theme& theme) {
    m_theme = &theme;
    viewport()->update();
}

void SolutionLines::show(const Shown& shown) {
    const int row = currentRow();
    m_rows.clear();
    m_lines = 0;
    for (std::size_t step = 0; step < shown.worked->steps.size(); ++step)
        if (!shown.linesAlone || shown.worked->steps[step].key != StepKey::given)
            addStep(step, shown);
    fill(shown.linesAlone);
    layOut();
    if (row >= 0 && row < count() && item(row)->flags().testFlag(Qt::ItemIsEnabled))
        setCurrentRow(row);
}

void SolutionLines::clearLines() {
    m_rows.clear();
    m_lines = 0;
    clear();
    setFixedHeight(0);
}

/// What it says before its lines, the lines, and what it concludes.
void SolutionLines::addStep(std::size_t index, const Shown& shown) {
    const Step& step = shown.worked->steps[index];
    Row head;
    head.blocks.push_back({inProse(step.title), {}, Ink::plain, true});
    for (const Prose& prose : step.reasoning)
        head.blocks.push_back({prose, {}, Ink::plain, false});
    m_rows.push_back(std::move(head));
    for (std::size_t working = 0; working < step.workings.size(); ++working)
        addLine({index, working}, shown);
    Row foot;
    for (const Prose& prose : step.conclusion)
        foot.blocks.push_back({prose, {}, Ink::plain, false});
    for (const Prose& prose : step.notes)
        foot.blocks.push_back({prose, {}, Ink::quiet, false});
    if (!foot.blocks.empty())
        m_rows.push_back(std::move(foot));
}

void SolutionLines::addLine(WorkingPlace place, const Shown& shown) {
    const Working& working = shown.worked->steps[place.step].workings[place.working];
    const auto calculated = calculatedLines(*shown.worked);
    Row row;
    row.isAsked = shown.asked == place;
    const bool isOpen = isBlank(working);
    if (isOpen || std::find(calculated.begin(), calculated.end(), place) != calculated.end()) {
        row.place = place;
        ++m_lines;
    }
    row.blocks.push_back({{}, isOpen ? withGap(working) : working, Ink::plain, false});
    if (isOpen)
        row.spoken = tr("%1: blank").arg(QString::fromStdString(spoken(working)));
    if (const auto remark = shown.remarks.find(place); remark != shown.remarks.end())
        row.blocks.push_back({inProse(remark->second.toStdString()), {}, Ink::quiet, false});
    m_rows.push_back(std::move(row));
}

/// Every row has its words; a line its number among the lines.
void SolutionLines::fill(bool linesAlone) {
    clear();
    int line = 0;
    for (Row& row : m_rows) {
        QStringList words;
        for (const Block& block : row.blocks)
            words << QString::fromStdString(block.working ? spoken(*block.working) : spoken(block.prose));
        if (!row.spoken.isEmpty())
            words.front() = row.spoken;
        row.spoken = words.join(QStringLiteral(". "));
        if (row.place)
            row.spoken =
                tr("Line %1 of %2: %3").arg(QString::number(++line), QString::number(m_lines), row.spoken);
        auto* item = new QListWidgetItem;
        item->setData(Qt::AccessibleTextRole, row.spoken);
        item->setFlags(linesAlone && !row.place ? Qt::NoItemFlags : Qt::ItemIsEnabled | Qt::ItemIsSelectable);
        addItem(item);
    }
}

/// Lines of calculation that stand under one another are of one size, in which the widest fits.
double SolutionLines::formulaSize(double room) const {
    constexpr double kAnyWidth = 1e6, kLeast = 0.66, kHair = 0.995;
    const double wanted = pixelsOf(*this) * kLineFormula;
    double factor = 1;
    for (const Row& row : m_rows)
        for (const Block& block : row.blocks)
            if (block.working) {
                const double width = setWorking(*block.working, {wanted, logicalDpiY()}, kAnyWidth).width;
                factor = std::min(factor, room / std::max(1.0, width));
            }
    return wanted * std::max(kLeast, factor * kHair);
}

void SolutionLines::layOut(Row& row, double formula) {
    const double words = pixelsOf(*this),
                 room = std::max(120, viewport()->width()) - kLineLeft - kLinePadding;
    double y = kLinePadding;
    row.set.clear();
    for (const Block& block : row.blocks) {
        QFont font = this->font();
        if (block.isBold)
            font.setWeight(QFont::DemiBold);
        const double in = block.working ? kLineIndent : 0;
        Setting setting = block.working
                              ? setWorking(*block.working, {formula, logicalDpiY()}, room - in)
                              : setProse(block.prose, font, {words * kLineSymbols, logicalDpiY()}, room);
        if (setting.isEmpty())
            continue;
        const QPointF baseline(kLineLeft + in, y + setting.ascent);
        y += setting.height() + kLineBetween;
        row.set.push_back({std::move(setting), baseline, block.ink});
    }
    constexpr double kTarget = 24; // a line is at least as high as a finger or a shaking hand needs
    row.height = static_cast<int>(std::ceil(std::max(kTarget, y)));
}

void SolutionLines::layOut() {
    const double formula =
        formulaSize(std::max(120, viewport()->width()) - kLineLeft - kLinePadding - kLineIndent);
    int height = 0;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        layOut(m_rows[i], formula);
        item(static_cast<int>(i))->setSizeHint({viewport()->width(), m_rows[i].height});
        height += m_rows[i].height;
    }
    setFixedHeight(height);
    viewport()->update();
}

void SolutionLines::resizeEvent(QResizeEvent* event) {
    QListWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        layOut();
}

void SolutionLines::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange)
        layOut();
    QListWidget::changeEvent(event);
}

/// All rows are there to be seen: what turns the wheel turns the panel.
void SolutionLines::wheelEvent(QWheelEvent* event) {
    event->ignore();
}

void SolutionLines::takeFocus() {
    for (int row = 0; row < count(); ++row)
        if (item(row)->flags().testFlag(Qt::ItemIsEnabled)) {
            setCurrentRow(row);
            break;
        }
    setFocus(Qt::OtherFocusReason);
}

void SolutionLines::chooseAt(int row) {
    if (row >= 0 && row < count() && m_rows[static_cast<std::size_t>(row)].place)
        emit chosen(*m_rows[static_cast<std::size_t>(row)].place);
}

void SolutionLines::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        return chooseAt(currentRow());
    if (event->key() == Qt::Key_Escape) // the window's
        return event->ignore();
    QListWidget::keyPressEvent(event);
}

void SolutionLines::mouseReleaseEvent(QMouseEvent* event) {
    QListWidget::mouseReleaseEvent(event);
    if (event->button() == Qt::LeftButton)
        chooseAt(row(itemAt(event->position().toPoint())));
}

QString SolutionLines::plainText() const {
    QStringList all;
    for (const Row& row : m_rows)
        all << row.spoken;
    return all.join(u'\n');
}

} // namespace tailpoint
