// SPDX-License-Identifier: MIT
#include "ui/files/json_text.h"

#include "core/quantity/utf8.h"

#include <algorithm>

namespace tailpoint {

bool operator==(const JsonValue& a, const JsonValue& b) {
    return a.kind == b.kind && a.truth == b.truth && a.text == b.text && a.items == b.items &&
           a.members == b.members;
}

bool operator==(const JsonMember& a, const JsonMember& b) {
    return a.key == b.key && a.value == b.value;
}

const JsonValue* JsonValue::find(std::string_view key) const {
    const auto it =
        std::find_if(members.begin(), members.end(), [&](const JsonMember& m) { return m.key == key; });
    return it == members.end() ? nullptr : &it->value;
}

LineColumn lineColumn(std::string_view text, std::size_t offset) {
    LineColumn at;
    if (text.starts_with(kByteOrderMark))
        text.remove_prefix(kByteOrderMark.size()), offset -= std::min(offset, kByteOrderMark.size());
    offset = std::min(offset, text.size());
    std::size_t begin = 0;
    for (std::size_t i = 0; i < offset; ++i)
        if (text[i] == '\n' || (text[i] == '\r' && text.substr(i + 1, 1) != "\n"))
            ++at.line, begin = i + 1;
    at.column = 1 + characterCount(text.substr(begin, offset - begin));
    return at;
}

} // namespace tailpoint
