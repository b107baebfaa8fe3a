// SPDX-License-Identifier: MIT
// A marked class as a table: the rows that came in, with what was found added to each.
#pragma once

#include "ui/marking/class_output.h"

namespace tailpoint {

/// In the form of the file that came in. Regrading it gives the same bytes.
std::unique_ptr<ClassOutput> classCsv(const ClassMarking& marking);

/// The same for a table with these columns.
std::unique_ptr<ClassOutput> tableCsv(const CsvForm& form, const std::vector<std::string>& columns);

/// who, points; nothing else.
std::unique_ptr<ClassOutput> pointsCsv(const ClassMarking& marking);
std::unique_ptr<ClassOutput> pointsTableCsv(const CsvForm& form);

} // namespace tailpoint
