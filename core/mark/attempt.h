// SPDX-License-Identifier: MIT
// Typed answers as numbers of the sheet. Internal to mark/.
#pragma once

#include "core/mark/question.h"

namespace tailpoint::marking {

/// A text as a magnitude, with a sign; or a fault without a name.
Readable<GivenNumber> readForce(std::string_view text, const Sketch& sketch);
/// The same with a word for the sense: "23.5 kN push", "288 (T)"; a push is negative. `isFree`: along a line
/// that leaves the sense open; else only a pull may be said.
Readable<GivenNumber> readSensed(std::string_view text, const Sketch& sketch, bool isFree);
/// An angle of the figure: a number with or without its unit.
Readable<GivenNumber> readAngle(std::string_view text, const Sketch& sketch);
/// A direction: an angle, a slope, a bearing, or in the words of a report ("3.6° clockwise from +x",
/// "along +x", "12 above -x", "30 cw"). From the sheet's axis, in its sense; of fromX counter-clockwise from
/// +x.
Readable<GivenNumber> readDirection(std::string_view text, const Sketch& sketch, bool fromX);

/// Degrees with minutes and seconds ("46° 40′", "12°07'30\"") as a decimal number of degrees, and half of
/// what their last digit is worth, in degrees; empty where there are no minutes.
struct Minutes {
    std::string text;
    double half = 0;
};
std::optional<Minutes> withoutMinutes(std::string_view text);
/// `number`, read from minutes.text, as it was typed.
Readable<GivenNumber> asMinutes(Readable<GivenNumber> number, const Minutes& minutes, const std::string& text,
                                const Sketch& sketch);

// Of which both are made.
bool isForceText(std::string_view text); ///< ends in a unit of force
double numberIn(std::string_view text);  ///< before its unit; 0 where there is none
Readable<GivenNumber> angleNumber(const std::string& text,
                                  const Sketch& sketch); ///< its unit may stand behind
AttemptFault forceForAngle(std::string_view text);

/// How a number is written: what its last digit is worth, and its digits.
struct Extent {
    double unit = 0; ///< of the last digit that counts
    int figures = 0, decimals = 0;
};
/// `value` is what `text` reads. Closing zeros of a whole number beyond `asked` figures don't count.
Extent extentOf(std::string_view text, double value, int asked);

/// Lower case for names: Greek letters spelled, lowered digits as digits, spaces at the ends dropped.
std::string spelledName(std::string_view name);
std::string trimmed(std::string_view text);

const Answerable* named(const Question& question, std::string_view name);
Readable<GivenValue> readValue(const Question& question, std::string_view name, std::string_view value);
Readable<Attempt> readAnswers(const Question& question, const std::vector<std::string>& answers);

} // namespace tailpoint::marking
