// SPDX-License-Identifier: MIT
// The window: files, the question before changes are lost, units, themes, what is remembered.
#include "panel_support.h"

#include "tests/ui/hands/warnings.h"
#include "ui/canvas/canvas.h"
#include "ui/document/recovery.h"
#include "ui/panel/own_answer_view.h"
#include "ui/panel/panel.h"
#include "ui/panel/solution_view.h"
#include "ui/window/lines.h"
#include "window_fixture.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QSettings>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class WindowTest : public OpenWindow {};

TEST_F(WindowTest, TheFirstStartShowsTheRaftWithItsAnswer) {
    EXPECT_EQ(window->document().sketch().title, "Survey raft on two lines");
    EXPECT_TRUE(window->document().path().isEmpty());
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_EQ(plainOf(window->panel(), "answer"), QStringLiteral("R = 520 N"));
    EXPECT_FALSE(child<QLabel>(*window, "hint")->text().isEmpty());
}

TEST_F(WindowTest, TheCautionIsSwitchedOnAndATitleThatAsksForItKeepsItOn) {
    auto* action = child<QAction>(*window, "caution");
    auto* menu = qobject_cast<QMenu*>(action->parent());
    ASSERT_TRUE(menu);
    emit menu->aboutToShow();
    EXPECT_FALSE(action->isChecked());
    action->trigger();
    EXPECT_TRUE(window->document().sketch().caution);
    const auto* line = child<QWidget>(*window, "caution-line");
    EXPECT_TRUE(QTest::qWaitFor([&] { return line->isVisibleTo(window.get()); })) << "with the next frame";
    window->document().undo();
    EXPECT_FALSE(window->document().sketch().caution);
    Sketch sling = window->document().sketch();
    sling.title = "Sling under the survey buoy";
    window->document().edit(sling, QStringLiteral("title"));
    emit menu->aboutToShow();
    EXPECT_TRUE(action->isChecked());
    EXPECT_FALSE(action->isEnabled());
}

TEST_F(WindowTest, AValueTypedOnTheSheetByKeyLeavesTheForceSelected) {
    Canvas& canvas = window->canvas();
    canvas.setFocus(Qt::TabFocusReason);
    canvas.select(1);
    QTest::keyClick(&canvas, Qt::Key_Return);
    auto* editor = child<QLineEdit>(canvas, "labelEditor");
    ASSERT_TRUE(editor->isVisible());
    QTest::keyClicks(editor, QStringLiteral("150"));
    QSignalSpy followed(child<QTableView>(*window, "givenTable")->model(), &QAbstractItemModel::dataChanged);
    QTest::keyClick(editor, Qt::Key_Return);
    ASSERT_TRUE(followed.count() > 0 || followed.wait()); // the panel, with the next frame
    EXPECT_EQ(window->document().sketch().forces[1].magnitude.value, 150);
    EXPECT_EQ(canvas.selected(), 1);
    EXPECT_TRUE(canvas.hasFocus());
    QTest::keyClick(&canvas, Qt::Key_Up);
    EXPECT_GT(window->document().sketch().forces[1].magnitude.value, 150);
}

/// Pressed in the bar: the next digits are the new force's, not the button's.
TEST_F(WindowTest, WhatIsTypedAfterAddForceIsTheNewForcesValue) {
    trigger("fileNew");
    child<QTableView>(*window, "givenTable")->setFocus();
    trigger("addForce");
    EXPECT_EQ(QApplication::focusWidget(), &window->canvas());
    for (const char digit : {'3', '1', '0'}) // the first one opens the field that takes the others
        QTest::keyClick(QApplication::focusWidget(), digit);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    ASSERT_EQ(window->document().sketch().forces.size(), 1U);
    EXPECT_EQ(window->document().sketch().forces[0].magnitude.value, 310);
}

/// Behind a click on what is selected a second one is waited for: whoever is quicker is no trouble.
TEST_F(WindowTest, ReturnRightAfterAClickOpensTheFieldWithoutAWarning) {
    auto* table = child<QTableView>(*window, "givenTable");
    const QPoint name = table->visualRect(table->model()->index(1, 0)).center();
    Warnings warnings;
    for (int click = 0; click < 2; ++click) {
        QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, name);
        QTest::keyClick(table, Qt::Key_Return);
        const auto isOpen = [&] { return qobject_cast<QLineEdit*>(QApplication::focusWidget()) != nullptr; };
        EXPECT_TRUE(QTest::qWaitFor(isOpen)) << click;
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    }
    EXPECT_TRUE(warnings.take().isEmpty());
}

TEST_F(WindowTest, AnUndoMayTakeACellAwayThatWaitsForASecondClick) {
    trigger("addForce");
    auto* table = child<QTableView>(*window, "givenTable");
    Warnings warnings;
    for (int click = 0; click < 2; ++click) {
        const QPoint name = table->visualRect(table->model()->index(2, 0)).center();
        QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, name);
    }
    window->document().undo();
    QTest::qWait(QApplication::doubleClickInterval() + 100);
    EXPECT_TRUE(warnings.take().isEmpty());
    EXPECT_EQ(window->document().sketch().forces.size(), 2U);
}

TEST_F(WindowTest, WhenAnOwnAnswerEndsTheLineNoLongerAsksForOne) {
    const auto hint = [&] { return child<QLabel>(*window, "hint")->accessibleName(); };
    trigger("ownAnswer");
    EXPECT_TRUE(hint().contains(QStringLiteral("Type what you have found"))) << hint().toStdString();
    trigger("ownAnswer");
    EXPECT_FALSE(hint().contains(QStringLiteral("Type what you have found"))) << hint().toStdString();
}

TEST_F(WindowTest, OnASheetWithoutAnAnswerTheLineDoesNotOfferToHideOne) {
    const auto hint = [&] { return child<QLabel>(*window, "hint")->accessibleName(); };
    trigger("ownAnswer");
    trigger("ownAnswer");
    ASSERT_TRUE(hint().contains(QStringLiteral("F7 hides it"))) << hint().toStdString();
    trigger("ownAnswer");
    window->document().replace(emptySketch(), {});
    EXPECT_FALSE(window->panel().ownAnswer()->answer().isOn());
    EXPECT_FALSE(hint().contains(QStringLiteral("F7 hides it"))) << hint().toStdString();
}

TEST_F(WindowTest, TheSolutionMeasuresTheAnswerOnTheSheetAsItIs) {
    auto* solution = child<SolutionView>(*window, "solution");
    const auto measured = [&](double division) {
        return solution->plainText().contains(QStringLiteral("divisions of %1 N").arg(division));
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return measured(divisionOf(window->canvas().view())); }))
        << solution->plainText().toStdString();
    const double before = divisionOf(window->canvas().view());
    for (int i = 0; i < 8; ++i) {
        window->canvas().zoomOut();
    }
    ASSERT_NE(divisionOf(window->canvas().view()), before);
    EXPECT_TRUE(QTest::qWaitFor([&] { return measured(divisionOf(window->canvas().view())); }));
}

TEST_F(WindowTest, TheAnswerIsMeasuredFromTheStartWhateverTheSheetRemembers) {
    window.reset();
    QSettings(QStringLiteral("Tailpoint"), QStringLiteral("Tailpoint"))
        .setValue("sheet/construction", "polygon");
    open();
    auto* solution = child<SolutionView>(*window, "solution");
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return solution->plainText().contains(QLatin1String("divisions of")); }));
}

TEST_F(WindowTest, SeveralForcesAreAddedByParallelogramsWhereThatIsAskedForAndItIsRemembered) {
    Sketch three = window->document().sketch();
    three.forces.push_back({"S", {160, {}}, {AngleForm{118}, {}}, false, {}});
    window->document().edit(three, QStringLiteral("three"));
    const auto says = [&](const char* words) {
        return child<SolutionView>(*window, "solution")->plainText().contains(QLatin1String(words));
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return says("Component table"); }));
    EXPECT_TRUE(child<QAction>(*window, "kindPolygon")->isChecked());
    trigger("byParallelograms");
    EXPECT_TRUE(child<QAction>(*window, "kindParallelogram")->isChecked()) << "the bar says what is drawn";
    EXPECT_TRUE(QTest::qWaitFor([&] { return says("The last parallelogram") && !says("Component table"); }));
    window->document().undo();
    window.reset();
    open();
    EXPECT_TRUE(child<QAction>(*window, "byParallelograms")->isChecked());
    EXPECT_TRUE(window->panel().byParallelograms());
}

/// What is told two at a time is drawn two at a time, and nothing else; the switch shows what holds.
TEST_F(WindowTest, TheSheetFollowsTheMethodOfTheSolution) {
    Sketch three = window->document().sketch();
    three.forces.push_back({"S", {160, {}}, {AngleForm{118}, {}}, false, {}});
    window->document().edit(three, QStringLiteral("three"));
    auto* adding = child<QAction>(*window, "byParallelograms");
    const auto isDrawn = [&](const char* kind) { return child<QAction>(*window, kind)->isChecked(); };
    trigger("method-triangle");
    EXPECT_TRUE(isDrawn("kindParallelogram"));
    EXPECT_TRUE(adding->isChecked() && !adding->isEnabled()) << "by the triangle there is no other way";
    EXPECT_FALSE(window->panel().byParallelograms()) << "what was chosen for other methods stays";
    trigger("method-components");
    EXPECT_TRUE(isDrawn("kindPolygon"));
    EXPECT_FALSE(adding->isChecked() || adding->isEnabled());
    trigger("method-suited");
    EXPECT_TRUE(isDrawn("kindPolygon"));
    EXPECT_TRUE(adding->isEnabled() && !adding->isChecked());
    trigger("byParallelograms");
    EXPECT_TRUE(isDrawn("kindParallelogram"));
    trigger("method-components");
    EXPECT_TRUE(isDrawn("kindPolygon")) << "a table is told";
    window->document().undo();
    window.reset();
    open();
    EXPECT_FALSE(child<QAction>(*window, "byParallelograms")->isEnabled());
    trigger("method-suited");
    EXPECT_TRUE(child<QAction>(*window, "byParallelograms")->isChecked());
}

TEST_F(WindowTest, TheMethodOfTheSolutionIsChosenAndRemembered) {
    const auto says = [&](const char* words) {
        return child<SolutionView>(*window, "solution")->plainText().contains(QLatin1String(words));
    };
    EXPECT_TRUE(child<QAction>(*window, "method-suited")->isChecked());
    EXPECT_TRUE(QTest::qWaitFor([&] { return says("Check by components"); }));
    trigger("method-components");
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return says("Component table") && says("Check by the force triangle"); }));
    window.reset();
    open();
    EXPECT_TRUE(child<QAction>(*window, "method-components")->isChecked());
    EXPECT_TRUE(QTest::qWaitFor([&] { return says("Check by the force triangle"); }));
    trigger("method-suited");
}

TEST_F(WindowTest, MarksOnParallelSidesAreDrawnIfAskedAndRemembered) {
    const auto strokes = [this] {
        for (const Group& group : window->canvas().figure().list.groups)
            if (group.id == "parallelogram")
                return group.items.size();
        return std::size_t(0);
    };
    EXPECT_EQ(strokes(), 2U);
    trigger("parallelMarks");
    EXPECT_EQ(strokes(), 8U);
    trigger("kindTriangle");
    EXPECT_FALSE(child<QAction>(*window, "parallelMarks")->isEnabled());
    trigger("kindParallelogram");
    window.reset();
    open();
    EXPECT_TRUE(child<QAction>(*window, "parallelMarks")->isChecked());
    EXPECT_EQ(strokes(), 8U);
}

TEST_F(WindowTest, UndoTakesTheModifiedMarkAway) {
    change();
    EXPECT_TRUE(window->isWindowModified());
    trigger("undo");
    EXPECT_FALSE(window->isWindowModified());
    trigger("redo");
    EXPECT_TRUE(window->isWindowModified());
}

TEST_F(WindowTest, AChangeOfUnitKeepsTheForcesInOneStep) {
    trigger("unit-kN");
    EXPECT_EQ(window->document().sketch().forceUnit, ForceUnit::kN);
    EXPECT_DOUBLE_EQ(*window->document().sketch().forces[0].magnitude.value, 0.34);
    EXPECT_EQ(window->document().history().count(), 1);
    ASSERT_TRUE(
        waitFor([&] { return plainOf(window->panel(), "answer") == QStringLiteral("R = 0.520 kN"); }));
    EXPECT_TRUE(plainOf(window->panel(), "reference").startsWith(QStringLiteral("kN")));
}

TEST_F(WindowTest, TheNumbersAreKeptInsteadWhereThatIsChosen) {
    trigger("keepForces"); // on by default: now off
    trigger("unit-lbf");
    EXPECT_EQ(*window->document().sketch().forces[0].magnitude.value, 340);
}

TEST_F(WindowTest, TheAxisChangesTheAnglesAndNotTheForces) {
    trigger("axis-+y");
    trigger("sense-cw");
    EXPECT_EQ(window->document().sketch().forces[0].direction.form, (Form{AngleForm{65}}));
    ASSERT_TRUE(waitFor([&] {
        return plainOf(window->panel(), "answerDetail").startsWith(QStringLiteral("93.6° clockwise from +y"));
    }));
}

TEST_F(WindowTest, AUnitHasTheColourOfItsLineInAnyTheme) {
    auto* answer = child<QLabel>(window->panel(), "answer");
    for (const auto& [action, name] :
         {std::pair{"theme-slate", ThemeName::slate}, std::pair{"theme-contrast", ThemeName::contrast},
          std::pair{"theme-paper", ThemeName::paper}}) {
        trigger(action);
        const QString colour = themeOf(name).sum.name();
        EXPECT_TRUE(waitFor([&] { return answer->text().contains(QStringLiteral("color:") + colour); }))
            << action << ": " << answer->text().toStdString();
        EXPECT_EQ(answer->palette().color(QPalette::LinkVisited).name(), colour);
    }
}

TEST_F(WindowTest, ThemeAndConstructionAreRememberedAndASheetsUnitIsItsOwn) {
    trigger("theme-slate");
    trigger("unit-lbf");
    trigger("angle-gon");
    trigger("figures-5");
    trigger("kindTriangle");
    bool asked = false;
    answerNext(QMessageBox::Discard, asked);
    ASSERT_TRUE(window->close());
    open();
    EXPECT_EQ(window->canvas().theme(), ThemeName::slate);
    EXPECT_EQ(window->canvas().construction(), ConstructionKind::triangle);
    trigger("fileNew");
    EXPECT_EQ(window->document().sketch().forceUnit, ForceUnit::N);
    EXPECT_EQ(window->document().sketch().angleUnit, AngleUnit::deg);
    EXPECT_EQ(window->document().sketch().figures, 3);
}

TEST_F(WindowTest, NewSheetsTakeAUnitOverWhereThatIsAskedFor) {
    trigger("unit-lbf");
    trigger("angle-gon");
    trigger("figures-5");
    trigger("newSheetsLikeThis");
    bool asked = false;
    answerNext(QMessageBox::Discard, asked);
    trigger("fileNew");
    EXPECT_TRUE(asked);
    EXPECT_EQ(window->document().sketch().forceUnit, ForceUnit::lbf);
    EXPECT_EQ(window->document().sketch().angleUnit, AngleUnit::gon);
    EXPECT_EQ(window->document().sketch().figures, 5);
    ASSERT_TRUE(window->openPath(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json")));
    EXPECT_EQ(window->document().sketch().forceUnit, ForceUnit::N) << "a file keeps its own";
}

/// The menu that opened, its choice made.
TEST_F(WindowTest, AUnitBesideAValueIsClickedToChangeIt) {
    auto* table = child<QTableView>(*window, "givenTable");
    const QRect cell = table->visualRect(table->model()->index(0, 1)); // "340 N"
    const QPoint number(cell.center()), unit(cell.right() - 12, cell.center().y());
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, number);
    EXPECT_EQ(QApplication::activePopupWidget(), nullptr) << "the number is no unit";
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, unit);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_TRUE(menu);
    auto* kilo = menu->findChild<QAction*>(QStringLiteral("unit-kN"));
    ASSERT_TRUE(kilo);
    EXPECT_FALSE(kilo->isChecked());
    kilo->trigger();
    menu->close();
    EXPECT_EQ(window->document().sketch().forceUnit, ForceUnit::kN);
    EXPECT_DOUBLE_EQ(*window->document().sketch().forces[0].magnitude.value, 0.34);
    EXPECT_EQ(window->document().history().count(), 1);
}

TEST_F(WindowTest, TheFigureGoesToTheClipboardThreeWays) {
    trigger("copyFigure");
    const QMimeData* data = QApplication::clipboard()->mimeData();
    EXPECT_TRUE(data->data(QStringLiteral("image/svg+xml")).contains("<svg"));
    EXPECT_TRUE(data->hasImage());
    EXPECT_TRUE(data->text().contains(QStringLiteral("R = 520 N")));
}

/// Large letters in a small window: whole sentences, or an ellipsis, and all of it to be had.
TEST(HintLineTest, CutsNoHintWithinASentenceThatFits) {
    HintLine line;
    const QString whole = QStringLiteral("Drag a tip to change a force. Or type into the table.");
    line.setHint(whole);
    auto* hint = line.findChild<QLabel*>(QStringLiteral("hint"));
    line.show();
    const auto shownAt = [&](int letters) {
        line.resize(hint->fontMetrics().horizontalAdvance(whole.left(letters)) + 60, 30);
        QCoreApplication::processEvents();
        return hint->text();
    };
    EXPECT_EQ(shownAt(80), whole);
    EXPECT_EQ(shownAt(40), QStringLiteral("Drag a tip to change a force."));
    EXPECT_TRUE(shownAt(12).endsWith(QChar(0x2026)));
    EXPECT_EQ(hint->toolTip(), whole);
    EXPECT_EQ(hint->accessibleName(), whole);
    EXPECT_EQ(shownAt(80), whole);
}

/// A switch of the figure alone says what it draws: no word of the solution changes with it.
TEST_F(WindowTest, TheOtherHalfIsDrawnAndTheSolutionStays) {
    auto* half = child<QAction>(*window, "otherHalf");
    EXPECT_EQ(half->text().remove(u'&'), QStringLiteral("Other half"));
    EXPECT_TRUE(half->toolTip().contains(QStringLiteral("The solution's text stays")));
    EXPECT_FALSE(half->isEnabled()) << "a parallelogram shows both";
    trigger("kindTriangle");
    ASSERT_TRUE(half->isEnabled());
    const QString told = child<SolutionView>(*window, "solution")->plainText();
    const DisplayList one = window->canvas().figure().list;
    trigger("otherHalf");
    EXPECT_FALSE(window->canvas().figure().list == one);
    EXPECT_EQ(child<SolutionView>(*window, "solution")->plainText(), told);
    trigger("otherHalf");
    EXPECT_TRUE(window->canvas().figure().list == one);
}

TEST_F(WindowTest, TheValuesGoToTheClipboardAsText) {
    trigger("copyValues");
    const QString all = QApplication::clipboard()->text();
    for (const char* part :
         {"R = 520 N", "3.6° clockwise from +x", "vector\tmagnitude (N)", "\t308\t", "\t115.0\n",
          "Magnitude and direction are those found: R = 519.86 N and θR = −3.648°."}) {
        EXPECT_TRUE(all.contains(QString::fromUtf8(part))) << part << " in\n" << all.toStdString();
    }
}
/// At every paint of the sheet, what the panel shows for the force that a hand changes.
class PaintWatch : public QObject {
public:
    PaintWatch(MainWindow& window, QAbstractItemModel& table, SolutionView& solution)
        : m_window(window), m_table(table), m_solution(solution) {
        window.canvas().installEventFilter(this);
    }
    int paints = 0, apart = 0;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint) {
            const QString now =
                QString::number(m_window.document().sketch().forces[0].magnitude.value.value_or(0));
            ++paints;
            apart +=
                m_table.index(0, 1).data().toString().startsWith(now) && m_solution.plainText().contains(now)
                    ? 0
                    : 1;
        }
        return QObject::eventFilter(watched, event);
    }
    MainWindow& m_window;
    QAbstractItemModel& m_table;
    SolutionView& m_solution;
};

TEST_F(WindowTest, SheetAndPanelArePaintedOfOneResult) {
    QCoreApplication::processEvents();
    PaintWatch watch(*window, *child<QTableView>(*window, "givenTable")->model(),
                     *child<SolutionView>(*window, "solution"));
    for (int i = 1; watch.paints < 20 && i < 400; ++i) {
        Sketch moved = window->document().sketch();
        moved.forces[0].magnitude.value = 341 + i;
        ASSERT_FALSE(window->document().preview(moved, QStringLiteral("drag")));
        if (i % 3 == 0) // several moves a frame
            QCoreApplication::processEvents();
    }
    EXPECT_EQ(watch.paints, 20);
    EXPECT_EQ(watch.apart, 0);
    window->document().cancel();
}

TEST_F(WindowTest, SelectionIsOneOnSheetAndPanel) {
    window->canvas().select(1);
    auto* table = child<QTableView>(*window, "givenTable");
    ASSERT_EQ(table->selectionModel()->selectedRows().size(), 1);
    EXPECT_EQ(table->selectionModel()->selectedRows()[0].row(), 1);
    table->selectRow(0);
    EXPECT_EQ(window->canvas().selected(), 0);
}

TEST_F(WindowTest, EveryCommandOfEveryMenuHasANameAndEveryControlAnAccessibleOne) {
    for (QMenu* menu : window->findChildren<QMenu*>()) {
        for (QAction* action : menu->actions()) {
            EXPECT_TRUE(action->isSeparator() || !action->text().isEmpty()) << menu->title().toStdString();
        }
    }
    for (QAbstractButton* button : window->findChildren<QAbstractButton*>()) {
        if (button->isVisible()) {
            EXPECT_FALSE(button->text().isEmpty() && button->accessibleName().isEmpty())
                << button->objectName().toStdString();
            EXPECT_GE(button->height(), 24) << button->objectName().toStdString();
            EXPECT_GE(button->width(), 24) << button->objectName().toStdString();
        }
    }
}

TEST_F(WindowTest, TabGoesFromTheBarOverTheSheetIntoThePanel) {
    QStringList order;
    for (QWidget* at = window->nextInFocusChain(); at != window.get(); at = at->nextInFocusChain()) {
        if (at->focusPolicy() & Qt::TabFocus && at->isVisible() && !at->objectName().isEmpty()) {
            order << at->objectName();
        }
    }
    const QStringList wanted{
        QStringLiteral("addForceButton"), QStringLiteral("fitButton"),  QStringLiteral("canvas"),
        QStringLiteral("givenTable"),     QStringLiteral("addRow"),     QStringLiteral("answer"),
        QStringLiteral("vectorTable"),    QStringLiteral("angleTable"), QStringLiteral("check")};
    qsizetype last = -1;
    for (const QString& name : wanted) {
        const qsizetype place = order.indexOf(name);
        EXPECT_GT(place, last) << name.toStdString() << " in " << order.join(u' ').toStdString();
        last = place;
    }
}

TEST_F(WindowTest, TheBarKeepsAllItsButtonsInANarrowWindow) {
    window->resize(640, 480);
    ASSERT_TRUE(waitFor([&] { return window->width() <= 640; }));
    auto* bar = child<QWidget>(*window, "bar");
    for (const char* name : {"addForceButton", "kindParallelogramButton", "kindTriangleButton",
                             "kindPolygonButton", "otherHalfButton", "snapButton", "fitButton"}) {
        auto* button = child<QAbstractButton>(*window, name);
        EXPECT_LE(button->geometry().right(), bar->width()) << name;
    }
}

TEST_F(WindowTest, NoDialogIsLargerThanItsScreenSoThatItsButtonsAreSeen) {
    const QRect screen = window->screen()->availableGeometry();
    for (const bool isHigh : {true, false}) { // of files: Qt lays it out, and remembers how large it was
        QFileDialog dialog(window.get());
        dialog.setOption(QFileDialog::DontUseNativeDialog);
        if (isHigh)
            dialog.resize(600, 2 * screen.height());
        else
            dialog.setGeometry(screen.right() - 50, screen.bottom() - 50, 2 * screen.width(), 500);
        dialog.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
        EXPECT_TRUE(screen.contains(dialog.geometry())) << isHigh;
        auto* buttons = dialog.findChild<QDialogButtonBox*>();
        ASSERT_NE(buttons, nullptr);
        for (const QAbstractButton* button : buttons->buttons())
            EXPECT_TRUE(screen.contains(QRect(button->mapToGlobal(QPoint()), button->size())))
                << button->text().toStdString();
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
