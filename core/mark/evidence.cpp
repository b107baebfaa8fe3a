// SPDX-License-Identifier: MIT
// How many random wrong answers would fit some slip as well.
#include "core/mark/findings.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

/// What random wrong answers range over: half to double of the right magnitude, or the turn.
struct Span {
    double low = 0, high = 0;
    double length() const { return high - low; }
};
Span spanOf(const Question& question, std::size_t cell) {
    const double right = std::abs(question.right().value[cell]);
    if (question.isDirection(cell))
        return {-question.turn() / 2, question.turn() / 2};
    if (question.dimension(cell) == Dimension::angle)
        return {0, question.turn() / 2};
    return {right / 2, 2 * right};
}

/// The part of the span that fits that number.
Span partOf(const Question& question, const Given& given, double value, double tolerance) {
    const Span span = spanOf(question, given.cell);
    const double half = given.reading.half + tolerance;
    if (question.isDirection(given.cell)) {
        const double at = std::remainder(value, question.turn());
        return {at - half, at + half}; // over the seam it counts as much
    }
    const double at = question.dimension(given.cell) == Dimension::angle ? value : std::abs(value);
    Span part{std::max(span.low, at - half), std::min(span.high, at + half)};
    if (part.high < part.low)
        part.high = part.low;
    return part;
}

double unionOf(std::vector<Span> parts) {
    std::sort(parts.begin(), parts.end(), [](const Span& a, const Span& b) { return a.low < b.low; });
    double total = 0, end = -std::numeric_limits<double>::infinity();
    for (const Span& part : parts) {
        if (part.high <= end)
            continue;
        total += part.high - std::max(part.low, end);
        end = part.high;
    }
    return total;
}

} // namespace

/// One number: the union of all intervals. Several: the sum of all boxes, which is no less than their union.
double Findings::covered(const std::vector<Given>& givens, const std::vector<std::size_t>& explained,
                         bool withPairs) const {
    std::vector<Span> line;
    double boxes = 0;
    const auto take = [&](const auto& valueOf, const auto& toleranceOf) {
        double box = 1;
        Span last;
        for (const std::size_t i : explained) {
            const std::size_t cell = givens[i].cell;
            const double value = valueOf(cell), right = m_question.right().value[cell];
            if (!isThere(value) || !isThere(right) || isSame(m_question, cell, value, right))
                return;
            last = partOf(m_question, givens[i], value, toleranceOf(cell));
            const double length = spanOf(m_question, cell).length();
            box *= length > 0 ? std::min(1.0, last.length() / length) : 1;
        }
        boxes += box;
        line.push_back(last);
    };
    for (const Alternative& one : m_alternatives.singles())
        take([&](std::size_t cell) { return one.numbers.value[cell]; },
             [&](std::size_t cell) { return one.numbers.tolerance[cell]; });
    const bool isAsked = std::all_of(explained.begin(), explained.end(), [&](std::size_t g) {
        return withPairs && givens[g].cell < pairs().columns();
    });
    for (std::size_t pair = 0; withPairs && isAsked && pair < pairs().all().size(); ++pair)
        take([&](std::size_t cell) { return pairs().value(pair, cell); },
             [&](std::size_t cell) { return pairs().tolerance(pair, cell); });
    if (explained.size() == 1) {
        const double length = spanOf(m_question, givens[explained[0]].cell).length();
        boxes = length > 0 ? unionOf(std::move(line)) / length : 1;
    }
    return std::min(1.0, boxes);
}

} // namespace tailpoint::marking
