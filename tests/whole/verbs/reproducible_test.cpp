// SPDX-License-Identifier: MIT
// The same input makes the same bytes: with SOURCE_DATE_EPOCH on any day and in any time zone. 1764374400 is
// 2025-11-29 00:00 UTC (GNU date).
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QRegularExpression>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QString kRaft = QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json");

Environment at(const char* epoch, const char* zone) {
    return {{QStringLiteral("SOURCE_DATE_EPOCH"), QLatin1String(epoch)},
            {QStringLiteral("TZ"), QLatin1String(zone)}};
}

class Reproducible : public Verbs {
protected:
    /// Every file that these words make, by its name; what goes to standard output as one more.
    QMap<QString, QByteArray> made(const QString& words, const Environment& environment) {
        const QString folder = path(QString::number(++m_runs));
        EXPECT_TRUE(QDir().mkdir(folder));
        QStringList arguments;
        for (QString word : words.split(u' '))
            arguments << word.replace(QStringLiteral("FILE"), kRaft)
                             .replace(QStringLiteral("OUT"), folder + QStringLiteral("/out"));
        const Ran ran = run(arguments, {}, nullptr, environment);
        EXPECT_LE(ran.status, 1) << words.toStdString() << ran.err.toStdString();
        EXPECT_GE(ran.status, 0);
        QMap<QString, QByteArray> all{{QString(), QByteArray(ran.out).replace(folder.toUtf8(), "")}};
        QDir top(folder);
        for (const QString& sub : QStringList{folder} + subfolders(folder))
            for (const QString& name : QDir(sub).entryList(QDir::Files))
                all.insert(top.relativeFilePath(sub + u'/' + name), bytesOf(sub + u'/' + name));
        return all;
    }
    static QStringList subfolders(const QString& folder) {
        QStringList all;
        for (const QString& name : QDir(folder).entryList(QDir::Dirs | QDir::NoDotAndDotDot))
            all << folder + u'/' + name << subfolders(folder + u'/' + name);
        return all;
    }
    int m_runs = 0;
};

TEST_F(Reproducible, EveryOutputOfEveryVerb) {
    for (const char* words :
         {"figure FILE -o OUT.svg", "figure FILE -o OUT.pdf", "figure FILE -o OUT.pdf --stage all",
          "figure FILE -o OUT.png", "figure FILE -o OUT.tex", "report FILE",
          "report FILE --as json --uncertainty", "report FILE --as html", "report FILE --as latex",
          "report FILE --as csv", "sweep FILE --vary P --from 1 --to 2 --as svg",
          "sweep FILE --vary P --from 1 --to 2 --as json", "mark FILE --answer R=335 --as html",
          "problems --family two-forces --count 2 --solutions -o OUT",
          "problems --family two-forces --count 2 --as html -o OUT"}) {
        const auto here = made(QLatin1String(words), at("1764374400", "Pacific/Auckland")),
                   there = made(QLatin1String(words), at("1764374400", "America/Anchorage"));
        ASSERT_EQ(here.keys(), there.keys());
        qsizetype bytes = 0;
        for (const QString& name : here.keys()) {
            bytes += here[name].size();
            EXPECT_TRUE(here[name] == there[name]) << words << ": " << name.toStdString();
        }
        EXPECT_GT(bytes, 200) << words;
    }
}

TEST_F(Reproducible, APdfOfAFigureBearsThatTimeAndNoOther) {
    const QByteArray pdf =
        made(QStringLiteral("figure FILE -o OUT.pdf"), at("1764374400", "UTC"))[QStringLiteral("out.pdf")];
    EXPECT_TRUE(pdf.contains("/CreationDate (D:20251129000000Z)"));
    EXPECT_EQ(pdf.count("(D:"), pdf.count("(D:20251129000000Z)")); // Qt 6.8 has a second one, and XMP
    EXPECT_EQ(pdf.count("Date=\""), pdf.count("Date=\"2025-11-29T00:00:00+00:00\""));
    const QByteArray later =
        made(QStringLiteral("figure FILE -o OUT.pdf"), at("1764374401", "UTC"))[QStringLiteral("out.pdf")];
    EXPECT_TRUE(later.contains("/CreationDate (D:20251129000001Z)"));
    EXPECT_EQ(later.size(), pdf.size());
}

TEST_F(Reproducible, WithoutATimeAPdfBearsNone) {
    for (const char* words : {"figure FILE -o OUT.pdf", "problems --family slopes --count 1 -o OUT"})
        for (const auto& file : made(QLatin1String(words), {}))
            EXPECT_FALSE(file.startsWith("%PDF") && (file.contains("(D:") || file.contains("Date=\"")))
                << words;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
