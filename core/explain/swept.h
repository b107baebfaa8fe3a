// SPDX-License-Identifier: MIT
// What a sweep comes to, in words: what varies, least and greatest, where there is no answer. Plain text with
// an ASCII minus, names as they are typed; the window and the figure put in U+2212.
#pragma once

#include "core/explain/limits.h"
#include "core/explain/wording.h"
#include "core/solve/sweep.h"

#include <string>
#include <vector>

namespace tailpoint {

/// "direction of A".
std::string wordsOf(const Scalar& scalar, const Sketch& sketch, const Sentences* sentences = nullptr);
/// "A", "direction of A", "larger of A and B", "A, answer 1".
std::string wordsOf(const Swept& swept, const Sketch& sketch, const Sentences* sentences = nullptr);
/// Which of two answers left out: "A", "larger of A and B".
std::string nameOf(const Swept& swept, const Sketch& sketch, const Sentences* sentences = nullptr);

/// A value of what is varied, or of a curve, with its unit, to two figures more than the sheet shows: what a
/// least or a greatest is worth being told to. Angles to the sheet's decimals.
std::string sweptValue(double value, bool isAngle, const Sketch& sketch);

/// "A least 5.0714 kN at 25.0°", "A greatest 12.000 kN at 90.0°"; of a curve that doesn't change one line, of
/// one without a point one that says so.
struct ExtremeWords {
    std::string least, greatest; ///< `greatest` is empty where `least` says it all
};
ExtremeWords extremeWords(const Curve& curve, const Sweep& sweep, const Sketch& sketch,
                          const Sentences* sentences = nullptr);
/// "No answer from 90.0° to 115.0°."
std::string wordsOf(const Gap& gap, const Sweep& sweep, const Sketch& sketch,
                    const Sentences* sentences = nullptr);
/// "What is found as the direction of A goes from 0.0° to 90.0°."
std::string titleOf(const Sweep& sweep, const Sketch& sketch, const Sentences* sentences = nullptr);
/// All of it, a line each: title, extremes, gaps.
std::vector<std::string> sweepLines(const Sweep& sweep, const Sketch& sketch,
                                    const Sentences* sentences = nullptr);

/// A found magnitude beside its vector's limit, over the whole range of what is varied: *straddles* where it
/// is over in a part of it.
struct SweptLimit {
    Swept of;
    LimitUse use;
};
/// Of every curve of a magnitude whose vector has a limit and that has a point at all. Of the middle values.
std::vector<SweptLimit> sweptLimits(const Sweep& sweep, const Sketch& sketch);
/// "! L1 is over its limit in a part of the range: up to 139.9 % of 1.25 t."
std::string wordsOf(const SweptLimit& limit, const Sketch& sketch, const Sentences* sentences = nullptr);

/// Where something between the places that were looked at could not be ruled out: that it may be missing.
/// Else empty.
std::string sweptProofNote(const Sweep& sweep, const Sentences* sentences = nullptr);
/// Where anything has a tolerance: that the curves are those of the middle values. Else empty.
std::string sweptToleranceNote(const Sketch& sketch, const Sentences* sentences = nullptr);

} // namespace tailpoint
