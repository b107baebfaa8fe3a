#include "core/construct/construct.h"

#include "core/construct/loci.h"
#include "core/construct/parallelogram.h"
#include "core/construct/vectors.h"
#include "core/sketch/things.h"

#include <algorithm>
#include <cmath>
#include <numbers>
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

ForcePolygon polygonOf(const Vectors& vectors) {
    ForcePolygon polygon;
    Eigen::Vector2d corner(0, 0);
    polygon.corners.push_back(corner);
    for (const PlainVector& force : vectors.forces) {
        if (!force.complete())
            continue;
        corner += force.vector;
        polygon.names.push_back(force.name);
        polygon.corners.push_back(corner);
    }
    return polygon;
}

/// The equation's vectors brought to three sides that close: first + second = closing.
struct Reduction {
    Side first, second, closing;
    std::vector<std::string> knowns;
};

Side sideOf(const Vectors& vectors, int index) {
    return {vectors.at(index).name, vectors.at(index).vector, index};
}

/// Two forces and their sum, or three forces in equilibrium: every side has its own name. In equilibrium the
/// two with an unknown come first, so that the triangle is drawn as their loci are; a single unknown one
/// closes it.
std::optional<Reduction> plainReduction(const Vectors& vectors, const Solved& solved, bool equilibrium) {
    if (vectors.forces.size() == 2 && !equilibrium)
        return Reduction{sideOf(vectors, 0), sideOf(vectors, 1), sideOf(vectors, kSumIndex), {}};
    if (vectors.forces.size() != 3 || !equilibrium)
        return std::nullopt;
    std::array<int, 3> order{0, 1, 2};
    const auto isUnknown = [&](int i) { return Vectors::isUnknown(solved, i); };
    const bool two = std::count_if(order.begin(), order.end(), isUnknown) == 2;
    std::stable_partition(order.begin(), order.end(), [&](int i) { return isUnknown(i) == two; });
    Side closing = sideOf(vectors, order[2]);
    closing.vector = -closing.vector;
    return Reduction{sideOf(vectors, order[0]), sideOf(vectors, order[1]), closing, {}};
}

/// The known forces as one side: by its own name where there is one only.
Side knownSide(const Vectors& vectors, const std::vector<int>& known, const std::string& name) {
    if (known.size() == 1)
        return sideOf(vectors, known.front());
    Side side{name, {0, 0}};
    for (const int index : known)
        side.vector += vectors.at(index).vector;
    return side;
}

/// Known forces added up to one side K; the vectors with unknowns (one or two) are the other sides.
std::optional<Reduction> knownsReduction(const Vectors& vectors, const Solved& solved, bool equilibrium,
                                         const Sketch& sketch) {
    std::vector<int> unknown, known;
    for (int i = 0; i < static_cast<int>(vectors.forces.size()); ++i)
        (Vectors::isUnknown(solved, i) ? unknown : known).push_back(i);
    const bool sumUnknown = Vectors::isUnknown(solved, kSumIndex);
    if (known.empty() || unknown.empty() || unknown.size() > 2 || (unknown.size() == 2 && sumUnknown))
        return std::nullopt;
    if (unknown.size() == 1 && equilibrium)
        return std::nullopt; // K and its counterpart: no triangle

    Reduction out;
    for (const int index : known)
        out.knowns.push_back(vectors.at(index).name);
    const std::string name = Things(sketch).name(kKnownVector);
    const Side k = knownSide(vectors, known, name), u = sideOf(vectors, unknown[0]);
    if (unknown.size() == 1) {
        out.first = k;
        out.second = u;
        out.closing = sideOf(vectors, kSumIndex);
    } else { // U + V = S - K
        out.first = u;
        out.second = sideOf(vectors, unknown[1]);
        out.closing = equilibrium ? k : Side{name, {0, 0}};
        out.closing.vector = u.vector + out.second.vector;
        if (!equilibrium)
            out.knowns.push_back(vectors.sum.name);
    }
    if (out.knowns.size() == 1)
        out.knowns.clear();
    return out;
}

std::optional<Reduction> reductionOf(const Vectors& vectors, const Solved& solved, const Sketch& sketch) {
    const bool equilibrium = isEquilibrium(sketch);
    if (auto plain = plainReduction(vectors, solved, equilibrium))
        return plain;
    return knownsReduction(vectors, solved, equilibrium, sketch);
}

/// In a sketch that is given throughout, the triangle closes only where the equation holds.
bool closes(const Reduction& r) {
    const Eigen::Vector2d gap = r.first.vector + r.second.vector - r.closing.vector;
    const double scale =
        std::max({r.first.vector.lpNorm<Eigen::Infinity>(), r.second.vector.lpNorm<Eigen::Infinity>(),
                  r.closing.vector.lpNorm<Eigen::Infinity>()});
    return gap.lpNorm<Eigen::Infinity>() <= 1e-9 * scale;
}

void addTriangles(Construction& out, const Vectors& vectors, const Solved& solved, const Sketch& sketch) {
    const auto reduction = reductionOf(vectors, solved, sketch);
    if (!reduction || !closes(*reduction))
        return;
    out.triangle = triangleOf(reduction->first, reduction->second, reduction->closing);
    out.otherTriangle = triangleOf(reduction->second, reduction->first, reduction->closing);
    out.triangle->knowns = out.otherTriangle->knowns = reduction->knowns;
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
    const Vectors vectors = vectorsOf(sketch, solved, solution);
    Construction out;
    out.polygon = polygonOf(vectors);
    if (vectors.forces.size() == 2 && vectors.forcesComplete()) {
        const auto& [a, b] = std::tie(vectors.forces[0], vectors.forces[1]);
        const bool sumFits = vectors.sum.complete() && solved.family != Family::check;
        out.parallelogram =
            parallelogramOf(a, b, sumFits ? vectors.sum.vector : Eigen::Vector2d(a.vector + b.vector));
        out.shape = out.parallelogram->shape;
    }
    if (vectors.forcesComplete() && vectors.sum.complete())
        addTriangles(out, vectors, solved, sketch);
    out.loci = lociOf(sketch, solved);
    out.meetings = meetingsOf(sketch, solved);
    return out;
}

} // namespace tailpoint
