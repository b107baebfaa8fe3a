// SPDX-License-Identifier: MIT
#include "ui/document/given_edits.h"

#include "core/quantity/decimals.h"
#include "core/quantity/text.h"
#include "core/quantity/typed.h"
#include "core/sketch/cases.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"
#include "ui/document/sketch_document.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>

namespace tailpoint {

namespace {

struct Given {
    Q_DECLARE_TR_FUNCTIONS(Given)
};

/// A cell takes the words that it shows.
bool meansToFind(const QString& typed) {
    return typed.isEmpty() || typed == QLatin1String("?") ||
           typed.compare(Given::tr("to find"), Qt::CaseInsensitive) == 0;
}

Outcome checked(Sketch sketch, const QString& understood) {
    sketch = settled(std::move(sketch));
    if (const auto fault = firstFault(sketch)) {
        return Refused{text(fault->message)};
    }
    return Accepted{std::move(sketch), understood};
}

/// A name that is new here must not look like another thing in print; a file may hold such names.
Outcome named(const Sketch& sketch, int vector, const QString& typed) {
    Sketch after = sketch;
    Force& force = vectorOf(after, vector);
    const std::string name = typed.toStdString();
    const bool isNew = name != force.name;
    if (after.smallest == force.name) {
        after.smallest = name;
    }
    renameInCases(after, force.name, name);
    force.name = name;
    Outcome outcome = checked(std::move(after), {});
    const VectorId who = vector == kSumIndex ? kSumVector : forceVector(static_cast<std::size_t>(vector));
    if (isNew && std::holds_alternative<Accepted>(outcome)) {
        if (const auto why = printsLike(sketch, name, who)) {
            return Refused{text(*why)};
        }
    }
    return outcome;
}

/// "1,234.5", "1,234,567": read one way only, and yet worth saying how.
bool isGrouped(const QString& typed) {
    static const QRegularExpression grouped(QStringLiteral("\\d[.,]\\d{3}[.,]\\d"));
    return typed.contains(grouped);
}

/// For messages: a text of any length in a line.
QString inShort(const QString& typed) {
    return text(oneLine(typed.toStdString()));
}

/// "75 lbf = 334 N", "weight of 850 kg = 8340 N (g = 9.80665 m/s²)"; a grouped number in full. Empty where
/// nothing was converted.
QString magnitudeUnderstood(const QString& typed, const Magnitude& magnitude, const Sketch& sketch) {
    if (isGrouped(typed)) {
        return Given::tr("%1 = %2 %3")
            .arg(inShort(typed), text(shortest(*magnitude.value)), text(symbolOf(sketch.forceUnit)));
    }
    if (!magnitude.typed) {
        return {};
    }
    return std::holds_alternative<MassUnit>(magnitude.typed->unit)
               ? asStated(magnitude, sketch)
               : Given::tr("%1 = %2").arg(inShort(typed), onScreen(shownWithTolerance(magnitude, sketch)));
}

/// In a unit of its own where that is not the sheet's.
Magnitude magnitudeFrom(const TypedLoad& typed, const Sketch& sketch) {
    return typed.unit == LoadUnit(sketch.forceUnit)
               ? Magnitude{typed.value, typed.tolerance}
               : magnitudeOf({typed.value, typed.unit, typed.tolerance}, sketch.forceUnit, sketch.gravity);
}

Outcome magnitudeTyped(const Sketch& sketch, int vector, const QString& typed) {
    Sketch after = sketch;
    if (meansToFind(typed)) {
        vectorOf(after, vector).magnitude = {};
        return checked(std::move(after), {});
    }
    const auto read = parseLoad(typed.toStdString(), sketch.forceUnit);
    if (const auto* error = std::get_if<TypedError>(&read)) {
        return refusedFor(*error);
    }
    const Magnitude magnitude = magnitudeFrom(std::get<TypedLoad>(read), sketch);
    vectorOf(after, vector).magnitude = magnitude;
    return checked(std::move(after), magnitudeUnderstood(typed, magnitude, sketch));
}

Direction directionFrom(const TypedDirection& typed) {
    switch (typed.form) {
    case TypedDirection::Form::slope:
        return {SlopeForm{typed.run, typed.rise}, typed.tolerance};
    case TypedDirection::Form::bearing:
        return {BearingForm{typed.from, typed.degrees, typed.toward}, typed.tolerance};
    case TypedDirection::Form::angle:
        break;
    }
    return {AngleForm{typed.angle}, typed.tolerance};
}

/// An angle in a unit of its own is read once more, in that unit.
Direction directionFrom(const TypedDirection& typed, const std::string& text, const Sketch& sketch) {
    if (typed.form != TypedDirection::Form::angle || typed.unit == sketch.angleUnit) {
        return directionFrom(typed);
    }
    const auto own = std::get<TypedDirection>(parseDirection(text, typed.unit));
    return directionOf({own.angle, typed.unit, own.tolerance}, sketch.angleUnit);
}

QString directionUnderstood(const QString& typed, const Direction& direction, const Sketch& sketch) {
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    if (angle && isGrouped(typed)) {
        return Given::tr("%1 = %2").arg(inShort(typed), text(shortest(angle->value)));
    }
    const auto referred = referredDirection(direction, sketch);
    if (!referred || (angle && !angle->typed)) {
        return {};
    }
    return Given::tr("%1 = %2").arg(inShort(typed), onScreen(directionWords(referred, sketch)));
}

Outcome directionTyped(const Sketch& sketch, int vector, const QString& typed) {
    Sketch after = sketch;
    if (meansToFind(typed)) {
        vectorOf(after, vector).direction = {};
        return checked(std::move(after), {});
    }
    const auto read = parseDirection(typed.toStdString(), sketch.angleUnit);
    if (const auto* error = std::get_if<TypedError>(&read)) {
        return refusedFor(*error);
    }
    const Direction direction = directionFrom(std::get<TypedDirection>(read), typed.toStdString(), sketch);
    vectorOf(after, vector).direction = direction;
    return checked(std::move(after), directionUnderstood(typed, direction, sketch));
}

std::string numberInFull(const Direction& direction) {
    if (const auto* angle = std::get_if<AngleForm>(&direction.form)) {
        return shortest(angle->value);
    }
    if (const auto* slope = std::get_if<SlopeForm>(&direction.form)) {
        return shortest(slope->run) + ":" + shortest(slope->rise);
    }
    if (const auto* bearing = std::get_if<BearingForm>(&direction.form)) {
        return bearing->from + shortest(bearing->degrees) + bearing->toward;
    }
    return {};
}

std::string magnitudeInFull(const Magnitude& magnitude, const std::string& unit) {
    return withTolerance(shortest(*magnitude.value), magnitude.tolerance, unit);
}

std::string directionInFull(const Direction& direction, const std::string& unit) {
    const bool isAngle = std::holds_alternative<AngleForm>(direction.form);
    return withTolerance(numberInFull(direction), direction.tolerance, isAngle ? unit : std::string());
}

} // namespace

QString asStated(const Magnitude& given, const Sketch& sketch) {
    const QString shown = onScreen(shownWithTolerance(given, sketch));
    if (!given.typed) {
        return shown;
    }
    const QString typed = onScreen(shownAsTyped(*given.typed));
    return std::holds_alternative<MassUnit>(given.typed->unit)
               ? Given::tr("weight of %1 = %2 (g = %3)").arg(typed, shown, text(shownGravity(sketch)))
               : Given::tr("%1 = %2").arg(typed, shown);
}

QString asStated(const Direction& given, const Sketch& sketch) {
    const QString shown = onScreen(shownWithTolerance(given, sketch));
    const auto* angle = std::get_if<AngleForm>(&given.form);
    return angle && angle->typed ? Given::tr("%1 = %2").arg(onScreen(shownAsTyped(*angle->typed)), shown)
                                 : shown;
}

Refused refusedFor(const TypedError& error) {
    Refused refused{text(error.message)};
    for (const std::string& reading : error.readings) {
        refused.readings.append(text(reading));
    }
    return refused;
}

Outcome typedInto(const Sketch& sketch, int vector, Entry cell, const QString& typed) {
    const QString trimmed = typed.trimmed();
    if (trimmed.isEmpty() && !typed.isEmpty()) {
        return Accepted{sketch, {}}; // blanks alone say nothing: what stood there stays
    }
    switch (cell) {
    case Entry::name:
        return named(sketch, vector, trimmed);
    case Entry::magnitude:
        return magnitudeTyped(sketch, vector, trimmed);
    case Entry::direction:
        break;
    }
    return directionTyped(sketch, vector, trimmed);
}

QString editedText(const Sketch& sketch, int vector, Entry cell) {
    const Force& force = vectorOf(sketch, vector);
    if (cell == Entry::name) {
        return text(force.name);
    }
    if (isToFind(sketch, vector, cell)) {
        return {};
    }
    const auto* angle = std::get_if<AngleForm>(&force.direction.form);
    if (cell == Entry::magnitude) {
        return text(force.magnitude.typed ? shownAsTyped(*force.magnitude.typed)
                                          : magnitudeInFull(force.magnitude, {}));
    }
    return text(angle && angle->typed ? shownAsTyped(*angle->typed) : directionInFull(force.direction, {}));
}

QString keptText(const Sketch& sketch, int vector, Entry cell) {
    const Force& force = vectorOf(sketch, vector);
    if (isToFind(sketch, vector, cell)) {
        return {};
    }
    const bool degrees = sketch.angleUnit == AngleUnit::deg;
    return text(cell == Entry::magnitude
                    ? magnitudeInFull(force.magnitude, " " + std::string(symbolOf(sketch.forceUnit)))
                    : directionInFull(force.direction,
                                      degrees ? "\u00b0" : " " + std::string(nameOf(sketch.angleUnit))));
}

bool isToFind(const Sketch& sketch, int vector, Entry cell) {
    const Force& force = vectorOf(sketch, vector);
    return (cell == Entry::magnitude && !isGiven(force.magnitude)) ||
           (cell == Entry::direction && !isGiven(force.direction));
}

Sketch withForcesRemoved(const Sketch& sketch, const std::vector<int>& forces) {
    Sketch after = sketch;
    after.forces.clear();
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        if (std::find(forces.begin(), forces.end(), static_cast<int>(i)) == forces.end()) {
            after.forces.push_back(sketch.forces[i]);
        }
    }
    return settled(std::move(after));
}

QString asLines(const Sketch& sketch, const std::vector<int>& vectors) {
    QString lines;
    for (int vector : vectors) {
        const auto field = [&](Entry cell) {
            return isToFind(sketch, vector, cell) ? QStringLiteral("?") : editedText(sketch, vector, cell);
        };
        lines +=
            field(Entry::name) + u'\t' + field(Entry::magnitude) + u'\t' + field(Entry::direction) + u'\n';
    }
    return lines;
}

Sketch settled(Sketch sketch) {
    settleCases(sketch);
    if (sketch.smallest && firstFault(sketch)) {
        Sketch plain = sketch;
        plain.smallest.reset();
        if (!firstFault(plain)) {
            return plain;
        }
    }
    return sketch;
}

} // namespace tailpoint
