// SPDX-License-Identifier: MIT
// The numbers that the slips give, made once for a question. Internal to mark/.
#pragma once

#include "core/mark/rounding.h"
#include "core/mark/slips.h"

#include <deque>
#include <functional>
#include <memory>

namespace tailpoint::marking {

/// What can be made in more places than these isn't tried: no answer would tell them apart.
inline constexpr std::size_t kMostOfOneSlip = 48;

/// How an alternative came about, for who tells it.
struct SlipOrigin {
    std::size_t ways = 0; ///< index in Alternatives::read; 0: the question as it stands
    std::size_t way = 0;  ///< calculation: the chain in there
    std::optional<Rewrite> rewrite{};
    std::optional<Reading> reading{};
    std::optional<ShortCut> shortCut{};
    std::optional<Form> form{};
    std::size_t cell = 0; ///< of a form
};

struct Alternative {
    std::size_t slip = 0; ///< in the catalogue
    std::size_t origin = 0;
    Numbers numbers;           ///< kNone where it says nothing
    std::vector<bool> changed; ///< by cell: another number than the right one
    std::vector<Route> routes; ///< chains in which it gives the same
    bool isSwapped = false;    ///< the first answer's numbers in the cells of the second, and the reverse
};

class Alternatives {
public:
    /// Of the slips that are wanted; empty: of all.
    explicit Alternatives(const Question& question, const std::function<bool(const Slip&)>& isWanted = {});

    const std::vector<Alternative>& singles() const { return m_singles; }
    /// One of these, or behind them one of those that are kept for pairs alone.
    const Alternative& at(std::size_t index) const {
        return index < m_singles.size() ? m_singles[index] : m_kept[index - m_singles.size()];
    }
    /// A slip in a question that is read wrongly as well; its index.
    std::size_t keep(Alternative alternative, SlipOrigin origin);
    const SlipOrigin& origin(const Alternative& alternative) const { return m_origins[alternative.origin]; }
    const Ways& ways(const SlipOrigin& origin) const { return *m_read[origin.ways]; }
    /// Null where the question is read as it stands.
    std::shared_ptr<const Sketch> read(const SlipOrigin& origin) const {
        return origin.ways == 0
                   ? nullptr
                   : std::shared_ptr<const Sketch>(m_read[origin.ways], &m_read[origin.ways]->sketch);
    }
    const Slip& slip(const Alternative& alternative) const { return catalogue()[alternative.slip]; }

    /// The state of a chain with a rewrite.
    struct Run {
        std::vector<Program::Patch> patches;
        Program::State state;
    };
    static Run run(const Way& way, const Rewrite& rewrite);
    /// What a program of the question's ways has in the state, by cell.
    Numbers numbersIn(const Way& way, const Program::State& state) const;
    /// A value by its id: of the answer's own, else of any chain, else as given.
    std::optional<long double> rightValue(const QuantityId& id) const;

private:
    void addRewrites(std::size_t slip);
    void addReadings(std::size_t slip);
    void turnBack(const Solved& solved, Numbers& numbers) const;
    void addShortCuts(std::size_t slip);
    void addForms(std::size_t slip);
    void add(std::size_t slip, SlipOrigin origin, Numbers numbers, const Route* route);
    bool addNumbers(std::size_t slip, Numbers numbers, const Route* route, bool isSwapped);
    double formTolerance(const Form& form, std::size_t cell, double value) const;

    const Question& m_question;
    std::vector<std::shared_ptr<const Ways>> m_read; ///< the question's own, then as it was read
    std::vector<Rounding> m_rounding;                ///< of the question's own ways
    std::deque<SlipOrigin> m_origins;
    std::vector<Alternative> m_singles;
    std::deque<Alternative> m_kept;
};

/// Equal but for the last bits.
bool isSame(const Question& question, std::size_t cell, double a, double b);

} // namespace tailpoint::marking
