// SPDX-License-Identifier: MIT
#include "tests/ui/hands/input.h"

#include <QCoreApplication>
#include <QTest>
#include <QTimer>
#include <QWheelEvent>
#include <utility>

namespace tailpoint::test {

namespace {

constexpr int kPatience = 15;       ///< milliseconds before an event counts as blocked
constexpr int kBetween = 10;        ///< on the events' clock, from one to the next
constexpr int kBetweenClicks = 800; ///< so that two of them are no double click

const std::pair<Qt::KeyboardModifiers, int> kModifierKeys[]{{Qt::ShiftModifier, Qt::Key_Shift},
                                                            {Qt::ControlModifier, Qt::Key_Control},
                                                            {Qt::AltModifier, Qt::Key_Alt}};

bool isThere(const QPointer<QWindow>& window) {
    return window && window->isVisible();
}

/// The text that a keyboard sends along.
QString textOf(int key, Qt::KeyboardModifiers held, const QString& text) {
    if (!text.isEmpty() || (held & (Qt::ControlModifier | Qt::AltModifier)))
        return text;
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return QStringLiteral("\r");
    case Qt::Key_Tab:
        return QStringLiteral("\t");
    case Qt::Key_Escape:
        return QStringLiteral("\x1b");
    case Qt::Key_Backspace:
        return QStringLiteral("\b");
    case Qt::Key_Delete:
        return QStringLiteral("\x7f");
    default:
        break;
    }
    if (key < Qt::Key_Space || key > Qt::Key_AsciiTilde)
        return {};
    const QString letter(QChar::fromLatin1(static_cast<char>(key)));
    return held & Qt::ShiftModifier ? letter : letter.toLower();
}

} // namespace

void Input::send(const std::function<void()>& what) {
    QTimer watch; // one for each event: a timer that is at work does not go off again
    QObject::connect(&watch, &QTimer::timeout, &watch, [this] { m_blocked(); });
    watch.start(kPatience);
    what();
}

void Input::mouse(const QPointer<QWindow>& window, QEvent::Type type, QPointF at, Qt::MouseButton button,
                  Qt::KeyboardModifiers held) {
    if (type != QEvent::MouseMove)
        m_held.setFlag(button, type == QEvent::MouseButtonPress);
    if (!isThere(window))
        return;
    m_now += kBetween;
    send([&] {
        const QPointF global = at + QPointF(window->mapToGlobal(QPoint()));
        qt_handleMouseEvent(window, at, global, m_held, button, type, held, m_now);
    });
}

void Input::press(const QPointer<QWindow>& window, QPointF at, Qt::MouseButton button,
                  Qt::KeyboardModifiers held) {
    mouse(window, QEvent::MouseMove, at, Qt::NoButton, held);
    mouse(window, QEvent::MouseButtonPress, at, button, held);
}

void Input::move(const QPointer<QWindow>& window, QPointF to, Qt::KeyboardModifiers held) {
    mouse(window, QEvent::MouseMove, to, Qt::NoButton, held);
}

void Input::release(const QPointer<QWindow>& window, QPointF at, Qt::MouseButton button,
                    Qt::KeyboardModifiers held) {
    if (!m_held.testFlag(button))
        return; // what the press opened had it released
    mouse(window, QEvent::MouseButtonRelease, at, button, held);
    m_now += kBetweenClicks;
}

void Input::letGo(const QPointer<QWindow>& window) {
    for (const Qt::MouseButton button : {Qt::LeftButton, Qt::RightButton, Qt::MiddleButton})
        release(window, QPointF(-1, -1), button);
}

void Input::click(const QPointer<QWindow>& window, QPointF at, Qt::MouseButton button,
                  Qt::KeyboardModifiers held) {
    press(window, at, button, held);
    release(window, at, button, held);
}

void Input::doubleClick(const QPointer<QWindow>& window, QPointF at) {
    click(window, at);
    m_now -= kBetweenClicks;
    click(window, at);
}

void Input::wheel(const QPointer<QWindow>& window, QPointF at, int eighths, Qt::KeyboardModifiers held) {
    if (!isThere(window))
        return;
    send([&] {
        const QPointF global = at + QPointF(window->mapToGlobal(QPoint()));
        QWheelEvent event(at, global, {}, {0, eighths}, m_held, held, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(window, &event);
    });
}

/// The modifiers go down first and come up last, as keys of their own.
void Input::keyDown(const QPointer<QWindow>& window, int key, Qt::KeyboardModifiers held,
                    const QString& text) {
    Qt::KeyboardModifiers down;
    for (const auto& [modifier, code] : kModifierKeys)
        if (held & modifier) {
            keyEvent(window, QEvent::KeyPress, code, down, {});
            down |= modifier;
        }
    keyEvent(window, QEvent::KeyPress, key, held, textOf(key, held, text));
}

void Input::keyUp(const QPointer<QWindow>& window, int key, Qt::KeyboardModifiers held, const QString& text) {
    keyEvent(window, QEvent::KeyRelease, key, held, textOf(key, held, text));
    for (const auto& [modifier, code] : kModifierKeys)
        if (held & modifier) {
            keyEvent(window, QEvent::KeyRelease, code, held, {});
            held &= ~modifier;
        }
}

void Input::keyEvent(const QPointer<QWindow>& window, QEvent::Type type, int key, Qt::KeyboardModifiers held,
                     const QString& text) {
    if (isThere(window))
        send([&] { qt_handleKeyEvent(window, type, key, held, text); });
}

void Input::key(const QPointer<QWindow>& window, int key, Qt::KeyboardModifiers held, const QString& text) {
    keyDown(window, key, held, text);
    keyUp(window, key, held, text);
}

void Input::type(const QPointer<QWindow>& window, const QString& text) {
    for (const char32_t letter : text.toStdU32String()) {
        const int code = letter < 0x7F ? QChar(static_cast<char16_t>(letter)).toUpper().unicode() : 0;
        key(window, code != 0 ? code : int(Qt::Key_unknown), {}, QString::fromUcs4(&letter, 1));
    }
}

} // namespace tailpoint::test
