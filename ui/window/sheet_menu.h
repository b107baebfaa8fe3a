// SPDX-License-Identifier: MIT
// Sheet: units, axis, digits, construction, view and theme.
#pragma once

#include "ui/style/theme.h"
#include "ui/window/window_parts.h"

#include "core/figure/compose.h"

#include <QObject>
#include <functional>

class QAction;
class QActionGroup;
class QMenu;

namespace tailpoint {

enum class UnitOf;

class SheetMenu : public QObject {
    Q_OBJECT
public:
    SheetMenu(const WindowParts& parts, QMenu* menu);

    // For the bar, which shows the same commands.
    QAction *parallelogram, *triangle, *polygon, *otherHalf, *marks, *snap, *fit;

    /// The choice of that unit, at a place on the screen.
    void askUnit(UnitOf of, QPoint at);

signals:
    void themeChosen(tailpoint::ThemeName name);

private:
    void addUnits(QMenu* menu);
    void addAxis(QMenu* menu);
    void addDigits(QMenu* menu);
    void addGravity(QMenu* menu);
    void addNewSheets(QMenu* menu);
    void askGravity();
    void addConstruction(QMenu* menu);
    void addView(QMenu* menu);
    void addCaution(QMenu* menu);
    void addThemes(QMenu* menu);
    /// One choice of several; `chosen` says whether it is the present one, asked whenever the menu opens.
    QAction* addChoice(QMenu* menu, QActionGroup* group, const QString& name, const QString& title,
                       std::function<bool()> chosen, std::function<void()> choose);
    QAction* addKind(QMenu* menu, QActionGroup* group, const char* name, const QString& title,
                     ConstructionKind kind);
    void apply(const Sketch& after, const QString& step);
    void applyWhole(const Sketch& after, const QString& step);
    void showConstruction();
    void setReference(const Reference& reference);

    WindowParts m_parts;
    QMenu *m_forceUnits, *m_angleUnits;
};

QString nameOf(ConstructionKind kind);
ConstructionKind constructionFrom(const QString& name); ///< parallelogram for a name that is none

} // namespace tailpoint
