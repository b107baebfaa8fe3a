// SPDX-License-Identifier: MIT
// The panel with tolerances and limits: no number stands alone, and no verdict hangs on colour.
#include "panel_fixture.h"

#include "core/explain/limits.h"
#include "tests/support/sketches.h"
#include "ui/panel/limits_view.h"
#include "ui/panel/panel_table.h"

#include <QClipboard>
#include <QGuiApplication>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class ValuesRanges : public PanelTest {
protected:
    /// P = 340 +- 5 N at 25 +- 2 degrees; the ends of R are those of tests/core/explain/ranges_test.cpp.
    static Sketch loose() {
        Sketch sketch = raft();
        sketch.forces[0].magnitude.tolerance = plusMinus(5);
        sketch.forces[0].direction.tolerance = plusMinus(2);
        return sketch;
    }
    void open(const Sketch& sketch) {
        document.replace(sketch, {});
        settle();
    }
    QStringList rows(const char* of = "vectorTable") {
        auto* model = child<QTableView>(panel, of)->model();
        QStringList all;
        for (int row = 0; row < model->rowCount(); ++row) {
            QStringList cells;
            for (int column = 0; column < model->columnCount(); ++column)
                cells << model->index(row, column).data().toString();
            all << cells.join(u'|').replace(QChar(0x2212), u'-');
        }
        return all;
    }
};

TEST_F(ValuesRanges, StandUnderEachValue) {
    open(loose());
    const QStringList all = rows();
    ASSERT_EQ(all.size(), 8) << all.join(u'\n').toStdString();
    EXPECT_EQ(all[5], QString::fromUtf8("R|520|-3.6\u00B0|519|-33.1"));
    EXPECT_EQ(all[6], QString::fromUtf8("from|509|-5.1\u00B0|509|-45.9"));
    EXPECT_EQ(all[7], QString::fromUtf8("to|530|-2.2\u00B0|529|-20.1"));
    EXPECT_EQ(all[2],
              QString::fromUtf8("from|335|23.0\u00B0|298|130")); // 335 cos 27 = 298.49, 335 sin 23 = 130.89
    EXPECT_TRUE(all[4].startsWith(QStringLiteral("Q|275")));
    EXPECT_TRUE(all[5].startsWith(QStringLiteral("R|"))) << "Q is exact";
}

TEST_F(ValuesRanges, StandUnderTheSideThatWasFound) {
    open(loose());
    const QStringList all = rows("angleTable");
    const auto side = all.indexOf(QString::fromUtf8("R|520 N|115.0\u00B0"));
    ASSERT_GE(side, 0) << all.join(u'\n').toStdString();
    EXPECT_EQ(all.value(side + 1), QStringLiteral("from|509 N|"));
    EXPECT_EQ(all.value(side + 2), QStringLiteral("to|530 N|"));
    EXPECT_EQ(all.filter(QStringLiteral("from|")).size(), 1) << "P and Q are given";
    open(raft());
    EXPECT_TRUE(rows("angleTable").filter(QStringLiteral("from|")).isEmpty());
}

TEST_F(ValuesRanges, AreReadOutWithTheValue) {
    open(loose());
    auto* model = child<QTableView>(panel, "vectorTable")->model();
    EXPECT_EQ(model->index(5, 1).data(Qt::AccessibleTextRole).toString(),
              QStringLiteral("magnitude of R: 520, range 509 to 530 N"));
    EXPECT_EQ(model->index(6, 1).data(Qt::AccessibleTextRole).toString(),
              QStringLiteral("magnitude of R: from 509"));
}

TEST_F(ValuesRanges, AreCopiedWithTheValue) {
    open(loose());
    auto* view = child<PanelTable>(panel, "vectorTable");
    view->selectionModel()->setCurrentIndex(view->model()->index(5, 0),
                                            QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    QTest::keyClick(view, Qt::Key_C, Qt::ControlModifier);
    const QStringList lines = QGuiApplication::clipboard()->text().trimmed().split(u'\n');
    ASSERT_EQ(lines.size(), 3);
    EXPECT_TRUE(lines[2].startsWith(QStringLiteral("to\t530")));
}

TEST_F(ValuesRanges, AreNotThereWithoutTolerances) {
    open(raft());
    EXPECT_EQ(rows().size(), 4);
}

/// At the panel's usual width.
TEST_F(ValuesRanges, AreNotCut) {
    open(loose());
    auto* view = child<PanelTable>(panel, "vectorTable");
    const QFontMetrics metrics(view->font());
    for (int row = 0; row < view->model()->rowCount(); ++row)
        for (int column = 1; column < 5; ++column)
            EXPECT_LE(metrics.horizontalAdvance(view->model()->index(row, column).data().toString()),
                      view->columnWidth(column));
}

TEST_F(ValuesRanges, FiguresOfTheTriangleSayWhatTheyAreWorkedWith) {
    open(loose());
    auto* model = child<QTableView>(panel, "angleTable")->model();
    EXPECT_EQ(model->index(model->rowCount() - 1, 0).data().toString(),
              QStringLiteral("these at the middle of the tolerances"));
    EXPECT_TRUE(
        plainOf(panel, "check").contains(QStringLiteral("Compared at the middle of the tolerances.")));
}

/// 509.747/520 = 98.03 and 529.901/520 = 101.91 per cent: the tenth above each. 3.6 degrees off 0,
/// from 2.2263 to 5.0506 of 6.
TEST_F(ValuesRanges, ALimitHasABarAWordAndASentence) {
    Sketch sketch = loose();
    sketch.sum.limit = TypedForce{520, ForceUnit::N, {}};
    sketch.sum.permitted = Permitted{0, 6};
    open(sketch);
    EXPECT_TRUE(child<LimitsView>(panel, "limits")->isVisibleTo(&panel));
    EXPECT_EQ(child<QLabel>(panel, "limitWord0")->text(), QStringLiteral("! straddles"));
    EXPECT_EQ(child<LimitBarView>(panel, "limitBar0")->accessibleName(),
              QStringLiteral("R uses 98.1 % of its limit at best, 102.0 % at worst"));
    EXPECT_TRUE(plainOf(panel, "limit0").startsWith(QStringLiteral("R straddles its limit")));
    EXPECT_EQ(child<QLabel>(panel, "limitWord1")->text(), QStringLiteral("within"));
    EXPECT_TRUE(plainOf(panel, "limitsRemark").contains(QStringLiteral("not rated data")));
    document.withholdAnswer(true);
    settle();
    EXPECT_FALSE(child<LimitsView>(panel, "limits")->isVisibleTo(&panel)) << "nothing of a withheld answer";
    EXPECT_TRUE(child<QLabel>(panel, "limit0")->text().isEmpty());
    EXPECT_TRUE(child<QLabel>(panel, "limitWord0")->text().isEmpty());
    EXPECT_TRUE(child<LimitBarView>(panel, "limitBar0")->accessibleName().isEmpty());
    document.withholdAnswer(false);
    open(raft());
    EXPECT_FALSE(child<LimitsView>(panel, "limits")->isVisibleTo(&panel));
}

/// What is filled, hatched and where the limit stands is seen in grey: the left of the bar is all ink,
/// between 98 and 102 per cent some of it is, at its right end none; in both themes' palettes.
TEST_F(ValuesRanges, ABarIsReadWithoutColour) {
    LimitBarView view;
    LimitUse use;
    use.leastUse = 50;
    use.utilisation = 100;
    view.show(barOf(use), true, {});
    view.resize(202, 14); // box from 1 to 201: the limit at 161, filled up to 81
    const QImage image = view.grab().toImage().convertToFormat(QImage::Format_Grayscale8);
    const auto inked = [&](int from, int to) {
        int dark = 0, all = 0;
        for (int x = from; x < to; ++x)
            for (int y = 5; y < 9; ++y, ++all)
                dark += qGray(image.pixel(x, y)) < 160 ? 1 : 0;
        return static_cast<double>(dark) / all;
    };
    EXPECT_GT(inked(5, 75), 0.99);
    EXPECT_GT(inked(85, 155), 0.1);
    EXPECT_LT(inked(85, 155), 0.7);
    EXPECT_LT(inked(170, 195), 0.01);
    EXPECT_GT(inked(160, 162), 0.99) << "the limit's stroke";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
