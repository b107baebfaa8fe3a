// SPDX-License-Identifier: MIT
// Seeded sketches for the property tests, adversarial ones among them. The same seed makes the same cases
// everywhere: only the engine's raw output is used, never a library's distribution.
#pragma once

#include "tests/support/sketches.h"

#include <cmath>
#include <cstdint>
#include <random>

namespace tailpoint::testing {

class Dice {
public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    std::uint64_t whole(std::uint64_t below) { return engine_() % below; }
    double part() { return static_cast<double>(engine_() >> 11) * 0x1p-53; } ///< 0 <= part < 1
    double between(double low, double high) { return low + (high - low) * part(); }
    double power(double lowest, double highest) { return std::pow(10.0, between(lowest, highest)); }
    bool toss() { return (engine_() & 1) != 0; }

private:
    std::mt19937_64 engine_;
};

/// What makes a case hard.
enum class Kind { plain, wide, cancelling, needle, nearTangent, nearParallel, ratio };
inline constexpr int kKinds = 7;
inline Kind kindOf(std::uint64_t number) {
    return static_cast<Kind>(number % kKinds);
}

inline double anyDegrees(Dice& dice) {
    switch (dice.whole(4)) {
    case 0:
        return 15.0 * static_cast<double>(dice.whole(24)) - 180;
    case 1:
        return std::round(dice.between(-1800, 1800)) / 10;
    default:
        return dice.between(-180, 180);
    }
}

inline double anyMagnitude(Dice& dice, Kind kind) {
    if (kind == Kind::wide) {
        return dice.power(-149, 149);
    }
    if (kind == Kind::ratio) {
        return dice.toss() ? dice.power(0, 1) : dice.power(11, 12);
    }
    return dice.toss() ? std::round(dice.between(1, 1000)) : dice.power(-2, 4);
}

/// A small relative change, 1e-15 to 1e-2, either sign.
inline double hair(Dice& dice) {
    return (dice.toss() ? 1 : -1) * dice.power(-15, -2);
}

/// The same sketch with its angles counted from another axis, in either sense. Half of them stay from +x.
inline Sketch anyReference(Dice& dice, Sketch made) {
    if (dice.toss()) {
        return made;
    }
    made.reference.sense = dice.toss() ? Sense::cw : Sense::ccw;
    made.reference.axisDegrees = dice.toss() ? 90.0 * static_cast<double>(dice.whole(4)) : anyDegrees(dice);
    return made;
}

/// 1 to 12 given forces; among the cancelling ones pairs that all but undo one another.
inline Sketch resultantCase(Dice& dice, Kind kind) {
    std::vector<Force> forces;
    const std::uint64_t pairs = 1 + dice.whole(6);
    for (std::uint64_t i = 0; i < pairs; ++i) {
        const double magnitude = anyMagnitude(dice, kind);
        const double degrees = anyDegrees(dice);
        forces.push_back(force("A" + std::to_string(i), magnitude, degrees));
        if (kind == Kind::cancelling || kind == Kind::nearParallel) {
            const double turn = kind == Kind::cancelling ? 180 : 0;
            forces.push_back(force("B" + std::to_string(i), magnitude * (1 + hair(dice)),
                                   degrees + turn + (dice.toss() ? 0 : 90 * hair(dice))));
        } else if (dice.toss()) {
            forces.push_back(force("B" + std::to_string(i), anyMagnitude(dice, kind), anyDegrees(dice)));
        }
    }
    return sketch(std::move(forces));
}

/// Two lines of action; the sum given.
inline Sketch linesCase(Dice& dice, Kind kind) {
    const double first = anyDegrees(dice);
    const bool near = kind == Kind::nearParallel || kind == Kind::needle;
    const double second = near ? first + (dice.toss() ? 0 : 180) + 90 * hair(dice) : anyDegrees(dice);
    std::vector<Force> forces{either(force("P", kToFind, first)), either(force("Q", kToFind, second))};
    const double given = anyMagnitude(dice, kind);
    const double along = kind == Kind::nearTangent ? first + 90 * hair(dice) : anyDegrees(dice);
    if (dice.toss()) {
        forces.push_back(force("K",
                               kind == Kind::cancelling ? given * (1 + hair(dice)) : anyMagnitude(dice, kind),
                               kind == Kind::cancelling ? along + 90 * hair(dice) : anyDegrees(dice)));
    }
    return sketch(std::move(forces), force("R", given, along));
}

/// A line of action and a circle of tips; one known force, the sum to find along the line or given.
inline Sketch lineCircleCase(Dice& dice, Kind kind) {
    const double lineAt = anyDegrees(dice);
    const double known = anyMagnitude(dice, kind);
    const double knownAt = kind == Kind::needle ? lineAt + 90 * hair(dice) : anyDegrees(dice);
    const double distance = known * std::fabs(std::sin((knownAt - lineAt) * 3.14159265358979323846 / 180));
    double radius = anyMagnitude(dice, kind);
    if (kind == Kind::nearTangent) {
        radius = distance * (1 + hair(dice));
    } else if (kind == Kind::cancelling) {
        radius = known * (1 + hair(dice));
    }
    radius = std::fmax(radius, 1e-150);
    if (dice.toss()) {
        return sketch({force("K", known, knownAt), force("Q", radius, kToFind)},
                      either(force("R", kToFind, lineAt)));
    }
    return sketch({either(force("P", kToFind, lineAt)), force("Q", radius, kToFind)},
                  force("R", known, knownAt));
}

/// Two circles of tips, closed by a given sum or a known force.
inline Sketch circlesCase(Dice& dice, Kind kind) {
    const double first = anyMagnitude(dice, kind);
    double second = anyMagnitude(dice, kind);
    double closing = anyMagnitude(dice, kind);
    if (kind == Kind::needle || kind == Kind::nearParallel) {
        second = first * (1 + hair(dice));
        closing = first * dice.power(-12, -1);
    } else if (kind == Kind::nearTangent) {
        closing = (dice.toss() ? first + second : std::fabs(first - second)) * (1 + hair(dice));
    } else if (kind == Kind::cancelling || kind == Kind::ratio || kind == Kind::wide) {
        closing = first + second * dice.between(-1, 1);
    }
    closing = std::fmax(std::fabs(closing), 1e-150);
    if (dice.toss()) {
        return sketch({force("P", first, kToFind), force("Q", second, kToFind)},
                      force("R", closing, anyDegrees(dice)));
    }
    return balanced(
        {force("W", closing, anyDegrees(dice)), force("P", first, kToFind), force("Q", second, kToFind)});
}

/// Smallest force, or smallest sum.
inline Sketch smallestCase(Dice& dice, Kind kind) {
    const double lineAt = anyDegrees(dice);
    const bool near = kind == Kind::nearParallel || kind == Kind::nearTangent;
    std::vector<Force> forces{
        force("A", anyMagnitude(dice, kind), near ? lineAt + 90 * hair(dice) : anyDegrees(dice))};
    if (dice.toss()) {
        forces.push_back(force("B", anyMagnitude(dice, kind), anyDegrees(dice)));
    }
    if (dice.toss()) {
        forces.push_back(force("Q", kToFind, kToFind));
        return smallest(sketch(std::move(forces), either(force("R", kToFind, lineAt))), "Q");
    }
    forces.push_back(either(force("Q", kToFind, lineAt)));
    return smallest(sketch(std::move(forces)), "R");
}

inline Sketch anyCase(Dice& dice, std::uint64_t number) {
    const Kind kind = kindOf(number / 5);
    switch (number % 5) {
    case 0:
        return anyReference(dice, resultantCase(dice, kind));
    case 1:
        return anyReference(dice, linesCase(dice, kind));
    case 2:
        return anyReference(dice, lineCircleCase(dice, kind));
    case 3:
        return anyReference(dice, circlesCase(dice, kind));
    default:
        return anyReference(dice, smallestCase(dice, kind));
    }
}

} // namespace tailpoint::testing
