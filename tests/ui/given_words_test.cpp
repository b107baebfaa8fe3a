// SPDX-License-Identifier: MIT
// What the table of given values says of a value beside its shown digits.
// NIST SP 811 (2008), B.8: 1 kgf = 9.80665 N, exact; so 850 kgf = 8335.6525 N.
#include "tests/ui/panel_support.h"

#include "core/sketch/shown.h"
#include "ui/canvas/force_edits.h"
#include "ui/panel/given_model.h"

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class GivenWords : public ::testing::Test {
protected:
    void open(const Sketch& sketch) {
        ASSERT_FALSE(firstFault(sketch)) << firstFault(sketch)->message;
        document.replace(sketch, {});
        model.refresh();
    }
    QString data(int row, int column, int role = Qt::DisplayRole) {
        return model.index(row, column).data(role).toString();
    }
    QString tip(int row, int column) { return data(row, column, Qt::ToolTipRole); }

    SketchDocument document;
    GivenModel model{document};
};

Sketch inRadians(double angle) {
    Sketch sketch = raft();
    sketch.angleUnit = AngleUnit::rad;
    sketch.forces[0].direction.form = AngleForm{angle};
    sketch.forces[1].direction.form = AngleForm{-0.7};
    return sketch;
}

TEST_F(GivenWords, TheTooltipOfAnAngleInRadiansSpeaksOfDigitsOnlyWhereSomeAreNotShown) {
    open(inRadians(0.436));
    EXPECT_EQ(data(0, GivenModel::DirectionColumn), QStringLiteral("0.436 rad"));
    EXPECT_FALSE(tip(0, GivenModel::DirectionColumn).contains(QStringLiteral("kept as")));
    open(inRadians(0.43633));
    EXPECT_EQ(data(0, GivenModel::DirectionColumn), QStringLiteral("0.43633 rad"));
    EXPECT_FALSE(tip(0, GivenModel::DirectionColumn).contains(QStringLiteral("kept as")));
    open(inRadians(0.4363323));
    EXPECT_EQ(data(0, GivenModel::DirectionColumn), QStringLiteral("0.436 rad"));
    EXPECT_EQ(tip(0, GivenModel::DirectionColumn), QStringLiteral("kept as 0.4363323 rad"));
}

TEST_F(GivenWords, CellDragAndToggleRoundAnAngleAlike) {
    Sketch sketch = inRadians(0.43633);
    setShownDirection(sketch.forces[0], 0.43633, sketch);
    EXPECT_EQ(std::get<AngleForm>(sketch.forces[0].direction.form).value, 0.436);
    sketch.forces[0] = inRadians(0.43633).forces[0];
    sketch.sum = sketch.forces[0];
    sketch.sum.name.assign(1, 'R');
    sketch.sum.magnitude = {};
    sketch.forces[0].magnitude = {};
    sketch.forces[0].direction = {};
    sketch.forces.resize(1); // its direction is that of the sum: 0.43633
    sketch.sum.magnitude.value = 340;
    open(sketch);
    const Sketch given = toggled(document.result(), 0, Entry::direction);
    EXPECT_EQ(std::get<AngleForm>(given.forces[0].direction.form).value, 0.436);
}

TEST_F(GivenWords, AUnitOfItsOwnIsSaidQuietlyBesideTheSheets) {
    Sketch sketch = raft();
    sketch.forces[0].magnitude = magnitudeOf({850, ForceUnit::kgf, {}}, sketch.forceUnit, sketch.gravity);
    sketch.forces[0].direction = directionOf({50, AngleUnit::gon, {}}, sketch.angleUnit);
    open(sketch);
    EXPECT_EQ(data(0, GivenModel::MagnitudeColumn), QStringLiteral("8340 N"));
    EXPECT_EQ(data(0, GivenModel::Note), QStringLiteral("850 kgf, 50 gon"));
    EXPECT_EQ(tip(0, GivenModel::MagnitudeColumn), QStringLiteral("850 kgf = 8340 N; kept as 8335.6525 N"));
    EXPECT_EQ(tip(0, GivenModel::DirectionColumn), QStringLiteral("50 gon = 45.0\u00b0"));
    EXPECT_EQ(data(0, GivenModel::MagnitudeColumn, Qt::AccessibleTextRole),
              QStringLiteral("Magnitude of P: 8340 N, given as 850 kgf"));
    EXPECT_EQ(data(0, GivenModel::MagnitudeColumn, Qt::EditRole), QStringLiteral("850 kgf"))
        << "as it was stated";
    EXPECT_EQ(data(1, GivenModel::Note), QString());
}

TEST_F(GivenWords, LeavingTheFieldUnchangedKeepsTheUnit) {
    Sketch sketch = raft();
    sketch.forces[0].magnitude =
        magnitudeOf({850, ForceUnit::kgf, plusMinus(10)}, sketch.forceUnit, sketch.gravity);
    open(sketch);
    const QModelIndex cell = model.index(0, GivenModel::MagnitudeColumn);
    EXPECT_TRUE(model.setData(cell, cell.data(Qt::EditRole)));
    EXPECT_EQ(document.sketch(), sketch);
    EXPECT_TRUE(model.setData(cell, QStringLiteral("8335.6")));
    EXPECT_FALSE(document.sketch().forces[0].magnitude.typed);
    EXPECT_EQ(document.sketch().forces[0].magnitude.value, 8335.6);
}

TEST_F(GivenWords, ACellTakesTheWordsThatItShows) {
    open(raft());
    EXPECT_TRUE(model.setData(model.index(0, GivenModel::MagnitudeColumn), QStringLiteral("to find")));
    EXPECT_TRUE(model.setData(model.index(1, GivenModel::DirectionColumn), QStringLiteral("To find")));
    EXPECT_FALSE(isGiven(document.sketch().forces[0].magnitude));
    EXPECT_FALSE(isGiven(document.sketch().forces[1].direction));
    EXPECT_EQ(data(0, GivenModel::MagnitudeColumn), QStringLiteral("to find"));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
