// SPDX-License-Identifier: MIT
#include "ui/practice/record_json.h"

#include "ui/files/json_at.h"

#include <array>

namespace tailpoint {

namespace {

using namespace reading;

constexpr std::string_view kRecordFormat = "tailpoint-practice";
constexpr int kRecordVersion = 1;
constexpr int kMostBlank = 1000; ///< no solution has so many lines
constexpr int kMostTries = 1'000'000;

JsonValue listOf(const std::vector<std::string>& texts) {
    std::vector<JsonValue> items;
    for (const std::string& text : texts)
        items.push_back(jsonText(text));
    return jsonList(std::move(items), JsonLayout::flat);
}

JsonValue entryJson(const RecordEntry& entry) {
    std::vector<JsonMember> members{
        {"family", jsonText(entry.problem.family)},   {"level", jsonNumber(entry.problem.level)},
        {"number", jsonNumber(entry.problem.number)}, {"scene", jsonText(entry.scene)},
        {"sitting", jsonNumber(entry.sitting)},       {"when", jsonText(entry.when)},
        {"verdict", jsonText(nameOf(entry.verdict))}, {"slips", listOf(entry.slips)},
        {"lastHint", jsonTruth(entry.lastHint)},      {"aimedAt", jsonText(entry.aimedAt)}};
    if (entry.worked != WorkedAs::question)
        members.push_back({"as", jsonText(nameOf(entry.worked))});
    if (entry.worked == WorkedAs::faded)
        members.push_back({"blank", jsonNumber(entry.blank)});
    if (entry.tries > 1)
        members.push_back({"tries", jsonNumber(entry.tries)});
    if (entry.cameRight)
        members.push_back({"cameRight", jsonTruth(true)});
    return jsonObject(std::move(members), JsonLayout::padded);
}

WorkedAs workedIn(const At& at) {
    const std::string& name = textIn(at, "write \"faded\" or \"flawed\"");
    for (const WorkedAs worked : {WorkedAs::question, WorkedAs::faded, WorkedAs::flawed})
        if (nameOf(worked) == name)
            return worked;
    at.refuse(inQuotes(name) + " is no way to work a problem; write \"faded\" or \"flawed\"");
}

Verdict verdictIn(const At& at) {
    constexpr std::array all{Verdict::right, Verdict::rounded, Verdict::unit,
                             Verdict::axis,  Verdict::follows, Verdict::slip,
                             Verdict::other, Verdict::missing, Verdict::incomplete};
    const std::string& name = textIn(at, "write a verdict, as \"right\"");
    for (const Verdict verdict : all)
        if (nameOf(verdict) == name)
            return verdict;
    at.refuse(inQuotes(name) + " is no verdict; write one such as \"right\" or \"slip\"");
}

std::string textAt(const At& entry, std::string_view key) {
    return textIn(entry.require(key, "write a text"), "write a text in double quotes");
}

std::vector<std::string> textsIn(const At& at) {
    if (!at.is(JsonValue::Kind::array))
        refuseKind(at, "write a list of texts");
    std::vector<std::string> texts;
    for (std::size_t i = 0; i < at.value.items.size(); ++i)
        texts.push_back(textIn({at.value.items[i], at.path + '[' + std::to_string(i) + ']'},
                               "write a text in double quotes"));
    return texts;
}

int wholeAt(const At& entry, std::string_view key, int least, int most) {
    const At at = entry.require(key, "write a whole number");
    const int number = integerIn(at);
    if (number < least || number > most)
        at.refuse("is outside " + std::to_string(least) + " to " + std::to_string(most));
    return number;
}

RecordEntry entryIn(const At& at) {
    requireObject(at, "write an entry as an object");
    RecordEntry entry;
    entry.problem = {
        textAt(at, "family"), wholeAt(at, "level", 1, kLevels),
        static_cast<std::uint32_t>(wholeAt(at, "number", 0, static_cast<int>(kProblemNumbers) - 1))};
    entry.scene = textAt(at, "scene");
    entry.sitting = wholeAt(at, "sitting", 1, 1'000'000);
    entry.when = textAt(at, "when");
    entry.verdict = verdictIn(at.require("verdict", "write a verdict, as \"right\""));
    entry.slips = textsIn(at.require("slips", "write a list, as []"));
    entry.lastHint = truthIn(at.require("lastHint", "write true or false"));
    entry.aimedAt = textAt(at, "aimedAt");
    if (const auto as = at.maybe("as"))
        entry.worked = workedIn(*as);
    if (at.maybe("blank"))
        entry.blank = wholeAt(at, "blank", 0, kMostBlank);
    if (at.maybe("tries"))
        entry.tries = wholeAt(at, "tries", 1, kMostTries);
    if (const auto came = at.maybe("cameRight"))
        entry.cameRight = truthIn(*came);
    return entry;
}

PracticeRecord recordIn(const At& file) {
    requireObject(file, "a record of practice is an object and begins with {");
    const At format =
        file.require("format", "a record of practice begins with \"format\": \"tailpoint-practice\"");
    if (textIn(format, "write \"tailpoint-practice\"") != kRecordFormat)
        format.refuse("is not \"tailpoint-practice\"; open a record of practice");
    if (const At version = file.require("version", "write \"version\": 1");
        numberIn(version) != kRecordVersion)
        version.refuse("is no version that this one reads; write 1");
    const At entries = file.require("entries", "write \"entries\": [ ... ]");
    if (!entries.is(JsonValue::Kind::array))
        refuseKind(entries, "write a list of entries");
    PracticeRecord record;
    for (std::size_t i = 0; i < entries.value.items.size(); ++i)
        record.entries.push_back(entryIn({entries.value.items[i], "entries[" + std::to_string(i) + ']'}));
    return record;
}

} // namespace

QByteArray writeRecord(const PracticeRecord& record) {
    constexpr bool beside = true;
    std::vector<JsonValue> entries;
    for (const RecordEntry& entry : record.entries)
        entries.push_back(entryJson(entry));
    return QByteArray::fromStdString(
        writeJson(jsonObject({{"format", jsonText(kRecordFormat)},
                              {"version", jsonNumber(kRecordVersion), beside},
                              {"entries", jsonList(std::move(entries), JsonLayout::lines)}},
                             JsonLayout::lines)));
}

std::variant<PracticeRecord, FileError> readRecord(const QByteArray& bytes) {
    const std::string_view text(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    const auto parsed = parseJson(text);
    if (const auto* fault = std::get_if<JsonFault>(&parsed))
        return located(text, {}, fault->offset, fault->message);
    try {
        return recordIn({std::get<JsonValue>(parsed), {}});
    } catch (const Refusal& refusal) {
        return located(text, refusal.path, refusal.offset, refusal.message);
    }
}

} // namespace tailpoint
