// SPDX-License-Identifier: MIT
// The published schemas say what is read and written: samples and reports keep them, bad sketches don't.
// The judge is a validator of JSON Schema that knows nothing of ours (Debian's python3-jsonschema).
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QProcess>
#include <QStandardPaths>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

/// Debian's own where there is one: the package is installed for it.
QString python() {
    const QString name = QStringLiteral("python3");
    const QString debians = QStandardPaths::findExecutable(name, {QStringLiteral("/usr/bin")});
    return debians.isEmpty() ? name : debians;
}

class Schemas : public Verbs {
protected:
    /// What breaks the schema, of each text: "$.figures: minimum", path and keyword; empty: it is valid.
    QStringList faults(const char* schema, const QList<QByteArray>& texts) const {
        const QString source = QStringLiteral(TAILPOINT_SOURCE);
        QStringList arguments{source + QStringLiteral("/tests/whole/verbs/validate.py"),
                              source + QStringLiteral("/resources/") + QString::fromLatin1(schema)};
        for (qsizetype i = 0; i < texts.size(); ++i)
            arguments << put(QStringLiteral("%1.json").arg(i), texts[i]);
        QProcess validator;
        validator.start(python(), arguments);
        const bool judged = validator.waitForFinished() && validator.exitStatus() == QProcess::NormalExit &&
                            validator.exitCode() == 0;
        EXPECT_TRUE(judged) << validator.readAllStandardError().toStdString();
        const QString lines = QString::fromUtf8(validator.readAllStandardOutput());
        EXPECT_EQ(lines.count(QLatin1Char('\n')), texts.size());
        return lines.split(QLatin1Char('\n'));
    }
};

TEST_F(Schemas, EverySampleKeepsTheSketchsAndItsReportTheReports) {
    const QDir folder(QStringLiteral(TAILPOINT_SAMPLES));
    const QStringList names = folder.entryList({QStringLiteral("*.json")});
    ASSERT_FALSE(names.isEmpty());
    QList<QByteArray> sketches, reports;
    for (const QString& name : names) {
        sketches << bytesOf(folder.filePath(name));
        reports << run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"),
                        QStringLiteral("json"), QStringLiteral("--uncertainty")},
                       sketches.back())
                       .out;
    }
    const QStringList ofSketches = faults("sketch.schema.json", sketches),
                      ofReports = faults("report.schema.json", reports);
    for (qsizetype i = 0; i < names.size(); ++i) {
        EXPECT_EQ(ofSketches.value(i).toStdString(), "") << names[i].toStdString();
        EXPECT_EQ(ofReports.value(i).toStdString(), "") << names[i].toStdString();
    }
}

/// One sketch a row, and what the schema has against it.
struct Row {
    QByteArray sketch;
    const char* fault;
};

TEST_F(Schemas, RefuseWhatTheProgramRefuses) {
    const Row rows[] = {
        {sketch(force("P", "1", "2")), ""},
        {sketch(force("P", "-1", "2")), "$.forces[0].magnitude: anyOf"},
        {sketch(force("P", "\"1\"", "2")), "$.forces[0].magnitude: anyOf"},
        {sketch(force("P", "1", R"({"slope": [1]})")), "$.forces[0].direction: anyOf"},
        {sketch(force("P", "1", R"({"slope": [1, 2], "bearing": "N30E"})")), "$.forces[0].direction: anyOf"},
        {sketch(force("P", R"({"value": 850, "unit": "kgf"})", "2")), ""},
        {sketch(force("P", R"({"value": 850, "unit": "kg"})", "2")), ""},
        {sketch(force("P", R"({"value": 850, "unit": "stone"})", "2")), "$.forces[0].magnitude: anyOf"},
        {sketch(force("P", "1", R"({"value": 2, "unit": "gon"})")), ""},
        {sketch(force("P", "1", "1e300")), "$.forces[0].direction: anyOf"},
        {sketch(R"({"name": "P", "magnitude": 1, "direction": 2, "sector": 3})"),
         "$.forces[0]: propertyNames"},
        {sketch(force("P", R"({"value": 1, "tolerance": 2})", "2")), "$.forces[0].magnitude: anyOf"},
        {sketch(force("", "1", "2")), "$.forces[0].name: minLength"},
        {sketch(R"({"name": "P", "magnitude": 1})"), "$.forces[0]: required"},
        {sketch("", R"(, "figures": 0)"), "$.figures: minimum"},
        {R"({"format": "tailpoint-sketch", "version": 2})", "$.version: const; $: required"}};
    QList<QByteArray> texts;
    for (const Row& row : rows)
        texts << row.sketch;
    const QStringList found = faults("sketch.schema.json", texts);
    for (qsizetype i = 0; i < texts.size(); ++i) {
        EXPECT_EQ(found.value(i).toStdString(), rows[i].fault) << texts[i].toStdString();
        EXPECT_EQ(run({QStringLiteral("report"), QStringLiteral("-")}, texts[i]).status == 2,
                  *rows[i].fault != '\0')
            << texts[i].toStdString();
    }
}

TEST_F(Schemas, ProblemsKeepTheirs) {
    const QString problems = QStringLiteral("problems");
    const auto made = [&](const QString& families, const QString& out) {
        return run({problems, QStringLiteral("--family"), families, QStringLiteral("--count=12"),
                    QStringLiteral("--as=json"), QStringLiteral("--roster"),
                    put(QStringLiteral("names.txt"), "Ada Byron\nEmmy\n"), QStringLiteral("-o"), path(out)});
    };
    ASSERT_EQ(
        made(QStringLiteral("two-forces,two-answers,bearings,push-or-pull"), QStringLiteral("sheet")).status,
        0);
    const QStringList found = faults(
        "problems.schema.json", {bytesOf(path(QStringLiteral("sheet/sheet.json"))),
                                 run({problems, QStringLiteral("--list"), QStringLiteral("--as=json")}).out});
    EXPECT_EQ(found.value(0).toStdString(), "");
    EXPECT_EQ(found.value(1).toStdString(), "");
    const QString samples = QStringLiteral(TAILPOINT_SAMPLES "/");
    const auto sheetOf = [&](const QStringList& order, const char* out) {
        const QString folder = path(QLatin1String(out));
        EXPECT_EQ(run(QStringList{problems} + order +
                      QStringList{QStringLiteral("--as=json"), QStringLiteral("-o"), folder})
                      .status,
                  0);
        return bytesOf(folder + QStringLiteral("/sheet.json"));
    };
    const QString kinds = QStringLiteral("--family=two-forces,two-answers,two-ropes");
    for (const QString& fault :
         faults("problems.schema.json",
                {sheetOf({kinds, QStringLiteral("--count=6"), QStringLiteral("--faded")}, "faded"),
                 sheetOf({kinds, QStringLiteral("--count=3"), QStringLiteral("--find-slip")}, "slips"),
                 sheetOf({QStringLiteral("--from"), samples + QStringLiteral("survey-raft.json")}, "own")}))
        EXPECT_EQ(fault.toStdString(), "");
    QList<QByteArray> sketches;
    for (const char* name : {"0001", "0002", "0003", "0004"})
        sketches << bytesOf(path(QStringLiteral("sheet/sketches/%1.json").arg(QLatin1String(name))));
    for (const QString& fault : faults("sketch.schema.json", sketches))
        EXPECT_EQ(fault.toStdString(), "");
}

TEST_F(Schemas, MarkingsKeepTheirs) {
    const QString raft = QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json"),
                  two = QStringLiteral(TAILPOINT_SAMPLES "/two-answers.json"),
                  json = QStringLiteral("--as=json"), mark = QStringLiteral("mark");
    const auto answered = [&](const QString& file, const QStringList& answers) {
        QStringList arguments{mark, file, json};
        for (const QString& answer : answers)
            arguments << QStringLiteral("--answer") << answer;
        return run(arguments).out;
    };
    const auto marked = [&](const QString& file, const QByteArray& table) {
        return run({mark, file, json, QStringLiteral("--answers"), QStringLiteral("-")}, table).out;
    };
    const QList<QByteArray> markings{
        answered(raft, {QStringLiteral("R=335")}),
        answered(raft,
                 {QStringLiteral("R=520 lbf"), QStringLiteral("theta_R=3.6"), QStringLiteral("gamma=65")}),
        answered(two, {QStringLiteral("P=180;513"), QStringLiteral("theta_Q=-10.3;-77")}),
        marked(raft, "who,R,theta_R,override\ns1,335,-23.1,\ns2,x,,1: a \"b\"\n\"s\n3\",615,-7.5,2\ns4,,,\n"),
        marked(raft, "who,R\n")};
    const QStringList found = faults("marking.schema.json", markings);
    for (qsizetype i = 0; i < markings.size(); ++i)
        EXPECT_EQ(found.value(i).toStdString(), "") << markings[i].toStdString();
    EXPECT_NE(faults("marking.schema.json", {R"({"format": "tailpoint-marking", "version": 1})"}).value(0),
              QString());
}

TEST_F(Schemas, KnowHowAQuestionIsMarked) {
    const auto with = [](const QByteArray& marking) {
        return sketch(force("P", "1", "2"), ", \"marking\": " + marking);
    };
    const QStringList found = faults(
        "sketch.schema.json",
        {with(
             R"({"points": {"R": 2, "theta_R": 1}, "followThrough": true, "credit": {"unit": 0.5}, "mine": 1})"),
         with("null"), with(R"({"points": {"R": "2"}})"), with(R"({"credit": {"slip": 2}})")});
    EXPECT_EQ(found.value(0).toStdString(), "");
    EXPECT_EQ(found.value(1).toStdString(), "");
    EXPECT_EQ(found.value(2).toStdString(), "$.marking: anyOf");
    EXPECT_EQ(found.value(3).toStdString(), "$.marking: anyOf");
}

TEST_F(Schemas, LeaveRoomForUnknownKeys) {
    const QByteArray forces = R"({"name": "P", "magnitude": 1, "direction": 2, "note": {}})";
    EXPECT_EQ(faults("sketch.schema.json", {sketch(forces, R"(, "mine": 1)")}).value(0).toStdString(), "");
}

TEST_F(Schemas, ASweepKeepsTheSweeps) {
    const QByteArray legs =
        sketch(force("W", "12", "-90") + "," + force("A", "null", "30") + "," + force("B", "null", "115"),
               R"(, "sum": {"magnitude": 0})");
    QList<QByteArray> sweeps;
    for (const char* to : {"90", "400"}) // with a gap and without an end
        sweeps << run({QStringLiteral("sweep"), QStringLiteral("-"), QStringLiteral("--vary"),
                       QStringLiteral("direction of A"), QStringLiteral("--from"), QStringLiteral("0"),
                       QStringLiteral("--to"), QString::fromLatin1(to), QStringLiteral("--as"),
                       QStringLiteral("json")},
                      legs)
                      .out;
    // A sum along its only force: level throughout, so that not all can be ruled out between the steps.
    const QByteArray level =
        sketch(force("Q", "100", "null"), R"(, "sum": {"magnitude": null, "direction": 30})");
    sweeps << run({QStringLiteral("sweep"), QStringLiteral("-"), QStringLiteral("--vary"),
                   QStringLiteral("direction of R"), QStringLiteral("--from"), QStringLiteral("0"),
                   QStringLiteral("--to"), QStringLiteral("90"), QStringLiteral("--as"),
                   QStringLiteral("json")},
                  level)
                  .out;
    EXPECT_TRUE(sweeps.last().contains("\"proofRemark\": \"A turn or a gap narrower than"));
    EXPECT_FALSE(sweeps.first().contains("proofRemark"));
    const QStringList found = faults("sweep.schema.json", sweeps);
    EXPECT_EQ(found.value(0).toStdString(), "");
    EXPECT_EQ(found.value(1).toStdString(), "");
    EXPECT_EQ(found.value(2).toStdString(), "");
    EXPECT_NE(faults("sweep.schema.json", {R"({"format": "tailpoint-sweep", "version": 1})"}).value(0),
              QString());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
