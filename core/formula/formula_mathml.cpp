// SPDX-License-Identifier: MIT
// MathML Core, presentation: what a browser sets without a script.
// Source: W3C, 'MathML Core'; letters of vectors from Unicode's bold italic alphabet, since Core knows
// mathvariant only as "normal".
#include "core/formula/formula.h"
#include "core/formula/letters.h"

#include <algorithm>

namespace tailpoint {

namespace {

class MathmlWriter {
public:
    explicit MathmlWriter(std::string& out) : m_out(out) {}

    void write(const Formula& f) {
        switch (f.kind) {
        case FormulaKind::number:
            return writeNumber(f);
        case FormulaKind::symbol:
            return writeSymbol(f);
        case FormulaKind::words:
            return element("mtext", f.text);
        case FormulaKind::negative:
            return row([&] { op("−"), part(f, 0); });
        case FormulaKind::sum:
            return row([&] { writeSum(f); });
        case FormulaKind::product:
            return row([&] { writeProduct(f); });
        case FormulaKind::fraction:
            return pair("mfrac", f);
        case FormulaKind::power:
            return pair("msup", f);
        case FormulaKind::root:
            return wrapped("msqrt", [&] { write(f.parts[0]); });
        case FormulaKind::function:
            return row([&] { writeFunction(f); });
        case FormulaKind::absolute:
            return row([&] { fence("|"), write(f.parts[0]), fence("|"); });
        case FormulaKind::relation:
            return row([&] { writeRelation(f); });
        case FormulaKind::row:
            return row([&] { writeRow(f); });
        }
    }

private:
    void put(std::string_view text) { m_out.append(text); }
    void element(std::string_view name, std::string_view text) {
        put("<"), put(name), put(">"), put(xmlEscaped(text)), put("</"), put(name), put(">");
    }
    void op(std::string_view sign) { element("mo", sign); }
    void fence(std::string_view sign) {
        put("<mo fence=\"true\" stretchy=\"true\">"), put(sign), put("</mo>");
    }

    /// Round what fits a line they stay as they are: browsers stretch them, and their spacing, for a digit.
    void paren(std::string_view sign, bool tall) {
        put(tall ? "<mo stretchy=\"true\">" : "<mo stretchy=\"false\">"), put(sign), put("</mo>");
    }
    static bool isTall(const Formula& f) {
        return f.kind == FormulaKind::fraction || f.kind == FormulaKind::root ||
               std::any_of(f.parts.begin(), f.parts.end(), isTall);
    }

    template <class Content>
    void wrapped(std::string_view name, Content content) {
        put("<"), put(name), put(">");
        content();
        put("</"), put(name), put(">");
    }
    template <class Content>
    void row(Content content) {
        wrapped("mrow", content);
    }

    void pair(std::string_view name, const Formula& f) {
        wrapped(name, [&] { part(f, 0), write(f.parts[1]); });
    }

    /// MathML Core gives the signs for 'applied to' and 'times' no width of their own.
    void thinSpace() { put("<mspace width=\"0.17em\"/>"); }

    void writeFunction(const Formula& f) {
        element("mi", f.text), op("\u2061");
        if (!isFenced(f, 0))
            thinSpace();
        part(f, 0);
    }

    void part(const Formula& parent, std::size_t index) {
        if (!isFenced(parent, index))
            return write(parent.parts[index]);
        const bool tall = isTall(parent.parts[index]);
        row([&] { paren("(", tall), write(parent.parts[index]), paren(")", tall); });
    }

    void writeNumber(const Formula& f) {
        row([&] {
            auto [digits, exponent] = splitExponent(f.text);
            if (digits.starts_with('-')) {
                op("−");
                digits.remove_prefix(1);
            }
            element("mn", digits);
            if (!exponent.empty())
                op("×"), writePowerOfTen(exponent);
            if (!f.sub.empty())
                element("mtext", f.sub == "°" ? f.sub : "\u00A0" + f.sub);
        });
    }

    void writePowerOfTen(std::string_view exponent) {
        wrapped("msup", [&] {
            element("mn", "10");
            const bool below = exponent.starts_with('-');
            row([&] {
                if (below)
                    op("−");
                element("mn", exponent.substr(below ? 1 : 0));
            });
        });
    }

    void writeLetters(std::string_view text, bool bold) {
        std::string letters;
        if (bold)
            appendMathLetters(letters, text, MathLetters::boldItalic);
        else if (characterCount(text) > 1) // one letter is italic by itself, several are not
            appendMathLetters(letters, text, MathLetters::italic);
        else
            letters = text;
        element("mi", letters);
    }

    void writeSymbol(const Formula& f) {
        if (f.sub.empty())
            return writeLetters(f.text, f.bold);
        wrapped("msub", [&] {
            writeLetters(f.text, f.bold);
            writeSubscript(f);
        });
    }

    void writeSubscript(const Formula& f) {
        const std::vector<SubscriptPiece> pieces = subscriptPieces(f.sub, f.slant);
        const auto all = [&] {
            for (const SubscriptPiece& piece : pieces)
                piece.italic ? writeLetters(piece.text, false) : writeUpright(piece.text);
        };
        pieces.size() == 1 ? all() : wrapped("mrow", all);
    }

    /// An identifier of several letters is upright by itself, one of a single letter is not.
    void writeUpright(const std::string& text) {
        if (text.find_first_not_of("0123456789") == std::string::npos)
            return element("mn", text);
        const bool isWord = text.find_first_not_of(" _,;:.()[]+-*/") != std::string::npos;
        element(isWord && characterCount(text) > 1 ? "mi" : "mtext", text);
    }

    void writeSum(const Formula& f) {
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            const Formula& term = f.parts[i];
            if (i > 0 && term.kind == FormulaKind::negative) {
                op("−"), part(term, 0);
                continue;
            }
            if (i > 0)
                op("+");
            part(f, i);
        }
    }

    void writeProduct(const Formula& f) {
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            part(f, i);
            if (i + 1 == f.parts.size())
                break;
            op(jointAfter(f, i) == Joint::dot ? "·" : "\u2062");
            if (jointAfter(f, i) == Joint::space)
                thinSpace();
        }
    }

    /// A space at either end of <mtext> is dropped by browsers.
    void writeRow(const Formula& f) {
        for (const Formula& one : f.parts) {
            if (one.kind != FormulaKind::words) {
                write(one);
                continue;
            }
            std::string words = one.text;
            if (words.starts_with(' '))
                words.replace(0, 1, "\u00A0");
            if (words.ends_with(' '))
                words.replace(words.size() - 1, 1, "\u00A0");
            element("mtext", words);
        }
    }

    void writeRelation(const Formula& f) {
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            if (i > 0)
                op(signOf(f.relations[i - 1]));
            write(f.parts[i]);
        }
    }

    std::string& m_out;
};

} // namespace

std::string xmlEscaped(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    for (char c : text) {
        switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        default:
            out += c;
        }
    }
    return out;
}

std::string toMathml(const Formula& formula, bool block) {
    std::string out = block ? "<math display=\"block\">" : "<math>";
    MathmlWriter(out).write(formula);
    out += "</math>";
    return out;
}

} // namespace tailpoint
