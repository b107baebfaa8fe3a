// SPDX-License-Identifier: MIT
// One number beside another: right, rounded, or what a slip gives. Internal to mark/.
#pragma once

#include "core/mark/alternatives.h"

namespace tailpoint::marking {

/// A given number that stands against one cell.
struct Given {
    std::size_t cell = 0;
    const GivenValue* value = nullptr;
    const GivenNumber* number = nullptr;
    std::optional<double> ofLine; ///< what the line has for which it is given; empty: it is given for none
    /// The one that counts. Where a sign tells the sense, positive in the sense in which the vector acts.
    GivenReading reading;
    double sense = 1; ///< -1: so much of it was turned from the sense drawn, in which it is stated
    Verdict verdict = Verdict::other;
    std::vector<std::size_t> follows; ///< from given numbers by their index
    bool isTurned = false;            ///< a negative magnitude on the opposite direction
    bool isLastFigure = false;        ///< MarkedQuantity::isLastFigure
    bool isMoreThanAsked = false, isOtherReading = false;
    bool isWrongSense = false; ///< right but for the sign that tells the sense: MarkOptions::signedSenses
    bool isTooCoarse = false;  ///< its last digit is worth so much that no slip can be told by it

    double stated() const { return sense * reading.value; }
    bool isGood() const { return verdict == Verdict::right || verdict == Verdict::rounded; }
    bool isWrong() const { return !isGood() && verdict != Verdict::unit && !isWrongSense; }
};

/// It acts along a line that leaves its sense open.
bool hasFreeSense(const Question& question, VectorId vector);
/// Whether the sign of a magnitude tells its sense: MarkOptions::signedSenses, along a line.
bool isSignedBySense(const Question& question, std::size_t cell);
/// And it is negative.
bool isNegativeBySense(const Question& question, std::size_t cell);

enum class Likeness { none, rounded, right };

/// How near a reading of it comes to what is right.
Likeness likeness(const Question& question, const Given& given, const GivenReading& reading);
/// What is right for it; kNone where nothing is.
double rightFor(const Question& question, const Given& given);

/// Whether it is what that number says, by half a unit of its own and so much rounding on the way. Magnitudes
/// by their size.
bool fits(const Question& question, std::size_t cell, const GivenReading& given, double value,
          double tolerance);

/// Whether it is the right number times a factor, `value`: not 0, not by a turn more or less, and told by two
/// figures at least or by a last digit no coarser than the value.
bool fitsScaled(const Question& question, std::size_t cell, const GivenReading& given, double value,
                double tolerance);

/// All numbers of an attempt that stand against one answer, with what is right among them found out.
/// `position`: of two numbers the first or the second.
std::vector<Given> givenIn(const Question& question, const Attempt& attempt, std::size_t answer,
                           std::size_t position);

/// Marks those that are right for an earlier wrong value.
void findFollowing(const Question& question, std::vector<Given>& givens);

/// By given number: what single slips say of it.
enum class Known : std::uint8_t { nothing, alone, withOthers };
/// Marks those that are right for another wrong one by the balance of all vectors (balance.h). Of two that
/// are so for each other the one follows of which less is known, else the later one. Whether any was found.
bool findBalanced(const Question& question, std::vector<Given>& givens, const std::vector<Known>& known);

} // namespace tailpoint::marking
