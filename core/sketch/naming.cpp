// SPDX-License-Identifier: MIT
#include "core/sketch/naming.h"

#include "core/quantity/text.h"
#include "core/quantity/utf8.h"

#include <algorithm>

namespace tailpoint {

namespace {

struct Twin {
    char32_t letter;
    char looksLike;
};
/// Capitals of Greek and Cyrillic that stand like Latin ones, and the small ones that do in italics.
constexpr Twin kTwins[] = {
    {U'Α', 'A'}, {U'Β', 'B'}, {U'Ε', 'E'}, {U'Ζ', 'Z'}, {U'Η', 'H'}, {U'Ι', 'I'}, {U'Κ', 'K'}, {U'Μ', 'M'},
    {U'Ν', 'N'}, {U'Ο', 'O'}, {U'Ρ', 'P'}, {U'Τ', 'T'}, {U'Υ', 'Y'}, {U'Χ', 'X'}, {U'ο', 'o'}, {U'А', 'A'},
    {U'В', 'B'}, {U'Е', 'E'}, {U'К', 'K'}, {U'М', 'M'}, {U'Н', 'H'}, {U'О', 'O'}, {U'Р', 'P'}, {U'С', 'C'},
    {U'Т', 'T'}, {U'Х', 'X'}, {U'а', 'a'}, {U'е', 'e'}, {U'о', 'o'}, {U'р', 'p'}, {U'с', 'c'}, {U'х', 'x'},
    {U'у', 'y'}, {U'і', 'i'}, {U'І', 'I'}, {U'Ѕ', 'S'}, {U'ѕ', 's'}, {U'Ј', 'J'}, {U'ј', 'j'},
};

void appendLook(std::string& out, char32_t c) {
    if (c == U'\u00B5') // micro sign
        return appendUtf8(out, U'μ');
    if (c == U'\u00A0' || (c >= 0x2000 && c <= 0x200A) || c == U'\u202F')
        return appendUtf8(out, U' ');
    if (c >= 0x2080 && c <= 0x2089)
        return appendUtf8(out, c);
    const auto* twin =
        std::find_if(std::begin(kTwins), std::end(kTwins), [c](const Twin& t) { return t.letter == c; });
    appendUtf8(out, twin == std::end(kTwins) ? c : static_cast<char32_t>(twin->looksLike));
}

std::string withoutIdleSpaces(std::string_view text) {
    std::string out;
    for (const char c : text)
        if (c != ' ' || (!out.empty() && out.back() != ' '))
            out += c;
    if (!out.empty() && out.back() == ' ')
        out.pop_back();
    return out;
}

bool isAscii(std::string_view text) {
    return std::none_of(text.begin(), text.end(),
                        [](char c) { return static_cast<unsigned char>(c) >= 0x80; });
}

bool mayBeALetter(std::string_view base) {
    return !base.empty() && !(base.front() >= 'A' && base.front() <= 'Z');
}

} // namespace

std::string looksOf(std::string_view text) {
    if (isAscii(text))
        return withoutIdleSpaces(text);
    std::string out;
    for (const char32_t c : codePoints(text))
        appendLook(out, c);
    return withoutIdleSpaces(out);
}

std::string spelledLetter(std::string_view letter) {
    for (const LetterRow& row : {kTheta, kPsi, kPhi, kAlpha, kBeta, kGamma, kAcute, kDistance})
        for (std::size_t i = 0; i < row.letters.size(); ++i)
            if (letter.starts_with(row.letters[i])) {
                std::string out(row.spelled[i]);
                for (const char32_t c : codePoints(letter.substr(row.letters[i].size())))
                    c == U'′' ? out += "'" : c == U'″' ? out += "''" : (appendUtf8(out, c), out);
                return out;
            }
    return std::string(letter);
}

Naming::Naming(Things& things, const Sketch& sketch) : m_things(things), m_sketch(sketch) {}

void Naming::run() {
    m_things.m_forces.reserve(m_sketch.forces.size());
    for (const Force& force : m_sketch.forces)
        m_things.m_forces.push_back(named(force));
    m_things.m_sum = named(m_sketch.sum);
    nameKnown();
    nameLetters();
    m_things.m_axesFenced = componentsClash();
}

Things::Named Naming::named(const Force& vector) {
    Things::Named out;
    out.name = vector.name;
    out.symbol = freeSymbol(vector.name);
    out.subscript = freeSubscript(out.symbol);
    out.sizeGiven = isGiven(vector.magnitude);
    out.wayGiven = isGiven(vector.direction);
    if (mayBeALetter(out.symbol.base))
        m_letterLike.push_back(looksOf(out.symbol.base));
    return out;
}

Symbol Naming::freeSymbol(const std::string& name) {
    const std::string shown = withoutIdleSpaces(name);
    Symbol symbol = symbolOfName(shown);
    if (!isFree(symbol))
        symbol = {shown, {}};
    for (int i = 2; !isFree(symbol); ++i)
        symbol = {shown, "(" + std::to_string(i) + ")"};
    m_looks.insert(looksOf(inPrint(symbol)));
    return symbol;
}

Subscript Naming::freeSubscript(const Symbol& symbol) {
    Subscript sub = asSubscript(symbol);
    const std::string behind = inPrint(symbol).substr(symbol.base.size());
    const Subscript whole = asSubscript({symbol.base, {}}).append(behind);
    const auto look = [](const Subscript& behindTheta) { return looksOf(inPrint({"θ", behindTheta.text})); };
    if (m_subscripts.contains(look(sub)))
        sub = whole;
    for (int i = 2; !m_subscripts.insert(look(sub)).second; ++i)
        sub = Subscript(whole).append("(" + std::to_string(i) + ")");
    return sub;
}

bool Naming::isNameFree(const std::string& name) const {
    return isFree(symbolOfName(name));
}

void Naming::nameKnown() {
    constexpr std::array<const char*, 3> letters{"K", "L", "M"};
    std::string name;
    for (int i = 0; i < 3 && name.empty(); ++i)
        if (isNameFree(letters[static_cast<std::size_t>(i)]))
            name = letters[static_cast<std::size_t>(i)];
    for (int i = 1; name.empty(); ++i)
        if (isNameFree("K" + std::to_string(i)))
            name = "K" + std::to_string(i);
    Force known;
    known.name = name;
    m_things.m_known = named(known);
    const auto areFree = [&](const std::string& letter) {
        for (std::size_t i = 1; i + 1 < m_sketch.forces.size() && i < kMostPartials; ++i)
            if (!isNameFree(letter + std::to_string(i)))
                return false;
        return true;
    };
    char letter = 'K';
    while (letter < 'Z' && !areFree(std::string(1, letter)))
        ++letter;
    m_things.m_partialLetter = std::string(1, letter);
    if (!areFree(m_things.m_partialLetter))
        m_things.m_partialLetter = "Σ";
}

std::string Naming::freeLetter(const LetterRow& row) const {
    const auto isTaken = [&](std::string_view letter) {
        return std::find(m_letterLike.begin(), m_letterLike.end(), letter) != m_letterLike.end();
    };
    for (std::size_t i = 0; i < row.letters.size(); ++i)
        if (!isTaken(row.letters[i]) && !isTaken(row.spelled[i]))
            return std::string(row.letters[i]);
    std::string last(row.letters.back());
    do
        last += "′";
    while (isTaken(last));
    return last;
}

void Naming::nameLetters() {
    Things::Letters& letters = m_things.m_letters;
    letters.theta = freeLetter(kTheta);
    letters.psi = freeLetter(kPsi);
    letters.phi = freeLetter(kPhi);
    letters.acute = freeLetter(kAcute);
    letters.distance = freeLetter(kDistance);
    letters.angle = {freeLetter(kAlpha), freeLetter(kBeta), freeLetter(kGamma)};
}

/// Only a name that ends in x, y or u can be taken for a component.
bool Naming::componentsClash() const {
    std::vector<const Things::Named*> all{&m_things.m_sum, &m_things.m_known};
    for (const Things::Named& force : m_things.m_forces)
        all.push_back(&force);
    std::unordered_set<std::string> suspects;
    for (const Things::Named* vector : all) {
        const std::string look = looksOf(vector->name);
        if (!look.empty() && (look.back() == 'x' || look.back() == 'y' || look.back() == 'u')) {
            suspects.insert(look);
            suspects.insert(looksOf(inPrint(vector->symbol)));
        }
    }
    if (suspects.empty())
        return false;
    return std::any_of(all.begin(), all.end(), [&](const Things::Named* vector) {
        return std::any_of(std::begin("xyu"), std::end("xyu") - 1, [&](char axis) {
            const Symbol component{vector->symbol.base, vector->symbol.sub + axis};
            return suspects.contains(looksOf(inPrint(component))) ||
                   suspects.contains(looksOf(vector->name + "_" + axis));
        });
    });
}

} // namespace tailpoint
