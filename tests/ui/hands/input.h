// SPDX-License-Identifier: MIT
// What a window system hands to a window: presses, moves, the wheel, keys.
#pragma once

#include <QEvent>
#include <QPointF>
#include <QPointer>
#include <QString>
#include <QWindow>

#include <functional>

namespace tailpoint::test {

/// An event that opens a dialog or a menu with a loop of its own returns when that is closed: until then
/// `blocked` is called again and again, and may send events itself.
class Input {
public:
    explicit Input(std::function<void()> blocked) : m_blocked(std::move(blocked)) {}

    /// Places are the window's; where it is gone by now nothing happens.
    void press(const QPointer<QWindow>& window, QPointF at, Qt::MouseButton button = Qt::LeftButton,
               Qt::KeyboardModifiers held = {});
    void move(const QPointer<QWindow>& window, QPointF to, Qt::KeyboardModifiers held = {});
    void release(const QPointer<QWindow>& window, QPointF at, Qt::MouseButton button = Qt::LeftButton,
                 Qt::KeyboardModifiers held = {});
    /// Of every button that is held, beside the window.
    void letGo(const QPointer<QWindow>& window);
    void click(const QPointer<QWindow>& window, QPointF at, Qt::MouseButton button = Qt::LeftButton,
               Qt::KeyboardModifiers held = {});
    void doubleClick(const QPointer<QWindow>& window, QPointF at);
    void wheel(const QPointer<QWindow>& window, QPointF at, int eighths, Qt::KeyboardModifiers held = {});

    void keyDown(const QPointer<QWindow>& window, int key, Qt::KeyboardModifiers held = {},
                 const QString& text = {});
    void keyUp(const QPointer<QWindow>& window, int key, Qt::KeyboardModifiers held = {},
               const QString& text = {});
    void key(const QPointer<QWindow>& window, int key, Qt::KeyboardModifiers held = {},
             const QString& text = {});
    void type(const QPointer<QWindow>& window, const QString& text);

    /// Anything else that may open a loop of its own.
    void send(const std::function<void()>& what);

private:
    void mouse(const QPointer<QWindow>& window, QEvent::Type type, QPointF at, Qt::MouseButton button,
               Qt::KeyboardModifiers held);
    void keyEvent(const QPointer<QWindow>& window, QEvent::Type type, int key, Qt::KeyboardModifiers held,
                  const QString& text);
    std::function<void()> m_blocked;
    Qt::MouseButtons m_held;
    int m_now = 1000; ///< milliseconds on the events' own clock
};

} // namespace tailpoint::test
