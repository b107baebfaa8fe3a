#include "core/explain/prose.h"

namespace tailpoint {

namespace {

void appendString(Prose& prose, std::string_view text) {
    if (text.empty())
        return;
    if (!prose.pieces.empty())
        if (auto* last = std::get_if<std::string>(&prose.pieces.back())) {
            last->append(text);
            return;
        }
    prose.pieces.emplace_back(std::string(text));
}

template <class Text, class Math>
void visitPieces(const Prose& prose, Text text, Math math) {
    for (const Piece& piece : prose.pieces)
        if (const auto* words = std::get_if<std::string>(&piece))
            text(*words);
        else
            math(std::get<Formula>(piece));
}

} // namespace

void appendPieces(Prose& prose, std::string_view pattern, std::vector<Formula> formulas) {
    for (Formula& formula : formulas) {
        const auto place = pattern.find("{}");
        appendString(prose, pattern.substr(0, place));
        if (place == std::string_view::npos)
            return;
        prose.pieces.emplace_back(std::move(formula));
        pattern.remove_prefix(place + 2);
    }
    appendString(prose, pattern);
}

void append(Prose& prose, const Prose& more) {
    if (more.pieces.empty())
        return;
    if (!prose.pieces.empty())
        appendString(prose, " ");
    visitPieces(
        more, [&](const std::string& words) { appendString(prose, words); },
        [&](const Formula& formula) { prose.pieces.emplace_back(formula); });
}

std::string toText(const Prose& prose, Minus minus) {
    std::string out;
    visitPieces(
        prose, [&](const std::string& words) { appendText(out, inWords(words), minus); },
        [&](const Formula& formula) { appendText(out, formula, minus); });
    return out;
}

std::string toLatex(const Prose& prose) {
    std::string out;
    visitPieces(
        prose, [&](const std::string& words) { out += latexEscaped(words); },
        [&](const Formula& formula) {
            if (formula.kind == FormulaKind::words) { // running text, not mathematics
                out += latexEscaped(formula.text);
                return;
            }
            out += '$';
            appendLatex(out, formula);
            out += '$';
        });
    return out;
}

std::string toHtml(const Prose& prose) {
    std::string out;
    visitPieces(
        prose, [&](const std::string& words) { out += xmlEscaped(words); },
        [&](const Formula& formula) {
            out += formula.kind == FormulaKind::words ? xmlEscaped(formula.text) : toMathml(formula);
        });
    return out;
}

} // namespace tailpoint
