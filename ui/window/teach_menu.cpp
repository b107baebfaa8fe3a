#include "ui/window/teach_menu.h"

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/lecture/lecture_view.h"
#include "ui/lecture/movement.h"
#include "ui/lecture/screens.h"
#include "ui/panel/panel.h"
#include "ui/window/menu_tools.h"
#include "ui/window/settings.h"

#include <QMainWindow>
#include <QScreen>

namespace tailpoint {

TeachMenu::TeachMenu(const WindowParts& parts, QMenu* menu) : QObject(menu), m_parts(parts) {
    lecture = addCommand(menu, {"lecture", tr("&Lecture view"), QKeySequence(Qt::Key_F5)},
                         [this] { beginLecture(); });
    lecture->setIconText(tr("Lecture"));
    lecture->setToolTip(tr("Reveal the solution step by step on a full screen (F5)"));
}

TeachMenu::~TeachMenu() = default;

void TeachMenu::beginLecture() {
    if (!m_view) {
        Settings& settings = m_parts.settings;
        const auto chosen = settings.lectureMoves();
        m_view = std::make_unique<LectureView>(settings.lectureTheme(), chosen ? *chosen : desktopMoves());
        connect(m_view.get(), &LectureView::themeChosen, this,
                [this](ThemeName name) { m_parts.settings.setLectureTheme(name); });
        connect(m_view.get(), &LectureView::movesChosen, this,
                [this](bool on) { m_parts.settings.setLectureMoves(on); });
        connect(m_view.get(), &LectureView::ended, this, [this] {
            m_parts.window.activateWindow(); // where the keys were before is where they are again
            m_parts.window.raise();
        });
    }
    ExplainOptions options;
    options.handRounding = m_parts.panel.handRounding(); // the same numbers as beside the sheet
    options.method = m_parts.panel.method();
    options.parallelograms = m_parts.panel.byParallelograms();
    m_view->begin(m_parts.document.result(), m_parts.canvas.construction(), options,
                  screenForLecture(m_parts.window.screen()));
}

} // namespace tailpoint
