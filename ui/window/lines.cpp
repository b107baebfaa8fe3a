// SPDX-License-Identifier: MIT
#include "ui/window/lines.h"

#include "ui/panel/panel_parts.h"
#include "ui/panel/spoken_line.h"
#include "ui/style/icons.h"
#include "ui/style/targets.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <algorithm>

namespace tailpoint {

namespace {

QLabel* lineLabel(const QString& name) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    return label;
}

} // namespace

HintLine::HintLine(QWidget* parent)
    : QWidget(parent), m_hint(lineLabel(QStringLiteral("hint"))),
      m_readout(lineLabel(QStringLiteral("readout"))), m_status(new SpokenLine(QStringLiteral("status"))),
      m_row(new QHBoxLayout(this)) {
    m_row->setContentsMargins(14, 0, 10, 0); // the switch is as tall as the line is to be
    m_row->setSpacing(12);
    m_row->addWidget(m_hint, 1);
    m_row->addWidget(m_readout);
    m_row->addWidget(m_status);
    setAccessibleName(tr("Hint and status"));
    m_status->setFixedSize(1, 1); // there, and nothing to be seen
    m_hint->setTextFormat(Qt::RichText);
    m_hint->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored); // no hint makes the window larger
    m_hint->installEventFilter(this);
    m_hint->setForegroundRole(QPalette::PlaceholderText);
    m_readout->setForegroundRole(QPalette::PlaceholderText);
    m_readout->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
}

void HintLine::addSwitch(QWidget* control) {
    m_row->addWidget(control);
}

void HintLine::setHint(const QString& hint) {
    setRichHint(hint, hint.toHtmlEscaped());
    emit told(hint);
}

void HintLine::setRichHint(const QString& hint, const QString& rich) {
    if (m_rich != rich) {
        m_plain = hint;
        m_rich = rich;
        m_hint->setAccessibleName(hint);
        m_hint->setToolTip(rich);
        fit();
    }
}

/// Nothing is cut within a sentence but the first, and that with an ellipsis.
void HintLine::fit() {
    m_hint->setText(m_rich);
    const int room = m_hint->width();
    if (!m_hint->isVisible() || m_hint->sizeHint().width() <= room) {
        return;
    }
    const QFontMetrics metrics(m_hint->font());
    QString shown = m_plain;
    for (qsizetype end = shown.lastIndexOf(QLatin1String(". "));
         end > 0 && metrics.horizontalAdvance(shown) > room; end = shown.lastIndexOf(QLatin1String(". "))) {
        shown.truncate(end + 1);
    }
    m_hint->setText(metrics.elidedText(shown, Qt::ElideRight, room).toHtmlEscaped());
}

bool HintLine::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_hint && (event->type() == QEvent::Resize || event->type() == QEvent::Show)) {
        fit();
    }
    return QWidget::eventFilter(watched, event);
}

void HintLine::setReadout(const QString& readout) {
    m_readout->setText(readout);
}

Notice::Notice(QWidget* parent)
    : QWidget(parent), m_grid(new QGridLayout(this)), m_answers(new QWidget), m_mark(new QLabel),
      m_line(lineLabel(QStringLiteral("noticeText"))), m_close(new QToolButton) {
    setObjectName(QStringLiteral("notice"));
    m_grid->setContentsMargins(14, 4, 8, 4);
    m_grid->setHorizontalSpacing(8);
    m_grid->setVerticalSpacing(0);
    auto* row = new QHBoxLayout(m_answers);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    for (int i = 0; i < 2; ++i) {
        auto* offer = linkButton({}, QStringLiteral("noticeOffer%1").arg(i));
        connect(offer, &QPushButton::clicked, this, [this, i] {
            const auto take = shown().offers.at(i).take; // a copy: taking it may say something else
            dismiss();
            take();
        });
        m_offers << offer;
        row->addWidget(offer);
    }
    m_grid->addWidget(m_mark, 0, 0);
    m_grid->addWidget(m_line, 0, 1);
    m_grid->addWidget(m_answers, 0, 2);
    m_grid->addWidget(m_close, 0, 3);
    m_grid->setColumnStretch(1, 1);
    m_line->setWordWrap(true);
    m_line->setForegroundRole(QPalette::BrightText);
    m_line->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_close->setObjectName(QStringLiteral("noticeClose"));
    m_close->setAccessibleName(tr("Dismiss"));
    m_close->setToolTip(tr("Dismiss"));
    m_close->setAutoRaise(true);
    const int side = std::max(26, targetSide());
    m_close->setMinimumSize(side, side);
    connect(m_close, &QToolButton::clicked, this, [this] { dismiss(); });
    hide();
}

void Notice::ask(const QString& line, const QList<Offer>& offers) {
    m_said = {line, offers};
    showNow();
}

void Notice::offer(const QString& line, const QList<Offer>& offers) {
    m_waiting = {line, offers};
    showNow();
}

void Notice::dismiss() {
    (m_said.line.isEmpty() ? m_waiting : m_said) = {};
    showNow();
}

void Notice::showNow() {
    const Said& now = shown();
    const bool isNew = m_line->text() != now.line || isHidden();
    m_line->setText(now.line);
    for (qsizetype i = 0; i < m_offers.size(); ++i) {
        m_offers[i]->setVisible(i < now.offers.size());
        m_offers[i]->setText(i < now.offers.size() ? now.offers[i].title : QString());
        m_offers[i]->updateGeometry();
    }
    m_answers->setVisible(!now.offers.isEmpty());
    arrange();
    setVisible(!now.line.isEmpty());
    if (isVisible() && (isNew || !m_said.line.isEmpty())) {
        emit told(now.line);
    }
}

/// The offers stand beside the line as long as that takes no more than three rows, else below it.
void Notice::arrange() {
    constexpr int kMostRows = 3;
    const QMargins margins = m_grid->contentsMargins();
    const int others = m_mark->sizeHint().width() + m_close->sizeHint().width() +
                       m_answers->sizeHint().width() + margins.left() + margins.right() +
                       3 * m_grid->horizontalSpacing();
    const QFontMetrics metrics(m_line->font());
    const bool fits = metrics.horizontalAdvance(m_line->text()) <= kMostRows * (width() - others);
    int row = 0, column = 0, rows = 0, columns = 0;
    m_grid->getItemPosition(m_grid->indexOf(m_answers), &row, &column, &rows, &columns);
    if ((row == 0) == fits)
        return;
    m_grid->removeWidget(m_answers);
    if (fits)
        m_grid->addWidget(m_answers, 0, 2);
    else
        m_grid->addWidget(m_answers, 1, 1, 1, 2, Qt::AlignLeft);
}

void Notice::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void Notice::setTheme(const Theme& theme) {
    m_mark->setPixmap(tintedIcon(QStringLiteral("caution"), theme.warning, 18, devicePixelRatioF()));
    m_close->setIcon(QIcon(tintedIcon(QStringLiteral("close"), theme.ink, 16, devicePixelRatioF())));
}

} // namespace tailpoint
