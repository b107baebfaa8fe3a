// SPDX-License-Identifier: MIT
#include "ui/render/pdf_record.h"

#include "ui/files/source_date.h"

#include <QLibraryInfo>
#include <QPdfWriter>
#include <QUuid>
#include <QVersionNumber>

namespace tailpoint {

void nameDocument(QPdfWriter& writer, const QString& title) {
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Tailpoint"));
#if QT_VERSION >= QT_VERSION_CHECK(6, 8, 0)
    writer.setDocumentId(QUuid::createUuidV5(QUuid(), title)); // else drawn by lot
#endif
}

namespace {

/// A date behind `key`, up to `end`: where there is a time that stands there, else blanks do.
void settle(QByteArray& pdf, const QByteArray& key, char end, const QByteArray& date) {
    const qsizetype begin = pdf.lastIndexOf(key),
                    behind = begin < 0 ? -1 : pdf.indexOf(end, begin + key.size());
    if (behind < 0)
        return;
    const qsizetype length = behind + 1 - begin;
    const QByteArray settled = date.isEmpty() ? QByteArray() : key + date + end;
    pdf.replace(begin, length,
                settled.size() <= length ? settled.leftJustified(length, ' ') : QByteArray(length, ' '));
}

} // namespace

void settleDate(QByteArray& pdf) {
    const auto time = sourceDate();
    const auto written = [&](const char* form) {
        return time ? time->toString(QLatin1String(form)).toLatin1() : QByteArray();
    };
    // Qt 6.4: "/CreationDate (D:20261129152629+00'00')"; Qt 6.8 has a second one, and the same in XMP.
    settle(pdf, "/CreationDate (D:", ')', written("yyyyMMddHHmmss'Z'"));
    if (QLibraryInfo::version() < QVersionNumber(6, 5)) // to look for what is not there takes long in a key
        return;
    settle(pdf, "/ModDate (D:", ')', written("yyyyMMddHHmmss'Z'"));
    for (const char* key : {"xmp:CreateDate=\"", "xmp:ModifyDate=\"", "xmp:MetadataDate=\""})
        settle(pdf, key, '"', written("yyyy-MM-ddTHH:mm:ss'+00:00'"));
}

} // namespace tailpoint
