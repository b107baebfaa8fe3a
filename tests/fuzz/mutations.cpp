// SPDX-License-Identifier: MIT
#include "tests/fuzz/mutations.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <unistd.h>

namespace tailpoint::fuzz {

std::uint64_t Dice::next() {
    m_state += 0x9E3779B97F4A7C15ull;
    std::uint64_t z = m_state;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
    return z ^ (z >> 31);
}

double Dice::between(double low, double high) {
    const double unit = static_cast<double>(next() >> 11) * 0x1p-53;
    return low + unit * (high - low);
}

namespace {

constexpr std::array kAwkward = std::to_array<std::string_view>({" 12",
                                                                 " 275.5",
                                                                 " 3e2",
                                                                 "1e999",
                                                                 "-1e999",
                                                                 "1e-999",
                                                                 "NaN",
                                                                 "Infinity",
                                                                 "-0",
                                                                 "0",
                                                                 "-1",
                                                                 "1e308",
                                                                 "1e-308",
                                                                 "1e150",
                                                                 "\"340\"",
                                                                 "\"\"",
                                                                 "null",
                                                                 "true",
                                                                 "[]",
                                                                 "{}",
                                                                 "[3, 4]",
                                                                 "[0, 0]",
                                                                 "[1e999,1]",
                                                                 "[1,2,3]",
                                                                 "\"N\"",
                                                                 "\"kN\"",
                                                                 "\"furlong\"",
                                                                 "\"N30E\"",
                                                                 "\"N95E\"",
                                                                 "\"deg\"",
                                                                 "\"either\"",
                                                                 "00340",
                                                                 "0x10",
                                                                 "1.",
                                                                 ".5",
                                                                 "1,5",
                                                                 "\"\\u0000\"",
                                                                 "\"\\ud800\"",
                                                                 "\"P\"",
                                                                 "\"R\"",
                                                                 "99999999999999999999",
                                                                 "3.0000000000000000000001",
                                                                 "{\"slope\": [1, 0]}",
                                                                 "{\"bearing\": \"S90W\"}",
                                                                 "{\"value\": 1, \"plusMinus\": -1}",
                                                                 "{\"value\": 340, \"plusMinus\": 5}",
                                                                 "\xff\xfe",
                                                                 "\xc3\x28",
                                                                 "\xed\xa0\x80"});

using Mutation = void (*)(std::string&, const std::vector<std::string>&, Dice&);

std::size_t placeIn(const std::string& text, Dice& dice) {
    return dice.below(text.size() + 1);
}
std::size_t shortLength(Dice& dice) {
    return 1 + dice.below(dice.oneIn(8) ? 200 : 12);
}

void flipByte(std::string& text, const std::vector<std::string>&, Dice& dice) {
    if (!text.empty())
        text[dice.below(text.size())] = static_cast<char>(dice.next());
}

void cutRange(std::string& text, const std::vector<std::string>&, Dice& dice) {
    text.erase(placeIn(text, dice), shortLength(dice));
}

void doubleRange(std::string& text, const std::vector<std::string>&, Dice& dice) {
    const std::string piece = text.substr(placeIn(text, dice), shortLength(dice));
    text.insert(placeIn(text, dice), piece);
}

void spliceOther(std::string& text, const std::vector<std::string>& corpus, Dice& dice) {
    const std::string& other = dice.oneOf(corpus);
    text = text.substr(0, placeIn(text, dice)) + other.substr(placeIn(other, dice));
}

void cutEnd(std::string& text, const std::vector<std::string>&, Dice& dice) {
    text.resize(placeIn(text, dice));
}

void nest(std::string& text, const std::vector<std::string>&, Dice& dice) {
    const std::size_t depth = 1 + dice.below(dice.oneIn(20) ? 5000 : 10);
    std::string opening;
    for (std::size_t i = 0; i < depth; ++i)
        opening += dice.oneIn(2) ? "[" : "{\"a\":";
    text.insert(placeIn(text, dice), opening);
}

/// Replaces what stands after one of the colons (or commas) up to the next delimiter.
void replaceValue(std::string& text, const std::vector<std::string>&, Dice& dice) {
    const std::size_t start = text.find_first_of(":,[", placeIn(text, dice));
    if (start == std::string::npos)
        return;
    const std::size_t end = std::min(text.find_first_of(",}]\n", start + 1), text.size());
    text.replace(start + 1, end - start - 1, dice.oneOf(kAwkward));
}

/// One quoted word becomes another quoted word of the same text: keys and names get mixed up.
void swapWord(std::string& text, const std::vector<std::string>&, Dice& dice) {
    const auto quotedFrom = [&](std::size_t from) -> std::pair<std::size_t, std::size_t> {
        const std::size_t open = text.find('"', from);
        const std::size_t close = open == std::string::npos ? open : text.find('"', open + 1);
        return {open, close};
    };
    const auto [open, close] = quotedFrom(placeIn(text, dice));
    const auto [otherOpen, otherClose] = quotedFrom(placeIn(text, dice));
    if (close == std::string::npos || otherClose == std::string::npos)
        return;
    const std::string word = text.substr(otherOpen, otherClose - otherOpen + 1);
    text.replace(open, close - open + 1, word);
}

constexpr std::array<Mutation, 10> kMutations{flipByte, cutRange,     doubleRange,  spliceOther,  cutEnd,
                                              nest,     replaceValue, replaceValue, replaceValue, swapWord};

constexpr std::array kTypedPieces = std::to_array<std::string_view>({"0",
                                                                     "1",
                                                                     "2",
                                                                     "3",
                                                                     "5",
                                                                     "7",
                                                                     "340",
                                                                     "12",
                                                                     ".",
                                                                     ",",
                                                                     "-",
                                                                     "+",
                                                                     "\xE2\x88\x92",
                                                                     " ",
                                                                     "\xC2\xA0",
                                                                     "\xE2\x80\xAF",
                                                                     "e",
                                                                     "E",
                                                                     "e3",
                                                                     "e999",
                                                                     "e-9",
                                                                     "N",
                                                                     "kN",
                                                                     "lbf",
                                                                     "lb",
                                                                     "kip",
                                                                     "kgf",
                                                                     "\xC2\xB0",
                                                                     "deg",
                                                                     "rad",
                                                                     "gon",
                                                                     ":",
                                                                     "N",
                                                                     "S",
                                                                     "W",
                                                                     "E",
                                                                     "+-",
                                                                     "\xC2\xB1",
                                                                     "nan",
                                                                     "inf",
                                                                     "000",
                                                                     "\t",
                                                                     "\xff",
                                                                     "\xC3"});

std::atomic<std::uint64_t> currentSeed{0};

void sayAndDie(int signalNumber) {
    std::array<char, 96> line{};
    const int length = std::snprintf(line.data(), line.size(), "\nDied of signal %d at seed %llu\n",
                                     signalNumber, static_cast<unsigned long long>(currentSeed.load()));
    if (length > 0 && write(STDERR_FILENO, line.data(), static_cast<std::size_t>(length)) < 0)
        _exit(3);
    std::signal(signalNumber, SIG_DFL);
    std::raise(signalNumber);
}

} // namespace

std::string mutated(const std::vector<std::string>& corpus, std::uint64_t seed) {
    Dice dice(seed);
    std::string text = dice.oneOf(corpus);
    for (std::size_t left = 1 + dice.below(3); left > 0; --left)
        dice.oneOf(kMutations)(text, corpus, dice);
    return text;
}

std::string typedText(std::uint64_t seed) {
    Dice dice(seed);
    std::string text;
    for (std::size_t left = dice.below(9); left > 0; --left)
        text += dice.oneOf(kTypedPieces);
    return text;
}

std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : text.substr(0, 2000)) {
        if (c >= ' ' && c <= '~') {
            out += c;
            continue;
        }
        std::array<char, 8> code{};
        std::snprintf(code.data(), code.size(), "\\x%02x",
                      static_cast<unsigned>(static_cast<unsigned char>(c)));
        out += code.data();
    }
    return out;
}

void announceSeedOnCrash() {
    for (const int number : {SIGSEGV, SIGABRT, SIGFPE, SIGBUS, SIGILL})
        std::signal(number, sayAndDie);
}

void setCurrentSeed(std::uint64_t seed) {
    currentSeed = seed;
}

} // namespace tailpoint::fuzz
