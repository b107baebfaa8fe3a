// SPDX-License-Identifier: MIT
// One name and one symbol for everything, and no two alike in print.
#include "core/sketch/naming.h"
#include "core/sketch/things.h"
#include "tests/support/cases.h"

#include <gtest/gtest.h>
#include <map>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

Sketch named(std::vector<std::string> names, std::string sum = "R") {
    std::vector<Force> forces;
    for (std::string& name : names)
        forces.push_back(force(std::move(name), 10, 20));
    return sketch(std::move(forces), force(std::move(sum), kToFind, kToFind));
}

std::string printed(const Things& things, const QuantityId& id) {
    return toText(things.formula(id));
}

const QuantityId kAngleAtSum{What::opposite, kSumVector},
    kTails{What::between, forceVector(0), forceVector(1)};

TEST(Things, NameAQuestionOfTwoForcesAsALecturerDoes) {
    const Things things(named({"P", "Q"}));
    EXPECT_EQ(printed(things, magnitudeId(forceVector(0))), "P");
    EXPECT_EQ(printed(things, directionId(kSumVector)), "θ_R");
    EXPECT_EQ(printed(things, {What::x, kSumVector}), "R_x");
    EXPECT_EQ(printed(things, kTails), "φ");
    EXPECT_EQ(printed(things, {What::opposite, forceVector(0)}), "α");
    EXPECT_EQ(printed(things, {What::opposite, forceVector(1)}), "β");
    EXPECT_EQ(printed(things, kAngleAtSum), "γ");
    EXPECT_EQ(printed(things, {What::fromX, forceVector(1)}), "ψ_Q");
    EXPECT_EQ(printed(things, {What::acute, kSumVector}), "δ_R") << "not φ, which lies between the tails";
    EXPECT_EQ(printed(things, {What::square, kSumVector}), "R²");
    EXPECT_EQ(printed(things, {What::ratio, forceVector(1)}), "sin β");
    EXPECT_EQ(printed(things, {What::ratio, kSumVector, {}, 0, kTangent}), "tan δ_R");
    EXPECT_EQ(printed(things, magnitudeId(kKnownVector)), "K");
    EXPECT_EQ(printed(things, magnitudeId(partialVector(1))), "K₁");
    EXPECT_EQ(toText(things.vectorFormula(kSumVector)), "𝑹");
}

TEST(Things, HavePlainNamesThatLeadBackToThem) {
    const Things things(named({"P", "F1"}));
    const std::pair<const char*, QuantityId> rows[] = {
        {"R", magnitudeId(kSumVector)},
        {"theta_R", directionId(kSumVector)},
        {"R_x", {What::x, kSumVector}},
        {"F1_y", {What::y, forceVector(1)}},
        {"theta_F1", directionId(forceVector(1))},
        {"psi_F1", {What::fromX, forceVector(1)}},
        {"alpha", {What::opposite, forceVector(0)}},
        {"gamma", kAngleAtSum},
        {"phi", kTails},
        {"delta_R", {What::acute, kSumVector}},
        {"sin beta", {What::ratio, forceVector(1)}},
        {"R^2", {What::square, kSumVector}},
        {"K", magnitudeId(kKnownVector)},
        {"d", {What::distance}},
    };
    for (const auto& [plain, id] : rows) {
        EXPECT_EQ(things.named(plain), id) << plain;
        EXPECT_EQ(things.at(id).plain, plain);
    }
    EXPECT_FALSE(things.named("theta"));
    EXPECT_FALSE(things.named("F_1")) << "another name than F1, however it prints";
}

TEST(Things, SayWhatIsGivenAndWhatIsAsked) {
    const Things things(sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)));
    const auto role = [&](const QuantityId& id) { return things.at(id).role; };
    EXPECT_EQ(role(magnitudeId(forceVector(0))), Thing::Role::asked);
    EXPECT_EQ(role(directionId(forceVector(0))), Thing::Role::given);
    EXPECT_EQ(role(magnitudeId(forceVector(1))), Thing::Role::given);
    EXPECT_EQ(role(directionId(forceVector(1))), Thing::Role::asked);
    EXPECT_EQ(role(kAngleAtSum), Thing::Role::onTheWay);
    EXPECT_EQ(things.at(kAngleAtSum).dimension, Dimension::angle);
    EXPECT_EQ(things.at({What::square, kSumVector}).dimension, Dimension::forceSquared);
    EXPECT_EQ(things.at(magnitudeId(kSumVector)).dimension, Dimension::force);
}

struct Clash {
    const char* why;
    std::vector<std::string> names;
    std::string first, second; ///< how the first two vectors print
};

TEST(Things, TellNamesApartThatWouldPrintAlike) {
    const Clash rows[] = {
        {"the second of a kind as it was typed", {"T1", "T_1"}, "T₁", "T_1"},
        {"in either order", {"T_1", "T1"}, "T₁", "T1"},
        {"a space at the end is seen by nobody", {"P", "P "}, "P", "P_(2)"},
        {"a Greek capital Rho", {"P", "Ρ"}, "P", "Ρ_(2)"},
        {"a lowered digit of its own", {"F2", "F₂"}, "F₂", "F₂_(2)"},
        {"nothing to tell apart", {"F1", "F12"}, "F₁", "F₁₂"},
    };
    for (const Clash& row : rows) {
        const Things things(named(row.names));
        EXPECT_EQ(printed(things, magnitudeId(forceVector(0))), row.first) << row.why;
        EXPECT_EQ(printed(things, magnitudeId(forceVector(1))), row.second) << row.why;
        EXPECT_NE(printed(things, directionId(forceVector(0))), printed(things, directionId(forceVector(1))))
            << row.why;
        EXPECT_EQ(things.name(forceVector(1)), row.names[1]) << "as typed";
    }
}

TEST(Things, GiveALetterUpWhereAVectorBearsIt) {
    EXPECT_EQ(printed(Things(named({"P", "θ_P"})), directionId(forceVector(0))), "ε_P");
    EXPECT_EQ(printed(Things(named({"P", "θ"})), directionId(forceVector(0))), "ε_P");
    EXPECT_EQ(Things(named({"P", "theta_P"})).at(directionId(forceVector(0))).plain, "epsilon_P")
        << "spelled out it would be the name of a force";
    EXPECT_EQ(printed(Things(named({"P", "α"})), {What::opposite, forceVector(0)}), "λ");
    EXPECT_EQ(printed(Things(named({"P", "φ1"})), kTails), "ω");
    EXPECT_EQ(printed(Things(named({"d", "h"})), {What::distance}), "e");
    EXPECT_EQ(printed(Things(named({"µ", "β"})), {What::opposite, forceVector(1)}), "η")
        << "the micro sign looks like a mu";
}

TEST(Things, FenceTheAxesWhereAVectorIsCalledLikeAComponent) {
    const Things things(named({"P", "R_x"}));
    EXPECT_EQ(printed(things, magnitudeId(forceVector(1))), "R_x");
    EXPECT_EQ(printed(things, {What::x, kSumVector}), "R_(x)");
    EXPECT_EQ(things.at({What::x, kSumVector}).plain, "R_(x)");
    EXPECT_EQ(things.named("R_x"), magnitudeId(forceVector(1)));
    EXPECT_EQ(printed(Things(named({"P", "Max"})), {What::x, kSumVector}), "R_x") << "no clash, no fence";
    EXPECT_EQ(printed(Things(named({"T1", "T1_x"})), {What::x, kSumVector}), "R_(x)")
        << "T1_x is how a script writes the component of T1";
}

TEST(Things, CallTheKnownForcesAddedUpByTheFirstFreeName) {
    const auto known = [](std::vector<std::string> names) {
        return Things(named(std::move(names))).name(kKnownVector);
    };
    EXPECT_EQ(known({"P", "Q"}), "K");
    EXPECT_EQ(known({"P", "K"}), "L");
    EXPECT_EQ(known({"L", "K"}), "M");
    EXPECT_EQ(known({"K", "L", "M"}), "K1");
    EXPECT_EQ(known({"K", "L", "M", "K_1"}), "K2");
    EXPECT_EQ(known({"Κ", "Q"}), "L") << "a Greek capital Kappa";
    EXPECT_EQ(Things(named({"P", "Q", "K1", "S"})).name(partialVector(2)), "L2");
    EXPECT_EQ(Things(named({"P", "Q", "K9", "S"})).name(partialVector(2)), "K2");
}

/// Every pair of things of seeded sketches whose names were chosen to be taken for one another.
TEST(Things, NeverPrintTwoAlike) {
    const char* pool[] = {"P", "P ",  "Ρ",   "T1", "T_1", "T₁", "R_x",  "R_y",   "θ_P",  "θ", "theta_P",
                          "α", "β0",  "K",   "K1", "L",   "M",  "F1x",  "F_1x",  "F1",   "φ", "ψ_T1",
                          "d", "δ_P", "ε_P", "x",  "P_u", "µ",  "T1_x", "S_(x)", "ΣF_x", "γ", "K_x"};
    Dice dice(20261128);
    for (int round = 0; round < 600; ++round) {
        std::vector<std::string> names;
        for (int i = 0; i < 5; ++i) {
            const char* name = pool[dice.whole(std::size(pool))];
            if (std::find(names.begin(), names.end(), name) == names.end())
                names.emplace_back(name);
        }
        const std::string sum = names.back();
        names.pop_back();
        if (names.size() < 2)
            continue;
        names.resize(2 + dice.whole(names.size() - 1));
        const Things things(named(names, sum));
        std::vector<VectorId> vectors{kSumVector, kKnownVector};
        for (std::size_t i = 0; i < names.size(); ++i)
            vectors.push_back(forceVector(i));
        std::vector<QuantityId> all;
        for (const VectorId vector : vectors)
            for (const What what :
                 {What::magnitude, What::direction, What::fromX, What::x, What::y, What::acute})
                all.push_back({what, vector});
        if (names.size() == 2) {
            all.push_back(kTails);
            for (const VectorId vector : {forceVector(0), forceVector(1), kSumVector})
                all.push_back({What::opposite, vector});
        }
        all.push_back({What::distance});
        std::map<std::string, std::string> looks, plains;
        for (const QuantityId& id : all) {
            const std::string look = looksOf(inPrint(things.symbol(id))), plain = things.at(id).plain;
            const auto [seen, isNew] = looks.emplace(look, plain);
            ASSERT_TRUE(isNew) << "round " << round << ": " << look << " is both " << seen->second << " and "
                               << plain;
            ASSERT_TRUE(plains.emplace(plain, look).second) << "round " << round << ": " << plain;
            ASSERT_EQ(things.named(plain), id) << "round " << round << ": " << plain;
        }
    }
}

TEST(Things, SayOfANewNameWhatItWouldPrintLike) {
    const Sketch sketch = named({"P", "T1"});
    const auto why = [&](std::string_view name) { return printsLike(sketch, name).value_or(""); };
    EXPECT_EQ(why("Q"), "");
    EXPECT_EQ(why("T_1"), "'T_1' would stand in print like T1; give another name");
    EXPECT_EQ(why("R_x"), "'R_x' would stand in print like the component of R along x; give another name");
    EXPECT_EQ(why("θ_P"), "'θ_P' would stand in print like the direction of P; give another name");
    EXPECT_EQ(why("P "), "'P ' would stand in print like P; give another name");
    EXPECT_EQ(why("340"), "'340' would stand in print like a number; give a name such as F1");
    EXPECT_TRUE(printsLike(sketch, "2.5 kN"));
    EXPECT_EQ(why("F1"), "");
    EXPECT_EQ(why("K"), "") << "the known forces added up give way";
    EXPECT_EQ(printsLike(sketch, "T_1", forceVector(1)), std::nullopt) << "its own name doesn't count";
    EXPECT_EQ(printsLike(sketch, "R_1", kSumVector), std::nullopt);
    EXPECT_TRUE(printsLike(sketch, "R_x", forceVector(0)));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
