// What a lecturer has before him while he writes: the vectors of the question with the numbers he carries.
// Internal to explain/.
#pragma once

#include "core/explain/explain.h"
#include "core/explain/parts.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"

namespace tailpoint::explaining {

/// A vector of the question as it stands in the answer explained.
struct Arrow {
    VectorId id;
    std::string name;
    int index = kNoVector;       ///< kNoVector: known forces added up beforehand, or a partial sum
    Formula vector, size, theta; ///< symbols: bold, light, direction in the sheet's reference
    double magnitude = 0;
    Eigen::Vector2d v{0, 0};
    std::optional<double> direction; ///< as the sheet says it
    bool sizeGiven = false, directionGiven = false;
    bool turned = false;                 ///< acts in the other sense of its line of action
    Formula sizeNumber, directionNumber; ///< as carried
};

enum class Quantity { force, angle };

class Blackboard {
public:
    Blackboard(const Sketch& sketch, const Solved& solved, const Construction& construction,
               std::size_t solution, const ExplainOptions& options);

    const Sketch& sketch;
    const Solved& solved;
    const Construction& construction;
    const ExplainOptions& options;
    std::size_t solution;

    const Things things;
    std::vector<Arrow> forces; ///< in the sketch's order
    Arrow sum;
    const Arrow& at(int index) const {
        return index == kSumIndex ? sum : forces[static_cast<std::size_t>(index)];
    }
    Arrow& at(int index) { return index == kSumIndex ? sum : forces[static_cast<std::size_t>(index)]; }

    // Symbols of the triangle's angles, opposite to its first, second, third side.
    Formula alpha, beta, gamma;
    Formula symbolOf(What what, const Arrow& arrow) const { return things.formula({what, arrow.id}); }
    /// Of the angle between the tails.
    Formula between(const Arrow& a, const Arrow& b) const {
        return things.formula({What::between, a.id, b.id});
    }
    Formula component(const Arrow& arrow, char axis) const {
        return symbolOf(axis == 'x' ? What::x : What::y, arrow);
    }

    /// A vector that is not in the sketch: known forces added up, a partial sum.
    Arrow madeArrow(VectorId id, const Eigen::Vector2d& v) const;
    Arrow arrowNamed(VectorId id) const;
    Arrow arrowOf(const SolvedForce& solvedForce, const Force& given, int index) const;

    // Numbers with units, rounded once. In hand rounding the value behind is the shown one.
    Formula force(double value, Origin origin = Origin::computed) const;
    Formula angle(double radians) const;
    Formula angleInUnit(double value, Origin origin = Origin::computed) const;
    Formula axisWords() const; ///< "+x"
    Formula halfTurn() const;
    Formula fullTurn() const;
    /// Sum of all magnitudes; below kNoise of it a carried force is a true zero that was rounded.
    double scale = 0;
    static constexpr double kNoise = 1e-13;
    /// Of a carried angle or a sum of some, in the sheet's unit.
    double valueOf(const Formula& angle) const;
    double half() const { return turnIn(sketch.angleUnit) / 2; }

    /// Completes a working: the value is `full`, or with hand rounding what the substitution gives, rounded.
    /// Returns the number to carry on with.
    Formula settle(Working& working, double full, Quantity quantity) const;

    Worked worked;
    bool hasStep(std::string_view key) const;
    Step& step(std::string key, std::string title, Stage stage, Law law = Law::none);

private:
    Formula numberOf(double value, std::string_view shown) const;
};

std::string listed(const std::vector<std::string>& items); ///< "P, Q and S"

} // namespace tailpoint::explaining
