// SPDX-License-Identifier: MIT
#include "core/sketch/phrase.h"

namespace tailpoint {

void Phrase::append(PhrasePiece piece) {
    if (piece.text.empty())
        return;
    if (!piece.isName() && !m_pieces.empty() && !m_pieces.back().isName())
        m_pieces.back().text += piece.text;
    else
        m_pieces.push_back(std::move(piece));
}

Phrase& Phrase::operator+=(const Phrase& more) {
    for (const PhrasePiece& piece : more.m_pieces)
        append(piece);
    return *this;
}

std::string Phrase::text() const {
    std::string text;
    for (const PhrasePiece& piece : m_pieces)
        text += piece.text;
    return text;
}

} // namespace tailpoint
