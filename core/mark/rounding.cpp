// SPDX-License-Identifier: MIT
#include "core/mark/rounding.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

/// Of a line that has no value beside its own: the limit decides.
constexpr double kSteepest = 1e30;

} // namespace

Rounding::Rounding(const Question& question, const Way& way)
    : m_question(question), m_way(way), m_lineOfSlot(way.program.slots(), way.program.lines()) {
    const Program& program = way.program;
    if (isTooLong(program))
        return;
    for (std::size_t line = program.lines(); line-- > 0;)
        m_lineOfSlot[program.slotOfLine(line)] = line;
    Program::State state = way.right;
    for (std::size_t line = 0; line < program.lines(); ++line)
        m_right.push_back(slopesOf(line, program.code(line), state));
}

double Rounding::slope(std::size_t line, const Program::Code& code, std::size_t input,
                       Program::State& state) const {
    const Program& program = m_way.program;
    const long double at = state.value[input];
    const double half = m_question.halfUnit(program.quantity(input).what, static_cast<double>(at));
    if (half == 0)
        return 0;
    state.value[input] = at + half;
    const auto up = program.evaluated(code, state).second;
    state.value[input] = at - half;
    const auto down = program.evaluated(code, state).second;
    state.value[input] = at;
    if (!up || !down)
        return kSteepest;
    const What what = program.quantity(program.slotOfLine(line)).what;
    const auto off = static_cast<double>(*up - *down);
    const bool isDirection = what == What::direction || what == What::fromX;
    return (isDirection ? std::remainder(off, m_question.turn()) : off) / (2 * half);
}

Rounding::Slopes Rounding::slopesOf(std::size_t line, const Program::Code& code,
                                    Program::State& state) const {
    Slopes slopes;
    if (!state.known[m_way.program.slotOfLine(line)])
        return slopes;
    for (const std::uint32_t input : code.inputs)
        if (state.known[input] && m_lineOfSlot[input] < line)
            slopes.push_back({m_lineOfSlot[input], slope(line, code, input, state)});
    return slopes;
}

bool Rounding::isMoved(std::size_t line, const Program::Code& code, const Program::State& state) const {
    const auto isOther = [&](std::size_t slot) {
        return state.known[slot] != m_way.right.known[slot] || state.value[slot] != m_way.right.value[slot];
    };
    return isOther(m_way.program.slotOfLine(line)) ||
           std::any_of(code.inputs.begin(), code.inputs.end(), isOther);
}

double Rounding::halfOf(std::size_t line, const Program::State& state) const {
    const std::size_t slot = m_way.program.slotOfLine(line);
    if (!state.known[slot] || m_way.chain.lines[line].kind == LineKind::check)
        return 0;
    return m_question.halfOfMoved(m_way.program.quantity(slot).what, static_cast<double>(state.value[slot]));
}

std::vector<double> Rounding::moved(Program::State state, std::span<const Program::Patch> patches) const {
    const std::size_t lines = m_way.program.lines();
    std::vector<double> carried(lines * lines, 0), moved(lines, 0); // by line: what half a unit of each makes
    for (std::size_t line = 0; line < lines; ++line) {
        const Program::Code* code = &m_way.program.code(line);
        for (const Program::Patch& patch : patches)
            if (patch.line == line)
                code = &patch.code;
        const bool isNew = code != &m_way.program.code(line) || isMoved(line, *code, state);
        const Slopes own = isNew ? slopesOf(line, *code, state) : Slopes();
        double* const row = &carried[line * lines];
        for (const Slope& slope : isNew ? own : m_right[line])
            for (std::size_t source = 0; source <= slope.line; ++source)
                row[source] = std::clamp(row[source] + slope.by * carried[slope.line * lines + source],
                                         -kSteepest, kSteepest);
        for (std::size_t source = 0; source < line; ++source)
            moved[line] += std::abs(row[source]);
        row[line] = halfOf(line, state);
    }
    return moved;
}

void Rounding::addTolerance(const Program::State& state, std::span<const Program::Patch> patches, double most,
                            Numbers& numbers) const {
    const bool isLong = isTooLong(m_way.program);
    const std::vector<double> all = isLong ? std::vector<double>() : moved(state, patches);
    for (std::size_t cell = 0; cell < m_question.cells(); ++cell) {
        const std::size_t slot = m_way.slots[cell];
        if (!isThere(numbers.value[cell]) || slot == Program::kNoSlot)
            continue;
        const double limit = m_question.limit(cell, numbers.value[cell], most);
        const std::size_t line = m_lineOfSlot[slot];
        const double off = isLong ? limit : line < all.size() ? std::min(all[line], limit) : 0;
        numbers.tolerance[cell] = std::max(numbers.tolerance[cell], off);
    }
}

} // namespace tailpoint::marking
