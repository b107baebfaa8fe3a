#include "ui/canvas/drawn.h"

#include "core/figure/drawing.h"
#include "ui/canvas/scene.h"

#include <QLineF>
#include <algorithm>
#include <iterator>

namespace tailpoint {

namespace {

/// The vectors' indices in the order in which they are drawn.
std::vector<int> indices(const Sketch& sketch) {
    std::vector<int> all(sketch.forces.size() + 1, kSumIndex);
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        all[i] = static_cast<int>(i);
    }
    return all;
}

void addGhosts(std::vector<DrawnVector>& drawn, const Result& result) {
    if (result.solved.solutions.size() < 2) {
        return;
    }
    const Vectors other = vectorsOf(result.sketch, result.solved, 1 - result.chosen);
    for (const int vector : indices(result.sketch)) {
        if (other.at(vector).found() && other.at(vector).complete()) {
            drawn.push_back({vector, {0, 0}, other.at(vector).vector, true});
        }
    }
}

} // namespace

std::vector<DrawnVector> drawnVectors(const Scene& scene) {
    const Result& result = scene.result();
    const View& view = scene.sheet().view();
    const FigureOptions options = scene.options();
    const Drawing drawing(result.sketch, result.solved, result.construction, view, options, scene.measure());
    std::vector<DrawnVector> drawn;
    for (const int vector : indices(result.sketch)) {
        if (drawing.isDrawn(drawing.vectors.at(vector))) {
            const Ends ends = endsOf(drawing, vector);
            drawn.push_back({vector, view.toSketch(ends.tail), view.toSketch(ends.tip), false});
        }
    }
    if (drawing.showsOther(Stage::found)) {
        addGhosts(drawn, result);
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
    const std::vector<DrawnVector> drawn = drawnVectors(scene);
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
