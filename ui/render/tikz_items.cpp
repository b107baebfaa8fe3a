// SPDX-License-Identifier: MIT
// The items of a figure in TikZ: arrows, strokes, angles, rings and labels.
#include "ui/render/tikz_writer.h"

#include "core/figure/geometry.h"
#include "core/formula/formula.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kTextSize = 10;

} // namespace

void TikzWriter::write(const TikzArrow& arrow) {
    const std::string name = tikzName(arrow.id);
    const TikzHead& head = arrow.head;
    m_out += "\\draw[" + pen(arrow.role, arrow.shaft.width, arrow.shaft.dash) +
             ", -{tailpoint[length=" + tikzNumber(head.length) + "bp, width=" + tikzNumber(head.width) +
             "bp, inset=" + tikzNumber(head.inset) + "bp" +
             (head.open ? ", open, line width=" + tikzNumber(head.weight) + "bp" : "") + "]}] (" + name +
             "-tail) -- (" + name + "-tip);\n";
}

bool TikzWriter::writeMark(const Path& path) {
    const auto& p = path.points;
    if (m_isGround || path.role != Role::construction || path.closed || p.size() != 3)
        return false;
    const auto side = m_points.sideThrough(p[1], p[1] - 0.5 * (p[0] + p[2]));
    if (!side)
        return false;
    const Point way = side->end - side->start, unit = unitFrom(side->start, side->end);
    const double part = std::round(dot(p[1] - side->start, unit) / length(way) * 100) / 100;
    m_out += "\\path (" + side->from + ") -- pic[pos=" + tikzNumber(part) +
             ", sloped, allow upside down]{code={\\draw[" + pen(path.role, path.width, path.dash) + "]";
    for (std::size_t i = 0; i < p.size(); ++i) {
        const Point off = p[i] - (side->start + part * way);
        m_out += (i > 0 ? " -- (" : " (") + tikzNumber(dot(off, unit)) + "," +
                 tikzNumber(off.x * unit.y - off.y * unit.x) + ")";
    }
    m_out += ";}} (" + side->to + ");\n";
    return true;
}

void TikzWriter::write(const Path& path) {
    if (path.points.size() < 2 || !std::all_of(path.points.begin(), path.points.end(), isNearForTikz))
        return;
    if (writeMark(path))
        return;
    const std::string name(nameOf(path.role));
    std::string options;
    if (path.filled)
        options = "fill=tp-" + name + (path.width > 0 ? ", " + pen(path.role, path.width, path.dash) : "");
    else
        options = pen(path.role, path.width, path.dash);
    std::string points;
    for (std::size_t i = 0; i < path.points.size(); ++i)
        points += (i > 0 ? " -- " : " ") + at(path.points[i]);
    m_out += (path.filled && path.width <= 0 ? "\\path[" : "\\draw[") + options + shift() + "]" + points;
    m_out += path.closed ? " -- cycle;\n" : ";\n";
}

bool TikzWriter::writeAngle(const Arc& arc) {
    const std::string vertex = m_points.nameAt(arc.centre);
    const double end = arc.startDegrees + arc.sweepDegrees;
    const std::string from = m_points.nameTowards(arc.centre, std::min(arc.startDegrees, end)),
                      to = m_points.nameTowards(arc.centre, std::max(arc.startDegrees, end));
    if (vertex.empty() || from.empty() || to.empty())
        return false;
    m_out += "\\pic[" + pen(arc.role, arc.width, arc.dash) + ", angle radius=" + tikzNumber(arc.radius) +
             "bp] {angle=" + from + "--" + vertex + "--" + to + "};\n";
    return true;
}

void TikzWriter::write(const Arc& arc) {
    if (!isNearForTikz(arc.centre) || arc.radius > kTikzFar)
        return;
    if (writeAngle(arc))
        return;
    const std::string centre = at(arc.centre);
    const std::string options = "\\draw[" + pen(arc.role, arc.width, arc.dash) + shift() + "] " + centre;
    if (std::abs(arc.sweepDegrees) >= 360) {
        m_out += options + " circle[radius=" + tikzNumber(arc.radius) + "];\n";
        return;
    }
    const std::string start = tikzNumber(arc.startDegrees),
                      end = tikzNumber(arc.startDegrees + arc.sweepDegrees);
    const std::string radius = tikzNumber(arc.radius);
    m_out += options + " ++(" + start + ":" + radius + ") arc[start angle=" + start + ", end angle=" + end +
             ", radius=" + radius + "];\n";
}

void TikzWriter::write(const Disc& disc) {
    const std::string centre = at(disc.centre);
    m_out += "\\draw[" + pen(disc.role, disc.width, Dash::solid) + ", fill=tp-" +
             std::string(disc.filledWithSheet ? "sheet" : nameOf(disc.role)) + shift() + "] " + centre +
             " circle[radius=" + tikzNumber(disc.radius) + "];\n";
}

void TikzWriter::write(const Text& text) {
    const std::string label = labelOf(text);
    const Point origin = label.empty() ? Point{0, m_list.height} : text.baseline;
    const Box& box = text.box;
    if (text.halo)
        m_out += "\\path[fill=tp-halo" + (label.empty() ? "" : ", shift={(" + label + ")}") + "] " +
                 fromTo(origin, {box.left - kHaloPad, box.bottom() + kHaloPad}) + " rectangle " +
                 fromTo(origin, {box.right() + kHaloPad, box.top - kHaloPad}) + ";\n";
    const int last = text.runs.empty() ? 0 : text.runs.back().line;
    for (int line = 0; line <= last; ++line)
        writeLine(text, line, label);
}

void TikzWriter::writeLine(const Text& text, int line, const std::string& label) {
    const auto isOnIt = [&](const Run& run) { return run.line == line; };
    const auto first = std::find_if(text.runs.begin(), text.runs.end(), isOnIt);
    const double part = line > 0 && first != text.runs.end() ? first->part : 1;
    const double scale = part * text.size * 1.00375 / kTextSize, below = line * kLineStep * text.size;
    static constexpr std::string_view anchors[] = {"base west", "base", "base east"};
    const std::string at = label.empty() ? m_points.numbers({text.baseline.x, text.baseline.y + below})
                           : line == 0   ? "(" + label + ")"
                                         : "($(" + label + ") + (0," + tikzNumber(-below) + ")$)";
    m_out += "\\node[text=tp-" + std::string(nameOf(text.ink)) +
             ", inner sep=0, anchor=" + std::string(anchors[static_cast<std::size_t>(text.anchor)]) +
             ", scale=" + tikzNumber(scale) + "] at " + at + " {\\tpfit{" +
             tikzNumber(text.box.width / scale) + "bp}{" + (text.face == Face::sans ? "\\sffamily " : "");
    for (auto run = first; run != text.runs.end() && run->line == line; ++run)
        write(*run);
    m_out += "}};\n";
}

void TikzWriter::write(const Run& run) {
    std::string text = latexEscaped(run.text);
    if (run.bold)
        text = "\\textbf{" + text + "}";
    if (run.italic)
        text = "\\textit{" + text + "}";
    if (run.script == Script::sub)
        text = "$_{\\text{" + text + "}}$";
    else if (run.script == Script::super)
        text = "$^{\\text{" + text + "}}$";
    m_out += text;
}

} // namespace tailpoint
