// SPDX-License-Identifier: MIT
// A worked solution whose lines are asked for: on what each rests, and what it comes to. What is entered is
// read and marked as any answer is (core/mark), so that a slip in a line is named.
//
//   const AskedLines asked(sketch);
//   asked.lines()[3].principle                          // Principle::cosines
//   asked.mark(3, "520 N")                              // or what can't be read
//   asked.principleAtStart()                            // of 'Which law starts, and why?'
#pragma once

#include "core/mark/mark.h"
#include "core/practice/faded.h"

#include <array>

namespace tailpoint {

/// On what a line of calculation rests.
enum class Principle : std::uint8_t {
    between,       ///< the angle between two directions is their difference
    angles,        ///< a triangle's angles make a half turn; equal sides have equal angles
    cosines,       ///< law of cosines
    sines,         ///< law of sines
    resolved,      ///< a component: magnitude times cosine or sine
    summed,        ///< components added up along an axis
    pythagoras,    ///< squares in a right triangle
    rightTriangle, ///< sine, cosine or tangent in a right triangle
    turned         ///< a direction turned off from another, or counted from another axis
};
inline constexpr std::array kPrinciples{Principle::between,    Principle::angles,        Principle::cosines,
                                        Principle::sines,      Principle::resolved,      Principle::summed,
                                        Principle::pythagoras, Principle::rightTriangle, Principle::turned};
/// A few words, to be chosen from a list: "Law of cosines".
std::string principleName(Principle principle, const Sentences* sentences = nullptr);

struct AskedLine {
    WorkingPlace place; ///< in worked()
    Principle principle = Principle::between;
};

/// A number entered for a line.
struct LineMark {
    Verdict verdict = Verdict::other; ///< never missing, incomplete or follows
    std::optional<Marking> marking;   ///< with the slips; empty for a number that is no force and no angle
    bool isRight() const { return verdict == Verdict::right || verdict == Verdict::rounded; }
};

class AskedLines {
public:
    /// Solves and explains the question by the way that suits it; some milliseconds. Without lines where it
    /// has no answer.
    explicit AskedLines(const Sketch& sketch, const MarkOptions& options = {});

    const Worked& worked() const { return m_worked; }               ///< the whole solution
    const std::vector<AskedLine>& lines() const { return m_lines; } ///< as calculatedLines() has them
    const Working& working(std::size_t line) const;

    /// The first law or theorem that the solution calls on: 'Which law starts?' Precondition: lines().
    Principle principleAtStart() const { return m_lines[m_start].principle; }
    /// Why it is that one: the sentences of its step, and of the step that chooses it.
    std::vector<Prose> whyAtStart() const;

    /// A number for that line, with or without its unit.
    Readable<LineMark> mark(std::size_t line, std::string_view typed) const {
        return mark(working(line), m_route, typed);
    }
    /// The same for a line of that question by another route. Precondition: it has a subject and a value.
    Readable<LineMark> mark(const Working& right, const Route& route, std::string_view typed) const;

private:
    AskedLines(const Sketch& sketch, const Solved& solved, const MarkOptions& options);
    Readable<LineMark> markBare(const Working& right, std::string_view typed) const;

    Sketch m_sketch;
    Worked m_worked;
    std::vector<AskedLine> m_lines;
    std::size_t m_start = 0; ///< of m_lines
    Route m_route;           ///< of these
    Marker m_marker;
};

/// A number that is no force and no angle (a square, a sine) is right within this share of it.
inline constexpr double kBareNumberShare = 0.005;

} // namespace tailpoint
