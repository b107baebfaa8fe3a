// SPDX-License-Identifier: MIT
// Which step of a solution it is: what a lecture, a handout or a test knows it by.
#pragma once

#include <cstdint>
#include <string_view>

namespace tailpoint {

enum class StepKey : std::uint8_t {
    question,      ///< a lecture's first stop: what is asked
    given,         ///< given and to find
    freeBody,      ///< what acts on the point that is cut free
    count,         ///< the unknowns counted
    directions,    ///< as the sheet measures them; or, at the end, all that were sought
    senses,        ///< of a line of action, as found
    known,         ///< the known vectors added up
    estimate,      ///< drawn to scale
    why,           ///< the right angle of a smallest vector
    tails,         ///< the angle between the tails
    parallelogram, ///< completed
    triangle,      ///< the half that is kept
    choice,        ///< which law
    included,      ///< the angle between the known sides
    angles,        ///< of the triangle, or between the forces
    angle,         ///< the one that is known
    reach,         ///< how far the line is from the circle's centre
    cosines,
    sines,
    halving,   ///< equal forces
    isosceles, ///< equal sides
    legs,      ///< of a right triangle
    rest,      ///< of a question with one answer
    first,     ///< of two answers
    second,
    direction, ///< referred to the axis
    pair,      ///< one of the successive parallelograms; Step::pair has its number
    resolved,  ///< vectors into components, line by line
    components,
    equations,   ///< along x and along y
    elimination, ///< of one unknown from both
    quadratic,   ///< of a magnitude, where the direction has dropped out
    missing,     ///< its components
    magnitude,   ///< from the components
    line,        ///< no triangle: all along one line
    lami,
    answer,
    check,
    rounding, ///< what rounding by hand costs
    end       ///< a lecture's last stop
};
std::string_view nameOf(StepKey key); ///< "given", "count", ...

} // namespace tailpoint
