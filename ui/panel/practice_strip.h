// SPDX-License-Identifier: MIT
// The question in words, at the head of the sheet, and under it what leads on while it is practised: a hint,
// the same kind once more, a harder one, the next. Takes no room where there is no question in words.
#pragma once

#include "ui/style/theme.h"

#include <QWidget>

class QAction;
class QLabel;
class QScrollArea;

namespace tailpoint {

class LinkButton;
class Practice;
class SpokenLine;
class ValueLabel;
class WrappingRow;

class PracticeStrip : public QWidget {
    Q_OBJECT
public:
    explicit PracticeStrip(Practice& practice, QWidget* parent = nullptr);
    void setTheme(const Theme& theme);
    /// A quiet button for the command, with an icon: at the left, or behind the others at the right.
    void addAtLeft(QAction* action, const QString& icon);
    void addAtRight(QAction* action, const QString& icon);
    /// What came of a command, in the row's middle; `spoken`: all that is read out for it.
    void say(const QString& shown, const QString& spoken);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    int heightOfRest(int across) const;
    void fitStatement();
    LinkButton* buttonFor(QAction* action, const QString& icon);
    QString kindWords() const;

    Practice& m_practice;
    ValueLabel* m_statement;
    QScrollArea* m_page; ///< of the statement
    QLabel* m_kind;
    SpokenLine* m_said;
    QWidget* m_commands;
    WrappingRow* m_row;
};

} // namespace tailpoint
