// SPDX-License-Identifier: MIT
// One typed number: its readings, its unit, and what its last digit is worth.
#include "core/mark/attempt.h"

#include "core/quantity/typed.h"
#include "core/quantity/utf8.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <array>

namespace tailpoint::marking {

namespace {

using Code = AttemptFault::Code;

/// The part of a text that is a number: up to the first letter that is no exponent, or a degree sign.
std::string_view digitsOf(std::string_view text) {
    const auto at = [&](std::size_t i) { return i < text.size() ? text[i] : ' '; };
    const auto isDigit = [&](std::size_t i) { return at(i) >= '0' && at(i) <= '9'; };
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool isLetter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        const bool isSigned = (at(i + 1) == '-' || at(i + 1) == '+') && isDigit(i + 2);
        const bool isExponent =
            (c == 'e' || c == 'E') && i > 0 && isDigit(i - 1) && (isDigit(i + 1) || isSigned);
        if ((isLetter && !isExponent) || text.substr(i).starts_with("°") || c == ':')
            return text.substr(0, i);
    }
    return text;
}

std::string replaced(std::string text, std::string_view what, std::string_view by) {
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size()))
        text.replace(at, what.size(), by);
    return text;
}

/// "5.2 × 10^2 N" as "5.2e2 N": a times sign, 10, and an exponent behind ^ or raised.
std::string withExponent(std::string text) {
    constexpr std::array<std::string_view, 10> kRaised{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
    for (const std::string_view times : {"×", "·", "*", "x"}) {
        const auto at = text.find(times);
        if (at == std::string::npos)
            continue;
        std::string behind = trimmed(std::string_view(text).substr(at + times.size()));
        if (!behind.starts_with("10"))
            continue;
        behind = replaced(behind.substr(2), "⁻", "-");
        const bool isRaised = !behind.starts_with("^");
        if (!isRaised)
            behind = trimmed(std::string_view(behind).substr(1));
        for (std::size_t digit = 0; isRaised && digit < kRaised.size(); ++digit)
            behind = replaced(behind, kRaised[digit], std::to_string(digit));
        return trimmed(std::string_view(text).substr(0, at)) + "e" + behind;
    }
    return text;
}

/// As a hand writes a force, in the form that is read: without "≈" or "ca.", the unit's name by its symbol.
std::string plainForce(std::string_view typed) {
    std::string text = trimmed(typed);
    for (const std::string_view about : {"≈", "~", "ca."})
        if (text.starts_with(about))
            text = trimmed(std::string_view(text).substr(about.size()));
    for (const auto& [name, symbol] : {std::pair<std::string_view, std::string_view>{"kilonewtons", "kN"},
                                       {"kilonewton", "kN"},
                                       {"newtons", "N"},
                                       {"newton", "N"},
                                       {"Newtons", "N"},
                                       {"Newton", "N"},
                                       {"KN", "kN"}})
        if (text.ends_with(name)) {
            text = text.substr(0, text.size() - name.size()) + std::string(symbol);
            break;
        }
    return withExponent(std::move(text));
}

/// A unit of mass as that of its weight; whether there was one.
std::pair<std::string, bool> massAsForce(std::string_view typed) {
    const std::string text = trimmed(typed);
    for (const auto& [mass, force] :
         std::initializer_list<std::pair<std::string_view, std::string_view>>{{"kilograms", "kgf"},
                                                                              {"kilogram", "kgf"},
                                                                              {"kg", "kgf"},
                                                                              {"tonnes", "tonf"},
                                                                              {"tonne", "tonf"},
                                                                              {"t", "tonf"}}) {
        const std::size_t before = text.size() - std::min(text.size(), mass.size());
        if (text.ends_with(mass) && before > 0 &&
            (text[before - 1] == ' ' || (text[before - 1] >= '0' && text[before - 1] <= '9')))
            return {text.substr(0, before) + std::string(force), true};
    }
    return {text, false};
}

/// Without the sign in front; whether it was a minus.
std::pair<std::string, bool> unsignedText(std::string_view text) {
    for (const auto& [sign, isMinus] :
         {std::pair<std::string_view, bool>{"-", true}, {"\u2212", true}, {"\u2013", true}, {"+", false}})
        if (text.starts_with(sign))
            return {trimmed(text.substr(sign.size())), isMinus};
    return {std::string(text), false};
}

bool hasLetters(std::string_view text) {
    return digitsOf(text).size() < text.size();
}

AttemptFault unreadable(const TypedError& error) {
    return {Code::unreadable, {}, error.message};
}

bool endsIn(std::string_view text, std::initializer_list<std::string_view> ends) {
    return std::any_of(ends.begin(), ends.end(), [&](std::string_view end) { return text.ends_with(end); });
}

bool isAngleText(std::string_view text) {
    return endsIn(text, {"°", "deg", "degrees", "degree", "rad", "gon"});
}

/// One text, or the texts of both readings of a comma.
template <class Parse>
Readable<std::vector<std::string>> readingsOf(const std::string& text, Parse parse) {
    const auto typed = parse(text);
    const auto* error = std::get_if<TypedError>(&typed);
    if (error == nullptr)
        return std::vector<std::string>{text};
    if (error->code == TypedCode::twoReadings && !error->readings.empty())
        return error->readings;
    return unreadable(*error);
}

} // namespace

bool isForceText(std::string_view text) {
    if (text.find_first_of("0123456789") == std::string_view::npos) // N is north as well
        return false;
    const std::string unit = trimmed(text.substr(digitsOf(text).size()));
    return unit == "lb" || unit == "lbs" || unit == "kips" || forceUnitFrom(unit).has_value();
}

double numberIn(std::string_view text) {
    const auto number = parseNumber(trimmed(digitsOf(text)));
    const double* value = std::get_if<double>(&number);
    return value != nullptr ? *value : 0;
}

Extent extentOf(std::string_view text, double value, int asked) {
    std::string digits;
    int exponent = 0;
    const std::string_view written = digitsOf(text);
    const std::size_t mark = written.find_first_of("eE");
    for (const char c : written.substr(0, mark))
        if (c >= '0' && c <= '9')
            digits += c;
    if (mark != std::string_view::npos)
        exponent = std::atoi(std::string(written.substr(mark + 1)).c_str());
    const long double whole = std::strtold(digits.c_str(), nullptr);
    int decimals = 0;
    if (whole != 0 && value != 0) {
        decimals = static_cast<int>(
            std::lround(std::log10(whole / std::fabs(static_cast<long double>(value))))); // exponent included
    } else {
        const std::size_t point = written.substr(0, mark).find_last_of(".,");
        if (point != std::string_view::npos)
            decimals = static_cast<int>(
                std::count_if(written.begin() + static_cast<std::ptrdiff_t>(point),
                              written.begin() + static_cast<std::ptrdiff_t>(std::min(mark, written.size())),
                              [](char c) { return c >= '0' && c <= '9'; }));
        decimals -= exponent;
    }
    const std::size_t lead = digits.find_first_not_of('0');
    int figures = lead == std::string::npos ? 1 : static_cast<int>(digits.size() - lead);
    for (std::size_t i = digits.size(); decimals <= 0 && figures > asked && i > 0 && digits[i - 1] == '0';
         --i) {
        --figures;
        --decimals;
    }
    return {std::pow(10.0, -decimals), figures, decimals};
}

Readable<GivenNumber> readForce(std::string_view typed, const Sketch& sketch) {
    const auto [mass, isMass] = massAsForce(typed);
    const auto [text, isNegative] = unsignedText(plainForce(mass));
    if (isAngleText(text))
        return AttemptFault{Code::wrongUnit,
                            {},
                            "'" + trimmed(typed) + "' is an angle, and a force is due; give it in " +
                                std::string(symbolOf(sketch.forceUnit))};
    auto texts = readingsOf(text, [&](const std::string& t) { return parseMagnitude(t, sketch.forceUnit); });
    if (auto* fault = std::get_if<AttemptFault>(&texts))
        return std::move(*fault);
    GivenNumber out{trimmed(typed), {}, hasLetters(text), false, isMass};
    for (const std::string& reading : std::get<std::vector<std::string>>(texts)) {
        const auto parsed = parseMagnitude(reading, sketch.forceUnit);
        const auto* magnitude = std::get_if<TypedMagnitude>(&parsed);
        if (magnitude == nullptr)
            return unreadable(std::get<TypedError>(parsed));
        if (magnitude->tolerance)
            return AttemptFault{
                Code::unreadable, {}, "'" + trimmed(typed) + "' has a tolerance; give the value alone"};
        const double bare = numberIn(reading);
        const Extent extent = extentOf(reading, bare, figuresOf(magnitude->value, sketch));
        const double unit = bare == 0 ? 1 : magnitude->value / bare;
        out.readings.push_back({isNegative ? -magnitude->value : magnitude->value, unit * extent.unit / 2,
                                extent.figures, unit});
    }
    return out;
}

Readable<GivenNumber> angleNumber(const std::string& text, const Sketch& sketch) {
    auto texts = readingsOf(text, [&](const std::string& t) { return parseDirection(t, sketch.angleUnit); });
    if (auto* fault = std::get_if<AttemptFault>(&texts))
        return std::move(*fault);
    GivenNumber out{text, {}, hasLetters(text) || text.ends_with("°"), false};
    for (const std::string& reading : std::get<std::vector<std::string>>(texts)) {
        const auto parsed = parseDirection(reading, sketch.angleUnit);
        const auto* angle = std::get_if<TypedDirection>(&parsed);
        if (angle == nullptr)
            return unreadable(std::get<TypedError>(parsed));
        if (angle->tolerance)
            return AttemptFault{Code::unreadable, {}, "'" + text + "' has a tolerance; give the value alone"};
        const double bare = numberIn(reading);
        const Extent extent = extentOf(reading, bare, 15);
        const double unit = bare == 0 || angle->form != TypedDirection::Form::angle ? 1 : angle->angle / bare;
        out.readings.push_back({angle->angle, std::abs(unit) * extent.unit / 2, extent.decimals});
    }
    return out;
}

Readable<GivenNumber> asMinutes(Readable<GivenNumber> number, const Minutes& minutes, const std::string& text,
                                const Sketch& sketch) {
    if (auto* given = std::get_if<GivenNumber>(&number)) {
        given->text = text;
        given->hasUnit = true;
        for (GivenReading& reading : given->readings) {
            reading.half = convert(minutes.half, AngleUnit::deg, sketch.angleUnit);
            reading.figures = 2; // a minute is finer than a tenth of a degree, and coarser than a hundredth
        }
    }
    return number;
}

AttemptFault forceForAngle(std::string_view text) {
    return {Code::wrongUnit,
            {},
            "'" + trimmed(text) + "' is a force, and an angle is due; give it in deg, rad or gon"};
}

Readable<GivenNumber> readAngle(std::string_view typed, const Sketch& sketch) {
    const std::string text = trimmed(typed);
    if (const auto minutes = withoutMinutes(text))
        return asMinutes(readAngle(minutes->text, sketch), *minutes, text, sketch);
    if (isForceText(text))
        return forceForAngle(text);
    const auto parsed = parseDirection(text, sketch.angleUnit);
    const auto* direction = std::get_if<TypedDirection>(&parsed);
    if (direction != nullptr && (direction->form != TypedDirection::Form::angle || direction->tolerance))
        return AttemptFault{
            Code::unreadable, {}, "'" + text + "' is no angle of the figure; give a number such as 25"};
    return angleNumber(text, sketch);
}

} // namespace tailpoint::marking
