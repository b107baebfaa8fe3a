// SPDX-License-Identifier: MIT
// One step of the worked solution: a head that folds it, and its body. Down goes into the body and on line by
// line, Up back; Left leaves it for the head.
#pragma once

#include "ui/panel/solution_body.h"

#include <QAbstractButton>
#include <QWidget>

namespace tailpoint {

/// Number and title; checked: unfolded.
class SolutionHead : public QAbstractButton {
    Q_OBJECT
public:
    explicit SolutionHead(QWidget* parent);
    void show(int number, const QString& title);
    void setTheme(const Theme& theme);
    int heightFor(int width) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    int lettersHeight(int width) const;
    int m_number = 0;
    const Theme* m_theme;
};

class SolutionStep : public QWidget {
    Q_OBJECT
public:
    explicit SolutionStep(QWidget* parent);

    /// Takes the step over; lays out anew only what differs. `number` counts from 1.
    void show(const Step& step, int number);
    /// It is not needed: what it told must not be read any more, by nobody.
    void forget();
    void setTheme(const Theme& theme);
    void setLit(bool lit);
    bool isLit() const { return m_lit; }
    void setUnfolded(bool unfolded);
    bool isUnfolded() const;
    const Step& step() const { return m_step; }

    /// Lays the step out for this width and says how high it is.
    int layOut(int width);
    /// Says how high it is, or about how high it will be where it is not laid out for this width, which then
    /// waits: bodyWanted() is said before anybody reads it.
    int layOutLater(int width);
    QString plainText() const;
    QString spokenText() const; ///< title and all lines in words, a line each
    /// Takes the keyboard there; the last line is the head where the step is folded.
    void focusHead();
    void focusLastLine();
    void tabAfter(const SolutionStep& before); ///< Tab comes here from there
    const QWidget* tabStop() const { return m_head; }
    SolutionBody& body() { return *m_body; }
    /// What goes along with a copy of its text.
    void setCopiedBelow(const QString& text) { m_copiedBelow = text; }

    enum class Go { toFirst, toEndOfPrevious, toPrevious, toNext, toLast, byTab };

signals:
    void pointed(bool inside); ///< the pointer or the keyboard is on this step
    void foldChanged();
    void bodyWanted();                               ///< it waits to be laid out, and somebody reads it
    void goAsked(tailpoint::SolutionStep::Go where); ///< to another step, by the keyboard
    void attended(const QRect& place);               ///< in this widget: the keyboard is there

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void changeEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    int placeHead(int width);
    bool moveInBody(int key);
    bool moveFromHead(int key);
    QPoint menuPlace() const;

    Step m_step;
    SolutionHead* m_head;
    SolutionBody* m_body;
    const Theme* m_theme;
    int m_width = -1, m_height = 0;
    bool m_lit = false;
    QString m_copiedBelow;
};

} // namespace tailpoint
