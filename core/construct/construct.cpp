// SPDX-License-Identifier: MIT
#include "core/construct/construct.h"

#include "core/construct/loci.h"
#include "core/construct/parallelogram.h"
#include "core/construct/reduction.h"
#include "core/construct/vectors.h"
#include "core/sketch/things.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <tuple>

namespace tailpoint {
namespace {

/// Unsigned angle between two vectors; empty where one of them is zero.
std::optional<double> angleBetween(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    const auto angle = signedAngle(a, b);
    return angle ? std::optional(std::abs(*angle)) : std::nullopt;
}

Shape shapeOf(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    const auto angle = angleBetween(a, b);
    if (!angle)
        return Shape::zeroForce;
    if (*angle <= kFlatRadians)
        return Shape::parallel;
    if (std::numbers::pi - *angle <= kFlatRadians)
        return Shape::opposite;
    return Shape::proper;
}

/// One side of a force triangle before it is drawn.
struct Side {
    std::string name;
    Eigen::Vector2d vector;
    int index = kNoVector;
};

/// `closing` runs from the tail of `first` to the tip of `second`.
ForceTriangle triangleOf(const Side& first, const Side& second, const Side& closing) {
    ForceTriangle triangle;
    triangle.names = {first.name, second.name, closing.name};
    triangle.vectors = {first.index, second.index, closing.index};
    triangle.corners = {Eigen::Vector2d(0, 0), first.vector, closing.vector};
    triangle.sides = {std::hypot(first.vector.x(), first.vector.y()),
                      std::hypot(second.vector.x(), second.vector.y()),
                      std::hypot(closing.vector.x(), closing.vector.y())};
    triangle.opposite = {angleBetween(second.vector, closing.vector),
                         angleBetween(first.vector, closing.vector),
                         angleBetween(-first.vector, second.vector)};
    return triangle;
}

/// In the sketch's order, but where loci meet, the known ones first: where these end the loci start.
std::vector<int> polygonOrder(const Sketch& sketch, const Solved& solved) {
    std::vector<int> order(sketch.forces.size());
    std::iota(order.begin(), order.end(), 0);
    if (!lociMeet(solved))
        return order;
    const auto [u, v] = lociOrder(sketch, solved);
    for (const int sought : {u, v})
        if (sought >= 0) {
            order.erase(std::remove(order.begin(), order.end(), sought), order.end());
            order.push_back(sought);
        }
    return order;
}

ForcePolygon polygonOf(const Vectors& vectors, const std::vector<int>& order) {
    ForcePolygon polygon;
    Eigen::Vector2d corner(0, 0);
    polygon.corners.push_back(corner);
    for (const int i : order) {
        const PlainVector& force = vectors.forces[static_cast<std::size_t>(i)];
        if (!force.complete())
            continue;
        corner += force.vector;
        polygon.names.push_back(force.name);
        polygon.vectors.push_back(i);
        polygon.corners.push_back(corner);
    }
    return polygon;
}

Eigen::Vector2d addedUp(const Vectors& vectors, const Reduction& reduction) {
    Eigen::Vector2d total(0, 0);
    for (const auto& [vector, sign] : reduction.known)
        total += sign * vectors.at(indexOf(vector)).vector;
    return total;
}

Side sideOf(const Vectors& vectors, const Reduction& reduction, std::size_t i, const Sketch& sketch) {
    const VectorId vector = reduction.side[i];
    if (vector == kKnownVector)
        return {Things(sketch).name(vector), addedUp(vectors, reduction)};
    const int index = indexOf(vector);
    return {vectors.at(index).name, vectors.at(index).vector, index};
}

/// What K adds up, the forces first.
std::vector<std::string> namesOf(const Vectors& vectors, const Reduction& reduction) {
    std::vector<std::string> forces, sum;
    for (const auto& [vector, sign] : reduction.known)
        (vector == kSumVector ? sum : forces).push_back(vectors.at(indexOf(vector)).name);
    forces.insert(forces.end(), sum.begin(), sum.end());
    return forces;
}

/// Three sides in the order in which they are drawn: first + second = closing.
std::array<Side, 3> sidesOf(const Vectors& vectors, const Reduction& reduction, const Sketch& sketch) {
    std::array<Side, 3> sides;
    for (std::size_t i = 0; i < 3; ++i)
        sides[i] = sideOf(vectors, reduction, i, sketch);
    // Two forces stand in the sketch's order, whichever is sought: the figure stays when the question
    // changes.
    if (!reduction.loop && sides[0].index > sides[1].index && sides[1].index != kNoVector)
        std::swap(sides[0], sides[1]);
    if (sides[2].index == kNoVector)
        sides[2].vector = sides[0].vector + sides[1].vector;
    else if (reduction.loop)
        sides[2].vector = -sides[2].vector;
    return sides;
}

/// In a sketch that is given throughout, the triangle closes only where the equation holds.
bool closes(const std::array<Side, 3>& sides) {
    const Eigen::Vector2d gap = sides[0].vector + sides[1].vector - sides[2].vector;
    double scale = 0;
    for (const Side& side : sides)
        scale = std::max(scale, side.vector.lpNorm<Eigen::Infinity>());
    return gap.lpNorm<Eigen::Infinity>() <= 1e-9 * scale;
}

void addTriangles(Construction& out, const Vectors& vectors, const Solved& solved, const Sketch& sketch) {
    const auto reduction = reductionOf(sketch, solved);
    if (!reduction || (reduction->addsUp() && reduction->known.empty()))
        return;
    const std::array<Side, 3> sides = sidesOf(vectors, *reduction, sketch);
    if (!closes(sides))
        return;
    out.triangle = triangleOf(sides[0], sides[1], sides[2]);
    out.otherTriangle = triangleOf(sides[1], sides[0], sides[2]);
    out.triangle->knowns = out.otherTriangle->knowns = namesOf(vectors, *reduction);
}

/// One vector that is sought whole closes what the given ones make: the triangle stands before it is found.
void closeWith(Vectors& vectors, const Sketch& sketch, const Solved& solved) {
    const int sought = solved.unknownVectors[0];
    if (solved.family != Family::closePolygon || !solved.solutions.empty())
        return;
    const bool isSum = sought == kSumIndex;
    PlainVector& closing = isSum ? vectors.sum : vectors.forces[static_cast<std::size_t>(sought)];
    closing.vector = isSum                   ? solved.knownSum
                     : isEquilibrium(sketch) ? Eigen::Vector2d(-solved.knownSum)
                                             : Eigen::Vector2d(vectors.sum.vector - solved.knownSum);
    closing.magnitude = closing.vector.norm();
    closing.hasMagnitude = closing.hasDirection = true;
}

} // namespace

Parallelogram parallelogramOf(const PlainVector& a, const PlainVector& b, const Eigen::Vector2d& far) {
    Parallelogram out;
    out.first = a.name;
    out.second = b.name;
    out.corners = {Eigen::Vector2d(0, 0), a.vector, far, b.vector};
    out.shape = shapeOf(a.vector, b.vector);
    const auto tails = angleBetween(a.vector, b.vector);
    const auto sides = angleBetween(-a.vector, b.vector);
    out.interior = {tails, sides, tails, sides};
    return out;
}

std::string_view wordsFor(Shape shape) {
    switch (shape) {
    case Shape::proper:
        return "";
    case Shape::parallel:
        return "the two forces are parallel: the parallelogram is flat";
    case Shape::opposite:
        return "the two forces are opposite: the parallelogram is flat";
    case Shape::zeroForce:
        return "a force is zero: there is no parallelogram";
    case Shape::tooFew:
        break;
    }
    return "a parallelogram takes two forces";
}

Construction construct(const Sketch& sketch, const Solved& solved, std::size_t solution) {
    Vectors vectors = vectorsOf(sketch, solved, solution);
    Construction out;
    out.polygon = polygonOf(vectors, polygonOrder(sketch, solved));
    if (vectors.forces.size() == 2 && vectors.forcesComplete()) {
        const auto& [a, b] = std::tie(vectors.forces[0], vectors.forces[1]);
        const bool sumFits = vectors.sum.complete() && solved.family != Family::check;
        out.parallelogram =
            parallelogramOf(a, b, sumFits ? vectors.sum.vector : Eigen::Vector2d(a.vector + b.vector));
        out.shape = out.parallelogram->shape;
    }
    closeWith(vectors, sketch, solved);
    if (vectors.forcesComplete() && vectors.sum.complete())
        addTriangles(out, vectors, solved, sketch);
    out.loci = lociOf(sketch, solved);
    out.meetings = meetingsOf(sketch, solved);
    return out;
}

GivenAlone::GivenAlone(const Sketch& sketch)
    : solved(asked(sketch)), construction(construct(sketch, solved)) {}

} // namespace tailpoint
