// SPDX-License-Identifier: MIT
#include "core/mark/rewriting.h"

#include "core/formula/turns.h"
#include "core/quantity/decimals.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

/// Whether anything was changed.
bool replaceIn(Formula& formula, const Changed& change) {
    if (auto other = change(formula)) {
        formula = std::move(*other);
        return true;
    }
    bool any = false;
    for (Formula& part : formula.parts)
        any = replaceIn(part, change) || any;
    if (any && formula.kind != FormulaKind::symbol)
        formula.id = {}; // no longer the quantity that it stood for
    return any;
}

} // namespace

const Force& vectorOf(const Sketch& sketch, VectorId vector) {
    return vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
}

std::vector<VectorId> vectorsOf(const Sketch& sketch) {
    std::vector<VectorId> all;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        all.push_back(forceVector(i));
    all.push_back(kSumVector);
    return all;
}

const Line* Pattern::find(const QuantityId& subject) const {
    const std::size_t line = indexOf(subject);
    return line < chain().lines.size() ? &chain().lines[line] : nullptr;
}

std::size_t Pattern::indexOf(const QuantityId& subject) const {
    return way.program.lineOf(subject);
}

std::optional<Formula> replaced(const Formula& formula, const Changed& change) {
    Formula copy = formula;
    return replaceIn(copy, change) ? std::optional(std::move(copy)) : std::nullopt;
}

std::optional<Formula> replacedOnce(const Formula& formula, const Changed& change, std::size_t index) {
    std::size_t seen = 0;
    return replaced(formula, [&](const Formula& part) -> std::optional<Formula> {
        auto other = change(part);
        return other && seen++ == index ? std::move(other) : std::nullopt;
    });
}

std::optional<Line> replacedIn(const Line& line, const Changed& change) {
    Line now = line;
    bool any = false;
    for (Case& one : now.cases)
        any = replaceIn(one.formula, change) || any;
    return any ? std::optional(std::move(now)) : std::nullopt;
}

Line withFormula(const Line& line, Formula formula) {
    Line now{line.subject, line.kind, {}};
    now.cases.push_back({{}, std::move(formula)});
    return now;
}

bool isFunction(const Formula& formula, std::string_view name) {
    return formula.kind == FormulaKind::function && formula.text == name;
}

bool isInverse(const Formula& formula) {
    return formula.kind == FormulaKind::function && formula.text.starts_with("arc");
}

std::optional<Keyed> keyedOtherwise(const Formula& formula) {
    if (formula.kind != FormulaKind::function || isInverse(formula))
        return std::nullopt;
    const Formula& keyed = formula.parts[0];
    if (keyed.kind != FormulaKind::product || keyed.parts.size() != 2 ||
        keyed.parts[0].kind != FormulaKind::fraction)
        return std::nullopt;
    const std::string &above = keyed.parts[0].parts[0].text, &below = keyed.parts[0].parts[1].text;
    const bool isDegrees = (above == "π" && below == "180") || (above == "10" && below == "9");
    if (below != "π" && !isDegrees)
        return std::nullopt;
    return Keyed{&keyed.parts[1], isDegrees ? "°" : "rad"};
}

bool isTurnOf(const Formula& formula) {
    return formula.kind == FormulaKind::negative ? isTurnOf(formula.parts[0]) : formula.isTurn;
}

Formula less(Formula a, Formula b) {
    return sum(std::move(a), negative(std::move(b)));
}

Formula half(const Pattern& pattern) {
    return halfTurn(pattern.chain().unit);
}

Formula plain(double value) {
    return number(value, shortest(value));
}

const Formula& withoutSign(const Formula& formula) {
    return formula.kind == FormulaKind::negative ? formula.parts[0] : formula;
}

std::optional<Tails> tailsOf(const Line& line) {
    if (line.kind != LineKind::tails || line.cases.front().formula.parts.empty())
        return std::nullopt;
    const Formula& first = line.cases.front().formula;
    const bool isSupplement = isTurnOf(first.parts[0]);
    const Formula& difference = isSupplement ? first.parts[1].parts[0] : first;
    if (difference.kind != FormulaKind::sum || difference.parts.size() != 2)
        return std::nullopt;
    return Tails{difference.parts[0], withoutSign(difference.parts[1]), isSupplement};
}

bool isFamily(const Pattern& pattern, Family family) {
    return pattern.ways.solved.family == family;
}

bool isAngle(const QuantityId& id) {
    return id.what == What::opposite || id.what == What::between;
}

const Formula* firstSymbol(const Formula& formula, bool angle) {
    if (formula.kind == FormulaKind::symbol)
        return (angle ? isAngle(formula.id) : formula.id.what == What::magnitude) ? &formula : nullptr;
    for (const Formula& part : formula.parts)
        if (const Formula* found = firstSymbol(part, angle))
            return found;
    return nullptr;
}

std::optional<QuantityId> wayOf(const Pattern& pattern, VectorId vector) {
    for (const std::uint8_t part : {std::uint8_t{1}, std::uint8_t{0}})
        if (const QuantityId id{What::direction, vector, {}, 0, part}; pattern.at(id))
            return id;
    return std::nullopt;
}

std::vector<VectorId> sidesBeside(const Pattern& pattern, VectorId third) {
    std::vector<VectorId> sides;
    for (const Line& line : pattern.chain().lines)
        if (line.kind == LineKind::cosines && line.subject.what == What::square && line.subject.of == third)
            for (std::size_t i = 0; i < 2; ++i)
                sides.push_back(line.cases.front().formula.parts[i].parts[0].id.of);
    if (sides.empty() && pattern.reduction)
        sides.assign(pattern.reduction->side.begin(), pattern.reduction->side.end());
    return sides;
}

std::vector<Rewrite> eachLine(const Pattern& pattern,
                              const std::function<std::optional<Line>(const Line&)>& change) {
    std::vector<Rewrite> all;
    const auto& lines = pattern.chain().lines;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (lines[i].kind == LineKind::check)
            continue;
        if (auto now = change(lines[i]))
            all.push_back({{{i, std::move(*now)}}, lines[i].subject.of, lines[i].subject.with});
    }
    return all;
}

std::vector<Rewrite> allLines(const Pattern& pattern,
                              const std::function<std::optional<Line>(const Line&)>& change) {
    Rewrite whole;
    for (Rewrite& one : eachLine(pattern, change)) {
        if (whole.changes.empty())
            whole.of = one.of;
        whole.changes.push_back(std::move(one.changes.front()));
    }
    if (whole.changes.empty())
        return {};
    std::vector<Rewrite> all;
    all.push_back(std::move(whole));
    return all;
}

void append(std::vector<Rewrite>& rewrites, std::vector<Rewrite> more) {
    for (Rewrite& one : more)
        rewrites.push_back(std::move(one));
}

} // namespace tailpoint::marking
