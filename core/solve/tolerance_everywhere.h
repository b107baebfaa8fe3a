// SPDX-License-Identifier: MIT
// Whether every point of the box has an answer. Used inside solve/tolerance.
#pragma once

#include "core/solve/tolerance_problem.h"

namespace tailpoint::tolerance {

/// `lost`: as lostPiecesOf(). `boxes`: for each of its searches; where they don't do it is taken to be so.
bool isEverywhere(const Problem& problem, const std::vector<Piece>& pieces, const std::vector<Piece>& lost,
                  int boxes);

} // namespace tailpoint::tolerance
