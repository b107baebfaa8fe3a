// SPDX-License-Identifier: MIT
// The table of problem families: what each asks, its levels and its scenes. Adding one: DEVELOPERS.md.
#pragma once

#include "core/practice/problem.h"

#include <array>

namespace tailpoint {

/// What a level is, in words for who chooses one.
struct LevelEntry {
    std::string_view numbers;   ///< which numbers
    std::string_view reference; ///< from where directions are measured, and how they are given
    std::string_view traps;     ///< what is easily missed
    /// Ids of the slips that are likely here (core/mark), the likeliest first. The problems are chosen so
    /// that the numbers of these lie apart from what is right and from one another by more than marking
    /// allows.
    std::vector<std::string_view> slips;
    /// Per cent of the problems, at least, in which all of them do; measured over 1,000 numbers.
    int separable = 100;
};

/// A situation of our own that a family is told in.
struct SceneEntry {
    std::string_view id;
    std::string_view title; ///< of the sketch
    bool caution = false;   ///< lifting, anchoring or the like
};

struct FamilyEntry {
    std::string_view id;    ///< stable, never translated
    std::string_view title; ///< "Two forces and their resultant"
    std::string_view asks;  ///< one sentence
    std::array<LevelEntry, kLevels> levels;
    std::vector<SceneEntry> scenes;
};

/// In a fixed order, new ones last: a code counts on it.
const std::vector<FamilyEntry>& problemFamilies();
const FamilyEntry* familyNamed(std::string_view id); ///< nullptr: none of that name

} // namespace tailpoint
