// SPDX-License-Identifier: MIT
// One number out of a typed text. For the parsers of this folder alone.
#pragma once

#include "core/quantity/typed.h"
#include "core/quantity/typed_reader.h"

namespace tailpoint::typing {

/// Reads a number where `reader` stands, after spaces; leaves alone what follows. `text` is the whole text
/// that `reader` reads, for messages and readings.
Typed<double> takeNumber(Reader& reader, std::string_view text);

std::string inQuotes(std::string_view text);
TypedError unreadable(std::string_view text, std::string_view example);

template <class T>
bool failed(const Typed<T>& typed) {
    return std::holds_alternative<TypedError>(typed);
}

} // namespace tailpoint::typing
