// SPDX-License-Identifier: MIT
// Formulas painted by Qt from the same trees that give text, LaTeX and MathML: real fraction bars, roots,
// raised exponents. Laid out once, painted often; a layout depends on nothing but tree, size and resolution.
#pragma once

#include "core/explain/explain.h"
#include "ui/render/fonts.h"

#include <QPainter>
#include <QPainterPath>
#include <QString>
#include <vector>

namespace tailpoint {

/// How large, and on what: logical pixels, and the device's logical dots per inch.
struct TypeSize {
    double pixels = 16;
    int dotsPerInch = 96;
    double least = 0; ///< subscripts and exponents are set no smaller, pixels
    TypeSize scaled(double factor) const { return {pixels * factor, dotsPerInch, least}; }
};

/// Something set in type: texts, bars and signs relative to the left end of its baseline, y down.
struct Setting {
    struct Text {
        QPointF at; ///< of the baseline
        QString text;
        SharedFont font;
    };
    struct Shape {
        QPainterPath path;
        double width = 0; ///< of the pen; 0: filled
    };
    double width = 0, ascent = 0, descent = 0;
    std::vector<Text> texts;
    std::vector<Shape> shapes;

    double height() const { return ascent + descent; }
    bool isEmpty() const { return texts.empty() && shapes.empty(); }
    /// Places `other` with its baseline's left end at `at`, and grows to hold it.
    void add(const Setting& other, QPointF at);
    void add(Setting&& other, QPointF at);

    /// In the painter's pen colour.
    void paint(QPainter& painter, QPointF baseline) const;

private:
    void grow(const Setting& by, QPointF at);
};

/// Needs a QGuiApplication.
Setting setFormula(const Formula& formula, TypeSize size);

/// Lines of calculation, aligned at the relation sign: a part wider than `width` is broken before a plus or a
/// minus outside parentheses, or set smaller (to 0.6 at the least). The first baseline lies at ascent.
Setting setWorking(const Working& working, TypeSize size, double width);

/// The same line by line (symbols, substitution, result), each with its head, never smaller than `size`: what
/// is wider than `width` is broken, under roots and in fractions too. For lines that appear one by one.
std::vector<Setting> setWorkingByLine(const Working& working, TypeSize size, double width,
                                      bool* broken = nullptr);

/// What is set in several rows, row by row, each to be put right under the one before; what reaches over a
/// gap (a root, a fraction) stays whole.
std::vector<Setting> rowsOf(const Setting& setting);

/// A paragraph filled to `width`, words in `words`, formulas in the serif of the figure. `lineHeight` in ems
/// of `size`; 0: the font's own.
Setting setProse(const Prose& prose, const QFont& words, TypeSize size, double width, double lineHeight = 0);

/// The same line by line, each to be put right under the one before.
std::vector<Setting> setProseLines(const Prose& prose, const QFont& words, TypeSize size, double width,
                                   double lineHeight = 0);

/// A table with rules; numbers to the right. Set smaller where it is wider than `width`.
Setting setTable(const Table& table, const QFont& words, TypeSize size, double width);
/// The same row by row, rules among them; kTableLeading of the size between two.
std::vector<Setting> setTableRows(const Table& table, const QFont& words, TypeSize size, double width);
inline constexpr double kTableLeading = 0.2;

} // namespace tailpoint
