// SPDX-License-Identifier: MIT
// What is written is what was read: values, forms, and keys that this version doesn't know.
#include "ui/files/sketch_json.h"
#include "ui/files/unknown_keys.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <cmath>
#include <random>

namespace tailpoint {
namespace TAILPOINT_FILE {

Sketch read(const QByteArray& text) {
    const auto result = readSketch(text);
    if (const auto* error = std::get_if<FileError>(&result)) {
        ADD_FAILURE() << error->line().toStdString() << "\nin " << text.toStdString();
        return emptySketch();
    }
    return std::get<Sketch>(result);
}

constexpr const char* kExample = R"({
  "format": "tailpoint-sketch", "version": 1,
  "title": "Survey raft on two lines",
  "units": { "force": "N", "angle": "deg" },
  "reference": { "axis": "+x", "sense": "ccw" },
  "figures": 3,
  "forces": [
    { "name": "P", "magnitude": 340, "direction": 25 },
    { "name": "Q", "magnitude": 275, "direction": -40 }
  ],
  "sum": { "name": "R", "magnitude": null, "direction": null }
}
)";

TEST(WritingASketch, GivesTheExampleOfTheFormatBackByteForByte) {
    EXPECT_EQ(writeSketch(read(kExample)).toStdString(), kExample);
}

TEST(WritingASketch, KeepsEveryFormOfADirection) {
    const QByteArray text = R"({
  "format": "tailpoint-sketch", "version": 1,
  "title": "",
  "units": { "force": "kip", "angle": "gon" },
  "reference": { "axis": 33.5, "sense": "cw" },
  "figures": 4, "moreAfterOne": true, "decimals": 2,
  "forces": [
    { "name": "P", "magnitude": { "value": 340, "plusMinus": 5 }, "direction": { "value": 25, "plusMinus": 0.5 } },
    { "name": "Q", "magnitude": 0.1, "direction": { "slope": [-3, 4], "plusMinus": 1 }, "sense": "either" },
    { "name": "S", "magnitude": 1e+22, "direction": { "bearing": "S12.5W" } },
    { "name": "T", "magnitude": null, "direction": { "bearing": "N" } }
  ],
  "sum": { "name": "R", "magnitude": 0 },
  "smallest": "T"
}
)";
    EXPECT_EQ(writeSketch(read(text)).toStdString(), text.toStdString());
}

TEST(WritingASketch, KeepsUnknownKeysWhereTheyStoodWithTheirNumbersAsWritten) {
    const QByteArray text = R"({
  "format": "tailpoint-sketch", "version": 1,
  "title": "t",
  "units": { "force": "N", "angle": "deg", "mass": "kg" },
  "reference": { "axis": "+x", "sense": "ccw", "note": [1, {"deep": null}] },
  "figures": 3,
  "forces": [
    { "name": "P", "magnitude": { "value": 340, "by": "scale" }, "direction": { "value": null, "by": "eye" }, "colour": "red", "id": 12345678901234567890 }
  ],
  "sum": { "name": "R", "magnitude": 0, "mark": true },
  "zeta": 1.50,
  "alpha": {"second": "\"quoted\"", "first": [1e3, -0.0]}
}
)";
    EXPECT_EQ(writeSketch(read(text)).toStdString(), text.toStdString());
}

TEST(WritingASketch, KeepsItsCasesWithEveryFormAndUnknownKeys) {
    const QByteArray text = R"({
  "format": "tailpoint-sketch", "version": 1,
  "title": "t",
  "units": { "force": "N", "angle": "deg" },
  "reference": { "axis": "+x", "sense": "ccw" },
  "figures": 3,
  "forces": [
    { "name": "P \"1\"", "magnitude": 340, "direction": 25 },
    { "name": "Q", "magnitude": 275, "direction": -40 },
    { "name": "S", "magnitude": null, "direction": null }
  ],
  "sum": { "name": "R", "magnitude": 600, "direction": 10 },
  "cases": [
    { "name": "calm", "changes": {} },
    { "name": "storm", "changes": { "Q": { "direction": { "bearing": "S12.5W" }, "by": "eye" }, "P \"1\"": { "magnitude": { "value": 51, "plusMinus": 2, "unit": "kgf" } } }, "wind": [9, "Bft"] },
    { "name": "squall", "changes": { "R": { "magnitude": { "value": 700, "from": "log" }, "direction": { "slope": [3, 4], "plusMinus": 1 } } } }
  ]
}
)";
    EXPECT_EQ(writeSketch(read(text)).toStdString(), text.toStdString());
}

TEST(WritingASketch, KeepsUnknownKeysOfADirectionWhenTheDirectionChanges) {
    Sketch sketch =
        read(R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg"},
      "forces": [{"name": "P", "magnitude": 1, "direction": {"slope": [3, 4], "by": "map"}}]})");
    sketch.forces[0].direction.form = AngleForm{50};
    EXPECT_TRUE(writeSketch(sketch).contains(R"("direction": { "value": 50, "by": "map" })"))
        << writeSketch(sketch).toStdString();
}

TEST(WritingASketch, EscapesWhatTheTitleHolds) {
    Sketch sketch = emptySketch();
    sketch.title = "\"A\" \\ B äöü \xE2\x86\x92";
    EXPECT_EQ(read(writeSketch(sketch)), sketch);
}

JsonValue parsed(std::string_view text) {
    const auto result = parseJson(text);
    EXPECT_TRUE(std::holds_alternative<JsonValue>(result)) << text;
    return std::get<JsonValue>(result);
}

/// A sketch with everything that a sketch can have, from a seed.
class AnySketch {
public:
    explicit AnySketch(unsigned seed) : m_random(seed) {}

    Sketch operator()() {
        Sketch sketch = emptySketch();
        sketch.title = pick({"", "Raft \"A\"", "line\\slash", "åäö"});
        sketch.forceUnit = kSheetForceUnits[below(kSheetForceUnits.size())];
        sketch.angleUnit = kAngleUnits[below(kAngleUnits.size())];
        sketch.reference = {below(2) ? 90.0 * static_cast<double>(below(4)) : number(),
                            below(2) ? Sense::ccw : Sense::cw};
        sketch.figures = 1 + static_cast<int>(below(12));
        sketch.angleDecimals = static_cast<int>(below(9));
        const std::size_t count = below(6);
        for (std::size_t i = 0; i < count; ++i)
            sketch.forces.push_back(force("F" + std::to_string(i)));
        sketch.sum = force(pick({"R", "Sum", "Σ"}));
        if (!isGiven(sketch.sum.magnitude) || sketch.sum.magnitude.value != 0.0)
            sketch.sum.lineOfActionOnly = below(4) == 0;
        if (below(3) == 0)
            sketch.smallest = sketch.sum.name;
        sketch.caution = sketch.forces.size() % 3 == 0;
        if (below(3) == 0)
            sketch.unknownKeys =
                unknownKeysOf(parsed(R"({"units": {"m": 1}, "note": "x"})"), KeyPlace::sketch,
                              {{"units", KeyPlace::units}, {"reference", KeyPlace::reference}});
        return sketch;
    }

private:
    std::size_t below(std::size_t n) {
        return std::uniform_int_distribution<std::size_t>(0, n - 1)(m_random);
    }
    std::string pick(std::initializer_list<const char*> of) { return *(of.begin() + below(of.size())); }
    double number() {
        const double mantissa = std::uniform_real_distribution<double>(-10, 10)(m_random);
        return mantissa * std::pow(10.0, std::uniform_int_distribution<int>(-9, 9)(m_random));
    }
    std::optional<Tolerance> tolerance() {
        if (below(4))
            return std::nullopt;
        const double plus = std::fabs(number()) + 1e-9;
        return below(2) ? plusMinus(plus) : Tolerance{plus, std::fabs(number()), false};
    }

    Force force(const std::string& name) {
        Force force;
        force.name = name;
        if (below(4))
            force.magnitude = {std::fabs(number()), tolerance()};
        const std::size_t form = below(4);
        if (form == 1)
            force.direction = {AngleForm{number()}, tolerance()};
        else if (form == 2)
            force.direction = {SlopeForm{number(), number()}, tolerance()};
        else if (form == 3)
            force.direction = {
                BearingForm{below(2) ? 'N' : 'S', static_cast<double>(below(901)) / 10, below(2) ? 'E' : 'W'},
                tolerance()};
        force.lineOfActionOnly = below(4) == 0;
        if (below(4) == 0)
            force.label = LabelPin{-40.5, 12};
        if (below(4) == 0)
            force.directionLabel = LabelPin{0, 1e-3};
        if (below(3) == 0)
            force.unknownKeys = unknownKeysOf(
                parsed(R"({"magnitude": {"by": "scale"}, "direction": {"by": "eye"}, "n": 2})"),
                KeyPlace::force, {{"magnitude", KeyPlace::magnitude}, {"direction", KeyPlace::direction}});
        return force;
    }

    std::mt19937 m_random;
};

TEST(WritingASketch, ReadingBackGivesTheVerySketchFor2000SeededSketches) {
    constexpr unsigned kSeed = 20'240'611;
    AnySketch any(kSeed);
    for (int i = 0; i < 2000; ++i) {
        const Sketch sketch = any();
        ASSERT_FALSE(firstFault(sketch))
            << "seed " << kSeed << " case " << i << ": " << firstFault(sketch)->message;
        const QByteArray text = writeSketch(sketch);
        ASSERT_EQ(read(text), sketch) << "seed " << kSeed << " case " << i << "\n" << text.toStdString();
        ASSERT_EQ(writeSketch(read(text)), text) << "seed " << kSeed << " case " << i;
    }
}

TEST(WritingASketch, TheSamplesAreWrittenBackAsTheyStand) {
    const QDir folder(QStringLiteral(TAILPOINT_SAMPLES));
    const QStringList names = folder.entryList({QStringLiteral("*.json")});
    ASSERT_GE(names.size(), 12);
    for (const QString& name : names) {
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QByteArray text = file.readAll();
        EXPECT_EQ(writeSketch(read(text)).toStdString(), text.toStdString()) << name.toStdString();
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
