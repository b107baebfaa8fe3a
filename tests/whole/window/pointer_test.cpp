// SPDX-License-Identifier: MIT
// What the pointer can take hold of on the real sheet, and what is on the screen while it drags.
#include "tests/whole/window/raft_fixture.h"

#include <QProcess>
#include <cmath>
#include <thread>

using namespace whole;

namespace TAILPOINT_FILE {

class Pointer : public OnTheRaft {
protected:
    /// The last letter of P's label, which stands beside the shaft to its left: found by its colour.
    std::optional<QPointF> unitOfP(const QImage& seen) const {
        constexpr double kAlong = 0.5, kOff = 5;
        const QPointF middle = placeAt(commonPoint(), 25, kAlong * m_raft.p.length());
        std::optional<QPointF> last;
        for (int x = -80; x <= 80; ++x)
            for (int y = -60; y <= 30; ++y) {
                const QPointF at = middle + QPointF(x, y);
                const double off = offShaft(at);
                if (off > kOff && off < 40 && seen.valid(at.toPoint()) && isInk(seen.pixel(at.toPoint())) &&
                    (!last || at.x() > last->x()))
                    last = at;
            }
        return last;
    }
    bool opensMenuAt(QPointF unit, const QImage& before) {
        return click(unit - QPointF(4, 0)) &&
               !screenWhere([&](const QImage& now) {
                    return changedPixels(before, now, QRect(unit.toPoint(), QSize(60, 80))) > 300;
                }).isNull();
    }
    /// How far to the left of P's line, pixels.
    double offShaft(QPointF at) const {
        const QPointF d = at - commonPoint();
        const double radians = 25 * std::acos(-1.0) / 180;
        return -(std::sin(radians) * d.x() + std::cos(radians) * d.y());
    }
    static bool isInk(QRgb pixel) {
        return std::abs(qRed(pixel) - kGiven.red()) < 40 && std::abs(qGreen(pixel) - kGiven.green()) < 40 &&
               std::abs(qBlue(pixel) - kGiven.blue()) < 40;
    }
};

TEST_F(Pointer, AUnitOnTheSheetIsClickedAndAnotherChosen) {
    const QImage before = settledScreen();
    const auto unit = unitOfP(before);
    ASSERT_TRUE(unit) << keep(before);
    ASSERT_TRUE(opensMenuAt(*unit, before));
    ASSERT_TRUE(key(QStringLiteral("Down"))); // N
    ASSERT_TRUE(key(QStringLiteral("Down"))); // kN
    ASSERT_TRUE(key(QStringLiteral("Return")));
    ASSERT_TRUE(becomesModified(true)) << keep(screen());
    m_program->turnTo();
    const QJsonObject sketch = saved();
    EXPECT_EQ(sketch[QStringLiteral("units")].toObject()[QStringLiteral("force")].toString(),
              QStringLiteral("kN"));
    EXPECT_NEAR(number(force(sketch, 0), "magnitude"), 0.34, 1e-12);
    ASSERT_TRUE(key(QStringLiteral("ctrl+z")));
    ASSERT_TRUE(becomesModified(true));
    EXPECT_EQ(number(force(saved(), 0), "magnitude"), 340) << "one step";
}

TEST_F(Pointer, AUnitChosenForOneSheetIsNotTheNextOnes) {
    const QImage before = settledScreen();
    const auto unit = unitOfP(before);
    ASSERT_TRUE(unit) << keep(before);
    ASSERT_TRUE(opensMenuAt(*unit, before));
    for (const char* each : {"Down", "Down", "Return"})
        ASSERT_TRUE(key(QLatin1String(each)));
    ASSERT_TRUE(becomesModified(true));
    m_program->turnTo();
    saved();
    ASSERT_TRUE(key(QStringLiteral("ctrl+n")));
    ASSERT_TRUE(eventually([&] { return m_program->title().contains(QStringLiteral("Unsaved")); }))
        << m_program->title().toStdString();
    const QPointF ring(439, 373); // the common point of an empty sheet, in the middle of the canvas
    settledScreen();
    ASSERT_TRUE(drag(ring, ring + QPointF(120, -60)));
    ASSERT_TRUE(becomesModified(true)) << keep(screen());
    ASSERT_TRUE(key(QStringLiteral("ctrl+s"))); // asks for a name
    settledScreen();
    const QString path = m_folder.filePath(QStringLiteral("new.json"));
    ASSERT_TRUE(key(QStringLiteral("ctrl+a")));
    ASSERT_TRUE(type(path));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    ASSERT_TRUE(eventually([&] { return QFile::exists(path); })) << keep(screen());
    EXPECT_EQ(readJson(path)[QStringLiteral("units")].toObject()[QStringLiteral("force")].toString(),
              QStringLiteral("N"));
}

/// The tip goes to and fro between two places as fast as events can be sent. Every picture of the screen has
/// the sheet and the panel of the one place or of the other, never one of each.
TEST_F(Pointer, InAFloodOfMovesSheetAndPanelAreOfOneResult) {
    const QPointF one = placeAt(commonPoint(), 40, 250 * pixelsPerNewton()),
                  two = placeAt(commonPoint(), 70, 200 * pixelsPerNewton());
    ASSERT_TRUE(dragAndHold(m_raft.p.tip, one));
    for (const QPointF& at : {two, one}) { // labels find the places that they keep
        ASSERT_TRUE(moveTo(at));
        settledScreen();
    }
    const QImage first = settledScreen();
    ASSERT_TRUE(moveTo(two));
    const QImage second = settledScreen();
    ASSERT_FALSE(first.isNull() || second.isNull());
    const QRect sheet = m_program->sheet(), values = panel();
    ASSERT_GT(changedPixels(first, second, values), 50) << "nothing to tell the two apart by" << keep(second);
    QStringList moves;
    for (int i = 0; i < 6000; ++i)
        for (const QPointF& at : {one, two})
            moves << QStringLiteral("mousemove") << QString::number(std::lround(at.x()))
                  << QString::number(std::lround(at.y()));
    QProcess flood;
    flood.start(QStringLiteral("xdotool"), moves);
    ASSERT_TRUE(flood.waitForStarted());
    int told = 0, mixed = 0;
    const auto is = [&](const QImage& now, const QImage& then, const QRect& part) {
        return now.copy(part) == then.copy(part);
    };
    eventually([&] {
        const QImage now = screen();
        const bool sheetOne = is(now, first, sheet), sheetTwo = is(now, second, sheet);
        const bool panelOne = is(now, first, values), panelTwo = is(now, second, values);
        told += (sheetOne && panelOne) || (sheetTwo && panelTwo) ? 1 : 0;
        mixed += (sheetOne && panelTwo) || (sheetTwo && panelOne) ? 1 : 0;
        flood.waitForFinished(1);
        return flood.state() == QProcess::NotRunning;
    });
    EXPECT_EQ(mixed, 0) << "of " << told + mixed;
    EXPECT_GT(told, 10) << "hardly a picture had both, and so nothing was seen";
    ASSERT_TRUE(moveTo(one));
    const QImage last =
        screenWhere([&](const QImage& now) { return is(now, first, sheet) && is(now, first, values); });
    EXPECT_FALSE(last.isNull()) << "it has not come to rest where the hand is" << keep(screen());
    ASSERT_TRUE(release());
}

} // namespace TAILPOINT_FILE
