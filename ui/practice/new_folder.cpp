// SPDX-License-Identifier: MIT
#include "ui/practice/new_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <cerrno>
#include <cstdio>
#include <cstring>

namespace tailpoint {

namespace {

FileError whileWriting(const QString& why) {
    return {QString(), QStringLiteral("cannot be written: %1; name another folder").arg(why)};
}

std::optional<FileError> faultOf(const QString& path) {
    const QFileInfo info(path);
    if (info.isSymLink() || (info.exists() && !info.isDir()))
        return FileError{QString(), QStringLiteral("is no folder; name another")};
    if (info.exists() &&
        !QDir(path).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot))
        return FileError{QString(), QStringLiteral("is there and not empty; name a new folder")};
    return std::nullopt;
}

} // namespace

NewFolder::NewFolder(const QString& path) : m_path(QDir::cleanPath(QFileInfo(path).absoluteFilePath())) {
    m_fault = faultOf(m_path);
    if (m_fault)
        return;
    const QFileInfo info(m_path);
    m_beside = std::make_unique<QTemporaryDir>(
        info.dir().filePath(QStringLiteral(".%1-XXXXXX").arg(info.fileName())));
    if (!m_beside->isValid())
        m_fault = whileWriting(m_beside->errorString());
}

std::optional<FileError> NewFolder::write(const QString& name, const QByteArray& bytes) const {
    const QString place = m_beside->filePath(name);
    if (!QDir().mkpath(QFileInfo(place).path()))
        return whileWriting(QString::fromLocal8Bit(std::strerror(errno)));
    QFile file(place);
    if (!file.open(QIODevice::WriteOnly | QIODevice::Unbuffered))
        return whileWriting(file.errorString());
    // A write that ends early, as on a full disk, has no cause yet; the one that finds no room at all has.
    for (qint64 done = 0, more = 0; done < bytes.size(); done += more)
        if (more = file.write(bytes.constData() + done, bytes.size() - done); more <= 0)
            return whileWriting(file.errorString());
    return std::nullopt;
}

std::optional<FileError> NewFolder::finish() {
    // a folder of QTemporaryDir is its owner's alone; one that is kept has the usual permissions
    constexpr auto usual = QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner | QFile::ReadGroup |
                           QFile::ExeGroup | QFile::ReadOther | QFile::ExeOther;
    QFile::setPermissions(m_beside->path(), usual);
    // std::rename() puts a folder in the place of an empty one; QDir's doesn't
    if (std::rename(QFile::encodeName(m_beside->path()).constData(), QFile::encodeName(m_path).constData()) !=
        0)
        return whileWriting(QString::fromLocal8Bit(std::strerror(errno)));
    m_beside->setAutoRemove(false);
    return std::nullopt;
}

} // namespace tailpoint
