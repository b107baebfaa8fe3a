// SPDX-License-Identifier: MIT
// The time that an output bears, so that the same input makes the same bytes.
#pragma once

#include <QDateTime>
#include <optional>

namespace tailpoint {

/// SOURCE_DATE_EPOCH (seconds since 1970, UTC); empty where it isn't set, or is no whole number.
/// Source: reproducible-builds.org, specification of SOURCE_DATE_EPOCH.
std::optional<QDateTime> sourceDate();

} // namespace tailpoint
