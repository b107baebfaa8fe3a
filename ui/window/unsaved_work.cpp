#include "ui/window/unsaved_work.h"

#include "ui/document/recovery.h"
#include "ui/window/lines.h"

#include <QFileInfo>
#include <QLocale>
#include <algorithm>

namespace tailpoint {

namespace {

/// "P, Q, ...": what tells one sketch without a title from another.
QString forcesOf(const Sketch& sketch) {
    constexpr std::size_t most = 4;
    QStringList names;
    for (std::size_t i = 0; i < std::min(most, sketch.forces.size()); ++i)
        names << QString::fromStdString(sketch.forces[i].name);
    return names.join(QStringLiteral(", ")) +
           (sketch.forces.size() > most ? QStringLiteral(", …") : QString());
}

/// Its title and, in brackets, its file.
QString nameOf(const Recovery& recovery) {
    constexpr qsizetype longest = 60;
    QString title = QString::fromStdString(recovery.sketch.title);
    if (title.size() > longest)
        title = title.left(longest) + QChar(0x2026);
    const QString file = QFileInfo(recovery.path).fileName();
    if (title.isEmpty() && file.isEmpty())
        return recovery.sketch.forces.empty()
                   ? UnsavedWork::tr("a sketch without a title")
                   : UnsavedWork::tr("a sketch without a title (%1)").arg(forcesOf(recovery.sketch));
    if (title.isEmpty() || file.isEmpty())
        return title + file;
    return UnsavedWork::tr("%1 (%2)").arg(title, file);
}

QString timeWords(const QDateTime& when) {
    return QLocale().toString(when.toLocalTime(), QLocale::ShortFormat);
}

/// What stands under the copy's name on the disk, against the copy; empty: nothing to compare.
QString comparedWithFile(const Recovery& recovery) {
    if (recovery.path.isEmpty())
        return {};
    const QDateTime written = QFileInfo(recovery.path).lastModified();
    if (!written.isValid())
        return UnsavedWork::tr(" The file itself is not there any more.");
    return written > recovery.saved
               ? UnsavedWork::tr(" The file itself is newer: %1.").arg(timeWords(written))
               : UnsavedWork::tr(" It is newer than the file, which is of %1.").arg(timeWords(written));
}

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
    offerNext();
}

UnsavedWork::~UnsavedWork() = default;

/// The newest copy whose owner is gone; the next one once this one is settled.
void UnsavedWork::offerNext() {
    const QList<Recovery> found = findRecoveries();
    if (found.isEmpty()) {
        return;
    }
    const Recovery& newest = found.front();
    const auto bringBack = [this, newest] {
        if (m_mayLoseChanges()) {
            m_parts.document.restore(newest.sketch, newest.path, knownBytes(newest));
            m_autosave->takeOver(newest);
        }
        offerNext();
    };
    const auto throwAway = [this, newest] {
        discard(newest);
        offerNext();
    };
    const QString line = tr("Work that was not saved: %1, %2.").arg(nameOf(newest), timeWords(newest.saved)) +
                         comparedWithFile(newest);
    m_parts.notice.ask(line, {{tr("&Bring it back"), bringBack}, {tr("Throw it &away"), throwAway}});
}

} // namespace tailpoint
