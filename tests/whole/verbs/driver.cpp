// SPDX-License-Identifier: MIT
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QProcess>
#include <QProcessEnvironment>

namespace tailpoint::whole {

namespace {

constexpr int kLongestRunMs = 30'000;

QProcessEnvironment withoutDisplay() {
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR"})
        environment.remove(QString::fromLatin1(name));
    return environment;
}

} // namespace

Ran run(const QStringList& arguments, const QByteArray& standardInput, const std::function<void()>& inChild,
        const Environment& added) {
    QProcess process;
    QProcessEnvironment environment = withoutDisplay();
    for (auto one = added.begin(); one != added.end(); ++one)
        environment.insert(one.key(), one.value());
    process.setProcessEnvironment(environment);
    if (inChild)
        process.setChildProcessModifier(inChild);
    process.start(QStringLiteral(TAILPOINT_BINARY), arguments);
    process.write(standardInput);
    process.closeWriteChannel();
    if (!process.waitForFinished(kLongestRunMs)) {
        process.kill();
        process.waitForFinished();
        ADD_FAILURE() << "did not end: " << arguments.join(QLatin1Char(' ')).toStdString();
        return {};
    }
    const bool exited = process.exitStatus() == QProcess::NormalExit;
    return {exited ? process.exitCode() : -1, process.readAllStandardOutput(),
            process.readAllStandardError()};
}

Environment withFaults(const QString& faults) {
    return {{QStringLiteral("LD_PRELOAD"), QStringLiteral(TAILPOINT_FAULTS_LIBRARY)},
            {QStringLiteral("TAILPOINT_FAULTS"), faults},
            {QStringLiteral("ASAN_OPTIONS"), // the sanitizers' build has its runtime behind what is preloaded
             QString::fromLocal8Bit(qgetenv("ASAN_OPTIONS")) + QStringLiteral(":verify_asan_link_order=0")}};
}

QJsonObject reportOf(const QByteArray& sketch, int expectedStatus) {
    const Ran ran =
        run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"), QStringLiteral("json")},
            sketch);
    EXPECT_EQ(ran.status, expectedStatus) << ran.err.toStdString() << sketch.toStdString();
    EXPECT_EQ(ran.err.toStdString(), "");
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(ran.out, &error);
    EXPECT_EQ(error.error, QJsonParseError::NoError) << ran.out.toStdString();
    return document.object();
}

QByteArray sketch(const QByteArray& forces, const QByteArray& rest) {
    return R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg"}, "forces": [)" +
           forces + "]" + rest + "}";
}

QByteArray force(const char* name, const QByteArray& magnitude, const QByteArray& direction) {
    return QByteArray(R"({"name": ")") + name + R"(", "magnitude": )" + magnitude + R"(, "direction": )" +
           direction + "}";
}

void expectRefused(const Ran& ran, const QStringList& parts) {
    EXPECT_EQ(ran.status, 2) << ran.err.toStdString();
    EXPECT_EQ(ran.out.toStdString(), "");
    EXPECT_EQ(ran.err.count('\n'), 1) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.endsWith('\n'));
    for (const QString& part : parts)
        EXPECT_TRUE(QString::fromUtf8(ran.err).contains(part))
            << "'" << part.toStdString() << "' is not in: " << ran.err.toStdString();
}

QString Verbs::put(const QString& name, const QByteArray& bytes) const {
    QFile file(path(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    EXPECT_EQ(file.write(bytes), bytes.size());
    return file.fileName();
}

QStringList Verbs::everything() const {
    return QDir(m_folder.path())
        .entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot);
}

QByteArray bytesOf(const QString& file) {
    QFile in(file);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

} // namespace tailpoint::whole
