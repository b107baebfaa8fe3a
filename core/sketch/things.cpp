// SPDX-License-Identifier: MIT
#include "core/sketch/things.h"

#include "core/quantity/typed.h"
#include "core/sketch/naming.h"

namespace tailpoint {

namespace {

constexpr std::string_view kPrimes[] = {"", "′", "″"};
constexpr std::string_view kPlainPrimes[] = {"", "'", "''"};

std::string_view functionOf(std::uint8_t ratio) {
    return ratio == kCosine ? "cos" : ratio == kTangent ? "tan" : "sin";
}

/// One or two for the answers; one for the other sense of a line of action.
std::size_t primesOf(const QuantityId& q) {
    const bool isWay = q.what == What::direction || q.what == What::fromX;
    return q.answer == 0 && isWay && q.part == 1 ? 1 : q.answer <= 2 ? q.answer : 0;
}

/// Of a component.
char axisOf(const QuantityId& q) {
    return q.what == What::x ? 'x' : q.what == What::y ? 'y' : q.part == 1 ? 'v' : 'u';
}

Symbol below(std::string base, const Subscript& sub) {
    return {std::move(base), sub.text, sub.slant};
}

/// Which of several parallelograms.
std::uint8_t partOf(VectorId pair) {
    return pair.kind == VectorId::Kind::partial ? static_cast<std::uint8_t>(pair.index) : std::uint8_t{0};
}

} // namespace

Dimension dimensionOf(What what) {
    switch (what) {
    case What::magnitude:
    case What::x:
    case What::y:
    case What::distance:
    case What::along:
    case What::gap:
        return Dimension::force;
    case What::square:
        return Dimension::forceSquared;
    case What::direction:
    case What::fromX:
    case What::between:
    case What::opposite:
    case What::acute:
        return Dimension::angle;
    case What::none:
    case What::ratio:
    case What::term:
        break;
    }
    return Dimension::number;
}

Things::Things(const Sketch& sketch) : m_sides(sidesOf(sketch)) {
    Naming(*this, sketch).run();
}

const Things::Named* Things::find(VectorId vector) const {
    switch (vector.kind) {
    case VectorId::Kind::force:
        return &m_forces[vector.index];
    case VectorId::Kind::sum:
        return &m_sum;
    case VectorId::Kind::known:
        return &m_known;
    case VectorId::Kind::partial:
    case VectorId::Kind::none:
        break;
    }
    return nullptr;
}

std::string Things::name(VectorId vector) const {
    const Named* found = find(vector);
    return found ? found->name : m_partialLetter + std::to_string(vector.index);
}

Symbol Things::symbol(VectorId vector) const {
    const Named* found = find(vector);
    return found ? found->symbol : Symbol{m_partialLetter, std::to_string(vector.index)};
}

Symbol Things::symbolNamed(std::string_view name) const {
    for (const Named& force : m_forces)
        if (force.name == name)
            return force.symbol;
    return m_sum.name == name ? m_sum.symbol : symbolOfName(name);
}

Subscript Things::subscriptOf(VectorId vector) const {
    const Named* found = find(vector);
    return found ? found->subscript : asSubscript(symbol(vector));
}

Symbol Things::component(VectorId vector, char axis) const {
    const Symbol of = symbol(vector);
    Subscript sub{of.sub, of.slant};
    sub.append(m_axesFenced ? "(" : "").append(italicSubscript(axis)).append(m_axesFenced ? ")" : "");
    return below(of.base, sub);
}

/// α, β, γ of the force triangle; numbered, and the resultant's angle γ, where parallelogram follows
/// parallelogram.
Symbol Things::angleOf(const QuantityId& q) const {
    if (q.part > 0 && q.what != What::acute) {
        const bool ofDiagonal = q.of == kSumVector || q.of.kind == VectorId::Kind::partial;
        return {m_letters.angle[ofDiagonal && q.of != partialVector(q.part - 1U) ? 2 : 0],
                std::to_string(q.part)};
    }
    const std::size_t side = m_sides ? m_sides->indexOf(q.of) : 3;
    return side < 3 ? Symbol{m_letters.angle[side], {}} : below(m_letters.angle[2], subscriptOf(q.of));
}

/// φ of two forces; named after the third side where three hold one another; numbered with its parallelogram.
Symbol Things::between(const QuantityId& q) const {
    if (q.part > 0)
        return {m_letters.phi, std::to_string(q.part)};
    const std::size_t a = m_sides ? m_sides->indexOf(q.of) : 3, b = m_sides ? m_sides->indexOf(q.with) : 3;
    if (a < 3 && b < 3 && m_sides->loop)
        return below(m_letters.phi, subscriptOf(m_sides->side[3 - a - b]));
    const bool ofTwoForces =
        m_forces.size() == 2 && q.of.kind == VectorId::Kind::force && q.with.kind == q.of.kind;
    return ofTwoForces ? Symbol{m_letters.phi, {}}
                       : below(m_letters.phi, subscriptOf(q.of).append(",").append(subscriptOf(q.with)));
}

Symbol Things::distance(const QuantityId& q) const {
    return {m_letters.distance, q.part == 0 ? std::string() : std::to_string(q.part)};
}

Symbol Things::symbol(const QuantityId& q) const {
    Symbol out;
    switch (q.what) {
    case What::magnitude:
        out = symbol(q.of);
        break;
    case What::square:
        out = q.of == kNobody ? distance(q) : symbol(q.of);
        break;
    case What::direction:
        out = below(m_letters.theta, subscriptOf(q.of));
        break;
    case What::fromX:
    case What::term:
        out = below(m_letters.psi, subscriptOf(q.of));
        break;
    case What::x:
    case What::y:
    case What::along:
        out = component(q.of, axisOf(q));
        break;
    case What::between:
        out = between(q);
        break;
    case What::opposite:
        out = angleOf(q);
        break;
    case What::acute:
        out = q.part == kOfInverseSine ? angleOf(q) : below(m_letters.acute, subscriptOf(q.of));
        out.sub += q.part == kOfInverseSine ? "0" : "";
        break;
    case What::ratio:
        out = q.part == kTangent ? below(m_letters.acute, subscriptOf(q.of))
                                 : angleOf({What::opposite, q.of, {}, 0, partOf(q.with)});
        break;
    case What::distance:
        out = distance(q);
        break;
    case What::gap:
        out = q.part < kDifferenceX   ? below("ΣF", italicSubscript("xyuv"[q.part % 4U]))
              : q.part == kDifference ? Symbol{"Δ", {}}
                                      : below("Δ", italicSubscript(q.part == kDifferenceX ? 'x' : 'y'));
        break;
    case What::none:
        break;
    }
    out.base += kPrimes[primesOf(q)];
    return out;
}

Formula Things::formula(const QuantityId& q) const {
    Formula inner = tailpoint::symbol(symbol(q), {});
    if (q.what == What::square)
        inner = power(std::move(inner), 2);
    else if (q.what == What::ratio || q.what == What::term)
        inner = apply(std::string(functionOf(q.part)), std::move(inner));
    inner.id = q;
    return inner;
}

Formula Things::vectorFormula(VectorId vector) const {
    return vectorSymbol(symbol(vector));
}

std::string Things::plainOf(const QuantityId& q) const {
    const auto after = [](std::string letter, const std::string& sub) {
        return sub.empty() ? letter : letter + "_" + sub;
    };
    const std::string primes(kPlainPrimes[primesOf(q)]);
    switch (q.what) {
    case What::magnitude:
        return name(q.of) + primes;
    case What::square:
        return (q.of == kNobody ? after(m_letters.distance, distance(q).sub) : name(q.of)) + primes + "^2";
    case What::x:
    case What::y:
    case What::along: {
        const std::string axis(1, axisOf(q));
        return name(q.of) + primes + "_" + (m_axesFenced ? "(" + axis + ")" : axis);
    }
    case What::direction:
    case What::fromX:
        return spelledLetter(q.what == What::fromX ? m_letters.psi : m_letters.theta) + primes + "_" +
               name(q.of);
    case What::ratio:
    case What::term: {
        const Symbol of = symbol(q);
        return std::string(functionOf(q.part)) + " " + after(spelledLetter(of.base), of.sub);
    }
    default:
        break;
    }
    const Symbol printed = symbol(q);
    return after(spelledLetter(printed.base), printed.sub);
}

Thing::Role Things::roleOf(const QuantityId& q) const {
    const Named* vector = find(q.of);
    if (!vector || vector == &m_known || (q.what != What::magnitude && q.what != What::direction))
        return Thing::Role::onTheWay;
    const bool given = q.what == What::magnitude ? vector->sizeGiven : vector->wayGiven;
    return given ? Thing::Role::given : Thing::Role::asked;
}

Thing Things::at(const QuantityId& q) const {
    return {q, symbol(q), plainOf(q), dimensionOf(q.what), roleOf(q)};
}

std::vector<QuantityId> Things::quantitiesOf(VectorId vector) const {
    std::vector<QuantityId> all;
    for (const What what : {What::magnitude, What::direction, What::x, What::y, What::fromX, What::acute,
                            What::square, What::along})
        all.push_back({what, vector});
    if (!m_sides || m_sides->indexOf(vector) == 3)
        return all;
    const std::size_t side = m_sides->indexOf(vector);
    all.push_back({What::opposite, vector});
    all.push_back({What::acute, vector, {}, 0, kOfInverseSine});
    all.push_back({What::ratio, vector});
    all.push_back({What::ratio, vector, {}, 0, kCosine});
    all.push_back({What::between, m_sides->side[side == 0 ? 1 : 0], m_sides->side[side == 2 ? 1 : 2]});
    return all;
}

std::optional<QuantityId> Things::named(std::string_view plain) const {
    std::vector<VectorId> vectors{kSumVector, kKnownVector};
    for (std::size_t i = 0; i < m_forces.size(); ++i)
        vectors.push_back(forceVector(i));
    for (const VectorId vector : vectors) // names first: a quantity is never called as a vector is
        if (name(vector) == plain)
            return magnitudeId(vector);
    for (const VectorId vector : vectors)
        for (const QuantityId& quantity : quantitiesOf(vector))
            if (plainOf(quantity) == plain)
                return quantity;
    const QuantityId distance{What::distance};
    return plainOf(distance) == plain ? std::optional(distance) : std::nullopt;
}

namespace {

std::string wordsFor(const QuantityId& quantity, const Things& things) {
    const std::string of = things.name(quantity.of);
    switch (quantity.what) {
    case What::direction:
        return "the direction of " + of;
    case What::fromX:
        return "the angle of " + of + " from +x";
    case What::acute:
        return "the acute angle of " + of;
    case What::x:
        return "the component of " + of + " along x";
    case What::y:
        return "the component of " + of + " along y";
    default:
        return of;
    }
}

/// Without the name itself and the vector that it is for.
Sketch othersOf(const Sketch& sketch, VectorId renamed) {
    Sketch others = sketch;
    if (renamed.kind == VectorId::Kind::force && renamed.index < others.forces.size())
        others.forces.erase(others.forces.begin() + renamed.index);
    return others;
}

} // namespace

std::optional<std::string> printsLike(const Sketch& sketch, std::string_view name, VectorId renamed) {
    if (std::holds_alternative<TypedLoad>(parseLoad(name, sketch.forceUnit)))
        return "'" + std::string(name) + "' would stand in print like a number; give a name such as F1";
    const Sketch others = othersOf(sketch, renamed);
    const Things things(others);
    const std::string look = looksOf(inPrint(symbolOfName(name)));
    std::vector<VectorId> vectors;
    for (std::size_t i = 0; i < others.forces.size(); ++i)
        vectors.push_back(forceVector(i));
    if (renamed != kSumVector)
        vectors.push_back(kSumVector);
    for (const VectorId vector : vectors)
        for (const What what :
             {What::magnitude, What::direction, What::fromX, What::acute, What::x, What::y}) {
            const QuantityId quantity{what, vector};
            if (looksOf(inPrint(things.symbol(quantity))) == look)
                return "'" + std::string(name) + "' would stand in print like " + wordsFor(quantity, things) +
                       "; give another name";
        }
    return std::nullopt;
}

} // namespace tailpoint
