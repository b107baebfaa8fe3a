// SPDX-License-Identifier: MIT
// Hostile and long texts through every output that lays them out: markup stays well formed, and nothing that
// is measured or placed is beyond bounds.
#include "core/explain/question.h"
#include "core/sketch/title.h"
#include "tests/fuzz/mutations.h"
#include "ui/files/report.h"
#include "ui/handout/figure_job.h"
#include "ui/handout/handout_document.h"
#include "ui/handout/handout_pages.h"

#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QXmlStreamReader>
#include <array>
#include <memory>

using namespace tailpoint;
using fuzz::Dice;

namespace TAILPOINT_FILE {

constexpr std::uint64_t kSeed = 77'000;
constexpr int kCases = 150;

/// What markup, TeX, and layout trip over; each counts one code point or a few.
constexpr std::array<const char*, 22> kPieces{
    "a",  " ",    "W",  "]]>", "</svg>", "<script>", "&amp;", "&",      "\\end{document}", "$",     "%", "{",
    "}}", "^_#~", "\"", "'",   "\u6CE2", "\u0301",   "--",    "\u05D0", "\U0001F309",      "\uFB03"};

std::size_t lettersOf(const std::string& text) {
    std::size_t count = 0;
    for (const char c : text)
        count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
    return count;
}

std::string textUpTo(Dice& dice, std::size_t most) {
    std::string text;
    const std::size_t wanted = dice.oneIn(3) ? most : 1 + dice.below(most);
    const bool oneWord = dice.oneIn(3);
    for (int tries = 0; tries < 2000 && lettersOf(text) < wanted; ++tries) {
        const std::string piece = dice.oneOf(kPieces);
        if (lettersOf(text + piece) <= most && !(oneWord && piece == " "))
            text += piece;
    }
    return text;
}

Sketch sketchOf(Dice& dice) {
    Sketch sketch = emptySketch();
    sketch.title = textUpTo(dice, kLongestTitle);
    for (std::size_t i = 1 + dice.below(4); i > 0; --i) {
        Force force;
        force.name = textUpTo(dice, kLongestName);
        force.magnitude.value = 1 + static_cast<double>(dice.below(400));
        force.direction.form = AngleForm{static_cast<double>(dice.below(360))};
        sketch.forces.push_back(force);
    }
    sketch.sum.name = textUpTo(dice, kLongestName);
    sketch.caution = dice.oneIn(3);
    return sketch;
}

std::string xmlFault(const QByteArray& bytes) {
    QXmlStreamReader xml(bytes);
    while (!xml.atEnd())
        xml.readNext();
    return xml.hasError() ? xml.errorString().toStdString() + " at line " + std::to_string(xml.lineNumber())
                          : std::string();
}

/// Without comments: from a percent sign that no backslash escapes to the end of the line.
QByteArray asTexReads(const QByteArray& file) {
    QByteArray read;
    bool comment = false;
    for (qsizetype i = 0; i < file.size(); ++i) {
        comment = file[i] != '\n' && (comment || file[i] == '%');
        if (comment)
            continue;
        read += file[i];
        if (file[i] == '\\' && i + 1 < file.size())
            read += file[++i];
    }
    return read;
}

void expectSoundTex(const QByteArray& file) {
    const QByteArray tex = asTexReads(file);
    EXPECT_EQ(tex.count("\\begin{document}"), 1);
    EXPECT_EQ(tex.count("\\end{document}"), 1);
    int depth = 0;
    for (qsizetype i = 0; i < tex.size(); ++i) {
        if (tex[i] == '\\')
            ++i; // an escaped brace is text
        else
            depth += tex[i] == '{' ? 1 : tex[i] == '}' ? -1 : 0;
        ASSERT_GE(depth, 0) << tex.mid(std::max<qsizetype>(0, i - 60), 80).toStdString();
    }
    EXPECT_EQ(depth, 0);
}

class FuzzOutputs : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        static int count = 1;
        static std::string name = "test_fuzz";
        static char* arguments[] = {name.data(), nullptr};
        application = std::make_unique<QGuiApplication>(count, arguments);
    }
    static void TearDownTestSuite() { application.reset(); }
    static inline std::unique_ptr<QGuiApplication> application;
};

TEST_F(FuzzOutputs, FiguresAndHandoutsOfHostileTextsAreWellFormed) {
    fuzz::announceSeedOnCrash();
    int drawn = 0;
    for (int i = 0; i < kCases && !HasFailure(); ++i) {
        const std::uint64_t seed = kSeed + static_cast<std::uint64_t>(i);
        fuzz::setCurrentSeed(seed);
        Dice dice(seed);
        const Sketch sketch = sketchOf(dice);
        if (firstFault(sketch)) // two of one name, a blank one
            continue;
        ++drawn;
        SCOPED_TRACE("seed " + std::to_string(seed) + ": " + fuzz::escaped(sketch.title));
        const Result result = resultOf(sketch);
        FigureJob job;
        const auto svg = std::get<std::vector<FigureFile>>(figureFiles(result, job)).front().bytes;
        EXPECT_EQ(xmlFault(svg), "");
        EXPECT_TRUE(std::get<Sketch>(readSketch(svg)) == sketch);
        job.form = FigureForm::tex;
        expectSoundTex(std::get<std::vector<FigureFile>>(figureFiles(result, job)).front().bytes);
        HandoutChoice choice;
        choice.solution = dice.oneIn(2);
        const QByteArray html = handoutHtml(result, choice);
        EXPECT_EQ(xmlFault(html.mid(html.indexOf("<html"))), "");
        expectSoundTex(handoutLatex(result, choice));
        if (dice.oneIn(10)) {
            EXPECT_TRUE(handoutPdf(result, choice, QPageSize::A4).startsWith("%PDF-"));
        }
    }
    if (!HasFailure()) {
        EXPECT_GT(drawn, kCases / 2) << "too few of the made sketches are without fault";
    }
}

/// Which of the two is given: both, the direction, the magnitude, none.
void give(Force& force, int which, double magnitude, double degrees) {
    if (which == 0 || which == 2)
        force.magnitude.value = magnitude;
    if (which == 0 || which == 1)
        force.direction.form = AngleForm{degrees};
}

/// Forces P, Q, S with `pattern` of what is given, four ways each; of the sum also that it is zero. The
/// smallest is nobody, one of the forces, or the sum.
Sketch patternOf(int forces, int pattern, int sum, int smallest) {
    constexpr std::array names{"P", "Q", "S"};
    Sketch sketch = emptySketch();
    for (int i = 0; i < forces; ++i, pattern /= 4) {
        Force force;
        force.name = names[static_cast<std::size_t>(i)];
        give(force, pattern % 4, 200 + 70 * i, 25 + 100 * i);
        sketch.forces.push_back(force);
    }
    sketch.sum.name = "R";
    if (sum == 4)
        sketch.sum.magnitude.value = 0;
    else
        give(sketch.sum, sum, 260, 70);
    if (smallest > 0)
        sketch.smallest = smallest <= forces ? names[static_cast<std::size_t>(smallest - 1)] : "R";
    return sketch;
}

// 1980 patterns, those with a fault left out.
TEST_F(FuzzOutputs, EveryPatternOfWhatIsGivenIsToldAndDrawn) {
    int told = 0;
    for (int forces = 1; forces <= 3; ++forces)
        for (int pattern = 0; pattern < 1 << (2 * forces); ++pattern)
            for (int sum = 0; sum <= 4; ++sum)
                for (int smallest = 0; smallest <= forces + 1; ++smallest) {
                    const Sketch sketch = patternOf(forces, pattern, sum, smallest);
                    if (firstFault(sketch))
                        continue;
                    SCOPED_TRACE(::testing::Message() << forces << " forces, pattern " << pattern << ", sum "
                                                      << sum << ", smallest " << smallest);
                    const Result result = resultOf(sketch);
                    EXPECT_FALSE(question(sketch).empty());
                    EXPECT_FALSE(reportText(result).isEmpty());
                    EXPECT_FALSE(reportJson(result).isEmpty());
                    if (++told % 5 != 0)
                        continue;
                    const auto made = figureFiles(result, FigureJob{});
                    EXPECT_EQ(xmlFault(std::get<std::vector<FigureFile>>(made).front().bytes), "");
                }
    EXPECT_GT(told, 1'500);
}

} // namespace TAILPOINT_FILE
