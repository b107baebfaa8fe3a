// SPDX-License-Identifier: MIT
// The time that an output bears, so that the same input makes the same bytes.
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <optional>

class QPdfWriter;

namespace tailpoint {

/// SOURCE_DATE_EPOCH (seconds since 1970, UTC); empty where it isn't set, or is no whole number.
/// Source: reproducible-builds.org, specification of SOURCE_DATE_EPOCH.
std::optional<QDateTime> sourceDate();

/// Names the document's title and its maker; what Qt would draw by lot follows from the title.
void nameDocument(QPdfWriter& writer, const QString& title);

/// The time at which a PDF was made is taken out: every digit of it becomes a blank, and no offset moves.
/// Where there is a sourceDate(), that stands there.
void settleDate(QByteArray& pdf);

} // namespace tailpoint
