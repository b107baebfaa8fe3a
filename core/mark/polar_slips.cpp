// SPDX-License-Identifier: MIT
// Slips that make a magnitude and a direction of two components.
#include "core/mark/rewriting.h"

#include "core/formula/turns.h"

namespace tailpoint::marking::component_slips {

namespace {

using MaybeLine = std::optional<Line>;

bool isReversed(const Pattern& pattern, const QuantityId& id) {
    return pattern.at(id).value_or(0) < 0;
}

/// A magnitude from its components: R = √R².
bool isFromComponents(const Pattern& pattern, const Line& line) {
    const QuantityId square{What::square, line.subject.of, {}, line.subject.answer};
    const Line* before = pattern.find(square);
    return line.kind == LineKind::root && line.subject.what == What::magnitude && before &&
           before->kind == LineKind::pythagoras;
}

struct Parts {
    QuantityId x, y, acute;
};
Parts partsOf(const QuantityId& id) {
    return {{What::x, id.of, {}, id.answer},
            {What::y, id.of, {}, id.answer},
            {What::acute, id.of, {}, id.answer}};
}

std::vector<Rewrite>
fromComponents(const Pattern& pattern,
               const std::vector<std::function<Formula(const Formula&, const Formula&)>>& ways) {
    std::vector<Rewrite> all;
    for (const auto& way : ways)
        append(all, eachLine(pattern, [&](const Line& line) -> MaybeLine {
                   if (!isFromComponents(pattern, line))
                       return std::nullopt;
                   const Parts parts = partsOf(line.subject);
                   return withFormula(line, way(pattern.symbol(parts.x), pattern.symbol(parts.y)));
               }));
    return all;
}

/// A direction from its acute angle and the signs of the components.
bool isQuadrant(const Pattern& pattern, const Line& line) {
    return line.kind == LineKind::quadrant && pattern.find(partsOf(line.subject).acute) != nullptr;
}

} // namespace

std::vector<Rewrite> componentsAdded(const Pattern& pattern) {
    return fromComponents(pattern,
                          {[](const Formula& x, const Formula& y) { return absolute(sum(x, y)); },
                           [](const Formula& x, const Formula& y) { return sum(absolute(x), absolute(y)); }});
}

std::vector<Rewrite> componentForForce(const Pattern& pattern) {
    return fromComponents(pattern, {[](const Formula& x, const Formula&) { return absolute(x); },
                                    [](const Formula&, const Formula& y) { return absolute(y); }});
}

std::vector<Rewrite> negativeSquared(const Pattern& pattern) {
    return eachLine(pattern, [&](const Line& line) -> MaybeLine {
        if (line.kind != LineKind::pythagoras || line.subject.of == kNobody)
            return std::nullopt;
        Formula squares = line.cases.front().formula;
        bool any = false;
        for (Formula& part : squares.parts)
            if (part.kind == FormulaKind::power && isReversed(pattern, part.parts[0].id)) {
                part = negative(part);
                any = true;
            }
        return any ? MaybeLine(withFormula(line, absolute(std::move(squares)))) : std::nullopt;
    });
}

std::vector<Rewrite> tangentInverted(const Pattern& pattern) {
    auto all = eachLine(pattern, [](const Line& line) -> MaybeLine {
        const Formula& formula = line.cases.front().formula;
        if (line.kind != LineKind::ratio || line.subject.part != kTangent ||
            formula.kind != FormulaKind::fraction)
            return std::nullopt;
        return withFormula(line, over(formula.parts[1], formula.parts[0]));
    });
    append(all, eachLine(pattern, [&](const Line& line) -> MaybeLine { // bare
               if (!isQuadrant(pattern, line))
                   return std::nullopt;
               const Parts parts = partsOf(line.subject);
               return withFormula(line,
                                  apply("arctan", over(pattern.symbol(parts.x), pattern.symbol(parts.y))));
           }));
    append(all, eachLine(pattern, [&](const Line& line) -> MaybeLine { // laid off from the y axis
               if (!isQuadrant(pattern, line))
                   return std::nullopt;
               const Parts parts = partsOf(line.subject);
               const Formula quarter = quarterTurn(pattern.chain().unit), a = pattern.symbol(parts.acute);
               const bool up = !isReversed(pattern, parts.y), left = isReversed(pattern, parts.x);
               Formula now = left ? sum(quarter, a) : less(quarter, a);
               return withFormula(line, up ? std::move(now) : negative(std::move(now)));
           }));
    return all;
}

std::vector<Rewrite> quadrantMissed(const Pattern& pattern) {
    auto all = eachLine(pattern, [&](const Line& line) -> MaybeLine {
        if (!isQuadrant(pattern, line))
            return std::nullopt;
        const Parts parts = partsOf(line.subject);
        return withFormula(line, apply("arctan", over(pattern.symbol(parts.y), pattern.symbol(parts.x))));
    });
    append(all, eachLine(pattern, [&](const Line& line) -> MaybeLine { // its size alone
               if (!isQuadrant(pattern, line))
                   return std::nullopt;
               return withFormula(line, pattern.symbol(partsOf(line.subject).acute));
           }));
    return all;
}

} // namespace tailpoint::marking::component_slips
