// SPDX-License-Identifier: MIT
// The angles that a learner can point at while the answer is hidden: between what is given, and between that
// and what he has drawn himself. An angle of the triangle that no two arrows enclose stands at a tip, between
// its arrow and the other's direction laid on there; nothing of it tells how long the third side is.
#pragma once

#include "core/construct/figure_part.h"
#include "core/explain/question.h"
#include "core/sketch/things.h"

#include <Eigen/Core>
#include <map>
#include <vector>

namespace tailpoint {

struct PointableAngle {
    QuantityId angle;                        ///< between, opposite, or a direction from the axis
    VectorId first{}, second{};              ///< its legs; second kNobody: the axis is the first leg
    VectorId tip{};                          ///< whose tip it stands at; kNobody: at the common point
    Eigen::Vector2d corner{0, 0}, leg{1, 0}; ///< sketch coordinates; leg: along the first, one unit long
    double sweep = 0;                        ///< radians to the second leg, counter-clockwise
    double value = 0;                        ///< in the sheet's unit; of a direction as the sheet says it
    int row = 0;                             ///< how many have the corner before it: arcs beside one another
};

/// `drawn`: the learner's own tips. In the order in which keys go through them.
std::vector<PointableAngle> pointableAngles(const Sketch& sketch,
                                            const std::map<VectorId, Eigen::Vector2d>& drawn);

/// "angle between P and Q", "angle at the tip of P, with Q laid on there", "direction of P, from +x".
Sentence wordsOf(const PointableAngle& angle, const Sketch& sketch, const Things& things);

} // namespace tailpoint
