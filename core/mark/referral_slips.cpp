// SPDX-License-Identifier: MIT
// Slips in turning a direction off from a known one.
#include "core/mark/rewriting.h"

namespace tailpoint::marking::triangle_slips {

namespace {

using MaybeLine = std::optional<Line>;
using MaybeFormula = std::optional<Formula>;

/// θ = from ± angle, a full turn more or less.
struct TurnForm {
    Formula from, angle;
    int sign = 1;
};
std::optional<TurnForm> turnForm(const Formula& formula) {
    if (formula.kind != FormulaKind::sum || formula.parts.size() < 2)
        return std::nullopt;
    const Formula& from = formula.parts[0];
    const Formula& angle = formula.parts[1];
    const bool isTurned = from.kind == FormulaKind::symbol && from.id.what == What::direction;
    const Formula& size = withoutSign(angle);
    const bool isReal = firstSymbol(size, true) != nullptr || (size.isTurn && formula.parts.size() <= 3);
    if (!isTurned || !isReal)
        return std::nullopt;
    return TurnForm{from, size, angle.kind == FormulaKind::negative ? -1 : 1};
}
/// A direction turned off by an angle; not the half turn of a line of action.
bool isReferral(const Line& line) {
    if (line.kind != LineKind::turn || line.subject.what != What::direction)
        return false;
    const auto form = turnForm(line.cases.front().formula);
    return form &&
           !(form->angle.isTurn && line.cases.size() == 2 && line.cases.back().formula.parts.size() == 2);
}

/// Every case turned otherwise; whole turns are left out.
MaybeLine turnedOtherwise(const Line& line, const std::function<MaybeFormula(const TurnForm&)>& change) {
    if (!isReferral(line))
        return std::nullopt;
    Line now = line;
    for (Case& one : now.cases) {
        const auto form = turnForm(one.formula);
        auto other = form ? change(*form) : std::nullopt;
        if (!other)
            return std::nullopt;
        one.formula = std::move(*other);
    }
    return now;
}

Formula turned(const Formula& from, const Formula& angle, int sign) {
    return sum(from, sign > 0 ? angle : negative(angle));
}

/// Which of several parallelograms a direction is turned in; 0 where there is but one triangle.
std::uint8_t pairOf(const Line& line) {
    const auto form = turnForm(line.cases.front().formula);
    const Formula* angle = form ? firstSymbol(form->angle, true) : nullptr;
    return angle ? angle->id.part : std::uint8_t{0};
}

} // namespace

std::vector<Rewrite> referralTurned(const Pattern& pattern) {
    auto all = eachLine(pattern, [](const Line& line) {
        return turnedOtherwise(line, [](const TurnForm& form) {
            return MaybeFormula(turned(form.from, form.angle, -form.sign));
        });
    });
    for (const int sign : {1, -1}) // the triangle's angle where its supplement is due
        append(all, eachLine(pattern, [&](const Line& line) {
                   return turnedOtherwise(line, [&](const TurnForm& form) -> MaybeFormula {
                       const Formula* inner = firstSymbol(form.angle, true);
                       if (form.angle.kind != FormulaKind::sum || !inner)
                           return std::nullopt;
                       return turned(form.from, *inner, sign * form.sign);
                   });
               }));
    return all;
}

std::vector<Rewrite> referralForgotten(const Pattern& pattern) {
    std::vector<Rewrite> all;
    const auto& lines = pattern.chain().lines;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!isReferral(lines[i]))
            continue;
        for (std::size_t j = 0; j < i; ++j)
            if (const QuantityId& angle = lines[j].subject;
                isAngle(angle) && angle.part == pairOf(lines[i]) &&
                (angle.answer == 0 || angle.answer == lines[i].subject.answer))
                all.push_back(
                    {{{i, withFormula(lines[i], pattern.symbol(angle))}}, lines[i].subject.of, angle.of});
    }
    auto each = allLines(pattern, [](const Line& line) { // of two directions both
        return turnedOtherwise(line, [](const TurnForm& form) { return MaybeFormula(form.angle); });
    });
    if (!each.empty() && each.front().changes.size() > 1)
        append(all, std::move(each));
    return all;
}

std::vector<Rewrite> fromOtherForce(const Pattern& pattern) {
    if (!isFamily(pattern, Family::closePolygon))
        return {};
    return eachLine(pattern, [&](const Line& line) {
        return turnedOtherwise(line, [&](const TurnForm& form) -> MaybeFormula {
            for (const VectorId side : sidesBeside(pattern, line.subject.of))
                if (side != line.subject.of && side != form.from.id.of)
                    if (const auto way = wayOf(pattern, side))
                        return turned(pattern.symbol(*way), form.angle, -form.sign);
            return std::nullopt;
        });
    });
}

} // namespace tailpoint::marking::triangle_slips
