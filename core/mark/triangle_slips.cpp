// SPDX-License-Identifier: MIT
// Slips in the triangle's chain before an angle is found: angles between directions, law of cosines,
// calculator.
#include "core/mark/rewriting.h"

#include "core/formula/turns.h"

#include <algorithm>
#include <numbers>

namespace tailpoint::marking::triangle_slips {

namespace {

using MaybeLine = std::optional<Line>;
using MaybeFormula = std::optional<Formula>;

/// a² + b² − 2ab cos γ.
bool isSideForm(const Line& line) {
    return line.kind == LineKind::cosines && line.subject.what == What::square &&
           line.cases.front().formula.parts.size() == 3;
}
/// (a² + b² − c²)/2ab.
bool isAngleForm(const Line& line) {
    return line.kind == LineKind::cosines && line.subject.what == What::ratio;
}

const Formula& lastTerm(const Line& line) { ///< 2ab cos γ
    return withoutSign(line.cases.front().formula.parts[2]);
}

bool feedsCosines(const Pattern& pattern, const QuantityId& angle) {
    const auto& lines = pattern.chain().lines;
    return std::any_of(lines.begin(), lines.end(), [&](const Line& line) {
        return isSideForm(line) && lastTerm(line).parts.back().parts[0].id == angle;
    });
}

MaybeFormula functionExchanged(const Formula& part, std::string_view from, const char* to) {
    if (!isFunction(part, from))
        return std::nullopt;
    return apply(to, part.parts[0]);
}

/// An angle of the sheet's unit keyed in another mode of the calculator: `factor` of the sheet's units are
/// one of that mode's.
MaybeFormula inMode(const Formula& part, const Formula& factor) {
    if (part.kind != FormulaKind::function)
        return std::nullopt;
    if (!isInverse(part))
        return apply(part.text, product(factor, part.parts[0]));
    return factor.kind == FormulaKind::fraction ? product(over(factor.parts[1], factor.parts[0]), part)
                                                : over(part, factor);
}

/// Of the sheet's units in one radian; none on a sheet in radians.
std::optional<Formula> radian(const Pattern& pattern) {
    if (pattern.chain().unit == AngleUnit::rad)
        return std::nullopt;
    return over(count(pattern.chain().unit == AngleUnit::deg ? 180 : 200), number(std::numbers::pi, "π"));
}

std::vector<Rewrite> wholeMode(const Pattern& pattern, const Formula& factor) {
    return allLines(pattern, [&](const Line& line) {
        return replacedIn(line, [&](const Formula& part) { return inMode(part, factor); });
    });
}

} // namespace

std::vector<Rewrite> anglesAdded(const Pattern& pattern) {
    return eachLine(pattern, [&](const Line& line) -> MaybeLine {
        const auto tails = line.cases.size() < 2 ? std::nullopt : tailsOf(line);
        if (!tails)
            return std::nullopt;
        const Formula added = sum(tails->a, tails->b);
        const auto as = [&](Formula angle) {
            return tails->isSupplement ? less(half(pattern), std::move(angle)) : angle;
        };
        Line now{line.subject, line.kind, {}};
        now.cases.push_back(
            {{related(absolute(added), Relation::lessOrEqual, half(pattern))}, as(absolute(added))});
        now.cases.push_back({{}, as(less(fullTurn(pattern.chain().unit), absolute(added)))});
        return now;
    });
}

std::vector<Rewrite> supplementInCosines(const Pattern& pattern) {
    auto all = eachLine(pattern, [&](const Line& line) -> MaybeLine {
        if (isAngleForm(line))
            return withFormula(line, negative(line.cases.front().formula));
        if (!isSideForm(line))
            return std::nullopt;
        return replacedIn(line, [&](const Formula& part) -> MaybeFormula {
            if (!isFunction(part, "cos"))
                return std::nullopt;
            return apply("cos", less(half(pattern), part.parts[0]));
        });
    });
    append(all, eachLine(pattern, [&](const Line& line) -> MaybeLine { // the angle's own line left out
               if (line.kind != LineKind::supplement || !feedsCosines(pattern, line.subject))
                   return std::nullopt;
               return withFormula(line, withoutSign(line.cases.front().formula.parts[1]));
           }));
    return all;
}

std::vector<Rewrite> rootForgotten(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        if (line.kind != LineKind::root)
            return std::nullopt;
        return replacedIn(line, [](const Formula& part) -> MaybeFormula {
            return part.kind == FormulaKind::root ? MaybeFormula(part.parts[0]) : std::nullopt;
        });
    });
}

std::vector<Rewrite> factorTwoLost(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        if (line.kind != LineKind::cosines)
            return std::nullopt;
        return replacedIn(line, [](const Formula& part) -> MaybeFormula {
            if (part.kind != FormulaKind::product || part.parts[0].kind != FormulaKind::number)
                return std::nullopt;
            Formula rest = part;
            rest.parts.erase(rest.parts.begin());
            return rest;
        });
    });
}

std::vector<Rewrite> orderOfOperations(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        if (!isSideForm(line))
            return std::nullopt;
        Formula bracket = line.cases.front().formula, last = lastTerm(line);
        Formula cosine = last.parts.back();
        last.parts.pop_back();
        bracket.parts[2] = negative(std::move(last));
        return withFormula(line, product(std::move(bracket), std::move(cosine)));
    });
}

std::vector<Rewrite> sineInCosines(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        const bool inverse = line.kind == LineKind::inverse;
        if (!isSideForm(line) && !inverse)
            return std::nullopt;
        return replacedIn(line, [&](const Formula& part) {
            return inverse ? functionExchanged(part, "arccos", "arcsin")
                           : functionExchanged(part, "cos", "sin");
        });
    });
}

std::vector<Rewrite> rightTriangleAssumed(const Pattern& pattern) {
    std::vector<Rewrite> all;
    const auto& lines = pattern.chain().lines;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!isSideForm(lines[i]))
            continue;
        Formula bracket = lines[i].cases.front().formula;
        const Formula a = bracket.parts[0].parts[0], b = bracket.parts[1].parts[0];
        bracket.parts.pop_back();
        Rewrite one{{{i, withFormula(lines[i], std::move(bracket))}}, a.id.of, b.id.of};
        for (std::size_t j = i + 1; j < lines.size(); ++j) // the angle beside the resultant
            if ((lines[j].kind == LineKind::inverse || lines[j].kind == LineKind::halving) &&
                (lines[j].subject.of == a.id.of || lines[j].subject.of == b.id.of)) {
                const bool first = lines[j].subject.of == a.id.of;
                one.changes.push_back(
                    {j, withFormula(lines[j], apply("arctan", first ? over(a, b) : over(b, a)))});
                break;
            }
        all.push_back(std::move(one));
    }
    return all;
}

std::vector<Rewrite> gonMode(const Pattern& pattern) {
    return pattern.chain().unit == AngleUnit::deg ? wholeMode(pattern, plain(0.9)) : std::vector<Rewrite>();
}

std::vector<Rewrite> degreeMode(const Pattern& pattern) {
    if (pattern.chain().unit == AngleUnit::deg)
        return {};
    return wholeMode(pattern, pattern.chain().unit == AngleUnit::gon
                                  ? over(count(10), count(9))
                                  : over(number(std::numbers::pi, "π"), count(180)));
}

std::vector<Rewrite> radianMode(const Pattern& pattern) {
    const auto factor = radian(pattern);
    return factor ? wholeMode(pattern, *factor) : std::vector<Rewrite>();
}

std::vector<Rewrite> radianModeOnce(const Pattern& pattern) {
    const auto factor = radian(pattern);
    std::vector<Rewrite> all;
    const auto& lines = pattern.chain().lines;
    for (std::size_t i = 0; factor && i < lines.size(); ++i) {
        if (lines[i].kind == LineKind::check)
            continue;
        for (std::size_t which = 0;; ++which) {
            Line now = lines[i];
            bool any = false;
            for (Case& one : now.cases)
                if (auto other = replacedOnce(
                        one.formula, [&](const Formula& part) { return inMode(part, *factor); }, which)) {
                    one.formula = std::move(*other);
                    any = true;
                }
            if (!any)
                break;
            all.push_back({{{i, std::move(now)}}, lines[i].subject.of, {}});
        }
    }
    return all;
}

} // namespace tailpoint::marking::triangle_slips
