// SPDX-License-Identifier: MIT
#include "ui/canvas/drawn.h"

#include "core/construct/reduction.h"
#include "core/figure/hit.h"
#include "ui/canvas/scene.h"

#include <QLineF>
#include <algorithm>
#include <iterator>

namespace tailpoint {

std::vector<DrawnVector> drawnVectors(const Scene& scene) {
    const Result& result = scene.result();
    const View& view = scene.sheet().view();
    std::vector<DrawnVector> drawn;
    for (const SheetArrow& arrow : arrowsOn(result.sketch, result.solved, result.construction, view,
                                            scene.options(), scene.measure())) {
        drawn.push_back(
            {indexOf(arrow.vector), view.toSketch(arrow.tail), view.toSketch(arrow.tip), arrow.otherAnswer});
    }
    return drawn;
}

namespace {

bool crosses(const QRectF& box, const QLineF& line) {
    const QLineF edges[]{{box.topLeft(), box.topRight()},
                         {box.topRight(), box.bottomRight()},
                         {box.bottomRight(), box.bottomLeft()},
                         {box.bottomLeft(), box.topLeft()}};
    return std::any_of(std::begin(edges), std::end(edges), [&](const QLineF& edge) {
        return edge.intersects(line, nullptr) == QLineF::BoundedIntersection;
    });
}

} // namespace

bool isSeen(const Scene& scene, const QRectF& pixels) {
    const SheetView& sheet = scene.sheet();
    const std::vector<DrawnVector>& drawn = scene.drawn();
    return pixels.contains(sheet.toPixels(sheet.view().origin)) ||
           std::any_of(drawn.begin(), drawn.end(), [&](const DrawnVector& each) {
               const QLineF shaft(sheet.toPixels(each.tail), sheet.toPixels(each.tip));
               return pixels.contains(shaft.p2()) || crosses(pixels, shaft);
           });
}

const DrawnVector* drawnOf(const std::vector<DrawnVector>& drawn, int vector) {
    const auto at = std::find_if(drawn.begin(), drawn.end(),
                                 [&](const DrawnVector& d) { return d.vector == vector && !d.ghost; });
    return at == drawn.end() ? nullptr : &*at;
}

} // namespace tailpoint
