// SPDX-License-Identifier: MIT
// How a choice and a share are written.
#pragma once

#include "ui/lecture/vote_board.h"

namespace tailpoint {

inline QString letterOf(std::size_t row) {
    return QString(QChar(u'A' + static_cast<char16_t>(row)));
}

inline QString percent(double share) {
    return VoteBoard::tr("%1 %").arg(qRound(100 * share));
}

} // namespace tailpoint
