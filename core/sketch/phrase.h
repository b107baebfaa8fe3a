// SPDX-License-Identifier: MIT
// Running text that names vectors and quantities by their ids: whoever shows it sets each name as the table
// of things (core/sketch/things.h) has it, and nobody looks for names in a text.
#pragma once

#include "core/formula/ids.h"

#include <string>
#include <string_view>
#include <vector>

namespace tailpoint {

struct PhrasePiece {
    std::string text; ///< words with an ASCII minus; of a name: as it is typed
    QuantityId
        names; ///< whom the text names: a quantity, or, with What::none, the vector `of`; kNobody: words

    bool isName() const { return names.of != kNobody; }
    bool operator==(const PhrasePiece&) const = default;
};

class Phrase {
public:
    Phrase() = default;
    Phrase(std::string_view words) { append({std::string(words), {}}); }
    Phrase(const std::string& words) : Phrase(std::string_view(words)) {}
    Phrase(const char* words) : Phrase(std::string_view(words)) {}

    static Phrase vector(VectorId id, const std::string& name) {
        return Phrase(PhrasePiece{name, {What::none, id}});
    }
    static Phrase quantity(const QuantityId& id, const std::string& name) {
        return Phrase(PhrasePiece{name, id});
    }

    const std::vector<PhrasePiece>& pieces() const { return m_pieces; }
    bool empty() const { return m_pieces.empty(); }
    std::string text() const; ///< names as they are typed

    Phrase& operator+=(const Phrase& more);
    friend Phrase operator+(Phrase before, const Phrase& after) { return before += after; }
    bool operator==(const Phrase&) const = default;

private:
    explicit Phrase(PhrasePiece piece) { append(std::move(piece)); }
    void append(PhrasePiece piece); ///< words behind words become one piece

    std::vector<PhrasePiece> m_pieces;
};

} // namespace tailpoint
