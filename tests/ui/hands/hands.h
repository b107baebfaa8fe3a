// SPDX-License-Identifier: MIT
// Hands that do anything to the window: seeded gestures, keys, typed values, menus and dialogs.
#pragma once

#include "tests/ui/hands/dice.h"
#include "tests/ui/hands/input.h"

#include <QString>
#include <QWidget>

namespace tailpoint {
class MainWindow;
}

namespace tailpoint::test {

/// They keep off what leaves the window's own folder: quitting, printing, files of others' choice. What asks
/// for such a thing is cancelled.
class Hands {
public:
    Hands(MainWindow& window, std::uint32_t seed);

    /// One gesture, whole; its dice depend on seed and number alone.
    void step(int number);
    /// Closes what is open over the window, takes back what is being typed or held.
    void letGo();
    const QString& told() const { return m_told; } ///< the last gesture, in words

private:
    // hands.cpp: what is on top, and what is done there
    QWidget* onTop() const;
    QWidget* target();
    void blocked();
    void act(QWidget* top);
    void inMenu(QWidget* menu);
    void close(QWidget* top);
    // sheet_hands.cpp
    void onSheet();
    void drag();
    void pan();
    void sheetKey();
    std::vector<QPointF> places() const;
    QPointF place();
    QPointF anywhere();
    QPointF fromSheet(QPointF at) const;
    Qt::KeyboardModifiers someModifiers();
    // widget_hands.cpp
    void onWidget(QWidget* top);
    void clickIn(QWidget* top);
    void typeIn(QWidget* top);
    void keyIn(QWidget* top);
    void shortcut();
    void menuBar();
    void resize();

    void tell(const QString& what);

    MainWindow& m_window;
    std::uint32_t m_seed;
    Dice m_dice;
    Input m_input;
    int m_depth = 0; ///< loops within loops
    int m_idle = 0;  ///< times that an event was blocked with nothing on top
    QString m_told;
};

} // namespace tailpoint::test
