// SPDX-License-Identifier: MIT
// construct/: Solved -> points, sides and angles of the drawing a person would make. Sketch coordinates:
// sheet's force unit, x right, y up, the common point at the origin. Angles in radians.
#pragma once

#include "core/solve/solve.h"

#include <Eigen/Core>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tailpoint {

/// What becomes of the parallelogram.
enum class Shape { proper, parallel, opposite, zeroForce, tooFew };
std::string_view wordsFor(Shape shape); ///< "", "the two forces are parallel: the parallelogram is flat", ...

/// corners: common point, tip of first, far corner (tip of the sum), tip of second.
/// interior[i] at corners[i]; empty where an edge has no length. They add up to 2*pi.
struct Parallelogram {
    std::string first, second;
    std::array<Eigen::Vector2d, 4> corners;
    std::array<std::optional<double>, 4> interior;
    Shape shape = Shape::proper;
};

/// Tip to tail: `first` from corners[0] to corners[1], `second` on to corners[2], sum from corners[0] to
/// corners[2]. opposite[i] is the angle opposite to side i; the corner where it stands is cornerOpposite(i).
struct ForceTriangle {
    std::array<std::string, 3> names; ///< first, second, sum; for known forces added up the name that Things
                                      ///< gives them: K, L, M, K1, ...
    std::array<int, 3> vectors{kNoVector, kNoVector,
                               kNoVector}; ///< index into forces or kSumIndex; kNoVector: K
    std::array<Eigen::Vector2d, 3> corners;
    std::array<double, 3> sides;
    std::array<std::optional<double>, 3> opposite; ///< radians; they add up to pi; empty where undefined
    std::vector<std::string> knowns;               ///< names added up in K; empty otherwise
    static constexpr std::size_t cornerOpposite(std::size_t side) {
        return side == 0 ? 2 : side == 1 ? 0 : 1;
    }
};

/// Tip to tail in the sketch's order, but where loci meet, the known forces first; corners.size() ==
/// names.size() + 1.
struct ForcePolygon {
    std::vector<std::string> names;
    std::vector<int> vectors; ///< index into forces of each side: a force that is not known yet has none
    std::vector<Eigen::Vector2d> corners;
};

/// Where the tip of a vector with one unknown can lie. Two unknown forces U and V with U + V = D (D is what
/// the known vectors leave): U's locus starts at the common point, V's at the tip of D and runs against V;
/// they meet at the tip of U. A force U and the sum S with K + U = S: U's locus starts at the tip of K, S's
/// at the common point; they meet at the tip of S. Fewer or more unknowns: each locus starts at the common
/// point.
struct LineLocus {
    int vector = kNoVector;        ///< index into forces or kSumIndex
    Eigen::Vector2d through, unit; ///< unit points where the vector's magnitude grows
    bool ray = true;               ///< from `through` on; false: the whole line
};
struct CircleLocus {
    int vector = kNoVector;
    Eigen::Vector2d centre;
    double radius = 0;
};
using Locus = std::variant<LineLocus, CircleLocus>;

struct Construction {
    std::optional<Parallelogram> parallelogram; ///< two forces only
    std::optional<ForceTriangle> triangle;      ///< where the question reduces to one triangle
    std::optional<ForceTriangle> otherTriangle; ///< the same in the other order
    ForcePolygon polygon;
    std::vector<Locus> loci;
    std::vector<Eigen::Vector2d>
        meetings; ///< where the loci meet, one for each of Solved::solutions, same order
    Shape shape = Shape::tooFew;
};

/// `solution` indexes Solved::solutions; with none, what can be drawn from the given alone.
/// Two forces count as parallel or opposite when they differ from it by no more than their own rounding.
inline constexpr double kFlatRadians = 0x1p-50;

/// Never a NaN or an infinity for |F| from 0 to 1e150.
Construction construct(const Sketch& sketch, const Solved& solved, std::size_t solution = 0);

/// A question without its answer: all that the sketch alone says and lets one draw.
struct GivenAlone {
    explicit GivenAlone(const Sketch& sketch);
    Solved solved; ///< asked(sketch)
    Construction construction;
};

/// Angles of a triangle from its sides (>= 0, any order of size). Empty where it is no triangle.
/// Source: W. Kahan, 'Miscalculating Area and Angles of a Needle-like Triangle', University of
/// California, Berkeley (notes, 1999-2014). Error at most 4 ulp.
std::optional<double> angleFromSides(double a, double b, double c); ///< angle opposite to c, radians
/// Area from the sides by the same source.
std::optional<double> areaFromSides(double a, double b, double c);

} // namespace tailpoint
