// Two slips at once: only where no single one fits. Internal to mark/.
#pragma once

#include "core/mark/alternatives.h"

namespace tailpoint::marking {

/// Two slips; what they give together stands in columns, of what is asked alone.
struct Pair {
    std::uint32_t first = 0, second = 0; ///< of Alternatives::at()
};

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

private:
    bool areCommon(std::size_t first, std::size_t second) const;
    void addRewrites();
    void addForms();
    void addReadings();
    void addRead(std::size_t reading, const Way& way, std::size_t number);
    enum class Tolerance : std::uint8_t { none, ofChange, ofRight };
    std::optional<Numbers> inOneChain(const Origin& a, const Origin& b, Tolerance tolerance) const;
    void add(std::size_t first, std::size_t second, const Numbers& numbers);
    std::optional<Numbers> together(std::size_t first, std::size_t second, bool tolerances) const;

    const Question& m_question;
    Alternatives& m_alternatives;
    struct Column {
        std::vector<float> value, tolerance;
    };
    std::vector<Pair> m_pairs;
    std::vector<Column> m_columns;
};

} // namespace tailpoint::marking
