// SPDX-License-Identifier: MIT
// The construction that gives a wrong number: lengths, ends and angles by hand formulas, and nothing in it
// that is right and not found yet.
#include "core/figure/attempt_list.h"
#include "tests/core/figure/figure_support.h"
#include "tests/core/mark/marked.h"

#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Kind = AttemptStroke::Kind;
constexpr double kDegree = std::numbers::pi / 180;

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}
Eigen::Vector2d polar(double size, double degrees) {
    return {size * std::cos(degrees * kDegree), size * std::sin(degrees * kDegree)};
}
const Eigen::Vector2d kP = polar(340, 25), kQ = polar(275, -40);

std::vector<AttemptStroke> strokesOf(const Sketch& asked, const std::vector<std::string>& answers) {
    return slipStrokes(asked, marked(asked, answers));
}
const AttemptStroke* labelled(const std::vector<AttemptStroke>& strokes, std::string_view label) {
    for (const AttemptStroke& stroke : strokes)
        if (plainText(stroke.label) == label)
            return &stroke;
    return nullptr;
}
void expectAt(const Eigen::Vector2d& point, const Eigen::Vector2d& right, const char* what) {
    EXPECT_NEAR(point.x(), right.x(), 0.05) << what;
    EXPECT_NEAR(point.y(), right.y(), 0.05) << what;
}

/// Law of cosines by hand: sqrt(340^2 + 275^2 - 2*340*275*cos 65) = 334.96, from tip to tip.
TEST(AttemptStrokes, TheOtherDiagonalRunsFromTipToTip) {
    const auto strokes = strokesOf(raft(), {"R = 335"});
    ASSERT_EQ(strokes.size(), 1U);
    EXPECT_EQ(strokes[0].kind, Kind::line);
    EXPECT_EQ(plainText(strokes[0].label), "your R = 335 N");
    expectAt(strokes[0].from, kQ, "Q's tip");
    expectAt(strokes[0].to, kP, "P's tip");
}

TEST(AttemptStrokes, MagnitudesAddedStandInOneLine) {
    const auto strokes = strokesOf(raft(), {"R = 615"});
    const auto *q = labelled(strokes, "Q"), *r = labelled(strokes, "your R = 615 N");
    ASSERT_TRUE(q && r);
    expectAt(q->from, kP, "on from P's tip");
    expectAt(q->to, polar(615, 25), "in P's direction");
    expectAt(r->to, polar(615, 25), "as long as both");
    EXPECT_NE(r->aside, 0) << "not over P";
}

/// 340^2 + 275^2 = 437.29^2; 25 - arctan(275/340) = -13.966.
TEST(AttemptStrokes, TheRightTriangleHasItsRightAngle) {
    const auto strokes = strokesOf(raft(), {"R = 437", "theta_R = -14.0"});
    const auto *r = labelled(strokes, "your R = 437 N"), *angle = labelled(strokes, "90.0\u00b0"),
               *way = labelled(strokes, "\u221214.0\u00b0");
    ASSERT_TRUE(r && angle && way);
    expectAt(r->to, polar(437.29, -13.966), "R");
    expectAt(angle->from, kP, "at P's tip");
    EXPECT_NEAR(std::abs(angle->sweep), 90 * kDegree, 1e-6);
    EXPECT_TRUE(way->isDirection);
    EXPECT_NEAR(way->sweep, -13.966 * kDegree, 1e-4) << "clockwise from +x";
}

/// Without the factor 2: sqrt(340^2 + 275^2 + 340*275*cos 65) = 480.354; the triangle of these three sides
/// has arccos((340^2 + 275^2 - 480.354^2)/(2*340*275)) = 102.199 degrees opposite to it (by hand).
TEST(AttemptStrokes, AMagnitudeAloneMakesTheTriangleOfThreeSides) {
    const auto strokes = strokesOf(raft(), {"R = 480.4"});
    const auto *r = labelled(strokes, "your R = 480 N"), *angle = labelled(strokes, "102.2\u00b0"),
               *q = labelled(strokes, "Q");
    ASSERT_TRUE(r && angle && q);
    EXPECT_NEAR(r->to.norm(), 480.354, 0.01);
    EXPECT_NEAR((q->to - q->from).norm(), 275, 1e-6);
    expectAt(q->from, kP, "Q at P's tip");
    expectAt(q->to, r->to, "where R ends");
}

/// Q's direction with the other sign: P + (275 N at 40 degrees) = 609.80 N at 31.703 degrees (by hand).
TEST(AttemptStrokes, AQuestionReadWronglyIsDrawnAsItWasRead) {
    const Eigen::Vector2d read = polar(275, 40), sum = kP + read;
    const auto strokes = strokesOf(raft(), {"R = 609.8", "theta_R = 31.7"});
    const auto *q = labelled(strokes, "your Q"), *r = labelled(strokes, "your R = 610 N");
    ASSERT_TRUE(q && r);
    expectAt(q->to, read, "Q as read");
    const auto* arc = labelled(strokes, "40.0\u00b0");
    ASSERT_TRUE(arc) << "its direction from the axis";
    EXPECT_NEAR(arc->sweep, 40 * kDegree, 1e-9);
    expectAt(r->to, sum, "R");
    const auto sides = std::count_if(strokes.begin(), strokes.end(), [&](const AttemptStroke& stroke) {
        return stroke.kind == Kind::line && (stroke.to - sum).norm() < 0.05 &&
               ((stroke.from - kP).norm() < 0.05 || (stroke.from - read).norm() < 0.05);
    });
    EXPECT_EQ(sides, 2) << "its parallelogram";
}

/// Q_y turned: P + (275 cos 40, 275 sin 40), as above; Q_x turned: (308.14 - 210.66, 143.69 - 176.77) =
/// (97.48, -33.08) = 102.94 N at -18.74 degrees (by hand).
TEST(AttemptStrokes, WrongComponentsStandAsLegs) {
    const auto strokes = strokesOf(raft(), {"R = 102.9", "theta_R = -18.7"});
    const auto *qx = labelled(strokes, "Qx"), *qy = labelled(strokes, "Qy"), *q = labelled(strokes, "your Q");
    ASSERT_TRUE(qx && qy && q);
    expectAt(qx->to, {-210.66, 0}, "Q_x with the wrong sign");
    expectAt(qy->to, {-210.66, -176.77}, "Q_y on from there");
    expectAt(q->to, qy->to, "what they make");
    const auto* r = labelled(strokes, "your R = 103 N");
    ASSERT_TRUE(r);
    expectAt(r->to, {97.48, -33.08}, "and the sum");
}

TEST(AttemptStrokes, ADirectionAloneIsARayWithItsArcFromTheAxis) {
    const auto strokes = strokesOf(raft(), {"theta_R = 3.6"});
    const auto *ray = labelled(strokes, "your R"), *arc = labelled(strokes, "3.6\u00b0");
    ASSERT_TRUE(ray && arc);
    EXPECT_EQ(ray->kind, Kind::ray);
    EXPECT_EQ(arc->kind, Kind::arc);
    EXPECT_TRUE(arc->isDirection);
}

/// P is read at -20 degrees: Q = 300 sin 80/sin 125 = 360.67, S = 300 sin 155/sin 125 = 154.78 (law of sines
/// by hand).
TEST(AttemptStrokes, ThePolygonOfWhatWasReadCloses) {
    Sketch ring = sketch({force("P", 300, 20), force("Q", kToFind, 135), force("S", kToFind, -100)});
    ring.sum.magnitude.value = 0;
    const auto strokes = strokesOf(ring, {"Q = 360.7", "S = 154.8"});
    const auto *p = labelled(strokes, "your P"), *q = labelled(strokes, "Q"), *s = labelled(strokes, "S");
    ASSERT_TRUE(p && q && s);
    expectAt(p->to, polar(300, -20), "P as read");
    expectAt(q->from, p->to, "Q from there");
    expectAt(s->from, q->to, "S from there");
    expectAt(s->to, {0, 0}, "closed");
    EXPECT_FALSE(labelled(strokes, "gap"));
}

/// Whatever is answered: no end of a stroke, no angle and no label is what is right and not found.
TEST(AttemptStrokes, NothingRightIsDrawnThatIsNotFound) {
    const Sketch asked = raft();
    const Marker marker(asked, solve(asked));
    const Eigen::Vector2d right = kP + kQ; // 519.86 N at -3.648 degrees
    int drawn = 0;
    for (int tenth = 500; tenth <= 9000; tenth += 7)
        for (const bool isSize : {true, false}) {
            std::string answer = std::to_string(isSize ? tenth / 10.0 : (tenth - 4750) / 25.0);
            answer = (isSize ? "R = " : "theta_R = ") + answer.substr(0, answer.find('.') + 2);
            const Marking marking = marker.mark(std::get<Attempt>(marker.read({answer})));
            for (const AttemptStroke& stroke : slipStrokes(asked, marking)) {
                ++drawn;
                EXPECT_GT((stroke.to - right).norm(), 1) << answer << " ends at R's tip";
                const std::string label = plainText(stroke.label);
                EXPECT_EQ(label.find("520"), std::string::npos) << answer << ": " << label;
                EXPECT_EQ(label.find("\u22123.6\u00b0"), std::string::npos) << answer << ": " << label;
            }
        }
    EXPECT_GT(drawn, 200);
}

TEST(AttemptStrokes, LabelsStandClearOfTheFiguresTextsAndOfEachOther) {
    FigureOptions exercise;
    exercise.stage = Stage::directions;
    exercise.asGiven = true;
    const Drawn under = drawn(raft(), exercise);
    const FixedMeasure measure;
    for (const auto& answers : std::vector<std::vector<std::string>>{{"R = 335"},
                                                                     {"R = 615"},
                                                                     {"R = 437", "theta_R = -14.0"},
                                                                     {"R = 102.9", "theta_R = -18.7"},
                                                                     {"theta_R = 3.6"}}) {
        const DisplayList list =
            attemptList(strokesOf(raft(), answers), under.figure.list, under.view, {}, measure);
        std::vector<Box> boxes;
        for (const Group& group : list.groups)
            for (const Item& item : group.items)
                if (const Text* text = std::get_if<Text>(&item); text && group.id != "own-texts") {
                    boxes.push_back(text->box);
                }
        EXPECT_FALSE(boxes.empty()) << answers[0];
        for (const Group& group : under.figure.list.groups)
            for (const Item& item : group.items) {
                const Text* text = std::get_if<Text>(&item);
                for (const Box& box : text ? boxes : std::vector<Box>())
                    EXPECT_FALSE(box.left < text->box.right() && text->box.left < box.right() &&
                                 box.top < text->box.bottom() && text->box.top < box.bottom())
                        << answers[0] << ": over " << textOf(*text);
            }
    }
}

TEST(AttemptStrokes, TheRightConstructionEndsWhereTheAnswerDoes) {
    const Sketch asked = raft();
    const auto strokes = rightStrokes(asked, solve(asked));
    const auto* r = labelled(strokes, "R = 520 N");
    ASSERT_TRUE(r);
    EXPECT_EQ(strokes.size(), 3U) << "and the two sides that close the parallelogram";
    for (const AttemptStroke& stroke : strokes) {
        EXPECT_TRUE(stroke.isRight);
        expectAt(stroke.to, kP + kQ, "R's tip");
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
