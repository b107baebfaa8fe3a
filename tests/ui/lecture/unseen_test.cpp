// SPDX-License-Identifier: MIT
// Nothing of a later step reaches the room before its turn by another way: through assistive technology, or
// as a letter on the figure.
#include "tests/ui/lecture/lecture_fixture.h"

#include <QAccessible>
#include <QRegularExpression>

namespace tailpoint {
namespace TAILPOINT_FILE {

void readAll(QAccessibleInterface* of, QStringList& texts) {
    if (of == nullptr || !of->isValid())
        return;
    for (const QAccessible::Text what :
         {QAccessible::Name, QAccessible::Description, QAccessible::Value, QAccessible::Help})
        texts << of->text(what);
    if (auto* value = of->valueInterface())
        texts << value->currentValue().toString();
    for (int i = 0; i < of->childCount(); ++i)
        readAll(of->child(i), texts);
}

QString readAll(QWidget& widget) {
    QStringList texts;
    readAll(QAccessible::queryAccessibleInterface(&widget), texts);
    return texts.join(u'\n');
}

bool says(const QString& text, const std::string& number) {
    const QRegularExpression alone(QStringLiteral("(?<![\\d.])") +
                                   QRegularExpression::escape(QString::fromStdString(number)) +
                                   QStringLiteral("(?!\\w)"));
    return alone.match(text).hasMatch();
}

class LectureUnseen : public LectureTest {
protected:
    /// From the first line to the last; `look` before the next.
    template <class Look>
    void walk(Look look) {
        for (std::size_t s = 0; s < view.stops().size(); ++s)
            for (std::size_t beat = 0; beat < view.stops()[s].beats.size(); ++beat) {
                if (beat == 0)
                    view.goTo(s, false);
                while (view.beat() < beat)
                    view.next();
                SCOPED_TRACE(now().step.title + ", line " + std::to_string(beat));
                look();
            }
    }
};

TEST_F(LectureUnseen, AssistiveTechnologyReadsNoResultBeforeItsTurn) {
    int looked = 0;
    for (const Sample& sample : allSamples()) {
        SCOPED_TRACE(sample.name);
        open(sample.result);
        NumbersRead said = numbersOn(list());
        walk([&] {
            addNumbers(said, now(), view.beat());
            const QString read = readAll(view);
            for (const auto& [which, other] :
                 {std::pair{Which::directions, Which::others}, std::pair{Which::others, Which::directions}}) {
                NumbersRead later =
                    view.beat() < now().resultBeat ? resultsOf(now().step, which) : NumbersRead();
                for (std::size_t after = view.stop() + 1; after < view.stops().size(); ++after)
                    later.merge(resultsOf(view.stops()[after].step, which));
                const NumbersRead alike = numbersOn(list(), other);
                for (const std::string& number : later)
                    if (!said.contains(number) && !alike.contains(number)) {
                        EXPECT_FALSE(says(read, number)) << number << " in\n" << read.toStdString();
                        ++looked;
                    }
            }
        });
    }
    EXPECT_GT(looked, 500);
}

TEST_F(LectureUnseen, TheResultantIsNoPartOfTheSheetBeforeItIsDrawn) {
    open("survey-raft.json");
    walk([&] {
        auto* sheet = QAccessible::queryAccessibleInterface(&view.canvas());
        const bool drawn = !tipOf(kSumIndex).isNull();
        int vectors = 0;
        for (int i = 0; i < sheet->childCount(); ++i)
            vectors += sheet->child(i)->role() == QAccessible::Grouping ? 1 : 0;
        EXPECT_EQ(vectors, drawn ? 3 : 2);
        EXPECT_EQ(readAll(view.canvas()).contains(QStringLiteral("Resultant R")), drawn);
        EXPECT_EQ(sheet->child(0)->childCount(), 0) << "nothing is typed here";
    });
    goTo("end");
    EXPECT_EQ(QAccessible::queryAccessibleInterface(&view.canvas())->child(2)->text(QAccessible::Name),
              QStringLiteral("Resultant R = 520 N. Direction of R, 3.6° clockwise from +x"));
}

TEST_F(LectureUnseen, WhyThereIsNoAnswerIsToldByTheAnswersWordsAndNotByTheSheet) {
    for (const char* sample : {"no-answer.json", "lines-that-never-meet.json", "too-few-given.json"}) {
        open(sample);
        const QString message =
            QString::fromStdString(view.document().result().solved.message().text()).left(24);
        ASSERT_FALSE(message.isEmpty());
        bool isTold = false;
        walk([&] {
            EXPECT_FALSE(readAll(view.canvas()).contains(message)) << sample;
            isTold = isTold || view.column().plainText().contains(message.left(10));
        });
        EXPECT_TRUE(isTold) << sample;
    }
}

TEST_F(LectureUnseen, WithoutNumbersItReadsNoneEither) {
    open("survey-raft.json");
    key(Qt::Key_N);
    walk([&] {
        const QString read = readAll(view.canvas()).remove(QStringLiteral("1 division = 50 N"));
        EXPECT_FALSE(read.contains(QRegularExpression(QStringLiteral("\\d N\\b|\\d°"))))
            << read.toStdString();
    });
}

bool isAnswerStep(const std::string& key) {
    return key == "answer" || key == "check" || key == "end";
}

std::string angleTexts(const DisplayList& list) {
    std::string all;
    for (const Group& group : list.groups)
        if (group.role == Role::arc || group.id == "key")
            for (const Item& item : group.items)
                if (const auto* text = std::get_if<Text>(&item))
                    all += textOf(*text) + "; ";
    return all;
}

/// The figure's letters are the words' letters: there as soon as the step names them, with the value as soon
/// as that is read out, and no sooner.
TEST_F(LectureUnseen, AnAngleCarriesItsSymbolFromTheStepThatNamesIt) {
    open("survey-raft.json");
    bool phi = false, gamma = false, beta = false, phiFound = false, gammaFound = false, betaFound = false;
    walk([&] {
        const std::string step = keyNow();
        phi = phi || step == "tails";
        gamma = gamma || step == "parallelogram";
        beta = beta || step == "triangle";
        const auto found = [&](const char* key) { return step == key && view.beat() >= now().resultBeat; };
        phiFound = phiFound || found("tails");
        gammaFound = gammaFound || found("parallelogram");
        betaFound = betaFound || found("sines");
        const std::string on = angleTexts(list());
        const auto shows = [&](const char* text) { return on.find(text) != std::string::npos; };
        EXPECT_TRUE(phi || !shows("φ")) << on;
        EXPECT_TRUE(gamma || !shows("γ")) << on;
        EXPECT_TRUE(beta || !shows("β")) << on;
        EXPECT_TRUE(phiFound || !shows("φ = ")) << on;
        EXPECT_TRUE(gammaFound || !shows("γ = ")) << on;
        EXPECT_TRUE(betaFound || !shows("β = ")) << on;
        const bool parallelogram = step == "tails" || step == "parallelogram";
        EXPECT_TRUE(!parallelogram || shows(phiFound ? "φ = 65.0°" : "φ")) << on;
        const bool solves = !isAnswerStep(step);
        EXPECT_TRUE(!gamma || !solves || step == "direction" || shows(gammaFound ? "γ = 115.0°" : "γ")) << on;
        EXPECT_TRUE(!beta || !solves || shows(betaFound ? "β = 28.6°" : "β")) << on;
    });
}

/// What the reasons and the working of these steps speak of stands on the figure.
TEST_F(LectureUnseen, OtherKindsOfQuestionsNameTheirAnglesToo) {
    const auto has = [&](const char* sample, const char* step, std::initializer_list<const char*> wanted) {
        open(sample);
        goTo(step);
        const std::string on = angleTexts(list());
        for (const char* text : wanted)
            EXPECT_NE(on.find(text), std::string::npos) << sample << ", " << step << ": " << on;
    };
    has("two-answers.json", "angle", {"β = 30.0°"});
    has("two-answers.json", "first", {"α′ = 20.3°", "γ′ = 129.7°", "β = 30.0°"});
    has("two-answers.json", "second", {"α″ = 99.7°", "γ″ = 50.3°"});
    has("oblique-components.json", "angles", {"α = 35.0°", "β = 30.0°", "γ = 115.0°"});
    has("line-that-holds.json", "included", {"γ = 115.0°"});
    has("smallest-force.json", "angle", {"β = 25.0°"});
    has("smallest-force.json", "legs", {"β = 25.0°"});
}

TEST_F(LectureUnseen, LamisFormNamesTheAnglesRoundThePoint) {
    ExplainOptions options;
    options.method = Method::triangle;
    open(sampleNamed("ring-at-rest.json"), {1920, 1080}, options);
    goTo("angles");
    const std::string on = angleTexts(list());
    for (const char* text : {"φQ = 120.0°", "φS = 115.0°", "φP = 125.0°"})
        EXPECT_NE(on.find(text), std::string::npos) << on;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
