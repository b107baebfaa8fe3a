#include "ui/canvas/hit.h"

#include <QLineF>
#include <array>
#include <optional>

namespace tailpoint {

namespace {

/// Distance from a point to the piece a-b.
double distanceTo(QPointF p, QPointF a, QPointF b) {
    const QPointF along = b - a;
    const double square = QPointF::dotProduct(along, along);
    const double t = square > 0 ? std::clamp(QPointF::dotProduct(p - a, along) / square, 0.0, 1.0) : 0;
    return QLineF(p, a + t * along).length();
}

/// The cell that a text of the figure stands for.
Cell cellOf(const Group& group, std::size_t text) {
    constexpr std::array titleBlock{Cell::title, Cell::scale, Cell::reference, Cell::figures};
    if (group.role == Role::titleblock) {
        return text < titleBlock.size() ? titleBlock[text] : Cell::none;
    }
    if (group.vector == kNoVector || text > 0) {
        return Cell::none;
    }
    return group.role == Role::arc ? Cell::direction : Cell::magnitude;
}

/// Calls `take(cell, vector, box in pixels)` for every text that can be typed into.
template <class Take>
void forEachLabel(const Scene& scene, Take take) {
    for (const Group& group : scene.figure().list.groups) {
        std::size_t texts = 0;
        for (const Item& item : group.items) {
            const Text* text = std::get_if<Text>(&item);
            const Cell cell = text != nullptr ? cellOf(group, texts++) : Cell::none;
            if (cell != Cell::none) {
                take(cell, group.vector, scene.sheet().toPixels(text->box));
            }
        }
    }
}

void nearestTip(Hit& best, const Scene& scene, const std::vector<DrawnVector>& drawn, QPointF at) {
    const SheetView& sheet = scene.sheet();
    double least = kTipReach;
    const double toPoint = QLineF(at, sheet.toPixels(Eigen::Vector2d(0, 0))).length();
    if (toPoint <= least) {
        least = toPoint;
        best.kind = Hit::Kind::commonPoint;
    }
    for (const DrawnVector& d : drawn) {
        const double away = QLineF(at, sheet.toPixels(d.tip)).length();
        if (!d.ghost && away <= least) {
            least = away;
            best = {Hit::Kind::tip, d.vector, d, Cell::none, {}};
        }
    }
}

void nearestBody(Hit& best, const Scene& scene, const std::vector<DrawnVector>& drawn, QPointF at) {
    const SheetView& sheet = scene.sheet();
    double least = kBodyReach;
    for (const DrawnVector& d : drawn) {
        const double away = distanceTo(at, sheet.toPixels(d.tail), sheet.toPixels(d.tip));
        if (away < least) {
            least = away;
            best = {d.ghost ? Hit::Kind::otherAnswer : Hit::Kind::body, d.vector, d, Cell::none, {}};
        }
    }
}

} // namespace

Hit hitTest(const Scene& scene, QPointF at) {
    const std::vector<DrawnVector> drawn = drawnVectors(scene.result());
    Hit hit;
    nearestTip(hit, scene, drawn, at);
    if (hit.kind == Hit::Kind::nothing) {
        hit = hitLabel(scene, at);
    }
    if (hit.kind == Hit::Kind::nothing) {
        nearestBody(hit, scene, drawn, at);
    }
    return hit;
}

Hit hitLabel(const Scene& scene, QPointF at) {
    Hit hit;
    forEachLabel(scene, [&](Cell cell, int vector, const QRectF& box) {
        if (box.contains(at)) {
            hit = {vector == kNoVector ? Hit::Kind::cell : Hit::Kind::label, vector, {}, cell, box};
        }
    });
    return hit;
}

std::optional<QRectF> labelBox(const Scene& scene, Cell cell, int vector) {
    std::optional<QRectF> found;
    forEachLabel(scene, [&](Cell other, int of, const QRectF& box) {
        if (other == cell && of == vector) {
            found = box;
        }
    });
    return found;
}

} // namespace tailpoint
