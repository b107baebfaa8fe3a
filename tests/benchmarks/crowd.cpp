// SPDX-License-Identifier: MIT
// A paint of a thousand forces at 1600 x 1000: the canvas painted once more, a frame of a drag of one tip,
// the same in the whole window. Against plain widgets that paint the same strokes from ready material.
#include "tests/benchmarks/drag.h"
#include "tests/benchmarks/plain_sheet.h"
#include "ui/render/render.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <cstdio>

using namespace tailpoint;
using namespace tailpoint::bench;

namespace {

constexpr QSize kSize(1600, 1000);
constexpr int kForces = 1000, kFrames = 60, kWarmUp = 5;

/// Forces of many sizes all round the point; the same every time. The first is the longest.
Sketch crowd() {
    Sketch sketch;
    sketch.sum.name = "R";
    for (int i = 0; i < kForces; ++i) {
        Force force;
        force.name = "F" + std::to_string(i + 1);
        force.magnitude.value = i == 0 ? 900 : 100 + 37 * (i % 19);
        force.direction.form = AngleForm{-170 + 360.0 * ((i * 7) % kForces) / kForces};
        sketch.forces.push_back(std::move(force));
    }
    return sketch;
}

struct Times {
    Frames still, drag, floor;
};

Times measure() {
    SketchDocument document;
    document.edit(crowd(), QStringLiteral("crowd"));
    Canvas canvas(document);
    canvas.setAnimated(false);
    PlainSheet plain(false);
    for (QWidget* widget : std::initializer_list<QWidget*>{&canvas, &plain}) {
        widget->resize(kSize);
        widget->show();
    }
    canvas.fit();
    QCoreApplication::processEvents();
    Times times;
    PaintCounter canvasPaints(canvas), plainPaints(plain);
    Drag drag(canvas, document);
    Sketch before;
    const Theme& theme = themeOf(ThemeName::paper);
    for (int frame = 0; frame < kFrames + kWarmUp; ++frame) {
        const Frame dragged = timed([&] {
            drag.moveTo(frame);
            canvasPaints.waitForOne();
        });
        insist(document.sketch() != before, "the drag did not change the sketch");
        before = document.sketch();
        const Frame still = timed([&] {
            canvas.update();
            canvasPaints.waitForOne();
        });
        const DisplayList& list = canvas.figure().list;
        plain.take(strokesOf(list, theme, canvas.pixelsPerPoint(), true),
                   strokesOf(list, theme, canvas.pixelsPerPoint(), false), theme.sheet);
        const Frame floor = timed([&] {
            plain.update();
            plainPaints.waitForOne();
        });
        if (frame < kWarmUp)
            continue;
        times.still.push_back(still);
        times.drag.push_back(dragged);
        times.floor.push_back(floor);
    }
    return times;
}

/// The same drag in the whole window, its canvas as large.
Frames measureWindow() {
    MainWindow window;
    window.document().edit(crowd(), QStringLiteral("crowd"));
    Canvas& canvas = window.canvas();
    canvas.setAnimated(false);
    window.resize(kSize + QSize(400, 100));
    window.show();
    QCoreApplication::processEvents();
    window.resize(window.size() + kSize - canvas.size());
    canvas.fit();
    QCoreApplication::processEvents();
    Frames times;
    PaintCounter paints(canvas);
    Drag drag(canvas, window.document());
    for (int frame = 0; frame < kFrames + kWarmUp; ++frame)
        times.push_back(timed([&] {
            drag.moveTo(frame);
            paints.waitForOne();
            QCoreApplication::processEvents(); // the panel's own frame
        }));
    return {times.begin() + kWarmUp, times.end()};
}

void printRow(const char* name, const Frames& frames, const Frames& floor) {
    std::printf("%-48s %7.3f ms %7.3f ms %8.2f\n", name, median(frames, &Frame::wall),
                median(frames, &Frame::cpu), median(frames, &Frame::cpu) / median(floor, &Frame::cpu));
}

} // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    const Times times = measure();
    std::printf("%d forces at 1600 x 1000, %d frames interleaved (goal: at most 16.7 ms a paint)\n", kForces,
                kFrames);
    std::printf("%-48s %10s %10s %8s\n", "", "wall", "processor", "to floor");
    printRow("floor: plain widget, every stroke painted", times.floor, times.floor);
    printRow("canvas, painted once more", times.still, times.floor);
    printRow("canvas, mouse event to painted", times.drag, times.floor);
    printRow("whole window with its panel, the same drag", measureWindow(), times.floor);
    return 0;
}
