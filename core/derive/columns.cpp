// SPDX-License-Identifier: MIT
// Components along x and y, and what they lead to.
#include "core/derive/writer.h"

#include "core/formula/turns.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"

#include <cmath>

namespace tailpoint {

bool countsFromNorth(const Sketch& sketch) {
    return sketch.reference.sense == Sense::cw &&
           normalized(sketch.reference.axisDegrees, AngleUnit::deg) == 90;
}

} // namespace tailpoint

namespace tailpoint::deriving {

namespace {

constexpr double kNoise = 1e-13; ///< of the vector: a component below it is a true zero that was rounded

Formula plainNumber(double value) {
    return number(value, shortest(value));
}

/// An angle of the sheet's unit with all its digits: what is given is not rounded before a line takes it.
Formula inFull(const Writer& w, double angle) {
    return number(angle, shortest(angle), halfTurn(w.chain.unit).sub);
}

/// The same as the sheet shows it, where that loses nothing: "270.0°".
Formula typedAngle(const Writer& w, double angle) {
    Formula shown = numberWithUnit(angle, shownAngle(angle, w.sketch, Origin::typed));
    return shownValue(shown) == angle ? shown : inFull(w, angle);
}

bool isNoise(double component, const Eigen::Vector2d& vector) {
    return std::abs(component) <= kNoise * std::hypot(vector.x(), vector.y());
}

/// Brought into (-half turn, half turn].
std::vector<Case> withinATurn(const Writer& w, Formula angle) {
    Formula less = angle, more = angle;
    if (angle.kind != FormulaKind::sum)
        less = more = sum(angle);
    less.parts.push_back(negative(w.full()));
    more.parts.push_back(w.full());
    std::vector<Case> cases;
    cases.push_back({{above(angle, w.seam())}, std::move(less)});
    cases.push_back({{related(angle, Relation::lessOrEqual, negative(w.half()))}, std::move(more)});
    cases.push_back({{}, std::move(angle)});
    return cases;
}

/// Run and rise by Pythagoras: 13 where it comes out so short, else √(2² + 3²).
Formula lengthOf(const SlopeForm& slope) {
    constexpr std::size_t kShort = 7;
    const long double run = std::abs(slope.run), rise = std::abs(slope.rise),
                      square = run * run + rise * rise;
    const auto length = static_cast<double>(std::sqrt(square));
    const long double again = static_cast<long double>(length) * length;
    if (shortest(length).size() <= kShort && std::abs(again - square) <= 1e-15L * square)
        return plainNumber(length);
    return root(sum(power(plainNumber(std::abs(slope.run)), 2), power(plainNumber(std::abs(slope.rise)), 2)));
}

/// The angle from +x, counter-clockwise, of a slope: an inverse tangent and the quadrant.
Formula fromSlope(const Writer& w, const SlopeForm& slope) {
    if (slope.run == 0)
        return signedBy(slope.rise > 0 ? 1 : -1, w.quarter());
    if (slope.rise == 0)
        return slope.run > 0 ? typedAngle(w, 0) : w.half();
    Formula acute =
        apply("arctan", over(plainNumber(std::abs(slope.rise)), plainNumber(std::abs(slope.run))));
    if (slope.run > 0)
        return signedBy(slope.rise > 0 ? 1 : -1, std::move(acute));
    return slope.rise > 0 ? total({{w.half(), 1}, {std::move(acute), -1}})
                          : total({{std::move(acute), 1}, {w.half(), -1}});
}

/// The same of a bearing: so far from north or south, towards east or west.
Formula fromBearing(const Writer& w, const BearingForm& bearing) {
    const double inUnit = fromRadians(toRadians(bearing.degrees, AngleUnit::deg), w.chain.unit);
    Formula angle = inFull(w, w.chain.unit == AngleUnit::deg ? bearing.degrees : inUnit);
    const bool north = bearing.from == 'N' || bearing.degrees == 90, east = bearing.toward == 'E';
    if (north)
        return total({{w.quarter(), 1}, {std::move(angle), east ? -1 : 1}});
    return east ? total({{std::move(angle), 1}, {w.quarter(), -1}})
                : total({{w.quarter(), -1}, {std::move(angle), -1}});
}

/// From north, clockwise.
Formula fromNorth(const Writer& w, const BearingForm& bearing) {
    const double inUnit = fromRadians(toRadians(bearing.degrees, AngleUnit::deg), w.chain.unit);
    Formula angle = inFull(w, w.chain.unit == AngleUnit::deg ? bearing.degrees : inUnit);
    const bool north = bearing.from == 'N' || bearing.degrees == 90, east = bearing.toward == 'E';
    if (north)
        return signedBy(east || bearing.degrees == 0 ? 1 : -1, std::move(angle));
    return east || bearing.degrees == 0 ? total({{w.half(), 1}, {std::move(angle), -1}})
                                        : total({{std::move(angle), 1}, {w.half(), -1}});
}

} // namespace

double Writer::axisInUnit() const {
    const double typed = sketch.reference.axisDegrees;
    const double degrees = std::abs(typed) <= 360 ? typed : normalized(typed, AngleUnit::deg);
    return degrees / 360 * turnIn(chain.unit);
}

Formula Writer::axis() const {
    return typedAngle(*this, axisInUnit());
}

Formula Writer::turnedBy(const Formula& angle, bool toX) const {
    if (axisInUnit() == 0)
        return signedBy(sense(), angle);
    if (toX || sense() < 0) // θ = axis − ψ on a sheet that counts clockwise
        return total({{axis(), 1}, {angle, toX ? sense() : -1}});
    return total({{angle, 1}, {axis(), -1}});
}

/// A direction given otherwise than by an angle within half a turn becomes one.
void Writer::writeGivenWay(VectorId vector) {
    if (vector.kind != VectorId::Kind::force && vector != kSumVector)
        return;
    const Force& given = vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
    const auto& form = given.direction.form;
    if (const auto* angle = std::get_if<AngleForm>(&form)) {
        const double within = normalized(angle->value, chain.unit);
        const double turns = std::round((angle->value - within) / turnIn(chain.unit));
        if (angle->value == within)
            return;
        Formula whole =
            std::abs(turns) == 1 ? full() : product(count(static_cast<int>(std::abs(turns))), full());
        line(directionId(vector), LineKind::turn,
             total({{typedAngle(*this, angle->value), 1}, {std::move(whole), turns > 0 ? -1 : 1}}));
        return;
    }
    const auto* slope = std::get_if<SlopeForm>(&form);
    const auto* bearing = std::get_if<BearingForm>(&form);
    if (!slope && !bearing)
        return;
    if (bearing && countsFromNorth(sketch))
        return void(line(directionId(vector), LineKind::referral, fromNorth(*this, *bearing)));
    const QuantityId target = isPlain() ? directionId(vector) : QuantityId{What::fromX, vector};
    line(target, slope ? LineKind::arctangent : LineKind::referral,
         slope ? fromSlope(*this, *slope) : fromBearing(*this, *bearing));
    if (!isPlain())
        referred(vector);
}

/// θ = ψ − axis, or axis − ψ on a sheet that counts clockwise.
void Writer::referred(VectorId vector) {
    QuantityId from = wayId(vector);
    from.what = What::fromX;
    line(wayId(vector), LineKind::referral, withinATurn(*this, turnedBy(of(from), false)));
}

Formula Writer::fromX(VectorId vector) {
    const Formula referredWay = way(vector);
    if (isPlain())
        return referredWay;
    QuantityId from = wayId(vector);
    from.what = What::fromX;
    if (!isWritten(from))
        line(from, LineKind::referral, turnedBy(referredWay, true));
    return of(from);
}

/// Given by a slope with a run and a rise, and acting that way: null where it is not.
const SlopeForm* Writer::slopeOf(VectorId vector) const {
    if ((vector.kind != VectorId::Kind::force && vector != kSumVector) ||
        wayId(vector) != directionId(vector))
        return nullptr;
    const Force& given = vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
    const auto* slope = std::get_if<SlopeForm>(&given.direction.form);
    return slope && slope->run != 0 && slope->rise != 0 ? slope : nullptr;
}

/// Along a slope by its exact ratio, which needs no angle.
Formula Writer::componentOf(VectorId vector, std::uint8_t part) {
    if (const SlopeForm* slope = slopeOf(vector)) {
        const double leg = part == kCosine ? slope->run : slope->rise;
        return signedBy(leg < 0 ? -1 : 1,
                        product(size(vector), over(plainNumber(std::abs(leg)), lengthOf(*slope))));
    }
    return product(size(vector), apply(part == kCosine ? "cos" : "sin", fromX(vector)));
}

Formula Writer::x(VectorId vector) {
    const Standing as = standing(vector);
    const QuantityId id{What::x, vector, {}, std::max(as.size.answer, as.way.answer), as.way.part};
    if (!isWritten(id))
        line(id, LineKind::component, componentOf(vector, kCosine));
    return of(id);
}

Formula Writer::y(VectorId vector) {
    const Standing as = standing(vector);
    const QuantityId id{What::y, vector, {}, std::max(as.size.answer, as.way.answer), as.way.part};
    if (!isWritten(id))
        line(id, LineKind::component, componentOf(vector, kSine));
    return of(id);
}

void Writer::columnSums(VectorId sumOfThem, const std::vector<Signed>& terms) {
    std::vector<std::pair<Formula, int>> xs, ys;
    for (const auto& [part, sign] : terms) {
        xs.emplace_back(x(part), sign);
        ys.emplace_back(y(part), sign);
    }
    line(own(What::x, sumOfThem), LineKind::columnSum, total(std::move(xs)));
    line(own(What::y, sumOfThem), LineKind::columnSum, total(std::move(ys)));
}

void Writer::pythagoras(VectorId vector) {
    const QuantityId square = own(What::square, vector);
    line(square, LineKind::pythagoras,
         sum(power(of(own(What::x, vector)), 2), power(of(own(What::y, vector)), 2)));
    line(sizeId(vector), LineKind::root, root(of(square)));
}

void Writer::wayFromComponents(VectorId vector) {
    const Eigen::Vector2d v = this->vector(vector);
    const Formula xs = of(own(What::x, vector)), ys = of(own(What::y, vector));
    QuantityId target = wayId(vector);
    if (!isPlain())
        target.what = What::fromX;
    std::vector<Case> cases;
    if (isNoise(v.x(), v)) {
        cases.push_back({{above(ys, zero())}, quarter()});
        cases.push_back({{}, negative(quarter())});
    } else if (isNoise(v.y(), v)) {
        cases.push_back({{above(xs, zero())}, typedAngle(*this, 0)});
        cases.push_back({{}, half()});
    } else {
        const QuantityId ratio = own(What::ratio, vector, kTangent), acute = own(What::acute, vector);
        line(ratio, LineKind::ratio, over(absolute(ys), absolute(xs)));
        line(acute, LineKind::arctangent, apply("arctan", of(ratio)));
        const Formula a = of(acute);
        const Formula upwards =
            related(ys, Relation::greaterOrEqual, zero()); // rounded by hand it may vanish
        cases.push_back({{above(xs, zero()), upwards}, a});
        cases.push_back({{above(xs, zero())}, negative(a)});
        cases.push_back({{upwards}, total({{half(), 1}, {a, -1}})});
        cases.push_back({{}, total({{a, 1}, {half(), -1}})});
    }
    line(target, LineKind::quadrant, std::move(cases));
    if (!isPlain())
        referred(vector);
}

void Writer::check() {
    std::array<std::vector<std::pair<Formula, int>>, 2> terms;
    const auto add = [&](VectorId vector, int sign) {
        if (solvedVector(vector).magnitude == 0 || !solvedVector(vector).direction)
            return;
        terms[0].emplace_back(componentOf(vector, kCosine), sign);
        terms[1].emplace_back(componentOf(vector, kSine), sign);
    };
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        add(forceVector(i), 1);
    add(kSumVector, -1);
    for (std::uint8_t axisIndex = 0; axisIndex < 2; ++axisIndex)
        if (!terms[axisIndex].empty())
            line(own(What::gap, kNobody, axisIndex), LineKind::check, total(std::move(terms[axisIndex])));
}

} // namespace tailpoint::deriving
