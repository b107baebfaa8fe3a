// SPDX-License-Identifier: MIT
// Symbols of what an answer has found: with the answer's number where two answers differ in it. Internal to
// explain/.
#pragma once

#include "core/sketch/things.h"
#include "core/solve/solve.h"

namespace tailpoint {

class FoundSymbols {
public:
    /// Both are kept by reference.
    FoundSymbols(const Things& things, const Solved& solved) : m_things(things), m_solved(solved) {}

    Formula size(int index, std::size_t answer) const;
    Formula way(int index, std::size_t answer) const;

private:
    const Things& m_things;
    const Solved& m_solved;
};

} // namespace tailpoint
