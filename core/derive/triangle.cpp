// SPDX-License-Identifier: MIT
// The families by the force triangle: laws of cosines and of sines, a direction turned from a known one.
#include "core/derive/writer.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::deriving {

namespace {

constexpr double kFlat = 1e-12; ///< sine of an angle below which a triangle has no height

struct Triangle {
    Writer& w;
    const Reduction& r;

    VectorId side(std::size_t i) const { return r.side[i]; }
    /// The angle opposite to side i, common to both answers or this one's own.
    QuantityId common(std::size_t i) const { return {What::opposite, side(i)}; }
    QuantityId own(std::size_t i) const { return w.own(What::opposite, side(i)); }

    void fromDirections(const QuantityId& angle, std::size_t i) const {
        const auto [a, b] = Reduction::others(i);
        w.tails(angle, side(a), side(b), !r.isOwnAngle(a, b));
    }
    /// Between the tails of two sides: the angle opposite to the third, or its supplement.
    Formula betweenTails(std::size_t a, std::size_t b, const QuantityId& opposite) const {
        return r.isOwnAngle(a, b) ? w.of(opposite) : total({{w.half(), 1}, {w.of(opposite), -1}});
    }
    /// `target` turned from `base`; the direction of the third side tells which way.
    void turn(std::size_t target, std::size_t base, const QuantityId& angle) const {
        const std::size_t third = 3 - target - base;
        w.turn(w.wayId(side(target)),
               {side(base), betweenTails(target, base, angle), side(third), -r.sign(third) * r.sign(target)});
    }
};

/// Radians, in the answer that is written.
double opposite(const Writer& w, const Reduction& r, std::size_t i) {
    const auto [a, b] = Reduction::others(i);
    const Eigen::Vector2d second = w.vector(r.side[b]);
    return std::abs(
        signedAngle(w.vector(r.side[a]), r.isOwnAngle(a, b) ? second : Eigen::Vector2d(-second)).value_or(0));
}

bool isFlat(const Writer& w, const Reduction& r) {
    for (std::size_t i = 0; i < 3; ++i)
        if (w.length(r.side[i]) == 0 || std::sin(opposite(w, r, i)) < kFlat)
            return true;
    return false;
}

bool areEqual(const Writer& w, VectorId a, VectorId b) {
    return w.length(a) == w.length(b) && a != kKnownVector && b != kKnownVector;
}

/// The known side at which the triangle is begun: as asked, else the greater.
std::size_t begunAt(const Writer& w, const Reduction& r, std::size_t sought) {
    const auto [a, b] = Reduction::others(sought);
    if (r.side[a] == w.chain.route.begun || r.side[b] == w.chain.route.begun)
        return r.side[a] == w.chain.route.begun ? a : b;
    return w.length(r.side[a]) >= w.length(r.side[b]) ? a : b;
}

/// Two known sides and the angle between them: the third whole.
void writeOneVector(const Triangle& t, std::size_t sought) {
    Writer& w = t.w;
    const std::size_t base = begunAt(w, t.r, sought), other = 3 - sought - base;
    const VectorId b = t.side(base), o = t.side(other), target = t.side(sought);
    const bool resultant = target == kSumVector, equal = areEqual(w, b, o);
    const QuantityId phi{What::between, t.side(0), t.side(1)};
    if (resultant) {
        w.tails(phi, t.side(0), t.side(1), false);
        w.supplement(t.common(sought), phi);
    } else {
        t.fromDirections(t.common(sought), sought);
    }
    const auto [p, q] = Reduction::others(sought); // a resultant is told in the order of its forces
    w.cosinesForSide(w.sizeId(target), resultant ? t.side(p) : b, resultant ? t.side(q) : o,
                     t.common(sought));
    if (!equal)
        w.sinesForAngle(t.common(other), o, target, t.common(sought), b);
    else if (resultant)
        w.line(t.common(other), LineKind::halving, over(w.of(phi), count(2)));
    else
        w.line(t.common(other), LineKind::halving,
               over(total({{w.half(), 1}, {w.of(t.common(sought)), -1}}), count(2)));
    t.turn(sought, base, t.common(other));
    if (t.r.loop) // for Lami's form
        for (std::size_t i = 0; i < 3; ++i) {
            const auto [one, two] = Reduction::others(i);
            w.tails({What::between, t.side(one), t.side(two)}, t.side(one), t.side(two), false);
        }
    w.check();
}

/// Two magnitudes along known lines: the law of sines, or Lami's form of it.
void writeMagnitudes(const Triangle& t) {
    Writer& w = t.w;
    const std::size_t k = t.r.knownSide();
    const auto [a, b] = Reduction::others(k);
    std::array<QuantityId, 3> angles;
    for (std::size_t i = 0; i < 3; ++i) {
        const auto [one, two] = Reduction::others(i);
        angles[i] = t.r.loop ? QuantityId{What::between, t.side(one), t.side(two)} : t.common(i);
    }
    if (t.r.loop) {
        for (std::size_t i = 0; i < 3; ++i)
            w.tails(angles[i], angles[i].of, angles[i].with, false);
    } else {
        t.fromDirections(angles[k], k);
        t.fromDirections(angles[a], a);
        w.third(angles[b], angles[k], angles[a]);
    }
    for (const std::size_t i : t.r.sought)
        w.sinesForSide(w.sizeId(t.side(i)), angles[i], t.side(k), angles[k]);
    w.check();
}

/// A magnitude on a line and a direction of known magnitude: the ambiguous case.
struct Ambiguous {
    std::size_t k, u, v; ///< known, on the line, on the circle
};

Ambiguous ambiguousOf(const Writer& w, const Reduction& r) {
    const bool firstOnLine = w.solvedVector(r.side[r.sought[0]]).magnitudeFound;
    return {r.knownSide(), r.sought[firstOnLine ? 0U : 1U], r.sought[firstOnLine ? 1U : 0U]};
}

/// Short of the point of the line that is nearest to the circle's centre: there the angle opposite to the
/// known side is obtuse. Told by lengths, for a vector without length has no angles.
bool endsBeforeTheFoot(const Triangle& t, const Ambiguous& q) {
    const SolvedForce& u = t.w.solvedVector(t.side(q.u));
    const Eigen::Vector2d known = t.w.vector(t.side(q.k));
    const double foot = -t.r.sign(q.k) * t.r.sign(q.u) * known.dot(u.unit);
    return !t.w.solved.tangent && u.magnitude < foot;
}

/// Third angle, magnitude and direction of the answer that is written.
void writeAnswer(const Triangle& t, const Ambiguous& q, const QuantityId& acute, bool otherSense) {
    Writer& w = t.w;
    QuantityId angle = t.common(q.v);
    if (otherSense) {
        w.turnRound(t.side(q.u));
        angle = t.own(q.v);
        w.supplement(angle, t.common(q.v));
    }
    w.stand({t.side(q.u), w.own(What::magnitude, t.side(q.u)), w.wayId(t.side(q.u))});
    w.stand({t.side(q.v), w.sizeId(t.side(q.v)), w.own(What::direction, t.side(q.v))});
    const QuantityId atK = t.own(q.k), atU = t.own(q.u);
    const bool isObtuse = endsBeforeTheFoot(t, q);
    w.line(atK, LineKind::inverse, isObtuse ? total({{w.half(), 1}, {w.of(acute), -1}}) : w.of(acute));
    w.third(atU, angle, atK);
    w.sinesForSide(w.sizeId(t.side(q.u)), atU, t.side(q.v), angle);
    t.turn(q.v, q.k, atU);
    w.check();
}

void writeAmbiguous(const Triangle& t) {
    Writer& w = t.w;
    const Ambiguous q = ambiguousOf(w, t.r);
    const std::size_t base = w.solution;
    const QuantityId angle = t.common(q.v), distance{What::distance, {}, {}, 0, 0},
                     acute{What::acute, t.side(q.k), {}, 0, kOfInverseSine};
    t.fromDirections(angle, q.v);
    w.line(distance, LineKind::sinesSide, product(w.size(t.side(q.k)), apply("sin", w.of(angle))));
    const QuantityId ratio{What::ratio, t.side(q.k)};
    w.sineRatio(ratio, t.side(q.k), t.side(q.v), angle);
    if (w.solved.tangent) // the sine is 1, and what rounding makes of it is no matter
        w.line(acute, LineKind::inverse, w.quarter());
    else
        w.line(acute, LineKind::inverse, apply("arcsin", w.of(ratio)));
    const std::vector<Standing> drawn = w.standings;
    const bool baseTurned = w.solvedVector(t.side(q.u)).turned;
    const bool both = w.solved.solutions.size() > 1;
    for (w.solution = 0; w.solution < w.solved.solutions.size(); ++w.solution) {
        w.answer = both ? static_cast<std::uint8_t>(w.solution + 1) : std::uint8_t{0};
        w.standings = drawn;
        writeAnswer(t, q, acute, w.solvedVector(t.side(q.u)).turned != baseTurned);
    }
    w.solution = base;
}

/// Two directions of known magnitudes: three sides, the greatest angle first.
void writeTwoDirections(const Triangle& t) {
    Writer& w = t.w;
    std::array<std::size_t, 3> bySize{0, 1, 2};
    std::sort(bySize.begin(), bySize.end(),
              [&](std::size_t a, std::size_t b) { return w.length(t.side(a)) > w.length(t.side(b)); });
    const auto [great, middle, small] = bySize;
    const auto [a, b] = Reduction::others(great);
    w.cosinesForAngle(t.common(great), t.side(a), t.side(b), t.side(great));
    w.sinesForAngle(t.common(middle), t.side(middle), t.side(great), t.common(great), t.side(small));
    w.third(t.common(small), t.common(great), t.common(middle));
    const std::size_t k = t.r.knownSide();
    const bool both = w.solved.solutions.size() > 1;
    const std::vector<Standing> before = w.standings;
    for (w.solution = 0; w.solution < w.solved.solutions.size(); ++w.solution) {
        w.answer = both ? static_cast<std::uint8_t>(w.solution + 1) : std::uint8_t{0};
        w.standings = before;
        for (const std::size_t target : t.r.sought) {
            const VectorId vector = t.side(target);
            w.stand({vector, w.sizeId(vector), w.own(What::direction, vector)});
            const double turned = signedAngle(w.vector(t.side(k)), w.vector(vector)).value_or(0);
            w.turn(w.wayId(vector), {t.side(k), t.betweenTails(target, k, t.common(3 - target - k)), kNobody,
                                     (turned > 0 ? 1 : -1) * w.sense()});
        }
        w.check();
    }
    w.solution = 0;
}

/// The smallest is a leg at right angles to the line; the known side is the hypotenuse.
void writeSmallest(const Triangle& t) {
    Writer& w = t.w;
    const std::size_t k = t.r.knownSide();
    const auto [a, b] = Reduction::others(k);
    const std::size_t leg = w.things.name(t.side(a)) == *w.sketch.smallest ? a : b, line = a + b - leg;
    const QuantityId angle = t.common(leg);
    t.fromDirections(angle, leg);
    w.line(w.sizeId(t.side(leg)), LineKind::sinesSide, product(w.size(t.side(k)), apply("sin", w.of(angle))));
    w.line(w.sizeId(t.side(line)), LineKind::sinesSide,
           product(w.size(t.side(k)), apply("cos", w.of(angle))));
    w.turn(w.wayId(t.side(leg)), {t.side(line), w.quarter(), t.side(k), -t.r.sign(k) * t.r.sign(leg)});
    w.check();
}

/// Several known forces beside one that is missing are the component table's.
std::optional<Reduction> oneTriangle(const Writer& w) {
    auto reduction = reductionOf(w.sketch, w.solved);
    if (!reduction || reduction->sought.empty() || (reduction->sought.size() == 1 && reduction->addsUp()))
        return std::nullopt;
    return reduction;
}

} // namespace

bool hasTriangle(const Writer& w) {
    const auto reduction = oneTriangle(w);
    return reduction && !isFlat(w, *reduction);
}

void writeTwoMagnitudes(Writer& w, const Reduction& reduction) {
    writeMagnitudes({w, reduction});
}

void writeByTriangle(Writer& w) {
    const auto reduction = oneTriangle(w);
    if (!reduction)
        return;
    if (isFlat(w, *reduction))
        return writeFlat(w, *reduction);
    const Triangle t{w, *reduction};
    if (reduction->addsUp())
        writeKnown(w, *reduction);
    writeSenses(w);
    switch (w.solved.family) {
    case Family::closePolygon:
        return writeOneVector(t, reduction->sought[0]);
    case Family::twoMagnitudes:
        return writeMagnitudes(t);
    case Family::magnitudeAndDirection:
        return writeAmbiguous(t);
    case Family::twoDirections:
        return writeTwoDirections(t);
    case Family::smallestForce:
    case Family::smallestSum:
        return writeSmallest(t);
    case Family::oneUnknown:
    case Family::check:
    case Family::unclear:
        return;
    }
}

} // namespace tailpoint::deriving
