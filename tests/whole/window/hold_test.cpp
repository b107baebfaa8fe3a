// SPDX-License-Identifier: MIT
// The sheet under a real mouse: it holds still while forces are drawn, and gives way at its edge.
#include "tests/whole/window/raft_fixture.h"

#include <QFile>
#include <algorithm>
#include <cmath>
#include <numbers>

using namespace whole;

namespace TAILPOINT_FILE {

/// The common point's ring on a sheet of paper: sheet in the middle, ink all round.
std::optional<QPointF> findRing(const QImage& image, const QRect& region) {
    const QColor ink(0x1F, 0x2A, 0x30);
    const auto isRing = [&](QPoint at) {
        if (countNear(image, QRect(at - QPoint(1, 1), QSize(3, 3)), ink) > 0)
            return false;
        for (int degrees = 0; degrees < 360; degrees += 30) {
            const QPointF rim = placeAt(at, degrees, 4.3);
            if (countNear(image, QRect(rim.toPoint() - QPoint(1, 1), QSize(3, 3)), ink) == 0)
                return false;
        }
        return true;
    };
    QPointF sum;
    int count = 0;
    for (int y = region.top(); y <= region.bottom(); ++y)
        for (int x = region.left(); x <= region.right(); ++x)
            if (isRing({x, y})) {
                sum += QPointF(x, y);
                ++count;
            }
    return count > 0 ? std::optional(sum / count) : std::nullopt;
}

/// The program on a sketch without a force.
class OnAnEmptySheet : public OnTheRaft {
protected:
    void SetUp() override {
        ASSERT_TRUE(m_folder.isValid());
        m_file = m_folder.filePath(QStringLiteral("empty.json"));
        QFile file(m_file);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(R"({"format": "tailpoint-sketch", "version": 1, "title": "Nothing yet",
                       "units": {"force": "N", "angle": "deg"}, "reference": {"axis": "+x", "sense": "ccw"},
                       "figures": 3, "forces": [],
                       "sum": {"name": "R", "magnitude": null, "direction": null}})");
        file.close();
        m_program = std::make_unique<Program>(QStringList{m_file});
        ASSERT_NE(m_program->window(), 0) << m_program->complaints().toStdString();
        const QImage seen = settledScreen();
        const auto ring = findRing(seen, middle());
        ASSERT_TRUE(ring) << "no ring on the screen" << keep(seen);
        m_ring = *ring;
    }

    /// The sheet without the title block's rows.
    QRect middle() const { return m_program->sheet().adjusted(0, 0, 0, -110); }
    std::optional<QPointF> ringNow() const { return findRing(settledScreen(), middle()); }
    QJsonArray savedForces() {
        EXPECT_TRUE(becomesModified(true));
        return saved()[QStringLiteral("forces")].toArray();
    }
    static double number(const QJsonValue& force, const char* key) {
        return force.toObject()[QLatin1String(key)].toDouble();
    }

    QPointF m_ring;
};

TEST_F(OnAnEmptySheet, TwoForcesAreDrawnInARowFromTheSameSpot) {
    ASSERT_TRUE(drag(m_ring, m_ring + QPointF(170, -80)));
    ASSERT_TRUE(drag(m_ring, m_ring + QPointF(120, 120)));
    ASSERT_TRUE(moveTo(m_ring + QPointF(-200, 0)));
    const QJsonArray forces = savedForces();
    ASSERT_EQ(forces.size(), 2) << "the second drag turned the first force";
    EXPECT_EQ(number(forces[0], "direction"), 25); // atan(80 / 170) is 25.2 degrees
    EXPECT_EQ(number(forces[1], "direction"), -45);
    // 187.9 and 169.7 pixels at one scale, each to a step of snapping of some 4 pixels.
    EXPECT_NEAR(number(forces[0], "magnitude") / number(forces[1], "magnitude"), 187.9 / 169.7, 0.06);
    const auto ring = ringNow();
    ASSERT_TRUE(ring) << keep(screen());
    EXPECT_LE(QLineF(*ring, m_ring).length(), 1.5);
}

TEST_F(OnAnEmptySheet, InsertTwiceShowsAParallelogram) {
    ASSERT_TRUE(key(QStringLiteral("Insert")) && key(QStringLiteral("Insert")));
    const QJsonArray forces = savedForces();
    ASSERT_EQ(forces.size(), 2);
    const double apart =
        std::abs(std::remainder(number(forces[0], "direction") - number(forces[1], "direction"), 360));
    EXPECT_GE(apart, 40);
    EXPECT_LE(apart, 110);
    EXPECT_GE(number(forces[1], "magnitude"), 0.5 * number(forces[0], "magnitude"));
    EXPECT_LE(number(forces[1], "magnitude"), 2 * number(forces[0], "magnitude"));
    const QImage seen = settledScreen();
    EXPECT_GT(countNear(seen, m_program->sheet(), kSum), 200) << "a resultant" << keep(seen);
}

TEST_F(OnAnEmptySheet, AForceIsDrawnLongerThanTheSheetThroughItsEdge) {
    ASSERT_TRUE(drag(m_ring, m_ring + QPointF(0, -100))); // to measure by
    const double left = m_program->frame().left() + 2, before = m_ring.x() - left;
    ASSERT_TRUE(dragAndHold(m_ring, {left, m_ring.y()}));
    EXPECT_FALSE(screenWhere([&](const QImage& now) {
                     const auto ring = findRing(now, middle());
                     return ring && ring->x() > m_ring.x() + 60;
                 }).isNull())
        << "the sheet stands still under a pointer that rests at its edge" << keep(screen());
    ASSERT_TRUE(release());
    ASSERT_TRUE(moveTo(m_ring + QPointF(0, 150)));
    const QJsonArray forces = savedForces();
    ASSERT_EQ(forces.size(), 2);
    EXPECT_NEAR(std::abs(number(forces[1], "direction")), 180, 1);
    const double ratio = number(forces[1], "magnitude") / number(forces[0], "magnitude");
    EXPECT_GT(ratio, (before + 50) / 100) << "no longer than the sheet was to the left";
    const QImage seen = settledScreen();
    const auto ring = findRing(seen, middle());
    ASSERT_TRUE(ring) << keep(seen);
    const double upward = followed(seen, *ring, 90, kGiven).length(),
                 leftward = followed(seen, *ring, 180, kGiven).length();
    EXPECT_NEAR(leftward / upward, ratio, 0.06 * ratio) << "all of it is to be seen" << keep(seen);
}

TEST_F(OnTheRaft, EscapeTakesBackADragThatScrolledTheSheet) {
    ASSERT_TRUE(dragAndHold(m_raft.p.tip, {m_program->frame().left() + 2.0, m_raft.p.tip.y()}));
    ASSERT_FALSE(screenWhere([&](const QImage& now) {
                     const auto ring = findRing(now, m_program->sheet());
                     return ring && ring->x() > commonPoint().x() + 40;
                 }).isNull())
        << "it scrolls" << keep(screen());
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    const QImage seen = settledScreen();
    const auto raft = findRaft(seen, m_program->sheet());
    ASSERT_TRUE(raft) << keep(seen);
    EXPECT_LE(QLineF(raft->p.tail, m_raft.p.tail).length(), 2);
    EXPECT_NEAR(raft->p.length(), m_raft.p.length(), 3);
    ASSERT_TRUE(release());
    EXPECT_FALSE(isModified());
}

/// A whole pixel near `about` whose direction from the common point lies half way between two degrees.
QPointF betweenDegrees(QPointF common, QPointF about) {
    for (int up = 0; up < 40; ++up) {
        const QPointF place(std::round(about.x()), std::round(about.y()) - up);
        const double degrees =
            std::atan2(common.y() - place.y(), place.x() - common.x()) * 180 / std::numbers::pi;
        if (std::abs(degrees - std::floor(degrees) - 0.5) < 0.1)
            return place;
    }
    return about;
}

double degreesTo(QPointF common, QPointF place) {
    return std::atan2(common.y() - place.y(), place.x() - common.x()) * 180 / std::numbers::pi;
}

TEST_F(OnTheRaft, TheKeySTurnsSnappingOffInTheMiddleOfADrag) {
    const QPointF about = placeAt(commonPoint(), 47, 250 * pixelsPerNewton());
    const QPointF to = betweenDegrees(commonPoint(), about);
    ASSERT_TRUE(dragAndHold(m_raft.p.tip, to));
    ASSERT_TRUE(becomesModified(true));
    ASSERT_TRUE(key(QStringLiteral("s")));
    ASSERT_TRUE(release());
    EXPECT_NEAR(number(force(saved(), 0), "direction"), degreesTo(commonPoint(), to), 0.35);
}

TEST_F(OnTheRaft, TheSwitchAtTheWindowsFootTurnsSnappingOffAndOn) {
    const QRect frame = m_program->frame();
    const QPointF place(frame.right() - 50, frame.bottom() - 14);
    const QPointF about = placeAt(commonPoint(), 47, 250 * pixelsPerNewton());
    const QPointF to = betweenDegrees(commonPoint(), about);
    ASSERT_TRUE(click(place));
    ASSERT_TRUE(drag(m_raft.p.tip, to));
    ASSERT_TRUE(becomesModified(true));
    const double free = number(force(saved(), 0), "direction");
    EXPECT_NEAR(free, degreesTo(commonPoint(), to), 0.35);
    ASSERT_TRUE(click(place));
    ASSERT_TRUE(drag(to, to + QPointF(-9, 23)));
    ASSERT_TRUE(becomesModified(true));
    const double snapped = number(force(saved(), 0), "direction");
    EXPECT_EQ(snapped, std::round(snapped));
}

} // namespace TAILPOINT_FILE
