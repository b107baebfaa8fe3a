// SPDX-License-Identifier: MIT
// What is written for LaTeX compiles with pdflatex, amsmath and tikz, and gives pages with the answer on
// them.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QStandardPaths>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

constexpr int kLongestCompilationMs = 50'000;

class Latex : public Verbs, public ::testing::WithParamInterface<std::string> {
protected:
    void SetUp() override {
        for (const char* tool : {"pdflatex", "pdfinfo", "pdftotext"})
            if (QStandardPaths::findExecutable(QLatin1String(tool)).isEmpty())
                GTEST_SKIP() << tool << " is not installed: what is written for LaTeX is not compiled";
    }
    struct Compiled {
        bool done = false;
        QString log, text; ///< of TeX; of the pages
        int pages = 0;
    };

    QByteArray program(const QString& name, const QStringList& arguments) const {
        QProcess process;
        process.setWorkingDirectory(m_folder.path());
        process.start(name, arguments);
        if (!process.waitForFinished(kLongestCompilationMs)) {
            process.kill();
            process.waitForFinished();
        }
        return process.readAllStandardOutput();
    }

    Compiled compiled(const QByteArray& latex) const {
        put(QStringLiteral("page.tex"), latex);
        Compiled out;
        out.log = QString::fromUtf8(
            program(QStringLiteral("pdflatex"),
                    {QStringLiteral("-halt-on-error"), QStringLiteral("-interaction=nonstopmode"),
                     QStringLiteral("-no-shell-escape"), QStringLiteral("page.tex")}));
        out.done = QFile::exists(path(QStringLiteral("page.pdf"))) && !out.log.contains(QLatin1String("\n!"));
        const QByteArray info = program(QStringLiteral("pdfinfo"), {QStringLiteral("page.pdf")});
        const qsizetype pages = info.indexOf("Pages:");
        out.pages = pages < 0 ? 0 : info.mid(pages + 6, 12).trimmed().split('\n').front().toInt();
        out.text = QString::fromUtf8(
            program(QStringLiteral("pdftotext"), {QStringLiteral("page.pdf"), QStringLiteral("-")}));
        return out;
    }

    QByteArray sample() const {
        return bytesOf(QStringLiteral(TAILPOINT_SAMPLES "/") + QString::fromStdString(GetParam()));
    }
};

/// Words that stick out of the column by more than a hair, in points.
double widestOverfull(const QString& log) {
    double widest = 0;
    for (const QString& line : log.split(QLatin1Char('\n'))) {
        const qsizetype at = line.indexOf(QLatin1String("Overfull \\hbox ("));
        if (at >= 0)
            widest = std::max(widest, line.mid(at + 16).section(QLatin1String("pt"), 0, 0).toDouble());
    }
    return widest;
}

TEST_P(Latex, CompilesTheReportOfEverySample) {
    const Ran ran =
        run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as=latex")}, sample());
    const Compiled page = compiled(ran.out);
    ASSERT_TRUE(page.done) << page.log.right(2000).toStdString();
    EXPECT_GE(page.pages, 1);
    EXPECT_LE(page.pages, 7);
    EXPECT_LT(widestOverfull(page.log), 6) << page.log.toStdString();
    EXPECT_TRUE(page.text.contains(QLatin1String("Answer"))) << page.text.toStdString();
    EXPECT_FALSE(page.log.contains(QLatin1String("Missing character"))) << page.log.toStdString();
}

TEST_P(Latex, CompilesTheFigureOfEverySampleToOnePage) {
    const QString file = path(QStringLiteral("figure.tex"));
    const Ran ran =
        run({QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"), file}, sample());
    EXPECT_LE(ran.status, 1) << ran.err.toStdString();
    const Compiled page = compiled(bytesOf(file));
    ASSERT_TRUE(page.done) << page.log.right(2000).toStdString();
    EXPECT_EQ(page.pages, 1);
    EXPECT_FALSE(page.text.trimmed().isEmpty());
}

std::vector<std::string> samples() {
    std::vector<std::string> names;
    for (const QString& name : QDir(QStringLiteral(TAILPOINT_SAMPLES)).entryList({QStringLiteral("*.json")}))
        names.push_back(name.toStdString());
    return names;
}

INSTANTIATE_TEST_SUITE_P(Verbs, Latex, ::testing::ValuesIn(samples()), [](const auto& row) {
    std::string name = row.param.substr(0, row.param.find('.'));
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

class LatexOf : public Latex {};

TEST_P(LatexOf, AnyTitleAndNamesCompiles) {
    for (const QStringList& form :
         {QStringList{QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as=latex"),
                      QStringLiteral("-o"), path(QStringLiteral("out.tex"))},
          QStringList{QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"),
                      path(QStringLiteral("out.tex"))}}) {
        const Ran ran = run(form, QByteArray::fromStdString(GetParam()));
        ASSERT_LE(ran.status, 1) << ran.err.toStdString();
        const Compiled page = compiled(bytesOf(path(QStringLiteral("out.tex"))));
        EXPECT_TRUE(page.done) << form.front().toStdString() << page.log.right(1500).toStdString();
    }
}

/// Titles and names that TeX would trip over.
const std::vector<std::string> kTrips{
    R"({"format": "tailpoint-sketch", "version": 1, "title": "50% of A_1 & B#2 {~^\\} $x$ \\end{document}", "units": {"force": "N", "angle": "deg"},
        "forces": [{"name": "A&B", "magnitude": 10, "direction": 0}, {"name": "50%#", "magnitude": 30, "direction": 120},
                   {"name": "T_A$", "magnitude": 15, "direction": 200}]})",
    R"({"format": "tailpoint-sketch", "version": 1, "title": "Плот — 筏 ☃ ≤ “quoted” …", "units": {"force": "lbf", "angle": "deg"},
        "forces": [{"name": "{\\~^}", "magnitude": 12, "direction": 250}, {"name": "Ярд☃", "magnitude": 9, "direction": 300}]})",
    R"({"format": "tailpoint-sketch", "version": 1, "title": "]\\par[ \\\\ --- `' ,,",
        "units": {"force": "kgf", "angle": "gon"},
        "forces": [{"name": "F_", "magnitude": 1.5e-9, "direction": 20}, {"name": "_F", "magnitude": 2.5e12, "direction": 33},
                   {"name": "θ", "magnitude": 3, "direction": 70}, {"name": "]", "magnitude": 2, "direction": 170}]})",
    R"({"format": "tailpoint-sketch", "version": 1, "title": "",
        "units": {"force": "kN", "angle": "rad"},
        "forces": [{"name": "Ω", "magnitude": 3, "direction": 0.5}, {"name": "ß", "magnitude": 2, "direction": -1.2}]})"};

INSTANTIATE_TEST_SUITE_P(Verbs, LatexOf, ::testing::ValuesIn(kTrips),
                         [](const auto& row) { return "Trip" + std::to_string(row.index); });

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
