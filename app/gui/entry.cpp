// SPDX-License-Identifier: MIT
#include "app/common.h"
#include "app/gui.h"
#include "app/gui/calls.h"
#include "ui/handout/handout_document.h"
#include "ui/render/fonts.h"

#include <QFontInfo>
#include <QGuiApplication>

namespace tailpoint {

std::optional<int> withoutFonts() {
    // One that is needed anyway, and loaded: the font database invents families where there is none.
    if (!QFontInfo(FontShelf::ofThread().font({}, Face::sans)).family().isEmpty())
        return std::nullopt;
    return complain(QStringLiteral("there is no font to write with; install one (fonts-dejavu-core, say)"));
}

std::variant<std::unique_ptr<QCoreApplication>, int> lettersApplication(int& argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen"); // a verb needs no display server
    std::unique_ptr<QCoreApplication> application = std::make_unique<QGuiApplication>(argc, argv);
    if (const auto status = withoutFonts())
        return *status;
    return application;
}

} // namespace tailpoint

extern "C" Q_DECL_EXPORT const tailpoint::Gui* tailpointGui() {
    using namespace tailpoint;
    static constexpr Gui part{TAILPOINT_VERSION, openWindow,         runFigure,   runMark,     runSweep,
                              runProblems,       lettersApplication, handoutHtml, handoutLatex};
    return &part;
}
