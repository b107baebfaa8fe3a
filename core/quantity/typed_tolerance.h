// SPDX-License-Identifier: MIT
// The tolerance behind a typed value. For the parsers of this folder alone.
#pragma once

#include "core/quantity/typed_number.h"

#include <functional>

namespace tailpoint::typing {

/// A number of a tolerance with the unit behind it, if any; a percent sign is no unit.
template <class Unit>
struct Part {
    double value = 0;
    std::optional<Unit> unit;
};

/// A tolerance as it stands there, before it is known which unit it is in.
template <class Unit>
struct ToleranceParts {
    Part<Unit> plus, minus;
    bool percent = false;
};

/// What stands between a value and the numbers of its tolerance.
enum class Joint { none, both, up, down };

/// Skips "±", "+-", "+/-", or a single sign; nothing skipped where none of them stands there.
Joint takeJoint(Reader& reader);
/// Skips the slash, comma or spaces between the sides, and the sign of the second; false where it is not
/// `second`.
bool takeSecond(Reader& reader, Joint second);
bool takePercent(Reader& reader);

TypedError badTolerance(std::string_view text);
TypedError oneSided(std::string_view text);
TypedError unevenPercent(std::string_view text);
TypedError percentOfNoNumber(std::string_view text);
TypedError percentOfNothing(std::string_view text);

/// The tolerance where `reader` stands, if one does. `takePart` reads a number with its unit.
template <class Unit, class TakePart>
Typed<std::optional<ToleranceParts<Unit>>> takeTolerance(Reader& reader, std::string_view text,
                                                         TakePart takePart) {
    const Joint joint = takeJoint(reader);
    ToleranceParts<Unit> parts;
    if (joint == Joint::none)
        return std::optional<ToleranceParts<Unit>>();
    const auto takeInto = [&](Part<Unit>& side) -> std::optional<TypedError> {
        Typed<Part<Unit>> part = takePart();
        if (failed(part))
            return std::get<TypedError>(part);
        side = std::get<Part<Unit>>(part);
        return std::nullopt;
    };
    reader.skipSpaces();
    if (joint != Joint::both && isSign(reader.peek()))
        return oneSided(text);
    const bool isDownFirst = joint == Joint::down;
    Part<Unit>&first = isDownFirst ? parts.minus : parts.plus,
    &second = isDownFirst ? parts.plus : parts.minus;
    if (auto error = takeInto(first))
        return *error;
    parts.percent = takePercent(reader);
    if (joint == Joint::both) {
        second = first;
    } else {
        if (!takeSecond(reader, isDownFirst ? Joint::up : Joint::down))
            return oneSided(text);
        if (auto error = takeInto(second))
            return *error;
        if (parts.percent || takePercent(reader))
            return unevenPercent(text);
    }
    if (parts.plus.value < 0 || parts.minus.value < 0 || !(parts.plus.value + parts.minus.value > 0))
        return badTolerance(text);
    return std::optional(parts);
}

} // namespace tailpoint::typing
