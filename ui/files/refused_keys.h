// SPDX-License-Identifier: MIT
// Keys that a file may not carry along unread: they look as if they changed a number or a verdict, and what
// is not acted on must not look acted on.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace tailpoint {

/// The objects of a sketch whose keys are looked at; all others keep what they hold.
enum class KeyPlace {
    sketch,
    units,
    reference,
    force,
    magnitude,
    direction,
    limit,
    permitted,
    loadCase,
    caseChange
};

/// Keys known at a place.
std::span<const std::string_view> knownKeys(KeyPlace place);

/// Why a key that is not known at `place` can't be carried along there, with the mend; empty where it can, or
/// where it is known. Refused are
/// - in a force, the sum and a value of theirs: the words of kRefusedKeys (ui/document/refused_keys.cpp), in
///   capitals or not, and our own keys that belong elsewhere;
/// - everywhere: a key that is one of ours but for one letter (put in, left out, changed, or two swapped) or
///   for capitals.
std::optional<std::string> keyFault(std::string_view key, KeyPlace place);

} // namespace tailpoint
