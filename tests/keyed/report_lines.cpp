// SPDX-License-Identifier: MIT
#include "tests/keyed/report_lines.h"

#include <algorithm>
#include <array>
#include <sstream>

namespace tailpoint::keyed {

namespace {

using boost::multiprecision::abs;
using Strings = std::vector<std::string>;

const Big kTie("1e-12"); ///< of the value: a tie may go either way, and noise of this size is none
constexpr int kGuard = 2;
constexpr std::size_t kMostWords = 24; ///< of a formula in running text

Strings split(const std::string& text, std::string_view by) {
    Strings parts;
    std::size_t from = 0;
    for (std::size_t at = text.find(by); at != std::string::npos; at = text.find(by, from)) {
        parts.push_back(text.substr(from, at - from));
        from = at + by.size();
    }
    parts.push_back(text.substr(from));
    return parts;
}

std::string trimmed(const std::string& text) {
    const auto from = text.find_first_not_of(' ');
    return from == std::string::npos ? std::string()
                                     : text.substr(from, text.find_last_not_of(' ') - from + 1);
}

/// Columns stand two spaces and more apart.
Strings cells(const std::string& row) {
    Strings out;
    for (const std::string& cell : split(row, "  "))
        if (!trimmed(cell).empty())
            out.push_back(trimmed(cell));
    return out;
}

std::string shown(const Big& value) {
    return value.str(12);
}

/// ", to three figures 520 N".
struct Rounding {
    std::string number;
    bool isFigures = false;
    int count = 0;
};

std::optional<int> counted(const std::string& word) {
    static constexpr std::array<const char*, 13> words{"no",   "one",    "two",   "three", "four",
                                                       "five", "six",    "seven", "eight", "nine",
                                                       "ten",  "eleven", "twelve"};
    for (std::size_t i = 0; i < words.size(); ++i)
        if (word == words[i])
            return static_cast<int>(i);
    return std::nullopt;
}

std::optional<Rounding> roundingOf(const std::string& words) {
    if (!words.starts_with("to "))
        return std::nullopt;
    for (const char* nearest : {"to the nearest degree ", "to the nearest gon "})
        if (words.starts_with(nearest))
            return Rounding{words.substr(std::string(nearest).size()), false, 0};
    const Strings parts = split(words, " ");
    const auto count = parts.size() < 4 ? std::nullopt : counted(parts[1]);
    if (!count)
        return std::nullopt;
    const bool figures = parts[2].starts_with("figure");
    if (!figures && !parts[2].starts_with("decimal"))
        return std::nullopt;
    std::string number = parts[3];
    for (std::size_t i = 4; i < parts.size(); ++i)
        number += " " + parts[i];
    return Rounding{number, figures, *count};
}

/// One unit in the place of the last of so many figures.
Big placeOfFigures(const Big& value, int figures) {
    Big place = 1, size = abs(value);
    if (size == 0)
        return 0;
    while (size >= 10)
        size /= 10, place *= 10;
    while (size < 1)
        size *= 10, place /= 10;
    return place * powerOfTen(1 - figures);
}

class Keying {
public:
    Keying(const Setting& setting, Keyed& out) : m_setting(setting), m_out(out) {}

    void read(const std::string& report) {
        std::istringstream in(report);
        for (std::string line; std::getline(in, line);)
            readLine(line);
        endProse();
        endGroup();
    }

private:
    void readLine(const std::string& line) {
        if (line.starts_with("     ") && line.size() > 5) {
            endProse();
            return readBlock(line.substr(5));
        }
        endGroup();
        m_relation.clear();
        if (line.starts_with("   | "))
            m_prose += " " + line.substr(5);
        else if (line.starts_with("   "))
            m_prose += " " + line.substr(3);
        else
            endProse();
    }

    void readBlock(const std::string& line) {
        if (line.starts_with(' ') && trimmed(line).starts_with("= ")) {
            m_group.push_back(trimmed(line).substr(2));
            return;
        }
        if (line.starts_with(' ') && (trimmed(line).starts_with("+ ") || trimmed(line).starts_with("- ") ||
                                      trimmed(line).starts_with("/ "))) {
            m_group.back() += " " + trimmed(line);
            return;
        }
        endGroup();
        if (isRelation(line))
            return keyRelation(line);
        m_relation.clear();
        if (line.find(" = ") != std::string::npos)
            m_group = split(line, " = ");
        else if (!line.starts_with("---"))
            keyRow(cells(line));
    }

    // Lines of calculation.

    void endGroup() {
        if (m_group.size() > 1)
            keyGroup();
        m_group.clear();
    }

    void keyGroup() {
        std::string last = m_group.back(), words;
        if (const auto comma = last.find(", "); comma != std::string::npos) {
            words = last.substr(comma + 2);
            last.resize(comma);
        }
        const auto value = printedNumber(last, m_setting.angles);
        if (!value)
            return;
        for (std::size_t i = 0; i + 1 < m_group.size(); ++i)
            if (i > 0 || isNumeric(m_group[0]))
                keySegment(m_group[i], last, *value, words);
        if (!words.empty())
            keyRounding(*value, words);
        m_memory[m_group.front()] = value->amount;
    }

    bool isNumeric(const std::string& text) const {
        return keyIn(text, m_setting.angles).kind != Outcome::Kind::unread;
    }

    void keySegment(const std::string& text, const std::string& last, const PrintedNumber& value,
                    const std::string& words) {
        const bool numeric = isNumeric(text);
        const Outcome outcome = keyIn(text, m_setting.angles, m_memory);
        if (outcome.kind == Outcome::Kind::unread) {
            ++m_out.tally.unread;
            if (isOfNumbers(text))
                wrong(text, last, "could not be read");
            return;
        }
        if (outcome.kind == Outcome::Kind::undefined) {
            if (m_setting.byHand && words.find("full calculation") != std::string::npos)
                ++m_out.tally.excused;
            else
                wrong(text, last, "has no value");
            return;
        }
        ++(numeric ? m_out.tally.lines : m_out.tally.symbolic);
        compare(text, last, outcome.amount, value, placeOf(value));
    }

    /// No letter in it but those of units and functions.
    static bool isOfNumbers(std::string text) {
        for (const char* word : {"arcsin", "arccos", "arctan", "sin", "cos", "tan", "kgf", "kip", "lbf", "kN",
                                 "N", "rad", "gon", "π"})
            for (auto at = text.find(word); at != std::string::npos; at = text.find(word))
                text.erase(at, std::string(word).size());
        return text.find_first_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_") ==
                   std::string::npos &&
               text.find_first_of("0123456789") != std::string::npos &&
               std::none_of(text.begin(), text.end(), [](char c) {
                   return static_cast<unsigned char>(c) >= 0xCE && static_cast<unsigned char>(c) < 0xD0;
               });
    }

    void compare(const std::string& text, const std::string& last, const Amount& keyed,
                 const PrintedNumber& printed, const Big& place) {
        if (keyed.force != printed.amount.force && printed.amount.value != 0)
            return wrong(text, last, "has another unit");
        const Big gap = abs(keyed.value - printed.amount.value);
        const Big slack =
            kTie * std::max(Big(abs(keyed.value)), printed.amount.value == 0 ? keyed.largest : Big(0));
        if (gap > (printed.amount.value == 0 && printed.amount.force != 0 ? Big(0) : Big(place / 2)) + slack)
            wrong(text, last, "comes to " + shown(keyed.value));
    }

    int figuresOf(const PrintedNumber& number) const {
        const Big place = placeOfFigures(number.amount.value, 1);
        const bool one = place != 0 && abs(number.amount.value) < 2 * place;
        return m_setting.figures + (m_setting.moreAfterOne && one ? 1 : 0);
    }

    /// Zeros before the point may be there for the place's sake: as many figures as are carried are meant.
    Big placeOf(const PrintedNumber& number) const {
        if (number.hasPoint)
            return powerOfTen(-number.decimals);
        const int meant = figuresOf(number) + (m_setting.byHand ? 0 : kGuard);
        return powerOfTen(std::max(0, number.digits - meant));
    }

    void keyRounding(const PrintedNumber& value, const std::string& words) {
        const auto rounding = roundingOf(words);
        if (!rounding)
            return;
        const auto number = printedNumber(rounding->number, m_setting.angles);
        if (!number)
            return wrong(words, "", "could not be read");
        ++m_out.tally.rounded;
        const bool countFits = rounding->isFigures || number->decimals == rounding->count;
        const Big place = rounding->isFigures ? placeOfFigures(number->amount.value, rounding->count)
                                              : powerOfTen(-rounding->count);
        if (!countFits ||
            abs(number->amount.value - value.amount.value) > place / 2 + kTie * abs(value.amount.value))
            wrong(words, shown(value.amount.value), "is rounded otherwise");
    }

    // Inequalities.

    static constexpr std::array<const char*, 4> kSigns{" ≤ ", " ≥ ", " < ", " > "};
    static bool isRelation(const std::string& line) {
        return std::any_of(kSigns.begin(), kSigns.end(),
                           [&](const char* sign) { return line.find(sign) != std::string::npos; });
    }
    static Strings sides(std::string line) {
        for (const char* sign : kSigns)
            for (auto at = line.find(sign); at != std::string::npos; at = line.find(sign))
                line.replace(at, std::string(sign).size(), "\n");
        return split(line, "\n");
    }

    void keyRelation(const std::string& line) {
        const Strings now = sides(line);
        if (now.size() == m_relation.size())
            for (std::size_t i = 0; i < now.size(); ++i)
                keySide(m_relation[i], now[i]);
        m_relation = now;
    }
    void keySide(const std::string& before, const std::string& now) {
        const auto printed = printedNumber(now, m_setting.angles);
        const Outcome keyed = keyIn(before, m_setting.angles, m_memory);
        if (!printed || keyed.kind != Outcome::Kind::value)
            return;
        ++m_out.tally.relations;
        compare(before, now, keyed.amount, *printed, placeOfEstimate(*printed));
    }
    /// Estimates have the figures of an answer, or more.
    Big placeOfEstimate(const PrintedNumber& number) const {
        return number.hasPoint ? powerOfTen(-number.decimals)
                               : powerOfTen(std::max(0, number.digits - figuresOf(number)));
    }

    // Component tables.

    void keyRow(const Strings& row) {
        if (row.size() != 5 || row.front() == "force")
            return;
        const auto size = printedNumber(row[1], m_setting.angles),
                   x = printedNumber(row[3], m_setting.angles), y = printedNumber(row[4], m_setting.angles);
        if (!size || !x || !y)
            return wrong(row[0], row[1], "is no row of numbers");
        keyCell(row, "cos", *x, 3);
        keyCell(row, "sin", *y, 4);
    }
    void keyCell(const Strings& row, const std::string& function, const PrintedNumber& printed,
                 std::size_t column) {
        const std::string formula = "(" + row[1] + ")" + part(row[2], function);
        const Outcome keyed = keyIn(formula, m_setting.angles);
        if (keyed.kind != Outcome::Kind::value)
            return wrong(formula, row[column], "could not be read");
        ++m_out.tally.cells;
        compare(formula, row[column], keyed.amount, printed, placeOf(printed));
    }
    /// Of the magnitude: "cos(25.0°)"; along a slope "(12)/√(12² + 5²)".
    static std::string part(const std::string& way, const std::string& function) {
        const Strings slope = split(way, " : ");
        if (slope.size() != 2)
            return " " + function + "(" + way + ")";
        return "(" + (function == "cos" ? slope[0] : slope[1]) + ")/√((" + slope[0] + ")² + (" + slope[1] +
               ")²)";
    }

    // Running text.

    void endProse() {
        const Strings parts = split(m_prose, " = ");
        for (std::size_t i = 0; i + 1 < parts.size(); ++i)
            keyProse(parts[i], parts[i + 1]);
        m_prose.clear();
    }

    /// The longest number, with its unit, at the beginning.
    std::optional<std::pair<std::string, PrintedNumber>> numberAhead(const std::string& text) const {
        const Strings words = split(text, " ");
        std::optional<std::pair<std::string, PrintedNumber>> best;
        std::string ahead;
        for (std::size_t i = 0; i < words.size() && i < 5; ++i) {
            ahead += (i > 0 ? " " : "") + words[i];
            std::string bare = ahead;
            while (!bare.empty() && std::string_view(".,;:)").find(bare.back()) != std::string_view::npos)
                bare.pop_back();
            if (const auto number = printedNumber(bare, m_setting.angles))
                best = {bare, *number};
        }
        return best;
    }

    void keyProse(const std::string& left, const std::string& right) {
        const auto number = numberAhead(right);
        if (!number)
            return;
        const Strings words = split(left, " ");
        const std::size_t most = std::min(words.size(), kMostWords);
        for (std::size_t n = most; n > 1; --n) {
            std::string formula;
            for (std::size_t i = words.size() - n; i < words.size(); ++i)
                formula += (formula.empty() ? "" : " ") + words[i];
            const Outcome keyed = keyIn(formula, m_setting.angles, m_memory);
            if (formula.empty() || keyed.kind != Outcome::Kind::value || isJustNumber(formula) ||
                m_memory.contains(trimmed(formula)))
                continue;
            ++m_out.tally.prose;
            return compare(formula, number->first, keyed.amount, number->second,
                           placeOfEstimate(number->second));
        }
        if (!words.empty() && !words.back().empty())
            m_memory.try_emplace(words.back(), number->second.amount);
    }
    bool isJustNumber(const std::string& text) const {
        return printedNumber(trimmed(text), m_setting.angles).has_value();
    }

    void wrong(const std::string& text, const std::string& printed, const std::string& why) {
        m_out.wrong.push_back(text + " = " + printed + " " + why);
    }

    const Setting& m_setting;
    Keyed& m_out;
    Memory m_memory;
    Strings m_group, m_relation;
    std::string m_prose;
};

} // namespace

Tally& Tally::operator+=(const Tally& other) {
    lines += other.lines;
    symbolic += other.symbolic;
    rounded += other.rounded;
    relations += other.relations;
    cells += other.cells;
    prose += other.prose;
    unread += other.unread;
    excused += other.excused;
    return *this;
}

Keyed keyReport(const std::string& report, const Setting& setting) {
    Keyed out;
    Keying(setting, out).read(report);
    return out;
}

} // namespace tailpoint::keyed
