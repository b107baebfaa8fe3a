#include "core/explain/question.h"

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
Words symbol(std::string name) {
    return {std::move(name), true, false};
}
Words quantity(std::string shown) {
    return {std::move(shown), false, true};
}

bool isPlain(const Words& words) {
    return !words.symbol && !words.quantity;
}

void append(Sentence& sentence, const Sentence& more) {
    sentence.insert(sentence.end(), more.begin(), more.end());
}

std::string counted(std::string before, std::size_t count, std::string_view after) {
    return before.append(std::to_string(count)).append(after);
}

/// "P", "P and Q", "P, Q and S".
Sentence listed(const std::vector<std::string>& names) {
    Sentence out;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0)
            out.push_back(word(i + 1 == names.size() ? " and " : ", "));
        out.push_back(symbol(names[i]));
    }
    return out;
}

Sentence forcesOf(const Sketch& sketch) {
    if (sketch.forces.size() > kMostListed)
        return {word(counted("the ", sketch.forces.size(), " forces"))};
    std::vector<std::string> names;
    for (const Force& force : sketch.forces)
        names.push_back(force.name);
    return listed(names);
}

/// " at 10.0°", " along the line at slope 3 : 4".
Sentence directionPhrase(const Direction& direction, const Sketch& sketch, bool line) {
    const std::string at = line ? " along the line at " : " at ", way = shownAsGiven(direction, sketch);
    if (std::holds_alternative<AngleForm>(direction.form))
        return {word(at), quantity(way)};
    return {word(at + (std::holds_alternative<SlopeForm>(direction.form) ? "slope " : "") + way)};
}

/// "R = 400 N at 10.0°", "R = 400 N", "R acts at 10.0°"; empty where the sum says nothing.
Sentence sumStated(const Sketch& sketch) {
    const Force& sum = sketch.sum;
    Sentence out;
    if (isGiven(sum.magnitude))
        out = {symbol(sum.name), word(std::string(kIs)),
               quantity(shownForceWithUnit(*sum.magnitude.value, sketch, Origin::typed))};
    if (!isGiven(sum.direction))
        return out;
    if (out.empty())
        out = {symbol(sum.name), word(" acts")};
    append(out, directionPhrase(sum.direction, sketch, sum.lineOfActionOnly));
    return out;
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
Sentence unknownsListed(const Unknowns& unknowns) {
    if (unknowns.count() > kMostListed)
        return {word(counted("the ", unknowns.count(), " unknown magnitudes and directions"))};
    std::vector<Sentence> parts;
    const auto part = [&](const std::vector<std::string>& names, const std::string& what) {
        if (names.empty())
            return;
        Sentence phrase{word(std::string("the ").append(what).append(names.size() > 1 ? "s of " : " of "))};
        append(phrase, listed(names));
        parts.push_back(phrase);
    };
    for (const std::string& name : unknowns.both)
        parts.push_back({word("the magnitude and direction of "), symbol(name)});
    part(unknowns.magnitudes, "magnitude");
    part(unknowns.directions, "direction");
    Sentence out;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i > 0)
            out.push_back(word(i + 1 == parts.size() ? " and " : ", "));
        append(out, parts[i]);
    }
    return out;
}

Sentence aboutSmallest(const Sketch& sketch) {
    if (*sketch.smallest == sketch.sum.name) {
        Sentence out{word("Find ")};
        append(out, unknownsListed([&] {
                   Unknowns unknowns = unknownsOf(sketch);
                   std::erase(unknowns.both, sketch.sum.name);
                   return unknowns;
               }()));
        append(out, {word(" that leaves the smallest sum "), symbol(sketch.sum.name)});
        return out;
    }
    Sentence out{word("Find the smallest force "), symbol(*sketch.smallest)};
    if (isGiven(sketch.sum.direction)) {
        append(out, {word(" that puts "), symbol(sketch.sum.name)});
        append(out, directionPhrase(sketch.sum.direction, sketch, sketch.sum.lineOfActionOnly));
    }
    return out;
}

Sentence aboutNothing(const Sketch& sketch) {
    Sentence out{word("Check whether ")};
    append(out, forcesOf(sketch));
    if (isEquilibrium(sketch)) {
        out.push_back(word(sketch.forces.size() == 1 ? " is in equilibrium" : " are in equilibrium"));
        return out;
    }
    out.push_back(word(sketch.forces.size() == 1 ? " makes " : " together make "));
    append(out, sumStated(sketch));
    return out;
}

Sentence aboutResultant(const Sketch& sketch) {
    Sentence out{word("Find the resultant "), symbol(sketch.sum.name), word(" of ")};
    append(out, forcesOf(sketch));
    return out;
}

bool asksForResultant(const Sketch& sketch, const Unknowns& unknowns) {
    return unknowns.count() == 2 && unknowns.both.size() == 1 && unknowns.both.front() == sketch.sum.name;
}

Sentence aboutUnknowns(const Sketch& sketch, const Unknowns& unknowns) {
    Sentence out{word("Find ")};
    append(out, unknownsListed(unknowns));
    if (isEquilibrium(sketch)) {
        out.push_back(word(" so that all forces are in equilibrium"));
        return out;
    }
    if (const Sentence stated = sumStated(sketch); !stated.empty()) {
        out.push_back(word(" so that "));
        append(out, stated);
    }
    return out;
}

Sentence withoutStop(const Sketch& sketch) {
    const Unknowns unknowns = unknownsOf(sketch);
    if (sketch.forces.empty())
        return {word("No force is given yet")};
    if (sketch.smallest)
        return aboutSmallest(sketch);
    if (unknowns.count() == 0)
        return aboutNothing(sketch);
    return asksForResultant(sketch, unknowns) ? aboutResultant(sketch) : aboutUnknowns(sketch, unknowns);
}

} // namespace

Sentence question(const Sketch& sketch) {
    Sentence sentence = withoutStop(sketch);
    sentence.push_back(word("."));
    Sentence joined;
    for (const Words& words : sentence) {
        if (!joined.empty() && isPlain(joined.back()) && isPlain(words) && words.text != kIs)
            joined.back().text += words.text;
        else
            joined.push_back(words);
    }
    const Things things(sketch);
    for (Words& words : joined)
        if (words.symbol)
            words.printed = things.symbolNamed(words.text);
    return joined;
}

namespace {

Formula printedSymbol(const Words& words) {
    return symbol(words.printed.base.empty() ? symbolOfName(words.text) : words.printed, {});
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
