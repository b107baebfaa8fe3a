// SPDX-License-Identifier: MIT
#include "core/quantity/typed_number.h"

#include "core/quantity/text.h"

#include <algorithm>
#include <charconv>

namespace tailpoint::typing {
namespace {

// One run of digits, possibly in groups parted by single spaces.
struct DigitRun {
    std::string digits;
    std::vector<std::size_t> groups;
};

// The digits of a number between its marks, and the marks: one fewer than there are runs.
struct Written {
    std::vector<DigitRun> runs;
    std::string marks;
    std::size_t firstMark = 0; // its byte in the text
};

DigitRun takeDigits(Reader& reader) {
    DigitRun run;
    while (isDigit(reader.peek())) {
        std::size_t length = 0;
        while (isDigit(reader.peek())) {
            run.digits += static_cast<char>(reader.take());
            ++length;
        }
        run.groups.push_back(length);
        if (!isSpace(reader.peek()) || !isDigit(reader.peek(1))) {
            break;
        }
        reader.take();
    }
    return run;
}

// A mark at the end belongs to the number only where it is its first: "5." is 5.
Written takeWritten(Reader& reader) {
    Written written{{takeDigits(reader)}, "", 0};
    while (isMark(reader.peek()) &&
           (written.marks.empty() || isDigit(reader.peek(1)) || isMark(reader.peek(1)))) {
        written.firstMark = written.marks.empty() ? reader.byteOffset() : written.firstMark;
        written.marks += static_cast<char>(reader.take());
        written.runs.push_back(takeDigits(reader));
    }
    return written;
}

bool groupsBeforeMark(const std::vector<std::size_t>& groups) {
    for (std::size_t i = 1; i < groups.size(); ++i) {
        if (groups[i] != 3) {
            return false;
        }
    }
    return groups.size() < 2 || groups.front() <= 3;
}

bool groupsAfterMark(const std::vector<std::size_t>& groups) {
    for (std::size_t i = 0; i + 1 < groups.size(); ++i) {
        if (groups[i] != 3) {
            return false;
        }
    }
    return groups.size() < 2 || groups.back() <= 3;
}

// The first `count` runs could be groups of one whole number: "1", "234", "567". Nobody writes a group of
// zero, or one with a zero in front, at its head: 0,125 is a decimal.
bool areThrees(const Written& written, std::size_t count) {
    const DigitRun& head = written.runs.front();
    bool threes = head.groups.size() == 1 && head.digits.size() <= 3 && head.digits.front() != '0';
    for (std::size_t i = 1; i < count && threes; ++i) {
        threes = written.runs[i].groups.size() == 1 && written.runs[i].digits.size() == 3;
    }
    return threes;
}

// "1,234": a thousand and more, or one and a part.
bool readsTwoWays(const Written& written) {
    return written.marks == "," && areThrees(written, 2);
}

std::string digitsOf(const Written& written, std::size_t from, std::size_t to) {
    std::string digits;
    for (std::size_t i = from; i < to; ++i) {
        digits += written.runs[i].digits;
    }
    return digits;
}

TypedError severalMarks(std::string_view text, const Written& written) {
    const bool mixed = written.marks.find_first_not_of(written.marks.front()) != std::string::npos;
    return {TypedCode::severalMarks, inQuotes(text) +
                                         (mixed ? " has both '.' and ','" : " has two decimal marks") +
                                         "; type one decimal mark and no other, as in 1234.5"};
}

// Several marks are read where one sort parts groups of three: "1,234,567", "1,234.5", "1.234,5".
Typed<std::string> fromSeveralMarks(std::string_view text, const Written& written) {
    const char first = written.marks.front(), last = written.marks.back();
    const std::size_t all = written.runs.size();
    const bool alike = written.marks.find_first_not_of(first) == std::string::npos;
    if (alike && first == ',' && areThrees(written, all)) {
        return digitsOf(written, 0, all);
    }
    const bool lastAlone = written.marks.find(last) + 1 == written.marks.size();
    const bool oneSortBefore = written.marks.find_first_not_of(first) + 1 == written.marks.size();
    const DigitRun& part = written.runs.back();
    if (lastAlone && oneSortBefore && areThrees(written, all - 1) && part.groups.size() == 1) {
        return digitsOf(written, 0, all - 1) + "." + part.digits;
    }
    return severalMarks(text, written);
}

Typed<std::string> plainDigits(std::string_view text, const Written& written) {
    if (written.marks.size() > 1) {
        return fromSeveralMarks(text, written);
    }
    const DigitRun part = written.marks.empty() ? DigitRun{} : written.runs.back();
    if (!groupsBeforeMark(written.runs.front().groups) || !groupsAfterMark(part.groups)) {
        return TypedError{TypedCode::strayedSpaces,
                          inQuotes(text) + " has spaces that don't part groups of three; leave them out"};
    }
    return written.runs.front().digits + "." + part.digits;
}

// A text without its byte `at`, or with another character there.
std::string withMark(std::string_view text, std::size_t at, std::string_view mark) {
    return std::string(text.substr(0, at)) + std::string(mark) + std::string(text.substr(at + 1));
}

// `begin` and `end`: the bytes of the number in the text.
TypedError twoReadings(std::string_view text, const Written& written, std::size_t begin, std::size_t end) {
    const std::string_view number = text.substr(begin, end - begin);
    const std::size_t mark = written.firstMark - begin;
    return {TypedCode::twoReadings,
            oneLine(number) + " may be " + oneLine(withMark(number, mark, ".")) + " or " +
                oneLine(withMark(number, mark, "")) + ": write one of these",
            {withMark(text, written.firstMark, "."), withMark(text, written.firstMark, "")}};
}

std::string takeSign(Reader& reader) {
    if (!isSign(reader.peek())) {
        return "";
    }
    const bool negative = reader.take() != '+';
    reader.skipSpaces();
    return negative ? "-" : "";
}

// "e3", "E-5"; left alone where no digit follows, so that a unit may begin with e.
std::string takeExponent(Reader& reader) {
    if (reader.peek() != 'e' && reader.peek() != 'E') {
        return "";
    }
    const std::size_t sign = isSign(reader.peek(1)) ? 1 : 0;
    if (!isDigit(reader.peek(1 + sign))) {
        return "";
    }
    reader.take();
    std::string exponent = "e";
    if (sign != 0) {
        exponent += reader.take() == '+' ? "" : "-";
    }
    while (isDigit(reader.peek())) {
        exponent += static_cast<char>(reader.take());
    }
    return exponent;
}

Typed<double> valueOf(const std::string& plain, std::string_view text) {
    double value = 0;
    const auto read = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    const bool huge = plain.find("e-") == std::string::npos;
    if (read.ec == std::errc::result_out_of_range) {
        return TypedError{huge ? TypedCode::tooLarge : TypedCode::tooSmall,
                          inQuotes(text) + (huge ? " is too large for a number; type a smaller one"
                                                 : " is too small for a number; type 0 or a larger one")};
    }
    return value + 0.0;
}

} // namespace

std::string inQuotes(std::string_view text) {
    return "'" + oneLine(text) + "'";
}

TypedError unreadable(std::string_view text, std::string_view example) {
    return {TypedCode::unreadable, inQuotes(text) + " can't be read; type " + std::string(example)};
}

Typed<double> takeNumber(Reader& reader, std::string_view text) {
    reader.skipSpaces();
    const std::size_t begin = reader.byteOffset();
    const std::string sign = takeSign(reader);
    const Written written = takeWritten(reader);
    if (digitsOf(written, 0, written.runs.size()).empty()) {
        return unreadable(text, "a number such as 340 or 1.5");
    }
    const Typed<std::string> digits = plainDigits(text, written);
    if (failed(digits)) {
        return std::get<TypedError>(digits);
    }
    const std::string exponent = takeExponent(reader);
    if (readsTwoWays(written)) {
        return twoReadings(text, written, begin, reader.byteOffset());
    }
    return valueOf(sign + std::get<std::string>(digits) + exponent, text);
}

} // namespace tailpoint::typing
