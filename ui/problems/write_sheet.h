// SPDX-License-Identifier: MIT
// The files of a sheet: what is handed out, its key, the answers as a table and every question as a sketch.
#pragma once

#include "ui/practice/new_folder.h"
#include "ui/practice/problem_sheet.h"
#include "ui/problems/look.h"

namespace tailpoint {

/// sheet.pdf and key.pdf, or sheet.html and key.html, or sheet.json; answers.csv; sketches/0001.json, ... The
/// same sheet and look give the same bytes, by the same version on the same machine. The pages are laid out
/// on all cores; needs a QGuiApplication, on whose thread it need not run. `folder` is not finished; where
/// work.isCancelled was set it holds what was made until then. What `sheet` lacks is made on the
/// way. Empty: done, or cancelled.
std::optional<FileError> writeSheet(ProblemSheet& sheet, const SheetLook& look, const NewFolder& folder,
                                    SheetWork& work);

/// What stands above a sheet's problems: the title of its one family, or "Problem sheet".
QString titleOf(const ProblemSheet& sheet);

} // namespace tailpoint
