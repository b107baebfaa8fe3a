// SPDX-License-Identifier: MIT
// figure/: decides once where every stroke, arc and label goes; screen, SVG, PDF, PNG and TikZ only paint
// this list. Units: points (1/72 inch) on the sheet, x right, y DOWN, origin at the sheet's top left.
// The flip from sketch coordinates (y up) happens in View and nowhere else.
#pragma once

#include "core/construct/figure_part.h"

#include <array>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace tailpoint {

/// What a thing is; a theme turns it into colour, the style into weight and dash. The SVG's classes.
enum class Role {
    sheet,
    grid,
    axis,
    given,
    sum,
    construction,
    arc,
    locus,
    label,
    leader,
    halo,
    titleblock,
    point,
    highlight,
    region ///< where a tip can lie: its ground
};
std::string_view nameOf(Role role);

struct Point {
    double x = 0, y = 0;
    bool operator==(const Point&) const = default;
};
struct Box {
    double left = 0, top = 0, width = 0, height = 0;
    double right() const { return left + width; }
    double bottom() const { return top + height; }
    bool operator==(const Box&) const = default;
};

enum class Dash {
    solid,
    dashed,
    chain,
    chainTwoDots,
    dotted
}; ///< chain: dash-dot (axis); chainTwoDots: locus

/// Straight pieces; closed and filled ones are heads and marks. Colour comes from `role`.
struct Path {
    Role role = Role::given;
    std::vector<Point> points;
    bool closed = false, filled = false;
    double width = 1; ///< stroke width; 0: no stroke
    Dash dash = Dash::solid;
    bool operator==(const Path&) const = default;
};
/// Angles in degrees as drawn on the sheet: 0 to the right, positive counter-clockwise as seen.
struct Arc {
    Role role = Role::arc;
    Point centre;
    double radius = 0, startDegrees = 0, sweepDegrees = 0;
    double width = 1;
    Dash dash = Dash::solid;
    bool operator==(const Arc&) const = default;
};
struct Disc { ///< ring of the common point, circles of possible tips are full Arcs
    Role role = Role::point;
    Point centre;
    double radius = 0, width = 1;
    bool filledWithSheet = true;
    bool operator==(const Disc&) const = default;
};

enum class Face { serif, sans };
enum class Script { normal, sub, super };
inline constexpr double kScriptPart = 0.72;
/// A label's lines below its first: how large they are set by it, and from one baseline to the next.
inline constexpr double kLowerPart = 0.82, kLineStep = 1.08;
struct Run {
    std::string text; ///< UTF-8
    bool italic = false, bold = false;
    Script script = Script::normal;
    double part = kScriptPart; ///< size of a sub- or superscript, or of a lower line, by that of the text
    bool isName = false;       ///< a vector's or an angle's symbol, or a part of it
    std::optional<std::size_t> valueAt{}; ///< byte of `text` at which the value behind a name begins
    int line = 0; ///< of its text, from the top; the runs of a line stand together, in order
    bool operator==(const Run&) const = default;
};
enum class Anchor { start, middle, end };

inline constexpr double kHaloPad = 1; ///< points

/// One label: one `<text>` in SVG, with lines below the first where runs say so, each anchored as the first.
/// `ink` is the role whose colour the text takes.
struct Text {
    Role role = Role::label;
    Role ink = Role::label;
    Point baseline; ///< of the anchor, on the first line
    Anchor anchor = Anchor::middle;
    Face face = Face::serif;
    double size = 12;
    std::vector<Run> runs;
    Box box;           ///< exact extent, as measured
    bool halo = false; ///< a rectangle of the sheet's colour behind, kHaloPad larger on every side
    std::optional<FigurePart> part{}; ///< its group's; where an arrow's label says the magnitude, that
    bool operator==(const Text&) const = default;
};

using Item = std::variant<Path, Arc, Disc, Text>;

/// What a group is called, and what is said of it. Either may hold commas.
struct Title {
    std::string name;   ///< "Force P"
    std::string detail; ///< "340 N at 25.0° counter-clockwise from +x", "drawn on tip to tail", or empty
    /// Both: "Force P, 340 N at 25.0° counter-clockwise from +x".
    std::string whole() const { return detail.empty() ? name : name + ", " + detail; }
    bool operator==(const Title&) const = default;
};

/// Things that belong together: one force with its head and label, one arc with its value.
struct Group {
    Role role = Role::given;
    std::string id;                   ///< "force-P", "sum", "arc-PQ"; unique, an XML name
    Title title;                      ///< reads as words
    std::optional<FigurePart> part{}; ///< what of the question it stands for; sheet, grid, title block, note,
                                      ///< key and points: nothing
    bool otherAnswer = false;         ///< an arrow of the other of two answers
    std::optional<std::array<Point, 2>> ends{}; ///< tail and exact tip, where the group is an arrow
    std::vector<Item> items;
    bool operator==(const Group&) const = default;
};

/// The arrow of a force or the sum in the answer that is drawn, or the dot where its magnitude is zero.
bool isArrow(const Group& group);
/// Whose arrow or, of the other answer, whose other arrow it is; kNobody: it is none.
VectorId vectorOf(const Group& group);

struct DisplayList {
    double width = 0, height = 0; ///< points
    std::string title, description;
    std::vector<Group> groups; ///< in painting order
    bool operator==(const DisplayList&) const = default;
};

/// How wide and high a label is, without knowing who paints it.
struct TextExtent {
    double width = 0, ascent = 0, descent = 0; ///< points, all >= 0
};
class TextMeasure {
public:
    virtual ~TextMeasure() = default;
    virtual TextExtent measure(const std::vector<Run>& runs, Face face, double size) const = 0;
};

} // namespace tailpoint
