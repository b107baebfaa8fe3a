// SPDX-License-Identifier: MIT
// What a marker knows of its question: the quantities that can be answered, every chain of calculation that
// leads to them, and what is right. Internal to mark/.
#pragma once

#include "core/derive/program.h"
#include "core/mark/mark.h"
#include "core/solve/tolerance.h"

#include <array>
#include <cmath>
#include <limits>

namespace tailpoint::marking {

inline constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
inline bool isThere(double value) {
    return !std::isnan(value);
}

/// A number and how far rounding on the way can move it, for each cell: a quantity in one of the answers.
struct Numbers {
    std::vector<double> value, tolerance; ///< kNone where there is none
    explicit Numbers(std::size_t cells = 0) : value(cells, kNone), tolerance(cells, 0) {}
};

/// A chain ready to be changed.
struct Way {
    Chain chain;
    Program program;
    Program::State right;
    std::vector<std::size_t> slots; ///< of each cell, kNoSlot where the chain doesn't have it

    Way(Chain chain, const Sketch& sketch);
    std::optional<long double> at(const QuantityId& quantity) const {
        return right.at(program.slotOf(quantity));
    }
};

/// The chains of a sketch that was solved, by every route.
struct Ways {
    Sketch sketch;
    Solved solved;
    std::vector<Way> ways;
    explicit Ways(const Sketch& sketch);
    Ways(const Sketch& sketch, const Solved& solved);
};

/// Of the rounding on the way, as shares of a magnitude (and as so many hundredths of degrees): for what is
/// right, for a slip, and for what follows from given values, whose own digits count too. Source: common
/// practice, no source.
inline constexpr double kMostRounded = 0.01, kMostInSlip = 0.01, kMostInFollowing = 0.03;

/// Of so many lines the halves add up to more than the limit.
inline bool isTooLong(const Program& program) {
    return program.lines() > 300;
}

class Question {
public:
    Question(const Sketch& sketch, const Solved& solved, const MarkOptions& options);

    MarkOptions options;
    Ways own;
    Things things;
    std::vector<Answerable> quantities; ///< what is asked first
    std::size_t asked = 0;              ///< how many of them
    std::size_t answers = 1;            ///< 1 or 2
    std::optional<std::string> refusal;
    bool hasTolerances = false;
    tolerance::Ranges ranges; ///< of the answers; empty: not known, or without tolerances

    const Sketch& sketch() const { return own.sketch; }
    std::size_t cells() const { return quantities.size() * answers; }
    std::size_t cell(std::size_t quantity, std::size_t answer) const { return quantity * answers + answer; }
    std::size_t quantityOf(std::size_t cell) const { return cell / answers; }
    std::size_t answerOf(std::size_t cell) const { return cell % answers; }
    /// The answer's own id, whether a chain has it or not.
    QuantityId ownId(std::size_t cell) const;
    std::size_t find(const QuantityId& id) const; ///< of quantities; their number where it is none
    Dimension dimension(std::size_t cell) const { return quantities[quantityOf(cell)].dimension; }
    /// A direction: whole turns don't count.
    bool isDirection(std::size_t cell) const;

    /// What is right. More than one where weights come from masses: with the usual values of g.
    std::vector<Numbers> rights;
    const Numbers& right() const { return rights.front(); }

    /// What a line comes to, by its chain, else as it is printed.
    std::optional<double> ofLine(const GivenLine& line) const;

    /// Slots of the cells in a chain.
    std::vector<std::size_t> slotsIn(const Program& program) const;
    /// The numbers that solved chains give: what is asked from the solver, the rest from the first chain that
    /// has it, each with the tolerance of the chain that rounds most.
    Numbers numbersOf(const Ways& ways) const;
    /// What rounding the lines of a chain (with those patches) can move, at most `most` (share of a
    /// magnitude; of angles in degrees 100 times it). `state`: the chain run with the patches and with
    /// `puts`.
    void addTolerance(const Way& way, const Program::State& state, std::span<const Program::Patch> patches,
                      double most, Numbers& numbers, std::span<const Program::Put> puts = {}) const;

    /// Half a unit of a value on the way, at the asked figures.
    double halfUnit(What what, double value) const;
    /// The same for a value that is itself moved by rounding: shortly below a power of ten it may be rounded
    /// like one above.
    double halfOfMoved(What what, double value) const { return halfUnit(what, value * (1 + kMostRounded)); }
    /// At which the asked figures end: "520" -> 0.5.
    double halfAsked(std::size_t cell, double value) const;
    /// How far a direction, an angle or a magnitude lies from another.
    double apart(std::size_t cell, double a, double b) const;
    double turn() const { return turnIn(sketch().angleUnit); }
    double degree() const { return turn() / 360; }
    /// A tolerance's limit for that value.
    double limit(std::size_t cell, double value, double share) const;

private:
    void addMove(const Way& way, const Program::State& from, const Program::State& to, std::size_t slot,
                 double most, const Numbers& numbers, std::vector<double>& moved) const;
    double withoutNoise(What what, double value) const;
    void collectAsked();
    void collectOnTheWay();
    void add(const QuantityId& id, bool asked);
    void addRights();

    QuantityIndex m_index; ///< of ids common to both answers
};

/// The mass whose weight is given, kg; empty where none is, and on a sheet in kgf, where nobody weighs it.
std::optional<double> massOf(const Magnitude& magnitude, const Sketch& sketch);

} // namespace tailpoint::marking
