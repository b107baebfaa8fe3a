// SPDX-License-Identifier: MIT
// read(write(s)) == s for seeded sketches of every form.
#include "tests/fuzz/mutations.h"
#include "ui/files/sketch_json.h"
#include "ui/files/unknown_keys.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <set>

using namespace tailpoint;
using fuzz::Dice;

namespace TAILPOINT_FILE {

constexpr std::uint64_t kSeed = 52'000;
constexpr int kCases = 5'000;

constexpr std::array<const char*, 14> kNames{"P",      "Q",   "F1",   "bow line",       "\"quoted\"",
                                             "a\\b",   "<&>", "K'",   "\u00D6",         "T\u2081",
                                             "\u6CE2", "{}",  "null", "sixteen letters"};
constexpr std::array<const char*, 6> kTitles{
    "", "Survey raft", "Line\u2014dash & \"quotes\"", "\\n is no break", "</metadata>", "\u6CE2\u6D6E"};
constexpr std::array<const char*, 4> kUnknownKeys{"{}", "{}", R"({"colour": "red"})",
                                                  R"({"a": [1, 2.5, null, {"b": true}], "z": ""})"};

Opaque unknownKeys(Dice& dice, KeyPlace place) {
    return unknownKeysOf(std::get<JsonValue>(parseJson(dice.oneOf(kUnknownKeys))), place, {});
}

double someMagnitude(Dice& dice) {
    switch (dice.below(4)) {
    case 0:
        return 0;
    case 1:
        return static_cast<double>(dice.below(1000));
    case 2:
        return dice.between(0, 1000);
    default:
        return dice.between(1, 10) * std::pow(10.0, dice.between(-150, 149));
    }
}

Tolerance tolerance(Dice& dice, double scale) {
    const double size = dice.between(0.001, 1) * scale;
    switch (dice.below(4)) {
    case 0:
        return {size, 0, false};
    case 1:
        return {size / 3, size, false};
    case 2:
        return plusMinusPercent(dice.between(0.1, 20));
    default:
        return plusMinus(size);
    }
}

TypedForce inItsOwnUnit(Dice& dice) {
    const double value = dice.between(1, 1000);
    const LoadUnit unit =
        dice.oneIn(3) ? LoadUnit(dice.oneOf(kMassUnits)) : LoadUnit(dice.oneOf(kForceUnits));
    return {value, unit, std::nullopt};
}

Magnitude magnitude(Dice& dice, const Sketch& sheet) {
    if (dice.oneIn(6))
        return {};
    if (dice.oneIn(4)) {
        TypedForce typed = inItsOwnUnit(dice);
        if (dice.oneIn(2))
            typed.tolerance = tolerance(dice, typed.value);
        return magnitudeOf(typed, sheet.forceUnit, sheet.gravity);
    }
    Magnitude made;
    made.value = someMagnitude(dice);
    if (dice.oneIn(4))
        made.tolerance = tolerance(dice, std::max(*made.value, 1.0));
    return made;
}

std::optional<Permitted> permitted(Dice& dice, const Sketch& sheet) {
    return dice.oneIn(5) ? std::optional(Permitted{dice.between(-400, 400),
                                                   dice.between(0.01, 1) * turnIn(sheet.angleUnit) / 2})
                         : std::nullopt;
}

BearingForm bearing(Dice& dice) {
    constexpr std::array<double, 4> kDegrees{0, 30, 45.5, 90};
    return {dice.oneIn(2) ? 'N' : 'S', dice.oneOf(kDegrees), dice.oneIn(2) ? 'E' : 'W'};
}

SlopeForm slope(Dice& dice) {
    const SlopeForm made{std::round(dice.between(-9, 9)), dice.between(-9, 9)};
    return made.run == 0 && made.rise == 0 ? SlopeForm{} : made;
}

Direction direction(Dice& dice) {
    Direction made;
    switch (dice.below(6)) {
    case 0:
        return made;
    case 1:
        made.form = slope(dice);
        break;
    case 2:
        made.form = bearing(dice);
        break;
    case 3:
        made.form = AngleForm{dice.between(-1e6, 1e6)};
        break;
    default:
        made.form = AngleForm{std::round(dice.between(-1800, 1800)) / 10};
    }
    if (std::holds_alternative<AngleForm>(made.form) && dice.oneIn(4))
        made.tolerance = tolerance(dice, 5);
    return made;
}

Force force(Dice& dice, const std::string& name, const Sketch& sheet) {
    Force made{name, magnitude(dice, sheet), direction(dice), dice.oneIn(8),
               unknownKeys(dice, KeyPlace::force)};
    if (dice.oneIn(5))
        made.limit = inItsOwnUnit(dice);
    made.permitted = permitted(dice, sheet);
    return made;
}

std::vector<Force> forces(Dice& dice, std::set<std::string>& names, const Sketch& sheet) {
    std::vector<Force> made;
    for (std::size_t left = dice.below(9); left > 0; --left) {
        const std::string name = dice.oneOf(kNames);
        if (names.insert(name).second)
            made.push_back(force(dice, name, sheet));
    }
    return made;
}

Force someSum(Dice& dice, const Sketch& sheet) {
    Force made = force(dice, dice.oneIn(4) ? "sum of all" : defaultSumName(sheet.forces), sheet);
    if (dice.oneIn(4)) { // equilibrium
        made.magnitude = Magnitude{0.0, {}};
        made.direction = Direction{};
    }
    return made;
}

/// Other given values for some vectors.
LoadCase loadCase(Dice& dice, std::string name, const Sketch& sketch) {
    LoadCase made{std::move(name), {}, unknownKeys(dice, KeyPlace::loadCase)};
    const auto change = [&](const Force& vector) {
        CaseChange other{vector.name, magnitude(dice, sketch), direction(dice)};
        if (!isGiven(*other.magnitude) || !isGiven(vector.magnitude))
            other.magnitude.reset();
        if (!isGiven(*other.direction) || !isGiven(vector.direction))
            other.direction.reset();
        if (other.magnitude || other.direction)
            made.changes.push_back(std::move(other));
    };
    for (const Force& vector : sketch.forces)
        if (dice.oneIn(2))
            change(vector);
    if (!isEquilibrium(sketch))
        change(sketch.sum);
    return made;
}

Sketch sketchOf(std::uint64_t seed) {
    Dice dice(seed);
    Sketch made;
    made.title = dice.oneOf(kTitles);
    made.forceUnit = dice.oneOf(kSheetForceUnits);
    made.gravity = dice.oneIn(3) ? dice.between(kLeastGravity, kMostGravity) : kStandardGravity;
    made.angleUnit = dice.oneOf(kAngleUnits);
    constexpr std::array<double, 6> kAxes{0, 90, 180, 270, 30.5, -12.25};
    made.reference = {dice.oneOf(kAxes), dice.oneIn(2) ? Sense::ccw : Sense::cw};
    made.figures = static_cast<int>(1 + dice.below(12));
    made.angleDecimals = static_cast<int>(dice.below(9));
    std::set<std::string> names;
    made.forces = forces(dice, names, made);
    made.sum = someSum(dice, made);
    made.unknownKeys = unknownKeys(dice, KeyPlace::sketch);
    for (const char* name : {"calm", "storm \"9\"", "as built"})
        if (dice.oneIn(3))
            made.cases.push_back(loadCase(dice, name, made));
    return made;
}

TEST(RoundTrip, ASketchWrittenAndReadIsTheSameSketch) {
    int tried = 0;
    for (int i = 0; i < kCases && !HasFailure(); ++i) {
        const std::uint64_t seed = kSeed + static_cast<std::uint64_t>(i);
        const Sketch sketch = sketchOf(seed);
        if (firstFault(sketch))
            continue;
        ++tried;
        const QByteArray written = writeSketch(sketch);
        SCOPED_TRACE("seed " + std::to_string(seed) + "\n" + written.toStdString());
        const auto read = readSketch(written);
        ASSERT_TRUE(std::holds_alternative<Sketch>(read)) << std::get<FileError>(read).line().toStdString();
        EXPECT_TRUE(std::get<Sketch>(read) == sketch);
        EXPECT_EQ(writeSketch(std::get<Sketch>(read)), written);
    }
    if (!HasFailure()) {
        EXPECT_GT(tried, kCases / 2) << "too few of the made sketches are without fault";
    }
}

} // namespace TAILPOINT_FILE
