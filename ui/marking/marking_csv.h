// A marked class as a table: the rows that came in, with what was found added to each.
#pragma once

#include "ui/marking/class_output.h"

namespace tailpoint {

/// In the form of the file that came in. Regrading it gives the same bytes.
std::unique_ptr<ClassOutput> classCsv(const ClassMarking& marking);

/// who, points; nothing else.
std::unique_ptr<ClassOutput> pointsCsv(const ClassMarking& marking);

} // namespace tailpoint
