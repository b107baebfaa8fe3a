// SPDX-License-Identifier: MIT
// Every sentence of a solution is one whole literal with named places, wrapped in SENTENCE: a translator has
// it before him as it will be read, and nothing is glued together from halves of sentences.
//
//   say(SENTENCE("solution", "{sum} lies nearer to {great}, the greater force."), "sum", r, "great", p)
//
// lupdate finds them as QT_TRANSLATE_NOOP's alias: -tr-function-alias QT_TRANSLATE_NOOP+=SENTENCE
#pragma once

#include "core/explain/prose.h"

#include <array>
#include <span>

namespace tailpoint {

/// A sentence as it is written here; "{name}" is a place. Valid for the whole run: literals only.
struct Wording {
    const char* context;
    const char* text;
    bool operator==(const Wording&) const = default;
};

/// The sentences of a language. Whoever passes it on keeps it alive.
class Sentences {
public:
    virtual ~Sentences() = default;
    /// With the same places; what has no translation comes back as it is.
    virtual std::string in(const Wording& wording) const = 0;
};

/// What stands in a place: text, a formula, or text with formulas.
struct Filling {
    std::string_view name;
    std::variant<std::string, Formula, Prose> content;
};

/// The pattern with its places filled, their contents used up; a place without content stays as it is
/// written.
void appendFilled(Prose& prose, std::string_view pattern, std::span<Filling> places);

/// Says sentences in a language; null: as they are written here.
class Voice {
public:
    explicit Voice(const Sentences* sentences = nullptr) : m_sentences(sentences) {}

    std::string text(const Wording& wording) const {
        return m_sentences ? m_sentences->in(wording) : std::string(wording.text);
    }
    /// Names and what stands there in turn: say(wording, "sum", formula, "forces", prose).
    template <class... NamesAndContents>
    Prose say(const Wording& wording, NamesAndContents&&... places) const {
        std::array<Filling, sizeof...(places) / 2> list;
        collect(list.data(), std::forward<NamesAndContents>(places)...);
        Prose prose;
        fill(prose, wording, list);
        return prose;
    }

private:
    static void collect(Filling*) {}
    template <class Content, class... Rest>
    static void collect(Filling* place, std::string_view name, Content&& content, Rest&&... rest) {
        place->name = name;
        place->content = std::forward<Content>(content);
        collect(place + 1, std::forward<Rest>(rest)...);
    }
    void fill(Prose& prose, const Wording& wording, std::span<Filling> places) const;

    const Sentences* m_sentences;
};

} // namespace tailpoint

#ifndef TAILPOINT_KEEP_SENTENCES // so the preprocessor leaves them to be counted (tests/rooms)
#define SENTENCE(context, text) (::tailpoint::Wording{context, text})
#endif
