// SPDX-License-Identifier: MIT
// Which angles of a figure bear a symbol, and which one: the table's, chosen by what is given and what is
// sought alone. The worked solution uses the same symbols; nothing of it is needed here, so a drag's frame
// can ask every time.
#include "core/construct/pairs.h"
#include "core/derive/chain.h"
#include "core/figure/compose.h"

#include <algorithm>

namespace tailpoint {

namespace {

class Names {
public:
    explicit Names(const Things& things) : m_things(things) {}

    void add(const QuantityId& angle, std::uint8_t answer = 0) {
        QuantityId symbol = angle;
        symbol.answer = answer;
        m_names.push_back({angle, m_things.symbol(symbol)});
    }
    std::vector<AngleName> take() { return std::move(m_names); }

private:
    const Things& m_things;
    std::vector<AngleName> m_names;
};

const Force* vectorOf(const Sketch& sketch, VectorId id) {
    if (id == kSumVector)
        return &sketch.sum;
    return id.kind == VectorId::Kind::force ? &sketch.forces[id.index] : nullptr; // K is known
}

bool isGivenWay(const Sketch& sketch, VectorId side) {
    const Force* force = vectorOf(sketch, side);
    return !force || (isGiven(force->direction) && !(force->lineOfActionOnly && !isGiven(force->magnitude)));
}

bool isResultantOfTwo(const Sketch& sketch) {
    return sketch.forces.size() == 2 && !isToFind(sketch.forces[0]) && !isToFind(sketch.forces[1]);
}

bool isOpen(const ForceTriangle& triangle) {
    return std::all_of(triangle.opposite.begin(), triangle.opposite.end(),
                       [](const auto& angle) { return angle && *angle > kFlatRadians; });
}

/// Of three forces in equilibrium with two magnitudes sought the angles between the tails have the symbols:
/// three round one point.
bool isByTails(const Solved& solved, const Sides& sides) {
    return solved.family == Family::twoMagnitudes && sides.loop;
}

/// A force that closes the polygon of many is told by components.
bool isByTable(const Solved& solved, const Sides& sides) {
    return solved.family == Family::closePolygon && sides.indexOf(kKnownVector) < sides.side.size();
}

/// The side that is the shortest way to a line, and so faces the one angle that is told.
bool facesRightTriangle(const Sketch& sketch, const Things& things, const Solved& solved, VectorId side) {
    const bool isSmallest = solved.family == Family::smallestForce || solved.family == Family::smallestSum;
    return !isSmallest || (sketch.smallest && things.name(side) == *sketch.smallest);
}

/// In the ambiguous case two answers have each its own angles, but for one between two directions that are
/// the same in both.
std::uint8_t answerOf(const Solved& solved, const Sides& sides, std::size_t side, std::size_t solution) {
    if (solved.solutions.size() < 2 || solved.family != Family::magnitudeAndDirection)
        return 0;
    const auto isShared = [&](std::size_t i) {
        const VectorId vector = sides.side[i];
        return vector == kKnownVector || standingOf(solved, vector, solution).way.answer == 0;
    };
    const auto [a, b] = Reduction::others(side);
    return isShared(a) && isShared(b) ? std::uint8_t{0} : static_cast<std::uint8_t>(solution + 1);
}

void addTails(Names& names, const Sides& sides) {
    for (std::size_t i = 0; i < 3; ++i) {
        const auto [a, b] = std::minmax(sides.side[(i + 1) % 3], sides.side[(i + 2) % 3]);
        names.add(betweenId(a, b));
    }
}

void addPairs(Names& names, std::size_t count) {
    for (std::size_t number = 1; number <= count; ++number) {
        const VectorId soFar = number == 1 ? forceVector(0) : partialVector(number - 1);
        const VectorId made = number == count ? kSumVector : partialVector(number);
        names.add(betweenId(soFar, forceVector(number), number));
        names.add(oppositeId(made, number));
    }
}

} // namespace

std::vector<AngleName> namesOfGiven(const Sketch& sketch, Stage stage) {
    const Things things(sketch);
    const auto& sides = things.sides();
    Names names(things);
    if (isResultantOfTwo(sketch) && stage >= Stage::between)
        names.add(betweenId(forceVector(0), forceVector(1)));
    for (std::size_t i = 0; sides && stage >= Stage::interior && i < 3; ++i) {
        const auto [a, b] = Reduction::others(i);
        if (isGivenWay(sketch, sides->side[a]) && isGivenWay(sketch, sides->side[b]))
            names.add(oppositeId(sides->side[i]));
    }
    return names.take();
}

std::vector<AngleName> namesOfAnswer(const Sketch& sketch, const Things& things, const Solved& solved,
                                     const Construction& construction, std::size_t solution,
                                     bool byParallelograms) {
    Names names(things);
    const auto& sides = things.sides();
    if (solution >= solved.solutions.size())
        return {};
    if (byParallelograms)
        addPairs(names, pairsOf(sketch, solved, solution).size());
    if (!sides || !construction.triangle || !isOpen(*construction.triangle) || isByTable(solved, *sides))
        return names.take();
    if (isByTails(solved, *sides)) {
        addTails(names, *sides);
        return names.take();
    }
    if (isResultantOfTwo(sketch))
        names.add(betweenId(forceVector(0), forceVector(1)));
    for (std::size_t i = 0; i < 3; ++i)
        if (facesRightTriangle(sketch, things, solved, sides->side[i]))
            names.add(oppositeId(sides->side[i]), answerOf(solved, *sides, i, solution));
    return names.take();
}

} // namespace tailpoint
