// SPDX-License-Identifier: MIT
// Slips in the components' chain.
#include "core/mark/alternatives.h"
#include "core/mark/rewriting.h"

#include "core/formula/turns.h"

#include <algorithm>

namespace tailpoint::marking::component_slips {

namespace {

using MaybeLine = std::optional<Line>;
using MaybeFormula = std::optional<Formula>;

/// A force along x or y, by a function or by a slope's ratio.
bool isComponent(const Line& line) {
    return line.kind == LineKind::component && (line.subject.what == What::x || line.subject.what == What::y);
}
/// R_x or R_y of the forces'.
bool isSumOfComponents(const Line& line) {
    return line.kind == LineKind::columnSum && line.cases.size() == 1 &&
           (line.subject.what == What::x || line.subject.what == What::y);
}
bool isLeg(const Line& line) {
    return line.kind == LineKind::sinesSide && line.cases.front().formula.kind == FormulaKind::product;
}

QuantityId acrossOf(QuantityId id) { ///< the component along the other axis
    id.what = id.what == What::x ? What::y : What::x;
    return id;
}

Formula signedLike(const Formula& formula, Formula size) {
    return formula.kind == FormulaKind::negative ? negative(std::move(size)) : size;
}

bool isNegative(const Pattern& pattern, const QuantityId& id) {
    return pattern.at(id).value_or(0) < 0;
}

/// Of a component along a slope: F · leg/length.
const Formula* slopeRatio(const Line& line) {
    if (!isComponent(line))
        return nullptr;
    const Formula& size = withoutSign(line.cases.front().formula);
    if (size.kind != FormulaKind::product || size.parts.back().kind != FormulaKind::fraction)
        return nullptr;
    return &size.parts.back();
}

Line withRatio(const Line& line, Formula ratio) {
    const Formula& old = line.cases.front().formula;
    Formula size = withoutSign(old);
    size.parts.back() = std::move(ratio);
    return withFormula(line, signedLike(old, std::move(size)));
}

MaybeLine functionsExchanged(const Line& line) {
    return replacedIn(line, [](const Formula& part) -> MaybeFormula {
        if (!isFunction(part, "sin") && !isFunction(part, "cos"))
            return std::nullopt;
        Formula other = apply(part.text == "sin" ? "cos" : "sin", part.parts[0]);
        return other;
    });
}

/// With the sign that the component has.
MaybeLine withSignKept(const Pattern& pattern, const Line& line, MaybeLine changed) {
    if (!changed || slopeRatio(line) != nullptr)
        return std::nullopt;
    Formula size = absolute(withoutSign(changed->cases.front().formula));
    return withFormula(line, isNegative(pattern, line.subject) ? negative(std::move(size)) : std::move(size));
}

/// Cosine for sine; along a slope the other leg.
MaybeLine legsExchanged(const Pattern& pattern, const Line& line) {
    if (slopeRatio(line) == nullptr)
        return functionsExchanged(line);
    const Line* across = pattern.find(acrossOf(line.subject));
    const Formula* ratio = across ? slopeRatio(*across) : nullptr;
    return ratio ? MaybeLine(withRatio(line, *ratio)) : std::nullopt;
}

/// Rewrites of single lines that belong to one vector, together.
std::vector<Rewrite> byVector(std::vector<Rewrite> each) {
    std::vector<Rewrite> all;
    for (Rewrite& one : each) {
        const auto same =
            std::find_if(all.begin(), all.end(), [&](const Rewrite& r) { return r.of == one.of; });
        if (same == all.end())
            all.push_back(std::move(one));
        else
            same->changes.push_back(std::move(one.changes.front()));
    }
    return all;
}

/// The legs of a slope as they were typed.
std::optional<SlopeForm> slopeOf(const Pattern& pattern, VectorId vector) {
    const auto* slope = std::get_if<SlopeForm>(&vectorOf(pattern.sketch(), vector).direction.form);
    return slope ? std::optional(SlopeForm{std::abs(slope->run), std::abs(slope->rise)}) : std::nullopt;
}

/// A sum of components or of forces along an axis: each of its terms with its sign turned.
std::vector<Rewrite> termsTurned(const Pattern& pattern, std::size_t index) {
    const Line& line = pattern.chain().lines[index];
    std::vector<Rewrite> all;
    const Formula& whole = line.cases.front().formula;
    if (whole.kind != FormulaKind::sum || line.cases.size() > 1 || whole.parts.size() > kMostOfOneSlip)
        return all;
    for (std::size_t i = 0; i < whole.parts.size(); ++i) {
        Formula now = whole;
        Formula& part = now.parts[i];
        part = part.kind == FormulaKind::negative ? Formula(part.parts[0]) : negative(part);
        const Formula& term = withoutSign(whole.parts[i]);
        all.push_back({{{index, withFormula(line, std::move(now))}},
                       term.id.of != kNobody || term.parts.empty() ? term.id.of : term.parts[0].id.of,
                       line.subject.of});
    }
    return all;
}

} // namespace

std::vector<Rewrite> sineCosineExchanged(const Pattern& pattern) {
    const auto components = [&](const Line& line) {
        return isComponent(line) ? legsExchanged(pattern, line) : std::nullopt;
    };
    const auto terms = [&](const Line& line) {
        return line.kind == LineKind::term ? functionsExchanged(line) : std::nullopt;
    };
    const auto signsKept = [&](const Line& line) {
        return isComponent(line) ? withSignKept(pattern, line, functionsExchanged(line)) : std::nullopt;
    };
    auto all = allLines(pattern, components);
    append(all, allLines(pattern, signsKept));
    append(all, allLines(pattern, terms));
    append(all, allLines(pattern, [&](const Line& line) {
               auto now = components(line);
               return now ? std::move(now) : terms(line);
           }));
    append(all, allLines(pattern, [](const Line& line) {
               return isLeg(line) && line.subject.what == What::magnitude ? functionsExchanged(line)
                                                                          : std::nullopt;
           }));
    return all;
}

std::vector<Rewrite> sineCosineExchangedOnce(const Pattern& pattern) {
    auto all = byVector(eachLine(pattern, [&](const Line& line) {
        return isComponent(line) ? legsExchanged(pattern, line) : std::nullopt;
    }));
    append(all, byVector(eachLine(pattern, [&](const Line& line) {
               return isComponent(line) ? withSignKept(pattern, line, functionsExchanged(line))
                                        : std::nullopt;
           })));
    append(all, byVector(eachLine(pattern, [](const Line& line) {
               return line.kind == LineKind::term ? functionsExchanged(line) : std::nullopt;
           })));
    return all;
}

std::vector<Rewrite> componentSign(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        if (!isComponent(line) && !isSumOfComponents(line))
            return std::nullopt;
        const Formula& formula = line.cases.front().formula;
        return withFormula(line, formula.kind == FormulaKind::negative ? Formula(formula.parts[0])
                                                                       : negative(formula));
    });
}

std::vector<Rewrite> componentLeftOut(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        return isComponent(line) && line.subject.of != kSumVector ? MaybeLine(withFormula(line, count(0)))
                                                                  : std::nullopt;
    });
}

std::vector<Rewrite> rightSideLost(const Pattern& pattern) {
    return eachLine(pattern, [](const Line& line) -> MaybeLine {
        return isComponent(line) && line.subject.of == kSumVector ? MaybeLine(withFormula(line, count(0)))
                                                                  : std::nullopt;
    });
}

std::vector<Rewrite> componentWhole(const Pattern& pattern) {
    return eachLine(pattern, [&](const Line& line) -> MaybeLine {
        if (!isComponent(line))
            return std::nullopt;
        const Formula& size = withoutSign(line.cases.front().formula);
        if (size.kind != FormulaKind::product)
            return std::nullopt;
        Formula whole = size.parts.front();
        return withFormula(line,
                           isNegative(pattern, line.subject) ? negative(std::move(whole)) : std::move(whole));
    });
}

std::vector<Rewrite> slopeRatioTaken(const Pattern& pattern) {
    std::vector<Rewrite> all;
    for (const bool inverted : {false, true})
        append(all, eachLine(pattern, [&](const Line& line) -> MaybeLine {
                   const auto slope = slopeRatio(line) ? slopeOf(pattern, line.subject.of) : std::nullopt;
                   if (!slope)
                       return std::nullopt;
                   return withRatio(line, inverted ? over(plain(slope->run), plain(slope->rise))
                                                   : over(plain(slope->rise), plain(slope->run)));
               }));
    return all;
}

std::vector<Rewrite> slopeShares(const Pattern& pattern) {
    const auto shared = [&](const Line& line) -> MaybeLine {
        const Formula* ratio = slopeRatio(line);
        const auto slope = ratio ? slopeOf(pattern, line.subject.of) : std::nullopt;
        if (!slope)
            return std::nullopt;
        return withRatio(line, over(ratio->parts[0], sum(plain(slope->run), plain(slope->rise))));
    };
    auto all = byVector(eachLine(pattern, shared));
    if (all.size() > 1)
        append(all, allLines(pattern, shared));
    return all;
}

std::vector<Rewrite> perpendicularForOblique(const Pattern& pattern) {
    if (pattern.ways.solved.family != Family::twoMagnitudes || !pattern.reduction)
        return {};
    const VectorId known = pattern.reduction->side[pattern.reduction->knownSide()];
    return allLines(pattern, [&](const Line& line) -> MaybeLine {
        if (line.kind != LineKind::sinesSide || line.subject.what != What::magnitude)
            return std::nullopt;
        QuantityId way = directionId(line.subject.of), from = directionId(known);
        way.part = pattern.at({What::direction, way.of, {}, 0, 1}) ? 1 : 0;
        if (!pattern.at(way) || !pattern.at(from))
            return std::nullopt;
        return withFormula(line,
                           absolute(product(pattern.symbol(magnitudeId(known)),
                                            apply("cos", less(pattern.symbol(from), pattern.symbol(way))))));
    });
}

std::vector<Rewrite> equationSign(const Pattern& pattern) {
    std::vector<Rewrite> all;
    const auto& lines = pattern.chain().lines;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const bool alongAxis = lines[i].subject.what == What::x || lines[i].subject.what == What::y ||
                               lines[i].subject.what == What::along;
        if (lines[i].kind == LineKind::columnSum || (lines[i].kind == LineKind::elimination && alongAxis))
            append(all, termsTurned(pattern, i));
        if (lines[i].kind == LineKind::term)
            all.push_back({{{i, withFormula(lines[i], negative(lines[i].cases.front().formula))}},
                           lines[i].subject.of,
                           kNobody});
    }
    return all;
}

} // namespace tailpoint::marking::component_slips
