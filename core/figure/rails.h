// SPDX-License-Identifier: MIT
// The rails along which labels stand: beside a shaft, and along an arc.
#pragma once

#include "core/figure/label_candidates.h"

namespace tailpoint {

void listShaft(std::vector<Candidate>& places, const Shaft& shaft, const Extent& text, double gap);
std::optional<Point> besideShaft(const Shaft& shaft, const Extent& text, double gap, const Place& place);

/// Only the middles; returns what the others cost at least.
double listShaftFirst(std::vector<Candidate>& places, const Shaft& shaft, const Extent& text, double gap);

void listSector(std::vector<Candidate>& places, const Sector& sector, const Extent& text, double gap);
std::optional<Point> besideArc(const Sector& sector, const Extent& text, double gap, const Place& place);
double listSectorFirst(std::vector<Candidate>& places, const Sector& sector, const Extent& text, double gap);
double lengthOfArc(const Sector& sector); ///< points

} // namespace tailpoint
