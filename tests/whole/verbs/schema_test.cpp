// The published schemas say what is read and written: samples and reports keep them, bad sketches don't.
#include "tests/whole/verbs/driver.h"
#include "tests/whole/verbs/schema.h"

#include <QDir>
#include <QJsonDocument>

namespace tailpoint::whole {
namespace {

QJsonObject parsed(const QByteArray& bytes) {
    QJsonParseError error;
    const QJsonObject object = QJsonDocument::fromJson(bytes, &error).object();
    EXPECT_EQ(error.error, QJsonParseError::NoError) << error.errorString().toStdString();
    return object;
}
Schema schema(const char* name) {
    return Schema(
        parsed(bytesOf(QStringLiteral(TAILPOINT_SOURCE "/resources/") + QString::fromLatin1(name))));
}
std::string faultIn(const Schema& schema, const QByteArray& text) {
    return schema.fault(parsed(text)).toStdString();
}

TEST(Schemas, EverySampleKeepsTheSketchsAndItsReportTheReports) {
    const Schema sketches = schema("sketch.schema.json"), reports = schema("report.schema.json");
    const QDir folder(QStringLiteral(TAILPOINT_SAMPLES));
    const QStringList names = folder.entryList({QStringLiteral("*.json")});
    ASSERT_FALSE(names.isEmpty());
    for (const QString& name : names) {
        const QByteArray text = bytesOf(folder.filePath(name));
        EXPECT_EQ(faultIn(sketches, text), "") << name.toStdString();
        const Ran ran = run(
            {QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"), QStringLiteral("json")},
            text);
        EXPECT_EQ(faultIn(reports, ran.out), "") << name.toStdString();
    }
}

TEST(Schemas, RefuseWhatTheProgramRefuses) {
    const Schema sketches = schema("sketch.schema.json");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", "1", "2"))), "");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", "-1", "2"))), "$.forces[0].magnitude: anyOf");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", "\"1\"", "2"))), "$.forces[0].magnitude: anyOf");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", "1", R"({"slope": [1]})"))),
              "$.forces[0].direction: anyOf");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", "1", R"({"slope": [1, 2], "bearing": "N30E"})"))),
              "$.forces[0].direction: anyOf");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", R"({"value": 850, "unit": "kgf"})", "2"))), "");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", R"({"value": 850, "unit": "kg"})", "2"))),
              "$.forces[0].magnitude: anyOf");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", "1", R"({"value": 2, "unit": "gon"})"))), "");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", "1", "1e300"))), "$.forces[0].direction: anyOf");
    EXPECT_EQ(faultIn(sketches, sketch(R"({"name": "P", "magnitude": 1, "direction": 2, "limit": 3})")),
              "$.forces[0]: key limit");
    EXPECT_EQ(faultIn(sketches, sketch(force("P", R"({"value": 1, "tolerance": 2})", "2"))),
              "$.forces[0].magnitude: anyOf");
    EXPECT_EQ(faultIn(sketches, sketch(force("", "1", "2"))), "$.forces[0].name: limits");
    EXPECT_EQ(faultIn(sketches, sketch(R"({"name": "P", "magnitude": 1})")),
              "$.forces[0]: required direction");
    EXPECT_EQ(faultIn(sketches, sketch("", R"(, "figures": 0)")), "$.figures: limits");
    EXPECT_EQ(faultIn(sketches, R"({"format": "tailpoint-sketch", "version": 2})"), "$: required units");
}

TEST(Schemas, LeaveRoomForUnknownKeys) {
    const QByteArray forces = R"({"name": "P", "magnitude": 1, "direction": 2, "note": {}})";
    EXPECT_EQ(faultIn(schema("sketch.schema.json"), sketch(forces, R"(, "mine": 1)")), "");
}

} // namespace
} // namespace tailpoint::whole
