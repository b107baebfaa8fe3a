// SPDX-License-Identifier: MIT
// Edits that are no drag: typed values, given or to find, one more force, one less.
#include "core/quantity/decimals.h"
#include "core/quantity/typed.h"
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/words.h"
#include "ui/document/new_force.h"
#include "ui/style/symbols.h"

namespace tailpoint {

namespace {

/// What a label's field holds: its first text, its name, the undo step's name, and what becomes of the typed
/// text.
struct LabelField {
    QString text, name, step;
    std::function<Outcome(const Sketch&, const QString&)> typed;
};

LabelField titleBlockField(const Sketch& sketch, Cell cell, Numbers numbers) {
    switch (cell) {
    case Cell::figures:
        return {QString::number(sketch.figures), Canvas::tr("Significant figures"),
                Canvas::tr("Change figures"), withTypedFigures};
    case Cell::reference:
        return {typedReference(sketch), Canvas::tr("Reference axis and sense"), Canvas::tr("Change the axis"),
                [numbers](const Sketch& now, const QString& text) {
                    return withTypedReference(now, text, numbers);
                }};
    default:
        return {QString::fromStdString(sketch.title), Canvas::tr("Title"), Canvas::tr("Change the title"),
                withTypedTitle};
    }
}

LabelField forceField(const Sketch& sketch, Cell cell, int vector) {
    const QString name = words::name(*forceAt(sketch, vector));
    const auto with = [name](Outcome (*typed)(const Sketch&, int, const QString&)) {
        return [name, typed](const Sketch& now, const QString& text) -> Outcome {
            const int where = vectorNamed(now, name.toStdString()); // the sketch may have changed since
            return where == kNoVector ? Refused{Canvas::tr("%1 is no longer in the sketch.").arg(name)}
                                      : typed(now, where, text);
        };
    };
    switch (cell) {
    case Cell::name:
        return {name, Canvas::tr("Name"), Canvas::tr("Rename %1").arg(name), with(withTypedName)};
    case Cell::direction:
        return {typedDirection(sketch, vector), Canvas::tr("Direction of %1").arg(name),
                Canvas::tr("Turn %1").arg(name), with(withTypedDirection)};
    default:
        return {typedMagnitude(sketch, vector), Canvas::tr("Magnitude of %1").arg(name),
                Canvas::tr("Change %1").arg(name), with(withTypedMagnitude)};
    }
}

bool isForceCell(Cell cell) {
    return cell == Cell::magnitude || cell == Cell::direction || cell == Cell::name;
}

/// Where a field opens: over its label; a name or a hidden label's field over what is shown of the force.
QRectF fieldBox(const Scene& scene, Cell cell, int vector) {
    for (const Cell shown : {cell, Cell::magnitude}) {
        if (const std::optional<QRectF> box = labelBox(scene, shown, vector)) {
            return *box;
        }
    }
    const std::vector<DrawnVector>& drawn = scene.drawn();
    const DrawnVector* at = drawnOf(drawn, vector);
    const QPointF middle =
        at != nullptr ? scene.sheet().toPixels(Eigen::Vector2d((at->tail + at->tip) / 2)) : QPointF(60, 30);
    return {middle - QPointF(30, 10), QSizeF(60, 20)};
}

} // namespace

bool Canvas::Private::taken(const std::optional<SketchFault>& fault) {
    if (fault) {
        say(QString::fromStdString(fault->message));
    }
    return !fault;
}

bool Canvas::Private::edit(const Sketch& after, const QString& text) {
    return taken(scene.document().edit(after, text));
}

bool Canvas::Private::nudge(int vector, Nudged what, const Sketch& after, const QString& text) {
    return taken(nudges.take(vector, what, after, text));
}

/// The scale is no part of the sketch: it is how closely one looks at it.
std::optional<Refused> Canvas::Private::takeScale(const QString& text) {
    const Sketch& sketch = scene.sketch();
    const Typed<TypedMagnitude> typed = parseMagnitude(text.trimmed().toStdString(), sketch.forceUnit);
    if (const auto* error = std::get_if<TypedError>(&typed)) {
        return refusedFor(*error);
    }
    const double division = std::get<TypedMagnitude>(typed).value;
    const std::optional<double> scale = scaleOfDivision(division);
    if (!scale) {
        return Refused{tr("A division is 1, 2 or 5 times a power of ten, such as 20 or 50.")};
    }
    const View& now = scene.sheet().view();
    scene.zoomAbout(scene.sheet().toPixels(now.origin), *scale / now.scale);
    refresh();
    return divisionOf(scene.sheet().view()) == division
               ? std::nullopt
               : std::optional(
                     Refused{tr("The sheet can't be drawn at that scale; nearest to it is shown.")});
}

void Canvas::Private::openScaleEditor() {
    const double division = divisionOf(scene.sheet().view());
    const QString now = QString::fromStdString(shortest(division)) + QLatin1Char(' ') +
                        QString::fromUtf8(symbolOf(scene.sketch().forceUnit).data());
    edited = Cell::scale;
    editor.open(fieldBox(scene, Cell::scale, kNoVector), now, tr("Force of one division"), themeOf(theme),
                [this](const QString& text) { return takeScale(text); });
}

void Canvas::Private::openEditor(Cell cell, int vector) {
    if (cell == Cell::scale) {
        return openScaleEditor();
    }
    const Sketch& sketch = scene.sketch();
    if (isForceCell(cell) && forceAt(sketch, vector) == nullptr) {
        return;
    }
    const LabelField field =
        isForceCell(cell) ? forceField(sketch, cell, vector)
                          : titleBlockField(sketch, cell, keepsForces ? Numbers::convert : Numbers::keep);
    const auto take = [this, field](const QString& text) -> std::optional<Refused> {
        const Outcome outcome = field.typed(scene.sketch(), text);
        if (const Refused* refused = std::get_if<Refused>(&outcome)) {
            return *refused;
        }
        const Accepted& accepted = std::get<Accepted>(outcome);
        if (const auto fault = scene.document().edit(accepted.sketch, field.step)) {
            return Refused{QString::fromStdString(fault->message)};
        }
        if (!accepted.understood.isEmpty()) {
            say(accepted.understood);
        }
        return std::nullopt;
    };
    q.select(vector);
    edited = cell;
    editedName = isForceCell(cell) ? forceAt(sketch, vector)->name : std::string();
    editor.open(fieldBox(scene, cell, vector), field.text, field.name, themeOf(theme), take);
}

/// The wheel, a resize or a fit moves the label, not the text that is being typed into it.
void Canvas::Private::keepEditorOnLabel() {
    if (!editor.isOpen()) {
        return;
    }
    const int vector = isForceCell(edited) ? vectorNamed(scene.sketch(), editedName) : kNoVector;
    if (!isForceCell(edited) || vector != kNoVector) { // of a force that has gone it stays where it is
        editor.follow(fieldBox(scene, edited, vector));
    }
}

bool Canvas::Private::toggle(int vector, Entry quantity) {
    const QString name = words::name(*forceAt(scene.sketch(), vector));
    const QString step = quantity == Entry::magnitude ? tr("Magnitude of %1: given or to find")
                                                      : tr("Direction of %1: given or to find");
    return edit(toggled(scene.document(), vector, quantity), step.arg(name));
}

bool Canvas::setToFind(int vector, Entry quantity, bool toFind) {
    const Force* force = forceAt(d->scene.sketch(), vector);
    if (force == nullptr || d->gesture || d->staged) {
        return false;
    }
    const std::string name = force->name;
    if (isToFind(d->scene.sketch(), vector, quantity) != toFind && !d->toggle(vector, quantity)) {
        return false; // and why has been said
    }
    const int now = vectorNamed(d->scene.sketch(), name);
    const bool isSo = now != kNoVector && isToFind(d->scene.sketch(), now, quantity) == toFind;
    const QString what = quantity == Entry::magnitude ? tr("Magnitude of %1: %2") : tr("Direction of %1: %2");
    const QString state = isSo == toFind ? tr("to find") : tr("given");
    d->say((isSo ? what : tr("Not done. %1").arg(what)).arg(QString::fromStdString(name), state));
    return isSo;
}

void Canvas::addForce() {
    const Sketch& sketch = d->scene.sketch();
    const Sketch after = withNewForce(d->scene.result(), divisionOf(d->scene.sheet().view()));
    if (d->edit(after, tr("Add %1").arg(QString::fromStdString(nextForceName(sketch))))) {
        select(static_cast<int>(d->scene.sketch().forces.size()) - 1);
    }
}

void Canvas::removeSelected() {
    const Sketch& sketch = d->scene.sketch();
    const Force* force = forceAt(sketch, d->selected);
    if (d->selected == kSumIndex) {
        d->say(sentence(tr("%1 is what the forces amount to; it can't be deleted."), d->symbolAt(kSumIndex)));
    } else if (force != nullptr && !d->gesture) {
        d->edit(withForcesRemoved(sketch, {d->selected}), tr("Delete %1").arg(words::name(*force)));
        select(kNoVector);
    }
}

} // namespace tailpoint
