// SPDX-License-Identifier: MIT
// Samples as a lecture takes them, and the numbers that stand in its steps and on its sheet.
#pragma once

#include "core/construct/reduction.h"
#include "ui/document/sketch_document.h"
#include "ui/lecture/plan.h"
#include "ui/render/render.h"

#include <QDir>
#include <gtest/gtest.h>
#include <set>
#include <string>

namespace tailpoint {

struct Sample {
    std::string name;
    Result result;
};

inline std::vector<Sample> allSamples() {
    std::vector<Sample> all;
    const QDir folder(QStringLiteral(TAILPOINT_SAMPLES));
    for (const QString& name : folder.entryList({QStringLiteral("*.json")})) {
        SketchDocument document;
        const auto error = document.open(folder.filePath(name));
        EXPECT_FALSE(error) << name.toStdString();
        all.push_back({name.toStdString(), document.result()});
    }
    return all;
}

inline Result sampleNamed(const std::string& name) {
    SketchDocument document;
    EXPECT_FALSE(document.open(QStringLiteral(TAILPOINT_SAMPLES "/") + QString::fromStdString(name)));
    return document.result();
}

/// NumbersRead with a unit, without their sign: an arc tells its sense by its head.
using NumbersRead = std::set<std::string>;

inline std::string withoutSign(std::string text) {
    for (const std::string sign : {"-", "\u2212"})
        if (text.starts_with(sign))
            text.erase(0, sign.size());
    return text;
}

inline void addNumbers(NumbersRead& numbers, const Formula& f) {
    if (f.kind == FormulaKind::number && !f.sub.empty())
        numbers.insert(withoutSign(f.text) + (f.sub == "°" ? "" : " ") + f.sub);
    for (const Formula& part : f.parts)
        addNumbers(numbers, part);
}
inline void addNumbers(NumbersRead& numbers, const Prose& prose) {
    for (const Piece& piece : prose.pieces)
        if (const auto* formula = std::get_if<Formula>(&piece))
            addNumbers(numbers, *formula);
}

/// What a beat reads out.
inline void addNumbers(NumbersRead& numbers, const Stop& stop, std::size_t beat) {
    for (const BeatLine& line : stop.beats[beat]) {
        if (line.kind == BeatLine::Kind::reasoning)
            addNumbers(numbers, stop.step.reasoning[line.index]);
        else if (line.kind == BeatLine::Kind::conclusion)
            addNumbers(numbers, stop.step.conclusion[line.index]);
        else if (line.kind == BeatLine::Kind::table)
            for (const auto& row : stop.step.table->rows)
                for (const Formula& cell : row)
                    addNumbers(numbers, cell);
        else {
            const auto relations = linesOf(stop.step.workings[line.index]);
            for (int i = 0; i < line.parts && i < static_cast<int>(relations.size()); ++i)
                addNumbers(numbers, relations[static_cast<std::size_t>(i)]);
        }
    }
}

/// A direction and an angle of the figure may read alike and are not the same.
enum class Which { directions, others };

/// The results that a stop's workings come to.
inline NumbersRead resultsOf(const Step& step, Which which) {
    NumbersRead results;
    for (const Working& working : step.workings) {
        const bool isDirection = working.subject && working.subject->id.what == What::direction;
        if (working.value && isDirection == (which == Which::directions))
            addNumbers(results, *working.value);
    }
    return results;
}

inline std::string textOf(const Text& text) {
    std::string all;
    for (const Run& run : text.runs)
        all += run.text;
    return all;
}

inline bool isOf(const Group& group, Which which) {
    const auto* quantity = group.part ? std::get_if<QuantityId>(&*group.part) : nullptr;
    const bool isDirection = quantity != nullptr && quantity->what == What::direction;
    return group.id == "key" || isDirection == (which == Which::directions);
}

/// The values that stand on the sheet: "P = 340 N" counts as "340 N".
inline NumbersRead numbersOn(const DisplayList& list, std::optional<Which> which = std::nullopt) {
    NumbersRead numbers;
    for (const Group& group : list.groups) {
        if (group.role == Role::titleblock || group.id == "note" || (which && !isOf(group, *which)))
            continue;
        for (const Item& item : group.items)
            if (const auto* text = std::get_if<Text>(&item)) {
                const std::string all = textOf(*text);
                const auto equals = all.rfind("= ");
                const std::string value = equals == std::string::npos ? all : all.substr(equals + 2);
                if (value.find_first_of("0123456789") != std::string::npos)
                    numbers.insert(withoutSign(value));
            }
    }
    return numbers;
}

inline Figure figureOf(const Result& result, const Stop& stop, std::size_t beat) {
    const Result shown = resultOf(result.sketch, stop.solution);
    FigureOptions options = stop.figureAt(beat);
    options.solution = stop.solution;
    const View view = fittedView(shown.sketch, shown.solved, shown.construction, options, 900, 700);
    return compose(shown.sketch, shown.solved, shown.construction, view, options, QtTextMeasure());
}

inline std::string listed(const NumbersRead& numbers) {
    std::string all;
    for (const std::string& number : numbers)
        all += number + "; ";
    return all;
}

} // namespace tailpoint
