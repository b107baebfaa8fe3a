// SPDX-License-Identifier: MIT
// Where a found vector's tip can lie, as an outline: along rays of a direction, or along circles of a
// magnitude, from one end of what is possible to the other.
#include "core/solve/tolerance.h"
#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <map>
#include <numbers>
#include <optional>

namespace tailpoint::tolerance {
namespace {

/// What an outline may be off, as a part of the region's size.
constexpr double kTrue = 0.002;
/// Unbounded regions are cut off here: so many times all given magnitudes, and twice where they begin.
constexpr double kFarthest = 8;

/// The possible magnitudes in one direction, or the possible directions at one magnitude.
struct Station {
    double at = 0, low = 0, high = 0;
    bool isThere = false;
};
Pt polar(double magnitude, double direction) {
    return magnitude * unitAt(direction);
}

class Tracer {
public:
    Tracer(const Problem& problem, std::vector<Piece> pieces, std::size_t which, const Effort& effort)
        : problem_(problem), pieces_(std::move(pieces)), which_(which),
          boxes_(std::max(6, effort.boxes / 16)), most_(effort.boxes >= kExact.boxes ? 160 : 24) {
        moveToMostCurved();
    }

    TipRegion region();

private:
    using Probe = std::function<Station(double)>;

    void moveToMostCurved();
    void alongRays(double from, double to, bool closed);
    void addBetween(const Station& a, const Station& b, std::vector<Pt>& outer, std::vector<Pt>& inner) const;
    void alongCircles();
    Station onRays(double from, double to);
    Station onCircle(double magnitude);
    std::vector<Station> stations(double from, double to, const Probe& probe, bool onRays);
    void add(const std::vector<Pt>& points);

    Problem problem_;
    std::vector<Piece> pieces_;
    std::size_t which_;
    int boxes_, most_;
    Pt centre_; ///< of all rays
    double size_ = 1, middle_ = 0, farthest_ = kFarthest;
    std::optional<std::array<double, 2>> arc_; ///< of a direction that hangs on no magnitude
    TipRegion region_;
};

// A sum is traced from where the most curved of the sectors that make it up has its centre: seen from
// elsewhere a ray may pass through it twice, with what is no part of it between.
void Tracer::moveToMostCurved() {
    const Piece& piece = pieces_.front();
    if (piece.rule != Rule::alone || problem_.box.vectors[piece.unknown[0].vector].magnitudeGiven ||
        problem_.sectors.empty()) {
        return;
    }
    const auto bendOf = [](const Sector& sector) { return sector.least * std::min(sector.width(), kTurn); };
    const auto most =
        std::max_element(problem_.sectors.begin(), problem_.sectors.end(),
                         [&](const Sector& a, const Sector& b) { return bendOf(a) < bendOf(b); });
    kernel::Vec others;
    for (auto sector = problem_.sectors.begin(); sector != problem_.sectors.end(); ++sector) {
        const Pt middle = (sector->least + sector->greatest) / 2 * unitAt(sector->middle());
        others = others + (sector == most ? kernel::Vec{} : kernel::Vec{middle.x, middle.y});
    }
    const kernel::Vec centre = -(problem_.fixed + others);
    centre_ = {static_cast<double>(centre.x), static_cast<double>(centre.y)};
    problem_.fixed = problem_.fixed + kernel::Vec{centre_.x, centre_.y};
    for (Piece& each : pieces_) {
        each.unknown[0].sector = sectorOf(0, kNever, -kTurn / 2, kTurn / 2);
        aim(problem_, each);
    }
}

void Tracer::add(const std::vector<Pt>& points) {
    const double sign = problem_.turnedOf(pieces_.front().unknown[which_].vector) == Turned::yes ? -1 : 1;
    Outline outline;
    for (const Pt each : points) {
        const Pt point = each + centre_;
        outline.emplace_back(std::ldexp(sign * point.x, problem_.exponent),
                             std::ldexp(sign * point.y, problem_.exponent));
    }
    if (!outline.empty()) {
        region_.outlines.push_back(std::move(outline));
    }
}

// Along any ray between the two: one, or so many that they are as good as one.
Station Tracer::onRays(double from, double to) {
    const double direction = from + (to - from) / 2;
    std::vector<Piece> pieces = pieces_;
    for (Piece& piece : pieces) {
        Sector& own = piece.unknown[which_].sector;
        own = sectorOf(own.least, own.greatest, from, to);
    }
    Search search(problem_, pieces, which_, kTrue / 2 * size_);
    if (search.isEmpty()) {
        return {direction, 0, 0, false};
    }
    const double high = search.run(Goal::greatestMagnitude, boxes_).bound;
    region_.open = region_.open || high > farthest_;
    const double low = std::max(0.0, -search.run(Goal::leastMagnitude, boxes_).bound);
    return {direction, std::min(low, farthest_), std::clamp(high, std::min(low, farthest_), farthest_),
            high >= low};
}

Station Tracer::onCircle(double magnitude) {
    if (arc_) {
        return {magnitude, (*arc_)[0], (*arc_)[1], true};
    }
    std::vector<Piece> pieces = pieces_;
    for (Piece& piece : pieces) {
        piece.unknown[which_].sector.least = magnitude;
        piece.unknown[which_].sector.greatest = magnitude;
    }
    Search search(problem_, pieces, which_, kTrue / 2 * magnitude);
    if (search.isEmpty()) {
        return {magnitude, 0, 0, false};
    }
    search.findGap(boxes_);
    if (!search.hasGap()) {
        return {magnitude, middle_ - kTurn / 2, middle_ + kTurn / 2, true};
    }
    const double from = search.base() + kTurn - search.run(Goal::from, boxes_).bound;
    const double to = search.base() + search.run(Goal::to, boxes_).bound;
    const double shift = std::round((middle_ - (from + to) / 2) / kTurn) * kTurn;
    return {magnitude, from + shift, to + shift, to >= from};
}

// Those with something, and beside each the next one without: somewhere up to there it ends.
std::vector<Station> withEdges(const std::vector<Station>& made) {
    std::vector<Station> kept;
    for (std::size_t i = 0; i < made.size(); ++i) {
        const Station* from = made[i].isThere                              ? &made[i]
                              : i + 1 < made.size() && made[i + 1].isThere ? &made[i + 1]
                              : i > 0 && made[i - 1].isThere               ? &made[i - 1]
                                                                           : nullptr;
        if (from != nullptr) {
            kept.push_back({made[i].at, from->low, from->high, true});
        }
    }
    return kept;
}

// Halved until the middle lies where the straight line between its neighbours has it.
std::vector<Station> Tracer::stations(double from, double to, const Probe& probe, bool onRays) {
    std::vector<Station> made{probe(from)};
    if (to > from) {
        // Of a whole turn so many that a gap of five degrees is not stepped over.
        const int first = onRays ? (to - from >= kTurn && most_ > 72 ? 72 : 16) : 6;
        for (int i = 1; i <= first; ++i) {
            made.push_back(probe(from + (to - from) * i / first));
        }
    }
    const auto off = [&](const Station& a, const Station& b, const Station& c) {
        if (!b.isThere) {
            return 0.0;
        }
        const double part = (b.at - a.at) / (c.at - a.at);
        const double low = std::fabs(b.low - (a.low + part * (c.low - a.low)));
        const double high = std::fabs(b.high - (a.high + part * (c.high - a.high)));
        return std::max(low, high) * (onRays ? 1 : b.at);
    };
    for (std::size_t i = 0; i + 1 < made.size() && made.size() < static_cast<std::size_t>(most_);) {
        const Station middle = probe((made[i].at + made[i + 1].at) / 2);
        const bool edge = made[i].isThere != made[i + 1].isThere;
        const bool fine = made[i + 1].at - made[i].at < 1e-4 * (to - from);
        const double miss = edge ? 1 : off(made[i], middle, made[i + 1]);
        if (!fine && miss > kTrue * size_) {
            made.insert(made.begin() + static_cast<std::ptrdiff_t>(i) + 1, middle);
        } else {
            ++i;
        }
    }
    return made;
}

/// Of a whole turn, begun and ended where nothing is, if that is anywhere.
std::vector<Station> openedAtGap(std::vector<Station> turn, bool& closed) {
    const auto gap = std::find_if(turn.begin(), turn.end(), [](const Station& one) { return !one.isThere; });
    closed = gap == turn.end();
    if (closed) {
        return turn;
    }
    turn.pop_back(); // the first one, a turn later
    for (auto before = turn.begin(); before != gap; ++before) {
        before->at += kTurn;
    }
    std::rotate(turn.begin(), gap, turn.end());
    turn.push_back(turn.front());
    turn.back().at += kTurn;
    return turn;
}

/// From one ray to the next both ends go evenly: so is what lies between them, on an arc.
void Tracer::addBetween(const Station& a, const Station& b, std::vector<Pt>& outer,
                        std::vector<Pt>& inner) const {
    const double turn = b.at - a.at, bend = std::max(a.high, b.high) * turn * turn / 8;
    const int count = static_cast<int>(std::ceil(std::sqrt(bend / (kTrue / 4 * size_))));
    for (int i = 1; i < count; ++i) {
        const double part = static_cast<double>(i) / count;
        outer.push_back(polar(a.high + part * (b.high - a.high), a.at + part * turn));
        inner.push_back(polar(a.low + part * (b.low - a.low), a.at + part * turn));
    }
}

void Tracer::alongRays(double from, double to, bool closed) {
    const Station all = onRays(from, to);
    const bool isOne = all.isThere && all.high * (to - from) < kTrue / 4 * size_;
    std::vector<Station> made = isOne ? std::vector<Station>{all}
                                      : stations(
                                            from, to, [&](double at) { return onRays(at, at); }, true);
    const std::vector<Station> rays = withEdges(closed ? openedAtGap(std::move(made), closed) : made);
    std::vector<Pt> outer, inner;
    bool hollow = false;
    for (std::size_t i = 0; i < rays.size(); ++i) {
        if (i > 0) {
            addBetween(rays[i - 1], rays[i], outer, inner);
        }
        outer.push_back(polar(rays[i].high, rays[i].at));
        inner.push_back(polar(rays[i].low, rays[i].at));
        hollow = hollow || rays[i].low > 0;
    }
    std::reverse(inner.begin(), inner.end());
    if (!closed) {
        outer.insert(outer.end(), inner.begin(), inner.end());
        inner.clear();
    }
    add(outer);
    if (hollow) {
        add(inner);
    }
}

void Tracer::alongCircles() {
    const BoxVector& own = problem_.box.vectors[pieces_.front().unknown[which_].vector];
    const std::vector<Station> circles = withEdges(stations(
        static_cast<double>(own.magnitude.least), static_cast<double>(own.magnitude.greatest),
        [&](double at) { return onCircle(at); }, false));
    if (circles.empty()) {
        return;
    }
    std::vector<Pt> points;
    const auto arc = [&](const Station& circle, bool back) {
        const int count =
            std::max(2, static_cast<int>(std::ceil((circle.high - circle.low) / (std::numbers::pi / 60))));
        for (int i = 0; i <= count; ++i) {
            const double part = static_cast<double>(back ? count - i : i) / count;
            points.push_back(polar(circle.at, circle.low + part * (circle.high - circle.low)));
        }
    };
    const bool whole = std::all_of(circles.begin(), circles.end(), [](const Station& circle) {
        return circle.high - circle.low >= kTurn - 1e-9;
    });
    arc(circles.back(), false);
    if (whole) {
        add(points);
        points.clear();
    }
    for (auto circle = circles.rbegin(); !whole && circle != circles.rend(); ++circle) {
        points.push_back(polar(circle->at, circle->high));
    }
    arc(circles.front(), true);
    for (auto circle = circles.begin(); !whole && circle != circles.end(); ++circle) {
        points.push_back(polar(circle->at, circle->low));
    }
    add(points);
}

TipRegion Tracer::region() {
    const Unknown& unknown = pieces_.front().unknown[which_];
    const BoxVector& own = problem_.box.vectors[unknown.vector];
    region_.index = own.index;
    Search search(problem_, pieces_, which_, 16 * boxes_);
    if (search.isEmpty()) {
        return region_;
    }
    const double nearest = std::max(0.0, -search.run(Goal::leastMagnitude, boxes_).bound);
    farthest_ = kFarthest * static_cast<double>(problem_.scale) + 2 * nearest;
    const auto extent = [&](Goal low, Goal high) {
        const double least = search.run(low, boxes_).bound, greatest = search.run(high, boxes_).bound;
        return std::min(kFarthest, std::max(0.0, greatest + least));
    };
    size_ = std::max({extent(Goal::leastX, Goal::greatestX), extent(Goal::leastY, Goal::greatestY), 1e-9});
    if (own.directionGiven) {
        alongRays(unknown.sector.from, unknown.sector.to, false);
        return region_;
    }
    search.findGap(boxes_);
    const bool ofRest = own.magnitudeGiven && pieces_.front().rule == Rule::alone;
    if (!search.hasGap()) {
        arc_ = ofRest ? std::optional(std::array{0.0, kTurn}) : std::nullopt;
        own.magnitudeGiven ? alongCircles() : alongRays(0, kTurn, true);
        return region_;
    }
    const double from = search.base() + kTurn - search.run(Goal::from, 4 * boxes_).bound;
    const double to = search.base() + search.run(Goal::to, 4 * boxes_).bound;
    middle_ = (from + to) / 2;
    arc_ = ofRest ? std::optional(std::array{from, to}) : std::nullopt;
    own.magnitudeGiven ? alongCircles() : alongRays(from, to, false);
    return region_;
}

// By the side to which the vector points: in its sense or against it, to one side of its line or the other.
std::vector<std::vector<Piece>> sorted(const std::vector<Piece>& pieces, std::size_t which) {
    std::map<std::array<int, 3>, std::vector<Piece>> sides;
    for (const Piece& piece : pieces) {
        const bool other = piece.unknown[1 - which].flipped;
        const int side = piece.rule == Rule::foot ? (piece.root == 0) == other : 0;
        sides[{static_cast<int>(piece.rule), piece.unknown[which].flipped, side}].push_back(piece);
    }
    std::vector<std::vector<Piece>> all;
    for (auto& [key, alike] : sides) {
        all.push_back(std::move(alike));
    }
    return all;
}

} // namespace

std::vector<TipRegion> tipRegions(const Sketch& sketch, const Solved& solved, std::size_t answer,
                                  const Effort& effort) {
    std::vector<TipRegion> regions;
    if (!hasRange(solved)) {
        return regions;
    }
    const Problem problem = problemOf(sketch, solved);
    const std::vector<Piece> pieces = piecesOf(problem, sketch, solved, answer);
    for (std::size_t which = 0; which < (pieces.front().hasSecond ? 2u : 1u); ++which) {
        if (problem.box.vectors[pieces.front().unknown[which].vector].index == kNoVector) {
            continue;
        }
        TipRegion region;
        region.index = problem.box.vectors[pieces.front().unknown[which].vector].index;
        for (const std::vector<Piece>& alike : sorted(pieces, which)) {
            const TipRegion part = Tracer(problem, alike, which, effort).region();
            region.outlines.insert(region.outlines.end(), part.outlines.begin(), part.outlines.end());
            region.open = region.open || part.open;
        }
        regions.push_back(std::move(region));
    }
    return regions;
}

} // namespace tailpoint::tolerance
