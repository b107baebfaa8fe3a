// SPDX-License-Identifier: MIT
// Two lines of text: the quiet hint at the window's foot, and a notice under the bar when something went
// wrong.
#pragma once

#include "ui/style/theme.h"

#include <QList>
#include <QWidget>
#include <functional>

class QGridLayout;
class QHBoxLayout;
class QLabel;
class QToolButton;

namespace tailpoint {

class LinkButton;
class SpokenLine;

/// One line of what to do, the pointer's value at the right, and a switch at the end. A hint that is longer
/// than the line is shown as far as its whole sentences go; all of it is in the tooltip and told to assistive
/// technology.
class HintLine : public QWidget {
    Q_OBJECT
public:
    explicit HintLine(QWidget* parent = nullptr);
    void addSwitch(QWidget* control);
    /// What is said aloud; has no room of its own.
    SpokenLine& status() { return *m_status; }

public slots:
    void setHint(const QString& hint);
    void setRichHint(const QString& hint, const QString& rich); ///< the same twice, plain and with symbols
    void setReadout(const QString& readout);

signals:
    void told(const QString& hint); ///< by a command that did something, not by the sheet

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();

    QString m_plain, m_rich; ///< the whole hint
    QLabel *m_hint, *m_readout;
    SpokenLine* m_status;
    QHBoxLayout* m_row;
};

/// Says what could not be done, or offers something, until it is dismissed or something else is said. Below
/// that may stand an offer that waits: it is to be seen whenever nothing else is, until it is answered or
/// dismissed. Never takes the focus.
class Notice : public QWidget {
    Q_OBJECT
public:
    struct Offer {
        QString title;
        std::function<void()> take;
    };

    explicit Notice(QWidget* parent = nullptr);
    void say(const QString& line) { ask(line, {}); } ///< empty: what was said or asked goes
    /// At most two offers; taking one closes the notice first.
    void ask(const QString& line, const QList<Offer>& offers);
    void offer(const QString& line, const QList<Offer>& offers); ///< the one that waits; empty: none
    bool isAsking() const { return !isHidden() && !shown().offers.isEmpty(); } ///< an offer is to be seen
    void setTheme(const Theme& theme);

signals:
    void told(const QString& line); ///< to be read aloud

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Said {
        QString line;
        QList<Offer> offers;
    };
    const Said& shown() const { return m_said.line.isEmpty() ? m_waiting : m_said; }
    void dismiss();
    void showNow();
    void arrange();

    QGridLayout* m_grid;
    QWidget* m_answers; ///< the offers, beside the line or below it
    QLabel *m_mark, *m_line;
    QList<LinkButton*> m_offers;
    Said m_said, m_waiting;
    QToolButton* m_close;
};

} // namespace tailpoint
