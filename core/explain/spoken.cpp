// SPDX-License-Identifier: MIT
// Formulas in words.
#include "core/explain/spoken.h"

#include "core/explain/wording.h"
#include "core/quantity/utf8.h"

#include <algorithm>
#include <utility>

namespace tailpoint {

namespace {

struct Named {
    std::u32string_view sign;
    Wording word;
};

const Named kLetters[]{
    {U"α", SENTENCE("speech", "alpha")},        {U"β", SENTENCE("speech", "beta")},
    {U"γ", SENTENCE("speech", "gamma")},        {U"δ", SENTENCE("speech", "delta")},
    {U"ε", SENTENCE("speech", "epsilon")},      {U"ζ", SENTENCE("speech", "zeta")},
    {U"η", SENTENCE("speech", "eta")},          {U"θ", SENTENCE("speech", "theta")},
    {U"κ", SENTENCE("speech", "kappa")},        {U"λ", SENTENCE("speech", "lambda")},
    {U"μ", SENTENCE("speech", "mu")},           {U"ν", SENTENCE("speech", "nu")},
    {U"ξ", SENTENCE("speech", "xi")},           {U"π", SENTENCE("speech", "pi")},
    {U"ρ", SENTENCE("speech", "rho")},          {U"σ", SENTENCE("speech", "sigma")},
    {U"τ", SENTENCE("speech", "tau")},          {U"φ", SENTENCE("speech", "phi")},
    {U"χ", SENTENCE("speech", "chi")},          {U"ψ", SENTENCE("speech", "psi")},
    {U"ω", SENTENCE("speech", "omega")},        {U"Δ", SENTENCE("speech", "delta")},
    {U"Σ", SENTENCE("speech", "the sum of")},   {U"′", SENTENCE("speech", "prime")},
    {U"″", SENTENCE("speech", "double prime")}, {U"−", SENTENCE("speech", "minus")},
};

struct Unit {
    std::string_view symbol;
    Wording one, many;
};

const Unit kUnits[]{
    {"N", SENTENCE("speech", "newton"), SENTENCE("speech", "newtons")},
    {"kN", SENTENCE("speech", "kilonewton"), SENTENCE("speech", "kilonewtons")},
    {"daN", SENTENCE("speech", "decanewton"), SENTENCE("speech", "decanewtons")},
    {"lbf", SENTENCE("speech", "pound-force"), SENTENCE("speech", "pounds-force")},
    {"kip", SENTENCE("speech", "kip"), SENTENCE("speech", "kips")},
    {"kgf", SENTENCE("speech", "kilogram-force"), SENTENCE("speech", "kilograms-force")},
    {"°", SENTENCE("speech", "degree"), SENTENCE("speech", "degrees")},
    {"rad", SENTENCE("speech", "radian"), SENTENCE("speech", "radians")},
    {"gon", SENTENCE("speech", "gon"), SENTENCE("speech", "gon")},
};

/// Words one behind another, a space between each two.
class Line {
public:
    void put(std::string_view words) {
        if (words.empty())
            return;
        if (!m_text.empty() && m_text.back() != ' ')
            m_text += ' ';
        m_text += words;
    }
    std::string take() { return std::move(m_text); }

private:
    std::string m_text;
};

bool isAtom(const Formula& f) {
    return f.kind == FormulaKind::number || f.kind == FormulaKind::symbol || f.kind == FormulaKind::words ||
           (f.kind == FormulaKind::power && isAtom(f.parts[0]));
}

class Speaker {
public:
    explicit Speaker(const Sentences* sentences) : m_voice(sentences) {}

    std::string say(const Formula& f) const {
        switch (f.kind) {
        case FormulaKind::number:
            return number(f);
        case FormulaKind::symbol:
            return symbol(f);
        case FormulaKind::words:
            return f.text;
        case FormulaKind::negative:
            return with(SENTENCE("speech", "minus {part}"), "part", fenced(f.parts[0], isSum(f.parts[0])));
        case FormulaKind::sum:
            return sum(f);
        case FormulaKind::product:
            return product(f);
        case FormulaKind::fraction:
            return fraction(f);
        case FormulaKind::power:
            return power(f);
        case FormulaKind::root:
            return with(isAtom(f.parts[0]) ? SENTENCE("speech", "square root of {part}")
                                           : SENTENCE("speech", "square root of {part}, end of root"),
                        "part", say(f.parts[0]));
        case FormulaKind::function:
            return function(f);
        case FormulaKind::absolute:
            return with(isAtom(f.parts[0])
                            ? SENTENCE("speech", "absolute value of {part}")
                            : SENTENCE("speech", "absolute value of {part}, end of absolute value"),
                        "part", say(f.parts[0]));
        case FormulaKind::relation:
            return relation(f);
        case FormulaKind::row:
            return row(f);
        }
        return {};
    }

    template <class... Places>
    std::string with(const Wording& wording, Places&&... places) const {
        return toText(m_voice.say(wording, std::forward<Places>(places)...));
    }
    const Voice& voice() const { return m_voice; }

private:
    static bool isSum(const Formula& f) {
        return f.kind == FormulaKind::sum || f.kind == FormulaKind::negative ||
               f.kind == FormulaKind::relation;
    }

    std::string fenced(const Formula& f, bool isFenced) const {
        return isFenced
                   ? with(SENTENCE("speech", "open parenthesis {part} close parenthesis"), "part", say(f))
                   : say(f);
    }

    /// Signs that stand for words by these, digits and letters beside one another apart.
    std::string letters(std::string_view text) const {
        Line line;
        std::string plain;
        const auto flush = [&] { line.put(std::exchange(plain, {})); };
        for (const char32_t c : codePoints(text)) {
            const auto named = std::find_if(std::begin(kLetters), std::end(kLetters), [&](const Named& one) {
                return one.sign == std::u32string_view(&c, 1);
            });
            if (named != std::end(kLetters)) {
                flush();
                line.put(m_voice.text(named->word));
                continue;
            }
            const bool isDigit = c >= U'0' && c <= U'9';
            if (!plain.empty() && isDigit != (plain.back() >= '0' && plain.back() <= '9'))
                flush();
            appendUtf8(plain, c >= 0x2080 && c <= 0x2089 ? c - 0x2080 + U'0' : c); // a lowered digit
        }
        flush();
        return line.take();
    }

    std::string number(const Formula& f) const {
        const auto [digits, exponent] = splitExponent(f.text);
        std::string value = signedDigits(digits);
        if (!exponent.empty())
            value = with(SENTENCE("speech", "{digits} times 10 to the power {exponent}"), "digits",
                         std::move(value), "exponent", signedDigits(exponent));
        if (f.sub.empty())
            return value;
        for (const Unit& unit : kUnits)
            if (unit.symbol == f.sub)
                return value + ' ' + m_voice.text(f.text == "1" ? unit.one : unit.many);
        return value + ' ' + f.sub;
    }

    std::string signedDigits(std::string_view digits) const {
        const bool isNegative = digits.starts_with('-');
        if (isNegative)
            digits.remove_prefix(1);
        std::string value(digits);
        if (digits.find("π") != std::string_view::npos) { // "π/2"
            const auto slash = digits.find('/');
            value = letters(digits.substr(0, slash));
            if (slash != std::string_view::npos)
                value = with(SENTENCE("speech", "{above} over {below}"), "above", std::move(value), "below",
                             std::string(digits.substr(slash + 1)));
        }
        return isNegative ? with(SENTENCE("speech", "minus {part}"), "part", std::move(value)) : value;
    }

    std::string symbol(const Formula& f) const {
        std::string name = letters(f.text);
        if (f.bold)
            name = with(SENTENCE("speech", "vector {name}"), "name", std::move(name));
        return f.sub.empty() ? name
                             : with(SENTENCE("speech", "{name} sub {below}"), "name", std::move(name),
                                    "below", letters(f.sub));
    }

    std::string sum(const Formula& f) const {
        std::string all = say(f.parts[0]);
        for (std::size_t i = 1; i < f.parts.size(); ++i) {
            const Formula& term = f.parts[i];
            const bool isMinus = term.kind == FormulaKind::negative;
            const Formula& part = isMinus ? term.parts[0] : term;
            all = with(isMinus ? SENTENCE("speech", "{before} minus {next}")
                               : SENTENCE("speech", "{before} plus {next}"),
                       "before", std::move(all), "next", fenced(part, isSum(part)));
        }
        return all;
    }

    /// "2 P Q cosine of gamma": between letters nothing is said, as nothing stands there.
    static bool standsBeside(const Formula& left, const Formula& right) {
        const bool bare = left.kind == FormulaKind::number && left.sub.empty();
        const bool letter = left.kind == FormulaKind::symbol ||
                            (left.kind == FormulaKind::power && left.parts[0].kind == FormulaKind::symbol);
        return (bare || letter) &&
               (right.kind == FormulaKind::symbol || right.kind == FormulaKind::function ||
                (right.kind == FormulaKind::power && right.parts[0].kind == FormulaKind::symbol));
    }

    std::string product(const Formula& f) const {
        std::string all = fenced(f.parts[0], isSum(f.parts[0]) && f.parts.size() > 1);
        for (std::size_t i = 1; i < f.parts.size(); ++i) {
            const Formula &left = f.parts[i - 1], &right = f.parts[i];
            const bool ends = left.kind == FormulaKind::function; // what it takes in is at an end
            all = with(standsBeside(left, right) ? SENTENCE("speech", "{before} {next}")
                       : ends                    ? SENTENCE("speech", "{before}, times {next}")
                                                 : SENTENCE("speech", "{before} times {next}"),
                       "before", std::move(all), "next", fenced(right, isSum(right)));
        }
        return all;
    }

    std::string fraction(const Formula& f) const {
        const bool isPlain = isAtom(f.parts[0]) && isAtom(f.parts[1]);
        return with(isPlain ? SENTENCE("speech", "{above} over {below}")
                            : SENTENCE("speech", "fraction {above}, over {below}, end of fraction"),
                    "above", say(f.parts[0]), "below", say(f.parts[1]));
    }

    std::string power(const Formula& f) const {
        const Formula& base = f.parts[0];
        const bool isNegative = base.kind == FormulaKind::number && base.text.starts_with('-');
        const std::string below = fenced(base, !isAtom(base) || isNegative);
        const Formula& exponent = f.parts[1];
        if (exponent.kind == FormulaKind::number && exponent.text == "2")
            return with(SENTENCE("speech", "{base} squared"), "base", below);
        return with(SENTENCE("speech", "{base} to the power {exponent}"), "base", below, "exponent",
                    fenced(exponent, !isAtom(exponent)));
    }

    std::string function(const Formula& f) const {
        static const std::pair<std::string_view, Wording> names[]{
            {"sin", SENTENCE("speech", "sine of {part}")},
            {"cos", SENTENCE("speech", "cosine of {part}")},
            {"tan", SENTENCE("speech", "tangent of {part}")},
            {"arcsin", SENTENCE("speech", "inverse sine of {part}")},
            {"arccos", SENTENCE("speech", "inverse cosine of {part}")},
            {"arctan", SENTENCE("speech", "inverse tangent of {part}")}};
        const Formula& argument = f.parts[0];
        const bool isOpen = isSum(argument) || argument.kind == FormulaKind::product;
        for (const auto& [name, wording] : names)
            if (name == f.text)
                return with(wording, "part", fenced(argument, isOpen));
        return f.text + ' ' + fenced(argument, isOpen);
    }

    std::string relation(const Formula& f) const {
        static const Wording signs[]{SENTENCE("speech", "{before} equals {next}"),
                                     SENTENCE("speech", "{before} is about {next}"),
                                     SENTENCE("speech", "{before} is less than {next}"),
                                     SENTENCE("speech", "{before} is at most {next}"),
                                     SENTENCE("speech", "{before} is greater than {next}"),
                                     SENTENCE("speech", "{before} is at least {next}"),
                                     SENTENCE("speech", "{before}, therefore {next}")};
        std::string all = say(f.parts[0]);
        for (std::size_t i = 1; i < f.parts.size(); ++i)
            all = with(signs[static_cast<std::size_t>(f.relations[i - 1])], "before", std::move(all), "next",
                       say(f.parts[i]));
        return all;
    }

    std::string row(const Formula& f) const {
        std::string all;
        for (const Formula& part : f.parts)
            all += say(part);
        return all;
    }

    Voice m_voice;
};

} // namespace

std::string spoken(const Formula& formula, const Sentences* sentences) {
    return Speaker(sentences).say(formula);
}

std::string spoken(const Prose& prose, const Sentences* sentences) {
    const Speaker speaker(sentences);
    std::string all;
    for (const Piece& piece : prose.pieces) {
        const auto* formula = std::get_if<Formula>(&piece);
        all += formula ? speaker.say(*formula) : std::get<std::string>(piece);
    }
    return all;
}

std::string spoken(const Working& working, const Sentences* sentences) {
    const Speaker speaker(sentences);
    std::string all = working.subject ? speaker.say(*working.subject) : std::string();
    bool isFirst = true;
    for (const Formula* side : sidesOf(working)) {
        const bool alone = isFirst && !working.subject;
        const Wording joined = isFirst           ? SENTENCE("speech", "{before} equals {next}")
                               : working.subject ? SENTENCE("speech", "{before}; equals {next}")
                                                 : SENTENCE("speech", "{before}; {next}");
        all = alone ? speaker.say(*side)
                    : speaker.with(joined, "before", std::move(all), "next", speaker.say(*side));
        isFirst = false;
    }
    return all;
}

std::string spoken(const Table& table, const Sentences* sentences) {
    const Speaker speaker(sentences);
    std::string all;
    for (const std::vector<Formula>& row : table.rows) {
        if (row.empty())
            continue;
        std::string line = speaker.say(row.front());
        for (std::size_t c = 1; c < row.size() && c < table.head.size(); ++c) {
            const std::string value = speaker.say(row[c]);
            if (value.empty())
                continue;
            line = speaker.with(SENTENCE("speech", "{before}, {head} {value}"), "before", std::move(line),
                                "head", speaker.say(table.head[c]), "value", value);
        }
        all += (all.empty() ? "" : ". ") + line;
    }
    return all;
}

std::vector<std::string> spokenLines(const Step& step, const Sentences* sentences) {
    std::vector<std::string> lines;
    const auto add = [&](std::string line) {
        if (!line.empty())
            lines.push_back(std::move(line));
    };
    for (const Prose& prose : step.reasoning)
        add(spoken(prose, sentences));
    if (step.table)
        add(spoken(*step.table, sentences));
    for (const Working& working : step.workings)
        add(spoken(working, sentences));
    for (const Prose& prose : step.conclusion)
        add(spoken(prose, sentences));
    for (const Prose& prose : step.notes)
        add(spoken(prose, sentences));
    return lines;
}

} // namespace tailpoint
