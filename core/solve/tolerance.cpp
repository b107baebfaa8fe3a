// SPDX-License-Identifier: MIT
#include "core/solve/tolerance.h"

#include "core/solve/outward.h"
#include "core/solve/tolerance_everywhere.h"
#include "core/solve/tolerance_part.h"
#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint::tolerance {
namespace {

using kernel::Vec;

/// A bound this close above the best point, as a part of the range, is that point's value: between the two
/// lies what halving did not yet take off.
constexpr double kSame = 1e-6;

/// One end of a range, as if the greatest were looked for; scaled.
struct End {
    bool isUnbounded = false, marked = false, isPoint = false;
    long double value = 0;
};

End endOf(const Extreme& extreme, double width, double slack) {
    if (extreme.bound == kNever) {
        return {true, !extreme.isUnbounded, false, 0};
    }
    if (!extreme.best.isThere) {
        return {false, true, false, extreme.bound};
    }
    const double gap = extreme.bound - static_cast<double>(extreme.best.value);
    if (extreme.isUnbounded) {
        return {true, false, false, 0};
    }
    if (gap <= 64 * slack || (extreme.isTop && gap <= kSame * width)) {
        return {false, false, true, extreme.best.value};
    }
    return {false, !extreme.isTight && gap > 1.2 * kEnough * width, false, extreme.bound};
}

/// Makes the ranges of one answer.
class Maker {
public:
    Maker(const Sketch& sketch, const Solved& solved, std::size_t answer, const Effort& effort)
        : sketch_(sketch), solved_(solved), solution_(solved.solutions[answer]), effort_(effort),
          problem_(problemOf(sketch, solved)), pieces_(piecesOf(problem_, sketch, solved, answer)),
          lost_(lostPiecesOf(problem_, sketch, solved, answer)) {}

    AnswerRange make();

private:
    VectorRange given(std::size_t vector) const;
    VectorRange found(std::size_t which);
    std::optional<VectorRange> balanced() const;
    VectorRange directionOfRest();
    void setComponents(VectorRange& range, const Sector& sector, bool isExact) const;
    void narrow(Part& part, VectorRange& range, std::size_t vector) const;
    void narrowDirection(VectorRange& range, BoxVector& own, const PartEnds& ends) const;
    Range rangeOf(Search& search, Goal least, Goal greatest, bool turned) const;
    DirectionRange directionOf(Search& search, std::size_t which) const;
    void capComponents(Search& search, std::size_t which, double from, double to) const;
    DirectionRange givenDirection(std::size_t vector, bool flipped) const;
    DirectionRange arcFrom(Vec from, Vec to, long double width) const;
    Place placeOf(const Best& best) const;
    long double unscaled(long double value) const { return std::ldexp(value, problem_.exponent); }

    const Sketch& sketch_;
    const Solved& solved_;
    const Solution& solution_;
    Effort effort_;
    Problem problem_;
    std::vector<Piece> pieces_, lost_;
    std::vector<Point> known_; ///< points that have the answer
};

Place Maker::placeOf(const Best& best) const {
    Place place;
    const bool clockwise = sketch_.reference.sense == Sense::cw;
    for (std::size_t i = 0; best.isThere && i < problem_.inputs.size(); ++i) {
        const Input& input = problem_.inputs[i];
        const BoxVector& vector = problem_.box.vectors[input.vector];
        InputAt at;
        at.index = vector.index;
        at.isDirection = input.isDirection;
        const long double value = best.point[i];
        const bool swap = clockwise && input.isDirection;
        if (value == input.least || value == input.greatest) {
            at.end = (value == input.least) != swap ? InputAt::End::least : InputAt::End::greatest;
        }
        if (input.isDirection) {
            const Vec unit = vector.direction.unitAt(value);
            at.value = referredDirection(unit.x, unit.y, sketch_).value_or(0.0);
        } else {
            at.value = static_cast<double>(unscaled(value));
        }
        place.push_back(at);
    }
    return place;
}

// `turned`: the vector itself is the reverse of what was looked for, so that least and greatest change
// places.
Range Maker::rangeOf(Search& search, Goal least, Goal greatest, bool turned) const {
    Extreme low = search.run(least, effort_.boxes);
    Extreme high = search.run(greatest, effort_.boxes);
    const double width = search.width(greatest);
    End lowEnd = endOf(low, width, problem_.slack);
    End highEnd = endOf(high, width, problem_.slack);
    if (turned) {
        std::swap(low, high);
        std::swap(lowEnd, highEnd);
    }
    Range range;
    range.marked = lowEnd.marked || highEnd.marked;
    if (!lowEnd.isUnbounded) {
        range.least = downward(unscaled(-lowEnd.value));
        range.atLeast = placeOf(low.best);
    }
    if (!highEnd.isUnbounded) {
        range.greatest = upward(unscaled(highEnd.value));
        range.atGreatest = placeOf(high.best);
    }
    return range;
}

// Counter-clockwise from `from` to `to`, `width` apart, as the sheet says it.
DirectionRange Maker::arcFrom(Vec from, Vec to, long double width) const {
    if (sketch_.reference.sense == Sense::cw) {
        std::swap(from, to);
    }
    DirectionRange range;
    const double turn = turnIn(sketch_.angleUnit);
    range.from = referredDirection(from.x, from.y, sketch_).value_or(0.0);
    const double end = referredDirection(to.x, to.y, sketch_).value_or(0.0);
    const double about = range.from + static_cast<double>(width / (2 * kHalfTurn)) * turn;
    range.to = end + std::round((about - end) / turn) * turn;
    if (width > 0) {
        range.from = down(range.from);
        range.to = up(range.to);
    }
    return range;
}

DirectionRange Maker::givenDirection(std::size_t vector, bool flipped) const {
    const Arc& arc = problem_.box.vectors[vector].direction;
    if (arc.isWholeTurn()) {
        DirectionRange any;
        any.any = true;
        return any;
    }
    return arcFrom(flipped ? -arc.atFrom : arc.atFrom, flipped ? -arc.atTo : arc.atTo, arc.to - arc.from);
}

Vec unitOfEnd(const End& end, const Extreme& extreme, const Search& search, long double angle, bool turned,
              const Problem& problem, const std::vector<Piece>& pieces, std::size_t which) {
    (void)search;
    Vec unit{std::cos(angle), std::sin(angle)};
    if (end.isPoint) {
        if (const auto tips = tipsAt(problem, pieces[extreme.best.piece], extreme.best.point)) {
            unit = (*tips)[which].unit;
        }
    }
    return turned ? -unit : unit;
}

// A given magnitude has its components within the sector of what was found of its direction.
void Maker::capComponents(Search& search, std::size_t which, double from, double to) const {
    const BoxVector& own = problem_.box.vectors[pieces_.front().unknown[which].vector];
    if (!own.magnitudeGiven || isDirectionOfRest(solved_) || to - from >= 2 * std::numbers::pi) {
        return;
    }
    const Sector sector = sectorOf(static_cast<double>(own.magnitude.least),
                                   static_cast<double>(own.magnitude.greatest), from, to);
    const std::array<std::pair<Goal, Pt>, 4> ways{{{Goal::leastX, {-1, 0}},
                                                   {Goal::greatestX, {1, 0}},
                                                   {Goal::leastY, {0, -1}},
                                                   {Goal::greatestY, {0, 1}}}};
    for (const auto& [goal, along] : ways) {
        Pt point;
        const double support = sector.support(along, point);
        search.cap(goal, support + 4 * problem_.slack, point);
    }
}

DirectionRange Maker::directionOf(Search& search, std::size_t which) const {
    const bool turned = problem_.turnedOf(pieces_.front().unknown[which].vector) == Turned::yes;
    DirectionRange range;
    search.findGap(effort_.boxes / 4);
    if (!search.hasGap()) {
        range.any = true;
        const Best& least = search.best(Goal::leastMagnitude);
        range.marked = !least.isThere || -least.value > kEnough * search.width(Goal::leastMagnitude);
        return range;
    }
    const Extreme from = search.run(Goal::from, effort_.boxes);
    const Extreme to = search.run(Goal::to, effort_.boxes);
    const double width = search.width(Goal::to);
    const End fromEnd = endOf(from, width, 0x1p-50);
    const End toEnd = endOf(to, width, 0x1p-50);
    const long double whole = 2 * static_cast<long double>(std::numbers::pi);
    const long double fromAngle = search.base() + whole - fromEnd.value;
    const long double toAngle = search.base() + toEnd.value;
    capComponents(search, which, static_cast<double>(fromAngle), static_cast<double>(toAngle));
    range =
        arcFrom(unitOfEnd(fromEnd, from, search, fromAngle, turned, problem_, pieces_, which),
                unitOfEnd(toEnd, to, search, toAngle, turned, problem_, pieces_, which), toAngle - fromAngle);
    range.marked = fromEnd.marked || toEnd.marked;
    range.atFrom = placeOf(from.best);
    range.atTo = placeOf(to.best);
    if (sketch_.reference.sense == Sense::cw) {
        std::swap(range.atFrom, range.atTo);
    }
    return range;
}

// The ends alone: where they lie was searched. A vector that may be zero may point anywhere.
void takeEnds(VectorRange& to, const VectorRange& exact) {
    const auto take = [](Range& range, const Range& ends) {
        range.least = ends.least;
        range.greatest = ends.greatest;
        range.marked = false;
    };
    take(to.magnitude, exact.magnitude);
    take(to.x, exact.x);
    take(to.y, exact.y);
    if (exact.magnitude.least.value_or(0) > 0 && !exact.direction.any && !to.direction.any) {
        to.direction.from = exact.direction.from;
        to.direction.to = exact.direction.to;
        to.direction.marked = false;
    }
}

VectorRange Maker::given(std::size_t vector) const {
    const BoxVector& own = problem_.box.vectors[vector];
    VectorRange range;
    range.index = own.index;
    range.magnitude.least = downward(unscaled(own.magnitude.least));
    range.magnitude.greatest = upward(unscaled(own.magnitude.greatest));
    range.direction = givenDirection(vector, false);
    const Sector sector = sectorOf(own, Turned::no);
    setComponents(range, sector, sector.least == sector.greatest && own.direction.isPoint());
    return range;
}

void Maker::setComponents(VectorRange& range, const Sector& sector, bool isExact) const {
    const auto extent = [&](Pt along) {
        Pt point;
        const double support = sector.support(along, point);
        return isExact ? support : up(support);
    };
    range.x.least = static_cast<double>(unscaled(-extent({-1, 0}))) + 0.0;
    range.x.greatest = static_cast<double>(unscaled(extent({1, 0}))) + 0.0;
    range.y.least = static_cast<double>(unscaled(-extent({0, -1}))) + 0.0;
    range.y.greatest = static_cast<double>(unscaled(extent({0, 1}))) + 0.0;
}

// What is found where it is alone with one other vector: that one, turned about where both stand on one side.
// Halving comes close to a magnitude that nothing changes, but never to it.
std::optional<VectorRange> Maker::balanced() const {
    if (pieces_.size() != 1 || pieces_.front().rule != Rule::alone) {
        return std::nullopt;
    }
    const std::size_t own = pieces_.front().unknown[0].vector;
    std::optional<std::size_t> other;
    for (std::size_t i = 0; i < problem_.box.vectors.size(); ++i) {
        if (i == own || problem_.box.vectors[i].magnitude.greatest == 0) {
            continue;
        }
        if (other) {
            return std::nullopt;
        }
        other = i;
    }
    if (!other) {
        return std::nullopt;
    }
    const bool flipped = problem_.turnedOf(own) == problem_.turnedOf(*other);
    VectorRange range = given(*other);
    range.direction = givenDirection(*other, flipped);
    const BoxVector& vector = problem_.box.vectors[*other];
    const Sector sector = sectorOf(vector, flipped ? Turned::yes : Turned::no);
    setComponents(range, sector, sector.least == sector.greatest && vector.direction.isPoint());
    return range;
}

// The direction of what the others leave, with the vector's own magnitude.
VectorRange Maker::directionOfRest() {
    const std::size_t vector = pieces_.front().unknown[0].vector;
    const BoxVector& own = problem_.box.vectors[vector];
    VectorRange range = given(vector);
    range.directionFound = true;
    Search search(problem_, pieces_, 0, effort_.boxes);
    search.run(Goal::leastMagnitude, effort_.boxes);
    search.run(Goal::greatestMagnitude, effort_.boxes);
    range.direction = directionOf(search, 0);
    Sector sector = sectorOf(static_cast<double>(own.magnitude.least),
                             static_cast<double>(own.magnitude.greatest), 0, 2 * std::numbers::pi);
    if (!range.direction.any) {
        const bool clockwise = sketch_.reference.sense == Sense::cw;
        Direction start;
        start.form = AngleForm{clockwise ? range.direction.to : range.direction.from};
        const Vec unit = kernel::vec(*unitVector(start, sketch_));
        const double from = static_cast<double>(std::atan2(unit.y, unit.x));
        const double width = toRadians(range.direction.to - range.direction.from, sketch_.angleUnit);
        sector = sectorOf(sector.least, sector.greatest, from, from + width);
    }
    setComponents(range, sector, own.magnitude.isPoint() && sector.width() == 0);
    range.x.marked = range.y.marked = range.direction.marked;
    return range;
}

VectorRange Maker::found(std::size_t which) {
    if (isDirectionOfRest(solved_)) {
        return directionOfRest();
    }
    const std::size_t vector = pieces_.front().unknown[which].vector;
    const BoxVector& own = problem_.box.vectors[vector];
    const bool turned = problem_.turnedOf(vector) == Turned::yes;
    VectorRange range;
    range.index = own.index;
    range.magnitudeFound = !own.magnitudeGiven;
    range.directionFound = !own.directionGiven;
    Search search(problem_, pieces_, which, effort_.boxes);
    if (range.directionFound && own.magnitudeGiven) {
        range.direction = directionOf(search, which);
    }
    if (range.magnitudeFound) {
        range.magnitude = rangeOf(search, Goal::leastMagnitude, Goal::greatestMagnitude, false);
        const Best& least = search.best(Goal::leastMagnitude);
        const bool isFound = least.isThere && -least.value <= 64 * problem_.slack;
        range.slack =
            range.magnitude.least && *range.magnitude.least <= 0 && (isFound || !range.magnitude.marked);
    } else {
        range.magnitude.least = downward(unscaled(own.magnitude.least));
        range.magnitude.greatest = upward(unscaled(own.magnitude.greatest));
    }
    range.x = rangeOf(search, Goal::leastX, Goal::greatestX, turned);
    range.y = rangeOf(search, Goal::leastY, Goal::greatestY, turned);
    if (!range.directionFound) {
        const bool either = search.mayBe(true) && search.mayBe(false);
        range.direction =
            either ? DirectionRange{true, 0, 0, false, {}, {}} : givenDirection(vector, search.mayBe(true));
    } else if (!own.magnitudeGiven) {
        range.direction = directionOf(search, which);
    }
    for (std::size_t goal = 0; goal < kGoals; ++goal) {
        if (const Best& best = search.best(static_cast<Goal>(goal)); best.isThere) {
            known_.push_back(best.point);
        }
    }
    if (const auto exact = balanced()) {
        takeEnds(range, *exact);
    }
    return range;
}

// What a part of the box that has no answer takes off what is given.
void Maker::narrow(Part& part, VectorRange& range, std::size_t vector) const {
    const auto [magnitude, direction] = problem_.inputOf[vector];
    const bool isGiven = !range.magnitudeFound && !range.directionFound;
    if (effort_.boxes < kExact.boxes) { // it stays an outer bound
        range.magnitude.marked = range.magnitude.marked || magnitude >= 0;
        range.direction.marked = range.direction.marked || direction >= 0;
        range.x.marked = range.x.marked || (isGiven && (magnitude >= 0 || direction >= 0));
        range.y.marked = range.y.marked || range.x.marked;
        return;
    }
    BoxVector own = problem_.box.vectors[vector], inner = own;
    if (magnitude >= 0) {
        const PartEnds ends = part.endsOf(static_cast<std::size_t>(magnitude));
        inner.magnitude.least = ends.innerLeast;
        inner.magnitude.greatest = ends.innerGreatest;
        own.magnitude.least = ends.least;
        own.magnitude.greatest = ends.greatest;
        range.magnitude.least = downward(unscaled(ends.least));
        range.magnitude.greatest = upward(unscaled(ends.greatest));
        range.magnitude.marked = ends.marked;
    }
    if (direction >= 0 && !range.direction.any) {
        const PartEnds ends = part.endsOf(static_cast<std::size_t>(direction));
        narrowDirection(range, own, ends);
        restrictTo(inner.direction, ends.innerLeast, ends.innerGreatest);
    }
    if (isGiven && (magnitude >= 0 || direction >= 0)) {
        setComponents(range, sectorOf(own, Turned::no), false);
        const Turned turned = problem_.turnedOf(vector);
        const Sector sector = sectorOf(inner, turned);
        for (const Pt along : {Pt{1, 0}, Pt{-1, 0}, Pt{0, 1}, Pt{0, -1}}) {
            Range& component = along.x != 0 ? range.x : range.y;
            component.marked = component.marked || !part.reaches(vector, sector, along);
        }
    }
}

void Maker::narrowDirection(VectorRange& range, BoxVector& own, const PartEnds& ends) const {
    const Arc whole = own.direction;
    const bool flipped =
        range.direction.from != arcFrom(whole.atFrom, whole.atTo, whole.to - whole.from).from;
    restrictTo(own.direction, ends.least, ends.greatest);
    if (ends.least != whole.from || ends.greatest != whole.to) {
        range.direction =
            arcFrom(flipped ? -own.direction.atFrom : own.direction.atFrom,
                    flipped ? -own.direction.atTo : own.direction.atTo, ends.greatest - ends.least);
    }
    range.direction.marked = ends.marked;
}

AnswerRange Maker::make() {
    AnswerRange range;
    for (std::size_t i = 0; i < problem_.box.vectors.size(); ++i) {
        std::size_t which = 2;
        for (std::size_t u = 0; u < (pieces_.front().hasSecond ? 2u : 1u); ++u) {
            which = pieces_.front().unknown[u].vector == i ? u : which;
        }
        if (problem_.box.vectors[i].index == kNoVector) {
            continue;
        }
        range.vectors.push_back(which == 2 ? given(i) : found(which));
    }
    range.everywhere = isEverywhere(problem_, pieces_, lost_, effort_.boxes / 4);
    Part part(problem_, pieces_, known_, effort_.boxes / 8);
    for (std::size_t i = 0; i < range.vectors.size() && !range.everywhere; ++i) {
        narrow(part, range.vectors[i], i);
    }
    return range;
}

} // namespace

const VectorRange* AnswerRange::find(int index) const {
    const auto found = std::find_if(vectors.begin(), vectors.end(),
                                    [&](const VectorRange& vector) { return vector.index == index; });
    return found == vectors.end() ? nullptr : &*found;
}

Ranges rangesOf(const Sketch& sketch, const Solved& solved, const Effort& effort) {
    Ranges ranges;
    for (std::size_t i = 0; i < solved.solutions.size(); ++i) {
        if (hasRange(solved)) {
            ranges.push_back(Maker(sketch, solved, i, effort).make());
        }
    }
    return ranges;
}

} // namespace tailpoint::tolerance
