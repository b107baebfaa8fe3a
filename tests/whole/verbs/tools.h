// SPDX-License-Identifier: MIT
// Programs of others that judge what ours makes.
#pragma once

#include <QProcess>
#include <QProcessEnvironment>
#include <QStandardPaths>
#include <gtest/gtest.h>

namespace tailpoint::whole {

inline bool hasTool(const char* name) {
    return !QStandardPaths::findExecutable(QLatin1String(name)).isEmpty();
}

struct Judged {
    int status = -1;
    QByteArray said; ///< on standard output and standard error
};

inline Judged judged(const char* tool, const QStringList& arguments,
                     const QHash<QString, QString>& environment = {}) {
    QProcess process;
    QProcessEnvironment all = QProcessEnvironment::systemEnvironment();
    for (auto one = environment.begin(); one != environment.end(); ++one)
        all.insert(one.key(), one.value());
    process.setProcessEnvironment(all);
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(QLatin1String(tool), arguments);
    if (!process.waitForFinished(50'000)) {
        process.kill();
        process.waitForFinished();
        return {-1, "did not end: " + process.readAll()};
    }
    return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1, process.readAll()};
}

/// Ends the test with a word where the tool isn't there.
#define NEEDS_TOOL(name)                                                                                     \
    if (!hasTool(name))                                                                                      \
    GTEST_SKIP() << name << " is not installed"

} // namespace tailpoint::whole
