// SPDX-License-Identifier: MIT
#include "ui/canvas/accessible_vector.h"

#include "core/explain/ranges.h"
#include "core/sketch/shown.h"
#include "ui/canvas/accessible.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/seen_words.h"
#include "ui/canvas/words.h"
#include "ui/document/given_edits.h"
#include "ui/document/sketch_document.h"

namespace tailpoint {

namespace {

const SolvedForce* answerOf(const Canvas& canvas, int vector) {
    const Result& result = canvas.document().result();
    const bool solved = result.chosen < result.solved.solutions.size();
    return solved ? solvedAt(result.solved.solutions[result.chosen], vector) : nullptr;
}

/// "520 N, 509 to 530 N": what was found, and what it can be within the tolerances.
template <class RangeIn>
QString withRange(const QString& found, const Canvas& canvas, int vector, RangeIn rangeIn) {
    const Result& result = canvas.document().result();
    const tolerance::AnswerRange* answer = result.rangeOf(result.chosen);
    const auto* range = answer ? answer->find(vector) : nullptr;
    if (range == nullptr) {
        return result.hasTolerances() ? words::tr("%1, %2").arg(found, QString::fromStdString(rangeUnknown()))
                                      : found;
    }
    return words::tr("%1, range %2")
        .arg(found, QString::fromStdString(toText(rangeTold(rangeIn(*range), result.sketch))));
}

/// "340 N" whether given or found; "to find" where there is no answer.
QString magnitudeText(const Canvas& canvas, int vector) {
    const Sketch& sketch = canvas.document().sketch();
    const Force& force = *forceAt(sketch, vector);
    const SolvedForce* answer = answerOf(canvas, vector);
    return isGiven(force.magnitude) || answer == nullptr
               ? words::magnitude(force, sketch)
               : withRange(words::shown(shownForceWithUnit(answer->magnitude, sketch)), canvas, vector,
                           [](const tolerance::VectorRange& range) { return range.magnitude; });
}

QString directionText(const Canvas& canvas, int vector) {
    const Sketch& sketch = canvas.document().sketch();
    const Force& force = *forceAt(sketch, vector);
    const SolvedForce* answer = answerOf(canvas, vector);
    if (isGiven(force.direction) || answer == nullptr) {
        return words::direction(force, sketch);
    }
    return answer->direction ? withRange(words::shown(shownAngle(*answer->direction, sketch)), canvas, vector,
                                         [](const tolerance::VectorRange& range) { return range.direction; })
                             : words::tr("no direction");
}

/// "Force P, 340 N at 25.0°", "Force Q, 320 N, direction to find", "Sum of the forces: zero".
QString vectorName(const Canvas& canvas, int vector) {
    const Sketch& sketch = canvas.document().sketch();
    if (vector == kSumIndex && isEquilibrium(sketch)) {
        return words::tr("Sum of the forces: zero");
    }
    const Force& force = *forceAt(sketch, vector);
    const SolvedForce* answer = answerOf(canvas, vector);
    const bool hasMagnitude = answer != nullptr || isGiven(force.magnitude);
    const bool hasDirection = answer != nullptr ? answer->direction.has_value() : isGiven(force.direction);
    const QString kind = vector == kSumIndex ? words::tr("Resultant %1") : words::tr("Force %1");
    const QString size = hasMagnitude ? magnitudeText(canvas, vector) : words::tr("magnitude to find");
    const QString way = hasDirection        ? directionText(canvas, vector)
                        : answer != nullptr ? words::tr("no direction")
                                            : words::tr("direction to find");
    const QString format = hasMagnitude && hasDirection ? words::tr("%1, %2 at %3") : words::tr("%1, %2, %3");
    const QString name = format.arg(kind.arg(words::name(force)), size, way), own = canvas.ownDrawn(vector);
    return own.isEmpty() ? name : words::tr("%1; as you draw it %2").arg(name, own);
}

QRect onScreen(const Canvas& canvas, int vector) {
    const QRect inside = canvas.vectorRect(vector);
    return inside.isNull() ? QRect() : QRect(canvas.mapToGlobal(inside.topLeft()), inside.size());
}

QAccessible::State missing() {
    QAccessible::State state;
    state.invalid = true;
    return state;
}

} // namespace

AccessibleVector::~AccessibleVector() {
    for (const QAccessible::Id id : m_ids) {
        if (id != 0) {
            QAccessible::deleteAccessibleInterface(id);
        }
    }
}

int AccessibleVector::vector() const {
    return m_canvas ? vectorOfChild(*m_canvas, m_index) : kNoVector;
}

bool AccessibleVector::isValid() const {
    return vector() != kNoVector;
}

QAccessibleInterface* AccessibleVector::parent() const {
    return QAccessible::queryAccessibleInterface(m_canvas);
}

/// On a stage nothing is typed.
int AccessibleVector::childCount() const {
    return m_canvas && m_canvas->isStaged() ? 0 : 2;
}

QAccessibleInterface* AccessibleVector::child(int index) const {
    if (index < 0 || index >= childCount()) {
        return nullptr;
    }
    QAccessible::Id& id = m_ids[static_cast<std::size_t>(index)];
    if (id == 0) {
        const Quantity quantity = index == 0 ? Quantity::magnitude : Quantity::direction;
        id = QAccessible::registerAccessibleInterface(new AccessibleQuantity(m_canvas, m_index, quantity));
    }
    return QAccessible::accessibleInterface(id);
}

int AccessibleVector::indexOfChild(const QAccessibleInterface* which) const {
    return which == child(0) ? 0 : which == child(1) ? 1 : -1;
}

QString AccessibleVector::text(QAccessible::Text what) const {
    if (what != QAccessible::Name || !isValid()) {
        return {};
    }
    return m_canvas->isStaged() ? wordsSeen(*m_canvas, vector()) : vectorName(*m_canvas, vector());
}

QRect AccessibleVector::rect() const {
    return isValid() ? onScreen(*m_canvas, vector()) : QRect();
}

QAccessible::State AccessibleVector::state() const {
    if (!isValid()) {
        return missing();
    }
    QAccessible::State state;
    state.focusable = true;
    state.selectable = true;
    state.selected = m_canvas->selected() == vector();
    state.focused = state.selected && m_canvas->hasFocus();
    return state;
}

void* AccessibleVector::interface_cast(QAccessible::InterfaceType type) {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
}

QString AccessibleVector::deleteAction() {
    return QStringLiteral("Delete");
}

QStringList AccessibleVector::actionNames() const {
    if (m_canvas && m_canvas->isStaged()) {
        return {};
    }
    QStringList names{setFocusAction()};
    if (vector() >= 0) {
        names << deleteAction();
    }
    return names;
}

void AccessibleVector::doAction(const QString& name) {
    if (!isValid() || m_canvas->isStaged()) {
        return;
    }
    m_canvas->select(vector());
    if (name == setFocusAction()) {
        m_canvas->setFocus(Qt::OtherFocusReason);
    } else if (name == deleteAction()) {
        m_canvas->removeSelected();
    }
}

QStringList AccessibleVector::keyBindingsForAction(const QString& name) const {
    return name == deleteAction() ? QStringList{QStringLiteral("Del")} : QStringList();
}

QString AccessibleVector::localizedActionName(const QString& name) const {
    return name == deleteAction() ? words::tr("Delete")
                                  : QAccessibleActionInterface::localizedActionName(name);
}

int AccessibleQuantity::vector() const {
    return m_canvas ? vectorOfChild(*m_canvas, m_index) : kNoVector;
}

bool AccessibleQuantity::isValid() const {
    return vector() != kNoVector;
}

QAccessibleInterface* AccessibleQuantity::parent() const {
    QAccessibleInterface* sheet = QAccessible::queryAccessibleInterface(m_canvas);
    return sheet != nullptr ? sheet->child(m_index) : nullptr;
}

bool AccessibleQuantity::given() const {
    const Force& force = *forceAt(m_canvas->document().sketch(), vector());
    return isMagnitude() ? isGiven(force.magnitude) : isGiven(force.direction);
}

QString AccessibleQuantity::text(QAccessible::Text what) const {
    if (!isValid()) {
        return {};
    }
    const QString name = words::name(*forceAt(m_canvas->document().sketch(), vector()));
    switch (what) {
    case QAccessible::Name:
        return (isMagnitude() ? words::tr("Magnitude of %1") : words::tr("Direction of %1")).arg(name);
    case QAccessible::Value:
        return isMagnitude() ? magnitudeText(*m_canvas, vector()) : directionText(*m_canvas, vector());
    case QAccessible::Description:
        return given() ? words::tr("given") : words::tr("to find: it follows from the rest");
    default:
        return {};
    }
}

QRect AccessibleQuantity::rect() const {
    return isValid() ? onScreen(*m_canvas, vector()) : QRect();
}

QAccessible::State AccessibleQuantity::state() const {
    if (!isValid()) {
        return missing();
    }
    QAccessible::State state;
    state.readOnly = !given();
    state.editable = given();
    return state;
}

void* AccessibleQuantity::interface_cast(QAccessible::InterfaceType type) {
    switch (type) {
    case QAccessible::ValueInterface:
        return static_cast<QAccessibleValueInterface*>(this);
    case QAccessible::ActionInterface:
        return static_cast<QAccessibleActionInterface*>(this);
    default:
        return nullptr;
    }
}

QVariant AccessibleQuantity::currentValue() const {
    if (!isValid()) {
        return {};
    }
    const Sketch& sketch = m_canvas->document().sketch();
    const Force& force = *forceAt(sketch, vector());
    if (given()) {
        return isMagnitude() ? force.magnitude.value.value_or(0)
                             : referredDirection(force.direction, sketch).value_or(0);
    }
    const SolvedForce* answer = answerOf(*m_canvas, vector());
    if (answer == nullptr) {
        return {};
    }
    return isMagnitude() ? answer->magnitude : answer->direction.value_or(0);
}

void AccessibleQuantity::setCurrentValue(const QVariant& value) {
    bool number = false;
    const double to = value.toDouble(&number);
    if (isValid() && number) {
        isMagnitude() ? m_canvas->setMagnitude(vector(), to) : m_canvas->setDirection(vector(), to);
    }
}

QVariant AccessibleQuantity::maximumValue() const {
    return isMagnitude() || !isValid() ? kLargestMagnitude
                                       : turnIn(m_canvas->document().sketch().angleUnit) / 2;
}

QVariant AccessibleQuantity::minimumValue() const {
    return isMagnitude() || !isValid() ? 0.0 : -turnIn(m_canvas->document().sketch().angleUnit) / 2;
}

QVariant AccessibleQuantity::minimumStepSize() const {
    if (!isValid()) {
        return {};
    }
    const Sketch& sketch = m_canvas->document().sketch();
    return isMagnitude() ? lastDigitOfMagnitude(currentValue().toDouble(), sketch) : lastDigitOfAngle(sketch);
}

QStringList AccessibleQuantity::actionNames() const {
    if (!isValid()) {
        return {};
    }
    return given() ? QStringList{increaseAction(), decreaseAction(), toFindAction()}
                   : QStringList{givenAction()};
}

QString AccessibleQuantity::localizedActionDescription(const QString& name) const {
    return name == toFindAction()  ? words::tr("What it is then follows from the rest")
           : name == givenAction() ? words::tr("With the value that was found")
                                   : QAccessibleActionInterface::localizedActionDescription(name);
}

QString AccessibleQuantity::toFindAction() {
    return QStringLiteral("Make it one to find"); // Qt's bridge tells no other name of an action than this
}

QString AccessibleQuantity::givenAction() {
    return QStringLiteral("Make it given");
}

QString AccessibleQuantity::localizedActionName(const QString& name) const {
    return name == toFindAction()  ? words::tr("Make it one to find")
           : name == givenAction() ? words::tr("Make it given")
                                   : QAccessibleActionInterface::localizedActionName(name);
}

void AccessibleQuantity::doAction(const QString& name) {
    const Entry entry = isMagnitude() ? Entry::magnitude : Entry::direction;
    if (isValid() && (name == toFindAction() || name == givenAction())) {
        m_canvas->setToFind(vector(), entry, name == toFindAction());
        return;
    }
    const int way = name == increaseAction() ? 1 : name == decreaseAction() ? -1 : 0;
    if (!isValid() || way == 0) {
        return;
    }
    const bool clockwise = m_canvas->document().sketch().reference.sense == Sense::cw;
    isMagnitude() ? m_canvas->nudgeMagnitude(vector(), way)
                  : m_canvas->nudgeDirection(vector(), clockwise ? -way : way);
}

} // namespace tailpoint
