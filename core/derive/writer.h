// SPDX-License-Identifier: MIT
// What writes the lines of a chain: the moves of which every family is made. Used inside derive/ only.
#pragma once

#include "core/derive/chain.h"

#include <array>
#include <string_view>

namespace tailpoint::deriving {

/// A vector in a sum, with its sign.
using Signed = std::pair<VectorId, int>;

class Writer {
public:
    Writer(const Sketch& sketch, const Solved& solved, const Things& things, Route route);

    const Sketch& sketch;
    const Solved& solved;
    const Things& things;
    Chain chain;
    std::uint8_t answer = 0;  ///< 1, 2 while one of two answers is written
    std::size_t solution = 0; ///< the index of the answer that is written

    // Symbols. A direction that is given by a slope, a bearing or the long way round gets its lines on first
    // use.
    Formula of(const QuantityId& quantity) const { return things.formula(quantity); }
    Formula size(VectorId vector) { return of(sizeId(vector)); }
    Formula way(VectorId vector);
    Formula
    fromX(VectorId vector); ///< counter-clockwise from +x, with its line where the sheet measures otherwise
    Formula x(VectorId vector); ///< component, with its line where it has none yet
    Formula y(VectorId vector);
    Formula componentOf(VectorId vector, std::uint8_t part); ///< kCosine: along x; kSine: along y
    const SlopeForm* slopeOf(VectorId vector) const;
    QuantityId sizeId(VectorId vector) const { return standing(vector).size; }
    QuantityId wayId(VectorId vector) const { return standing(vector).way; }
    QuantityId own(What what, VectorId of, std::uint8_t part = 0) const {
        return {what, of, {}, answer, part};
    }
    /// From here on the vector's magnitude or direction is known under these ids.
    void stand(const Standing& standing);
    std::vector<Standing> standings; ///< those that differ from the question's own

    void line(const QuantityId& subject, LineKind kind, Formula formula);
    void line(const QuantityId& subject, LineKind kind, std::vector<Case> cases);

    // Angles from directions: between the tails, or, tip to tail, its supplement.
    void tails(const QuantityId& subject, VectorId a, VectorId b, bool supplement);
    void supplement(const QuantityId& subject, const QuantityId& angle);
    void third(const QuantityId& subject, const QuantityId& a, const QuantityId& b);

    /// c² = a² + b² − 2ab cos γ, c = √c².
    void cosinesForSide(const QuantityId& subject, VectorId a, VectorId b, const QuantityId& included);
    /// cos γ = (a² + b² − c²)/2ab, γ = arccos.
    void cosinesForAngle(const QuantityId& subject, VectorId a, VectorId b, VectorId opposite);
    /// sin β = side · sin κ / known, β acute or, where the square of `side` is more than both others',
    /// obtuse.
    void sinesForAngle(const QuantityId& subject, VectorId side, VectorId known, const QuantityId& knownAngle,
                       VectorId other);
    void sineRatio(const QuantityId& ratio, VectorId side, VectorId known, const QuantityId& knownAngle);
    void sinesForSide(const QuantityId& subject, const QuantityId& angle, VectorId known,
                      const QuantityId& knownAngle);

    /// How a direction is turned from another: by the angle towards a third direction, or away from it
    /// (`sign`).
    struct Turn {
        VectorId from;
        Formula angle;
        VectorId towards; ///< kNobody: the sign is the sheet's own, fixed by the answer
        int sign = 1;
    };
    void turn(const QuantityId& subject, Turn turn);
    /// The other sense of a line of action: half a turn on.
    void turnRound(VectorId vector);

    // Components.
    void columnSums(VectorId total, const std::vector<Signed>& terms);
    /// Magnitude and direction from the components.
    void pythagoras(VectorId vector);
    void wayFromComponents(VectorId vector);
    void referred(VectorId vector);
    void check();

    Formula half() const;
    /// A half turn with room for the last bits: a direction on the seam stays the positive half turn.
    Formula seam() const;
    Formula full() const;
    Formula quarter() const;
    bool isPlain() const { return m_isPlain; }
    int sense() const { return sketch.reference.sense == Sense::ccw ? 1 : -1; }
    const SolvedForce& solvedVector(VectorId vector) const;
    double length(VectorId vector) const; ///< as typed, where it was
    Eigen::Vector2d
    vector(VectorId vector) const; ///< in the answer that is written; of K and partial sums too

private:
    Standing standing(VectorId vector) const;
    bool isWritten(const QuantityId& quantity) const { return m_written.contains(quantity); }
    /// What is counted from +x out of an angle from the axis, and the other way round.
    Formula turnedBy(const Formula& angle, bool toX) const;
    double axisInUnit() const;
    Formula axis() const;
    void writeGivenWay(VectorId vector);

    bool m_isPlain;
    QuantityIndex m_written;
};

// Relations and signs.
Formula above(Formula a, Formula b);
Formula below(Formula a, Formula b);
Formula zero();
Formula signedBy(int sign, Formula formula);
/// A sum in which terms with the sign -1 are taken away; the first too.
Formula total(std::vector<std::pair<Formula, int>> terms);

// The families. Each leaves the chain without lines where its way doesn't lead to the answer.
void writeByTriangle(Writer& writer);
/// Whether there is a triangle that has some height.
bool hasTriangle(const Writer& writer);
void writeByComponents(Writer& writer);
/// The same where no triangle has any height: components along the line, each with its sign.
void writeFlat(Writer& writer, const Reduction& reduction);
/// Two magnitudes by the law of sines. Precondition: their lines meet, and the known side has a length.
void writeTwoMagnitudes(Writer& writer, const Reduction& reduction);
/// What fails where no triangle closes, and by how much. Precondition: it is all of one triangle.
void writeFailure(Writer& writer, const Reduction& reduction);
void writeByParallelograms(Writer& writer);
/// Component lines of what K adds up, K from them.
void writeKnown(Writer& writer, const Reduction& reduction);
/// Lines of action found in the other sense, in the answer that is written.
void writeSenses(Writer& writer);
/// Symbols of quantities that no line before has given.
void collectGiven(Chain& chain);

} // namespace tailpoint::deriving
