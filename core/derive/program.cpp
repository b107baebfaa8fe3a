// SPDX-License-Identifier: MIT
// A chain compiled to postfix code. How it is run: program_run.cpp.
#include "core/derive/program.h"

#include <algorithm>

namespace tailpoint {

namespace {

using arithmetic::finite;
using Code = Program::Code;
using Op = Code::Op;

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
        m_depth = 0;
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
    void put(const Code::Operation& o) {
        m_code.operations.push_back(o);
        const bool pushes = o.op == Op::number || o.op == Op::load || o.op == Op::nothing;
        if (o.op == Op::loadOr) // stands in place of what would be pushed after it
            return;
        m_depth = pushes ? m_depth + 1 : m_depth + 1 - o.count;
        m_code.depth = std::max(m_code.depth, m_depth);
    }
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
    std::size_t m_depth = 0;
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

} // namespace tailpoint
