// SPDX-License-Identifier: MIT
// A marking as plain text.
#include "core/mark/mark.h"

#include "core/explain/ranges.h"
#include "core/quantity/utf8.h"

#include <array>

namespace tailpoint {

std::string_view nameOf(Verdict verdict) {
    constexpr std::array<std::string_view, 10> names{"right", "rounded", "unit",    "axis",       "follows",
                                                     "slip",  "other",   "missing", "incomplete", "unread"};
    return names[static_cast<std::size_t>(verdict)];
}

std::string_view nameOf(SlipPlace place) {
    constexpr std::array<std::string_view, 4> names{"reading", "calculation", "short cut", "reporting"};
    return names[static_cast<std::size_t>(place)];
}

std::string_view evidenceOf(const Finding& finding) {
    return finding.isStrong ? "strong" : "weak";
}

namespace {

/// Lines of at most `width` characters, the first with `first` in front, the others as far in.
void appendWrapped(std::string& out, std::string_view first, const std::string& text, std::size_t width) {
    const std::string in(characterCount(first), ' ');
    std::string line(first);
    bool isFresh = true;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        const std::string word = text.substr(begin, end - begin);
        if (!isFresh && characterCount(line) + 1 + characterCount(word) > width) {
            out += line + '\n';
            line = in;
            isFresh = true;
        }
        line += (isFresh ? "" : " ") + word;
        isFresh = false;
        begin = end + 1;
    }
    out += line + '\n';
}

std::string lineOf(const MarkedQuantity& quantity) {
    std::string line = quantity.name;
    if (quantity.answer > 0)
        line += " (" + std::to_string(quantity.answer) + ")";
    line += quantity.givenText.empty() ? std::string() : " = " + quantity.givenText;
    line += ": " + std::string(nameOf(quantity.verdict));
    if (quantity.verdict != Verdict::right && !quantity.expectedText.empty())
        line += "; right is " + quantity.expectedText;
    const std::string range = quantity.expectedText.empty() ? std::string() : rangeWords(quantity);
    line += range.empty() ? range : (quantity.verdict == Verdict::right ? "; " : ", ") + range;
    return line;
}

std::string toText(const Working& working, Minus minus) {
    std::string out;
    for (const auto* side : {&working.subject, &working.general, &working.substituted, &working.value}) {
        if (!*side)
            continue;
        if (!out.empty())
            out += " = ";
        appendText(out, **side, minus);
    }
    return out;
}

std::string pointsText(double points) {
    std::string text = std::to_string(points);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

} // namespace

std::string rangeWords(const MarkedQuantity& quantity, const Sentences* sentences) {
    const Voice voice(sentences);
    switch (quantity.ranged) {
    case MarkedQuantity::Ranged::known:
        return toText(
            voice.say(SENTENCE("marking", "within the tolerances {range}"), "range", quantity.rangeText));
    case MarkedQuantity::Ranged::unknown:
        return rangeUnknown(voice);
    case MarkedQuantity::Ranged::ofStated:
        return voice.text(SENTENCE("marking", "of the stated values"));
    case MarkedQuantity::Ranged::none:
        break;
    }
    return {};
}

std::string toText(const ChangedLine& line, Minus minus) {
    std::string out = toText(line.changed, minus);
    if (line.right)
        out += "; right: " + toText(*line.right, minus);
    return out;
}

std::string toText(const Marking& marking, Minus minus, std::size_t width) {
    std::string out = std::string(nameOf(marking.verdict)) + ", " + pointsText(marking.points) + " of " +
                      pointsText(marking.of) + "\n";
    for (const MarkedQuantity& quantity : marking.quantities) {
        appendWrapped(out, "  ", lineOf(quantity), width);
        for (const Prose& remark : quantity.remarks)
            appendWrapped(out, "    ", toText(remark, minus), width);
    }
    for (const Prose& remark : marking.remarks)
        appendWrapped(out, "  ", toText(remark, minus), width);
    for (const Finding& finding : marking.slips) {
        out += '\n';
        appendWrapped(out, "  ", toText(finding.about, minus) + ':', width);
        appendWrapped(out, "    ", toText(finding.sentence, minus), width);
        for (const ChangedLine& line : finding.lines) {
            appendWrapped(out, "      ", toText(line.changed, minus), width);
            if (line.right)
                appendWrapped(out, "      right: ", toText(*line.right, minus), width);
        }
        for (const Prose& reading : finding.readings)
            appendWrapped(out, "    ", toText(reading, minus), width);
        appendWrapped(out, "    ", toText(finding.mend, minus), width);
    }
    if (marking.ask) {
        out += '\n';
        appendWrapped(out, "  ", toText(*marking.ask, minus), width);
    }
    if (!marking.caution.empty()) {
        out += '\n';
        appendWrapped(out, "  ", marking.caution, width);
    }
    return out;
}

} // namespace tailpoint
