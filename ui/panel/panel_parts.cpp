#include "ui/panel/panel_parts.h"

#include <QPainter>

namespace tailpoint {

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

void ValueLabel::paintEvent(QPaintEvent* event) {
    QLabel::paintEvent(event);
    if (hasFocus()) {
        QPainter painter(this);
        painter.setPen(QPen(palette().color(QPalette::Text), 1, Qt::DotLine));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

QSize LinkButton::sizeHint() const {
    const QFontMetrics metrics(font());
    return {metrics.horizontalAdvance(text()) + 12, qMax(26, metrics.height() + 8)};
}

void LinkButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (underMouse() || isDown() || hasFocus()) {
        painter.setPen(hasFocus() ? QPen(palette().color(QPalette::Text), 1) : QPen(Qt::NoPen));
        painter.setBrush(underMouse() || isDown() ? palette().brush(QPalette::Highlight)
                                                  : QBrush(Qt::NoBrush));
        painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    }
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(rect().adjusted(6, 0, -6, 0), Qt::AlignVCenter | Qt::AlignLeft, text());
}

QLabel* headingLabel(const QString& title) {
    auto* label = new QLabel(title);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * 0.88);
    font.setCapitalization(QFont::AllUppercase);
    font.setLetterSpacing(QFont::PercentageSpacing, 112);
    font.setWeight(QFont::DemiBold);
    label->setFont(font);
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
