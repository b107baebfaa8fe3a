// SPDX-License-Identifier: MIT
// Legs among the values of the panel, and the caution in what is copied as text.
#include "panel_support.h"

#include "core/explain/caution.h"
#include "tests/support/sketches.h"
#include "ui/files/sketch_json.h"
#include "ui/panel/answer_text.h"
#include "ui/panel/copied_values.h"
#include "ui/panel/figure_rows.h"
#include "ui/panel/solution_view.h"
#include "ui/style/symbols.h"

#include <QClipboard>
#include <QGuiApplication>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

using namespace tailpoint::testing;

Sketch bridle() {
    Sketch made = balanced({force("W", 10, -90), force("A", kToFind, 25), force("B", kToFind, 120)});
    made.title = "Bridle";
    return made;
}

QStringList rowsOf(const Sketch& sketch) {
    QStringList rows;
    for (const FigureRow& row : legRows(resultOf(sketch))) {
        rows << QString::fromStdString(plain(row.label)) + u'|' + row.values.join(u'|');
    }
    return rows;
}

TEST(LegsInThePanel, HaveTheirAnglesAndTheirShare) {
    const QStringList rows = rowsOf(bridle());
    EXPECT_TRUE(rows.contains(QStringLiteral("Legs that carry W|"))) << rows.join(u'\n').toStdString();
    for (const char* row : {"A from horizontal|25.0\u00B0", "A from vertical|65.0\u00B0",
                            "B from horizontal|60.0\u00B0", "B from vertical|30.0\u00B0"})
        EXPECT_TRUE(rows.contains(QString::fromUtf8(row))) << row;
    EXPECT_TRUE(rows.contains(QStringLiteral("between A and B|95.0\u00B0")));
    EXPECT_TRUE(rows.contains(QStringLiteral("tension over load, A|0.502"))); // sin 30 / sin 95
    EXPECT_TRUE(rows.contains(QStringLiteral("A stands under 30\u00B0|")));
    EXPECT_TRUE(rows.contains(QStringLiteral("codes advise against that: ask the maker|")));
    EXPECT_TRUE(rowsOf(raft()).filter(QStringLiteral("Legs")).isEmpty());
}

TEST(LegsInThePanel, AreCopiedAsBareNumbersWithTheirUnits) {
    const QList<BareTable> tables = bareTables(resultOf(bridle()));
    ASSERT_FALSE(tables.isEmpty());
    EXPECT_EQ(tables.back().heads,
              QStringList({QStringLiteral("leg that carries W"), QStringLiteral("from horizontal (deg)"),
                           QStringLiteral("from vertical (deg)"), QStringLiteral("to the next leg (deg)"),
                           QStringLiteral("tension over load")}));
    ASSERT_EQ(tables.back().rows.size(), 2);
    EXPECT_EQ(tables.back().rows[0],
              QStringList({QStringLiteral("A"), QStringLiteral("25.0"), QStringLiteral("65.0"),
                           QStringLiteral("95.0"), QStringLiteral("0.502")}));
    for (const BareTable& table : tables) {
        EXPECT_FALSE(table.heads.contains(QStringLiteral("from horizontal (N)")));
    }
}

/// 6 at 75 and 6 at 140 degrees: 12 cos 32.5 = 10.1207, 101.207 per cent of 10.
TEST(LimitsInThePanel, AreToldInWordsBehindTheAnswer) {
    Sketch sketch = emptySketch();
    sketch.forces = {force("P", 6, 75), force("Q", 6, 140)};
    EXPECT_FALSE(limitsText(resultOf(sketch)).contains(QStringLiteral("limit")));
    sketch.sum.limit = TypedForce{10, ForceUnit::N, {}};
    const QString told = limitsText(resultOf(sketch));
    EXPECT_TRUE(told.contains(QStringLiteral("R is over its limit: 101.3 % of 10 N."))) << told.toStdString();
    EXPECT_TRUE(told.contains(QStringLiteral("not rated data")));
    EXPECT_TRUE(limitsText(unanswered(sketch)).isEmpty()) << "nothing of a withheld answer";
}

TEST(CopiedText, CarriesTheCautionWhereTheSceneAsksForIt) {
    const QString line = text(cautionLine());
    EXPECT_TRUE(valuesAsText(resultOf(bridle()), {}).contains(line));
    EXPECT_FALSE(valuesAsText(resultOf(raft()), {}).contains(line));
    Sketch open = bridle();
    open.forces[2].direction = {};
    open.forces[1].direction = {}; // four unknowns: no answer to show
    EXPECT_TRUE(valuesAsText(resultOf(open), {}).contains(line));
    SketchDocument document;
    document.replace(bridle(), {});
    SolutionView view(document);
    view.refreshNow();
    view.copy();
    EXPECT_TRUE(QGuiApplication::clipboard()->text().contains(line));
}

TEST(NotesOfAFile, AreReadForTheCaution) {
    const auto asks = [](const char* rest) {
        const QByteArray file =
            QByteArray(
                R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg"}, "forces": [{"name": "P", "magnitude": 1,
                "direction": 0}], )") +
            rest + "}";
        const auto read = readSketch(file);
        EXPECT_TRUE(std::holds_alternative<Sketch>(read)) << rest;
        return std::holds_alternative<Sketch>(read) && sceneAsksCaution(std::get<Sketch>(read));
    };
    EXPECT_TRUE(asks(R"("notes": "two davits")"));
    EXPECT_TRUE(asks(R"("statement": "A sling holds it.")"));
    EXPECT_FALSE(asks(R"("elsewhere": "A sling holds it.")"));
    EXPECT_FALSE(asks(R"("statement": "A sling holds it.", "practice": {"code": "080005"})"));
    EXPECT_FALSE(asks(R"("notes": 5)"));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
