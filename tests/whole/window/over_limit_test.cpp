// SPDX-License-Identifier: MIT
// A sum of 10.04 kN against a limit of 10 kN, which reads 10.0 kN: the window says over, in words and in ink.
#include "tests/whole/window/program.h"
#include "tests/whole/window/sight.h"
#include "tests/whole/window/wait.h"

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QMimeData>
#include <gtest/gtest.h>

using namespace whole;

namespace TAILPOINT_FILE {

/// What a window showed of a sum of hypot(6, 8.05) = 10.0400448 kN (Python).
struct Shown {
    int onSheet = 0, inPanel = 0; ///< pixels in the sum's ink, and in that of a warning
    QString copied;
};

class OverALimit : public ::testing::Test {
protected:
    Shown shown(const QByteArray& limit) const {
        const QString file = m_folder.filePath(QStringLiteral("buoy.json"));
        QFile out(file);
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(R"({"format": "tailpoint-sketch", "version": 1, "title": "Survey buoy on two lines",
  "units": {"force": "kN", "angle": "deg"}, "reference": {"axis": "+x", "sense": "ccw"}, "figures": 3,
  "forces": [{"name": "P", "magnitude": 6, "direction": 0}, {"name": "Q", "magnitude": 8.05, "direction": 90}],
  "sum": {"name": "R", "magnitude": null, "direction": null, "limit": )" +
                  limit + "}}");
        out.close();
        const Program program({file});
        EXPECT_NE(program.window(), 0);
        QImage seen =
            screenWhere([&](const QImage& now) { return countNear(now, program.sheet(), kSum) > 100; });
        EXPECT_FALSE(seen.isNull()) << "no sum on the sheet";
        seen = settledScreen();
        const QRect sheet = program.sheet();
        const QRect panel(sheet.right() + 1, sheet.top(), program.frame().right() - sheet.right(),
                          sheet.height());
        return {countNear(seen, sheet, kSum), countNear(seen, panel, kWarning), copied()};
    }

    static QString copied() {
        QGuiApplication::clipboard()->clear();
        EXPECT_TRUE(key(QStringLiteral("ctrl+shift+v")));
        QString text;
        eventually([&] {
            QCoreApplication::processEvents();
            text = QGuiApplication::clipboard()->text();
            return !text.isEmpty();
        });
        return text;
    }

    QTemporaryDir m_folder;
};

TEST_F(OverALimit, IsNotRoundedAwayInTheWindow) {
    const Shown over = shown("10"), within = shown("10.1");
    EXPECT_GT(over.onSheet, within.onSheet + 100) << "the sum's label has a line more";
    EXPECT_GT(over.inPanel, within.inPanel + 100) << "bar, word and sentence in the warning's ink";
    EXPECT_TRUE(over.copied.contains(QStringLiteral("10.0 kN"))) << over.copied.toStdString();
    EXPECT_TRUE(over.copied.contains(QStringLiteral("R is over its limit: 100.5 % of 10 kN.")))
        << over.copied.toStdString();
    EXPECT_FALSE(over.copied.contains(QStringLiteral("within its limit"))) << over.copied.toStdString();
    EXPECT_TRUE(within.copied.contains(QStringLiteral("R is within its limit: 99.5 % of 10.1 kN.")))
        << within.copied.toStdString();
}

} // namespace TAILPOINT_FILE
