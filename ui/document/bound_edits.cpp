// SPDX-License-Identifier: MIT
#include "ui/document/bound_edits.h"

#include "core/explain/limits.h"
#include "core/quantity/decimals.h"
#include "core/quantity/typed.h"
#include "core/sketch/shown.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>

namespace tailpoint {

namespace {

struct Bounds {
    Q_DECLARE_TR_FUNCTIONS(Bounds)
};

template <class T>
using Maybe = std::variant<std::optional<T>, Refused>;

/// Readings go with the one field; of three there is no whole text to put them in.
Refused because(const QString& field, const QString& message) {
    return {Bounds::tr("%1: %2").arg(field, message)};
}

Maybe<TypedForce> limitFrom(const QString& typed, const Sketch& sketch) {
    if (typed.isEmpty()) {
        return std::optional<TypedForce>();
    }
    const auto read = parseLoad(typed.toStdString(), sketch.forceUnit);
    if (const auto* error = std::get_if<TypedError>(&read)) {
        return because(Bounds::tr("Limit"), text(error->message));
    }
    const auto& load = std::get<TypedLoad>(read);
    return std::optional(TypedForce{load.value, load.unit, load.tolerance});
}

std::variant<double, Refused> axisFrom(const QString& typed, const Sketch& sketch) {
    const auto read = parseDirection(typed.toStdString(), sketch.angleUnit);
    if (const auto* error = std::get_if<TypedError>(&read)) {
        return because(Bounds::tr("Axis"), text(error->message));
    }
    const auto& direction = std::get<TypedDirection>(read);
    if (direction.tolerance) {
        return because(Bounds::tr("Axis"), Bounds::tr("type how far off it in the other field"));
    }
    switch (direction.form) {
    case TypedDirection::Form::slope:
        return *referredDirection({SlopeForm{direction.run, direction.rise}, {}}, sketch);
    case TypedDirection::Form::bearing:
        return *referredDirection({BearingForm{direction.from, direction.degrees, direction.toward}, {}},
                                  sketch);
    case TypedDirection::Form::angle:
        break;
    }
    return direction.angle;
}

std::variant<double, Refused> withinFrom(const QString& typed, const Sketch& sketch) {
    const QString field = Bounds::tr("Within");
    const auto read = parseDirection(typed.toStdString(), sketch.angleUnit);
    if (const auto* error = std::get_if<TypedError>(&read)) {
        return because(field, text(error->message));
    }
    const auto& angle = std::get<TypedDirection>(read);
    if (angle.form != TypedDirection::Form::angle || angle.tolerance) {
        return because(field, Bounds::tr("type an angle such as 20"));
    }
    return angle.angle;
}

Maybe<Permitted> permittedFrom(const BoundTexts& typed, const Sketch& sketch) {
    if (typed.axis.isEmpty() && typed.within.isEmpty()) {
        return std::optional<Permitted>();
    }
    if (typed.axis.isEmpty()) {
        return because(Bounds::tr("Axis"),
                       Bounds::tr("type the middle of the permitted directions, such as 90"));
    }
    if (typed.within.isEmpty()) {
        return because(Bounds::tr("Within"), Bounds::tr("type how far off the axis, such as 20"));
    }
    const auto axis = axisFrom(typed.axis, sketch), within = withinFrom(typed.within, sketch);
    for (const auto* read : {&axis, &within}) {
        if (const auto* refused = std::get_if<Refused>(read)) {
            return *refused;
        }
    }
    return std::optional(Permitted{std::get<double>(axis), std::get<double>(within)});
}

} // namespace

BoundTexts boundTexts(const Sketch& sketch, int vector) {
    const Force& force = vectorOf(sketch, vector);
    BoundTexts texts;
    if (force.limit) {
        texts.limit = text(shownAsTyped(*force.limit));
    }
    if (force.permitted) {
        texts.axis = text(shortest(force.permitted->axis));
        texts.within = text(shortest(force.permitted->within));
    }
    return texts;
}

Outcome withBounds(const Sketch& sketch, int vector, const BoundTexts& texts) {
    const BoundTexts typed{texts.limit.trimmed(), texts.axis.trimmed(), texts.within.trimmed()};
    auto limit = limitFrom(typed.limit, sketch);
    if (auto* refused = std::get_if<Refused>(&limit)) {
        return *refused;
    }
    auto permitted = permittedFrom(typed, sketch);
    if (auto* refused = std::get_if<Refused>(&permitted)) {
        return *refused;
    }
    Sketch after = sketch;
    vectorOf(after, vector).limit = std::get<std::optional<TypedForce>>(limit);
    vectorOf(after, vector).permitted = std::get<std::optional<Permitted>>(permitted);
    if (const auto fault = firstFault(after)) {
        return Refused{text(fault->message)};
    }
    return Accepted{std::move(after), {}};
}

QString boundWords(const Sketch& sketch, int vector) {
    const Force& force = vectorOf(sketch, vector);
    const QString limit =
        force.limit ? Bounds::tr("at most %1").arg(onScreen(shownAsTyped(*force.limit))) : QString();
    if (!force.permitted) {
        return limit;
    }
    const QString sector = Bounds::tr("within %1 of %2")
                               .arg(onScreen(permittedText(force.permitted->within, sketch)),
                                    onScreen(permittedText(force.permitted->axis, sketch)));
    return limit.isEmpty() ? sector : Bounds::tr("%1, %2").arg(limit, sector);
}

} // namespace tailpoint
