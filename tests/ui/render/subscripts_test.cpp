// SPDX-License-Identifier: MIT
// What of a subscript is italic is decided in one place (slantOf(), Things), and every output follows it: the
// sheet, the panel, the painted formula, LaTeX, MathML, SVG and TikZ.
#include "core/figure/words.h"
#include "tests/ui/render/render_support.h"
#include "ui/render/formula.h"
#include "ui/render/tikz.h"
#include "ui/style/symbols.h"

#include <QRegularExpression>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// Of a symbol by hand: the base, then upright parts of the subscript in (), italic ones in <>.
struct Row {
    QuantityId quantity;
    const char* expected;
};
constexpr VectorId kMax = forceVector(0), kA = forceVector(1), kNumber = forceVector(2),
                   kRunning = forceVector(3);

/// Source: ISO 80000-2:2019, from memory: a subscript that stands for a quantity, an axis or a running number
/// is italic, any other upright.
const Row kRows[] = {{magnitudeId(kMax), "T(max)"},     {magnitudeId(kA), "T(A)"},
                     {magnitudeId(kNumber), "F(1)"},    {magnitudeId(kRunning), "F<i>"},
                     {{What::x, kSumVector}, "R<x>"},   {{What::y, kNumber}, "F(1)<y>"},
                     {{What::x, kMax}, "T(max)<x>"},    {directionId(kSumVector), "θ<R>"},
                     {directionId(kNumber), "θ<F>(1)"}, {directionId(kMax), "θ<T>(max)"},
                     {directionId(kA), "θ<T>(A)"},      {{What::between, kA, kNumber}, "φ<T>(A,)<F>(1)"}};

Sketch fourForces() {
    return sketch(
        {force("T_max", 300, 20), force("T_A", 250, 110), force("F1", 200, 215), force("F_i", 150, -60)});
}

void append(std::string& out, const std::string& text, bool italic) {
    const char open = italic ? '<' : '(', close = italic ? '>' : ')';
    if (!out.empty() && out.back() == close && out.rfind(open) != std::string::npos) {
        out.pop_back(); // goes on in the same style
        out += text + close;
    } else
        out += open + text + close;
}

std::string ofRuns(const Runs& runs) {
    std::string out = runs.front().text;
    EXPECT_TRUE(runs.front().italic && runs.front().script == Script::normal);
    for (std::size_t i = 1; i < runs.size(); ++i) {
        EXPECT_EQ(runs[i].script, Script::sub);
        append(out, runs[i].text, runs[i].italic);
    }
    return out;
}

/// "<i>T</i><sub>max<i>x</i></sub>".
std::string ofPanel(const QString& html) {
    static const QRegularExpression part(QStringLiteral("<i>([^<]*)</i>|([^<>]+)"));
    std::string out = html.section(QStringLiteral("</i>"), 0, 0).remove(QStringLiteral("<i>")).toStdString();
    const QString below = html.section(QStringLiteral("<sub>"), 1).section(QStringLiteral("</sub>"), 0, 0);
    for (auto parts = part.globalMatch(below); parts.hasNext();) {
        const auto match = parts.next();
        const bool italic = !match.captured(1).isEmpty();
        append(out, match.captured(italic ? 1 : 2).toStdString(), italic);
    }
    return out;
}

std::string ofSetting(const Setting& setting) {
    std::string out = setting.texts.front().text.toStdString();
    for (std::size_t i = 1; i < setting.texts.size(); ++i)
        append(out, setting.texts[i].text.toStdString(), setting.texts[i].font->italic());
    return out;
}

/// "F_{1\mathrm{max}x}": digits and what is \mathrm or \text are upright, other letters italic.
std::string ofLatex(const std::string& latex) {
    QString rest = QString::fromStdString(latex);
    const auto begin = rest.indexOf(QLatin1String("_{"));
    std::string out = rest.left(begin)
                          .replace(QLatin1String("\\theta"), QString::fromUtf8("θ"))
                          .replace(QLatin1String("\\varphi"), QString::fromUtf8("φ"))
                          .toStdString();
    rest = rest.mid(begin + 2).chopped(1);
    static const QRegularExpression part(
        QStringLiteral("\\\\(?:mathrm|text)\\{([^}]*)\\}|([0-9]+)|([A-Za-z])"));
    for (auto parts = part.globalMatch(rest); parts.hasNext();) {
        const auto match = parts.next();
        const QString upright = match.captured(1) + match.captured(2);
        append(out, (upright.isEmpty() ? match.captured(3) : upright).toStdString(), upright.isEmpty());
    }
    return out;
}

/// An identifier of a single letter is italic by itself (MathML Core), one of several upright.
std::string ofMathml(const std::string& mathml) {
    std::string out;
    for (const Element& element : elementsOf(QByteArray::fromStdString(mathml)))
        if (out.empty() && element.name == QLatin1String("mi"))
            out = element.text.toStdString();
        else if (element.name == QLatin1String("mi") || element.name == QLatin1String("mn") ||
                 element.name == QLatin1String("mtext"))
            append(out, element.text.toStdString(),
                   element.name == QLatin1String("mi") && element.text.size() == 1);
    return out;
}

DisplayList listWith(const Runs& runs) {
    DisplayList list;
    list.width = list.height = 100;
    Text text;
    text.runs = runs;
    text.size = 10;
    text.baseline = {20, 50};
    text.box = {20, 40, 40, 15};
    Group group;
    group.role = Role::label;
    group.id = "label";
    group.items.emplace_back(text);
    list.groups.push_back(group);
    return list;
}

std::string ofSvg(const QByteArray& svg) {
    std::string out;
    for (const Element& element : elementsOf(svg))
        if (element.name == QLatin1String("tspan")) {
            const bool italic =
                element.attributes.value(QLatin1String("font-style")) == QLatin1String("italic");
            if (out.empty())
                out = element.text.toStdString();
            else
                append(out, element.text.toStdString(), italic);
        }
    return out;
}

std::string ofTikz(const QString& tikz) {
    static const QRegularExpression part(QStringLiteral("\\$_\\{\\\\text\\{(\\\\textit\\{)?([^}]*)\\}"));
    std::string out;
    for (auto parts = part.globalMatch(tikz); parts.hasNext();) {
        const auto match = parts.next();
        append(out, match.captured(2).toStdString(), !match.captured(1).isEmpty());
    }
    return out;
}

TEST(Subscripts, AreItalicWhereTheyStandForAQuantityAnAxisOrARunningNumberInEveryOutput) {
    const Things things(fourForces());
    for (const Row& row : kRows) {
        const Symbol symbol = things.symbol(row.quantity);
        const Formula formula = things.formula(row.quantity);
        const Runs runs = symbolRuns(symbol);
        EXPECT_EQ(ofRuns(runs), row.expected) << "sheet";
        EXPECT_EQ(ofPanel(symbolInSerif(symbol)), row.expected) << "panel";
        EXPECT_EQ(ofSetting(setFormula(formula, {})), row.expected) << "painted formula";
        EXPECT_EQ(ofLatex(toLatex(formula)), row.expected) << toLatex(formula);
        EXPECT_EQ(ofMathml(toMathml(formula)), row.expected) << toMathml(formula);
        EXPECT_EQ(ofSvg(toSvg(listWith(runs), themeOf(ThemeName::paper), {})), row.expected) << "SVG";
        const std::string expected(row.expected);
        EXPECT_EQ(ofTikz(QString::fromUtf8(toTikz(listWith(runs), themeOf(ThemeName::paper)))),
                  expected.substr(expected.find_first_of("(<")))
            << "TikZ";
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
