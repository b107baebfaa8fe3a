// SPDX-License-Identifier: MIT
#include "core/figure/hit.h"

#include "core/construct/reduction.h"
#include "core/figure/drawing.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tailpoint {
namespace {

constexpr double kNowhere = std::numeric_limits<double>::infinity();
constexpr double kSameDistance = 1e-6; ///< points; of lines that lie on one another the first is meant

double distanceTo(Point at, Point a, Point b) {
    const Point along = b - a;
    const double square = dot(along, along);
    const double t = square > 0 ? std::clamp(dot(at - a, along) / square, 0.0, 1.0) : 0;
    return length(at - (a + t * along));
}

double distanceTo(Point at, const Path& path) {
    double least = kNowhere;
    const std::size_t n = path.points.size();
    for (std::size_t i = 0; i + (path.closed ? 0 : 1) < n; ++i)
        least = std::min(least, distanceTo(at, path.points[i], path.points[(i + 1) % n]));
    return least;
}

double distanceTo(Point at, const Arc& arc) {
    const Point from = at - arc.centre;
    const double sense = arc.sweepDegrees < 0 ? -1 : 1;
    const double turn = turned(sense * (degreesOf(from) - arc.startDegrees));
    return turn <= std::abs(arc.sweepDegrees) ? std::abs(length(from) - arc.radius) : kNowhere;
}

bool isIn(const Box& box, Point at) {
    return at.x >= box.left && at.x <= box.right() && at.y >= box.top && at.y <= box.bottom();
}

double distanceTo(Point at, const Item& item) {
    if (const Arc* arc = std::get_if<Arc>(&item))
        return distanceTo(at, *arc);
    if (const Path* path = std::get_if<Path>(&item))
        return distanceTo(at, *path);
    const Text* text = std::get_if<Text>(&item);
    return text != nullptr && isIn(text->box, at) ? 0 : kNowhere;
}

double distanceTo(Point at, const Group& group) {
    double least = kNowhere;
    for (const Item& item : group.items)
        least = std::min(least, distanceTo(at, item));
    return least;
}

/// Not the copy of an arrow at its old place, nor a partial sum, of which no step speaks.
bool canBeMeant(const FigurePart& part) {
    const auto* vector = std::get_if<VectorId>(&part);
    return vector == nullptr || *vector == kKnownVector;
}

/// Of the groups of these roles.
std::optional<FigurePart> nearest(const DisplayList& list, Point at, double reach,
                                  std::initializer_list<Role> roles) {
    std::optional<FigurePart> best;
    for (const Group& group : list.groups) {
        const bool counts = group.part && canBeMeant(*group.part) &&
                            std::find(roles.begin(), roles.end(), group.role) != roles.end();
        const double away = counts ? distanceTo(at, group) : kNowhere;
        if (away < reach) {
            reach = away - kSameDistance;
            best = group.part;
        }
    }
    return best;
}

} // namespace

std::vector<SheetArrow> arrowsOn(const Sketch& sketch, const Solved& solved, const Construction& construction,
                                 const View& view, const FigureOptions& options, const TextMeasure& measure) {
    const Drawing drawing(sketch, solved, construction, view, options, measure);
    std::vector<SheetArrow> arrows;
    drawing.forEachVector([&](int index) {
        if (!drawing.isDrawn(index))
            return;
        const Ends ends = drawing.endsOf(index);
        arrows.push_back({vectorId(index), ends.tail, ends.tip});
    });
    forEachOther(drawing, [&](int index, const PlainVector&, const Ends& ends) {
        arrows.push_back({vectorId(index), ends.tail, ends.tip, true});
    });
    return arrows;
}

std::optional<FigurePart> partAt(const DisplayList& list, Point at, double reach) {
    const auto angle = nearest(list, at, reach, {Role::arc});
    return angle ? angle : nearest(list, at, reach, {Role::construction, Role::locus});
}

std::vector<SheetLabel> labelsOn(const DisplayList& list) {
    std::vector<SheetLabel> labels;
    for (const Group& group : list.groups) {
        const auto* quantity = group.part ? std::get_if<QuantityId>(&*group.part) : nullptr;
        const bool ofDirection = quantity != nullptr && quantity->what == What::direction;
        const VectorId vector = ofDirection ? quantity->of : vectorOf(group);
        if (vector == kNobody)
            continue;
        for (const Item& item : group.items)
            if (const Text* text = std::get_if<Text>(&item))
                labels.push_back({vector, ofDirection, group.otherAnswer, text->box, text});
    }
    return labels;
}

} // namespace tailpoint
