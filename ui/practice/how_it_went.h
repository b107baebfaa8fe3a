// SPDX-License-Identifier: MIT
// A sitting in plain words: how many questions, which slips went away, which are left.
#pragma once

#include "core/practice/record.h"

#include <QString>
#include <QStringList>

namespace tailpoint {

struct HowItWent {
    QString count;       ///< "5 questions: 3 right at once, 1 not right, 1 as an example."
    QStringList gone;    ///< slips that went away, in words
    QStringList left;    ///< named and not gone yet
    QStringList asked;   ///< a line for each question of this sitting, oldest first
    QStringList earlier; ///< a line for each of the last sittings before it, oldest first
};

/// Counts and lines are of `sitting`; slips of the whole record.
HowItWent howItWent(const PracticeRecord& record, int sitting);

/// As people say it: "supplement in the law of cosines"
QString slipWords(const std::string& id);

} // namespace tailpoint
