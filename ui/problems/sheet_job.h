// SPDX-License-Identifier: MIT
// A sheet made from beginning to end, on a thread of its own if wished.
#pragma once

#include "ui/practice/problem_sheet.h"
#include "ui/problems/look.h"

#include <QStringList>

namespace tailpoint {

struct SheetJob {
    SheetRequest request;
    QStringList own; ///< sketches of the user's, in this order; then of `request` the task alone counts
    SheetLook look;
    QString folder; ///< that is made
    SheetWork work;
    std::atomic<bool> isOver = false;
    QString fault; ///< to be read when it is over; empty: done, or cancelled

    /// Problems of all sheets together.
    std::size_t wanted() const;
    /// All of it; nothing is left where it was cancelled or failed.
    void run();
};

} // namespace tailpoint
