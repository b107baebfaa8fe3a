// SPDX-License-Identifier: MIT
// Questions whose vectors all lie on one line: components along it, each with its sign. And questions of one
// triangle that doesn't close: by how much it fails.
#include "core/derive/writer.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint::deriving {

namespace {

constexpr double kParallel = 1e-12; ///< sine of an angle below which two lines are one direction

double cross(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return a.x() * b.y() - a.y() * b.x();
}

struct Flat {
    Writer& w;
    const Reduction& r;
    std::size_t k = r.knownSide();

    VectorId side(std::size_t i) const { return r.side[i]; }
    /// What a side leaves to another: −s_i·s_j.
    int to(std::size_t i, std::size_t j) const { return -r.sign(i) * r.sign(j); }
    QuantityId along(std::size_t i) const { return w.own(What::along, side(i)); }
    QuantityId opposite(std::size_t i) const { return {What::opposite, side(i)}; }
    /// As given: of a line of action found in the other sense too.
    Eigen::Vector2d drawn(std::size_t i) const {
        const SolvedForce& found = w.solvedVector(side(i));
        return found.turned ? Eigen::Vector2d(-found.unit) : found.unit;
    }
    Eigen::Vector2d vector(std::size_t i) const { return w.vector(side(i)); }
    double length(std::size_t i) const { return w.length(side(i)); }

    /// The component along the axis of a vector that lies on it.
    void component(const QuantityId& subject, std::size_t i, bool against) const {
        w.line(subject, LineKind::component, signedBy(against ? -1 : 1, w.size(side(i))));
    }
    void fromDirections(const QuantityId& angle, std::size_t i) const {
        const auto [a, b] = Reduction::others(i);
        w.tails(angle, side(a), side(b), !r.isOwnAngle(a, b));
    }
    bool isOnLine(std::size_t i) const { return w.solvedVector(side(i)).magnitudeFound; }
};

/// `way`, or half a turn from it.
std::vector<Case> alongOrAgainst(const Writer& w, const Formula& way, bool against) {
    std::vector<Case> cases;
    if (against) {
        cases.push_back({{above(way, zero())}, total({{way, 1}, {w.half(), -1}})});
        cases.push_back({{}, total({{way, 1}, {w.half(), 1}})});
    } else {
        cases.push_back({{}, way});
    }
    return cases;
}

/// Two forces along one line: their components along it, positive in the sense of the greater.
void writeResultant(Writer& w) {
    const VectorId p = forceVector(0), q = forceVector(1);
    const VectorId great = w.length(p) >= w.length(q) ? p : q;
    std::vector<std::pair<Formula, int>> terms;
    for (const VectorId v : {p, q}) {
        const bool against = w.vector(v).dot(w.vector(great)) < 0;
        w.line({What::along, v}, LineKind::component, signedBy(against ? -1 : 1, w.size(v)));
        terms.emplace_back(w.of({What::along, v}), 1);
    }
    const QuantityId along{What::along, kSumVector};
    w.line(along, LineKind::columnSum, total(std::move(terms)));
    w.line(magnitudeId(kSumVector), LineKind::component, absolute(w.of(along)));
    if (!w.solvedVector(kSumVector).direction)
        return;
    const Formula way = w.way(great);
    std::vector<Case> cases;
    cases.push_back({{above(w.of(along), zero())}, way});
    for (Case& one : alongOrAgainst(w, way, true))
        cases.push_back(std::move(one));
    w.line(directionId(kSumVector), LineKind::turn, std::move(cases));
    w.check();
}

/// One of the two is zero: the other is the resultant.
void writeOtherUnchanged(Writer& w) {
    const VectorId rest = forceVector(w.length(forceVector(0)) > 0 ? 0 : 1);
    w.line(magnitudeId(kSumVector), LineKind::component, w.size(rest));
    if (w.solvedVector(kSumVector).direction)
        w.line(directionId(kSumVector), LineKind::turn, w.way(rest));
}

void writeFlatMagnitudes(const Flat& f) {
    if (f.length(f.k) > 0)
        return writeTwoMagnitudes(f.w, f.r);
    for (const std::size_t i : f.r.sought) // there is nothing of which they could be a part
        f.w.line(f.w.sizeId(f.side(i)), LineKind::component, f.w.size(f.side(f.k)));
}

/// The centre of the circle lies on the line, or what is known vanishes.
void writeMagnitudeAndDirection(const Flat& f) {
    Writer& w = f.w;
    const bool firstOnLine = f.isOnLine(f.r.sought[0]);
    const std::size_t u = f.r.sought[firstOnLine ? 0U : 1U], v = f.r.sought[firstOnLine ? 1U : 0U],
                      base = w.solution;
    const Eigen::Vector2d axis = f.drawn(u);
    const Formula way = w.way(f.side(u));
    writeSenses(w);
    const bool hasKnown = f.length(f.k) > 0, both = w.solved.solutions.size() > 1,
               isBaseTurned = w.solvedVector(f.side(u)).turned;
    const QuantityId known = f.along(f.k);
    if (hasKnown)
        f.component(known, f.k, f.vector(f.k).dot(axis) < 0);
    const std::vector<Standing> before = w.standings;
    for (w.solution = 0; w.solution < w.solved.solutions.size(); ++w.solution) {
        w.answer = both ? static_cast<std::uint8_t>(w.solution + 1) : std::uint8_t{0};
        w.standings = before;
        const SolvedForce& found = w.solvedVector(f.side(u));
        const bool against = f.vector(v).dot(axis) < 0;
        f.component(f.along(v), v, against);
        std::vector<std::pair<Formula, int>> terms{{w.of(f.along(v)), f.to(v, u)}};
        if (hasKnown)
            terms.insert(terms.begin(), {w.of(known), f.to(f.k, u)});
        w.line(f.along(u), LineKind::columnSum, total(std::move(terms)));
        if (found.turned != isBaseTurned)
            w.turnRound(f.side(u));
        w.stand({f.side(u), w.own(What::magnitude, f.side(u)), w.wayId(f.side(u))});
        w.stand({f.side(v), w.sizeId(f.side(v)), w.own(What::direction, f.side(v))});
        w.line(w.sizeId(f.side(u)), LineKind::component, absolute(w.of(f.along(u))));
        w.line(w.wayId(f.side(v)), LineKind::turn, alongOrAgainst(w, way, against));
        w.check();
    }
    w.solution = base;
}

/// The greatest of three sides is as long as the other two together.
void writeTwoDirections(const Flat& f) {
    Writer& w = f.w;
    const Eigen::Vector2d axis = f.vector(f.k);
    std::vector<std::pair<Formula, int>> terms;
    for (const std::size_t i : f.r.sought) {
        f.component(f.along(i), i, f.vector(i).dot(axis) < 0);
        terms.emplace_back(w.of(f.along(i)), f.to(i, f.k));
    }
    w.line(f.along(f.k), LineKind::columnSum, total(std::move(terms)));
    const Formula way = w.way(f.side(f.k));
    for (const std::size_t i : f.r.sought)
        w.line(w.wayId(f.side(i)), LineKind::turn, alongOrAgainst(w, way, f.vector(i).dot(axis) < 0));
    w.check();
}

/// The leg is smallest without the force, which acts with what is to be held or made up and not against it.
void writeSumWithout(const Flat& f, std::size_t leg, std::size_t line) {
    Writer& w = f.w;
    const QuantityId angle{What::between, f.side(f.k), f.side(line)};
    w.tails(angle, f.side(f.k), f.side(line), false);
    w.line(f.along(f.k), LineKind::component, product(w.size(f.side(f.k)), apply("cos", w.of(angle))));
    w.line(w.sizeId(f.side(line)), LineKind::elimination, zero());
    w.line(w.sizeId(f.side(leg)), LineKind::component, w.size(f.side(f.k)));
    w.line(w.wayId(f.side(leg)), LineKind::turn, alongOrAgainst(w, w.way(f.side(f.k)), f.to(f.k, leg) < 0));
    w.check();
}

/// What is known lies along the line, and nothing is left across it; or at right angles to it.
void writeSmallest(const Flat& f) {
    Writer& w = f.w;
    const auto [a, b] = Reduction::others(f.k);
    const std::size_t leg = w.things.name(f.side(a)) == *w.sketch.smallest ? a : b, line = a + b - leg;
    if (f.length(f.k) == 0) {
        for (const std::size_t i : f.r.sought)
            w.line(w.sizeId(f.side(i)), LineKind::component, w.size(f.side(f.k)));
        return;
    }
    const bool isAcross = std::abs(f.vector(f.k).normalized().dot(f.drawn(line))) < kParallel;
    if (f.length(line) == 0 && !isAcross)
        return writeSumWithout(f, leg, line);
    const QuantityId angle = f.opposite(leg);
    f.fromDirections(angle, leg);
    w.line(w.sizeId(f.side(leg)), LineKind::sinesSide,
           product(w.size(f.side(f.k)), apply("sin", w.of(angle))));
    w.line(w.sizeId(f.side(line)), LineKind::sinesSide,
           product(w.size(f.side(f.k)), apply("cos", w.of(angle))));
    if (w.solvedVector(f.side(leg)).direction)
        w.turn(w.wayId(f.side(leg)),
               {f.side(line), w.quarter(), f.side(f.k), -f.r.sign(f.k) * f.r.sign(leg)});
    w.check();
}

} // namespace

void writeFlat(Writer& w, const Reduction& reduction) {
    if (reduction.sought.size() == 1) {
        if (reduction.side[2] != kSumVector || reduction.sought[0] != 2)
            return;
        const bool areBoth = w.length(forceVector(0)) > 0 && w.length(forceVector(1)) > 0;
        return areBoth ? writeResultant(w) : writeOtherUnchanged(w);
    }
    const Flat f{w, reduction};
    if (reduction.addsUp())
        writeKnown(w, reduction);
    switch (w.solved.family) {
    case Family::twoMagnitudes:
        writeSenses(w);
        return writeFlatMagnitudes(f);
    case Family::magnitudeAndDirection:
        return writeMagnitudeAndDirection(f);
    case Family::twoDirections:
        return writeTwoDirections(f);
    case Family::smallestForce:
    case Family::smallestSum:
        writeSenses(w);
        return writeSmallest(f);
    default:
        return;
    }
}

namespace {

constexpr QuantityId kLack{What::gap, kNobody, {}, 0, kDifference};

/// A magnitude with its sign: components across the line of the other hold only this one and what is known.
void writeSigned(const Flat& f, std::size_t i, std::size_t other) {
    Writer& w = f.w;
    const Formula away = w.way(f.side(other));
    const auto towards = [&](std::size_t from) {
        return apply("sin", total({{away, 1}, {w.way(f.side(from)), -1}}));
    };
    w.line({What::along, f.side(i)}, LineKind::elimination,
           over(signedBy(f.to(f.k, i), product(w.size(f.side(f.k)), towards(f.k))), towards(i)));
}

void failLines(const Flat& f) {
    Writer& w = f.w;
    const std::size_t u = f.r.sought[0], v = f.r.sought[1];
    if (f.length(f.k) == 0)
        return;
    const Eigen::Vector2d axis = f.drawn(u);
    if (std::abs(cross(axis, f.drawn(v))) >= kParallel) {
        writeSigned(f, u, v);
        return writeSigned(f, v, u);
    }
    if (std::abs(cross(axis, f.vector(f.k))) < kParallel * f.length(f.k))
        return f.component({What::along, f.side(f.k)}, f.k, f.vector(f.k).dot(axis) < 0);
    const QuantityId angle{What::between, f.side(std::min(f.k, u)), f.side(std::max(f.k, u))};
    w.tails(angle, f.side(f.k), f.side(u), false);
    w.line({What::distance}, LineKind::sinesSide, product(w.size(f.side(f.k)), apply("sin", w.of(angle))));
    w.line({What::along, f.side(f.k)}, LineKind::component,
           product(w.size(f.side(f.k)), apply("cos", w.of(angle))));
}

/// The angle opposite to the vector on the circle, how far the line is from the circle's centre, and what the
/// circle lacks; where it reaches, the two points behind.
void failLineAndCircle(const Flat& f, std::size_t u, std::size_t v) {
    Writer& w = f.w;
    const VectorId known = f.side(f.k);
    const QuantityId distance{What::distance}, angle = f.opposite(v);
    f.fromDirections(angle, v);
    w.line(distance, LineKind::sinesSide, product(w.size(known), apply("sin", w.of(angle))));
    const double across = std::abs(cross(f.drawn(u), f.vector(f.k)));
    if (f.length(v) < across) {
        w.line(kLack, LineKind::elimination, sum(w.of(distance), negative(w.size(f.side(v)))));
        w.line({What::along, f.side(u)}, LineKind::component,
               product(w.size(known), apply("cos", w.of(angle))));
        return;
    }
    const QuantityId along{What::along, known}, square{What::square, {}, {}, 0, 1},
        chord{What::distance, {}, {}, 0, 1};
    const Formula turned = total({{w.way(known), 1}, {w.way(f.side(u)), -1}});
    w.line(along, LineKind::component, signedBy(f.to(f.k, u), product(w.size(known), apply("cos", turned))));
    w.line(square, LineKind::pythagoras,
           sum(power(w.size(f.side(v)), 2), negative(power(w.of(distance), 2))));
    w.line(chord, LineKind::root, root(w.of(square)));
    for (const std::uint8_t answer : {std::uint8_t{1}, std::uint8_t{2}})
        w.line({What::along, f.side(u), {}, answer}, LineKind::elimination,
               total({{w.of(along), 1}, {w.of(chord), answer == 1 ? 1 : -1}}));
}

/// The greatest side less the other two.
void failSides(const Flat& f) {
    std::array<std::size_t, 3> bySize{0, 1, 2};
    std::sort(bySize.begin(), bySize.end(),
              [&](std::size_t a, std::size_t b) { return f.length(a) > f.length(b); });
    const auto size = [&](std::size_t n) { return f.w.size(f.side(bySize[n])); };
    const bool isAlone = f.length(bySize[2]) == 0; // nothing else acts
    f.w.line(kLack, LineKind::elimination, sum(size(0), negative(isAlone ? size(1) : sum(size(1), size(2)))));
}

} // namespace

void writeFailure(Writer& w, const Reduction& reduction) {
    if (reduction.sought.size() != 2)
        return;
    const Flat f{w, reduction};
    const auto isLine = [&](std::size_t i) {
        const VectorId v = reduction.side[i];
        return !isGiven(v == kSumVector ? w.sketch.sum.magnitude : w.sketch.forces[v.index].magnitude);
    };
    const std::size_t first = reduction.sought[0], second = reduction.sought[1];
    switch (w.solved.family) {
    case Family::twoMagnitudes:
        return failLines(f);
    case Family::magnitudeAndDirection:
        return isLine(first) ? failLineAndCircle(f, first, second) : failLineAndCircle(f, second, first);
    case Family::twoDirections:
        return failSides(f);
    default:
        return;
    }
}

} // namespace tailpoint::deriving
