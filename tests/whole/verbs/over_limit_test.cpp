// SPDX-License-Identifier: MIT
// A pull of 10.04 N against a limit of 10 N, which reads 10.0 N to three figures: no output calls it within.
#include "tests/whole/verbs/driver.h"

#include <QJsonDocument>
#include <QXmlStreamReader>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

/// R is P itself, 10.04 N; 100 * 10.04 / 10 = 100.4 per cent.
QByteArray pull(const char* limit) {
    return sketch(
        force("P", "10.04", "30"),
        QByteArray(
            R"(, "title": "Tow line", "sum": {"name": "R", "magnitude": null, "direction": null, "limit": )") +
            limit + "}");
}

class OverALimit : public Verbs {
protected:
    QString reported(const char* form, const char* limit = "10") const {
        const Ran ran =
            run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"), QLatin1String(form)},
                pull(limit));
        EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        return QString::fromUtf8(ran.out)
            .replace(QStringLiteral("\\%"), QStringLiteral("%"))
            .replace(QChar(0xa0), u' ');
    }
    QString drawn(const char* name, const char* limit = "10") const {
        const QString file = path(QString::fromLatin1(name));
        const Ran ran =
            run({QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"), file}, pull(limit));
        EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        return QString::fromUtf8(bytesOf(file)).replace(QStringLiteral("\\%"), QStringLiteral("%"));
    }
};

/// All that stands in a picture's labels.
QString labelsOf(const QString& svg) {
    QString labels;
    QXmlStreamReader reader(svg);
    while (!reader.atEnd())
        if (reader.readNext() == QXmlStreamReader::StartElement && reader.name() == QLatin1String("text"))
            labels += reader.readElementText(QXmlStreamReader::IncludeChildElements) + u'\n';
    EXPECT_FALSE(reader.hasError());
    return labels;
}

TEST_F(OverALimit, IsSaidBesideTheRoundedValueInEveryReport) {
    for (const char* form : {"text", "html", "latex"}) {
        SCOPED_TRACE(form);
        const QString told = reported(form).simplified();
        EXPECT_TRUE(told.contains(QStringLiteral("10.0"))) << told.toStdString();
        EXPECT_TRUE(told.contains(QStringLiteral("R is over its limit: 100.4 % of 10 N.")))
            << told.toStdString();
        EXPECT_FALSE(told.contains(QStringLiteral("within"))) << told.toStdString();
        EXPECT_TRUE(reported(form, "10.04").contains(QStringLiteral("within")));
    }
}

TEST_F(OverALimit, IsAVerdictInJsonWithAWordThatIsNotRoundedAway) {
    const QJsonObject all = QJsonDocument::fromJson(reported("json").toUtf8()).object();
    const QJsonObject solution = all[QLatin1String("solutions")].toArray().at(0).toObject();
    EXPECT_EQ(solution[QLatin1String("sum")][QLatin1String("text")][QLatin1String("magnitude")].toString(),
              QStringLiteral("10.0 N"));
    const QJsonObject limit = solution[QLatin1String("limits")].toArray().at(0).toObject();
    EXPECT_EQ(limit[QLatin1String("verdict")].toString(), QStringLiteral("over"));
    EXPECT_EQ(limit[QLatin1String("text")].toString(), QStringLiteral("100.4 %"));
    EXPECT_NEAR(limit[QLatin1String("utilisation")].toDouble(), 100.4, 1e-10);
}

TEST_F(OverALimit, IsMoreThanAHundredInATable) {
    const QStringList rows = reported("csv").trimmed().split(u'\n');
    ASSERT_EQ(rows.size(), 2);
    const qsizetype column = rows[0].split(u',').indexOf(QStringLiteral("R utilisation"));
    ASSERT_GE(column, 0) << rows[0].toStdString();
    EXPECT_NEAR(rows[1].split(u',').value(column).toDouble(), 100.4, 1e-10);
}

TEST_F(OverALimit, IsWrittenAtTheArrowInEveryFigure) {
    const QString labels = labelsOf(drawn("over.svg"));
    EXPECT_TRUE(labels.contains(QStringLiteral("10.0"))) << labels.toStdString();
    EXPECT_TRUE(labels.contains(QStringLiteral("over limit, 100.4 %"))) << labels.toStdString();
    EXPECT_FALSE(labels.contains(QStringLiteral("within"))) << labels.toStdString();
    EXPECT_TRUE(drawn("over.tex").contains(QStringLiteral("over limit, 100.4 %")));
    EXPECT_FALSE(labelsOf(drawn("within.svg", "10.04")).contains(QStringLiteral("over limit")));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
