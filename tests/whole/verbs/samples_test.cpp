// SPDX-License-Identifier: MIT
// Every sample opens, reports and draws, with the status that it was made for.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QFile>
#include <map>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

/// Status and exit status that each sample is there to show.
struct Expected {
    const char* status;
    int exit;
};
const std::map<std::string, Expected> kExpected{
    {"all-given.json", {"overdetermined", 1}},
    {"bridle.json", {"unique", 0}},
    {"either-sense.json", {"two", 0}},
    {"endless-directions.json", {"endless", 1}},
    {"five-forces.json", {"unique", 0}},
    {"kip-bearings.json", {"unique", 0}},
    {"least-guy.json", {"unique", 0}},
    {"line-that-holds.json", {"unique", 0}},
    {"lines-that-never-meet.json", {"none", 1}},
    {"lost-to-a-sense.json", {"unique", 0}},
    {"missing-force.json", {"unique", 0}},
    {"mooring-gon.json", {"unique", 0}},
    {"nearly-opposite.json", {"unique", 0}},
    {"nearly-parallel.json", {"unique", 0}},
    {"no-answer.json", {"none", 1}},
    {"no-resultant.json", {"unique", 0}},
    {"oblique-components.json", {"unique", 0}},
    {"obtuse-pulls.json", {"unique", 0}},
    {"out-of-reach.json", {"none", 1}},
    {"raft-in-weather.json", {"unique", 0}},
    {"ring-at-rest.json", {"unique", 0}},
    {"ring-of-known-pulls.json", {"unique", 0}},
    {"same-line.json", {"endless", 1}},
    {"slopes.json", {"unique", 0}},
    {"smallest-force.json", {"unique", 0}},
    {"smallest-sum.json", {"unique", 0}},
    {"survey-raft.json", {"unique", 0}},
    {"tangent.json", {"unique", 0}},
    {"too-few-given.json", {"underdetermined", 1}},
    {"two-answers.json", {"two", 0}},
    {"two-directions.json", {"two", 0}},
    {"with-tolerance.json", {"unique", 0}},
};

class Sample : public Verbs, public ::testing::WithParamInterface<std::string> {
protected:
    QString file() const {
        return QStringLiteral(TAILPOINT_SAMPLES "/") + QString::fromStdString(GetParam());
    }
};

TEST_P(Sample, HasTheStatusThatItWasMadeFor) {
    ASSERT_TRUE(kExpected.count(GetParam())) << "say here what it is there to show";
    const Expected& expected = kExpected.at(GetParam());
    const QJsonObject report = reportOf(bytesOf(file()), expected.exit);
    EXPECT_EQ(report[QLatin1String("status")].toString().toStdString(), expected.status)
        << report[QLatin1String("message")].toString().toStdString();
    EXPECT_NE(report[QLatin1String("title")].toString(), QString());
}

TEST_P(Sample, IsDrawnAndReportedInText) {
    const int exit = kExpected.at(GetParam()).exit;
    const Ran drawn =
        run({QStringLiteral("figure"), file(), QStringLiteral("-o"), path(QStringLiteral("a.svg"))});
    EXPECT_EQ(drawn.status, exit) << drawn.err.toStdString();
    EXPECT_TRUE(bytesOf(path(QStringLiteral("a.svg"))).contains("</svg>"));
    const Ran told = run({QStringLiteral("report"), file()});
    EXPECT_EQ(told.status, exit) << told.err.toStdString();
    EXPECT_TRUE(told.out.contains("Find"));
    EXPECT_FALSE(told.out.contains("nan") || told.out.contains("inf\n")) << told.out.toStdString();
}

std::vector<std::string> samples() {
    std::vector<std::string> names;
    for (const QString& name : QDir(QStringLiteral(TAILPOINT_SAMPLES)).entryList({QStringLiteral("*.json")}))
        names.push_back(name.toStdString());
    return names;
}

INSTANTIATE_TEST_SUITE_P(Verbs, Sample, ::testing::ValuesIn(samples()), [](const auto& row) {
    std::string name = row.param.substr(0, row.param.find('.'));
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

TEST(Samples, AreAllThere) {
    EXPECT_EQ(samples().size(), kExpected.size());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
