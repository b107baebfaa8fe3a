#include "core/solve/tolerance_sector.h"

#include <algorithm>
#include <numbers>

namespace tailpoint::tolerance {
namespace {

/// Of a direction's component along the edge of an endless sector: below it they are square to one another.
/// The direction may be moved by as much; the sums' slack holds that.
constexpr double kSquare = 1e-15;

} // namespace

Sector sectorOf(double least, double greatest, double from, double to) {
    return {least, greatest, from, to, unitAt(from), unitAt(to)};
}

bool Sector::faces(Pt direction) const {
    if (from == to) {
        return false; // its one direction is at both ends
    }
    const bool pastFrom = cross(atFrom, direction) >= 0;
    const bool beforeTo = cross(direction, atTo) >= 0;
    return width() <= std::numbers::pi ? pastFrom && beforeTo
                                       : width() >= 2 * std::numbers::pi || pastFrom || beforeTo;
}

double Sector::support(Pt along, double length, Pt& point) const {
    if (length == 0) {
        point = least * atFrom;
        return 0;
    }
    if (faces(along)) {
        point = isEndless() ? atFrom : (greatest / length) * along;
        return greatest * length;
    }
    const double alongFrom = dot(atFrom, along);
    const double alongTo = dot(atTo, along);
    const double most = std::max(alongFrom, alongTo);
    const Pt& edge = alongFrom >= alongTo ? atFrom : atTo;
    if (isEndless()) {
        point = least * edge;
        return most > kSquare * length ? kNever : least * most;
    }
    const double magnitude = most > 0 ? greatest : least;
    point = magnitude * edge;
    return magnitude * most;
}

Sector Sector::half(bool upper) const {
    Sector made = *this;
    const double cut = middle();
    (upper ? made.from : made.to) = cut;
    (upper ? made.atFrom : made.atTo) = unitAt(cut);
    return made;
}

double Total::support(Pt along, Pt& point) const {
    point = fixed;
    const double length = lengthOf(along);
    double sum = dot(fixed, along) + slack * length;
    Pt each;
    for (const Sector& sector : *known) {
        sum += sector.support(along, length, each);
        point = point + each;
    }
    if (second != nullptr) {
        sum += second->support(along, length, each);
        point = point + each;
    }
    return sum;
}

Line2 within(Line2 line, const Sector& endless) {
    if (endless.width() >= std::numbers::pi) {
        return {line.base, line.step, 1, 0};
    }
    for (const Pt edge : {endless.atFrom, endless.atTo}) {
        const double constant = dot(line.base, edge);
        const double slope = dot(line.step, edge);
        if (std::fabs(slope) < kSquare) {
            if (constant > kSquare) {
                return {line.base, line.step, 1, 0};
            }
        } else if (slope > 0) {
            line.high = std::min(line.high, -constant / slope);
        } else {
            line.low = std::max(line.low, -constant / slope);
        }
    }
    return line;
}

} // namespace tailpoint::tolerance
