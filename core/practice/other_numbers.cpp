// SPDX-License-Identifier: MIT
#include "core/practice/other_numbers.h"

#include "core/practice/family.h"
#include "core/quantity/decimals.h"
#include "core/sketch/cases.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

using namespace practising;

constexpr int kTrials = 300;
constexpr double kMostUnits = 1e9; ///< of its last digit, for a value that is varied

/// A decimal as units of its last digit, times that digit's place: 340 is 34 tens.
struct Grid {
    double units = 0, place = 1;
};

/// The finest place is that of the last digit which is not 0; empty for values of too many digits.
std::optional<Grid> gridOf(double value) {
    const double size = std::abs(value);
    for (int exponent = 6; exponent >= -6; --exponent) {
        const double place = std::pow(10.0, exponent), units = std::round(size / place);
        if (units >= 1 && units <= kMostUnits && std::abs(units * place - size) <= 1e-12 * size)
            return Grid{units, place};
    }
    return std::nullopt;
}

/// The decimal itself, not a multiple of the place's double.
double onGrid(double units, double place) {
    return place >= 1 ? units * place : units / std::round(1 / place);
}

/// Old values and what they became: equal ones stay equal.
class Renewed {
public:
    explicit Renewed(Lots& lots) : m_lots(lots) {}

    double magnitude(double old) {
        if (old == 0)
            return old;
        for (const auto& [from, to] : m_magnitudes)
            if (from == old)
                return to;
        const double fresh = freshMagnitude(old);
        m_magnitudes.emplace_back(old, fresh);
        return fresh;
    }

    /// Within its quarter turn; `quarter` in the angle's unit.
    double angle(double old, double quarter) {
        for (const auto& [from, to] : m_angles)
            if (from == old)
                return to;
        const double start = std::floor(old / quarter) * quarter, off = old - start;
        const double fresh = off == 0 ? old : start + freshPart(off, quarter);
        m_angles.emplace_back(old, fresh);
        return fresh;
    }

    SlopeForm slope(const SlopeForm& old) {
        static const std::vector<std::pair<int, int>> whole{{3, 4},  {4, 3},  {5, 12},
                                                            {12, 5}, {8, 15}, {15, 8}};
        static const std::vector<std::pair<int, int>> other{{1, 2}, {2, 1}, {2, 3}, {3, 2}, {1, 3}, {3, 1},
                                                            {2, 5}, {5, 2}, {3, 5}, {5, 3}, {3, 7}, {7, 3}};
        if (old.run == 0 || old.rise == 0)
            return old;
        const double long_ = std::hypot(old.run, old.rise);
        const auto [run, rise] = m_lots.oneOf(long_ == std::round(long_) ? whole : other);
        return {std::copysign(run, old.run), std::copysign(rise, old.rise)};
    }

private:
    double freshMagnitude(double old) {
        const auto grid = gridOf(old);
        if (!grid)
            return old;
        // fewer than twenty units leave no choice: the next finer place, in halves of this one
        const double place = grid->units < 20 ? grid->place / 10 : grid->place;
        const int step = grid->units < 20 ? 5 : 1;
        const double units = grid->units < 20 ? grid->units * 10 : grid->units;
        const int low = static_cast<int>(std::ceil(units * 2 / 3 / step)),
                  high = static_cast<int>(std::floor(units * 3 / 2 / step));
        return onGrid(static_cast<double>(step) * m_lots.between(low, std::max(low, high)), place);
    }

    /// Strictly between 0 and the quarter, as round as `off`.
    double freshPart(double off, double quarter) {
        auto grid = gridOf(off);
        if (!grid)
            return off;
        double place = std::min(grid->place, 1.0);
        int step = 1;
        if (place == 1 && std::fmod(off, 5) == 0 && quarter > 10)
            step = 5;
        else if (place == 0.1 && std::fmod(off * 2, 1) == 0)
            step = 5;
        const int most = static_cast<int>(std::floor(quarter / place / step - 0.5));
        return most < 1 ? off : onGrid(static_cast<double>(step) * m_lots.between(1, most), place);
    }

    Lots& m_lots;
    std::vector<std::pair<double, double>> m_magnitudes, m_angles;
};

void renew(Magnitude& magnitude, const Sketch& sheet, Renewed& renewed) {
    if (!magnitude.value)
        return;
    if (magnitude.typed) {
        TypedForce typed = *magnitude.typed;
        typed.value = renewed.magnitude(typed.value);
        magnitude = magnitudeOf(typed, sheet.forceUnit, sheet.gravity);
    } else
        magnitude.value = renewed.magnitude(*magnitude.value);
}

void renew(Direction& direction, AngleUnit sheet, Renewed& renewed) {
    if (auto* angle = std::get_if<AngleForm>(&direction.form)) {
        if (angle->typed) {
            TypedAngle typed = *angle->typed;
            typed.value = renewed.angle(typed.value, turnIn(typed.unit) / 4);
            direction = directionOf(typed, sheet);
        } else
            angle->value = renewed.angle(angle->value, turnIn(sheet) / 4);
    }
    if (auto* slope = std::get_if<SlopeForm>(&direction.form))
        *slope = renewed.slope(*slope);
    if (auto* bearing = std::get_if<BearingForm>(&direction.form))
        if (bearing->degrees > 0 && bearing->degrees < 90)
            bearing->degrees = renewed.angle(bearing->degrees, 90);
}

void renew(Force& vector, const Sketch& sketch, Renewed& renewed) {
    renew(vector.magnitude, sketch, renewed);
    renew(vector.direction, sketch.angleUnit, renewed);
    vector.label.reset();
    vector.directionLabel.reset();
}

Sketch renewed(const Sketch& sketch, Lots& lots) {
    Sketch fresh = asDrawn(sketch);
    Renewed values(lots);
    for (Force& force : fresh.forces)
        renew(force, sketch, values);
    renew(fresh.sum, sketch, values);
    return fresh;
}

/// In which sense each vector of each answer came out.
std::vector<bool> sensesOf(const Solved& solved) {
    std::vector<bool> turned;
    for (const Solution& solution : solved.solutions) {
        for (const SolvedForce& force : solution.forces)
            turned.push_back(force.turned);
        turned.push_back(solution.sum.turned);
    }
    return turned;
}

} // namespace

std::optional<Sketch> otherNumbers(const Sketch& sketch, std::uint32_t seed) {
    const Solved before = solve(sketch);
    if (before.family == Family::check || before.family == Family::oneUnknown || before.solutions.empty())
        return std::nullopt;
    for (int trial = 0; trial < kTrials; ++trial) {
        Lots lots(kNumbersVersion, std::uint64_t{seed}, static_cast<std::uint64_t>(trial));
        Sketch fresh = renewed(sketch, lots);
        if (fresh == asDrawn(sketch) || firstFault(fresh) || isSameQuestion(fresh, sketch))
            continue;
        const Solved after = solve(fresh);
        if (after.status == before.status && after.tangent == before.tangent &&
            sensesOf(after) == sensesOf(before) && isSensible(fresh, after, after.solutions.size()))
            return fresh;
    }
    return std::nullopt;
}

} // namespace tailpoint
