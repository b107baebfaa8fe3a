// SPDX-License-Identifier: MIT
#include "core/quantity/decimals.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string_view>

namespace tailpoint {
namespace {

// A band wider than this part of the last shown unit would turn most values into ties; 12 figures need the
// cap.
constexpr double kWidestTieInUnits = 1.0 / 1024;
// Decimal digits taken from a computed value: far more than the tie band can see.
constexpr int kComputedDigits = 27;
// Room for the longest number written out: 151 places before the point, 12 behind it, and a carry.
constexpr std::size_t kMostDigits = 192;

// A decimal number: 0.d1 d2 d3 ... times ten to `point`; no digits for zero. On the stack: a solution shows
// hundreds of numbers.
struct Decimal {
    bool negative = false;
    int point = 0;
    std::size_t count = 0;
    std::array<char, kMostDigits> digit;

    std::string_view digits() const { return {digit.data(), count}; }
    void cutTo(std::size_t kept) {
        kept = std::min(kept, kMostDigits);
        if (kept > count)
            std::fill(digit.begin() + static_cast<std::ptrdiff_t>(count),
                      digit.begin() + static_cast<std::ptrdiff_t>(kept), '0');
        count = kept;
    }
};

Decimal fromScientific(std::string_view text) {
    Decimal result;
    const std::size_t mark = text.find('e');
    for (const char c : text.substr(0, mark)) {
        if (c == '-') {
            result.negative = true;
        } else if (c != '.') {
            result.digit[result.count++] = c;
        }
    }
    std::string_view exponent = text.substr(mark + 1);
    exponent.remove_prefix(exponent.front() == '+' ? 1 : 0);
    int power = 0;
    std::from_chars(exponent.data(), exponent.data() + exponent.size(), power);
    result.point = power + 1;
    return result;
}

Decimal decimalOf(double value, Origin origin) {
    if (value == 0) {
        return {};
    }
    std::array<char, 128> buffer;
    char* const end = buffer.data() + buffer.size();
    const auto written =
        origin == Origin::typed
            ? std::to_chars(buffer.data(), end, value, std::chars_format::scientific)
            : std::to_chars(buffer.data(), end, value, std::chars_format::scientific, kComputedDigits);
    return fromScientific({buffer.data(), static_cast<std::size_t>(written.ptr - buffer.data())});
}

enum class Tail { below, tie, above };

// The digits from `from` (>= 0) on as a fraction: 0.d d d ...
double fractionFrom(const Decimal& decimal, std::size_t from) {
    double fraction = 0;
    double place = 0.1;
    const std::size_t last = std::min(decimal.count, from + 20);
    for (std::size_t i = from; i < last; ++i, place /= 10) {
        fraction += (decimal.digit[i] - '0') * place;
    }
    return fraction;
}

Tail exactTail(const Decimal& decimal, std::size_t kept) {
    if (kept >= decimal.count) {
        return Tail::below;
    }
    const std::string_view tail = decimal.digits().substr(kept);
    if (tail.front() != '5') {
        return tail.front() < '5' ? Tail::below : Tail::above;
    }
    return tail.find_first_not_of('0', 1) == std::string_view::npos ? Tail::tie : Tail::above;
}

Tail bandedTail(const Decimal& decimal, std::size_t kept) {
    const char first = kept < decimal.count ? decimal.digit[kept] : '0';
    if (first != '4' && first != '5') { // far from a half, as most are
        return first < '4' ? Tail::below : Tail::above;
    }
    const double tail = fractionFrom(decimal, kept);
    const double sizeInUnits = fractionFrom(decimal, 0) * std::pow(10.0, static_cast<double>(kept));
    const double band = std::min(kTieBand * sizeInUnits, kWidestTieInUnits);
    if (std::fabs(tail - 0.5) <= band) {
        return Tail::tie;
    }
    return tail < 0.5 ? Tail::below : Tail::above;
}

bool roundsUp(const Decimal& decimal, std::size_t kept, Origin origin) {
    const Tail tail = origin == Origin::typed ? exactTail(decimal, kept) : bandedTail(decimal, kept);
    if (tail != Tail::tie) {
        return tail == Tail::above;
    }
    return kept > 0 && (decimal.digit[kept - 1] - '0') % 2 == 1;
}

void addOneUnit(Decimal& decimal) {
    for (std::size_t i = decimal.count; i > 0; --i) {
        if (decimal.digit[i - 1] != '9') {
            ++decimal.digit[i - 1];
            return;
        }
        decimal.digit[i - 1] = '0';
    }
    decimal.cutTo(decimal.count + 1); // all nines: a one, and zeros behind it
    decimal.digit[0] = '1';
    ++decimal.point;
}

// Cuts to `kept` digits (negative: the first digit lies below the last shown place).
void roundTo(Decimal& decimal, int kept, Origin origin) {
    if (kept < 0 || decimal.count == 0) {
        decimal = {};
        return;
    }
    const auto count = static_cast<std::size_t>(kept);
    const bool up = roundsUp(decimal, count, origin);
    decimal.cutTo(count);
    if (up) {
        addOneUnit(decimal);
    }
    if (decimal.digits().find_first_not_of('0') == std::string_view::npos) {
        decimal = {};
    }
}

std::string positional(const Decimal& decimal, int decimals) {
    std::string text(decimal.negative ? "-" : "");
    if (decimal.point <= 0)
        text += '0';
    const int count = static_cast<int>(decimal.count);
    for (int place = 0; place < decimal.point; ++place)
        text += place < count ? decimal.digit[static_cast<std::size_t>(place)] : '0';
    if (decimals > 0)
        text += '.';
    for (int i = 0; i < decimals; ++i) {
        const int place = decimal.point + i;
        text += place >= 0 && place < count ? decimal.digit[static_cast<std::size_t>(place)] : '0';
    }
    return text;
}

std::string scientific(const Decimal& decimal) {
    std::string text = decimal.negative ? "-" : "";
    text += decimal.digit[0];
    if (decimal.count > 1) {
        text += '.';
        text += decimal.digits().substr(1);
    }
    return text + "e" + std::to_string(decimal.point - 1);
}

// Places of the first digit for which a number is written out: 1e-4 <= size < 1e7.
bool isWrittenOut(int point) {
    return point >= -3 && point <= 7;
}

double readBack(const std::string& text) {
    double value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

} // namespace

std::string significant(double value, int figures, Origin origin) {
    Decimal decimal = decimalOf(value, origin);
    roundTo(decimal, figures, origin);
    if (decimal.count == 0) {
        return "0";
    }
    decimal.cutTo(static_cast<std::size_t>(figures)); // a carry (999.6 -> 1000) adds one digit
    return isWrittenOut(decimal.point) ? positional(decimal, std::max(0, figures - decimal.point))
                                       : scientific(decimal);
}

std::string fixedDecimals(double value, int decimals, Origin origin) {
    Decimal decimal = decimalOf(value, origin);
    roundTo(decimal, decimal.point + decimals, origin);
    return positional(decimal, decimals);
}

std::string shortest(double value) {
    if (value == 0) {
        return "0";
    }
    const double size = std::fabs(value);
    const auto format =
        size >= 1e-6 && size < 1e16 ? std::chars_format::fixed : std::chars_format::scientific;
    std::array<char, 64> buffer{};
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format);
    return {buffer.data(), written.ptr};
}

double roundedToFigures(double value, int figures) {
    return readBack(significant(value, figures));
}
double roundedToDecimals(double value, int decimals) {
    return readBack(fixedDecimals(value, decimals));
}

} // namespace tailpoint
