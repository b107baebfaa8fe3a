// SPDX-License-Identifier: MIT
// The texts and formulas of pages set in type, in the order of the page: a handout's, and what else is made
// of the same blocks (ui/problems).
#pragma once

#include "ui/handout/handout_pages.h"

namespace tailpoint {

/// Qt 6.4 rounds fonts to whole pixels: everything is set this much larger, and the painter is scaled back.
inline constexpr double kLayoutScale = 8;

int handoutResolution();
double unitsInPoint(); ///< layout units: 1 / (kLayoutScale * resolution) inch
QFont handoutFont(double points, int weight = QFont::Normal);

inline constexpr double kHandoutText = 10; ///< size of running text, points

inline constexpr double kFigureGap = 10; ///< above a figure, points

/// Of a limit's row, points: its bar, its word from here on, its sentence.
inline constexpr double kLimitBar = 112, kLimitWord = 122, kLimitSentence = 186;

/// Sets blocks one below the other in groups that are kept together. Sizes, places and gaps in points; the
/// blocks are in layout units.
class GroupWriter {
public:
    using Block = HandoutPages::Block;
    explicit GroupWriter(double width) : m_width(width), m_unit(unitsInPoint()) {}

    std::vector<HandoutPages::Kept> take() { return std::move(m_groups); }

    /// A group, `gap` below what stands above. Everything below goes into the last group.
    void begin(double gap);
    Block& prose(const Prose& text, double points = kHandoutText, double x = 0, double before = 3,
                 int weight = QFont::Normal);
    void table(const Table& table, double x);
    void figure(const DisplayList& list);
    Block& add(Setting setting, double x, double before);

    /// Groups of their own.
    void heading(const std::string& text);
    void parts(const Handout& handout); ///< of its solution
    void told(const TableTold& told);
    void limits(const Handout& handout, std::size_t answer);
    void caution(const std::string& text);

    double width() const { return m_width; } ///< layout units
    TypeSize typeSize(double points) const;

private:
    void step(const Step& step, int number);
    void joinLastTwo(); ///< a heading clings to the first step that follows

    double m_width, m_unit, m_gap = 0;
    std::vector<HandoutPages::Kept> m_groups;
};

/// `width` of the column, layout units.
std::vector<HandoutPages::Kept> handoutGroups(const Handout& handout, const DisplayList& figure,
                                              double width);

} // namespace tailpoint
