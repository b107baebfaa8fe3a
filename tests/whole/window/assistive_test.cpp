// SPDX-License-Identifier: MIT
// The window through a screen reader: its tree walked and its events heard on an accessibility bus of its
// own, with a real keyboard and mouse.
#include "tests/whole/window/hearing.h"
#include "tests/whole/window/raft_fixture.h"

#include <QRegularExpression>

#ifdef TAILPOINT_HAS_DBUS

using namespace whole;

namespace TAILPOINT_FILE {

class Assisted : public ::testing::Test {
protected:
    void SetUp() override {
        if (!m_hearing.whyNot().isEmpty())
            GTEST_SKIP() << m_hearing.whyNot().toStdString();
    }
    void open(const QString& sample) {
        m_file = copyOfSample(sample, m_folder);
        m_program = std::make_unique<Program>(QStringList{m_file});
        ASSERT_NE(m_program->window(), 0) << m_program->complaints().toStdString();
        m_tree = m_hearing.program();
        ASSERT_TRUE(m_tree) << "the program is not on the bus";
        settledScreen();
    }
    /// What is heard until then has it.
    bool hears(const QStringList& (Hearing::*what)(), const QString& part) {
        return eventually([&] { return (m_hearing.*what)().join(u'\n').contains(part); });
    }
    bool isAnnounced(const QString& part) {
        return hears(&Hearing::inserted, part) && hears(&Hearing::renamed, part) &&
               hears(&Hearing::heard, part);
    }
    std::string allHeard() {
        return (QStringList{QStringLiteral("came up:")} + m_hearing.heard() +
                QStringList{QStringLiteral("renamed:")} + m_hearing.renamed() +
                QStringList{QStringLiteral("inserted:")} + m_hearing.inserted() +
                QStringList{QStringLiteral("focused:")} + m_hearing.focused())
            .join(u'\n')
            .toStdString();
    }
    /// Presses a key and waits for the focus that it leads to, as long as it goes on; its name.
    QString focusAfter(const char* pressed) {
        m_hearing.forget();
        EXPECT_TRUE(key(QLatin1String(pressed)));
        eventually([&] { return !m_hearing.focused().isEmpty(); }, std::chrono::seconds(5));
        qsizetype heard = 0;
        int still = 0;
        eventually([&] {
            still = std::exchange(heard, m_hearing.focused().size()) == m_hearing.focused().size() ? still + 1
                                                                                                   : 0;
            return still > 8;
        });
        return heard > 0 ? m_hearing.focused().last() : QString();
    }
    std::optional<Node> named(const QString& name) const {
        return m_tree->find([&](const Node& node) { return node.name() == name; });
    }
    /// The status line has it: what was said before anybody could listen, too.
    bool statusSays(const QString& part) const {
        const auto foot = named(QStringLiteral("Hint and status"));
        return foot && eventually([&] {
                   for (const Node& node : foot->children())
                       if (node.role() == QStringLiteral("notification") && node.name().contains(part))
                           return true;
                   return false;
               });
    }
    std::optional<Node> headOf(int step) const {
        const QString title = QStringLiteral("Step %1: ").arg(step);
        return m_tree->find([&](const Node& node) { // versions of Qt have other names for a button
            return node.name().startsWith(title) && node.role().endsWith(QStringLiteral("button"));
        });
    }

    Hearing m_hearing;
    QTemporaryDir m_folder;
    QString m_file;
    std::unique_ptr<Program> m_program;
    std::optional<Node> m_tree;
};

/// The law of cosines as it stands on the raft's sheet, read by hand.
TEST_F(Assisted, AStepOfTheSolutionIsANodeWithItsTitleAndItsFormulasInWords) {
    open(QStringLiteral("survey-raft.json"));
    std::vector<Node> steps;
    m_tree->each([&](const Node& node) {
        if (node.name().startsWith(QStringLiteral("Step ")) && !node.words().isEmpty())
            steps.push_back(node);
    });
    ASSERT_GE(steps.size(), 5U);
    QString whole;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        EXPECT_TRUE(steps[i].name().startsWith(QStringLiteral("Step %1: ").arg(i + 1)))
            << steps[i].name().toStdString();
        EXPECT_TRUE(steps[i].words().startsWith(steps[i].name()));
        EXPECT_GT(steps[i].words().size(), steps[i].name().size());
        whole += steps[i].words() + u'\n';
    }
    EXPECT_TRUE(whole.contains(QStringLiteral(
        "R equals square root of P squared plus Q squared minus 2 P Q cosine of gamma, end of root")))
        << whole.toStdString();
    EXPECT_TRUE(whole.contains(QStringLiteral("2 times 340 newtons times 275 newtons times cosine of 115")))
        << whole.toStdString();
    for (const char* sign : {"√", "²", "·"})
        EXPECT_FALSE(whole.contains(QString::fromUtf8(sign))) << whole.toStdString();
}

TEST_F(Assisted, TheSolutionIsReadLineByLineWithTheArrowsAndScrollsAlong) {
    open(QStringLiteral("survey-raft.json"));
    const auto head = headOf(1);
    ASSERT_TRUE(head);
    EXPECT_TRUE(head->hasState(kExpanded));
    ASSERT_TRUE(head->takeFocus());
    ASSERT_TRUE(hears(&Hearing::focused, QStringLiteral("Step 1: "))) << allHeard();
    QStringList read;
    int heads = 1;
    for (int i = 0; i < 40 && heads < 5; ++i) {
        const QString next = focusAfter("Down");
        ASSERT_FALSE(next.isEmpty()) << read.join(u'\n').toStdString();
        read << next;
        heads += next.startsWith(QStringLiteral("Step")) ? 1 : 0;
        const QRect place = m_hearing.focus()->place();
        EXPECT_TRUE(m_program->frame().adjusted(0, 0, 0, -30).contains(place))
            << "out of sight: " << next.toStdString();
    }
    EXPECT_EQ(heads, 5) << read.join(u'\n').toStdString();
    EXPECT_GE(read.size(), 15);
    EXPECT_EQ(read.removeDuplicates(), 0) << "a line is read twice";
    // and back: the last line before the fifth head, then the fourth head from within
    EXPECT_EQ(focusAfter("Up"), read[read.size() - 2]);
    EXPECT_TRUE(focusAfter("Left").startsWith(QStringLiteral("Step 4: ")));
    EXPECT_TRUE(focusAfter("Home").startsWith(QStringLiteral("Step 1: ")));
}

TEST_F(Assisted, ShiftF10AndTheMenuKeyOpenTheMenuOfTheStep) {
    open(QStringLiteral("survey-raft.json"));
    const auto head = headOf(2);
    ASSERT_TRUE(head && head->takeFocus());
    ASSERT_TRUE(hears(&Hearing::focused, QStringLiteral("Step 2: "))) << allHeard();
    const QString line = focusAfter("Down");
    EXPECT_TRUE(line.startsWith(QStringLiteral("In a plane"))) << line.toStdString();
    for (const char* pressed : {"shift+F10", "Menu"}) {
        const QImage before = settledScreen();
        ASSERT_TRUE(key(QLatin1String(pressed)));
        ASSERT_FALSE(screenWhere([&](const QImage& now) {
                         return changedPixels(before, now, m_program->frame()) > 1000;
                     }).isNull())
            << "no menu by " << pressed;
        EXPECT_EQ(focusAfter("Down"), QStringLiteral("Copy this step as text")) << pressed;
        EXPECT_EQ(focusAfter("Escape"), line) << "the keyboard is not where it was";
    }
}

/// P made 341 N by one key. By Python: hypot(341 cos 25 + 275 cos 40, 341 sin 25 - 275 sin 40) = 520.74 N, at
/// -3.60 degrees.
TEST_F(Assisted, AResultThatAKeyChangedIsAnnouncedOnce) {
    open(QStringLiteral("survey-raft.json"));
    ASSERT_TRUE(statusSays(QStringLiteral("R equals 520 newtons")))
        << allHeard(); // of the file that was opened
    ASSERT_TRUE(key(QStringLiteral("Tab")));
    settledScreen();
    m_hearing.forget();
    ASSERT_TRUE(key(QStringLiteral("shift+Up")));
    ASSERT_TRUE(isAnnounced(QStringLiteral("R equals 521 newtons"))) << allHeard();
    EXPECT_EQ(m_hearing.inserted().filter(QStringLiteral("R equals 521")).size(), 1) << allHeard();
    EXPECT_TRUE(m_hearing.inserted()
                    .filter(QStringLiteral("R equals 521"))
                    .front()
                    .startsWith(QStringLiteral("notification: ")));
}

TEST_F(Assisted, ADragIsAnnouncedWhenItPausesAndNotWithEveryMove) {
    open(QStringLiteral("survey-raft.json"));
    ASSERT_TRUE(statusSays(QStringLiteral("R equals 520 newtons"))) << allHeard();
    const auto raft = findRaft(settledScreen(), m_program->sheet());
    ASSERT_TRUE(raft);
    m_hearing.forget();
    ASSERT_TRUE(moveTo(raft->p.tip) && press());
    constexpr int kMoves = 60;
    for (int i = 1; i <= kMoves; ++i)
        ASSERT_TRUE(moveTo(raft->p.tip + QPointF(-i, i)));
    ASSERT_TRUE(hears(&Hearing::inserted, QStringLiteral("R equals")))
        << "nothing while the hand rests: " << allHeard();
    EXPECT_LT(m_hearing.inserted().filter(QStringLiteral("R equals")).size(), kMoves / 6) << allHeard();
    ASSERT_TRUE(release());
    // what was said last is what stands there
    const auto resultant = m_tree->find(
        [](const Node& node) { return node.name().startsWith(QStringLiteral("Resultant R, ")); });
    ASSERT_TRUE(resultant);
    const QString now = resultant->name().section(u' ', 2, 2);
    EXPECT_TRUE(eventually([&] {
        return m_hearing.inserted()
            .filter(QStringLiteral("R equals"))
            .last()
            .contains(QStringLiteral("R equals %1 newtons").arg(now));
    })) << now.toStdString()
        << '\n'
        << allHeard();
}

TEST_F(Assisted, AnErrorAndAMessageAreAnnounced) {
    open(QStringLiteral("survey-raft.json"));
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Return")));
    settledScreen();
    ASSERT_TRUE(type(QStringLiteral("many")) && key(QStringLiteral("Return")));
    EXPECT_TRUE(hears(&Hearing::inserted, QStringLiteral("many"))) << "what can't be taken: " << allHeard();
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    m_hearing.forget();
    ASSERT_TRUE(key(QStringLiteral("n")));
    EXPECT_TRUE(isAnnounced(QStringLiteral("There is no other answer to this question."))) << allHeard();
}

TEST_F(Assisted, AQuestionWithoutAnAnswerIsAnnouncedInWords) {
    open(QStringLiteral("two-answers.json"));
    EXPECT_TRUE(statusSays(QStringLiteral("Answer 1 of 2, drawn."))) << allHeard();
    m_hearing.forget();
    ASSERT_TRUE(key(QStringLiteral("n")));
    EXPECT_TRUE(isAnnounced(QStringLiteral("Answer 2 of 2, drawn."))) << allHeard();
}

/// What is asked for is done, or it is said that it was not.
TEST_F(Assisted, ToFindIsSetAndAValueThatFollowsIsNot) {
    open(QStringLiteral("survey-raft.json"));
    const auto given = named(QStringLiteral("Magnitude of P"));
    const auto found = named(QStringLiteral("Magnitude of R"));
    ASSERT_TRUE(given && found);
    m_hearing.forget();
    const double before = found->value().value_or(0);
    ASSERT_TRUE(found->setValue(400));
    EXPECT_TRUE(isAnnounced(QStringLiteral("R"))) << allHeard();
    EXPECT_EQ(found->value(), before);
    m_hearing.forget();
    ASSERT_TRUE(given->setValue(400));
    EXPECT_TRUE(eventually([&] { return given->value() == 400; }));
    m_hearing.forget();
    ASSERT_TRUE(given->act(QStringLiteral("Make it one to find")))
        << given->actions().join(u',').toStdString();
    EXPECT_TRUE(isAnnounced(QStringLiteral("Magnitude of P: to find"))) << allHeard();
    EXPECT_TRUE(given->description().startsWith(QStringLiteral("to find")))
        << given->description().toStdString();
    m_hearing.forget();
    ASSERT_TRUE(given->act(QStringLiteral("Make it given")));
    EXPECT_TRUE(isAnnounced(QStringLiteral("Magnitude of P: given"))) << allHeard();
    EXPECT_EQ(given->description(), QStringLiteral("given"));
}

TEST_F(Assisted, TheFocusGoesToTheNewForceByItsOwnName) {
    open(QStringLiteral("survey-raft.json"));
    EXPECT_EQ(focusAfter("Tab"), QStringLiteral("Force P, 340 N at 25.0°"));
    EXPECT_EQ(focusAfter("Tab"), QStringLiteral("Force Q, 275 N at −40.0°"));
    EXPECT_TRUE(focusAfter("Tab").startsWith(QStringLiteral("Resultant R, 520 N at")));
    m_hearing.forget();
    ASSERT_TRUE(key(QStringLiteral("Insert")));
    ASSERT_TRUE(eventually([&] { return !m_hearing.focused().isEmpty(); }));
    EXPECT_TRUE(m_hearing.focused().last().startsWith(QStringLiteral("Force S")))
        << allHeard(); // the next letter
    // nobody may keep the name that the place had before
    EXPECT_FALSE(m_hearing.renamed().filter(QStringLiteral("Force S")).isEmpty()) << allHeard();
}

/// Five forces make no triangle: the table of its angles is empty.
TEST_F(Assisted, EveryTabStopHasANameAndNoneIsAnEmptyTable) {
    open(QStringLiteral("five-forces.json"));
    QStringList stops;
    for (int i = 0; i < 60; ++i) {
        const QString stop = focusAfter("Tab");
        ASSERT_FALSE(stop.isEmpty()) << "the keyboard is lost behind " << stops.join(u'\n').toStdString();
        if (!stops.isEmpty() && stop == stops.front())
            break;
        stops << stop;
        EXPECT_FALSE(stop.trimmed().isEmpty()) << "after " << stops.join(u'\n').toStdString();
        EXPECT_NE(m_hearing.focus()->role(), QStringLiteral("table")) << stop.toStdString();
    }
    EXPECT_EQ(stops.filter(QRegularExpression(QStringLiteral("^R = "))).size(), 1) << "the answer";
    EXPECT_GE(stops.size(), 15) << stops.join(u'\n').toStdString();
    EXPECT_LT(stops.size(), 60) << "Tab does not come round";
}

/// A screen of 1366 by 768 with letters of twice the size: no room for the least size of the window
/// elsewhere.
TEST_F(Assisted, WithLettersOfTwiceTheSizeHintLineAndStatusStayInTheWindowAndOnTheScreen) {
    qputenv("QT_FONT_DPI", "192");
    open(QStringLiteral("survey-raft.json"));
    qunsetenv("QT_FONT_DPI");
    const auto stay = [&](const char* when) {
        settledScreen();
        EXPECT_TRUE(QRect(0, 0, 1366, 768).contains(m_program->frame())) << when;
        const std::vector<Node> windows = m_tree->children();
        ASSERT_FALSE(windows.empty());
        const Node& window = windows.front();
        const auto foot =
            m_tree->find([](const Node& node) { return node.name() == QStringLiteral("Hint and status"); });
        ASSERT_TRUE(foot) << when;
        EXPECT_TRUE(window.place().contains(foot->place())) << when;
        EXPECT_GE(foot->place().height(), 20) << when;
        const std::vector<Node> parts = foot->children();
        EXPECT_GE(parts.size(), 4U) << "hint, place, status and switch";
        for (const Node& part : parts)
            EXPECT_TRUE(foot->place().contains(part.place())) << when << ": " << part.name().toStdString();
    };
    stay("as it starts");
    ASSERT_TRUE(key(QStringLiteral("F7")));
    stay("with fields for an answer of one's own");
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    ASSERT_TRUE(key(QStringLiteral("F8")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Practice")); }));
    ASSERT_TRUE(type(QStringLiteral("0NGFZD")) && key(QStringLiteral("Return")));
    ASSERT_TRUE(m_program->turnTo());
    stay("with a problem");
}

} // namespace TAILPOINT_FILE

#endif
