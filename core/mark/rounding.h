// SPDX-License-Identifier: MIT
// How far rounding the lines of a chain moves what comes after them, for the many chains that slips make.
// Internal to mark/.
#pragma once

#include "core/mark/question.h"

namespace tailpoint::marking {

/// Every line is moved half a unit both ways and the lines that take it are evaluated again; farther on that
/// is carried by these slopes, which costs a tenth of evaluating everything anew (Question::addTolerance())
/// and is the same to first order.
class Rounding {
public:
    /// Refers to both.
    Rounding(const Question& question, const Way& way);

    /// As Question::addTolerance(). `state`: the chain run with the patches.
    void addTolerance(const Program::State& state, std::span<const Program::Patch> patches, double most,
                      Numbers& numbers) const;

private:
    /// What one unit more of a line's quantity makes of another that takes it.
    struct Slope {
        std::size_t line = 0;
        double by = 0;
    };
    using Slopes = std::vector<Slope>;
    Slopes slopesOf(std::size_t line, const Program::Code& code, Program::State& state) const;
    double slope(std::size_t line, const Program::Code& code, std::size_t input, Program::State& state) const;
    bool isMoved(std::size_t line, const Program::Code& code, const Program::State& state) const;
    double halfOf(std::size_t line, const Program::State& state) const;
    /// By line: the sum of what half a unit of each line before it moves.
    std::vector<double> moved(Program::State state, std::span<const Program::Patch> patches) const;

    const Question& m_question;
    const Way& m_way;
    std::vector<std::size_t> m_lineOfSlot; ///< lines() of what is given
    std::vector<Slopes> m_right;           ///< by line, of the right chain
};

} // namespace tailpoint::marking
