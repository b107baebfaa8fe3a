// SPDX-License-Identifier: MIT
// Points of the box that have an answer: the best of them are where the extremes lie.
#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace tailpoint::tolerance {
namespace {} // namespace

long double Search::valueOf(Goal goal, const Tips& tips) const {
    const Tip& tip = tips[firstIs_];
    switch (goal) {
    case Goal::leastMagnitude:
        return -tip.magnitude;
    case Goal::greatestMagnitude:
        return tip.magnitude;
    case Goal::leastX:
        return -tip.magnitude * tip.unit.x;
    case Goal::greatestX:
        return tip.magnitude * tip.unit.x;
    case Goal::leastY:
        return -tip.magnitude * tip.unit.y;
    case Goal::greatestY:
        return tip.magnitude * tip.unit.y;
    default:
        break;
    }
    const long double turned = std::remainder(std::atan2(tip.unit.y, tip.unit.x) - base_ - kTurn / 2,
                                              static_cast<long double>(kTurn)) +
                               kTurn / 2;
    return goal == Goal::to ? turned : kTurn - turned;
}

bool Search::tryPoint(std::size_t piece, const Point& point) {
    const std::optional<Tips> tips = tipsAt(problem_, pieces_[piece], point);
    if (!tips) {
        return false;
    }
    const bool hasDirection = hasGap_ && (*tips)[firstIs_].magnitude != 0;
    const long double direction = hasDirection ? valueOf(Goal::to, *tips) : 0;
    for (std::size_t i = 0; i < kGoals; ++i) {
        const Goal goal = static_cast<Goal>(i);
        if (isOfDirection(goal) && !hasDirection) {
            continue;
        }
        const long double value = goal == Goal::to     ? direction
                                  : goal == Goal::from ? kTurn - direction
                                                       : valueOf(goal, *tips);
        if (!best_[i].isThere || value > best_[i].value) {
            best_[i] = {true, value, point, piece};
        }
    }
    return true;
}

// Toward the best points of the other pieces: between them lies where one ends, such as a zero force.
void Search::tryOtherPieces(Goal goal) {
    const Best best = best_[static_cast<std::size_t>(goal)];
    for (const Best& other : std::array(best_)) {
        if (best.isThere && other.isThere && other.piece != best.piece) {
            tryUpTo(best.piece, best.point, other.point);
        }
    }
}

// From a point with an answer toward one without: the last that has one. There a circle is touched, or a line
// is slack.
void Search::tryUpTo(std::size_t piece, const Point& from, const Point& toward) {
    Point point = from;
    long double reached = 0;
    for (long double step = 0.5L; step > leastStep_; step /= 2) {
        for (std::size_t i = 0; i < point.size(); ++i) {
            point[i] = from[i] + (reached + step) * (toward[i] - from[i]);
        }
        reached += tipsAt(problem_, pieces_[piece], point) ? step : 0;
    }
    for (std::size_t i = 0; i < point.size(); ++i) {
        point[i] = from[i] + reached * (toward[i] - from[i]);
    }
    tryPoint(piece, point);
}

// A point without an answer that all but has one: each input is moved by itself to where it has.
void Search::tryNextTo(Goal goal, std::size_t piece, const Point& point) {
    constexpr int kMost = 2;
    int tried = 0;
    for (std::size_t i = 0; i < point.size() && tried < kMost; ++i) {
        for (const long double end : {problem_.inputs[i].least, problem_.inputs[i].greatest}) {
            Point other = point;
            other[i] = end;
            if (end != point[i] && tipsAt(problem_, pieces_[piece], other)) {
                tryUpTo(piece, other, point);
                ++tried;
            }
        }
    }
    const Best& best = best_[static_cast<std::size_t>(goal)];
    if (tried == 0 && best.isThere && best.piece == piece) {
        tryUpTo(piece, Point(best.point), point);
    }
}

// Every input as it leads farthest along `toward`, within the cell.
Point Search::pointToward(const Cell& cell, Pt toward, double direction, bool inner) const {
    const Piece& piece = pieces_[cell.piece];
    const std::vector<Sector>& known = known_[cell.known];
    const Unknown& first = piece.unknown[firstIs_];
    const Pt unit = unitAt(direction);
    const Sector own{cell.first.least, cell.first.least, direction, direction, unit, unit};
    Point point = problem_.nominal();
    problem_.place(point, first.vector, own, toward, problem_.turnedOf(first.vector, first.flipped));
    if (const int input = problem_.inputOf[first.vector][0]; input >= 0) {
        const Input& range = problem_.inputs[static_cast<std::size_t>(input)];
        const long double middle = (static_cast<long double>(cell.first.least) + cell.first.greatest) / 2;
        point[static_cast<std::size_t>(input)] = std::clamp(middle, range.least, range.greatest);
    }
    if (piece.hasSecond) {
        const Unknown& second = piece.unknown[1 - firstIs_];
        problem_.place(point, second.vector, cell.second, toward,
                       problem_.turnedOf(second.vector, second.flipped));
    }
    for (std::size_t i = 0; i < known.size(); ++i) {
        problem_.place(point, problem_.loose[i], known[i], toward, problem_.turnedOf(problem_.loose[i]),
                       inner && hollow(known[i], toward) > 0);
    }
    return point;
}

void Search::tryToward(Goal goal, const Cell& cell, Pt toward, double direction, bool upTo) {
    const Point point = pointToward(cell, toward, direction, false);
    const bool hasAnswer = tryPoint(cell.piece, point);
    const std::vector<Sector>& known = known_[cell.known];
    if (std::any_of(known.begin(), known.end(),
                    [&](const Sector& each) { return hollow(each, toward) > 0; })) {
        tryPoint(cell.piece, pointToward(cell, toward, direction, true));
    }
    if (!upTo) {
        return;
    }
    // Where the proof is sharpest the farthest points change from one to another: between them the vectors
    // close.
    for (const double turn : {1e-3}) {
        const Point left = pointToward(cell, toward + turn * leftOf(toward), direction, false);
        const Point right = pointToward(cell, toward + (-turn) * leftOf(toward), direction, false);
        const bool leftHas = tryPoint(cell.piece, left);
        if (leftHas != tryPoint(cell.piece, right)) {
            tryUpTo(cell.piece, leftHas ? left : right, leftHas ? right : left);
        }
    }
    if (!hasAnswer) {
        tryNextTo(goal, cell.piece, point);
    }
}

void Search::tryCell(Goal goal, const Cell& cell, bool upTo) {
    const bool most = goal != Goal::leastMagnitude;
    const bool least = goal != Goal::greatestMagnitude;
    const bool given = cell.first.width() > 0 && pieces_[cell.piece].unknown[firstIs_].isLine;
    for (const double direction : given ? std::vector<double>{cell.first.from, cell.first.to}
                                        : std::vector<double>{cell.first.middle()}) {
        if (most) {
            tryToward(goal, cell, cell.towardMost, direction, upTo);
        }
        if (least) {
            tryToward(goal, cell, cell.towardLeast, direction, upTo);
        }
    }
}

// Two lines that can be parallel within their tolerances: hair's breadths to both sides of it the magnitudes
// are beyond all bounds, in the senses of one side.
void Search::tryAllButParallel(std::size_t piece) {
    constexpr long double kHair = 0x1p-40L;
    const auto& [first, second] = pieces_[piece].unknown;
    const int one = problem_.inputOf[first.vector][1], two = problem_.inputOf[second.vector][1];
    if (pieces_[piece].rule != Rule::lines || (one < 0 && two < 0)) {
        return;
    }
    const bool firstMoves = one >= 0;
    const Input& moved = problem_.inputs[static_cast<std::size_t>(firstMoves ? one : two)];
    const std::size_t other = firstMoves ? second.vector : first.vector;
    const Arc& arc = problem_.box.vectors[other].direction;
    for (const long double at : {arc.from, arc.nominal, arc.to, moved.least, moved.nominal, moved.greatest}) {
        for (const long double hair : {-kHair, kHair}) {
            Point point = problem_.nominal();
            const long double middle = (moved.least + moved.greatest) / 2;
            const long double to = middle + std::remainder(at + hair - middle, kHalfTurn);
            const long double from =
                (arc.from + arc.to) / 2 + std::remainder(at - (arc.from + arc.to) / 2, kHalfTurn);
            point[static_cast<std::size_t>(firstMoves ? one : two)] = to;
            const int otherInput = firstMoves ? two : one;
            if (otherInput >= 0) {
                point[static_cast<std::size_t>(otherInput)] = from;
            }
            if (to >= moved.least && to <= moved.greatest && from >= arc.from && from <= arc.to) {
                tryPoint(piece, point);
            }
        }
    }
}

// For each goal the corner to which every input by itself leads from the nominal values.
void Search::tryCorners() {
    for (std::size_t piece = 0; piece < pieces_.size(); ++piece) {
        const Point nominal = problem_.nominal();
        tryPoint(piece, nominal);
        tryAllButParallel(piece);
        const std::optional<Tips> middle = tipsAt(problem_, pieces_[piece], nominal);
        if (!middle) {
            continue;
        }
        std::array<Point, kGoals> corners;
        corners.fill(nominal);
        for (std::size_t i = 0; i < problem_.inputs.size() && i < 64; ++i) {
            for (const long double end : {problem_.inputs[i].least, problem_.inputs[i].greatest}) {
                Point moved = nominal;
                moved[i] = end;
                const std::optional<Tips> tips = tipsAt(problem_, pieces_[piece], moved);
                for (std::size_t other = 0; !tips && other < pieces_.size(); ++other) {
                    tryPoint(other, moved);
                }
                for (std::size_t g = 0; tips && g < (hasGap_ ? kGoals : 6); ++g) {
                    const Goal goal = static_cast<Goal>(g);
                    corners[g][i] = valueOf(goal, *tips) > valueOf(goal, *middle) ? end : corners[g][i];
                }
            }
        }
        for (const Point& corner : corners) {
            if (!tryPoint(piece, corner)) {
                tryUpTo(piece, nominal, corner);
            }
            for (std::size_t other = 0; other < pieces_.size(); ++other) {
                if (other != piece) {
                    tryPoint(other, corner);
                }
            }
        }
    }
}

} // namespace tailpoint::tolerance
