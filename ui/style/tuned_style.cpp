// SPDX-License-Identifier: MIT
#include "ui/style/tuned_style.h"

#include <QApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPainterPath>
#include <QStyleOptionComplex>
#include <algorithm>

namespace tailpoint {

namespace {

/// Two chevrons to the right, or down.
class Chevrons : public QIconEngine {
public:
    explicit Chevrons(bool isDown) : m_isDown(isDown) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        const double unit = std::min(rect.width(), rect.height()) / 16.0;
        const QPalette palette = QApplication::palette();
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->translate(QRectF(rect).center());
        painter->rotate(m_isDown ? 90 : 0);
        painter->scale(unit, unit);
        painter->setPen(QPen(palette.color(mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active,
                                           QPalette::ButtonText),
                             1.4, Qt::SolidLine, Qt::RoundCap, Qt::MiterJoin));
        for (const double at : {-3.5, 1.5}) {
            QPainterPath chevron({at, -4});
            chevron.lineTo(at + 4, 0);
            chevron.lineTo(at, 4);
            painter->drawPath(chevron);
        }
        painter->restore();
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap made(size);
        made.fill(Qt::transparent);
        QPainter painter(&made);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return made;
    }
    QIconEngine* clone() const override { return new Chevrons(m_isDown); }

private:
    bool m_isDown;
};

} // namespace

QIcon TunedStyle::standardIcon(StandardPixmap which, const QStyleOption* option,
                               const QWidget* widget) const {
    if (which == SP_ToolBarHorizontalExtensionButton)
        return QIcon(new Chevrons(false));
    if (which == SP_ToolBarVerticalExtensionButton)
        return QIcon(new Chevrons(true));
    return QProxyStyle::standardIcon(which, option, widget);
}

void TunedStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                    QPainter* painter, const QWidget* widget) const {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control != CC_ComboBox || !(option->state & State_HasFocus))
        return;
    constexpr double wide = 2;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(option->palette.color(QPalette::Link), wide));
    painter->setBrush(Qt::NoBrush);
    painter->drawRoundedRect(QRectF(option->rect).adjusted(wide / 2, wide / 2, -wide / 2, -wide / 2), 3, 3);
    painter->restore();
}

} // namespace tailpoint
