// SPDX-License-Identifier: MIT
// One tree, four outputs: here text, LaTeX and MathML (the painted form is tested beside the widgets).
#include "core/formula/formula.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint {
namespace TAILPOINT_FILE {

struct Row {
    const char* name;
    Formula tree;
    std::string text, latex, mathml; ///< inside <math>
};

Formula newtons(double value, std::string shown) {
    return number(value, std::move(shown), "N");
}
Formula degrees(double value, std::string shown) {
    return number(value, std::move(shown), "°");
}
Formula p() {
    return magnitudeSymbol("P");
}
Formula q() {
    return magnitudeSymbol("Q");
}
Formula gammaSymbol() {
    return symbol("γ");
}

std::vector<Row> rows() {
    return {
        {"a number with its unit", newtons(340, "340"), "340 N", "340\\,\\mathrm{N}",
         "<mrow><mn>340</mn><mtext>\u00A0N</mtext></mrow>"},
        {"degrees stand close", degrees(-40, "-40.0"), "−40.0°", "-40.0^{\\circ}",
         "<mrow><mo>−</mo><mn>40.0</mn><mtext>°</mtext></mrow>"},
        {"a power of ten", newtons(1.5e8, "1.50e8"), "1.50 × 10⁸ N", "1.50\\times 10^{8}\\,\\mathrm{N}",
         "<mrow><mn>1.50</mn><mo>×</mo><msup><mn>10</mn><mrow><mn>8</mn></mrow></msup><mtext>\u00A0N</"
         "mtext></mrow>"},
        {"a negative power of ten", number(2e-5, "2e-5"), "2 × 10⁻⁵", "2\\times 10^{-5}",
         "<mrow><mn>2</mn><mo>×</mo><msup><mn>10</mn><mrow><mo>−</mo><mn>5</mn></mrow></msup></mrow>"},
        {"half a turn in radians", number(std::numbers::pi, "π", "rad"), "π rad", "\\pi\\,\\mathrm{rad}",
         "<mrow><mn>π</mn><mtext>\u00A0rad</mtext></mrow>"},
        {"a magnitude, light", p(), "P", "P", "<mi>P</mi>"},
        {"a vector, bold", vectorOf("P"), "𝑷", "\\boldsymbol{P}", "<mi>𝑷</mi>"},
        {"a name with a number", magnitudeSymbol("F12"), "F₁₂", "F_{12}",
         "<msub><mi>F</mi><mn>12</mn></msub>"},
        {"a name with a subscript", magnitudeSymbol("T_AB"), "T_AB", "T_{\\mathrm{AB}}",
         "<msub><mi>T</mi><mi>AB</mi></msub>"},
        {"a component", componentSymbol("F1", 'x'), "F_1x", "F_{1x}",
         "<msub><mi>F</mi><mrow><mn>1</mn><mi>x</mi></mrow></msub>"},
        {"a word for a name", magnitudeSymbol("Tow"), "Tow", "\\text{\\itshape Tow}", "<mi>𝑇𝑜𝑤</mi>"},
        {"a bold name beyond the alphabet", vectorOf("Я"), "Я\u20D7",
         "\\boldsymbol{\\text{\\itshape \\texttt{U+042F}}}", "<mi>Я\u20D7</mi>"},
        {"a Greek letter", gammaSymbol(), "γ", "\\gamma", "<mi>γ</mi>"},
        {"a primed letter", symbol("θ′", "P"), "θ′_P", "\\theta'_{P}", "<msub><mi>𝜃′</mi><mi>P</mi></msub>"},
        {"the angle of a vector with a number", symbol("θ", "T1"), "θ_T₁", "\\theta_{T1}",
         "<msub><mi>θ</mi><mrow><mi>T</mi><mn>1</mn></mrow></msub>"},
        {"the angle of a vector with a subscript", symbol("θ", "TA1"), "θ_TA₁",
         "\\theta_{\\text{\\itshape TA}1}", "<msub><mi>θ</mi><mrow><mi>𝑇𝐴</mi><mn>1</mn></mrow></msub>"},
        {"the angle between two vectors", symbol("α", "P,Q"), "α_P,Q", "\\alpha_{P\\text{,}Q}",
         "<msub><mi>α</mi><mrow><mi>P</mi><mtext>,</mtext><mi>Q</mi></mrow></msub>"},
        {"a word below a letter", symbol("F", "max"), "F_max", "F_{\\mathrm{max}}",
         "<msub><mi>F</mi><mi>max</mi></msub>"},
        {"a point's letter below a letter", symbol("T", "A"), "T_A", "T_{\\mathrm{A}}",
         "<msub><mi>T</mi><mtext>A</mtext></msub>"},
        {"a running number below a letter", symbol("F", "i"), "F_i", "F_{i}",
         "<msub><mi>F</mi><mi>i</mi></msub>"},
        {"a sum of vectors", equal(vectorOf("R"), sum(vectorOf("P"), vectorOf("Q"))), "𝑹 = 𝑷 + 𝑸",
         "\\boldsymbol{R} = \\boldsymbol{P} + \\boldsymbol{Q}",
         "<mrow><mi>𝑹</mi><mo>=</mo><mrow><mi>𝑷</mi><mo>+</mo><mi>𝑸</mi></mrow></mrow>"},
        {"a negative number is fenced in a sum", sum(degrees(25, "25.0"), negative(degrees(-40, "-40.0"))),
         "25.0° − (−40.0°)", "25.0^{\\circ} - \\left(-40.0^{\\circ}\\right)",
         "<mrow><mrow><mn>25.0</mn><mtext>°</mtext></mrow><mo>−</mo><mrow><mo "
         "stretchy=\"false\">(</mo><mrow><mo>−</"
         "mo><mn>40.0</mn>"
         "<mtext>°</mtext></mrow><mo stretchy=\"false\">)</mo></mrow></mrow>"},
        {"a product of letters closes up", product(count(2), p(), q(), apply("cos", gammaSymbol())),
         "2PQ cos γ", "2 P Q\\,\\cos \\gamma",
         "<mrow><mrow><mn>2</mn></mrow><mo>\u2062</mo><mi>P</mi><mo>\u2062</mo><mi>Q</mi><mo>\u2062</"
         "mo><mspace width=\"0.17em\"/><mrow><mi>cos"
         "</mi><mo>\u2061</mo><mspace width=\"0.17em\"/><mi>γ</mi></mrow></mrow>"},
        {"numbers with units are fenced", product(count(2), newtons(340, "340"), newtons(275, "275")),
         "2(340 N)(275 N)", "2 \\left(340\\,\\mathrm{N}\\right) \\left(275\\,\\mathrm{N}\\right)",
         "<mrow><mrow><mn>2</mn></mrow><mo>\u2062</mo><mrow><mo "
         "stretchy=\"false\">(</mo><mrow><mn>340</mn><mtext>\u00A0N</"
         "mtext></mrow>"
         "<mo stretchy=\"false\">)</mo></mrow><mo>\u2062</mo><mrow><mo "
         "stretchy=\"false\">(</mo><mrow><mn>275</mn><mtext>\u00A0N</mtext></"
         "mrow><mo stretchy=\"false\">)</mo>"
         "</mrow></mrow>"},
        {"a number times an angle takes a dot", product(count(2), degrees(65, "65.0")), "2·65.0°",
         "2 \\cdot 65.0^{\\circ}",
         "<mrow><mrow><mn>2</mn></mrow><mo>·</mo><mrow><mn>65.0</mn><mtext>°</mtext></mrow></mrow>"},
        {"words for names are kept apart", product(magnitudeSymbol("Tow"), magnitudeSymbol("Line")),
         "Tow·Line", "\\text{\\itshape Tow} \\cdot \\text{\\itshape Line}",
         "<mrow><mi>𝑇𝑜𝑤</mi><mo>·</mo><mi>𝐿𝑖𝑛𝑒</mi></mrow>"},
        {"a fraction", over(apply("sin", gammaSymbol()), q()), "sin γ / Q", "\\frac{\\sin \\gamma}{Q}",
         "<mfrac><mrow><mi>sin</mi><mo>\u2061</mo><mspace "
         "width=\"0.17em\"/><mi>γ</mi></mrow><mi>Q</mi></mfrac>"},
        {"a sum over a product", over(sum(p(), q()), product(count(2), p(), q())), "(P + Q) / (2PQ)",
         "\\frac{P + Q}{2 P Q}",
         "<mfrac><mrow><mi>P</mi><mo>+</mo><mi>Q</mi></mrow><mrow><mrow><mn>2</mn></mrow><mo>\u2062</"
         "mo><mi>P</mi><mo>"
         "\u2062</mo><mi>Q</mi></mrow></mfrac>"},
        {"a product that ends in a function, over", over(product(p(), apply("sin", gammaSymbol())), q()),
         "(P sin γ) / Q", "\\frac{P\\,\\sin \\gamma}{Q}",
         "<mfrac><mrow><mi>P</mi><mo>\u2062</mo><mspace "
         "width=\"0.17em\"/><mrow><mi>sin</mi><mo>\u2061</mo><mspace width=\"0.17em\"/><mi>γ</mi></mrow></"
         "mrow><mi>Q</mi>"
         "</mfrac>"},
        {"a square", power(p(), 2), "P²", "P^{2}", "<msup><mi>P</mi><mrow><mn>2</mn></mrow></msup>"},
        {"a square of a quantity", power(newtons(340, "340"), 2), "(340 N)²",
         "\\left(340\\,\\mathrm{N}\\right)^{2}",
         "<msup><mrow><mo stretchy=\"false\">(</mo><mrow><mn>340</mn><mtext>\u00A0N</mtext></mrow><mo "
         "stretchy=\"false\">)</mo></mrow><mrow><mn>2</"
         "mn></mrow>"
         "</msup>"},
        {"a root", root(sum(power(p(), 2), power(q(), 2))), "√(P² + Q²)", "\\sqrt{P^{2} + Q^{2}}",
         "<msqrt><mrow><msup><mi>P</mi><mrow><mn>2</mn></mrow></msup><mo>+</mo><msup><mi>Q</mi><mrow><mn>2</"
         "mn></mrow>"
         "</msup></mrow></msqrt>"},
        {"a function of a negative angle", apply("cos", degrees(-40, "-40.0")), "cos(−40.0°)",
         "\\cos\\left(-40.0^{\\circ}\\right)",
         "<mrow><mi>cos</mi><mo>\u2061</mo><mrow><mo "
         "stretchy=\"false\">(</mo><mrow><mo>−</mo><mn>40.0</mn><mtext>°</mtext></"
         "mrow><mo stretchy=\"false\">)"
         "</mo></mrow></mrow>"},
        {"an inverse function of a fraction", apply("arcsin", over(p(), q())), "arcsin(P/Q)",
         "\\arcsin\\left(\\frac{P}{Q}\\right)",
         "<mrow><mi>arcsin</mi><mo>\u2061</mo><mrow><mo "
         "stretchy=\"true\">(</mo><mfrac><mi>P</mi><mi>Q</mi></mfrac><mo stretchy=\"true\">)</mo></"
         "mrow>"
         "</mrow>"},
        {"bounds",
         related(absolute(sum(p(), negative(q()))), Relation::lessOrEqual, magnitudeSymbol("R"),
                 Relation::lessOrEqual, sum(p(), q())),
         "|P − Q| ≤ R ≤ P + Q", "\\left|P - Q\\right| \\le R \\le P + Q",
         "<mrow><mrow><mo fence=\"true\" "
         "stretchy=\"true\">|</mo><mrow><mi>P</mi><mo>−</mo><mi>Q</mi></mrow><mo fence="
         "\"true\" "
         "stretchy=\"true\">|</mo></mrow><mo>≤</mo><mi>R</mi><mo>≤</mo><mrow><mi>P</mi><mo>+</mo><mi>Q</mi>"
         "</mrow></mrow>"},
        {"a sum taken away", sum(count(1), negative(sum(p(), q()))), "1 − (P + Q)",
         "1 - \\left(P + Q\\right)",
         "<mrow><mrow><mn>1</mn></mrow><mo>−</mo><mrow><mo "
         "stretchy=\"false\">(</mo><mrow><mi>P</mi><mo>+</mo><mi>Q</mi></"
         "mrow><mo stretchy=\"false\">)</mo>"
         "</mrow></mrow>"},
        {"words", related(p(), Relation::less, inWords("R & Q")), "P < R & Q", "P < \\text{R \\& Q}",
         "<mrow><mi>P</mi><mo>&lt;</mo><mtext>R &amp; Q</mtext></mrow>"},
    };
}

TEST(Formula, ComesOutOfOneTreeAsTextLatexAndMathml) {
    for (const Row& row : rows()) {
        EXPECT_EQ(toText(row.tree), row.text) << row.name;
        EXPECT_EQ(toLatex(row.tree), row.latex) << row.name;
        EXPECT_EQ(toMathml(row.tree), "<math>" + row.mathml + "</math>") << row.name;
    }
}

TEST(Formula, SetsWordsBehindANumberWithTheirSpaces) {
    const Formula row =
        rowOf({number(519.86, "519.86", "N"), inWords(", to three figures "), number(520, "520", "N")});
    EXPECT_EQ(toText(row), "519.86 N, to three figures 520 N");
    EXPECT_EQ(toLatex(row), "519.86\\,\\mathrm{N}\\text{, to three figures }520\\,\\mathrm{N}");
    EXPECT_NE(toMathml(row).find("<mtext>, to three figures\u00A0</mtext>"), std::string::npos)
        << toMathml(row);
    EXPECT_FALSE(evaluate(row, AngleUnit::deg));
}

/// TeX: what begins with a sign is unary within braces of its own (from memory).
TEST(Formula, AMinusBehindWordsBelongsToItsNumber) {
    EXPECT_EQ(toLatex(rowOf({degrees(-3.648, "-3.648"), inWords(", between "), degrees(-4.9, "-4.9")})),
              "{-3.648^{\\circ}}\\text{, between }{-4.9^{\\circ}}");
}

TEST(Formula, ShowsAnAsciiMinusInReports) {
    const Formula f = sum(degrees(25, "25.0"), negative(degrees(-40, "-40.0")));
    EXPECT_EQ(toText(f, Minus::ascii), "25.0° - (-40.0°)");
    EXPECT_EQ(toText(inWords("opposite to −x"), Minus::ascii), "opposite to -x");
}

TEST(Formula, EscapesWhatATypesetterWouldTakeForACommand) {
    EXPECT_EQ(latexEscaped("50% of A_1 & B#2 {~^\\$}"),
              "50\\% of A\\_1 \\& B\\#2 \\{\\textasciitilde{}\\textasciicircum{}\\textbackslash{}\\$\\}");
    EXPECT_EQ(latexEscaped("α − 40° ≤"),
              "\\ensuremath{\\alpha} \\ensuremath{-} 40\\ensuremath{^{\\circ}} \\texttt{U+2264}");
    EXPECT_EQ(latexEscaped("Ölfaß"), "Ölfaß");
    EXPECT_EQ(xmlEscaped("<a href=\"x\">&"), "&lt;a href=&quot;x&quot;&gt;&amp;");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
