// SPDX-License-Identifier: MIT
#include "core/quantity/angle.h"
#include "core/quantity/extended_angle.h"

#include <cfloat>
#include <cmath>
#include <numbers>

namespace tailpoint {
namespace {

static_assert(LDBL_MANT_DIG >= 64, "the stated error bounds need at least 64 bits in long double");

constexpr long double kPi = std::numbers::pi_v<long double>;
constexpr double kPiDouble = std::numbers::pi;

long double quarterIn(AngleUnit unit) {
    return unit == AngleUnit::gon ? 100.0L : 90.0L;
}

CosSin turnedByQuarters(CosSin base, int quarters) {
    switch (quarters & 3) {
    case 1:
        return {-base.sin, base.cos};
    case 2:
        return {-base.cos, -base.sin};
    case 3:
        return {base.sin, -base.cos};
    default:
        return base;
    }
}

long double radiansOf(long double part, long double quarter) {
    return part * (kPi / 2) / quarter;
}

// Of `part` of a quarter turn, |part| <= quarter / 2; exact where the values are algebraic and known.
long double cosWithinEighth(long double part, long double quarter) {
    const long double size = std::fabs(part);
    if (size == 0) {
        return 1;
    }
    if (2 * size == quarter) {
        return std::sqrt(0.5L);
    }
    return 3 * size == quarter ? std::sqrt(3.0L) / 2 : std::cos(radiansOf(part, quarter));
}

long double sinWithinEighth(long double part, long double quarter) {
    const long double size = std::fabs(part);
    if (size == 0) {
        return 0;
    }
    if (2 * size == quarter) {
        return std::copysign(std::sqrt(0.5L), part);
    }
    return 3 * size == quarter ? std::copysign(0.5L, part) : std::sin(radiansOf(part, quarter));
}

CosSin cosSinWithinEighth(long double part, long double quarter) {
    return {cosWithinEighth(part, quarter), sinWithinEighth(part, quarter)};
}

// Zeros come out as +0, so that no later product or arctangent sees a signed zero.
CosSin withoutSignedZeros(CosSin value) {
    return {value.cos + 0.0L, value.sin + 0.0L};
}

// Angle of (x, y) within the first octant, 0 <= y <= x, x > 0, counted in eighths' unit `quarter`.
long double octantAngle(long double x, long double y, long double quarter) {
    if (y == x) {
        return quarter / 2;
    }
    return std::atan(y / x) * (quarter / (kPi / 2));
}

double firstTurnAngle(long double x, long double y, long double quarter) {
    const long double ax = std::fabs(x);
    const long double ay = std::fabs(y);
    long double angle = ay <= ax ? octantAngle(ax, ay, quarter) : quarter - octantAngle(ay, ax, quarter);
    if (x < 0) {
        angle = 2 * quarter - angle;
    }
    return static_cast<double>(y < 0 ? -angle : angle);
}

// ad - bc within 1.5 ulp. Source: Jeannerod, Louvet, Muller, Math. Comp. 82 (2013), Kahan's algorithm.
double determinant(double a, double b, double c, double d) {
    const double w = b * c;
    const double e = std::fma(-b, c, w);
    const double f = std::fma(a, d, -w);
    return f + e;
}

Eigen::Vector2d scaledToOne(const Eigen::Vector2d& v) {
    const int exponent = std::ilogb(std::fmax(std::fabs(v.x()), std::fabs(v.y())));
    return {std::scalbn(v.x(), -exponent), std::scalbn(v.y(), -exponent)};
}

bool isZero(const Eigen::Vector2d& v) {
    return v.x() == 0 && v.y() == 0;
}

} // namespace

CosSin cosSin(double value, AngleUnit unit) {
    if (unit == AngleUnit::rad) {
        return {std::cos(static_cast<long double>(value)), std::sin(static_cast<long double>(value))};
    }
    const long double quarter = quarterIn(unit);
    int quarters = 0;
    const double part = std::remquo(value, static_cast<double>(quarter), &quarters);
    return withoutSignedZeros(turnedByQuarters(cosSinWithinEighth(part, quarter), quarters));
}

namespace {

// The sine of an angle and so many quarter turns; never -0.
long double sinExtended(long double value, AngleUnit unit, int further) {
    const long double quarter = quarterIn(unit);
    int quarters = 0;
    const long double part = std::remquo(value, quarter, &quarters);
    quarters += further;
    const long double size =
        (quarters & 1) != 0 ? cosWithinEighth(part, quarter) : sinWithinEighth(part, quarter);
    return ((quarters & 2) != 0 ? -size : size) + 0.0L;
}

} // namespace

long double sinExtended(long double value, AngleUnit unit) {
    return unit == AngleUnit::rad ? std::sin(value) : sinExtended(value, unit, 0);
}

long double cosExtended(long double value, AngleUnit unit) {
    return unit == AngleUnit::rad ? std::cos(value) : sinExtended(value, unit, 1);
}

double normalized(double value, AngleUnit unit) {
    if (unit != AngleUnit::rad) {
        const double turn = turnIn(unit);
        const double rest = std::remainder(value, turn);
        return rest <= -turn / 2 ? turn / 2 : rest + 0.0;
    }
    if (std::fabs(value) <= kPiDouble) {
        return value == -kPiDouble ? kPiDouble : value + 0.0;
    }
    const CosSin direction = cosSin(value, unit);
    const double angle = static_cast<double>(std::atan2(direction.sin, direction.cos));
    return angle <= -kPiDouble ? kPiDouble : angle;
}

std::optional<double> directionOf(long double x, long double y, AngleUnit unit) {
    if (x == 0 && y == 0) {
        return std::nullopt;
    }
    const long double quarter = unit == AngleUnit::rad ? kPi / 2 : quarterIn(unit);
    const double angle = firstTurnAngle(x, y, quarter);
    const double half = turnIn(unit) / 2;
    return angle <= -half ? half : angle + 0.0;
}

std::optional<double> signedAngle(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    if (isZero(a) || isZero(b)) {
        return std::nullopt;
    }
    const Eigen::Vector2d p = scaledToOne(a);
    const Eigen::Vector2d q = scaledToOne(b);
    const double cross = determinant(p.x(), p.y(), q.x(), q.y());
    const double dot = determinant(p.x(), -p.y(), q.y(), q.x());
    const double angle = std::atan2(cross + 0.0, dot);
    return angle <= -kPiDouble ? kPiDouble : angle;
}

double fromRadians(double radians, AngleUnit unit) {
    if (unit == AngleUnit::rad) {
        return radians;
    }
    return static_cast<double>(static_cast<long double>(radians) * (quarterIn(unit) / (kPi / 2)));
}

double toRadians(double value, AngleUnit unit) {
    if (unit == AngleUnit::rad) {
        return value;
    }
    return static_cast<double>(static_cast<long double>(value) * ((kPi / 2) / quarterIn(unit)));
}

double convert(double value, AngleUnit from, AngleUnit to) {
    if (from == to) {
        return value;
    }
    if (from != AngleUnit::rad && to != AngleUnit::rad) {
        return static_cast<double>(static_cast<long double>(value) * (to == AngleUnit::gon ? 10 : 9) /
                                   (to == AngleUnit::gon ? 9 : 10));
    }
    return to == AngleUnit::rad ? toRadians(value, from) : fromRadians(value, to);
}

double turnIn(AngleUnit unit) {
    switch (unit) {
    case AngleUnit::rad:
        return 2 * kPiDouble;
    case AngleUnit::gon:
        return 400;
    case AngleUnit::deg:
        break;
    }
    return 360;
}

} // namespace tailpoint
