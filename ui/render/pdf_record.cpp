// SPDX-License-Identifier: MIT
#include "ui/render/pdf_record.h"

#include "ui/files/source_date.h"

#include <QPdfWriter>
#include <QUuid>

namespace tailpoint {

void nameDocument(QPdfWriter& writer, const QString& title) {
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Tailpoint"));
#if QT_VERSION >= QT_VERSION_CHECK(6, 8, 0)
    writer.setDocumentId(QUuid::createUuidV5(QUuid(), title)); // else drawn by lot
#endif
}

void settleDate(QByteArray& pdf) {
    // Qt: "/CreationDate (D:20261129152629+00'00')"; the dictionary that has it stands behind all pages.
    const QByteArray key = "/CreationDate (D:";
    const qsizetype begin = pdf.lastIndexOf(key), end = begin < 0 ? -1 : pdf.indexOf(')', begin);
    if (end < 0)
        return;
    const auto time = sourceDate();
    const QByteArray date =
        time ? key + time->toString(QStringLiteral("yyyyMMddHHmmss")).toLatin1() + "Z)" : QByteArray();
    const qsizetype length = end + 1 - begin;
    pdf.replace(begin, length,
                date.size() <= length ? date.leftJustified(length, ' ') : QByteArray(length, ' '));
}

} // namespace tailpoint
