// SPDX-License-Identifier: MIT
// The form of an answer as the fields show it: two answers, a bearing, a sign, names that people read.
#include "core/practice/problem.h"
#include "tests/ui/attempt/own_answer_fixture.h"
#include "ui/files/sketch_json.h"
#include "ui/practice/problem_file.h"

#include <QMenu>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

/// Python: P = 10.41905 with theta_Q = 130.11359, P = 2.68739 with 49.88641.
constexpr const char* kTwo = R"({"format": "tailpoint-sketch", "version": 1, "title": "Two ways to the buoy",
  "units": {"force": "N", "angle": "deg"}, "forces": [{"name": "P", "magnitude": null, "direction": 0},
  {"name": "Q", "magnitude": 6, "direction": null}],
  "sum": {"name": "R", "magnitude": 8, "direction": 35}, "marking": {"bothAnswers": true}})";

class FormOfAnAnswer : public OwnAnswerTest {
protected:
    void open(const QByteArray& file) {
        auto sketch = readSketch(file);
        ASSERT_TRUE(std::holds_alternative<Sketch>(sketch))
            << std::get<FileError>(sketch).line().toStdString();
        window->document().replace(std::get<Sketch>(std::move(sketch)), {});
        begin();
    }
    void openProblem(const char* family, std::uint32_t number) {
        const auto made = problem({family, 1, number});
        ASSERT_TRUE(made);
        window->document().replace(withPracticeKeys(*made), {});
        begin();
    }
    QLineEdit* second(const char* name) {
        return child<QLineEdit>(view(), (std::string("ownSecond-") + name).c_str());
    }
    void fill(const char* p, const char* p2, const char* q, const char* q2) {
        for (const auto& [at, value] : {std::pair(field("P"), p), std::pair(second("P"), p2),
                                        std::pair(field("theta_Q"), q), std::pair(second("theta_Q"), q2)}) {
            at->setFocus();
            at->selectAll();
            QTest::keyClick(at, Qt::Key_Delete);
            QTest::keyClicks(at, QString::fromUtf8(value));
        }
        mark();
    }
};

TEST_F(FormOfAnAnswer, BothAnswersHaveFieldsOfTheirOwnInEitherOrder) {
    open(kTwo);
    EXPECT_EQ(answer().answersToGive(), 2U);
    EXPECT_EQ(field("P")->accessibleName(), QStringLiteral("Magnitude of P in N, first answer"));
    EXPECT_EQ(second("P")->accessibleName(), QStringLiteral("Magnitude of P in N, second answer"));
    field("P")->setFocus();
    QTest::keyClick(field("P"), Qt::Key_Tab);
    EXPECT_EQ(window->focusWidget(), second("P"));
    fill("10.4", "2.69", "130.1", "49.9");
    EXPECT_EQ(verdict("P"), QStringLiteral("right; right")) << findings().toStdString();
    EXPECT_EQ(verdict("theta_Q"), QStringLiteral("right; right"));
    EXPECT_EQ(summary(), QStringLiteral("All that is asked is right."));
    fill("2.69", "10.4", "49.9", "130.1");
    EXPECT_EQ(summary(), QStringLiteral("All that is asked is right."));
}

TEST_F(FormOfAnAnswer, OneAnswerAloneIsNotAllAndHalfOfOneIsSaid) {
    open(kTwo);
    fill("10.4", "", "130.1", "");
    EXPECT_EQ(summary(), QStringLiteral("A value is still missing."));
    fill("10.4", "2.69", "130.1", "");
    EXPECT_FALSE(answer().marking());
    EXPECT_EQ(verdict("theta_Q"), QStringLiteral("one is missing: see below"));
    EXPECT_TRUE(findings().startsWith(QString::fromUtf8("θ_Q: one answer has a value")))
        << findings().toStdString();
    fill("10.4 or 2.69", "", "130.1; 49.9", "");
    EXPECT_EQ(summary(), QStringLiteral("All that is asked is right.")) << findings().toStdString();
}

TEST_F(FormOfAnAnswer, OneFieldWhereOneAnswerWillDo) {
    open(QByteArray(kTwo).replace("true", "false"));
    EXPECT_EQ(answer().answersToGive(), 1U);
    EXPECT_EQ(view().findChild<QLineEdit*>(QStringLiteral("ownSecond-P")), nullptr);
    EXPECT_TRUE(child<QLabel>(view(), "ownNote")->text().isEmpty());
}

TEST_F(FormOfAnAnswer, ABearingHasNoUnitAndShowsItsForm) {
    openProblem("bearings", 3);
    QLineEdit* way = nullptr;
    for (QLineEdit* one : view().findChildren<QLineEdit*>())
        if (one->objectName().startsWith(QStringLiteral("ownField-theta")))
            way = one;
    ASSERT_TRUE(way);
    EXPECT_EQ(way->placeholderText(), QStringLiteral("N/S 0.0 E/W"));
    EXPECT_TRUE(way->accessibleName().endsWith(QStringLiteral(" as a bearing")))
        << way->accessibleName().toStdString();
    for (const QLabel* label : way->parentWidget()->findChildren<QLabel*>())
        EXPECT_NE(label->text(), QString::fromUtf8("°"));
}

TEST_F(FormOfAnAnswer, WhereTheSignCountsThePanelSaysSo) {
    openProblem("push-or-pull", 5);
    EXPECT_EQ(child<QLabel>(view(), "ownNote")->text(),
              QStringLiteral("A pull is positive, a push is negative."));
    EXPECT_TRUE(child<QLabel>(view(), "ownNote")->isVisible());
}

TEST_F(FormOfAnAnswer, NothingThatPeopleReadHasAProgramsName) {
    begin();
    press("ownAdd");
    auto* menu = view().findChild<QMenu*>(QStringLiteral("ownAddMenu"));
    ASSERT_TRUE(menu);
    ASSERT_GT(menu->actions().size(), 5);
    for (const QAction* action : menu->actions())
        for (const char* name : {"theta", "gamma", "alpha", "beta", "phi"})
            EXPECT_FALSE(action->text().contains(QLatin1String(name))) << action->text().toStdString();
    menu->close();
    type("theta_R", "sideways");
    mark();
    EXPECT_TRUE(findings().startsWith(QString::fromUtf8("θ_R: "))) << findings().toStdString();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
