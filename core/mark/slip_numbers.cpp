#include "core/mark/slip_numbers.h"

#include "core/mark/alternatives.h"

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

SlipNumbers slipOf(const Question& question, const Alternatives& alternatives, const Alternative& one) {
    SlipNumbers out{alternatives.slip(one).id, askedOf(question, one.numbers), false, {}, {}};
    for (std::size_t cell = 0; cell < question.asked * question.answers; ++cell)
        out.changes = out.changes || one.changed[cell];
    const Origin& origin = alternatives.origin(one);
    if (!origin.rewrite)
        return out;
    const Way& way = alternatives.ways(origin).ways[origin.way];
    const auto run = Alternatives::run(way, *origin.rewrite);
    out.route = way.chain.route;
    for (const Change& change : origin.rewrite->changes)
        if (const auto value = run.state.at(way.program.slotOfLine(change.line)))
            out.lines.emplace_back(way.chain.lines[change.line].subject, *value);
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

std::optional<SlipTable> slipTable(const Sketch& sketch, const Solved& solved,
                                   std::span<const std::string_view> ids) {
    const Question question(sketch, solved, {});
    if (question.refusal)
        return std::nullopt;
    const Alternatives alternatives(question, [&](const Slip& slip) {
        return ids.empty() || std::find(ids.begin(), ids.end(), slip.id) != ids.end();
    });
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

} // namespace tailpoint
