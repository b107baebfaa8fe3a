// SPDX-License-Identifier: MIT
#include "core/mark/slip_numbers.h"

#include "core/mark/marker_parts.h"
#include "core/mark/match.h"
#include "core/mark/rewriting.h"

#include <algorithm>

namespace tailpoint {

using namespace marking;

namespace {

AskedNumbers askedOf(const Question& question, const Numbers& numbers) {
    const std::size_t cells = question.asked * question.answers;
    AskedNumbers out{std::vector<std::optional<double>>(cells), std::vector<double>(cells, 0)};
    for (std::size_t cell = 0; cell < cells; ++cell)
        if (const double value = numbers.value[cell]; isThere(value)) {
            out.values[cell] = value;
            out.reach[cell] = numbers.tolerance[cell] + question.halfAsked(cell, value);
        }
    return out;
}

/// Marking takes two figures and whole degrees for rounded, cut off ones too.
double coarseUnit(const Question& question, std::size_t cell, double value) {
    if (question.dimension(cell) == Dimension::angle)
        return question.degree();
    return value == 0 ? 0 : std::pow(10.0, std::floor(std::log10(std::abs(value))) - 1);
}

/// Of a line that was rewritten: the component or the angle that it gives, else the angle in it.
std::optional<QuantityId> placeIn(const Line& line) {
    const QuantityId& subject = line.subject;
    if (isAngle(subject) || subject.what == What::x || subject.what == What::y)
        return subject;
    if (subject.what == What::term) // an unknown's in the sum along x, or along y
        return QuantityId{subject.part == kCosine ? What::x : What::y, subject.of};
    for (const Case& one : line.cases)
        if (const Formula* angle = firstSymbol(one.formula, true))
            return angle->id;
    return std::nullopt;
}

std::optional<QuantityId> placeOf(const Rewrite& rewrite, const Chain& chain) {
    if (rewrite.changes.size() == 1)
        return placeIn(chain.lines[rewrite.changes.front().line]);
    const auto ofWhom = [&](const Change& change) { return chain.lines[change.line].subject.of; };
    const VectorId first = rewrite.changes.empty() ? kNobody : ofWhom(rewrite.changes.front());
    const bool isOfOne =
        first != kNobody && std::all_of(rewrite.changes.begin(), rewrite.changes.end(),
                                        [&](const Change& change) { return ofWhom(change) == first; });
    return isOfOne ? std::optional(magnitudeId(first)) : std::nullopt;
}

/// Where one vector alone is read otherwise.
std::optional<QuantityId> placeOf(const Reading& reading, const Sketch& sketch) {
    const auto vectors = vectorsOf(sketch);
    const auto changed = std::count_if(vectors.begin(), vectors.end(), [&](VectorId vector) {
        return !(vectorOf(reading.sketch, vector) == vectorOf(sketch, vector));
    });
    return changed == 1 && reading.of != kNobody ? std::optional(QuantityId{reading.what, reading.of})
                                                 : std::nullopt;
}

/// A chain has a line for the magnitude with its sign, before its size.
std::optional<bool> isAgainst(const Question& question, std::size_t cell, const Way& way,
                              const Program::State& state) {
    const QuantityId own = question.ownId(cell);
    const auto signedValue = state.at(way.program.slotOf({What::along, own.of, {}, own.answer}));
    return signedValue ? std::optional(*signedValue < 0) : std::nullopt;
}

std::optional<bool> isAgainst(const Question& question, std::size_t cell, const Solved& read) {
    const VectorId of = question.ownId(cell).of;
    const Solution& solution = read.solutions[question.answerOf(cell)];
    return of == kSumVector ? solution.sum.turned : solution.forces[of.index].turned;
}

bool isOpen(const Question& question, std::size_t cell) {
    const QuantityId id = question.ownId(cell);
    return id.what == What::magnitude && hasFreeSense(question, id.of);
}

void addRewritten(const Question& question, const Alternatives& alternatives, const SlipOrigin& origin,
                  SlipNumbers& out) {
    const Way& way = alternatives.ways(origin).ways[origin.way];
    const auto run = Alternatives::run(way, *origin.rewrite);
    out.route = way.chain.route;
    out.at = placeOf(*origin.rewrite, way.chain);
    for (const Change& change : origin.rewrite->changes)
        if (const auto value = run.state.at(way.program.slotOfLine(change.line)))
            out.lines.emplace_back(way.chain.lines[change.line].subject, *value);
    for (std::size_t cell = 0; cell < out.against.size(); ++cell)
        if (isOpen(question, cell))
            out.against[cell] = isAgainst(question, cell, way, run.state);
}

SlipNumbers slipOf(const Question& question, const Alternatives& alternatives, const Alternative& one) {
    const std::size_t cells = question.asked * question.answers;
    SlipNumbers out{alternatives.slip(one).id, askedOf(question, one.numbers), false, {}, {}, {}, {}};
    out.against.resize(cells);
    for (std::size_t cell = 0; cell < cells; ++cell)
        out.changes = out.changes || one.changed[cell];
    const SlipOrigin& origin = alternatives.origin(one);
    if (origin.rewrite)
        addRewritten(question, alternatives, origin, out);
    if (origin.reading) {
        out.at = placeOf(*origin.reading, question.sketch());
        for (std::size_t cell = 0; cell < cells; ++cell)
            if (isOpen(question, cell))
                out.against[cell] = isAgainst(question, cell, alternatives.ways(origin).solved);
    }
    return out;
}

} // namespace

double SlipTable::apart(std::size_t cell, double a, double b) const {
    const double off = std::abs(a - b);
    const What what = asked[cell / answers].id.what;
    const bool isDirection = what == What::direction || what == What::fromX;
    return isDirection && off > turn / 2 ? std::abs(std::remainder(a - b, turn)) : off;
}

bool SlipTable::tellsApart(const AskedNumbers& a, const AskedNumbers& b) const {
    const auto at = [&](const AskedNumbers& numbers, std::size_t cell) {
        const AskedNumbers& from = numbers.values[cell] ? numbers : right;
        return std::pair(from.values[cell].value_or(0), from.reach[cell]);
    };
    for (std::size_t cell = 0; cell < cells(); ++cell) {
        const auto [first, firstReach] = at(a, cell);
        const auto [second, secondReach] = at(b, cell);
        if (apart(cell, first, second) > firstReach + secondReach)
            return true;
    }
    return false;
}

namespace {

SlipTable tableOf(const Question& question, const Alternatives& alternatives) {
    SlipTable table;
    table.asked.assign(question.quantities.begin(),
                       question.quantities.begin() + static_cast<std::ptrdiff_t>(question.asked));
    table.answers = question.answers;
    table.right = askedOf(question, question.right());
    for (std::size_t cell = 0; cell < table.cells(); ++cell)
        table.right.reach[cell] =
            std::max(table.right.reach[cell],
                     table.right.values[cell] ? coarseUnit(question, cell, *table.right.values[cell]) : 0);
    table.turn = question.turn();
    for (const Alternative& one : alternatives.singles())
        table.slips.push_back(slipOf(question, alternatives, one));
    return table;
}

} // namespace

std::optional<SlipTable> slipTable(const Sketch& sketch, const Solved& solved,
                                   std::span<const std::string_view> ids) {
    const Question question(sketch, solved, {});
    if (question.refusal)
        return std::nullopt;
    const Alternatives alternatives(question, [&](const Slip& slip) {
        return ids.empty() || std::find(ids.begin(), ids.end(), slip.id) != ids.end();
    });
    return tableOf(question, alternatives);
}

std::optional<SlipTable> slipTable(const Marker& marker) {
    const MarkerParts& parts = *marker.m_parts;
    return parts.alternatives ? std::optional(tableOf(parts.question, *parts.alternatives)) : std::nullopt;
}

} // namespace tailpoint
