// SPDX-License-Identifier: MIT
#include "core/derive/writer.h"

#include "core/formula/turns.h"

#include <cmath>

namespace tailpoint::deriving {

namespace {

constexpr double kSeam = 1e-13; ///< of a half turn: what a sum of angles may be off by

Formula atMost(Formula a, Formula b) {
    return related(std::move(a), Relation::lessOrEqual, std::move(b));
}

Formula less(Formula a, Formula b) {
    return sum(std::move(a), negative(std::move(b)));
}

} // namespace

Formula above(Formula a, Formula b) {
    return related(std::move(a), Relation::greater, std::move(b));
}
Formula below(Formula a, Formula b) {
    return related(std::move(a), Relation::less, std::move(b));
}
Formula zero() {
    return count(0);
}
Formula signedBy(int sign, Formula formula) {
    return sign < 0 ? negative(std::move(formula)) : formula;
}
Formula total(std::vector<std::pair<Formula, int>> terms) {
    std::vector<Formula> parts;
    parts.reserve(terms.size());
    for (auto& [formula, sign] : terms)
        parts.push_back(signedBy(sign, std::move(formula)));
    if (parts.empty())
        return zero();
    return sumOf(std::move(parts));
}

Writer::Writer(const Sketch& sketch_, const Solved& solved_, const Things& things_, Route route)
    : sketch(sketch_), solved(solved_), things(things_), m_isPlain(isPlainReference(sketch_)) {
    chain.route = route;
    chain.unit = sketch_.angleUnit;
}

Formula Writer::half() const {
    return halfTurn(chain.unit);
}
Formula Writer::seam() const {
    Formula seam = half();
    seam.value *= 1 + kSeam;
    return seam;
}
Formula Writer::full() const {
    return fullTurn(chain.unit);
}
Formula Writer::quarter() const {
    return quarterTurn(chain.unit);
}

const SolvedForce& Writer::solvedVector(VectorId vector) const {
    const Solution& answered = solved.solutions[solution];
    return vector == kSumVector ? answered.sum : answered.forces[vector.index];
}

double Writer::length(VectorId of) const {
    if (of.kind == VectorId::Kind::force || of == kSumVector) {
        const Force& given = of == kSumVector ? sketch.sum : sketch.forces[of.index];
        return given.magnitude.value.value_or(solvedVector(of).magnitude);
    }
    const Eigen::Vector2d v = vector(of);
    return std::hypot(v.x(), v.y());
}

Eigen::Vector2d Writer::vector(VectorId vector) const {
    if (vector.kind == VectorId::Kind::force || vector == kSumVector)
        return solvedVector(vector).vector;
    Eigen::Vector2d added(0, 0);
    for (std::size_t i = 0; vector.kind == VectorId::Kind::partial && i <= vector.index; ++i)
        added += solvedVector(forceVector(i)).vector;
    const auto reduction = vector == kKnownVector ? reductionOf(sketch, solved) : std::nullopt;
    if (reduction)
        for (const auto& [part, sign] : reduction->known)
            added += sign * solvedVector(part).vector;
    return added;
}

Standing Writer::standing(VectorId vector) const {
    for (const Standing& own : standings)
        if (own.vector == vector)
            return own;
    return {vector, magnitudeId(vector), directionId(vector)};
}

void Writer::stand(const Standing& standing) {
    for (Standing& own : standings)
        if (own.vector == standing.vector) {
            own = standing;
            return;
        }
    standings.push_back(standing);
}

void Writer::line(const QuantityId& subject, LineKind kind, Formula formula) {
    std::vector<Case> cases;
    cases.push_back({{}, std::move(formula)});
    line(subject, kind, std::move(cases));
}

void Writer::line(const QuantityId& subject, LineKind kind, std::vector<Case> cases) {
    m_written.add(subject);
    chain.lines.push_back({subject, kind, std::move(cases)});
}

Formula Writer::way(VectorId vector) {
    const QuantityId id = wayId(vector);
    if (id == directionId(vector) && !isWritten(id))
        writeGivenWay(vector);
    return of(id);
}

/// The difference of the directions; 360° less it beyond a half turn. Or a half turn less that.
void Writer::tails(const QuantityId& subject, VectorId a, VectorId b, bool supplement) {
    const Formula first = way(a), second = way(b);
    const Formula down = less(first, second), up = less(second, first);
    const auto within = [&](const Formula& d) { return supplement ? less(half(), d) : d; };
    const auto beyond = [&](const Formula& d) { return supplement ? less(d, half()) : less(full(), d); };
    std::vector<Case> cases;
    cases.push_back(
        {{related(zero(), Relation::lessOrEqual, down, Relation::lessOrEqual, half())}, within(down)});
    cases.push_back({{above(down, half())}, beyond(down)});
    cases.push_back({{above(up, half())}, beyond(up)});
    cases.push_back({{}, within(up)});
    line(subject, LineKind::tails, std::move(cases));
}

void Writer::supplement(const QuantityId& subject, const QuantityId& angle) {
    line(subject, LineKind::supplement, less(half(), of(angle)));
}

void Writer::third(const QuantityId& subject, const QuantityId& a, const QuantityId& b) {
    line(subject, LineKind::third, sum(half(), negative(of(a)), negative(of(b))));
}

void Writer::cosinesForSide(const QuantityId& subject, VectorId a, VectorId b, const QuantityId& included) {
    const QuantityId square{What::square, subject.of, {}, subject.answer};
    line(square, LineKind::cosines,
         sum(power(size(a), 2), power(size(b), 2),
             negative(product(count(2), size(a), size(b), apply("cos", of(included))))));
    line(subject, LineKind::root, root(of(square)));
}

void Writer::cosinesForAngle(const QuantityId& subject, VectorId a, VectorId b, VectorId opposite) {
    const QuantityId ratio{What::ratio, subject.of, {}, subject.answer, kCosine};
    line(ratio, LineKind::cosines,
         over(sum(power(size(a), 2), power(size(b), 2), negative(power(size(opposite), 2))),
              product(count(2), size(a), size(b))));
    line(subject, LineKind::inverse, apply("arccos", of(ratio)));
}

void Writer::sineRatio(const QuantityId& ratio, VectorId side, VectorId known, const QuantityId& knownAngle) {
    line(ratio, LineKind::ratio, over(product(size(side), apply("sin", of(knownAngle))), size(known)));
}

void Writer::sinesForAngle(const QuantityId& subject, VectorId side, VectorId known,
                           const QuantityId& knownAngle, VectorId other) {
    const VectorId pair = subject.part == 0 ? kNobody : partialVector(subject.part);
    const QuantityId ratio{What::ratio, subject.of, pair, subject.answer, kSine};
    sineRatio(ratio, side, known, knownAngle);
    std::vector<Case> cases;
    cases.push_back({{atMost(power(size(side), 2), sum(power(size(other), 2), power(size(known), 2)))},
                     apply("arcsin", of(ratio))});
    cases.push_back({{}, less(half(), apply("arcsin", of(ratio)))});
    line(subject, LineKind::inverse, std::move(cases));
}

void Writer::sinesForSide(const QuantityId& subject, const QuantityId& angle, VectorId known,
                          const QuantityId& knownAngle) {
    line(subject, LineKind::sinesSide,
         over(product(size(known), apply("sin", of(angle))), apply("sin", of(knownAngle))));
}

void Writer::turn(const QuantityId& subject, Turn turn) {
    const Formula from = way(turn.from), up = sum(from, turn.angle), down = less(from, turn.angle);
    std::vector<Case> cases;
    const auto add = [&](int sign, std::vector<Formula> when) {
        const Formula& plain = sign > 0 ? up : down;
        std::vector<Formula> within = when;
        Formula least = negative(half());
        least.parts[0].value *= 1 - kSeam;
        within.push_back(sign > 0 ? atMost(plain, seam()) : above(plain, std::move(least)));
        cases.push_back({std::move(within), plain});
        Formula back = plain;
        back.parts.push_back(sign > 0 ? negative(full()) : full());
        cases.push_back({std::move(when), std::move(back)});
    };
    if (turn.towards == kNobody) {
        add(turn.sign, {});
    } else {
        const Formula side = apply("sin", less(way(turn.towards), from));
        add(1, {turn.sign > 0 ? above(side, zero()) : below(side, zero())});
        add(-1, {});
    }
    line(subject, LineKind::turn, std::move(cases));
}

void Writer::turnRound(VectorId vector) {
    const Formula drawn = way(vector);
    const QuantityId acting{What::direction, vector, {}, answer, 1};
    std::vector<Case> cases;
    cases.push_back({{above(drawn, zero())}, less(drawn, half())});
    cases.push_back({{}, sum(drawn, half())});
    line(acting, LineKind::turn, std::move(cases));
    stand({vector, sizeId(vector), acting});
}

} // namespace tailpoint::deriving
