// SPDX-License-Identifier: MIT
// What stands on the figure, as runs of text: symbols italic with real subscripts, units and digits upright.
#pragma once

#include "core/construct/vectors.h"
#include "core/figure/compose.h"
#include "core/figure/tolerated.h"
#include "core/sketch/phrase.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace tailpoint {

using Runs = std::vector<Run>;

/// A symbol of the table of things (core/sketch/things.h). Italic, its subscript as its slant says.
Runs symbolRuns(const Symbol& symbol);
/// " = 340 N", as it stands behind a name.
Run valueRun(std::string_view value);
/// "P = 340 N".
Runs valueRuns(const Symbol& symbol, std::string_view value);
Runs plainRuns(std::string_view text);
/// Of a piece that is a name.
Symbol symbolOf(const PhrasePiece& name, const Things& things);
/// What the solver says, with the names in it as the table's symbols and with minus signs.
Runs phraseRuns(const Phrase& phrase, const Things& things);
/// "+x" with an italic x; other axes upright.
Runs axisRuns(const Reference& reference);

/// As it is read out: "Force F_max" is "Force F sub max".
std::string spoken(std::string_view text);

/// Breaks a sentence at its spaces into lines no wider than `room`, as `widthOf` measures.
std::vector<Runs> wrapped(const Runs& text, double room, const std::function<double(const Runs&)>& widthOf);

/// "R = 520 N; 508 to 532 N": the lines of a text one after the other.
std::string plainText(const Runs& runs);
/// The same as runs of one line.
Runs oneLine(Runs runs);

/// An XML name made of `prefix` and a force's name, different for different names.
std::string idOf(std::string_view prefix, std::string_view name);

/// A vector's direction as the sheet says it: a given one as it was given, unless it acts the other way.
std::optional<double> referredAsShown(const SolvedForce& found, const Force& given, const Sketch& sketch);

/// "Force P" and "340 N at 25.0° counter-clockwise from +x".
/// `asGiven`: a slope or a bearing as `given` has it. `given` is the sketch's own force or sum.
/// Ranges of what was found stand in brackets behind it.
Title titleOf(const PlainVector& vector, std::optional<double> referred, const Force& given, bool asGiven,
              const Sketch& sketch, const RangesSaid& ranges = {});

/// Title and text alternative of the whole figure.
std::string figureTitle(const Sketch& sketch);
std::string figureDescription(const Sketch& sketch, const Solved& solved, const FigureOptions& options);

} // namespace tailpoint
