// SPDX-License-Identifier: MIT
// The half of the program that has windows or measures letters: tailpoint-gui.so, loaded when it is asked
// for. To load Qt's libraries for windows takes longer than a whole report without them.
#pragma once

#include "ui/files/result.h"
#include "ui/handout/handout_choice.h"

#include <QByteArray>
#include <QCoreApplication>
#include <memory>
#include <variant>

namespace tailpoint {

/// Its doors. A verb returns the exit status and has said why.
struct Gui {
    const char* version; ///< of the program that it is a half of

    int (*window)(int argc, char** argv);
    int (*figure)(int argc, char** argv);
    int (*mark)(int argc, char** argv);
    int (*sweep)(int argc, char** argv);
    int (*problems)(int argc, char** argv);

    /// Of a process that measures letters, without a display; or the status where there is no font.
    std::variant<std::unique_ptr<QCoreApplication>, int> (*lettersApplication)(int& argc, char** argv);
    QByteArray (*handoutHtml)(const Result& result, const HandoutChoice& choice);
    QByteArray (*handoutLatex)(const Result& result, const HandoutChoice& choice);
};

/// nullptr, its line said: it is not beside the program, can't be loaded, or is of another version.
const Gui* gui();

} // namespace tailpoint
