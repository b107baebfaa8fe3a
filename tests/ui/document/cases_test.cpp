// SPDX-License-Identifier: MIT
// The cases of the open sketch: which is shown, where an edit goes, what undo leads back to, what is saved.
#include "core/sketch/cases.h"
#include "ui/document/given_edits.h"
#include "ui/document/sheet_edits.h"
#include "ui/document/sketch_document.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

namespace tailpoint {
namespace TAILPOINT_FILE {

class CasesOfADocument : public ::testing::Test {
protected:
    CasesOfADocument() {
        Sketch sketch = emptySketch();
        sketch.forces = {force("P", 340, 25), force("Q", 275, -40)};
        sketch.cases = {{"calm", {}}, {"storm", {{"P", Magnitude{500, {}}, {}}}}};
        document.replace(sketch, {});
    }
    static Force force(const char* name, double magnitude, double direction) {
        return {name, {magnitude, {}}, {AngleForm{direction}, {}}, false, {}};
    }
    void editP(double magnitude) {
        Sketch sketch = document.sketch();
        sketch.forces[0].magnitude = {magnitude, {}};
        ASSERT_FALSE(document.edit(sketch, QStringLiteral("Change P")));
    }
    double shownP() const { return *document.sketch().forces[0].magnitude.value; }
    double drawnP() const { return *document.whole().forces[0].magnitude.value; }

    SketchDocument document;
};

TEST_F(CasesOfADocument, AreShownWithoutAnUndoStep) {
    const QSignalSpy changed(&document, &SketchDocument::changed);
    document.showCase(1);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(shownP(), 500);
    EXPECT_EQ(document.sketch().inCase, "storm");
    EXPECT_TRUE(document.sketch().cases.empty());
    EXPECT_EQ(document.whole().cases.size(), 2u);
    EXPECT_FALSE(document.canUndo());
    EXPECT_FALSE(document.isModified());
    document.showCase(7);
    EXPECT_EQ(document.shownCase(), 1u) << "there is no such case";
    document.showCase({});
    EXPECT_EQ(shownP(), 340);
}

TEST_F(CasesOfADocument, TakeWhatIsEditedWhileTheyAreShown) {
    document.showCase(0);
    editP(400);
    EXPECT_EQ(shownP(), 400);
    EXPECT_EQ(drawnP(), 340);
    EXPECT_EQ(document.whole().cases[0].changes.size(), 1u);
    document.showCase({});
    editP(350);
    EXPECT_EQ(drawnP(), 350);
    document.showCase(0);
    EXPECT_EQ(shownP(), 400) << "the case has a value of its own";
}

TEST_F(CasesOfADocument, AreLedBackToByUndo) {
    document.showCase(1);
    editP(600);
    document.showCase({});
    document.undo();
    EXPECT_EQ(document.shownCase(), 1u);
    EXPECT_EQ(shownP(), 500);
    document.redo();
    EXPECT_EQ(shownP(), 600);
}

TEST_F(CasesOfADocument, FollowADragInTheCaseThatIsShown) {
    document.showCase(1);
    Sketch sketch = document.sketch();
    sketch.forces[1].direction = {AngleForm{-60}, {}};
    ASSERT_FALSE(document.preview(sketch, QStringLiteral("Turn Q")));
    EXPECT_EQ(document.sketch(), sketch);
    document.cancel();
    EXPECT_EQ(document.whole().cases[1].changes.size(), 1u);
    ASSERT_FALSE(document.preview(sketch, QStringLiteral("Turn Q")));
    document.commit();
    EXPECT_EQ(document.whole().cases[1].changes.size(), 2u);
    EXPECT_EQ(document.history().count(), 1);
    EXPECT_EQ(document.shownCase(), 1u);
}

TEST_F(CasesOfADocument, LoseTheChangesOfAForceThatIsDeletedInOneStep) {
    ASSERT_FALSE(document.edit(withForcesRemoved(document.sketch(), {0}), QStringLiteral("Delete P")));
    EXPECT_TRUE(document.whole().cases[1].changes.empty());
    document.undo();
    EXPECT_EQ(document.whole().cases[1].changes.size(), 1u);
}

TEST_F(CasesOfADocument, KnowAForceByItsNewName) {
    const Outcome outcome = typedInto(document.sketch(), 0, Entry::name, QStringLiteral("bow"));
    ASSERT_TRUE(std::holds_alternative<Accepted>(outcome));
    ASSERT_FALSE(document.edit(std::get<Accepted>(outcome).sketch, QStringLiteral("Rename P")));
    EXPECT_EQ(document.whole().cases[1].changes[0].of, "bow");
    document.showCase(1);
    EXPECT_EQ(shownP(), 500);
}

TEST_F(CasesOfADocument, AreConvertedWithTheSheet) {
    ASSERT_FALSE(document.editWhole(withForceUnit(document.whole(), ForceUnit::kN, Numbers::convert),
                                    QStringLiteral("kN")));
    EXPECT_DOUBLE_EQ(document.whole().cases[1].changes[0].magnitude->value.value(), 0.5);
    document.showCase(1);
    ASSERT_FALSE(document.editWhole(withForceUnit(document.whole(), ForceUnit::N, Numbers::keep),
                                    QStringLiteral("N")));
    EXPECT_DOUBLE_EQ(shownP(), 0.5);
    EXPECT_DOUBLE_EQ(drawnP(), 0.34);
    EXPECT_EQ(document.shownCase(), 1u);
}

TEST_F(CasesOfADocument, AreConvertedWithTheSheetThatOneOfThemShows) {
    document.showCase(1);
    ASSERT_FALSE(document.edit(withAngleUnit(document.sketch(), AngleUnit::gon, Numbers::convert),
                               QStringLiteral("gon")));
    EXPECT_EQ(document.whole().angleUnit, AngleUnit::gon);
    EXPECT_EQ(document.whole().cases[1].changes.size(), 1u) << "nothing but the unit was changed";
    EXPECT_NEAR(std::get<AngleForm>(document.whole().forces[0].direction.form).value, 25 / 0.9, 1e-9);
}

TEST_F(CasesOfADocument, AreSavedWhicheverIsShown) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.json"));
    document.showCase(1);
    ASSERT_FALSE(document.save(path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto read = readSketch(file.readAll());
    ASSERT_TRUE(std::holds_alternative<Sketch>(read));
    EXPECT_TRUE(std::get<Sketch>(read) == document.whole());
    EXPECT_EQ(shownP(), 500);
}

TEST_F(CasesOfADocument, AreNotToldWhileTheAnswerIsWithheld) {
    EXPECT_EQ(document.caseStates().size(), 3u);
    document.withholdAnswer(true);
    EXPECT_TRUE(document.caseStates().empty());
    document.withholdAnswer(false);
    EXPECT_EQ(document.caseStates().size(), 3u);
}

TEST_F(CasesOfADocument, RefuseWhatNoCaseMayBe) {
    document.showCase(1);
    Sketch sketch = document.sketch();
    sketch.forces[0].magnitude = {-5, {}};
    const auto fault = document.edit(sketch, QStringLiteral("Change P"));
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->code, FaultCode::negative);
    EXPECT_EQ(shownP(), 500);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
