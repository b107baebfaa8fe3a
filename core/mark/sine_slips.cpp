// SPDX-License-Identifier: MIT
// Slips in the triangle's chain from the law of sines on: the angle, and the direction that it gives.
#include "core/mark/rewriting.h"

#include "core/formula/turns.h"

#include <algorithm>

namespace tailpoint::marking::triangle_slips {

namespace {

using MaybeLine = std::optional<Line>;
using MaybeFormula = std::optional<Formula>;

bool isSineRatio(const Line& line) {
    return line.kind == LineKind::ratio && line.subject.part == kSine &&
           line.cases.front().formula.kind == FormulaKind::fraction;
}
/// K sin α / sin γ.
bool isSineSide(const Line& line) {
    return line.kind == LineKind::sinesSide && line.cases.front().formula.kind == FormulaKind::fraction;
}

Formula exchanged(const Formula& formula, const Formula& a, const Formula& b) {
    const auto swap = [&](const Formula& part) -> MaybeFormula {
        if (part.kind != FormulaKind::symbol)
            return std::nullopt;
        if (part.id == a.id)
            return b;
        return part.id == b.id ? MaybeFormula(a) : std::nullopt;
    };
    return replaced(formula, swap).value_or(formula);
}

Formula with(const Formula& formula, const QuantityId& right, const Formula& wrong) {
    return replaced(formula,
                    [&](const Formula& part) -> MaybeFormula {
                        return part.kind == FormulaKind::symbol && part.id == right ? MaybeFormula(wrong)
                                                                                    : std::nullopt;
                    })
        .value_or(formula);
}

/// Lines that give the sought magnitudes of a question of two.
std::vector<std::size_t> soughtSides(const Pattern& pattern) {
    std::vector<std::size_t> found;
    if (isFamily(pattern, Family::twoMagnitudes))
        for (std::size_t i = 0; i < pattern.chain().lines.size(); ++i)
            if (isSineSide(pattern.chain().lines[i]))
                found.push_back(i);
    return found;
}

const Formula& numeratorAngle(const Line& line) {
    return *firstSymbol(line.cases.front().formula.parts[0], true);
}

/// Each of them, and all together.
std::vector<Rewrite> eachAndAll(std::vector<Rewrite> each) {
    if (each.size() < 2)
        return each;
    Rewrite whole{{}, each.front().of, each.back().of};
    for (const Rewrite& one : each)
        whole.changes.push_back(one.changes.front());
    each.insert(each.begin(), std::move(whole));
    return each;
}

} // namespace

std::vector<Rewrite> bracketLeftOpen(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        if (!isSineRatio(line) && !isSineSide(line))
            return std::nullopt;
        const Formula& fraction = line.cases.front().formula;
        Formula numerator = fraction.parts[0];
        if (numerator.kind != FormulaKind::product || !isFunction(numerator.parts.back(), "sin"))
            return std::nullopt;
        Formula& function = numerator.parts.back();
        function = apply("sin", over(function.parts[0], fraction.parts[1]));
        return withFormula(line, std::move(numerator));
    });
}

std::vector<Rewrite> cosineInSines(const Pattern& pattern) {
    const auto cosine = [](const Formula& part) -> MaybeFormula {
        return isFunction(part, "sin") ? MaybeFormula(apply("cos", part.parts[0])) : std::nullopt;
    };
    const auto above = [&](const Line& line) -> MaybeLine {
        if (!isSineSide(line))
            return std::nullopt;
        const Formula& fraction = line.cases.front().formula;
        auto numerator = replaced(fraction.parts[0], cosine);
        return numerator ? MaybeLine(withFormula(line, over(std::move(*numerator), fraction.parts[1])))
                         : std::nullopt;
    };
    auto all = eachLine(pattern, [&](const Line& line) {
        return isSineRatio(line) || (isSineSide(line) && line.subject.answer > 0) ? replacedIn(line, cosine)
                                                                                  : std::nullopt;
    });
    append(all, allLines(pattern, [&](const Line& line) {
               return isSineSide(line) ? replacedIn(line, cosine) : std::nullopt;
           }));
    append(all, allLines(pattern, above));
    return all;
}

std::vector<Rewrite> sidesMismatched(const Pattern& pattern) {
    std::vector<Rewrite> all;
    append(all, eachLine(pattern, [&](const Line& line) -> MaybeLine { // the third side's length
               if (!isSineRatio(line))
                   return std::nullopt;
               const Formula& fraction = line.cases.front().formula;
               const Formula *side = firstSymbol(fraction.parts[0], false),
                             *known = firstSymbol(fraction.parts[1], false);
               for (const VectorId third :
                    known ? sidesBeside(pattern, known->id.of) : std::vector<VectorId>())
                   if (side && known && third != side->id.of && third != known->id.of &&
                       pattern.at(magnitudeId(third)))
                       return withFormula(line, with(fraction, side->id, pattern.symbol(magnitudeId(third))));
               return std::nullopt;
           }));
    std::vector<Rewrite> sides;
    const auto& lines = pattern.chain().lines;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!isSineSide(lines[i]))
            continue;
        const QuantityId own = numeratorAngle(lines[i]).id;
        const Formula* below = firstSymbol(lines[i].cases.front().formula.parts[1], true);
        for (std::size_t j = 0; j < lines.size(); ++j) // another angle of the triangle
            if (const QuantityId& other = lines[j].subject;
                isAngle(other) && other != own && below && other != below->id &&
                (other.answer == 0 || other.answer == lines[i].subject.answer) && j < i) {
                Formula numerator = with(lines[i].cases.front().formula.parts[0], own, pattern.symbol(other));
                sides.push_back({{{i, withFormula(lines[i], over(std::move(numerator),
                                                                 lines[i].cases.front().formula.parts[1]))}},
                                 lines[i].subject.of,
                                 other.of});
            }
    }
    const bool isPair = isFamily(pattern, Family::twoMagnitudes) && sides.size() == 2;
    append(all, isPair ? eachAndAll(std::move(sides)) : std::move(sides));
    return all;
}

std::vector<Rewrite> ratioInverted(const Pattern& pattern) {
    return eachAndAll(eachLine(pattern, [](const Line& line) -> MaybeLine {
        const bool isSide = isSineSide(line);
        if (!isSide && !isSineRatio(line))
            return std::nullopt;
        const Formula& fraction = line.cases.front().formula;
        const Formula *above = firstSymbol(fraction.parts[0], isSide),
                      *below = firstSymbol(fraction.parts[1], isSide);
        if (!above || !below)
            return std::nullopt;
        return withFormula(line, exchanged(fraction, *above, *below));
    }));
}

std::vector<Rewrite> axisAngleInTriangle(const Pattern& pattern) {
    std::vector<Rewrite> each;
    const auto sides = soughtSides(pattern);
    for (const std::size_t i : sides)
        for (const std::size_t j : sides) {
            const Line& line = pattern.chain().lines[i];
            const auto way = i == j ? std::nullopt : wayOf(pattern, pattern.chain().lines[j].subject.of);
            if (!way)
                continue;
            Formula now = with(line.cases.front().formula.parts[0], numeratorAngle(line).id,
                               absolute(pattern.symbol(*way)));
            each.push_back(
                {{{i, withFormula(line, over(std::move(now), line.cases.front().formula.parts[1]))}},
                 line.subject.of,
                 way->of});
        }
    auto all = eachAndAll(std::move(each));
    for (const bool first : {true, false}) // one direction as the angle between two
        append(all, eachLine(pattern, [&](const Line& line) -> MaybeLine {
                   const auto tails = tailsOf(line);
                   if (!tails)
                       return std::nullopt;
                   Formula angle = absolute(first ? tails->a : tails->b);
                   return withFormula(line, tails->isSupplement ? less(half(pattern), std::move(angle))
                                                                : std::move(angle));
               }));
    return all;
}

std::vector<Rewrite> givenAngleSupplement(const Pattern& pattern) {
    if (!isFamily(pattern, Family::magnitudeAndDirection))
        return {};
    return eachLine(pattern, [&](const Line& line) -> MaybeLine {
        if (line.kind != LineKind::tails)
            return std::nullopt;
        Line now = line;
        for (Case& one : now.cases)
            one.formula = less(half(pattern), one.formula);
        return now;
    });
}

std::vector<Rewrite> includedAngleAssumed(const Pattern& pattern) {
    if (!isFamily(pattern, Family::magnitudeAndDirection) || !pattern.reduction)
        return {};
    const VectorId known = pattern.reduction->side[pattern.reduction->knownSide()];
    return eachLine(pattern, [&](const Line& line) -> MaybeLine {
        if (!isSineSide(line))
            return std::nullopt;
        const Formula *side = firstSymbol(line.cases.front().formula.parts[0], false),
                      *angle = firstSymbol(line.cases.front().formula.parts[1], true);
        if (!side || !angle)
            return std::nullopt;
        const Formula k = pattern.symbol(magnitudeId(known)), v = *side;
        return withFormula(line, root(sum(power(k, 2), power(v, 2),
                                          negative(product(count(2), k, v, apply("cos", *angle))))));
    });
}

std::vector<Rewrite> discriminantForgotten(const Pattern& pattern) {
    if (!isFamily(pattern, Family::magnitudeAndDirection) || pattern.ways.solved.tangent)
        return {};
    return eachLine(pattern, [&](const Line& line) -> MaybeLine {
        if (line.subject == QuantityId{What::distance, {}, {}, 0, 1})
            return withFormula(line, count(0));
        if (line.subject.what == What::acute && line.subject.part == kOfInverseSine)
            return withFormula(line, quarterTurn(pattern.chain().unit));
        return std::nullopt;
    });
}

std::vector<Rewrite> diagonalHalvesAngle(const Pattern& pattern) {
    return eachLine(pattern, [&](const Line& line) -> MaybeLine {
        if (line.kind != LineKind::inverse || !isFunction(line.cases.front().formula, "arcsin") ||
            !isFamily(pattern, Family::closePolygon))
            return std::nullopt;
        for (const Line& tails : pattern.chain().lines)
            if (tails.subject.what == What::between && tails.subject.part == line.subject.part)
                return withFormula(line, over(pattern.symbol(tails.subject), count(2)));
        return std::nullopt;
    });
}

std::vector<Rewrite> inverseForgotten(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        if (line.kind != LineKind::inverse && line.kind != LineKind::arctangent)
            return std::nullopt;
        return replacedIn(line, [](const Formula& part) -> MaybeFormula {
            return isInverse(part) ? MaybeFormula(part.parts[0]) : std::nullopt;
        });
    });
}

std::vector<Rewrite> acuteForObtuse(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        if (line.kind != LineKind::inverse || line.cases.size() != 2)
            return std::nullopt;
        Line now = line;
        std::swap(now.cases[0].formula, now.cases[1].formula);
        return now;
    });
}

} // namespace tailpoint::marking::triangle_slips
