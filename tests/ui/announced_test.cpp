// SPDX-License-Identifier: MIT
// What is said aloud, and what stays unsaid; the signals on the bus are in tests/whole/window.
#include "panel_support.h"
#include "tests/ui/window_fixture.h"
#include "ui/canvas/canvas.h"
#include "ui/document/given_edits.h"
#include "ui/panel/panel.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QSet>
#include <functional>

namespace tailpoint::test {

namespace TAILPOINT_FILE {

/// What was said last is the name of the status line, whether or not anybody listens.
class Announced : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        window->document().replace(raft(), {});
        ASSERT_TRUE(QTest::qWaitFor([&] { return said().contains(QStringLiteral("R equals 520 newtons")); }));
    }
    static Sketch raftWith(double p) {
        Sketch sketch = raft();
        sketch.forces.at(0).magnitude.value = p;
        return sketch;
    }
    QString said() { return child<QLabel>(*window, "status")->accessibleName(); }
    static constexpr int kRest = 400; ///< milliseconds, as in announcer.cpp
};

/// By Python: with P from 341 to 400 N the resultant goes from 520.74 to 573.24 N.
TEST_F(Announced, AChangeThatGoesOnIsSaidOnceItRests) {
    SketchDocument& document = window->document();
    QSet<QString> all{said()};
    QElapsedTimer clock;
    clock.start();
    for (int p = 341; p <= 400; ++p) {
        document.preview(raftWith(p), QStringLiteral("drag"));
        QTest::qWait(5);
        all << said();
    }
    // one after each rest that fits in: a busy machine makes some of its own
    EXPECT_LE(all.size(), 1 + clock.elapsed() / kRest) << all.values().join(u'\n').toStdString();
    ASSERT_TRUE(QTest::qWaitFor([&] { return said().contains(QStringLiteral("R equals 573 newtons")); }))
        << said().toStdString();
    EXPECT_TRUE(document.isPreviewing()) << "the hand still holds it";
    document.commit();
}

TEST_F(Announced, WhatIsSaidAgainIsOnlyWhatChanged) {
    EXPECT_FALSE(window->canvas().setMagnitude(kSumIndex, 400));
    const QString before = said();
    Sketch same = raft();
    same.title = "The same in other words";
    ASSERT_FALSE(window->document().edit(same, QStringLiteral("title")));
    QTest::qWait(kRest + 300);
    EXPECT_EQ(said(), before);
}

TEST_F(Announced, AWithheldAnswerIsNotSaid) {
    trigger("ownAnswer");
    EXPECT_FALSE(said().contains(QStringLiteral("520"))) << "nor read again";
    ASSERT_FALSE(window->document().edit(raftWith(400), QStringLiteral("change")));
    QTest::qWait(kRest + 300);
    EXPECT_FALSE(said().contains(QStringLiteral("573"))) << said().toStdString();
}

TEST_F(Announced, AValueThatFollowsIsNotSetAndThatIsSaid) {
    EXPECT_FALSE(window->canvas().setMagnitude(kSumIndex, 400));
    EXPECT_TRUE(said().startsWith(QStringLiteral("R is to be found"))) << said().toStdString();
    EXPECT_FALSE(window->canvas().setMagnitude(0, -1));
    EXPECT_TRUE(said().contains(QStringLiteral("A magnitude is 0 or more"))) << said().toStdString();
    EXPECT_TRUE(window->canvas().setToFind(0, Entry::magnitude, true));
    EXPECT_EQ(said(), QStringLiteral("Magnitude of P: to find"));
    EXPECT_TRUE(isToFind(window->document().sketch(), 0, Entry::magnitude));
}

TEST_F(Announced, AFoldedHeadingIsAButtonThatIsExpandedOrNot) {
    auto* fold = child<QAbstractButton>(*window, "fold-solution");
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(fold);
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->role(), QAccessible::Button);
    EXPECT_TRUE(told->state().expandable && told->state().expanded);
    told->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_FALSE(fold->isChecked());
    EXPECT_TRUE(told->state().collapsed && !told->state().expanded);
}

/// Steps that a shorter solution does not need are kept hidden: nothing of the answer may stay in them.
TEST_F(Announced, NothingOfAnAnswerStaysInTheSolutionWhenItIsWithheld) {
    trigger("ownAnswer");
    QTest::qWait(100);
    QString all;
    const std::function<void(QAccessibleInterface*)> read = [&](QAccessibleInterface* node) {
        all += node->text(QAccessible::Name) + u'\n';
        if (QAccessibleTextInterface* words = node->textInterface())
            all += words->text(0, words->characterCount()) + u'\n';
        for (int i = 0; i < node->childCount(); ++i)
            read(node->child(i));
    };
    read(QAccessible::queryAccessibleInterface(child<QWidget>(*window, "solution")));
    EXPECT_TRUE(all.contains(QStringLiteral("340 newtons"))) << "what is given";
    EXPECT_FALSE(all.contains(QStringLiteral("520"))) << all.toStdString();
    EXPECT_FALSE(all.contains(QStringLiteral("519.86"))) << all.toStdString();
}

} // namespace TAILPOINT_FILE

} // namespace tailpoint::test
