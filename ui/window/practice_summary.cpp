// SPDX-License-Identifier: MIT
#include "ui/window/practice_summary.h"

#include "ui/practice/how_it_went.h"
#include "ui/practice/sitting.h"
#include "ui/window/dialog_frame.h"
#include "ui/window/dialog_size.h"
#include "ui/window/loss_question.h"
#include "ui/window/settings.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

namespace tailpoint {

namespace {

constexpr QSize kSummarySize(560, 440);

QString listed(const QString& title, const QStringList& lines) {
    return lines.isEmpty() ? QString()
                           : title + u'\n' + QStringLiteral("  ") + lines.join(QStringLiteral("\n  "));
}

} // namespace

PracticeSummary::PracticeSummary(Sitting& sitting, Settings& settings, QWidget* parent)
    : QDialog(parent), m_sitting(sitting), m_settings(settings), m_words(new QPlainTextEdit),
      m_keep(new QCheckBox(tr("&Keep the record on this computer"))), m_where(new QLabel),
      m_fault(new QLabel), m_forget(nullptr) {
    setObjectName(QStringLiteral("practiceSummary"));
    setWindowTitle(tr("How it went"));
    build();
    resize(withinScreen(*this, kSummarySize));
}

void PracticeSummary::build() {
    m_words->setObjectName(QStringLiteral("summaryWords"));
    m_words->setAccessibleName(tr("How it went"));
    m_words->setReadOnly(true);
    m_words->setTabChangesFocus(true);
    m_words->setFrameShape(QFrame::NoFrame);
    m_keep->setObjectName(QStringLiteral("keepRecord"));
    m_where->setObjectName(QStringLiteral("recordFile"));
    m_where->setWordWrap(true);
    m_where->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_where->setForegroundRole(QPalette::PlaceholderText);
    m_fault->setObjectName(QStringLiteral("recordFault"));
    m_fault->setForegroundRole(QPalette::BrightText);
    m_fault->setWordWrap(true);
    auto* buttons = new QDialogButtonBox;
    m_forget = buttons->addButton(tr("&Forget it all\u2026"), QDialogButtonBox::ResetRole);
    m_forget->setObjectName(QStringLiteral("forgetRecord"));
    m_forget->setAutoDefault(false);
    buttons->addButton(QDialogButtonBox::Close);
    frameDialog(*this, {m_words, m_keep, m_where, m_fault}, buttons);
    connect(m_keep, &QCheckBox::clicked, this, &PracticeSummary::keep);
    connect(m_forget, &QPushButton::clicked, this, &PracticeSummary::forget);
}

void PracticeSummary::ask() {
    m_fault->clear();
    refresh();
    open();
}

void PracticeSummary::refresh() {
    const HowItWent went = howItWent(m_sitting.record(), m_sitting.number());
    QStringList parts{went.count};
    for (const QString& part :
         {listed(tr("Slips that went away:"), went.gone), listed(tr("Slips that are left:"), went.left),
          listed(tr("In this sitting:"), went.asked), listed(tr("Earlier sittings:"), went.earlier)})
        if (!part.isEmpty())
            parts << part;
    m_words->setPlainText(parts.join(QStringLiteral("\n\n")));
    m_keep->setChecked(m_sitting.isKept());
    const QString file = QDir::toNativeSeparators(m_sitting.file());
    m_where->setText(
        m_sitting.isKept()
            ? tr("It is in %1. Nothing leaves this computer; switched off, the file goes.").arg(file)
            : tr("Now it is forgotten when the window is closed. It would be kept in %1; "
                 "nothing leaves this computer.")
                  .arg(file));
    if (const auto& fault = m_sitting.fault())
        m_fault->setText(fault->line());
    m_fault->setVisible(!m_fault->text().isEmpty());
    m_forget->setEnabled(m_sitting.isKept() || !m_sitting.record().entries.empty());
}

void PracticeSummary::keep(bool on) {
    const auto fault = m_sitting.keep(on);
    m_fault->setText(fault ? fault->line() : QString());
    if (!fault)
        m_settings.setKeepsPractice(on);
    refresh();
}

void PracticeSummary::forget() {
    LossQuestion question(this, "forgetQuestion", tr("Forget it all"),
                          tr("The record of this sitting and of all earlier ones is deleted."));
    QPushButton* forgets = question.add(tr("&Forget it"), QMessageBox::DestructiveRole, "forgetIt");
    if (question.ask() != forgets)
        return;
    const auto fault = m_sitting.forget();
    m_fault->setText(fault ? fault->line() : QString());
    refresh();
}

} // namespace tailpoint
