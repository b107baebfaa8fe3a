// SPDX-License-Identifier: MIT
// The vectors of a sketch as far as they are known: from an answer, or from what is given.
#pragma once

#include "core/solve/solve.h"

#include <string>
#include <vector>

namespace tailpoint {

struct PlainVector {
    std::string name;
    Eigen::Vector2d vector{0, 0}; ///< meaningful where complete()
    Eigen::Vector2d unit{0, 0};   ///< zero where there is no direction
    double magnitude = 0;
    bool hasMagnitude = false, hasDirection = false;
    bool foundMagnitude = false, foundDirection = false; ///< part of the answer, not given
    bool complete() const { return hasMagnitude && (hasDirection || magnitude == 0); }
    bool found() const { return foundMagnitude || foundDirection; }
    bool sought() const { return found() || !complete(); }
    bool givesDirection() const { return hasDirection && !foundDirection; }
};

struct Vectors {
    std::vector<PlainVector> forces;
    PlainVector sum;
    bool forcesComplete() const;
    const PlainVector& at(int index) const {
        return index == kSumIndex ? sum : forces[static_cast<std::size_t>(index)];
    }
    static bool isUnknown(const Solved& solved, int index);
};

/// From solutions[solution] where there is one, else from the given values alone.
Vectors vectorsOf(const Sketch& sketch, const Solved& solved, std::size_t solution);

} // namespace tailpoint
