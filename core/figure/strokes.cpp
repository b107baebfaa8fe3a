// SPDX-License-Identifier: MIT
#include "core/figure/strokes.h"

#include <algorithm>
#include <numbers>

namespace tailpoint {
namespace {

constexpr double kMillimetre = 72 / 25.4;
constexpr double kSmallHead = 3 * kMillimetre; ///< of a thin arrow: to be seen at the end of a dashed one
constexpr double kSlimness = 0.26;             ///< half the head's back by its length
constexpr double kOpenSlimness = 0.30;         ///< the sum's head is a little fuller
constexpr double kHollowSlimness = 0.42;       ///< so that there is sheet to see in it
constexpr double kShaftOfHead = 0.36;          ///< most of a shaft's width by its head's length
constexpr double kMostOfArrow = 0.7; ///< that a head may take of an arrow that can't be drawn thinner
constexpr double kNotch = 0.24;      ///< depth of the notch by the head's length

Path filledHead(Role role, Point tip, Point unit, double size) {
    const Point back = tip - size * unit, side = (kSlimness * size) * leftOf(unit);
    Path head;
    head.role = role;
    head.points = {tip, back + side, tip - ((1 - kNotch) * size) * unit, back - side};
    head.closed = head.filled = true;
    head.width = 0;
    return head;
}

/// The notched head in outline, drawn inside the filled one as the open head is.
Path hollowHead(Role role, Point tip, Point unit, double size, double width) {
    const double sine = kHollowSlimness / std::hypot(1, kHollowSlimness);
    const double mitre = std::min(width / 2 / sine, size / 3), room = size - mitre - width / 2;
    const Point apex = tip - mitre * unit, back = apex - room * unit;
    const Point side = (kHollowSlimness * room) * leftOf(unit);
    Path head;
    head.role = role;
    head.points = {apex, back + side, apex - ((1 - kNotch) * room) * unit, back - side};
    head.closed = true;
    head.width = width;
    return head;
}

/// The outline is drawn inside, so that its mitre ends at the tip and not beyond.
Path openHead(Role role, Point tip, Point unit, double size, double width) {
    const double sine = kOpenSlimness / std::hypot(1, kOpenSlimness);
    const double mitre = std::min(width / 2 / sine, size / 3);
    const Point apex = tip - mitre * unit, back = tip - (size - width / 2) * unit;
    const double half = kOpenSlimness * (size - width / 2 - mitre);
    Path head;
    head.role = role;
    head.points = {apex, back + half * leftOf(unit), back - half * leftOf(unit)};
    head.closed = true;
    head.width = width;
    return head;
}

} // namespace

double headLength(double length, double width) {
    return std::min(std::max(3.5 * kMillimetre, 5 * width), 0.4 * length);
}

Path line(Role role, Point a, Point b, double width, Dash dash) {
    Path path;
    path.role = role;
    path.points = {a, b};
    path.width = width;
    path.dash = dash;
    return path;
}

void addHead(std::vector<Item>& items, Role role, Point tip, Point unit, double size, Head head, double width,
             double least) {
    const auto outline = [&](double wanted, double most) { return std::min(wanted, std::max(most, least)); };
    if (head == Head::open)
        items.emplace_back(openHead(role, tip, unit, size, outline(width, size / 5)));
    else if (head == Head::hollow)
        items.emplace_back(hollowHead(role, tip, unit, size, outline(0.8 * width, size / 10)));
    else
        items.emplace_back(filledHead(role, tip, unit, size));
}

void addArrow(std::vector<Item>& items, Role role, Point tail, Point tip, double width, Head head, Dash dash,
              double least) {
    const double size = length(tip - tail);
    if (!(size > 0))
        return;
    const Point unit = unitFrom(tail, tip);
    const double usual = head == Head::small ? std::min(kSmallHead * std::max(1.0, width / 1.3), 0.4 * size)
                                             : headLength(size, width);
    const double shaft = std::min(width, std::max(kShaftOfHead * usual, least));
    const double heads = std::max(usual, std::min(shaft / kShaftOfHead, kMostOfArrow * size));
    // The shaft stops under the head: where the head is as wide as the shaft, or at the open head's back.
    const double under = head == Head::open     ? heads
                         : head == Head::hollow ? heads * (1 - kNotch)
                                                : heads * (1 - 1.25 * kNotch);
    items.emplace_back(line(role, tail, tip - under * unit, shaft, dash));
    addHead(items, role, tip, unit, heads, head, dash == Dash::solid ? 0.55 * width : width, least);
}

void addArc(std::vector<Item>& items, Role role, Point centre, double radius, double startDegrees,
            double sweepDegrees, double width, bool head) {
    Arc arc;
    arc.role = role;
    arc.centre = centre;
    arc.radius = radius;
    arc.startDegrees = startDegrees;
    arc.sweepDegrees = sweepDegrees;
    arc.width = width;
    const double span = std::abs(sweepDegrees) * std::numbers::pi / 180 * radius;
    const double size = std::min({2 * kMillimetre * std::max(1.0, width / 0.85), radius / 3, 0.7 * span});
    if (!head || size < 2 * width) {
        items.emplace_back(arc);
        return;
    }
    // The head is a chord of the arc, so that it lies on the line and ends exactly at its end.
    const double chord = size / radius * 180 / std::numbers::pi * (sweepDegrees < 0 ? -1 : 1);
    const Point tip = onCircle(centre, radius, startDegrees + sweepDegrees);
    const Point back = onCircle(centre, radius, startDegrees + sweepDegrees - chord);
    arc.sweepDegrees -= 0.75 * chord;
    items.emplace_back(arc);
    addHead(items, role, tip, unitFrom(back, tip), size, Head::small, width);
}

void addParallelMarks(std::vector<Item>& items, Role role, Point at, Point unit, int count, double size,
                      double width) {
    constexpr double opening =
        0.55; // half the chevron's height by its length: a right angle or a little more
    for (int i = 0; i < count; ++i) {
        const Point tip = at + (0.5 * size + (i - (count - 1) / 2.0) * 0.75 * size) * unit;
        const Point back = tip - size * unit, side = (opening * size) * leftOf(unit);
        Path mark;
        mark.role = role;
        mark.points = {back + side, tip, back - side};
        mark.width = width;
        items.emplace_back(std::move(mark));
    }
}

void addSquare(std::vector<Item>& items, Role role, Point corner, Point u, Point v, double size,
               double width) {
    Path path;
    path.role = role;
    path.points = {corner + size * u, corner + size * u + size * v, corner + size * v};
    path.width = width;
    items.emplace_back(path);
}

} // namespace tailpoint
