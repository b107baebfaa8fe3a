// SPDX-License-Identifier: MIT
#include "tests/support/cases.h"
#include "tests/ui/render/render_support.h"
#include "ui/files/sketch_json.h"
#include "ui/files/svg_read.h"

#include <QRegularExpression>
#include <QSet>
#include <QSvgRenderer>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

QByteArray svgOf(const Sketch& sketch, const FigureOptions& options = {}) {
    return toSvg(listOf(sketch, options), themeOf(ThemeName::paper), writeSketch(sketch));
}

const Element* elementWithId(const std::vector<Element>& elements, const char* id) {
    for (const Element& element : elements)
        if (element.id == QLatin1String(id))
            return &element;
    return nullptr;
}

QStringList textsOfClass(const std::vector<Element>& elements, const char* className) {
    QStringList out;
    for (const Element& element : elements)
        if (element.name == QLatin1String("text") && element.className == QLatin1String(className))
            out.append(element.text);
    return out;
}

TEST(Svg, IsSizedInPointsAndNamesItself) {
    const auto elements = elementsOf(svgOf(raft()));
    const auto& root = elements.at(0).attributes;
    EXPECT_EQ(root.value(QLatin1String("viewBox")), QLatin1String("0 0 720 480"));
    EXPECT_EQ(root.value(QLatin1String("width")), QLatin1String("720pt"));
    EXPECT_EQ(root.value(QLatin1String("role")), QLatin1String("img"));
    EXPECT_EQ(root.value(QLatin1String("aria-labelledby")), QLatin1String("title desc"));
    ASSERT_TRUE(elementWithId(elements, "title") && elementWithId(elements, "desc"));
    EXPECT_EQ(elementWithId(elements, "title")->text, QStringLiteral("Survey raft on two lines"));
    EXPECT_TRUE(elementWithId(elements, "desc")->text.contains(QStringLiteral("Resultant R, 520 N")));
}

TEST(Svg, EveryDrawnElementCarriesTheClassOfItsRole) {
    static const QSet<QString> roles{
        QStringLiteral("sheet"),  QStringLiteral("grid"),      QStringLiteral("axis"),
        QStringLiteral("given"),  QStringLiteral("sum"),       QStringLiteral("construction"),
        QStringLiteral("arc"),    QStringLiteral("locus"),     QStringLiteral("label"),
        QStringLiteral("leader"), QStringLiteral("halo"),      QStringLiteral("titleblock"),
        QStringLiteral("point"),  QStringLiteral("highlight"), QStringLiteral("region")};
    static const QSet<QString> undrawn{QStringLiteral("svg"), QStringLiteral("title"), QStringLiteral("desc"),
                                       QStringLiteral("metadata")};
    const Sketch two = sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
    for (const Sketch& given : {raft(), two})
        for (const Element& element : elementsOf(svgOf(given)))
            if (!undrawn.contains(element.name)) {
                EXPECT_TRUE(roles.contains(element.className)) << element.name.toStdString();
            }
}

TEST(Svg, UsesPresentationAttributesOnly) {
    const QByteArray svg = svgOf(raft());
    for (const char* forbidden : {"<style", " style=", "url(", "<script", "<marker", "<use", "href"})
        EXPECT_FALSE(svg.contains(forbidden)) << forbidden;
}

TEST(Svg, WritesOneTextForEachLabel) {
    const auto elements = elementsOf(svgOf(raft()));
    EXPECT_EQ(textsOfClass(elements, "label").count(QStringLiteral("P = 340 N")), 1);
    EXPECT_EQ(textsOfClass(elements, "label").count(QStringLiteral("115.0°")), 2);
    EXPECT_EQ(textsOfClass(elements, "titleblock"),
              (QStringList{QStringLiteral("Survey raft on two lines"), QStringLiteral("1 division = 50 N"),
                           QStringLiteral("from +x, ccw"), QStringLiteral("3 figures")}));
}

TEST(Svg, PutsAHaloRectangleBehindEveryLabelOfTheFigure) {
    const auto elements = elementsOf(svgOf(raft()));
    qsizetype halos = 0;
    for (const Element& element : elements)
        if (element.className == QLatin1String("halo")) {
            EXPECT_EQ(element.name, QStringLiteral("rect"));
            ++halos;
        }
    EXPECT_EQ(halos, textsOfClass(elements, "label").size());
}

TEST(Svg, GroupsEachForceUnderATitleInWords) {
    const auto elements = elementsOf(svgOf(raft()));
    const Element* group = elementWithId(elements, "force-P");
    ASSERT_TRUE(group);
    EXPECT_EQ(group->name, QStringLiteral("g"));
    EXPECT_EQ(group->className, QStringLiteral("given"));
    EXPECT_TRUE(group->text.contains(QStringLiteral("Force P, 340 N at 25.0° counter-clockwise from +x")));
}

TEST(Svg, SetsSubscriptsAsSmallerLoweredSpans) {
    const auto elements = elementsOf(svgOf(sketch({force("F12", 340, 25), force("Q", 275, -40)})));
    bool found = false;
    for (const Element& element : elements)
        if (element.name == QLatin1String("tspan") && element.text == QLatin1String("12")) {
            EXPECT_GT(element.attributes.value(QLatin1String("dy")).toDouble(), 0);
            EXPECT_LT(element.attributes.value(QLatin1String("font-size")).toDouble(), 14);
            found = true;
        }
    EXPECT_TRUE(found);
    EXPECT_TRUE(textsOfClass(elements, "label").contains(QStringLiteral("F12 = 340 N")));
}

TEST(Svg, EscapesWhateverTheForcesAndTheTitleAreCalled) {
    Sketch given = sketch({force("<&>\"'", 340, 25), force("Ж]]>", 275, -40), force("ﬀ𝐅", 100, 90)});
    given.title = "A & B <\"ring\"> ]]> at Ærø";
    const QByteArray svg = svgOf(given);
    const auto elements = elementsOf(svg);
    EXPECT_EQ(elementWithId(elements, "title")->text.toStdString(), given.title);
    EXPECT_TRUE(textsOfClass(elements, "label").contains(QStringLiteral("<&>\"' = 340 N")));
    const auto back = readSketch(sketchJsonFromSvg(svg));
    ASSERT_TRUE(std::holds_alternative<Sketch>(back)) << std::get<FileError>(back).line().toStdString();
    EXPECT_EQ(std::get<Sketch>(back), given);
}

TEST(Svg, LeavesOutWhatXmlCannotHold) {
    Sketch given = raft();
    given.title = "bell \x07 and \xEF\xBF\xBF";
    const auto elements = elementsOf(svgOf(given));
    EXPECT_EQ(elementWithId(elements, "title")->text, QStringLiteral("bell \uFFFD and \uFFFD"));
}

TEST(Svg, WritesNumbersShortlyWithoutExponentsOrNegativeZeros) {
    static const QRegularExpression bad(
        QStringLiteral("[\\s\",MLA][-+]?[0-9.]+e[-+]?[0-9]|[\\s\",]-0[\\s\",]|\\.[0-9]{5,}|nan|inf"));
    const Sketch far = sketch({force("P", 1e150, 25), force("Q", 1, 180), force("S", 1e-150, 90)});
    for (const Sketch& given : {raft(), far}) {
        const QByteArray svg = toSvg(listOf(given), themeOf(ThemeName::paper), {});
        for (const Element& element : elementsOf(svg))
            for (const char* name :
                 {"x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "d", "points", "width"}) {
                const QString value = QLatin1Char(' ') +
                                      element.attributes.value(QLatin1String(name)).toString() +
                                      QLatin1Char(' ');
                EXPECT_FALSE(bad.match(value).hasMatch()) << name << "=" << value.toStdString();
            }
    }
}

TEST(Svg, CarriesTheVerySketchThroughFiveHundredRoundTrips) {
    constexpr std::uint64_t seed = 3;
    Dice dice(seed);
    for (int i = 0; i < 500; ++i) {
        std::vector<Force> forces;
        const auto count = dice.whole(5);
        for (std::uint64_t f = 0; f < count; ++f)
            forces.push_back(force(QStringLiteral("Ä%1<&").arg(f).toStdString(),
                                   anyMagnitude(dice, kindOf(dice.whole(7))),
                                   dice.whole(4) == 0 ? std::optional<double>() : anyDegrees(dice)));
        Sketch given = anyReference(dice, sketch(std::move(forces)));
        given.title = i % 2 == 0 ? "]]> & <b>" : "";
        const QByteArray json = writeSketch(given);
        const QByteArray svg = toSvg(listOf(given), themeOf(ThemeName::slate), json);
        const auto back = readSketch(sketchJsonFromSvg(svg));
        ASSERT_TRUE(std::holds_alternative<Sketch>(back)) << "seed " << seed << " case " << i;
        ASSERT_EQ(std::get<Sketch>(back), given) << "seed " << seed << " case " << i;
    }
}

TEST(Svg, FindsTheSketchAlsoAfterAnEditorHasWrappedTheMetadata) {
    const QByteArray json = writeSketch(raft());
    const QByteArray svg =
        "<?xml version=\"1.0\"?><s:svg xmlns:s=\"http://www.w3.org/2000/svg\" xmlns:r=\"urn:r\">"
        "<s:metadata><r:RDF><r:Work>a drawing</r:Work></r:RDF>" +
        QString::fromUtf8(json).toHtmlEscaped().toUtf8() + "</s:metadata></s:svg>";
    const auto back = readSketch(sketchJsonFromSvg(svg));
    ASSERT_TRUE(std::holds_alternative<Sketch>(back));
    EXPECT_EQ(std::get<Sketch>(back), raft());
}

TEST(Svg, FindsTheSketchBesideMetadataOfOthers) {
    const QByteArray json = QString::fromUtf8(writeSketch(raft())).toHtmlEscaped().toUtf8();
    const QByteArray own = "<metadata>" + json + "</metadata>";
    const QByteArray shapes[] = {
        "<metadata>{a palette}</metadata>" + own, own + "<metadata>{a palette}</metadata>",
        "<metadata><p>{before}</p>" + json + "<p>{behind}</p></metadata>",
        "<metadata><kept>" + json + "</kept></metadata>", "<u:g><u:metadata>" + json + "</u:metadata></u:g>"};
    for (const QByteArray& shape : shapes) {
        const auto back = readSketch(sketchJsonFromSvg("<svg>" + shape + "</svg>"));
        ASSERT_TRUE(std::holds_alternative<Sketch>(back)) << shape.toStdString();
        EXPECT_EQ(std::get<Sketch>(back), raft());
    }
}

TEST(Svg, MarkupMadeToExhaustIsNoSketchAndCostsNothing) {
    const auto many = [](const QByteArray& part) { return part.repeated(200'000); };
    QByteArray attributes;
    for (int i = 0; i < 300'000; ++i)
        attributes += " a" + QByteArray::number(i) + "=\"1\"";
    const QByteArray own = "<metadata>" + writeSketch(raft()) + "</metadata>";
    const QByteArray bombs[] = {"<svg>" + many("<g>") + own,
                                "<svg><metadata>" + many("<g>"),
                                "<svg" + attributes + ">" + own + "</svg>",
                                "<!DOCTYPE svg [<!-- ' --> ]><svg" + attributes + ">" + own + "</svg>",
                                "<svg>" + many("<metadata>") + "</svg>",
                                "<!DOCTYPE svg [<!ENTITY a \"" + QByteArray(4000, 'a') + "\"><!ENTITY b \"" +
                                    QByteArray("&a;").repeated(1000) + "\">]><svg><metadata>{" +
                                    QByteArray("&b;").repeated(1000) + "}</metadata></svg>"};
    for (const QByteArray& bomb : bombs)
        EXPECT_TRUE(sketchJsonFromSvg(bomb).isEmpty()) << bomb.left(40).toStdString();
}

TEST(Svg, WithoutMetadataOrWithoutXmlHasNoSketch) {
    EXPECT_TRUE(sketchJsonFromSvg(toSvg(listOf(raft()), themeOf(ThemeName::paper), {})).isEmpty());
    EXPECT_TRUE(sketchJsonFromSvg("<svg><metadata>words</metadata></svg>").isEmpty());
    EXPECT_TRUE(sketchJsonFromSvg("{\"no\": \"xml\"}").isEmpty());
    EXPECT_TRUE(sketchJsonFromSvg("").isEmpty());
    EXPECT_TRUE(sketchJsonFromSvg("<svg><metadata>{ \"cut\": 1").isEmpty());
}

TEST(Svg, LooksLikeTheImageInQtsOwnRenderer) {
    const DisplayList list = listOf(raft());
    const Theme& theme = themeOf(ThemeName::paper);
    QSvgRenderer renderer(toSvg(list, theme, {}));
    ASSERT_TRUE(renderer.isValid());
    QImage image(720, 480, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    renderer.render(&painter, QRectF(0, 0, 720, 480));
    painter.end();
    const QImage own = toImage(list, theme, 1);
    double difference = 0;
    for (int y = 0; y < 480; ++y)
        for (int x = 0; x < 720; ++x)
            difference += std::abs(qGray(image.pixel(x, y)) - qGray(own.pixel(x, y)));
    // Text alone differs: another layout, the same place. A missing stroke would cost more.
    EXPECT_LT(difference / (720 * 480), 1.2);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
