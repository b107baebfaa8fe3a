// SPDX-License-Identifier: MIT
// A typed direction: an angle, a slope, a bearing, or in words.
#include "core/mark/attempt.h"

#include "core/quantity/typed.h"
#include "core/quantity/utf8.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <array>

namespace tailpoint::marking {

namespace {

double refer(double degrees, const Sketch& sketch, bool fromX) {
    const double axis = fromX ? 0 : sketch.reference.axisDegrees;
    const double turned = fromX || sketch.reference.sense == Sense::ccw ? degrees - axis : axis - degrees;
    return normalized(convert(normalized(turned, AngleUnit::deg), AngleUnit::deg, sketch.angleUnit),
                      sketch.angleUnit);
}

/// A slope or a bearing: absolute.
std::optional<GivenNumber> absoluteNumber(const std::string& text, const Sketch& sketch, bool fromX) {
    const auto parsed = parseDirection(text, sketch.angleUnit);
    const auto* typed = std::get_if<TypedDirection>(&parsed);
    if (typed == nullptr || typed->form == TypedDirection::Form::angle || typed->tolerance)
        return std::nullopt;
    const bool isSlope = typed->form == TypedDirection::Form::slope;
    double degrees =
        typed->from == 'N' ? typed->degrees : 180 - typed->degrees; // from north, towards `toward`
    degrees = 90 - (typed->toward == 'E' ? degrees : -degrees);
    if (isSlope)
        degrees = directionOf(typed->run, typed->rise, AngleUnit::deg).value_or(0);
    GivenReading reading{refer(degrees, sketch, fromX), 0, 15};
    reading.figures = shownAngleDecimals(sketch);
    reading.half = std::pow(10.0, -reading.figures) / 2; // a slope's digits say nothing of its angle
    const std::string digits = text.substr(std::min(text.find_first_of("0123456789"), text.size()));
    if (!isSlope && !digits.empty()) {
        const Extent extent = extentOf(digits, numberIn(digits), 15);
        reading.half = convert(extent.unit / 2, AngleUnit::deg, sketch.angleUnit);
        reading.figures = extent.decimals;
    }
    return GivenNumber{text, {reading}, true, false};
}

enum class Turn { none, counterClockwise, clockwise };

struct ToldWay {
    Turn turn = Turn::none;
    std::optional<double> axis;               ///< degrees from +x; empty: the sheet's
    bool isOpposite = false, isWhole = false; ///< without a number: along the axis, or opposite to it
};

std::vector<std::string> wordsOf(std::string_view text) {
    std::vector<std::string> words;
    std::string word;
    for (const char32_t c : codePoints(text)) {
        if (c == ' ' || c == '\t' || c == 0xA0) {
            if (!word.empty())
                words.push_back(std::move(word));
            word.clear();
        } else if (c == 0x2212 || (c == 0x2013 && word.empty())) {
            word += '-';
        } else if (c >= 'A' && c <= 'Z') {
            word += static_cast<char>(c + 32);
        } else {
            appendUtf8(word, c);
        }
    }
    if (!word.empty())
        words.push_back(std::move(word));
    return words;
}

std::optional<double> axisNamed(std::string word, bool isNegative) {
    if (word.ends_with("-axis"))
        word.resize(word.size() - 5);
    if (word.size() == 2 && (word[0] == '+' || word[0] == '-')) {
        isNegative = isNegative != (word[0] == '-');
        word.erase(0, 1);
    }
    if (word != "x" && word != "y")
        return std::nullopt;
    return (word == "x" ? 0 : 90) + (isNegative ? 180 : 0);
}

Turn turnNamed(const std::string& word) {
    for (const char* ccw :
         {"ccw", "acw", "counter-clockwise", "counterclockwise", "anticlockwise", "anti-clockwise"})
        if (word == ccw)
            return Turn::counterClockwise;
    return word == "cw" || word == "clockwise" ? Turn::clockwise : Turn::none;
}

bool hasBothTurns(const std::vector<std::string>& words) {
    const auto has = [&](Turn turn) {
        return std::any_of(words.begin(), words.end(),
                           [&](const std::string& word) { return turnNamed(word) == turn; });
    };
    return has(Turn::clockwise) && has(Turn::counterClockwise);
}

/// Above or below an axis along x, left or right of one along y.
Turn turnBeside(const std::string& word, double axis) {
    const bool alongX = axis == 0 || axis == 180;
    const bool first = word == "above" || word == "left", second = word == "below" || word == "right";
    if ((!first && !second) || alongX != (word == "above" || word == "below"))
        return Turn::none;
    const bool isTurned = axis == 180 || axis == 270; // against the axis all is the other way round
    return first != isTurned ? Turn::counterClockwise : Turn::clockwise;
}

/// The words behind the number, or without one. Empty where they say no direction.
std::optional<ToldWay> told(const std::vector<std::string>& words, const Sketch& sketch) {
    ToldWay out;
    std::string beside;
    bool isNegative = false, seesAxis = false;
    for (const std::string& word : words) {
        if (const Turn turn = turnNamed(word); turn != Turn::none) {
            out.turn = turn;
        } else if (word == "above" || word == "below" || word == "left" || word == "right") {
            if (!beside.empty() && beside != word)
                return std::nullopt;
            beside = word;
        } else if (word == "along" || word == "opposite") {
            out.isWhole = true;
            out.isOpposite = word == "opposite";
        } else if (word == "negative" || word == "positive") {
            isNegative = word == "negative";
        } else if (const auto axis = axisNamed(word, isNegative)) {
            out.axis = axis;
            seesAxis = true;
        } else if (word == "axis" || word == "the" || word == "from" || word == "of" || word == "to" ||
                   word == "less" || word == "than") {
            seesAxis = seesAxis || word == "axis";
        } else if (const auto parsed = parseDirection(word, AngleUnit::deg);
                   std::holds_alternative<TypedDirection>(parsed) &&
                   word.find_first_of("0123456789") != word.npos) {
            out.axis = std::get<TypedDirection>(parsed).angle; // "35.0° axis"
        } else {
            return std::nullopt;
        }
    }
    if (!beside.empty()) {
        const Turn turn =
            turnBeside(beside, std::fmod(out.axis.value_or(sketch.reference.axisDegrees) + 360, 360));
        if (turn == Turn::none || (out.turn != Turn::none && out.turn != turn))
            return std::nullopt;
        out.turn = turn;
    }
    const bool isSaid = out.isWhole ? seesAxis && out.turn == Turn::none : out.turn != Turn::none;
    return isSaid ? std::optional(out) : std::nullopt;
}

/// "3.6° clockwise from +x" and the like.
std::optional<GivenNumber> wordedNumber(const std::string& text, const Sketch& sketch, bool fromX) {
    std::vector<std::string> words = wordsOf(text);
    std::string angle;
    if (words.size() > 2 && words[0] == "less" && words[1] == "than")
        words.erase(words.begin(), words.begin() + 2);
    if (!words.empty() && words[0].find_first_of("0123456789") != std::string::npos) {
        angle = words[0];
        words.erase(words.begin());
        if (!words.empty() && (words[0] == "rad" || words[0] == "gon" || words[0] == "deg" ||
                               words[0] == "°" || words[0] == "degrees")) {
            angle += words[0];
            words.erase(words.begin());
        }
    }
    const auto said = told(words, sketch);
    if (!said || said->isWhole != angle.empty())
        return std::nullopt;
    GivenNumber out{text, {{0, 0, shownAngleDecimals(sketch)}}, true, false};
    out.readings[0].half = std::pow(10.0, -out.readings[0].figures) / 2;
    if (!angle.empty()) {
        auto number = angleNumber(angle, sketch);
        if (!std::holds_alternative<GivenNumber>(number))
            return std::nullopt;
        out.readings = std::get<GivenNumber>(std::move(number)).readings;
    }
    const double axis =
        said->axis.value_or(fromX ? 0 : sketch.reference.axisDegrees) + (said->isOpposite ? 180 : 0);
    for (GivenReading& reading : out.readings) {
        const double turned = convert(reading.value, sketch.angleUnit, AngleUnit::deg);
        reading.value = refer(axis + (said->turn == Turn::clockwise ? -turned : turned), sketch, fromX);
    }
    return out;
}

} // namespace

Readable<GivenNumber> readDirection(std::string_view typed, const Sketch& sketch, bool fromX) {
    const std::string text = trimmed(typed);
    if (isForceText(text))
        return forceForAngle(text);
    if (const auto minutes = withoutMinutes(text))
        return asMinutes(readDirection(minutes->text, sketch, fromX), *minutes, text, sketch);
    if (hasBothTurns(wordsOf(text)))
        return AttemptFault{AttemptFault::Code::unreadable,
                            {},
                            "'" + text + "' has both turning senses; give one, cw or ccw"};
    if (auto absolute = absoluteNumber(text, sketch, fromX))
        return std::move(*absolute);
    if (auto worded = wordedNumber(text, sketch, fromX))
        return std::move(*worded);
    return angleNumber(text, sketch);
}

} // namespace tailpoint::marking
