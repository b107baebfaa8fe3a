// SPDX-License-Identifier: MIT
// Running text with formulas set into it, in its three outputs and in another language.
#include "core/explain/question.h"
#include "core/explain/statement.h"
#include "core/explain/wording.h"
#include "core/sketch/shown.h"
#include "tests/core/explain/questions.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

TEST(Prose, SetsFormulasIntoWords) {
    const Voice voice;
    const Prose prose = voice.say(Wording{"test", "The angle {angle} is {value}, not less."}, "angle",
                                  symbol("γ"), "value", number(115, "115.0", "°"));
    EXPECT_EQ(toText(prose), "The angle γ is 115.0°, not less.");
    EXPECT_EQ(toLatex(prose), "The angle $\\gamma$ is $115.0^{\\circ}$, not less.");
    EXPECT_EQ(toHtml(voice.say(Wording{"test", "{p} < 1"}, "p", magnitudeSymbol("P"))),
              "<math><mi>P</mi></math> &lt; 1");
    const Prose turns = voice.say(Wording{"test", "{p} turns {way}."}, "p", magnitudeSymbol("P"), "way",
                                  inWords("left & up"));
    EXPECT_EQ(toHtml(turns), "<math><mi>P</mi></math> turns left &amp; up.");
    EXPECT_EQ(toLatex(turns), "$P$ turns left \\& up.");
}

TEST(Prose, APlaceMayStandTwiceAndHoldASentence) {
    const Voice voice;
    const Prose found = voice.say(Wording{"test", "{p} acts"}, "p", magnitudeSymbol("P"));
    EXPECT_EQ(
        toText(voice.say(Wording{"test", "{p}: {found}; {p}."}, "p", magnitudeSymbol("P"), "found", found)),
        "P: P acts; P.");
}

/// Another word order, and whole sentences: what a language needs.
class Backwards : public Sentences {
public:
    std::string in(const Wording& wording) const override {
        seen.push_back(wording.text);
        return "<<" + std::string(wording.text) + ">>";
    }
    mutable std::vector<std::string> seen;
};

TEST(Prose, ALanguageGivesItsOwnOrderOfPlaces) {
    class Swapped : public Sentences {
        std::string in(const Wording&) const override { return "{b} before {a}"; }
    };
    const Swapped swapped;
    EXPECT_EQ(
        toText(Voice(&swapped).say(Wording{"test", "{a} after {b}"}, "a", symbol("A"), "b", symbol("B"))),
        "B before A");
}

/// Every title, sentence and cell of a solution goes through the language: none is left as it is written.
/// What the solver says (its message) is not explain's.
TEST(Prose, NoSentenceOfASolutionGoesRoundTheLanguage) {
    const Backwards language;
    ExplainOptions options;
    options.sentences = &language;
    options.division = 50;
    Dice dice(20261130);
    constexpr int cases = 600;
    int sentences = 0;
    for (int i = 0; i < cases; ++i) {
        const Sketch s = someQuestion(dice, i % kQuestionKinds);
        const Solved solved = solve(s);
        options.handRounding = i % 2 == 1;
        options.parallelograms = i % 3 == 0;
        const Worked worked = explain(s, solved, construct(s, solved), 0, options);
        const auto check = [&](const std::string& text) {
            Phrase found; // the solver's own words, without its advice
            for (const Remark& remark : solved.remarks)
                if (remark.code != MessageCode::freeTwo && remark.code != MessageCode::otherSense)
                    found += (found.empty() ? "" : " ") + remark.words;
            const bool message = text == toText(proseOf(found, Things(s)));
            EXPECT_TRUE(message || text.starts_with("<<")) << "case " << i << ": " << text;
            EXPECT_TRUE(text.find('{') == std::string::npos && text.find('}') == std::string::npos)
                << "a place without content: " << text;
            ++sentences;
        };
        for (const Step& step : worked.steps) {
            check(step.title);
            for (const auto* group : {&step.reasoning, &step.conclusion, &step.notes})
                for (const Prose& prose : *group)
                    check(toText(prose));
        }
        for (const Prose& prose : {statement(s, &language).sentence})
            if (!prose.pieces.empty())
                check(toText(prose));
        check(plain(question(s, &language)));
    }
    EXPECT_GT(sentences, 10 * cases);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
