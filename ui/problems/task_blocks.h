// SPDX-License-Identifier: MIT
// What a page has besides the question where more than the question is handed out: a solution to be filled
// in, or one in which a slip is to be found; and what the key says of it.
#pragma once

#include "ui/handout/handout_blocks.h"
#include "ui/practice/sheet_task.h"

namespace tailpoint {

/// Empty on a sheet of questions.
std::vector<HandoutPages::Kept> taskGroups(const TaskOnPage& task, bool bothAnswers, double width);
/// Into the key's entry.
void addTaskKey(GroupWriter& out, const TaskOnPage& task, double width);

/// The same for a browser.
std::string taskHtml(const TaskOnPage& task, bool bothAnswers);
std::string taskKeyHtml(const TaskOnPage& task);

} // namespace tailpoint
