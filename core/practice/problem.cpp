// SPDX-License-Identifier: MIT
#include "core/practice/problem.h"

#include "core/mark/slip_numbers.h"
#include "core/practice/family.h"
#include "core/practice/in_turn.h"
#include "core/practice/scheme.h"
#include "core/quantity/decimals.h"

#include <algorithm>

namespace tailpoint {

namespace {

using namespace practising;

constexpr int kDraws = 2000;     ///< in which a sensible question is found
constexpr int kComparisons = 30; ///< of sensible questions, for one that tells its slips apart

template <class Value>
bool hasTwice(std::vector<Value> values) {
    std::sort(values.begin(), values.end());
    return std::adjacent_find(values.begin(), values.end()) != values.end();
}

/// Two given values alike would hide who takes one for the other.
bool hasEqualGivens(const Sketch& sketch) {
    std::vector<double> sizes, ways;
    const auto add = [&](const Force& vector) {
        if (vector.magnitude.value)
            sizes.push_back(*vector.magnitude.value);
        if (const auto way = referredDirection(vector.direction, sketch))
            ways.push_back(*way);
    };
    for (const Force& force : sketch.forces)
        add(force);
    add(sketch.sum);
    return hasTwice(std::move(sizes)) || hasTwice(std::move(ways));
}

std::vector<AlikeSlips> alikeIn(const SlipTable& table) {
    std::vector<AlikeSlips> alike;
    const auto add = [&](std::string_view first, std::string_view second) {
        const AlikeSlips pair{std::string(first), std::string(second)};
        if (std::find(alike.begin(), alike.end(), pair) == alike.end())
            alike.push_back(pair);
    };
    for (auto one = table.slips.begin(); one != table.slips.end(); ++one) {
        if (!one->changes)
            continue;
        if (!table.tellsApart(one->numbers, table.right))
            add(one->id, {});
        for (auto other = table.slips.begin(); other != one; ++other)
            if (other->changes && other->id != one->id && !table.tellsApart(one->numbers, other->numbers))
                add(other->id, one->id);
    }
    return alike;
}

/// How many of the likely slips would be right in this question.
std::size_t withoutEffect(const SlipTable& table, const std::vector<std::string_view>& likely) {
    return static_cast<std::size_t>(std::count_if(likely.begin(), likely.end(), [&](std::string_view id) {
        return std::none_of(table.slips.begin(), table.slips.end(),
                            [&](const SlipNumbers& slip) { return slip.changes && slip.id == id; });
    }));
}

/// The best of some sensible questions.
struct Found {
    std::optional<Sketch> sketch;
    std::optional<Marker> marker;
    std::vector<AlikeSlips> alike;
    std::size_t faults = 0;
};

Found findSketch(const FamilyRow& family, const Draft& draft) {
    Found best;
    const auto& slips = family.levels[static_cast<std::size_t>(draft.level - 1)].slips;
    MarkOptions options;
    options.bothAnswers = family.answers == 2;
    options.onlySlips.assign(slips.begin(), slips.end());
    options.saysWhy = false;
    for (int drawn = 0, compared = 0; drawn < kDraws && compared < kComparisons; ++drawn) {
        Sketch sketch = family.draw(draft);
        const Solved solved = solve(sketch);
        if (hasEqualGivens(sketch) || !isSensible(sketch, solved, family.answers))
            continue;
        options.signedSenses = isSigned(sketch);
        Marker marker(sketch, solved, options);
        const auto table = slipTable(marker);
        ++compared;
        if (!table)
            continue;
        auto alike = alikeIn(*table);
        const std::size_t faults = 2 * alike.size() + withoutEffect(*table, slips);
        if (!best.sketch || faults < best.faults)
            best = {std::move(sketch), std::move(marker), std::move(alike), faults};
        if (best.faults == 0)
            break;
    }
    return best;
}

std::string textOf(const Force& vector) {
    std::string text = vector.name + (vector.lineOfActionOnly ? "|" : ";");
    if (vector.magnitude.value)
        text += shortest(*vector.magnitude.value);
    text += ';';
    if (const auto* angle = std::get_if<AngleForm>(&vector.direction.form))
        text += shortest(angle->value);
    if (const auto* slope = std::get_if<SlopeForm>(&vector.direction.form))
        text += shortest(slope->run) + ':' + shortest(slope->rise);
    if (const auto* bearing = std::get_if<BearingForm>(&vector.direction.form))
        text += bearing->from + shortest(bearing->degrees) + bearing->toward;
    return text + '\n';
}

} // namespace

std::string practising::givenText(const Sketch& sketch) {
    std::string text = std::string(symbolOf(sketch.forceUnit)) + std::string(nameOf(sketch.angleUnit)) +
                       shortest(sketch.reference.axisDegrees) +
                       (sketch.reference.sense == Sense::cw ? "cw" : "ccw") + sketch.smallest.value_or("") +
                       '\n';
    for (const Force& force : sketch.forces)
        text += textOf(force);
    return text + textOf(sketch.sum);
}

namespace {

/// A family, and what its problem is drawn with.
struct Drawn {
    const FamilyRow* row = nullptr;
    Lots lots;
    const SceneRow* scene = nullptr;
};

std::optional<Drawn> drawnFor(const ProblemId& id) {
    const auto& rows = familyRows();
    const auto row =
        std::find_if(rows.begin(), rows.end(), [&](const FamilyRow& one) { return one.id == id.family; });
    if (row == rows.end() || id.level < 1 || id.level > kLevels || id.number >= kProblemNumbers)
        return std::nullopt;
    Drawn drawn{&*row, Lots(kNumbersVersion, static_cast<std::uint64_t>(row - rows.begin()),
                            static_cast<std::uint64_t>(id.level), std::uint64_t{id.number})};
    drawn.scene = &drawn.lots.oneOf(row->scenes);
    return drawn;
}

} // namespace

std::optional<DrawnProblem> practising::drawProblem(const ProblemId& id) {
    auto drawn = drawnFor(id);
    if (!drawn)
        return std::nullopt;
    Found found = findSketch(*drawn->row, {drawn->lots, *drawn->scene, id.level});
    if (!found.sketch)
        return std::nullopt;
    std::string words = worded(*found.sketch, *drawn->row, *drawn->scene);
    return DrawnProblem{{id, problemCode(id), std::string(drawn->scene->id), std::move(*found.sketch),
                         std::move(words), drawn->row->answers == 2, std::move(found.alike)},
                        std::move(*found.marker)};
}

std::optional<Problem> problem(const ProblemId& id) {
    auto drawn = drawProblem(id);
    return drawn ? std::optional(std::move(drawn->problem)) : std::nullopt;
}

std::string statementFor(const ProblemId& id, const Sketch& sketch) {
    const auto drawn = drawnFor(id);
    return drawn ? worded(sketch, *drawn->row, *drawn->scene) : std::string();
}

std::uint32_t problemNumber(std::uint32_t seed, std::size_t index) {
    // far apart for seeds that are near: odd, about the golden section of all numbers
    constexpr std::uint32_t stride = 162'013;
    return static_cast<std::uint32_t>((std::uint64_t{seed} * stride + index) % kProblemNumbers);
}

std::vector<Problem> problemSet(std::span<const std::string> families, int level, std::size_t count,
                                std::uint32_t seed, std::size_t perSheet) {
    ProblemsInTurn problems({families.begin(), families.end()}, level, seed, perSheet);
    std::vector<Problem> all;
    while (all.size() < count) {
        auto next = problems.at(all.size());
        if (!next)
            break;
        all.push_back(std::move(next->problem));
    }
    return all;
}

bool isSameQuestion(const Sketch& a, const Sketch& b) {
    return givenText(a) == givenText(b);
}

} // namespace tailpoint
