// SPDX-License-Identifier: MIT
#include "ui/render/tikz_arrows.h"

#include "core/figure/geometry.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kShortest = 0.05;

/// Of an arrow, or of the force that a polygon's side is a copy of.
VectorId drawnBy(const Group& group) {
    const auto* side = group.part ? std::get_if<FigureShape>(&*group.part) : nullptr;
    return side != nullptr ? side->of : vectorOf(group);
}

std::optional<TikzHead> headOf(const Item& item, Point from) {
    const auto* path = std::get_if<Path>(&item);
    if (path == nullptr || !path->closed || path->points.size() < 3 || path->points.size() > 4)
        return std::nullopt;
    const auto& p = path->points;
    const auto far = std::max_element(p.begin(), p.end(),
                                      [&](Point a, Point b) { return length(a - from) < length(b - from); });
    const std::size_t t = static_cast<std::size_t>(far - p.begin()), n = p.size();
    const Point left = p[(t + 1) % n], right = p[(t + n - 1) % n];
    const Point middle = 0.5 * (left + right);
    TikzHead head{*far, length(*far - middle), length(left - right), 0, !path->filled, path->width};
    if (n == 4)
        head.inset = std::max(0.0, head.length - length(*far - p[(t + 2) % n]));
    return head;
}

/// How far an outline's mitre reaches beyond its corner at the tip.
double apexOf(const TikzHead& head) {
    const double half = head.width / 2;
    return head.open && half > 0 ? head.weight / 2 * std::hypot(head.length, half) / half : 0;
}

} // namespace

bool isNearForTikz(Point p) {
    return std::abs(p.x) < kTikzFar && std::abs(p.y) < kTikzFar && std::isfinite(p.x) && std::isfinite(p.y);
}

std::optional<TikzArrow> arrowAt(const Group& group, std::size_t item, int before) {
    const bool canBe = vectorOf(group) != kNobody || group.role == Role::construction;
    if (item + 1 >= group.items.size() || !canBe)
        return std::nullopt;
    const auto* shaft = std::get_if<Path>(&group.items[item]);
    if (shaft == nullptr || shaft->closed || shaft->points.size() != 2)
        return std::nullopt;
    const Point tail = shaft->points[0];
    const auto head = headOf(group.items[item + 1], tail);
    if (!head || !isNearForTikz(tail) || !isNearForTikz(head->tip))
        return std::nullopt;
    const double long_ = length(head->tip - tail);
    const Point tip = long_ < kShortest ? head->tip : head->tip + apexOf(*head) * unitFrom(tail, head->tip);
    const std::string id = before == 0 ? group.id : group.id + "-" + std::to_string(before + 1);
    return TikzArrow{id, tail, tip, shaft->role, drawnBy(group), group.otherAnswer, *shaft, *head};
}

bool isTooShort(const TikzArrow& arrow) {
    return length(arrow.head.tip - arrow.tail) < kShortest;
}

std::vector<TikzArrow> arrowsOf(const Group& group) {
    std::vector<TikzArrow> out;
    for (std::size_t i = 0; i < group.items.size(); ++i)
        if (auto arrow = arrowAt(group, i, static_cast<int>(out.size())); arrow && !isTooShort(*arrow))
            out.push_back(std::move(*arrow));
    return out;
}

std::vector<TikzArrow> arrowsOf(const DisplayList& list) {
    std::vector<TikzArrow> out;
    for (const Group& group : list.groups)
        for (TikzArrow& arrow : arrowsOf(group))
            out.push_back(std::move(arrow));
    return out;
}

} // namespace tailpoint
