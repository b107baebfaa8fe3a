// SPDX-License-Identifier: MIT
#include "ui/practice/hints.h"

#include "core/practice/families.h"
#include "core/practice/scheme.h"
#include "ui/panel/marked_text.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using Told = HintedLine::Told;

QString wordsOf(const Working& working) {
    return MarkedText::plainOf(working).replace(QChar(0x2212), u'-').replace(QChar::Nbsp, u' ');
}

std::vector<QuantityId> askedOf(const Problem& made) {
    std::vector<QuantityId> ids;
    const Marker marker(made.sketch, solve(made.sketch));
    for (const Answerable& one : marker.quantities())
        if (one.asked)
            ids.push_back(one.id);
    return ids;
}

/// Numbers of a shown line carry two figures more than the answer: its digits begin alike.
bool beginsWithAnswer(const QString& words, double value) {
    static const QRegularExpression number(QStringLiteral("\\d+(\\.\\d+)?"));
    for (auto match = number.globalMatch(words); match.hasNext();)
        if (std::abs(match.next().captured().toDouble() - std::abs(value)) <= 0.001 * std::abs(value))
            return true;
    return false;
}

TEST(Hints, EachLineIsToldInThreeStepsAndNeverWhatItComesTo) {
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level) {
            const auto made = problem({std::string(family.id), level, 17});
            Hints hints(made->sketch);
            ASSERT_FALSE(hints.lines().empty()) << made->code;
            const std::size_t count = hints.lines().size();
            std::size_t opened = 0;
            while (hints.hasNext()) {
                const HintedLine& line = hints.open();
                ++opened;
                ASSERT_LE(opened, 3 * count);
                EXPECT_FALSE(line.principle.empty());
                // which law it is, the first hint of a line asks
                EXPECT_FALSE(QRegularExpression(QStringLiteral("law of (co)?sines"),
                                                QRegularExpression::CaseInsensitiveOption)
                                 .match(QString::fromStdString(toText(line.asks)))
                                 .hasMatch())
                    << toText(line.asks);
                EXPECT_FALSE(line.letters.value || line.numbers.value || line.letters.substituted);
            }
            EXPECT_GE(opened, 2 * count) << made->code;
            for (const HintedLine& line : hints.lines())
                EXPECT_TRUE(line.told == Told::numbers || line.told == Told::letters) << made->code;
        }
}

/// Whatever has been opened: as long as nothing says that all is told, no number of it is an answer.
TEST(Hints, WhatTellsAnAnswerIsSaidToTellAll) {
    int told = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (std::uint32_t number = 0; number < 8; ++number) {
            const auto made = problem({std::string(family.id), 1 + static_cast<int>(number % 3), number});
            const std::vector<QuantityId> asked = askedOf(*made);
            const Scheme scheme = schemeOf(*made);
            Hints hints(made->sketch);
            while (hints.hasNext()) {
                const HintedLine& line = hints.open();
                const QString words = line.told == Told::principle ? QString::fromStdString(toText(line.asks))
                                      : line.told == Told::letters ? wordsOf(line.letters)
                                                                   : wordsOf(line.numbers);
                for (const SchemeAnswer& answer : scheme.answers)
                    for (const double value : answer.values)
                        if (beginsWithAnswer(words, value) &&
                            !beginsWithAnswer(QString::fromStdString(made->statement), value)) {
                            ++told;
                            EXPECT_TRUE(hints.tellsAll(asked))
                                << made->code << ' ' << answer.name << " in " << words.toStdString();
                        }
            }
            EXPECT_TRUE(hints.tellsAll(asked)) << made->code;
        }
    EXPECT_GT(told, 20) << "later lines carry answers on: the check has something to find";
}

TEST(Hints, NoneAreNeededForWhatIsRight) {
    const auto made = problem({"two-forces", 2, 17});
    Hints hints(made->sketch);
    std::set<QuantityId> all;
    for (const HintedLine& line : hints.lines())
        if (line.gives)
            all.insert(*line.gives);
    ASSERT_TRUE(all.count(magnitudeId(kSumVector)));
    hints.setRight({magnitudeId(kSumVector)});
    while (hints.hasNext())
        EXPECT_NE(hints.open().gives, magnitudeId(kSumVector));
    EXPECT_EQ(hints.lines().front().told, Told::numbers);
}

TEST(Hints, AQuestionWithoutAnAnswerHasNone) {
    Sketch nothing;
    EXPECT_FALSE(Hints(nothing).hasNext());
    EXPECT_FALSE(Hints(nothing).tellsAll({}));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
