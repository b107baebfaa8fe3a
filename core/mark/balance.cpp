// SPDX-License-Identifier: MIT
#include "core/mark/balance.h"

#include <algorithm>
#include <numbers>

namespace tailpoint::marking {

namespace {

using Vector = std::complex<double>;

constexpr double kFlat = 1e-6; ///< of an axis that a vector is square to: nothing can be found along it

double along(Vector vector, Vector axis) {
    return vector.real() * axis.real() + vector.imag() * axis.imag();
}

/// What it loses near 1 lies far below an answer's own tolerance, which is all that is compared with it.
double arccosine(double x) {
    return std::abs(x) <= 1 ? std::acos(x) : kNone;
}

/// The one of two angles on both sides of an axis that is nearer to the right one.
double nearer(double axis, double off, double right) {
    const auto apart = [&](double angle) {
        return std::abs(std::remainder(angle - right, 2 * std::numbers::pi));
    };
    return apart(axis + off) <= apart(axis - off) ? axis + off : axis - off;
}

} // namespace

Balance::Balance(const Question& question, std::size_t answer) : m_question(question) {
    const Solution& solution = question.own.solved.solutions[answer];
    const auto add = [&](VectorId vector, const SolvedForce& force, double sign) {
        m_members.push_back({vector, sign, force.magnitude, std::atan2(force.unit.y(), force.unit.x()),
                             !force.magnitudeFound && !force.directionFound});
    };
    for (std::size_t i = 0; i < solution.forces.size(); ++i)
        add(forceVector(i), solution.forces[i], 1);
    add(kSumVector, solution.sum, -1);
}

std::size_t Balance::indexOf(VectorId vector) const {
    const auto found = std::find_if(m_members.begin(), m_members.end(),
                                    [&](const Member& one) { return one.vector == vector; });
    return static_cast<std::size_t>(found - m_members.begin());
}

bool Balance::put(Members& members, const Given& given, double value) const {
    const QuantityId& id = given.value->id;
    const std::size_t index = indexOf(id.of);
    if (index == members.size() || (id.what != What::magnitude && id.what != What::direction))
        return false;
    if (id.what == What::magnitude) {
        members[index].magnitude = value;
        return true;
    }
    const auto unit = unitVector({AngleForm{value}, {}}, m_question.sketch());
    if (!unit)
        return false;
    members[index].radians = std::atan2(static_cast<double>(unit->sin), static_cast<double>(unit->cos));
    return true;
}

Balance::Needed Balance::neededFor(const Members& members, std::size_t target) const {
    Needed needed{0, 0};
    for (std::size_t i = 0; i < members.size(); ++i) {
        const Member& one = members[i];
        const Vector part = -members[target].sign * one.sign * std::polar(1.0, one.radians) * one.magnitude;
        if (i != target)
            needed.all += part;
        if (i != target && one.isKnown)
            needed.known += part;
    }
    return needed;
}

/// Along x and y, and square to a side of the triangle: to what is known, or each of two known vectors.
std::vector<Vector> Balance::axes(const Members& members, const Needed& needed) const {
    std::vector<Vector> all{1, {0, 1}};
    const auto known = std::count_if(members.begin(), members.end(),
                                     [](const Member& one) { return one.isKnown && one.magnitude > 0; });
    for (const Member& one : members)
        if (one.isKnown && one.magnitude > 0 && known <= 2)
            all.push_back(std::polar(1.0, one.radians + std::numbers::pi / 2));
    if (needed.known != 0.0)
        all.push_back(std::polar(1.0, std::arg(needed.known) + std::numbers::pi / 2));
    return all;
}

std::vector<double> Balance::magnitudes(const Members& members, std::size_t target,
                                        const Needed& needed) const {
    const Vector unit = std::polar(1.0, members[target].radians);
    const double onIt = along(needed.all, unit);
    const bool isSigned = m_question.options.signedSenses;
    std::vector<double> all{isSigned ? std::copysign(std::abs(needed.all), onIt) : std::abs(needed.all),
                            onIt};
    for (const Vector& axis : axes(members, needed)) {
        const double share = along(unit, axis);
        all.push_back(std::abs(share) > kFlat ? along(needed.all, axis) / share : kNone);
    }
    return all;
}

std::vector<double> Balance::directions(const Members& members, std::size_t target,
                                        const Needed& needed) const {
    const double size = members[target].magnitude, right = m_members[target].radians;
    std::vector<double> all{std::arg(needed.all)};
    for (const Vector& axis : axes(members, needed))
        all.push_back(nearer(std::arg(axis), arccosine(along(needed.all, axis) / size), right));
    const Vector other = needed.all - needed.known; // law of cosines, the three sides being given
    const double a = std::abs(needed.known), b = std::abs(other);
    all.push_back(
        nearer(std::arg(needed.known), arccosine((size * size + a * a - b * b) / (2 * size * a)), right));
    all.push_back(nearer(std::arg(other), arccosine((size * size + b * b - a * a) / (2 * size * b)), right));
    return all;
}

double Balance::referred(double radians) const {
    return isThere(radians)
               ? referredDirection(std::cos(radians), std::sin(radians), m_question.sketch()).value_or(kNone)
               : kNone;
}

std::vector<double> Balance::values(const Given& target, const Members& members, Vector moved) const {
    const std::size_t index = indexOf(target.value->id.of);
    Needed needed = neededFor(members, index);
    needed.all += moved;
    if (target.value->id.what == What::magnitude)
        return magnitudes(members, index, needed);
    std::vector<double> all = directions(members, index, needed);
    std::transform(all.begin(), all.end(), all.begin(), [this](double radians) { return referred(radians); });
    return all;
}

bool Balance::follows(const Given& target, const std::vector<const Given*>& sources) const {
    const QuantityId& id = target.value->id;
    Members members = m_members;
    if (indexOf(id.of) == members.size() || (id.what != What::magnitude && id.what != What::direction))
        return false;
    for (const Given* source : sources)
        if (!put(members, *source, source->reading.value))
            return false;
    const std::vector<double> there = values(target, members);
    std::vector<double> room(there.size(), 0);
    const auto add = [&](const std::vector<double>& moved) {
        for (std::size_t i = 0; i < there.size(); ++i)
            room[i] += isThere(moved[i]) ? m_question.apart(target.cell, moved[i], there[i]) : 0;
    };
    for (const Given* source : sources) { // what the given values' last digits leave open
        Members other = members;
        put(other, *source, source->reading.value + source->reading.half);
        add(values(target, other));
    }
    const Needed needed = neededFor(members, indexOf(id.of)); // and the rounded components
    add(values(target, members, m_question.halfUnit(What::x, needed.all.real())));
    add(values(target, members, {0, m_question.halfUnit(What::y, needed.all.imag())}));
    const double right = m_question.right().value[target.cell], given = target.reading.value;
    const bool isBySize = id.what != What::magnitude || // or either sign is right
                          (hasFreeSense(m_question, id.of) && !m_question.options.signedSenses);
    for (std::size_t i = 0; i < there.size(); ++i)
        if (isThere(there[i]) && (isBySize || (there[i] < 0) == (given < 0)) &&
            !isSame(m_question, target.cell, there[i], right) &&
            fits(m_question, target.cell, target.reading, there[i],
                 std::min(room[i], m_question.limit(target.cell, there[i], kMostRounded))))
            return true;
    return false;
}

} // namespace tailpoint::marking
