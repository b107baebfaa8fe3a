// SPDX-License-Identifier: MIT
// A number that reads two ways, at every door of the window: typed with keys, pasted through the clipboard.
#include "tests/ui/canvas_fixture.h"
#include "tests/ui/reading_support.h"
#include "ui/canvas/label_editor.h"
#include "ui/canvas/typed_edits.h"
#include "ui/panel/given_model.h"
#include "ui/panel/panel.h"

#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>

namespace tailpoint {

namespace TAILPOINT_FILE {

/// The table of given values, typed into as somebody would.
class GivenField : public ::testing::Test {
protected:
    void SetUp() override {
        document.replace(raft(), {});
        panel.resize(400, 700);
        panel.show();
        table = panel.findChild<QTableView*>(QStringLiteral("givenTable"));
        ASSERT_TRUE(table);
    }
    QLineEdit* field() {
        for (auto* each : table->viewport()->findChildren<QLineEdit*>(QStringLiteral("cellField")))
            if (each->isVisible())
                return each;
        return nullptr;
    }
    void type(int row, int column, const char* text, Qt::Key end = Qt::Key_Return) {
        table->setFocus();
        table->setCurrentIndex(table->model()->index(row, column));
        QTest::keyClick(table, Qt::Key_F2);
        ASSERT_TRUE(field());
        field()->selectAll();
        QTest::keyClicks(field(), QString::fromUtf8(text));
        QTest::keyClick(field(), end);
        QCoreApplication::processEvents();
    }
    QString fault() { return seenIn(panel, "givenFault"); }
    QString shown(int row, int column) { return table->model()->index(row, column).data().toString(); }
    const Force& force(std::size_t i) const { return document.sketch().forces.at(i); }

    SketchDocument document;
    Panel panel{document};
    QTableView* table = nullptr;
};

TEST_F(GivenField, KeepsTheTextAndNamesBothReadings) {
    for (const int column : {int(GivenModel::MagnitudeColumn), int(GivenModel::DirectionColumn)}) {
        type(0, column, "1,234");
        ASSERT_TRUE(field());
        EXPECT_EQ(field()->text(), QStringLiteral("1,234"));
        expectSaid(fault(), "1,234 may be 1.234 or 1234: write one of these");
        EXPECT_EQ(document.sketch(), raft());
        QTest::keyClick(field(), Qt::Key_Escape);
    }
    EXPECT_EQ(document.history().count(), 0);
}

TEST_F(GivenField, OfATextThatWasLeftKeepsItInItsCell) {
    type(0, GivenModel::MagnitudeColumn, "1,234 \u00B1 5", Qt::Key_Tab);
    EXPECT_EQ(shown(0, GivenModel::MagnitudeColumn), QString::fromUtf8("1,234 \u00B1 5"));
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(GivenField, TakesTheOneReadingOrTheOtherByAKey) {
    type(0, GivenModel::MagnitudeColumn, "1,234");
    QTest::keyClick(field(), Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(force(0).magnitude.value, 1.234);
    EXPECT_FALSE(field());
    EXPECT_TRUE(fault().isEmpty());
    type(1, GivenModel::MagnitudeColumn, "1,234 kN \u00B1 0,5");
    QTest::keyClick(field(), Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(force(1).magnitude.value, 1'234'000);
    EXPECT_EQ(force(1).magnitude.tolerance, plusMinus(500));
    EXPECT_EQ(document.history().count(), 2) << "a step each";
}

TEST_F(GivenField, TakesAReadingByAClickAndAfterTheFieldWasLeft) {
    type(0, GivenModel::DirectionColumn, "1,500:4", Qt::Key_Tab);
    if (field())
        QTest::keyClick(field(), Qt::Key_Escape);
    table->setCurrentIndex(table->model()->index(0, GivenModel::DirectionColumn));
    expectSaid(fault(), "1,500 may be 1.500 or 1500");
    auto* line = panel.findChild<QLabel*>(QStringLiteral("givenFault"));
    emit line->linkActivated(QStringLiteral("0"));
    EXPECT_EQ(force(0).direction.form, (decltype(Direction::form){SlopeForm{1.5, 4}}));
}

TEST_F(GivenField, AsksAgainWhereTheOtherNumberReadsTwoWaysToo) {
    type(0, GivenModel::MagnitudeColumn, "1,234 \u00B1 1,000");
    QTest::keyClick(field(), Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(document.sketch(), raft());
    expectSaid(fault(), "1,000 may be 1.000 or 1000");
    QTest::keyClick(table, Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(force(0).magnitude.value, 1234);
    EXPECT_EQ(force(0).magnitude.tolerance, plusMinus(1));
}

TEST_F(GivenField, TakesWhatReadsOneWay) {
    type(0, GivenModel::MagnitudeColumn, "1.234");
    EXPECT_EQ(force(0).magnitude.value, 1.234);
    type(0, GivenModel::MagnitudeColumn, "1.234,5");
    EXPECT_EQ(force(0).magnitude.value, 1234.5);
    EXPECT_EQ(seenIn(panel, "givenLine"), QStringLiteral("1.234,5 = 1234.5 N"));
    type(0, GivenModel::MagnitudeColumn, "1,5");
    EXPECT_EQ(force(0).magnitude.value, 1.5);
}

TEST_F(GivenField, LinesOfTheClipboardAreRefusedAsAWholeWithTheirLine) {
    QApplication::clipboard()->setText(QStringLiteral("S\t120\t90\nT\t1,200\t-75\n"));
    table->setFocus();
    table->setCurrentIndex(table->model()->index(0, 0));
    QTest::keySequence(table, QKeySequence::Paste);
    EXPECT_EQ(document.sketch(), raft());
    expectSaid(fault(), "Line 2: 1,200 may be 1.200 or 1200: write one of these");
    QApplication::clipboard()->setText(QStringLiteral("S\t120\t90\nT\t1.200,5\t-75\n"));
    QTest::keySequence(table, QKeySequence::Paste);
    ASSERT_EQ(document.sketch().forces.size(), 4u);
    EXPECT_EQ(force(3).magnitude.value, 1200.5);
}

/// Fields on the sheet.
class SheetField : public CanvasTest {
protected:
    LabelEditor* editor() { return canvas.findChild<LabelEditor*>(QStringLiteral("labelEditor")); }
    void type(const char* text) {
        editor()->setText(QString());
        QTest::keyClicks(editor(), QString::fromUtf8(text));
        QTest::keyClick(editor(), Qt::Key_Return);
    }
    void expectAsked(const char* text, const char* message) {
        EXPECT_TRUE(editor()->isOpen());
        EXPECT_EQ(editor()->text(), QString::fromUtf8(text));
        expectSaid(editor()->complaint(), message);
        EXPECT_EQ(document.sketch(), raft());
    }
};

TEST_F(SheetField, OfAMagnitudeAsksAndTakesEitherReading) {
    canvas.editMagnitude(0);
    type("1,234 N at 30");
    expectAsked("1,234 N at 30", "1,234 may be 1.234 or 1234: write one of these");
    expectSaid(seenIn(canvas, "labelEditorNote"), "1.234 N at 30 (Alt+1), 1234 N at 30 (Alt+2)");
    QTest::keyClick(editor(), Qt::Key_2, Qt::AltModifier);
    EXPECT_FALSE(editor()->isOpen());
    EXPECT_EQ(magnitude(0), 1234);
    EXPECT_EQ(angle(0), 30);
}

TEST_F(SheetField, OfADirectionBehindAMagnitudeKeepsTheMagnitude) {
    canvas.editMagnitude(0);
    type("340 N at 1,234");
    expectAsked("340 N at 1,234", "1,234 may be");
    QTest::keyClick(editor(), Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(magnitude(0), 340);
    EXPECT_EQ(angle(0), 1.234);
}

TEST_F(SheetField, OfADirectionAsksAndTakesAReadingByAClick) {
    canvas.editDirection(0);
    type("1,234");
    expectAsked("1,234", "1,234 may be 1.234 or 1234");
    emit canvas.findChild<QLabel*>(QStringLiteral("labelEditorNote"))->linkActivated(QStringLiteral("0"));
    EXPECT_FALSE(editor()->isOpen());
    EXPECT_EQ(angle(0), 1.234);
}

TEST_F(SheetField, OfTheAxisAsksAndTakesADecimalComma) {
    canvas.editReference();
    type("12,345 cw");
    expectAsked("12,345 cw", "12,345 may be 12.345 or 12345");
    QTest::keyClick(editor(), Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(document.sketch().reference, (Reference{12.345, Sense::cw}));
    canvas.editReference();
    type("35,5, ccw");
    EXPECT_EQ(document.sketch().reference, (Reference{35.5, Sense::ccw}));
}

TEST_F(SheetField, OfTheFiguresTakesAWholeNumberAndNoPartOfAnother) {
    for (const char* typed : {"4,5", "4.5", "1,234", "3 4", "4 5 figures"}) {
        canvas.editFigures();
        type(typed);
        EXPECT_TRUE(editor()->isOpen()) << typed;
        EXPECT_EQ(document.sketch(), raft()) << typed;
        QTest::keyClick(editor(), Qt::Key_Escape);
    }
    canvas.editFigures();
    type("4 figures");
    EXPECT_EQ(document.sketch().figures, 4);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
