// SPDX-License-Identifier: MIT
// Limits and permitted directions under the answer: for each a bar, a word and a sentence, so that none of
// them hangs on colour.
#pragma once

#include "core/explain/limit_bar.h"
#include "ui/panel/panel_parts.h"

#include <QList>

class QVBoxLayout;

namespace tailpoint {

class Result;

/// A bar as core/explain/limit_bar.h has it.
class LimitBarView : public QWidget {
    Q_OBJECT
public:
    explicit LimitBarView(QWidget* parent = nullptr);
    /// `spoken`: what the bar shows, in words.
    void show(const LimitBar& bar, bool isWithin, const QString& spoken);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    LimitBar m_bar;
    bool m_isWithin = true;
};

class LimitsView : public QWidget {
    Q_OBJECT
public:
    explicit LimitsView(QWidget* parent = nullptr);
    /// Of the answer that is drawn; hidden where no limit is stated.
    void show(const Result& result);

private:
    struct Row {
        LimitBarView* bar;
        QLabel* word;
        ValueLabel* sentence;
    };
    Row addRow();
    static void fill(const Row& row, const LimitShown& shown);

    QList<Row> m_rows; ///< kept and filled anew
    QVBoxLayout* m_column;
    QLabel* m_remark;
};

} // namespace tailpoint
