// SPDX-License-Identifier: MIT
// `report --uncertainty`: text, JSON, HTML and LaTeX, and what it is refused with. Numbers: derivatives by
// central differences of the closed form, half-width over sqrt 3 (or k), outside of the program.
#include "tests/whole/verbs/driver.h"

#include <QJsonDocument>
#include <algorithm>
#include <cmath>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

/// P 340 ± 5 at 25 ± 2 and Q 275 at -40.
QByteArray raft() {
    return sketch(
        R"({"name": "P", "magnitude": {"value": 340, "plusMinus": 5}, "direction": {"value": 25, "plusMinus": 2}},
           {"name": "Q", "magnitude": 275, "direction": -40})");
}

Ran report(const QStringList& options, const QByteArray& of = raft()) {
    return run(QStringList{QStringLiteral("report"), QStringLiteral("-")} + options, of);
}

/// In one line, whatever way it is broken.
std::string inOneLine(const QByteArray& text) {
    return QString::fromUtf8(text).simplified().toStdString();
}

TEST(Uncertainty, IsToldInTheTextOnRequest) {
    const std::string text = inOneLine(report({QStringLiteral("--uncertainty")}).out);
    const std::string told = "R has the standard uncertainty 4.1 N: the direction of 𝑷 makes 63 per cent and "
                             "the magnitude of 𝑷 makes 37 per cent. Expanded with k = 2: 8.3 N.";
    const auto first = text.find(told);
    ASSERT_NE(first, std::string::npos) << text;
    EXPECT_NE(text.find(told, first + 1), std::string::npos) << "in the answer and in its step";
    EXPECT_EQ(inOneLine(report({}).out).find("uncertainty"), std::string::npos);
}

TEST(Uncertainty, OfANormalDistributionSaysItsK) {
    const Ran ran =
        report({QStringLiteral("--uncertainty"), QStringLiteral("--normal"), QStringLiteral("3")});
    // 4.14846 sqrt 3 / 3 = 2.39512
    EXPECT_NE(inOneLine(ran.out).find("standard uncertainty 2.4 N"), std::string::npos);
    EXPECT_NE(inOneLine(ran.out).find("k = 3 standard uncertainties"), std::string::npos);
}

TEST(Uncertainty, IsInJson) {
    const QJsonObject whole =
        QJsonDocument::fromJson(
            report({QStringLiteral("--as"), QStringLiteral("json"), QStringLiteral("--uncertainty")}).out)
            .object();
    const QJsonObject
        solution = whole[QStringLiteral("solutions")].toArray().at(0).toObject(),
        all = solution[QStringLiteral("sum")].toObject()[QStringLiteral("uncertainty")].toObject(),
        magnitude = all[QStringLiteral("magnitude")].toObject(),
        shares = magnitude[QStringLiteral("shares")].toObject();
    EXPECT_NEAR(magnitude[QStringLiteral("standard")].toDouble(), 4.148463299717215, 1e-6);
    EXPECT_NEAR(magnitude[QStringLiteral("expanded")].toDouble(), 8.29692659943443, 1e-6);
    EXPECT_NEAR(shares[QStringLiteral("direction of P")].toDouble(), 0.6270764510745527, 1e-6);
    EXPECT_NEAR(shares[QStringLiteral("magnitude of P")].toDouble(), 0.3729235489254474, 1e-6);
    EXPECT_EQ(shares.size(), 2);
    EXPECT_NEAR(all[QStringLiteral("direction")].toObject()[QStringLiteral("standard")].toDouble(),
                0.6800763109904305, 1e-6);
    EXPECT_TRUE(all.contains(QStringLiteral("x")) && all.contains(QStringLiteral("y")));
    EXPECT_FALSE(
        solution[QStringLiteral("forces")].toArray().at(0).toObject().contains(QStringLiteral("uncertainty")))
        << "nothing of P is found";
    EXPECT_EQ(whole[QStringLiteral("uncertaintyOf")].toObject()[QStringLiteral("distribution")].toString(),
              QStringLiteral("rectangular"));
}

// 12 down on lines that rise by 1.5 ± 2 degrees: below 0 there is no answer.
TEST(Uncertainty, IsNullInJsonWhereItIsWithheld) {
    const QByteArray flat =
        R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "kN", "angle": "deg"},
            "sum": {"name": "R", "magnitude": 0}, "forces": [
            {"name": "W", "magnitude": 12, "direction": -90},
            {"name": "A", "magnitude": null, "direction": {"value": 1.5, "plusMinus": 2}},
            {"name": "B", "magnitude": null, "direction": {"value": 178.5, "plusMinus": 2}}]})";
    const Ran ran =
        report({QStringLiteral("--as"), QStringLiteral("json"), QStringLiteral("--uncertainty")}, flat);
    const QJsonObject magnitude = QJsonDocument::fromJson(ran.out)
                                      .object()[QStringLiteral("solutions")]
                                      .toArray()
                                      .at(0)
                                      .toObject()[QStringLiteral("forces")]
                                      .toArray()
                                      .at(1)
                                      .toObject()[QStringLiteral("uncertainty")]
                                      .toObject()[QStringLiteral("magnitude")]
                                      .toObject();
    EXPECT_TRUE(magnitude[QStringLiteral("standard")].isNull());
    EXPECT_EQ(magnitude[QStringLiteral("withheld")].toString(), QStringLiteral("partWithout"));
}

TEST(Uncertainty, StandsInPagesAndLatex) {
    for (const char* form : {"html", "latex"}) {
        const Ran ran =
            report({QStringLiteral("--as"), QString::fromLatin1(form), QStringLiteral("--uncertainty")});
        EXPECT_EQ(ran.status, 0);
        EXPECT_TRUE(ran.out.contains("has the standard uncertainty")) << form;
        EXPECT_TRUE(ran.out.contains("makes 63 per cent")) << form;
        EXPECT_TRUE(ran.out.contains("rectangular distribution")) << form;
    }
}

TEST(Uncertainty, WhatMakesNoSenseIsRefused) {
    const auto refused = [](const QStringList& options, const char* part) {
        expectRefused(report(options), {QString::fromLatin1(part)});
    };
    refused({QStringLiteral("--normal"), QStringLiteral("2")}, "--uncertainty");
    refused({QStringLiteral("--uncertainty"), QStringLiteral("--normal"), QStringLiteral("0")}, "'0'");
    refused({QStringLiteral("--uncertainty"), QStringLiteral("--normal"), QStringLiteral("nan")}, "'nan'");
    refused({QStringLiteral("--uncertainty"), QStringLiteral("--normal"), QStringLiteral("two")}, "'two'");
    refused({QStringLiteral("--uncertainty"), QStringLiteral("--as"), QStringLiteral("html"),
             QStringLiteral("--no-solution")},
            "--no-solution");
}

// A root that a sense rules out has its range too. P on the ray at 30, Q of 200 ± 5, R 100 at 30 ± 1: P = 100
// cos d ± sqrt(200² - (100 sin d)²), of which the lesser is -100 at the middle; a dense grid of Q and d, ends
// included.
TEST(ReversedAnswers, HaveRanges) {
    double least = 1e9, greatest = 0;
    for (int q = 0; q <= 200; ++q)
        for (int d = 0; d <= 200; ++d) {
            const double size = 195 + q / 20.0, off = (d / 100.0 - 1) * 3.14159265358979323846 / 180;
            const double back =
                std::sqrt(size * size - std::pow(100 * std::sin(off), 2)) - 100 * std::cos(off);
            least = std::min(least, back);
            greatest = std::max(greatest, back);
        }
    const QByteArray made = sketch(
        R"({"name": "P", "magnitude": null, "direction": 30},
           {"name": "Q", "magnitude": {"value": 200, "plusMinus": 5}, "direction": null})",
        R"(, "sum": {"name": "R", "magnitude": 100, "direction": {"value": 30, "plusMinus": 1}})");
    const QJsonObject whole = reportOf(made, 0);
    const QJsonObject range = whole[QStringLiteral("reversed")]
                                  .toArray()
                                  .at(0)
                                  .toObject()[QStringLiteral("forces")]
                                  .toArray()
                                  .at(0)
                                  .toObject()[QStringLiteral("range")]
                                  .toObject()[QStringLiteral("magnitude")]
                                  .toObject();
    EXPECT_NEAR(range[QStringLiteral("least")].toDouble(), least, 1e-3 * (greatest - least));
    EXPECT_NEAR(range[QStringLiteral("greatest")].toDouble(), greatest, 1e-3 * (greatest - least));
    EXPECT_LE(range[QStringLiteral("least")].toDouble(), least + 1e-9);
    EXPECT_GE(range[QStringLiteral("greatest")].toDouble(), greatest - 1e-9);
    EXPECT_TRUE(report({}, made).out.contains("between"));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
