// SPDX-License-Identifier: MIT
// Hands on the sheet: what is drawn there is dragged, clicked, typed over.
#include "tests/ui/hands/hands.h"

#include "ui/canvas/canvas.h"
#include "ui/window/main_window.h"

#include <QCoreApplication>
#include <QTest>
#include <cmath>

namespace tailpoint::test {

namespace {

constexpr int kMargin = 60; ///< pixels beyond the sheet that a drag goes to
constexpr int kAtEdge = 60; ///< milliseconds in which the sheet scrolls

void placesOf(const Item& item, std::vector<QPointF>& found) {
    if (const auto* words = std::get_if<Text>(&item))
        found.emplace_back(words->box.left + words->box.width / 2, words->box.top + words->box.height / 2);
    if (const auto* arc = std::get_if<Arc>(&item)) {
        const double middle = (arc->startDegrees + arc->sweepDegrees / 2) * std::acos(-1.0) / 180;
        found.emplace_back(arc->centre.x + arc->radius * std::cos(middle),
                           arc->centre.y - arc->radius * std::sin(middle));
    }
    if (const auto* disc = std::get_if<Disc>(&item))
        found.emplace_back(disc->centre.x, disc->centre.y);
}

} // namespace

/// Tips, shafts, labels, arcs and points as they are drawn at this moment, in the sheet's pixels.
std::vector<QPointF> Hands::places() const {
    const Canvas& canvas = m_window.canvas();
    std::vector<QPointF> found;
    for (const Group& group : canvas.figure().list.groups) {
        if (group.ends) {
            const auto& [tail, tip] = *group.ends;
            found.emplace_back(tip.x, tip.y);
            found.emplace_back(tip.x, tip.y); // twice: what is dragged most
            found.emplace_back(tail.x + 0.6 * (tip.x - tail.x), tail.y + 0.6 * (tip.y - tail.y));
        }
        for (const Item& item : group.items)
            placesOf(item, found);
    }
    for (QPointF& at : found)
        at *= canvas.pixelsPerPoint();
    const Point common = canvas.view().toSheet({0, 0});
    found.push_back(QPointF(common.x, common.y) * canvas.pixelsPerPoint());
    found.push_back(found.back());
    return found;
}

QPointF Hands::anywhere() {
    const Canvas& canvas = m_window.canvas();
    return QPointF(m_dice.between(-kMargin, canvas.width() + kMargin),
                   m_dice.between(-kMargin, canvas.height() + kMargin));
}

/// Mostly on something.
QPointF Hands::place() {
    const std::vector<QPointF> all = places();
    const QPointF at = m_dice.oneIn(5) ? anywhere() : m_dice.oneOf(all);
    const QPointF beside(m_dice.between(-3, 3), m_dice.between(-3, 3));
    const QSizeF room = m_window.canvas().size();
    return {std::clamp(at.x() + beside.x(), 0.0, room.width() - 1),
            std::clamp(at.y() + beside.y(), 0.0, room.height() - 1)};
}

QPointF Hands::fromSheet(QPointF at) const {
    return m_window.canvas().mapTo(&m_window, at);
}

Qt::KeyboardModifiers Hands::someModifiers() {
    const Qt::KeyboardModifiers some[]{{},
                                       {},
                                       {},
                                       {},
                                       Qt::ShiftModifier,
                                       Qt::ControlModifier,
                                       Qt::AltModifier,
                                       Qt::ShiftModifier | Qt::ControlModifier};
    return m_dice.oneOf(some);
}

void Hands::onSheet() {
    const QPointer<QWindow> window(m_window.windowHandle());
    const int what = m_dice.below(100);
    if (what < 45)
        return drag();
    if (what < 65)
        return sheetKey();
    const QPointF at = fromSheet(place());
    const QString where = QStringLiteral(" at %1, %2").arg(at.x()).arg(at.y());
    if (what < 73) {
        tell(QStringLiteral("click") + where);
        m_input.click(window, at, Qt::LeftButton, someModifiers());
    } else if (what < 81) {
        tell(QStringLiteral("double click") + where);
        m_input.doubleClick(window, at);
    } else if (what < 88) {
        tell(QStringLiteral("right click") + where);
        m_input.click(window, at, Qt::RightButton);
    } else if (what < 95) {
        tell(QStringLiteral("wheel") + where);
        m_input.wheel(window, at, m_dice.between(-3, 3) * 120, someModifiers());
    } else {
        tell(QStringLiteral("pan") + where);
        pan();
    }
}

void Hands::drag() {
    const QPointer<QWindow> window(m_window.windowHandle());
    const QPointF from = fromSheet(place());
    Qt::KeyboardModifiers held = someModifiers();
    tell(QStringLiteral("drag from %1, %2").arg(from.x()).arg(from.y()));
    m_input.press(window, from, Qt::LeftButton, held);
    QPointF at = from;
    for (int left = m_dice.below(6); left > 0; --left) {
        at = fromSheet(m_dice.oneIn(4) ? place() : anywhere());
        m_input.move(window, (from + at) / 2, held);
        m_input.move(window, at, held);
        if (m_dice.oneIn(2))
            QCoreApplication::processEvents();
        if (m_dice.oneIn(40))
            QTest::qWait(kAtEdge);
        if (m_dice.oneIn(6))
            held = someModifiers();
        constexpr int kMeanwhile[]{Qt::Key_Escape, Qt::Key_S, Qt::Key_Delete, Qt::Key_Tab, Qt::Key_Up};
        if (m_dice.oneIn(12))
            m_input.key(window, m_dice.oneOf(kMeanwhile));
        if (m_dice.oneIn(40))
            m_input.key(window, Qt::Key_Z, Qt::ControlModifier);
    }
    tell(QStringLiteral("to %1, %2").arg(at.x()).arg(at.y()));
    m_input.release(window, at, Qt::LeftButton, held);
}

void Hands::pan() {
    const QPointer<QWindow> window(m_window.windowHandle());
    const QPointF from = fromSheet(place()), to = fromSheet(anywhere());
    const bool bySpace = m_dice.oneIn(2);
    const Qt::MouseButton button = bySpace ? Qt::LeftButton : Qt::MiddleButton;
    if (bySpace)
        m_input.keyDown(window, Qt::Key_Space);
    m_input.press(window, from, button);
    m_input.move(window, to);
    QCoreApplication::processEvents();
    m_input.release(window, to, button);
    if (bySpace)
        m_input.keyUp(window, Qt::Key_Space);
}

void Hands::sheetKey() {
    constexpr int kKeys[]{Qt::Key_Tab,    Qt::Key_Backtab, Qt::Key_Left,  Qt::Key_Right,     Qt::Key_Up,
                          Qt::Key_Down,   Qt::Key_Left,    Qt::Key_Right, Qt::Key_Up,        Qt::Key_Down,
                          Qt::Key_Delete, Qt::Key_Insert,  Qt::Key_N,     Qt::Key_S,         Qt::Key_Plus,
                          Qt::Key_Minus,  Qt::Key_0,       Qt::Key_Home,  Qt::Key_Backspace, Qt::Key_Escape,
                          Qt::Key_F2,     Qt::Key_Return,  Qt::Key_Menu,  Qt::Key_5,         Qt::Key_Space};
    const QPointer<QWindow> window(m_window.windowHandle());
    if (!m_dice.oneIn(3))
        m_window.canvas().setFocus();
    for (int left = m_dice.between(1, 4); left > 0 && !onTop(); --left) {
        const int key = m_dice.oneOf(kKeys);
        const Qt::KeyboardModifiers held = someModifiers();
        tell(QStringLiteral("key %1").arg(QKeySequence(key | int(held)).toString()));
        m_input.key(window, key, held);
    }
}

} // namespace tailpoint::test
