// SPDX-License-Identifier: MIT
// A question put to the class, in the column's place: choices with a key each, votes typed as counts, the
// shares only after the second vote, and then what each wrong choice comes from.
#pragma once

#include "core/practice/poll.h"
#include "ui/lecture/measures.h"
#include "ui/render/formula.h"
#include "ui/style/theme.h"

#include <QWidget>

namespace tailpoint {

class VoteBoard : public QWidget {
    Q_OBJECT
public:
    explicit VoteBoard(QWidget* parent);
    void setMeasures(const Measures& measures);
    void setTheme(const Theme& theme);

    /// Begins anew with the first asked quantity. Without polls the board says so. What was voted is gone.
    void setPolls(std::vector<Poll> polls);
    /// True where the board knew the key.
    bool takeKey(QKeyEvent* event);
    void goOn(); ///< a vote without votes is closed at the second asking
    void goBack();
    void setTwinFailed(bool failed); ///< no other numbers were found: says so until the next key

    bool isEmpty() const { return m_polls.empty(); }
    bool isFirst() const { return ballot().phase() == Ballot::Phase::first; }
    const Poll& poll() const { return m_polls[m_poll]; }
    const Ballot& ballot() const { return m_ballots[m_poll]; }
    std::size_t chosen() const { return m_chosen; } ///< row that takes digits
    /// What stands at the right of a row: the count that is being typed; of the others only that there is
    /// one.
    QString countText(std::size_t row) const;
    /// Once the second vote is closed: the wrong choice whose reason is shown in place of the shares.
    std::optional<std::size_t> reason() const { return m_reason; }
    bool hasNone() const { return m_none; }
    /// What may be read now, for assistive technology.
    QString plainText() const;
    QString keysText() const; ///< as told below

    // Of what was painted last, pixels: for the tests.
    double lowest() const { return m_lowest; }
    double widest() const { return m_widest; }
    double keysTop() const; ///< where its keys are told, below all else
    /// Top and bottom of a row's words and, once the vote is closed, of its share in figures.
    struct RowSeen {
        QRectF words, share, bars;
    };
    const std::vector<RowSeen>& rowsSeen() const { return m_rowsSeen; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Line {
        Working working;
        bool isRight = false;
    };
    /// How tightly the board is set: what its room allows.
    struct Room {
        bool asked = true; ///< what is asked, in words
        double air = 1;    ///< between the rows
    };
    static std::vector<std::vector<Line>> layoutsOf(const PollChoice& choice);
    Ballot& current() { return m_ballots[m_poll]; }
    bool isSecond() const { return ballot().phase() == Ballot::Phase::second; }
    bool isClosed() const { return ballot().phase() == Ballot::Phase::closed; }
    bool isRight(std::size_t row) const {
        return row < poll().choices.size() && poll().choices[row].isRight();
    }
    std::size_t rows() const { return poll().choices.size() + (m_none ? 1 : 0); }
    bool isWrong(std::size_t row) const { return row < poll().choices.size() && !isRight(row); }
    void begin();
    void choose(std::size_t row);
    std::vector<std::size_t> wrongByVotes() const;
    void turnReason(int by);
    void typeDigit(int digit);
    void eraseDigit();
    void nextPoll();
    void toggleNone();
    bool typesKey(int key);
    bool movesKey(int key);
    void tell();
    QString rowText(std::size_t row) const;
    QString phaseText() const;
    QString votesText(bool second) const;
    Prose keysProse() const;
    QFont font(double factor, bool bold = false) const;

    Setting setKeys() const;
    Setting setHeading(const QString& value) const;
    Setting setAsked() const;
    double heightOf(const Room& room) const;
    Room roomFor(double height) const;
    double rowHeight(std::size_t row, const Room& room) const;
    double wordsHeight(std::size_t row) const;
    QString rowTold(std::size_t row) const;
    double paintHeading(QPainter& painter, const QString& value, double y) const;
    double paintWords(QPainter& painter, const QString& text, const QFont& font, const QColor& colour,
                      double y) const;
    void paintBoard(QPainter& painter, double bottom);
    void paintRow(QPainter& painter, std::size_t row, const Room& room, double y);
    void paintEntry(QPainter& painter, std::size_t row, const QRectF& box) const;
    void paintShares(QPainter& painter, std::size_t row, double y, RowSeen& seen) const;
    double paintReason(QPainter& painter, double y, double bottom) const;
    double paintKeys(QPainter& painter) const;

    Measures m_measures;
    const Theme* m_theme;
    std::vector<Poll> m_polls;
    std::vector<Ballot> m_ballots; ///< one for each, with a place for 'none of these'
    std::size_t m_poll = 0, m_chosen = 0;
    std::optional<std::size_t> m_reason;
    bool m_none = false, m_fresh = true; ///< the next digit begins a new count
    bool m_twinFailed = false;
    bool m_asksOnce = false; ///< nobody has voted: goOn() goes on the next time
    double m_lowest = 0, m_widest = 0;
    std::vector<RowSeen> m_rowsSeen;
};

} // namespace tailpoint
