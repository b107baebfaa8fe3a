// SPDX-License-Identifier: MIT
// Short ways to mark in tests.
#pragma once

#include "core/mark/mark.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {

/// Readable in a failure: the fault's message, or the marking as text.
inline Marking marked(const Sketch& asked, const std::vector<std::string>& answers,
                      const MarkOptions& options = {}) {
    const Marker marker(asked, solve(asked), options);
    const auto read = marker.read(answers);
    const auto* fault = std::get_if<AttemptFault>(&read);
    EXPECT_EQ(fault, nullptr) << fault->message;
    return fault ? Marking() : marker.mark(std::get<Attempt>(read));
}

inline const MarkedQuantity& quantity(const Marking& marking, std::string_view name, int answer = 0) {
    static const MarkedQuantity none;
    for (const MarkedQuantity& one : marking.quantities)
        if (one.name == name && one.answer == answer)
            return one;
    ADD_FAILURE() << "no " << name;
    return none;
}

inline Verdict verdictOf(const Marking& marking, std::string_view name, int answer = 0) {
    return quantity(marking, name, answer).verdict;
}

inline AttemptFault faultOf(const Sketch& asked, const std::vector<std::string>& answers) {
    const Marker marker(asked, solve(asked));
    const auto read = marker.read(answers);
    const auto* fault = std::get_if<AttemptFault>(&read);
    EXPECT_NE(fault, nullptr) << "was read";
    return fault ? *fault : AttemptFault{};
}

} // namespace tailpoint::testing
