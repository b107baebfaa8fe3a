// SPDX-License-Identifier: MIT
#include "tests/whole/window/left_behind.h"

#include "tests/whole/window/program.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace whole {

QDir recoveryOf(const QString& home) {
    return QDir(home + QStringLiteral("/state/tailpoint/recovery"));
}

QList<double> copiesIn(const QString& home) {
    QList<double> found;
    for (const QFileInfo& file : recoveryOf(home).entryInfoList({QStringLiteral("*.json")}, QDir::Files)) {
        const QString text = readJson(file.filePath())[QStringLiteral("sketch")].toString();
        const QJsonArray forces =
            QJsonDocument::fromJson(text.toUtf8()).object()[QStringLiteral("forces")].toArray();
        found << forces.at(0).toObject()[QStringLiteral("magnitude")].toDouble();
    }
    return found;
}

QStringList locksIn(const QDir& folder) {
    return folder.entryList({QStringLiteral("*lock")}, QDir::Files | QDir::Hidden);
}

} // namespace whole
