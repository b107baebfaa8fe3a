#include "ui/canvas/drawn.h"

#include "core/construct/reduction.h"
#include "core/figure/hit.h"
#include "ui/canvas/scene.h"

#include <algorithm>

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

const DrawnVector* drawnOf(const std::vector<DrawnVector>& drawn, int vector) {
    const auto at = std::find_if(drawn.begin(), drawn.end(),
                                 [&](const DrawnVector& d) { return d.vector == vector && !d.ghost; });
    return at == drawn.end() ? nullptr : &*at;
}

} // namespace tailpoint
