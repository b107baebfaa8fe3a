#include "core/figure/drawing.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

struct Reach {
    double left = 0, right = 0, down = 0, up = 0;
    void take(const Eigen::Vector2d& p) {
        left = std::min(left, p.x());
        right = std::max(right, p.x());
        down = std::min(down, p.y());
        up = std::max(up, p.y());
    }
};

Reach reachOf(const Sketch& sketch, const Solved& solved, const Construction& construction,
              const FigureOptions& options) {
    Reach reach;
    for (std::size_t s = 0; s < std::max<std::size_t>(1, solved.solutions.size()); ++s) {
        const Vectors vectors = vectorsOf(sketch, solved, s);
        for (const PlainVector& v : vectors.forces)
            if (v.complete())
                reach.take(v.vector);
        if (vectors.sum.complete())
            reach.take(vectors.sum.vector);
    }
    if (options.construction != ConstructionKind::none)
        for (const Eigen::Vector2d& corner : construction.polygon.corners)
            reach.take(corner);
    if (options.construction != ConstructionKind::none && construction.parallelogram)
        for (const Eigen::Vector2d& corner : construction.parallelogram->corners)
            reach.take(corner);
    return reach;
}

/// Down to a scale at which a division is a multiple of 1.25 mm, so that it can be said and measured.
double niceScale(double most, double width, double height) {
    View view{width, height, {0, 0}, most};
    const double division = divisionOf(view);
    const double step = 72 / 25.4 * 1.25;
    const double points = std::floor(division * most / step * (1 + 1e-9)) * step;
    return points > 0 ? points / division : most;
}

} // namespace

View fittedView(const Sketch& sketch, const Solved& solved, const Construction& construction,
                const FigureOptions& options, double width, double height) {
    const Reach r = reachOf(sketch, solved, construction, options);
    const double f = options.style.factor;
    const double margin = std::min(62 * f, 0.16 * std::min(width, height));
    const double strip = options.titleBlock ? std::min(46 * f, 0.2 * height) : 0;
    const double roomX = std::max(width - 2 * margin, 1.0),
                 roomY = std::max(height - 2 * margin - strip, 1.0);
    const double spanX = r.right - r.left, spanY = r.up - r.down;
    double scale = 1;
    if (spanX > 0 || spanY > 0)
        scale =
            niceScale(std::min(spanX > 0 ? roomX / spanX : HUGE_VAL, spanY > 0 ? roomY / spanY : HUGE_VAL),
                      width, height);
    View view{width, height, {}, scale};
    view.origin.x = margin + (roomX - spanX * scale) / 2 - r.left * scale;
    view.origin.y = margin + (roomY - spanY * scale) / 2 + r.up * scale;
    return view;
}

} // namespace tailpoint
