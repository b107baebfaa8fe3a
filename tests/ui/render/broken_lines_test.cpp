// SPDX-License-Identifier: MIT
// A line of calculation that is broken stays in its room, whatever the room and the fonts are.
#include "ui/render/formula.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

constexpr double kEm = 30;

double widthIn(const Formula& formula, double room) {
    Working working;
    working.value = formula;
    double widest = 0;
    for (const Setting& line : setWorkingByLine(working, {kEm, 96, kEm / 1.07}, room))
        widest = std::max(widest, line.width);
    return widest;
}

Formula sineOf120Gon() {
    return apply("sin", number(120, "120.0", "gon"));
}

/// The second factor can't be broken and has hardly more room than it needs: it may then not be set in as far
/// as later rows are elsewhere. Pixel by pixel, so that whatever the font, each case occurs.
TEST(BrokenLines, ALaterRowStandsNoFurtherInThanItHasRoom) {
    const double factor = setFormula(sineOf120Gon(), {kEm, 96, kEm / 1.07}).width;
    const Formula twice = product(number(9.4, "9.40", "kN"), sineOf120Gon());
    const double whole = widthIn(twice, 1000 * kEm);
    ASSERT_GT(whole, factor + kEm);
    for (double room = factor + 1; room < whole; ++room)
        EXPECT_LE(widthIn(twice, room), room);
}

TEST(BrokenLines, ALaterRowIsSetInWhereThereIsRoom) {
    const Formula terms = sum(number(9.4, "9.40", "kN"), number(120, "120", "kN"));
    const double whole = widthIn(terms, 1000 * kEm);
    const double second = setFormula(number(120, "120", "kN"), {kEm, 96, kEm / 1.07}).width;
    EXPECT_GE(widthIn(terms, whole - 1), second + kEm);
}

/// "−(179.32 N) sin(−140.0°) + (15.688 N) cos(−140.0°)" over a sum of products: a first term with a minus is
/// broken like every other.
TEST(BrokenLines, ANegativeFirstTermIsBrokenToo) {
    const auto turned = [](const char* function) { return apply(function, number(-140, "-140.0", "°")); };
    const Formula along = number(179.32, "179.32", "N"), across = number(15.688, "15.688", "N");
    const Formula above = sum(negative(product(along, turned("sin"))), product(across, turned("cos")));
    const Formula below =
        sum(product(turned("cos"), turned("sin")), negative(product(turned("sin"), turned("cos"))));
    const TypeSize size{kEm, 96, kEm / 1.07};
    const double widest =
        std::max(setFormula(along, size).width, setFormula(turned("cos"), size).width) + 4 * kEm;
    for (const Formula& formula : {above, over(above, below)}) {
        const double whole = widthIn(formula, 1000 * kEm);
        ASSERT_GT(whole, widest);
        for (double room = widest; room < whole; ++room)
            EXPECT_LE(widthIn(formula, room), room);
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
