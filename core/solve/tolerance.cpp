#include "core/solve/tolerance.h"

#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace tailpoint::tolerance {
namespace {

using kernel::Vec;

/// A bound this close above the best point, as a part of the range, is that point's value: between the two
/// lies what halving did not yet take off.
constexpr double kSame = 1e-6;

double down(double value) {
    return value == 0 ? 0.0 : std::nextafter(value, -std::numeric_limits<double>::infinity());
}
double up(double value) {
    return value == 0 ? 0.0 : std::nextafter(value, std::numeric_limits<double>::infinity());
}
// Outward by no more than the rounding.
double downward(long double value) {
    const double rounded = static_cast<double>(value);
    return rounded > value ? down(rounded) : rounded + 0.0;
}
double upward(long double value) {
    const double rounded = static_cast<double>(value);
    return rounded < value ? up(rounded) : rounded + 0.0;
}

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
    Range rangeOf(Search& search, Goal least, Goal greatest, bool turned) const;
    DirectionRange directionOf(Search& search, std::size_t which) const;
    DirectionRange givenDirection(std::size_t vector, bool flipped) const;
    DirectionRange arcFrom(Vec from, Vec to, long double width) const;
    Place placeOf(const Best& best) const;
    struct Extent {
        long double least = 0, greatest = 0;
    };
    Extent extentOf(const std::vector<Piece>& pieces, std::size_t which) const;
    std::vector<Piece> feetOf(const Piece& piece) const;
    bool isLostSomewhere() const;
    bool missesSomewhere() const;
    long double unscaled(long double value) const { return std::ldexp(value, problem_.exponent); }

    const Sketch& sketch_;
    const Solved& solved_;
    const Solution& solution_;
    Effort effort_;
    Problem problem_;
    std::vector<Piece> pieces_, lost_;
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

VectorRange Maker::given(std::size_t vector) const {
    const BoxVector& own = problem_.box.vectors[vector];
    VectorRange range;
    range.index = own.index;
    range.magnitude.least = downward(unscaled(own.magnitude.least));
    range.magnitude.greatest = upward(unscaled(own.magnitude.greatest));
    range.direction = givenDirection(vector, false);
    const Sector sector = sectorOf(own, Turned::no);
    const auto extent = [&](Pt along) {
        Pt point;
        const double support = sector.support(along, point);
        return sector.least == sector.greatest && own.direction.isPoint() ? support : up(support);
    };
    range.x.least = static_cast<double>(unscaled(-extent({-1, 0}))) + 0.0;
    range.x.greatest = static_cast<double>(unscaled(extent({1, 0}))) + 0.0;
    range.y.least = static_cast<double>(unscaled(-extent({0, -1}))) + 0.0;
    range.y.greatest = static_cast<double>(unscaled(extent({0, 1}))) + 0.0;
    return range;
}

VectorRange Maker::found(std::size_t which) {
    const std::size_t vector = pieces_.front().unknown[which].vector;
    const BoxVector& own = problem_.box.vectors[vector];
    const bool turned = problem_.turnedOf(vector) == Turned::yes;
    VectorRange range;
    range.index = own.index;
    range.magnitudeFound = !own.magnitudeGiven;
    range.directionFound = !own.directionGiven;
    Search search(problem_, pieces_, which);
    if (range.magnitudeFound) {
        range.magnitude = rangeOf(search, Goal::leastMagnitude, Goal::greatestMagnitude, false);
        range.slack = range.magnitude.least && *range.magnitude.least <= 0;
    } else {
        range.magnitude.least = downward(unscaled(own.magnitude.least));
        range.magnitude.greatest = upward(unscaled(own.magnitude.greatest));
    }
    range.x = rangeOf(search, Goal::leastX, Goal::greatestX, turned);
    range.y = rangeOf(search, Goal::leastY, Goal::greatestY, turned);
    if (range.directionFound) {
        range.direction = directionOf(search, which);
    } else if (search.mayBe(true) && search.mayBe(false)) {
        range.direction.any = true;
    } else {
        range.direction = givenDirection(vector, search.mayBe(true));
    }
    return range;
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
    range.everywhere = !isLostSomewhere() && !missesSomewhere();
    return range;
}

// Whether somewhere in the box a vector would have to act against its given sense.
bool Maker::isLostSomewhere() const {
    constexpr long double kSure = 1e-12L;
    for (const Piece& piece : lost_) {
        const std::vector<Piece> alone{piece};
        const std::size_t which = piece.unknown[0].flipped ? 0 : 1;
        Search search(problem_, alone, which);
        if (!search.isEmpty() && search.best(Goal::greatestMagnitude).value <= kSure) {
            search.run(Goal::greatestMagnitude, effort_.boxes / 4);
        }
        if (search.best(Goal::greatestMagnitude).value > kSure) {
            return true;
        }
    }
    return false;
}

// The length of one vector from all that is known, or of the foot from it to a line: from least to greatest.
Maker::Extent Maker::extentOf(const std::vector<Piece>& pieces, std::size_t which) const {
    Search search(problem_, pieces, which);
    const Extreme least = search.run(Goal::leastMagnitude, effort_.boxes / 4);
    const Extreme greatest = search.run(Goal::greatestMagnitude, effort_.boxes / 4);
    return {least.best.isThere ? -least.best.value : 0, greatest.best.isThere ? greatest.best.value : 0};
}

// Whether somewhere in the box a line misses a circle, circles miss one another, or lines are parallel.
bool Maker::missesSomewhere() const {
    const Piece& piece = pieces_.front();
    const auto& [first, second] = piece.unknown;
    const auto spanOf = [&](const Unknown& unknown) {
        return problem_.box.vectors[unknown.vector].magnitude;
    };
    const long double room = problem_.slack;
    if (piece.rule == Rule::lines) {
        const double between = second.sector.middle() - first.sector.middle();
        const double reach = (first.sector.width() + second.sector.width()) / 2;
        return std::fabs(std::remainder(between, std::numbers::pi)) < reach;
    }
    if (piece.rule == Rule::circles) {
        Piece whole;
        whole.unknown[0] = first;
        whole.unknown[0].sector = sectorOf(0, kNever, 0, 2 * std::numbers::pi);
        const Extent gap = extentOf({whole}, 0);
        const Span a = spanOf(first), b = spanOf(second);
        return gap.greatest > a.least + b.least + room || gap.least < a.greatest - b.least - room ||
               gap.least < b.greatest - a.least - room;
    }
    if (piece.rule == Rule::circle) {
        const std::size_t circle = first.isLine ? 1 : 0;
        const long double radius = spanOf(piece.unknown[circle]).least;
        return extentOf(feetOf(piece), circle).greatest > radius + room;
    }
    return false;
}

// Line and circle made to line and foot, both ways along the line and to both sides of it.
std::vector<Piece> Maker::feetOf(const Piece& piece) const {
    std::vector<Piece> feet;
    const std::size_t line = piece.unknown[0].isLine ? 0 : 1;
    for (const bool flip : {false, true}) {
        for (const int side : {0, 1}) {
            Piece foot = piece;
            foot.rule = Rule::foot;
            foot.root = side;
            const double quarter = (side == 0 ? 1 : -1) * std::numbers::pi / 2;
            foot.relation = {false, quarter, quarter};
            foot.unknown[1 - line].sector = sectorOf(0, kNever, 0, 2 * std::numbers::pi);
            Unknown& own = foot.unknown[line];
            own.flipped = flip;
            own.sector = sectorOf(problem_.box.vectors[own.vector], problem_.turnedOf(own.vector, flip));
            own.sector.least = 0;
            own.sector.greatest = kNever;
            feet.push_back(foot);
        }
    }
    return feet;
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
        if (hasRange(sketch, solved)) {
            ranges.push_back(Maker(sketch, solved, i, effort).make());
        }
    }
    return ranges;
}

} // namespace tailpoint::tolerance
