// SPDX-License-Identifier: MIT
#include "ui/render/tikz_writer.h"

#include "core/figure/geometry.h"
#include "ui/render/dashes.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace tailpoint {

namespace {

std::string oneLine(std::string text) {
    std::replace_if(
        text.begin(), text.end(), [](unsigned char c) { return c < 0x20; }, ' ');
    return text;
}
/// Ground on which the figure stands: nothing of it follows a coordinate.
bool isGround(const Group& group) {
    return group.role == Role::sheet || group.role == Role::grid || group.role == Role::axis ||
           group.role == Role::titleblock;
}

} // namespace

std::string TikzWriter::picture() {
    m_out = "\\begin{tikzpicture}[x=1bp, y=1bp, line join=miter,\n";
    writeStyles();
    m_out += "]\n";
    const std::string corner = tikzNumber(m_list.width) + "," + tikzNumber(m_list.height);
    m_out += "\\path[use as bounding box] (0,0) rectangle (" + corner + ");\n";
    m_out += "\\begin{scope}\n\\clip (0,0) rectangle (" + corner + ");\n";
    if (const std::string points = m_points.definitions(); !points.empty())
        m_out += "% Named points: move the tip of a force, and what hangs on it follows\n" + points;
    for (const Group& group : m_list.groups)
        write(group);
    m_out += "\\end{scope}\n\\end{tikzpicture}%\n";
    return std::move(m_out);
}

std::string TikzWriter::colours() const {
    std::string out;
    for (const Role role : roles()) {
        const std::string hex = m_theme.colour(role).name().mid(1).toUpper().toStdString();
        out += "\\definecolor{tp-" + std::string(nameOf(role)) + "}{HTML}{" + hex + "}%\n";
    }
    return out;
}

std::vector<Role> TikzWriter::roles() const {
    std::map<Role, bool> used{{Role::sheet, true}, {Role::label, true}, {Role::halo, true}};
    for (const Group& group : m_list.groups)
        for (const Item& item : group.items)
            std::visit([&](const auto& i) { used[i.role] = true; }, item);
    for (const Group& group : m_list.groups)
        for (const Item& item : group.items)
            if (const auto* text = std::get_if<Text>(&item))
                used[text->ink] = true;
    std::vector<Role> out;
    for (const auto& [role, present] : used)
        out.push_back(role);
    return out;
}

void TikzWriter::writeStyles() {
    for (const Role role : roles()) {
        const std::string name(nameOf(role));
        m_out += "  " + name + "/.style={draw=tp-" + name + ", text=tp-" + name + "},\n";
    }
}

std::string TikzWriter::at(Point p) {
    if (m_isGround)
        return m_points.numbers(p);
    if (const std::string name = m_points.nameAt(p); !name.empty())
        return "(" + name + ")";
    if (m_hook.empty())
        return m_points.numbers(p);
    m_isShifted = true;
    return fromTo(m_origin, p);
}

std::string TikzWriter::fromTo(Point origin, Point p) {
    return "(" + tikzNumber(p.x - origin.x) + "," + tikzNumber(origin.y - p.y) + ")";
}

std::string TikzWriter::shift() {
    return std::exchange(m_isShifted, false) ? ", shift={(" + m_hook + ")}" : std::string();
}

std::string TikzWriter::pen(Role role, double width, Dash dash) const {
    std::string out(nameOf(role));
    out += ", line width=" + tikzNumber(width) + "bp";
    const auto pattern = patternOf(dash);
    if (pattern.empty())
        return out;
    out += ", dash pattern=";
    for (std::size_t i = 0; i < pattern.size(); ++i)
        out += std::string(i > 0 ? " " : "") + (i % 2 == 0 ? "on " : "off ") +
               tikzNumber(pattern[i] * width) + "bp";
    return out;
}

void TikzWriter::write(const Group& group) {
    m_out += "% " + oneLine(group.title.name.empty() ? group.id : group.title.whole()) + "\n";
    enter(group);
    int arrows = 0;
    for (std::size_t i = 0; i < group.items.size(); ++i) {
        const auto arrow = arrowAt(group, i, arrows);
        if (!arrow) {
            std::visit([&](const auto& item) { write(item); }, group.items[i]);
            continue;
        }
        ++i; // its head
        if (isTooShort(*arrow))
            continue;
        write(*arrow);
        ++arrows;
    }
}

void TikzWriter::enter(const Group& group) {
    m_isGround = isGround(group);
    m_hook.clear();
    m_labels.clear();
    if (m_isGround)
        return;
    const auto arrows = arrowsOf(group);
    if (arrows.empty())
        hangOnCentre(group);
    for (const Item& item : group.items)
        if (const auto* text = std::get_if<Text>(&item))
            addLabel(group, *text, arrows.empty() ? nullptr : &arrows.front());
    if (!m_labels.empty() && !arrows.empty())
        m_hook = m_labels.begin()->second; // a leader goes with its label
}

void TikzWriter::hangOnCentre(const Group& group) {
    for (const Item& item : group.items)
        if (const auto* arc = std::get_if<Arc>(&item); arc && m_hook.empty()) {
            m_hook = m_points.nameAt(arc->centre);
            m_origin = arc->centre;
        }
}

void TikzWriter::addLabel(const Group& group, const Text& text, const TikzArrow* arrow) {
    std::string name = tikzName(group.id) + "-label";
    if (!m_labels.empty())
        name += "-" + std::to_string(m_labels.size() + 1);
    std::string where = m_points.numbers(text.baseline);
    if (arrow)
        where = beside(*arrow, text.baseline);
    else if (!m_hook.empty())
        where = "($(" + m_hook + ") + " + fromTo(m_origin, text.baseline) + "$)";
    m_out += "\\coordinate (" + name + ") at " + where + ";\n";
    if (m_labels.empty() && arrow)
        m_origin = text.baseline;
    m_labels.emplace_back(&text, name);
}

std::string TikzWriter::beside(const TikzArrow& arrow, Point p) {
    const Point way = arrow.tip - arrow.tail;
    const double part = std::clamp(dot(p - arrow.tail, way) / dot(way, way), 0.0, 1.0);
    const double shown = std::round(part * 100) / 100;
    const std::string name = tikzName(arrow.id);
    return "($(" + name + "-tail)!" + tikzNumber(shown) + "!(" + name + "-tip) + " +
           fromTo(arrow.tail + shown * way, p) + "$)";
}

std::string TikzWriter::labelOf(const Text& text) const {
    const auto it = std::find_if(m_labels.begin(), m_labels.end(),
                                 [&](const auto& label) { return label.first == &text; });
    return it == m_labels.end() ? std::string() : it->second;
}

} // namespace tailpoint
