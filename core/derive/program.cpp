#include "core/derive/program.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

using arithmetic::finite;
using arithmetic::Value;
using Code = Program::Code;
using Op = Code::Op;

/// The values that an expression has on its way, in one block.
class Stack {
public:
    void clear() { m_size = 0; }
    std::size_t size() const { return m_size; }
    void push(long double x) {
        if (m_size == m_values.size())
            m_values.resize(2 * m_size + 16);
        m_values[m_size++] = x;
    }
    long double pop() { return m_values[--m_size]; }
    long double* top(std::size_t count) { return m_values.data() + (m_size - count); }
    void drop(std::size_t count) { m_size -= count; }

private:
    std::vector<long double> m_values = std::vector<long double>(64);
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
    thread_local Stack stack;
    stack.clear();
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

std::optional<bool> compared(long double a, Relation relation, long double b) {
    switch (relation) {
    case Relation::equal:
        return a == b;
    case Relation::less:
        return a < b;
    case Relation::lessOrEqual:
        return a <= b;
    case Relation::greater:
        return a > b;
    case Relation::greaterOrEqual:
        return a >= b;
    case Relation::approximately:
    case Relation::implies:
        break;
    }
    return std::nullopt;
}

std::optional<bool> holds(const Code& code, const Code::Condition& condition, const Program::State& state,
                          AngleUnit unit) {
    bool all = !condition.sides.empty();
    if (!all)
        return std::nullopt;
    Value a = valueOf(code, condition.sides[0], state, unit);
    for (std::size_t i = 0; i + 1 < condition.sides.size(); ++i) {
        const Value b = valueOf(code, condition.sides[i + 1], state, unit);
        const auto one = a && b ? compared(*a, condition.relations[i], *b) : std::nullopt;
        if (!one)
            return std::nullopt;
        all = all && *one;
        a = b;
    }
    return all;
}

/// Index of the first case that holds; kNoCase where none does or where it can't be decided.
std::uint8_t caseOf(const Code& code, const Program::State& state, AngleUnit unit) {
    for (std::size_t i = 0; i < code.cases.size(); ++i) {
        bool all = true;
        for (const Code::Condition& condition : code.cases[i].when) {
            const auto one = holds(code, condition, state, unit);
            if (!one)
                return kNoCase;
            all = all && *one;
        }
        if (all)
            return static_cast<std::uint8_t>(i);
    }
    return kNoCase;
}

Op opOf(FormulaKind kind) {
    switch (kind) {
    case FormulaKind::negative:
        return Op::negative;
    case FormulaKind::sum:
        return Op::sum;
    case FormulaKind::product:
        return Op::product;
    case FormulaKind::fraction:
        return Op::fraction;
    case FormulaKind::power:
        return Op::power;
    case FormulaKind::root:
        return Op::root;
    case FormulaKind::absolute:
        return Op::absolute;
    case FormulaKind::function:
        return Op::function;
    default:
        return Op::nothing;
    }
}

} // namespace

class Program::Compiler {
public:
    explicit Compiler(const QuantityIndex& index) : m_index(index) {}

    Code code(const Line& line) {
        for (const Case& one : line.cases) {
            Code::Form& form = m_code.cases.emplace_back();
            for (const Formula& condition : one.when)
                form.when.push_back(conditionOf(condition));
            form.formula = rangeOf(one.formula);
        }
        return std::move(m_code);
    }

private:
    Code::Condition conditionOf(const Formula& relation) {
        Code::Condition condition;
        if (relation.kind != FormulaKind::relation)
            return condition; // nobody's to decide
        condition.relations = relation.relations;
        for (const Formula& side : relation.parts)
            condition.sides.push_back(rangeOf(side));
        return condition;
    }
    Code::Range rangeOf(const Formula& formula) {
        Code::Range range;
        range.begin = here();
        add(formula);
        range.end = here();
        return range;
    }
    std::uint32_t here() const { return static_cast<std::uint32_t>(m_code.operations.size()); }

    void add(const Formula& f) {
        const std::size_t slot = f.id.what == What::none ? kNoSlot : m_index.find(f.id);
        if (f.kind == FormulaKind::symbol)
            return slot == kNoSlot ? put({}) : load(Op::load, slot);
        if (slot == kNoSlot)
            return addParts(f);
        load(Op::loadOr, slot);
        const std::uint32_t at = here();
        addParts(f);
        m_code.operations[at - 1].count = here() - at;
    }
    void addParts(const Formula& f) {
        Code::Operation o;
        if (f.kind == FormulaKind::number) {
            o.op = finite(f.value) ? Op::number : Op::nothing;
            o.number = f.value;
            return put(o);
        }
        o.op = opOf(f.kind);
        o.count = static_cast<std::uint32_t>(f.parts.size());
        if (o.op == Op::function)
            o.function = arithmetic::functionNamed(f.text);
        if (o.op != Op::nothing)
            for (const Formula& part : f.parts)
                add(part);
        put(o);
    }
    void put(const Code::Operation& o) { m_code.operations.push_back(o); }
    void load(Op op, std::size_t slot) {
        Code::Operation o;
        o.op = op;
        o.slot = static_cast<std::uint32_t>(slot);
        put(o);
        if (std::find(m_code.inputs.begin(), m_code.inputs.end(), o.slot) == m_code.inputs.end())
            m_code.inputs.push_back(o.slot);
    }

    const QuantityIndex& m_index;
    Code m_code;
};

Program::Program(const Chain& chain) : m_unit(chain.unit) {
    const auto slot = [&](const QuantityId& quantity) {
        const std::size_t place = m_index.add(quantity);
        if (place == m_quantities.size())
            m_quantities.push_back(quantity);
        return place;
    };
    m_index.reserve(chain.given.size() + chain.lines.size());
    for (const QuantityId& quantity : chain.given)
        slot(quantity);
    for (const Line& line : chain.lines)
        m_subjects.push_back(slot(line.subject));
    m_lines.reserve(chain.lines.size());
    for (const Line& line : chain.lines)
        m_lines.push_back(Compiler(m_index).code(line));
}

std::size_t Program::lineOf(const QuantityId& quantity) const {
    const std::size_t slot = slotOf(quantity);
    const auto found = std::find(m_subjects.begin(), m_subjects.end(), slot);
    return static_cast<std::size_t>(found - m_subjects.begin());
}

Program::Patch Program::patch(std::size_t line, const Line& changed) const {
    return {line, Compiler(m_index).code(changed)};
}

Program::State Program::start(const Values& given) const {
    State state;
    state.value.resize(slots());
    state.known.resize(slots());
    state.taken.resize(lines(), kNoCase);
    for (std::size_t slot = 0; slot < slots(); ++slot)
        if (const auto value = given.at(m_quantities[slot])) {
            state.value[slot] = *value;
            state.known[slot] = 1;
        }
    return state;
}

void Program::runLine(std::size_t line, const Code& code, State& state, std::span<const Put> puts) const {
    const std::size_t slot = m_subjects[line];
    const std::uint8_t taken = caseOf(code, state, m_unit);
    state.taken[line] = taken;
    Value value;
    if (taken != kNoCase)
        value = valueOf(code, code.cases[taken].formula, state, m_unit);
    for (const Put& put : puts)
        if (put.slot == slot)
            value = put.value;
    state.known[slot] = value ? 1 : 0;
    if (value)
        state.value[slot] = *value;
}

namespace {

const Code& codeOf(std::size_t line, const std::vector<Code>& own, std::span<const Program::Patch> patches,
                   std::span<const Program::Patch> before = {}) {
    for (const Program::Patch& patch : patches)
        if (patch.line == line)
            return patch.code;
    for (const Program::Patch& patch : before)
        if (patch.line == line)
            return patch.code;
    return own[line];
}

} // namespace

void Program::run(State& state, std::span<const Patch> patches, std::span<const Put> puts) const {
    for (std::size_t line = 0; line < lines(); ++line)
        runLine(line, codeOf(line, m_lines, patches), state, puts);
}

Program::State Program::changed(const State& state, std::span<const Patch> patches, std::span<const Put> puts,
                                std::span<const Patch> before) const {
    State into;
    change(state, into, patches, puts, before);
    return into;
}

void Program::change(const State& state, State& into, std::span<const Patch> patches,
                     std::span<const Put> puts, std::span<const Patch> before) const {
    into = state;
    thread_local std::vector<std::uint8_t> moved;
    moved.assign(slots(), 0);
    std::size_t first = lines();
    for (const Patch& patch : patches)
        first = std::min(first, patch.line);
    for (const Put& put : puts)
        for (std::size_t line = 0; line < lines(); ++line)
            if (m_subjects[line] == put.slot)
                first = std::min(first, line);
    for (std::size_t line = first; line < lines(); ++line) // not yet known while lines before them are run
        into.known[m_subjects[line]] = 0;
    for (std::size_t line = first; line < lines(); ++line) {
        const std::size_t slot = m_subjects[line];
        const Code& code = codeOf(line, m_lines, patches, before);
        const bool isChanged =
            std::any_of(patches.begin(), patches.end(), [&](const Patch& p) { return p.line == line; }) ||
            std::any_of(puts.begin(), puts.end(), [&](const Put& p) { return p.slot == slot; }) ||
            std::any_of(code.inputs.begin(), code.inputs.end(),
                        [&](std::uint32_t input) { return moved[input] != 0; });
        if (!isChanged) {
            into.known[slot] = state.known[slot];
            continue;
        }
        moved[slot] = 1;
        runLine(line, code, into, puts);
    }
}

Program::Trial::Trial(const Program& program, State state, std::span<const Patch> patches,
                      std::span<const Put> puts)
    : m_program(program), m_state(std::move(state)), m_puts(puts), m_isMoved(program.slots(), 0) {
    m_codes.reserve(program.lines());
    for (std::size_t line = 0; line < program.lines(); ++line)
        m_codes.push_back(&codeOf(line, program.m_lines, patches));
}

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
