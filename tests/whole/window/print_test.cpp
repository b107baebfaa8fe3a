// SPDX-License-Identifier: MIT
// Pages on paper: through the toolkit's own print dialog, which without a printer prints to a file.
#include "tests/whole/window/raft_fixture.h"

#include <QFile>
#include <QRegularExpression>

using namespace whole;

namespace TAILPOINT_FILE {

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QString outputOf(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    return process.waitForFinished(30'000) ? QString::fromUtf8(process.readAllStandardOutput()) : QString();
}

TEST_F(OnTheRaft, PrintingBringsTheWholeHandoutToThePages) {
    ASSERT_TRUE(key(QStringLiteral("ctrl+p")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Print")); }));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    const QString printed = m_program->home() + QStringLiteral("/print.pdf");
    ASSERT_TRUE(eventually([&] { return bytesOf(printed).trimmed().endsWith("%%EOF"); }));
    const QString text =
        outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), printed, QStringLiteral("-")});
    for (const char* words : {"Survey raft on two lines", "Complete the parallelogram",
                              "Refer the direction to the axis", "Check by components"})
        EXPECT_TRUE(text.contains(QLatin1String(words))) << words;
    const QString info = outputOf(QStringLiteral("pdfinfo"), {printed});
    EXPECT_TRUE(info.contains(QRegularExpression(QStringLiteral("Pages: +3\\n")))) << info.toStdString();
    EXPECT_TRUE(info.contains(QLatin1String("A4")) || info.contains(QLatin1String("letter")))
        << info.toStdString();
    EXPECT_TRUE(m_program->isRunning());
}

TEST_F(OnTheRaft, EscapeInThePrintDialogPrintsNothing) {
    ASSERT_TRUE(key(QStringLiteral("ctrl+p")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Print")); }));
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    ASSERT_TRUE(eventually([&] { return !m_program->shows(QStringLiteral("Print")); }));
    EXPECT_FALSE(QFile::exists(m_program->home() + QStringLiteral("/print.pdf")));
    EXPECT_FALSE(isModified());
}

TEST_F(OnTheRaft, TheFigureHasAPrintPreviewAndItsPageIsPainted) {
    ASSERT_TRUE(key(QStringLiteral("ctrl+e")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Export figure")); }));
    ASSERT_TRUE(key(QStringLiteral("alt+p")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Print Preview")); }));
    const auto whitePaper = [] { // the page: pure white, which no theme's window has so much of
        const QImage seen = settledScreen();
        int white = 0;
        for (int y = 0; y < seen.height(); y += 2)
            for (int x = 0; x < seen.width(); x += 2)
                white += (seen.pixel(x, y) & 0xFFFFFF) == 0xFFFFFF ? 1 : 0;
        return white;
    };
    EXPECT_TRUE(eventually([&] { return whitePaper() > 20'000; })) << keep(settledScreen());
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    EXPECT_TRUE(eventually([&] { return !m_program->shows(QStringLiteral("Print Preview")); }));
    EXPECT_TRUE(m_program->shows(QStringLiteral("Export figure")));
}

} // namespace TAILPOINT_FILE
