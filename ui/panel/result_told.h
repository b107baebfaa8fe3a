// SPDX-License-Identifier: MIT
// What was found, to be heard: said by itself when it changes.
#pragma once

#include "core/explain/explain.h"
#include "ui/files/result.h"

#include <QStringList>

namespace tailpoint {

/// A sentence each: the answer, what is to be said of it, which of two it is, each limit, and the caution
/// where there is one. `worked` is of that result. Empty without a force; while the answer is withheld only
/// the caution.
QStringList resultTold(const Result& result, const Worked& worked);

} // namespace tailpoint
