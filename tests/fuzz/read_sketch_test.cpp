// SPDX-License-Identifier: MIT
// readSketch against mutated files: a sketch without fault, or one line that says what to mend.
#include "core/solve/solve.h"
#include "tests/fuzz/mutations.h"
#include "ui/files/sketch_json.h"
#include "ui/render/render.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>

using namespace tailpoint;
using fuzz::mutated;

namespace TAILPOINT_FILE {

constexpr std::uint64_t kSeed = 20'260;
constexpr int kCases = 20'000;

/// One document that uses every key, so that each can be mutated.
constexpr const char* kFullDocument = R"({
  "format": "tailpoint-sketch", "version": 1, "title": "Buoy & \"chain\" <4>", "colour": {"of": ["sail", 3]},
  "units": { "force": "kip", "angle": "gon" }, "reference": { "axis": 30.5, "sense": "cw" }, "figures": 4,
  "forces": [
    { "name": "P", "magnitude": {"value": 1.25, "plusMinus": 0.05}, "direction": {"slope": [3, -4]} },
    { "name": "Q\u2032", "magnitude": null, "direction": {"bearing": "S12.5W"}, "sense": "either" },
    { "name": "S", "magnitude": 0.75, "direction": {"value": -40, "plusMinus": 0.5}, "note": null } ],
  "smallest": null,
  "sum": { "name": "T", "magnitude": 2, "direction": null } })";

std::vector<std::string> corpus() {
    std::vector<std::string> all{kFullDocument};
    for (const auto& entry : std::filesystem::directory_iterator(TAILPOINT_SAMPLES)) {
        if (entry.path().extension() != ".json")
            continue; // such as the lock of a sample that is open in a window
        std::ifstream file(entry.path(), std::ios::binary);
        all.emplace_back(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
    }
    const QByteArray svg = toSvg(DisplayList{}, themeOf(ThemeName::paper), QByteArray(kFullDocument));
    all.emplace_back(svg.constData(), static_cast<std::size_t>(svg.size()));
    return all;
}

QByteArray bytesOf(const std::string& text) {
    return QByteArray(text.data(), static_cast<qsizetype>(text.size()));
}

/// Not empty, of bearable length, and one line without control characters.
bool isOneLine(const QString& line) {
    const bool controls = std::any_of(line.begin(), line.end(), [](QChar c) {
        return c.category() == QChar::Other_Control || c == QChar::LineSeparator ||
               c == QChar::ParagraphSeparator;
    });
    return !line.isEmpty() && line.size() <= 400 && !controls;
}

bool isFinite(const SolvedForce& force) {
    return std::isfinite(force.magnitude) && force.vector.allFinite() &&
           std::isfinite(force.direction.value_or(0));
}

bool isFinite(const Solved& solved) {
    return std::all_of(solved.solutions.begin(), solved.solutions.end(), [](const Solution& solution) {
        return isFinite(solution.sum) &&
               std::all_of(solution.forces.begin(), solution.forces.end(),
                           [](const SolvedForce& force) { return isFinite(force); });
    });
}

void expectASoundSketch(const Sketch& sketch) {
    const auto fault = firstFault(sketch);
    EXPECT_FALSE(fault) << fault->place << ": " << fault->message;
    if (fault)
        return;
    EXPECT_TRUE(isFinite(solve(sketch)));
    const auto again = readSketch(writeSketch(sketch));
    ASSERT_TRUE(std::holds_alternative<Sketch>(again)) << std::get<FileError>(again).line().toStdString();
    EXPECT_TRUE(std::get<Sketch>(again) == sketch) << writeSketch(sketch).toStdString();
}

void expectASketchOrOneLine(const std::string& text) {
    const auto read = readSketch(bytesOf(text));
    if (const auto* sketch = std::get_if<Sketch>(&read))
        return expectASoundSketch(*sketch);
    const auto& error = std::get<FileError>(read);
    EXPECT_TRUE(isOneLine(error.line())) << error.line().toStdString();
    EXPECT_FALSE(error.message.isEmpty());
}

TEST(FuzzReadSketch, TheUnchangedDocumentsAreRead) {
    const auto texts = corpus();
    ASSERT_GE(texts.size(), 3u);
    for (const std::string& text : texts) {
        const auto read = readSketch(bytesOf(text));
        ASSERT_TRUE(std::holds_alternative<Sketch>(read))
            << std::get<FileError>(read).line().toStdString() << "\n"
            << fuzz::escaped(text);
    }
}

TEST(FuzzReadSketch, EveryMutatedFileGivesASketchWithoutFaultOrOneLine) {
    const auto texts = corpus();
    fuzz::announceSeedOnCrash();
    int taken = 0;
    for (int i = 0; i < kCases && !HasFailure(); ++i) {
        const std::uint64_t seed = kSeed + static_cast<std::uint64_t>(i);
        fuzz::setCurrentSeed(seed);
        const std::string text = mutated(texts, seed);
        SCOPED_TRACE("seed " + std::to_string(seed) + ": " + fuzz::escaped(text));
        expectASketchOrOneLine(text);
        taken += std::holds_alternative<Sketch>(readSketch(bytesOf(text))) ? 1 : 0;
    }
    // A mutation that never left anything readable would test the JSON parser alone.
    EXPECT_GT(taken, kCases / 50);
    EXPECT_LT(taken, kCases * 9 / 10);
}

TEST(FuzzReadSketch, DeepNestingIsAnsweredInOneLine) {
    for (const char* bracket : {"[", "{\"a\":", "[[{\"forces\":"}) {
        std::string text;
        for (int depth = 0; depth < 200'000; ++depth)
            text += bracket;
        expectASketchOrOneLine(text);
    }
}

} // namespace TAILPOINT_FILE
