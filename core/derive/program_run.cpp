// SPDX-License-Identifier: MIT
// A compiled chain run, whole or as far as a change moves it.
#include "core/derive/first_case.h"
#include "core/derive/program.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace tailpoint {

namespace {

using arithmetic::finite;
using arithmetic::Value;
using Code = Program::Code;
using Op = Code::Op;

/// The values that an expression has on its way; on the heap where it has many terms.
class Stack {
public:
    explicit Stack(std::size_t depth) : m_many(depth > kFew ? depth : 0) {
        m_values = m_many.empty() ? m_few : m_many.data();
    }
    std::size_t size() const { return m_size; }
    void push(long double x) { m_values[m_size++] = x; }
    long double pop() { return m_values[--m_size]; }
    const long double* top(std::size_t count) const { return m_values + (m_size - count); }
    void drop(std::size_t count) { m_size -= count; }

private:
    static constexpr std::size_t kFew = 32;
    long double m_few[kFew];
    std::vector<long double> m_many;
    long double* m_values = nullptr;
    std::size_t m_size = 0;
};

Value combined(const Code::Operation& o, Stack& stack, AngleUnit unit) {
    switch (o.op) {
    case Op::negative:
        return 0 - stack.pop();
    case Op::absolute:
        return std::fabs(stack.pop());
    case Op::root:
        return arithmetic::rootOf(stack.pop());
    case Op::function:
        return arithmetic::valueOf(o.function, stack.pop(), unit);
    case Op::fraction:
    case Op::power: {
        const long double b = stack.pop(), a = stack.pop();
        return o.op == Op::fraction ? arithmetic::quotient(a, b) : arithmetic::raised(a, b);
    }
    case Op::sum:
    case Op::product: {
        long double total = o.op == Op::sum ? 0 : 1;
        const long double* parts = stack.top(o.count);
        for (std::uint32_t i = 0; i < o.count; ++i)
            total = o.op == Op::sum ? total + parts[i] : total * parts[i];
        stack.drop(o.count);
        return finite(total);
    }
    default:
        return std::nullopt;
    }
}

Value valueOf(const Code& code, Code::Range range, const Program::State& state, AngleUnit unit) {
    Stack stack(code.depth);
    for (std::uint32_t i = range.begin; i < range.end; ++i) {
        const Code::Operation& o = code.operations[i];
        Value value;
        if (o.op == Op::number) {
            value = o.number;
        } else if (o.op == Op::load || o.op == Op::loadOr) {
            value = state.at(o.slot);
            if (o.op == Op::loadOr) {
                if (!value)
                    continue;
                i += o.count;
            }
        } else {
            value = combined(o, stack, unit);
        }
        if (!value)
            return std::nullopt;
        stack.push(*value);
    }
    return stack.size() == 1 ? Value(stack.pop()) : std::nullopt;
}

std::optional<bool> holds(const Code& code, const Code::Condition& condition, const Program::State& state,
                          AngleUnit unit) {
    bool all = !condition.sides.empty();
    if (!all)
        return std::nullopt;
    Value a = valueOf(code, condition.sides[0], state, unit);
    for (std::size_t i = 0; i + 1 < condition.sides.size(); ++i) {
        const Value b = valueOf(code, condition.sides[i + 1], state, unit);
        const auto one = a && b ? arithmetic::compared(*a, condition.relations[i], *b) : std::nullopt;
        if (!one)
            return std::nullopt;
        all = all && *one;
        a = b;
    }
    return all;
}

} // namespace

std::pair<std::uint8_t, std::optional<long double>> Program::evaluated(const Code& code,
                                                                       const State& state) const {
    const std::uint8_t taken = firstCase(
        code.cases, [&](const Code::Condition& condition) { return holds(code, condition, state, m_unit); });
    if (taken == kNoCase)
        return {taken, std::nullopt};
    return {taken, valueOf(code, code.cases[taken].formula, state, m_unit)};
}

void Program::runLine(std::size_t line, const Code& code, State& state, std::span<const Put> puts) const {
    const std::size_t slot = m_subjects[line];
    Value value;
    std::tie(state.taken[line], value) = evaluated(code, state);
    for (const Put& put : puts)
        if (put.slot == slot)
            value = put.value;
    state.known[slot] = value ? 1 : 0;
    if (value)
        state.value[slot] = *value;
}

/// By line: the chain's own code, or that of a patch; of several for a line the first of `patches`.
std::vector<const Program::Code*> Program::codes(std::span<const Patch> patches,
                                                 std::span<const Patch> more) const {
    std::vector<const Code*> codes(lines());
    for (std::size_t line = 0; line < lines(); ++line)
        codes[line] = &m_lines[line];
    for (const auto& some : {more, patches})
        for (auto patch = some.rbegin(); patch != some.rend(); ++patch)
            codes[patch->line] = &patch->code;
    return codes;
}

void Program::run(State& state, std::span<const Patch> patches, std::span<const Put> puts) const {
    const auto all = codes(patches);
    for (std::size_t line = 0; line < lines(); ++line)
        runLine(line, *all[line], state, puts);
}

Program::State Program::changed(const State& state, std::span<const Patch> patches,
                                std::span<const Put> puts) const {
    State into = state;
    const auto all = codes(patches);
    std::vector<std::uint8_t> moved(slots(), 0), isChanged(lines(), 0);
    for (const Patch& patch : patches)
        isChanged[patch.line] = 1;
    for (std::size_t line = 0; line < lines() && !puts.empty(); ++line)
        for (const Put& put : puts)
            if (m_subjects[line] == put.slot)
                isChanged[line] = 1;
    std::size_t first = 0;
    while (first < lines() && isChanged[first] == 0)
        ++first;
    for (std::size_t line = first; line < lines(); ++line) // not yet known while lines before them are run
        into.known[m_subjects[line]] = 0;
    for (std::size_t line = first; line < lines(); ++line) {
        const std::size_t slot = m_subjects[line];
        const Code& code = *all[line];
        if (isChanged[line] == 0 && std::none_of(code.inputs.begin(), code.inputs.end(),
                                                 [&](std::uint32_t input) { return moved[input] != 0; })) {
            into.known[slot] = state.known[slot];
            continue;
        }
        moved[slot] = 1;
        runLine(line, code, into, puts);
    }
    return into;
}

void Program::together(const Ran& a, const Ran& b, const std::vector<bool>& sameLines, State& into) const {
    into = a.state;
    const auto all = codes(b.patches, a.patches);
    const auto likeThat = [&](const State& state, std::size_t slot) {
        return into.known[slot] == state.known[slot] &&
               (into.known[slot] == 0 || into.value[slot] == state.value[slot]);
    };
    const auto take = [&](const State& state, std::size_t line) {
        const std::size_t slot = m_subjects[line];
        into.known[slot] = state.known[slot];
        into.value[slot] = state.value[slot];
        into.taken[line] = state.taken[line];
    };
    for (const std::size_t slot : m_subjects) // not yet known while lines before them are run
        into.known[slot] = 0;
    const auto isPatched = [](const Ran& ran, std::size_t line) {
        return std::any_of(ran.patches.begin(), ran.patches.end(),
                           [&](const Patch& patch) { return patch.line == line; });
    };
    for (std::size_t line = 0; line < lines(); ++line) {
        const bool isOfA = isPatched(a, line) || (!sameLines.empty() && !sameLines[line]);
        const auto& inputs = all[line]->inputs;
        const auto areAs = [&](const State& state) {
            return std::all_of(inputs.begin(), inputs.end(),
                               [&](std::uint32_t input) { return likeThat(state, input); });
        };
        if (!isPatched(b, line) && areAs(a.state))
            take(a.state, line);
        else if (!isOfA && areAs(b.state))
            take(b.state, line);
        else
            runLine(line, *all[line], into, {});
    }
}

Program::Trial::Trial(const Program& program, State state, std::span<const Patch> patches,
                      std::span<const Put> puts)
    : m_program(program), m_state(std::move(state)), m_puts(puts), m_codes(program.codes(patches)),
      m_isMoved(program.slots(), 0) {}

void Program::Trial::keep(std::size_t line) {
    const std::size_t slot = m_program.m_subjects[line];
    m_before.push_back({slot, line, m_state.value[slot], m_state.known[slot], m_state.taken[line]});
    m_isMoved[slot] = 1;
    m_moved.push_back(slot);
}

void Program::Trial::move(std::size_t line, long double value) {
    keep(line);
    m_state.value[m_program.m_subjects[line]] = value;
    m_state.known[m_program.m_subjects[line]] = 1;
    for (std::size_t next = line + 1; next < m_codes.size(); ++next) {
        const Code& code = *m_codes[next];
        if (std::none_of(code.inputs.begin(), code.inputs.end(),
                         [&](std::uint32_t input) { return m_isMoved[input] != 0; }))
            continue;
        keep(next);
        m_program.runLine(next, code, m_state, m_puts);
    }
}

void Program::Trial::back() {
    for (auto before = m_before.rbegin(); before != m_before.rend(); ++before) {
        m_state.value[before->slot] = before->value;
        m_state.known[before->slot] = before->known;
        m_state.taken[before->line] = before->taken;
        m_isMoved[before->slot] = 0;
    }
    m_before.clear();
    m_moved.clear();
}

} // namespace tailpoint
