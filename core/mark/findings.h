// SPDX-License-Identifier: MIT
// Which slips fit the given numbers, in which order, and with how much evidence. Internal to mark/.
#pragma once

#include "core/mark/match.h"
#include "core/mark/pairs.h"

namespace tailpoint::marking {

/// Slips that give the same given numbers.
struct Fitting {
    struct One {
        std::size_t first = 0;
        std::optional<std::size_t> second{}; ///< of a pair
    };
    std::vector<One> slips;             ///< the one that is named in front
    Numbers numbers;                    ///< of that one
    std::vector<std::size_t> explained; ///< given numbers, by their index, in the order of calculation
    std::size_t contradicted = 0, againstRight = 0; ///< given numbers, and those of them that are right
    bool isNear = false; ///< misses nothing by more than half a unit of the given digit
    double covered = 1;
    bool isStrong = false;
};

/// The share of random wrong answers that evidence may cover and be strong. Source: common practice, no
/// source.
inline constexpr double kMostCovered = 0.02;
/// And up to which two slips at once are worth telling.
inline constexpr double kMostCoveredByPairs = 0.1;

class Findings {
public:
    Findings(const Question& question, Alternatives& alternatives)
        : m_question(question), m_alternatives(alternatives) {}

    /// Likeliest first; none where nothing is wrong.
    std::vector<Fitting> find(const std::vector<Given>& givens) const;
    Pairs& pairs() const;

private:
    std::vector<Fitting> singles(const std::vector<Given>& givens) const;
    void addPairs(const std::vector<Given>& givens, std::vector<Fitting>& fittings) const;
    /// The share of random wrong answers that some alternative would fit as well in what is explained.
    double covered(const std::vector<Given>& givens, const std::vector<std::size_t>& explained,
                   bool withPairs) const;

    const Question& m_question;
    Alternatives& m_alternatives;
    mutable std::unique_ptr<Pairs> m_pairs; ///< when first needed
};

/// Ids that are one number by nature: whether both stand in one of those lists.
bool areOneByNature(std::string_view a, std::string_view b);

} // namespace tailpoint::marking
