// SPDX-License-Identifier: MIT
#include "core/explain/prose.h"

#include "core/sketch/shown.h"

namespace tailpoint {

void appendText(Prose& prose, std::string_view text) {
    if (text.empty())
        return;
    if (!prose.pieces.empty())
        if (auto* last = std::get_if<std::string>(&prose.pieces.back())) {
            last->append(text);
            return;
        }
    prose.pieces.emplace_back(std::string(text));
}

Prose proseOf(const Phrase& phrase, const Things& things) {
    Prose prose;
    for (const PhrasePiece& piece : phrase.pieces())
        if (!piece.isName())
            prose.pieces.emplace_back(withMinusSigns(piece.text));
        else if (piece.names.what == What::none)
            prose.pieces.emplace_back(things.vectorFormula(piece.names.of));
        else
            prose.pieces.emplace_back(things.formula(piece.names));
    return prose;
}

namespace {

template <class Text, class Math>
void visitPieces(const Prose& prose, Text text, Math math) {
    for (const Piece& piece : prose.pieces)
        if (const auto* words = std::get_if<std::string>(&piece))
            text(*words);
        else
            math(std::get<Formula>(piece));
}

} // namespace

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
