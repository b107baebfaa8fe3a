// SPDX-License-Identifier: MIT
#include "ui/files/source_date.h"

#include <QTimeZone>

namespace tailpoint {

std::optional<QDateTime> sourceDate() {
    bool isSet = false;
    const qint64 seconds = qEnvironmentVariable("SOURCE_DATE_EPOCH").toLongLong(&isSet);
    return isSet ? std::optional(QDateTime::fromSecsSinceEpoch(seconds, QTimeZone::utc())) : std::nullopt;
}

} // namespace tailpoint
