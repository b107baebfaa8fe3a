// SPDX-License-Identifier: MIT
// The table of slips: each is a rewrite of the question, of lines of a chain, or of the answer's form; or,
// the named exceptions, a short cut with a chain of its own. Adding one is one entry in catalogue.cpp.
// Internal to mark/.
#pragma once

#include "core/explain/wording.h"
#include "core/mark/question.h"

namespace tailpoint::marking {

/// A line of a chain in another form.
struct Change {
    std::size_t line = 0;
    Line now;
};

/// One way to make a slip in a chain. The vectors are those that its sentence names.
struct Rewrite {
    std::vector<Change> changes; ///< the line that is shown in front
    VectorId of{}, with{};
};

/// What a rewrite sees: a chain with its right numbers. Patterns match the kind of a line, its tree and its
/// identity, never the text of a symbol.
struct Pattern {
    const Question& question;
    const Ways& ways; ///< the question's own, or those of a question read wrongly
    const Way& way;
    const std::optional<Reduction>& reduction;

    const Chain& chain() const { return way.chain; }
    const Sketch& sketch() const { return ways.sketch; }
    std::optional<long double> at(const QuantityId& id) const { return way.at(id); }
    const Line* find(const QuantityId& subject) const;
    std::size_t indexOf(const QuantityId& subject) const;
    /// A symbol as the question prints it.
    Formula symbol(const QuantityId& id) const { return question.things.formula(id); }
};

/// A question as it was read.
struct Reading {
    Sketch sketch;
    VectorId of{};          ///< the vector that is read wrongly; kNobody: all
    What what = What::none; ///< of it
    bool inPairs = true;    ///< is tried together with a slip in calculation
};

/// Formulas over what is given and right, one for each quantity that it claims.
struct ShortCut {
    std::vector<std::pair<QuantityId, Formula>> gives;
    VectorId of{}, with{};
};

/// The answer in another form: a formula over the right answer.
struct Form {
    Formula formula;
    VectorId of{}; ///< whose quantity
};

struct Slip {
    std::string_view id;
    Wording name; ///< a few words for headings and tallies
    SlipPlace place;
    int common;     ///< 5 among the most frequent ... 1 rare; a prior, see the table's head
    Wording strong; ///< "This is what you get if …"
    Wording weak;   ///< "One way to get this number is …"
    Wording mend;
    Wording ask; ///< one question that tells it from others
    std::vector<Rewrite> (*rewrites)(const Pattern&) = nullptr;
    std::vector<Reading> (*readings)(const Question&) = nullptr;
    std::vector<ShortCut> (*shortCuts)(const Question&) = nullptr;
    /// Of the right value of one cell.
    std::vector<Form> (*forms)(const Question&, std::size_t cell, double value) = nullptr;
    Verdict verdict = Verdict::slip; ///< of what it explains alone
    bool isScaled =
        false; ///< the right number times a factor: told by its digits, never by a turn more or less
    bool isSmall = false;     ///< gives an angle of so small a number that a 0 may be anything
    bool isWritten = false;   ///< of a number that is written down: an arrow that is drawn has none
    bool isOnTheWay = false;  ///< its forms are those of values on the way too
    bool goesBySigns = false; ///< its rewrites depend on the signs of what the chain gives
    bool isOneSlip =
        false;            ///< a short cut whose numbers were all calculated: it costs once, as any slip does
    bool isSteep = false; ///< magnifies what rounding moves; as far as the right chain is moved counts
};

const std::vector<Slip>& catalogue();
namespace entries {
std::vector<Slip> answerForms(), readings(), triangles(), components(), shortCuts();
}

/// Patterns, by the part of the chain that they change.
namespace triangle_slips {
std::vector<Rewrite> anglesAdded(const Pattern&), supplementInCosines(const Pattern&),
    rootForgotten(const Pattern&), factorTwoLost(const Pattern&), orderOfOperations(const Pattern&),
    bracketLeftOpen(const Pattern&), gonMode(const Pattern&), axisAngleInTriangle(const Pattern&),
    givenAngleSupplement(const Pattern&), includedAngleAssumed(const Pattern&),
    discriminantForgotten(const Pattern&), sineInCosines(const Pattern&), cosineInSines(const Pattern&),
    degreeMode(const Pattern&), radianMode(const Pattern&), radianModeOnce(const Pattern&),
    diagonalHalvesAngle(const Pattern&), sidesMismatched(const Pattern&), ratioInverted(const Pattern&),
    inverseForgotten(const Pattern&), acuteForObtuse(const Pattern&), referralTurned(const Pattern&),
    referralForgotten(const Pattern&), fromOtherForce(const Pattern&), rightTriangleAssumed(const Pattern&);
} // namespace triangle_slips
namespace component_slips {
std::vector<Rewrite> sineCosineExchanged(const Pattern&), sineCosineExchangedOnce(const Pattern&),
    componentSign(const Pattern&), componentLeftOut(const Pattern&), componentWhole(const Pattern&),
    componentsAdded(const Pattern&), componentForForce(const Pattern&), tangentInverted(const Pattern&),
    quadrantMissed(const Pattern&), slopeRatioTaken(const Pattern&), perpendicularForOblique(const Pattern&),
    equationSign(const Pattern&), negativeSquared(const Pattern&), slopeShares(const Pattern&),
    rightSideLost(const Pattern&);
} // namespace component_slips
namespace reading_slips {
std::vector<Reading> slopeExchanged(const Question&), signOfDirection(const Question&),
    signsOfDirections(const Question&), otherAxisRead(const Question&), otherSenseRead(const Question&),
    bearingAsAngle(const Question&), magnitudesExchanged(const Question&), forceLeftOut(const Question&),
    forceCountedTwice(const Question&), resultantAsAForce(const Question&), gRounded(const Question&),
    massAsWeight(const Question&), differenceTaken(const Question&);
} // namespace reading_slips
namespace short_cuts {
std::vector<ShortCut> magnitudesAdded(const Question&), magnitudesSubtracted(const Question&),
    directionAveraged(const Question&), halvedLoad(const Question&), halfLoadEach(const Question&),
    equalTensions(const Question&), answersExchanged(const Question&), smallestToTheForce(const Question&),
    answersMixed(const Question&);
} // namespace short_cuts
namespace answer_forms {
using Forms = std::vector<Form>;
Forms wrongAxis(const Question&, std::size_t, double), wrongTurn(const Question&, std::size_t, double),
    opposite(const Question&, std::size_t, double), senseTurned(const Question&, std::size_t, double),
    noSumTurned(const Question&, std::size_t, double), complement(const Question&, std::size_t, double),
    supplement(const Question&, std::size_t, double), unitConfused(const Question&, std::size_t, double),
    radiansForDegrees(const Question&, std::size_t, double),
    gonsForDegrees(const Question&, std::size_t, double), decimalPoint(const Question&, std::size_t, double),
    digitsExchanged(const Question&, std::size_t, double),
    tipAtMidpoint(const Question&, std::size_t, double);
} // namespace answer_forms

} // namespace tailpoint::marking
