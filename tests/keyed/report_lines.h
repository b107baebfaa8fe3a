// SPDX-License-Identifier: MIT
// Reads a worked solution as its text report has it and keys every printed line: what the calculator gives
// must be the printed result, to its last digit; a tie to 1e-12 may go either way.
#pragma once

#include "tests/keyed/calculator.h"

#include <cstdint>
#include <vector>

namespace tailpoint::keyed {

struct Setting {
    Angles angles = Angles::degrees;
    int figures = 3;           ///< of an answer
    bool byHand = false;       ///< no guard figures
    bool moreAfterOne = false; ///< one figure more where the first digit is a 1
};

/// How much was keyed.
struct Tally {
    std::int64_t lines = 0;     ///< numbers = result
    std::int64_t symbolic = 0;  ///< symbols, each as last printed, = result
    std::int64_t rounded = 0;   ///< ", to three figures 520 N"
    std::int64_t relations = 0; ///< "65.0 N ≤ R ≤ 615 N"
    std::int64_t cells = 0;     ///< of a component table
    std::int64_t prose = 0;     ///< "180° − β = 151.4°" in running text
    std::int64_t unread = 0;    ///< before a result, and not read: with symbols that nobody has printed
    std::int64_t excused = 0;   ///< the line says that its numbers have no value
    std::int64_t all() const { return lines + symbolic + rounded + relations + cells + prose; }
    Tally& operator+=(const Tally& other);
};

struct Keyed {
    Tally tally;
    std::vector<std::string> wrong; ///< what doesn't compute, and what it comes to
};

/// `report`: the text of all steps, ASCII minus.
Keyed keyReport(const std::string& report, const Setting& setting);

} // namespace tailpoint::keyed
