// SPDX-License-Identifier: MIT
// Solves random sketches with the core and with the oracle, and measures every answer against the bounds that
// core/solve/solve.h states. Faults are kept as text; the largest error is kept as a part of its bound.
#pragma once

#include "core/sketch/shown.h"
#include "core/solve/kernel.h"
#include "core/solve/solve.h"
#include "tests/support/cases.h"
#include "tests/support/oracle.h"

#include <map>
#include <sstream>

namespace tailpoint::testing {

inline constexpr double kU = 0x1p-53;
inline constexpr double kForwardParts = 8;     ///< of u, relative to the answer
inline constexpr double kSpreadPart = 0x1p-58; ///< of the condition
inline constexpr double kBackwardParts = 16;   ///< of u, relative to the sum of all magnitudes
inline constexpr double kDirectionParts = 4;   ///< of u, relative to the direction (degrees)

struct Tally {
    double worst = 0; ///< error as a part of its bound; above 1 is a fault
    std::uint64_t checks = 0;
};

/// How far a relative change of the inputs moves a magnitude and (radians) a direction.
template <class Real>
struct Spread {
    Real magnitude = 0, angle = 0;
};

template <class Real>
class Referee {
public:
    using V = oracle::Vec<Real>;

    void judge(const Sketch& made) {
        sketch_ = &made;
        if (const auto fault = firstFault(made)) {
            return fail("no fair case: " + fault->place + " " + fault->message);
        }
        ++cases_;
        solved_ = solve(made);
        readKnowns();
        switch (solved_.family) {
        case Family::closePolygon:
            return judgeResultant();
        case Family::twoMagnitudes:
            return judgeLines();
        case Family::magnitudeAndDirection:
            return judgeLineCircle();
        case Family::twoDirections:
            return judgeCircles();
        case Family::smallestForce:
        case Family::smallestSum:
            return judgeSmallest();
        default:
            fail("unexpected family");
        }
    }

    const std::vector<std::string>& faults() const { return faults_; }
    const std::map<std::string, Tally>& tallies() const { return tallies_; }
    std::uint64_t cases() const { return cases_; }
    std::uint64_t exempt() const { return exempt_; }             ///< within the bands: not counted
    std::uint64_t backwardOnly() const { return backwardOnly_; } ///< too near tangency for a forward bound

private:
    // --- reading ---
    Real senseFactor() const { return Real(sketch_->reference.sense == Sense::cw ? -1 : 1); }
    /// Unit vector of an angle as the sheet says it.
    V unitFrom(double referred) const {
        return oracle::unitAt<Real>(Real(sketch_->reference.axisDegrees) + senseFactor() * Real(referred));
    }
    /// The direction of a vector as the sheet says it, not yet brought into one turn.
    Real referredOf(const V& v) const {
        Real degrees = senseFactor() * (oracle::degreesOf(v) - Real(sketch_->reference.axisDegrees));
        while (degrees > 180) {
            degrees -= 360;
        }
        while (degrees <= -180) {
            degrees += 360;
        }
        return degrees;
    }
    V vectorOf(double magnitude, double degrees) const { return Real(magnitude) * unitFrom(degrees); }
    static double degreesIn(const Force& force) { return std::get<AngleForm>(force.direction.form).value; }
    static bool whole(const Force& force) { return isGiven(force.magnitude) && isGiven(force.direction); }
    V reported(const SolvedForce& force) const {
        return force.direction ? vectorOf(force.magnitude, *force.direction) : V{};
    }

    // The gap that the unknown vectors must close, and the sum of the magnitudes given with a direction.
    void readKnowns() {
        gap_ = V{};
        known_ = Real(0);
        counted_ = 0;
        for (const Force& force : sketch_->forces) {
            if (whole(force)) {
                gap_ = gap_ - vectorOf(*force.magnitude.value, degreesIn(force));
                known_ += Real(*force.magnitude.value);
                ++counted_;
            }
        }
        if (whole(sketch_->sum)) {
            gap_ = gap_ + vectorOf(*sketch_->sum.magnitude.value, degreesIn(sketch_->sum));
            known_ += Real(*sketch_->sum.magnitude.value);
            ++counted_;
        }
        const Real size = oracle::length(gap_);
        const Real zero = Real(kernel::kZeroBand) * counted_ * known_;
        zeroGap_ = size <= zero;
        doubtfulGap_ = size > zero * Real(0.999) && size < zero * Real(1.001);
        if (zeroGap_) {
            gap_ = V{};
        }
    }

    const Force& force(int index) const {
        return index == kSumIndex ? sketch_->sum : sketch_->forces[static_cast<std::size_t>(index)];
    }
    static const SolvedForce& found(const Solution& solution, int index) {
        return index == kSumIndex ? solution.sum : solution.forces[static_cast<std::size_t>(index)];
    }
    static Real sign(int index) { return Real(index == kSumIndex ? -1 : 1); }
    V unit(int index) const { return sign(index) * unitFrom(degreesIn(force(index))); }
    int first() const { return solved_.unknownVectors[0]; }
    int second() const { return solved_.unknownVectors[1]; }

    // --- measuring ---
    void fail(const std::string& what) {
        if (faults_.size() < 20) {
            faults_.push_back("case " + std::to_string(cases_) + ": " + what + "\n  " + describe());
        }
    }
    std::string describe() const {
        std::ostringstream text;
        text.precision(17);
        const auto tell = [&](const Force& force) {
            text << force.name << "=";
            force.magnitude.value ? text << *force.magnitude.value : text << "?";
            const auto* angle = std::get_if<AngleForm>(&force.direction.form);
            angle ? text << "@" << angle->value << " " : text << "@? ";
        };
        for (const Force& force : sketch_->forces) {
            tell(force);
        }
        tell(sketch_->sum);
        return text.str() + "[" + std::string(nameOf(solved_.status)) + "] " + solved_.message().text();
    }
    void measure(const std::string& what, const Real& error, const Real& bound) {
        using std::fabs;
        const double part =
            bound > 0 ? static_cast<double>(Real(abs(error) / bound)) : (error == 0 ? 0.0 : 1e300);
        Tally& tally = tallies_[what];
        ++tally.checks;
        tally.worst = std::max(tally.worst, part);
        if (!(part <= 1)) {
            std::ostringstream text;
            text << what << " is " << part << " times its bound";
            fail(text.str());
        }
    }

    // Substituted back: the reported magnitudes and directions against the equation.
    void judgeBackward(const Solution& solution) {
        V rest = gap_;
        Real scale = known_;
        for (const int index : solved_.unknownVectors) {
            if (index != kNoVector) {
                rest = rest - sign(index) * reported(found(solution, index));
                scale += Real(found(solution, index).magnitude);
            }
        }
        measure("backward", oracle::length(rest), Real(kBackwardParts * kU) * scale);
        if (zeroGap_) {
            return;
        }
        measure("residual shown", Real(solution.residual), Real(kBackwardParts * kU) * scale);
    }

    void judgeMagnitude(const std::string& what, const SolvedForce& solved, const Real& truth,
                        const Real& spread, const Real& snap) {
        if (solved.magnitude == 0 && truth <= snap) {
            return;
        }
        const Real bound = Real(kForwardParts * kU) * truth + Real(kSpreadPart) * spread;
        measure(what + " magnitude", Real(solved.magnitude) - truth, bound);
        if (bound < truth * Real(1e-13)) {
            judgeShownForce(solved.magnitude, truth);
        }
    }
    void judgeDirection(const std::string& what, const SolvedForce& solved, const V& truth,
                        const Real& spread) {
        if (!solved.direction) {
            return fail(what + " has no direction");
        }
        const Real degrees = referredOf(truth);
        Real error = Real(*solved.direction) - degrees;
        error -= error > 180 ? 360 : error < -180 ? -360 : 0;
        const Real perRadian = 180 / boost::math::constants::pi<Real>();
        measure(what + " direction", error,
                Real(kDirectionParts * kU) * abs(degrees) + Real(kSpreadPart) * spread * perRadian);
        if (spread < Real(1e4)) {
            judgeShownAngle(*solved.direction, degrees);
        }
    }

    // The shown number must be a nearest one to the truth, ties and their band excepted.
    void judgeShownForce(double value, const Real& truth) {
        const double exponent = std::floor(std::log10(value)) + 1 - sketch_->figures;
        const Real unit = pow(Real(10), static_cast<int>(exponent));
        const double shown = std::stod(shownForce(value, *sketch_));
        measure("shown magnitude", Real(shown) - truth, unit / 2 + truth * Real(2e-12));
    }
    void judgeShownAngle(double value, const Real& truth) {
        Real error = Real(std::stod(shownAngle(value, *sketch_))) - truth;
        error -= error > 180 ? 360 : error < -180 ? -360 : 0;
        measure("shown direction", error, Real(0.05) + abs(truth) * Real(2e-12));
    }

    // --- the families ---
    void judgeResultant() {
        const SolvedForce& sum = solved_.solutions.front().sum;
        if (doubtfulGap_) {
            ++exempt_;
            return;
        }
        if (zeroGap_ != !sum.direction.has_value()) {
            return fail("zero or not is decided wrongly");
        }
        judgeBackward(solved_.solutions.front());
        if (zeroGap_) {
            return;
        }
        const V truth = Real(-1) * gap_;
        const Real size = oracle::length(truth);
        judgeMagnitude("resultant", sum, size, known_, Real(0));
        judgeDirection("resultant", sum, truth, known_ / size);
    }

    void judgeLines() {
        const V u = unit(first());
        const V v = unit(second());
        const Real sine = abs(oracle::cross(u, v));
        if (sine < Real(1.1 * kernel::kParallelBand)) {
            if (sine < Real(0.9 * kernel::kParallelBand) && solved_.status == Status::unique) {
                fail("parallel lines gave an answer");
            }
            ++exempt_;
            return;
        }
        if (solved_.solutions.size() != 1) {
            return fail("expected one answer");
        }
        const oracle::Answer<Real> truth = oracle::lines(u, v, gap_);
        const Real a = abs(truth.firstMagnitude);
        const Real b = abs(truth.secondMagnitude);
        const Real spread = (known_ + a + b) / sine;
        const Real snap = Real(2 * kernel::kTangentBand) * known_ / sine;
        const Solution& solution = solved_.solutions.front();
        judgeBackward(solution);
        if (isZero(solution, first(), a, snap) || isZero(solution, second(), b, snap)) {
            return;
        }
        judgeMagnitude("two magnitudes", found(solution, first()), a, spread, Real(0));
        judgeMagnitude("two magnitudes", found(solution, second()), b, spread, Real(0));
        judgeSense(found(solution, first()), truth.firstMagnitude);
        judgeSense(found(solution, second()), truth.secondMagnitude);
    }
    // Settled as zero within the band: the other vector then closes the gap alone, which the backward bound
    // judges.
    bool isZero(const Solution& solution, int index, const Real& truth, const Real& snap) {
        const bool zero = found(solution, index).magnitude == 0;
        if (zero && truth > snap) {
            fail(found(solution, index).name + " is zero beyond the band");
        }
        return zero;
    }
    void judgeSense(const SolvedForce& solved, const Real& truth) {
        if (solved.magnitude != 0 && solved.turned != (truth < 0)) {
            fail("wrong sense of " + solved.name);
        }
    }

    void judgeLineCircle() {
        const bool lineFirst = solved_.solutions.empty()
                                   ? isGiven(force(first()).direction)
                                   : found(solved_.solutions[0], first()).magnitudeFound;
        const int line = lineFirst ? first() : second();
        const int circle = lineFirst ? second() : first();
        const Real r = Real(*force(circle).magnitude.value);
        const V u = unit(line);
        const Real across = abs(oracle::cross(u, gap_));
        const Real scale = known_ + r;
        if (!countStands(r - across, scale)) {
            return;
        }
        if (solved_.solutions.size() != (r > across ? 2u : 0u)) {
            return fail("wrong count of answers");
        }
        if (r < across) {
            return;
        }
        const Real half = sqrt((r - across) * (r + across));
        const Real sine = half / r;
        const auto truths = oracle::lineAndCircle(u, r, gap_);
        const bool swap =
            signedMagnitude(solved_.solutions[0], line) < signedMagnitude(solved_.solutions[1], line);
        for (std::size_t i = 0; i < 2; ++i) {
            const Solution& solution = solved_.solutions[swap ? 1 - i : i];
            judgeBackward(solution);
            if (sine * sine * r < scale * Real(0x1p-48)) {
                ++backwardOnly_;
                continue;
            }
            const Real a = abs(truths[i].firstMagnitude);
            if (isZero(solution, line, a, Real(2 * kernel::kTangentBand) * scale / sine)) {
                continue;
            }
            judgeMagnitude("magnitude and direction", found(solution, line), a, (scale + a) / sine, Real(0));
            judgeSense(found(solution, line), truths[i].firstMagnitude);
            judgeDirection("magnitude and direction", found(solution, circle),
                           sign(circle) * truths[i].second, scale / half);
        }
    }
    static double signedMagnitude(const Solution& solution, int index) {
        const SolvedForce& solved = found(solution, index);
        return solved.turned ? -solved.magnitude : solved.magnitude;
    }
    // False within four bands of tangency, where the count of answers is not judged.
    bool countStands(const Real& spare, const Real& scale) {
        if (abs(spare) > Real(4 * kernel::kTangentBand) * scale) {
            return true;
        }
        ++exempt_;
        for (const Solution& solution : solved_.solutions) {
            judgeTouching(solution, scale);
        }
        return false;
    }
    // A tangent answer is exact for inputs moved by the band.
    void judgeTouching(const Solution& solution, const Real& scale) {
        V rest = gap_;
        for (const int index : solved_.unknownVectors) {
            rest = rest - sign(index) * reported(found(solution, index));
        }
        measure("tangent, backward", oracle::length(rest), Real(2 * kernel::kTangentBand) * scale);
    }

    void judgeCircles() {
        const Real r = Real(*force(first()).magnitude.value);
        const Real q = Real(*force(second()).magnitude.value);
        const Real size = oracle::length(gap_);
        const Real scale = known_ + r + q;
        Real longest = r > q ? r : q;
        longest = size > longest ? size : longest;
        const Real spare = r + q + size - 2 * longest;
        if (!countStands(spare, scale)) {
            return;
        }
        if (solved_.solutions.size() != (spare > 0 ? 2u : 0u)) {
            return fail("wrong count of answers");
        }
        if (spare < 0) {
            return;
        }
        // In the oracle's digits the plain formula for the area does.
        const Real half = (r + q + size) / 2;
        const Real doubled = 2 * sqrt(half * (half - r) * (half - q) * (half - size));
        const bool sumUnknown = second() == kSumIndex;
        const auto truths = oracle::circles(r, q, gap_);
        const Real spreadFirst = q * scale / doubled + known_ / size;
        const Real spreadSecond = r * scale / doubled + known_ / size;
        // Where the inputs' rounding could close the angle between the sides, only the backward bound means
        // something.
        const Real narrow = doubled / (longest * longest);
        const bool forward = (spreadFirst + spreadSecond) * Real(0x1p-48) < narrow;
        for (std::size_t i = 0; i < 2; ++i) {
            const Solution& solution = solved_.solutions[sumUnknown ? 1 - i : i];
            judgeBackward(solution);
            if (!forward) {
                ++backwardOnly_;
                continue;
            }
            judgeDirection("two directions", found(solution, first()), sign(first()) * truths[i].first,
                           spreadFirst);
            judgeDirection("two directions", found(solution, second()), sign(second()) * truths[i].second,
                           spreadSecond);
        }
    }

    void judgeSmallest() {
        const bool ofSum = solved_.family == Family::smallestSum;
        const int line = ofSum ? first() : second();
        const int whole = ofSum ? second() : first();
        const V u = unit(line);
        const Real along = oracle::dot(u, gap_);
        const Real across = oracle::cross(u, gap_);
        const Real snap = Real(2 * kernel::kTangentBand) * known_;
        const Solution& solution = solved_.solutions.front();
        judgeBackward(solution);
        judgeMagnitude("smallest", found(solution, line), abs(along), known_, snap);
        judgeMagnitude("smallest", found(solution, whole), abs(across), known_, snap);
        judgeSense(found(solution, line), along);
    }

    const Sketch* sketch_ = nullptr;
    Solved solved_;
    V gap_;
    Real known_ = 0;
    int counted_ = 0;
    bool zeroGap_ = false, doubtfulGap_ = false;
    std::uint64_t cases_ = 0, exempt_ = 0, backwardOnly_ = 0;
    std::vector<std::string> faults_;
    std::map<std::string, Tally> tallies_;
};

} // namespace tailpoint::testing
