// Running text with formulas set into it, in its three outputs.
#include "core/explain/prose.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace {

TEST(Prose, SetsFormulasIntoWords) {
    const Prose prose = say("The angle {} is {}, not less.", symbol("γ"), number(115, "115.0", "°"));
    EXPECT_EQ(toText(prose), "The angle γ is 115.0°, not less.");
    EXPECT_EQ(toLatex(prose), "The angle $\\gamma$ is $115.0^{\\circ}$, not less.");
    EXPECT_EQ(toHtml(say("{} < 1", magnitudeSymbol("P"))), "<math><mi>P</mi></math> &lt; 1");
    EXPECT_EQ(toHtml(say("{} turns {}.", magnitudeSymbol("P"), inWords("left & up"))),
              "<math><mi>P</mi></math> turns left &amp; up.");
    EXPECT_EQ(toLatex(say("{} turns {}.", magnitudeSymbol("P"), inWords("left & up"))),
              "$P$ turns left \\& up.");
}

TEST(Prose, JoinsWithASpace) {
    Prose prose = say("First.");
    append(prose, say("Then {}.", magnitudeSymbol("P")));
    append(prose, {});
    EXPECT_EQ(toText(prose), "First. Then P.");
}

} // namespace
} // namespace tailpoint
