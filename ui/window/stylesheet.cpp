// SPDX-License-Identifier: MIT
#include "ui/window/stylesheet.h"

#include "ui/style/palette.h"

namespace tailpoint {

QString styleSheetOf(const Theme& theme) {
    QString sheet = QStringLiteral(R"(
QMenuBar { background: @bar; color: @ink; padding: 2px 6px; border: none; border-bottom: 1px solid @hairline; }
QMenuBar::item { background: transparent; padding: 4px 9px; border-radius: 3px; }
QMenuBar::item:selected { background: @accent; }
QMenu { background: @panel; color: @ink; border: 1px solid @hairline; padding: 4px 0; }
QMenu::item { padding: 5px 28px 5px 26px; }
QMenu::item:selected { background: @accent; }
QMenu::item:disabled { color: @disabled; }
QMenu::separator { height: 1px; background: @hairline; margin: 4px 0; }
QMenu::indicator { width: 14px; height: 14px; left: 6px; }
QToolTip { background: @panel; color: @ink; border: 1px solid @hairline; padding: 3px; }
QSplitter::handle { background: @hairline; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }
QScrollBar::handle:vertical { background: @hairline; border-radius: 3px; min-height: 28px; margin: 2px; }
QScrollBar::handle:vertical:hover { background: @construction; }
QScrollBar::add-line, QScrollBar::sub-line { height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QPushButton { background: @panel; color: @ink; border: 1px solid @hairline; border-radius: 4px; padding: 4px 14px; min-height: 18px; min-width: 52px; }
QPrintDialog QPushButton#properties { padding: 4px 6px; min-width: 76px; }
QPushButton:hover, QPushButton:pressed { background: @accent; }
QPushButton:default { border-color: @given; }
QPushButton:focus { border: 2px solid @ink; padding: 3px 13px; }
QCheckBox::indicator, QListWidget::indicator { width: 12px; height: 12px; border: 1px solid @construction; border-radius: 2px; background: @panel; }
QCheckBox::indicator:checked, QListWidget::indicator:checked { background: @given; border-color: @given; image: url(:/icons/tick-@tick.svg); }
QCheckBox::indicator:disabled { border-color: @hairline; }
QCheckBox::indicator:checked:disabled { background: @hairline; }
QCheckBox:focus { text-decoration: underline; }
QDialog QLineEdit { background: @panel; color: @ink; border: 1px solid @construction; border-radius: 3px; padding: 3px 6px; }
QDialog QLineEdit:focus { border-color: @given; }
QTabBar#caseTabs::tab { background: transparent; color: @ink; border: 1px solid transparent; border-bottom: 2px solid transparent; border-radius: 3px; padding: 4px 10px; margin-right: 2px; }
QTabBar#caseTabs::tab:hover { background: @accent; }
QTabBar#caseTabs::tab:selected { background: @accent; border-bottom: 2px solid @given; }
QTabBar#caseTabs::tab:selected:focus { border: 1px solid @ink; border-bottom: 2px solid @given; }
QListWidget#practiceList { background: @panel; border: 1px solid @hairline; }
QListWidget#practiceList::item { color: @ink; padding: 3px 0; }
QListWidget#practiceList::item:selected { background: @accent; }
QWidget#ownAnswer QLineEdit, QWidget#lineExercise QLineEdit { background: @panel; color: @ink; border: 1px solid @construction; border-radius: 3px; padding: 3px 5px; }
QWidget#ownAnswer QLineEdit:focus, QWidget#lineExercise QLineEdit:focus { border: 2px solid @given; padding: 2px 4px; }
QLineEdit#cellField { background: @panel; color: @ink; border: none; border-bottom: 2px solid @given; padding: 0 5px; }
)");
    const std::pair<const char*, QColor> colours[]{{"@bar", theme.bar},
                                                   {"@ink", theme.ink},
                                                   {"@hairline", theme.hairline},
                                                   {"@accent", theme.accentGround},
                                                   {"@panel", theme.panel},
                                                   {"@disabled", disabledInk(theme)},
                                                   {"@construction", theme.construction},
                                                   {"@given", theme.given}};
    sheet.replace(QLatin1String("@tick"),
                  theme.given.lightnessF() < 0.5F ? QStringLiteral("light") : QStringLiteral("dark"));
    for (const auto& [name, colour] : colours) {
        sheet.replace(QLatin1String(name), colour.name());
    }
    return sheet;
}

} // namespace tailpoint
