#include "ui/render/tikz.h"

#include "core/explain/formula.h"
#include "core/figure/geometry.h"
#include "ui/render/dashes.h"
#include "ui/render/tikz_points.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

namespace tailpoint {

namespace {

constexpr double kTextSize = 10;

/// The figure's arrowhead as a tip of TikZ: the very polygon, so that head and shaft follow a moved
/// coordinate. The outline of an open one is drawn inside, its mitre ends at the tip.
constexpr const char* kHead =
    R"(\pgfdeclarearrow{name=tailpoint, defaults={length=10bp, width=5bp, inset=2bp},%
 parameters={\the\pgfarrowlength,\the\pgfarrowwidth,\the\pgfarrowinset,%
  \the\pgfarrowlinewidth,\ifpgfarrowopen o\fi},%
 setup code={\pgfutil@tempdima=0pt\ifpgfarrowopen\pgfmathsetlength\pgfutil@tempdima{%
   \pgfarrowlinewidth*veclen(\pgfarrowlength,\pgfarrowwidth/2)/\pgfarrowwidth}\fi%
  \pgfmathsetlength\pgfutil@tempdimb{-\pgfarrowlength-\pgfutil@tempdima}%
  \pgfarrowssettipend{0pt}\pgfarrowssetbackend{\pgfutil@tempdimb}%
  \advance\pgfutil@tempdimb by\ifpgfarrowopen1\else1.25\fi\pgfarrowinset%
  \pgfarrowssetlineend{\pgfutil@tempdimb}%
  \pgfarrowssave\pgfutil@tempdima\pgfarrowssavethe\pgfarrowlength\pgfarrowssavethe\pgfarrowwidth%
  \pgfarrowssavethe\pgfarrowinset\pgfarrowssavethe\pgfarrowlinewidth},%
 drawing code={\pgfsetdash{}{0pt}\pgfsetmiterjoin\pgfsetlinewidth{\pgfarrowlinewidth}%
  \pgftransformxshift{-\pgfutil@tempdima}\pgfpathmoveto{\pgfpointorigin}%
  \pgfpathlineto{\pgfpoint{-\pgfarrowlength}{.5\pgfarrowwidth}}%
  \pgfpathlineto{\pgfpoint{-\pgfarrowlength+\pgfarrowinset}{0pt}}%
  \pgfpathlineto{\pgfpoint{-\pgfarrowlength}{-.5\pgfarrowwidth}}\pgfpathclose%
  \ifpgfarrowopen\pgfusepathqstroke\else\pgfusepathqfill\fi}}%
)";

std::string oneLine(std::string text) {
    std::replace_if(
        text.begin(), text.end(), [](unsigned char c) { return c < 0x20; }, ' ');
    return text;
}

/// A label is no wider than it was measured, whatever the document's fonts.
constexpr const char* kFit = "\\def\\tpfit#1#2{\\setbox0=\\hbox{#2}\\ifdim\\wd0>#1\\relax"
                             "\\resizebox{#1}{\\height}{\\box0}\\else\\box0\\fi}%\n";

/// Ground on which the figure stands: nothing of it follows a coordinate.
bool isGround(const Group& group) {
    return group.role == Role::sheet || group.role == Role::grid || group.role == Role::axis ||
           group.role == Role::titleblock;
}

class TikzWriter {
public:
    TikzWriter(const DisplayList& list, const Theme& theme)
        : m_list(list), m_theme(theme), m_points(arrowsOf(list), list.height) {}

    std::string picture() {
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

    /// Colours of the roles in use, for before the picture. A line's end would be a space beside it.
    std::string colours() const {
        std::string out;
        for (const Role role : roles()) {
            const std::string hex = m_theme.colour(role).name().mid(1).toUpper().toStdString();
            out += "\\definecolor{tp-" + std::string(nameOf(role)) + "}{HTML}{" + hex + "}%\n";
        }
        return out;
    }

private:
    std::vector<Role> roles() const {
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

    void writeStyles() {
        for (const Role role : roles()) {
            const std::string name(nameOf(role));
            m_out += "  " + name + "/.style={draw=tp-" + name + ", text=tp-" + name + "},\n";
        }
    }

    /// By its name, or by numbers; those count from what the group hangs on, where it hangs on something.
    std::string at(Point p) {
        if (m_isGround)
            return m_points.numbers(p);
        if (const std::string name = m_points.nameAt(p); !name.empty())
            return "(" + name + ")";
        if (m_hook.empty())
            return m_points.numbers(p);
        m_isShifted = true;
        return fromTo(m_origin, p);
    }

    static std::string fromTo(Point origin, Point p) {
        return "(" + tikzNumber(p.x - origin.x) + "," + tikzNumber(origin.y - p.y) + ")";
    }

    /// Among the options of what `at` has been asked for since the last call.
    std::string shift() {
        return std::exchange(m_isShifted, false) ? ", shift={(" + m_hook + ")}" : std::string();
    }

    std::string pen(Role role, double width, Dash dash) const {
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

    void write(const Group& group) {
        m_out += "% " + oneLine(group.title.empty() ? group.id : group.title) + "\n";
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

    /// Finds what the group's labels and strokes hang on, and gives its labels their coordinates.
    void enter(const Group& group) {
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

    void hangOnCentre(const Group& group) {
        for (const Item& item : group.items)
            if (const auto* arc = std::get_if<Arc>(&item); arc && m_hook.empty()) {
                m_hook = m_points.nameAt(arc->centre);
                m_origin = arc->centre;
            }
    }

    void addLabel(const Group& group, const Text& text, const TikzArrow* arrow) {
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

    /// So far along the arrow, and so far off it.
    static std::string beside(const TikzArrow& arrow, Point p) {
        const Point way = arrow.tip - arrow.tail;
        const double part = std::clamp(dot(p - arrow.tail, way) / dot(way, way), 0.0, 1.0);
        const double shown = std::round(part * 100) / 100;
        const std::string name = tikzName(arrow.id);
        return "($(" + name + "-tail)!" + tikzNumber(shown) + "!(" + name + "-tip) + " +
               fromTo(arrow.tail + shown * way, p) + "$)";
    }

    void write(const TikzArrow& arrow) {
        const std::string name = tikzName(arrow.id);
        const TikzHead& head = arrow.head;
        m_out += "\\draw[" + pen(arrow.role, arrow.shaft.width, arrow.shaft.dash) +
                 ", -{tailpoint[length=" + tikzNumber(head.length) + "bp, width=" + tikzNumber(head.width) +
                 "bp, inset=" + tikzNumber(head.inset) + "bp" +
                 (head.open ? ", open, line width=" + tikzNumber(head.weight) + "bp" : "") + "]}] (" + name +
                 "-tail) -- (" + name + "-tip);\n";
    }

    /// The mark of parallel sides: a chevron whose point lies on a side, with which it goes. False: it is
    /// none.
    bool writeMark(const Path& path) {
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

    void write(const Path& path) {
        if (path.points.size() < 2 || !std::all_of(path.points.begin(), path.points.end(), isNearForTikz))
            return;
        if (writeMark(path))
            return;
        const std::string name(nameOf(path.role));
        std::string options;
        if (path.filled)
            options =
                "fill=tp-" + name + (path.width > 0 ? ", " + pen(path.role, path.width, path.dash) : "");
        else
            options = pen(path.role, path.width, path.dash);
        std::string points;
        for (std::size_t i = 0; i < path.points.size(); ++i)
            points += (i > 0 ? " -- " : " ") + at(path.points[i]);
        m_out += (path.filled && path.width <= 0 ? "\\path[" : "\\draw[") + options + shift() + "]" + points;
        m_out += path.closed ? " -- cycle;\n" : ";\n";
    }

    /// An arc from one named point to another about a third, which follows all of them. False: it isn't.
    bool writeAngle(const Arc& arc) {
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

    void write(const Arc& arc) {
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
        m_out += options + " ++(" + start + ":" + radius + ") arc[start angle=" + start +
                 ", end angle=" + end + ", radius=" + radius + "];\n";
    }

    void write(const Disc& disc) {
        const std::string centre = at(disc.centre);
        m_out += "\\draw[" + pen(disc.role, disc.width, Dash::solid) + ", fill=tp-" +
                 std::string(disc.filledWithSheet ? "sheet" : nameOf(disc.role)) + shift() + "] " + centre +
                 " circle[radius=" + tikzNumber(disc.radius) + "];\n";
    }

    void write(const Text& text) {
        const std::string label = labelOf(text);
        const Point origin = label.empty() ? Point{0, m_list.height} : text.baseline;
        const Box& box = text.box;
        if (text.halo)
            m_out += "\\path[fill=tp-halo" + (label.empty() ? "" : ", shift={(" + label + ")}") + "] " +
                     fromTo(origin, {box.left - kHaloPad, box.bottom() + kHaloPad}) + " rectangle " +
                     fromTo(origin, {box.right() + kHaloPad, box.top - kHaloPad}) + ";\n";
        const double scale = text.size * 1.00375 / kTextSize;
        static constexpr std::string_view anchors[] = {"base west", "base", "base east"};
        m_out += "\\node[text=tp-" + std::string(nameOf(text.ink)) +
                 ", inner sep=0, anchor=" + std::string(anchors[static_cast<std::size_t>(text.anchor)]) +
                 ", scale=" + tikzNumber(scale) + "] at " +
                 (label.empty() ? m_points.numbers(text.baseline) : "(" + label + ")") + " {\\tpfit{" +
                 tikzNumber(text.box.width / scale) + "bp}{" + (text.face == Face::sans ? "\\sffamily " : "");
        for (const Run& run : text.runs)
            write(run);
        m_out += "}};\n";
    }

    void write(const Run& run) {
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

    /// Empty: none, as of texts of the ground.
    std::string labelOf(const Text& text) const {
        const auto it = std::find_if(m_labels.begin(), m_labels.end(),
                                     [&](const auto& label) { return label.first == &text; });
        return it == m_labels.end() ? std::string() : it->second;
    }

    const DisplayList& m_list;
    const Theme& m_theme;
    TikzPoints m_points;
    std::string m_out;
    // Of the group being written:
    bool m_isGround = false, m_isShifted = false;
    std::string m_hook; ///< the coordinate that it hangs on; empty: none
    Point m_origin;     ///< and where that lies
    std::vector<std::pair<const Text*, std::string>> m_labels;
};

} // namespace

QByteArray toTikz(const DisplayList& list, const Theme& theme) {
    TikzWriter writer(list, theme);
    const std::string colours = writer.colours();
    const std::string head = "\\makeatletter%\n" + std::string(kHead) + "\\makeatother%\n" + kFit;
    return QByteArray::fromStdString("\\begingroup%\n" + head + colours + writer.picture() + "\\endgroup%\n");
}

QByteArray toTikzDocument(const DisplayList& list, const Theme& theme) {
    const std::string width = tikzNumber(list.width) + "bp", height = tikzNumber(list.height) + "bp";
    std::string out = "% pdflatex or lualatex makes one page of " + width + " by " + height + " of this.\n";
    out += "\\documentclass{article}\n\\usepackage[T1]{fontenc}\n\\usepackage[utf8]{inputenc}\n"
           "\\usepackage{amsmath}\n\\usepackage{tikz}\n\\usetikzlibrary{angles,arrows.meta,calc}\n";
    out += "\\paperwidth=" + width + " \\paperheight=" + height + "\n";
    // Shipped out as one box at the page's corner: no line or paragraph moves it.
    out += "\\hoffset=-1in \\voffset=-1in\n\\begin{document}\n"
           "\\ifdefined\\pdfpagewidth \\pdfpagewidth=\\paperwidth \\pdfpageheight=\\paperheight\n"
           "\\else \\pagewidth=\\paperwidth \\pageheight=\\paperheight \\fi % lualatex\n\\setbox0=\\hbox{%\n";
    out += toTikz(list, theme).toStdString();
    out += "}\n\\shipout\\box0\n\\end{document}\n";
    return QByteArray::fromStdString(out);
}

} // namespace tailpoint
