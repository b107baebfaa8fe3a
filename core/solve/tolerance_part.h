// SPDX-License-Identifier: MIT
// The part of the box that has an answer: how far what is given can go within it. Used inside
// solve/tolerance, where some of the box has none.
#pragma once

#include "core/solve/tolerance_problem.h"

namespace tailpoint::tolerance {

/// Of one input; scaled, as Input has it.
struct PartEnds {
    long double least = 0, greatest = 0;           ///< beyond them it is proved that there is no answer
    long double innerLeast = 0, innerGreatest = 0; ///< here there is one
    bool marked = false;                           ///< an end is an outer bound only
};

/// Ends of an arc within it.
void restrictTo(Arc& arc, long double least, long double greatest);

class Part {
public:
    /// `known`: points of the box that have the answer, tried first; more are added. `boxes`: for each search
    /// whether a smaller box has one; there are kMostLooked at the most. All are kept by reference.
    Part(const Problem& problem, const std::vector<Piece>& pieces, std::vector<Point>& known, int boxes)
        : problem_(problem), pieces_(pieces), known_(known), boxes_(boxes) {}

    /// From the least to the greatest value of an input at which there is an answer: outward by at most 4e-4
    /// of its interval where not marked.
    PartEnds endsOf(std::size_t input);
    /// Whether there is an answer with a known vector at the place of `sector` that lies farthest along
    /// `along`, both on the forces' side. False: it was not found.
    bool reaches(std::size_t vector, const Sector& sector, Pt along);

private:
    enum class Has { no, yes, unknown };
    struct Limits {
        std::size_t input = 0;
        long double least = 0, greatest = 0;
    };
    /// Where it has: `at` is that point's value of the first input.
    Has has(const std::vector<Limits>& limits, long double& at);
    bool tryKnown(const std::vector<Limits>& limits, long double& at);
    void restrict(Problem& problem, std::vector<Piece>& pieces, const Limits& limits) const;
    struct End {
        long double outer, inner;
        bool marked;
    };
    End endOf(std::size_t input, bool greatest);
    long double farthest(std::size_t input, long double end);
    void goAlong(Point& point, std::size_t input, long double end) const;

    const Problem& problem_;
    const std::vector<Piece>& pieces_;
    std::vector<Point>& known_;
    static constexpr int kMostLooked = 16; // keeps 99 % of all ranges within their 20 ms
    int boxes_, left_ = kMostLooked;
};

} // namespace tailpoint::tolerance
