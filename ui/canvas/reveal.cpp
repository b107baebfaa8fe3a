// SPDX-License-Identifier: MIT
#include "ui/canvas/reveal.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace tailpoint {

namespace {

constexpr double kTextsFrom = 0.75; // of the way: strokes first, then what they are called

Point operator+(Point a, Point b) {
    return {a.x + b.x, a.y + b.y};
}
Point operator-(Point a, Point b) {
    return {a.x - b.x, a.y - b.y};
}
Point operator*(double k, Point p) {
    return {k * p.x, k * p.y};
}

bool isGround(Role role) {
    return role == Role::sheet || role == Role::grid || role == Role::titleblock || role == Role::highlight ||
           role == Role::region;
}

const Group* revealedGroup(const DisplayList& list, const std::string& id) {
    const auto at =
        std::find_if(list.groups.begin(), list.groups.end(), [&](const Group& g) { return g.id == id; });
    return at == list.groups.end() ? nullptr : &*at;
}

const Text* textOf(const Group& group) {
    for (const Item& item : group.items)
        if (const auto* text = std::get_if<Text>(&item))
            return text;
    return nullptr;
}

/// The same arrow at another place.
std::optional<Point> movedFrom(const Group& now, const Group& before) {
    constexpr double kSame = 0.01, kMoved = 0.5; // points
    if (!now.ends || !before.ends)
        return {};
    const Point a = (*before.ends)[0] - (*now.ends)[0], b = (*before.ends)[1] - (*now.ends)[1];
    const bool rigid = std::hypot(a.x - b.x, a.y - b.y) < kSame;
    return rigid && std::hypot(a.x, a.y) > kMoved ? std::optional(a) : std::nullopt;
}

void shift(Item& item, Point by) {
    if (auto* path = std::get_if<Path>(&item)) {
        for (Point& p : path->points)
            p = p + by;
    } else if (auto* arc = std::get_if<Arc>(&item)) {
        arc->centre = arc->centre + by;
    } else if (auto* disc = std::get_if<Disc>(&item)) {
        disc->centre = disc->centre + by;
    } else if (auto* text = std::get_if<Text>(&item)) {
        text->baseline = text->baseline + by;
        text->box.left += by.x;
        text->box.top += by.y;
    }
}

/// The first `part` of an open path, by its length.
void cut(Path& path, double part) {
    double whole = 0;
    for (std::size_t i = 1; i < path.points.size(); ++i)
        whole += std::hypot(path.points[i].x - path.points[i - 1].x, path.points[i].y - path.points[i - 1].y);
    double left = part * whole;
    for (std::size_t i = 1; i < path.points.size(); ++i) {
        const Point leg = path.points[i] - path.points[i - 1];
        const double length = std::hypot(leg.x, leg.y);
        if (length >= left) {
            path.points[i] = path.points[i - 1] + (length > 0 ? left / length : 0) * leg;
            path.points.resize(i + 1);
            return;
        }
        left -= length;
    }
}

/// Draws the item as far as `part`; false where it has not begun.
bool drawUpTo(Item& item, const Group& group, double part) {
    if (std::holds_alternative<Text>(item))
        return part >= kTextsFrom;
    const double t = std::min(1.0, part / kTextsFrom);
    if (auto* path = std::get_if<Path>(&item)) {
        if (!path->closed)
            cut(*path, t);
        else if (group.ends) // the head goes with the tip
            shift(item, (t - 1) * ((*group.ends)[1] - (*group.ends)[0]));
        else if (t < 1)
            return false;
    } else if (auto* arc = std::get_if<Arc>(&item)) {
        arc->sweepDegrees *= t;
    } else if (auto* disc = std::get_if<Disc>(&item)) {
        disc->radius *= t;
    }
    return true;
}

} // namespace

bool Reveal::start(const DisplayList& from, const DisplayList& to) {
    m_news.clear();
    m_to = to;
    for (std::size_t i = 0; i < to.groups.size(); ++i) {
        const Group& now = to.groups[i];
        if (isGround(now.role))
            continue;
        const Group* before = revealedGroup(from, now.id);
        if (before == nullptr) {
            m_news.push_back({i, {0, 0}, false});
        } else if (const auto away = movedFrom(now, *before)) {
            m_news.push_back({i, *away, false});
        } else if (textOf(now) != nullptr && textOf(*before) != nullptr &&
                   textOf(now)->runs != textOf(*before)->runs) {
            m_news.push_back({i, {0, 0}, true});
        }
    }
    return running();
}

DisplayList Reveal::at(double part) const {
    DisplayList list = m_to;
    for (const News& news : m_news) {
        Group& group = list.groups[news.group];
        std::vector<Item> items;
        for (Item& item : group.items) {
            const bool isText = std::holds_alternative<Text>(item);
            if (news.from != Point{0, 0}) {
                shift(item, (1 - part) * news.from);
                items.push_back(std::move(item));
            } else if (!news.labelOnly || isText) {
                if (drawUpTo(item, m_to.groups[news.group], part))
                    items.push_back(std::move(item));
            } else {
                items.push_back(std::move(item));
            }
        }
        group.items = std::move(items);
    }
    return list;
}

} // namespace tailpoint
