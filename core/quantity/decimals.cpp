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
constexpr int kComputedDigits = 40;

// A decimal number: 0.d1 d2 d3 ... times ten to `point`; no digits for zero.
struct Decimal {
    bool negative = false;
    std::string digits;
    int point = 0;
};

Decimal fromScientific(std::string_view text) {
    Decimal result;
    const std::size_t mark = text.find('e');
    for (const char c : text.substr(0, mark)) {
        if (c == '-') {
            result.negative = true;
        } else if (c != '.') {
            result.digits += c;
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
    std::array<char, 128> buffer{};
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
    const std::size_t last = std::min(decimal.digits.size(), from + 20);
    for (std::size_t i = from; i < last; ++i, place /= 10) {
        fraction += (decimal.digits[i] - '0') * place;
    }
    return fraction;
}

Tail exactTail(const Decimal& decimal, std::size_t kept) {
    if (kept >= decimal.digits.size()) {
        return Tail::below;
    }
    const std::string_view tail = std::string_view(decimal.digits).substr(kept);
    if (tail.front() != '5') {
        return tail.front() < '5' ? Tail::below : Tail::above;
    }
    return tail.find_first_not_of('0', 1) == std::string_view::npos ? Tail::tie : Tail::above;
}

Tail bandedTail(const Decimal& decimal, std::size_t kept) {
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
    return kept > 0 && (decimal.digits[kept - 1] - '0') % 2 == 1;
}

void addOneUnit(Decimal& decimal) {
    for (auto digit = decimal.digits.rbegin(); digit != decimal.digits.rend(); ++digit) {
        if (*digit != '9') {
            ++*digit;
            return;
        }
        *digit = '0';
    }
    decimal.digits.insert(decimal.digits.begin(), '1');
    ++decimal.point;
}

// `decimal` cut to `kept` digits (negative: the first digit lies below the last shown place).
Decimal rounded(Decimal decimal, int kept, Origin origin) {
    if (kept < 0 || decimal.digits.empty()) {
        return {};
    }
    const auto count = static_cast<std::size_t>(kept);
    const bool up = roundsUp(decimal, count, origin);
    decimal.digits.resize(count, '0');
    if (up) {
        addOneUnit(decimal);
    }
    if (decimal.digits.find_first_not_of('0') == std::string::npos) {
        return {};
    }
    return decimal;
}

std::string positional(const Decimal& decimal, int decimals) {
    std::string whole;
    std::string part;
    const int count = static_cast<int>(decimal.digits.size());
    for (int place = std::min(0, decimal.point); place < std::max(decimal.point + decimals, 0); ++place) {
        const char digit =
            place >= 0 && place < count ? decimal.digits[static_cast<std::size_t>(place)] : '0';
        (place < decimal.point ? whole : part) += digit;
    }
    part.resize(static_cast<std::size_t>(std::max(decimals, 0)), '0');
    std::string text = decimal.negative ? "-" : "";
    text += whole.empty() ? "0" : whole;
    return part.empty() ? text : text + "." + part;
}

std::string scientific(const Decimal& decimal) {
    std::string text = decimal.negative ? "-" : "";
    text += decimal.digits.front();
    if (decimal.digits.size() > 1) {
        text += "." + decimal.digits.substr(1);
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
    Decimal decimal = rounded(decimalOf(value, origin), figures, origin);
    if (decimal.digits.empty()) {
        return "0";
    }
    decimal.digits.resize(static_cast<std::size_t>(figures)); // a carry (999.6 -> 1000) adds one digit
    return isWrittenOut(decimal.point) ? positional(decimal, std::max(0, figures - decimal.point))
                                       : scientific(decimal);
}

std::string fixedDecimals(double value, int decimals, Origin origin) {
    const Decimal full = decimalOf(value, origin);
    return positional(rounded(full, full.point + decimals, origin), decimals);
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
