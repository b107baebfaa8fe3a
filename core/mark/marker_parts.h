// SPDX-License-Identifier: MIT
// What a Marker is made of. Internal to mark/.
#pragma once

#include "core/explain/caution.h"
#include "core/mark/sheet.h"

#include <algorithm>

namespace tailpoint {

/// Made once, and never moved: its parts look at one another.
class MarkerParts {
public:
    MarkerParts(const Sketch& sketch, const Solved& solved, const MarkOptions& options)
        : question(sketch, solved, options) {
        if (question.refusal)
            return;
        const std::vector<std::string>& only = options.onlySlips;
        alternatives.emplace(question, [&](const marking::Slip& slip) {
            return only.empty() || std::find(only.begin(), only.end(), slip.id) != only.end();
        });
        findings.emplace(question, *alternatives);
        telling.emplace(question, *alternatives);
        needsCaution = tailpoint::needsCaution(sketch);
    }
    MarkerParts(const MarkerParts&) = delete;
    MarkerParts& operator=(const MarkerParts&) = delete;

    marking::Question question;
    std::optional<marking::Alternatives> alternatives;
    std::optional<marking::Findings> findings;
    std::optional<marking::Telling> telling;
    bool needsCaution = false;
};

} // namespace tailpoint
