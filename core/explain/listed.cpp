// SPDX-License-Identifier: MIT
#include "core/explain/listed.h"

#include <array>

namespace tailpoint::explaining {

Prose counted(const Voice& voice, int value) {
    static constexpr std::array<Wording, 11> kWords{
        SENTENCE("count", "two"),    SENTENCE("count", "three"), SENTENCE("count", "four"),
        SENTENCE("count", "five"),   SENTENCE("count", "six"),   SENTENCE("count", "seven"),
        SENTENCE("count", "eight"),  SENTENCE("count", "nine"),  SENTENCE("count", "ten"),
        SENTENCE("count", "eleven"), SENTENCE("count", "twelve")};
    const int index = value - 2;
    return index < 0 || index >= static_cast<int>(kWords.size())
               ? Prose{{count(value)}}
               : voice.say(kWords[static_cast<std::size_t>(index)]);
}

Prose listed(const Voice& voice, std::vector<Prose> items) {
    if (items.empty())
        return {};
    Prose out = std::move(items.front());
    for (std::size_t i = 1; i < items.size(); ++i)
        out =
            voice.say(i + 1 == items.size() ? SENTENCE("list", "{before} and {last}")
                                            : SENTENCE("list", "{before}, {next}"),
                      "before", std::move(out), i + 1 == items.size() ? "last" : "next", std::move(items[i]));
    return out;
}

} // namespace tailpoint::explaining
