// SPDX-License-Identifier: MIT
// The named things of a question. Who is it? An id (core/formula/ids.h). Who names it? This table, made once
// from the sketch: one name and one symbol for every vector and every quantity, no two alike in print. Who
// computes it? core/derive.
//
//   const Things things(sketch);
//   things.symbol(forceVector(0))                "F1": F with the subscript 1
//   things.formula(directionId(kSumVector))      the symbol θ_R as a node that bears its id
//   things.at(directionId(kSumVector)).plain     "theta_R", as a script or an answer writes it
//   things.named("theta_R")                      its id
#pragma once

#include "core/formula/formula.h"
#include "core/sketch/sides.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tailpoint {

/// Partial sums are told for so many forces at most.
inline constexpr std::size_t kMostPartials = 6;

enum class Dimension { force, forceSquared, angle, number };
Dimension dimensionOf(What what);

/// A quantity as the table knows it.
struct Thing {
    enum class Role { given, asked, onTheWay };
    QuantityId id;
    Symbol symbol; ///< of a square or a ratio: of what is squared, of the angle (see Things::formula)
    std::string
        plain; ///< ASCII but for what a name holds: "R", "theta_R", "R_x", "alpha", "phi", "sin alpha"
    Dimension dimension = Dimension::number;
    Role role = Role::onTheWay;
};

/// How names and symbols are kept apart. A name is printed with its subscript ("F1", "T_AB"); of two that
/// would look alike so, the later one as it was typed ("T1" and "T_1"), else with a number behind it ("P" and
/// "P "). A Greek letter gives way to the next of its row where a vector bears it, with or without a
/// subscript, or its name in Latin letters: θ ε ι, ψ κ τ, φ ω χ, α λ ξ, β μ η, γ ν ζ, δ ρ σ (an arctangent's
/// acute angle), d h e (a distance). Components are R_x and R_y, or R_(x) and R_(y) where a vector is called
/// R_x. The known forces added up are the first free of K, L, M, K1, K2, ..., partial sums K1, K2, ... or
/// with the first letter of K, L, M, ... that is free with all its numbers.
class Things {
public:
    explicit Things(const Sketch& sketch);

    /// As typed; of K and of partial sums the name that they are given.
    std::string name(VectorId vector) const;
    /// Light: the magnitude. In bold it is the vector.
    Symbol symbol(VectorId vector) const;
    Symbol symbol(const QuantityId& quantity) const;
    /// The symbol as a node that bears its id; a square as R², a ratio as sin β.
    Formula formula(const QuantityId& quantity) const;
    Formula vectorFormula(VectorId vector) const; ///< bold
    Thing at(const QuantityId& quantity) const;
    Thing::Role roleOf(const QuantityId& quantity) const;
    /// How the vector of that name prints: for texts that hold names. A name of nobody prints as
    /// symbolOfName().
    Symbol symbolNamed(std::string_view name) const;
    /// By its plain name. Looks at every vector: for what is typed, not for a loop.
    std::optional<QuantityId> named(std::string_view plain) const;

    const std::optional<Sides>& sides() const { return m_sides; }
    /// Of the triangle's angle opposite to side 0, 1, 2.
    const std::string& angleLetter(std::size_t side) const { return m_letters.angle[side]; }
    const std::string& fromXLetter() const { return m_letters.psi; }

private:
    struct Named {
        std::string name;
        Symbol symbol;
        Subscript subscript; ///< of its direction and its angles
        bool sizeGiven = false, wayGiven = false;
    };
    struct Letters {
        std::string theta, psi, phi, acute, distance;
        std::array<std::string, 3> angle;
    };
    friend class Naming;

    const Named* find(VectorId vector) const; ///< null for partial sums
    Subscript subscriptOf(VectorId vector) const;
    Symbol component(VectorId vector, char axis) const;
    Symbol angleOf(const QuantityId& quantity) const;
    Symbol between(const QuantityId& quantity) const;
    Symbol distance(const QuantityId& quantity) const;
    std::string plainOf(const QuantityId& quantity) const;
    std::vector<QuantityId> quantitiesOf(VectorId vector) const;

    std::vector<Named> m_forces;
    Named m_sum, m_known;
    std::string m_partialLetter;
    Letters m_letters;
    bool m_axesFenced = false; ///< R_(x) for R_x
    std::optional<Sides> m_sides;
};

/// Why a name that is typed now would print like another thing of the sketch, or like a number, in one line
/// with the mend; empty where it would not. `renamed`: the vector whose name it becomes (its present one
/// doesn't count), kNobody for one that is yet to be added. A file may hold such names: they are told apart
/// as Things says.
std::optional<std::string> printsLike(const Sketch& sketch, std::string_view name,
                                      VectorId renamed = kNobody);

} // namespace tailpoint
