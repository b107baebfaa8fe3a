// SPDX-License-Identifier: MIT
#include "core/solve/tolerance_uncertainty.h"

#include "core/solve/tolerance_problem.h"
#include "core/solve/tolerance_sensitivity.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace tailpoint::tolerance {
namespace {

enum class Kind { magnitude, direction, x, y };
constexpr std::array kKinds{Kind::magnitude, Kind::direction, Kind::x, Kind::y};

/// Bits of our own, so that the draws are the same everywhere.
/// Source: S. Vigna, splitmix64 (public domain), from memory.
class Draws {
public:
    /// 0 <= part < 1.
    double part() {
        std::uint64_t z = state_ += 0x9e3779b97f4a7c15u;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
        return static_cast<double>((z ^ (z >> 31)) >> 11) * 0x1p-53;
    }
    /// Standard normal. Source: G. Box, M. Muller, Ann. Math. Statist. 29 (1958).
    double normal() {
        const double radius = std::sqrt(-2 * std::log(1 - part()));
        return radius * std::cos(2 * std::numbers::pi * part());
    }

private:
    std::uint64_t state_ = 20'080'901;
};

double of(const Change& change, Kind kind) {
    switch (kind) {
    case Kind::magnitude:
        return change.magnitude;
    case Kind::direction:
        return change.direction;
    case Kind::x:
        return change.x;
    case Kind::y:
        break;
    }
    return change.y;
}

/// Half of an input's interval, and how far above and below its value the ends lie; sheet's unit.
struct Halfwidth {
    int index = kSumIndex;
    bool isDirection = false;
    double half = 0, above = 0, below = 0;
};

std::vector<Halfwidth> halfwidthsOf(const Sketch& sketch) {
    std::vector<Halfwidth> all;
    const auto add = [&](const Force& force, int index) {
        if (force.magnitude.value && force.magnitude.tolerance) {
            const Margins margins = marginsOf(force.magnitude);
            const double below = std::fmin(margins.minus, *force.magnitude.value);
            all.push_back({index, false, (margins.plus + below) / 2, margins.plus, below});
        }
        if (isGiven(force.direction) && force.direction.tolerance) {
            const Margins margins = marginsOf(force.direction, sketch);
            all.push_back({index, true, (margins.plus + margins.minus) / 2, margins.plus, margins.minus});
        }
    };
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        add(sketch.forces[i], static_cast<int>(i));
    }
    add(sketch.sum, kSumIndex);
    return all;
}

/// Running mean and spread. Source: B. Welford, Technometrics 4 (1962).
struct Moments {
    double count = 0, mean = 0, squares = 0;
    void add(double value) {
        count += 1;
        const double off = value - mean;
        mean += off / count;
        squares += off * (value - mean);
    }
    double deviation() const { return count < 2 ? 0 : std::sqrt(squares / (count - 1)); }
};

class UncertaintyMaker {
public:
    UncertaintyMaker(const Sketch& sketch, const Solved& solved, std::size_t answer, const AnswerRange& range,
                     const UncertaintyAsked& asked)
        : sketch_(sketch), solution_(solved.solutions[answer]), range_(range), asked_(asked),
          widths_(halfwidthsOf(sketch)), slopes_(sensitivityOf(sketch, solved, answer)),
          problem_(problemOf(sketch, solved)), pieces_(piecesOf(problem_, sketch, solved, answer)) {}

    std::vector<VectorUncertainty> make();

private:
    double spreadOf(double half) const {
        return asked_.spread == Spread::normal ? half / asked_.k : half / std::numbers::sqrt3;
    }
    Uncertain firstOrder(std::size_t vector, Kind kind) const;
    bool isLikeRange(const VectorRange& own, std::size_t vector, Kind kind) const;
    std::array<double, 2> linearEnds(std::size_t vector, Kind kind) const;
    VectorUncertainty firstOrder(const VectorRange& own, std::size_t vector) const;
    void draw(std::vector<VectorUncertainty>& all);
    void drawOnce(Draws& draws);
    bool isLikeDraws(std::vector<VectorUncertainty>& all, double part);
    void enter(const Tips& tips, const Piece& piece, const Point& point);
    Point drawn(Draws& draws) const;

    const Sketch& sketch_;
    const Solution& solution_;
    const AnswerRange& range_;
    UncertaintyAsked asked_;
    std::vector<Halfwidth> widths_;
    Sensitivity slopes_;
    Problem problem_;
    std::vector<Piece> pieces_;
    std::vector<std::array<Moments, 4>> moments_;
};

const SolvedForce& vectorOf(const Solution& solution, std::size_t vector) {
    return vector < solution.forces.size() ? solution.forces[vector] : solution.sum;
}

const InputSlope* slopeBy(const std::vector<InputSlope>& slopes, const Halfwidth& width) {
    const auto found = std::find_if(slopes.begin(), slopes.end(), [&](const InputSlope& slope) {
        return slope.index == width.index && slope.isDirection == width.isDirection;
    });
    return found == slopes.end() ? nullptr : &*found;
}

Uncertain UncertaintyMaker::firstOrder(std::size_t vector, Kind kind) const {
    Uncertain made;
    if (!slopes_) {
        made.withheld = Withheld::noDerivative;
        return made;
    }
    double variance = 0;
    for (const Halfwidth& width : widths_) {
        if (const InputSlope* slope = slopeBy(*slopes_, width)) {
            const double part = of(slope->vectors[vector], kind) * spreadOf(width.half);
            variance += part * part;
            made.shares.push_back({width.index, width.isDirection, part * part});
        }
    }
    made.standard = std::sqrt(variance);
    for (Share& share : made.shares) {
        share.part = variance > 0 ? share.part / variance : 0;
    }
    std::stable_sort(made.shares.begin(), made.shares.end(),
                     [](const Share& a, const Share& b) { return a.part > b.part; });
    std::erase_if(made.shares, [](const Share& share) { return share.part == 0; });
    return made;
}

// How far first order lets the quantity go below and above.
std::array<double, 2> UncertaintyMaker::linearEnds(std::size_t vector, Kind kind) const {
    double below = 0, above = 0;
    for (const Halfwidth& width : widths_) {
        if (const InputSlope* slope = slopeBy(*slopes_, width)) {
            const double rate = of(slope->vectors[vector], kind);
            above += rate > 0 ? rate * width.above : -rate * width.below;
            below += rate > 0 ? rate * width.below : -rate * width.above;
        }
    }
    return {below, above};
}

bool UncertaintyMaker::isLikeRange(const VectorRange& own, std::size_t vector, Kind kind) const {
    constexpr double kAlike = 0.25;
    const SolvedForce& solved = vectorOf(solution_, vector);
    const auto [below, above] = linearEnds(vector, kind);
    const double room = kAlike * (below + above) / 2;
    if (kind == Kind::direction) {
        if (own.direction.any || !solved.direction) {
            return false;
        }
        const double turn = turnIn(sketch_.angleUnit);
        const double up = own.direction.to - own.direction.from;
        const double down = *solved.direction - own.direction.from;
        const double exactBelow = down - std::floor(down / turn + 1e-12) * turn;
        return std::fabs(exactBelow - below) <= room && std::fabs(up - exactBelow - above) <= room;
    }
    const Range& range = kind == Kind::magnitude ? own.magnitude : kind == Kind::x ? own.x : own.y;
    const double value = kind == Kind::magnitude ? solved.magnitude
                         : kind == Kind::x       ? solved.vector.x()
                                                 : solved.vector.y();
    return range.least && range.greatest && std::fabs(value - *range.least - below) <= room &&
           std::fabs(*range.greatest - value - above) <= room;
}

Point UncertaintyMaker::drawn(Draws& draws) const {
    Point point;
    for (const Input& input : problem_.inputs) {
        const long double middle = (input.least + input.greatest) / 2,
                          half = (input.greatest - input.least) / 2;
        const long double off =
            asked_.spread == Spread::normal ? draws.normal() / asked_.k : 2 * draws.part() - 1;
        const long double value = middle + off * half;
        point.push_back(input.isDirection ? value : std::fmax(0.0L, value));
    }
    return point;
}

void UncertaintyMaker::enter(const Tips& tips, const Piece& piece, const Point& point) {
    for (std::size_t i = 0; i < (piece.hasSecond ? 2u : 1u); ++i) {
        const std::size_t vector = piece.unknown[i].vector;
        const long double sign = problem_.turnedOf(vector) == Turned::yes ? -1 : 1;
        const kernel::Vec unit = sign * tips[i].unit;
        const bool isOwn = problem_.box.vectors[vector].magnitudeGiven;
        const long double magnitude =
            std::ldexp(isOwn ? problem_.magnitudeAt(point, vector) : tips[i].magnitude, problem_.exponent);
        const SolvedForce& solved = vectorOf(solution_, vector);
        const kernel::Vec own{static_cast<long double>(solved.unit.x()),
                              static_cast<long double>(solved.unit.y())};
        const double off = static_cast<double>(std::atan2(kernel::cross(own, unit), kernel::dot(own, unit)));
        std::array<Moments, 4>& moments = moments_[vector];
        moments[0].add(static_cast<double>(magnitude));
        moments[1].add(fromRadians(off, sketch_.angleUnit));
        moments[2].add(static_cast<double>(magnitude * unit.x));
        moments[3].add(static_cast<double>(magnitude * unit.y));
    }
}

void UncertaintyMaker::drawOnce(Draws& draws) {
    const Point point = drawn(draws);
    for (const Piece& piece : pieces_) {
        if (const std::optional<Tips> tips = tipsAt(problem_, piece, point)) {
            enter(*tips, piece, point);
            return;
        }
    }
}

std::optional<Uncertain>& quantityOf(VectorUncertainty& vector, Kind kind) {
    switch (kind) {
    case Kind::magnitude:
        return vector.magnitude;
    case Kind::direction:
        return vector.direction;
    case Kind::x:
        return vector.x;
    case Kind::y:
        break;
    }
    return vector.y;
}

// All that is told so far, whether within `part` of first order's own.
bool UncertaintyMaker::isLikeDraws(std::vector<VectorUncertainty>& all, double part) {
    bool alike = true;
    for (VectorUncertainty& vector : all) {
        const std::size_t at =
            vector.index == kSumIndex ? solution_.forces.size() : static_cast<std::size_t>(vector.index);
        for (const Kind kind : kKinds) {
            if (auto& one = quantityOf(vector, kind); one && one->withheld == Withheld::no) {
                one->drawn = moments_[at][static_cast<std::size_t>(kind)].deviation();
                alike = alike && std::fabs(one->drawn - one->standard) <= part * one->standard;
            }
        }
    }
    return alike;
}

// No more than a fifth of them where by then all are alike beyond doubt.
void UncertaintyMaker::draw(std::vector<VectorUncertainty>& all) {
    constexpr double kAlike = 0.1;
    Draws draws;
    moments_.resize(problem_.box.vectors.size());
    for (int i = 0; i < asked_.draws; ++i) {
        if (i > 0 && i % 20'000 == 0 && isLikeDraws(all, kAlike / 2)) {
            return;
        }
        drawOnce(draws);
    }
    isLikeDraws(all, kAlike);
    for (VectorUncertainty& vector : all) {
        for (const Kind kind : kKinds) {
            if (auto& one = quantityOf(vector, kind);
                one && one->withheld == Withheld::no &&
                std::fabs(one->drawn - one->standard) > kAlike * one->standard) {
                one->withheld = Withheld::unlikeDraws;
            }
        }
    }
}

VectorUncertainty UncertaintyMaker::firstOrder(const VectorRange& own, std::size_t vector) const {
    VectorUncertainty made;
    made.index = own.index;
    for (const Kind kind : kKinds) {
        if ((kind == Kind::magnitude && !own.magnitudeFound) ||
            (kind == Kind::direction && !own.directionFound)) {
            continue;
        }
        Uncertain uncertain = firstOrder(vector, kind);
        if (uncertain.withheld == Withheld::no) {
            uncertain.withheld = !range_.everywhere                ? Withheld::partWithout
                                 : !isLikeRange(own, vector, kind) ? Withheld::unlikeRange
                                                                   : Withheld::no;
        }
        quantityOf(made, kind) = std::move(uncertain);
    }
    return made;
}

std::vector<VectorUncertainty> UncertaintyMaker::make() {
    std::vector<VectorUncertainty> all;
    if (widths_.empty() || pieces_.empty()) {
        return all;
    }
    bool anyTold = false;
    for (std::size_t i = 0; i < range_.vectors.size(); ++i) {
        const VectorRange& own = range_.vectors[i];
        if (!own.magnitudeFound && !own.directionFound) {
            continue;
        }
        all.push_back(firstOrder(own, i));
        for (const Kind kind : kKinds) {
            const auto& one = quantityOf(all.back(), kind);
            anyTold = anyTold || (one && one->withheld == Withheld::no);
        }
    }
    if (anyTold && asked_.draws > 0) {
        draw(all);
    }
    return all;
}

} // namespace

std::vector<VectorUncertainty> uncertaintyOf(const Sketch& sketch, const Solved& solved, std::size_t answer,
                                             const AnswerRange& range, const UncertaintyAsked& asked) {
    return UncertaintyMaker(sketch, solved, answer, range, asked).make();
}

Uncertainties uncertaintiesOf(const Sketch& sketch, const Solved& solved, const Ranges& ranges,
                              const UncertaintyAsked& asked) {
    Uncertainties all;
    for (std::size_t answer = 0; answer < ranges.size(); ++answer) {
        all.push_back(uncertaintyOf(sketch, solved, answer, ranges[answer], asked));
    }
    return all;
}

} // namespace tailpoint::tolerance
