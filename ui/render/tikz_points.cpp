// SPDX-License-Identifier: MIT
#include "ui/render/tikz_points.h"

#include "core/figure/geometry.h"
#include "core/quantity/decimals.h"

#include <algorithm>

namespace tailpoint {

namespace {

constexpr double kSame = 0.02;          ///< points; what is nearer is one place
constexpr double kSameDirection = 2e-4; ///< radians; at an arc of 100 points a fiftieth of a point
constexpr double kFarSum = 1000; ///< TeX's lengths end at 16383 pt, and a sum of twelve passes through more

bool isSame(Point a, Point b) {
    return length(a - b) < kSame;
}

bool isForce(const TikzArrow& arrow) {
    return arrow.role == Role::given && !arrow.otherAnswer;
}

bool isSum(const TikzArrow& arrow) {
    return arrow.role == Role::sum && !arrow.otherAnswer;
}

/// " + (tip) - (tail)" of a force.
std::string displacement(const TikzArrow& force) {
    const std::string name = tikzName(force.id);
    return " + (" + name + "-tip) - (" + name + "-tail)";
}

} // namespace

std::string tikzNumber(double value) {
    std::string out = fixedDecimals(value, 3);
    out.erase(out.find_last_not_of('0') + 1);
    if (out.ends_with('.'))
        out.pop_back();
    return out == "-0" ? "0" : out;
}

std::string tikzName(std::string id) {
    std::replace(id.begin(), id.end(), '.', '+');
    return id;
}

TikzPoints::TikzPoints(const std::vector<TikzArrow>& arrows, double height) : m_height(height) {
    for (const TikzArrow& arrow : arrows)
        if (isForce(arrow))
            defineForce(arrow);
    for (const TikzArrow& arrow : arrows)
        if (isSum(arrow))
            defineOther(arrow);
    for (const TikzArrow& arrow : arrows)
        if (!isForce(arrow) && !isSum(arrow))
            defineOther(arrow);
}

std::string TikzPoints::nameAt(Point p) const {
    const auto it =
        std::find_if(m_named.begin(), m_named.end(), [&](const Named& named) { return isSame(named.at, p); });
    return it == m_named.end() ? std::string() : it->name;
}

std::string TikzPoints::nameTowards(Point from, double degrees) const {
    const Point ray = onCircle({0, 0}, 1, degrees);
    for (const Named& named : m_named) {
        const Point way = named.at - from;
        const double far = length(way);
        const bool isThere = far > 1 && length((1 / far) * way - ray) < kSameDirection;
        if (isThere && named.name.find("--") == std::string::npos)
            return named.name;
    }
    return {};
}

std::optional<TikzPoints::Side> TikzPoints::sideThrough(Point p, Point direction) const {
    for (const Named& a : m_named)
        for (const Named& b : m_named) {
            const Point way = b.at - a.at;
            const double far = length(way);
            if (far < 1)
                continue;
            const Point unit = (1 / far) * way;
            const double along = dot(p - a.at, unit);
            const bool isThere = along > 0 && along < far && isSame(a.at + along * unit, p) &&
                                 length((1 / length(direction)) * direction - unit) < kSameDirection;
            if (isThere)
                return Side{a.name, b.name, a.at, b.at};
        }
    return std::nullopt;
}

std::string TikzPoints::numbers(Point p) const {
    return "(" + tikzNumber(p.x) + "," + tikzNumber(m_height - p.y) + ")";
}

void TikzPoints::define(const std::string& name, Point at, const std::string& where) {
    m_definitions += "\\coordinate (" + name + ") at " + where + ";\n";
    m_named.push_back({name, at});
}

void TikzPoints::defineTail(const TikzArrow& arrow) {
    if (m_named.empty())
        define("point", arrow.tail, numbers(arrow.tail));
    const std::string there = nameAt(arrow.tail);
    define(tikzName(arrow.id) + "-tail", arrow.tail, there.empty() ? numbers(arrow.tail) : "(" + there + ")");
}

/// Its tip is what a lecturer moves: it hangs on nothing, but in a chain on its own tail.
void TikzPoints::defineForce(const TikzArrow& arrow) {
    defineTail(arrow);
    const std::string name = tikzName(arrow.id);
    const Point way = arrow.tip - arrow.tail;
    const bool isInChain = !isSame(arrow.tail, m_named.front().at);
    define(name + "-tip", arrow.tip,
           isInChain ? "($(" + name + "-tail) + (" + tikzNumber(way.x) + "," + tikzNumber(-way.y) + ")$)"
                     : numbers(arrow.tip));
    m_forces.push_back(arrow);
}

void TikzPoints::defineOther(const TikzArrow& arrow) {
    defineTail(arrow);
    const std::string sum = isSum(arrow) ? tipOfAll(arrow) : copiedTip(arrow);
    const std::string there = nameAt(arrow.tip);
    define(tikzName(arrow.id) + "-tip", arrow.tip,
           !sum.empty()                    ? sum
           : there.empty() || isSum(arrow) ? numbers(arrow.tip)
                                           : "(" + there + ")");
}

/// Of an arrow that is a force drawn elsewhere: its tail and that force's way from tail to tip.
std::string TikzPoints::copiedTip(const TikzArrow& arrow) const {
    if (arrow.role != Role::construction)
        return {};
    const TikzArrow* force = nullptr;
    for (const TikzArrow& candidate : m_forces)
        if (isSame(candidate.tip - candidate.tail, arrow.tip - arrow.tail) &&
            (force == nullptr || arrow.vector == candidate.vector))
            force = &candidate;
    return force == nullptr ? std::string()
                            : "($(" + tikzName(arrow.id) + "-tail)" + displacement(*force) + "$)";
}

/// Where the resultant is the sum of what is drawn: its tail and all the forces' ways.
std::string TikzPoints::tipOfAll(const TikzArrow& sum) const {
    Point way{0, 0};
    std::string out = "($(" + tikzName(sum.id) + "-tail)";
    for (const TikzArrow& force : m_forces) {
        if (length(force.tip - force.tail) > kFarSum)
            return {};
        way = way + (force.tip - force.tail);
        out += displacement(force);
    }
    return !m_forces.empty() && isSame(way, sum.tip - sum.tail) ? out + "$)" : std::string();
}

} // namespace tailpoint
