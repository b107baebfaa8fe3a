// SPDX-License-Identifier: MIT
// Values typed in place on the sheet.
#include "tests/ui/canvas_fixture.h"
#include "ui/canvas/hit.h"
#include "ui/canvas/label_editor.h"
#include "ui/canvas/typed_edits.h"

#include <QTimer>

namespace tailpoint {

class CanvasTyped : public CanvasTest {
protected:
    LabelEditor* editor() { return canvas.findChild<LabelEditor*>(QStringLiteral("labelEditor")); }
    void type(const char* text, Qt::Key end = Qt::Key_Return) {
        editor()->setText(QString());
        QTest::keyClicks(editor(), QString::fromUtf8(text));
        QTest::keyClick(editor(), end);
    }
    /// The middle of the text that reads like this on the sheet.
    QPointF textAt(const QString& words) {
        for (const Group& group : canvas.figure().list.groups) {
            for (const Item& item : group.items) {
                const Text* text = std::get_if<Text>(&item);
                QString whole;
                for (std::size_t i = 0; text != nullptr && i < text->runs.size(); ++i) {
                    whole += QString::fromStdString(text->runs[i].text);
                }
                if (text != nullptr && whole == words) {
                    const QPointF middle(text->box.left + text->box.width / 2,
                                         text->box.top + text->box.height / 2);
                    return middle * canvas.pixelsPerPoint();
                }
            }
        }
        ADD_FAILURE() << "no text " << words.toStdString();
        return {};
    }
};

TEST_F(CanvasTyped, ADoubleClickOnALabelTypesAnExactMagnitudeInPlace) {
    const DisplayList before = canvas.figure().list;
    doubleClick(textAt(QStringLiteral("P = 340 N")));
    ASSERT_TRUE(editor()->isOpen());
    EXPECT_EQ(editor()->text(), QStringLiteral("340 N"));
    EXPECT_EQ(editor()->selectedText(), editor()->text());
    EXPECT_TRUE(canvas.rect().contains(editor()->geometry()));
    type("0.3125 kN");
    EXPECT_FALSE(editor()->isOpen());
    EXPECT_DOUBLE_EQ(magnitude(0), 312.5);
    EXPECT_DOUBLE_EQ(angle(0), 25);
    EXPECT_EQ(steps(), 1);
    EXPECT_TRUE(canvas.hasFocus());
    EXPECT_FALSE(canvas.figure().list == before);
}

TEST_F(CanvasTyped, ADirectionMayFollowTheMagnitude) {
    canvas.editMagnitude(0);
    type("75 lbf at N30E");
    EXPECT_NEAR(magnitude(0), 333.6166, 1e-4);
    EXPECT_EQ(std::get<BearingForm>(force(0).direction.form), (BearingForm{'N', 30, 'E'}));
    EXPECT_EQ(steps(), 1);
}

TEST_F(CanvasTyped, ADoubleClickOnTheAngleTypesADirection) {
    doubleClick(textAt(QStringLiteral("25.0°")));
    ASSERT_TRUE(editor()->isOpen());
    EXPECT_EQ(editor()->text(), QStringLiteral("25°"));
    type("3:4");
    EXPECT_EQ(std::get<SlopeForm>(force(0).direction.form), (SlopeForm{3, 4}));
}

TEST_F(CanvasTyped, WhatCannotBeReadKeepsItsTextAndSaysWhy) {
    canvas.editMagnitude(0);
    type("34o N");
    EXPECT_TRUE(editor()->isOpen());
    EXPECT_EQ(editor()->text(), QStringLiteral("34o N"));
    EXPECT_TRUE(editor()->complaint().contains(QStringLiteral("34o N")))
        << editor()->complaint().toStdString();
    EXPECT_EQ(document.sketch(), raft());
    type("344 N");
    EXPECT_DOUBLE_EQ(magnitude(0), 344);
    EXPECT_TRUE(editor()->complaint().isEmpty());
}

TEST_F(CanvasTyped, ANegativeMagnitudeIsRefusedInWords) {
    canvas.editMagnitude(0);
    type("-5");
    EXPECT_TRUE(editor()->isOpen());
    EXPECT_FALSE(editor()->complaint().isEmpty());
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasTyped, EscapeLeavesTheFieldAndTheSketchAsTheyWere) {
    canvas.editMagnitude(0);
    type("500", Qt::Key_Escape);
    EXPECT_FALSE(editor()->isOpen());
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
}

TEST_F(CanvasTyped, ReturnWithoutAChangeLeavesNoStep) {
    canvas.editMagnitude(0);
    QTest::keyClick(editor(), Qt::Key_Return);
    EXPECT_FALSE(editor()->isOpen());
    EXPECT_EQ(steps(), 0);
}

TEST_F(CanvasTyped, TheFieldBeginsWithTheFullValueAndItsTolerance) {
    Sketch sketch = raft();
    sketch.forces[0].magnitude = {340.125, plusMinus(5)};
    open(sketch);
    canvas.editMagnitude(0);
    EXPECT_EQ(editor()->text(), QStringLiteral("340.125 ± 5 N"));
    QTest::keyClick(editor(), Qt::Key_End);
    QTest::keyClick(editor(), Qt::Key_Space);
    QTest::keyClick(editor(), Qt::Key_Return);
    EXPECT_FALSE(editor()->isOpen()) << editor()->complaint().toStdString();
    EXPECT_EQ(document.sketch(), sketch);
}

TEST_F(CanvasTyped, TheTitleBlockIsTypedIntoCellByCell) {
    doubleClick(textAt(QStringLiteral("Survey raft on two lines")));
    type("Raft at slack water");
    EXPECT_EQ(document.sketch().title, "Raft at slack water");
    doubleClick(textAt(QStringLiteral("3 figures")));
    type("4");
    EXPECT_EQ(document.sketch().figures, 4);
    doubleClick(textAt(QStringLiteral("from +x, ccw")));
    ASSERT_EQ(editor()->text(), QStringLiteral("+x ccw"));
    type("-y cw");
    EXPECT_EQ(document.sketch().reference, (Reference{270, Sense::cw}));
    EXPECT_DOUBLE_EQ(angle(0), -115) << "P stays where it is and is measured from the new axis";
    EXPECT_EQ(steps(), 3);
    canvas.setKeepsForces(false);
    canvas.editReference();
    type("+x ccw");
    EXPECT_DOUBLE_EQ(angle(0), -115) << "now the number stays";
}

TEST_F(CanvasTyped, TheTitleBlockRefusesWhatItCannotMean) {
    canvas.editFigures();
    type("40");
    EXPECT_TRUE(editor()->isOpen());
    EXPECT_FALSE(editor()->complaint().isEmpty());
    QTest::keyClick(editor(), Qt::Key_Escape);
    canvas.editReference();
    type("sideways");
    EXPECT_TRUE(editor()->isOpen());
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasTyped, TheScaleIsTypedAndChangesNothingButTheView) {
    doubleClick(textAt(QStringLiteral("1 division = 50 N")));
    ASSERT_TRUE(editor()->isOpen());
    EXPECT_EQ(editor()->text(), QStringLiteral("50 N"));
    const Point common = canvas.view().origin;
    type("0.1 kN");
    EXPECT_DOUBLE_EQ(divisionOf(canvas.view()), 100);
    EXPECT_DOUBLE_EQ(canvas.view().origin.x, common.x);
    EXPECT_DOUBLE_EQ(canvas.view().origin.y, common.y);
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
}

TEST_F(CanvasTyped, AScaleThatNoSheetHasIsRefusedWithTheMend) {
    for (const char* bad : {"30", "-50", "0", "wide", "50 m", "1,000"}) {
        doubleClick(textAt(QStringLiteral("1 division = 50 N")));
        type(bad);
        EXPECT_TRUE(editor()->isOpen()) << bad;
        EXPECT_FALSE(editor()->complaint().isEmpty()) << bad;
        EXPECT_DOUBLE_EQ(divisionOf(canvas.view()), 50) << bad;
        QTest::keyClick(editor(), Qt::Key_Escape);
    }
}

TEST_F(CanvasTyped, ANameIsTypedAndAForceAskedForItsSmallestValueKeepsTheQuestion) {
    Sketch sketch = raft();
    sketch.smallest = "Q";
    sketch.forces[1].magnitude = {};
    sketch.forces[1].direction = {};
    sketch.sum.direction.form = AngleForm{0};
    open(sketch);
    canvas.rename(1);
    type("W");
    EXPECT_EQ(force(1).name, "W");
    EXPECT_EQ(document.sketch().smallest, "W");
}

TEST_F(CanvasTyped, TwoForcesOfOneNameAreRefused) {
    canvas.rename(1);
    type("P");
    EXPECT_TRUE(editor()->isOpen());
    EXPECT_FALSE(editor()->complaint().isEmpty());
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasTyped, TypingAMagnitudeThatWasToBeFoundGivesIt) {
    Sketch sketch = raft();
    sketch.sum = forceOf("R", 400, 10);
    sketch.forces[0].magnitude = {};
    sketch.forces[1].magnitude = {};
    open(sketch);
    canvas.editMagnitude(0);
    EXPECT_TRUE(editor()->text().isEmpty());
    type("310");
    EXPECT_DOUBLE_EQ(magnitude(0), 310);
}

TEST_F(CanvasTyped, AQuestionMarkAsksForTheValue) {
    canvas.editMagnitude(0);
    type("?");
    EXPECT_FALSE(isGiven(force(0).magnitude));
}

TEST_F(CanvasTyped, TheWheelMovesTheFieldWithItsLabelAndKeepsWhatIsTyped) {
    canvas.editMagnitude(0);
    QTest::keyClicks(editor(), QStringLiteral("36"));
    const QPoint before = editor()->geometry().center();
    const double scale = canvas.view().scale;
    wheel(common(), 120);
    ASSERT_GT(canvas.view().scale, scale);
    ASSERT_TRUE(editor()->isOpen());
    EXPECT_EQ(editor()->text(), QStringLiteral("36"));
    EXPECT_TRUE(editor()->hasFocus());
    EXPECT_NE(editor()->geometry().center(), before) << "the label has moved";
    QTest::keyClicks(editor(), QStringLiteral("5"));
    QTest::keyClick(editor(), Qt::Key_Return);
    EXPECT_DOUBLE_EQ(magnitude(0), 365);
    canvas.editMagnitude(0);
    const QPoint opened = editor()->geometry().center();
    wheel(common(), 120);
    wheel(common(), -120);
    EXPECT_EQ(editor()->geometry().center(), opened) << "there and back";
}

TEST_F(CanvasTyped, AResizeMovesTheFieldAndItsComplaintAndKeepsBoth) {
    canvas.editMagnitude(0);
    editor()->selectAll();
    QTest::keyClicks(editor(), QStringLiteral("n"));
    QTest::keyClick(editor(), Qt::Key_Return);
    ASSERT_FALSE(editor()->complaint().isEmpty());
    canvas.resize(520, 400);
    settle();
    ASSERT_TRUE(editor()->isOpen());
    EXPECT_EQ(editor()->text(), QStringLiteral("n"));
    EXPECT_FALSE(editor()->complaint().isEmpty());
    auto* note = canvas.findChild<QLabel*>(QStringLiteral("labelEditorNote"));
    EXPECT_TRUE(canvas.rect().contains(editor()->geometry()));
    EXPECT_TRUE(canvas.rect().contains(note->geometry()));
    EXPECT_FALSE(note->geometry().intersects(editor()->geometry()));
}

TEST_F(CanvasTyped, AFieldWritesIntoItsOwnForceThoughTheSketchChangesUnderIt) {
    Sketch grown = raft();
    grown.forces.insert(grown.forces.begin(), forceOf("S", 100, 90));
    ASSERT_FALSE(document.edit(grown, QStringLiteral("grow")));
    canvas.editMagnitude(1); // of P, the second of three
    QTimer::singleShot(0, [&] { document.undo(); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return document.sketch() == raft(); }));
    ASSERT_TRUE(editor()->isOpen());
    type("360");
    EXPECT_DOUBLE_EQ(magnitude(0), 360) << "P, the first now";
    EXPECT_DOUBLE_EQ(magnitude(1), 275);
}

TEST_F(CanvasTyped, AFieldOfAForceThatHasGoneSaysSo) {
    Sketch grown = raft();
    grown.forces.push_back(forceOf("S", 100, 90));
    ASSERT_FALSE(document.edit(grown, QStringLiteral("grow")));
    canvas.editMagnitude(2);
    QTimer::singleShot(0, [&] { document.undo(); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return document.sketch() == raft(); }));
    type("360");
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_TRUE(editor()->complaint().contains(QLatin1Char('S')));
}

TEST_F(CanvasTyped, WhatWasConvertedIsSaid) {
    QSignalSpy hints(&canvas, &Canvas::hint);
    canvas.editMagnitude(0);
    type("75 lbf");
    ASSERT_FALSE(hints.isEmpty());
    EXPECT_TRUE(hints.last().at(0).toString().contains(QStringLiteral("334 N")));
}

TEST(CanvasTypedEdits, TheAxisIsReadInManyWritings) {
    struct Writing {
        const char* text;
        Reference reference;
    };
    for (const Writing& c : {Writing{"+y", {90, Sense::ccw}}, Writing{"-x, clockwise", {180, Sense::cw}},
                             Writing{"−y", {270, Sense::ccw}}, Writing{"35° cw", {35, Sense::cw}},
                             Writing{"cw", {0, Sense::cw}}, Writing{"from x, ccw", {0, Sense::ccw}}}) {
        const Outcome read = withTypedReference(raft(), QString::fromUtf8(c.text), Numbers::keep);
        ASSERT_TRUE(std::holds_alternative<Accepted>(read)) << c.text;
        EXPECT_EQ(std::get<Accepted>(read).sketch.reference, c.reference) << c.text;
    }
}

} // namespace tailpoint
