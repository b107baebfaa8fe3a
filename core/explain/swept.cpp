// SPDX-License-Identifier: MIT
#include "core/explain/swept.h"

#include "core/explain/tolerance.h"
#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr int kMoreFigures = 2;
constexpr int kMostShownFigures = 12;

const std::string& nameAt(const Sketch& sketch, int vector) {
    return vector == kSumIndex ? sketch.sum.name : sketch.forces[static_cast<std::size_t>(vector)].name;
}

template <class... Places>
std::string said(const Sentences* sentences, const Wording& wording, Places&&... places) {
    return toText(Voice(sentences).say(wording, std::forward<Places>(places)...), Minus::ascii);
}

/// The other one whose magnitude is found.
int otherFound(const Sketch& sketch, int first) {
    for (const int vector : asked(sketch).unknownVectors) {
        if (vector != first && vector != kNoVector) {
            return vector;
        }
    }
    return first;
}

std::string placeWords(double at, const Sweep& sweep, const Sketch& sketch) {
    return sweptValue(at, sweep.range.varied.isDirection, sketch);
}

std::string words(const Extreme& extreme, bool isGreatest, const Curve& curve, const Sweep& sweep,
                  const Sketch& sketch, const Sentences* sentences) {
    const std::string quantity = wordsOf(curve.of, sketch, sentences),
                      value = sweptValue(extreme.value, curve.of.kind == Swept::Kind::direction, sketch),
                      place = placeWords(extreme.at, sweep, sketch);
    if (extreme.isUnbounded) {
        return said(sentences, SENTENCE("sweep", "{quantity} grows without bound toward {place}"), "quantity",
                    quantity, "place", place);
    }
    return isGreatest ? said(sentences, SENTENCE("sweep", "{quantity} greatest {value} at {place}"),
                             "quantity", quantity, "value", value, "place", place)
                      : said(sentences, SENTENCE("sweep", "{quantity} least {value} at {place}"), "quantity",
                             quantity, "value", value, "place", place);
}

} // namespace

std::string wordsOf(const Scalar& scalar, const Sketch& sketch, const Sentences* sentences) {
    const std::string& name = nameAt(sketch, scalar.vector);
    return scalar.isDirection ? said(sentences, SENTENCE("sweep", "direction of {vector}"), "vector", name)
                              : said(sentences, SENTENCE("sweep", "magnitude of {vector}"), "vector", name);
}

std::string nameOf(const Swept& swept, const Sketch& sketch, const Sentences* sentences) {
    const std::string& name = nameAt(sketch, swept.vector);
    switch (swept.kind) {
    case Swept::Kind::direction:
        return said(sentences, SENTENCE("sweep", "direction of {vector}"), "vector", name);
    case Swept::Kind::larger:
        return said(sentences, SENTENCE("sweep", "larger of {first} and {second}"), "first", name, "second",
                    nameAt(sketch, otherFound(sketch, swept.vector)));
    case Swept::Kind::magnitude:
        break;
    }
    return name;
}

std::string wordsOf(const Swept& swept, const Sketch& sketch, const Sentences* sentences) {
    const std::string name = nameOf(swept, sketch, sentences);
    return swept.answer == 0 ? name
                             : said(sentences, SENTENCE("sweep", "{quantity}, answer {number}"), "quantity",
                                    name, "number", std::to_string(swept.answer));
}

std::string sweptValue(double value, bool isAngle, const Sketch& sketch) {
    if (isAngle) {
        return shownAngle(value, sketch);
    }
    Sketch finer = sketch;
    finer.figures = std::min(sketch.figures + kMoreFigures, kMostShownFigures);
    return shownForceWithUnit(value, finer);
}

ExtremeWords extremeWords(const Curve& curve, const Sweep& sweep, const Sketch& sketch,
                          const Sentences* sentences) {
    const std::string quantity = wordsOf(curve.of, sketch, sentences);
    if (!curve.least || !curve.greatest) {
        return {said(sentences, SENTENCE("sweep", "{quantity}: no answer in the whole range"), "quantity",
                     quantity),
                {}};
    }
    if (curve.isConstant()) {
        return {said(sentences, SENTENCE("sweep", "{quantity} {value} throughout"), "quantity", quantity,
                     "value",
                     sweptValue(curve.least->value, curve.of.kind == Swept::Kind::direction, sketch)),
                {}};
    }
    return {words(*curve.least, false, curve, sweep, sketch, sentences),
            words(*curve.greatest, true, curve, sweep, sketch, sentences)};
}

std::string wordsOf(const Gap& gap, const Sweep& sweep, const Sketch& sketch, const Sentences* sentences) {
    const std::string from = placeWords(gap.from, sweep, sketch), to = placeWords(gap.to, sweep, sketch);
    return from == to
               ? said(sentences, SENTENCE("sweep", "No answer at {place}."), "place", from)
               : said(sentences, SENTENCE("sweep", "No answer from {from} to {to}."), "from", from, "to", to);
}

std::string titleOf(const Sweep& sweep, const Sketch& sketch, const Sentences* sentences) {
    return said(sentences, SENTENCE("sweep", "What is found as the {varied} goes from {from} to {to}"),
                "varied", wordsOf(sweep.range.varied, sketch, sentences), "from",
                placeWords(sweep.range.from, sweep, sketch), "to", placeWords(sweep.range.to, sweep, sketch));
}

std::vector<std::string> sweepLines(const Sweep& sweep, const Sketch& sketch, const Sentences* sentences) {
    std::vector<std::string> lines{titleOf(sweep, sketch, sentences)};
    for (const Curve& curve : sweep.curves) {
        const ExtremeWords extremes = extremeWords(curve, sweep, sketch, sentences);
        lines.push_back(extremes.least);
        if (!extremes.greatest.empty()) {
            lines.push_back(extremes.greatest);
        }
    }
    for (const Gap& gap : sweep.gaps) {
        lines.push_back(wordsOf(gap, sweep, sketch, sentences));
    }
    return lines;
}

std::vector<SweptLimit> sweptLimits(const Sweep& sweep, const Sketch& sketch) {
    std::vector<SweptLimit> all;
    for (const Curve& curve : sweep.curves) {
        const int index = curve.of.vector;
        const Force& force = index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(index)];
        const auto limit = limitOf(force, sketch);
        if (curve.of.kind != Swept::Kind::magnitude || !limit || !curve.least || !curve.greatest)
            continue;
        LimitUse use{index, Bound::within, *limit, {}, 100 * (curve.least->value / *limit)};
        if (!curve.greatest->isUnbounded)
            use.utilisation = 100 * (curve.greatest->value / *limit);
        if (!use.utilisation || curve.greatest->value > *limit)
            use.verdict = curve.least->value > *limit ? Bound::over : Bound::straddles;
        all.push_back({curve.of, use});
    }
    return all;
}

std::string wordsOf(const SweptLimit& limit, const Sketch& sketch, const Sentences* sentences) {
    const Force& force =
        limit.of.vector == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(limit.of.vector)];
    const std::string quantity = wordsOf(limit.of, sketch, sentences), of = shownAsTyped(*force.limit),
                      share = shareText(limit.use, Voice(sentences));
    const auto told = [&](const Wording& wording) {
        return marked(limit.use.verdict,
                      said(sentences, wording, "quantity", quantity, "share", share, "limit", of));
    };
    if (!limit.use.utilisation)
        return told(SENTENCE("sweep", "{quantity} is over its limit of {limit} in the range: {share}."));
    switch (limit.use.verdict) {
    case Bound::within:
        return told(
            SENTENCE("sweep", "{quantity} is within its limit throughout: {share} of {limit} at most."));
    case Bound::over:
        return told(SENTENCE("sweep", "{quantity} is over its limit throughout: up to {share} of {limit}."));
    case Bound::straddles:
        break;
    }
    return told(SENTENCE("sweep", "{quantity} is over its limit in a part of the range: up to {share} of "
                                  "{limit}."));
}

std::string sweptProofNote(const Sweep& sweep, const Sentences* sentences) {
    return sweep.isProven ? std::string()
                          : Voice(sentences).text(
                                SENTENCE("sweep", "A turn or a gap narrower than the thousandth part of the "
                                                  "range may be missing: not all could be ruled out."));
}

std::string sweptToleranceNote(const Sketch& sketch, const Sentences* sentences) {
    return toleranceNote(sketch)
               ? Voice(sentences).text(SENTENCE(
                     "sweep", "The curves are those of the middle values: given tolerances are not in them."))
               : std::string();
}

} // namespace tailpoint
