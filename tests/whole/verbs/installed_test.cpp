// SPDX-License-Identifier: MIT
// What `cmake --install` puts where, as the rest of a desktop looks at it: its validators, its types of
// files, its shells.
#include "tests/whole/verbs/driver.h"
#include "tests/whole/verbs/tools.h"

#include <QDir>
#include <QDirIterator>
#include <QImage>
#include <QRegularExpression>
#include <algorithm>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QString kSource = QStringLiteral(TAILPOINT_SOURCE "/");

class Installed : public Verbs {
protected:
    /// Into a folder of this test.
    void SetUp() override {
        ASSERT_TRUE(m_folder.isValid());
        const Judged done =
            judged(TAILPOINT_CMAKE, {QStringLiteral("--install"), QStringLiteral(TAILPOINT_BUILD),
                                     QStringLiteral("--prefix"), m_folder.path()});
        ASSERT_EQ(done.status, 0) << done.said.toStdString();
    }
    QString share(const char* name) const { return path(QStringLiteral("share/") + QLatin1String(name)); }
    QString metainfo() const { return share("metainfo/example.tailpoint.tailpoint.metainfo.xml"); }
};

TEST_F(Installed, EverythingIsWhereADesktopLooksForIt) {
    for (const char* file :
         {"bin/tailpoint", "share/applications/tailpoint.desktop", "share/mime/packages/tailpoint.xml",
          "share/icons/hicolor/scalable/apps/tailpoint.svg",
          "share/icons/hicolor/scalable/mimetypes/application-x-tailpoint-sketch+json.svg",
          "share/metainfo/example.tailpoint.tailpoint.metainfo.xml", "share/man/man1/tailpoint.1",
          "share/bash-completion/completions/tailpoint", "share/zsh/site-functions/_tailpoint",
          "share/fish/vendor_completions.d/tailpoint.fish", "share/tailpoint/samples/survey-raft.json",
          "share/tailpoint/sketch.schema.json", "share/doc/tailpoint/copyright",
          "share/doc/tailpoint/guide.md", "share/doc/tailpoint/keys.md", "share/doc/tailpoint/CHANGELOG.md"})
        EXPECT_GT(QFileInfo(path(QLatin1String(file))).size(), 0) << file;
    EXPECT_EQ(QDir(share("tailpoint/samples")).entryList(QDir::Files),
              QDir(QStringLiteral(TAILPOINT_SAMPLES)).entryList(QDir::Files));
    EXPECT_TRUE(bytesOf(share("doc/tailpoint/copyright")).contains("The Tailpoint authors"));
}

TEST_F(Installed, NothingNamesThePlaceWhereItWasBuilt) {
    QDirIterator files(m_folder.path(), QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        const QString file = files.next();
        if (!file.contains(QStringLiteral("/bin/"))) {
            EXPECT_FALSE(bytesOf(file).contains(TAILPOINT_SOURCE "/")) << file.toStdString();
        }
    }
    EXPECT_TRUE(bytesOf(share("man/man1/tailpoint.1")).contains(share("tailpoint/samples").toUtf8()));
}

TEST_F(Installed, TheProgramThatWasInstalledDraws) {
    const QString figure = path(QStringLiteral("raft.svg"));
    const Judged drawn = judged(path(QStringLiteral("bin/tailpoint")).toUtf8().constData(),
                                {QStringLiteral("figure"), share("tailpoint/samples/survey-raft.json"),
                                 QStringLiteral("-o"), figure});
    EXPECT_EQ(drawn.status, 0) << drawn.said.toStdString();
    EXPECT_TRUE(bytesOf(figure).contains("520 N")); // samples/survey-raft.json by hand: README
}

TEST_F(Installed, TheDesktopEntryIsValid) {
    NEEDS_TOOL("desktop-file-validate");
    const Judged entry = judged("desktop-file-validate", {share("applications/tailpoint.desktop")});
    EXPECT_EQ(entry.status, 0);
    EXPECT_EQ(entry.said.toStdString(), "");
}

TEST_F(Installed, TheMetainfoIsValid) {
    NEEDS_TOOL("appstreamcli");
    const Judged metainfo =
        judged("appstreamcli", {QStringLiteral("validate"), QStringLiteral("--no-net"), this->metainfo()});
    EXPECT_EQ(metainfo.status, 0) << metainfo.said.toStdString();
}

TEST_F(Installed, TheManualHasNoFault) {
    NEEDS_TOOL("mandoc");
    const Judged manual = judged(
        "mandoc", {QStringLiteral("-Tlint"), QStringLiteral("-Wwarning"), share("man/man1/tailpoint.1")});
    EXPECT_EQ(manual.status, 0);
    EXPECT_EQ(manual.said.toStdString(), "");
}

TEST_F(Installed, EveryPlaceNamesTheSameRelease) {
    const QString version =
        QString::fromUtf8(run({QStringLiteral("--version")}).out).section(u' ', 1).trimmed();
    const auto first = [](const QString& file, const char* pattern) {
        return QRegularExpression(QLatin1String(pattern)).match(QString::fromUtf8(bytesOf(file)));
    };
    const auto told =
        first(share("doc/tailpoint/CHANGELOG.md"), R"(\n## (\d+\.\d+\.\d+) \((\d{4}-\d\d-\d\d)\))");
    const auto metainfo = first(this->metainfo(), R"re(<release version="([\d.]+)" date="([\d-]+)")re");
    EXPECT_FALSE(version.isEmpty());
    EXPECT_EQ(told.captured(1), version);
    EXPECT_EQ(metainfo.captured(1), version);
    EXPECT_EQ(metainfo.captured(2), told.captured(2));
    EXPECT_EQ(first(share("doc/tailpoint/guide.md"), R"(release ([\d.]+) \()").captured(1), version);
    EXPECT_EQ(first(share("doc/tailpoint/guide.md"), R"(version = \{([\d.]+)\})").captured(1), version);
    EXPECT_EQ(first(share("man/man1/tailpoint.1"), R"(\.Os Tailpoint ([\d.]+))").captured(1), version);
    EXPECT_EQ(first(kSource + QStringLiteral("CMakeLists.txt"), R"(project\(Tailpoint VERSION ([\d.]+))")
                  .captured(1),
              version);
}

/// By their colours, when it is drawn as large as a list of files draws it. A pixel that an arrow only
/// touches doesn't count.
TEST_F(Installed, TheIconsShowTheirArrowsAtSixteenPixels) {
    NEEDS_TOOL("rsvg-convert");
    for (const char* icon : {"icons/hicolor/scalable/apps/tailpoint.svg",
                             "icons/hicolor/scalable/mimetypes/application-x-tailpoint-sketch+json.svg"}) {
        const QString drawn = path(QStringLiteral("icon.png"));
        ASSERT_EQ(judged("rsvg-convert", {QStringLiteral("-w"), QStringLiteral("16"), QStringLiteral("-h"),
                                          QStringLiteral("16"), share(icon), QStringLiteral("-o"), drawn})
                      .status,
                  0);
        const QImage image(drawn);
        const auto near = [&](const QColor& colour) {
            int count = 0;
            for (int y = 0; y < image.height(); ++y)
                for (int x = 0; x < image.width(); ++x) {
                    const QColor pixel = image.pixelColor(x, y);
                    const int off = std::max({std::abs(pixel.red() - colour.red()),
                                              std::abs(pixel.green() - colour.green()),
                                              std::abs(pixel.blue() - colour.blue())});
                    count += pixel.alpha() > 200 && off < 64 ? 1 : 0;
                }
            return count;
        };
        EXPECT_EQ(image.size(), QSize(16, 16));
        EXPECT_GE(near(QColor(0x0F, 0x4C, 0x5C)), 8) << icon << ": two given forces of four pixels at least";
        EXPECT_GE(near(QColor(0x8F, 0x2F, 0x10)), 8) << icon << ": their sum";
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
