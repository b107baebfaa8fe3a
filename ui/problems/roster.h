// SPDX-License-Identifier: MIT
// The names of a class.
#pragma once

#include <QString>
#include <string>
#include <variant>
#include <vector>

namespace tailpoint {

/// One a line, UTF-8; blank lines don't count. Or what is wrong with the file, in one line with the mend: no
/// names, a name twice, one that can't be printed.
std::variant<std::vector<std::string>, QString> readRoster(const QString& file);

} // namespace tailpoint
