// SPDX-License-Identifier: MIT
// The menu of a cell of Given acts on the force that it was opened for, whatever the sketch does meanwhile.
#include "panel_support.h"

#include "ui/panel/given_model.h"
#include "ui/panel/given_view.h"

#include <QContextMenuEvent>
#include <QLineEdit>
#include <QMenu>
#include <QTest>
#include <QTimer>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class GivenMenu : public ::testing::Test {
protected:
    void SetUp() override {
        document.replace(raft(), {});
        Sketch grown = raft();
        Force s = grown.forces[1];
        s.name = "S";
        s.direction.form = AngleForm{90};
        grown.forces.insert(grown.forces.begin(), s);
        ASSERT_FALSE(document.edit(grown, QStringLiteral("grow"))); // S, P, Q, and the sum
        QObject::connect(&document, &SketchDocument::changed, &view, &GivenView::refresh);
        view.refresh();
        view.resize(400, 300);
        view.show();
    }
    void openAt(int row, int column) {
        view.table()->setCurrentIndex(view.table()->model()->index(row, column));
        const QPoint at = view.table()->visualRect(view.table()->currentIndex()).center();
        QContextMenuEvent event(QContextMenuEvent::Mouse, at, view.table()->viewport()->mapToGlobal(at));
        QCoreApplication::sendEvent(view.table()->viewport(), &event);
        ASSERT_TRUE(menu());
    }
    QMenu* menu() { return view.findChild<QMenu*>(QStringLiteral("givenMenu")); }
    void trigger(const char* words) {
        for (QAction* each : menu()->actions()) {
            if (each->text().startsWith(QLatin1String(words))) {
                return each->trigger();
            }
        }
        ADD_FAILURE() << "no action " << words;
    }
    /// While the menu is open, as by another window or a reload.
    void undoMeanwhile() {
        QTimer::singleShot(0, [&] { document.undo(); });
        ASSERT_TRUE(waitFor([&] { return document.sketch() == raft(); }));
        ASSERT_TRUE(menu());
    }
    const Force& force(std::size_t i) const { return document.sketch().forces.at(i); }

    SketchDocument document;
    GivenView view{document};
};

TEST_F(GivenMenu, MakesItsOwnValueOneToFindAfterAnUndo) {
    openAt(2, GivenModel::MagnitudeColumn); // of Q
    undoMeanwhile();
    trigger("Make it one to find");
    EXPECT_TRUE(isGiven(force(0).magnitude));
    EXPECT_FALSE(isGiven(force(1).magnitude)) << "Q, the second now";
}

TEST_F(GivenMenu, DeletesTheForcesThatWereChosenAndNoOthers) {
    openAt(1, GivenModel::Name); // P
    undoMeanwhile();
    trigger("Delete");
    ASSERT_EQ(document.sketch().forces.size(), 1U);
    EXPECT_EQ(force(0).name, "Q");
}

TEST_F(GivenMenu, SetsTheLineOfActionOfItsOwnForce) {
    openAt(1, GivenModel::DirectionColumn); // of P
    undoMeanwhile();
    trigger("Line of action only");
    EXPECT_TRUE(force(0).lineOfActionOnly);
    EXPECT_FALSE(force(1).lineOfActionOnly);
}

TEST_F(GivenMenu, DoesNothingForAForceThatHasGone) {
    openAt(0, GivenModel::MagnitudeColumn); // of S, which the undo takes away
    undoMeanwhile();
    trigger("Make it one to find");
    trigger("Type a value");
    trigger("Line of action only");
    trigger("Delete");
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(view.findChild<QLineEdit*>(QStringLiteral("cellField")), nullptr);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
