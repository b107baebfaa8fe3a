// SPDX-License-Identifier: MIT
#include "ui/window/changed_file.h"

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/window/lines.h"
#include "ui/window/loss_question.h"

#include <QEvent>
#include <QFileInfo>
#include <QLocale>
#include <QMainWindow>
#include <QPushButton>

namespace tailpoint {

namespace {

/// "raft.json was changed by another program, 11/28/26 6:20 PM."
QString changeWords(const OpenFile& file) {
    const QString when = QLocale().toString(file.changedAt(), QLocale::ShortFormat);
    return ChangedFile::tr("%1 was changed by another program, %2.")
        .arg(QFileInfo(file.path()).fileName(), when);
}

} // namespace

ChangedFile::ChangedFile(const WindowParts& parts, std::function<bool()> saveBeside)
    : QObject(&parts.window), m_parts(parts), m_saveBeside(std::move(saveBeside)) {
    parts.window.installEventFilter(this);
}

bool ChangedFile::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::WindowActivate && watched == &m_parts.window)
        tell();
    return QObject::eventFilter(watched, event);
}

/// Once for each change, and never in the place of another question.
void ChangedFile::tell() {
    OpenFile& file = m_parts.document.file();
    if (m_parts.notice.isAsking() || file.now() != OpenFile::Now::changed)
        return;
    const QByteArray change = file.path().toUtf8() + file.changedAt().toString(Qt::ISODateWithMs).toUtf8();
    if (change == std::exchange(m_told, change))
        return;
    QList<Notice::Offer> offers{{tr("&Reload it"), [this] { reload(); }}};
    if (m_parts.document.isModified())
        offers.append({tr("Save mine &beside it\u2026"), [this] { m_saveBeside(); }});
    m_parts.notice.ask(changeWords(file), offers);
}

void ChangedFile::reload() {
    if (const auto error = m_parts.document.reload()) {
        m_parts.notice.say(tr("Not reloaded \u2013 %1: %2")
                               .arg(QFileInfo(m_parts.document.path()).fileName(), error->line()));
        return;
    }
    m_parts.notice.say({});
    m_parts.canvas.fit();
    m_parts.hints.setHint(tr("Reloaded. Undo brings back what was here."));
}

ChangedFile::Answer ChangedFile::mayBeSaved() {
    const OpenFile::Now now = m_parts.document.file().now();
    if (now != OpenFile::Now::changed)
        return Answer::save;
    LossQuestion box(&m_parts.window, "changedQuestion", tr("Changed on the disk"),
                     changeWords(m_parts.document.file()));
    box.setInformativeText(tr("Saving the open sketch under that name would replace those changes."));
    auto* reloading = box.add(tr("Re&load it"), QMessageBox::ActionRole, "reloadFile");
    auto* replace = box.add(tr("&Replace it"), QMessageBox::DestructiveRole, "replaceChanged");
    auto* beside = box.add(tr("Save &beside it\u2026"), QMessageBox::AcceptRole, "saveBeside");
    const QAbstractButton* answer = box.ask(beside);
    if (answer == replace)
        return Answer::save;
    if (answer == beside)
        return m_saveBeside() ? Answer::settled : Answer::stay;
    if (answer == reloading)
        reload();
    return Answer::stay;
}

} // namespace tailpoint
