// SPDX-License-Identifier: MIT
// Hints for a question, one at a time: of every line of its solution what it is and the question for its
// principle; the principle with the line in letters, once something was tried; the line in numbers. What a
// line comes to is never in its own hint; the numbers of a line tell what the lines before it give.
#pragma once

#include "core/explain/explain.h"

#include <set>
#include <vector>

namespace tailpoint {

/// A line of the solution as it is hinted at.
struct HintedLine {
    enum class Told : std::uint8_t { nothing, principle, letters, numbers };
    std::optional<QuantityId> gives; ///< empty: no quantity of the chain by itself
    Prose asks;                      ///< what comes next, and the question for its law; doesn't name it
    std::string principle;           ///< what the step does: names the law
    Working letters, numbers;        ///< without what they come to; one may say no more than the other
    std::optional<double> comesTo;   ///< as printed, without its sign
    Told told = Told::nothing;
};

class Hints {
public:
    Hints() = default; ///< none
    /// Of the question's first answer. Without any where it has none.
    explicit Hints(const Sketch& sketch);

    const std::vector<HintedLine>& lines() const { return m_lines; }
    /// What is answered rightly needs no hint.
    void setRight(std::set<QuantityId> right) { m_right = std::move(right); }
    bool hasNext() const { return next() < m_lines.size(); }
    /// Tells one more. Precondition: hasNext().
    const HintedLine& open();
    /// What was told leaves nothing to find: it was the last one, or its numbers have a value in them that is
    /// asked and not answered yet.
    bool tellsAll(const std::vector<QuantityId>& asked) const;

private:
    std::size_t next() const;
    bool tellsOne(const HintedLine& line, const std::vector<QuantityId>& asked) const;
    bool isRight(const std::optional<QuantityId>& id) const { return id && m_right.count(*id) > 0; }

    std::vector<HintedLine> m_lines;
    std::set<QuantityId> m_right;
};

} // namespace tailpoint
