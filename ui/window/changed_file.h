// SPDX-License-Identifier: MIT
// The open file was changed by another program: noticed when the window is turned to again and before it is
// saved, so that neither work replaces the other unseen.
#pragma once

#include "ui/window/window_parts.h"

#include <QObject>
#include <functional>

namespace tailpoint {

class ChangedFile : public QObject {
    Q_OBJECT
public:
    /// `saveBeside` asks for another name and saves the open sketch there. True: saved.
    ChangedFile(const WindowParts& parts, std::function<bool()> saveBeside);

    /// What to do about saving under the present name.
    enum class Answer { save, settled, stay };
    /// Asks where the file is another than the one that was opened or saved here. `settled`: the open sketch
    /// is on the disk, elsewhere. `stay`: nothing was saved.
    Answer mayBeSaved();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void tell();
    void reload();
    WindowParts m_parts;
    std::function<bool()> m_saveBeside;
    QByteArray m_told; ///< which change the line was about
};

} // namespace tailpoint
