// SPDX-License-Identifier: MIT
#include "ui/window/snap_switch.h"

#include "ui/style/icons.h"
#include "ui/style/targets.h"

#include <QAction>
#include <QPainter>
#include <algorithm>

namespace tailpoint {

namespace {
constexpr int kSwitchIcon = 16, kSwitchPadding = 7, kSwitchGap = 5;
} // namespace

SnapSwitch::SnapSwitch(QAction* snap, QWidget* parent) : QToolButton(parent) {
    setDefaultAction(snap);
    setObjectName(QStringLiteral("snapSwitch"));
    setFocusPolicy(Qt::TabFocus);
    setAccessibleName(tr("Snap"));
}

QString SnapSwitch::words(bool on) const {
    return on ? tr("Snap on") : tr("Snap off");
}

void SnapSwitch::setTheme(const Theme& theme) {
    m_theme = &theme;
    m_icon = QPixmap();
    update();
}

/// The same on and off: what stands beside it does not move.
QSize SnapSwitch::sizeHint() const {
    const QFontMetrics font = fontMetrics();
    const int widest = std::max(font.horizontalAdvance(words(true)), font.horizontalAdvance(words(false)));
    return {kSwitchPadding + kSwitchIcon + kSwitchGap + widest + kSwitchPadding,
            std::max(targetSide(), font.height() + 4)};
}

void SnapSwitch::paintEvent(QPaintEvent*) {
    if (m_icon.isNull() || m_icon.devicePixelRatio() != devicePixelRatioF()) {
        m_icon = tintedIcon(QStringLiteral("snap"), m_theme->quietInk, kSwitchIcon, devicePixelRatioF());
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool lit = isDown() || underMouse();
    if (lit || hasFocus()) {
        painter.setPen(hasFocus() ? QPen(m_theme->ink, 2) : QPen(Qt::NoPen));
        painter.setBrush(lit ? QBrush(m_theme->accentGround) : QBrush(Qt::NoBrush));
        const double inset = hasFocus() ? 1 : 0.5;
        painter.drawRoundedRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset), 4, 4);
    }
    if (isChecked()) {
        painter.drawPixmap(QPointF(kSwitchPadding, (height() - kSwitchIcon) / 2.0), m_icon);
    }
    painter.setPen(lit ? m_theme->ink : m_theme->quietInk);
    painter.drawText(rect().adjusted(kSwitchPadding + kSwitchIcon + kSwitchGap, 0, 0, 0),
                     Qt::AlignVCenter | Qt::AlignLeft, words(isChecked()));
}

} // namespace tailpoint
