// SPDX-License-Identifier: MIT
#include "ui/window/sheet_menu.h"

#include "core/explain/caution.h"
#include "core/quantity/decimals.h"
#include "core/quantity/typed.h"
#include "core/sketch/shown.h"
#include "ui/canvas/canvas.h"
#include "ui/document/sheet_edits.h"
#include "ui/document/sketch_document.h"
#include "ui/style/symbols.h"
#include "ui/window/lines.h"
#include "ui/window/menu_tools.h"
#include "ui/window/settings.h"
#include "ui/window/title_block_dialog.h"

#include <QInputDialog>
#include <QMainWindow>

namespace tailpoint {

namespace {

Numbers numbersOf(const Settings& settings) {
    return settings.keepsForces() ? Numbers::convert : Numbers::keep;
}

} // namespace

QString nameOf(ConstructionKind kind) {
    switch (kind) {
    case ConstructionKind::triangle:
        return QStringLiteral("triangle");
    case ConstructionKind::polygon:
        return QStringLiteral("polygon");
    case ConstructionKind::none:
        return QStringLiteral("none");
    case ConstructionKind::parallelogram:
        break;
    }
    return QStringLiteral("parallelogram");
}

ConstructionKind constructionFrom(const QString& name) {
    for (ConstructionKind kind :
         {ConstructionKind::triangle, ConstructionKind::polygon, ConstructionKind::none}) {
        if (name == nameOf(kind)) {
            return kind;
        }
    }
    return ConstructionKind::parallelogram;
}

SheetMenu::SheetMenu(const WindowParts& parts, QMenu* menu) : QObject(menu), m_parts(parts) {
    addUnits(menu);
    addAxis(menu);
    addDigits(menu);
    addGravity(menu);
    addNewSheets(menu);
    addSwitch(menu, {"keepForces", tr("Units and axis &keep the forces")}, [this](bool on) {
        m_parts.settings.setKeepsForces(on);
        m_parts.canvas.setKeepsForces(on);
    })->setChecked(m_parts.settings.keepsForces());
    addCommand(menu, {"sheetTitle", tr("Edit the &title…")}, [this] { m_parts.canvas.editTitle(); });
    addCommand(menu, {"titleBlock", tr("Title &block…")},
               [this] { (new TitleBlockDialog(m_parts.document, &m_parts.window))->open(); });
    addCaution(menu);
    menu->addSeparator();
    addConstruction(menu);
    menu->addSeparator();
    addView(menu);
    menu->addSeparator();
    addThemes(menu);
    connect(&m_parts.canvas, &Canvas::constructionChanged, this, &SheetMenu::showConstruction);
    connect(&m_parts.document, &SketchDocument::changed, this, &SheetMenu::showConstruction);
    showConstruction();
}

/// A scene of lifting, towing or anchoring asks for the caution by itself: then it can't be switched off.
void SheetMenu::addCaution(QMenu* menu) {
    QAction* caution =
        addSwitch(menu, {"caution", tr("&Lifting, towing or anchoring: show the caution")}, [this](bool on) {
            Sketch after = m_parts.document.sketch();
            after.caution = on;
            m_parts.document.edit(after, on ? tr("Show the caution") : tr("Leave out the caution"));
        });
    connect(menu, &QMenu::aboutToShow, caution, [this, caution] {
        const Sketch& sketch = m_parts.document.sketch();
        caution->setChecked(needsCaution(sketch));
        caution->setEnabled(!sceneAsksCaution(sketch));
    });
}

QAction* SheetMenu::addChoice(QMenu* menu, QActionGroup* group, const QString& name, const QString& title,
                              std::function<bool()> chosen, std::function<void()> choose) {
    QAction* action = menu->addAction(title, this, std::move(choose));
    action->setObjectName(name);
    action->setCheckable(true);
    group->addAction(action);
    connect(menu, &QMenu::aboutToShow, action,
            [action, is = std::move(chosen)] { action->setChecked(is()); });
    return action;
}

void SheetMenu::apply(const Sketch& after, const QString& step) {
    if (const auto fault = m_parts.document.edit(after, step)) {
        m_parts.notice.say(text(fault->message));
    }
}

/// Of the sketch with its cases: they have the same units, axis and g.
void SheetMenu::applyWhole(const Sketch& after, const QString& step) {
    if (const auto fault = m_parts.document.editWhole(after, step)) {
        m_parts.notice.say(text(fault->message));
    }
}

void SheetMenu::addUnits(QMenu* menu) {
    QMenu* forces = m_forceUnits = menu->addMenu(tr("&Force unit"));
    auto* forceGroup = new QActionGroup(forces);
    for (ForceUnit unit : kSheetForceUnits) {
        const QString symbol = text(symbolOf(unit));
        addChoice(
            forces, forceGroup, QStringLiteral("unit-") + symbol, symbol,
            [this, unit] { return m_parts.document.sketch().forceUnit == unit; },
            [this, unit, symbol] {
                applyWhole(withForceUnit(m_parts.document.whole(), unit, numbersOf(m_parts.settings)),
                           tr("Forces in %1").arg(symbol));
                m_parts.canvas.fit();
            });
    }
    QMenu* angles = m_angleUnits = menu->addMenu(tr("&Angle unit"));
    auto* angleGroup = new QActionGroup(angles);
    const QString titles[]{tr("degrees"), tr("radians"), tr("gon")};
    for (AngleUnit unit : kAngleUnits) {
        const QString title = titles[static_cast<int>(unit)];
        addChoice(
            angles, angleGroup, QStringLiteral("angle-") + text(nameOf(unit)), title,
            [this, unit] { return m_parts.document.sketch().angleUnit == unit; },
            [this, unit, title] {
                applyWhole(withAngleUnit(m_parts.document.whole(), unit, numbersOf(m_parts.settings)),
                           tr("Angles in %1").arg(title));
            });
    }
}

void SheetMenu::askUnit(UnitOf of, QPoint at) {
    (of == UnitOf::force ? m_forceUnits : m_angleUnits)->popup(at);
}

/// What is chosen for one sheet is that sheet's own; a new one takes it over only if that is asked for.
void SheetMenu::addNewSheets(QMenu* menu) {
    QAction* like =
        addCommand(menu, {"newSheetsLikeThis", tr("Begin &new sheets with these units and digits")}, [this] {
            m_parts.settings.setNewSketch(m_parts.document.sketch());
            const Sketch& sketch = m_parts.document.sketch();
            m_parts.notice.say(tr("New sheets begin in %1, with %2 significant figures.")
                                   .arg(text(symbolOf(sketch.forceUnit)))
                                   .arg(sketch.figures));
        });
    connect(menu, &QMenu::aboutToShow, like,
            [this, like] { like->setEnabled(!m_parts.settings.beginsLike(m_parts.document.sketch())); });
}

void SheetMenu::setReference(const Reference& reference) {
    applyWhole(withReference(m_parts.document.whole(), reference, numbersOf(m_parts.settings)),
               tr("Change the axis"));
}

void SheetMenu::addAxis(QMenu* menu) {
    QMenu* axes = menu->addMenu(tr("&Reference axis"));
    auto* axisGroup = new QActionGroup(axes);
    for (double degrees : {0.0, 90.0, 180.0, 270.0}) {
        const QString title = onScreen(axisName({degrees, Sense::ccw}));
        const QString name = QStringLiteral("axis-") + text(axisName({degrees, Sense::ccw}));
        addChoice(
            axes, axisGroup, name, title,
            [this, degrees] { return m_parts.document.sketch().reference.axisDegrees == degrees; },
            [this, degrees] {
                setReference({degrees, m_parts.document.sketch().reference.sense});
            });
    }
    addCommand(axes, {"axisOther", tr("Another axis…")}, [this] { m_parts.canvas.editReference(); });
    axes->addSeparator();
    auto* senseGroup = new QActionGroup(axes);
    for (Sense sense : {Sense::ccw, Sense::cw}) {
        const bool ccw = sense == Sense::ccw;
        addChoice(
            axes, senseGroup, ccw ? QStringLiteral("sense-ccw") : QStringLiteral("sense-cw"),
            ccw ? tr("counter-clockwise") : tr("clockwise"),
            [this, sense] { return m_parts.document.sketch().reference.sense == sense; },
            [this, sense] {
                setReference({m_parts.document.sketch().reference.axisDegrees, sense});
            });
    }
}

void SheetMenu::addDigits(QMenu* menu) {
    QMenu* figures = menu->addMenu(tr("&Significant figures"));
    auto* figureGroup = new QActionGroup(figures);
    for (int count = 2; count <= 6; ++count) {
        addChoice(
            figures, figureGroup, QStringLiteral("figures-%1").arg(count), QString::number(count),
            [this, count] { return m_parts.document.sketch().figures == count; },
            [this, count] {
                Sketch after = m_parts.document.sketch();
                after.figures = count;
                apply(after, tr("Show %1 figures").arg(count));
            });
    }
    figures->addSeparator();
    QAction* more =
        addSwitch(figures, {"moreAfterOne", tr("&One more where the first digit is 1")}, [this](bool on) {
            Sketch after = m_parts.document.sketch();
            after.moreAfterOne = on;
            apply(after, on ? tr("Show one figure more after a 1") : tr("Show the same figures after a 1"));
        });
    connect(figures, &QMenu::aboutToShow, more,
            [this, more] { more->setChecked(m_parts.document.sketch().moreAfterOne); });
    QMenu* decimals = menu->addMenu(tr("&Decimals of angles"));
    auto* decimalGroup = new QActionGroup(decimals);
    for (int count = 0; count <= 4; ++count) {
        addChoice(
            decimals, decimalGroup, QStringLiteral("decimals-%1").arg(count), QString::number(count),
            [this, count] { return m_parts.document.sketch().angleDecimals == count; },
            [this, count] {
                Sketch after = m_parts.document.sketch();
                after.angleDecimals = count;
                apply(after, tr("Show angles with %1 decimals").arg(count));
            });
    }
}

/// What a mass weighs: the standard g, and those that are usual in class.
void SheetMenu::addGravity(QMenu* menu) {
    QMenu* values = menu->addMenu(tr("&g, for the weight of a mass"));
    auto* group = new QActionGroup(values);
    static constexpr double kUsual[]{kStandardGravity, 9.81, 9.8};
    const auto now = [this] { return m_parts.document.sketch().gravity; };
    for (const double g : kUsual) {
        const QString shown = tr("%1 m/s²").arg(text(shortest(g)));
        addChoice(
            values, group, QStringLiteral("gravity-") + text(shortest(g)),
            g == kStandardGravity ? tr("%1 (standard)").arg(shown) : shown, [now, g] { return now() == g; },
            [this, g, shown] {
                applyWhole(withGravity(m_parts.document.whole(), g), tr("g = %1").arg(shown));
            });
    }
    addChoice(
        values, group, QStringLiteral("gravity-other"), tr("Another…"),
        [now] { return std::find(std::begin(kUsual), std::end(kUsual), now()) == std::end(kUsual); },
        [this] { askGravity(); });
}

void SheetMenu::askGravity() {
    auto* ask = new QInputDialog(&m_parts.canvas);
    ask->setObjectName(QStringLiteral("gravityDialog"));
    ask->setAttribute(Qt::WA_DeleteOnClose);
    ask->setWindowTitle(tr("Weight of a mass"));
    ask->setLabelText(tr("g in m/s²"));
    ask->setTextValue(text(shortest(m_parts.document.sketch().gravity)));
    connect(ask, &QInputDialog::textValueSelected, this, [this](const QString& typed) {
        const auto g = parseNumber(typed.trimmed().toStdString());
        if (const auto* error = std::get_if<TypedError>(&g)) {
            m_parts.notice.say(text(error->message));
            return;
        }
        const double value = std::get<double>(g);
        applyWhole(withGravity(m_parts.document.whole(), value),
                   tr("g = %1 m/s²").arg(text(shortest(value))));
    });
    ask->open();
}

QAction* SheetMenu::addKind(QMenu* menu, QActionGroup* group, const char* name, const QString& title,
                            ConstructionKind kind) {
    QAction* action = addSwitch(menu, {name, title}, [this, kind](bool on) {
        // pressed once more, the construction goes: the given forces alone
        m_parts.canvas.setConstruction(on ? kind : ConstructionKind::none);
    });
    group->addAction(action);
    return action;
}

void SheetMenu::addConstruction(QMenu* menu) {
    auto* group = new QActionGroup(menu);
    group->setExclusionPolicy(QActionGroup::ExclusionPolicy::ExclusiveOptional);
    parallelogram =
        addKind(menu, group, "kindParallelogram", tr("&Parallelogram"), ConstructionKind::parallelogram);
    triangle = addKind(menu, group, "kindTriangle", tr("&Triangle"), ConstructionKind::triangle);
    polygon = addKind(menu, group, "kindPolygon", tr("Po&lygon"), ConstructionKind::polygon);
    otherHalf = addSwitch(menu, {"otherHalf", tr("Ot&her half")},
                          [this](bool on) { m_parts.canvas.setOtherOrder(on); });
    marks = addSwitch(menu, {"parallelMarks", tr("Marks on pa&rallel sides")}, [this](bool on) {
        m_parts.canvas.setParallelMarks(on);
        m_parts.settings.setParallelMarks(on);
    });
    marks->setChecked(m_parts.canvas.parallelMarks());
    QAction* shade = addSwitch(menu, {"shadesTips", tr("Shade &where tips can lie")}, [this](bool on) {
        m_parts.canvas.setShadesTips(on);
        m_parts.settings.setShadesTips(on);
    });
    shade->setToolTip(tr("Where the tips of found vectors can lie within the tolerances"));
    shade->setChecked(m_parts.canvas.shadesTips());
    snap = addSwitch(menu, {"snap", tr("S&nap")}, [this](bool on) { m_parts.canvas.setSnapping(on); });
    snap->setChecked(m_parts.canvas.snapping());
    connect(&m_parts.canvas, &Canvas::snappingChanged, snap, &QAction::setChecked);
    parallelogram->setToolTip(tr("Complete the parallelogram"));
    triangle->setToolTip(tr("Force triangle, tip to tail"));
    polygon->setToolTip(tr("Force polygon, tip to tail"));
    otherHalf->setToolTip(
        tr("Draw the parallelogram's other half: the triangle that begins with the other force. "
           "The solution's text stays as it is"));
    snap->setToolTip(
        tr("Snap to round magnitudes, round angles and other lines (S on the sheet; Alt: not now)"));
}

/// Follows the canvas: which construction is on, and whether the order means anything.
void SheetMenu::showConstruction() {
    const ConstructionKind kind = m_parts.canvas.drawnConstruction();
    parallelogram->setChecked(kind == ConstructionKind::parallelogram);
    triangle->setChecked(kind == ConstructionKind::triangle);
    polygon->setChecked(kind == ConstructionKind::polygon);
    const bool hidden = m_parts.document.withholdsAnswer(); // then no construction is drawn
    for (QAction* action : {parallelogram, triangle, polygon})
        action->setEnabled(!hidden);
    marks->setEnabled(!hidden && kind == ConstructionKind::parallelogram &&
                      m_parts.document.result().construction.parallelogram);
    otherHalf->setEnabled(!hidden && kind == ConstructionKind::triangle);
    otherHalf->setChecked(m_parts.canvas.otherOrder());
}

void SheetMenu::addView(QMenu* menu) {
    fit = addCommand(menu, {"fit", tr("F&it"), QKeySequence(Qt::CTRL | Qt::Key_0)},
                     [this] { m_parts.canvas.fit(); });
    fit->setToolTip(tr("Fit the figure to the sheet"));
    addCommand(menu, {"zoomIn", tr("&Zoom in"), QKeySequence::ZoomIn}, [this] { m_parts.canvas.zoomIn(); });
    addCommand(menu, {"zoomOut", tr("Zoom &out"), QKeySequence::ZoomOut},
               [this] { m_parts.canvas.zoomOut(); });
}

void SheetMenu::addThemes(QMenu* menu) {
    QMenu* themes = menu->addMenu(tr("The&me"));
    auto* group = new QActionGroup(themes);
    const std::pair<ThemeName, QString> names[]{{ThemeName::paper, tr("Paper")},
                                                {ThemeName::slate, tr("Slate")},
                                                {ThemeName::contrast, tr("High contrast")}};
    for (const auto& [theme, title] : names) {
        addChoice(
            themes, group, QStringLiteral("theme-") + nameOf(theme), title,
            [this, name = theme] { return m_parts.canvas.theme() == name; },
            [this, name = theme] { emit themeChosen(name); });
    }
}

} // namespace tailpoint
