// SPDX-License-Identifier: MIT
// What a lecturer has before him while he writes: the question, the names of its things, and the lines
// calculated so far, with the numbers that are carried. Internal to explain/.
#pragma once

#include "core/construct/reduction.h"
#include "core/explain/carried.h"
#include "core/explain/parts.h"
#include "core/explain/wording.h"

#include <array>

namespace tailpoint::explaining {

/// Leading digits that cancel in one line: so many and more, and it says so.
inline constexpr int kMostLost = 6;

/// A vector of the question under the ids that it has in an answer: its symbols, its numbers as carried, and
/// the solver's values, by which the words are chosen.
struct Vector {
    VectorId id;
    int index = kNoVector; ///< kNoVector: known forces added up beforehand, or a partial sum
    QuantityId sizeId, wayId;
    Formula vector, size, theta; ///< symbols: bold, light, direction in the sheet's reference
    Formula sizeNumber, wayNumber;
    double magnitude = 0;
    Eigen::Vector2d v{0, 0};         ///< without an answer a line of action is one unit along it
    std::optional<double> direction; ///< as the sheet says it
    bool sizeGiven = false, wayGiven = false;
    bool turned = false; ///< acts in the other sense of its line of action
};

/// What an estimate said of the magnitude sought.
struct Expected {
    QuantityId size; ///< common to both answers
    std::optional<Formula> least, most;
};

class Board : public Voice {
public:
    Board(const Sketch& sketch, const Solved& solved, const Construction& construction, std::size_t solution,
          const ExplainOptions& options);

    const Sketch& sketch;
    const Solved& solved;
    const Construction& construction;
    const ExplainOptions& options;
    const std::size_t solution;                ///< the answer that is explained
    const tolerance::Ranges* ranges = nullptr; ///< of every answer; null where nothing has a tolerance
    const Things things;
    const std::optional<Reduction> reduction;
    Carried carried; ///< at first what can be said before anything is found

    /// Takes the lines of that way to the answer; false where it doesn't lead there.
    bool follow(Route::Way way);
    /// By which way the answer is told; the question's own until one is followed.
    Route::Way way = Route::Way::triangle;
    /// Prints all lines taken: from then on numbers and vectors are known.
    void settle();

    int lost = 0;                     ///< leading digits that the law of cosines would cancel
    std::optional<Expected> expected; ///< by the estimate, where it said bounds
    bool isTangentTold = false;       ///< that it is y over x: said once in a solution

    bool isAnswered() const { return solution < solved.solutions.size(); }
    bool hasTwoAnswers() const { return solved.solutions.size() > 1; }
    /// As both answers have it, under the question's own symbols.
    const Vector& at(VectorId vector) const;
    const Vector& sum() const { return m_sum; }
    const std::vector<Vector>& forces() const { return m_forces; }
    /// A force or the sum as one answer has it, in its own symbols.
    const Vector& in(std::size_t answer, VectorId vector) const;
    const Vector& found(VectorId vector) const { return in(solution, vector); }
    /// The vector of the first unknown; null where there is none.
    const Vector* sought() const;
    const Force& given(VectorId vector) const;

    Formula symbolOf(const QuantityId& quantity) const { return things.formula(quantity); }
    Formula number(const QuantityId& quantity) const { return carried.number(quantity); }
    Formula force(double value) const { return carried.shown(value, Dimension::force); }
    Formula angle(double inUnit) const { return carried.shown(inUnit, Dimension::angle); }
    /// A sum or a difference of magnitudes that bounds another: not rounded to the digits of an answer.
    Formula bound(double value) const;
    /// What is left of a half turn, with the guard figures of the angle.
    Formula supplementOf(const QuantityId& angle) const;
    /// As the sheet shows it.
    Formula shownNumber(const QuantityId& quantity, double value) const;
    /// To the digits of an answer.
    Formula answered(const Formula& number) const;
    Formula axisWords() const; ///< "+x"
    /// What is found of the question, without advice to whoever asked it, and without the senses, which an
    /// answer says itself.
    Prose message() const;
    Formula halfTurn() const;
    Formula fullTurn() const;
    double half() const { return turnIn(sketch.angleUnit) / 2; }
    /// Whether turning by that sign is counter-clockwise on this sheet.
    bool isCounterClockwise(int sign) const { return (sign > 0) == (sketch.reference.sense == Sense::ccw); }
    /// By which sign the line of a direction turns its angle off.
    int signOf(const QuantityId& direction) const { return turnSign(carried.formulaOf(direction)); }

    /// With what is said of its number.
    Working told(Working working, const QuantityId& line) const;
    /// Writes a line into a step. Squares, ratios and what is named in `inlined` stand within it.
    void show(Step& step, const QuantityId& line, const std::vector<QuantityId>& inlined = {}) const;

    Worked worked;
    bool hasStep(StepKey key) const;
    Step& step(StepKey key, const Wording& title, Stage stage, Law law = Law::none);

private:
    Vector vectorOf(const Standing& standing, std::size_t answer) const;
    Vector madeVector(VectorId vector) const;
    Formula numberOf(const QuantityId& quantity, double fallback, Origin origin) const;
    int digitsLostIn(const QuantityId& line) const;
    std::optional<Prose> remarkOn(const QuantityId& line, const Formula& value) const;
    void makeVectors();
    void makeAnswer(std::size_t answer);

    std::size_t m_base; ///< the answer on which both build
    std::vector<Vector> m_forces;
    Vector m_sum, m_known;
    std::vector<Vector> m_partials;               ///< from the sum of the first two
    std::array<std::vector<Vector>, 2> m_answers; ///< where there are two: forces, then the sum
};

/// A component that is nothing but rounding noise of its vector is zero.
double withoutNoise(double component, double scale);
Eigen::Vector2d withoutNoise(const Vector& vector);

} // namespace tailpoint::explaining
