// SPDX-License-Identifier: MIT
// Seeded sketches as people draw them, and as they had better not; with options and sheets of every size.
#pragma once

#include "tests/core/figure/figure_support.h"
#include "tests/support/cases.h"

namespace tailpoint::testing {

/// What makes the labels' task hard; cases take them in turn.
enum class Crowd {
    plain,
    nearlyParallel,
    tinyAndHuge,
    underFiveDegrees,
    onTheAxes,
    magnitudeAndDirection,
    alike,
    givenAsSlopes,
    withoutAnswer,
    atRest
};
inline constexpr std::uint64_t kCrowds = 10;

struct AnyFigure {
    Sketch sketch;
    FigureOptions options;
    double width = 720, height = 480;
};

inline std::string anyName(Dice& dice, std::uint64_t f) {
    switch (dice.whole(4)) {
    case 0:
        return "F" + std::to_string(f + 1);
    case 1:
        return "T_" + std::string(1, static_cast<char>('a' + f)) + "x";
    default:
        return std::string(1, static_cast<char>('A' + f));
    }
}

inline double anySize(Dice& dice, Crowd crowd) {
    if (crowd == Crowd::tinyAndHuge)
        return dice.toss() ? 500 : 10; // 1:50
    return std::round(dice.between(20, 500));
}

inline double anyWay(Dice& dice, Crowd crowd, double base) {
    switch (crowd) {
    case Crowd::nearlyParallel:
        return base + dice.between(0, 12);
    case Crowd::underFiveDegrees:
        return base + (dice.toss() ? 180 : 0) + dice.between(0.1, 4.9);
    case Crowd::onTheAxes:
        return 90.0 * static_cast<double>(dice.whole(4)); // some on one line
    case Crowd::alike:
        return base + 15.0 * static_cast<double>(dice.whole(24));
    default:
        return std::round(10 * anyDegrees(dice)) / 10;
    }
}

inline std::vector<Force> anyForces(Dice& dice, Crowd crowd) {
    const bool few = crowd == Crowd::magnitudeAndDirection || crowd == Crowd::withoutAnswer || dice.toss();
    const std::uint64_t count = few ? 2 + dice.whole(3) : 2 + dice.whole(11);
    const double base = crowd == Crowd::onTheAxes ? 0 : anyDegrees(dice);
    std::vector<Force> forces;
    for (std::uint64_t f = 0; f < count; ++f) {
        const double size = anySize(dice, crowd);
        std::string name = anyName(dice, f);
        if (crowd == Crowd::givenAsSlopes && dice.toss())
            forces.push_back(slope(std::move(name), size, 1.0 + static_cast<double>(dice.whole(12)),
                                   static_cast<double>(dice.whole(12)) - 6));
        else
            forces.push_back(force(std::move(name), size, anyWay(dice, crowd, base)));
    }
    return forces;
}

/// Two unknown scalars among the forces and the sum: loci, two answers, one or none.
inline Sketch anyQuestion(Dice& dice, Crowd crowd) {
    std::vector<Force> forces = anyForces(dice, crowd);
    Force sum = force("R", dice.between(50, 800), anyDegrees(dice));
    Force& one = forces[0];
    Force& two = dice.toss() ? forces[1] : sum;
    const auto free = [&](Force& f, bool magnitude) {
        if (magnitude)
            f.magnitude.value.reset();
        else
            f.direction.form = ToFind{};
    };
    free(one, dice.toss());
    free(two, dice.toss());
    if (crowd == Crowd::withoutAnswer && dice.toss())
        free(one, dice.toss()); // too many to find, or others
    if (dice.whole(4) == 0)
        one.lineOfActionOnly = std::holds_alternative<AngleForm>(one.direction.form);
    return sketch(std::move(forces), std::move(sum));
}

inline Sketch anySketch(Dice& dice, Crowd crowd) {
    Sketch made;
    if (crowd == Crowd::magnitudeAndDirection || crowd == Crowd::withoutAnswer)
        made = anyQuestion(dice, crowd);
    else if (crowd == Crowd::atRest) {
        std::vector<Force> forces = anyForces(dice, crowd);
        forces.back().magnitude.value.reset();
        forces.back().direction.form = ToFind{};
        made = balanced(std::move(forces));
    } else
        made = sketch(anyForces(dice, crowd));
    made.title = dice.whole(3) == 0 ? ""
                 : dice.toss()      ? "Lines at the raft"
                                    : "Four lines that hold the survey raft against wind and tide";
    made.reference.axisDegrees = dice.whole(3) == 0 ? 90.0 * static_cast<double>(dice.whole(4)) : 0;
    made.reference.sense = dice.whole(4) == 0 ? Sense::cw : Sense::ccw;
    if (dice.whole(5) == 0)
        made.forceUnit = ForceUnit::kip;
    return made;
}

/// Case `number` alone, without those before it.
inline AnyFigure anyFigure(std::uint64_t seed, std::uint64_t number) {
    Dice dice(seed * 1'000'003 + number);
    AnyFigure made;
    made.sketch = anySketch(dice, static_cast<Crowd>(number % kCrowds));
    constexpr std::array kinds{ConstructionKind::parallelogram, ConstructionKind::triangle,
                               ConstructionKind::polygon};
    made.options.construction = kinds[dice.whole(3)];
    made.options.otherOrder = dice.toss();
    made.options.alone = dice.whole(6) == 0;
    made.options.stage = dice.whole(4) == 0 ? static_cast<Stage>(dice.whole(9)) : Stage::all;
    made.options.values = dice.whole(8) != 0;
    if (solve(made.sketch).solutions.size() > 1)
        made.options.solution = dice.whole(2);
    const double f = made.options.style.factor = dice.toss() ? 1 : dice.between(0.7, 2.5);
    switch (dice.whole(4)) {
    case 0: // a figure in a column of text
        made.width = f * dice.between(400, 520);
        made.height = f * dice.between(280, 380);
        break;
    case 1: // a lecture room's screen
        made.width = f * dice.between(900, 1500);
        made.height = f * dice.between(600, 1000);
        break;
    default:
        made.width *= f;
        made.height *= f;
    }
    return made;
}

} // namespace tailpoint::testing
