// SPDX-License-Identifier: MIT
// A sketch is opened, hands do what they like, and undo leads back to what was opened.
#pragma once

#include "tests/ui/hands/hands.h"
#include "tests/ui/hands/warnings.h"

#include <QByteArray>
#include <QStringList>

namespace tailpoint::test {

class Round {
public:
    Round(MainWindow& window, Warnings& warnings) : m_window(window), m_warnings(warnings) {}

    /// Opens `file` and does the steps `first` … `first + count - 1` of these hands. What is wrong, in one
    /// line; empty: nothing.
    QString play(Hands& hands, const QString& file, int first, int count);
    int step() const { return m_step; }         ///< the last one that was done
    int undone() const { return m_undone; }     ///< steps that were taken back, of all rounds
    int replaced() const { return m_replaced; } ///< times that hands began another sketch, of all rounds

    std::function<void(int)> beforeStep = [](int) {}; ///< for who wants to know before it is done

private:
    QString faultNow();
    QString faultOfUndo();
    MainWindow& m_window;
    Warnings& m_warnings;
    QByteArray m_start; ///< as opened, or as the hands began another sketch since
    int m_step = 0, m_undone = 0, m_replaced = 0;
};

/// The samples, copied into `folder`, where hands may save them.
QStringList sketchesIn(const QString& folder);

} // namespace tailpoint::test
