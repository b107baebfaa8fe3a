// SPDX-License-Identifier: MIT
#include "ui/marking/marking_json.h"

#include "ui/files/json_text.h"

#include <utility>

namespace tailpoint {

namespace {

using Members = std::vector<JsonMember>;

template <class List, class Make>
JsonValue listOf(const List& list, Make make) {
    std::vector<JsonValue> items;
    for (const auto& one : list)
        items.push_back(make(one));
    return jsonList(std::move(items));
}

JsonValue textsJson(const std::vector<std::string>& texts) {
    return listOf(texts, [](const std::string& text) { return jsonText(text); });
}

JsonValue quantityJson(const MarkedQuantity& quantity) {
    Members members{{"name", jsonText(quantity.name)},
                    {"asked", jsonTruth(quantity.asked)},
                    {"given", jsonNumberOrNull(quantity.given)},
                    {"expected", jsonNumberOrNull(quantity.expected)},
                    {"verdict", jsonText(nameOf(quantity.verdict))}};
    if (quantity.answer > 0)
        members.push_back({"answer", jsonNumber(quantity.answer)});
    if (!quantity.givenText.empty())
        members.push_back({"text", jsonObject({{"given", jsonText(quantity.givenText)},
                                               {"expected", jsonText(quantity.expectedText)}})});
    if (const std::string range = quantity.rangeText.empty() ? rangeWords(quantity) : quantity.rangeText;
        quantity.expected && !range.empty())
        members.push_back({"range", jsonText(range)});
    return jsonObject(std::move(members));
}

JsonValue givesJson(const Finding& finding) {
    Members members;
    for (const auto& [name, value] : finding.gives)
        members.push_back({name, jsonNumber(value)});
    return jsonObject(std::move(members));
}

JsonValue slipJson(const Finding& finding) {
    Members members{{"id", jsonText(finding.id)}};
    if (!finding.second.empty())
        members.push_back({"second", jsonText(finding.second)});
    members.insert(members.end(), {{"place", jsonText(nameOf(finding.place))},
                                   {"step", finding.step ? jsonText(nameOf(*finding.step)) : JsonValue{}},
                                   {"evidence", jsonText(evidenceOf(finding))},
                                   {"explains", textsJson(finding.explains)},
                                   {"gives", givesJson(finding)},
                                   {"sentence", jsonText(toText(finding.sentence, Minus::ascii))},
                                   {"mend", jsonText(toText(finding.mend, Minus::ascii))},
                                   {"also", textsJson(finding.also)}});
    return jsonObject(std::move(members));
}

Members whole(std::string_view verdict, double points, double of) {
    return {{"verdict", jsonText(verdict)}, {"points", jsonNumber(points)}, {"of", jsonNumber(of)}};
}

void append(Members& members, const Marking& marking) {
    members.push_back({"quantities", listOf(marking.quantities, quantityJson)});
    members.push_back({"slips", listOf(marking.slips, slipJson)});
    if (marking.ask)
        members.push_back({"ask", jsonText(toText(*marking.ask, Minus::ascii))});
}

JsonValue ownPointsJson(const OwnPoints& own) {
    return jsonObject({{"points", jsonNumber(own.points)}, {"remark", jsonText(own.remark)}});
}

JsonValue studentJson(const MarkedRow& row) {
    Members members{{"who", jsonText(row.who)}, {"line", jsonNumber(static_cast<double>(row.line))}};
    const Members verdict = whole(row.verdict(), row.points(), row.of);
    members.insert(members.end(), verdict.begin(), verdict.end());
    if (row.own)
        members.push_back({"override", ownPointsJson(*row.own)});
    if (const std::string fault = row.faults(); !fault.empty())
        members.insert(members.begin() + 3, {"message", jsonText(fault)});
    append(members, row.marking.value_or(Marking{}));
    return jsonObject(std::move(members));
}

JsonValue entryJson(const SlipTally::Entry& entry) {
    return jsonObject({{"id", jsonText(entry.id)},
                       {"count", jsonNumber(static_cast<double>(entry.count))},
                       {"who", textsJson(entry.who)}});
}

/// A value that stands in a list: further in, without a line end behind it.
std::string within(const JsonValue& value) {
    std::string out = "    ";
    std::string text = writeJson(value);
    text.pop_back();
    for (const char c : text) { // within its texts line breaks are escaped
        out += c;
        if (c == '\n')
            out += "    ";
    }
    return out;
}

/// Written as it comes, so that no more than a row is kept beside the tally.
class ClassJson final : public ClassOutput {
public:
    std::string begin() override {
        return "{\n  \"format\": \"tailpoint-marking-class\", \"version\": " +
               std::to_string(kMarkingVersion) + ",\n  \"students\": [";
    }
    std::string row(const MarkedRow& row) override {
        m_tally.add(row);
        if (row.marking && !row.marking->caution.empty())
            m_caution = row.marking->caution;
        return (std::exchange(m_isFirst, false) ? "\n" : ",\n") + within(studentJson(row));
    }
    std::string end() override {
        std::string out = m_isFirst ? "],\n  \"tally\": [" : "\n  ],\n  \"tally\": [";
        bool isFirst = true;
        for (const SlipTally::Entry& entry : m_tally.entries())
            out += (std::exchange(isFirst, false) ? "\n" : ",\n") + within(entryJson(entry));
        out += isFirst ? "]" : "\n  ]";
        if (!m_caution.empty())
            out += ",\n  \"caution\": " + jsonString(m_caution);
        return out + "\n}\n";
    }

private:
    SlipTally m_tally{true};
    std::string m_caution;
    bool m_isFirst = true;
};

} // namespace

std::string markingJson(const Marking& marking) {
    Members members{{"format", jsonText("tailpoint-marking")},
                    {"version", jsonNumber(kMarkingVersion), true}};
    const Members verdict = whole(nameOf(marking.verdict), marking.points, marking.of);
    members.insert(members.end(), verdict.begin(), verdict.end());
    append(members, marking);
    if (!marking.caution.empty())
        members.push_back({"caution", jsonText(marking.caution)});
    return writeJson(jsonObject(std::move(members), JsonLayout::lines));
}

std::unique_ptr<ClassOutput> classJson() {
    return std::make_unique<ClassJson>();
}

} // namespace tailpoint
