// SPDX-License-Identifier: MIT
#include "ui/marking/mark_options.h"

#include "core/quantity/text.h"
#include "ui/files/json_at.h"
#include "ui/files/unknown_keys.h"

#include <algorithm>

namespace tailpoint {

namespace {

using namespace reading;

constexpr std::string_view kKey = "marking";

const JsonValue* keptMarking(const Sketch& sketch) {
    for (const JsonMember& member : unknownKeysIn(sketch.unknownKeys).own)
        if (member.key == kKey)
            return &member.value;
    return nullptr;
}

/// null is what is not there.
std::optional<At> within(const At& at, std::string_view key) {
    const auto found = at.maybe(key);
    return found && !found->is(JsonValue::Kind::null) ? found : std::nullopt;
}

double pointsIn(const At& at) {
    const double points = numberIn(at);
    if (points < 0 || points > 1e6)
        at.refuse("is outside 0 to 1000000 points; write what is meant");
    return points;
}

double shareIn(const At& at) {
    const double share = numberIn(at);
    if (share < 0 || share > 1)
        at.refuse("is outside 0 to 1, a share of the points; write what is meant");
    return share;
}

void readTruth(const At& at, std::string_view key, bool& into) {
    if (const auto one = within(at, key))
        into = truthIn(*one);
}

void readShare(const At& at, std::string_view key, double& into) {
    if (const auto one = within(at, key))
        into = shareIn(*one);
}

void readPoints(const At& at, MarkOptions& options) {
    requireObject(at, "write the points, as {\"R\": 2, \"theta_R\": 1}");
    for (const JsonMember& member : at.value.members)
        options.points.emplace_back(member.key, pointsIn({member.value, at.under(member.key)}));
}

MarkOptions readMarking(const At& at) {
    MarkOptions options;
    requireObject(at, "write it as {\"points\": {\"R\": 2}, \"followThrough\": true}");
    if (const auto points = within(at, "points"))
        readPoints(*points, options);
    readTruth(at, "followThrough", options.followThrough);
    readTruth(at, "bothAnswers", options.bothAnswers);
    readTruth(at, "unitRequired", options.unitRequired);
    readTruth(at, "signedSenses", options.signedSenses);
    if (const auto credit = within(at, "credit")) {
        requireObject(*credit, "write it as {\"unit\": 0.5, \"axis\": 0.5, \"slip\": 0.5}");
        readShare(*credit, "unit", options.creditUnit);
        readShare(*credit, "axis", options.creditAxis);
        readShare(*credit, "slip", options.creditSlip);
    }
    return options;
}

} // namespace

std::variant<MarkOptions, FileError> markOptionsOf(const Sketch& sketch) {
    const JsonValue* marking = keptMarking(sketch);
    if (marking == nullptr || marking->kind == JsonValue::Kind::null)
        return MarkOptions{};
    try {
        return readMarking({*marking, std::string(kKey)});
    } catch (const Refusal& refusal) {
        return FileError{QString::fromStdString(refusal.path), QString::fromStdString(refusal.message)};
    }
}

std::optional<FileError> faultOfPoints(const MarkOptions& options, const Marker& marker) {
    std::string names;
    for (const Answerable& one : marker.quantities())
        if (one.asked)
            names += (names.empty() ? "" : ", ") + one.name;
    for (const auto& [name, points] : options.points) {
        const auto& all = marker.quantities();
        if (std::none_of(all.begin(), all.end(),
                         [&](const Answerable& one) { return one.asked && one.name == name; }))
            return FileError{QStringLiteral("marking.points"),
                             QString::fromStdString('\'' + oneLine(name) +
                                                    "' is not asked in this question; points go to " +
                                                    names)};
    }
    return std::nullopt;
}

} // namespace tailpoint
