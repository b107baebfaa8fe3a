// SPDX-License-Identifier: MIT
// Writes a display list as one tikzpicture.
#pragma once

#include "ui/render/tikz_points.h"
#include "ui/style/theme.h"

#include <string>
#include <utility>
#include <vector>

namespace tailpoint {

class TikzWriter {
public:
    TikzWriter(const DisplayList& list, const Theme& theme)
        : m_list(list), m_theme(theme), m_points(arrowsOf(list), list.height) {}

    std::string picture();
    /// Colours of the roles in use, for before the picture. A line's end would be a space beside it.
    std::string colours() const;

private:
    std::vector<Role> roles() const;
    void writeStyles();
    /// By its name, or by numbers; those count from what the group hangs on, where it hangs on something.
    std::string at(Point p);
    static std::string fromTo(Point origin, Point p);
    /// Among the options of what `at` has been asked for since the last call.
    std::string shift();
    std::string pen(Role role, double width, Dash dash) const;
    void write(const Group& group);
    /// Finds what the group's labels and strokes hang on, and gives its labels their coordinates.
    void enter(const Group& group);
    void hangOnCentre(const Group& group);
    void addLabel(const Group& group, const Text& text, const TikzArrow* arrow);
    /// So far along the arrow, and so far off it.
    static std::string beside(const TikzArrow& arrow, Point p);
    /// Empty: none, as of texts of the ground.
    std::string labelOf(const Text& text) const;
    void write(const TikzArrow& arrow);
    /// The mark of parallel sides: a chevron whose point lies on a side, with which it goes. False: it is
    /// none.
    bool writeMark(const Path& path);
    void write(const Path& path);
    /// An arc from one named point to another about a third, which follows all of them. False: it isn't.
    bool writeAngle(const Arc& arc);
    void write(const Arc& arc);
    void write(const Disc& disc);
    void write(const Text& text);
    void writeLine(const Text& text, int line, const std::string& label);
    void write(const Run& run);

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

} // namespace tailpoint
