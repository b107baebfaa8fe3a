// SPDX-License-Identifier: MIT
// What is proved of a cell: how far the first vector can go in it, or that nothing closes.
#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::tolerance {
namespace {

// The part of `sector` that lies within from..to, whole turns apart; false: none. Where two parts would, all
// of it.
bool cut(Sector& sector, double from, double to) {
    if (to - from >= kTurn) {
        return true;
    }
    constexpr double kSectorRoom = 1e-15 * 8;
    int parts = 0;
    double low = 0, high = 0;
    const double start = std::floor((sector.from - to) / kTurn) * kTurn;
    for (int i = 0; i < 4; ++i) {
        const double a = std::max(sector.from, from + start + i * kTurn - kSectorRoom);
        const double b = std::min(sector.to, to + start + i * kTurn + kSectorRoom);
        if (a <= b) {
            ++parts;
            low = a;
            high = b;
        }
    }
    if (parts != 1) {
        return parts != 0;
    }
    if (low != sector.from) {
        sector.from = low;
        sector.atFrom = unitAt(low);
    }
    if (high != sector.to) {
        sector.to = high;
        sector.atTo = unitAt(high);
    }
    return true;
}

/// First stride along a line of directions, radians where it is small: from its middle, from next to the
/// place.
constexpr double kStride = 0.25, kNearStride = 0.02;

struct Probe {
    double t = 0, value = 0, slope = 0;
};

/// From two places on both sides of the lowest one: where their slopes meet, until nothing deeper is to be
/// had.
template <class At>
void cutBetween(Probe left, Probe right, double fine, const At& at, const bool& ended) {
    for (int i = 0; i < 40; ++i) {
        const double t = (right.value - left.value + left.slope * left.t - right.slope * right.t) /
                         (left.slope - right.slope);
        if (!(t > left.t && t < right.t)) {
            return;
        }
        const double predicted = left.value + left.slope * (t - left.t);
        const Probe middle = at(t);
        if (ended || middle.slope == 0 || middle.value - predicted <= fine * (1 + std::fabs(t))) {
            return;
        }
        (middle.slope < 0 ? left : right) = middle;
    }
}

/// Walks down a support function, which is convex, along a line of directions: brackets its lowest place and
/// cuts it by the slopes at both ends. Each direction that was looked at is handed to `use`, which ends the
/// walk by returning true: any of them proves something. It starts at `near`, where a larger cell had its
/// lowest place; what is less than `fine` deeper is left.
template <class Support, class Use>
void descend(const Line2& line, Pt near, double fine, const Support& support, const Use& use) {
    bool ended = false;
    const auto at = [&](double t) {
        const Pt y = line.base + t * line.step;
        Pt point;
        Probe probe{t, support(y, point), 0};
        probe.slope = dot(point, line.step);
        ended = use(y, probe.value);
        return probe;
    };
    const double ahead = dot(near, line.base);
    const bool isKnown = ahead > 0;
    Probe left = at(std::clamp(isKnown ? dot(near, line.step) / ahead : 0.0, line.low, line.high));
    if (ended || left.slope == 0 || left.value == kNever) {
        return;
    }
    const double sense = left.slope < 0 ? 1 : -1;
    Probe right = left;
    double stride = isKnown ? kNearStride : kStride;
    for (int i = 0; i < 18; ++i, stride *= 4) {
        const double t = std::clamp(left.t + sense * stride, line.low, line.high);
        if (t == left.t) {
            return; // the lowest place is where the line ends
        }
        right = at(t);
        if (ended) {
            return;
        }
        if (right.value == kNever || right.slope * sense >= 0) {
            break;
        }
        left = right;
    }
    if (right.value == kNever || right.slope * sense <= 0) {
        return;
    }
    if (sense < 0) {
        std::swap(left, right);
    }
    cutBetween(left, right, fine, at, ended);
}

/// How far a sector's inner side lies within the straight line across it.
double insideOf(const Sector& sector) {
    return sector.least * (1 - std::cos(std::min(sector.width() / 2, kTurn / 4)));
}

} // namespace

Total Search::totalOf(const Cell& cell) const {
    const bool hasSecond = pieces_[cell.piece].hasSecond;
    return {{static_cast<double>(problem_.fixed.x), static_cast<double>(problem_.fixed.y)},
            &known_[cell.known],
            hasSecond ? &cell.second : nullptr,
            problem_.slack};
}

// A small part of what the cell's own width leaves a bound off.
double Search::fineOf(const Cell& cell) const {
    constexpr double kPart = 1e-4;
    const auto bend = [](const Sector& sector) {
        const double size = sector.isEndless() ? 0 : sector.greatest;
        return size * std::min(1.0, sector.width() * sector.width() / 8);
    };
    return fine_ + kPart * (bend(cell.first) + (pieces_[cell.piece].hasSecond ? bend(cell.second) : 0));
}

bool Search::relate(Cell& cell) const {
    const Piece& piece = pieces_[cell.piece];
    if (!piece.hasSecond || piece.relation.any) {
        return true;
    }
    const double low = firstIs_ == 0 ? piece.relation.low : -piece.relation.high;
    const double high = firstIs_ == 0 ? piece.relation.high : -piece.relation.low;
    return cut(cell.second, cell.first.from + low, cell.first.to + high) &&
           cut(cell.first, cell.second.from - high, cell.second.to - low);
}

bool Search::narrow(Cell& cell) const {
    return relate(cell) && boundMost(cell) && boundLeast(cell) && cell.first.least <= cell.first.greatest;
}

// v of magnitude m along u closes the rest: for any y the rest's support is at least -m u.y. Along y = -u it
// bounds m from above.
bool Search::boundMost(Cell& cell) const {
    const Total total = totalOf(cell);
    const Pt middle = unitAt(cell.first.middle());
    Line2 line{-middle, leftOf(middle)};
    if (total.second != nullptr && total.second->isEndless()) {
        line = within(line, *total.second);
    }
    if (line.isEmpty()) {
        return true;
    }
    bool possible = true;
    double most = kNever, lowest = kNever;
    const auto use = [&](Pt y, double value) {
        const double reach = std::min(-dot(y, cell.first.atFrom), -dot(y, cell.first.atTo));
        const double sure = reach - 1e-15 * lengthOf(y);
        possible = possible && !(value < 0 && sure >= 0);
        if (value < lowest) {
            lowest = value;
        }
        if (sure > 0 && value / sure < most) {
            most = value / sure;
            cell.towardMost = y;
        }
        return !possible;
    };
    descend(
        line, Pt(cell.towardMost), fineOf(cell), [&](Pt y, Pt& point) { return total.support(y, point); },
        use);
    cell.most = lowest;
    cell.first.greatest = std::min(cell.first.greatest, most);
    return possible;
}

bool Search::boundLeast(Cell& cell) const {
    const Total total = totalOf(cell);
    const Pt middle = unitAt(cell.first.middle());
    Line2 line{middle, leftOf(middle)};
    if (total.second != nullptr && total.second->isEndless()) {
        line = within(line, *total.second);
    }
    if (line.isEmpty()) {
        return true;
    }
    double least = -kNever;
    const Pt near = cell.towardLeast;
    cell.towardLeast = middle;
    const auto use = [&](Pt y, double value) {
        Pt point;
        Sector ring{1, 1, cell.first.from, cell.first.to, cell.first.atFrom, cell.first.atTo};
        const double reach = ring.support(y, point) + 1e-15 * lengthOf(y);
        if (reach > 0 && -value / reach > least) {
            least = -value / reach;
            cell.towardLeast = y;
        }
        return least > cell.first.greatest;
    };
    descend(
        line, near, fineOf(cell), [&](Pt y, Pt& point) { return total.support(y, point); }, use);
    cell.first.least = std::max(cell.first.least, least);
    return cell.first.least <= cell.first.greatest;
}

// By its own directions and magnitudes alone.
double Search::quickBound(Goal goal, const Cell& cell) const {
    if (goal < Goal::leastX || isOfDirection(goal)) {
        return boundOf(goal, cell);
    }
    Pt point;
    const Sector ring{1, 1, cell.first.from, cell.first.to, cell.first.atFrom, cell.first.atTo};
    const double cosine = ring.support(alongOf(goal), point);
    return cosine <= 0              ? cell.first.least * cosine
           : cell.first.isEndless() ? kNever
                                    : cell.first.greatest * cosine;
}

double Search::componentBound(Goal goal, const Cell& cell) const {
    const Pt along = alongOf(goal);
    double bound = quickBound(goal, cell);
    const Total total = totalOf(cell);
    Line2 line{-along, leftOf(unitAt(cell.first.middle()))};
    if (total.second != nullptr && total.second->isEndless()) {
        line = within(line, *total.second);
    }
    if (cell.first.width() < kThinnest || line.isEmpty()) {
        return bound;
    }
    const auto support = [&](Pt y, Pt& where) {
        Pt own;
        const double rest = total.support(y, where);
        const Pt side = along + y;
        const double mine = lengthOf(side) < 1e-15 ? 0.0 : cell.first.support(side, own);
        where = where + own;
        return rest + mine;
    };
    descend(line, {0, 0}, fineOf(cell), support, [&](Pt, double value) {
        bound = std::min(bound, value);
        return false;
    });
    return bound;
}

double Search::boundOf(Goal goal, const Cell& cell) const {
    switch (goal) {
    case Goal::greatestMagnitude:
        return cell.first.greatest;
    case Goal::leastMagnitude:
        return -cell.first.least;
    case Goal::from:
        return kTurn - std::remainder(cell.first.from - base_ - kTurn / 2, kTurn) - kTurn / 2;
    case Goal::to:
        return std::remainder(cell.first.to - base_ - kTurn / 2, kTurn) + kTurn / 2;
    default:
        break;
    }
    return componentBound(goal, cell);
}

// What halving the first's direction could take off a bound, roughly.
double Search::gapOf(Goal goal, const Cell& cell) const {
    const double width = cell.first.width(), size = std::min(cell.first.greatest, 1e6);
    switch (goal) {
    case Goal::greatestMagnitude:
        return cell.first.greatest - cell.most;
    case Goal::leastMagnitude:
        return size * width * width / 8;
    default:
        return isOfDirection(goal) ? width * size : size * width / 8;
    }
}

// The same where that is what counts.
double Search::hollow(const Sector& sector, Pt toward) const {
    if (sector.least == 0 || sector.width() < kThinnest || !sector.faces(-toward)) {
        return 0;
    }
    return insideOf(sector) * std::min(lengthOf(toward), 1e3);
}

// What halving could take off a cell's bound, and where most of it. The cell's own direction counts in full
// for directions and components, and where the second vector is tied to it.
Search::Looseness Search::loosenessOf(Goal goal, const Cell& cell) const {
    Looseness loose;
    loose.most = cell.first.width() < kThinnest ? 0 : gapOf(goal, cell);
    loose.total = cell.first.width() * std::min(cell.first.greatest, 1e6);
    const bool asMost = goal != Goal::leastMagnitude;
    const bool asLeast = goal != Goal::greatestMagnitude;
    const auto facing = [&](const Sector& sector) {
        return std::max(asMost ? hollow(sector, cell.towardMost) : 0,
                        asLeast ? hollow(sector, cell.towardLeast) : 0);
    };
    for (std::size_t i = 0; i < known_[cell.known].size(); ++i) {
        loose.add(facing(known_[cell.known][i]), static_cast<int>(i));
    }
    const Piece& piece = pieces_[cell.piece];
    if (piece.hasSecond) {
        loose.add(facing(cell.second), kSecond);
    }
    // Of two circles the first's magnitude is given: what counts is not how far it may go, but whether it can
    // be what it is, and that the second's hollow side can make seem so from any direction. It seldom does:
    // it need not be small beyond what is asked of a range.
    if (piece.rule == Rule::circles) {
        constexpr double kSeldom = 1e-3;
        loose.add(cell.second.width() < 2 * kThinnest ? 0 : kSeldom * insideOf(cell.second), kSecond);
    }
    return loose;
}

// What hollow sides may pretend of a cell as thin as can be, where no point reaches its bound: seen from
// every side the vectors close by less than the hollow sides that face it take off. Where they don't, what is
// hollow about it can't keep them from closing.
Search::Looseness Search::doubtOf(Goal goal, const Cell& cell) const {
    constexpr int kSides = 16;
    const Total total = totalOf(cell);
    const Pt unit = unitAt(cell.first.middle());
    const bool isComponent = goal >= Goal::leastX && !isOfDirection(goal);
    const double along = isComponent ? dot(alongOf(goal), unit) : goal == Goal::leastMagnitude ? -1 : 1;
    const Pt own = (along > 0 ? std::min(cell.first.greatest, 1e6) : cell.first.least) * unit;
    const std::vector<Sector>& known = known_[cell.known];
    const bool hasSecond = pieces_[cell.piece].hasSecond;
    Looseness worst;
    const auto look = [&](Pt y) {
        Looseness here;
        for (std::size_t i = 0; i < known.size(); ++i) {
            here.add(hollow(known[i], y), static_cast<int>(i));
        }
        here.add(hasSecond ? hollow(cell.second, y) : 0, kSecond);
        Pt point;
        if (here.total > worst.total && total.support(y, point) + dot(own, y) < here.total) {
            worst = here;
        }
    };
    for (int side = 0; side < kSides; ++side) {
        look(unitAt(kTurn * side / kSides));
    }
    for (const Sector& sector : known) { // where it is most hollow
        look(-unitAt(sector.middle()));
    }
    if (hasSecond) {
        look(-unitAt(cell.second.middle()));
    }
    return worst;
}

} // namespace tailpoint::tolerance
