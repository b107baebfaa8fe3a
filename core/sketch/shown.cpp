// SPDX-License-Identifier: MIT
#include "core/sketch/shown.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

constexpr int kRadianDecimalsMore = 2; // a radian is some 57 times a degree
// Within this many degrees of the axis a direction is called along or opposite to it.
constexpr double kAlongAxisDegrees = 1e-9;

std::string withAngleUnit(const std::string& number, AngleUnit unit) {
    switch (unit) {
    case AngleUnit::rad:
        return number + " rad";
    case AngleUnit::gon:
        return number + " gon";
    case AngleUnit::deg:
        break;
    }
    return number + "°";
}

std::string shownBearing(const BearingForm& bearing) {
    return std::string(1, bearing.from) + shortest(bearing.degrees) + "°" + bearing.toward;
}

std::string smallestShownAngle(const Sketch& sketch) {
    const int decimals = shownAngleDecimals(sketch);
    return withAngleUnit(fixedDecimals(std::pow(10.0, -decimals), decimals), sketch.angleUnit);
}

/// 10 to the greatest power not above `place` of which `typed` is a multiple; that of `place` where more
/// places were converted than typed.
double lastPlace(double typed, int place) {
    constexpr int kMostTyped = 6;
    for (int finer = 0; finer <= kMostTyped; ++finer) {
        const double units = typed * std::pow(10.0, finer - place);
        if (std::abs(units - std::round(units)) < 1e-6)
            return std::pow(10.0, place - finer);
    }
    return std::pow(10.0, place);
}

constexpr int kToleranceFigures = 3; // at least: a typed 12.5 stays
/// So many places more than the sheet's are shown where they were typed; what needs more was converted.
constexpr int kMostMorePlaces = 2;

/// Figures of a given value: what is read is what is computed with.
int figuresOfGiven(double value, const Sketch& sketch) {
    const int asked = figuresOf(value, sketch);
    for (int more = 0; more <= kMostMorePlaces; ++more)
        if (roundedToFigures(value, asked + more) == value)
            return asked + more;
    return asked;
}

int decimalsOfGiven(double angle, const Sketch& sketch) {
    const int asked = shownAngleDecimals(sketch);
    for (int more = 0; more <= kMostMorePlaces; ++more)
        if (roundedToDecimals(angle, asked + more) == angle)
            return asked + more;
    return asked;
}

int decimalsOfGiven(const Direction& given, const Sketch& sketch) {
    const auto* angle = std::get_if<AngleForm>(&given.form);
    return angle ? decimalsOfGiven(angle->value, sketch) : shownAngleDecimals(sketch);
}

/// Rounded beside a value whose last shown digit stands for 10^`place`.
double roundedBeside(double tolerance, int place, int figures) {
    if (tolerance == 0)
        return 0;
    const int lead = static_cast<int>(std::floor(std::log10(tolerance)));
    return roundedToFigures(tolerance, std::clamp(lead - place + 1, figures, 15));
}

Tolerance roundedBeside(const Tolerance& tolerance, int place, int figures) {
    return convertedTolerance(tolerance, [&](double side) { return roundedBeside(side, place, figures); });
}

std::optional<Tolerance> rounded(const Magnitude& given, const Sketch& sketch) {
    if (!given.tolerance)
        return std::nullopt;
    const int figures = figuresOfGiven(*given.value, sketch);
    const double value = roundedToFigures(*given.value, figures);
    const int lead = value == 0 ? 0 : static_cast<int>(std::floor(std::log10(value)));
    return roundedBeside(*given.tolerance, lead + 1 - figures, std::max(figures, kToleranceFigures));
}

std::optional<Tolerance> rounded(const Direction& given, const Sketch& sketch) {
    return given.tolerance ? std::optional(roundedBeside(*given.tolerance, -decimalsOfGiven(given, sketch),
                                                         kToleranceFigures))
                           : std::nullopt;
}

bool looksLikeZero(const std::string& number) {
    return number.find_first_of("123456789") == std::string::npos;
}

} // namespace

int figuresOf(double value, const Sketch& sketch) {
    if (!sketch.moreAfterOne)
        return sketch.figures;
    const std::string shown = significant(value, sketch.figures + 1);
    const auto first = shown.find_first_of("123456789");
    return sketch.figures + (first != std::string::npos && shown[first] == '1' ? 1 : 0);
}

std::string shownForce(double value, const Sketch& sketch, Origin origin) {
    return significant(value, figuresOf(value, sketch), origin);
}

std::string shownForceWithUnit(double value, const Sketch& sketch, Origin origin) {
    return shownForce(value, sketch, origin) + " " + std::string(symbolOf(sketch.forceUnit));
}

int shownAngleDecimals(const Sketch& sketch) {
    return sketch.angleDecimals + (sketch.angleUnit == AngleUnit::rad ? kRadianDecimalsMore : 0);
}

double halfOfLastPlace(double typedForce, const Sketch& sketch) {
    if (typedForce == 0)
        return 0;
    const int lead = static_cast<int>(std::floor(std::log10(std::abs(typedForce))));
    return lastPlace(typedForce, lead + 1 - figuresOf(typedForce, sketch)) / 2;
}

double halfOfLastPlace(const Direction& typed, const Sketch& sketch) {
    const auto* angle = std::get_if<AngleForm>(&typed.form);
    return lastPlace(angle ? angle->value : 0, -shownAngleDecimals(sketch)) / 2;
}

double roundedAsShown(double angle, const Sketch& sketch) {
    return roundedToDecimals(angle, shownAngleDecimals(sketch));
}

std::string shownAngle(double value, const Sketch& sketch, Origin origin) {
    return withAngleUnit(fixedDecimals(value, shownAngleDecimals(sketch), origin), sketch.angleUnit);
}

std::string shownAngleFromRadians(double radians, const Sketch& sketch) {
    return shownAngle(fromRadians(radians, sketch.angleUnit), sketch);
}

std::string shownAsGiven(const Direction& direction, const Sketch& sketch) {
    if (const auto* angle = std::get_if<AngleForm>(&direction.form)) {
        return withAngleUnit(
            fixedDecimals(angle->value, decimalsOfGiven(angle->value, sketch), Origin::typed),
            sketch.angleUnit);
    }
    if (const auto* slope = std::get_if<SlopeForm>(&direction.form)) {
        return shortest(slope->run) + " : " + shortest(slope->rise);
    }
    if (const auto* bearing = std::get_if<BearingForm>(&direction.form)) {
        return shownBearing(*bearing);
    }
    return "to find";
}

bool isShownInFull(const Magnitude& given, const Sketch& sketch) {
    return !given.value ||
           roundedToFigures(*given.value, figuresOfGiven(*given.value, sketch)) == *given.value;
}

bool isShownInFull(const Direction& given, const Sketch& sketch) {
    const auto* angle = std::get_if<AngleForm>(&given.form);
    return !angle || roundedToDecimals(angle->value, decimalsOfGiven(given, sketch)) == angle->value;
}

std::string shownWithTolerance(const Magnitude& given, const Sketch& sketch) {
    return withTolerance(significant(*given.value, figuresOfGiven(*given.value, sketch), Origin::typed),
                         rounded(given, sketch), " " + std::string(symbolOf(sketch.forceUnit)));
}

std::string shownWithTolerance(const Direction& given, const Sketch& sketch) {
    const std::string tolerance = shownTolerance(given, sketch);
    return shownAsGiven(given, sketch) + (tolerance.empty() ? "" : " ") + tolerance;
}

std::string shownTolerance(const Magnitude& given, const Sketch& sketch) {
    const auto tolerance = rounded(given, sketch);
    return tolerance ? shownTolerance(*tolerance, " " + std::string(symbolOf(sketch.forceUnit)))
                     : std::string();
}

std::string shownTolerance(const Direction& given, const Sketch& sketch) {
    const auto tolerance = rounded(given, sketch);
    return tolerance ? shownTolerance(*tolerance, withAngleUnit({}, sketch.angleUnit), true) : std::string();
}

std::string shownGravity(const Sketch& sketch) {
    return shortest(sketch.gravity) + " m/s²";
}

std::string axisName(const Reference& reference) {
    const double degrees = normalized(reference.axisDegrees, AngleUnit::deg);
    if (degrees == 0) {
        return "+x";
    }
    if (degrees == 90) {
        return "+y";
    }
    if (degrees == 180) {
        return "-x";
    }
    if (degrees == -90) {
        return "-y";
    }
    return fixedDecimals(degrees, 1, Origin::typed) + "° axis";
}

std::string referenceWords(const Reference& reference) {
    return "from " + axisName(reference) +
           (reference.sense == Sense::ccw ? ", counter-clockwise" : ", clockwise");
}

FromAxis fromAxis(double referred, const Sketch& sketch) {
    const double degrees = std::fabs(toRadians(referred, sketch.angleUnit)) * (180 / M_PI);
    if (degrees < kAlongAxisDegrees || degrees > 360 - kAlongAxisDegrees)
        return {FromAxis::Way::along};
    if (std::fabs(degrees - 180) < kAlongAxisDegrees)
        return {FromAxis::Way::opposite};
    const bool counterClockwise = (referred > 0) == (sketch.reference.sense == Sense::ccw);
    FromAxis out{counterClockwise ? FromAxis::Way::counterClockwise : FromAxis::Way::clockwise,
                 shownAngle(std::fabs(referred), sketch)};
    out.lessThan = looksLikeZero(out.size);
    if (out.lessThan)
        out.size = smallestShownAngle(sketch);
    return out;
}

std::string directionWords(std::optional<double> referred, const Sketch& sketch) {
    if (!referred)
        return "no direction";
    const std::string axis = axisName(sketch.reference);
    const FromAxis from = fromAxis(*referred, sketch);
    const std::string size = (from.lessThan ? "less than " : "") + from.size;
    switch (from.way) {
    case FromAxis::Way::along:
        return "along " + axis;
    case FromAxis::Way::opposite:
        return "opposite to " + axis;
    case FromAxis::Way::counterClockwise:
        return size + " counter-clockwise from " + axis;
    case FromAxis::Way::clockwise:
        break;
    }
    return size + " clockwise from " + axis;
}

std::string bearingWords(std::optional<double> referred, const Sketch& sketch) {
    const auto isBearing = [](const Force& force) {
        return std::holds_alternative<BearingForm>(force.direction.form);
    };
    if (!referred ||
        (!isBearing(sketch.sum) && std::none_of(sketch.forces.begin(), sketch.forces.end(), isBearing)))
        return {};
    const double turned = convert(*referred, sketch.angleUnit, AngleUnit::deg),
                 fromX =
                     sketch.reference.axisDegrees + (sketch.reference.sense == Sense::ccw ? turned : -turned),
                 fromNorth = normalized(90 - fromX, AngleUnit::deg), off = std::fabs(fromNorth);
    const bool north = off <= 90;
    const int decimals = sketch.angleUnit == AngleUnit::deg ? shownAngleDecimals(sketch) : 1;
    return (north ? "N" : "S") + fixedDecimals(north ? off : 180 - off, decimals) + "°" +
           (fromNorth >= 0 ? "E" : "W");
}

std::string withMinusSigns(std::string_view text) {
    const auto isDigit = [&](std::size_t i) { return i < text.size() && text[i] >= '0' && text[i] <= '9'; };
    std::string out;
    out.reserve(text.size() + 8);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool opens = i == 0 || text[i - 1] == ' ' || text[i - 1] == '(' || text[i - 1] == '/';
        const bool exponent = i > 1 && text[i - 1] == 'e' && isDigit(i - 2);
        const char next = i + 1 < text.size() ? text[i + 1] : ' ';
        const bool counts = isDigit(i + 1) || next == '.' || next == 'x' || next == 'y';
        if (text[i] == '-' && (opens || exponent) && counts)
            out += "\u2212";
        else
            out += text[i];
    }
    return out;
}

} // namespace tailpoint
