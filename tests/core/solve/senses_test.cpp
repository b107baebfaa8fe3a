// SPDX-License-Identifier: MIT
// A line of action is its two rays: what it admits is what one ray or the other admits, and a root that a ray
// loses to its sense is one that the line has. No table is needed for that, only the equation itself.
#include "core/solve/solve.h"
#include "tests/support/cases.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

constexpr std::uint64_t kSeed = 20260206;
constexpr int kCases = 20'000;
constexpr double kNear = 1e-6; // of the scale: a root at which a force vanishes, or two that are almost one
constexpr double kAlike = 1e-9;

double tenth(Dice& dice) {
    return static_cast<double>(dice.whole(3600)) / 10 - 180;
}
double pull(Dice& dice) {
    return 1 + static_cast<double>(dice.whole(1000));
}

/// P by its direction; Q by its direction, or by its magnitude; one or two given forces; the sum given.
struct Case {
    Force line, other;
    std::vector<Force> given;
    Force sum;
    bool twoLines;
};

Case anyCase(Dice& dice) {
    const bool twoLines = dice.toss();
    Case made{force("P", kToFind, tenth(dice)),
              twoLines ? force("Q", kToFind, tenth(dice)) : force("Q", pull(dice), kToFind),
              {force("A", pull(dice), tenth(dice))},
              force("R", pull(dice), tenth(dice)),
              twoLines};
    if (dice.toss()) {
        made.given.push_back(force("B", pull(dice), tenth(dice)));
    }
    return made;
}

Force turnedRound(Force force) {
    auto& angle = std::get<AngleForm>(force.direction.form).value;
    angle += angle > 0 ? -180 : 180;
    return force;
}

Solved solvedWith(const Case& made, const Force& line, const Force& other) {
    std::vector<Force> forces{line, other};
    forces.insert(forces.end(), made.given.begin(), made.given.end());
    return solve(sketch(forces, made.sum));
}

/// Neither tangent nor at a force that vanishes, where the count hangs on the last bit.
bool isClear(const Solved& solved) {
    if (solved.tangent) {
        return false;
    }
    std::vector<Solution> roots = solved.solutions;
    roots.insert(roots.end(), solved.reversed.begin(), solved.reversed.end());
    for (const Solution& root : roots) {
        if (root.forces[0].magnitude < 1e3 * kNear || root.forces[1].magnitude < 1e3 * kNear) {
            return false;
        }
    }
    return roots.size() < 2 || (roots[0].forces[0].vector - roots[1].forces[0].vector).norm() > 1e3 * kNear;
}

bool isAmong(const Solution& root, const std::vector<Solution>& others) {
    return std::any_of(others.begin(), others.end(), [&](const Solution& other) {
        const double scale = root.forces[0].magnitude + root.forces[1].magnitude;
        return (root.forces[0].vector - other.forces[0].vector).norm() <= kAlike * scale * 1e3 &&
               (root.forces[1].vector - other.forces[1].vector).norm() <= kAlike * scale * 1e3;
    });
}

TEST(Senses, ALineOfActionAdmitsWhatItsTwoRaysAdmit) {
    Dice dice(kSeed);
    int counted = 0, withAnswer = 0, withTwo = 0;
    for (int i = 0; i < kCases; ++i) {
        const Case made = anyCase(dice);
        std::vector<Solution> byRays;
        bool clear = true;
        for (const Force& p : {made.line, turnedRound(made.line)}) {
            const std::vector<Force> others =
                made.twoLines ? std::vector{made.other, turnedRound(made.other)} : std::vector{made.other};
            for (const Force& q : others) {
                const Solved ray = solvedWith(made, p, q);
                clear = clear && isClear(ray);
                byRays.insert(byRays.end(), ray.solutions.begin(), ray.solutions.end());
            }
        }
        const Solved line =
            solvedWith(made, either(made.line), made.twoLines ? either(made.other) : made.other);
        if (!clear || line.status == Status::endless) {
            continue;
        }
        ++counted;
        withAnswer += line.solutions.empty() ? 0 : 1;
        withTwo += line.solutions.size() == 2 ? 1 : 0;
        EXPECT_TRUE(line.reversed.empty()) << "case " << i << ", seed " << kSeed;
        ASSERT_EQ(line.solutions.size(), byRays.size()) << "case " << i << ", seed " << kSeed;
        for (const Solution& root : line.solutions) {
            EXPECT_TRUE(isAmong(root, byRays)) << "case " << i << ", seed " << kSeed;
        }
    }
    EXPECT_GT(counted, kCases * 9 / 10);
    EXPECT_GT(withAnswer, kCases / 3);
    EXPECT_GT(withTwo, kCases / 20);
}

TEST(Senses, WhatARayLosesTheLineHas) {
    Dice dice(kSeed + 1);
    int lost = 0;
    for (int i = 0; i < kCases; ++i) {
        const Case made = anyCase(dice);
        const Solved ray = solvedWith(made, made.line, made.other);
        const Solved line =
            solvedWith(made, either(made.line), made.twoLines ? either(made.other) : made.other);
        if (!isClear(ray) || !isClear(line) || line.status == Status::endless) {
            continue;
        }
        lost += ray.reversed.empty() ? 0 : 1;
        EXPECT_EQ(ray.solutions.size() + ray.reversed.size(), line.solutions.size())
            << "case " << i << ", seed " << kSeed + 1;
        for (const Solution& root : ray.solutions) {
            EXPECT_TRUE(isAmong(root, line.solutions)) << "case " << i << ", seed " << kSeed + 1;
        }
        for (const Solution& root : ray.reversed) {
            EXPECT_TRUE(isAmong(root, line.solutions)) << "case " << i << ", seed " << kSeed + 1;
        }
    }
    EXPECT_GT(lost, kCases / 4);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
