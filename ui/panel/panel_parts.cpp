// SPDX-License-Identifier: MIT
#include "ui/panel/panel_parts.h"

#include "ui/panel/accessible_fold.h"
#include "ui/panel/cell_text.h"
#include "ui/style/icons.h"
#include "ui/style/symbols.h"
#include "ui/style/targets.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {
constexpr int kSignSide = 15; // pixels
}

Rule::Rule(QWidget* parent) : QWidget(parent) {
    setFixedHeight(1);
}

void Rule::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), palette().color(QPalette::Mid));
}

ValueLabel::ValueLabel(const QString& objectName, QWidget* parent) : QLabel(parent) {
    setObjectName(objectName);
    setTextFormat(Qt::RichText);
    setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    setWordWrap(true);
}

void ValueLabel::show(const QString& richText) {
    if (text() != richText) {
        setText(richText);
    }
    setVisible(!richText.isEmpty());
}

int ValueLabel::heightForWidth(int width) const {
    return QLabel::heightForWidth(std::min(width, maximumWidth()));
}

void ValueLabel::paintEvent(QPaintEvent* event) {
    QLabel::paintEvent(event);
    if (hasFocus()) {
        QPainter painter(this);
        painter.setPen(QPen(palette().color(QPalette::Text), 1, Qt::DotLine));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

SteadyLines::SteadyLines(const QString& objectName, QWidget* parent)
    : QWidget(parent), m_label(new ValueLabel(objectName, this)) {
    m_label->setWordWrap(false);
    m_label->setFocusPolicy(Qt::StrongFocus); // values can be copied without a mouse
}

void SteadyLines::show(const QString& richText) {
    m_label->show(richText);
    setVisible(!richText.isEmpty());
    if (m_label->wordWrap()) {
        fitWrapped();
        return;
    }
    const qsizetype tags = richText.count(QLatin1Char('<')); // numbers come and go, lines and symbols stay
    if (tags != m_tags) {
        m_tags = tags;
        setFixedHeight(m_label->sizeHint().height());
    }
}

void SteadyLines::setWrapped(bool on) {
    if (m_label->wordWrap() == on) {
        return;
    }
    m_label->setWordWrap(on);
    m_tags = -1; // the height is another
}

void SteadyLines::fitWrapped() {
    const int wanted = m_label->heightForWidth(width());
    if (wanted > 0 && wanted != height()) {
        setFixedHeight(wanted);
    }
    m_label->setGeometry(rect());
}

void SteadyLines::resizeEvent(QResizeEvent* event) {
    m_label->setGeometry(rect());
    if (m_label->wordWrap() && event->size().width() != event->oldSize().width()) {
        fitWrapped();
    }
}

void LinkButton::setSentence(const Sentence& sentence) {
    m_sentence = sentence;
    setText(onScreen(plain(sentence)).replace(u'&', QStringLiteral("&&")));
    updateGeometry();
    update();
}

int LinkButton::wordsWidth() const {
    if (!m_sentence.empty()) {
        return static_cast<int>(std::ceil(PaintedSentence(font(), kSymbolInTable).width(m_sentence)));
    }
    return fontMetrics().size(Qt::TextSingleLine | Qt::TextShowMnemonic, text()).width();
}

QSize LinkButton::sizeHint() const {
    return {signWidth() + wordsWidth() + 2 * m_padding,
            std::max({26, targetSide(), fontMetrics().height() + 8})};
}

void LinkButton::setSign(const QString& icon) {
    m_sign = icon;
    updateGeometry();
    update();
}

int LinkButton::signWidth() const {
    constexpr int gap = 5;
    return m_sign.isEmpty() ? 0 : kSignSide + gap;
}

void LinkButton::paintSign(QPainter& painter) {
    if (m_sign.isEmpty())
        return;
    const QPixmap sign = tintedIcon(m_sign, painter.pen().color(), kSignSide, devicePixelRatioF());
    painter.drawPixmap(QPointF(m_padding, (height() - kSignSide) / 2.0), sign);
}

void LinkButton::paintWords(QPainter& painter, const QRect& room) const {
    if (m_sentence.empty()) {
        painter.drawText(room, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextShowMnemonic, text());
        return;
    }
    const QFontMetricsF metrics(font());
    const double baseline =
        std::round(QRectF(room).center().y() + (metrics.ascent() - metrics.descent()) / 2);
    PaintedSentence(font(), kSymbolInTable)
        .draw(painter, {static_cast<double>(room.left()), baseline}, m_sentence);
}

void LinkButton::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QPushButton::keyPressEvent(event);
}

void LinkButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QRect words = rect().adjusted(m_padding + signWidth(), 0, 0, 0);
    painter.setPen(palette().color(QPalette::Link));
    paintSign(painter);
    paintWords(painter, words);
    if (hasFocus() || underMouse() || m_padding == 0) {
        const int below = words.center().y() + fontMetrics().ascent() / 2 + 3;
        painter.fillRect(words.left(), below, wordsWidth(), hasFocus() ? 2 : 1,
                         palette().color(hasFocus() || underMouse() ? QPalette::Link : QPalette::Mid));
    }
}

namespace {

QFont headingFont(QFont font) {
    font.setPointSizeF(font.pointSizeF() * 0.88);
    font.setCapitalization(QFont::AllUppercase);
    font.setLetterSpacing(QFont::PercentageSpacing, 112);
    font.setWeight(QFont::DemiBold);
    return font;
}

constexpr int kMark = 8; // pixels of the fold mark

} // namespace

SectionHead::SectionHead(const QString& title) {
    makeFold(*this); // before anything is told of it
    setText(title);
    setAccessibleName(title);
    setFont(headingFont(font()));
    setCheckable(true);
    setChecked(true);
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::TabFocus);
    setToolTip(tr("Fold or unfold"));
}

QSize SectionHead::sizeHint() const {
    return {fontMetrics().horizontalAdvance(text()) + 3 * kMark,
            std::max(targetSide(), fontMetrics().height() + 6)};
}

void SectionHead::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool at = underMouse() || hasFocus();
    painter.setPen(palette().color(at ? QPalette::Text : QPalette::PlaceholderText));
    painter.drawText(rect(), Qt::AlignVCenter | Qt::AlignLeft, text());
    const QPointF middle(fontMetrics().horizontalAdvance(text()) + 1.5 * kMark, rect().center().y() + 1);
    const double r = kMark / 2.0;
    painter.setPen(QPen(painter.pen().color(), 1.2));
    painter.drawPolyline(isChecked() ? QPolygonF{middle + QPointF(-r, -r / 2), middle + QPointF(0, r / 2),
                                                 middle + QPointF(r, -r / 2)}
                                     : QPolygonF{middle + QPointF(-r / 2, -r), middle + QPointF(r / 2, 0),
                                                 middle + QPointF(-r / 2, r)});
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Text), 1, Qt::DotLine));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void SectionHead::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right) {
        setChecked(event->key() == Qt::Key_Right);
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
    } else {
        QAbstractButton::keyPressEvent(event);
    }
}

QLabel* headingLabel(const QString& title) {
    auto* label = new QLabel(title);
    label->setFont(headingFont(label->font()));
    label->setForegroundRole(QPalette::PlaceholderText);
    return label;
}

QLabel* quietLabel(const QString& objectName) {
    auto* label = new QLabel;
    label->setObjectName(objectName);
    label->setForegroundRole(QPalette::PlaceholderText);
    return label;
}

LinkButton* linkButton(const QString& title, const QString& objectName) {
    auto* button = new LinkButton(title);
    button->setObjectName(objectName);
    button->setCursor(Qt::PointingHandCursor);
    return button;
}

} // namespace tailpoint
