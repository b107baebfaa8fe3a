// The rails along which labels stand: beside a shaft, and along an arc. A number is a rail and a position on
// it.
#pragma once

#include "core/figure/places.h"

namespace tailpoint {

/// Positions along the whole shaft or arc, and numbers of a rail: a shaft's rails go on beyond its ends.
inline constexpr int kPositions = 2000, kRail = 10'000;

void listShaft(std::vector<Place>& places, const Shaft& shaft, const Extent& text, double gap);
std::optional<Point> besideShaft(const Shaft& shaft, const Extent& text, double gap, int number);

/// Only the middles; returns what the others cost at least.
double listShaftFirst(std::vector<Place>& places, const Shaft& shaft, const Extent& text, double gap);

void listSector(std::vector<Place>& places, const Sector& sector, const Extent& text, double gap);
std::optional<Point> besideArc(const Sector& sector, const Extent& text, double gap, int number);
double listSectorFirst(std::vector<Place>& places, const Sector& sector, const Extent& text, double gap);
double lengthOfArc(const Sector& sector); ///< points

} // namespace tailpoint
