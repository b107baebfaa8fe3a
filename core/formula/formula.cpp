// SPDX-License-Identifier: MIT
#include "core/formula/formula.h"
#include "core/formula/letters.h"
#include "core/quantity/utf8.h"

#include <algorithm>
#include <charconv>

namespace tailpoint {

namespace {

Formula leaf(FormulaKind kind, std::string text, std::string sub = {}) {
    Formula formula;
    formula.kind = kind;
    formula.text = std::move(text);
    formula.sub = std::move(sub);
    return formula;
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

bool isNegativeNumber(const Formula& f) {
    return f.kind == FormulaKind::number && !f.text.empty() && f.text.front() == '-';
}

/// What stands below a name describes, whatever the name's letter.
Symbol named(std::string_view base, std::string_view sub) {
    return {std::string(base), std::string(sub), slantOf({}, sub)};
}

/// The unit stands off by a space ("N"), unlike the degree sign.
bool hasSpacedUnit(const Formula& f) {
    return f.kind == FormulaKind::number && !f.sub.empty() && f.sub != "°";
}

/// One character on paper, so that a product may close up: "PQ".
bool isShort(const Formula& f) {
    if (f.kind == FormulaKind::power)
        return isShort(f.parts[0]);
    if (f.kind != FormulaKind::symbol)
        return false;
    const bool primed = f.text.ends_with("′") || f.text.ends_with("″");
    return characterCount(f.text) == (primed ? 2U : 1U);
}

bool fencedInProduct(const Formula& parent, const Formula& child) {
    if (parent.parts.size() < 2)
        return false;
    switch (child.kind) {
    case FormulaKind::sum:
    case FormulaKind::negative:
    case FormulaKind::relation:
    case FormulaKind::words:
        return true;
    case FormulaKind::number:
        return isNegativeNumber(child) || hasSpacedUnit(child);
    default:
        return false;
    }
}

bool fencedInPower(const Formula& child) {
    if (child.kind == FormulaKind::number)
        return !child.sub.empty() || isNegativeNumber(child) || child.text.find('e') != std::string::npos;
    return child.kind != FormulaKind::symbol && child.kind != FormulaKind::absolute;
}

bool fencedAsArgument(const Formula& child) {
    switch (child.kind) {
    case FormulaKind::number:
        return isNegativeNumber(child) || hasSpacedUnit(child);
    case FormulaKind::symbol:
    case FormulaKind::absolute:
        return false;
    default:
        return true;
    }
}

/// Digits with nothing around them.
bool isBareNumber(const Formula& product, std::size_t index) {
    return product.parts[index].kind == FormulaKind::number && !isFenced(product, index);
}

} // namespace

FormulaParts::FormulaParts(std::vector<Formula> parts)
    : m_size(parts.size()), m_parts(std::make_shared<Formula[]>(parts.size())) {
    std::move(parts.begin(), parts.end(), m_parts.get());
}

Formula* FormulaParts::own() {
    const FormulaParts& old = *this;
    if (m_parts.use_count() > 1)
        *this = FormulaParts(std::vector<Formula>(old.begin(), old.end()));
    return m_parts.get();
}

void FormulaParts::push_back(Formula part) {
    const FormulaParts& old = *this;
    std::vector<Formula> all;
    all.reserve(m_size + 1);
    all.assign(old.begin(), old.end());
    all.push_back(std::move(part));
    *this = FormulaParts(std::move(all));
}

void FormulaParts::pop_back() {
    erase(&std::as_const(*this).back());
}

void FormulaParts::erase(const Formula* part) {
    const FormulaParts& old = *this;
    std::vector<Formula> all(old.begin(), part);
    all.insert(all.end(), part + 1, old.end());
    *this = FormulaParts(std::move(all));
}

bool FormulaParts::operator==(const FormulaParts& other) const {
    return m_parts == other.m_parts || std::equal(begin(), end(), other.begin(), other.end());
}

Formula number(double value, std::string shown, std::string unit) {
    Formula formula = leaf(FormulaKind::number, std::move(shown), std::move(unit));
    formula.value = value;
    return formula;
}

Formula numberWithUnit(double value, std::string_view shown) {
    constexpr std::string_view degree = "°";
    if (shown.ends_with(degree))
        return number(value, std::string(shown.substr(0, shown.size() - degree.size())), std::string(degree));
    const auto space = shown.rfind(' ');
    if (space == std::string_view::npos)
        return number(value, std::string(shown));
    return number(value, std::string(shown.substr(0, space)), std::string(shown.substr(space + 1)));
}

Formula count(int value) {
    return number(value, std::to_string(value));
}

double shownValue(const Formula& number) {
    double value = number.value;
    const char* end = number.text.data() + number.text.size();
    const auto [stop, error] = std::from_chars(number.text.data(), end, value);
    return error == std::errc() && stop == end ? value : number.value;
}

Formula symbol(std::string base, std::string sub) {
    const Slant slant = slantOf(base, sub);
    Formula formula = leaf(FormulaKind::symbol, std::move(base), std::move(sub));
    formula.slant = slant;
    return formula;
}

Formula vectorSymbol(std::string base, std::string sub) {
    Formula formula = symbol(std::move(base), std::move(sub));
    formula.bold = true;
    return formula;
}

Formula inWords(std::string text) {
    return leaf(FormulaKind::words, std::move(text));
}

Formula negative(Formula part) {
    return withParts(FormulaKind::negative, std::move(part));
}

Formula over(Formula numerator, Formula denominator) {
    return withParts(FormulaKind::fraction, std::move(numerator), std::move(denominator));
}

Formula power(Formula base, int exponent) {
    return withParts(FormulaKind::power, std::move(base), count(exponent));
}

Formula root(Formula radicand) {
    return withParts(FormulaKind::root, std::move(radicand));
}

Formula apply(std::string function, Formula argument) {
    Formula formula = withParts(FormulaKind::function, std::move(argument));
    formula.text = std::move(function);
    return formula;
}

Formula absolute(Formula part) {
    return withParts(FormulaKind::absolute, std::move(part));
}

Formula related(Formula left, Relation relation, Formula right) {
    Formula formula = withParts(FormulaKind::relation, std::move(left), std::move(right));
    formula.relations = {relation};
    return formula;
}

Formula related(Formula a, Relation first, Formula b, Relation second, Formula c) {
    Formula formula = withParts(FormulaKind::relation, std::move(a), std::move(b), std::move(c));
    formula.relations = {first, second};
    return formula;
}

Formula equal(Formula left, Formula right) {
    return related(std::move(left), Relation::equal, std::move(right));
}

Formula equal(Formula a, Formula b, Formula c) {
    return related(std::move(a), Relation::equal, std::move(b), Relation::equal, std::move(c));
}

Formula sumOf(std::vector<Formula> parts) {
    if (parts.size() == 1)
        return std::move(parts.front());
    Formula whole;
    whole.kind = FormulaKind::sum;
    whole.parts = FormulaParts(std::move(parts));
    return whole;
}

Formula rowOf(std::vector<Formula> parts) {
    Formula whole;
    whole.kind = FormulaKind::row;
    whole.parts = FormulaParts(std::move(parts));
    return whole;
}

Symbol symbolOfName(std::string_view name) {
    const auto underscore = name.find('_');
    if (underscore != std::string_view::npos && underscore > 0 && underscore + 1 < name.size())
        return named(name.substr(0, underscore), name.substr(underscore + 1));
    std::size_t letters = name.size();
    while (letters > 0 && isDigit(name[letters - 1]))
        --letters;
    if (letters == 0 || letters == name.size() || name[letters - 1] == ' ')
        return {std::string(name), {}};
    return named(name.substr(0, letters), name.substr(letters));
}

std::string inPrint(const Symbol& symbol) {
    std::string out = symbol.base;
    appendSubscript(out, symbol.sub);
    return out;
}

Formula symbol(const Symbol& printed, QuantityId id) {
    Formula formula = leaf(FormulaKind::symbol, printed.base, printed.sub);
    formula.slant = printed.slant;
    formula.id = id;
    return formula;
}

Formula vectorSymbol(const Symbol& printed) {
    Formula formula = symbol(printed, {});
    formula.bold = true;
    return formula;
}

Formula magnitudeSymbol(std::string_view name) {
    return symbol(symbolOfName(name), {});
}

Formula vectorOf(std::string_view name) {
    Formula formula = magnitudeSymbol(name);
    formula.bold = true;
    return formula;
}

Formula componentSymbol(std::string_view name, char axis) {
    const Symbol of = symbolOfName(name);
    const Subscript sub = Subscript{of.sub, of.slant}.append(italicSubscript(axis));
    return symbol(Symbol{of.base, sub.text, sub.slant}, {});
}

std::string keyOf(const Formula& symbol) {
    std::string key = symbol.bold ? "*" : "";
    key += symbol.text;
    if (!symbol.sub.empty())
        key.append("_").append(symbol.sub);
    return key;
}

bool isFenced(const Formula& parent, std::size_t index) {
    const Formula& child = parent.parts[index];
    switch (parent.kind) {
    case FormulaKind::sum:
        return index > 0 && (child.kind == FormulaKind::sum || isNegativeNumber(child));
    case FormulaKind::negative:
        return child.kind == FormulaKind::sum || child.kind == FormulaKind::negative ||
               isNegativeNumber(child);
    case FormulaKind::product:
        return fencedInProduct(parent, child);
    case FormulaKind::power:
        return index == 0 && fencedInPower(child);
    case FormulaKind::function:
        return fencedAsArgument(child);
    default:
        return false;
    }
}

Joint jointAfter(const Formula& product, std::size_t index) {
    const Formula& left = product.parts[index];
    const Formula& right = product.parts[index + 1];
    if (isBareNumber(product, index + 1))
        return Joint::dot;
    if (left.kind == FormulaKind::function)
        return Joint::dot;
    if (right.kind == FormulaKind::function)
        return Joint::space;
    if (isFenced(product, index) || isFenced(product, index + 1))
        return Joint::none;
    if (isBareNumber(product, index))
        return right.kind == FormulaKind::symbol && !isShort(right) ? Joint::space : Joint::none;
    if (isShort(left) && isShort(right))
        return Joint::none;
    return Joint::dot;
}

std::pair<std::string_view, std::string_view> splitExponent(std::string_view shown) {
    const auto e = shown.find('e');
    if (e == std::string_view::npos)
        return {shown, {}};
    std::string_view exponent = shown.substr(e + 1);
    if (!exponent.empty() && exponent.front() == '+')
        exponent.remove_prefix(1);
    return {shown.substr(0, e), exponent};
}

} // namespace tailpoint
