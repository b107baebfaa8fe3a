// SPDX-License-Identifier: MIT
// What a family consists of: scenes, levels and a small function that draws its values. Internal to
// practice/; the rows are in *_families.cpp.
#pragma once

#include "core/practice/families.h"
#include "core/practice/lots.h"
#include "core/solve/solve.h"

namespace tailpoint::practising {

/// Which magnitudes a scene has.
struct Sizes {
    ForceUnit unit = ForceUnit::N;
    int low = 0, high = 0;             ///< in the unit
    std::array<int, kLevels> halves{}; ///< the step, by level, in halves of the unit
};

/// Of the things that scenes are about: in tens, fives and ones; kilonewtons in ones and halves.
/// None has more than three figures: what a figure shows is what the statement says.
inline constexpr Sizes kTowing{ForceUnit::N, 120, 480, {20, 10, 2}},
    kCords{ForceUnit::N, 40, 240, {20, 10, 2}}, kTraces{ForceUnit::N, 80, 360, {20, 10, 2}},
    kBows{ForceUnit::N, 90, 270, {20, 10, 2}}, kWeights{ForceUnit::N, 60, 400, {20, 10, 2}},
    kSigns{ForceUnit::lbf, 20, 120, {20, 10, 2}}, kTugs{ForceUnit::kN, 20, 95, {2, 1, 1}},
    kCapstan{ForceUnit::kgf, 30, 150, {20, 10, 2}}, kBars{ForceUnit::kN, 6, 48, {2, 1, 1}},
    kWires{ForceUnit::kN, 2, 18, {2, 1, 1}};

struct SceneRow {
    std::string_view id, title;
    /// What happens, with the vectors in places: "{P}" is "P = 340 N at 25°", or as much of it as is given;
    /// "{given}" all forces of which something is given.
    std::string_view lead;
    std::string_view x; ///< where the +x axis points: "along the fairway"
    Sizes sizes;
    bool caution = false;
};

/// A sketch in the making. No two draws stand among the arguments of one call, whose order is the compiler's.
/// Angles are drawn in half degrees, from the sheet's axis in its sense.
struct Draft {
    Lots& lots;
    const SceneRow& scene;
    int level = 1;

    /// On the level's grid of 5, 1 or a half degree, between whole degrees, never on an axis.
    int angle(int low, int high) const;
    struct Range {
        int low = 0, high = 0;
    };
    int angle(Range first, Range second, Range third) const; ///< from the level's range
    /// A magnitude from that part of the scene's range (per cent; beyond 100 too), on the level's step.
    double size(int low = 0, int high = 100) const;
    Force force(std::string name, int halfDegrees) const; ///< with a magnitude
    Sketch sketch(std::vector<Force> forces, Force sum) const;
    int byLevel(int first, int second, int third) const {
        return level == 1 ? first : level == 2 ? second : third;
    }
};

/// From the axis of a reference, in its sense: a direction that is counter-clockwise from +x. Half degrees.
int countedFrom(const Reference& reference, int halfDegrees);

Force unknownForce(std::string name);
Force lineAt(std::string name, int halfDegrees); ///< the magnitude is to be found
Force slopeOf(std::string name, double size, int run, int rise);
Force bearingOf(std::string name, double size, char from, int halfDegrees, char toward);
Force restingSum();
/// Another axis than +x counter-clockwise, one of four.
Reference otherReference(Lots& lots);

struct FamilyRow {
    std::string_view id, title, asks;
    std::array<LevelEntry, kLevels> levels;
    std::vector<SceneRow> scenes;
    Sketch (*draw)(const Draft&); ///< one try; whether it is sensible is judged elsewhere
    std::string_view question;    ///< "Find the resultant {R:name}."
    std::size_t answers = 1;
};

const std::vector<FamilyRow>& familyRows();
/// The rows, each in the file of its group.
FamilyRow twoForcesFamily(), severalForcesFamily(), slopesFamily(), bearingsFamily(), missingForceFamily(),
    threeInEquilibriumFamily(), smallestForceFamily(), twoAnswersFamily(), obliqueLinesFamily(),
    twoRopesFamily(), pushOrPullFamily();

/// What every problem keeps to, whatever its family: as many answers as wanted; no triangle with an angle
/// below kSharpest; no found force far smaller or greater than the rest; no answer whose last shown digit is
/// 0; no two answers that read alike.
inline constexpr double kSharpest = 12;    ///< degrees
inline constexpr double kLeastShare = 0.2; ///< of the greatest force
bool isSensible(const Sketch& sketch, const Solved& solved, std::size_t answers);

/// The problem in words.
std::string worded(const Sketch& sketch, const FamilyRow& family, const SceneRow& scene);

} // namespace tailpoint::practising
