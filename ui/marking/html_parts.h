// SPDX-License-Identifier: MIT
// What the pages of markings are made of. Internal to marking/.
#pragma once

#include "ui/marking/class_output.h"

#include <set>

namespace tailpoint::marking_pages {

/// What a page of the kind of a handout (core/explain/handout.h) needs besides.
std::string_view style();

/// Without what a page can't hold (controls); the same escaped; a person's name in a direction of its own.
std::string printable(std::string_view text);
std::string safe(std::string_view text);
std::string person(std::string_view who);

/// What a verdict's word means: "right within rounding".
std::string_view meaningOf(std::string_view verdict);
/// Of those words that occur; empty where all is right.
std::string legend(const std::set<std::string, std::less<>>& verdicts);

/// A slip's few words: "magnitudes added"; of weak evidence "may be: magnitudes added".
std::string slipWords(const Finding& finding);
/// The same as a heading, escaped; of several answers `isStrong` says whether it is so for each.
std::string heading(std::string_view id, bool isStrong);

/// In its frame at the page's foot; nothing for none.
std::string cautionHtml(const std::string& caution);
/// The changed lines of a finding, each beside the right one.
std::string linesHtml(const Finding& finding);
/// The numbers that it is about, its sentence, lines, other readings and mend.
std::string findingHtml(const Finding& finding);

/// "1 of 2 points", or the marker's own with the remark.
std::string pointsHtml(const MarkedRow& row);

/// The tally as a picture with its words beside; empty: nothing is counted. `of`: all rows.
std::string tallySvg(const std::vector<SlipTally::Entry>& entries, std::size_t of);

} // namespace tailpoint::marking_pages
