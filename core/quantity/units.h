// SPDX-License-Identifier: MIT
// quantity/: numbers as people write and read them. Units with exact factors, angles with exact
// reduction, decimals rounded once. Knows nothing of forces or sketches.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <variant>

namespace tailpoint {

/// Units of force. shortTonf: 2000 lbf; tonf: of a tonne.
enum class ForceUnit { N, kN, lbf, kip, kgf, daN, tonf, shortTonf };
/// Units of mass, in which a weight may be stated. t: a tonne, 1000 kg.
enum class MassUnit { kg, t };
/// What may stand beside a value: a unit of force, or of the mass whose weight is meant.
using LoadUnit = std::variant<ForceUnit, MassUnit>;

/// Units a sheet can state its angles in. A turn is 360, 2*pi or 400.
enum class AngleUnit { deg, rad, gon };

inline constexpr std::array kForceUnits{ForceUnit::N,    ForceUnit::kN,       ForceUnit::lbf,
                                        ForceUnit::kip,  ForceUnit::kgf,      ForceUnit::daN,
                                        ForceUnit::tonf, ForceUnit::shortTonf};
/// Those that a sheet can state its forces in: not the short ton-force, whose symbol is two words.
inline constexpr std::array kSheetForceUnits{ForceUnit::N,   ForceUnit::kN,  ForceUnit::daN, ForceUnit::lbf,
                                             ForceUnit::kip, ForceUnit::kgf, ForceUnit::tonf};
inline constexpr std::array kMassUnits{MassUnit::kg, MassUnit::t};
inline constexpr std::array kAngleUnits{AngleUnit::deg, AngleUnit::rad, AngleUnit::gon};

/// Standard acceleration of free fall, m/s2.
/// Source: 3rd CGPM (1901), Resolution 2; NIST SP 811 (2008), B.8.
inline constexpr double kStandardGravity = 9.80665;

/// Newtons in one `unit`. Exact as decimals; the double is the nearest to that decimal.
/// Source: NIST Special Publication 811 (2008), Appendix B.8/B.9 and its footnote for the pound-force
/// (1 lbf = 4.4482216152605 N from 1 lb = 0.45359237 kg and g_n = 9.80665 m/s^2); tonf from 1000 kgf,
/// short tonf from 2000 lbf (there to seven figures: 'ton-force (2000 lbf)').
double newtonsPer(ForceUnit unit);
double kilogrammesPer(MassUnit unit);

/// `value` in `from`, expressed in `to`. Unchanged bit for bit when the units are the same.
/// Relative error at most 2u (u = 2^-53). A mass is expressed by its weight where g is `gravity` (m/s2, > 0).
double convert(double value, ForceUnit from, ForceUnit to);
double convert(double value, const LoadUnit& from, ForceUnit to, double gravity);

/// The unit's symbol as it stands in files and on screen: "N", "kN", "lbf", "kip", "kgf", "daN", "tonf",
/// "short tonf"; "kg", "t".
std::string_view symbolOf(ForceUnit unit);
std::string_view symbolOf(MassUnit unit);
std::string_view symbolOf(const LoadUnit& unit);
/// The unit's name in files: "deg", "rad", "gon".
std::string_view nameOf(AngleUnit unit);

std::optional<ForceUnit> forceUnitFrom(std::string_view symbol);
std::optional<ForceUnit> sheetForceUnitFrom(std::string_view symbol);
std::optional<LoadUnit> loadUnitFrom(std::string_view symbol);
std::optional<AngleUnit> angleUnitFrom(std::string_view name);

/// Whether a word behind a number belongs to its unit, for texts that are broken into lines.
bool beginsUnit(std::string_view word);

} // namespace tailpoint
