// SPDX-License-Identifier: MIT
// Typed and drawn values, their verdicts, and what is told of a slip.
#include "core/explain/question.h"
#include "tests/ui/attempt/own_answer_fixture.h"
#include "ui/panel/own_answer_words.h"

#include <QDir>
#include <QMenu>
#include <QRegularExpression>
#include <QSignalSpy>
#include <random>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

using MarkedAnswer = OwnAnswerTest;

TEST_F(MarkedAnswer, TheVerdictStandsBesideTheValueInWords) {
    begin();
    // Hand formula: R = 519.86 N at -3.648 degrees.
    const struct {
        const char *size, *way, *ofSize, *ofWay;
    } rows[] = {{"520", "-3.6", "right", "right"},
                {"0.52 kN", "-3.65", "right", "right"},
                {"520", "", "right", "no value yet"},
                {"520", "3.6", "right", "from another axis or sense"},
                {"520 kN", "-3.6", "right but for the unit", "right"},
                {"335", "", "not right: see below", "no value yet"},
                {"519", "-4", "right but for its last figure", "right, to fewer figures"}};
    for (const auto& row : rows) {
        type("R", row.size);
        type("theta_R", row.way);
        EXPECT_EQ(verdict("R"), QString()) << "a new value is not marked yet";
        mark();
        EXPECT_EQ(verdict("R"), QString::fromUtf8(row.ofSize)) << row.size;
        EXPECT_EQ(verdict("theta_R"), QString::fromUtf8(row.ofWay)) << row.way;
    }
}

/// R = 335 N is the other diagonal: sqrt(340^2 + 275^2 - 2*340*275*cos 65) = 334.96 (hand formula).
TEST_F(MarkedAnswer, ASlipIsNamedWithItsOwnLineAndTheRightOneOnlyOnDemand) {
    begin();
    type("R", "335");
    mark();
    EXPECT_TRUE(findings().contains(QStringLiteral("law of cosines"))) << findings().toStdString();
    EXPECT_TRUE(findings().contains(QStringLiteral("334.96"))) << "in numbers, as the student's own";
    EXPECT_TRUE(findings().contains(QStringLiteral("Which angle did you put into the cosine?")));
    EXPECT_FALSE(everything().contains(QStringLiteral("520")) ||
                 everything().contains(QStringLiteral("519.8")));
    press("ownShow");
    EXPECT_TRUE(findings().contains(QStringLiteral("519.86"))) << "the line as it should be";
    EXPECT_TRUE(verdict("R").endsWith(QStringLiteral("It is 520 N"))) << verdict("R").toStdString();
    EXPECT_EQ(answer().answerDrawing().size(), 3U) << "R, and two sides of the parallelogram";
    press("ownShow");
    EXPECT_FALSE(everything().contains(QStringLiteral("520")));
    EXPECT_TRUE(answer().answerDrawing().empty());
}

/// Every widget of the window, hidden ones too, but for the words of the findings, which stand below all
/// else and take the room that they need.
TEST_F(MarkedAnswer, NothingMovesWhenAVerdictOrADrawingAppears) {
    begin();
    const auto settle = [] {
        for (int i = 0; i < 10; ++i) // a layout may ask for another one
            QCoreApplication::processEvents();
    };
    const auto geometry = [&] {
        settle();
        std::map<std::string, QRect> all;
        const auto* column = view().parentWidget();
        for (const QWidget* at : window->findChildren<QWidget*>()) {
            const bool isAround = at->isAncestorOf(&view()) || at == &view() || at == column;
            if (at->isVisible() && !isAround && at->objectName() != QStringLiteral("ownFindings") &&
                !at->inherits("QScrollBar") && !at->objectName().isEmpty())
                all[at->objectName().toStdString()] =
                    QRect(at->mapTo(window.get(), QPoint(0, 0)), at->size());
        }
        return all;
    };
    const auto expectSame = [](const auto& before, const auto& now, const char* when) {
        for (const auto& [name, rect] : before) {
            if (name == "answerHidden" && now.at(name) != rect) { // it tells whether the answer is shown
                EXPECT_EQ(now.at(name).right(), rect.right()) << when;
                continue;
            }
            if (name == "ownShow" || name == "ownSlip") { // they say the opposite once they are pressed
                EXPECT_EQ(now.at(name).top(), rect.top()) << when << ": " << name;
                EXPECT_TRUE(now.at(name).right() == rect.right() || now.at(name).left() == rect.left())
                    << when << ": " << name;
                continue;
            }
            ASSERT_TRUE(now.contains(name)) << when << ": " << name;
            EXPECT_EQ(now.at(name), rect) << when << ": " << name;
        }
    };
    const auto before = geometry();
    EXPECT_GT(before.size(), 20U);
    answer().draw(kSumVector, Eigen::Vector2d(100, 200));
    const auto drawn = geometry();
    expectSame(before, drawn, "drawn");
    ASSERT_TRUE(child<QPushButton>(view(), "ownForget")->isVisible());
    type("R", "335");
    QTest::keyClick(field("R"), Qt::Key_Return);
    EXPECT_FALSE(summary().isEmpty());
    ASSERT_TRUE(child<QPushButton>(view(), "ownSlip")->isVisible());
    const auto marked = geometry();
    expectSame(drawn, marked, "marked");
    press("ownSlip");
    expectSame(marked, geometry(), "the slip shown");
    press("ownShow");
    expectSame(marked, geometry(), "the answer shown");
    press("ownForget");
    expectSame(before, geometry(), "taken back");
}

TEST_F(MarkedAnswer, TheNumberOfTheSlipIsDrawnOnceItIsAskedFor) {
    begin();
    type("R", "335");
    mark();
    EXPECT_TRUE(answer().slipDrawing().empty());
    press("ownSlip");
    const auto strokes = answer().slipDrawing();
    ASSERT_EQ(strokes.size(), 1U) << "from tip to tip";
    EXPECT_NEAR((strokes[0].from - strokes[0].to).norm(), 334.96, 0.01);
    EXPECT_EQ(plainText(strokes[0].label), "your R = 335 N");
    press("ownSlip");
    EXPECT_TRUE(answer().slipDrawing().empty());
    type("R", "335.1");
    EXPECT_FALSE(child<QPushButton>(view(), "ownSlip")->isVisible());
}

/// P and Q end to end, 615 N long, reach beyond the sheet, where the view was fitted to the given forces.
TEST_F(MarkedAnswer, AConstructionThatReachesBeyondTheSheetIsBroughtOntoItAndTheViewComesBack) {
    begin();
    const View before = window->canvas().view();
    const auto isOnSheet = [&](const Eigen::Vector2d& point) {
        const View& view = window->canvas().view();
        const Point at = view.toSheet(point);
        return at.x > 0 && at.y > 0 && at.x < view.width && at.y < view.height;
    };
    type("R", "615");
    mark();
    press("ownSlip");
    const auto strokes = answer().slipDrawing();
    ASSERT_EQ(strokes.size(), 2U);
    for (const AttemptStroke& stroke : strokes)
        EXPECT_TRUE(isOnSheet(stroke.from) && isOnSheet(stroke.to)) << plainText(stroke.label);
    const View shown = window->canvas().view();
    press("ownSlip");
    EXPECT_EQ(window->canvas().view(), before);
    press("ownSlip");
    EXPECT_EQ(window->canvas().view(), shown);
    window->canvas().zoomIn();
    const View zoomed = window->canvas().view();
    press("ownSlip");
    EXPECT_EQ(window->canvas().view(), zoomed) << "a hand has moved it";
}

TEST_F(MarkedAnswer, AValueThatCantBeReadIsSaidAndNothingIsMarked) {
    begin();
    type("R", "much");
    type("theta_R", "-3.6");
    mark();
    EXPECT_FALSE(answer().marking());
    EXPECT_EQ(verdict("R"), QStringLiteral("can't be read: see below"));
    EXPECT_EQ(verdict("theta_R"), QString());
    EXPECT_TRUE(findings().startsWith(QStringLiteral("R: "))) << findings().toStdString();
    type("R", "520");
    EXPECT_TRUE(findings().isEmpty());
}

TEST_F(MarkedAnswer, AValueOnTheWayIsChosenMarkedAndLeftOut) {
    begin();
    press("ownAdd");
    auto* menu = view().findChild<QMenu*>(QStringLiteral("ownAddMenu"));
    ASSERT_TRUE(menu);
    EXPECT_EQ(static_cast<std::size_t>(menu->actions().size()), answer().addable().size());
    for (QAction* action : menu->actions())
        if (action->text().startsWith(QString::fromUtf8("γ: Angle of the triangle opposite to R")))
            action->trigger();
    menu->close();
    ASSERT_TRUE(field("gamma"));
    EXPECT_TRUE(field("gamma")->hasFocus());
    type("gamma", "115"); // 180 - 65
    type("R", "520");
    type("theta_R", "-3.6");
    mark();
    EXPECT_EQ(verdict("gamma"), QStringLiteral("right"));
    EXPECT_EQ(summary(), QStringLiteral("All that is asked is right."));
    QTest::mouseClick(child<QAbstractButton>(view(), "ownRemove-gamma"), Qt::LeftButton);
    EXPECT_EQ(answer().fields().size(), 2U);
    EXPECT_TRUE(child<QPushButton>(view(), "ownAdd")->hasFocus());
}

TEST_F(MarkedAnswer, TypedValuesOutliveUndoAndAChangedSketchAndVerdictsDont) {
    begin();
    type("R", "520");
    mark();
    EXPECT_EQ(verdict("R"), QStringLiteral("right"));
    change();
    EXPECT_EQ(verdict("R"), QString());
    EXPECT_EQ(field("R")->text(), QStringLiteral("520"));
    mark();
    EXPECT_NE(verdict("R"), QStringLiteral("right")) << "P is 360 N now";
    window->document().undo();
    EXPECT_EQ(verdict("R"), QString());
    EXPECT_EQ(field("R")->text(), QStringLiteral("520"));
    EXPECT_FALSE(window->document().canUndo());
    mark();
    EXPECT_EQ(verdict("R"), QStringLiteral("right"));
    trigger("ownAnswer");
    begin();
    EXPECT_EQ(field("R")->text(), QStringLiteral("520"));
    EXPECT_FALSE(answer().marking());
}

/// P = 180 N and Q at -10.3 degrees is one of the sample's two answers (as the solver's own tests have it).
TEST_F(MarkedAnswer, ItIsMarkedAsTheSketchsFileSays) {
    QByteArray json = bytesOf(QStringLiteral(TAILPOINT_SAMPLES "/two-answers.json"));
    const auto summaryOf = [&](const QByteArray& bytes) {
        QFile out(file("both.json"));
        EXPECT_TRUE(out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size());
        out.close();
        EXPECT_TRUE(window->openPath(file("both.json")));
        if (!answer().isOn())
            begin();
        type("P", "180");
        type("theta_Q", "-10.3");
        mark();
        return summary();
    };
    EXPECT_EQ(summaryOf(json), QStringLiteral("All that is asked is right."));
    json.insert(json.indexOf('{') + 1, "\"marking\": {\"bothAnswers\": true},");
    EXPECT_EQ(summaryOf(json), QStringLiteral("A value is still missing."));
}

TEST_F(MarkedAnswer, PointsStandBesideTheVerdictWhereThereAreSeveralValuesOrAScheme) {
    const auto points = [&] { return child<QLabel>(view(), "ownPoints")->text(); };
    begin();
    EXPECT_EQ(points(), QString());
    type("R", "520");
    mark();
    EXPECT_EQ(points(), QStringLiteral("1 of 2 points"));
    EXPECT_EQ(verdict("R"), QStringLiteral("right")) << "each is worth the same";
    EXPECT_TRUE(child<QLabel>(view(), "ownSummary")->accessibleName().contains(points())) << "spoken";
    QByteArray json = bytesOf(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json"));
    json.insert(json.indexOf('{') + 1, "\"marking\": {\"points\": {\"R\": 2, \"theta_R\": 0.5}},");
    QFile out(file("weighed.json"));
    ASSERT_TRUE(out.open(QIODevice::WriteOnly) && out.write(json) == json.size());
    out.close();
    ASSERT_TRUE(window->openPath(file("weighed.json")));
    type("R", "520");
    type("theta_R", "93");
    mark();
    EXPECT_EQ(points(), QStringLiteral("2 of 2.5 points"));
    EXPECT_EQ(verdict("R"), QString::fromUtf8("right \u00b7 2 of 2 points"));
    EXPECT_TRUE(verdict("theta_R").endsWith(QString::fromUtf8("\u00b7 0 of 0.5 points")))
        << verdict("theta_R").toStdString();
}

/// 519 and -4 are R and theta_R rounded (519.86 N, -3.648 degrees, by hand): the remark has the value.
TEST_F(MarkedAnswer, ARoundedVerdictHoldsTheValueBackUntilItIsAskedFor) {
    begin();
    type("R", "519");
    type("theta_R", "-4");
    mark();
    ASSERT_EQ(verdict("R"), QStringLiteral("right but for its last figure"));
    const QString all = everything();
    EXPECT_FALSE(all.contains(QStringLiteral("520")) || all.contains(QStringLiteral("3.6")))
        << findings().toStdString();
    EXPECT_FALSE(findings().contains(QStringLiteral("to the figures that are asked for it is")));
    press("ownShow");
    EXPECT_TRUE(findings().contains(QStringLiteral("it is 520 N"))) << findings().toStdString();
}

TEST_F(MarkedAnswer, AnotherUnitOfTheSheetIsTheFieldsToo) {
    begin();
    type("R", "520");
    trigger("unit-kN"); // the forces stay: R is 0.52 kN
    EXPECT_EQ(field("R")->accessibleName(), QStringLiteral("Magnitude of R in kN"));
    EXPECT_EQ(field("R")->text(), QStringLiteral("520")) << "as it was typed";
    mark();
    EXPECT_EQ(verdict("R"), QStringLiteral("right but for the unit"));
    type("R", "0.52");
    mark();
    EXPECT_EQ(verdict("R"), QStringLiteral("right"));
}

TEST_F(MarkedAnswer, TheSketchsFileKnowsNothingOfIt) {
    ASSERT_TRUE(window->saveTo(file("before.json")));
    begin();
    type("R", "4711");
    mark();
    ASSERT_TRUE(window->saveTo(file("after.json")));
    EXPECT_EQ(bytesOf(file("before.json")), bytesOf(file("after.json")));
}

TEST_F(MarkedAnswer, ADrawnVectorIsMarkedAndATypedValueCountsBeforeIt) {
    begin();
    Canvas& canvas = window->canvas();
    ASSERT_EQ(answer().drawable(), std::vector<VectorId>{kSumVector});
    answer().draw(kSumVector, Eigen::Vector2d(100, 200)); // somewhere to take it
    QTest::mousePress(&canvas, Qt::LeftButton, {}, pixel(100, 200));
    QTest::mouseMove(&canvas, pixel(300, 20));
    QTest::mouseMove(&canvas, pixel(518.8, -33.1)); // R_x and R_y, hand formula
    QTest::mouseRelease(&canvas, Qt::LeftButton, {}, pixel(518.8, -33.1));
    ASSERT_TRUE(answer().drawn(kSumVector));
    EXPECT_FALSE(window->document().canUndo()) << "it is no part of the sketch";
    EXPECT_TRUE(field("R")->placeholderText().endsWith(QStringLiteral(" N")));
    EXPECT_TRUE(field("R")->text().isEmpty());
    mark();
    EXPECT_EQ(verdict("R"), QStringLiteral("right"));
    EXPECT_EQ(verdict("theta_R"), QStringLiteral("right"));
    type("R", "335");
    mark();
    EXPECT_EQ(verdict("R"), QStringLiteral("not right: see below"));
    press("ownForget");
    EXPECT_FALSE(answer().drawn(kSumVector));
    EXPECT_TRUE(field("R")->placeholderText().isEmpty());
}

TEST_F(MarkedAnswer, EscapeTakesADragBack) {
    begin();
    Canvas& canvas = window->canvas();
    answer().draw(kSumVector, Eigen::Vector2d(100, 200));
    canvas.setFocus();
    QTest::mousePress(&canvas, Qt::LeftButton, {}, pixel(100, 200));
    QTest::mouseMove(&canvas, pixel(200, 100));
    QTest::mouseMove(&canvas, pixel(300, 50));
    canvas.catchUp();
    ASSERT_NEAR(answer().drawn(kSumVector)->x(), 300, 3);
    QTest::keyClick(&canvas, Qt::Key_Escape);
    EXPECT_TRUE(answer().isOn());
    EXPECT_NEAR(answer().drawn(kSumVector)->x(), 100, 1e-9);
    QTest::mouseRelease(&canvas, Qt::LeftButton, {}, pixel(300, 50));
    EXPECT_NEAR(answer().drawn(kSumVector)->x(), 100, 1e-9);
}

TEST_F(MarkedAnswer, WhatIsGivenOfASoughtVectorHoldsItsTip) {
    Sketch sketch = raft();
    sketch.forces[0].magnitude = {};
    sketch.forces[1].magnitude = {};
    sketch.sum.magnitude.value = 500;
    sketch.sum.direction.form = AngleForm{0};
    window->document().replace(sketch, {});
    begin();
    EXPECT_EQ(answer().drawable(), (std::vector<VectorId>{forceVector(0), forceVector(1)}));
    answer().draw(forceVector(0), Eigen::Vector2d(200, 0));
    const Eigen::Vector2d tip = *answer().drawn(forceVector(0));
    EXPECT_NEAR(std::atan2(tip.y(), tip.x()), 25 * std::acos(-1.0) / 180, 1e-12);
    EXPECT_NEAR(std::hypot(tip.x(), tip.y()), 200 * std::cos(25 * std::acos(-1.0) / 180), 1e-9);
}

/// Whatever is answered: before the answer is asked for, no sentence has a value that isn't found yet.
TEST_F(MarkedAnswer, NoSentenceGivesAnAnswerAwayBeforeItIsAskedFor) {
    const Sketch sketch = raft();
    const Marker marker(sketch, solve(sketch));
    std::mt19937 random(20261129);
    std::uniform_real_distribution<double> size(100, 900), way(-180, 180);
    // Numbers of usual slips on the raft: the sum and the difference of the magnitudes, the diagonals, the
    // right triangle, the axis (hand formulas).
    std::vector<std::pair<std::string, std::string>> tried{
        {"335", "-23.1"}, {"615", ""},  {"65", "-7.5"}, {"437", "-13.9"}, {"", "3.6"},     {"", "93.6"},
        {"", "86.4"},     {"5200", ""}, {"", "176.4"},  {"", "28.6"},     {"250", "53.6"}, {"", "-40"}};
    for (int i = 0; i < 300; ++i)
        tried.emplace_back(std::to_string(std::lround(size(random))),
                           std::to_string(std::lround(way(random))));
    int slips = 0;
    for (const auto& [r, theta] : tried) {
        Attempt attempt;
        if (!r.empty())
            attempt.values.push_back(std::get<GivenValue>(marker.read("R", r)));
        if (!theta.empty())
            attempt.values.push_back(std::get<GivenValue>(marker.read("theta_R", theta)));
        const Marking marking = marker.mark(attempt);
        slips += static_cast<int>(marking.slips.size());
        for (const MarkedText::Block& block : findingBlocks(marking, false)) {
            QString words = block.working ? MarkedText::plainOf(*block.working)
                                          : QString::fromStdString(toText(block.prose));
            for (const MarkedQuantity& one : marking.quantities) {
                const QRegularExpression told(one.name == "R"
                                                  ? QStringLiteral("(?<![0-9.])(520|519\\.[89])")
                                                  : QStringLiteral("(?<![0-9.])3\\.6(4|5|\u00b0)"));
                EXPECT_FALSE(one.verdict != Verdict::right && words.contains(told))
                    << r << ", " << theta << ": " << words.toStdString();
            }
        }
    }
    EXPECT_GT(slips, 12);
}

/// The numbers that stand in a text, as they stand; the factor between degrees and radians is none of a
/// question.
QStringList numbersIn(QString words) {
    words.remove(QString::fromUtf8("\u03C0/180"));
    static const QRegularExpression number(QStringLiteral("[0-9]+([.][0-9]+)?"));
    QStringList all;
    for (auto match = number.globalMatch(words); match.hasNext();)
        all << match.next().captured();
    return all;
}

QString wordsOf(const std::vector<MarkedText::Block>& blocks) {
    QStringList all;
    for (const MarkedText::Block& block : blocks)
        all << (block.working ? MarkedText::plainOf(*block.working)
                              : QString::fromStdString(toText(block.prose)));
    return all.join(u'\n');
}

/// Every family: what the slips of a sample give is answered in turn.
template <class Take>
void forSlipsOfSamples(MainWindow& window, Take take) {
    std::mt19937 random(14);
    std::uniform_real_distribution<double> part(0.4, 1.9), way(-180, 180);
    const QDir samples(QStringLiteral(TAILPOINT_SAMPLES));
    for (const QString& name : samples.entryList({QStringLiteral("*.json")})) {
        ASSERT_TRUE(window.openPath(samples.filePath(name)));
        const Sketch& sketch = window.document().sketch();
        const Marker marker(sketch, solve(sketch));
        if (marker.refusal())
            continue;
        std::vector<std::pair<std::string, double>> waiting;
        for (const MarkedQuantity& one : marker.mark({}).quantities)
            for (int i = 0; i < 25; ++i)
                waiting.emplace_back(one.name, one.id.what == What::magnitude ? part(random) * *one.expected
                                                                              : way(random));
        for (std::size_t i = 0; i < std::min<std::size_t>(waiting.size(), 250); ++i) {
            const auto [quantity, value] = waiting[i];
            auto read = marker.read(quantity, QString::number(value, 'f', 1).toStdString());
            if (!std::holds_alternative<GivenValue>(read))
                continue;
            const Marking marking = marker.mark({{std::get<GivenValue>(std::move(read))}});
            for (const Finding& slip : marking.slips)
                for (const auto& gives : slip.gives)
                    waiting.push_back(gives);
            take(sketch, marking, name.toStdString() + ", " + quantity + " = " + std::to_string(value));
        }
    }
}

TEST_F(MarkedAnswer, NoSampleIsGivenAwayByWhatIsSaidOfASlip) {
    int said = 0;
    forSlipsOfSamples(*window, [&](const Sketch& sketch, const Marking& marking, const std::string& which) {
        const QString given = QString::fromStdString(plain(question(sketch)));
        const QStringList numbers = numbersIn(wordsOf(findingBlocks(marking, false)));
        said += static_cast<int>(numbers.size());
        for (const MarkedQuantity& one : marking.quantities) {
            const QStringList told = numbersIn(QString::fromStdString(one.expectedText));
            EXPECT_FALSE(one.asked && one.verdict != Verdict::right && !told.isEmpty() &&
                         numbers.contains(told.front()) && !given.contains(told.front()))
                << which << " tells " << one.name << ": "
                << wordsOf(findingBlocks(marking, false)).toStdString();
        }
    });
    EXPECT_GT(said, 1000);
}

/// As long as it isn't found no arrow of a sought vector is the right one, and no label has its number.
TEST_F(MarkedAnswer, NoSampleIsGivenAwayByTheDrawingOfASlip) {
    int drawn = 0;
    forSlipsOfSamples(*window, [&](const Sketch& sketch, const Marking& marking, const std::string& which) {
        const Solved solved = solve(sketch);
        const QString given = QString::fromStdString(plain(question(sketch)));
        const auto isOpen = [&](VectorId vector) {
            return std::any_of(marking.quantities.begin(), marking.quantities.end(), [&](const auto& one) {
                return one.asked && one.id.of == vector && one.verdict != Verdict::right;
            });
        };
        for (const AttemptStroke& stroke : slipStrokes(sketch, marking)) {
            ++drawn;
            ASSERT_TRUE(stroke.from.allFinite() && stroke.to.allFinite() && std::isfinite(stroke.sweep))
                << which;
            for (const Solution& solution : solved.solutions)
                if (stroke.kind == AttemptStroke::Kind::arrow && stroke.of != kNobody && isOpen(stroke.of)) {
                    const SolvedForce& right =
                        stroke.of == kSumVector ? solution.sum : solution.forces[stroke.of.index];
                    EXPECT_GT((stroke.to - stroke.from - right.vector).norm(), 1e-3 * right.magnitude)
                        << which;
                }
            const QStringList numbers = numbersIn(QString::fromStdString(plainText(stroke.label)));
            const auto isOwn = [&](double number) { // may be another one's; within what a slip is matched by
                return std::any_of(
                    marking.quantities.begin(), marking.quantities.end(), [&](const auto& one) {
                        return one.given && std::abs(std::abs(*one.given) - number) <= 0.015 * number;
                    });
            };
            for (const MarkedQuantity& one : marking.quantities) {
                const QStringList told = numbersIn(QString::fromStdString(one.expectedText));
                EXPECT_FALSE(one.asked && !(told.isEmpty() || isOwn(told.front().toDouble())) &&
                             one.verdict != Verdict::right && !told.isEmpty() &&
                             numbers.contains(told.front()) && !given.contains(told.front()))
                    << which << " shows " << one.name << ": " << plainText(stroke.label);
            }
        }
    });
    EXPECT_GT(drawn, 1000);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
