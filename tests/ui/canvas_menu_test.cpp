// SPDX-License-Identifier: MIT
// The menus of the sheet: what a pointer can't say by dragging.
#include "tests/ui/canvas_fixture.h"
#include "ui/canvas/label_editor.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QTimer>

namespace tailpoint {

class CanvasMenu : public CanvasTest {
protected:
    void openAt(QPointF at, QContextMenuEvent::Reason reason = QContextMenuEvent::Mouse) {
        QContextMenuEvent event(reason, at.toPoint(), canvas.mapToGlobal(at.toPoint()));
        QCoreApplication::sendEvent(&canvas, &event);
    }
    QAction* action(const QString& words) {
        for (QMenu* menu : canvas.findChildren<QMenu*>()) {
            for (QAction* one : menu->actions()) {
                if (one->text().contains(words)) {
                    return one;
                }
            }
        }
        ADD_FAILURE() << "no action " << words.toStdString();
        return nullptr;
    }
    void trigger(const QString& words) {
        if (QAction* one = action(words)) {
            one->trigger();
        }
    }
    void TearDown() override { qDeleteAll(canvas.findChildren<QMenu*>()); }
};

TEST_F(CanvasMenu, AForceIsPutToFindAndGivenAgain) {
    openAt(polar(200, 25));
    EXPECT_EQ(canvas.selected(), 0);
    ASSERT_FALSE(action(QStringLiteral("Magnitude to find"))->isChecked());
    trigger(QStringLiteral("Magnitude to find"));
    EXPECT_FALSE(isGiven(force(0).magnitude));
    EXPECT_EQ(steps(), 1);
    qDeleteAll(canvas.findChildren<QMenu*>());
    canvas.select(0);
    openAt({5, 5}, QContextMenuEvent::Keyboard);
    EXPECT_TRUE(action(QStringLiteral("Magnitude to find"))->isChecked());
    trigger(QStringLiteral("Magnitude to find"));
    EXPECT_TRUE(isGiven(force(0).magnitude));
}

TEST_F(CanvasMenu, AForceIsDeletedAndRenamed) {
    openAt(polar(200, 25));
    trigger(QStringLiteral("Rename"));
    auto* editor = canvas.findChild<LabelEditor*>(QStringLiteral("labelEditor"));
    ASSERT_TRUE(editor->isOpen());
    EXPECT_EQ(editor->text(), QStringLiteral("P"));
    QTest::keyClick(editor, Qt::Key_Escape);
    openAt(polar(200, 25));
    trigger(QStringLiteral("Delete P"));
    ASSERT_EQ(document.sketch().forces.size(), 1u);
    EXPECT_EQ(force(0).name, "Q");
}

TEST_F(CanvasMenu, TheResultantIsNotOfferedForDeletion) {
    openAt(pixel(document.result().solved.solutions[0].sum.vector * 0.5));
    EXPECT_EQ(canvas.selected(), kSumIndex);
    for (QMenu* menu : canvas.findChildren<QMenu*>()) {
        for (QAction* one : menu->actions()) {
            EXPECT_FALSE(one->text().contains(QStringLiteral("Delete")));
        }
    }
}

TEST_F(CanvasMenu, TheSheetOffersAForceTheFitAndSnapping) {
    openAt({10, 10});
    EXPECT_EQ(canvas.selected(), kNoVector);
    trigger(QStringLiteral("Snapping"));
    EXPECT_FALSE(canvas.snapping());
    trigger(QStringLiteral("Add a force"));
    EXPECT_EQ(document.sketch().forces.size(), 3u);
}

/// While a menu is open somebody else's undo, or a reload, may change the sketch: a timer stands for it.
TEST_F(CanvasMenu, ActsOnItsOwnForceAfterAnUndoUnderTheOpenMenu) {
    Sketch grown = raft();
    grown.forces.insert(grown.forces.begin(), forceOf("S", 100, 90));
    ASSERT_FALSE(document.edit(grown, QStringLiteral("grow")));
    openAt(polar(200, 25)); // on P, the second of three
    QAction* toFind = action(QStringLiteral("Direction to find"));
    QTimer::singleShot(0, [&] { document.undo(); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return document.sketch() == raft(); }));
    toFind->trigger();
    EXPECT_FALSE(isGiven(force(0).direction)) << "P, the first now";
    EXPECT_TRUE(isGiven(force(1).direction));
    trigger(QStringLiteral("Delete P"));
    ASSERT_EQ(document.sketch().forces.size(), 1u);
    EXPECT_EQ(force(0).name, "Q");
}

TEST_F(CanvasMenu, DoesNothingForAForceThatHasGoneUnderIt) {
    Sketch grown = raft();
    grown.forces.push_back(forceOf("S", 300, 90));
    ASSERT_FALSE(document.edit(grown, QStringLiteral("grow")));
    openAt(polar(200, 90));
    ASSERT_EQ(canvas.selected(), 2);
    QTimer::singleShot(0, [&] { document.undo(); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return document.sketch() == raft(); }));
    for (const char* words : {"Magnitude to find", "Type the direction", "Rename", "Delete S"}) {
        trigger(QString::fromLatin1(words));
    }
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_FALSE(canvas.findChild<LabelEditor*>()->isOpen());
}

TEST_F(CanvasMenu, MakesToFindWhatItSaidAndNotTheContrary) {
    Sketch asked = raft();
    asked.forces[0].magnitude = {};
    openAt(polar(200, 25));
    QAction* toFind = action(QStringLiteral("Magnitude to find"));
    ASSERT_FALSE(document.edit(asked, QStringLiteral("ask"))); // is so already, by another way
    toFind->trigger();
    EXPECT_FALSE(isGiven(force(0).magnitude));
}

} // namespace tailpoint
