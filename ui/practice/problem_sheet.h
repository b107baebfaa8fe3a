// SPDX-License-Identifier: MIT
// A sheet of problems, or one for each of a class: the problems, how they are marked, and the files that say
// so to scripts. What is printed is made from the same value.
#pragma once

#include "core/practice/in_turn.h"
#include "core/practice/scheme.h"
#include "ui/files/files.h"

#include <memory>

namespace tailpoint {

inline constexpr std::size_t kMostVariants = 9999; ///< their files have four digits

/// What the sheet's problems are for; see sheet_task.h.
enum class SheetTask {
    questions, ///< to be solved
    faded,     ///< their solutions, to be filled in
    findSlip   ///< their solutions with one line rewritten by a slip, to be found and mended
};
std::string_view nameOf(SheetTask task); ///< "questions", "faded", "find-slip"

struct SheetRequest {
    std::vector<std::string> families; ///< in turn
    int level = 1;
    std::size_t count = 1; ///< of problems; with a roster for each of it
    std::uint32_t seed = 1;
    std::vector<std::string> roster; ///< empty: one sheet for all
    SheetTask task = SheetTask::questions;
    bool tolerances =
        false; ///< of sketches of one's own: kept, and ranges in the key; else the stated values alone
    std::size_t blank = 0; ///< of `faded`: so many last lines; 0: one at first, and in the end all
};

struct SheetVariant {
    std::string who;       ///< of the roster; empty: for all
    std::size_t place = 1; ///< its number on that sheet
    Problem problem;
    Scheme scheme; ///< without answers as long as nobody made it
};

struct ProblemSheet {
    SheetRequest request;
    std::vector<SheetVariant> variants; ///< a sheet after the other, in the roster's order
    /// Where their problems are yet to be drawn.
    std::shared_ptr<ProblemsInTurn> toDraw{};
};

/// Who gets a problem and where, without the problems: they are drawn by completed(), beside other work.
/// Precondition: families and level exist.
ProblemSheet sheetToDraw(const SheetRequest& request);
/// Gives a variant the problem and the scheme that it lacks. On any thread, whose work is shared out in
/// rising order. False: there are no more different problems than stand before it, or cancelled.
bool completed(ProblemSheet& sheet, std::size_t index, const std::function<bool()>& isCancelled = {});
/// All of them, on all cores. False: cancelled, or the variants that can't be had are taken off.
bool completed(ProblemSheet& sheet, const std::function<bool()>& isCancelled = {});

/// "sketches/0001.json": of the variant with that index, counted from 0.
std::string sketchName(std::size_t index);

/// The right answers as a table that `mark` reads: who, then the asked quantities of all problems; what a
/// problem doesn't ask is empty. Who is "0001", as its sketch's file, or the name on the roster, where there
/// are several problems with the number behind it ("Ada Byron, 2").
std::string answersCsv(const ProblemSheet& sheet);

/// All of it for scripts: "tailpoint-problems", version 1. Or the index of a problem whose solution has no
/// line for a slip, where one is to be found. Precondition: all have their schemes.
std::variant<std::string, std::size_t> sheetJson(const ProblemSheet& sheet);

/// The families with their levels in words, for people and for scripts ("tailpoint-families", version 1).
std::string familiesText();
std::string familiesJson();

} // namespace tailpoint
