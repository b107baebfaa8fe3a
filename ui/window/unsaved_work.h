// SPDX-License-Identifier: MIT
// Unsaved work: kept on the disk while the window is open, offered again after a crash.
#pragma once

#include "ui/window/window_parts.h"

#include <QObject>
#include <functional>
#include <memory>

namespace tailpoint {

class Autosave;
struct Recovery;

/// Made after the first paint: looking for what a crash left must not delay the window.
class UnsavedWork : public QObject {
    Q_OBJECT
public:
    /// `mayLoseChanges` asks about what is open before it is replaced.
    UnsavedWork(const WindowParts& parts, std::function<bool()> mayLoseChanges);
    ~UnsavedWork() override;

    /// All that was left, to choose from: what was offered and not answered too.
    void choose();
    void keep(); ///< what is pending is on the disk when this returns
    /// The same, and it stays for the next start: the process ends and nobody can be asked.
    void leave();

private:
    void offerNext();
    void bringBack(const Recovery& recovery);
    void throwAway(const Recovery& recovery);
    WindowParts m_parts;
    std::function<bool()> m_mayLoseChanges;
    std::unique_ptr<Autosave> m_autosave;
};

} // namespace tailpoint
