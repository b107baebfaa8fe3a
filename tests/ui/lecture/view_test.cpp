// SPDX-License-Identifier: MIT
#include "core/quantity/tolerance.h"
#include "core/sketch/shown.h"
#include "tests/ui/lecture/lecture_fixture.h"
#include "ui/lecture/key_sheet.h"
#include "ui/lecture/screens.h"

#include <QSignalSpy>

namespace tailpoint {
namespace TAILPOINT_FILE {

TEST_F(LectureTest, TheFigureTakesTwoThirdsAndTheWordsTheLeftThird) {
    open("survey-raft.json");
    for (const QSize room : kRooms) {
        resize(room);
        const double part = view.column().width() / static_cast<double>(room.width());
        EXPECT_GE(part, 0.33);
        EXPECT_LE(part, 0.43);
        EXPECT_EQ(view.canvas().geometry().right() + 1, room.width());
        EXPECT_EQ(view.canvas().height(), room.height());
    }
}

TEST_F(LectureTest, EveryKeyOfAPresenterGoesOnOrBack) {
    open("survey-raft.json");
    for (const Qt::Key forward : {Qt::Key_Space, Qt::Key_Right, Qt::Key_PageDown, Qt::Key_Return}) {
        view.goTo(4, false);
        key(forward);
        EXPECT_EQ(view.stop(), 4U);
        EXPECT_EQ(view.beat(), 1U) << forward;
    }
    for (const Qt::Key back : {Qt::Key_Backspace, Qt::Key_Left, Qt::Key_PageUp}) {
        view.goTo(4, false);
        view.next();
        key(back);
        EXPECT_EQ(view.beat(), 0U) << back;
        key(back);
        EXPECT_EQ(view.stop(), 3U);
        EXPECT_EQ(view.beat(), now().lastBeat()) << "a step gone back to stands whole";
    }
    view.goTo(4, false);
    view.next();
    key(Qt::Key_Space, Qt::ShiftModifier);
    EXPECT_EQ(view.beat(), 0U);
    key(Qt::Key_Down);
    EXPECT_EQ(view.beat(), now().lastBeat());
    key(Qt::Key_Down);
    EXPECT_EQ(view.stop(), 5U);
    EXPECT_EQ(view.beat(), now().lastBeat());
    key(Qt::Key_Up);
    EXPECT_EQ(view.stop(), 4U);
    key(Qt::Key_End);
    EXPECT_EQ(view.stop() + 1, view.stops().size());
    key(Qt::Key_Space);
    EXPECT_EQ(view.stop() + 1, view.stops().size()) << "nothing comes after the answer";
    key(Qt::Key_Home);
    EXPECT_EQ(view.stop(), 0U);
    key(Qt::Key_Left);
    EXPECT_EQ(view.stop(), 0U);
}

TEST_F(LectureTest, AClickOnTheSheetOrBesideItGoesOn) {
    open("survey-raft.json");
    QTest::mouseClick(&view.canvas(), Qt::LeftButton, {}, {8, 8});
    EXPECT_EQ(view.stop(), 1U);
    view.goTo(0, true);
    QTest::mouseClick(&view.canvas(), Qt::LeftButton, {}, tipOf(0));
    EXPECT_EQ(view.stop(), 1U) << "a press on a tip that is no drag is a click";
    view.goTo(0, true);
    QTest::mouseClick(&view.column(), Qt::LeftButton, {}, {50, 500});
    EXPECT_EQ(view.stop(), 1U);
}

TEST_F(LectureTest, WalkingThroughTakesEveryLineOnce) {
    open("two-answers.json");
    std::size_t presses = 0, lines = 0;
    for (const Stop& stop : view.stops())
        lines += stop.beats.size();
    while (view.stop() + 1 < view.stops().size() || view.beat() < now().lastBeat()) {
        key(Qt::Key_PageDown);
        ASSERT_LE(++presses, lines);
    }
    EXPECT_EQ(presses, lines - 1);
    EXPECT_EQ(keyNow(), "end");
}

TEST_F(LectureTest, TheAnswerOfTheStopIsDrawn) {
    open("two-answers.json");
    goTo("first");
    EXPECT_EQ(view.document().result().chosen, 0U);
    goTo("second");
    EXPECT_EQ(view.document().result().chosen, 1U);
    goTo("end");
    key(Qt::Key_O);
    EXPECT_EQ(view.document().result().chosen, 1U);
    key(Qt::Key_O);
    EXPECT_EQ(view.document().result().chosen, 0U);
    EXPECT_FALSE(view.isChanged());
}

TEST_F(LectureTest, TheColumnIsReadAloudInWords) {
    open("survey-raft.json");
    goTo("cosines");
    const QString shown = view.column().plainText(), told = view.column().accessibleName();
    ASSERT_TRUE(shown.contains(QStringLiteral("cos "))) << shown.toStdString();
    for (const QChar sign : {QChar(u'='), QChar(0x221A), QChar(0x00B2)}) // also the root and the square
        EXPECT_FALSE(told.contains(sign)) << told.toStdString();
    for (const char* words : {"square root of", "squared", "cosine of", "equals"})
        EXPECT_TRUE(told.contains(QLatin1String(words))) << words << " in " << told.toStdString();
}

TEST_F(LectureTest, ADraggedTipTakesEverythingAlongAndUGoesBackToThePlan) {
    open("survey-raft.json");
    goTo("cosines");
    const Sketch plan = view.document().sketch();
    const std::string before = view.column().plainText().toStdString();
    const QPoint tip = tipOf(0);
    drag(tip, tip + QPoint(-120, -60));
    EXPECT_TRUE(view.isChanged());
    EXPECT_EQ(keyNow(), "cosines");
    EXPECT_NE(view.column().plainText().toStdString(), before);
    const double solved = view.document().result().solved.solutions.at(0).sum.magnitude;
    const std::string shown = shownForceWithUnit(solved, view.document().sketch());
    EXPECT_TRUE(numbersOn(list()).contains(shown)) << shown;
    EXPECT_NE(view.column().plainText().toStdString().find(shown), std::string::npos) << shown;
    key(Qt::Key_U);
    EXPECT_EQ(view.document().sketch(), plan);
    EXPECT_FALSE(view.isChanged());
    EXPECT_EQ(keyNow(), "cosines");
    EXPECT_EQ(view.column().plainText().toStdString(), before);
}

TEST_F(LectureTest, CtrlZTakesOneChangeBackAndCtrl0All) {
    open("survey-raft.json");
    const Sketch plan = view.document().sketch();
    drag(tipOf(0), tipOf(0) + QPoint(-100, 20));
    const Sketch once = view.document().sketch();
    drag(tipOf(1), tipOf(1) + QPoint(-60, 40));
    EXPECT_NE(view.document().sketch(), once);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(view.document().sketch(), once);
    key(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_NE(view.document().sketch(), once);
    key(Qt::Key_0, Qt::ControlModifier);
    EXPECT_EQ(view.document().sketch(), plan);
}

TEST_F(LectureTest, TheOpenSketchIsNeverTouched) {
    SketchDocument document;
    ASSERT_FALSE(document.open(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json")));
    const Sketch before = document.sketch();
    open(document.result());
    drag(tipOf(0), tipOf(0) + QPoint(-100, 20));
    EXPECT_TRUE(view.isChanged());
    EXPECT_EQ(document.sketch(), before);
    EXPECT_EQ(document.history().count(), 0);
}

TEST_F(LectureTest, NothingButGivenTipsCanBeMovedAndNothingTyped) {
    open("survey-raft.json");
    goTo("end");
    const Sketch plan = view.document().sketch();
    const QPoint common =
        (QPointF(view.canvas().view().origin.x, view.canvas().view().origin.y) * pixel()).toPoint();
    drag(common, common + QPoint(-100, -100));
    drag(tipOf(kSumIndex), tipOf(kSumIndex) + QPoint(0, 90));
    for (const Qt::Key typed : {Qt::Key_Delete, Qt::Key_Insert, Qt::Key_F2, Qt::Key_Tab})
        key(typed);
    QTest::mouseDClick(&view.canvas(), Qt::LeftButton, {},
                       QPoint(view.canvas().width() - 60, view.canvas().height() - 60));
    EXPECT_EQ(view.document().sketch(), plan);
    EXPECT_EQ(view.canvas().selected(), kNoVector);
}

TEST_F(LectureTest, EscapeDuringADragTakesTheDragBackAndStays) {
    open("survey-raft.json");
    const Sketch plan = view.document().sketch();
    const QPoint tip = tipOf(0), to = tip + QPoint(-90, 10);
    QTest::mousePress(&view.canvas(), Qt::LeftButton, {}, tip);
    QMouseEvent move(QEvent::MouseMove, to, view.canvas().mapToGlobal(to), Qt::NoButton, Qt::LeftButton, {});
    QCoreApplication::sendEvent(&view.canvas(), &move);
    view.canvas().catchUp();
    EXPECT_TRUE(view.isChanged());
    key(Qt::Key_Escape);
    EXPECT_EQ(view.document().sketch(), plan);
    EXPECT_TRUE(view.isVisible());
    QTest::mouseRelease(&view.canvas(), Qt::LeftButton, {}, to);
}

TEST_F(LectureTest, NHidesTheNumbersOfSheetAndColumn) {
    open("survey-raft.json");
    goTo("cosines");
    ASSERT_FALSE(numbersOn(list()).empty());
    key(Qt::Key_N);
    EXPECT_TRUE(numbersOn(list()).empty()) << listed(numbersOn(list()));
    EXPECT_FALSE(view.column().plainText().contains(QStringLiteral("520")));
    key(Qt::Key_Space); // and stays hidden on the way
    EXPECT_TRUE(view.hidesNumbers());
    key(Qt::Key_N);
    EXPECT_FALSE(numbersOn(list()).empty());
}

TEST_F(LectureTest, BAndTheFullStopBlankAndTheNextKeyOnlyUncovers) {
    open("survey-raft.json");
    for (const Qt::Key blank : {Qt::Key_B, Qt::Key_Period}) {
        view.goTo(2, true);
        key(blank);
        EXPECT_TRUE(view.isBlank());
        const QImage seen = view.grab().toImage();
        const QRgb sheet = themeOf(ThemeName::slate).sheet.rgb();
        for (int y = 5; y < seen.height(); y += 37)
            for (int x = 5; x < seen.width(); x += 41)
                ASSERT_EQ(seen.pixel(x, y), sheet) << x << ", " << y;
        key(Qt::Key_PageDown);
        EXPECT_FALSE(view.isBlank());
        EXPECT_EQ(view.stop(), 2U);
        key(blank);
        key(blank);
        EXPECT_FALSE(view.isBlank());
    }
}

TEST_F(LectureTest, TShowsTheTitleOfTheNextStepAlone) {
    open("survey-raft.json");
    view.goTo(4, true);
    const QString next = QString::fromStdString(view.stops()[5].step.title);
    key(Qt::Key_T);
    EXPECT_EQ(view.column().plainText(), next);
    EXPECT_EQ(view.stop(), 4U);
    key(Qt::Key_T);
    EXPECT_NE(view.column().plainText(), next);
    key(Qt::Key_T);
    key(Qt::Key_Space);
    EXPECT_EQ(view.stop(), 5U);
    EXPECT_EQ(view.beat(), 0U);
    EXPECT_FALSE(view.showsNextTitle());
}

TEST_F(LectureTest, NewPartsDrawThemselvesUnlessMovementIsOff) {
    open("survey-raft.json");
    goTo("tails");
    view.setMoves(true);
    goTo("parallelogram", false);
    EXPECT_TRUE(view.canvas().isRevealing());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !view.canvas().isRevealing(); }, 5000));
    QSignalSpy told(&view, &LectureView::movesChosen);
    key(Qt::Key_A);
    ASSERT_EQ(told.count(), 1);
    EXPECT_FALSE(told.at(0).at(0).toBool());
    goTo("tails");
    goTo("parallelogram", false);
    EXPECT_FALSE(view.canvas().isRevealing());
}

TEST_F(LectureTest, CChangesTheThemeAndSlateIsTheFirst) {
    open("survey-raft.json");
    EXPECT_EQ(view.theme(), ThemeName::slate);
    QSignalSpy told(&view, &LectureView::themeChosen);
    key(Qt::Key_C);
    EXPECT_EQ(view.theme(), ThemeName::paper);
    key(Qt::Key_C);
    EXPECT_EQ(view.canvas().theme(), ThemeName::contrast);
    key(Qt::Key_C);
    EXPECT_EQ(view.theme(), ThemeName::slate);
    EXPECT_EQ(told.count(), 3);
}

TEST_F(LectureTest, EscapeClosesTheKeysFirstThenTheLectureAndTheSameSketchGoesOnWhereItWas) {
    open("survey-raft.json");
    goTo("choice");
    const std::size_t stop = view.stop();
    QSignalSpy ended(&view, &LectureView::ended);
    key(Qt::Key_F1);
    ASSERT_TRUE(view.findChild<KeySheet*>()->isVisible());
    EXPECT_TRUE(view.findChild<KeySheet*>()->fits());
    key(Qt::Key_Escape);
    EXPECT_FALSE(view.findChild<KeySheet*>()->isVisible());
    EXPECT_EQ(ended.count(), 0);
    key(Qt::Key_Escape);
    EXPECT_EQ(ended.count(), 1);
    EXPECT_FALSE(view.isVisible());
    open("survey-raft.json");
    EXPECT_EQ(view.stop(), stop);
    open("five-forces.json");
    EXPECT_EQ(view.stop(), 0U) << "another sketch begins at its beginning";
}

TEST_F(LectureTest, AChangeIsForgottenWithTheLecture) {
    open("survey-raft.json");
    drag(tipOf(0), tipOf(0) + QPoint(-100, 20));
    ASSERT_TRUE(view.isChanged());
    key(Qt::Key_Escape);
    open("survey-raft.json");
    EXPECT_FALSE(view.isChanged());
    EXPECT_EQ(view.document().sketch(), sampleNamed("survey-raft.json").sketch);
}

TEST_F(LectureTest, OneScreenIsTakenWhereThereIsNoOther) {
    QScreen* own = QGuiApplication::primaryScreen();
    if (QGuiApplication::screens().size() == 1) {
        EXPECT_EQ(screenForLecture(own), own);
    } else {
        EXPECT_NE(screenForLecture(own), own);
    }
    EXPECT_NE(screenForLecture(nullptr), nullptr);
}

TEST_F(LectureTest, AnyKeysInAnyOrderKeepItWhole) {
    constexpr Qt::Key kKeys[]{Qt::Key_Space, Qt::Key_Left, Qt::Key_Down, Qt::Key_Up,
                              Qt::Key_Home,  Qt::Key_End,  Qt::Key_B,    Qt::Key_N,
                              Qt::Key_T,     Qt::Key_M,    Qt::Key_O,    Qt::Key_U,
                              Qt::Key_C,     Qt::Key_A,    Qt::Key_F1,   Qt::Key_Right};
    unsigned state = 20240607; // fixed
    const auto random = [&](unsigned below) {
        state = state * 1664525U + 1013904223U;
        return (state >> 16) % below;
    };
    for (const Sample& sample : allSamples()) {
        open(sample.result, {1366, 768});
        SCOPED_TRACE(sample.name);
        for (int i = 0; i < 60; ++i) {
            key(kKeys[random(16)]);
            if (random(6) == 0) {
                const QPoint from = tipOf(static_cast<int>(random(2)));
                drag(from,
                     from + QPoint(static_cast<int>(random(300)) - 150, static_cast<int>(random(300)) - 150));
            }
            ASSERT_LT(view.stop(), view.stops().size());
            ASSERT_LT(view.beat(), now().beats.size());
            ASSERT_TRUE(view.isVisible());
        }
        view.backToPlan();
        EXPECT_EQ(view.document().sketch(), sample.result.sketch);
    }
}

bool shades(const DisplayList& list) {
    return std::any_of(list.groups.begin(), list.groups.end(),
                       [](const Group& group) { return group.role == Role::region; });
}

/// Shaded as everywhere; for students the stated values may do. What is judged against a limit keeps them.
TEST_F(LectureTest, RLeavesTolerancesOutAndTakesThemInAgain) {
    Sketch sketch = sampleNamed("survey-raft.json").sketch;
    sketch.forces[0].magnitude.tolerance = plusMinus(5);
    open(resultOf(sketch));
    key(Qt::Key_End);
    EXPECT_TRUE(shades(list()));
    EXPECT_TRUE(view.column().plainText().contains(QStringLiteral("between")));
    key(Qt::Key_R);
    EXPECT_TRUE(view.leavesTolerancesOut());
    EXPECT_FALSE(view.isChanged()) << "it is the plan all the same";
    EXPECT_EQ(view.stop() + 1, view.stops().size()) << "where it was";
    EXPECT_FALSE(shades(list()));
    EXPECT_FALSE(view.column().plainText().contains(QStringLiteral("between")));
    key(Qt::Key_R);
    EXPECT_TRUE(shades(list()));
    sketch.sum.limit = TypedForce{530, ForceUnit::N, {}};
    open(resultOf(sketch));
    key(Qt::Key_End);
    key(Qt::Key_R);
    EXPECT_FALSE(view.leavesTolerancesOut());
    EXPECT_TRUE(shades(list()));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
