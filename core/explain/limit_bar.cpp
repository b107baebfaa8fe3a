// SPDX-License-Identifier: MIT
#include "core/explain/limit_bar.h"

#include "core/formula/formula.h"
#include "core/quantity/decimals.h"

#include <algorithm>

namespace tailpoint {

namespace {

constexpr double kLeastSpan = 1.25; ///< so much of the limit is in sight at least
constexpr double kMostSpan = 2;     ///< and so much at most: the limit stays well apart from 0
constexpr double kBeyond = 1.05;    ///< room behind what is reached

/// Shares of the limit; `worst` empty: without end.
LimitBar barFor(double best, std::optional<double> worst) {
    const double span = std::clamp(kBeyond * worst.value_or(kMostSpan), kLeastSpan, kMostSpan);
    const auto place = [&](double share) { return std::clamp(share / span, 0.0, 1.0); };
    return {place(best), place(worst.value_or(span)), 1 / span, !worst || *worst > span};
}

std::string barNumber(double value) {
    return fixedDecimals(value, 1);
}

void addBox(std::string& out, double x, double width, std::string_view style) {
    out += "<rect x=\"" + barNumber(x) + "\" y=\"2.0\" width=\"" + barNumber(width) + "\" height=\"" +
           barNumber(kBarHeight - 4) + "\" " + std::string(style) + "/>";
}

const std::string& nameOfVector(int index, const Sketch& sketch) {
    return index == kSumIndex ? sketch.sum.name : sketch.forces[static_cast<std::size_t>(index)].name;
}

std::string spokenUse(const LimitUse& use, const Sketch& sketch, const Voice& voice) {
    const std::string &name = nameOfVector(use.index, sketch), worst = shareText(use, voice),
                      best = utilisationText(use.leastUse);
    return toText(
        worst == best
            ? voice.say(SENTENCE("limits", "{name} uses {worst} of its limit"), "name", name, "worst", worst)
            : voice.say(SENTENCE("limits", "{name} uses {best} of its limit at best, {worst} at worst"),
                        "name", name, "best", best, "worst", worst));
}

std::string spokenUse(const DirectionUse& use, const Sketch& sketch, const Voice& voice) {
    const auto [off, within] = offText(use, sketch);
    return toText(
        voice.say(SENTENCE("limits", "the direction of {name} is up to {off} off, {within} allowed"), "name",
                  nameOfVector(use.index, sketch), "off", off, "within", within));
}

std::vector<LimitShown> shownOf(const std::vector<LimitUse>& limits,
                                const std::vector<DirectionUse>& permitted, const Sketch& sketch,
                                const Sentences* sentences) {
    const Voice voice(sentences);
    std::vector<LimitShown> all;
    const auto add = [&](const auto& use) {
        all.push_back(
            {use.verdict, barOf(use), spokenUse(use, sketch, voice), limitTold(use, sketch, voice)});
    };
    for (const LimitUse& use : limits)
        add(use);
    for (const DirectionUse& use : permitted)
        add(use);
    return all;
}

} // namespace

std::string verdictWord(Bound verdict, const Sentences* sentences) {
    const Voice voice(sentences);
    switch (verdict) {
    case Bound::within:
        return voice.text(SENTENCE("limits", "within"));
    case Bound::over:
        return marked(verdict, voice.text(SENTENCE("limits", "over")));
    case Bound::straddles:
        break;
    }
    return marked(verdict, voice.text(SENTENCE("limits", "straddles")));
}

std::vector<LimitShown> limitsShown(const Sketch& sketch, const Solution& solution,
                                    const tolerance::AnswerRange* range, const Sentences* sentences) {
    return shownOf(limitsOf(sketch, solution, range), permittedOf(sketch, solution, range), sketch,
                   sentences);
}

std::vector<LimitShown> limitsShown(const Sketch& sketch, const Solved& solved, std::size_t answer,
                                    const tolerance::Ranges& ranges, const Sentences* sentences) {
    return shownOf(limitsOf(sketch, solved, answer, ranges), permittedOf(sketch, solved, answer, ranges),
                   sketch, sentences);
}

LimitBar barOf(const LimitUse& use) {
    return barFor(use.leastUse / 100, use.utilisation ? std::optional(*use.utilisation / 100) : std::nullopt);
}

LimitBar barOf(const DirectionUse& use) {
    return barFor(use.leastOff / use.within, use.off / use.within);
}

std::vector<HatchStroke> hatch(double left, double top, double width, double height, double step) {
    std::vector<HatchStroke> strokes;
    const double right = left + width, bottom = top + height;
    // a stroke begins at the lower edge and goes as far to the right as it rises
    for (double foot = left - height + step; foot < right; foot += step) {
        const double from = std::max(foot, left), to = std::min(foot + height, right);
        if (to > from)
            strokes.push_back({from, bottom - (from - foot), to, bottom - (to - foot)});
    }
    return strokes;
}

std::string barSvg(const LimitBar& bar, std::string_view label) {
    const double room = kBarWidth - 2, certain = room * bar.certain, possible = room * bar.possible;
    std::string out = "<svg class=\"bar\" xmlns=\"http://www.w3.org/2000/svg\" width=\"" +
                      barNumber(kBarWidth) + "\" height=\"" + barNumber(kBarHeight) +
                      "\" role=\"img\" aria-label=\"" + xmlEscaped(label) + "\">";
    addBox(out, 1, room, "fill=\"none\" stroke=\"#4c585f\" stroke-width=\"0.8\"");
    addBox(out, 1, certain, "fill=\"#4c585f\"");
    std::string path;
    for (const HatchStroke& each : hatch(1 + certain, 2, possible - certain, kBarHeight - 4, 4))
        path += "M" + barNumber(each.x1) + " " + barNumber(each.y1) + "L" + barNumber(each.x2) + " " +
                barNumber(each.y2);
    if (!path.empty())
        out += "<path d=\"" + path + "\" stroke=\"#4c585f\" stroke-width=\"1.2\" fill=\"none\"/>";
    const std::string at = barNumber(1 + room * bar.limit);
    out += "<path d=\"M" + at + " 0L" + at + " " + barNumber(kBarHeight) +
           "\" stroke=\"#fff\" stroke-width=\"4\"/><path d=\"M" + at + " 0L" + at + " " +
           barNumber(kBarHeight) + "\" stroke=\"#1f2a30\" stroke-width=\"2\"/></svg>";
    return out;
}

} // namespace tailpoint
