// SPDX-License-Identifier: MIT
// problems/: a sheet of problems as pages to hand out, its key, and the folder that has both. What the
// problems are says ui/practice; how a page is set, ui/handout.
//
//   auto sheet = sheetToDraw(request); // ui/practice/problem_sheet.h, or sheetFrom(files)
//   NewFolder folder(path);            // ui/practice/new_folder.h
//   SheetWork work;
//   if (const auto error = writeSheet(sheet, look, folder, work)) ... // write_sheet.h
#pragma once

#include <QPageSize>
#include <QString>
#include <atomic>
#include <optional>

namespace tailpoint {

enum class SheetForm { pdf, html, json };
std::optional<SheetForm> sheetFormFrom(const QString& name); ///< "pdf", "html", "json"

/// How a sheet is set.
struct SheetLook {
    SheetForm form = SheetForm::pdf;
    QPageSize::PageSizeId paper = QPageSize::A4;
    bool solutions = false; ///< in the key: worked solutions
    bool grid = false;      ///< room to draw with squares of 1 cm
    bool toScale = true;    ///< false: figures in which nothing can be measured, which say so
};

/// What is seen of a job that runs on another thread, and how it is told to stop.
struct SheetWork {
    std::atomic<int> done = 0; ///< problems that are wholly made
    std::atomic<bool> isCancelled = false;
};

} // namespace tailpoint
