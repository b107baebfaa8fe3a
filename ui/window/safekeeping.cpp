#include "ui/window/safekeeping.h"

#include "ui/document/recovery.h"
#include "ui/window/lines.h"

#include <QFileInfo>
#include <QLocale>

namespace tailpoint {

namespace {

QString nameOf(const Recovery& recovery) {
    return recovery.path.isEmpty() ? QString::fromStdString(recovery.sketch.title)
                                   : QFileInfo(recovery.path).fileName();
}

} // namespace

Safekeeping::Safekeeping(const Parts& parts, std::function<bool()> mayLoseChanges)
    : m_parts(parts), m_mayLoseChanges(std::move(mayLoseChanges)),
      m_autosave(std::make_unique<Autosave>(parts.document)) {
    offerNext();
}

Safekeeping::~Safekeeping() = default;

/// The newest copy whose owner is gone; the next one once this one is settled.
void Safekeeping::offerNext() {
    const QList<Recovery> found = findRecoveries();
    if (found.isEmpty()) {
        return;
    }
    const Recovery& newest = found.front();
    const QString when = QLocale().toString(newest.saved.toLocalTime(), QLocale::ShortFormat);
    const auto bringBack = [this, newest] {
        if (m_mayLoseChanges()) {
            m_parts.document.restore(newest.sketch, newest.path);
            discard(newest);
        }
        offerNext();
    };
    const auto throwAway = [this, newest] {
        discard(newest);
        offerNext();
    };
    m_parts.notice.ask(tr("Work that was not saved: %1, %2.").arg(nameOf(newest), when),
                       {{tr("Bring it back"), bringBack}, {tr("Throw it away"), throwAway}});
}

} // namespace tailpoint
