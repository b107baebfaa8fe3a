// SPDX-License-Identifier: MIT
// `sweep`: its three outputs, and one line for what is wrong. Numbers: 12 sin 25 = 5.07141914088839 and
// 6 / sin 65 = 6.62026751377495, by mpmath.
#include "tests/whole/verbs/driver.h"

#include <QJsonDocument>
#include <QXmlStreamReader>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kLegs =
    sketch(force("W", "12", "-90") + "," + force("A", "null", "30") + "," + force("B", "null", "115"),
           R"(, "sum": {"magnitude": 0})");

class SweepVerb : public Verbs {
protected:
    Ran swept(const QStringList& more, const QByteArray& sketch = kLegs) const {
        return run(QStringList{QStringLiteral("sweep"), QStringLiteral("-")} + more, sketch);
    }
    static QStringList words(const char* line) { return QString::fromLatin1(line).split(QLatin1Char('|')); }
};

TEST_F(SweepVerb, WritesARowAStepWithUnitsInTheHeads) {
    const Ran ran = swept(words("--vary|direction of A|--from|0|--to|90|--steps|3"));
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.err, "");
    const QList<QByteArray> lines = ran.out.split('\n');
    ASSERT_EQ(lines.size(), 6); // heads, four rows, nothing
    EXPECT_EQ(lines[0], "direction of A (deg),A (N),B (N),larger of A and B (N)");
    EXPECT_TRUE(lines[2].startsWith("30,5.0907911381")) << lines[2].toStdString(); // 12 sin 25 / sin 85
    EXPECT_EQ(lines[4], "90,12,0,12");
}

TEST_F(SweepVerb, LeavesACellEmptyWhereThereIsNoAnswer) {
    const Ran ran = swept(words("--vary|theta_A|--from|0|--to|200|--steps|1"));
    EXPECT_EQ(ran.status, 0);
    EXPECT_TRUE(ran.out.endsWith("\n200,,,\n")) << ran.out.toStdString();
}

TEST_F(SweepVerb, TellsScriptsLeastAndGreatest) {
    const Ran ran = swept(words("--vary|direction of A|--from|0|--to|90|--steps|2|--as|json"));
    const QJsonObject all = QJsonDocument::fromJson(ran.out).object();
    EXPECT_EQ(all[QStringLiteral("format")].toString().toStdString(), "tailpoint-sweep");
    const QJsonArray curves = all[QStringLiteral("curves")].toArray();
    ASSERT_EQ(curves.size(), 3);
    const QJsonObject least = curves[0][QStringLiteral("least")].toObject(),
                      larger = curves[2][QStringLiteral("least")].toObject();
    EXPECT_NEAR(least[QStringLiteral("at")].toDouble(), 25, 1e-7);
    EXPECT_NEAR(least[QStringLiteral("value")].toDouble(), 5.07141914088839, 1e-13);
    EXPECT_NEAR(larger[QStringLiteral("at")].toDouble(), 65, 1e-7);
    EXPECT_NEAR(larger[QStringLiteral("value")].toDouble(), 6.62026751377495, 1e-13);
    EXPECT_EQ(curves[0][QStringLiteral("values")].toArray().size(), 3);
}

TEST_F(SweepVerb, DrawsThePlotWithItsExtremesInWords) {
    const QString out = path(QStringLiteral("plot.svg"));
    const Ran ran = swept(words("--vary|direction of A|--from|0|--to|90|--as|svg|-o") + QStringList{out});
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.out, "");
    const QByteArray svg = bytesOf(out);
    QXmlStreamReader xml(svg);
    while (!xml.atEnd())
        xml.readNext();
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    EXPECT_TRUE(svg.contains("A least 5.0714 N at 25.0°"));
    EXPECT_TRUE(svg.contains("stroke-dasharray"));
}

TEST_F(SweepVerb, SaysItInWordsToo) {
    const Ran ran = swept(words("--vary|direction of A|--from|0|--to|360|--as|text"));
    EXPECT_TRUE(ran.out.contains("\nNo answer from 90.0° to 295.0°.\n")) << ran.out.toStdString();
}

TEST_F(SweepVerb, ExitsOneWhereThereIsNoAnswerAtAll) {
    EXPECT_EQ(swept(words("--vary|direction of A|--from|100|--to|200")).status, 1);
}

TEST_F(SweepVerb, SaysInOneLineWhatIsWrong) {
    const auto refused = [&](const char* given, const QStringList& parts) {
        SCOPED_TRACE(given);
        expectRefused(swept(words(given)), parts);
    };
    refused("--from|0|--to|1", words("--vary|\"direction of A\""));
    refused("--vary|magnitude of A|--from|0|--to|1", words("magnitude of A|no given value"));
    refused("--vary|direction of A|--from|0", words("--to"));
    refused("--vary|direction of A|--from|0|--to|N30E", words("--to N30E|angle"));
    refused("--vary|direction of A|--from|2|--to|2", words("same value"));
    refused("--vary|magnitude of W|--from|-1|--to|2", words("--from -1|negative"));
    refused("--vary|magnitude of W|--from|1|--to|2|--steps|0", words("--steps 0|100000"));
    refused("--vary|magnitude of W|--from|1|--to|2|--as|png", words("--as"));
}

TEST_F(SweepVerb, NeverWritesOverItsSketch) {
    const QString file = put(QStringLiteral("legs.json"), kLegs);
    expectRefused(run({QStringLiteral("sweep"), file, QStringLiteral("--vary"),
                       QStringLiteral("direction of A"), QStringLiteral("--from"), QStringLiteral("0"),
                       QStringLiteral("--to"), QStringLiteral("1"), QStringLiteral("-o"), file}),
                  {QStringLiteral("is the sketch itself")});
    EXPECT_EQ(bytesOf(file), kLegs);
}

/// The curves have the middle values, and a lift its caution: in every form, in a table without breaking it.
TEST_F(SweepVerb, SaysWhatIsToBeMinded) {
    QByteArray lift = kLegs;
    lift.replace(R"("magnitude": 12)", R"("magnitude": {"value": 12, "plusMinus": 1})");
    ASSERT_NE(lift, kLegs);
    lift.replace(R"(, "sum")", R"(, "title": "Bridle", "sum")");
    const QStringList vary = words("--vary|direction of A|--from|0|--to|90|--steps|3");
    const QList<QByteArray> rows = swept(vary, lift).out.split('\n');
    EXPECT_TRUE(rows[0].endsWith(",remark"));
    EXPECT_TRUE(rows[2].startsWith("30,5.0907911381") && rows[2].endsWith(","));
    for (const char* form : {"csv", "text", "json", "svg"}) {
        const QString out =
            QString::fromUtf8(swept(vary + words("--as") + words(form), lift).out).simplified();
        EXPECT_TRUE(out.contains(QStringLiteral("not a design"))) << form;
        EXPECT_TRUE(out.contains(QStringLiteral("middle values"))) << form;
    }
}
} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
