// SPDX-License-Identifier: MIT
// A drag on the sheet, frame by frame, and what a frame takes.
#pragma once

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"

#include <QObject>
#include <QPointF>
#include <QRegion>
#include <functional>
#include <vector>

namespace tailpoint::bench {

/// Counts what a widget paints.
class PaintCounter : public QObject {
public:
    explicit PaintCounter(QWidget& watched);
    bool eventFilter(QObject*, QEvent* event) override;
    const QRegion& lastRegion() const { return m_region; }
    /// Runs the event loop until the widget has painted once more. False: it did not want to.
    bool waitForOne();

private:
    QWidget& m_watched;
    int m_painted = 0;
    QRegion m_region;
};

/// Milliseconds of a frame. A busy machine blurs the wall's clock; the thread's own time hardly.
struct Frame {
    double wall = 0, cpu = 0;
};
using Frames = std::vector<Frame>;

double median(const Frames& frames, double Frame::*part);
Frame timed(const std::function<void()>& action);

/// A drag of the tip of the first force round a small loop, one step a frame.
class Drag {
public:
    Drag(Canvas& canvas, const SketchDocument& document);
    ~Drag();
    Drag(const Drag&) = delete;
    Drag& operator=(const Drag&) = delete;
    void moveTo(int frame);

private:
    Canvas& m_canvas;
    QPointF m_start;
};

/// A figure that measures nothing is worse than none: ends the program.
void insist(bool holds, const char* otherwise);

} // namespace tailpoint::bench
