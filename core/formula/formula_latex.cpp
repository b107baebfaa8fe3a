// SPDX-License-Identifier: MIT
// LaTeX for amsmath and pdflatex. Letters that pdflatex has no font for come out as their code point, so that
// a sheet with any name still compiles.
#include "core/formula/formula.h"
#include "core/formula/letters.h"

#include <array>
#include <cctype>

namespace tailpoint {

namespace {

constexpr std::array<std::string_view, 25> kLowerGreek{
    "\\alpha",  "\\beta", "\\gamma", "\\delta",    "\\varepsilon", "\\zeta", "\\eta",
    "\\theta",  "\\iota", "\\kappa", "\\lambda",   "\\mu",         "\\nu",   "\\xi",
    "o",        "\\pi",   "\\rho",   "\\varsigma", "\\sigma",      "\\tau",  "\\upsilon",
    "\\varphi", "\\chi",  "\\psi",   "\\omega"};
constexpr std::array<std::string_view, 25> kUpperGreek{
    "A",       "B",        "\\Gamma",   "\\Delta", "E",    "Z",     "H",      "\\Theta", "I",
    "K",       "\\Lambda", "M",         "N",       "\\Xi", "O",     "\\Pi",   "P",       "",
    "\\Sigma", "T",        "\\Upsilon", "\\Phi",   "X",    "\\Psi", "\\Omega"};

std::string_view greek(char32_t c) {
    if (c >= U'α' && c <= U'ω')
        return kLowerGreek[c - U'α'];
    if (c >= U'Α' && c <= U'Ω')
        return kUpperGreek[c - U'Α'];
    return {};
}

/// Latin letters with accents: pdflatex reads them from UTF-8 (LaTeX of 2018 and later).
bool isAccentedLatin(char32_t c) {
    return (c >= 0xC0 && c <= 0x17F && c != 0xD7 && c != 0xF7);
}

std::string_view textCommand(char32_t c) {
    switch (c) {
    case U'\\':
        return "\\textbackslash{}";
    case U'~':
        return "\\textasciitilde{}";
    case U'^':
        return "\\textasciicircum{}";
    case U'°':
        return "\\ensuremath{^{\\circ}}";
    case U'±':
        return "\\ensuremath{\\pm}";
    case U'·':
        return "\\ensuremath{\\cdot}";
    case U'×':
        return "\\ensuremath{\\times}";
    case U'Σ':
        return "\\ensuremath{\\Sigma}";
    case 0x2212:
        return "\\ensuremath{-}";
    case 0x2013:
        return "--";
    case 0x2014:
        return "---";
    case 0x2018:
        return "`";
    case 0x2019:
        return "'";
    case 0x201C:
        return "``";
    case 0x201D:
        return "''";
    case 0x2026:
        return "\\ldots{}";
    case 0xA0:
    case 0x202F:
        return "~";
    case 0x2032:
        return "\\ensuremath{'}";
    default:
        return {};
    }
}

void appendCodePoint(std::string& out, char32_t c) {
    static constexpr std::string_view digits = "0123456789ABCDEF";
    out += "\\texttt{U+";
    for (int shift = c > 0xFFFF ? 16 : 12; shift >= 0; shift -= 4)
        out += digits[(c >> shift) & 0xF];
    out += "}";
}

void appendTextCharacter(std::string& out, char32_t c) {
    if (const auto command = textCommand(c); !command.empty()) {
        out += command;
    } else if (const auto letter = greek(c); !letter.empty()) {
        out.append("\\ensuremath{").append(letter).append("}");
    } else if (c == U'%' || c == U'#' || c == U'&' || c == U'_' || c == U'{' || c == U'}' || c == U'$') {
        out.append("\\").append(1, static_cast<char>(c));
    } else if (c < 0x80 || isAccentedLatin(c)) {
        appendUtf8(out, c);
    } else {
        appendCodePoint(out, c);
    }
}

std::string_view latexSign(Relation relation) {
    static constexpr std::array<std::string_view, 7> signs{" = ", " \\approx ", " < ",           " \\le ",
                                                           " > ", " \\ge ",     " \\Rightarrow "};
    return signs[static_cast<std::size_t>(relation)];
}

class LatexWriter {
public:
    explicit LatexWriter(std::string& out) : m_out(out) {}

    void write(const Formula& f) {
        switch (f.kind) {
        case FormulaKind::number:
            return writeNumber(f);
        case FormulaKind::symbol:
            return writeSymbol(f);
        case FormulaKind::words:
            put("\\text{"), put(latexEscaped(f.text)), put("}");
            return;
        case FormulaKind::negative:
            put("-");
            return part(f, 0);
        case FormulaKind::sum:
            return writeSum(f);
        case FormulaKind::product:
            return writeProduct(f);
        case FormulaKind::fraction:
            put("\\frac");
            return braced(f.parts[0]), braced(f.parts[1]);
        case FormulaKind::power:
            part(f, 0);
            put("^");
            return braced(f.parts[1]);
        case FormulaKind::root:
            put("\\sqrt");
            return braced(f.parts[0]);
        case FormulaKind::function:
            put("\\"), put(f.text);
            put(isFenced(f, 0) ? "" : " ");
            return part(f, 0);
        case FormulaKind::absolute:
            put("\\left|"), write(f.parts[0]), put("\\right|");
            return;
        case FormulaKind::relation:
            return writeRelation(f);
        case FormulaKind::row:
            for (const Formula& one : f.parts) // behind words a bare minus would be set as one between terms
                one.kind == FormulaKind::negative || one.value < 0 ? braced(one) : write(one);
            return;
        }
    }

private:
    void put(std::string_view text) { m_out.append(text); }
    void braced(const Formula& f) { put("{"), write(f), put("}"); }

    void part(const Formula& parent, std::size_t index) {
        if (!isFenced(parent, index))
            return write(parent.parts[index]);
        put("\\left("), write(parent.parts[index]), put("\\right)");
    }

    void writeNumber(const Formula& f) {
        const auto [digits, exponent] = splitExponent(f.text);
        const bool pi = digits.ends_with("π");
        put(pi ? digits.substr(0, digits.size() - std::string_view("π").size()) : digits);
        put(pi ? "\\pi" : "");
        if (!exponent.empty())
            put("\\times 10^{"), put(exponent), put("}");
        if (f.sub == "°")
            put("^{\\circ}");
        else if (!f.sub.empty())
            put("\\,\\mathrm{"), put(f.sub), put("}");
    }

    void writeLetters(std::string_view text) {
        if (text.ends_with("′") || text.ends_with("″")) {
            const bool twice = text.ends_with("″");
            writeLetters(text.substr(0, text.size() - std::string_view("′").size()));
            return put(twice ? "''" : "'");
        }
        const std::u32string letters = codePoints(text);
        if (letters.size() == 1)
            if (const auto letter = greek(letters[0]); !letter.empty())
                return put(letter);
        const bool single =
            letters.size() == 1 && letters[0] < 0x80 && std::isalnum(static_cast<int>(letters[0]));
        if (single)
            return put(text);
        put("\\text{\\itshape "), put(latexEscaped(text)), put("}");
    }

    void writeSymbol(const Formula& f) {
        if (f.bold)
            put("\\boldsymbol{");
        writeLetters(f.text);
        if (f.bold)
            put("}");
        if (f.sub.empty())
            return;
        put("_{");
        writeSubscript(f);
        put("}");
    }

    void writeSubscript(const Formula& f) {
        for (const SubscriptPiece& piece : subscriptPieces(f.sub, f.slant))
            piece.italic ? writeLetters(piece.text) : writeUpright(piece.text);
    }

    void writeUpright(const std::string& text) {
        const auto consistsOf = [&](std::string_view characters) {
            return text.find_first_not_of(characters) == std::string::npos;
        };
        if (consistsOf("0123456789"))
            return put(text);
        const bool plain = consistsOf("0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ");
        put(plain ? "\\mathrm{" : "\\text{"), put(plain ? text : latexEscaped(text)), put("}");
    }

    void writeSum(const Formula& f) {
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            const Formula& term = f.parts[i];
            if (i > 0 && term.kind == FormulaKind::negative) {
                put(" - "), part(term, 0);
                continue;
            }
            put(i > 0 ? " + " : "");
            part(f, i);
        }
    }

    void writeProduct(const Formula& f) {
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            part(f, i);
            if (i + 1 == f.parts.size())
                break;
            const Joint joint = jointAfter(f, i);
            put(joint == Joint::none ? " " : joint == Joint::space ? "\\," : " \\cdot ");
        }
    }

    void writeRelation(const Formula& f) {
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            put(i > 0 ? latexSign(f.relations[i - 1]) : "");
            write(f.parts[i]);
        }
    }

    std::string& m_out;
};

} // namespace

std::string latexEscaped(std::string_view text) {
    std::string out;
    out.reserve(text.size() + 8);
    for (char32_t c : codePoints(text))
        appendTextCharacter(out, c);
    return out;
}

void appendLatex(std::string& out, const Formula& formula) {
    LatexWriter(out).write(formula);
}

std::string toLatex(const Formula& formula) {
    std::string out;
    out.reserve(96);
    appendLatex(out, formula);
    return out;
}

} // namespace tailpoint
