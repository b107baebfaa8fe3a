// SPDX-License-Identifier: MIT
// What a sheet must say to be traced: whose it is, of which file and day, and what was assumed. Stands at the
// end of every report and copy, not on students' sheets.
#pragma once

#include "core/sketch/sketch.h"

#include <string>
#include <vector>

namespace tailpoint {

class Sentences;

/// Where a sheet comes from, as whoever writes it knows; what is empty isn't said.
struct Provenance {
    std::string file;    ///< its name, without folders
    std::string date;    ///< "2026-11-29"
    std::string program; ///< "Tailpoint 0.1.0"
};

/// A line each, UTF-8: file, date and program; who drew and checked it and its revision; what is assumed.
/// Without its title, which stands above.
std::vector<std::string> recordLines(const Sketch& sketch, const Provenance& from,
                                     const Sentences* sentences = nullptr);

/// What ends every copy: the caution, where the sketch asks for it, and, `withRecord`, the lines above.
std::vector<std::string> closingLines(const Sketch& sketch, const Provenance& from, bool withRecord = true,
                                      const Sentences* sentences = nullptr);

/// The last of them: "Assumed: all forces act at one point and in one plane; ...".
std::string assumptions(const Sketch& sketch, const Sentences* sentences = nullptr);

} // namespace tailpoint
