// Two slips at once: only where no single one fits. Internal to mark/.
#pragma once

#include "core/mark/alternatives.h"

namespace tailpoint::marking {

/// What two slips give together, of what is asked alone.
struct Pair {
    std::uint32_t first = 0, second = 0; ///< of Alternatives::singles()
    std::vector<float> value;            ///< by asked cell; kNone where it says nothing
};

class Pairs {
public:
    /// All pairs from different places or different lines; takes some ms.
    Pairs(const Question& question, const Alternatives& alternatives);

    const std::vector<Pair>& all() const { return m_pairs; }
    /// The larger of both slips' tolerances.
    double tolerance(const Pair& pair, std::size_t cell) const;
    /// Evaluated anew, with intermediates and tolerances of its own.
    Numbers numbersOf(const Pair& pair) const;

private:
    void addRewrites();
    void addForms();
    void add(std::size_t first, std::size_t second, const Numbers& numbers);
    std::optional<Numbers> together(std::size_t first, std::size_t second, bool tolerances) const;

    const Question& m_question;
    const Alternatives& m_alternatives;
    std::vector<Pair> m_pairs;
};

} // namespace tailpoint::marking
