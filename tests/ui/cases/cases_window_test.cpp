// SPDX-License-Identifier: MIT
// Cases in the window: the bar over the sheet, the commands, the table. Numbers: 340 N at 25 degrees and 275
// N at -40 degrees give 520 N (the program's own example of the format, checked in tests/published); 500 N
// instead of 340 N gives 664.7 N: root(500² + 275² + 2·500·275·cos 65°), and the same by Python's cmath.
#include "tests/support/sketches.h"
#include "tests/ui/window_fixture.h"
#include "ui/canvas/canvas.h"
#include "ui/cases/cases_dialog.h"
#include "ui/panel/given_model.h"
#include "ui/panel/panel_table.h"

#include <QApplication>
#include <QClipboard>
#include <QInputDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QTabBar>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

using testing::force;

class CasesInTheWindow : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        window->document().replace(testing::sketch({force("P", 340, 25), force("Q", 275, -40)}), {});
    }
    SketchDocument& document() { return window->document(); }
    /// A case of that name, by the command and its field.
    void add(const char* name) {
        trigger("caseAdd");
        auto* dialog = child<QInputDialog>(*window, "caseName");
        ASSERT_TRUE(dialog);
        dialog->setTextValue(QLatin1String(name));
        dialog->accept();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void setP(double magnitude) {
        Sketch sketch = document().sketch();
        sketch.forces[0].magnitude = {magnitude, {}};
        ASSERT_FALSE(document().edit(sketch, QStringLiteral("Change P")));
    }
    QTabBar& tabs() { return *child<QTabBar>(*window, "caseTabs"); }
    bool barIsShown() { return child<QWidget>(*window, "caseBar")->isVisible(); }
    /// Groups of the figure whose id begins so.
    int groups(const char* prefix) {
        int count = 0;
        for (const Group& group : window->canvas().figure().list.groups)
            count += group.id.starts_with(prefix) ? 1 : 0;
        return count;
    }
};

TEST_F(CasesInTheWindow, AreAddedNamedAndShownOverTheSheet) {
    EXPECT_FALSE(barIsShown());
    add("storm");
    EXPECT_TRUE(barIsShown());
    ASSERT_EQ(tabs().count(), 2);
    EXPECT_EQ(tabs().tabText(1), QStringLiteral("storm"));
    EXPECT_EQ(tabs().currentIndex(), 1) << "the new one is on the sheet";
    setP(500);
    EXPECT_EQ(child<QLabel>(*window, "caseChanges")->accessibleName(), QStringLiteral("P = 500 N"));
    EXPECT_EQ(document().whole().forces[0].magnitude.value, 340.0);
    document().undo();
    document().undo();
    EXPECT_FALSE(barIsShown()) << "adding it was one step";
}

TEST_F(CasesInTheWindow, AreWalkedThroughByKeysOfTheirOwn) {
    add("calm");
    add("storm");
    document().showCase({});
    EXPECT_EQ(child<QAction>(*window, "caseNext")->shortcut(), QKeySequence(Qt::ALT | Qt::Key_PageDown));
    EXPECT_EQ(child<QAction>(*window, "casePrevious")->shortcut(), QKeySequence(Qt::ALT | Qt::Key_PageUp));
    trigger("caseNext");
    EXPECT_EQ(document().shownCase(), 0u);
    trigger("caseNext");
    EXPECT_EQ(document().shownCase(), 1u);
    trigger("caseNext");
    EXPECT_EQ(document().shownCase(), std::nullopt) << "round and round";
    trigger("casePrevious");
    EXPECT_EQ(document().shownCase(), 1u);
    QStringList keys; // no two commands have one
    for (const QAction* action : window->findChildren<QAction*>())
        if (!action->shortcut().isEmpty())
            keys << action->shortcut().toString();
    EXPECT_EQ(keys.removeDuplicates(), 0) << keys.join(u' ').toStdString();
}

TEST_F(CasesInTheWindow, ABadNameIsRefusedInALineAndNothingIsLost) {
    add("storm");
    add("storm");
    EXPECT_EQ(document().whole().cases.size(), 1u);
    add("as drawn");
    EXPECT_EQ(document().whole().cases.size(), 1u);
}

TEST_F(CasesInTheWindow, AreRenamedAndDeletedEachInOneStep) {
    add("storm");
    trigger("caseRename");
    auto* dialog = child<QInputDialog>(*window, "caseName");
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->textValue(), QStringLiteral("storm"));
    dialog->setTextValue(QStringLiteral("gale"));
    dialog->accept();
    EXPECT_EQ(document().whole().cases[0].name, "gale");
    EXPECT_EQ(tabs().tabText(1), QStringLiteral("gale"));
    trigger("caseDelete");
    EXPECT_TRUE(document().whole().cases.empty());
    document().undo();
    EXPECT_EQ(document().whole().cases[0].name, "gale");
    document().undo();
    EXPECT_EQ(document().whole().cases[0].name, "storm");
}

TEST_F(CasesInTheWindow, TheOthersLieThinBehindTheOneThatIsShown) {
    EXPECT_EQ(groups("case-"), 0);
    add("storm");
    EXPECT_EQ(groups("case-"), 0) << "it is as drawn so far";
    setP(500);
    EXPECT_EQ(groups("case-"), 2) << "P and R as drawn";
    trigger("casesOver");
    EXPECT_EQ(groups("case-"), 0);
    trigger("casesOver");
    EXPECT_EQ(groups("case-"), 2);
}

TEST_F(CasesInTheWindow, TheTableSaysWhatDiffersAndWhatGovernsAndFollows) {
    add("storm");
    setP(500);
    auto& dialog = ask<CasesDialog>("casesTable");
    EXPECT_TRUE(dialog.shown().contains(QStringLiteral("665 N"))) << dialog.shown().toStdString();
    EXPECT_TRUE(dialog.shown().contains(QStringLiteral("+145 N"))) << "664.7 - 519.9";
    EXPECT_TRUE(dialog.shown().contains(QStringLiteral("Envelope of the cases")));
    setP(340);
    EXPECT_FALSE(dialog.shown().contains(QStringLiteral("665 N")));
    dialog.copy();
    EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasHtml());
    EXPECT_TRUE(QApplication::clipboard()->text().contains(QStringLiteral("storm\t520 N\t0 N")))
        << QApplication::clipboard()->text().toStdString();
}

/// 664.714 N at 2.979 degrees in the storm (Python: abs and phase of 500 e^25i + 275 e^-40i).
TEST_F(CasesInTheWindow, AreInWhatIsCopied) {
    add("storm");
    setP(500);
    child<QTabBar>(*window, "caseTabs")->setCurrentIndex(0);
    for (const char* command : {"copyValues", "copyNote"}) {
        SCOPED_TRACE(command);
        trigger(command);
        const QMimeData& data = *QApplication::clipboard()->mimeData();
        for (const char* part : {"case\tR (N)\ttheta_R (deg)\tgiven differently", "as drawn\t520\t-3.6\t",
                                 "storm\t665\t", "P = 500 N", "Envelope of the cases",
                                 "R (N)\t520\tas drawn\t665\tstorm", "The sketch as drawn counts as a case"})
            EXPECT_TRUE(data.text().contains(QLatin1String(part))) << part << '\n'
                                                                   << data.text().toStdString();
        EXPECT_TRUE(data.html().contains(QStringLiteral("<td>665</td>")));
    }
    trigger("copyValues");
    EXPECT_TRUE(QString::fromUtf8(
                    QApplication::clipboard()->mimeData()->data(QStringLiteral("text/tab-separated-values")))
                    .contains(QStringLiteral("storm\t665\t")));
}

/// Of one case alone a copy says which, and has no table of the others.
TEST_F(CasesInTheWindow, ACopyOfACaseSaysWhich) {
    add("storm");
    setP(500);
    Sketch titled = document().whole();
    titled.title = "Raft";
    ASSERT_FALSE(document().editWhole(titled, QStringLiteral("Title")));
    trigger("copyNote");
    const QString copied = QApplication::clipboard()->text();
    EXPECT_TRUE(copied.startsWith(QStringLiteral("Raft (case: storm)"))) << copied.toStdString();
    EXPECT_TRUE(copied.contains(QStringLiteral("R = 665 N")));
    EXPECT_FALSE(copied.contains(QStringLiteral("Envelope")));
}

TEST_F(CasesInTheWindow, TheTablesCopyBearsTitleCautionAndRecord) {
    add("storm");
    setP(500);
    Sketch titled = document().whole();
    titled.title = "Engine on a bridle";
    ASSERT_FALSE(document().editWhole(titled, QStringLiteral("Title")));
    ask<CasesDialog>("casesTable").copy();
    const QMimeData& data = *QApplication::clipboard()->mimeData();
    for (const char* part : {"Engine on a bridle", "A sketch check, not a design", "Assumed: all forces"}) {
        EXPECT_TRUE(data.text().contains(QLatin1String(part))) << part;
        EXPECT_TRUE(data.html().contains(QLatin1String(part))) << part;
    }
}

/// The value that the case gives otherwise has a mark in Given, and says what it is as drawn.
TEST_F(CasesInTheWindow, AValueThatTheCaseChangesHasAMarkInGiven) {
    add("storm");
    setP(500);
    GivenModel model(document());
    const auto at = [&](int row, int column) { return model.index(row, column); };
    EXPECT_TRUE(at(0, GivenModel::MagnitudeColumn).data(ChangedRole).toBool());
    EXPECT_TRUE(at(0, GivenModel::MagnitudeColumn)
                    .data(Qt::ToolTipRole)
                    .toString()
                    .startsWith(QStringLiteral("in the case storm; as drawn 340 N")));
    EXPECT_TRUE(at(0, GivenModel::MagnitudeColumn)
                    .data(Qt::AccessibleTextRole)
                    .toString()
                    .contains(QStringLiteral("in the case storm; as drawn 340 N")));
    EXPECT_FALSE(at(0, GivenModel::DirectionColumn).data(ChangedRole).toBool());
    EXPECT_FALSE(at(1, GivenModel::MagnitudeColumn).data(ChangedRole).toBool());
    tabs().setCurrentIndex(0);
    EXPECT_FALSE(at(0, GivenModel::MagnitudeColumn).data(ChangedRole).toBool());
}

TEST_F(CasesInTheWindow, AreHiddenWhileTheAnswerIs) {
    add("storm");
    setP(500);
    trigger("ownAnswer");
    ASSERT_TRUE(document().withholdsAnswer());
    EXPECT_FALSE(barIsShown());
    EXPECT_EQ(groups("case-"), 0);
    for (const char* command : {"caseAdd", "caseNext", "casesTable", "casesOver"})
        EXPECT_FALSE(child<QAction>(*window, command)->isEnabled()) << command;
}

TEST_F(CasesInTheWindow, WhetherTheyAreLaidOverIsRemembered) {
    add("storm");
    trigger("casesOver");
    open();
    EXPECT_FALSE(child<QAction>(*window, "casesOver")->isChecked());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
