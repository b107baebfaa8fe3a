// The one triangle to which a question with two unknowns comes down. Internal to explain/.
#pragma once

#include "core/explain/moves.h"

#include <array>
#include <optional>

namespace tailpoint::explaining {

/// Three sides, tip to tail. Chain: side 0 + side 1 = side 2. Loop: side 0 + side 1 + side 2 = 0.
struct Triangle {
    std::array<const Arrow*, 3> side{};
    bool loop = false;

    /// The angle between the tails of two sides is the triangle's own angle, not its supplement.
    bool isOwnAngle(std::size_t a, std::size_t b) const { return !loop && (a == 2 || b == 2); }
    /// Angle opposite to a side, radians in [0, pi].
    double opposite(std::size_t i) const;
    std::size_t indexOf(const Arrow& arrow) const;
    static std::array<std::size_t, 2> others(std::size_t i);
    bool isFlat() const;  ///< a side without length, or all of them along one line
    bool isRight() const; ///< two sides at right angles, to rounding
};

/// Vectors of the equation as the triangle needs them: K made where several are known.
struct Question {
    Triangle triangle;
    std::optional<Arrow> made; ///< K; the triangle points into it, so a Question stays where it was made
    std::size_t known = 0;     ///< side of the known vector
    std::vector<std::size_t> sought; ///< sides with unknowns, in the order of Solved::unknownVectors
};

/// Builds the triangle of a question with unknowns in two vectors, or in one beside two known ones; says in a
/// step how the known vectors were added up to K. False where it takes more than a triangle.
bool buildQuestion(Blackboard& board, Question& question);

/// Symbol of the angle opposite to side i.
const Formula& angleSymbol(const Blackboard& board, std::size_t i);

/// The angle opposite to side i straight from the directions of the other two.
Term writeAngleFromDirections(Blackboard& board, Step& step, const Triangle& triangle, std::size_t i);

/// The direction of side `target`, turned from side `base` by the angle opposite to the third one or by its
/// supplement. Returns the words "α, counter-clockwise from P".
Turn writeSideDirection(Blackboard& board, Step& step, const Triangle& triangle, std::size_t target,
                        const Formula& theta, std::size_t base, const Term& oppositeThird);

/// "In the triangle of K, P and Q the angle α lies opposite to K, ...".
Prose namedAngles(const Blackboard& board, const Triangle& triangle);
/// The same for the figure; with a prime in one of two answers.
void nameAngles(Step& step, const Blackboard& board, const Triangle& triangle, const std::string& prime = {});

} // namespace tailpoint::explaining
