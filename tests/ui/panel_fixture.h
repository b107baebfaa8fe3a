// SPDX-License-Identifier: MIT
// A panel on the raft, driven as a person drives it.
#pragma once

#include "panel_support.h"

#include "ui/panel/panel.h"

#include <QAbstractItemView>
#include <QItemSelectionModel>
#include <QLineEdit>
#include <QTest>

namespace tailpoint::test {

class PanelTest : public ::testing::Test {
protected:
    void SetUp() override {
        document.replace(raft(), {});
        panel.resize(400, 700);
        panel.show();
        table = child<QTableView>(panel, "givenTable");
        settle();
    }

    /// Waits until the frame's refresh has come.
    void settle() {
        auto* model = table->model();
        bool told = false;
        const auto seen = QObject::connect(model, &QAbstractItemModel::dataChanged, [&] { told = true; });
        emit document.changed();
        EXPECT_TRUE(waitFor([&] { return told; }));
        QObject::disconnect(seen);
    }
    void goTo(int row, int column) {
        table->setFocus();
        table->setCurrentIndex(table->model()->index(row, column));
    }
    QLineEdit* field() { // one that was closed waits for its deletion
        for (auto* each : table->viewport()->findChildren<QLineEdit*>(QStringLiteral("cellField"))) {
            if (each->isVisible()) {
                return each;
            }
        }
        return nullptr;
    }
    void selectRow(int row) {
        table->selectionModel()->setCurrentIndex(
            table->model()->index(row, 0), QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    }
    /// Types into a cell as somebody would: the first key opens the field.
    void type(int row, int column, const QString& text, Qt::Key end = Qt::Key_Return) {
        goTo(row, column);
        QTest::keyClick(table, Qt::Key_F2);
        ASSERT_TRUE(field());
        field()->selectAll();
        QTest::keyClicks(field(), text);
        QTest::keyClick(field(), end);
        QCoreApplication::processEvents();
    }
    const Force& force(int index) { return document.sketch().forces.at(static_cast<std::size_t>(index)); }

    SketchDocument document;
    Panel panel{document};
    QTableView* table = nullptr;
};

} // namespace tailpoint::test
