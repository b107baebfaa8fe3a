// SPDX-License-Identifier: MIT
// Two slips at once: only where no single one fits. Internal to mark/.
#pragma once

#include "core/mark/alternatives.h"

namespace tailpoint::marking {

/// Two slips; what they give together stands in columns, of what is asked alone.
struct Pair {
    std::uint32_t first = 0;  ///< of Alternatives::singles()
    std::uint32_t second = 0; ///< the same; of a question that is read wrongly one of its own rewrites
    bool isRead = false;
};

/// Whether two slips at once are looked for in that chain.
bool isPaired(const Way& way);

class Pairs {
public:
    /// All pairs from different places or different lines of which one at least is common; takes some ms.
    Pairs(const Question& question, Alternatives& alternatives);

    const std::vector<Pair>& all() const { return m_pairs; }
    /// Cells of what is asked: those that have columns.
    std::size_t columns() const { return m_columns.size(); }
    /// In single precision; kNone where the pair leaves the cell right or says nothing of it.
    double value(std::size_t pair, std::size_t cell) const {
        return static_cast<double>(m_columns[cell].value[pair]);
    }
    /// The larger of both slips' tolerances.
    double tolerance(std::size_t pair, std::size_t cell) const {
        return static_cast<double>(m_columns[cell].tolerance[pair]);
    }
    /// Evaluated anew, with intermediates and tolerances of its own.
    Numbers numbersOf(std::size_t pair) const;
    /// Both as Alternatives::at() has them; a rewrite of a question read wrongly is kept there from then on.
    std::pair<std::size_t, std::size_t> slipsOf(std::size_t pair);

private:
    /// A slip in a chain of a question that is read wrongly: one of the question's own where the lines that
    /// it changes are the same, else made for it.
    struct Part {
        std::size_t slip = 0, reading = 0, way = 0;
        const Rewrite* rewrite = nullptr;
        const Alternative* like = nullptr; ///< the same slip by itself, about as tolerant
        std::size_t kept = 0;              ///< of Alternatives::at(); 0: not yet
    };
    /// A single slip in a chain, run.
    struct Ran {
        std::size_t single = 0;
        Alternatives::Run run;
        std::vector<double> asked{}; ///< what it makes of what is asked
    };
    /// Of a slip's forms those that a question read wrongly shares with the question as it stands.
    struct Shared {
        std::vector<std::pair<std::size_t, std::size_t>> places;
        bool isWhole = true;
    };
    std::vector<Ran> ranIn(std::size_t way) const;
    bool areCommon(std::size_t first, std::size_t second) const;
    void addRewrites(std::size_t way, const std::vector<Ran>& all);
    void addForms();
    void addReading(std::size_t reading, const std::vector<std::vector<Ran>>& own);
    void addRead(std::size_t reading, std::size_t way, const std::vector<Ran>& own);
    void addMadeAnew(std::size_t reading, std::size_t way, const std::vector<Shared>& shared);
    bool addPart(const Part& part, const Way& way, const Program::State& state);
    Numbers inOneChain(const Way& way, const Rewrite& changed, bool isSteep) const;
    /// A form's number of what a slip gives; empty where they don't go together.
    std::optional<double> stated(std::size_t slip, std::size_t form) const;
    const Numbers& tolerancesOf(const Pair& pair) const;
    bool add(const Pair& pair, const std::vector<double>& values);
    bool areSameAsked(const std::vector<double>& a, const std::vector<double>& b) const;
    std::vector<double> askedIn(const Way& way, const Program::State& state) const;

    const Question& m_question;
    Alternatives& m_alternatives;
    struct Column {
        std::vector<float> value, tolerance;
    };
    std::vector<Pair> m_pairs;
    std::vector<Column> m_columns;
    std::vector<Part> m_parts;
    std::deque<Rewrite> m_made;
};

} // namespace tailpoint::marking
