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

    /// Begins anew with the first asked quantity. Without polls the board says so.
    void setPolls(std::vector<Poll> polls);
    /// True where the board knew the key.
    bool takeKey(QKeyEvent* event);
    void goOn();
    void goBack();
    void setTwinFailed(bool failed); ///< no other numbers were found: says so until the next key

    bool isEmpty() const { return m_polls.empty(); }
    bool isFirst() const { return ballot().phase() == Ballot::Phase::first; }
    const Poll& poll() const { return m_polls[m_poll]; }
    const Ballot& ballot() const { return m_ballots[m_poll]; }
    std::size_t chosen() const { return m_chosen; } ///< row that takes digits
    /// Once the second vote is closed: the wrong choice whose reason is shown in place of the shares.
    std::optional<std::size_t> reason() const { return m_reason; }
    bool hasNone() const { return m_none; }
    /// What may be read now, for assistive technology.
    QString plainText() const;
    double lowest() const { return m_lowest; } ///< of what was painted last, pixels: for the tests
    double keysTop() const;                    ///< where its keys are told, below all else

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Line {
        Working working;
        bool isRight = false;
    };
    static std::vector<std::vector<Line>> layoutsOf(const PollChoice& choice);
    Ballot& current() { return m_ballots[m_poll]; }
    std::size_t rows() const { return poll().choices.size() + (m_none ? 1 : 0); }
    void choose(std::size_t row);
    std::vector<std::size_t> wrongByVotes() const;
    void turnReason(int by);
    void typeDigit(int digit);
    void nextPoll();
    void toggleNone();
    void tell();
    QString rowText(std::size_t row) const;
    QString phaseText() const;
    QString votesText(bool second) const;
    QFont font(double factor, bool bold = false) const;
    void paintRow(QPainter& painter, std::size_t row, double& y) const;
    void paintShares(QPainter& painter, std::size_t row, double y) const;
    void paintAsked(QPainter& painter, const Formula& asked, double& y) const;
    void paintReason(QPainter& painter, double& y, double bottom) const;
    double paintKeys(QPainter& painter) const;
    QString keysText() const;

    Measures m_measures;
    const Theme* m_theme;
    std::vector<Poll> m_polls;
    std::vector<Ballot> m_ballots; ///< one for each, with a place for 'none of these'
    std::size_t m_poll = 0, m_chosen = 0;
    std::optional<std::size_t> m_reason;
    bool m_none = false, m_fresh = true; ///< the next digit begins a new count
    bool m_twinFailed = false;
    double m_lowest = 0;
};

} // namespace tailpoint
