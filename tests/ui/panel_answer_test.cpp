// SPDX-License-Identifier: MIT
// What the panel says of the question: the answer or both, the check, the tables of values, its sections.
#include "panel_fixture.h"
#include "tests/core/explain/questions.h"
#include "tests/support/loose.h"

#include "core/explain/explain.h"
#include "ui/panel/answer_text.h"
#include "ui/panel/cell_text.h"
#include "ui/panel/check_text.h"
#include "ui/panel/copied_values.h"
#include "ui/panel/given_model.h"
#include "ui/panel/panel_table.h"

#include <QAccessible>
#include <QDir>
#include <QHeaderView>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTextDocument>
#include <algorithm>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

TEST_F(PanelTest, SaysTheQuestionAndTheAnswerInWords) {
    EXPECT_EQ(plainOf(panel, "answer"), QStringLiteral("R = 520 N"));
    const QString detail = plainOf(panel, "answerDetail");
    EXPECT_TRUE(detail.startsWith(QStringLiteral("3.6° clockwise from +x"))) << detail.toStdString();
    EXPECT_TRUE(detail.contains(QStringLiteral("519 N")) && detail.contains(QStringLiteral("−33.1 N")));
    EXPECT_TRUE(plainOf(panel, "question").contains(QStringLiteral("R")));
    EXPECT_EQ(plainOf(panel, "reference"), QStringLiteral("N · from +x, counter-clockwise"));
}

// Keyed: 340 cos 25 + 275 cos(-40) = 518.808, 340 sin 25 + 275 sin(-40) = -33.076; their root of squares is
// 519.861 and their direction -3.648 degrees.
TEST_F(PanelTest, TheCheckComparesPrintedNumbersAndJudgesInWords) {
    const auto judgement = [&](Method method) { // of the solution's own check
        ExplainOptions options;
        options.method = method;
        const auto steps = document.result().worked(options)->steps;
        const auto check = std::find_if(steps.rbegin(), steps.rend(),
                                        [](const Step& step) { return step.key == StepKey::check; });
        return QString::fromStdString(toText(check->conclusion.front())).remove(u'_');
    };
    EXPECT_EQ(
        plainOf(panel, "check"),
        QStringLiteral("Check by components\nRx = 518.81 N, Ry = −33.08 N, R = 519.86 N, θR = −3.648°\n") +
            judgement(Method::suited));
    EXPECT_TRUE(judgement(Method::suited).contains(QStringLiteral("R = 519.86 N and θR = −3.648°")));
    panel.setMethod(Method::components);
    EXPECT_TRUE(plainOf(panel, "check")
                    .startsWith(QStringLiteral("Check by the force triangle\nR = 519.86 N, θR = −3.648°\n") +
                                judgement(Method::components)))
        << "the other way than the solution's, whichever that is";
}

/// Any question by any method: a check without a judgement is none.
TEST_F(PanelTest, TheCheckIsToldWhateverIsAskedAndOnlyWhereItJudges) {
    constexpr std::uint64_t seed = 20261129;
    testing::Dice dice(seed);
    int told = 0;
    for (int i = 0; i < 1500; ++i) {
        const Result result(testing::someQuestion(dice, i % testing::kQuestionKinds));
        for (const Method method : {Method::suited, Method::triangle, Method::components}) {
            ExplainOptions options;
            options.method = method;
            options.handRounding = i % 2 == 1;
            const QString said = checkText(result, options);
            const auto steps = result.worked(options)->steps;
            const auto check = std::find_if(steps.rbegin(), steps.rend(),
                                            [](const Step& step) { return step.key == StepKey::check; });
            const bool judges = check != steps.rend() && !check->conclusion.empty() &&
                                !result.sketch.forces.empty() && !result.solved.solutions.empty();
            ASSERT_EQ(!said.isEmpty(), judges) << "seed " << seed << ", question " << i;
            told += judges ? 1 : 0;
        }
    }
    EXPECT_GT(told, 1000);
}

TEST_F(PanelTest, TheCheckSaysWhatTheCheckOfTheSolutionSaysAndCountsNoDigits) {
    static const QRegularExpression digits(QStringLiteral("to \\d+ digits"));
    int checked = 0;
    for (const QFileInfo& file :
         QDir(QStringLiteral(TAILPOINT_SAMPLES)).entryInfoList({QStringLiteral("*.json")})) {
        SketchDocument sample;
        ASSERT_FALSE(sample.open(file.filePath()));
        for (const bool byHand : {false, true}) {
            const Result result(sample.sketch());
            ExplainOptions options;
            options.handRounding = byHand;
            const QString said = QTextDocumentFragment::fromHtml(checkText(result, options)).toPlainText();
            EXPECT_FALSE(digits.match(said).hasMatch()) << said.toStdString();
            const auto steps = result.worked(options)->steps;
            const bool hasCheck = !result.solved.solutions.empty() && // else it checks no answer
                                  std::any_of(steps.begin(), steps.end(),
                                              [](const Step& step) { return step.key == StepKey::check; });
            EXPECT_EQ(!said.isEmpty(), hasCheck) << file.fileName().toStdString();
            checked += hasCheck ? 1 : 0;
        }
    }
    EXPECT_GT(checked, 40);
}

TEST_F(PanelTest, ListsComponentsInteriorAnglesSidesAndOppositeAngles) {
    EXPECT_EQ(cellText(panel, "vectorTable", 3, 0), QStringLiteral("R"));
    EXPECT_EQ(cellText(panel, "vectorTable", 0, 1), QStringLiteral("magnitude, N"));
    EXPECT_EQ(cellText(panel, "vectorTable", 3, 1), QStringLiteral("520"));
    EXPECT_EQ(cellText(panel, "vectorTable", 3, 4), QStringLiteral("−33.1"));
    EXPECT_EQ(cellText(panel, "angleTable", 1, 2), QStringLiteral("65.0°"));
    EXPECT_EQ(cellText(panel, "angleTable", 2, 2), QStringLiteral("115.0°"));
    EXPECT_EQ(cellText(panel, "angleTable", 4, 1), QStringLiteral("340 N"));
}

TEST_F(PanelTest, FollowsAnEditWithinAFrameAndKeepsItsWidgets) {
    const QList<QWidget*> before = panel.findChildren<QWidget*>();
    for (int step = 1; step <= 20; ++step) {
        Sketch sketch = raft();
        sketch.forces[0].magnitude.value = 340 + step;
        document.preview(sketch, QStringLiteral("drag"));
    }
    settle();
    EXPECT_EQ(cellText(panel, "givenTable", 0, GivenModel::MagnitudeColumn), QStringLiteral("360 N"));
    EXPECT_TRUE(plainOf(panel, "answer").startsWith(QStringLiteral("R = 53")));
    EXPECT_EQ(panel.findChildren<QWidget*>(), before);
}

TEST_F(PanelTest, RefreshesOnceHoweverManyEditsAFrameBrings) {
    int refreshes = 0;
    QObject listener;
    QObject::connect(table->model(), &QAbstractItemModel::dataChanged, &listener, [&] { ++refreshes; });
    for (int step = 1; step <= 50; ++step) {
        Sketch sketch = raft();
        sketch.forces[0].magnitude.value = 340 + step;
        document.preview(sketch, QStringLiteral("drag"));
    }
    EXPECT_TRUE(waitFor([&] { return refreshes > 0; }));
    EXPECT_EQ(refreshes, 1);
}

TEST_F(PanelTest, OffersTheOtherOfTwoAnswers) {
    Sketch sketch = raft(); // line of P at 40, a pull Q of 200 N, R = 260 N along +x: line meets circle twice
    sketch.forces[0].magnitude = {};
    sketch.forces[0].direction.form = AngleForm{40};
    sketch.forces[1].magnitude.value = 200;
    sketch.forces[1].direction = {};
    sketch.sum.magnitude.value = 260;
    sketch.sum.direction.form = AngleForm{0};
    document.edit(sketch, QStringLiteral("two"));
    settle();
    ASSERT_EQ(document.result().solved.status, Status::two);
    auto* other = child<QPushButton>(panel, "otherAnswer");
    EXPECT_TRUE(other->isVisible());
    EXPECT_EQ(other->text(), QStringLiteral("Draw answer 2"));
    const QString first = plainOf(panel, "answer");
    QTest::mouseClick(other, Qt::LeftButton);
    settle();
    EXPECT_EQ(document.result().chosen, 1u);
    EXPECT_NE(plainOf(panel, "answer"), first);
    EXPECT_EQ(other->text(), QStringLiteral("Draw answer 1"));
}

/// The sample of two answers: P along 40 degrees, Q of 260 N, R = 400 N at 10 degrees. Keyed: the angle
/// opposite R is asin(400 sin 30 / 260) = 50.285 or 129.715 degrees; P = 260 sin(20.285)/sin 30 = 180.28 or
/// 260 sin(99.715)/sin 30 = 512.54, Q at 10 - 20.285 = -10.285 or 10 - 99.715 = -89.715.
Sketch twoPulls() {
    Sketch sketch = raft();
    sketch.forces[0].magnitude = {};
    sketch.forces[0].direction.form = AngleForm{40};
    sketch.forces[1].magnitude.value = 260;
    sketch.forces[1].direction = {};
    sketch.sum.magnitude.value = 400;
    sketch.sum.direction.form = AngleForm{10};
    return sketch;
}

TEST_F(PanelTest, BothAnswersAreToldAndWhichOneIsDrawn) {
    document.edit(twoPulls(), QStringLiteral("two"));
    settle();
    EXPECT_EQ(child<QLabel>(panel, "answerName")->text(), QStringLiteral("Answer 1 of 2, drawn"));
    EXPECT_EQ(plainOf(panel, "answer"), QStringLiteral("P = 180 N\nQ at −10.3°"));
    EXPECT_EQ(child<QLabel>(panel, "otherAnswerName")->text(), QStringLiteral("Answer 2 of 2"));
    EXPECT_EQ(plainOf(panel, "otherAnswerValues"), QStringLiteral("P = 513 N, Q at −89.7°"));
    document.choose(1);
    settle();
    EXPECT_EQ(child<QLabel>(panel, "answerName")->text(), QStringLiteral("Answer 2 of 2, drawn"));
    EXPECT_EQ(plainOf(panel, "answer"), QStringLiteral("P = 513 N\nQ at −89.7°"));
    EXPECT_EQ(plainOf(panel, "otherAnswerValues"), QStringLiteral("P = 180 N, Q at −10.3°"));
    document.edit(raft(), QStringLiteral("one"));
    settle();
    EXPECT_FALSE(child<QLabel>(panel, "answerName")->isVisible());
    EXPECT_FALSE(child<QLabel>(panel, "otherAnswerName")->isVisible());
    EXPECT_FALSE(child<QLabel>(panel, "otherAnswerValues")->isVisible());
    EXPECT_FALSE(child<QPushButton>(panel, "otherAnswer")->isVisible());
}

TEST_F(PanelTest, TheTableOfValuesHasBothAnswersInOneOrderWhicheverIsDrawn) {
    document.edit(twoPulls(), QStringLiteral("two"));
    settle();
    auto* vectors = child<PanelTable>(panel, "vectorTable");
    const auto tableText = [&] {
        vectors->selectAll();
        return vectors->selectedText();
    };
    const QString rest = QStringLiteral("P\t180\t40.0°\t138\t116\nQ\t260\t−10.3°\t256\t−46.4\n"
                                        "Answer 2 of 2%2\t\t\t\t\n"
                                        "P\t513\t40.0°\t393\t329\nQ\t260\t−89.7°\t1.29\t−260\n");
    const QString whole = QStringLiteral("\tmagnitude, N\tdirection\tx, N\ty, N\nR\t400\t10.0°\t394\t69.5\n"
                                         "Answer 1 of 2%1\t\t\t\t\n") +
                          rest;
    EXPECT_EQ(tableText(), whole.arg(QStringLiteral(", drawn"), QString()));
    EXPECT_EQ(cellText(panel, "angleTable", 0, 0), QStringLiteral("Parallelogram, answer 1"));
    EXPECT_TRUE(plainOf(panel, "check").startsWith(QStringLiteral("Answer 1 of 2, drawn\n")));
    document.choose(1);
    settle();
    EXPECT_EQ(tableText(), whole.arg(QString(), QStringLiteral(", drawn")));
    EXPECT_EQ(cellText(panel, "angleTable", 0, 0), QStringLiteral("Parallelogram, answer 2"));
}

/// A reader is told the same cells as an eye sees, and of which vector.
TEST_F(PanelTest, BothAnswersAreReadOut) {
    document.edit(twoPulls(), QStringLiteral("two"));
    settle();
    auto* vectors = child<QTableView>(panel, "vectorTable");
    QAccessibleInterface* read = QAccessible::queryAccessibleInterface(vectors);
    ASSERT_TRUE(read && read->tableInterface());
    const auto cell = [&](int row, int column) {
        return read->tableInterface()->cellAt(row, column)->text(QAccessible::Name);
    };
    EXPECT_EQ(cell(2, 0), QStringLiteral("Answer 1 of 2, drawn"));
    EXPECT_EQ(cell(3, 0), QStringLiteral("P"));
    EXPECT_EQ(cell(3, 1), QStringLiteral("magnitude of P: 180"));
    EXPECT_EQ(cell(5, 0), QStringLiteral("Answer 2 of 2"));
    EXPECT_EQ(cell(6, 1), QStringLiteral("magnitude of P: 513"));
    EXPECT_EQ(cell(7, 2), QStringLiteral("direction of Q: −89.7°"));
}

TEST_F(PanelTest, ARowOfTheAnswerThatIsNotDrawnPointsAtNoArrow) {
    document.edit(twoPulls(), QStringLiteral("two"));
    panel.resize(400, 1400);
    settle();
    int pointed = kSumIndex;
    QObject listener;
    QObject::connect(&panel, &Panel::pointedAt, &listener, [&](int vector) { pointed = vector; });
    auto* vectors = child<QTableView>(panel, "vectorTable");
    const auto at = [&](int row) {
        QTest::mouseMove(vectors->viewport(), vectors->visualRect(vectors->model()->index(row, 1)).center());
        return pointed;
    };
    EXPECT_EQ(at(1), kSumIndex);
    EXPECT_EQ(at(2), kNoVector) << "the name of an answer";
    EXPECT_EQ(at(3), 0);
    EXPECT_EQ(at(4), 1);
    EXPECT_EQ(at(6), kNoVector);
    document.choose(1);
    settle();
    EXPECT_EQ(at(3), kNoVector);
    EXPECT_EQ(at(7), 1);
}

TEST_F(PanelTest, CopiedValuesHaveBothAnswersAndTheCheck) {
    const Result result(twoPulls());
    const QString all = valuesAsText(result, {});
    for (const char* line :
         {"Answer 1 of 2, drawn\nP = 180 N\nQ at −10.3°\n", "Answer 2 of 2\nP = 513 N, Q at −89.7°\n",
          "P\t180\t40.0\t138\t116\n", "P\t513\t40.0\t393\t329\n", "Check by components\n"}) {
        EXPECT_TRUE(all.contains(QString::fromUtf8(line))) << line << all.toStdString();
    }
}

TEST_F(PanelTest, ARangeThatIsLongerThanItsLineIsBrokenAndWhole) {
    panel.resize(280, 900);
    Sketch given = raft();
    given.forces[0] = testing::loose(given.forces[0], 5, 2);
    document.edit(given, QStringLiteral("with tolerances"));
    settle();
    const auto* detail = child<QLabel>(panel, "answerDetail");
    QTextDocument lines;
    lines.setDefaultFont(detail->font());
    lines.setHtml(detail->text());
    ASSERT_GT(lines.idealWidth(), detail->width()) << "there is nothing to be broken";
    EXPECT_TRUE(waitFor([&] { return detail->height() >= detail->heightForWidth(detail->width()); }));
    EXPECT_TRUE(detail->wordWrap());
    document.edit(raft(), QStringLiteral("without"));
    settle();
    EXPECT_FALSE(detail->wordWrap()) << "nothing moves while a drag makes numbers longer";
}

/// As narrow as the panel is in a small window at twice the size: words take the empty cells behind them, and
/// no value is out of sight.
TEST_F(PanelTest, TheTablesOfValuesNeedNoScrollingSidewaysInANarrowPanel) {
    document.edit(twoPulls(), QStringLiteral("two"));
    panel.resize(318, 900);
    settle();
    for (const char* name : {"vectorTable", "angleTable"}) {
        auto* values = child<QTableView>(panel, name);
        EXPECT_TRUE(waitFor([&] { return values->horizontalScrollBar()->maximum() == 0; })) << name;
        EXPECT_LE(values->columnViewportPosition(values->model()->columnCount() - 1) +
                      values->columnWidth(values->model()->columnCount() - 1),
                  values->viewport()->width())
            << name;
    }
}

/// 300 pixels are the panel's width in a window of 1366 by 768 pixels at twice the size. Nothing is cut; what
/// then has no room (five columns in kN, a name of three words, a direction with its tolerance) scrolls.
TEST_F(PanelTest, NoSampleButThreeNeedsScrollingSidewaysInASmallWindowAtTwiceTheSize) {
    std::string sideways;
    for (const QFileInfo& file :
         QDir(QStringLiteral(TAILPOINT_SAMPLES)).entryInfoList({QStringLiteral("*.json")})) {
        SketchDocument sample;
        ASSERT_FALSE(sample.open(file.filePath()));
        document.edit(sample.sketch(), QStringLiteral("another sample"));
        panel.resize(300, 384);
        settle();
        for (const char* name : {"vectorTable", "angleTable", "givenTable"}) {
            const auto* values = child<QTableView>(panel, name);
            const auto scrolls = [&] { return values->horizontalScrollBar()->maximum() > 0; };
            const auto isLaid = [&] { // the bar comes with a layout of its own
                return scrolls() == (values->horizontalHeader()->length() > values->viewport()->width());
            };
            EXPECT_TRUE(!values->isVisible() || waitFor(isLaid)) << name;
            if (scrolls())
                sideways += std::string(name) + " of " + file.fileName().toStdString() + "; ";
            for (int row = 0; row < values->model()->rowCount(); ++row) {
                const QModelIndex last = values->model()->index(row, values == table ? 2 : 1);
                const double letters = last.data(HeadingRole).toBool() ? kHeadingInTable : 1;
                EXPECT_LE(letters * values->fontMetrics().horizontalAdvance(last.data().toString()) +
                              2 * kTightGap,
                          values->columnWidth(last.column()))
                    << last.data().toString().toStdString() << " of " << file.fileName().toStdString();
            }
        }
    }
    EXPECT_EQ(sideways, "vectorTable of mooring-gon.json; angleTable of no-resultant.json; "
                        "givenTable of with-tolerance.json; ");
}

/// Names of 16 characters, values with an exponent, in the narrowest panel.
TEST_F(PanelTest, NeitherAnswerIsCutHoweverLongItIs) {
    Sketch sketch = twoPulls();
    sketch.forces[0].name = "WWWWWWWWWWWWWWW1";
    sketch.forces[1].name = "WWWWWWWWWWWWWWW2";
    sketch.figures = 6;
    document.edit(sketch, QStringLiteral("long"));
    panel.resize(300, 700);
    settle();
    auto* other = child<QLabel>(panel, "otherAnswerValues");
    QCoreApplication::sendPostedEvents();
    EXPECT_GE(other->height(), other->heightForWidth(other->width()));
    EXPECT_TRUE(
        waitFor([&] { return other->parentWidget()->height() >= other->heightForWidth(other->width()); }));
    EXPECT_EQ(child<QLabel>(panel, "check")->heightForWidth(child<QLabel>(panel, "check")->width()),
              child<QLabel>(panel, "check")->height());
}

TEST_F(PanelTest, TooManyUnknownsOfferTheFieldToTypeIn) {
    Sketch sketch = raft();
    sketch.forces[0].magnitude = {};
    document.edit(sketch, QStringLiteral("three unknowns"));
    settle();
    ASSERT_EQ(document.result().solved.status, Status::underdetermined);
    EXPECT_FALSE(plainOf(panel, "findMessage").isEmpty());
    EXPECT_FALSE(child<QLabel>(panel, "answer")->isVisible());
    QPushButton* mend = nullptr;
    for (QPushButton* button : panel.findChildren<QPushButton*>()) {
        mend = button->text() == QStringLiteral("Give the magnitude of P") ? button : mend;
    }
    ASSERT_TRUE(mend);
    QTest::mouseClick(mend, Qt::LeftButton);
    ASSERT_TRUE(field());
    QTest::keyClicks(field(), QStringLiteral("340"));
    QTest::keyClick(field(), Qt::Key_Return);
    EXPECT_EQ(document.result().solved.status, Status::unique);
}

TEST_F(PanelTest, NothingToFindOffersToFreeTheResultant) {
    Sketch sketch = raft();
    sketch.sum.magnitude.value = 500;
    sketch.sum.direction.form = AngleForm{0};
    document.edit(sketch, QStringLiteral("all given"));
    settle();
    ASSERT_EQ(document.result().solved.status, Status::overdetermined);
    auto* mend = child<QPushButton>(panel, "mend0");
    ASSERT_TRUE(mend && mend->isVisible());
    QTest::mouseClick(mend, Qt::LeftButton);
    EXPECT_EQ(document.result().solved.status, Status::unique);
}

TEST_F(PanelTest, ThePointerOnARowPointsAtItsVector) {
    QList<int> pointed;
    QObject listener;
    QObject::connect(&panel, &Panel::pointedAt, &listener, [&](int vector) { pointed << vector; });
    auto* vectors = child<QTableView>(panel, "vectorTable");
    const auto moveTo = [](QTableView* view, int row) {
        QTest::mouseMove(view->viewport(), view->visualRect(view->model()->index(row, 1)).center());
    };
    moveTo(table, 0);
    moveTo(table, 1);
    moveTo(table, 2);
    EXPECT_EQ(pointed, (QList<int>{0, 1, kSumIndex}));
    pointed.clear();
    moveTo(vectors, 2);
    moveTo(vectors, 3);
    EXPECT_EQ(pointed.last(), kSumIndex);
    EXPECT_TRUE(pointed.contains(1));
}

TEST_F(PanelTest, AnEmptySketchShowsNoSolutionOfNothing) {
    document.replace(emptySketch(), QString());
    settle();
    EXPECT_FALSE(child<QWidget>(panel, "fold-solution")->isVisibleTo(&panel));
    EXPECT_FALSE(child<QWidget>(panel, "solution")->isVisibleTo(&panel));
}

TEST_F(PanelTest, NoLineOfTheAnswerIsCut) {
    for (const bool smallest : {false, true, false}) {
        Sketch sketch = raft();
        if (smallest) { // as many lines, with a symbol before each
            sketch.forces[1] = {"Q", {}, {}, false, {}};
            sketch.sum.direction.form = AngleForm{0};
            sketch.smallest = "Q";
        }
        document.edit(sketch, QStringLiteral("another question"));
        settle();
        const auto* detail = panel.findChild<QLabel*>(QStringLiteral("answerDetail"));
        ASSERT_TRUE(detail);
        EXPECT_GE(detail->height(), detail->sizeHint().height());
    }
}

TEST_F(PanelTest, ASectionFoldsByPointerAndKeyAndStaysFolded) {
    auto* check = panel.findChild<QWidget*>(QStringLiteral("check"));
    auto* fold = panel.findChild<QAbstractButton*>(QStringLiteral("fold-check"));
    ASSERT_TRUE(check && fold);
    const QSignalSpy changed(&panel, &Panel::foldingChanged);
    QTest::mouseClick(fold, Qt::LeftButton);
    EXPECT_FALSE(check->isVisibleTo(&panel));
    EXPECT_EQ(panel.folded(), QStringList(QStringLiteral("check")));
    Sketch sketch = raft();
    sketch.forces[0].magnitude.value = 350;
    document.edit(sketch, QStringLiteral("drag"));
    settle();
    EXPECT_FALSE(check->isVisibleTo(&panel)) << "new numbers unfold nothing";
    QTest::keyClick(fold, Qt::Key_Right);
    EXPECT_TRUE(check->isVisibleTo(&panel));
    EXPECT_EQ(changed.count(), 2);
    panel.setFolded({QStringLiteral("values"), QStringLiteral("solution")});
    EXPECT_EQ(panel.folded().size(), 2);
    EXPECT_FALSE(panel.findChild<QWidget*>(QStringLiteral("vectorTable"))->isVisibleTo(&panel));
}

/// A number that is cut, or set so small that it can't be read, is none: the widths follow the numbers. 354
/// pixels are the tables' width in a window of 1366.
TEST_F(PanelTest, NoNumberIsCutHoweverManyFiguresItHas) {
    for (const int figures : {3, 6, 12}) {
        Sketch many = raft();
        many.forceUnit = ForceUnit::kN;
        many.figures = figures;
        many.forces[0].magnitude.value = 0.0340;
        many.forces[1].magnitude.value = 123456.789;
        document.replace(many, {});
        panel.resize(390, 700);
        settle();
        for (const char* name : {"vectorTable", "angleTable", "givenTable"}) {
            const auto* view = child<QTableView>(panel, name);
            for (int row = 0; row < view->model()->rowCount(); ++row) {
                for (int column = 1; column < (view == table ? 3 : view->model()->columnCount()); ++column) {
                    const QString text = view->model()->index(row, column).data().toString();
                    const bool heading = view->model()->index(row, column).data(HeadingRole).toBool();
                    const double letters = heading ? kHeadingInTable : 1; // a heading's are smaller
                    EXPECT_LE(letters * view->fontMetrics().horizontalAdvance(text) + 8,
                              view->columnWidth(column))
                        << name << ": " << text.toStdString() << " at " << figures;
                }
            }
            const int all = view->horizontalHeader()->length();
            EXPECT_GE(all, view->viewport()->width() - 1);
            if (figures == 3) {
                EXPECT_EQ(all, view->viewport()->width()) << name << " has room enough";
            }
        }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
