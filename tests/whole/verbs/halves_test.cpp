// SPDX-License-Identifier: MIT
// The program and the half of it that is loaded for windows and letters (app/gui.h).
#include "tests/whole/verbs/driver.h"
#include "tests/whole/verbs/tools.h"

#include <QFile>
#include <QFileInfo>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QString kRaft = QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json");

/// The program as it would be had somebody moved it alone.
class WithoutItsHalf : public Verbs {
protected:
    void SetUp() override {
        ASSERT_TRUE(QFile::copy(QStringLiteral(TAILPOINT_BINARY), path(QStringLiteral("tailpoint"))));
    }
    Judged alone(const QStringList& arguments) const {
        return judged(path(QStringLiteral("tailpoint")).toUtf8().constData(), arguments);
    }
};

TEST_F(WithoutItsHalf, ReportsAreWrittenAsEver) {
    for (const char* form : {"text", "json", "csv"}) {
        const QStringList arguments{QStringLiteral("report"), kRaft, QStringLiteral("--as"),
                                    QLatin1String(form)};
        const Judged report = alone(arguments);
        EXPECT_EQ(report.status, 0) << report.said.toStdString();
        EXPECT_TRUE(report.said.contains("519.86") || report.said.contains("520 N")) // by hand: README
            << report.said.toStdString();
        EXPECT_EQ(report.said.toStdString(), run(arguments).out.toStdString());
    }
}

TEST_F(WithoutItsHalf, OneLineSaysWhatIsMissingAndNothingIsWritten) {
    const QStringList before = everything();
    const QString out = path(QStringLiteral("out"));
    const QList<QStringList> calls{
        {QStringLiteral("figure"), kRaft, QStringLiteral("-o"), out + QStringLiteral(".svg")},
        {QStringLiteral("report"), kRaft, QStringLiteral("--as"), QStringLiteral("html"),
         QStringLiteral("-o"), out},
        {QStringLiteral("problems"), QStringLiteral("--family"), QStringLiteral("slopes"),
         QStringLiteral("-o"), out},
        {QStringLiteral("mark"), kRaft, QStringLiteral("--answer"), QStringLiteral("R = 520 N")},
        {QStringLiteral("sweep"), kRaft},
        {kRaft}};
    for (const QStringList& call : calls) {
        const Judged refused = alone(call);
        EXPECT_EQ(refused.status, 2) << call.join(QLatin1Char(' ')).toStdString();
        EXPECT_EQ(refused.said.count('\n'), 1) << refused.said.toStdString();
        EXPECT_TRUE(refused.said.startsWith("tailpoint: tailpoint-gui.so: can't be loaded"))
            << refused.said.toStdString();
        EXPECT_TRUE(refused.said.contains("install the program anew")) << refused.said.toStdString();
    }
    EXPECT_EQ(everything(), before);
}

/// A name that the one half asks of the other in vain would be met only where it is called.
TEST(Halves, EveryNameIsFound) {
    QTemporaryDir folder;
    const Ran drawn = run(
        {QStringLiteral("figure"), kRaft, QStringLiteral("-o"), folder.filePath(QStringLiteral("raft.svg"))},
        {}, nullptr, {{QStringLiteral("LD_BIND_NOW"), QStringLiteral("1")}});
    EXPECT_EQ(drawn.status, 0) << drawn.err.toStdString();
    EXPECT_TRUE(bytesOf(folder.filePath(QStringLiteral("raft.svg"))).contains("520 N"));
}

TEST(Halves, AReportWaitsForNoLibraryOfWindows) {
    const Ran told = run({QStringLiteral("report"), kRaft}, {}, nullptr,
                         {{QStringLiteral("LD_DEBUG"), QStringLiteral("libs")}}); // ld.so(8)
    EXPECT_TRUE(told.err.contains("libQt6Core")) << told.err.left(500).toStdString();
    for (const char* library : {"libQt6Gui", "libQt6Widgets", "libfontconfig", "libX11", "tailpoint-gui"})
        EXPECT_FALSE(told.err.contains(library)) << library;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
