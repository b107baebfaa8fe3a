// SPDX-License-Identifier: MIT
// A formula on one line of Unicode text. Fractions become a slash, so that some parts need parentheses which
// the drawn form does without.
#include "core/formula/formula.h"
#include "core/formula/letters.h"

#include <array>

namespace tailpoint {

namespace {

class TextWriter {
public:
    TextWriter(std::string& out, Minus minus) : m_out(out), m_minus(minus) {}

    void write(const Formula& f) {
        switch (f.kind) {
        case FormulaKind::number:
            return writeNumber(f);
        case FormulaKind::symbol:
            return writeSymbol(f);
        case FormulaKind::words:
            return putWords(f.text);
        case FormulaKind::negative:
            putMinus();
            return part(f, 0, isFenced(f, 0));
        case FormulaKind::sum:
            return writeSum(f);
        case FormulaKind::product:
            return writeProduct(f);
        case FormulaKind::fraction:
            part(f, 0, needsFenceAbove(f.parts[0]));
            put(isAtom(f.parts[0]) && isAtom(f.parts[1]) ? "/" : " / ");
            return part(f, 1,
                        !isAtom(f.parts[1]) && f.parts[1].kind != FormulaKind::function &&
                            f.parts[1].kind != FormulaKind::root);
        case FormulaKind::power:
            return writePower(f);
        case FormulaKind::root:
            put("√");
            return part(f, 0, !isAtom(f.parts[0]));
        case FormulaKind::function:
            put(f.text);
            if (!isFenced(f, 0))
                put(" ");
            return part(f, 0, isFenced(f, 0));
        case FormulaKind::absolute:
            put("|");
            write(f.parts[0]);
            return put("|");
        case FormulaKind::relation:
            return writeRelation(f);
        case FormulaKind::row:
            for (const Formula& one : f.parts)
                write(one);
            return;
        }
    }

private:
    void put(std::string_view text) { m_out.append(text); }
    void putMinus() { put(m_minus == Minus::ascii ? "-" : "−"); }

    void putWords(std::string_view words) {
        static constexpr std::string_view sign = "−";
        while (m_minus == Minus::ascii) {
            const auto at = words.find(sign);
            if (at == std::string_view::npos)
                break;
            put(words.substr(0, at)), put("-");
            words.remove_prefix(at + sign.size());
        }
        put(words);
    }

    /// May stand beside a slash or under a root sign as it is.
    static bool isAtom(const Formula& f) {
        if (f.kind == FormulaKind::number)
            return (f.sub.empty() || f.sub == "°") && !f.text.starts_with('-') &&
                   f.text.find('e') == std::string::npos;
        if (f.kind == FormulaKind::power)
            return f.parts[0].kind == FormulaKind::symbol;
        return f.kind == FormulaKind::symbol || f.kind == FormulaKind::absolute;
    }

    /// "Q sin γ / R" could be read as sin(γ/R).
    static bool needsFenceAbove(const Formula& f) {
        if (f.kind == FormulaKind::function)
            return false;
        if (f.kind == FormulaKind::product)
            return f.parts.back().kind == FormulaKind::function ||
                   f.parts.back().kind == FormulaKind::fraction;
        return !isAtom(f);
    }

    void part(const Formula& parent, std::size_t index, bool fenced) {
        if (fenced)
            put("(");
        write(parent.parts[index]);
        if (fenced)
            put(")");
    }

    void writeNumber(const Formula& f) {
        const auto [digits, exponent] = splitExponent(f.text);
        putDigits(digits);
        if (!exponent.empty()) {
            put(" × 10");
            putRaised(exponent);
        }
        if (f.sub.empty())
            return;
        if (f.sub != "°")
            put(" ");
        put(f.sub);
    }

    void putDigits(std::string_view digits) {
        if (digits.starts_with('-')) {
            putMinus();
            digits.remove_prefix(1);
        }
        put(digits);
    }

    void writeSymbol(const Formula& f) {
        if (f.bold)
            appendMathLetters(m_out, f.text, MathLetters::boldItalic);
        else
            put(f.text);
        appendSubscript(m_out, f.sub);
    }

    void writeSum(const Formula& f) {
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            const Formula& term = f.parts[i];
            if (i == 0 || term.kind != FormulaKind::negative) {
                put(i == 0 ? "" : " + ");
                part(f, i, isFenced(f, i));
                continue;
            }
            put(" ");
            putMinus();
            put(" ");
            part(term, 0, isFenced(term, 0));
        }
    }

    void writeProduct(const Formula& f) {
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            const bool fraction = f.parts.size() > 1 && f.parts[i].kind == FormulaKind::fraction;
            part(f, i, fraction || isFenced(f, i));
            if (i + 1 == f.parts.size())
                break;
            const Joint joint = jointAfter(f, i);
            put(joint == Joint::none ? "" : joint == Joint::space ? " " : "·");
        }
    }

    void putRaised(std::string_view digits) {
        static constexpr std::array<std::string_view, 10> raised{"⁰", "¹", "²", "³", "⁴",
                                                                 "⁵", "⁶", "⁷", "⁸", "⁹"};
        for (char c : digits)
            put(c == '-' ? "⁻" : raised[static_cast<std::size_t>(c - '0') % 10]);
    }

    void writePower(const Formula& f) {
        part(f, 0, isFenced(f, 0));
        const Formula& exponent = f.parts[1];
        if (exponent.kind == FormulaKind::number && exponent.text.find('.') == std::string::npos)
            return putRaised(exponent.text);
        put("^");
        part(f, 1, !isAtom(exponent));
    }

    void writeRelation(const Formula& f) {
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            if (i > 0)
                put(" "), put(signOf(f.relations[i - 1])), put(" ");
            write(f.parts[i]);
        }
    }

    std::string& m_out;
    Minus m_minus;
};

} // namespace

void appendText(std::string& out, const Formula& formula, Minus minus) {
    TextWriter(out, minus).write(formula);
}

std::string toText(const Formula& formula, Minus minus) {
    std::string out;
    out.reserve(64);
    appendText(out, formula, minus);
    return out;
}

} // namespace tailpoint
