// SPDX-License-Identifier: MIT
#include "ui/document/previous.h"

#include "ui/document/recovery.h"
#include "ui/files/files.h"
#include "ui/files/sketch_json.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr int kMostKept = 100; // files

/// By the file that the name leads to.
QString keptFile(const QString& path, const QString& folder) {
    const QByteArray name = QCryptographicHash::hash(finalPath(path).toUtf8(), QCryptographicHash::Sha256);
    return folder + u'/' + QString::fromLatin1(name.toHex().left(32)) + QStringLiteral(".kept");
}

void dropOldest(const QString& folder) {
    QFileInfoList kept = QDir(folder).entryInfoList({QStringLiteral("*.kept")}, QDir::Files);
    std::sort(kept.begin(), kept.end(), [](const QFileInfo& a, const QFileInfo& b) {
        return a.metadataChangeTime() > b.metadataChangeTime(); // the time of writing is the version's
    });
    for (qsizetype i = kMostKept; i < kept.size(); ++i)
        QFile::remove(kept[i].filePath());
}

} // namespace

QString previousFolder() {
    return QFileInfo(recoveryFolder()).path() + QStringLiteral("/previous");
}

void keepPrevious(const QString& path, const QString& folder) {
    const auto bytes = readBytes(path);
    const QString file = keptFile(path, folder);
    if (!std::holds_alternative<QByteArray>(bytes) || !QDir().mkpath(folder) ||
        saveBytes(file, std::get<QByteArray>(bytes)))
        return;
    QFile kept(file);
    if (kept.open(QIODevice::ReadWrite))
        kept.setFileTime(QFileInfo(path).lastModified(), QFileDevice::FileModificationTime);
    dropOldest(folder);
}

std::optional<Previous> previousOf(const QString& path, const QString& folder) {
    const QString file = keptFile(path, folder);
    const auto bytes = readBytes(file);
    if (!std::holds_alternative<QByteArray>(bytes))
        return std::nullopt;
    auto sketch = readSketch(std::get<QByteArray>(bytes));
    if (!std::holds_alternative<Sketch>(sketch))
        return std::nullopt;
    return Previous{std::get<Sketch>(std::move(sketch)), QFileInfo(file).lastModified()};
}

bool hasPrevious(const QString& path, const QString& folder) {
    return !path.isEmpty() && QFileInfo::exists(keptFile(path, folder));
}

} // namespace tailpoint
