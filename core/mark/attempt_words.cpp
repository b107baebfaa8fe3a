// SPDX-License-Identifier: MIT
// Signs and letters that stand in a typed value beside its number: a word for the sense, minutes of arc.
#include "core/mark/attempt.h"

#include "core/quantity/decimals.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint::marking {

namespace {

struct SenseWord {
    std::string_view word;
    int sign;
};
constexpr std::array kSenseWords{SenseWord{"in tension", 1},
                                 SenseWord{"in compression", -1},
                                 SenseWord{"(tension)", 1},
                                 SenseWord{"tension", 1},
                                 SenseWord{"(compression)", -1},
                                 SenseWord{"compression", -1},
                                 SenseWord{"(pull)", 1},
                                 SenseWord{"pull", 1},
                                 SenseWord{"(push)", -1},
                                 SenseWord{"push", -1},
                                 SenseWord{"(T)", 1},
                                 SenseWord{"T", 1},
                                 SenseWord{"(C)", -1},
                                 SenseWord{"C", -1}};

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
}

/// Letters that stand alone count as they are; words in capitals too.
bool isWord(std::string_view text, std::string_view word) {
    const bool isSymbol = word.find_first_of("TC") != std::string_view::npos;
    return std::equal(text.begin(), text.end(), word.begin(), word.end(),
                      [&](char a, char b) { return isSymbol ? a == b : lower(a) == b; });
}

/// Without a word for the sense at either end, and its sign; 0 where there is none.
std::pair<std::string, int> withoutSense(std::string_view typed) {
    const std::string text = trimmed(typed);
    for (const auto& [word, sign] : kSenseWords) {
        if (text.size() <= word.size())
            continue;
        const std::size_t rest = text.size() - word.size();
        if (isWord(std::string_view(text).substr(rest), word) && !isLetter(text[rest - 1]))
            return {trimmed(std::string_view(text).substr(0, rest)), sign};
        if (isWord(std::string_view(text).substr(0, word.size()), word) && !isLetter(text[word.size()]))
            return {trimmed(std::string_view(text).substr(word.size())), sign};
    }
    return {text, 0};
}

/// The number of whole digits that end, or begin, there.
std::size_t digitsBefore(std::string_view text, std::size_t end) {
    std::size_t count = 0;
    while (count < end && text[end - count - 1] >= '0' && text[end - count - 1] <= '9')
        ++count;
    return count;
}

/// A number below 60 with one of the marks behind it, and where it ends; nothing where there is none.
struct Sixtieth {
    double value = 0;
    int decimals = 0;
    std::size_t end = 0;
};
std::optional<Sixtieth> sixtiethAt(std::string_view text, std::size_t at,
                                   std::initializer_list<std::string_view> marks) {
    while (at < text.size() && text[at] == ' ')
        ++at;
    const std::size_t end = std::min(text.find_first_not_of("0123456789.", at), text.size());
    const std::string number(text.substr(at, end - at));
    const auto mark = std::find_if(marks.begin(), marks.end(),
                                   [&](std::string_view one) { return text.substr(end).starts_with(one); });
    if (number.empty() || mark == marks.end() || std::count(number.begin(), number.end(), '.') > 1)
        return std::nullopt;
    const std::size_t point = number.find('.');
    const double value = std::strtod(number.c_str(), nullptr);
    if (value >= 60)
        return std::nullopt;
    return Sixtieth{value, point == std::string::npos ? 0 : static_cast<int>(number.size() - point - 1),
                    end + mark->size()};
}

} // namespace

Readable<GivenNumber> readSensed(std::string_view typed, const Sketch& sketch, bool isFree) {
    const auto [text, sign] = withoutSense(typed);
    if (sign == 0 || (sign < 0 && !isFree))
        return readForce(typed, sketch);
    auto number = readForce(text, sketch);
    auto* given = std::get_if<GivenNumber>(&number);
    if (given == nullptr)
        return number;
    given->text = trimmed(typed);
    given->hasUnit = !std::all_of(text.begin(), text.end(), [](char c) { return !isLetter(c); });
    for (GivenReading& reading : given->readings) {
        if (reading.value < 0 && sign > 0)
            return AttemptFault{AttemptFault::Code::unreadable,
                                {},
                                "'" + given->text + "' has a minus and a word for a pull; give one of them"};
        reading.value = sign * std::abs(reading.value);
    }
    return number;
}

std::optional<Minutes> withoutMinutes(std::string_view text) {
    constexpr std::string_view degree = "°";
    const std::size_t at = text.find(degree);
    if (at == std::string_view::npos || digitsBefore(text, at) == 0)
        return std::nullopt;
    const std::size_t begin = at - digitsBefore(text, at);
    if (begin > 0 && (text[begin - 1] == '.' || text[begin - 1] == ','))
        return std::nullopt;
    const auto minutes = sixtiethAt(text, at + degree.size(), {"′", "'", "’"});
    if (!minutes)
        return std::nullopt;
    const auto seconds = sixtiethAt(text, minutes->end, {"″", "\"", "”", "''", "′′"});
    const double whole = std::strtod(std::string(text.substr(begin, at - begin)).c_str(), nullptr);
    const double degrees = whole + minutes->value / 60 + (seconds ? seconds->value / 3600 : 0);
    const Sixtieth& last = seconds ? *seconds : *minutes;
    return Minutes{std::string(text.substr(0, begin)) + shortest(degrees) + std::string(degree) +
                       std::string(text.substr(last.end)),
                   std::pow(10.0, -last.decimals) / (seconds ? 3600 : 60) / 2};
}

} // namespace tailpoint::marking
