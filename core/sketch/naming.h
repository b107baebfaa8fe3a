// SPDX-License-Identifier: MIT
// How names and letters are kept apart in print. Used inside sketch/ only.
#pragma once

#include "core/sketch/things.h"

#include <unordered_set>

namespace tailpoint {

/// What the eye takes a text for: spaces at its ends dropped, others as one, letters of other alphabets that
/// look like Latin ones as those, raised and lowered digits as lowered ones.
std::string looksOf(std::string_view text);

/// A row of letters of which the first free one is taken, each with its name in Latin letters.
struct LetterRow {
    std::array<std::string_view, 3> letters, spelled;
};
inline constexpr LetterRow kTheta{{"θ", "ε", "ι"}, {"theta", "epsilon", "iota"}},
    kPsi{{"ψ", "κ", "τ"}, {"psi", "kappa", "tau"}}, kPhi{{"φ", "ω", "χ"}, {"phi", "omega", "chi"}},
    kAlpha{{"α", "λ", "ξ"}, {"alpha", "lambda", "xi"}}, kBeta{{"β", "μ", "η"}, {"beta", "mu", "eta"}},
    kGamma{{"γ", "ν", "ζ"}, {"gamma", "nu", "zeta"}}, kAcute{{"δ", "ρ", "σ"}, {"delta", "rho", "sigma"}},
    kDistance{{"d", "h", "e"}, {"d", "h", "e"}};
/// "theta" for "θ", with an apostrophe for each prime; other text as it is.
std::string spelledLetter(std::string_view letter);

/// Fills a table.
class Naming {
public:
    Naming(Things& things, const Sketch& sketch);
    void run();

private:
    Things::Named named(const Force& vector);
    Symbol freeSymbol(const std::string& name);
    bool isFree(const Symbol& symbol) const { return !m_looks.contains(looksOf(inPrint(symbol))); }
    bool isNameFree(const std::string& name) const;
    Subscript freeSubscript(const Symbol& symbol);
    std::string freeLetter(const LetterRow& row) const;
    void nameKnown();
    void nameLetters();
    bool componentsClash() const;

    Things& m_things;
    const Sketch& m_sketch;
    std::unordered_set<std::string> m_looks, m_subscripts;
    std::vector<std::string> m_letterLike; ///< names whose base might be a letter of ours
};

} // namespace tailpoint
