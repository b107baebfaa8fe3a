// SPDX-License-Identifier: MIT
// `--tolerances hidden`: the stated values alone, in report and figure; never against a limit.
#include "tests/whole/verbs/driver.h"

#include <QRegularExpression>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

/// P 340 ± 5 at 25 ± 2 and Q 275 at -40: R from 509.747 to 529.901 (dense grid, Python).
QByteArray raft(const QByteArray& sum = {}) {
    return sketch(
        R"({"name": "P", "magnitude": {"value": 340, "plusMinus": 5}, "direction": {"value": 25, "plusMinus": 2}},
           {"name": "Q", "magnitude": 275, "direction": -40})",
        sum);
}
const QStringList kHidden{QStringLiteral("--tolerances"), QStringLiteral("hidden")};

class TolerancesOption : public Verbs {
protected:
    QByteArray figure(const QStringList& more) {
        const Ran ran = run(QStringList{QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"),
                                        path(QStringLiteral("a.svg"))} +
                                more,
                            raft());
        EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        return bytesOf(path(QStringLiteral("a.svg")));
    }
};

TEST_F(TolerancesOption, HiddenLeavesRangesShadingAndPlusMinusOut) {
    for (const char* form : {"text", "json", "html", "latex"}) {
        const QStringList as{QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"),
                             QLatin1String(form)};
        const Ran with = run(as, raft()), without = run(as + kHidden, raft());
        EXPECT_EQ(without.status, 0) << without.err.toStdString();
        EXPECT_TRUE(with.out.contains("509")) << form;
        EXPECT_FALSE(without.out.contains("509")) << form;
        for (const char* mark : {"±", "\\pm", "plusMinus", "\"range\"", "class=\"region\"", "tp-region"})
            EXPECT_FALSE(without.out.contains(mark)) << form << ' ' << mark;
    }
}

TEST_F(TolerancesOption, OfAFigureHiddenOnesAreNotCarriedAlongEither) {
    const QByteArray with = figure({}), without = figure(kHidden);
    EXPECT_TRUE(with.contains("class=\"region\"") && with.contains("509 to 530 N"));
    EXPECT_TRUE(with.contains("<metadata"));
    EXPECT_FALSE(without.contains("class=\"region\""));
    EXPECT_FALSE(without.contains("509 to 530 N") || without.contains("±"));
    EXPECT_FALSE(without.contains("<metadata"));
}

/// What is given keeps its ± on an exercise; what is to be found has neither range nor shading.
TEST_F(TolerancesOption, OfAnExerciseNoRangeIsToldAndNothingIsShaded) {
    for (const QStringList& exercise : {QStringList{QStringLiteral("--given-only")},
                                        {QStringLiteral("--stage"), QStringLiteral("4")},
                                        {QStringLiteral("--values"), QStringLiteral("hidden")}}) {
        const QByteArray svg = figure(exercise);
        EXPECT_FALSE(svg.contains("class=\"region\"")) << exercise.join(u' ').toStdString();
        EXPECT_FALSE(svg.contains("509")) << exercise.join(u' ').toStdString();
    }
    for (const char* form : {"html", "latex"}) {
        const Ran ran = run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"),
                             QLatin1String(form), QStringLiteral("--no-solution")},
                            raft());
        EXPECT_EQ(ran.status, 0);
        EXPECT_TRUE(ran.out.contains("340")) << form;
        for (const char* told : {"class=\"region\"", "tp-region"})
            EXPECT_FALSE(ran.out.contains(told)) << form << ' ' << told;
        static const QRegularExpression end(
            QStringLiteral("(?<![\\d.])(509|530)(?![\\d.])")); // no coordinate
        EXPECT_FALSE(end.match(QString::fromUtf8(ran.out)).hasMatch()) << form;
    }
}

/// A sheet of one's own sketches asks by the stated values; asked for, the key tells the ranges.
TEST_F(TolerancesOption, OfAProblemSheetAreLeftOutUnlessAskedFor) {
    const QString own = put(QStringLiteral("own.json"), raft());
    const auto sheet = [&](const char* name, const QStringList& more) {
        const Ran ran =
            run(QStringList{QStringLiteral("problems"), QStringLiteral("--from"), own, QStringLiteral("--as"),
                            QStringLiteral("html"), QStringLiteral("--solutions"), QStringLiteral("-o"),
                            path(QLatin1String(name))} +
                more);
        EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        return std::pair(bytesOf(path(QLatin1String(name)) + QStringLiteral("/sheet.html")),
                         bytesOf(path(QLatin1String(name)) + QStringLiteral("/key.html")));
    };
    const auto [plain, plainKey] = sheet("plain", {});
    EXPECT_TRUE(plain.contains("340") && plainKey.contains("520"));
    EXPECT_FALSE(plain.contains("±") || plainKey.contains("±") || plainKey.contains("509"));
    const auto [asked, askedKey] = sheet("asked", {QStringLiteral("--tolerances"), QStringLiteral("shown")});
    EXPECT_TRUE(asked.contains("±"));
    EXPECT_FALSE(asked.contains("509")) << "a student's sheet tells no answer";
    EXPECT_TRUE(askedKey.contains("within the tolerances 509 to 530"));
    expectRefused(run({QStringLiteral("problems"), QStringLiteral("--family"), QStringLiteral("two-forces"),
                       QStringLiteral("--tolerances"), QStringLiteral("shown"), QStringLiteral("-o"),
                       path(QStringLiteral("none"))}),
                  {QStringLiteral("--tolerances"), QStringLiteral("--from")});
}

TEST_F(TolerancesOption, AreNeverHiddenFromALimit) {
    const QByteArray limited =
        raft(R"(, "sum": {"name": "R", "magnitude": null, "direction": null, "limit": 525})");
    const QStringList parts{QStringLiteral("--tolerances hidden"), QStringLiteral("leave it out")};
    expectRefused(run(QStringList{QStringLiteral("report"), QStringLiteral("-")} + kHidden, limited), parts);
    expectRefused(run(QStringList{QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"),
                                  path(QStringLiteral("b.svg"))} +
                          kHidden,
                      limited),
                  parts);
    EXPECT_FALSE(everything().contains(QStringLiteral("b.svg")));
    expectRefused(
        run(QStringList{QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--uncertainty")} +
                kHidden,
            raft()),
        {QStringLiteral("--uncertainty")});
    expectRefused(run(QStringList{QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"),
                                  QStringLiteral("csv")} +
                          kHidden,
                      raft()),
                  {QStringLiteral("--tolerances")});
}

/// A class or an answer is told the ranges beside what is right, and the caution where the scene asks for it.
TEST_F(TolerancesOption, MarkingTellsThemAndTheCaution) {
    QByteArray file = raft();
    file.replace(R"("forces")", R"("title": "Engine on a bridle", "forces")");
    const auto mark = [&](const char* form) {
        return QString::fromUtf8(run({QStringLiteral("mark"), QStringLiteral("-"), QStringLiteral("--answer"),
                                      QStringLiteral("R = 335"), QStringLiteral("--as"), QLatin1String(form)},
                                     file)
                                     .out)
            .simplified();
    };
    for (const char* form : {"text", "json", "html"}) {
        EXPECT_TRUE(mark(form).contains(QStringLiteral("509 to 530 N"))) << form << mark(form).toStdString();
        EXPECT_TRUE(mark(form).contains(QStringLiteral("A sketch check, not a design"))) << form;
    }
    const QString table = put(QStringLiteral("class.csv"), "who,R\nAda,335\nBo,520\n"),
                  sketch = put(QStringLiteral("s.json"), file);
    for (const char* form : {"text", "json", "html"}) {
        const Ran ran = run({QStringLiteral("mark"), sketch, QStringLiteral("--answers"), table,
                             QStringLiteral("--as"), QLatin1String(form)});
        const QString out = QString::fromUtf8(ran.out).simplified();
        EXPECT_EQ(out.count(QStringLiteral("A sketch check, not a design")), 1) << form << out.toStdString();
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
