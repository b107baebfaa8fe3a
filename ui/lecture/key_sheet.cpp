// SPDX-License-Identifier: MIT
#include "ui/lecture/key_sheet.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr double kRow = 1.38, kPad = 1.0, kGap = 1.2; ///< ems

QFont fontOf(double pixels, int dotsPerInch, bool bold) {
    QFont font = sansFont();
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setPointSizeF(pixels * 72 / dotsPerInch);
    font.setWeight(bold ? QFont::DemiBold : QFont::Normal);
    return font;
}

} // namespace

QList<KeySheet::Row> KeySheet::rows() const {
    QList<Row> rows;
    if (m_kind.voting) {
        rows = {{tr("A, B, C \u2026"), tr("choose a row; after the vote, why it is wrong")},
                {tr("0 to 9"), tr("its count")},
                {tr("Backspace, Delete"), tr("the last digit, the whole count")},
                {tr("Space, →, PgDn, click"), tr("close the vote, vote again, the wrong ones")},
                {tr("←, PgUp"), tr("back: the vote before")},
                {tr("↓, ↑"), tr("row by row")},
                {tr("X"), tr("‘none of these’ on and off")},
                {tr("Q"), tr("ask for another quantity")},
                {tr("W"), tr("the same question, other numbers")},
                {tr("U"), tr("back to the plan’s numbers")},
                {tr("."), tr("blank the sheet")},
                {tr("V, Escape"), tr("back to the steps")}};
    } else {
        rows = {{tr("Space, →, PgDn, click"), tr("next line, next step")},
                {tr("Backspace, ←, PgUp"), tr("one line back")},
                {tr("↓, ↑"), tr("step by step, whole")},
                {tr("Home, End"), tr("to the beginning, to the answer")},
                {tr("V"), tr("put it to the class: a vote")},
                {tr("B or ."), tr("blank the sheet")},
                {tr("N"), tr("hide the numbers")},
                {tr("T"), tr("the next title alone")},
                {tr("drag a tip"), tr("try it: all follows")},
                {tr("U"), tr("back to the plan")},
                {tr("Ctrl+Z, Ctrl+Y"), tr("change back, and again")},
                {tr("O"), tr("draw the other of two answers")},
                {tr("M"), tr("more words, margin notes")},
                {tr("wheel, Ctrl+↑, Ctrl+↓"), tr("scroll the lines")},
                {tr("C"), tr("colours")},
                {tr("A"), tr("movement on and off")},
                {tr("Escape"), tr("back to the window")}};
    }
    if (m_kind.tolerances && !m_kind.voting)
        rows.insert(rows.size() - 1, Row{tr("R"), tr("without tolerances, and with them")});
    if (m_kind.lesson)
        rows << Row{tr("Ctrl+→, Ctrl+←"), tr("lesson: the next sketch, the one before")};
    if (m_kind.notes)
        rows << Row{tr("S"), tr("lesson: your notes, under the sheet")};
    return rows;
}

QString KeySheet::text() const {
    QStringList lines;
    for (const auto& [key, does] : rows())
        lines << key + QStringLiteral(": ") + does;
    return lines.join(u'\n');
}

void KeySheet::setKind(const Kind& kind) {
    m_kind = kind;
    setAccessibleName(kind.voting ? tr("Keys of the vote") : tr("Keys of the lecture"));
    setAccessibleDescription(text());
}

QSizeF KeySheet::columnsOf(double pixels) const {
    const QFontMetricsF keys(fontOf(pixels, logicalDpiY(), true)),
        words(fontOf(pixels, logicalDpiY(), false));
    QSizeF wide;
    for (const auto& [key, does] : rows())
        wide = wide.expandedTo({keys.horizontalAdvance(key), words.horizontalAdvance(does)});
    return wide;
}

QSizeF KeySheet::sizeOf(double pixels) const {
    const QSizeF columns = columnsOf(pixels);
    return {columns.width() + columns.height() + (kGap + 2 * kPad) * pixels,
            (kRow * static_cast<double>(rows().size()) + 2 * kPad) * pixels};
}

KeySheet::KeySheet(QWidget* parent) : QWidget(parent), m_theme(&themeOf(ThemeName::slate)) {
    setObjectName(QStringLiteral("keySheet"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setKind({});
    hide();
}

void KeySheet::setTheme(const Theme& theme) {
    m_theme = &theme;
    update();
}

/// As large as everything else that is written; smaller only on a screen on which it would not fit.
void KeySheet::place(const Measures& measures) {
    const QSizeF room(0.98 * measures.width, 0.98 * measures.height);
    m_size = measures.sans;
    QSizeF size = sizeOf(m_size);
    const double shrink = std::min({1.0, room.width() / size.width(), room.height() / size.height()});
    m_size *= shrink < 1 ? 0.99 * shrink : 1;
    size = sizeOf(m_size);
    m_fits = size.width() <= room.width() && size.height() <= room.height();
    setGeometry(
        QRectF(QPointF((measures.width - size.width()) / 2, (measures.height - size.height()) / 2), size)
            .toAlignedRect());
    update();
}

double KeySheet::capital() const {
    return QFontMetricsF(fontOf(m_size, logicalDpiY(), false))
        .tightBoundingRect(QStringLiteral("E"))
        .height();
}

void KeySheet::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_theme->quietInk, 2));
    painter.setBrush(m_theme->panel);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    const double keysWide = columnsOf(m_size).width();
    double y = (kPad + 1.1) * m_size;
    for (const auto& [key, does] : rows()) {
        painter.setPen(m_theme->ink);
        painter.setFont(fontOf(m_size, logicalDpiY(), true));
        painter.drawText(QPointF(kPad * m_size, y), key);
        painter.setPen(m_theme->quietInk);
        painter.setFont(fontOf(m_size, logicalDpiY(), false));
        painter.drawText(QPointF((kPad + kGap) * m_size + keysWide, y), does);
        y += kRow * m_size;
    }
}

} // namespace tailpoint
