// SPDX-License-Identifier: MIT
// From the last row of a room: every letter and every stroke of every step, as they are painted.
#include "core/figure/words.h"
#include "tests/support/sketches.h"
#include "tests/ui/lecture/lecture_fixture.h"
#include "ui/lecture/key_sheet.h"
#include "ui/lecture/progress.h"
#include "ui/render/fonts.h"

#include <QFontMetricsF>
#include <algorithm>
#include <map>
#include <tuple>

namespace tailpoint {
namespace TAILPOINT_FILE {

QFont fontOf(const Run& run, Face face) {
    QFont font = face == Face::serif ? serifFont() : sansFont();
    font.setItalic(run.italic);
    font.setBold(run.bold);
    return font;
}

/// The least capital of a figure, and the least strokes of arrows and of everything else, pixels.
struct Sizes {
    double capital = 1e9, arrow = 1e9, arc = 1e9, thin = 1e9;
};

/// Asked once for each font: a thousand steps have ten thousands of texts.
double capitalOf(const Run& run, Face face) {
    static std::map<std::tuple<Face, bool, bool>, double> known;
    const auto [entry, isNew] = known.try_emplace({face, run.italic, run.bold}, 0);
    if (isNew)
        entry->second = tailpoint::capitalOf(fontOf(run, face));
    return entry->second;
}

void take(Sizes& sizes, const Text& text, double pixel) {
    for (const Run& run : text.runs)
        sizes.capital = std::min(sizes.capital, sizeOf(run, text.size) * pixel * capitalOf(run, text.face));
}

void take(Sizes& sizes, const Path& path, double pixel) {
    if (path.width <= 0 || path.role == Role::grid)
        return;
    const bool shaft = !path.closed && path.dash == Dash::solid && path.points.size() == 2;
    const bool vector = path.role == Role::given || path.role == Role::sum;
    double& least = vector && shaft ? sizes.arrow : sizes.thin;
    least = std::min(least, path.width * pixel);
}

Sizes sizesOf(const DisplayList& list, double pixel) {
    Sizes sizes;
    for (const Group& group : list.groups)
        for (const Item& item : group.items) {
            if (const auto* text = std::get_if<Text>(&item)) {
                take(sizes, *text, pixel);
            } else if (const auto* path = std::get_if<Path>(&item)) {
                take(sizes, *path, pixel);
            } else if (const auto* arc = std::get_if<Arc>(&item)) {
                double& least = arc->role == Role::locus ? sizes.thin : sizes.arc;
                least = std::min(least, arc->width * pixel);
            }
        }
    return sizes;
}

/// Sub- and superscripts with the sizes of their texts.
std::vector<std::pair<Run, double>> scriptsOf(const DisplayList& list) {
    std::vector<std::pair<Run, double>> scripts;
    for (const Group& group : list.groups)
        for (const Item& item : group.items)
            if (const auto* text = std::get_if<Text>(&item))
                for (const Run& run : text->runs)
                    if (run.script != Script::normal)
                        scripts.emplace_back(run, text->size);
    return scripts;
}

/// Names with subscripts, one arrow hardly longer than its head and one shorter than that.
Result smallFry() {
    return resultOf(testing::sketch(
        {testing::force("F12", 340, 25), testing::force("F_a", 9, -80), testing::force("W3", 2, 150)}));
}

std::vector<Sample> samplesAndMore() {
    std::vector<Sample> all = allSamples();
    all.push_back({"small fry", smallFry()});
    return all;
}

class LegibleTest : public LectureTest {
protected:
    /// Calls `look` at every step, whole, of every sample on every screen.
    template <class Look>
    void everywhere(Look look) {
        for (const Sample& sample : samplesAndMore())
            for (const QSize room : kRooms) {
                open(sample.result, room);
                for (std::size_t s = 0; s < view.stops().size(); ++s) {
                    view.goTo(s, true);
                    SCOPED_TRACE(sample.name + ", " + now().step.title + ", " + std::to_string(room.width()));
                    look(room);
                }
            }
    }
};

TEST_F(LegibleTest, NoCapitalIsLowerThanAFortiethOfTheScreenAndNoStrokeTooThin) {
    everywhere([&](QSize room) {
        const double h = room.height();
        const Sizes sizes = sizesOf(list(), pixel());
        EXPECT_GE(sizes.capital, h / 40);
        EXPECT_GE(sizes.arrow, h / 360 * 0.9999);
        EXPECT_GE(sizes.arc, h / 360 * 0.9999);
        EXPECT_GE(sizes.thin, h / 540 * 0.9999);
        EXPECT_GE(view.column().leastCapital(), h / 40);
    });
}

TEST_F(LegibleTest, SubscriptsAreSmallerThanTheirLettersAllTheSame) {
    open(smallFry());
    int seen = 0;
    for (const auto& [run, size] : scriptsOf(list())) {
        EXPECT_LE(sizeOf(run, size), 0.86 * size) << run.text;
        EXPECT_GT(shiftOf(run, size), 0.2 * size);
        ++seen;
    }
    EXPECT_GE(seen, 3);
}

TEST_F(LegibleTest, TheTitleBlockIsWholeAndOnTheSheetAtEveryStep) {
    int low = 0;
    everywhere([&](QSize) {
        const auto& groups = list().groups;
        const auto block =
            std::find_if(groups.begin(), groups.end(), [](const Group& g) { return g.id == "titleblock"; });
        ASSERT_NE(block, groups.end());
        std::string all;
        for (const Item& item : block->items)
            if (const auto* text = std::get_if<Text>(&item)) {
                all += textOf(*text) + " ";
                EXPECT_GE(text->box.left, 0);
                EXPECT_LE(text->box.right(), list().width);
                EXPECT_LE(text->box.bottom(), list().height);
            }
        EXPECT_TRUE(all.starts_with(figureTitle(view.document().sketch()) + " 1 division = ")) << all;
        EXPECT_TRUE(all.find(", ccw ") != std::string::npos || all.find(", cw ") != std::string::npos) << all;
        EXPECT_NE(all.find(" figure"), std::string::npos) << all;
        const auto& frame = std::get<Path>(block->items.front()).points;
        std::set<double> rows;
        for (const Item& item : block->items)
            if (const auto* text = std::get_if<Text>(&item))
                rows.insert(text->baseline.y);
        if (rows.size() == 2) {
            EXPECT_LE(frame[2].y - frame[0].y, 0.1 * list().height);
            ++low;
        }
    });
    EXPECT_GT(low, 20);
}

/// As if each sample were a lifting scene. The whole caution stands in the column at both ends; between them
/// its foot has a short one, and the sheet's foot is the title block's alone.
TEST_F(LegibleTest, ACautionLeavesTheSheetToTheFigureAndStandsAtEveryStep) {
    int looked = 0;
    for (const Sample& sample : allSamples()) {
        Sketch lift = sample.result.sketch;
        lift.caution = true;
        for (const QSize room : {kRooms[0], kRooms[2]}) {
            open(resultOf(lift), room);
            auto* foot = view.findChild<LectureProgress*>();
            for (std::size_t s = 0; s < view.stops().size(); ++s) {
                view.goTo(s, true);
                SCOPED_TRACE(sample.name + ", " + now().step.title + ", " + std::to_string(room.width()));
                const auto& groups = list().groups;
                EXPECT_TRUE(std::none_of(groups.begin(), groups.end(),
                                         [](const Group& g) { return g.id == "note"; }));
                EXPECT_EQ(foot->cautionText(), QStringLiteral("A check, not a design"));
                EXPECT_TRUE(foot->cautionFits());
                EXPECT_GE(foot->geometry().top(), view.column().geometry().bottom());
                const bool atAnEnd = now().step.key == StepKey::question || now().step.key == StepKey::end;
                const QString told = view.column().plainText();
                EXPECT_EQ(told.contains(QLatin1String("A sketch check, not a design.")) &&
                              told.contains(QLatin1String("competent person decides.")),
                          atAnEnd)
                    << told.toStdString();
                ++looked;
            }
        }
    }
    EXPECT_GT(looked, 500);
}

TEST_F(LegibleTest, WithoutACautionTheColumnsFootHasNone) {
    open(sampleNamed("survey-raft.json"));
    EXPECT_TRUE(view.findChild<LectureProgress*>()->cautionText().isEmpty());
    const int low = view.findChild<LectureProgress*>()->height();
    open(sampleNamed("mooring-gon.json"));
    EXPECT_FALSE(view.findChild<LectureProgress*>()->cautionText().isEmpty());
    EXPECT_GT(view.findChild<LectureProgress*>()->height(), low);
    const auto block = std::find_if(list().groups.begin(), list().groups.end(),
                                    [](const Group& g) { return g.id == "titleblock"; });
    const auto& frame = std::get<Path>(block->items.front()).points;
    EXPECT_LE(frame[2].y - frame[0].y, 0.1 * list().height);
}

TEST_F(LegibleTest, WhatIsPaintedIsAsHighAsItsFontSays) {
    open(smallFry(), {1366, 768});
    goTo("answer");
    const QImage seen = view.canvas().grab().toImage();
    const QRgb sheet = themeOf(ThemeName::slate).sheet.rgb();
    const auto differs = [&](int x, int y) {
        const QRgb p = seen.pixel(x, y);
        return std::abs(qGreen(p) - qGreen(sheet)) > 90; // more than half of a letter's edge
    };
    int looked = 0;
    for (const Group& group : list().groups)
        for (const Item& item : group.items)
            if (const auto* text = std::get_if<Text>(&item); text && group.role == Role::titleblock) {
                const int baseline = qRound(text->baseline.y * pixel());
                int top = baseline;
                for (int y = qFloor(text->box.top * pixel()) - 2; y < top; ++y)
                    for (int x = qCeil(text->box.left * pixel()); x < text->box.right() * pixel(); ++x)
                        if (differs(x, y)) {
                            top = y;
                            break;
                        }
                EXPECT_GE(baseline - top, 768 / 40) << textOf(*text);
                ++looked;
            }
    EXPECT_GE(looked, 4);
}

TEST_F(LegibleTest, CounterAndKeysAreLegibleToo) {
    for (const QSize room : kRooms) {
        open(sampleNamed("survey-raft.json"), room);
        EXPECT_GE(view.findChild<LectureProgress*>()->capital(), room.height() / 40.0);
        EXPECT_TRUE(view.findChild<KeySheet*>()->fits());
        EXPECT_GE(view.findChild<KeySheet*>()->capital(), room.height() / 40.0) << room.width();
    }
}

/// Forward by one key alone: whatever comes with a press is read before the next lines come.
TEST_F(LegibleTest, EveryLineFitsTheColumnAndIsReadPageByPage) {
    int pages = 0;
    for (const Sample& sample : samplesAndMore())
        for (const QSize room : kRooms)
            for (const bool more : {false, true}) {
                open(sample.result, room);
                key(Qt::Key_Home); // a lecture that was left goes on where it was
                if (more)
                    key(Qt::Key_M);
                const double right = view.measures().margin + view.measures().textWidth() + 1;
                std::size_t presses = 0, beats = 0;
                for (const Stop& stop : view.stops())
                    beats += stop.beats.size();
                std::pair<std::size_t, std::size_t> at{0, 0};
                std::set<std::size_t> unread = view.column().newestLines();
                const auto read = [&] {
                    for (const std::size_t line : view.column().linesSeen())
                        unread.erase(line);
                };
                read();
                while (view.stop() + 1 < view.stops().size() || view.beat() < now().lastBeat() ||
                       view.column().hasMore()) {
                    SCOPED_TRACE(sample.name + ", " + now().step.title + ", " + std::to_string(room.width()) +
                                 ", line " + std::to_string(view.beat()) + (more ? ", in full" : ""));
                    key(Qt::Key_PageDown);
                    ASSERT_LE(++presses, 4 * beats);
                    EXPECT_LE(view.column().widest(), right);
                    if (at != std::pair(view.stop(), view.beat())) {
                        EXPECT_TRUE(unread.empty()) << unread.size() << " lines were passed over";
                        at = {view.stop(), view.beat()};
                        unread = view.column().newestLines();
                    } else {
                        ++pages;
                    }
                    read();
                }
                EXPECT_TRUE(unread.empty()) << sample.name;
            }
    EXPECT_GT(pages, 0);
}

TEST_F(LegibleTest, BackIsReadPageByPageToo) {
    for (const char* sample : {"survey-raft.json", "five-forces.json"}) {
        open(sampleNamed(sample), {1024, 768});
        key(Qt::Key_M);
        key(Qt::Key_End);
        std::size_t presses = 0, stop = view.stop();
        std::set<std::size_t> seen{0};
        while (view.stop() > 0 || view.beat() > 0) {
            key(Qt::Key_PageUp);
            ASSERT_LE(++presses, 400U);
            if (view.stop() != stop) {
                EXPECT_TRUE(seen.contains(0)) << view.stops()[stop].step.title << ": its first line";
                seen.clear();
            }
            stop = view.stop();
            seen.merge(view.column().linesSeen());
        }
        EXPECT_TRUE(seen.contains(0));
    }
}

TEST_F(LegibleTest, AStepTakenWholeBeginsAtItsBeginningAndIsLeftAtItsEnd) {
    open(sampleNamed("survey-raft.json"), {1024, 768});
    key(Qt::Key_M);
    int long_ = 0;
    std::size_t stop = view.stop();
    bool isRead = true;
    std::set<std::size_t> seen;
    while (view.stop() + 1 < view.stops().size()) {
        key(Qt::Key_Down);
        if (view.stop() != stop) {
            EXPECT_TRUE(view.column().linesSeen().contains(0)) << now().step.title;
            EXPECT_TRUE(isRead) << "the newest line of the step before " << now().step.title;
            long_ += view.column().hasMore() ? 1 : 0;
            seen.clear();
        }
        stop = view.stop();
        seen.merge(view.column().linesSeen());
        const auto newest = view.column().newestLines();
        isRead =
            std::includes(seen.begin(), seen.end(), newest.begin(), newest.end()) && !view.column().hasMore();
        EXPECT_EQ(view.findChild<LectureProgress*>()->more(), view.column().hasMore());
    }
    EXPECT_GT(long_, 2);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
