// SPDX-License-Identifier: MIT
// A folder that is there as a whole or not at all.
#pragma once

#include "ui/files/files.h"

#include <QTemporaryDir>
#include <memory>

namespace tailpoint {

/// Is made under another name beside the one that it is to have; what wasn't finished is taken away again.
class NewFolder {
public:
    /// Whose name is `path`. A fault where something stands there (but for an empty folder), or where nothing
    /// can be made beside it: one line with the mend.
    explicit NewFolder(const QString& path);

    const std::optional<FileError>& fault() const { return m_fault; }
    /// A file of it, in a folder of its own where the name has a slash.
    std::optional<FileError> write(const QString& name, const QByteArray& bytes) const;
    /// From now on it has its name.
    std::optional<FileError> finish();

private:
    QString m_path;
    std::unique_ptr<QTemporaryDir> m_beside;
    std::optional<FileError> m_fault;
};

} // namespace tailpoint
