// SPDX-License-Identifier: MIT
#include "ui/window/unsaved_work.h"

#include "ui/document/recovery.h"
#include "ui/window/lines.h"
#include "ui/window/recover_dialog.h"

#include <QFileInfo>
#include <QMainWindow>
#include <utility>

namespace tailpoint {

namespace {

/// Copies that say nothing of the file they belong to: whatever is older than they are was known.
QByteArray knownBytes(const Recovery& recovery) {
    const QFileInfo file(recovery.path);
    if (!recovery.known.isEmpty() || recovery.path.isEmpty() || !file.exists())
        return recovery.known;
    const auto bytes = readBytes(recovery.path);
    const bool isNewer = file.lastModified() > recovery.saved || !std::holds_alternative<QByteArray>(bytes);
    return digestOf(isNewer ? QByteArray() : std::get<QByteArray>(bytes));
}

} // namespace

UnsavedWork::UnsavedWork(const WindowParts& parts, std::function<bool()> mayLoseChanges)
    : m_parts(parts), m_mayLoseChanges(std::move(mayLoseChanges)),
      m_autosave(std::make_unique<Autosave>(parts.document)) {
    connect(m_autosave.get(), &Autosave::failed, this, [this, said = false](const QString& why) mutable {
        if (std::exchange(said, true))
            return;
        const QString line =
            tr("No copy of unsaved work can be kept for a crash, so save often \u2013 %1").arg(why);
        m_parts.notice.isAsking() ? m_parts.hints.setHint(line) : m_parts.notice.say(line);
    });
    sweepRecoveries();
    offerNext();
}

UnsavedWork::~UnsavedWork() = default;

/// The newest copy whose owner is gone; the next one once this one is settled.
void UnsavedWork::offerNext() {
    const QList<Recovery> found = findRecoveries();
    if (found.isEmpty() || !found.front().holder.isEmpty())
        return m_parts.notice.offer({}, {});
    const Recovery newest = found.front();
    QString line = tr("Work that was not saved: %1, %2.").arg(nameOf(newest), timeWords(newest.saved)) +
                   comparedWithFile(newest);
    if (found.size() > 1)
        line += tr(" More is in File \u203a Recover.");
    m_parts.notice.offer(line, {{tr("&Bring it back"),
                                 [this, newest] {
                                     bringBack(newest);
                                     offerNext();
                                 }},
                                {tr("Throw it &away"), [this, newest] {
                                     throwAway(newest);
                                     offerNext();
                                 }}});
}

void UnsavedWork::bringBack(const Recovery& recovery) {
    if (!m_mayLoseChanges())
        return;
    m_parts.document.restore(recovery.sketch, recovery.path, knownBytes(recovery));
    m_autosave->takeOver(recovery);
}

void UnsavedWork::throwAway(const Recovery& recovery) {
    discard(recovery);
}

void UnsavedWork::choose() {
    for (;;) {
        const QList<Recovery> found = findRecoveries();
        RecoverDialog dialog(found, &m_parts.window);
        const RecoverDialog::Answer answer = dialog.ask();
        if (answer == RecoverDialog::Answer::nothing || dialog.row() < 0)
            return;
        const Recovery& chosen = found.at(dialog.row());
        if (answer == RecoverDialog::Answer::bringBack)
            bringBack(chosen);
        else
            throwAway(chosen);
        offerNext();
        if (answer == RecoverDialog::Answer::bringBack)
            return;
    }
}

void UnsavedWork::keep() {
    m_autosave->flush();
}

void UnsavedWork::leave() {
    m_autosave->leave();
}

} // namespace tailpoint
