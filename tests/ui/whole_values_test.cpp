// SPDX-License-Identifier: MIT
// No value of the panel is cut, whatever its unit, its figures, the panel's width and the size of its
// letters; and every column and row has a name.
#include "panel_fixture.h"

#include "ui/panel/given_model.h"
#include "ui/panel/panel_table.h"

#include <QAccessible>
#include <QAccessibleTableInterface>
#include <QScrollBar>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

/// In kN, where a component of -0.155 kN and numbers of six figures stand.
Sketch inKilonewtons(int figures) {
    Sketch sketch = raft();
    sketch.forceUnit = ForceUnit::kN;
    sketch.figures = figures;
    sketch.forces[0].magnitude.value = 0.340;
    sketch.forces[1].magnitude.value = 0.275;
    return sketch;
}

Sketch ofManyDigits() {
    Sketch sketch = raft();
    sketch.figures = 6;
    sketch.forces[0].magnitude.value = 123457;
    sketch.forces[1].magnitude.value = 987654;
    sketch.forces[0].name = "T_max";
    return sketch;
}

Sketch withTolerances() {
    Sketch sketch = inKilonewtons(4);
    sketch.forces[0].magnitude.tolerance = Tolerance{0.005, 0.005};
    sketch.forces[1].magnitude.tolerance = Tolerance{0.012, 0.004};
    sketch.angleUnit = AngleUnit::gon;
    return sketch;
}

class WholeValues : public PanelTest {
protected:
    /// The room that a cell's text has: its column, and of a label the empty ones behind it.
    static int roomOf(const QTableView& view, const QModelIndex& cell) {
        int room = view.columnWidth(cell.column());
        for (int next = cell.column() + 1; cell.column() == 0 && next < cell.model()->columnCount(); ++next) {
            if (!cell.siblingAtColumn(next).data().toString().isEmpty())
                break;
            room += view.columnWidth(next);
        }
        return room;
    }
    void expectWhole(const char* name) {
        auto* view = child<QTableView>(panel, name);
        QStyleOptionViewItem option;
        option.font = view->font();
        option.rect = QRect(0, 0, 10, 26);
        for (int row = 0; row < view->model()->rowCount(); ++row)
            for (int column = 0; column < view->model()->columnCount(); ++column) {
                const QModelIndex cell = view->model()->index(row, column);
                const QString shown = cell.data().toString();
                if (!shown.isEmpty()) {
                    EXPECT_LE(view->itemDelegate()->sizeHint(option, cell).width(), roomOf(*view, cell))
                        << name << ", " << panel.width() << ": " << shown.toStdString();
                }
            }
    }
};

TEST_F(WholeValues, AreShownInEveryUnitAndWidthAndSizeOfLetters) {
    const QFont own = panel.font();
    for (const Sketch& sketch : {inKilonewtons(3), inKilonewtons(6), ofManyDigits(), withTolerances()})
        for (const double times : {1.0, 2.0})
            for (const int width : {300, 360, 400, 520}) {
                QFont font = own;
                font.setPointSizeF(own.pointSizeF() * times);
                panel.setFont(font);
                panel.resize(width, 900);
                document.replace(sketch, {});
                settle();
                QCoreApplication::processEvents();
                SCOPED_TRACE(std::to_string(times) + " times, " + std::to_string(width));
                for (const char* name : {"givenTable", "vectorTable", "angleTable"})
                    expectWhole(name);
            }
}

/// What grows in a drag has its room at once.
TEST_F(WholeValues, HaveTheirRoomWhenADragMakesThemLonger) {
    panel.resize(400, 900);
    document.replace(inKilonewtons(3), {});
    settle();
    Sketch longer = inKilonewtons(3);
    longer.forces[1].magnitude.value = 123456.789;
    longer.figures = 6;
    ASSERT_FALSE(document.preview(longer, QStringLiteral("Change Q")));
    settle();
    expectWhole("givenTable");
    expectWhole("vectorTable");
}

TEST_F(WholeValues, HaveTheirUnitInTheHead) {
    const auto head = [&](int column) { return cellText(panel, "vectorTable", 0, column); };
    EXPECT_EQ(head(1), QStringLiteral("magnitude, N"));
    EXPECT_EQ(head(3), QStringLiteral("x, N"));
    document.replace(inKilonewtons(3), {});
    settle();
    EXPECT_EQ(head(1), QStringLiteral("magnitude, kN"));
    EXPECT_EQ(head(4), QStringLiteral("y, kN"));
}

TEST_F(WholeValues, HaveColumnsAndRowsWithNames) {
    document.replace(inKilonewtons(3), {});
    settle();
    const auto heads = [&](const char* which, Qt::Orientation way) {
        QStringList names;
        auto* view = child<QTableView>(panel, which);
        const int count = way == Qt::Horizontal ? view->model()->columnCount() : view->model()->rowCount();
        for (int i = 0; i < count; ++i)
            names << view->model()->headerData(i, way).toString();
        return names.join(u'|');
    };
    EXPECT_EQ(heads("vectorTable", Qt::Horizontal),
              QStringLiteral("Vector|Magnitude in kN|Direction|x in kN|y in kN"));
    EXPECT_EQ(heads("vectorTable", Qt::Vertical), QStringLiteral("|P|Q|R"));
    EXPECT_EQ(heads("angleTable", Qt::Horizontal),
              QStringLiteral("Part of the construction|Side in kN|Angle"));
    EXPECT_EQ(heads("givenTable", Qt::Horizontal), QStringLiteral("Name|Magnitude|Direction|Note"));
    EXPECT_EQ(heads("givenTable", Qt::Vertical), QStringLiteral("P|Q|R"));
}

/// As a screen reader asks for them.
TEST_F(WholeValues, TellAssistiveTechnologyWhatAColumnHolds) {
    auto* view = child<QTableView>(panel, "vectorTable");
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(view);
    ASSERT_TRUE(seen && seen->tableInterface());
    EXPECT_EQ(seen->tableInterface()->columnDescription(1), QStringLiteral("Magnitude in N"));
    EXPECT_EQ(seen->tableInterface()->columnDescription(3), QStringLiteral("x in N"));
    EXPECT_EQ(seen->tableInterface()->rowDescription(2), QStringLiteral("Q"));
}

TEST_F(WholeValues, AreEditedInAFieldThatSaysWhichValueItIs) {
    Sketch sketch = raft();
    sketch.forces[0].name = "T_max";
    document.replace(sketch, {});
    settle();
    const auto open = [&](int row, int column) {
        goTo(row, column);
        QTest::keyClick(table, Qt::Key_F2);
        const QLineEdit* opened = field();
        const QStringList said{opened ? opened->accessibleName() : QString(),
                               opened ? opened->toolTip() : QString()};
        if (opened)
            QTest::keyClick(field(), Qt::Key_Escape);
        QCoreApplication::processEvents();
        return said;
    };
    EXPECT_EQ(open(0, GivenModel::MagnitudeColumn)[0], QStringLiteral("Magnitude of T_max, in N"));
    EXPECT_TRUE(open(0, GivenModel::MagnitudeColumn)[1].contains(QStringLiteral("<i>T</i><sub>max</sub>")))
        << "the name is set as everywhere";
    EXPECT_EQ(open(1, GivenModel::DirectionColumn)[0],
              QStringLiteral("Direction of Q, from +x, counter-clockwise"));
    EXPECT_EQ(open(2, GivenModel::Name)[0], QStringLiteral("Name of R"));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
