// SPDX-License-Identifier: MIT
// The cases of a file: its list "cases".
#include "ui/files/force_read.h"
#include "ui/files/unknown_keys.h"

namespace tailpoint::reading {

namespace {

using Kind = JsonValue::Kind;

/// The value under a key, which a case may not leave open.
template <class Read>
auto valueUnder(const At& change, std::string_view key, Read read)
    -> std::optional<decltype(read(std::declval<const At&>()))> {
    const auto at = change.maybe(key);
    if (!at)
        return std::nullopt;
    auto value = read(*at);
    if (!isGiven(value))
        at->refuse("is null, and a case changes what is given alone; write a value, or take it out");
    return value;
}

CaseChange readChange(const At& at, const std::string& of, const Sketch& sheet) {
    requireObject(at, "write what is other in the case, as {\"magnitude\": 500}");
    requireHarmlessKeys(at, KeyPlace::caseChange);
    CaseChange change{of, {}, {}, {}};
    change.magnitude =
        valueUnder(at, "magnitude", [&](const At& value) { return readMagnitude(value, sheet); });
    change.direction =
        valueUnder(at, "direction", [&](const At& value) { return readDirection(value, sheet.angleUnit); });
    change.unknownKeys =
        unknownKeysOf(at.value, KeyPlace::caseChange,
                      {{"magnitude", KeyPlace::magnitude}, {"direction", KeyPlace::direction}});
    return change;
}

LoadCase readCase(const At& at, const Sketch& sheet) {
    requireObject(at, "write a case, as {\"name\": \"storm\", \"changes\": {\"P\": {\"magnitude\": 500}}}");
    requireHarmlessKeys(at, KeyPlace::loadCase);
    LoadCase one;
    one.name = textIn(at.require("name", "give the case a name"), "write a name in double quotes");
    const At changes = at.require("changes", "write what is other in the case, {} if nothing is");
    requireObject(changes, "write what is other in the case, as {\"P\": {\"magnitude\": 500}}");
    for (const JsonMember& member : changes.value.members)
        one.changes.push_back(readChange({member.value, changes.under(member.key)}, member.key, sheet));
    one.unknownKeys = unknownKeysOf(at.value, KeyPlace::loadCase, {});
    return one;
}

} // namespace

std::vector<LoadCase> readCases(const std::optional<At>& at, const Sketch& sheet) {
    std::vector<LoadCase> cases;
    if (!at || at->is(Kind::null))
        return cases;
    if (!at->is(Kind::array))
        refuseKind(*at, "write a list of cases, as [{\"name\": \"storm\", \"changes\": {}}]");
    for (const JsonValue& item : at->value.items)
        cases.push_back(readCase({item, at->path + '[' + std::to_string(cases.size()) + ']'}, sheet));
    return cases;
}

} // namespace tailpoint::reading
