// SPDX-License-Identifier: MIT
// The open sketch: every change is one undo step, a gesture is one, and files are never lost.
#include "core/explain/explain.h"
#include "ui/document/sketch_document.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

namespace tailpoint {
namespace TAILPOINT_FILE {

class Document : public ::testing::Test {
protected:
    Document() { document.replace(raft(), {}); }

    static Sketch raft() {
        Sketch sketch = emptySketch();
        sketch.forces = {force("P", 340, 25), force("Q", 275, -40)};
        return sketch;
    }
    static Force force(const char* name, double magnitude, double direction) {
        return {name, {magnitude, {}}, {AngleForm{direction}, {}}, false, {}};
    }
    Sketch withP(double magnitude) const {
        Sketch sketch = document.sketch();
        sketch.forces[0].magnitude.value = magnitude;
        return sketch;
    }
    double p() const { return *document.sketch().forces[0].magnitude.value; }
    void edit(double magnitude) { EXPECT_FALSE(document.edit(withP(magnitude), QStringLiteral("Change P"))); }
    void preview(double magnitude) {
        EXPECT_FALSE(document.preview(withP(magnitude), QStringLiteral("Drag P")));
    }
    int steps() const { return document.history().count(); }
    QString path(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }

    QTemporaryDir m_folder;
    SketchDocument document;
};

TEST_F(Document, AnEditIsOneStepThatUndoAndRedoWalk) {
    edit(400);
    EXPECT_EQ(steps(), 1);
    EXPECT_TRUE(document.isModified());
    document.undo();
    EXPECT_EQ(p(), 340);
    EXPECT_FALSE(document.isModified());
    document.redo();
    EXPECT_EQ(p(), 400);
}

TEST_F(Document, EveryChangeIsSolvedAndConstructedOnceAndSaidOnce) {
    const QSignalSpy changed(&document, &SketchDocument::changed);
    edit(400);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(document.result().solved.solutions.at(0).forces.at(0).magnitude, 400);
    EXPECT_TRUE(document.result().construction.parallelogram);
}

TEST_F(Document, APreviewIsSeenByEveryViewAndMakesNoStep) {
    const QSignalSpy changed(&document, &SketchDocument::changed);
    preview(350);
    preview(360);
    EXPECT_EQ(changed.count(), 2);
    EXPECT_EQ(document.result().solved.solutions.at(0).forces.at(0).magnitude, 360);
    EXPECT_TRUE(document.isPreviewing());
    EXPECT_TRUE(document.isModified());
    EXPECT_EQ(steps(), 0);
}

TEST_F(Document, AGestureIsOneStepHoweverManyMovesItHas) {
    for (double magnitude : {350.0, 360.0, 370.0})
        preview(magnitude);
    const QSignalSpy changed(&document, &SketchDocument::changed);
    const QSignalSpy ended(&document, &SketchDocument::previewEnded);
    document.commit();
    EXPECT_EQ(changed.count(), 0) << "it was shown already";
    EXPECT_EQ(ended.count(), 1);
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(document.undoText(), QStringLiteral("Drag P"));
    document.commit();
    EXPECT_EQ(steps(), 1);
    document.undo();
    EXPECT_EQ(p(), 340);
    EXPECT_FALSE(document.isModified());
}

TEST_F(Document, TwoGesturesAreTwoSteps) {
    preview(350);
    document.commit();
    preview(360);
    document.commit();
    EXPECT_EQ(steps(), 2);
}

TEST_F(Document, AGestureThatComesBackToItsStartLeavesNoStep) {
    preview(350);
    preview(340);
    EXPECT_FALSE(document.isModified());
    EXPECT_FALSE(document.canUndo());
    document.commit();
    EXPECT_EQ(steps(), 0);
    EXPECT_FALSE(document.isModified());
}

TEST_F(Document, UndoTakesBackAGestureThatIsUnderWayAndRedoBringsItBack) {
    edit(345);
    preview(350);
    EXPECT_TRUE(document.canUndo());
    EXPECT_FALSE(document.canRedo());
    EXPECT_EQ(document.undoText(), QStringLiteral("Drag P"));
    document.undo();
    EXPECT_EQ(p(), 345);
    EXPECT_FALSE(document.isPreviewing());
    document.redo();
    EXPECT_EQ(p(), 350);
}

TEST_F(Document, AnEditDuringAGestureKeepsBothAsSteps) {
    preview(350);
    Sketch after = document.sketch();
    after.forces[1].magnitude.value = 300;
    EXPECT_FALSE(document.edit(after, QStringLiteral("Change Q")));
    EXPECT_EQ(steps(), 2);
    document.undo();
    EXPECT_EQ(p(), 350);
    EXPECT_EQ(document.sketch().forces[1].magnitude.value, 275);
    document.undo();
    EXPECT_EQ(p(), 340);
}

TEST_F(Document, SavingKeepsWhatAGestureShows) {
    preview(350);
    ASSERT_FALSE(document.save(path("a.json")));
    EXPECT_FALSE(document.isPreviewing());
    EXPECT_FALSE(document.isModified());
    SketchDocument other;
    ASSERT_FALSE(other.open(path("a.json")));
    EXPECT_EQ(other.sketch().forces[0].magnitude.value, 350);
    preview(360);
    document.commit();
    document.undo();
    EXPECT_EQ(p(), 350);
    EXPECT_FALSE(document.isModified());
}

TEST_F(Document, AFaultyPreviewIsRefusedAndWhatWasSeenBeforeItStays) {
    preview(350);
    const auto fault = document.preview(withP(-1), QStringLiteral("Drag P"));
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->place, "forces[0].magnitude");
    EXPECT_EQ(p(), 350);
    document.commit();
    EXPECT_EQ(steps(), 1);
}

TEST_F(Document, ASnapshotOutlivesWhatFollowsIt) {
    const Snapshot kept = document.snapshot();
    const auto worked = kept->worked();
    EXPECT_EQ(kept->worked(), worked) << "made once";
    EXPECT_EQ(document.result().worked(), worked) << "every view gets the same one";
    ExplainOptions hand;
    hand.handRounding = true;
    EXPECT_NE(kept->worked(hand), worked);
    edit(400);
    document.replace(emptySketch(), {});
    EXPECT_EQ(kept->sketch, raft());
    EXPECT_EQ(kept->worked(), worked);
    EXPECT_EQ(*worked, explain(kept->sketch, kept->solved, kept->construction, 0));
}

TEST_F(Document, AnotherSketchEndsAGesture) {
    preview(350);
    const QSignalSpy ended(&document, &SketchDocument::previewEnded);
    document.replace(raft(), {});
    EXPECT_FALSE(document.isPreviewing());
    EXPECT_EQ(ended.count(), 1);
    document.commit();
    document.cancel();
    EXPECT_EQ(p(), 340);
    EXPECT_EQ(steps(), 0);
}

TEST_F(Document, WhatStoodBeforeAGestureIsFoundAgainWhileItLasts) {
    preview(350);
    const auto is340 = [](const Sketch& sketch) { return sketch.forces[0].magnitude.value == 340; };
    ASSERT_TRUE(document.lastWhere(is340));
    document.commit();
    ASSERT_TRUE(document.lastWhere(is340));
}

TEST_F(Document, AnEditThatChangesNothingLeavesNoStep) {
    edit(340);
    EXPECT_EQ(steps(), 0);
}

TEST_F(Document, ACancelledGestureRestoresTheSketchAndLeavesNoStep) {
    edit(345);
    preview(350);
    preview(360);
    const QSignalSpy changed(&document, &SketchDocument::changed);
    const QSignalSpy ended(&document, &SketchDocument::previewEnded);
    document.cancel();
    EXPECT_EQ(p(), 345);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(ended.count(), 1);
    EXPECT_EQ(steps(), 1);
    document.cancel();
    EXPECT_EQ(p(), 345);
}

TEST_F(Document, ACancelledGestureLeavesWhatCouldBeRedone) {
    edit(350);
    edit(360);
    edit(370);
    document.undo();
    document.undo();
    preview(500);
    preview(510);
    const QSignalSpy changed(&document, &SketchDocument::changed);
    document.cancel();
    EXPECT_EQ(p(), 350);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(steps(), 3);
    document.redo();
    EXPECT_EQ(p(), 360);
    document.redo();
    EXPECT_EQ(p(), 370);
}

TEST_F(Document, AGestureThatComesBackToItsStartLeavesWhatCouldBeRedone) {
    edit(350);
    ASSERT_FALSE(document.save(path("a.json")));
    document.undo();
    preview(500);
    preview(340);
    document.commit();
    EXPECT_EQ(p(), 340);
    EXPECT_EQ(steps(), 1);
    EXPECT_TRUE(document.isModified());
    document.redo();
    EXPECT_EQ(p(), 350);
    EXPECT_FALSE(document.isModified()) << "the saved state is known again";
}

TEST_F(Document, ACancelledGestureAfterSavingLeavesTheFileUnmodified) {
    ASSERT_FALSE(document.save(path("a.json")));
    const QSignalSpy told(&document, &SketchDocument::fileChanged);
    preview(350);
    EXPECT_TRUE(document.isModified());
    EXPECT_EQ(told.count(), 1);
    document.cancel();
    EXPECT_FALSE(document.isModified());
    EXPECT_EQ(told.count(), 2);
}

TEST_F(Document, AFaultyEditIsRefusedWithItsPlaceAndChangesNothing) {
    const auto fault = document.edit(withP(-1), QStringLiteral("Change P"));
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->place, "forces[0].magnitude");
    EXPECT_EQ(p(), 340);
    EXPECT_EQ(steps(), 0);
}

TEST_F(Document, AFileThatCannotBeReadNeverReplacesTheOpenSketch) {
    edit(400);
    QFile bad(path("bad.json"));
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write("{");
    bad.close();
    const QSignalSpy changed(&document, &SketchDocument::changed);
    EXPECT_TRUE(document.open(path("bad.json")));
    EXPECT_TRUE(document.open(path("none.json")));
    EXPECT_TRUE(document.open(m_folder.path()));
    EXPECT_EQ(changed.count(), 0);
    EXPECT_EQ(p(), 400);
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(document.path(), QString());
}

TEST_F(Document, SavingAndOpeningGiveTheVerySketch) {
    edit(400);
    ASSERT_FALSE(document.save(path("a.json")));
    EXPECT_FALSE(document.isModified());
    EXPECT_EQ(document.path(), path("a.json"));
    SketchDocument other;
    ASSERT_FALSE(other.open(path("a.json")));
    EXPECT_EQ(other.sketch(), document.sketch());
    EXPECT_FALSE(other.isModified());
}

TEST_F(Document, WhenSavingFailsTheSketchStaysModifiedAndKeepsItsPath) {
    ASSERT_FALSE(document.save(path("a.json")));
    edit(400);
    EXPECT_TRUE(document.save(path("no/such/folder.json")));
    EXPECT_TRUE(document.isModified());
    EXPECT_EQ(document.path(), path("a.json"));
}

TEST_F(Document, AFileOpenInOneDocumentIsReadOnlyInAnother) {
    ASSERT_FALSE(document.save(path("a.json")));
    SketchDocument other;
    ASSERT_FALSE(other.open(path("a.json")));
    EXPECT_TRUE(other.readOnlyReason().contains(QLatin1String("open in another Tailpoint window")));
    EXPECT_TRUE(other.save(path("a.json")));
    EXPECT_FALSE(other.save(path("b.json")));
    EXPECT_EQ(other.readOnlyReason(), QString());
    document.replace(raft(), {});
    SketchDocument third;
    ASSERT_FALSE(third.open(path("a.json")));
    EXPECT_EQ(third.readOnlyReason(), QString());
}

TEST_F(Document, ClosingLeavesNoLockBehind) {
    {
        SketchDocument other;
        other.replace(raft(), {});
        ASSERT_FALSE(other.save(path("a.json")));
    }
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden),
              QStringList{QStringLiteral("a.json")});
}

TEST_F(Document, ARestoredSketchIsModifiedUntilItIsSaved) {
    document.restore(raft(), path("a.json"));
    EXPECT_TRUE(document.isModified());
    ASSERT_FALSE(document.save(path("a.json")));
    EXPECT_FALSE(document.isModified());
}

TEST_F(Document, ChoosingTheOtherAnswerIsNoEdit) {
    Sketch two = emptySketch();
    two.forces = {force("P", 250, 0), force("Q", 300, 0)};
    two.forces[0].direction = two.forces[1].direction = {};
    two.sum = force("R", 420, 5);
    document.replace(two, {});
    ASSERT_EQ(document.result().solved.status, Status::two);
    const QSignalSpy changed(&document, &SketchDocument::changed);
    document.choose(1);
    EXPECT_EQ(document.result().chosen, 1u);
    EXPECT_EQ(changed.count(), 1);
    document.choose(1);
    document.choose(7);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(steps(), 0);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
