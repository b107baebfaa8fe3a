// The open sketch: every change is one undo step, a gesture is one, and files are never lost.
#include "ui/document/sketch_document.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

namespace tailpoint {
namespace {

class Document : public testing::Test {
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
    void edit(double magnitude, quint64 gesture = 0) {
        EXPECT_FALSE(document.edit(withP(magnitude), QStringLiteral("Change P"), gesture));
    }
    int steps() { return document.undoStack().count(); }
    QString path(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }

    QTemporaryDir m_folder;
    SketchDocument document;
};

TEST_F(Document, AnEditIsOneStepThatUndoAndRedoWalk) {
    edit(400);
    EXPECT_EQ(steps(), 1);
    EXPECT_TRUE(document.isModified());
    document.undoStack().undo();
    EXPECT_EQ(p(), 340);
    EXPECT_FALSE(document.isModified());
    document.undoStack().redo();
    EXPECT_EQ(p(), 400);
}

TEST_F(Document, EveryChangeIsSolvedAndConstructedOnceAndSaidOnce) {
    const QSignalSpy changed(&document, &SketchDocument::changed);
    edit(400);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(document.result().solved.solutions.at(0).forces.at(0).magnitude, 400);
    EXPECT_TRUE(document.result().construction.parallelogram);
}

TEST_F(Document, AGestureIsOneStepHoweverManyMovesItHas) {
    const quint64 gesture = SketchDocument::newGesture();
    for (double magnitude : {350.0, 360.0, 370.0})
        edit(magnitude, gesture);
    EXPECT_EQ(steps(), 1);
    document.undoStack().undo();
    EXPECT_EQ(p(), 340);
}

TEST_F(Document, TwoGesturesAreTwoSteps) {
    edit(350, SketchDocument::newGesture());
    edit(360, SketchDocument::newGesture());
    EXPECT_EQ(steps(), 2);
}

TEST_F(Document, AGestureThatComesBackToItsStartLeavesNoStep) {
    const quint64 gesture = SketchDocument::newGesture();
    edit(350, gesture);
    edit(340, gesture);
    EXPECT_EQ(steps(), 0);
    EXPECT_FALSE(document.isModified());
    edit(355, gesture);
    EXPECT_EQ(steps(), 1);
    document.undoStack().undo();
    EXPECT_EQ(p(), 340);
}

TEST_F(Document, AnEditThatChangesNothingLeavesNoStep) {
    edit(340);
    EXPECT_EQ(steps(), 0);
}

TEST_F(Document, ACancelledGestureRestoresTheSketchAndLeavesNoStep) {
    edit(345);
    const quint64 gesture = SketchDocument::newGesture();
    edit(350, gesture);
    edit(360, gesture);
    const QSignalSpy changed(&document, &SketchDocument::changed);
    document.cancelGesture(gesture);
    EXPECT_EQ(p(), 345);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(steps(), 1);
    document.cancelGesture(gesture);
    document.cancelGesture(0);
    EXPECT_EQ(p(), 345);
}

TEST_F(Document, ACancelledGestureLeavesWhatCouldBeRedone) {
    edit(350);
    edit(360);
    edit(370);
    document.undoStack().setIndex(1);
    const quint64 gesture = SketchDocument::newGesture();
    edit(500, gesture);
    edit(510, gesture);
    const QSignalSpy changed(&document, &SketchDocument::changed);
    document.cancelGesture(gesture);
    EXPECT_EQ(p(), 350);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(steps(), 3);
    document.undoStack().redo();
    EXPECT_EQ(p(), 360);
    document.undoStack().redo();
    EXPECT_EQ(p(), 370);
    document.undoStack().setIndex(0);
    EXPECT_EQ(p(), 340);
}

TEST_F(Document, AGestureThatComesBackToItsStartLeavesWhatCouldBeRedone) {
    edit(350);
    ASSERT_FALSE(document.save(path("a.json")));
    document.undoStack().undo();
    const quint64 gesture = SketchDocument::newGesture();
    edit(500, gesture);
    edit(340, gesture);
    EXPECT_EQ(p(), 340);
    edit(600, gesture);
    document.cancelGesture(gesture);
    EXPECT_EQ(steps(), 1);
    EXPECT_TRUE(document.isModified());
    document.undoStack().redo();
    EXPECT_EQ(p(), 350);
    EXPECT_FALSE(document.isModified()) << "the saved state is known again";
}

TEST_F(Document, ACancelledGestureAfterSavingLeavesTheFileUnmodified) {
    ASSERT_FALSE(document.save(path("a.json")));
    const quint64 gesture = SketchDocument::newGesture();
    edit(350, gesture);
    EXPECT_TRUE(document.isModified());
    document.cancelGesture(gesture);
    EXPECT_FALSE(document.isModified());
}

TEST_F(Document, AfterSavingTheSameGestureBeginsANewStep) {
    const quint64 gesture = SketchDocument::newGesture();
    edit(350, gesture);
    ASSERT_FALSE(document.save(path("a.json")));
    edit(360, gesture);
    EXPECT_EQ(steps(), 2);
    document.undoStack().undo();
    EXPECT_EQ(p(), 350);
    EXPECT_FALSE(document.isModified());
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

} // namespace
} // namespace tailpoint
