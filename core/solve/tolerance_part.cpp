// SPDX-License-Identifier: MIT
#include "core/solve/tolerance_part.h"

#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::tolerance {
namespace {

void restrictTo(Span& span, long double least, long double greatest) {
    span.least = least;
    span.greatest = greatest;
    span.nominal = std::clamp(span.nominal, least, greatest);
}

} // namespace

void restrictTo(Arc& arc, long double least, long double greatest) {
    const Arc whole = arc;
    arc.from = least;
    arc.to = greatest;
    arc.nominal = std::clamp(whole.nominal, least, greatest);
    arc.atFrom = whole.unitAt(arc.from);
    arc.atTo = whole.unitAt(arc.to);
    arc.atNominal = whole.unitAt(arc.nominal);
}

// Inputs keep their numbers: one that is fixed has the same value at both ends.
void Part::restrict(Problem& problem, std::vector<Piece>& pieces, const Limits& limits) const {
    Input& input = problem.inputs[limits.input];
    BoxVector& vector = problem.box.vectors[input.vector];
    if (input.isDirection) {
        restrictTo(vector.direction, limits.least, limits.greatest);
    } else {
        restrictTo(vector.magnitude, limits.least, limits.greatest);
    }
    input.least = limits.least;
    input.greatest = limits.greatest;
    input.nominal = std::clamp(input.nominal, limits.least, limits.greatest);
    for (std::size_t i = 0; i < problem.loose.size(); ++i) {
        if (problem.loose[i] == input.vector) {
            problem.sectors[i] = sectorOf(vector, problem.turnedOf(input.vector));
        }
    }
    for (Piece& piece : pieces) {
        for (Unknown& unknown : piece.unknown) {
            if (unknown.vector != input.vector || (&unknown != &piece.unknown[0] && !piece.hasSecond)) {
                continue;
            }
            const Sector was = unknown.sector;
            unknown.sector = sectorOf(vector, problem.turnedOf(input.vector, unknown.flipped));
            if (!vector.magnitudeGiven) {
                unknown.sector.least = was.least;
                unknown.sector.greatest = was.greatest;
            }
            if (!vector.directionGiven) { // as it was aimed at
                unknown.sector = {
                    unknown.sector.least, unknown.sector.greatest, was.from, was.to, was.atFrom, was.atTo};
            }
        }
    }
}

bool Part::tryKnown(const std::vector<Limits>& limits, long double& at) {
    for (const Point& point : known_) {
        Point moved = point;
        for (const Limits& each : limits) {
            moved[each.input] = std::clamp(moved[each.input], each.least, each.greatest);
        }
        for (const Piece& piece : pieces_) {
            if (tipsAt(problem_, piece, moved)) {
                at = moved[limits.front().input];
                return true;
            }
        }
    }
    return false;
}

Part::Has Part::has(const std::vector<Limits>& limits, long double& at) {
    if (tryKnown(limits, at)) {
        return Has::yes;
    }
    if (--left_ < 0) {
        return Has::unknown;
    }
    Problem problem = problem_;
    std::vector<Piece> pieces = pieces_;
    for (const Limits& each : limits) {
        restrict(problem, pieces, each);
    }
    Search search(problem, pieces, 0, 2 * boxes_);
    if (search.isEmpty()) {
        return Has::no;
    }
    for (const Goal goal : {Goal::greatestMagnitude, Goal::leastMagnitude}) {
        if (!search.best(goal).isThere && search.run(goal, boxes_).bound == -kNever) {
            return Has::no;
        }
    }
    const Best& best = search.best(Goal::greatestMagnitude);
    if (!best.isThere) {
        return Has::unknown;
    }
    at = best.point[limits.front().input];
    known_.push_back(best.point);
    return Has::yes;
}

// Along one input from a point with an answer toward the end of its interval: the last value that has one.
void Part::goAlong(Point& point, std::size_t input, long double end) const {
    const auto has = [&](const Point& at) {
        return std::any_of(pieces_.begin(), pieces_.end(),
                           [&](const Piece& piece) { return tipsAt(problem_, piece, at).has_value(); });
    };
    Point next = point;
    next[input] = end;
    if (has(next)) {
        point = next;
        return;
    }
    const long double start = point[input];
    long double reached = 0;
    for (long double step = 0.5L; step > 0x1p-16L; step /= 2) {
        next[input] = start + (reached + step) * (end - start);
        if (has(next)) {
            reached += step;
            point = next;
        }
    }
}

// From the points that are known, then with every other input at either end of its own.
long double Part::farthest(std::size_t input, long double end) {
    Point best = problem_.nominal();
    const auto take = [&](Point point) {
        const long double step = 0x1p-14L * (end - point[input]);
        point[input] += step;
        const bool has = std::any_of(pieces_.begin(), pieces_.end(), [&](const Piece& piece) {
            return tipsAt(problem_, piece, point).has_value();
        });
        if (has) {
            goAlong(point, input, end);
        }
        if (has && std::fabs(end - point[input]) < std::fabs(end - best[input])) {
            best = point;
        }
    };
    for (const Point& point : std::vector<Point>(known_)) {
        if (best[input] == end) {
            break;
        }
        Point moved = point;
        if (std::fabs(end - best[input]) < std::fabs(end - moved[input])) {
            moved[input] = best[input];
        }
        take(moved);
    }
    for (int sweep = 0; sweep < 2 && best[input] != end; ++sweep) {
        for (std::size_t i = 0; i < best.size() && best[input] != end; ++i) {
            for (const long double other : {problem_.inputs[i].least, problem_.inputs[i].greatest}) {
                Point moved = best;
                if (i != input) {
                    moved[i] = other;
                    take(moved);
                }
            }
        }
    }
    known_.push_back(best);
    return best[input];
}

// From where the best known point stands to the end of the interval it is to be proved that there is none;
// where that fails, halved.
Part::End Part::endOf(std::size_t input, bool greatest) {
    constexpr int kMost = 6;
    const Input& own = problem_.inputs[input];
    const long double thin = kEnough * (own.greatest - own.least);
    long double without = greatest ? own.greatest : own.least, at = 0;
    long double with = farthest(input, without), step = thin;
    for (int i = 0; i < kMost && std::fabs(without - with) > thin; ++i) {
        const long double from =
            with + std::copysign(std::fmin(step, std::fabs(without - with)), without - with);
        const Has found = has({{input, std::fmin(from, without), std::fmax(from, without)}}, at);
        if (found == Has::yes) {
            with = at;
            with = farthest(input, greatest ? own.greatest : own.least);
            step = thin;
        } else if (found == Has::no) {
            without = from;
            step = std::fmax(thin, step / 8);
        } else {
            step = std::fmax(8 * step, std::fabs(without - with) / 8);
        }
    }
    return {without, with, std::fabs(without - with) > 1.01L * thin};
}

PartEnds Part::endsOf(std::size_t input) {
    const End low = endOf(input, false), high = endOf(input, true);
    return {low.outer, high.outer, low.inner, high.inner, low.marked || high.marked};
}

bool Part::reaches(std::size_t vector, const Sector& sector, Pt along) {
    Point point = problem_.nominal();
    problem_.place(point, vector, sector, along, problem_.turnedOf(vector));
    std::vector<Limits> limits;
    for (const int input : problem_.inputOf[vector]) {
        if (input >= 0) {
            const auto i = static_cast<std::size_t>(input);
            limits.push_back({i, point[i], point[i]});
        }
    }
    long double at = 0;
    return limits.empty() || has(limits, at) == Has::yes;
}

} // namespace tailpoint::tolerance
