// SPDX-License-Identifier: MIT
// What a force may be at most, and where it may point, as they are typed. Pure: a sketch in, a sketch or a
// reason out.
#pragma once

#include "ui/document/given_edits.h"

namespace tailpoint {

/// Texts of the three fields; an empty one says nothing. `limit`: a magnitude with a unit or without ("10",
/// "10 kN", "1 t"); `axis`: a direction in any form, kept as an angle from the sheet's axis; `within`: an
/// angle, either way.
struct BoundTexts {
    QString limit, axis, within;
    bool operator==(const BoundTexts&) const = default;
};

/// As they stand, in full.
BoundTexts boundTexts(const Sketch& sketch, int vector);
/// All of them or none. A reason says which field it is of.
Outcome withBounds(const Sketch& sketch, int vector, const BoundTexts& texts);

/// "at most 10 kN", "at most 10 kN, within 20.0° of 90.0°"; empty where nothing bounds the vector.
QString boundWords(const Sketch& sketch, int vector);

} // namespace tailpoint
