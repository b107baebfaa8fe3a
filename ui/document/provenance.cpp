#include "ui/document/provenance.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileInfo>

namespace tailpoint {

namespace {

QDate day() {
    bool isSet = false;
    const qint64 seconds = qEnvironmentVariable("SOURCE_DATE_EPOCH").toLongLong(&isSet);
    return isSet ? QDateTime::fromSecsSinceEpoch(seconds, Qt::UTC).date() : QDate::currentDate();
}

} // namespace

Provenance provenanceOf(const QString& path) {
    Provenance from;
    if (!path.isEmpty() && path != QLatin1String("-"))
        from.file = QFileInfo(path).fileName().toStdString();
    from.date = day().toString(Qt::ISODate).toStdString();
    from.program = (QStringLiteral("Tailpoint ") + QCoreApplication::applicationVersion()).trimmed().toStdString();
    return from;
}

} // namespace tailpoint
