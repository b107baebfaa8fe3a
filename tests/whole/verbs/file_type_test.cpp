// SPDX-License-Identifier: MIT
// A sketch is told from other JSON, by its ending or by what is in it, and Tailpoint opens it. The judges are
// those of the desktops: glib's (gio) and Qt's.
#include "tests/whole/verbs/driver.h"
#include "tests/whole/verbs/tools.h"

#include <QDir>
#include <QMimeDatabase>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QString kSketch = QStringLiteral("application/x-tailpoint-sketch+json"),
              kJson = QStringLiteral("application/json");

class FileTypes : public Verbs {
protected:
    void SetUp() override {
        NEEDS_TOOL("update-mime-database");
        ASSERT_TRUE(m_folder.isValid());
        ASSERT_TRUE(QDir(m_folder.path()).mkpath(QStringLiteral("share/mime/packages")));
        ASSERT_TRUE(QDir(m_folder.path()).mkpath(QStringLiteral("share/applications")));
        const QString here = QStringLiteral(TAILPOINT_SOURCE "/resources/desktop/");
        const QString mime = path(QStringLiteral("share/mime"));
        ASSERT_TRUE(QFile::copy(here + QStringLiteral("tailpoint.mime.xml"),
                                mime + QStringLiteral("/packages/tailpoint.xml")));
        ASSERT_TRUE(QFile::copy(here + QStringLiteral("tailpoint.desktop"),
                                path(QStringLiteral("share/applications/tailpoint.desktop"))));
        m_environment = {{QStringLiteral("XDG_DATA_HOME"), path(QStringLiteral("share"))},
                         {QStringLiteral("XDG_DATA_DIRS"), QStringLiteral("/usr/local/share:/usr/share")}};
        const Judged built = judged("update-mime-database", {mime}, m_environment);
        ASSERT_EQ(built.status, 0) << built.said.toStdString();
        ASSERT_EQ(built.said.toStdString(), "");
        m_files = {{QStringLiteral("raft.json"), kSketch},
                   {QStringLiteral("raft.tailpoint"), kSketch},
                   {QStringLiteral("package.json"), kJson},
                   {QStringLiteral("list.json"), kJson},
                   {QStringLiteral("report.json"), kJson},
                   {QStringLiteral("empty.json"), kJson},
                   {QStringLiteral("late.json"), kJson},
                   {QStringLiteral("raft.svg"), QStringLiteral("image/svg+xml")},
                   {QStringLiteral("about.txt"), QStringLiteral("text/plain")}};
        const QByteArray raft = bytesOf(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json"));
        put(QStringLiteral("raft.json"), raft);
        put(QStringLiteral("raft.tailpoint"), raft);
        put(QStringLiteral("package.json"), R"({"name": "raft", "version": "1.0.0"})");
        put(QStringLiteral("list.json"), R"([{"format": "a list of a \"tailpoint-sketch\""}])");
        put(QStringLiteral("report.json"), run({QStringLiteral("report"), QStringLiteral("-"),
                                                QStringLiteral("--as"), QStringLiteral("json")},
                                               raft)
                                               .out);
        put(QStringLiteral("empty.json"), "{}");
        put(QStringLiteral("late.json"),
            "{\"note\": \"" + QByteArray(600, 'x') + "\", \"of\": \"tailpoint-sketch\"}");
        put(QStringLiteral("about.txt"), "It says \"tailpoint-sketch\" inside.\n");
        run({QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"),
             path(QStringLiteral("raft.svg"))},
            raft);
    }
    Environment m_environment;
    QList<std::pair<QString, QString>> m_files; ///< name, and the type that it has
};

TEST_F(FileTypes, AreThoseThatGlibTells) {
    NEEDS_TOOL("gio");
    for (const auto& [name, type] : m_files) {
        const Judged told = judged("gio",
                                   {QStringLiteral("info"), QStringLiteral("-a"),
                                    QStringLiteral("standard::content-type"), path(name)},
                                   m_environment);
        EXPECT_TRUE(told.said.trimmed().endsWith("standard::content-type: " + type.toUtf8()))
            << name.toStdString() << ": " << told.said.toStdString();
    }
}

TEST_F(FileTypes, AreThoseThatQtTells) {
    qputenv("XDG_DATA_HOME", m_environment[QStringLiteral("XDG_DATA_HOME")].toUtf8());
    for (const auto& [name, type] : m_files)
        EXPECT_EQ(QMimeDatabase().mimeTypeForFile(path(name)).name().toStdString(), type.toStdString())
            << name.toStdString();
    EXPECT_TRUE(QMimeDatabase().mimeTypeForName(kSketch).inherits(kJson))
        << "an editor of JSON may open it, too";
    qunsetenv("XDG_DATA_HOME");
}

TEST_F(FileTypes, EverySampleIsASketch) {
    NEEDS_TOOL("gio");
    const QDir samples(QStringLiteral(TAILPOINT_SAMPLES));
    for (const QString& name : samples.entryList(QDir::Files)) {
        const Judged told = judged("gio",
                                   {QStringLiteral("info"), QStringLiteral("-a"),
                                    QStringLiteral("standard::content-type"), samples.filePath(name)},
                                   m_environment);
        EXPECT_TRUE(told.said.trimmed().endsWith(kSketch.toUtf8()))
            << name.toStdString() << ": " << told.said.toStdString();
    }
}

TEST_F(FileTypes, ADoubleClickOpensTailpoint) {
    NEEDS_TOOL("update-desktop-database");
    NEEDS_TOOL("gio");
    const Judged built = judged("update-desktop-database", {path(QStringLiteral("share/applications"))});
    ASSERT_EQ(built.status, 0) << built.said.toStdString();
    put(QStringLiteral("tailpoint"), "#!/bin/sh\n"); // TryExec wants one on the path
    QFile::setPermissions(path(QStringLiteral("tailpoint")), QFile::ReadOwner | QFile::ExeOwner);
    Environment environment = m_environment;
    environment.insert(QStringLiteral("PATH"), m_folder.path() + QStringLiteral(":/usr/bin:/bin"));
    environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C"));
    const Judged told = judged("gio", {QStringLiteral("mime"), kSketch}, environment);
    EXPECT_TRUE(told.said.contains("tailpoint.desktop")) << told.said.toStdString();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
