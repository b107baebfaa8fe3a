// SPDX-License-Identifier: MIT
#include "ui/files/provenance.h"

#include "ui/files/source_date.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace tailpoint {

namespace {

QDate day() {
    const auto time = sourceDate();
    return time ? time->date() : QDate::currentDate();
}

} // namespace

Provenance provenanceOf(const QString& path) {
    Provenance from;
    if (!path.isEmpty() && path != QLatin1String("-"))
        from.file = QFileInfo(path).fileName().toStdString();
    from.date = day().toString(Qt::ISODate).toStdString();
    from.program =
        (QStringLiteral("Tailpoint ") + QCoreApplication::applicationVersion()).trimmed().toStdString();
    return from;
}

} // namespace tailpoint
