// SPDX-License-Identifier: MIT
// The table of what is given, as a person drives it: typing, keys, pasting, selecting.
#include "panel_fixture.h"

#include "ui/panel/cell_text.h"
#include "ui/panel/given_model.h"

#include <QApplication>
#include <QClipboard>
#include <QPushButton>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

TEST_F(PanelTest, TypingAMagnitudeChangesTheDocumentInOneUndoStep) {
    type(0, GivenModel::MagnitudeColumn, QStringLiteral("360"));
    EXPECT_EQ(force(0).magnitude.value, 360);
    EXPECT_EQ(document.history().count(), 1);
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(PanelTest, TheFirstKeyOpensTheFieldAndReplacesWhatStoodThere) {
    goTo(1, GivenModel::MagnitudeColumn);
    QTest::keyClick(table, '4');
    ASSERT_TRUE(field());
    QTest::keyClicks(field(), QStringLiteral("10"));
    QTest::keyClick(field(), Qt::Key_Return);
    EXPECT_EQ(force(1).magnitude.value, 410);
}

TEST_F(PanelTest, TheFieldOpensWithTheValueAsItIsKept) {
    Sketch sketch = raft();
    sketch.forces[0].magnitude.value = 340.125;
    document.edit(sketch, QStringLiteral("exact"));
    settle();
    EXPECT_EQ(cellText(panel, "givenTable", 0, GivenModel::MagnitudeColumn), QStringLiteral("340 N"));
    goTo(0, GivenModel::MagnitudeColumn);
    QTest::keyClick(table, Qt::Key_F2);
    ASSERT_TRUE(field());
    EXPECT_EQ(field()->text(), QStringLiteral("340.125"));
    QTest::keyClick(field(), Qt::Key_Return);
    EXPECT_EQ(document.history().count(), 1) << "nothing was changed, so no step";
}

TEST_F(PanelTest, UnitsSlopesBearingsAndCommasAreTaken) {
    type(0, GivenModel::MagnitudeColumn, QStringLiteral("1,2 kN"));
    EXPECT_EQ(force(0).magnitude.value, 1200);
    EXPECT_EQ(plainOf(panel, "givenLine"), QStringLiteral("1,2 kN = 1200 N"));
    type(0, GivenModel::DirectionColumn, QStringLiteral("3:4"));
    EXPECT_EQ(force(0).direction.form, (Form{SlopeForm{3, 4}}));
    EXPECT_EQ(plainOf(panel, "givenLine"), QStringLiteral("3:4 = 53.1° counter-clockwise from +x"));
    type(1, GivenModel::DirectionColumn, QStringLiteral("N30E"));
    EXPECT_EQ(force(1).direction.form, (Form{BearingForm{'N', 30, 'E'}}));
    EXPECT_EQ(document.history().count(), 3);
}

TEST_F(PanelTest, EnterOnABadTextKeepsTheFieldOpenAndSaysWhy) {
    goTo(0, GivenModel::MagnitudeColumn);
    QTest::keyClick(table, Qt::Key_F2);
    ASSERT_TRUE(field());
    field()->selectAll();
    QTest::keyClicks(field(), QStringLiteral("3.4.0"));
    QTest::keyClick(field(), Qt::Key_Return);
    ASSERT_TRUE(field());
    EXPECT_EQ(field()->text(), QStringLiteral("3.4.0"));
    EXPECT_TRUE(child<QLabel>(panel, "givenFault")->isVisible());
    EXPECT_TRUE(plainOf(panel, "givenFault").contains(QStringLiteral("3.4.0")));
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(document.history().count(), 0);
}

TEST_F(PanelTest, ABadTextThatIsLeftStaysInItsCellUntilItIsMended) {
    type(0, GivenModel::MagnitudeColumn, QStringLiteral("34o"), Qt::Key_Tab);
    EXPECT_EQ(cellText(panel, "givenTable", 0, GivenModel::MagnitudeColumn), QStringLiteral("34o"));
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_TRUE(plainOf(panel, "givenFault").contains(QStringLiteral("P: "))) << "said while it waits";
    Sketch other = raft();
    other.forces.insert(other.forces.begin(), other.forces[1]);
    other.forces[0].name.assign(1, 'S');
    document.edit(other, QStringLiteral("one more"));
    settle();
    EXPECT_EQ(cellText(panel, "givenTable", 1, GivenModel::MagnitudeColumn), QStringLiteral("34o"))
        << "it goes with its force when rows move";
    type(1, GivenModel::MagnitudeColumn, QStringLiteral("345"));
    EXPECT_EQ(force(1).magnitude.value, 345);
    EXPECT_EQ(cellText(panel, "givenTable", 1, GivenModel::MagnitudeColumn), QStringLiteral("345 N"));
}

TEST_F(PanelTest, TypingIsNotDisturbedByAChangeFromElsewhere) {
    goTo(0, GivenModel::MagnitudeColumn);
    QTest::keyClick(table, Qt::Key_F2);
    ASSERT_TRUE(field());
    field()->selectAll();
    QTest::keyClicks(field(), QStringLiteral("36"));
    Sketch other = raft();
    other.forces[1].magnitude.value = 300;
    document.edit(other, QStringLiteral("elsewhere"));
    settle();
    ASSERT_TRUE(field());
    EXPECT_EQ(field()->text(), QStringLiteral("36"));
}

TEST_F(PanelTest, AQuestionMarkTogglesBetweenGivenAndToFind) {
    goTo(2, GivenModel::MagnitudeColumn);
    QTest::keyClicks(table, QStringLiteral("?"));
    EXPECT_EQ(document.sketch().sum.magnitude.value, 520) << "the found value, to the shown digits";
    goTo(0, GivenModel::MagnitudeColumn);
    QTest::keyClicks(table, QStringLiteral("?"));
    EXPECT_FALSE(isGiven(force(0).magnitude));
    settle();
    EXPECT_EQ(cellText(panel, "givenTable", 0, GivenModel::MagnitudeColumn), QStringLiteral("to find"));
    EXPECT_EQ(document.history().count(), 2);
    type(0, GivenModel::DirectionColumn, QStringLiteral("?"));
    EXPECT_FALSE(isGiven(force(0).direction));
}

TEST_F(PanelTest, SpaceTogglesInACellAndBlanksInAFieldChangeNothing) {
    goTo(0, GivenModel::MagnitudeColumn);
    QTest::keyClick(table, Qt::Key_Space);
    EXPECT_FALSE(field());
    EXPECT_FALSE(force(0).magnitude.value);
    document.undo();
    type(0, GivenModel::MagnitudeColumn, QStringLiteral("  "));
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(PanelTest, ZeroInTheSumIsEquilibriumAndSaysSo) {
    type(2, GivenModel::MagnitudeColumn, QStringLiteral("0"));
    settle();
    EXPECT_TRUE(isEquilibrium(document.sketch()));
    EXPECT_EQ(cellText(panel, "givenTable", 2, GivenModel::Note), QStringLiteral("ΣF = 0"));
}

TEST_F(PanelTest, PastedLinesAreOneUndoStep) {
    QApplication::clipboard()->setText(QStringLiteral("S 120 90\nT\t0.2 kN\t-75"));
    goTo(0, 0);
    QTest::keySequence(table, QKeySequence::Paste);
    ASSERT_EQ(document.sketch().forces.size(), 4u);
    EXPECT_EQ(force(3).magnitude.value, 200);
    EXPECT_EQ(document.history().count(), 1);
    EXPECT_EQ(table->model()->rowCount(), 5);
    QApplication::clipboard()->setText(QStringLiteral("U 1 1\nV x 1"));
    QTest::keySequence(table, QKeySequence::Paste);
    EXPECT_EQ(document.sketch().forces.size(), 4u);
    EXPECT_TRUE(plainOf(panel, "givenFault").contains(QStringLiteral("Line 2")));
}

TEST_F(PanelTest, LinesPastedIntoAnOpenFieldAreForcesToo) {
    goTo(0, GivenModel::MagnitudeColumn);
    QTest::keyClick(table, Qt::Key_F2);
    ASSERT_TRUE(field());
    QApplication::clipboard()->setText(QStringLiteral("S 120 90\nT 200 -75\n"));
    QTest::keySequence(field(), QKeySequence::Paste);
    EXPECT_EQ(document.sketch().forces.size(), 4u);
    EXPECT_EQ(force(0).magnitude.value, 340);
    EXPECT_FALSE(field());
}

TEST_F(PanelTest, SelectedRowsAreCopiedAsTabSeparatedValues) {
    goTo(0, 0);
    selectRow(1);
    QTest::keySequence(table, QKeySequence::Copy);
    EXPECT_EQ(QApplication::clipboard()->text(), QStringLiteral("Q\t275\t-40\n"));
}

TEST_F(PanelTest, RowsAreAddedAndDeleted) {
    QTest::mouseClick(child<QPushButton>(panel, "addRow"), Qt::LeftButton);
    ASSERT_EQ(document.sketch().forces.size(), 3u);
    ASSERT_TRUE(field()) << "its magnitude waits to be typed";
    QTest::keyClick(field(), Qt::Key_Escape);
    goTo(0, 0);
    selectRow(0);
    QTest::keyClick(table, Qt::Key_Delete);
    ASSERT_EQ(document.sketch().forces.size(), 2u);
    EXPECT_EQ(force(0).name, "Q");
    EXPECT_EQ(document.history().count(), 2);
    selectRow(2);
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_EQ(document.sketch().forces.size(), 2u) << "the sum stays";
}

TEST_F(PanelTest, SelectingARowSelectsItsForceAndTheOtherWayRound) {
    int told = kNoVector;
    QObject listener;
    QObject::connect(&panel, &Panel::selected, &listener, [&](int vector) { told = vector; });
    table->setFocus();
    selectRow(1);
    EXPECT_EQ(told, 1);
    selectRow(2);
    EXPECT_EQ(told, kSumIndex);
    told = kNoVector;
    panel.select(0);
    EXPECT_EQ(table->selectionModel()->selectedRows().size(), 1);
    EXPECT_EQ(table->selectionModel()->selectedRows().front().row(), 0);
    EXPECT_EQ(told, kNoVector) << "following says nothing back";
}

TEST_F(PanelTest, AfterTabTheNextFieldIsReplacedByWhatIsTyped) {
    type(0, GivenModel::MagnitudeColumn, QStringLiteral("300"), Qt::Key_Tab);
    ASSERT_TRUE(field());
    settle(); // the numbers come anew while the field is open
    QTest::keyClicks(field(), QStringLiteral("35"));
    QTest::keyClick(field(), Qt::Key_Return);
    EXPECT_EQ(force(0).magnitude.value, 300);
    EXPECT_EQ(force(0).direction.form, (Form{AngleForm{35}}));
}

TEST_F(PanelTest, ToFindAndBackBringsTheFormerValue) {
    goTo(1, GivenModel::MagnitudeColumn);
    QTest::keyClick(table, Qt::Key_Space);
    EXPECT_FALSE(isGiven(force(1).magnitude));
    QTest::keyClick(table, Qt::Key_Space);
    EXPECT_EQ(force(1).magnitude.value, 275);
    goTo(1, GivenModel::DirectionColumn);
    QTest::keyClick(table, Qt::Key_Space);
    QTest::keyClick(table, Qt::Key_Space);
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(PanelTest, AnUndoTakesABadTextAlongAndEscapeItsReason) {
    type(0, GivenModel::MagnitudeColumn, QStringLiteral("360"));
    type(0, GivenModel::MagnitudeColumn, QStringLiteral("n"), Qt::Key_Tab);
    if (field()) {
        QTest::keyClick(field(), Qt::Key_Escape);
    }
    EXPECT_EQ(cellText(panel, "givenTable", 0, GivenModel::MagnitudeColumn), QStringLiteral("n"));
    document.undo();
    settle();
    EXPECT_EQ(cellText(panel, "givenTable", 0, GivenModel::MagnitudeColumn), QStringLiteral("340 N"));
    EXPECT_FALSE(child<QLabel>(panel, "givenFault")->isVisibleTo(&panel));

    type(1, GivenModel::MagnitudeColumn, QStringLiteral("n"), Qt::Key_Tab);
    if (field()) {
        QTest::keyClick(field(), Qt::Key_Escape);
    }
    goTo(1, GivenModel::MagnitudeColumn);
    QTest::keyClick(table, Qt::Key_Escape);
    EXPECT_EQ(cellText(panel, "givenTable", 1, GivenModel::MagnitudeColumn), QStringLiteral("275 N"));
    EXPECT_FALSE(child<QLabel>(panel, "givenFault")->isVisibleTo(&panel));
}

TEST_F(PanelTest, EscapeInAnOpenFieldTakesAlongWhatWasSaidOfItsText) {
    goTo(0, GivenModel::MagnitudeColumn);
    QTest::keyClick(table, Qt::Key_F2);
    ASSERT_TRUE(field());
    QTest::keyClicks(field(), QStringLiteral("n"));
    QTest::keyClick(field(), Qt::Key_Return); // not taken: the field stays open
    ASSERT_TRUE(field());
    ASSERT_TRUE(child<QLabel>(panel, "givenFault")->isVisibleTo(&panel));
    QTest::keyClick(field(), Qt::Key_Escape);
    EXPECT_TRUE(waitFor([&] { return !field(); }));
    EXPECT_FALSE(child<QLabel>(panel, "givenFault")->isVisibleTo(&panel));
    EXPECT_EQ(cellText(panel, "givenTable", 0, GivenModel::MagnitudeColumn), QStringLiteral("340 N"));
}

TEST_F(PanelTest, TheTableIsBroughtIntoSightBeforeAKeyActsOnIt) {
    panel.resize(400, 300);
    settle();
    panel.ensureVisible(0, panel.widget()->height());
    panel.takeFocus();
    const QPoint top = table->mapTo(panel.viewport(), QPoint(0, 0));
    EXPECT_GE(top.y() + table->visualRect(table->currentIndex()).bottom(), 0);
    EXPECT_LT(top.y(), panel.viewport()->height());
}

TEST_F(PanelTest, EveryCellSaysInWordsWhatItIs) {
    const auto words = [&](int row, int column) {
        return table->model()->index(row, column).data(Qt::AccessibleTextRole).toString();
    };
    EXPECT_EQ(words(0, GivenModel::MagnitudeColumn), QStringLiteral("Magnitude of P: 340 N"));
    EXPECT_EQ(words(2, GivenModel::DirectionColumn), QStringLiteral("Direction of R: to find"));
    EXPECT_EQ(words(2, GivenModel::Name), QStringLiteral("Sum R"));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
