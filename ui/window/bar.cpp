// SPDX-License-Identifier: MIT
#include "ui/window/bar.h"

#include "ui/style/icons.h"
#include "ui/style/palette.h"
#include "ui/style/targets.h"

#include <QAction>
#include <QHBoxLayout>
#include <QPainter>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr int kIcon = 20, kPadding = 9, kGap = 6;

int heightOfButtons() {
    constexpr int kUsual = 30;
    return std::max(kUsual, targetSide());
}

/// A short upright hairline between groups of buttons.
class Divider : public QWidget {
public:
    Divider() { setFixedSize(13, heightOfButtons()); }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter(this).fillRect(width() / 2, 5, 1, height() - 10, palette().color(QPalette::Mid));
    }
};

} // namespace

BarButton::BarButton(QAction* action, const QString& iconName, QWidget* parent)
    : QToolButton(parent), m_iconName(iconName) {
    setDefaultAction(action);
    setObjectName(action->objectName() + QStringLiteral("Button"));
    setFocusPolicy(Qt::TabFocus);
    setAccessibleName(words());
}

QString BarButton::words() const {
    return defaultAction()->iconText();
}

void BarButton::setTheme(const Theme& theme) {
    m_theme = &theme;
    m_icon = m_disabledIcon = QPixmap();
    update();
}

void BarButton::setCompact(bool compact) {
    if (compact != m_compact) {
        m_compact = compact;
        updateGeometry();
    }
}

int BarButton::fullWidth() const {
    return kPadding + kIcon + kGap + fontMetrics().horizontalAdvance(words()) + kPadding;
}

QSize BarButton::sizeHint() const {
    return {m_compact ? std::max(kIcon + 2 * kPadding, targetSide()) : fullWidth(), heightOfButtons()};
}

void BarButton::paintEvent(QPaintEvent*) {
    if (m_icon.isNull() || m_icon.devicePixelRatio() != devicePixelRatioF()) {
        m_icon = tintedIcon(m_iconName, m_theme->ink, kIcon, devicePixelRatioF());
        m_disabledIcon = tintedIcon(m_iconName, disabledInk(*m_theme), kIcon, devicePixelRatioF());
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool lit = isChecked() || isDown() || (isEnabled() && underMouse());
    if (lit || hasFocus()) {
        painter.setPen(hasFocus()    ? QPen(m_theme->ink, 2)
                       : isChecked() ? QPen(m_theme->given, 1)
                                     : QPen(Qt::NoPen));
        painter.setBrush(lit ? QBrush(m_theme->accentGround) : QBrush(Qt::NoBrush));
        const double inset = hasFocus() ? 1 : 0.5;
        painter.drawRoundedRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset), 4, 4);
    }
    const QPixmap& icon = isEnabled() ? m_icon : m_disabledIcon;
    painter.drawPixmap(QPointF(kPadding, (height() - kIcon) / 2.0), icon);
    if (!m_compact) {
        painter.setPen(isEnabled() ? m_theme->ink : disabledInk(*m_theme));
        painter.drawText(rect().adjusted(kPadding + kIcon + kGap, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft,
                         words());
    }
}

Bar::Bar(QWidget* parent) : QWidget(parent), m_row(new QHBoxLayout(this)) {
    setObjectName(QStringLiteral("bar"));
    m_row->setContentsMargins(10, 5, 10, 5);
    m_row->setSpacing(4);
    m_row->addStretch(1);
}

BarButton* Bar::addAction(QAction* action, const QString& iconName) {
    auto* button = new BarButton(action, iconName);
    m_row->insertWidget(m_row->count() - 1 - m_atEnd, button);
    m_buttons << button;
    return button;
}

BarButton* Bar::addActionAtEnd(QAction* action, const QString& iconName) {
    auto* button = new BarButton(action, iconName);
    m_row->addWidget(button);
    m_buttons << button;
    m_atEnd += 1;
    return button;
}

void Bar::addSeparator() {
    m_row->insertWidget(m_row->count() - 1 - m_atEnd, new Divider);
}

void Bar::setTheme(const Theme& theme) {
    for (BarButton* button : std::as_const(m_buttons)) {
        button->setTheme(theme);
    }
}

QSize Bar::minimumSizeHint() const {
    const int compact = std::max(kIcon + 2 * kPadding, targetSide());
    return {static_cast<int>(m_buttons.size()) * (compact + 6), heightOfButtons() + 10};
}

void Bar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    int needed = 60; // margins and dividers
    for (const BarButton* button : std::as_const(m_buttons)) {
        needed += button->fullWidth() + m_row->spacing();
    }
    for (BarButton* button : std::as_const(m_buttons)) {
        button->setCompact(needed > width());
    }
}

} // namespace tailpoint
