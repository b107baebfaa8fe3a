// SPDX-License-Identifier: MIT
// Pointing: a step of the solution lights its parts on the sheet, and a part of the sheet its step.
#include "canvas_fixture.h"
#include "tests/support/steps.h"

#include "ui/panel/panel.h"
#include "ui/panel/solution_view.h"
#include "ui/style/theme.h"

#include <QAbstractItemView>
#include <QEnterEvent>
#include <QScrollBar>
#include <QTimer>

namespace tailpoint {
namespace TAILPOINT_FILE {

using Kind = FigureShape::Kind;

class Pointing : public CanvasTest {
protected:
    void SetUp() override {
        CanvasTest::SetUp();
        QObject::connect(&panel, &Panel::partsPointed, &canvas, &Canvas::lightParts);
        QObject::connect(&canvas, &Canvas::partPointed, &panel, &Panel::lightPart);
        QObject::connect(&canvas, &Canvas::partPointed, &canvas,
                         [this](const std::optional<FigurePart>& part) { told.push_back(part); });
        panel.resize(400, 600);
        panel.show();
        ASSERT_TRUE(
            QTest::qWaitForWindowActive(&panel)); // its table takes the keyboard, and is scrolled to, once
        solution = panel.findChild<SolutionView*>(QStringLiteral("solution"));
        ASSERT_NE(solution, nullptr);
        ASSERT_TRUE(QTest::qWaitFor([this] { return solution->worked().steps.size() > 10; }));
    }

    int stepWithKey(const char* key) const {
        const auto& steps = solution->worked().steps;
        for (std::size_t i = 0; i < steps.size(); ++i)
            if (testing::keyOf(steps[i]) == key)
                return static_cast<int>(i);
        ADD_FAILURE() << "no step " << key;
        return -1;
    }
    void pointAtStep(int step, bool inside) {
        auto* widget = solution->findChild<QWidget*>(QStringLiteral("solutionStep%1").arg(step + 1));
        ASSERT_NE(widget, nullptr);
        if (inside) {
            QEnterEvent event({5, 5}, {5, 5}, {5, 5});
            QCoreApplication::sendEvent(widget, &event);
        } else {
            QEvent event(QEvent::Leave);
            QCoreApplication::sendEvent(widget, &event);
        }
    }
    /// Pixels of the highlight's colour on the sheet.
    int lightOnSheet() {
        const QImage seen = canvas.grab().toImage();
        const QRgb light = themeOf(canvas.theme()).highlight.rgb();
        int count = 0;
        for (int y = 0; y < seen.height(); ++y)
            for (int x = 0; x < seen.width(); ++x)
                count += seen.pixel(x, y) == light ? 1 : 0;
        return count;
    }
    QString litKey() const {
        const int step = solution->litStep();
        return step < 0 ? QString()
                        : QString::fromStdString(
                              testing::keyOf(solution->worked().steps[static_cast<std::size_t>(step)]));
    }
    /// The middle of a label in the figure, by its text.
    QPointF label(const char* text) const {
        for (const Group& group : canvas.figure().list.groups)
            for (const Item& item : group.items)
                if (const Text* at = std::get_if<Text>(&item)) {
                    std::string whole;
                    for (const auto& run : at->runs)
                        whole += run.text;
                    if (whole == text)
                        return QPointF(at->box.left + at->box.width / 2, at->box.top + at->box.height / 2) *
                               canvas.pixelsPerPoint();
                }
        ADD_FAILURE() << "no label " << text;
        return {};
    }

    Panel panel{document};
    SolutionView* solution = nullptr;
    std::vector<std::optional<FigurePart>> told;
};

TEST_F(Pointing, AStepLightsItsPartsUntilThePointerLeavesIt) {
    ASSERT_EQ(lightOnSheet(), 0);
    for (const char* key : {"tails", "parallelogram", "triangle", "cosines", "sines", "direction"}) {
        const int step = stepWithKey(key);
        pointAtStep(step, true);
        EXPECT_GT(lightOnSheet(), 200) << key;
        pointAtStep(step, false);
        EXPECT_EQ(lightOnSheet(), 0) << key;
    }
}

TEST_F(Pointing, SeveralPartsAreLitAtOnce) {
    const QuantityId tails = betweenId(forceVector(0), forceVector(1));
    canvas.lightParts({tails});
    const int one = lightOnSheet();
    canvas.lightParts({tails, forceVector(0), oppositeId(kSumVector)});
    EXPECT_GT(lightOnSheet(), one + 500);
}

TEST_F(Pointing, APartThatIsNotThereLightsNothingWhateverTheQuestion) {
    Sketch two = raft();
    two.forces[0].magnitude.value.reset();
    two.forces[1].direction = {};
    two.sum.magnitude.value = 400;
    two.sum.direction.form = AngleForm{10};
    Sketch five = raft();
    for (int i = 0; i < 3; ++i)
        five.forces.push_back(forceOf(("S" + std::to_string(i)).c_str(), 100 + 20 * i, 100 + 60 * i));
    Sketch flat = raft();
    flat.forces[1] = forceOf("Q", 340, -155);
    for (const Sketch& sketch : {raft(), two, five, flat, emptySketch()}) {
        open(sketch);
        for (const ConstructionKind kind : {ConstructionKind::none, ConstructionKind::parallelogram,
                                            ConstructionKind::triangle, ConstructionKind::polygon}) {
            canvas.setConstruction(kind);
            const VectorId eighth = forceVector(7);
            for (const FigurePart& part : std::initializer_list<FigurePart>{
                     eighth, directionId(eighth), betweenId(eighth, forceVector(0)), oppositeId(eighth),
                     FigureShape{Kind::locus, eighth}}) {
                canvas.lightParts({part});
                EXPECT_EQ(lightOnSheet(), 0) << "there is no eighth force";
            }
        }
    }
}

TEST_F(Pointing, OfSeveralParallelogramsTheOneOfTheStepIsLitAndLightsIt) {
    Sketch three = emptySketch();
    three.forces = {forceOf("P", 300, 0), forceOf("Q", 400, 90), forceOf("S", 350, 200)};
    open(three);
    panel.setByParallelograms(true);
    canvas.setByParallelograms(true);
    const auto hasPairs = [this] {
        const auto& steps = solution->worked().steps;
        return std::any_of(steps.begin(), steps.end(),
                           [](const Step& s) { return testing::keyOf(s) == "pair2"; });
    };
    ASSERT_TRUE(QTest::qWaitFor(hasPairs));
    canvas.lightParts({FigureShape{Kind::parallelogram, forceVector(1)}});
    const int first = lightOnSheet();
    EXPECT_GT(first, 2000);
    canvas.lightParts({FigureShape{Kind::parallelogram, forceVector(2)}});
    EXPECT_NE(lightOnSheet(), first);
    canvas.lightParts({FigureShape{Kind::parallelogram, forceVector(3)}});
    EXPECT_EQ(lightOnSheet(), 0) << "there is no third";
    hover(pixel(300, 250)); // the copy of Q
    EXPECT_EQ(litKey(), QStringLiteral("pair1"));
    hover(pixel(-178.9, 80.3)); // half-way up the copy of K1, from the tip of S
    EXPECT_EQ(litKey(), QStringLiteral("pair2"));
}

TEST_F(Pointing, AnAngleOnTheSheetLightsTheStepThatFindsIt) {
    hover(label("φ = 65.0°"));
    EXPECT_EQ(litKey(), QStringLiteral("tails"));
    hover(label("γ = 115.0°"));
    EXPECT_EQ(litKey(), QStringLiteral("parallelogram"));
    hover(label("3.6°"));
    EXPECT_EQ(litKey(), QStringLiteral("direction"));
    hover(pixel(-250, 100));
    EXPECT_EQ(solution->litStep(), -1);
}

TEST_F(Pointing, AnAngleOfTheTriangleLightsItsLaw) {
    canvas.setConstruction(ConstructionKind::triangle);
    settle();
    hover(label("β = 28.6°"));
    EXPECT_EQ(litKey(), QStringLiteral("sines"));
}

TEST_F(Pointing, AnArrowAndASideLightTheirSteps) {
    hover(polar(200, 25));
    EXPECT_EQ(litKey(), QStringLiteral("given"));
    const Solution& found = document.result().solved.solutions.at(0);
    hover(pixel(Eigen::Vector2d(0.6 * found.sum.vector)));
    EXPECT_EQ(litKey(), QStringLiteral("cosines"));
    hover(pixel(Eigen::Vector2d(found.forces[0].vector + 0.35 * found.forces[1].vector)));
    EXPECT_EQ(litKey(), QStringLiteral("parallelogram"));
}

TEST_F(Pointing, IsToldOnceForAPlaceAndNotDuringADrag) {
    hover(label("φ = 65.0°"));
    const std::size_t before = told.size();
    hover(label("φ = 65.0°") + QPointF(1, 0));
    EXPECT_EQ(told.size(), before);
    press(tipOf(0));
    const std::size_t pressed = told.size();
    for (int i = 1; i < 20; ++i)
        move(tipOf(0) + QPointF(-3.0, 2.0));
    EXPECT_EQ(told.size(), pressed);
    release(tipOf(0));
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&canvas, &leave);
    EXPECT_FALSE(told.back().has_value());
}

TEST_F(Pointing, ScrollsToTheStepOnlyWhereTheSolutionIsBeingRead) {
    QScrollBar* bar = panel.verticalScrollBar();
    bar->setValue(0);
    auto* rest = panel.findChild<QTimer*>(QStringLiteral("rest"));
    ASSERT_NE(rest, nullptr);
    QSignalSpy rested(rest, &QTimer::timeout);
    hover(label("3.6°"));
    ASSERT_TRUE(rested.count() > 0 || rested.wait());
    EXPECT_EQ(bar->value(), 0) << "the table of given values is in use";
    hover(pixel(-250, 100));
    panel.ensureVisible(0, solution->mapTo(panel.widget(), QPoint(0, 0)).y() + 300, 0, 0);
    const int reading = bar->value();
    hover(label("3.6°"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return bar->value() != reading; }, 3000));
    const QRect step = solution->stepRect(solution->litStep());
    const int top = solution->mapTo(panel.viewport(), step.topLeft()).y();
    EXPECT_GE(top, 0);
    EXPECT_LT(top, panel.viewport()->height());
}

TEST_F(Pointing, ADragKeepsTheScrollPlaceAndTheFoldedSteps) {
    QScrollBar* bar = panel.verticalScrollBar();
    bar->setValue(bar->maximum() / 2);
    const int place = bar->value();
    const auto* given = panel.findChild<QAbstractItemView*>(QStringLiteral("givenTable"));
    ASSERT_NE(given, nullptr);
    QSignalSpy changes(&document, &SketchDocument::changed);
    press(tipOf(0));
    for (int i = 1; i <= 30; ++i) {
        QSignalSpy followed(given->model(), &QAbstractItemModel::dataChanged);
        const auto before = changes.count();
        move(tipOf(0) + QPointF(-2.0 * (i % 5), 1.5 * (i % 7)));
        ASSERT_TRUE(changes.count() == before || followed.count() > 0 || followed.wait()) << i;
        EXPECT_EQ(bar->value(), place) << i;
    }
    EXPECT_GT(changes.count(), 10);
    release(tipOf(0));
    settle();
    EXPECT_EQ(bar->value(), place);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
