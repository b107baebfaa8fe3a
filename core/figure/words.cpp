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

/// Before the words of a direction: '340 N at 25.0\u00b0 ...', '340 N along +x'.
std::string joint(double referred, const Sketch& sketch) {
    return fromAxis(referred, sketch).size.empty() ? " " : " at ";
}

void listVector(std::string& text, const PlainVector& vector, std::optional<double> referred, bool isSum,
                const Sketch& sketch) {
    text += titleOf(vector, referred, isSum, sketch).whole();
    text += ". ";
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

Title titleOf(const PlainVector& vector, std::optional<double> referred, bool isSum, const Sketch& sketch) {
    Title title{std::string(wordsForSum(isSum)) + vector.name, {}};
    if (vector.hasMagnitude) {
        const Origin origin = vector.foundMagnitude ? Origin::computed : Origin::typed;
        title.detail = shownForceWithUnit(vector.magnitude, sketch, origin);
    }
    if (referred)
        title.detail +=
            (vector.hasMagnitude ? joint(*referred, sketch) : "") + directionWords(referred, sketch);
    else if (vector.hasMagnitude && vector.magnitude == 0)
        title.detail += ", no direction";
    return title;
}

std::string figureTitle(const Sketch& sketch) {
    return sketch.title.empty() ? "Concurrent forces" : sketch.title;
}

std::string figureDescription(const Sketch& sketch, const Solved& solved, std::size_t solution) {
    const Vectors vectors = vectorsOf(sketch, solved, solution);
    const bool answered = solution < solved.solutions.size();
    std::string text = std::to_string(vectors.forces.size()) +
                       (vectors.forces.size() == 1 ? " force acts" : " forces act") + " on one point. ";
    constexpr std::size_t most = 24;
    for (std::size_t i = 0; i < vectors.forces.size() && i < most; ++i) {
        const auto referred = answered ? solved.solutions[solution].forces[i].direction
                                       : referredDirection(sketch.forces[i].direction, sketch);
        listVector(text, vectors.forces[i], referred, false, sketch);
    }
    const auto referred =
        answered ? solved.solutions[solution].sum.direction : referredDirection(sketch.sum.direction, sketch);
    if (isEquilibrium(sketch))
        text += "Their sum is zero. ";
    else if (vectors.sum.complete())
        listVector(text, vectors.sum, referred, true, sketch);
    text += solved.message;
    while (!text.empty() && text.back() == ' ')
        text.pop_back();
    return spoken(text);
}

} // namespace tailpoint
