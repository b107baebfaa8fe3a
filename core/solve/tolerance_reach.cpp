// SPDX-License-Identifier: MIT
// The other way round: the first vector is put somewhere, and what is known is moved until the other one
// fits.
#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace tailpoint::tolerance {
namespace {} // namespace

// The vector of a cell that has its bound, where it has an end.
Pt Search::farthestOf(Goal goal, const Cell& cell) const {
    const Sector& own = cell.first;
    const double most = std::min(own.greatest, 1e6);
    switch (goal) {
    case Goal::leastMagnitude:
        return own.least * unitAt(own.middle());
    case Goal::greatestMagnitude:
        return most * unitAt(own.middle());
    case Goal::from:
        return (own.least + most) / 2 * own.atFrom;
    case Goal::to:
        return (own.least + most) / 2 * own.atTo;
    default:
        break;
    }
    Pt point;
    Sector ended = own;
    ended.greatest = most;
    ended.support(alongOf(goal), point);
    return point;
}

// With the first vector at `own`, how far the other one is from what it may be: its length beyond the
// circle's magnitudes, or its direction beyond the line's, signed.
long double Search::offOf(const Piece& piece, const Point& point, kernel::Vec own) const {
    const Unknown& other = piece.unknown[1 - firstIs_];
    const BoxVector& box = problem_.box.vectors[other.vector];
    const kernel::Vec rest = problem_.targetAt(point) - own;
    const auto beyond = [](long double value, long double low, long double high) {
        return value < low ? value - low : value > high ? value - high : 0;
    };
    if (!other.isLine) {
        return beyond(kernel::length(rest), box.magnitude.least, box.magnitude.greatest);
    }
    const long double half = other.sector.width() / 2;
    const long double turn = kTurn, way = std::atan2(rest.y, rest.x) - other.sector.middle();
    return beyond(std::remainder(way, turn), -half, half);
}

void Search::placeOther(const Piece& piece, Point& point, kernel::Vec own) const {
    const Unknown& other = piece.unknown[1 - firstIs_];
    const kernel::Vec rest = problem_.targetAt(point) - own;
    const auto [size, angle] = problem_.inputOf[other.vector];
    if (!other.isLine && size >= 0) {
        const Input& input = problem_.inputs[static_cast<std::size_t>(size)];
        point[static_cast<std::size_t>(size)] = std::clamp(kernel::length(rest), input.least, input.greatest);
    }
    if (other.isLine && angle >= 0) {
        const Input& input = problem_.inputs[static_cast<std::size_t>(angle)];
        const long double turned =
            problem_.turnedOf(other.vector, other.flipped) == Turned::yes ? kHalfTurn : 0;
        const long double middle = (input.least + input.greatest) / 2;
        const long double way = std::atan2(rest.y, rest.x) - turned - middle;
        point[static_cast<std::size_t>(angle)] =
            std::clamp(middle + std::remainder(way, 2 * kHalfTurn), input.least, input.greatest);
    }
}

// Whether the first vector can be `own`: the other one must come out within its tolerances. From two points
// of the box, one with too little and one with too much of it, to one between them.
void Search::tryVector(const Cell& cell, Pt own) {
    constexpr int kWays = 8, kHalvings = 40, kSweeps = 4;
    const Piece& piece = pieces_[cell.piece];
    if (!piece.hasSecond || piece.rule == Rule::foot || piece.rule == Rule::still) {
        return;
    }
    Cell at = cell;
    at.first.least = at.first.greatest = lengthOf(own);
    const double direction = std::atan2(own.y, own.x);
    const kernel::Vec vector{own.x, own.y};
    std::optional<Point> less, more, there;
    const auto look = [&](Point point) {
        const kernel::Vec target = problem_.targetAt(point);
        const bool isLeft = (kernel::cross(vector, target) > 0) == (firstIs_ == 0);
        if (piece.rule == Rule::circles && isLeft == (piece.root == 0)) {
            return;
        }
        const long double off = offOf(piece, point, vector);
        (off == 0 ? there : off < 0 ? less : more) = std::move(point);
    };
    for (int way = 0; way < kWays && !there; ++way) {
        look(pointToward(at, unitAt(kTurn * way / kWays), direction, false));
    }
    if (!there && more && !less && !piece.unknown[1 - firstIs_].isLine) {
        Point near = *more;
        closeIn(near, vector, kSweeps);
        if (offOf(piece, near, vector) < 0) { // on whichever side: what matters is where the way between ends
            less = std::move(near);
        }
    }
    if (there) {
        placeOther(piece, *there, vector);
        tryPoint(cell.piece, *there);
        return;
    }
    for (int i = 0; less && more && i < kHalvings; ++i) {
        Point middle = *less;
        for (std::size_t k = 0; k < middle.size(); ++k) {
            middle[k] += (*more)[k] / 2 - (*less)[k] / 2;
        }
        (offOf(piece, middle, vector) <= 0 ? less : more) = std::move(middle);
    }
    if (less && more) {
        placeOther(piece, *less, vector);
        tryPoint(cell.piece, *less);
    }
}

} // namespace tailpoint::tolerance
