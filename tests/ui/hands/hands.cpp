// SPDX-License-Identifier: MIT
#include "tests/ui/hands/hands.h"

#include "ui/canvas/canvas.h"
#include "ui/window/main_window.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QMenu>
#include <QTest>
#include <algorithm>

namespace tailpoint::test {

namespace {

constexpr int kDeepest = 2;       ///< loops within loops in which something is still done
constexpr int kIdle = 10;         ///< blocked for so long with nothing on top: a drag of text
constexpr int kLongestPause = 40; ///< milliseconds: clocks that run on get their turn

/// Files of others' choice, paper, folders of pages: cancelled on sight.
bool leavesTheWindow(const QWidget* dialog) {
    return dialog->inherits("QFileDialog") || dialog->inherits("QAbstractPrintDialog") ||
           dialog->inherits("QPrintPreviewDialog") || dialog->objectName() == QLatin1String("problemsDialog");
}

/// Windows beside the main one that are open without holding it up.
QList<QWidget*> windowsBeside(const QWidget* window) {
    QList<QWidget*> found;
    for (QWidget* top : QApplication::topLevelWidgets())
        if (top != window && top->isVisible() &&
            (top->windowType() == Qt::Window || top->windowType() == Qt::Dialog))
            found << top;
    std::sort(found.begin(), found.end(), [](const QWidget* a, const QWidget* b) {
        return QLatin1String(a->metaObject()->className()) < QLatin1String(b->metaObject()->className());
    });
    return found;
}

} // namespace

Hands::Hands(MainWindow& window, std::uint32_t seed)
    : m_window(window), m_seed(seed), m_dice(seed, 0), m_input([this] { blocked(); }) {
    for (QAction* action : window.findChildren<QAction*>(QStringLiteral("fileQuit")))
        action->setEnabled(false);
}

void Hands::tell(const QString& what) {
    if (!m_told.isEmpty())
        m_told += QStringLiteral(", ");
    m_told += what;
}

QWidget* Hands::onTop() const {
    QWidget* popup = QApplication::activePopupWidget();
    return popup ? popup : QApplication::activeModalWidget();
}

/// What the next gesture is for.
QWidget* Hands::target() {
    if (QWidget* top = onTop())
        return top;
    const QList<QWidget*> beside = windowsBeside(&m_window);
    for (QWidget* window : beside)
        if (window->isFullScreen())
            return window;
    return beside.isEmpty() || m_dice.below(3) > 0 ? &m_window : m_dice.oneOf(beside);
}

void Hands::step(int number) {
    m_dice = Dice(m_seed, number);
    m_told.clear();
    m_idle = 0;
    const QPointer<QWidget> top(target());
    if (!top->isActiveWindow() && top->windowType() != Qt::Popup) {
        top->activateWindow();
        QCoreApplication::processEvents();
    }
    if (top)
        act(top);
    if (top && top != &m_window && m_dice.oneIn(3))
        close(top);
    QCoreApplication::processEvents();
    if (m_dice.oneIn(20))
        QTest::qWait(m_dice.below(kLongestPause));
}

void Hands::act(QWidget* top) {
    if (leavesTheWindow(top))
        close(top);
    else if (top->inherits("QMenu"))
        inMenu(top);
    else if (top != &m_window)
        onWidget(top);
    else if (m_dice.below(100) < 60)
        onSheet();
    else
        onWidget(top);
}

/// An event does not return: something on top has a loop of its own.
void Hands::blocked() {
    const QPointer<QWidget> top(onTop());
    if (!top) {
        if (++m_idle % kIdle == 0)
            m_input.key(m_window.windowHandle(), Qt::Key_Escape);
        return;
    }
    ++m_depth;
    m_input.letGo(top->windowHandle());
    for (int left = m_depth > kDeepest ? 0 : m_dice.below(4); left > 0 && top && top == onTop(); --left)
        act(top);
    if (top && top->isVisible())
        close(top);
    --m_depth;
}

void Hands::close(QWidget* top) {
    const QPointer<QWidget> closing(top);
    tell(QStringLiteral("close ") + QLatin1String(top->metaObject()->className()));
    m_input.key(top->windowHandle(), Qt::Key_Escape);
    if (!closing || !closing->isVisible())
        return;
    auto* dialog = qobject_cast<QDialog*>(closing.data());
    m_input.send([&] { dialog ? dialog->reject() : static_cast<void>(closing->close()); });
}

void Hands::inMenu(QWidget* top) {
    auto* menu = qobject_cast<QMenu*>(top);
    QList<QAction*> actions;
    for (QAction* action : menu->actions())
        if (action->isVisible() && !action->isSeparator())
            actions << action;
    const QPointer<QWindow> window(menu->windowHandle());
    const int what = m_dice.below(10);
    if (actions.isEmpty() || what == 0)
        return m_input.key(window, Qt::Key_Escape);
    if (what < 7) {
        const QAction* action = m_dice.oneOf(actions);
        tell(QStringLiteral("choose ") + action->text());
        return m_input.click(window, QPointF(menu->actionGeometry(const_cast<QAction*>(action)).center()));
    }
    constexpr int kWays[]{Qt::Key_Down, Qt::Key_Up, Qt::Key_Right, Qt::Key_Left};
    tell(QStringLiteral("keys in the menu"));
    for (int left = m_dice.below(6); left > 0; --left)
        m_input.key(window, m_dice.oneOf(kWays));
    if (m_dice.oneIn(2))
        m_input.key(QPointer<QWindow>(onTop() ? onTop()->windowHandle() : nullptr), Qt::Key_Return);
}

void Hands::letGo() {
    m_dice = Dice(m_seed, -1);
    for (int tries = 0; tries < 20 && (onTop() || !windowsBeside(&m_window).isEmpty()); ++tries)
        close(onTop() ? onTop() : windowsBeside(&m_window).first());
    m_window.activateWindow();
    m_window.canvas().setFocus();
    QCoreApplication::processEvents();
    for (int i = 0; i < 3; ++i)
        m_input.key(m_window.windowHandle(), Qt::Key_Escape);
    QCoreApplication::processEvents();
}

} // namespace tailpoint::test
