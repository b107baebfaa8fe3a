#include "core/figure/words.h"

#include <algorithm>
#include <cctype>

namespace tailpoint {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

Run italic(std::string_view text, Script script = Script::normal) {
    Run run;
    run.text = text;
    run.italic = script == Script::normal;
    run.script = script;
    return run;
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

/// 'A boat', not 'A = 340 N'.
bool isArticle(std::string_view text, std::size_t at) {
    const bool begins = at == 0 || (at > 1 && text.substr(at - 2, 2) == ". ");
    const std::string_view rest = text.substr(at);
    return begins && rest.size() > 2 && rest.starts_with("A ") && isLetter(rest[2]);
}

bool isUnit(std::string_view text, std::size_t at, std::string_view name, const Sketch& sketch) {
    return at > 1 && text[at - 1] == ' ' && isDigit(text[at - 2]) && name == symbolOf(sketch.forceUnit);
}

/// The longest of the names that stands there.
std::string_view nameAt(std::string_view text, std::size_t at, const Sketch& sketch) {
    if ((at > 0 && isInWord(text, at - 1)) || isArticle(text, at))
        return {};
    std::string_view longest;
    const auto consider = [&](std::string_view name) {
        if (name.size() > longest.size() && text.substr(at).starts_with(name) &&
            !isInWord(text, at + name.size()) && !isUnit(text, at, name, sketch))
            longest = name;
    };
    for (const Force& force : sketch.forces)
        consider(force.name);
    consider(sketch.sum.name);
    return longest;
}

bool isNameCharacter(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 && static_cast<unsigned char>(c) < 0x80;
}

std::string_view wordsForSum(bool isSum) {
    return isSum ? "Resultant " : "Force ";
}

/// A slope or a bearing as it is given, behind what comes before: "340 N at a slope of 3 : 4".
std::string givenWords(const Direction& direction, bool behind, const Sketch& sketch) {
    const std::string words = shownAsGiven(direction, sketch);
    if (std::holds_alternative<BearingForm>(direction.form))
        return (behind ? ", bearing " : "bearing ") + words;
    return (behind ? " at a slope of " : "slope ") + words;
}

/// "340 N at 25.0\u00b0 ...", "340 N along +x".
std::string referredWords(double referred, bool behind, const Sketch& sketch) {
    const char* joint = !behind ? "" : fromAxis(referred, sketch).size.empty() ? " " : " at ";
    return joint + directionWords(referred, sketch);
}

bool isAngle(const Direction& direction) {
    return !std::holds_alternative<SlopeForm>(direction.form) &&
           !std::holds_alternative<BearingForm>(direction.form);
}

} // namespace

std::vector<std::string> wrapped(const std::string& text, double room,
                                 const std::function<double(const std::string&)>& widthOf) {
    std::vector<std::string> lines;
    std::string current;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word = text.substr(at, end - at);
        std::string longer = current;
        longer.append(current.empty() ? "" : " ").append(word);
        if (!current.empty() && widthOf(longer) > room) {
            lines.push_back(current);
            current = word;
        } else {
            current = longer;
        }
        at = end + 1;
    }
    if (!current.empty())
        lines.push_back(current);
    return lines;
}

Runs symbolRuns(const Symbol& symbol) {
    Runs runs{italic(symbol.base)};
    if (!symbol.sub.empty())
        runs.push_back(italic(symbol.sub, Script::sub));
    for (Run& run : runs)
        run.isName = true;
    return runs;
}

Runs plainRuns(std::string_view text) {
    Run run;
    run.text = text;
    return {run};
}

Runs proseRuns(std::string_view text, const Sketch& sketch) {
    return proseRuns(text, sketch, Things(sketch));
}

Runs proseRuns(std::string_view text, const Sketch& sketch, const Things& things) {
    Runs runs;
    std::size_t from = 0;
    for (std::size_t at = 0; at < text.size();) {
        const std::string_view name = nameAt(text, at, sketch);
        if (name.empty()) {
            ++at;
            continue;
        }
        if (at > from)
            runs.push_back(plainRuns(text.substr(from, at - from)).front());
        for (Run& run : symbolRuns(things.symbolNamed(name)))
            runs.push_back(std::move(run));
        from = at += name.size();
    }
    if (from < text.size() || runs.empty())
        runs.push_back(plainRuns(text.substr(from)).front());
    return runs;
}

Runs axisInWords(std::string_view words) {
    for (std::size_t i = 1; i < words.size(); ++i) {
        const bool sign = words[i - 1] == '+' || (i > 2 && words.substr(i - 3, 3) == "\u2212");
        if (!sign || (words[i] != 'x' && words[i] != 'y') || isInWord(words, i + 1))
            continue;
        Runs runs = plainRuns(words.substr(0, i));
        runs.push_back(italic(words.substr(i, 1)));
        if (i + 1 < words.size())
            runs.push_back(plainRuns(words.substr(i + 1)).front());
        return runs;
    }
    return plainRuns(words);
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
    for (const Run& run : runs)
        out += run.text;
    return out;
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

Title titleOf(const PlainVector& vector, std::optional<double> referred, const Force& given, bool asGiven,
              const Sketch& sketch) {
    Title title{std::string(wordsForSum(&given == &sketch.sum)) + vector.name, {}};
    const bool behind = vector.hasMagnitude;
    if (behind) {
        const Origin origin = vector.foundMagnitude ? Origin::computed : Origin::typed;
        title.detail = shownForceWithUnit(vector.magnitude, sketch, origin);
    }
    if (referred && asGiven && !isAngle(given.direction))
        title.detail += givenWords(given.direction, behind, sketch);
    else if (referred)
        title.detail += referredWords(*referred, behind, sketch);
    else if (behind && vector.magnitude == 0)
        title.detail += ", no direction";
    return title;
}

std::string figureTitle(const Sketch& sketch) {
    return sketch.title.empty() ? "Concurrent forces" : sketch.title;
}

std::string figureDescription(const Sketch& sketch, const Solved& solved, const FigureOptions& options) {
    const Vectors vectors = vectorsOf(sketch, solved, options.solution);
    const Solution* answer =
        options.solution < solved.solutions.size() ? &solved.solutions[options.solution] : nullptr;
    std::string text = std::to_string(vectors.forces.size()) +
                       (vectors.forces.size() == 1 ? " force acts" : " forces act") + " on one point. ";
    const auto list = [&](const PlainVector& vector, const Force& given, const SolvedForce* found) {
        const auto referred = found ? found->direction : referredDirection(given.direction, sketch);
        text += titleOf(vector, referred, given, options.asGiven, sketch).whole() + ". ";
    };
    constexpr std::size_t most = 24;
    for (std::size_t i = 0; i < std::min(vectors.forces.size(), most); ++i)
        list(vectors.forces[i], sketch.forces[i], answer ? &answer->forces[i] : nullptr);
    if (isEquilibrium(sketch))
        text += "Their sum is zero. ";
    else if (vectors.sum.complete() || (vectors.sum.givesDirection() && !answer))
        list(vectors.sum, sketch.sum, answer ? &answer->sum : nullptr);
    text += solved.message;
    while (!text.empty() && text.back() == ' ')
        text.pop_back();
    return spoken(text);
}

} // namespace tailpoint
