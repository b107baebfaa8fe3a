// SPDX-License-Identifier: MIT
#include "ui/files/spread_json.h"

#include "core/explain/ranges.h"
#include "core/explain/uncertainty.h"

#include <algorithm>

namespace tailpoint {

namespace {

JsonValue endsJson(const tolerance::Range& range) {
    JsonValue out = jsonObject(
        {{"least", jsonNumberOrNull(range.least)}, {"greatest", jsonNumberOrNull(range.greatest)}});
    if (range.marked)
        out.members.push_back({"marked", jsonTruth(true)});
    return out;
}

JsonValue arcJson(const tolerance::DirectionRange& range) {
    if (range.any)
        return {};
    JsonValue out = jsonObject({{"from", jsonNumber(range.from)}, {"to", jsonNumber(range.to)}});
    if (range.marked)
        out.members.push_back({"marked", jsonTruth(true)});
    return out;
}

std::vector<JsonMember>& wordsOf(JsonValue& vector) {
    return std::find_if(vector.members.begin(), vector.members.end(),
                        [](const JsonMember& member) { return member.key == "text"; })
        ->value.members;
}

JsonValue uncertainJson(const tolerance::Uncertain& one, const Sketch& sketch) {
    if (one.withheld != tolerance::Withheld::no)
        return jsonObject({{"standard", {}}, {"withheld", jsonText(tailpoint::nameOf(one.withheld))}});
    std::vector<JsonMember> shares;
    for (const tolerance::Share& share : one.shares)
        shares.push_back({plainInput(share, sketch), jsonNumber(share.part)});
    return jsonObject({{"standard", jsonNumber(one.standard)},
                       {"expanded", jsonNumber(one.expanded())},
                       {"shares", jsonObject(std::move(shares))}});
}

} // namespace

void addRange(JsonValue& vector, const tolerance::VectorRange& range, bool everywhere, const Sketch& sketch) {
    JsonValue all = jsonObject({{"magnitude", endsJson(range.magnitude)},
                                {"direction", arcJson(range.direction)},
                                {"x", endsJson(range.x)},
                                {"y", endsJson(range.y)},
                                {"everywhere", jsonTruth(everywhere)}});
    if (range.slack)
        all.members.push_back({"slack", jsonTruth(true)});
    vector.members.push_back({"range", std::move(all)});
    std::vector<JsonMember>& words = wordsOf(vector);
    words.push_back({"range", jsonText(toText(rangeTold(range.magnitude, sketch), Minus::ascii))});
    words.push_back({"directionRange", jsonText(toText(rangeTold(range.direction, sketch), Minus::ascii))});
}

void addUnknownRange(JsonValue& vector) {
    wordsOf(vector).push_back({"range", jsonText(rangeUnknown())});
}

void addUncertainty(JsonValue& vector, const tolerance::VectorUncertainty& of, const Sketch& sketch) {
    std::vector<JsonMember> all;
    for (const auto& [key, one] :
         {std::pair("magnitude", &of.magnitude), std::pair("direction", &of.direction), std::pair("x", &of.x),
          std::pair("y", &of.y)})
        if (*one)
            all.push_back({key, uncertainJson(**one, sketch)});
    vector.members.push_back({"uncertainty", jsonObject(std::move(all))});
}

} // namespace tailpoint
