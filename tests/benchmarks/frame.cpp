// SPDX-License-Identifier: MIT
// One frame of a drag, from the mouse event to the painted window of 1600 x 1000, against plain widgets that
// paint the same strokes and texts from ready material. The canvas alone; the whole window with its panel
// beside.
#include "core/figure/compose.h"
#include "tests/benchmarks/drag.h"
#include "tests/benchmarks/plain_sheet.h"
#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/render/render.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <array>
#include <cstdio>

using namespace tailpoint;
using namespace tailpoint::bench;

namespace {

constexpr QSize kSize(1600, 1000);
constexpr int kFrames = 400;
constexpr int kWarmUp = 40;

struct Rig {
    SketchDocument document;
    Canvas canvas{document};
    PlainSheet cached{true}, uncached{false};

    Rig() {
        document.open(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json"));
        canvas.setAnimated(false);
        for (QWidget* widget : std::array<QWidget*, 3>{&canvas, &cached, &uncached}) {
            widget->resize(kSize);
            widget->move(0, 0);
        }
    }
};

struct Times {
    Frames canvas, cached, uncached;
};

/// Frame by frame: the canvas first, then the plain sheets with what it has just drawn.
Times measure(Rig& rig) {
    Times times;
    PaintCounter canvasPaints(rig.canvas), cachedPaints(rig.cached), uncachedPaints(rig.uncached);
    Drag drag(rig.canvas, rig.document);
    Sketch before;
    const Theme& theme = themeOf(ThemeName::paper);
    for (int frame = 0; frame < kFrames + kWarmUp; ++frame) {
        const Frame canvas = timed([&] {
            drag.moveTo(frame);
            canvasPaints.waitForOne();
        });
        insist(canvasPaints.lastRegion().boundingRect().contains(QRect(QPoint(0, 0), kSize)),
               "the canvas painted less than all of itself");
        insist(rig.document.sketch() != before, "the drag did not change the sketch");
        before = rig.document.sketch();
        const DisplayList& list = rig.canvas.figure().list;
        const double scale = rig.canvas.pixelsPerPoint();
        const auto background = strokesOf(list, theme, scale, true);
        const auto foreground = strokesOf(list, theme, scale, false);
        rig.cached.take(background, foreground, theme.sheet);
        const Frame cached = timed([&] {
            rig.cached.update();
            cachedPaints.waitForOne();
        });
        rig.uncached.take(background, foreground, theme.sheet);
        const Frame uncached = timed([&] {
            rig.uncached.update();
            uncachedPaints.waitForOne();
        });
        if (frame < kWarmUp)
            continue;
        times.canvas.push_back(canvas);
        times.cached.push_back(cached);
        times.uncached.push_back(uncached);
    }
    return times;
}

/// The same drag in the whole window, its canvas as large.
Frames measureWindow() {
    MainWindow window;
    window.openPath(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json"));
    auto* canvas = window.findChild<Canvas*>(QStringLiteral("canvas"));
    if (canvas == nullptr)
        return {};
    canvas->setAnimated(false);
    window.resize(kSize + QSize(400, 100));
    window.show();
    QCoreApplication::processEvents();
    window.resize(window.size() + kSize - canvas->size());
    QCoreApplication::processEvents();
    Frames times;
    PaintCounter paints(*canvas);
    Drag drag(*canvas, window.document());
    for (int frame = 0; frame < kFrames; ++frame)
        times.push_back(timed([&] {
            drag.moveTo(frame);
            paints.waitForOne();
            QCoreApplication::processEvents(); // the panel's own frame
        }));
    return {times.begin() + kWarmUp, times.end()};
}

double ratio(const Frames& ours, const Frames& floor, double Frame::*part) {
    return median(ours, part) / median(floor, part);
}

void printRow(const char* name, const Frames& frames, const Times& times) {
    std::printf("%-48s %7.3f ms %7.3f ms", name, median(frames, &Frame::wall), median(frames, &Frame::cpu));
    for (const Frames* floor : {&times.uncached, &times.cached})
        std::printf(" %8.2f %6.2f", ratio(frames, *floor, &Frame::wall), ratio(frames, *floor, &Frame::cpu));
    std::printf("\n");
}

} // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    Times times;
    {
        Rig rig;
        rig.canvas.show();
        rig.cached.show();
        rig.uncached.show();
        QCoreApplication::processEvents();
        times = measure(rig);
    }
    std::printf("A frame of a drag at 1600 x 1000, %d frames interleaved (goal: at most 1.5)\n", kFrames);
    std::printf("%-48s %10s %10s %15s %15s\n", "", "wall", "processor", "to floor", "to pixmap floor");
    printRow("floor: plain widget, every stroke painted", times.uncached, times);
    printRow("floor with its background kept in a pixmap", times.cached, times);
    printRow("canvas, mouse event to painted", times.canvas, times);
    printRow("whole window with its panel", measureWindow(), times);
    return 0;
}
