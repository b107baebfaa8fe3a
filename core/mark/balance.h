// SPDX-License-Identifier: MIT
// What is right for an earlier wrong value by the balance of all vectors, whichever equation a student takes
// for it: the sum of components along x or y, or square to a vector (the law of sines), the law of cosines,
// or both sums. Internal to mark/.
#pragma once

#include "core/mark/match.h"

#include <complex>

namespace tailpoint::marking {

class Balance {
public:
    /// Of one answer, 0 or 1.
    Balance(const Question& question, std::size_t answer);

    /// Whether the magnitude or direction `target` is right for the wrong ones `sources`. False for other
    /// quantities, and where the right value would be so as well.
    bool follows(const Given& target, const std::vector<const Given*>& sources) const;

private:
    /// A vector with its part in the balance: forces 1, the sum -1. Radians counter-clockwise from +x.
    struct Member {
        VectorId vector;
        double sign = 1, magnitude = 0, radians = 0;
        bool isKnown = true; ///< neither its magnitude nor its direction is sought
    };
    using Members = std::vector<Member>;
    struct Needed {
        std::complex<double> all, known; ///< what the vector must be; what the known ones leave for it
    };

    std::size_t indexOf(VectorId vector) const;
    bool put(Members& members, const Given& given, double value) const;
    Needed neededFor(const Members& members, std::size_t target) const;
    std::vector<std::complex<double>> axes(const Members& members, const Needed& needed) const;
    /// Every value that some equation gives, always in the same order; kNone where it has none.
    std::vector<double> magnitudes(const Members& members, std::size_t target, const Needed& needed) const;
    std::vector<double> directions(const Members& members, std::size_t target, const Needed& needed) const;
    std::vector<double> values(const Given& target, const Members& members,
                               std::complex<double> moved = 0) const;
    double referred(double radians) const;

    const Question& m_question;
    Members m_members;
};

} // namespace tailpoint::marking
