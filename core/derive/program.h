// SPDX-License-Identifier: MIT
// A chain compiled: each quantity a slot, each formula postfix code, so that a change runs again only what it
// moves. Gives the same bits as evaluate() (chain.h).
//
//   const Program program(chain);
//   Program::State right = program.start(givenValues(chain, sketch));
//   program.run(right);
//   const Patch patch = program.patch(2, changedLine);         // another formula for one line
//   Program::State wrong = program.changed(right, {patch});    // lines that it doesn't move are not run
#pragma once

#include "core/derive/chain.h"
#include "core/formula/arithmetic.h"

#include <cstdint>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace tailpoint {

class Program {
public:
    static constexpr std::size_t kNoSlot = QuantityIndex::kNone;

    /// The values of an evaluation, by slot.
    struct State {
        std::vector<long double> value;
        std::vector<std::uint8_t> known; ///< by slot
        std::vector<std::uint8_t> taken; ///< by line, kNoCase where none holds
        std::optional<long double> at(std::size_t slot) const {
            return slot < known.size() && known[slot] ? std::optional(value[slot]) : std::nullopt;
        }
    };

    /// Postfix code of a line's cases.
    struct Code {
        enum class Op : std::uint8_t {
            number,   ///< pushes `number`
            load,     ///< pushes a slot; without a value there the line has none
            loadOr,   ///< pushes a slot that is known and jumps `jump` operations on; else goes on
            negative, ///< and so on: FormulaKind
            sum,      ///< of `count` values
            product,
            fraction,
            power,
            root,
            absolute,
            function,
            nothing ///< has no value
        };
        struct Operation {
            Op op = Op::nothing;
            arithmetic::Function function = arithmetic::Function::none;
            std::uint32_t count = 0; ///< of parts; of loadOr the jump
            std::uint32_t slot = 0;
            long double number = 0;
        };
        struct Range {
            std::uint32_t begin = 0, end = 0;
        };
        struct Condition {
            std::vector<Range> sides; ///< two or three
            std::array<Relation, 2> relations{};
        };
        struct Form {
            std::vector<Condition> when;
            Range formula;
        };
        std::vector<Operation> operations;
        std::vector<Form> cases;
        std::vector<std::uint32_t> inputs; ///< slots, each once
        std::size_t depth = 0;             ///< of values at a time, at most
    };

    /// A line in place of the chain's own.
    struct Patch {
        std::size_t line = 0;
        Code code;
    };
    /// A value in place of what a slot's line gives.
    struct Put {
        std::size_t slot = 0;
        long double value = 0;
    };

    explicit Program(const Chain& chain);

    AngleUnit unit() const { return m_unit; }
    std::size_t lines() const { return m_lines.size(); }
    std::size_t slots() const { return m_quantities.size(); }
    const QuantityId& quantity(std::size_t slot) const { return m_quantities[slot]; }
    std::size_t slotOf(const QuantityId& quantity) const { return m_index.find(quantity); }
    std::size_t slotOfLine(std::size_t line) const { return m_subjects[line]; }
    /// The line that gives the quantity; lines() where none does.
    std::size_t lineOf(const QuantityId& quantity) const;

    const Code& code(std::size_t line) const { return m_lines[line]; }
    /// What a line's code gives in a state: its case (kNoCase where none holds), its value.
    std::pair<std::uint8_t, std::optional<long double>> evaluated(const Code& code, const State& state) const;

    /// A quantity that is nowhere in the chain has no value, and a line that takes it none either.
    Patch patch(std::size_t line, const Line& changed) const;

    /// With the given values alone.
    State start(const Values& given) const;
    /// All lines in their order. `puts` as evaluate()'s overrides.
    void run(State& state, std::span<const Patch> patches = {}, std::span<const Put> puts = {}) const;
    /// What becomes of a state that was run when lines are changed or values put in: only what these move is
    /// run again.
    State changed(const State& state, std::span<const Patch> patches, std::span<const Put> puts = {}) const;

    /// A change of this chain, or of one with the same quantities in the same lines, and what it makes.
    struct Ran {
        const State& state;
        std::span<const Patch> patches{};
    };
    /// What two changes make together: only lines that both move are run again. `sameLines`: which lines the
    /// chain of `b` has like this one; empty: all, and they are those of `a`.
    void together(const Ran& a, const Ran& b, const std::vector<bool>& sameLines, State& into) const;

    /// A state in which one value after another is moved and put back: what is carried on from each.
    class Trial {
    public:
        /// `state` was run with these.
        Trial(const Program& program, State state, std::span<const Patch> patches, std::span<const Put> puts);
        /// With another value in a line's place. Precondition: back().
        void move(std::size_t line, long double value);
        void back();
        const State& state() const { return m_state; }
        /// Slots that the move has changed.
        const std::vector<std::size_t>& moved() const { return m_moved; }

    private:
        struct Before {
            std::size_t slot, line;
            long double value;
            std::uint8_t known, taken;
        };
        void keep(std::size_t line);

        const Program& m_program;
        State m_state;
        std::span<const Put> m_puts;
        std::vector<const Code*> m_codes; ///< by line
        std::vector<std::uint8_t> m_isMoved;
        std::vector<std::size_t> m_moved;
        std::vector<Before> m_before;
    };

private:
    class Compiler;
    std::vector<const Code*> codes(std::span<const Patch> patches, std::span<const Patch> more = {}) const;
    void runLine(std::size_t line, const Code& code, State& state, std::span<const Put> puts) const;

    AngleUnit m_unit = AngleUnit::deg;
    QuantityIndex m_index;
    std::vector<QuantityId> m_quantities; ///< by slot
    std::vector<std::size_t> m_subjects;  ///< slot of each line
    std::vector<Code> m_lines;
};

} // namespace tailpoint
