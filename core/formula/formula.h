// SPDX-License-Identifier: MIT
// formula/: a formula is a small tree; its value, plain text, LaTeX, MathML and the painted form all come
// from the same tree. Knows numbers and letters, and nothing of forces. Numbers are formatted where a tree is
// built (core/sketch/shown.h) and nowhere later.
#pragma once

#include "core/formula/ids.h"
#include "core/quantity/units.h"

#include <array>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace tailpoint {

enum class FormulaKind : std::uint8_t {
    number, ///< text: digits as shown; sub: unit ("N", "°", "rad", ...); value: the full number behind them
    symbol, ///< text: letter or name; sub: subscript, and its slant; bold: a vector
    words,  ///< upright text within a formula: "or"
    negative, ///< parts[0] with a minus in front
    sum,      ///< parts; a negative part is set with a minus
    product,  ///< parts
    fraction, ///< parts[0] over parts[1]
    power,    ///< parts[0] raised to parts[1]
    root,     ///< square root of parts[0]
    function, ///< text: sin, cos, tan, arcsin, arccos, arctan; parts[0] the argument
    absolute, ///< |parts[0]|
    relation, ///< two or three parts, between each two of them one of `relations`
    row       ///< parts one behind another, words among them: 519.86 N, to three figures 520 N
};

/// Which characters of a subscript are italic: bit i for the i-th of them, from the lowest bit. Those beyond
/// the 64th are upright.
using Slant = std::uint64_t;

enum class Relation : std::uint8_t {
    equal,
    approximately,
    less,
    lessOrEqual,
    greater,
    greaterOrEqual,
    implies
};

struct Formula;

/// The parts of a formula: a value like any other, but copies share what neither changes, since the same
/// terms stand in many lines. Whoever may change a part gets his own: read by const references where it
/// matters.
class FormulaParts {
public:
    FormulaParts() = default;
    explicit FormulaParts(std::vector<Formula> parts);
    template <class... Parts>
    static FormulaParts of(Parts&&... parts);

    std::size_t size() const { return m_size; }
    bool empty() const { return m_size == 0; }
    const Formula* begin() const { return m_parts.get(); }
    const Formula* end() const;
    const Formula& operator[](std::size_t index) const;
    const Formula& front() const { return *m_parts.get(); }
    const Formula& back() const;
    template <class Change>
    FormulaParts each(Change change) const; ///< what `change` makes of each of them
    Formula* begin() { return own(); }
    Formula* end();
    Formula& operator[](std::size_t index);
    Formula& front() { return *own(); }
    Formula& back();
    void push_back(Formula part);
    void pop_back();
    void erase(const Formula* part);
    bool operator==(const FormulaParts& other) const;

private:
    Formula* own(); ///< no longer shared

    std::size_t m_size = 0; // in front: the parts may hold what they are assigned from
    std::shared_ptr<Formula[]> m_parts;
};

/// Value type. Build with the functions below; they keep the number of parts right.
struct Formula {
    FormulaKind kind = FormulaKind::words;
    bool bold = false;
    std::array<Relation, 2> relations{}; ///< of two parts the first alone
    bool isTurn = false; ///< of a number: a full, half or quarter turn, which a theorem brings along
    QuantityId id{}; ///< the quantity that a symbol stands for, or a whole part such as R² or sin β; or none
    double value = 0;
    Slant slant = 0;
    std::string text, sub;
    FormulaParts parts;

    bool operator==(const Formula&) const = default;
};

template <class... Parts>
FormulaParts FormulaParts::of(Parts&&... parts) {
    FormulaParts all;
    all.m_size = sizeof...(parts);
    all.m_parts = std::make_shared<Formula[]>(all.m_size);
    Formula* next = all.m_parts.get();
    ((*next++ = std::forward<Parts>(parts)), ...);
    return all;
}
template <class Change>
FormulaParts FormulaParts::each(Change change) const {
    FormulaParts all;
    all.m_size = m_size;
    all.m_parts = std::make_shared<Formula[]>(m_size);
    for (std::size_t i = 0; i < m_size; ++i)
        all.m_parts[static_cast<std::ptrdiff_t>(i)] = change((*this)[i]);
    return all;
}
inline const Formula* FormulaParts::end() const {
    return m_parts.get() + m_size;
}
inline const Formula& FormulaParts::operator[](std::size_t index) const {
    return m_parts[static_cast<std::ptrdiff_t>(index)];
}
inline const Formula& FormulaParts::back() const {
    return (*this)[m_size - 1];
}
inline Formula* FormulaParts::end() {
    return own() + m_size;
}
inline Formula& FormulaParts::operator[](std::size_t index) {
    return own()[index];
}
inline Formula& FormulaParts::back() {
    return (*this)[m_size - 1];
}

/// `shown` has an ASCII minus and may have an exponent ("1.23e8").
Formula number(double value, std::string shown, std::string unit = {});
/// `shown` with its unit behind: "25.0°", "340 N".
Formula numberWithUnit(double value, std::string_view shown);
Formula count(int value); ///< a plain whole number
/// The number that the shown digits stand for by themselves ("π" and multiples of it: the full value).
double shownValue(const Formula& number);
Formula symbol(std::string base, std::string sub = {}); ///< its slant by slantOf()
Formula vectorSymbol(std::string base, std::string sub = {});
Formula inWords(std::string text);
Formula negative(Formula part);
Formula over(Formula numerator, Formula denominator);
Formula power(Formula base, int exponent);
Formula root(Formula radicand);
Formula apply(std::string function, Formula argument);
Formula absolute(Formula part);

template <class... Parts>
Formula withParts(FormulaKind kind, Parts&&... parts) {
    Formula whole;
    whole.kind = kind;
    whole.parts = FormulaParts::of(std::forward<Parts>(parts)...);
    return whole;
}
template <class... Parts>
Formula sum(Parts&&... parts) {
    return withParts(FormulaKind::sum, std::forward<Parts>(parts)...);
}
template <class... Parts>
Formula product(Parts&&... parts) {
    return withParts(FormulaKind::product, std::forward<Parts>(parts)...);
}
Formula related(Formula left, Relation relation, Formula right);
Formula related(Formula a, Relation first, Formula b, Relation second, Formula c);
Formula equal(Formula left, Formula right);
Formula equal(Formula a, Formula b, Formula c);
Formula sumOf(std::vector<Formula> parts); ///< a single part stays as it is
Formula rowOf(std::vector<Formula> parts);

/// A letter or a name with its subscript, as it stands in print.
struct Symbol {
    std::string base{}, sub{};
    Slant slant = 0; ///< of the subscript
    bool operator==(const Symbol&) const = default;
};
/// Below an angle's letter stands the name of a vector: a quantity, so its letters are italic. Below another
/// letter a single letter is italic where it is an axis or a running number (x, y, z, u; i, j, k, m, n);
/// other letters and words describe, and are upright like digits. Source: ISO 80000-2:2019, from memory.
Slant slantOf(std::string_view base, std::string_view sub);
/// A part of a subscript in one style.
struct SubscriptPiece {
    std::string text;
    bool italic;
    bool operator==(const SubscriptPiece&) const = default;
};
std::vector<SubscriptPiece> subscriptPieces(std::string_view sub, Slant slant);

/// A subscript that is put together.
struct Subscript {
    std::string text{};
    Slant slant = 0;

    Subscript& append(std::string_view upright);
    Subscript& append(const Subscript& more);
};
/// A quantity as a subscript: its letters italic, what stands below it as it stands there.
Subscript asSubscript(const Symbol& symbol);
Subscript italicSubscript(char letter);

/// "F1" is F with subscript 1, "T_AB" is T with subscript AB, else the name as it stands.
Symbol symbolOfName(std::string_view name);
/// One line of plain text: "F\u2081", "T_AB".
std::string inPrint(const Symbol& symbol);
Formula symbol(const Symbol& printed, QuantityId id);
Formula vectorSymbol(const Symbol& printed);

/// A force's name as a symbol.
Formula magnitudeSymbol(std::string_view name);
Formula vectorOf(std::string_view name);
/// "R", 'x' -> R with subscript x; "F1", 'x' -> F with subscript 1x.
Formula componentSymbol(std::string_view name, char axis);

/// Identifies a symbol whatever its place: "P", "F_1", "*R" for the vector.
std::string keyOf(const Formula& symbol);

/// Whether parts[index] of `parent` is set in parentheses when fractions and roots are drawn as such.
bool isFenced(const Formula& parent, std::size_t index);

/// What stands between parts[index] and parts[index + 1] of a product.
enum class Joint { none, space, dot };
Joint jointAfter(const Formula& product, std::size_t index);

/// "1.23e8" -> {"1.23", "8"}; the exponent is empty for a positional number.
std::pair<std::string_view, std::string_view> splitExponent(std::string_view shown);

enum class Minus { ascii, typographic }; ///< '-' as in files and reports, or U+2212

/// One line of Unicode text: "R = √(P² + Q² - 2PQ cos γ)". Vectors in mathematical bold italics.
std::string toText(const Formula& formula, Minus minus = Minus::typographic);
void appendText(std::string& out, const Formula& formula, Minus minus);

/// For math mode with amsmath; any name comes out compilable with pdflatex.
std::string toLatex(const Formula& formula);
void appendLatex(std::string& out, const Formula& formula);
/// Running text with LaTeX's special characters escaped.
std::string latexEscaped(std::string_view text);

/// MathML Core, presentation only: a whole <math> element, `block` set on its own line.
std::string toMathml(const Formula& formula, bool block = false);
std::string xmlEscaped(std::string_view text);

/// Value of a tree in extended precision, with the full value behind each shown number. Angles are numbers in
/// `unit`: sine, cosine and tangent reduce them exactly (core/quantity/angle.h), so that 345 sin 30° is
/// 172.5; inverse functions give them, arcsin and arctan between minus and plus a quarter turn, arccos up to
/// a half. Empty for words, rows, relations and unknown symbols, and where the arithmetic has no value: a
/// division by zero, the root of a negative number, arcsin or arccos beyond 1, the tangent of a quarter turn,
/// an overflow. `lookUp` gives the value of a symbol.
using SymbolLookup = std::function<std::optional<long double>(const Formula& symbol)>;
std::optional<long double> evaluate(const Formula& formula, AngleUnit unit, const SymbolLookup& lookUp = {});

/// Whether a relation is true of its values; 'approximately' and 'implies' are nobody's to decide. Empty for
/// these, for what is no relation, and where a side has no value.
std::optional<bool> holds(const Formula& relation, AngleUnit unit, const SymbolLookup& lookUp = {});

} // namespace tailpoint
