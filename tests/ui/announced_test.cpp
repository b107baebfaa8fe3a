// SPDX-License-Identifier: MIT
// What is said aloud, told from the events that the window sends: without a bus, and so without a screen.
#include "panel_support.h"
#include "tests/ui/window_fixture.h"
#include "ui/canvas/canvas.h"
#include "ui/document/given_edits.h"
#include "ui/panel/panel.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QAccessibleWidget>

namespace tailpoint::test {

namespace {

struct Heard {
    QStringList inserted, focused, renamed;
};
Heard* heard = nullptr;

void hear(QAccessibleEvent* event) {
    QAccessibleInterface* who = event->accessibleInterface();
    if (heard == nullptr || who == nullptr)
        return;
    const QString name = who->text(QAccessible::Name);
    if (event->type() == QAccessible::Focus)
        heard->focused << name;
    if (event->type() == QAccessible::NameChanged)
        heard->renamed << name;
    if (event->type() == QAccessible::TextUpdated)
        heard->inserted << static_cast<QAccessibleTextUpdateEvent*>(event)->textInserted();
    if (event->type() == QAccessible::TextInserted)
        heard->inserted << static_cast<QAccessibleTextInsertEvent*>(event)->textInserted();
}

class Announced : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        heard = &m_heard;
        QAccessible::setActive(true);
        m_before = QAccessible::installUpdateHandler(hear);
        window->document().replace(raft(), {});
        ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("R equals 520 newtons")); }));
        m_heard = {};
    }
    void TearDown() override {
        QAccessible::installUpdateHandler(m_before);
        QAccessible::setActive(false);
        heard = nullptr;
        window.reset();
    }
    static Sketch raftWith(double p) {
        Sketch sketch = raft();
        sketch.forces.at(0).magnitude.value = p;
        return sketch;
    }
    bool says(const QString& part) const { return m_heard.inserted.join(u'\n').contains(part); }

    Heard m_heard;
    QAccessible::UpdateHandler m_before = nullptr;
};

/// By Python: with P from 341 to 400 N the resultant goes from 520.74 to 573.24 N.
TEST_F(Announced, AChangeThatGoesOnIsSaidOnceItRests) {
    SketchDocument& document = window->document();
    QElapsedTimer clock;
    clock.start();
    for (int p = 341; p <= 400; ++p) {
        ASSERT_FALSE(document.preview(raftWith(p), QStringLiteral("drag")));
        QTest::qWait(5);
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("R equals 573 newtons")); }))
        << m_heard.inserted.join(u'\n').toStdString();
    // one after each rest that fits in: a busy machine makes some of its own
    EXPECT_LE(m_heard.inserted.filter(QStringLiteral("R equals")).size(), 1 + clock.elapsed() / 400)
        << m_heard.inserted.join(u'\n').toStdString();
    EXPECT_TRUE(document.isPreviewing()) << "the hand still holds it";
    document.commit();
}

TEST_F(Announced, WhatIsSaidAgainIsOnlyWhatChanged) {
    Sketch limited = raft();
    limited.title = "The same in other words";
    ASSERT_FALSE(window->document().edit(limited, QStringLiteral("title")));
    QTest::qWait(700);
    EXPECT_TRUE(m_heard.inserted.isEmpty()) << m_heard.inserted.join(u'\n').toStdString();
}

TEST_F(Announced, AWithheldAnswerIsNotSaid) {
    trigger("ownAnswer");
    ASSERT_FALSE(window->document().edit(raftWith(400), QStringLiteral("change")));
    QTest::qWait(700);
    EXPECT_FALSE(says(QStringLiteral("573"))) << m_heard.inserted.join(u'\n').toStdString();
}

TEST_F(Announced, AValueThatFollowsIsNotSetAndThatIsSaid) {
    EXPECT_FALSE(window->canvas().setMagnitude(kSumIndex, 400));
    EXPECT_TRUE(says(QStringLiteral("R"))) << m_heard.inserted.join(u'\n').toStdString();
    EXPECT_FALSE(window->canvas().setMagnitude(0, -1));
    EXPECT_TRUE(says(QStringLiteral("A magnitude is 0 or more")));
    EXPECT_TRUE(window->canvas().setToFind(0, Entry::magnitude, true));
    EXPECT_TRUE(says(QStringLiteral("Magnitude of P: to find")));
    EXPECT_TRUE(isToFind(window->document().sketch(), 0, Entry::magnitude));
}

/// Qt tells of the widget after its focusInEvent(): who in it has the keyboard is told behind that.
TEST_F(Announced, TheLastThatIsToldOfTheFocusIsTheCellOrTheVector) {
    auto* table = child<QAbstractItemView>(*window, "givenTable");
    window->canvas().select(0);
    table->setFocus(Qt::TabFocusReason);
    QCoreApplication::processEvents();
    ASSERT_FALSE(m_heard.focused.isEmpty());
    EXPECT_TRUE(m_heard.focused.last().contains(QStringLiteral("P"))) << m_heard.focused.last().toStdString();
    window->canvas().setFocus(Qt::TabFocusReason);
    QCoreApplication::processEvents();
    EXPECT_TRUE(m_heard.focused.last().startsWith(QStringLiteral("Force P")))
        << m_heard.focused.last().toStdString();
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

} // namespace

} // namespace tailpoint::test
