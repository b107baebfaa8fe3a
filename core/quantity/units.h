// quantity/: numbers as people write and read them. Units with exact factors, angles with exact
// reduction, decimals rounded once. Knows nothing of forces or sketches.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace tailpoint {

/// Units a sheet can state its forces in.
enum class ForceUnit { N, kN, lbf, kip, kgf };

/// Units a sheet can state its angles in. A turn is 360, 2*pi or 400.
enum class AngleUnit { deg, rad, gon };

inline constexpr std::array kForceUnits{ForceUnit::N, ForceUnit::kN, ForceUnit::lbf, ForceUnit::kip,
                                        ForceUnit::kgf};
inline constexpr std::array kAngleUnits{AngleUnit::deg, AngleUnit::rad, AngleUnit::gon};

/// Newtons in one `unit`. Exact as decimals; the double is the nearest to that decimal.
/// Source: NIST Special Publication 811 (2008), Appendix B.8/B.9 and its footnote for the pound-force
/// (1 lbf = 4.4482216152605 N from 1 lb = 0.45359237 kg and g_n = 9.80665 m/s^2).
double newtonsPer(ForceUnit unit);

/// `value` in `from`, expressed in `to`. Unchanged bit for bit when the units are the same.
/// Relative error at most 2u (u = 2^-53).
double convert(double value, ForceUnit from, ForceUnit to);

/// The unit's symbol as it stands in files and on screen: "N", "kN", "lbf", "kip", "kgf".
std::string_view symbolOf(ForceUnit unit);
/// The unit's name in files: "deg", "rad", "gon".
std::string_view nameOf(AngleUnit unit);

std::optional<ForceUnit> forceUnitFrom(std::string_view symbol);
std::optional<AngleUnit> angleUnitFrom(std::string_view name);

} // namespace tailpoint
