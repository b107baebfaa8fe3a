// SPDX-License-Identifier: MIT
// Shown numbers: rounded once, from the full value, half to even.
#pragma once

#include <string>

namespace tailpoint {

/// Where a number comes from decides how a tie is recognised. A typed number is the decimal that was typed
/// (2.675 is a tie at two decimals); a computed one within kTieBand (relative) of a rounding boundary counts
/// as that tie, but never farther off than 1/1024 of the last shown place, so that many figures stay right.
enum class Origin { typed, computed };
inline constexpr double kTieBand = 1e-12;

/// `value` to `figures` significant figures (1..15), positional from 1e-4 up to below 1e7, otherwise
/// like "1.23e8" (the rounded value decides). ASCII minus, never "-0", point as decimal mark, no grouping, no
/// trailing-zero loss (5 to 3 figures is "5.00"; 1234 to 3 figures is "1230"). Zero is "0". Source: NIST SP
/// 811 (2008) B.7 (round half to even).
std::string significant(double value, int figures, Origin origin = Origin::computed);

/// `value` with exactly `decimals` (0..12) digits after the point, half to even, never "-0.0".
std::string fixedDecimals(double value, int decimals, Origin origin = Origin::computed);

/// The shortest decimal that reads back as `value` (std::to_chars), for files and edit fields: positional
/// from 1e-6 up to below 1e16, otherwise like "1.5e+150". Zero is "0".
std::string shortest(double value);

/// The double that `significant` / `fixedDecimals` shows: what a drag sets, so that what is seen is computed
/// with.
double roundedToFigures(double value, int figures);
double roundedToDecimals(double value, int decimals);

} // namespace tailpoint
