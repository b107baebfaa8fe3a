// SPDX-License-Identifier: MIT
#include "core/explain/question.h"

#include "core/explain/wording.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"

#include <algorithm>

namespace tailpoint {

namespace {

constexpr std::size_t kMostListed = 5; ///< longer lists are counted
constexpr std::string_view kIs = " = ";

Words word(std::string text) {
    return {std::move(text), false, false};
}
Sentence symbolSaid(std::string name) {
    return {{std::move(name), true, false}};
}
Sentence quantity(std::string shown) {
    return {{std::move(shown), false, true}};
}

bool isPlain(const Words& words) {
    return !words.symbol && !words.quantity;
}

void append(Sentence& sentence, const Sentence& more) {
    for (const Words& words : more) {
        const bool joins = !sentence.empty() && isPlain(sentence.back()) && isPlain(words) &&
                           sentence.back().text != kIs && words.text != kIs;
        if (joins)
            sentence.back().text += words.text;
        else
            sentence.push_back(words);
    }
}

/// Says sentences of words, as Voice says prose.
class Asking {
public:
    Asking(const Sketch& theSketch, const Sentences* sentences) : sketch(theSketch), m_voice(sentences) {}

    using Places = std::vector<std::pair<std::string_view, Sentence>>;
    Sentence say(const Wording& wording, const Places& places = {}) const {
        const std::string pattern = m_voice.text(wording);
        Sentence out;
        std::string_view rest = pattern;
        while (true) {
            const auto open = rest.find('{'), close = rest.find('}');
            if (open == std::string_view::npos || close == std::string_view::npos)
                break;
            append(out, {word(std::string(rest.substr(0, open)))});
            const std::string_view name = rest.substr(open + 1, close - open - 1);
            for (const auto& [place, content] : places)
                if (place == name)
                    append(out, content);
            rest.remove_prefix(close + 1);
        }
        append(out, {word(std::string(rest))});
        std::erase_if(out, [](const Words& words) { return words.text.empty(); });
        return out;
    }

    /// "P", "P and Q", "P, Q and S".
    Sentence listed(std::vector<Sentence> items) const {
        if (items.empty())
            return {};
        Sentence out = std::move(items.front());
        for (std::size_t i = 1; i < items.size(); ++i)
            out = i + 1 == items.size()
                      ? say(SENTENCE("list", "{before} and {last}"), {{"before", out}, {"last", items[i]}})
                      : say(SENTENCE("list", "{before}, {next}"), {{"before", out}, {"next", items[i]}});
        return out;
    }
    Sentence listed(const std::vector<std::string>& names) const {
        std::vector<Sentence> items;
        for (const std::string& name : names)
            items.push_back(symbolSaid(name));
        return listed(std::move(items));
    }
    static Sentence counted(std::size_t count) { return {word(std::to_string(count))}; }

    const Sketch& sketch;

private:
    Voice m_voice;
};

Sentence forcesOf(const Asking& ask) {
    const auto& forces = ask.sketch.forces;
    if (forces.size() > kMostListed)
        return ask.say(SENTENCE("question", "the {count} forces"),
                       {{"count", Asking::counted(forces.size())}});
    std::vector<std::string> names;
    for (const Force& force : forces)
        names.push_back(force.name);
    return ask.listed(names);
}

/// "at 10.0°", "along the line at slope 3 : 4".
Sentence wayTold(const Asking& ask, const Direction& direction, bool line) {
    const std::string way = shownWithTolerance(direction, ask.sketch);
    if (std::holds_alternative<SlopeForm>(direction.form))
        return ask.say(line ? SENTENCE("question", "along the line at slope {slope}")
                            : SENTENCE("question", "at slope {slope}"),
                       {{"slope", {word(way)}}});
    const bool isAngle = std::holds_alternative<AngleForm>(direction.form);
    return ask.say(line ? SENTENCE("question", "along the line at {angle}")
                        : SENTENCE("question", "at {angle}"),
                   {{"angle", isAngle ? quantity(way) : Sentence{word(way)}}});
}

/// "R = 400 N at 10.0°", "R = 400 N"; empty where its magnitude is not given.
Sentence sumStated(const Asking& ask) {
    const Force& sum = ask.sketch.sum;
    if (!isGiven(sum.magnitude))
        return {};
    Sentence size = symbolSaid(sum.name);
    append(size, {word(std::string(kIs))});
    append(size, quantity(shownWithTolerance(sum.magnitude, ask.sketch)));
    if (!isGiven(sum.direction))
        return size;
    const Sentence way = wayTold(ask, sum.direction, sum.lineOfActionOnly);
    return ask.say(SENTENCE("question", "{size} {way}"), {{"size", size}, {"way", way}});
}

/// "the resultant is R = 400 N at 10.0°"; empty where nothing is said of it.
Sentence resultantTold(const Asking& ask) {
    const Force& sum = ask.sketch.sum;
    if (isGiven(sum.magnitude))
        return ask.say(SENTENCE("question", "the resultant is {sum}"), {{"sum", sumStated(ask)}});
    if (!isGiven(sum.direction))
        return {};
    return ask.say(
        SENTENCE("question", "the resultant {sum} acts {way}"),
        {{"sum", symbolSaid(sum.name)}, {"way", wayTold(ask, sum.direction, sum.lineOfActionOnly)}});
}

struct Unknowns {
    std::vector<std::string> both, magnitudes, directions;
    std::size_t count() const { return 2 * both.size() + magnitudes.size() + directions.size(); }
};

void collect(Unknowns& unknowns, const Force& force, bool directionCounts) {
    const bool magnitude = !isGiven(force.magnitude),
               direction = directionCounts && !isGiven(force.direction);
    if (magnitude && direction)
        unknowns.both.push_back(force.name);
    else if (magnitude)
        unknowns.magnitudes.push_back(force.name);
    else if (direction)
        unknowns.directions.push_back(force.name);
}

Unknowns unknownsOf(const Sketch& sketch) {
    Unknowns unknowns;
    for (const Force& force : sketch.forces)
        collect(unknowns, force, true);
    collect(unknowns, sketch.sum, sketch.sum.magnitude.value != 0.0);
    return unknowns;
}

/// "the magnitude of P and the direction of Q".
Sentence unknownsListed(const Asking& ask, const Unknowns& unknowns) {
    if (unknowns.count() > kMostListed)
        return ask.say(SENTENCE("question", "the {count} unknown magnitudes and directions"),
                       {{"count", Asking::counted(unknowns.count())}});
    std::vector<Sentence> parts;
    for (const std::string& name : unknowns.both)
        parts.push_back(ask.say(SENTENCE("question", "the magnitude and direction of {vector}"),
                                {{"vector", symbolSaid(name)}}));
    const auto add = [&](const std::vector<std::string>& names, const Wording& one, const Wording& several) {
        if (!names.empty())
            parts.push_back(ask.say(names.size() > 1 ? several : one, {{"vectors", ask.listed(names)}}));
    };
    add(unknowns.magnitudes, SENTENCE("question", "the magnitude of {vectors}"),
        SENTENCE("question", "the magnitudes of {vectors}"));
    add(unknowns.directions, SENTENCE("question", "the direction of {vectors}"),
        SENTENCE("question", "the directions of {vectors}"));
    return ask.listed(std::move(parts));
}

/// A circle is among the loci: whether there is one answer or two is for the solution to say.
bool mayHaveSeveralAnswers(const Unknowns& unknowns) {
    return unknowns.both.empty() && !unknowns.directions.empty() && unknowns.count() == 2;
}

/// Of these: asked for in the same words however many answers there are.
Sentence everyUnknown(const Asking& ask, const Unknowns& unknowns) {
    if (unknowns.magnitudes.empty())
        return ask.say(SENTENCE("question", "all directions of {vectors}"),
                       {{"vectors", ask.listed(unknowns.directions)}});
    return ask.say(SENTENCE("question", "every magnitude of {first} and direction of {second}"),
                   {{"first", symbolSaid(unknowns.magnitudes.front())},
                    {"second", symbolSaid(unknowns.directions.front())}});
}

/// The one other force whose magnitude is to be found, with the sum given or zero; else nothing.
std::string partnerOfSmallest(const Sketch& sketch) {
    const Unknowns unknowns = unknownsOf(sketch);
    const bool isAlone = unknowns.magnitudes.size() == 1 && unknowns.directions.empty() &&
                         unknowns.both == std::vector<std::string>{*sketch.smallest};
    return isAlone && unknowns.magnitudes.front() != sketch.sum.name ? unknowns.magnitudes.front() : "";
}

Sentence resultantAsked(const Asking& ask) {
    return ask.say(SENTENCE("question", "Find the resultant {sum} of {forces}."),
                   {{"sum", symbolSaid(ask.sketch.sum.name)}, {"forces", forcesOf(ask)}});
}

Sentence aboutSmallest(const Asking& ask) {
    const Sketch& sketch = ask.sketch;
    if (*sketch.smallest == sketch.sum.name) {
        Unknowns unknowns = unknownsOf(sketch);
        std::erase(unknowns.both, sketch.sum.name);
        if (unknowns.count() == 0)
            return resultantAsked(ask);
        return ask.say(SENTENCE("question", "Find {unknowns} that leaves the smallest resultant {sum}."),
                       {{"unknowns", unknownsListed(ask, unknowns)}, {"sum", symbolSaid(sketch.sum.name)}});
    }
    const Sentence smallest = symbolSaid(*sketch.smallest);
    const std::string beside = partnerOfSmallest(sketch);
    if (!beside.empty() && isEquilibrium(sketch))
        return ask.say(SENTENCE("question",
                                "Find the smallest force {smallest}, and the magnitude of {beside}, "
                                "so that all forces are in equilibrium."),
                       {{"smallest", smallest}, {"beside", symbolSaid(beside)}});
    if (!beside.empty())
        return ask.say(SENTENCE("question",
                                "Find the smallest force {smallest}, and the magnitude of {beside}, "
                                "so that {sum}."),
                       {{"smallest", smallest}, {"beside", symbolSaid(beside)}, {"sum", resultantTold(ask)}});
    if (!isGiven(sketch.sum.direction))
        return ask.say(SENTENCE("question", "Find the smallest force {smallest}."), {{"smallest", smallest}});
    return ask.say(
        SENTENCE("question", "Find the smallest force {smallest} that puts the resultant {sum} {way}."),
        {{"smallest", smallest},
         {"sum", symbolSaid(sketch.sum.name)},
         {"way", wayTold(ask, sketch.sum.direction, sketch.sum.lineOfActionOnly)}});
}

Sentence aboutNothing(const Asking& ask) {
    const bool one = ask.sketch.forces.size() == 1;
    if (isEquilibrium(ask.sketch))
        return ask.say(one ? SENTENCE("question", "Check whether {forces} is in equilibrium.")
                           : SENTENCE("question", "Check whether {forces} are in equilibrium."),
                       {{"forces", forcesOf(ask)}});
    return ask.say(one ? SENTENCE("question", "Check whether {forces} makes the resultant {sum}.")
                       : SENTENCE("question", "Check whether {forces} together make the resultant {sum}."),
                   {{"forces", forcesOf(ask)}, {"sum", sumStated(ask)}});
}

bool asksForResultant(const Sketch& sketch, const Unknowns& unknowns) {
    return unknowns.count() == 2 && unknowns.both.size() == 1 && unknowns.both.front() == sketch.sum.name;
}

Sentence aboutUnknowns(const Asking& ask, const Unknowns& unknowns) {
    const Sentence listed = unknownsListed(ask, unknowns);
    if (isEquilibrium(ask.sketch) && mayHaveSeveralAnswers(unknowns))
        return ask.sketch.forces.size() == 2
                   ? ask.say(SENTENCE("question", "Find {unknowns} for which {forces} are in equilibrium."),
                             {{"unknowns", everyUnknown(ask, unknowns)}, {"forces", forcesOf(ask)}})
                   : ask.say(SENTENCE("question", "Find {unknowns} for which all forces are in equilibrium."),
                             {{"unknowns", everyUnknown(ask, unknowns)}});
    if (isEquilibrium(ask.sketch))
        return ask.say(SENTENCE("question", "Find {unknowns} so that all forces are in equilibrium."),
                       {{"unknowns", listed}});
    const Sentence stated = resultantTold(ask);
    if (mayHaveSeveralAnswers(unknowns))
        return ask.say(SENTENCE("question", "Find {unknowns} for which {sum}."),
                       {{"unknowns", everyUnknown(ask, unknowns)}, {"sum", stated}});
    return ask.say(stated.empty() ? SENTENCE("question", "Find {unknowns}.")
                                  : SENTENCE("question", "Find {unknowns} so that {sum}."),
                   {{"unknowns", listed}, {"sum", stated}});
}

Sentence asked(const Asking& ask) {
    const Unknowns unknowns = unknownsOf(ask.sketch);
    if (ask.sketch.forces.empty())
        return ask.say(SENTENCE("question", "No force is given yet."));
    if (ask.sketch.smallest)
        return aboutSmallest(ask);
    if (unknowns.count() == 0)
        return aboutNothing(ask);
    if (!asksForResultant(ask.sketch, unknowns))
        return aboutUnknowns(ask, unknowns);
    return resultantAsked(ask);
}

} // namespace

Sentence question(const Sketch& sketch, const Sentences* sentences) {
    Sentence out = asked(Asking(sketch, sentences));
    const Things things(sketch);
    for (Words& words : out)
        if (words.symbol)
            words.printed = things.symbolNamed(words.text);
    return out;
}

namespace {

Formula printedSymbol(const Words& words) {
    return tailpoint::symbol(words.printed.base.empty() ? symbolOfName(words.text) : words.printed, {});
}

} // namespace

Prose proseOf(const Sentence& sentence) {
    Prose prose;
    const auto quantityFormula = [](const Words& words) { return numberWithUnit(0, words.text); };
    for (std::size_t i = 0; i < sentence.size(); ++i) {
        const Words& words = sentence[i];
        const bool equation = words.symbol && i + 2 < sentence.size() && sentence[i + 1].text == kIs;
        if (equation) {
            prose.pieces.emplace_back(equal(printedSymbol(words), quantityFormula(sentence[i + 2])));
            i += 2;
        } else if (words.symbol)
            prose.pieces.emplace_back(printedSymbol(words));
        else if (words.quantity)
            prose.pieces.emplace_back(quantityFormula(words));
        else
            prose.pieces.emplace_back(words.text);
    }
    return prose;
}

std::string plain(const Sentence& sentence) {
    std::string out;
    for (const Words& words : sentence)
        out += words.text;
    return out;
}

} // namespace tailpoint
