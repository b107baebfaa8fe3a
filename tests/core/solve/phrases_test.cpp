// SPDX-License-Identifier: MIT
// What the solver says names vectors and their magnitudes by id, whatever they are called.
#include "core/solve/solve.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

std::vector<QuantityId> named(const Phrase& phrase) {
    std::vector<QuantityId> ids;
    for (const PhrasePiece& piece : phrase.pieces())
        if (piece.isName())
            ids.push_back(piece.names);
    return ids;
}

QuantityId vector(VectorId id) {
    return {What::none, id};
}

TEST(APhrase, JoinsWordsAndKeepsNamesApart) {
    const Phrase phrase = "the " + Phrase::vector(forceVector(0), "the") + std::string(" lies ") + "there";
    ASSERT_EQ(phrase.pieces().size(), 3u);
    EXPECT_EQ(phrase.text(), "the the lies there");
    EXPECT_FALSE(phrase.pieces()[0].isName());
    EXPECT_TRUE(phrase.pieces()[1].isName());
    EXPECT_EQ(phrase.pieces()[2].text, " lies there");
    EXPECT_TRUE(Phrase("").empty());
}

/// A unit, an article and a word of the sentence as names: the ids are those of the question all the same.
TEST(AMessage, NamesByIdWhateverTheNamesAre) {
    const auto none =
        solve(sketch({force("N", kToFind, 25), force("No", kToFind, 25)}, force("A", 520, 0))).message();
    EXPECT_EQ(none.text(),
              "No answer: N and No act along one line, and A = 520 N does not lie along it. Give one of them "
              "another direction.");
    EXPECT_EQ(named(none), (std::vector<QuantityId>{vector(forceVector(0)), vector(forceVector(1)),
                                                    magnitudeId(kSumVector)}));
    const auto tooShort =
        solve(sketch({force("P", kToFind, 40), force("Q", 150, kToFind)}, force("R", 400, 10))).message();
    EXPECT_EQ(named(tooShort),
              (std::vector<QuantityId>{magnitudeId(forceVector(1)), vector(forceVector(0)),
                                       magnitudeId(forceVector(1)), vector(forceVector(0))}));
}

/// Names that no sentence has of itself: none of them is left among the words, in a message of every kind.
TEST(AMessage, HoldsNoNameAmongItsWords) {
    const auto p = [](std::optional<double> size, std::optional<double> way) {
        return force("[P]", size, way);
    };
    const auto q = [](std::optional<double> size, std::optional<double> way) {
        return force("[Q]", size, way);
    };
    const auto r = [](std::optional<double> size, std::optional<double> way) {
        return force("[R]", size, way);
    };
    for (const Sketch& asked :
         {sketch({p(kToFind, kToFind), q(kToFind, kToFind)}),
          sketch({p(340, 25), q(275, -40)}, r(kToFind, 10)), sketch({p(340, 25), q(275, -40)}, r(520, 0)),
          sketch({p(100, 25), q(100, 205)}, r(kToFind, kToFind)),
          sketch({p(kToFind, 25), q(kToFind, 25)}, r(520, 0)),
          sketch({p(3, kToFind), q(4, kToFind)}, r(9, 0)),
          sketch({p(kToFind, 40), q(150, kToFind)}, r(400, 10)),
          sketch({p(kToFind, 40), q(260, kToFind)}, r(400, 10)),
          sketch({p(3, kToFind), q(4, kToFind)}, r(5, 0)), balanced({p(kToFind, 0), q(kToFind, 180)})}) {
        const Phrase message = solve(asked).message();
        std::string words;
        for (const PhrasePiece& piece : message.pieces())
            words += piece.isName() ? "" : piece.text;
        EXPECT_EQ(words.find('['), std::string::npos) << message.text();
        EXPECT_NE(message.text().find('['), std::string::npos) << message.text();
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
