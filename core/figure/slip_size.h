// SPDX-License-Identifier: MIT
// By which drawing a magnitude comes about that a slip gives. Internal to figure/.
#pragma once

#include "core/figure/attempt_numbers.h"
#include "core/figure/stroke_maker.h"

namespace tailpoint {

class SlipSize {
public:
    SlipSize(const Sketch& sketch, const Finding& slip, const AttemptNumbers& numbers, StrokeMaker& maker)
        : m_sketch(sketch), m_slip(slip), m_numbers(numbers), m_maker(maker) {}

    /// Without a direction: along an axis where it is a component, all in one line where all are added, the
    /// other diagonal, the triangle of three sides, or the circle of its tips.
    void add(VectorId vector, double size) const;
    /// From tip to tip, where the magnitude is as long; false: it isn't.
    bool addOtherDiagonal(VectorId vector, double size) const;
    /// The chain in which the slip is goes by the triangle, or by none.
    bool byTriangle() const;

private:
    /// Two known sides that are added tip to tail, and whether the third runs back to where they began.
    struct KnownSides {
        VectorId first, second;
        Eigen::Vector2d a, b;
        bool areTails = false; ///< both stand at the common point as they are drawn
        bool isLoop = false;
    };
    std::optional<KnownSides> knownSides(VectorId sought) const;
    bool addComponent(VectorId vector, double size) const;
    bool addEndToEnd(VectorId vector, double size) const;
    bool addTriangle(VectorId vector, double size) const;

    const Sketch& m_sketch;
    const Finding& m_slip;
    const AttemptNumbers& m_numbers;
    StrokeMaker& m_maker;
};

} // namespace tailpoint
