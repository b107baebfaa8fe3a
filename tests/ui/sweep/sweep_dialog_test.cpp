// SPDX-License-Identifier: MIT
// The sweep beside the sheet. Numbers: 12 kN down, B at 115 degrees, A swept from 0 to 90: A is least at 25
// degrees, 12 sin 25 = 5.0714; A at 30 degrees 12 sin 25 / sin 85 = 5.0908 (mpmath).
#include "ui/sweep/sweep_dialog.h"

#include "core/explain/swept.h"
#include "tests/support/sketches.h"
#include "tests/ui/window_fixture.h"
#include "ui/sweep/sweep_view.h"

#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QSpinBox>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

using testing::force;
using testing::kToFind;

Sketch legs() {
    Sketch sketch = testing::sketch({force("W", 12, -90), force("A", kToFind, 30), force("B", kToFind, 115)},
                                    force("R", 0, kToFind));
    sketch.forceUnit = ForceUnit::kN;
    return sketch;
}

class SweepBesideTheSheet : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        ASSERT_FALSE(window->document().edit(legs(), QStringLiteral("legs")));
        dialog = &ask<SweepDialog>("sweep");
    }
    void vary(const char* what, const char* from, const char* to) {
        auto* box = child<QComboBox>(*dialog, "sweepVaried");
        const int index = box->findText(QLatin1String(what));
        ASSERT_GE(index, 0) << what;
        box->setCurrentIndex(index);
        emit box->activated(index);
        type("sweepFrom", from);
        type("sweepTo", to);
    }
    void type(const char* field, const char* text) {
        auto* line = child<QLineEdit>(*dialog, field);
        line->selectAll();
        QTest::keyClicks(line, QLatin1String(text));
    }
    QString label(const char* name) { return child<QLabel>(*dialog, name)->text(); }
    /// Least of the curve of A.
    double least() { return dialog->view().sweep()->curves.front().least->value; }
    void turnA(double degrees, bool asPreview) {
        Sketch sketch = window->document().sketch();
        sketch.forces[1].direction.form = AngleForm{degrees};
        ASSERT_FALSE(asPreview ? window->document().preview(sketch, QStringLiteral("turn"))
                               : window->document().edit(sketch, QStringLiteral("turn")));
    }

    SweepDialog* dialog = nullptr;
};

TEST_F(SweepBesideTheSheet, OffersWhatIsGiven) {
    auto* box = child<QComboBox>(*dialog, "sweepVaried");
    QStringList names;
    for (int i = 0; i < box->count(); ++i)
        names << box->itemText(i);
    EXPECT_EQ(names, (QStringList{QStringLiteral("magnitude of W"), QStringLiteral("direction of W"),
                                  QStringLiteral("direction of A"), QStringLiteral("direction of B")}));
}

TEST_F(SweepBesideTheSheet, DrawsTenThousandPointsAndTellsTheExtremesInWords) {
    vary("direction of A", "0", "90");
    ASSERT_TRUE(dialog->view().sweep());
    EXPECT_EQ(dialog->view().sweep()->at.size(), 10'001u);
    EXPECT_NEAR(least(), 5.07141914088839, 1e-12);
    EXPECT_TRUE(
        dialog->view().accessibleDescription().contains(QStringLiteral("A least 5.0714 kN at 25.0\u00b0")))
        << dialog->view().accessibleDescription().toStdString();
    QAccessibleInterface* told =
        QAccessible::queryAccessibleInterface(const_cast<SweepView*>(&dialog->view()));
    EXPECT_TRUE(told->text(QAccessible::Description).contains(QStringLiteral("5.0714")));
}

/// The curves stand; the marker and the values beside it follow.
TEST_F(SweepBesideTheSheet, ItsMarkerFollowsADrag) {
    vary("direction of A", "0", "90");
    EXPECT_EQ(dialog->view().present(), 30);
    EXPECT_TRUE(label("sweepPresent").contains(QStringLiteral("A 5.0908 kN")))
        << label("sweepPresent").toStdString();
    turnA(25, true);
    EXPECT_EQ(dialog->view().present(), 25);
    EXPECT_TRUE(label("sweepPresent").contains(QStringLiteral("A 5.0714 kN")));
    EXPECT_EQ(dialog->view().sweep()->at.size(), 10'001u) << "nothing else changed";
    window->document().cancel();
    EXPECT_EQ(dialog->view().present(), 30);
}

/// Another value dragged: fewer points at once, all of them at rest.
TEST_F(SweepBesideTheSheet, ItsCurvesFollowWhatElseIsDragged) {
    vary("direction of A", "0", "90");
    Sketch heavier = window->document().sketch();
    heavier.forces[0].magnitude.value = 24;
    ASSERT_FALSE(window->document().preview(heavier, QStringLiteral("load")));
    EXPECT_NEAR(least(), 2 * 5.07141914088839, 1e-12);
    EXPECT_LT(dialog->view().sweep()->at.size(), 10'001u);
    EXPECT_TRUE(QTest::qWaitFor([&] { return dialog->view().sweep()->at.size() == 10'001u; }));
    window->document().cancel();
    EXPECT_NEAR(least(), 5.07141914088839, 1e-12);
}

/// An undo that is held down waits for few points.
TEST_F(SweepBesideTheSheet, ItsCurvesFollowAnUndoAndAreWholeAtRest) {
    vary("direction of A", "0", "90");
    Sketch heavier = window->document().sketch();
    heavier.forces[0].magnitude.value = 24;
    ASSERT_FALSE(window->document().edit(heavier, QStringLiteral("load")));
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->view().sweep()->at.size() == 10'001u; }));
    window->document().undo();
    EXPECT_NEAR(least(), 5.07141914088839, 1e-12);
    EXPECT_LT(dialog->view().sweep()->at.size(), 10'001u);
    EXPECT_TRUE(QTest::qWaitFor([&] { return dialog->view().sweep()->at.size() == 10'001u; }));
    EXPECT_NEAR(least(), 5.07141914088839, 1e-12);
}

TEST_F(SweepBesideTheSheet, SaysWhatCantBeReadAndKeepsItsCurves) {
    vary("direction of A", "0", "90");
    type("sweepTo", "ninety");
    EXPECT_TRUE(child<QLabel>(*dialog, "sweepFault")->isVisible());
    EXPECT_EQ(dialog->view().sweep()->range.to, 90);
    type("sweepTo", "80");
    EXPECT_FALSE(child<QLabel>(*dialog, "sweepFault")->isVisible());
    EXPECT_EQ(dialog->view().sweep()->range.to, 80);
}

TEST_F(SweepBesideTheSheet, SavesValuesAndFigure) {
    vary("direction of A", "0", "90");
    child<QSpinBox>(*dialog, "sweepSteps")->setValue(3);
    EXPECT_FALSE(dialog->saveTo(file("sweep.csv")));
    const QList<QByteArray> lines = bytesOf(file("sweep.csv")).trimmed().split('\n');
    ASSERT_EQ(lines.size(), 5);
    EXPECT_EQ(lines[0], "direction of A (deg),A (kN),B (kN),larger of A and B (kN)");
    EXPECT_FALSE(dialog->saveTo(file("sweep.svg")));
    EXPECT_TRUE(bytesOf(file("sweep.svg")).contains("A least 5.0714 kN at 25.0°"));
    EXPECT_TRUE(dialog->saveTo(file("sweep.doc")));
    EXPECT_FALSE(QFile::exists(file("sweep.doc")));
}

TEST_F(SweepBesideTheSheet, CopiesNumbersForASpreadsheet) {
    vary("direction of A", "0", "90");
    child<QSpinBox>(*dialog, "sweepSteps")->setValue(1);
    child<QPushButton>(*dialog, "sweepCopy")->click();
    const QMimeData* data = QApplication::clipboard()->mimeData();
    EXPECT_EQ(data->data(QStringLiteral("text/tab-separated-values")).split('\n').at(2), "90\t12\t0\t12");
    EXPECT_TRUE(data->text().contains(QStringLiteral("A least 5.0714 kN")));
    EXPECT_TRUE(data->hasImage());
}

TEST_F(SweepBesideTheSheet, TellsNothingWhileTheAnswerIsWithheld) {
    vary("direction of A", "0", "90");
    window->document().withholdAnswer(true);
    EXPECT_FALSE(dialog->view().sweep());
    EXPECT_FALSE(dialog->view().accessibleDescription().contains(QStringLiteral("5.0")));
    EXPECT_EQ(label("sweepPresent"), QString());
    EXPECT_FALSE(child<QPushButton>(*dialog, "sweepCopy")->isEnabled());
    window->document().withholdAnswer(false);
    EXPECT_TRUE(dialog->view().sweep());
}

TEST_F(SweepBesideTheSheet, FollowsASketchThatHasOtherThingsGiven) {
    vary("direction of B", "100", "120");
    Sketch other = testing::sketch({force("P", 340, 25), force("Q", 275, -40)});
    ASSERT_FALSE(window->document().edit(other, QStringLiteral("other")));
    EXPECT_EQ(child<QComboBox>(*dialog, "sweepVaried")->count(), 4);
    ASSERT_TRUE(dialog->view().sweep());
    EXPECT_EQ(dialog->view().sweep()->range.varied, (Scalar{0, false}));
    ASSERT_FALSE(window->document().edit(emptySketch(), QStringLiteral("empty")));
    EXPECT_FALSE(dialog->view().sweep());
}

TEST_F(SweepBesideTheSheet, RemembersItsStepsAndSize) {
    child<QSpinBox>(*dialog, "sweepSteps")->setValue(17);
    dialog->resize(760, 690);
    dialog->reject();
    open();
    ASSERT_FALSE(window->document().edit(legs(), QStringLiteral("legs")));
    auto& again = ask<SweepDialog>("sweep");
    EXPECT_EQ(child<QSpinBox>(again, "sweepSteps")->value(), 17);
    EXPECT_EQ(again.size(), QSize(760, 690));
}

/// What is copied in a case says which: its curves are not those of the sketch as drawn.
TEST_F(SweepBesideTheSheet, SaysOfWhichCaseItIs) {
    Sketch sketch = window->document().sketch();
    sketch.title = "Buoy";
    sketch.cases.push_back({"swell", {{"W", Magnitude{14, {}}, {}}}});
    ASSERT_FALSE(window->document().editWhole(sketch, 0, QStringLiteral("case")));
    child<QPushButton>(*dialog, "sweepCopy")->click();
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith(QStringLiteral("Buoy (case: swell)")))
        << QApplication::clipboard()->text().toStdString();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
