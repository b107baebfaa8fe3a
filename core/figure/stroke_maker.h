// SPDX-License-Identifier: MIT
// Strokes of an answer, one after another, with their labels. Internal to figure/.
#pragma once

#include "core/figure/attempt_strokes.h"

namespace tailpoint {

class StrokeMaker {
public:
    explicit StrokeMaker(const Sketch& sketch) : m_sketch(sketch), m_things(sketch) {}

    AttemptStroke& add(AttemptStroke::Kind kind, const Eigen::Vector2d& from, const Eigen::Vector2d& to,
                       Runs label = {}, VectorId of = kNobody, int aside = 0);
    /// `value` in the sheet's unit. One that is too small to be seen is left out.
    void addArc(const Eigen::Vector2d& at, const Eigen::Vector2d& leg, double sweep, double value,
                bool isDirection);
    /// Between two sides at a corner, of any length.
    void addCorner(const Eigen::Vector2d& at, const Eigen::Vector2d& leg, const Eigen::Vector2d& other);
    /// From the axis, in the sheet's sense.
    void addDirection(double referred);
    /// Along x, then along y; none where one of them is next to nothing.
    void addLegs(VectorId vector, const Eigen::Vector2d& to);

    Runs named(VectorId vector, const std::optional<double>& size = {}) const; ///< "R = 520 N", "R"
    Runs yours(VectorId vector, const std::optional<double>& size = {}) const; ///< "your R = 335 N"
    std::vector<AttemptStroke> take() { return std::move(m_strokes); }

private:
    const Sketch& m_sketch;
    Things m_things;
    std::vector<AttemptStroke> m_strokes;
};

} // namespace tailpoint
