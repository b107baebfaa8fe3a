#include "ui/render/tikz.h"

#include "core/explain/formula.h"
#include "core/figure/geometry.h"
#include "core/quantity/decimals.h"
#include "ui/render/dashes.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

namespace tailpoint {

namespace {

constexpr double kFar = 5000; ///< TeX's lengths end at 16383 pt: what lies farther out is left away
constexpr double kShortest =
    0.05; ///< of an arrow: a shorter one can't be seen, and TeX divides by its length
constexpr double kTextSize = 10;

double distance(Point a, Point b) {
    return length(b - a);
}

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

/// "12.5": at most three decimals, none of them a trailing zero.
std::string decimal(double value) {
    std::string out = fixedDecimals(value, 3);
    out.erase(out.find_last_not_of('0') + 1);
    if (out.ends_with('.'))
        out.pop_back();
    return out;
}

std::string oneLine(std::string text) {
    std::replace_if(
        text.begin(), text.end(), [](unsigned char c) { return c < 0x20; }, ' ');
    return text;
}

/// A head's polygon: tip, wing, notch or back, wing; read back to lengths.
struct Head {
    Point tip;
    double length = 0, width = 0, inset = 0;
    bool open = false;
    double weight = 0; ///< of an open head's outline
};

/// A label is no wider than it was measured, whatever the document's fonts.
constexpr const char* kFit = "\\def\\tpfit#1#2{\\setbox0=\\hbox{#2}\\ifdim\\wd0>#1\\relax"
                             "\\resizebox{#1}{\\height}{\\box0}\\else\\box0\\fi}%\n";

/// How far an outline's mitre reaches beyond its corner at the tip.
double apexOf(const Head& head) {
    const double half = head.width / 2;
    return head.open && half > 0 ? head.weight / 2 * std::hypot(head.length, half) / half : 0;
}

std::optional<Head> headOf(const Item& item, Point from) {
    const auto* path = std::get_if<Path>(&item);
    if (path == nullptr || !path->closed || path->points.size() < 3 || path->points.size() > 4)
        return std::nullopt;
    const auto& p = path->points;
    const auto far = std::max_element(
        p.begin(), p.end(), [&](Point a, Point b) { return distance(a, from) < distance(b, from); });
    const std::size_t t = static_cast<std::size_t>(far - p.begin()), n = p.size();
    const Point left = p[(t + 1) % n], right = p[(t + n - 1) % n];
    const Point middle{(left.x + right.x) / 2, (left.y + right.y) / 2};
    Head head{*far, distance(*far, middle), distance(left, right), 0, !path->filled, path->width};
    if (n == 4)
        head.inset = std::max(0.0, head.length - distance(*far, p[(t + 2) % n]));
    return head;
}

class TikzWriter {
public:
    TikzWriter(const DisplayList& list, const Theme& theme) : m_list(list), m_theme(theme) {}

    std::string picture() {
        m_out = "\\begin{tikzpicture}[x=1bp, y=1bp, line join=miter,\n";
        writeStyles();
        m_out += "]\n";
        const std::string corner = decimal(m_list.width) + "," + decimal(m_list.height);
        m_out += "\\path[use as bounding box] (0,0) rectangle (" + corner + ");\n";
        m_out += "\\begin{scope}\n\\clip (0,0) rectangle (" + corner + ");\n";
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
        std::map<Role, bool> used{{Role::sheet, true}, {Role::label, true}};
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

    std::string at(Point p) const { return "(" + decimal(p.x) + "," + decimal(m_list.height - p.y) + ")"; }

    bool isNear(Point p) const {
        return std::abs(p.x) < kFar && std::abs(p.y) < kFar && std::isfinite(p.x) && std::isfinite(p.y);
    }

    /// A coordinate's name from the group's id, in which a full stop would ask for an anchor.
    std::string coordinate(std::string id, const char* what, Point p) {
        std::replace(id.begin(), id.end(), '.', '+');
        const std::string name = id + "-" + what;
        m_out += "\\coordinate (" + name + ") at " + at(p) + ";\n";
        return "(" + name + ")";
    }

    std::string pen(Role role, double width, Dash dash) const {
        std::string out(nameOf(role));
        out += ", line width=" + decimal(width) + "bp";
        const auto pattern = patternOf(dash);
        if (pattern.empty())
            return out;
        out += ", dash pattern=";
        for (std::size_t i = 0; i < pattern.size(); ++i)
            out += std::string(i > 0 ? " " : "") + (i % 2 == 0 ? "on " : "off ") +
                   decimal(pattern[i] * width) + "bp";
        return out;
    }

    void write(const Group& group) {
        m_out += "% " + oneLine(group.title.empty() ? group.id : group.title) + "\n";
        const auto& items = group.items;
        for (std::size_t i = 0; i < items.size(); ++i)
            if (i + 1 < items.size() && writeArrow(group, items[i], items[i + 1]))
                ++i;
            else
                std::visit([&](const auto& item) { write(item); }, items[i]);
    }

    /// A shaft and the head on it, as one arrow from tail to tip. False: something else.
    bool writeArrow(const Group& group, const Item& item, const Item& next) {
        const auto* shaft = std::get_if<Path>(&item);
        if (shaft == nullptr || shaft->closed || shaft->points.size() != 2 || group.vector == kNoArrow)
            return false;
        const auto head = headOf(next, shaft->points[0]);
        if (!head || !isNear(shaft->points[0]) || !isNear(head->tip))
            return false;
        if (distance(shaft->points[0], head->tip) < kShortest)
            return true;
        const std::string tail = coordinate(group.id, "tail", shaft->points[0]);
        const std::string tip =
            coordinate(group.id, "tip", head->tip + apexOf(*head) * unitFrom(shaft->points[0], head->tip));
        m_out += "\\draw[" + pen(shaft->role, shaft->width, shaft->dash) +
                 ", -{tailpoint[length=" + decimal(head->length) + "bp, width=" + decimal(head->width) +
                 "bp, inset=" + decimal(head->inset) + "bp" +
                 (head->open ? ", open, line width=" + decimal(head->weight) + "bp" : "") + "]}] " + tail +
                 " -- " + tip + ";\n";
        return true;
    }

    void write(const Path& path) {
        if (path.points.size() < 2 ||
            !std::all_of(path.points.begin(), path.points.end(), [&](Point p) { return isNear(p); }))
            return;
        const std::string name(nameOf(path.role));
        std::string options;
        if (path.filled)
            options =
                "fill=tp-" + name + (path.width > 0 ? ", " + pen(path.role, path.width, path.dash) : "");
        else
            options = pen(path.role, path.width, path.dash);
        m_out += (path.filled && path.width <= 0 ? "\\path[" : "\\draw[") + options + "]";
        for (std::size_t i = 0; i < path.points.size(); ++i)
            m_out += (i > 0 ? " -- " : " ") + at(path.points[i]);
        m_out += path.closed ? " -- cycle;\n" : ";\n";
    }

    void write(const Arc& arc) {
        if (!isNear(arc.centre) || arc.radius > kFar)
            return;
        const std::string options = "\\draw[" + pen(arc.role, arc.width, arc.dash) + "] " + at(arc.centre);
        if (std::abs(arc.sweepDegrees) >= 360) {
            m_out += options + " circle[radius=" + decimal(arc.radius) + "];\n";
            return;
        }
        const std::string start = decimal(arc.startDegrees),
                          end = decimal(arc.startDegrees + arc.sweepDegrees);
        const std::string radius = decimal(arc.radius);
        m_out += options + " ++(" + start + ":" + radius + ") arc[start angle=" + start +
                 ", end angle=" + end + ", radius=" + radius + "];\n";
    }

    void write(const Disc& disc) {
        m_out += "\\draw[" + pen(disc.role, disc.width, Dash::solid) + ", fill=tp-" +
                 std::string(disc.filledWithSheet ? "sheet" : nameOf(disc.role)) + "] " + at(disc.centre) +
                 " circle[radius=" + decimal(disc.radius) + "];\n";
    }

    void write(const Text& text) {
        if (text.halo)
            m_out += "\\path[fill=tp-sheet] " + at({text.box.left, text.box.bottom()}) + " rectangle " +
                     at({text.box.right(), text.box.top}) + ";\n";
        const double scale = text.size * 1.00375 / kTextSize;
        static constexpr std::string_view anchors[] = {"base west", "base", "base east"};
        m_out += "\\node[text=tp-" + std::string(nameOf(text.ink)) +
                 ", inner sep=0, anchor=" + std::string(anchors[static_cast<std::size_t>(text.anchor)]) +
                 ", scale=" + decimal(scale) + "] at " + at(text.baseline) + " {\\tpfit{" +
                 decimal(text.box.width / scale) + "bp}{" + (text.face == Face::sans ? "\\sffamily " : "");
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

    static constexpr int kNoArrow = -2; ///< Group::vector where the group is no vector

    const DisplayList& m_list;
    const Theme& m_theme;
    std::string m_out;
};

} // namespace

QByteArray toTikz(const DisplayList& list, const Theme& theme) {
    TikzWriter writer(list, theme);
    const std::string colours = writer.colours();
    const std::string head = "\\makeatletter%\n" + std::string(kHead) + "\\makeatother%\n" + kFit;
    return QByteArray::fromStdString("\\begingroup%\n" + head + colours + writer.picture() + "\\endgroup%\n");
}

QByteArray toTikzDocument(const DisplayList& list, const Theme& theme) {
    const std::string width = decimal(list.width) + "bp", height = decimal(list.height) + "bp";
    std::string out = "% pdflatex makes one page of " + width + " by " + height + " of this.\n";
    out += "\\documentclass{article}\n\\usepackage[T1]{fontenc}\n\\usepackage[utf8]{inputenc}\n"
           "\\usepackage{amsmath}\n\\usepackage{tikz}\n\\usetikzlibrary{arrows.meta}\n";
    out += "\\paperwidth=" + width + " \\paperheight=" + height + "\n";
    // Shipped out as one box at the page's corner: no line or paragraph moves it.
    out += "\\hoffset=-1in \\voffset=-1in\n\\begin{document}\n"
           "\\pdfpagewidth=\\paperwidth \\pdfpageheight=\\paperheight\n\\setbox0=\\hbox{%\n";
    out += toTikz(list, theme).toStdString();
    out += "}\n\\shipout\\box0\n\\end{document}\n";
    return QByteArray::fromStdString(out);
}

} // namespace tailpoint
