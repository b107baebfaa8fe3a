// SPDX-License-Identifier: MIT
// A name is set as a symbol wherever it is read, and two names that differ never look alike: as
// core/sketch/things.h says, T1 is T with 1 below, a later T_1 stands as it was typed, T_A1 is T with A1
// below, and R_x takes its look from the component of R along x, which becomes R_(x).
#include "tests/ui/canvas_fixture.h"
#include "ui/canvas/force_gesture.h"
#include "ui/canvas/overlay.h"
#include "ui/canvas/snap.h"
#include "ui/panel/answer_text.h"
#include "ui/panel/figure_rows.h"
#include "ui/panel/find_view.h"
#include "ui/panel/given_model.h"
#include "ui/panel/panel_table.h"
#include "ui/style/painted_sentence.h"
#include "ui/style/symbols.h"
#include "ui/window/lines.h"

#include <set>

namespace tailpoint {

namespace TAILPOINT_FILE {

Sketch likeNames() {
    Sketch sketch = emptySketch();
    sketch.forces = {forceOf("T1", 300, 20), forceOf("T_1", 250, 110), forceOf("T_A1", 200, 215),
                     forceOf("R_x", 150, -60)};
    return sketch;
}

const std::vector<Symbol> kSymbols{{"T", "1"}, {"T_1", ""}, {"T", "A1"}, {"R", "x", 1}, {"R", ""}};

bool holds(const QString& html, const Symbol& symbol) {
    return html.contains(symbolHtml(symbol));
}

TEST(Symbols, StandInLabelsAsItalicLettersWithTheSubscriptBelow) {
    const QString html = symbolHtml({"T", "A1"});
    EXPECT_TRUE(html.contains(QStringLiteral("font-family")));
    EXPECT_TRUE(html.contains(QStringLiteral("<i>T</i><sub>A1</sub>"))) << html.toStdString();
    EXPECT_TRUE(symbolHtml({"<b>", "&"}).contains(QStringLiteral("&lt;b&gt;</i><sub>&amp;</sub>")));
    EXPECT_EQ(symbolInSerif({"T", "A1"}), QStringLiteral("<i>T</i><sub>A1</sub>"));
}

TEST(Symbols, ComeIntoASentenceWhereverItNamesThem) {
    const Sketch sketch = likeNames();
    const Sentence twice = sentence(QStringLiteral("Turn %1, and %1."), symbolWords(Things(sketch), "T_1"));
    EXPECT_EQ(plain(twice), "Turn T_1, and T_1.");
    EXPECT_EQ(htmlOf(twice).count(symbolHtml({"T_1", ""})), 2);
    EXPECT_EQ(plain(sentence(QStringLiteral("100%1"))), "100%1") << "no symbol, nothing to put in";
}

TEST(Symbols, TellLikeNamesApartInTheTableOfGivenValues) {
    SketchDocument document;
    document.replace(likeNames(), {});
    GivenModel model(document);
    std::set<QString> tips;
    for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex cell = model.index(row, GivenModel::Name);
        const auto name = cell.data(SentenceRole).value<Sentence>();
        ASSERT_EQ(name.size(), 1U);
        EXPECT_EQ(name[0].printed, kSymbols.at(static_cast<std::size_t>(row))) << name[0].text;
        EXPECT_EQ(cell.data(Qt::ToolTipRole).toString(), symbolHtml(name[0].printed));
        tips.insert(cell.data(Qt::ToolTipRole).toString());
    }
    EXPECT_EQ(tips.size(), kSymbols.size());
}

TEST(Symbols, TellLikeNamesApartInValuesAndAnswers) {
    const Result result(likeNames());
    for (int vector = 0; vector < 4; ++vector) {
        const FigureRow row = rowAt(result, {VectorPlace::Kind::vector, vector, 0});
        EXPECT_EQ(row.label.at(0).printed, kSymbols[static_cast<std::size_t>(vector)]);
    }
    const AnswerText answer = answerText(result);
    EXPECT_TRUE(answer.large.startsWith(QStringLiteral("<i>R</i> = "))) << answer.large.toStdString();
    EXPECT_TRUE(holds(answer.detail, {"R", "(x)", 2}))
        << "not the force R_x: " << answer.detail.toStdString();
    const QString asked = htmlOf(question(result.sketch));
    for (const Symbol& symbol : kSymbols) {
        EXPECT_TRUE(holds(asked, symbol)) << inPrint(symbol);
    }
}

TEST(Symbols, TellTheSidesOfTheForceTriangleApart) {
    Sketch sketch = likeNames();
    sketch.forces.resize(2);
    const QList<FigureRow> rows = angleRows(Result(sketch));
    std::vector<Symbol> printed;
    for (const FigureRow& row : rows) {
        for (const Words& words : row.label) {
            if (words.symbol) {
                printed.push_back(words.printed);
            }
        }
    }
    const Symbol t1{"T", "1"}, typed{"T_1", ""}, r{"R", ""};
    EXPECT_EQ(printed, (std::vector<Symbol>{r, t1, typed, t1, typed, r}));
}

TEST(Symbols, StandOnTheLinksOfFind) {
    Sketch sketch = likeNames();
    sketch.sum.magnitude.value = 100;
    sketch.sum.direction.form = AngleForm{0}; // nothing to find: two of the forces are offered
    SketchDocument document;
    document.replace(sketch, {});
    FindView find(document);
    find.refresh();
    QStringList words;
    for (auto* link : find.findChildren<LinkButton*>()) {
        words << link->text();
    }
    EXPECT_TRUE(words.contains(QStringLiteral("Find T_A1"))) << words.join(u'|').toStdString();
    LinkButton plainly, set;
    plainly.setText(QStringLiteral("Find T_A1"));
    set.setSentence(sentence(QStringLiteral("Find %1"), symbolWords(Things(sketch), "T_A1")));
    EXPECT_NE(plainly.grab().toImage(), set.grab().toImage());
    EXPECT_EQ(set.text(), plainly.text()) << "what a screen reader says";
}

TEST(Symbols, AreWiderByTheirSubscriptAndCutInTheirLetters) {
    const PaintedSentence painted(QFont(), 1.3);
    const auto of = [](const Symbol& symbol) { return Sentence{{{}, true, false, symbol}}; };
    EXPECT_GT(painted.width(of({"T", "A1"})), painted.width(of({"T", "1"})));
    QImage image(200, 60, QImage::Format_RGB32);
    QPainter painter(&image);
    const Symbol longest{"Windlass", "A1"};
    EXPECT_DOUBLE_EQ(painted.draw(painter, {0, 40}, of(longest)), painted.width(of(longest)));
    EXPECT_LE(painted.draw(painter, {0, 40}, of(longest), 60), 60);
}

TEST_F(CanvasTest, TheHintLineSetsSymbolsAndSaysNames) {
    open(likeNames());
    QSignalSpy hints(&canvas, &Canvas::hint);
    for (std::size_t force = 0; force < 4; ++force) {
        hover(tipOf(force));
        ASSERT_FALSE(hints.isEmpty());
        const QString said = hints.last().at(0).toString(), seen = hints.last().at(1).toString();
        EXPECT_TRUE(said.startsWith(QStringLiteral("Drag the tip to change %1.")
                                        .arg(QString::fromStdString(document.sketch().forces[force].name))))
            << said.toStdString();
        EXPECT_TRUE(holds(seen, kSymbols[force])) << seen.toStdString();
    }
    HintLine line;
    line.setRichHint(hints.last().at(0).toString(), hints.last().at(1).toString());
    auto* label = line.findChild<QLabel*>(QStringLiteral("hint"));
    EXPECT_EQ(label->accessibleName(), hints.last().at(0).toString());
    EXPECT_TRUE(holds(label->text(), {"R", "x", 1}));
    const int height = line.sizeHint().height();
    line.setHint(QStringLiteral("No name in it"));
    EXPECT_EQ(line.sizeHint().height(), height) << "nothing moves under the pointer";
}

TEST_F(CanvasTest, WhyAForceIsNotDraggedNamesItAsASymbol) {
    Sketch sketch = likeNames();
    sketch.forces[1].magnitude = {};
    open(sketch);
    QSignalSpy hints(&canvas, &Canvas::hint);
    canvas.nudgeMagnitude(1, 1);
    ASSERT_EQ(hints.count(), 1);
    EXPECT_EQ(hints[0][1].toString().count(symbolHtml({"T_1", ""})), 2) << "named twice in that line";
}

TEST_F(CanvasTest, TheReadoutOfADragTellsLikeNamesApart) {
    const Things things(likeNames());
    const auto painted = [&](const char* name) {
        Feedback feedback;
        feedback.name = {symbolWords(things, name)};
        feedback.readout = QStringLiteral("300 N at 20.0°");
        QImage image(240, 60, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paintReadout(painter, {0, 0, 240, 60}, feedback, themeOf(ThemeName::paper), canvas.font());
        return image;
    };
    EXPECT_EQ(painted("T1"), painted("T1"));
    EXPECT_NE(painted("T1"), painted("T_1"));
    open(likeNames());
    Scene scene(document);
    scene.resize(QSizeF(960, 660), 1);
    const GestureContext context{scene, true, [](const Sentence&) {}};
    for (const std::size_t force : {std::size_t{0}, std::size_t{1}}) {
        const DrawnVector drawn = drawnVectors(scene).at(force);
        const QPointF tip = scene.sheet().toPixels(drawn.tip);
        TipGesture gesture(context, drawn, tip);
        gesture.move({tip + QPointF(20, 20), {}});
        ASSERT_NE(gesture.feedback(), nullptr);
        EXPECT_EQ(gesture.feedback()->name, Sentence{symbolWords(things, forceVector(force))});
        gesture.cancel();
    }
    for (const SnapLine& line : snapLines(likeNames(), 0)) {
        const auto symbol = std::find_if(line.words.begin(), line.words.end(),
                                         [](const Words& words) { return words.symbol; });
        ASSERT_NE(symbol, line.words.end());
        EXPECT_EQ(symbol->printed, things.symbolNamed(symbol->text));
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
