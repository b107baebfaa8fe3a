// SPDX-License-Identifier: MIT
// A question put to a class: the right value among those that likely slips give, and the votes for each.
//
//   for (const Poll& poll : pollsOf(sketch)) ...poll.choices...
//   Ballot ballot(poll.choices.size());
//   ballot.setVotes(0, 12); ballot.goOn();
#pragma once

#include "core/mark/mark.h"

#include <string>
#include <vector>

namespace tailpoint {

struct PollChoice {
    std::string text; ///< "335 N"; of a question with two answers both, ascending: "58.1 N or 213 N"
    double value = 0; ///< by which it is set in order, of two the lesser; in the sheet's units
    std::string slip; ///< id of the slip that gives it; empty: it is right
    Prose sentence;   ///< what the slip does
    std::vector<ChangedLine> lines;
    bool isRight() const { return slip.empty(); }
};

/// One asked quantity.
struct Poll {
    std::string name; ///< "theta_R"
    Symbol symbol;
    Prose asked; ///< "The direction of R from +x, counter-clockwise positive", without a full stop
    std::vector<PollChoice> choices; ///< ascending, one of them right; no two print alike or hold the same
};

inline constexpr std::size_t kPollSlips = 3; ///< beside the right value, at the most

/// What can be put to a vote, in the question's order: the asked quantities for which at least one usual slip
/// gives another number that could be taken for it: no magnitude below a tenth of what is right or above ten
/// times as much, none negative where that is not, no square. The likeliest slips are taken. Some
/// milliseconds.
std::vector<Poll> pollsOf(const Sketch& sketch);

/// Two votes with talk between them (peer instruction: Mazur, 'Peer Instruction', 1997; from memory). How the
/// votes are shared out is told only after the second, so that the first does not sway it.
class Ballot {
public:
    enum class Phase : std::uint8_t { first, talk, second, closed };
    static constexpr int kMostVotes = 9999;

    explicit Ballot(std::size_t choices = 0)
        : m_votes{std::vector<int>(choices), std::vector<int>(choices)} {}

    Phase phase() const { return m_phase; }
    bool takesVotes() const { return m_phase == Phase::first || m_phase == Phase::second; }
    void goOn();   ///< to the next phase; nothing once it is closed
    void goBack(); ///< to the phase before; nothing at the first. No vote is lost.
    std::size_t choices() const { return m_votes[0].size(); }

    /// In the vote that is open: nothing where none is, or where a count is not from 0 to kMostVotes.
    void setVotes(std::size_t choice, int votes);
    int votes(bool second, std::size_t choice) const { return m_votes[second ? 1 : 0][choice]; }
    int total(bool second) const;
    /// 0 to 1; empty before the second vote is closed, and where nobody voted.
    std::optional<double> share(bool second, std::size_t choice) const;

private:
    Phase m_phase = Phase::first;
    std::vector<int> m_votes[2];
};

} // namespace tailpoint
