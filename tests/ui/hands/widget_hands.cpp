// SPDX-License-Identifier: MIT
// Hands on tables, fields, buttons and menus, of the window and of any dialog.
#include "tests/ui/hands/hands.h"

#include "ui/window/main_window.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QMenuBar>
#include <QScreen>
#include <QTabBar>

namespace tailpoint::test {

namespace {

/// What may be typed into a field: values, and what is none.
const char* const kTyped[]{"340",
                           "1.2 kN",
                           "25",
                           "-40",
                           "0.4 rad",
                           "3:4",
                           "N30E",
                           "?",
                           "75 lbf",
                           "0",
                           "1e400",
                           "nan",
                           "",
                           "250 ± 5",
                           "25 ± 2°",
                           "abc",
                           "½",
                           "\xF0\x9F\x98\x80",
                           "1e-300",
                           "P",
                           "F_1",
                           "<b>x</b>",
                           "=2+3",
                           "340 N 25",
                           "180.0000000001",
                           "  ",
                           "12,5",
                           "-",
                           "50 kg",
                           "90°",
                           "9999999999999999",
                           "R",
                           "θ_1",
                           "1/3",
                           "100 ± 200 %",
                           "0NGFZD"};

bool isForHands(const QWidget* widget) {
    return qobject_cast<const QAbstractButton*>(widget) || qobject_cast<const QAbstractItemView*>(widget) ||
           qobject_cast<const QAbstractSpinBox*>(widget) || qobject_cast<const QComboBox*>(widget) ||
           qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QTabBar*>(widget);
}

bool isField(const QWidget* widget) {
    return qobject_cast<const QAbstractItemView*>(widget) || qobject_cast<const QAbstractSpinBox*>(widget) ||
           widget->inherits("QPlainTextEdit") || widget->inherits("QTextEdit") ||
           qobject_cast<const QLineEdit*>(widget);
}

/// Those that can be seen, in the order in which they were made.
template <class Is>
QList<QWidget*> seenIn(QWidget* top, Is is) {
    QList<QWidget*> seen;
    for (QWidget* widget : top->findChildren<QWidget*>())
        if (widget->window() == top && widget->isVisible() && is(widget) &&
            !widget->visibleRegion().isEmpty())
            seen << widget;
    return seen;
}

} // namespace

void Hands::onWidget(QWidget* top) {
    const int what = m_dice.below(100);
    if (what < 40)
        clickIn(top);
    else if (what < 65)
        typeIn(top);
    else if (what < 80 || top != &m_window)
        keyIn(top);
    else if (what < 90)
        shortcut();
    else if (what < 98)
        menuBar();
    else
        resize();
}

void Hands::clickIn(QWidget* top) {
    const QList<QWidget*> seen =
        m_dice.oneIn(3) ? seenIn(top, [](const QWidget*) { return true; }) : seenIn(top, isForHands);
    if (seen.isEmpty())
        return;
    QWidget* widget = m_dice.oneOf(seen);
    const QRect room = widget->visibleRegion().boundingRect();
    const QPoint in(m_dice.between(room.left(), room.right()), m_dice.between(room.top(), room.bottom()));
    const QPointF at(widget->mapTo(top, in));
    const QPointer<QWindow> window(top->windowHandle());
    tell(QStringLiteral("click %1 %2 at %3, %4")
             .arg(QLatin1String(widget->metaObject()->className()), widget->objectName())
             .arg(at.x())
             .arg(at.y()));
    switch (m_dice.below(10)) {
    case 0:
        return m_input.click(window, at, Qt::RightButton);
    case 1:
    case 2:
        return m_input.doubleClick(window, at);
    case 3:
        return m_input.wheel(window, at, m_dice.between(-3, 3) * 120);
    default:
        return m_input.click(window, at, Qt::LeftButton, m_dice.oneIn(8) ? someModifiers() : Qt::NoModifier);
    }
}

/// Into a field or a cell, and how it ends: taken, left, given up or still open.
void Hands::typeIn(QWidget* top) {
    const QPointer<QWindow> window(top->windowHandle());
    if (const QList<QWidget*> fields = seenIn(top, isField); !fields.isEmpty() && !m_dice.oneIn(4)) {
        const QWidget* field = m_dice.oneOf(fields);
        const QRect room = field->visibleRegion().boundingRect();
        const QPoint in(m_dice.between(room.left(), room.right()), m_dice.between(room.top(), room.bottom()));
        tell(QStringLiteral("into ") + field->objectName());
        m_input.click(window, QPointF(field->mapTo(top, in)));
        if (m_dice.oneIn(2))
            m_input.key(window, Qt::Key_F2);
        if (m_dice.oneIn(2))
            m_input.key(window, Qt::Key_A, Qt::ControlModifier);
    }
    const QString text = QString::fromUtf8(m_dice.oneOf(kTyped));
    tell(QStringLiteral("type ") + text);
    if (!onTop() || onTop() == top)
        m_input.type(window, m_dice.oneIn(60) ? text.repeated(40) : text);
    constexpr int kEnds[]{Qt::Key_Return, Qt::Key_Return, Qt::Key_Return, Qt::Key_Tab,
                          Qt::Key_Escape, Qt::Key_Enter,  Qt::Key_Up,     0};
    if (const int end = m_dice.oneOf(kEnds); end != 0)
        m_input.key(window, end);
}

void Hands::keyIn(QWidget* top) {
    constexpr int kKeys[]{Qt::Key_Tab,  Qt::Key_Backtab, Qt::Key_Left,     Qt::Key_Right,     Qt::Key_Up,
                          Qt::Key_Down, Qt::Key_Return,  Qt::Key_Space,    Qt::Key_Delete,    Qt::Key_Home,
                          Qt::Key_End,  Qt::Key_PageUp,  Qt::Key_PageDown, Qt::Key_Question,  Qt::Key_Menu,
                          Qt::Key_F2,   Qt::Key_B,       Qt::Key_R,        Qt::Key_W,         Qt::Key_Z,
                          Qt::Key_1,    Qt::Key_Plus,    Qt::Key_Escape,   Qt::Key_Backspace, Qt::Key_F6};
    const QPointer<QWindow> window(top->windowHandle());
    for (int left = m_dice.between(1, 5); left > 0 && window && (!onTop() || onTop() == top); --left) {
        const int key = m_dice.oneOf(kKeys);
        const Qt::KeyboardModifiers held = m_dice.oneIn(4) ? someModifiers() : Qt::NoModifier;
        tell(QStringLiteral("key %1").arg(QKeySequence(key | int(held)).toString()));
        m_input.key(window, key, held);
    }
}

/// Any of the window's own; undo and redo more often.
void Hands::shortcut() {
    QList<QKeySequence> all;
    for (const QAction* action : m_window.findChildren<QAction*>())
        all << action->shortcuts();
    for (int i = 0; i < 6; ++i)
        all << QKeySequence(QKeySequence::Undo) << QKeySequence(Qt::CTRL | Qt::Key_Y);
    all << QKeySequence(Qt::CTRL | Qt::Key_A) << QKeySequence(Qt::CTRL | Qt::Key_C)
        << QKeySequence(Qt::CTRL | Qt::Key_X);
    const QKeySequence keys = m_dice.oneOf(all);
    if (keys.isEmpty())
        return;
    tell(QStringLiteral("shortcut ") + keys.toString());
    m_input.key(m_window.windowHandle(), keys[0].key(), keys[0].keyboardModifiers());
}

void Hands::menuBar() {
    QMenuBar* bar = m_window.menuBar();
    const QList<QAction*> menus = bar->actions();
    QAction* menu = m_dice.oneOf(menus);
    tell(QStringLiteral("menu ") + menu->text());
    const QPoint in = bar->actionGeometry(menu).center();
    m_input.click(m_window.windowHandle(), QPointF(bar->mapTo(&m_window, in)));
    for (int left = m_dice.below(4); left > 0 && onTop() && onTop()->inherits("QMenu"); --left)
        inMenu(onTop());
}

void Hands::resize() {
    const QSize least = m_window.minimumSize();
    const QSize to(m_dice.between(least.width(), 1300), m_dice.between(least.height(), 900));
    tell(QStringLiteral("resize to %1, %2").arg(to.width()).arg(to.height()));
    m_window.resize(to);
    QCoreApplication::processEvents();
}

} // namespace tailpoint::test
