// SPDX-License-Identifier: MIT
// The families by ΣFx and ΣFy.
#include "core/derive/writer.h"

#include <cmath>

namespace tailpoint::deriving {

namespace {

/// The equation as sides: s0·v0 + s1·v1 + s2·v2 = 0, the known side k by its components.
struct Equation {
    Writer& w;
    const Reduction& r;
    std::size_t k, u, v;

    VectorId side(std::size_t i) const { return r.side[i]; }
    /// What a side leaves to another: −s_i·s_j.
    int to(std::size_t i, std::size_t j) const { return -r.sign(i) * r.sign(j); }
    Formula kx() const { return w.x(side(k)); }
    Formula ky() const { return w.y(side(k)); }
    /// Cosine and sine of a line of action from +x, each a term of ΣFx or ΣFy.
    Formula factor(std::size_t i, std::uint8_t part) const {
        return w.of({What::term, side(i), {}, 0, part});
    }
    void writeFactors(std::size_t i) const {
        const Formula angle = w.fromX(side(i));
        w.line({What::term, side(i), {}, 0, kCosine}, LineKind::term, apply("cos", angle));
        w.line({What::term, side(i), {}, 0, kSine}, LineKind::term, apply("sin", angle));
    }
    /// The components of `v` from those of the known side and from `u` along its line.
    void writeRest() const {
        const bool isSigned = w.wayId(side(u)).part == 1; // where the line leaves the sense open
        const Formula along = isSigned ? w.of(w.own(What::along, side(u))) : w.size(side(u));
        const auto rest = [&](const Formula& known, std::uint8_t part) {
            return total({{known, to(k, v)}, {product(along, factor(u, part)), to(u, v)}});
        };
        w.line(w.own(What::x, side(v)), LineKind::elimination, rest(kx(), kCosine));
        w.line(w.own(What::y, side(v)), LineKind::elimination, rest(ky(), kSine));
    }
};

/// The forces beside the vector that is sought.
std::vector<Signed> othersOf(const Writer& w, VectorId sought) {
    std::vector<Signed> terms;
    for (std::size_t i = 0; i < w.sketch.forces.size(); ++i)
        if (forceVector(i) != sought && w.solvedVector(forceVector(i)).direction &&
            w.solvedVector(forceVector(i)).magnitude > 0)
            terms.emplace_back(forceVector(i), 1);
    return terms;
}

/// A missing force makes up the difference: the sum less the known forces, several of them added up to K.
void writeMissing(Writer& w, VectorId sought) {
    std::vector<Signed> known = othersOf(w, sought), terms;
    if (known.size() > 1) {
        w.columnSums(kKnownVector, known);
        known = {{kKnownVector, 1}};
    }
    if (!isEquilibrium(w.sketch))
        terms.emplace_back(kSumVector, 1);
    for (const auto& [vector, sign] : known)
        terms.emplace_back(vector, -sign);
    w.columnSums(sought, terms);
}

/// A magnitude that ΣFx and ΣFy give with a sign: along a line of action that leaves the sense open the size
/// is taken and the sense with it.
void writeSigned(Writer& w, VectorId vector, Formula value) {
    const Force& given = vector == kSumVector ? w.sketch.sum : w.sketch.forces[vector.index];
    const QuantityId size = w.own(What::magnitude, vector);
    if (!given.lineOfActionOnly && !w.solvedVector(vector).turned) {
        w.stand({vector, size, w.wayId(vector)});
        return w.line(size, LineKind::elimination, std::move(value));
    }
    const QuantityId along = w.own(What::along, vector), acting{What::direction, vector, {}, w.answer, 1};
    w.line(along, LineKind::elimination, std::move(value));
    w.line(size, LineKind::component, absolute(w.of(along)));
    const Formula drawn = w.way(vector);
    std::vector<Case> cases;
    cases.push_back({{related(w.of(along), Relation::greaterOrEqual, zero())}, drawn});
    cases.push_back({{above(drawn, zero())}, total({{drawn, 1}, {w.half(), -1}})});
    cases.push_back({{}, total({{drawn, 1}, {w.half(), 1}})});
    w.line(acting, LineKind::turn, std::move(cases));
    w.stand({vector, size, acting});
}

void writeOneVector(Writer& w) {
    const VectorId sought = vectorId(w.solved.unknownVectors[0]);
    if (sought == kSumVector)
        w.columnSums(sought, othersOf(w, sought));
    else
        writeMissing(w, sought);
    w.pythagoras(sought);
    if (w.solvedVector(sought).direction)
        w.wayFromComponents(sought);
    w.check();
}

/// The components that the vector must have: along its line they give the magnitude, and across it nothing
/// may be left. Of a direction sought their length less the magnitude is what is left.
void writeOneUnknown(Writer& w) {
    const VectorId sought = vectorId(w.solved.unknownVectors[0]);
    if (sought == kSumVector)
        w.columnSums(sought, othersOf(w, sought));
    else
        writeMissing(w, sought);
    const Formula x = w.of(w.own(What::x, sought)), y = w.of(w.own(What::y, sought));
    if (w.solvedVector(sought).directionFound) {
        w.wayFromComponents(sought);
        w.line({What::gap, kNobody, {}, 0, kDifference}, LineKind::elimination,
               absolute(sum(root(sum(power(x, 2), power(y, 2))), negative(w.size(sought)))));
    } else {
        const Formula cosine = apply("cos", w.fromX(sought)), sine = apply("sin", w.fromX(sought));
        writeSigned(w, sought, total({{product(x, cosine), 1}, {product(y, sine), 1}}));
        w.line({What::along, sought, {}, 0, 1}, LineKind::elimination,
               total({{product(y, cosine), 1}, {product(x, sine), -1}}));
    }
    w.check();
}

/// Cramer's rule on ΣFx = 0, ΣFy = 0.
void writeTwoMagnitudes(const Equation& e) {
    Writer& w = e.w;
    e.writeFactors(e.u);
    e.writeFactors(e.v);
    const auto fx = [&](std::size_t i) { return e.factor(i, kCosine); };
    const auto fy = [&](std::size_t i) { return e.factor(i, kSine); };
    const Formula both = total({{product(fx(e.u), fy(e.v)), 1}, {product(fy(e.u), fx(e.v)), -1}});
    const Formula kx = e.kx(), ky = e.ky();
    const int toU = e.to(e.k, e.u), toV = e.to(e.k, e.v);
    const Formula u = over(total({{product(kx, fy(e.v)), toU}, {product(ky, fx(e.v)), -toU}}), both);
    const Formula v = over(total({{product(ky, fx(e.u)), toV}, {product(kx, fy(e.u)), -toV}}), both);
    writeSigned(w, e.side(e.u), u);
    writeSigned(w, e.side(e.v), v);
    w.check();
}

/// Length of the known side along the line of `u`, and across it.
struct Foot {
    QuantityId along, across;
};
Foot writeFoot(const Equation& e) {
    Writer& w = e.w;
    e.writeFactors(e.u);
    const Foot foot{{What::along, e.side(e.k)}, {What::distance}};
    const int sign = e.to(e.k, e.u);
    const Formula kx = e.kx(), ky = e.ky(), c = e.factor(e.u, kCosine), s = e.factor(e.u, kSine);
    w.line(foot.along, LineKind::elimination, total({{product(kx, c), sign}, {product(ky, s), sign}}));
    w.line(foot.across, LineKind::elimination, absolute(total({{product(ky, c), 1}, {product(kx, s), -1}})));
    return foot;
}

/// The line of `u` meets the circle of `v` at half a chord on either side of the foot.
void writeMagnitudeAndDirection(const Equation& e) {
    Writer& w = e.w;
    const Foot foot = writeFoot(e);
    const QuantityId square{What::square, {}, {}, 0, 1}, chord{What::distance, {}, {}, 0, 1};
    if (!w.solved.tangent) {
        w.line(square, LineKind::pythagoras,
               total({{power(w.size(e.side(e.v)), 2), 1}, {power(w.of(foot.across), 2), -1}}));
        w.line(chord, LineKind::root, root(w.of(square)));
    }
    const Eigen::Vector2d k = w.vector(e.side(e.k));
    const std::vector<Standing> before = w.standings;
    const bool both = w.solved.solutions.size() > 1;
    for (w.solution = 0; w.solution < w.solved.solutions.size(); ++w.solution) {
        w.answer = both ? static_cast<std::uint8_t>(w.solution + 1) : std::uint8_t{0};
        w.standings = before;
        const SolvedForce& found = w.solvedVector(e.side(e.u));
        const Eigen::Vector2d drawn = found.turned ? Eigen::Vector2d(-found.unit) : found.unit;
        const bool far = found.vector.dot(drawn) > e.to(e.k, e.u) * k.dot(drawn);
        writeSigned(w, e.side(e.u),
                    w.solved.tangent ? w.of(foot.along)
                                     : total({{w.of(foot.along), 1}, {w.of(chord), far ? 1 : -1}}));
        w.stand({e.side(e.v), w.sizeId(e.side(e.v)), w.own(What::direction, e.side(e.v))});
        e.writeRest();
        w.wayFromComponents(e.side(e.v));
        w.check();
    }
    w.solution = 0;
}

/// Both circles meet at half a chord on either side of the known side's line.
void writeTwoDirections(const Equation& e) {
    Writer& w = e.w;
    const VectorId k = e.side(e.k), u = e.side(e.u), v = e.side(e.v);
    const QuantityId along{What::along, u}, square{What::square, {}, {}, 0, 1},
        height{What::distance, {}, {}, 0, 1};
    if (k == kKnownVector)
        w.pythagoras(k);
    const Formula length = w.size(k);
    w.line(along, LineKind::elimination,
           over(sum(power(length, 2), power(w.size(u), 2), negative(power(w.size(v), 2))),
                product(count(2), length)));
    w.line(square, LineKind::pythagoras, total({{power(w.size(u), 2), 1}, {power(w.of(along), 2), -1}}));
    w.line(height, LineKind::root, root(w.of(square)));
    const bool both = w.solved.solutions.size() > 1;
    const std::vector<Standing> before = w.standings;
    for (w.solution = 0; w.solution < w.solved.solutions.size(); ++w.solution) {
        w.answer = both ? static_cast<std::uint8_t>(w.solution + 1) : std::uint8_t{0};
        w.standings = before;
        for (const VectorId found : {u, v})
            w.stand({found, w.sizeId(found), w.own(What::direction, found)});
        const Eigen::Vector2d known = w.vector(k), first = w.vector(u);
        const int left = known.x() * first.y() - known.y() * first.x() > 0 ? 1 : -1, to = e.to(e.k, e.u);
        const Formula kx = e.kx(), ky = e.ky(), p = w.of(along), h = w.of(height);
        w.line(w.own(What::x, u), LineKind::elimination,
               over(total({{product(p, kx), to}, {product(h, ky), -left}}), length));
        w.line(w.own(What::y, u), LineKind::elimination,
               over(total({{product(p, ky), to}, {product(h, kx), left}}), length));
        const int fromK = e.to(e.k, e.v), fromU = e.to(e.u, e.v);
        w.line(w.own(What::x, v), LineKind::elimination,
               total({{kx, fromK}, {w.of(w.own(What::x, u)), fromU}}));
        w.line(w.own(What::y, v), LineKind::elimination,
               total({{ky, fromK}, {w.of(w.own(What::y, u)), fromU}}));
        w.wayFromComponents(u);
        w.wayFromComponents(v);
        w.check();
    }
    w.solution = 0;
}

/// The line takes what lies along it, the smallest what lies across.
void writeSmallest(const Equation& e) {
    Writer& w = e.w;
    const Foot foot = writeFoot(e);
    const VectorId line = e.side(e.u);
    if (line != kSumVector && !w.sketch.forces[line.index].lineOfActionOnly) {
        std::vector<Case> cases; // against its sense the force would only make the smallest larger
        cases.push_back({{related(w.of(foot.along), Relation::greaterOrEqual, zero())}, w.of(foot.along)});
        cases.push_back({{}, zero()});
        w.line(w.sizeId(line), LineKind::elimination, std::move(cases));
    } else {
        writeSigned(w, e.side(e.u), w.of(foot.along));
    }
    const VectorId leg = e.side(e.v);
    e.writeRest();
    w.pythagoras(leg);
    if (w.solvedVector(leg).direction)
        w.wayFromComponents(leg);
    w.check();
}

Equation equationOf(Writer& w, const Reduction& r) {
    Equation e{w, r, r.knownSide(), r.sought[0], r.sought[1]};
    const bool smallest = w.sketch.smallest.has_value();
    const bool firstOnLine = smallest ? w.things.name(r.side[e.u]) != *w.sketch.smallest
                                      : w.solvedVector(r.side[e.u]).magnitudeFound;
    if (!firstOnLine && (smallest || w.solved.family == Family::magnitudeAndDirection))
        std::swap(e.u, e.v);
    return e;
}

} // namespace

void writeKnown(Writer& w, const Reduction& reduction) {
    std::vector<Signed> terms;
    for (const auto& [part, sign] : reduction.known)
        if (w.solvedVector(part).direction)
            terms.emplace_back(part, sign);
    w.columnSums(kKnownVector, terms);
    if (w.chain.route.way == Route::Way::components)
        return; // ΣFx and ΣFy go on from the components
    w.pythagoras(kKnownVector);
    w.wayFromComponents(kKnownVector);
}

void writeByComponents(Writer& w) {
    if (w.solved.unknownVectors[1] == kNoVector)
        return w.solved.family == Family::oneUnknown ? writeOneUnknown(w) : writeOneVector(w);
    const auto reduction = reductionOf(w.sketch, w.solved);
    if (!reduction || reduction->sought.size() != 2)
        return;
    if (reduction->addsUp()) {
        if (reduction->known.empty())
            return;
        writeKnown(w, *reduction);
    }
    const Equation equation = equationOf(w, *reduction);
    switch (w.solved.family) {
    case Family::twoMagnitudes:
        return writeTwoMagnitudes(equation);
    case Family::magnitudeAndDirection:
        return writeMagnitudeAndDirection(equation);
    case Family::twoDirections:
        return writeTwoDirections(equation);
    case Family::smallestForce:
    case Family::smallestSum:
        return writeSmallest(equation);
    default:
        return;
    }
}

} // namespace tailpoint::deriving
