#include "core/explain/listed.h"

namespace tailpoint::explaining {

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
