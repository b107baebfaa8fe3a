// SPDX-License-Identifier: MIT
#include "core/explain/uncertainty.h"

#include "core/explain/found_symbols.h"
#include "core/explain/listed.h"
#include "core/explain/tolerance.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"
#include "core/solve/sweep.h"

#include <algorithm>

namespace tailpoint {

namespace {

using tolerance::Share;
using tolerance::Spread;
using tolerance::Uncertain;
using tolerance::UncertaintyAsked;
using tolerance::VectorUncertainty;
using tolerance::Withheld;

/// Source: JCGM 100:2008, 7.2.6: at most two significant digits.
constexpr int kDigits = 2;
/// More shares than that are no sentence any more; the others are told together.
constexpr std::size_t kMostShares = 5;

Formula uncertaintyOf(double value, bool isDirection, const Sketch& sketch) {
    const std::string shown = significant(value, kDigits);
    if (!isDirection)
        return number(value, shown, std::string(symbolOf(sketch.forceUnit)));
    switch (sketch.angleUnit) {
    case AngleUnit::deg:
        return numberWithUnit(value, shown + "°");
    case AngleUnit::gon:
        return numberWithUnit(value, shown + " gon");
    case AngleUnit::rad:
        break;
    }
    return numberWithUnit(value, shown + " rad");
}

class UncertaintyTeller {
public:
    UncertaintyTeller(const Sketch& sketch, const Solved& solved, const UncertaintyAsked& asked,
                      const Voice& voice)
        : m_sketch(sketch), m_asked(asked), m_things(sketch), m_found(m_things, solved), m_voice(voice) {}

    std::vector<Prose> told(const std::vector<VectorUncertainty>& all, std::size_t answer) const {
        std::vector<Prose> sentences;
        bool anyNumber = false;
        const auto add = [&](const std::optional<Uncertain>& one, const Formula& symbol, bool isDirection) {
            if (!one)
                return;
            anyNumber = anyNumber || one->withheld == Withheld::no;
            sentences.push_back(one->withheld == Withheld::no ? uncertain(*one, symbol, isDirection)
                                                              : withheld(*one, symbol));
        };
        for (const VectorUncertainty& vector : all) {
            add(vector.magnitude, m_found.size(vector.index, answer), false);
            add(vector.direction, m_found.way(vector.index, answer), true);
        }
        if (anyNumber)
            sentences.push_back(takenFor());
        return sentences;
    }

private:
    /// "the direction of Q".
    Prose input(const Share& share) const {
        const Formula vector = m_things.vectorFormula(vectorId(share.index));
        return share.isDirection
                   ? m_voice.say(SENTENCE("solution", "the direction of {vector}"), "vector", vector)
                   : m_voice.say(SENTENCE("solution", "the magnitude of {vector}"), "vector", vector);
    }

    static std::string perCent(double part) { return fixedDecimals(100 * part, 0); }

    Prose share(const Share& share) const {
        if (share.part < 0.005)
            return m_voice.say(SENTENCE("solution", "{input} makes less than 1 per cent"), "input",
                               input(share));
        return m_voice.say(SENTENCE("solution", "{input} makes {share} per cent"), "input", input(share),
                           "share", perCent(share.part));
    }

    Prose shares(const std::vector<Share>& all) const {
        std::vector<Prose> items;
        const std::size_t count = all.size() > kMostShares + 1 ? kMostShares : all.size();
        for (std::size_t i = 0; i < count; ++i)
            items.push_back(share(all[i]));
        double rest = 0;
        for (std::size_t i = count; i < all.size(); ++i)
            rest += all[i].part;
        if (count < all.size())
            items.push_back(m_voice.say(SENTENCE("solution", "the others together make {share} per cent"),
                                        "share", perCent(rest)));
        return explaining::listed(m_voice, std::move(items));
    }

    Prose uncertain(const Uncertain& one, const Formula& symbol, bool isDirection) const {
        if (one.shares.empty()) // nothing that has a tolerance moves it
            return m_voice.say(SENTENCE("solution", "No tolerance makes {quantity} uncertain."), "quantity",
                               symbol);
        return m_voice.say(
            SENTENCE("solution",
                     "{quantity} has the standard uncertainty {standard}: {shares}. Expanded with k = 2: "
                     "{expanded}."),
            "quantity", symbol, "standard", uncertaintyOf(one.standard, isDirection, m_sketch), "shares",
            shares(one.shares), "expanded", uncertaintyOf(one.expanded(), isDirection, m_sketch));
    }

    Prose withheld(const Uncertain& one, const Formula& symbol) const {
        switch (one.withheld) {
        case Withheld::noDerivative:
            return m_voice.say(SENTENCE("solution",
                                        "The standard uncertainty of {quantity} is withheld: here it does "
                                        "not follow small changes in proportion."),
                               "quantity", symbol);
        case Withheld::partWithout:
            return m_voice.say(SENTENCE("solution",
                                        "The standard uncertainty of {quantity} is withheld: a part of the "
                                        "tolerances has no such answer."),
                               "quantity", symbol);
        case Withheld::unlikeDraws:
            return m_voice.say(SENTENCE("solution",
                                        "The standard uncertainty of {quantity} is withheld: first order "
                                        "disagrees with {draws} draws from the tolerances."),
                               "quantity", symbol, "draws", std::to_string(m_asked.draws));
        default:
            return m_voice.say(SENTENCE("solution",
                                        "The standard uncertainty of {quantity} is withheld: first order "
                                        "disagrees with the exact range."),
                               "quantity", symbol);
        }
    }

    Prose takenFor() const {
        if (m_asked.spread == Spread::rectangular)
            return m_voice.say(
                SENTENCE("solution", "Standard uncertainties are of first order; each tolerance is taken as "
                                     "a rectangular distribution, its half-width divided by √3."));
        return m_voice.say(SENTENCE("solution",
                                    "Standard uncertainties are of first order; each tolerance is taken as a "
                                    "normal distribution, its half-width as k = {k} standard uncertainties."),
                           "k", shortest(m_asked.k));
    }

    const Sketch& m_sketch;
    const UncertaintyAsked m_asked;
    const Things m_things;
    const FoundSymbols m_found;
    const Voice& m_voice;
};

} // namespace

std::vector<Prose> uncertaintyTold(const Sketch& sketch, const Solved& solved, std::size_t solution,
                                   const tolerance::Uncertainties& all, const UncertaintyAsked& asked,
                                   const Voice& voice) {
    if (solution >= solved.solutions.size())
        return {};
    if (!toleranceNote(sketch))
        return {voice.say(SENTENCE("solution", "No given value has a tolerance: there is no standard "
                                               "uncertainty to tell."))};
    return solution < all.size()
               ? UncertaintyTeller(sketch, solved, asked, voice).told(all[solution], solution)
               : std::vector<Prose>{};
}

void tellUncertainty(Worked& worked, const Sketch& sketch, const Solved& solved, std::size_t solution,
                     const tolerance::Uncertainties& all, const UncertaintyAsked& asked,
                     const Sentences* sentences) {
    const auto step = std::find_if(worked.steps.begin(), worked.steps.end(),
                                   [](const Step& each) { return each.key == StepKey::answer; });
    if (step == worked.steps.end())
        return;
    const auto told = uncertaintyTold(sketch, solved, solution, all, asked, Voice(sentences));
    step->conclusion.insert(step->conclusion.end(), told.begin(), told.end());
}

std::string plainInput(const Share& share, const Sketch& sketch) {
    return nameOf(Scalar{share.index, share.isDirection}, sketch);
}

std::string_view nameOf(Withheld withheld) {
    switch (withheld) {
    case Withheld::noDerivative:
        return "noDerivative";
    case Withheld::partWithout:
        return "partWithout";
    case Withheld::unlikeRange:
        return "unlikeRange";
    case Withheld::unlikeDraws:
        return "unlikeDraws";
    case Withheld::no:
        break;
    }
    return "no";
}

std::string_view nameOf(Spread spread) {
    return spread == Spread::normal ? "normal" : "rectangular";
}

} // namespace tailpoint
