// SPDX-License-Identifier: MIT
// The codes of messages in a report, and that the schemas know all of them and every unit.
#include "ui/files/report.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace tailpoint {
namespace TAILPOINT_FILE {

QJsonObject parsed(const QByteArray& bytes) {
    QJsonParseError error;
    const QJsonObject object = QJsonDocument::fromJson(bytes, &error).object();
    EXPECT_EQ(error.error, QJsonParseError::NoError) << error.errorString().toStdString();
    return object;
}

Force force(const char* name, std::optional<double> magnitude, std::optional<double> direction) {
    Force made;
    made.name = name;
    made.magnitude.value = magnitude;
    if (direction)
        made.direction.form = AngleForm{*direction};
    return made;
}

/// K = 8 along the axis, Q = 6, and the sum at a direction: its line is 8 sin(direction) away from K's tip.
QJsonObject reportOf(double direction) {
    Sketch sketch = emptySketch();
    sketch.forces = {force("K", 8, 0), force("Q", 6, std::nullopt)};
    sketch.sum = force("R", std::nullopt, direction);
    return parsed(reportJson(resultOf(sketch)));
}

TEST(AReport, SaysTheCodeOfItsMessage) {
    const QJsonObject cut = reportOf(35), missed = reportOf(60); // 4.6 and 6.9
    EXPECT_EQ(cut[u"messageCode"].toString().toStdString(), "circleCutsLine");
    EXPECT_EQ(missed[u"messageCode"].toString().toStdString(), "circleMissesLine");
    EXPECT_TRUE(missed[u"remarkCodes"].isArray());
    EXPECT_EQ(missed[u"remarkCodes"].toArray().size(), 0);
    EXPECT_EQ(parsed(reportJson(resultOf(Sketch(emptySketch()))))[u"messageCode"].toString().toStdString(),
              "noForces");
}

TEST(AReport, SaysWhatIsRemarkedByCode) {
    Sketch sketch = emptySketch();
    sketch.forces = {force("P", 340, 25), force("Q", 275, -40)};
    sketch.sum = force("R", 500, 0);
    const QJsonObject report = parsed(reportJson(resultOf(sketch)));
    EXPECT_EQ(report[u"messageCode"].toString().toStdString(), "equationFails");
    EXPECT_EQ(report[u"remarkCodes"].toArray(), QJsonArray{QStringLiteral("freeTwo")});
}

TEST(TheReportsSchema, KnowsEveryCodeAndNoOther) {
    QFile file(QStringLiteral(TAILPOINT_SOURCE "/resources/report.schema.json"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QJsonArray known = parsed(file.readAll())[u"$defs"][u"messageCode"][u"enum"].toArray();
    QJsonArray codes;
    for (std::size_t i = 0; i < kMessageCodes; ++i) {
        const std::string_view name = nameOf(static_cast<MessageCode>(i));
        codes.append(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
    }
    EXPECT_EQ(known, codes);
}

/// Every list of units that has the kilonewton, wherever it stands; without the null of 'the sheet's own'.
void collectUnits(const QJsonValue& value, QList<QJsonArray>& into) {
    for (const QJsonValue& element : value.toArray())
        collectUnits(element, into);
    const QJsonObject object = value.toObject();
    for (auto member = object.begin(); member != object.end(); ++member)
        collectUnits(member.value(), into);
    QJsonArray units = object[u"enum"].toArray();
    if (!units.contains(QStringLiteral("kN")))
        return;
    if (units.last().isNull())
        units.removeLast();
    into << units;
}

template <class Units>
QJsonArray symbolsOf(const Units& units) {
    QJsonArray all;
    for (const auto unit : units)
        all.append(QLatin1String(symbolOf(unit).data(), static_cast<int>(symbolOf(unit).size())));
    return all;
}

TEST(TheSchemas, KnowEveryUnitOfForce) {
    const QJsonArray ofSheets = symbolsOf(kSheetForceUnits);
    QJsonArray besideValues = symbolsOf(kForceUnits);
    for (const QJsonValue& mass : symbolsOf(kMassUnits))
        besideValues.append(mass);
    for (const char* schema : {"sketch", "report"}) {
        QFile file(QStringLiteral(TAILPOINT_SOURCE "/resources/%1.schema.json").arg(QLatin1String(schema)));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        QList<QJsonArray> found;
        collectUnits(parsed(file.readAll()), found);
        EXPECT_TRUE(found.contains(ofSheets)) << schema;
        for (QJsonArray units : found) {
            while (units.size() > besideValues.size() && units.contains(QStringLiteral("deg")))
                units.removeLast(); // of angles
            EXPECT_TRUE(units == ofSheets || units == besideValues) << schema;
        }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
