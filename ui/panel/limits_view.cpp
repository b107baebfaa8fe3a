// SPDX-License-Identifier: MIT
#include "ui/panel/limits_view.h"

#include "ui/files/result.h"
#include "ui/panel/answer_text.h"
#include "ui/render/limit_bar.h"
#include "ui/style/symbols.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

namespace tailpoint {

namespace {

constexpr int kBarHeightOnScreen = 14; ///< logical pixels, the limit's stroke included
constexpr int kLeastBar = 80;

} // namespace

LimitBarView::LimitBarView(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize LimitBarView::sizeHint() const {
    return {kLeastBar, kBarHeightOnScreen};
}

void LimitBarView::show(const LimitBar& bar, bool isWithin, const QString& spoken) {
    m_bar = bar;
    m_isWithin = isWithin;
    if (accessibleName() != spoken) {
        setAccessibleName(spoken);
        setToolTip(spoken);
    }
    update();
}

void LimitBarView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto colour = [&](QPalette::ColorRole role) { return palette().color(role); };
    const LimitBarInk ink{colour(m_isWithin ? QPalette::PlaceholderText : QPalette::BrightText),
                          colour(QPalette::PlaceholderText), colour(QPalette::Base), colour(QPalette::Text)};
    paintLimitBar(painter, QRectF(rect()).adjusted(1, kLimitOut, -1, -kLimitOut), m_bar, ink);
}

LimitsView::LimitsView(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this)) {
    setObjectName(QStringLiteral("limits"));
    m_column->setContentsMargins(0, 2, 0, 0);
    m_column->setSpacing(2);
    m_remark = quietLabel(QStringLiteral("limitsRemark"));
    m_remark->setWordWrap(true);
    m_remark->setText(onScreen(toText(limitsRemark())));
    m_column->addWidget(m_remark);
    hide();
}

LimitsView::Row LimitsView::addRow() {
    const auto place = static_cast<int>(m_rows.size());
    Row row{new LimitBarView, new QLabel, new ValueLabel(QStringLiteral("limit%1").arg(place))};
    row.bar->setObjectName(QStringLiteral("limitBar%1").arg(place));
    row.word->setObjectName(QStringLiteral("limitWord%1").arg(place));
    QFont bold = font();
    bold.setBold(true);
    row.word->setFont(bold);
    row.word->setMinimumWidth(QFontMetrics(bold).horizontalAdvance(text(verdictWord(Bound::straddles))));
    row.sentence->setFocusPolicy(Qt::StrongFocus); // read and copied without a mouse
    auto* line = new QHBoxLayout;
    line->setContentsMargins(0, 4, 0, 0);
    line->setSpacing(10);
    line->addWidget(row.bar, 1);
    line->addWidget(row.word);
    m_column->insertLayout(2 * place, line);
    m_column->insertWidget(2 * place + 1, row.sentence);
    return row;
}

void LimitsView::fill(const Row& row, const LimitShown& shown) {
    const bool isWithin = shown.verdict == Bound::within;
    const auto role = isWithin ? QPalette::WindowText : QPalette::BrightText;
    row.bar->show(shown.bar, isWithin, onScreen(shown.spoken));
    row.word->setText(text(verdictWord(shown.verdict)));
    row.word->setForegroundRole(role);
    row.sentence->show(onScreen(toText(shown.sentence)).toHtmlEscaped());
    row.sentence->setForegroundRole(role);
}

void LimitsView::show(const Result& result) {
    const std::vector<LimitShown> shown =
        result.isWithheld || result.sketch.forces.empty()
            ? std::vector<LimitShown>()
            : limitsShown(result.sketch, result.solved, result.chosen, result.ranges());
    const auto count = static_cast<qsizetype>(shown.size());
    while (m_rows.size() < count) {
        m_rows << addRow();
    }
    for (qsizetype i = 0; i < m_rows.size(); ++i) {
        const bool isUsed = i < count;
        m_rows[i].bar->setVisible(isUsed);
        m_rows[i].word->setVisible(isUsed);
        if (isUsed) {
            fill(m_rows[i], shown[static_cast<std::size_t>(i)]);
        } else { // nothing of an answer that is hidden now stays behind
            m_rows[i].bar->show({}, true, {});
            m_rows[i].word->clear();
            m_rows[i].sentence->show({});
        }
    }
    setVisible(count > 0);
}

} // namespace tailpoint
