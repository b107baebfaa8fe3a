// SPDX-License-Identifier: MIT
// Starts the built program and looks at what it gave: exit status, standard output, standard error, files.
#pragma once

#include <QByteArray>
#include <QHash>
#include <QJsonArray>
#include <QJsonObject>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>
#include <functional>
#include <gtest/gtest.h>

namespace tailpoint::whole {

struct Ran {
    int status = -1; ///< of the exit; -1: it crashed, hung or never started
    QByteArray out, err;
};

using Environment = QHash<QString, QString>;

/// Runs with no display server in the environment, with `added` beside it. `inChild` is called between fork
/// and exec.
Ran run(const QStringList& arguments, const QByteArray& standardInput = {},
        const std::function<void()>& inChild = nullptr, const Environment& added = {});
/// The environment in which these calls on the files of a saving fail: see tests/whole/faults.
Environment withFaults(const QString& faults);

/// `report - --as json` of a sketch; the parsed report, empty where it is no JSON.
QJsonObject reportOf(const QByteArray& sketch, int expectedStatus);

/// A sketch in N, degrees, from +x counter-clockwise; `rest` stands behind the forces.
QByteArray sketch(const QByteArray& forces, const QByteArray& rest = {});
QByteArray force(const char* name, const QByteArray& magnitude, const QByteArray& direction);

/// Exactly one line on standard error that holds every one of `parts`, nothing on standard output, status 2.
void expectRefused(const Ran& ran, const QStringList& parts);

class Verbs : public ::testing::Test {
protected:
    QString path(const QString& name) const { return m_folder.filePath(name); }
    QString put(const QString& name, const QByteArray& bytes) const; ///< writes it; its path
    QStringList everything() const;                                  ///< names of all files in the folder
    QTemporaryDir m_folder;
};
QByteArray bytesOf(const QString& file);

} // namespace tailpoint::whole
