// SPDX-License-Identifier: MIT
// The named coordinates of a figure in TikZ, and how they hang together: a lecturer who moves the tip of a
// force moves with it its copies in the polygon, the resultant's tip and all strokes and labels tied to them.
#pragma once

#include "ui/render/tikz_arrows.h"

#include <optional>
#include <string>
#include <vector>

namespace tailpoint {

/// "12.5": at most three decimals, none of them a trailing zero.
std::string tikzNumber(double value);
/// A group's id as part of a coordinate's name, in which a full stop would ask for an anchor.
std::string tikzName(std::string id);

class TikzPoints {
public:
    TikzPoints(const std::vector<TikzArrow>& arrows, double height);

    std::string definitions() const { return m_definitions; }
    /// Of a coordinate that lies there; empty: none does.
    std::string nameAt(Point p) const;
    /// Of a coordinate in that direction as seen from there, in degrees; empty: none is, or an angle can't
    /// name it.
    std::string nameTowards(Point from, double degrees) const;
    /// Two named coordinates with this place between them, the line through them in this direction; empty:
    /// none.
    struct Side {
        std::string from, to;
        Point start, end;
    };
    std::optional<Side> sideThrough(Point p, Point direction) const;
    /// "(12.5,3)", y up.
    std::string numbers(Point p) const;

private:
    struct Named {
        std::string name;
        Point at;
    };
    void define(const std::string& name, Point at, const std::string& where);
    void defineTail(const TikzArrow& arrow);
    void defineForce(const TikzArrow& arrow);
    void defineOther(const TikzArrow& arrow);
    std::string copiedTip(const TikzArrow& arrow) const;
    std::string tipOfAll(const TikzArrow& sum) const;

    double m_height;
    std::string m_definitions;
    std::vector<Named> m_named;
    std::vector<TikzArrow> m_forces;
};

} // namespace tailpoint
