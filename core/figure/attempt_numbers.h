// SPDX-License-Identifier: MIT
// The vectors of a question as an answer with a slip has them. Internal to figure/.
#pragma once

#include "core/construct/reduction.h"
#include "core/mark/mark.h"

namespace tailpoint {

/// A vector as far as it is known: with both a vector, sketch coordinates.
struct SlipVector {
    std::optional<double> size, radians; ///< radians counter-clockwise from +x
    bool isChanged = false;              ///< given, and other than it is given
    bool isWrongWay = false;             ///< the learner's direction, which the slip explains
    bool isWrongSize = false;
    std::optional<double>
        referred{}; ///< the learner's direction as the sheet says it, or a given one as read
    bool isWhole() const { return size && radians; }
    Eigen::Vector2d vector() const { return {*size * std::cos(*radians), *size * std::sin(*radians)}; }
};

class AttemptNumbers {
public:
    /// Precondition: the marking has a finding.
    AttemptNumbers(const Sketch& sketch, const Marking& marking);

    /// What the learner found, the slip explains, or is given; of components the forces that they make.
    SlipVector at(VectorId vector) const;
    /// A component of it in the chain with the slip; empty where that has none.
    std::optional<Eigen::Vector2d> components(VectorId vector) const;
    bool isGivenWhole(VectorId vector) const;
    const Force& given(VectorId vector) const;
    /// Calls `take(vector)` for every force, then for the sum.
    template <class Take>
    void forEachVector(Take take) const {
        for (std::size_t i = 0; i < m_sketch.forces.size(); ++i)
            take(forceVector(i));
        take(kSumVector);
    }
    double scale() const { return m_scale; } ///< all given magnitudes added up

private:
    std::optional<double> own(const QuantityId& id, bool& isExplained) const;
    std::optional<double> number(const QuantityId& id) const;

    const Sketch& m_sketch;
    const Marking& m_marking;
    const Finding& m_slip;
    double m_scale = 0;
};

} // namespace tailpoint
