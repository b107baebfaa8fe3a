// SPDX-License-Identifier: MIT
#include "ui/practice/problem_file.h"

#include "core/practice/other_numbers.h"
#include "core/practice/scheme.h"
#include "ui/files/sketch_json.h"
#include "ui/files/unknown_keys.h"

#include <algorithm>

namespace tailpoint {

namespace {

constexpr std::string_view kStatement = "statement", kPractice = "practice", kMarking = "marking";

const JsonValue* keptKey(const Sketch& sketch, std::string_view key) {
    for (const JsonMember& member : unknownKeysIn(sketch.unknownKeys).own)
        if (member.key == key)
            return &member.value;
    return nullptr;
}

/// Put in the place of the same key, else behind the others.
Sketch withKey(Sketch sketch, std::string_view key, std::optional<JsonValue> value) {
    UnknownKeys keys = unknownKeysIn(sketch.unknownKeys);
    const auto found = std::find_if(keys.own.begin(), keys.own.end(),
                                    [&](const JsonMember& member) { return member.key == key; });
    if (!value && found != keys.own.end())
        keys.own.erase(found);
    else if (value && found != keys.own.end())
        found->value = std::move(*value);
    else if (value)
        keys.own.push_back({std::string(key), std::move(*value)});
    sketch.unknownKeys = keys == UnknownKeys{} ? Opaque() : Opaque::of(std::move(keys));
    return sketch;
}

} // namespace

Sketch withStatement(const Sketch& sketch, const std::string& statement) {
    return withKey(sketch, kStatement, statement.empty() ? std::nullopt : std::optional(jsonText(statement)));
}

Sketch withPracticeKeys(const Problem& problem) {
    Sketch sketch = withStatement(problem.sketch, problem.statement);
    std::vector<JsonMember> marking;
    if (problem.bothAnswers)
        marking.push_back({"bothAnswers", jsonTruth(true)});
    if (isSigned(problem.sketch))
        marking.push_back({"signedSenses", jsonTruth(true)});
    if (!marking.empty())
        sketch = withKey(std::move(sketch), kMarking, jsonObject(std::move(marking)));
    return withKey(std::move(sketch), kPractice,
                   jsonObject({{"code", jsonText(problem.code)},
                               {"family", jsonText(problem.id.family)},
                               {"level", jsonNumber(problem.id.level)},
                               {"number", jsonNumber(problem.id.number)},
                               {"version", jsonNumber(kPracticeVersion)}}));
}

QByteArray writeProblem(const Problem& problem) {
    return writeSketch(withPracticeKeys(problem));
}

std::string statementOf(const Sketch& sketch) {
    const JsonValue* statement = keptKey(sketch, kStatement);
    return statement != nullptr && statement->kind == JsonValue::Kind::string ? statement->text
                                                                              : std::string();
}

std::string ProblemWords::of(const Sketch& sketch) {
    std::string words = statementOf(sketch);
    const auto id = words.empty() ? std::nullopt : problemIdOf(sketch);
    if (id != m_id) {
        m_id = id;
        m_made = id ? problem(*id) : std::nullopt;
    }
    const bool isOfOthers = m_made && m_made->statement == words && !isSameQuestion(m_made->sketch, sketch);
    return isOfOthers ? std::string() : words;
}

std::string wordsOf(const Sketch& sketch) {
    return ProblemWords().of(sketch);
}

std::optional<Sketch> withOtherNumbers(const Sketch& sketch, std::uint32_t seed) {
    const auto other = otherNumbers(sketch, seed);
    if (!other)
        return std::nullopt;
    const auto id = problemIdOf(sketch);
    const auto made = id ? problem(*id) : std::nullopt;
    const bool isAsMade = made && made->statement == statementOf(sketch);
    return withKey(withStatement(*other, isAsMade ? statementFor(*id, *other) : std::string()), kPractice,
                   std::nullopt);
}

std::optional<ProblemId> problemIdOf(const Sketch& sketch) {
    const JsonValue* practice = keptKey(sketch, kPractice);
    const JsonValue* code =
        practice != nullptr && practice->kind == JsonValue::Kind::object ? practice->find("code") : nullptr;
    return code != nullptr && code->kind == JsonValue::Kind::string ? problemIdOf(code->text) : std::nullopt;
}

} // namespace tailpoint
