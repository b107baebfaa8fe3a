// SPDX-License-Identifier: MIT
// What a PDF says of itself, so that the same input makes the same bytes.
#pragma once

#include <QByteArray>
#include <QString>

class QPdfWriter;

namespace tailpoint {

/// Names the document's title and its maker; what Qt would draw by lot follows from the title.
void nameDocument(QPdfWriter& writer, const QString& title);

/// The time at which a PDF was made is taken out: every digit of it becomes a blank, and no offset moves.
/// Where there is a sourceDate(), that stands there.
void settleDate(QByteArray& pdf);

} // namespace tailpoint
