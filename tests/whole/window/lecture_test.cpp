// SPDX-License-Identifier: MIT
// The lecture on a screen of a lecture room, walked with a real hand from the bare forces to the answer.
#include "tests/whole/window/program.h"
#include "tests/whole/window/sight.h"
#include "tests/whole/window/wait.h"
#include "tests/whole/window/x_server.h"

#include <QRegularExpression>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <map>
#include <memory>
#include <set>

using namespace whole;

namespace TAILPOINT_FILE {

const QColor kSlateSheet(0x18, 0x24, 0x2A), kSlateGiven(0x8F, 0xD3, 0xE0), kSlateSum(0xFF, 0xB2, 0x7A);
constexpr int kWidth = 1920, kHeight = 1080;
/// Left of it words, right of it the figure; between them neither.
const QRect kWords(0, 0, 640, kHeight - 110), kFigure(780, 0, kWidth - 780, kHeight - 190);

class OnTheLecture : public ::testing::Test {
protected:
    static void SetUpTestSuite() { takeScreen(kWidth, kHeight); }
    static void TearDownTestSuite() { takeUsualScreen(); }

    void begin(const char* sample) {
        ASSERT_TRUE(m_folder.isValid());
        m_program = std::make_unique<Program>(QStringList{copyOfSample(QLatin1String(sample), m_folder)});
        ASSERT_NE(m_program->window(), 0) << m_program->complaints().toStdString();
        m_before = settledScreen();
        ASSERT_TRUE(key(QStringLiteral("F5")));
        ASSERT_TRUE(eventually([&] { return at() == 1; })) << focusedTitle().toStdString();
        ASSERT_TRUE(key(QStringLiteral("a"))); // no movement: each screen is what it comes to
    }

    /// Number of the step from the title of the window with the keys; 0 outside the lecture.
    static int at() { return part(1); }
    static int steps() { return part(2); }
    static int part(int which) {
        static const QRegularExpression pattern(QStringLiteral("^Lecture \u2013 (\\d+) of (\\d+): "));
        const auto match = pattern.match(focusedTitle());
        return match.hasMatch() ? match.captured(which).toInt() : 0;
    }
    /// Presses and waits for something to change.
    QImage pressed(const QString& name) {
        const QImage before = settledScreen();
        EXPECT_TRUE(key(name));
        const QImage changed = screenWhere([&](const QImage& now) { return now != before; });
        EXPECT_FALSE(changed.isNull()) << "nothing came of " << name.toStdString();
        return settledScreen();
    }
    /// Begins on the raft and goes to the end: the screen as planned, and its arrows.
    std::optional<Raft> raftAtTheEnd(QImage& plan) {
        begin("survey-raft.json");
        pressed(QStringLiteral("End"));
        moveTo({4, 4});
        plan = settledScreen();
        return findRaft(plan, kFigure, 25, -40, kSlateGiven);
    }
    void keep(const QImage& image, const QString& name) const {
        image.save(QString::fromStdString(::testing::TempDir()) + QStringLiteral("tailpoint-lecture-") +
                   name + QStringLiteral(".png"));
    }

    QTemporaryDir m_folder;
    std::unique_ptr<Program> m_program;
    QImage m_before;
};

struct Seen {
    int step = 0;
    int given = 0, sum = 0; ///< pixels of these colours in the figure
    QImage image;
};

TEST_F(OnTheLecture, WalksFromTheBareForcesToTheAnswerAndShowsNothingBeforeItsTurn) {
    begin("survey-raft.json");
    ASSERT_GT(steps(), 10);
    std::vector<Seen> seen;
    const auto look = [&](const QImage& image) {
        seen.push_back(
            {at(), countNear(image, kFigure, kSlateGiven), countNear(image, kFigure, kSlateSum), image});
        keep(image, QStringLiteral("%1-%2").arg(seen.size(), 2, 10, QLatin1Char('0')).arg(at()));
    };
    look(settledScreen());
    while (at() < steps())
        look(pressed(seen.size() % 2 == 0 ? QStringLiteral("space") : QStringLiteral("Next")));
    ASSERT_GT(seen.size(), 25U);

    std::set<int> walked;
    std::map<int, std::set<int>> sumsOf; ///< by step: how much of the sum's colour the figure had
    for (std::size_t i = 0; i < seen.size(); ++i) {
        SCOPED_TRACE("screen " + std::to_string(i + 1) + ", step " + std::to_string(seen[i].step));
        walked.insert(seen[i].step);
        sumsOf[seen[i].step].insert(seen[i].sum);
        EXPECT_GT(seen[i].given, 500) << "the given forces are always on the sheet";
        if (i > 0) {
            EXPECT_GT(changedPixels(seen[i - 1].image, seen[i].image, QRect(0, 0, kWidth, kHeight)), 50);
        }
    }
    EXPECT_EQ(static_cast<int>(walked.size()), steps()) << "no step is passed over";
    for (int step = 1; step <= 6; ++step)
        EXPECT_EQ(sumsOf[step], std::set<int>{0}) << "R before it is drawn, step " << step;
    // Drawn and named as the side of the triangle; its magnitude comes with the law of cosines' result and
    // not before, its direction with the last line but the quadrant.
    EXPECT_EQ(sumsOf[7].size(), 1U);
    EXPECT_GT(*sumsOf[7].begin(), 500);
    EXPECT_EQ(sumsOf[8], sumsOf[7]) << "nothing of the magnitude while the law is chosen";
    ASSERT_EQ(sumsOf[9].size(), 2U) << "without the value, then with it";
    EXPECT_EQ(*sumsOf[9].begin(), *sumsOf[7].begin());
    EXPECT_GT(*sumsOf[9].rbegin(), *sumsOf[9].begin() + 200);
    // The arcs of the angles meet the shaft: a pixel or two of it. A value has hundreds.
    for (const int sum : sumsOf[10])
        EXPECT_NEAR(sum, *sumsOf[9].rbegin(), 20) << "nothing of the direction yet";
}

TEST_F(OnTheLecture, EscapeComesBackToTheWindowAsItWas) {
    begin("survey-raft.json");
    pressed(QStringLiteral("Next"));
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    ASSERT_TRUE(eventually([&] { return at() == 0 && focusedTitle() == m_program->title(); }));
    moveTo({kWidth - 2.0, kHeight - 2.0});
    const QImage after = settledScreen();
    EXPECT_LT(changedPixels(m_before, after, QRect(0, 0, kWidth, kHeight)), 20);
    EXPECT_FALSE(m_program->title().contains(u'*'));
    ASSERT_TRUE(key(QStringLiteral("F5")));
    EXPECT_TRUE(eventually([&] { return at() == 2; })) << "it goes on where it was";
}

TEST_F(OnTheLecture, ATipDraggedForAQuestionGoesBackToThePlanAndLeavesTheSketchAlone) {
    QImage plan;
    const auto raft = raftAtTheEnd(plan);
    ASSERT_TRUE(raft);
    ASSERT_TRUE(drag(raft->p.tip, raft->p.tip + QPointF(-140, -90)));
    moveTo({4, 4});
    const QImage tried = settledScreen();
    keep(tried, QStringLiteral("tried"));
    EXPECT_GT(changedPixels(plan, tried, kFigure), 2000);
    EXPECT_GT(changedPixels(plan, tried, kWords), 100) << "the words follow";
    pressed(QStringLiteral("u"));
    EXPECT_EQ(changedPixels(plan, settledScreen(), QRect(0, 0, kWidth, kHeight)), 0);
    EXPECT_FALSE(m_program->title().contains(u'*'));
}

TEST_F(OnTheLecture, ABlankSheetIsNotDraggedUnderItsCover) {
    QImage plan;
    const auto raft = raftAtTheEnd(plan);
    ASSERT_TRUE(raft);
    pressed(QStringLiteral("b"));
    ASSERT_TRUE(drag(raft->p.tip, raft->p.tip + QPointF(-140, -90)));
    moveTo({4, 4});
    EXPECT_TRUE(eventually([&] { return settledScreen() == plan; })) << "a press uncovers, and nothing else";
    EXPECT_EQ(at(), steps());
}

/// A step that is longer than the column is read to its end by the key that goes on.
TEST_F(OnTheLecture, ALongStepIsReadPageByPageByTheRemotesKey) {
    begin("five-forces.json");
    pressed(QStringLiteral("Down"));
    ASSERT_EQ(at(), 2);
    const QImage first = settledScreen();
    const QImage second = pressed(QStringLiteral("Next"));
    ASSERT_EQ(at(), 2) << "the rest of what is given";
    EXPECT_EQ(changedPixels(first, second, kFigure), 0);
    EXPECT_EQ(pressed(QStringLiteral("Prior")), first);
    pressed(QStringLiteral("Next"));
    pressed(QStringLiteral("Next"));
    EXPECT_EQ(at(), 3);
}

TEST_F(OnTheLecture, TheSheetIsBlankedAndComesBack) {
    begin("two-answers.json");
    pressed(QStringLiteral("End"));
    const QImage plan = settledScreen();
    const QImage blank = pressed(QStringLiteral("period"));
    EXPECT_EQ(countNear(blank, blank.rect(), kSlateSheet), kWidth * kHeight);
    EXPECT_EQ(pressed(QStringLiteral("b")), plan);
    const QImage hushed = pressed(QStringLiteral("n"));
    EXPECT_LT(countNear(hushed, kFigure, kSlateGiven), countNear(plan, kFigure, kSlateGiven));
    EXPECT_EQ(pressed(QStringLiteral("n")), plan);
}

} // namespace TAILPOINT_FILE
