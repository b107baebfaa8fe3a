// SPDX-License-Identifier: MIT
#include "core/figure/words.h"

#include "core/sketch/cases.h"
#include "core/sketch/stated.h"

#include <algorithm>
#include <cctype>
#include <utility>

namespace tailpoint {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

Run italic(std::string_view text) {
    return Run{std::string(text), true};
}

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// Part of a word, so that a name does not end or begin there. Of what is not ASCII only primes and quotation
/// marks (U+20xx) end one.
bool isInWord(std::string_view text, std::size_t at) {
    if (at >= text.size())
        return false;
    const char c = text[at];
    const bool ascii = static_cast<unsigned char>(c) < 0x80;
    return ascii ? isLetter(c) || isDigit(c) || c == '_' : !text.substr(at).starts_with("\xe2\x80");
}

bool isUpright(const Run& run) {
    return !run.italic && run.script == Script::normal;
}

/// What no space parts, as its runs.
std::vector<Runs> wordsOf(const Runs& text) {
    std::vector<Runs> words(1);
    for (Run run : text) {
        const std::string whole = std::move(run.text);
        for (std::size_t from = 0, end = 0; end != std::string::npos; from = end + 1) {
            end = run.script == Script::normal ? whole.find(' ', from) : std::string::npos;
            run.text = whole.substr(from, end - from);
            if (!run.text.empty())
                words.back().push_back(run);
            if (end != std::string::npos)
                words.emplace_back();
        }
    }
    if (words.back().empty())
        words.pop_back();
    return words;
}

/// Behind a space, which belongs to words rather than to a symbol.
void appendWord(Runs& line, Runs word) {
    if (!line.empty() && isUpright(line.back()))
        line.back().text += ' ';
    else if (!line.empty() && !word.empty() && isUpright(word.front()))
        word.front().text.insert(0, " ");
    else if (!line.empty())
        line.push_back(Run{" "});
    for (Run& run : word)
        if (!line.empty() && isUpright(line.back()) && isUpright(run))
            line.back().text += run.text;
        else
            line.push_back(std::move(run));
}

bool isNameCharacter(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 && static_cast<unsigned char>(c) < 0x80;
}

std::string_view wordsForSum(bool isSum) {
    return isSum ? "Resultant " : "Force ";
}

/// A slope or a bearing as it is given, behind what comes before: "340 N at a slope of 3 : 4".
std::string givenWords(const Direction& direction, bool behind, const Sketch& sketch) {
    const std::string words = shownWithTolerance(direction, sketch);
    if (std::holds_alternative<BearingForm>(direction.form))
        return (behind ? ", bearing " : "bearing ") + words;
    return (behind ? " at a slope of " : "slope ") + words;
}

/// "340 N at 25.0\u00b0 ...", "340 N along +x".
std::string referredWords(double referred, bool behind, const Sketch& sketch) {
    const char* joint = !behind ? "" : fromAxis(referred, sketch).size.empty() ? " " : " at ";
    return joint + directionWords(referred, sketch);
}

/// What a given angle may be off, behind its words.
std::string toleranceWords(const Direction& given, double referred, const Sketch& sketch) {
    const std::string tolerance = toleranceOfSize(given, referred, sketch);
    return tolerance.empty() ? tolerance : ", " + tolerance;
}

/// Behind other words; nothing for nothing.
std::string inBrackets(const std::string& words) {
    return words.empty() ? words : " (" + words + ")";
}

bool isAngle(const Direction& direction) {
    return !std::holds_alternative<SlopeForm>(direction.form) &&
           !std::holds_alternative<BearingForm>(direction.form);
}

} // namespace

std::vector<Runs> wrapped(const Runs& text, double room, const std::function<double(const Runs&)>& widthOf) {
    std::vector<Runs> lines;
    Runs current;
    for (const Runs& word : wordsOf(text)) {
        Runs longer = current;
        appendWord(longer, word);
        if (!current.empty() && widthOf(longer) > room) {
            lines.push_back(std::move(current));
            current = word;
        } else {
            current = std::move(longer);
        }
    }
    if (!current.empty())
        lines.push_back(std::move(current));
    return lines;
}

Runs symbolRuns(const Symbol& symbol) {
    Runs runs{italic(symbol.base)};
    for (SubscriptPiece& piece : subscriptPieces(symbol.sub, symbol.slant)) {
        runs.push_back(Run{std::move(piece.text), piece.italic});
        runs.back().script = Script::sub;
    }
    for (Run& run : runs)
        run.isName = true;
    return runs;
}

Runs plainRuns(std::string_view text) {
    Run run;
    run.text = text;
    return {run};
}

Symbol symbolOf(const PhrasePiece& name, const Things& things) {
    return name.names.what == What::none ? things.symbol(name.names.of) : things.symbol(name.names);
}

Runs phraseRuns(const Phrase& phrase, const Things& things) {
    Runs runs;
    for (const PhrasePiece& piece : phrase.pieces()) {
        const Runs more =
            piece.isName() ? symbolRuns(symbolOf(piece, things)) : plainRuns(withMinusSigns(piece.text));
        runs.insert(runs.end(), more.begin(), more.end());
    }
    return runs;
}

Run valueRun(std::string_view value) {
    Run run;
    run.text = " = ";
    run.valueAt = run.text.size();
    run.text += withMinusSigns(value);
    return run;
}

Runs valueRuns(const Symbol& symbol, std::string_view value) {
    Runs runs = symbolRuns(symbol);
    runs.push_back(valueRun(value));
    return runs;
}

Runs axisRuns(const Reference& reference) {
    const std::string name = withMinusSigns(axisName(reference));
    if (name.empty() || (name.back() != 'x' && name.back() != 'y') || name.size() > 4)
        return plainRuns(name);
    Runs runs = plainRuns(std::string_view(name).substr(0, name.size() - 1));
    runs.push_back(italic(std::string_view(name).substr(name.size() - 1)));
    return runs;
}

std::string spoken(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool within = text[i] == '_' && i > 0 && text[i - 1] != ' ' && isInWord(text, i + 1);
        out += within ? std::string_view(" sub ") : text.substr(i, 1);
    }
    return out;
}

std::string plainText(const Runs& runs) {
    std::string out;
    int line = 0;
    for (const Run& run : runs) {
        if (std::exchange(line, run.line) != run.line)
            out += "; ";
        out += run.text;
    }
    return out;
}

Runs oneLine(Runs runs) {
    int line = 0;
    for (Run& run : runs) {
        if (std::exchange(line, run.line) != run.line)
            run.text.insert(0, "; ");
        run.line = 0;
    }
    return runs;
}

std::string idOf(std::string_view prefix, std::string_view name) {
    constexpr char hex[] = "0123456789abcdef";
    std::string id(prefix);
    id += '-';
    for (const char c : name) {
        if (isNameCharacter(c)) {
            id += c;
            continue;
        }
        const auto byte = static_cast<unsigned char>(c);
        id += '.';
        id += hex[byte >> 4U];
        id += hex[byte & 15U];
    }
    return id;
}

std::optional<double> referredAsShown(const SolvedForce& found, const Force& given, const Sketch& sketch) {
    const bool isAsGiven = !found.directionFound && !found.turned && found.direction;
    return isAsGiven ? referredAsGiven(given.direction, sketch) : found.direction;
}

Title titleOf(const PlainVector& vector, std::optional<double> referred, const Force& given, bool asGiven,
              const Sketch& sketch, const RangesSaid& ranges) {
    Title title{std::string(wordsForSum(&given == &sketch.sum)) + vector.name, {}};
    const bool behind = vector.hasMagnitude;
    if (behind) {
        title.detail = given.magnitude.value && !vector.foundMagnitude
                           ? statedMagnitude(given.magnitude, sketch)
                           : shownForceWithUnit(vector.magnitude, sketch) + inBrackets(ranges.magnitude);
    }
    if (referred && asGiven && !isAngle(given.direction))
        title.detail += givenWords(given.direction, behind, sketch);
    else if (referred)
        title.detail += referredWords(*referred, behind, sketch) +
                        toleranceWords(given.direction, *referred, sketch) + inBrackets(ranges.direction);
    else if (behind && vector.magnitude == 0)
        title.detail += ", no direction";
    return title;
}

std::string figureTitle(const Sketch& sketch) {
    const std::string title = titleWithCase(sketch);
    return title.empty() ? "Concurrent forces" : title;
}

std::string figureDescription(const Sketch& sketch, const Solved& solved, const FigureOptions& options) {
    const Vectors vectors = vectorsOf(sketch, solved, options.solution);
    const Solution* answer =
        options.solution < solved.solutions.size() ? &solved.solutions[options.solution] : nullptr;
    std::string text = std::to_string(vectors.forces.size()) +
                       (vectors.forces.size() == 1 ? " force acts" : " forces act") + " on one point. ";
    const auto list = [&](const PlainVector& vector, const Force& given, const SolvedForce* found,
                          int index) {
        const RangesSaid ranges =
            rangesSaid(sketch, solved, options.solution, options.tolerated.get(), index);
        const auto referred =
            found ? referredAsShown(*found, given, sketch) : referredAsGiven(given.direction, sketch);
        text += titleOf(vector, referred, given, options.asGiven, sketch, ranges).whole() + ". ";
    };
    constexpr std::size_t most = 24;
    for (std::size_t i = 0; i < std::min(vectors.forces.size(), most); ++i)
        list(vectors.forces[i], sketch.forces[i], answer ? &answer->forces[i] : nullptr, static_cast<int>(i));
    if (isEquilibrium(sketch))
        text += "Their sum is zero. ";
    else if (vectors.sum.complete() || (vectors.sum.givesDirection() && !answer))
        list(vectors.sum, sketch.sum, answer ? &answer->sum : nullptr, kSumIndex);
    text += solved.finding().text();
    while (!text.empty() && text.back() == ' ')
        text.pop_back();
    return spoken(text);
}

} // namespace tailpoint
