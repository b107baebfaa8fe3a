// SPDX-License-Identifier: MIT
// Tolerances, masses and limits, typed in the window.
#include "tests/ui/panel_fixture.h"

#include "ui/document/bound_edits.h"
#include "ui/panel/bound_dialog.h"
#include "ui/panel/given_model.h"
#include "ui/panel/given_view.h"

#include <QDialogButtonBox>
#include <QPushButton>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class GivenTolerance : public PanelTest {
protected:
    QString shown(int row, int column) { return table->model()->index(row, column).data().toString(); }
    QString edited(int row, int column) {
        return table->model()->index(row, column).data(Qt::EditRole).toString();
    }
    QString line() { return child<QLabel>(panel, "givenLine")->text(); }
    BoundDialog& bounds(int vector) {
        auto* view = panel.findChild<GivenView*>();
        view->editBounds(vector);
        auto* dialog = panel.findChild<BoundDialog*>();
        EXPECT_TRUE(dialog && dialog->isVisible());
        return *dialog;
    }
    static void fill(BoundDialog& dialog, const char* field, const char* text) {
        child<QLineEdit>(dialog, field)->setText(QString::fromUtf8(text));
    }
    static void press(BoundDialog& dialog, QDialogButtonBox::StandardButton button) {
        QTest::mouseClick(dialog.findChild<QDialogButtonBox*>()->button(button), Qt::LeftButton);
    }
};

TEST_F(GivenTolerance, IsTypedShownAndTypedAgainInEachForm) {
    struct Row {
        const char *typed, *shown, *again;
        Tolerance tolerance;
    };
    const Row rows[] = {{"340 +- 5", "340 ± 5 N", "340 ± 5", plusMinus(5)},
                        {"340 +- 5 %", "340 N ± 5 %", "340 ± 5 %", plusMinusPercent(5)},
                        {"340 +5/-0", "340 +5/\u22120 N", "340 +5/-0", {5, 0, false}},
                        {"340 -1 +5", "340 +5/\u22121 N", "340 +5/-1", {5, 1, false}}};
    for (const Row& row : rows) {
        type(0, GivenModel::MagnitudeColumn, QString::fromUtf8(row.typed));
        EXPECT_EQ(force(0).magnitude.tolerance, row.tolerance) << row.typed;
        EXPECT_EQ(shown(0, GivenModel::MagnitudeColumn), QString::fromUtf8(row.shown));
        EXPECT_EQ(edited(0, GivenModel::MagnitudeColumn), QString::fromUtf8(row.again));
        type(0, GivenModel::MagnitudeColumn, QString::fromUtf8(row.again));
        EXPECT_EQ(force(0).magnitude.tolerance, row.tolerance) << row.again;
    }
}

TEST_F(GivenTolerance, OfADirectionIsTypedToo) {
    type(1, GivenModel::DirectionColumn, QStringLiteral("-40 +2/-0.5"));
    EXPECT_EQ(force(1).direction.tolerance, (Tolerance{2, 0.5, false}));
    EXPECT_EQ(shown(1, GivenModel::DirectionColumn), QString::fromUtf8("\u221240.0° +2°/\u22120.5°"));
    type(1, GivenModel::DirectionColumn, QStringLiteral("3:4 +- 5 %"));
    EXPECT_EQ(force(1).direction.tolerance, (Tolerance{2, 0.5, false})) << "no angle to take a share of";
}

TEST_F(GivenTolerance, AMassIsTakenByItsWeightAndSaidWithG) {
    type(0, GivenModel::MagnitudeColumn, QStringLiteral("850 kg"));
    EXPECT_EQ(force(0).magnitude.value, 8335.6525); // 850 x 9.80665
    EXPECT_EQ(line(), QString::fromUtf8("weight of 850 kg = 8340 N (g = 9.80665 m/s²)"));
    EXPECT_EQ(shown(0, GivenModel::MagnitudeColumn), QStringLiteral("8340 N"));
    EXPECT_EQ(shown(0, GivenModel::Note), QStringLiteral("850 kg"));
    EXPECT_EQ(edited(0, GivenModel::MagnitudeColumn), QStringLiteral("850 kg"));
    goTo(1, GivenModel::MagnitudeColumn);
    EXPECT_EQ(line(), QString());
    goTo(0, GivenModel::MagnitudeColumn);
    EXPECT_EQ(line(), QString::fromUtf8("weight of 850 kg = 8340 N (g = 9.80665 m/s²)"))
        << "where it is used";
}

TEST_F(GivenTolerance, ATonWithoutAKindIsAskedBack) {
    type(0, GivenModel::MagnitudeColumn, QStringLiteral("2 ton"));
    EXPECT_EQ(force(0).magnitude.value, 340);
    EXPECT_TRUE(child<QLabel>(panel, "givenFault")->text().contains(QStringLiteral("which ton")));
}

TEST_F(GivenTolerance, ALimitIsSetInItsDialogInOneStep) {
    BoundDialog& dialog = bounds(0);
    fill(dialog, "boundLimit", "1 t");
    fill(dialog, "boundAxis", "N30E");
    fill(dialog, "boundWithin", "20°");
    press(dialog, QDialogButtonBox::Ok);
    EXPECT_EQ(force(0).limit, (TypedForce{1, MassUnit::t, {}}));
    ASSERT_TRUE(force(0).permitted);
    EXPECT_DOUBLE_EQ(force(0).permitted->axis, 60); // N30°E from +x
    EXPECT_EQ(force(0).permitted->within, 20);
    EXPECT_EQ(document.history().count(), 1);
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
}

/// Where a limit is shown it is asked for: a double click, Enter and F2; a digit alone says so.
TEST_F(GivenTolerance, ALimitIsAskedForWhereItIsShown) {
    const auto opened = [&] {
        for (auto* dialog : panel.findChildren<BoundDialog*>())
            if (dialog->isVisible()) {
                dialog->close();
                settle();
                return true;
            }
        return false;
    };
    const QPoint place = table->visualRect(table->model()->index(1, GivenModel::Note)).center();
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, place);
    QTest::mouseDClick(table->viewport(), Qt::LeftButton, {}, place);
    EXPECT_TRUE(opened());
    goTo(1, GivenModel::Note);
    QTest::keyClick(table, Qt::Key_3);
    EXPECT_FALSE(opened());
    EXPECT_TRUE(line().contains(QStringLiteral("Enter or a double click"))) << line().toStdString();
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_TRUE(opened());
    QTest::keyClick(table, Qt::Key_F2);
    EXPECT_TRUE(opened());
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(GivenTolerance, WhatIsNoLimitKeepsTheDialogOpenWithTheReason) {
    const struct {
        const char *limit, *axis, *within, *words;
    } rows[] = {{"0", "", "", "above 0"},
                {"10 ± 1", "", "", "no tolerance"},
                {"ten", "", "", "Limit: 'ten' can't be read"},
                {"1,234", "", "", "1,234 may be"},
                {"", "90", "", "Within: type how far off"},
                {"", "", "20", "Axis: type the middle"},
                {"", "90 ± 2", "20", "in the other field"},
                {"", "90", "3:4", "type an angle"},
                {"", "90", "200", "up to a half turn"}};
    BoundDialog& dialog = bounds(0);
    for (const auto& row : rows) {
        fill(dialog, "boundLimit", row.limit);
        fill(dialog, "boundAxis", row.axis);
        fill(dialog, "boundWithin", row.within);
        press(dialog, QDialogButtonBox::Ok);
        EXPECT_TRUE(dialog.isVisible());
        const QString said = child<QLabel>(dialog, "boundFault")->text();
        EXPECT_TRUE(said.contains(QString::fromUtf8(row.words))) << said.toStdString();
    }
    press(dialog, QDialogButtonBox::Cancel);
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(GivenTolerance, ALimitIsShownAgainAndTakenOff) {
    Sketch limited = raft();
    limited.forces[1].limit = TypedForce{300, ForceUnit::N, {}};
    limited.forces[1].permitted = Permitted{-45, 10};
    document.replace(limited, {});
    settle();
    EXPECT_EQ(boundWords(limited, 1), QString::fromUtf8("at most 300 N, within 10.0° of \u221245.0°"));
    EXPECT_EQ(shown(1, GivenModel::Note), QString::fromUtf8("≤ 300 N"));
    EXPECT_EQ(table->model()->index(1, GivenModel::Note).data(Qt::ToolTipRole).toString(),
              boundWords(limited, 1));
    BoundDialog& dialog = bounds(1);
    EXPECT_EQ(child<QLineEdit>(dialog, "boundLimit")->text(), QStringLiteral("300 N"));
    EXPECT_EQ(child<QLineEdit>(dialog, "boundAxis")->text(), QStringLiteral("-45"));
    for (const char* field : {"boundLimit", "boundAxis", "boundWithin"}) {
        fill(dialog, field, "");
    }
    press(dialog, QDialogButtonBox::Ok);
    EXPECT_EQ(document.sketch(), raft());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
