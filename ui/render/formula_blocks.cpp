// SPDX-License-Identifier: MIT
// Paragraphs, lines of calculation and tables, made of set formulas.
#include "ui/render/fonts.h"
#include "ui/render/typesetter.h"

#include <QFontMetricsF>
#include <algorithm>
#include <utility>

namespace tailpoint {

namespace {

constexpr double kSmallest = 0.6; // of the size asked for
constexpr double kLeading = 0.42; // ems between lines of a calculation
constexpr double kRelationGap = 0.28, kTermGap = 0.22;

/// What may be broken off: the terms of a sum, the words of a row; of anything else the whole.
std::vector<Setting> breakable(const Typesetter& set, const Formula& f) {
    if (f.kind == FormulaKind::sum)
        return set.terms(f);
    if (f.kind == FormulaKind::row)
        return set.words(f);
    std::vector<Setting> whole;
    whole.push_back(set.set(f));
    return whole;
}

double widest(const std::vector<Setting>& pieces) {
    double wide = 0;
    for (const Setting& piece : pieces)
        wide = std::max(wide, piece.width);
    return wide;
}

/// Stacks rows below one another: the first baseline stays where it is.
class Stack {
public:
    explicit Stack(double leading) : m_leading(leading) {}
    void add(Setting row, double x = 0) {
        if (!m_rows.empty())
            m_baseline += m_descent + m_leading + row.ascent;
        m_descent = row.descent;
        m_baselines.push_back(m_baseline);
        m_rows.emplace_back().add(std::move(row), {x, 0});
    }
    Setting take() {
        Setting out;
        for (std::size_t i = 0; i < m_rows.size(); ++i)
            out.add(std::move(m_rows[i]), {0, m_baselines[i]});
        return out;
    }
    std::vector<Setting> takeRows() { return std::move(m_rows); }

private:
    std::vector<Setting> m_rows;
    std::vector<double> m_baselines;
    double m_leading, m_baseline = 0, m_descent = 0;
};

void addFilled(Stack& stack, const Typesetter& set, const Setting& head, std::vector<Setting> pieces,
               double indent, double width) {
    Setting row = head;
    bool fresh = true;
    double start = 0;
    for (Setting& piece : pieces) {
        const double gap = fresh ? 0 : kTermGap * set.em();
        if (!fresh && start + row.width + gap + piece.width > width) {
            stack.add(std::exchange(row, {}), start);
            start = indent + set.em();
            row.add(std::move(piece), {0, 0});
            continue;
        }
        row.add(std::move(piece), {row.width + gap, 0});
        fresh = false;
    }
    stack.add(std::move(row), start);
}

/// "R =" of the given width, or "=" at its right.
Setting headOf(const Typesetter& set, const Setting& subject, bool shown) {
    Setting head;
    if (shown)
        head.add(subject, {0, 0});
    head.width = subject.width + kRelationGap * set.em();
    head.add(set.sign(Relation::equal), {head.width, 0});
    head.width += kRelationGap * set.em();
    return head;
}

Setting setLines(const Working& working, const Typesetter& set, double width, double& needed) {
    Stack stack(kLeading * set.em());
    const Setting subject = working.subject ? set.set(*working.subject) : Setting();
    bool first = true;
    for (const Formula* part : sidesOf(working)) {
        const Setting head = working.subject ? headOf(set, subject, first) : Setting();
        auto pieces = breakable(set, *part);
        needed = std::max(needed, head.width + widest(pieces) + (pieces.size() > 1 ? set.em() : 0));
        addFilled(stack, set, head, std::move(pieces), head.width, width);
        first = false;
    }
    return stack.take();
}

} // namespace

Setting setWorking(const Working& working, TypeSize size, double width) {
    double needed = 0, factor = 1;
    Setting out = setLines(working, Typesetter(size), width, needed);
    while (needed > width && factor > kSmallest) { // hinted glyphs don't narrow in proportion: ask again
        factor = std::max(kSmallest, factor * std::min(0.99, width / needed));
        needed = 0;
        out = setLines(working, Typesetter(size.scaled(factor)), width, needed);
    }
    return out;
}

namespace {

/// Fills lines with words and formulas.
class Filler {
public:
    Filler(const QFont& words, TypeSize size, double width, double lineHeight)
        : m_font(std::make_shared<const QFont>(words)), m_metrics(words), m_set(size), m_width(width),
          m_space(m_metrics.horizontalAdvance(QLatin1Char(' '))) {
        constexpr double kAbove = 0.74; // of a line of its own height
        m_line.ascent = lineHeight > 0 ? std::min(kAbove * lineHeight * size.pixels, m_metrics.ascent())
                                       : m_metrics.ascent();
        m_line.descent = lineHeight > 0
                             ? std::min((1 - kAbove) * lineHeight * size.pixels, m_metrics.descent())
                             : m_metrics.descent();
        m_empty = m_line;
    }

    void text(const QString& string) {
        qsizetype at = 0;
        while (at <= string.size()) {
            qsizetype end = string.indexOf(QLatin1Char(' '), at);
            if (end < 0)
                end = string.size();
            if (end > at)
                word(string.mid(at, end - at));
            if (end < string.size())
                m_gap = true;
            at = end + 1;
        }
    }

    void formula(const Formula& f) {
        if (f.kind == FormulaKind::words)
            return text(QString::fromStdString(f.text));
        place(m_set.set(f));
    }

    Setting take() {
        flush();
        return m_stack.take();
    }
    std::vector<Setting> takeLines() {
        flush();
        return m_stack.takeRows();
    }

private:
    void word(const QString& string) {
        Setting set;
        set.ascent = m_empty.ascent;
        set.descent = m_empty.descent;
        set.width = advanceOf(*m_font, string);
        set.texts.push_back({{0, 0}, string, m_font});
        place(std::move(set));
        m_isWord = m_cluster.texts.size() == 1 && m_cluster.shapes.empty();
    }

    /// Without a gap before it a piece clings to the one before ("R" and ","), across a break too.
    void place(Setting piece) {
        if (m_gap)
            settle();
        m_cluster.add(std::move(piece), {m_cluster.width, 0});
        m_isWord = false;
        m_gap = false;
    }

    void settle() {
        if (m_cluster.isEmpty())
            return;
        const double gap = m_line.isEmpty() ? 0 : m_space;
        if (!m_line.isEmpty() && m_line.width + gap + m_cluster.width > m_width) {
            m_stack.add(std::exchange(m_line, m_empty));
            m_line.add(std::move(m_cluster), {0, 0});
        } else if (m_isWord && m_endsInWord) {
            continueWord(gap);
        } else {
            m_line.add(std::move(m_cluster), {m_line.width + gap, 0});
        }
        m_endsInWord = m_isWord;
        m_cluster = Setting();
    }

    /// Words of a line that stand behind one another are one text: shaped once, and found as such in a PDF.
    void continueWord(double gap) {
        m_line.texts.back().text += QLatin1Char(' ') + m_cluster.texts.front().text;
        m_line.width += gap + m_cluster.width;
    }

    void flush() {
        settle();
        if (!m_line.isEmpty())
            m_stack.add(std::move(m_line));
    }

    SharedFont m_font;
    QFontMetricsF m_metrics;
    Typesetter m_set;
    double m_width, m_space;
    Setting m_line, m_cluster, m_empty;
    Stack m_stack{0.0};
    bool m_gap = false, m_isWord = false, m_endsInWord = false; ///< the cluster is, the line ends in
};

} // namespace

namespace {

Filler filled(const Prose& prose, const QFont& words, TypeSize size, double width, double lineHeight) {
    Filler filler(words, size, width, lineHeight);
    for (const Piece& piece : prose.pieces)
        if (const auto* string = std::get_if<std::string>(&piece))
            filler.text(QString::fromStdString(*string));
        else
            filler.formula(std::get<Formula>(piece));
    return filler;
}

} // namespace

Setting setProse(const Prose& prose, const QFont& words, TypeSize size, double width, double lineHeight) {
    return filled(prose, words, size, width, lineHeight).take();
}

std::vector<Setting> setProseLines(const Prose& prose, const QFont& words, TypeSize size, double width,
                                   double lineHeight) {
    return filled(prose, words, size, width, lineHeight).takeLines();
}

namespace {

struct Grid {
    std::vector<std::vector<Setting>> rows;
    std::vector<double> widths;
    double gap = 0;
    double width() const {
        double all = -gap;
        for (double w : widths)
            all += w + gap;
        return all;
    }
};

Setting cellOf(const Formula& cell, const QFont& words, const Typesetter& set) {
    if (cell.kind != FormulaKind::words)
        return set.set(cell);
    Setting out;
    const QFontMetricsF metrics(words);
    out.ascent = metrics.ascent();
    out.descent = metrics.descent();
    const QString text = QString::fromStdString(cell.text);
    if (text.isEmpty())
        return out;
    out.width = advanceOf(words, text);
    out.texts.push_back({{0, 0}, text, std::make_shared<const QFont>(words)});
    return out;
}

/// Columns stand closer before anything is set smaller.
Grid gridOf(const Table& table, const QFont& words, const Typesetter& set, double room) {
    constexpr double kColumnGap = 1.1, kLeastColumnGap = 0.55; // ems
    Grid grid;
    grid.gap = kColumnGap * set.em();
    grid.widths.assign(table.head.size(), 0);
    const auto add = [&](const std::vector<Formula>& row) {
        std::vector<Setting> cells;
        for (std::size_t c = 0; c < row.size(); ++c) {
            cells.push_back(cellOf(row[c], words, set));
            grid.widths[c] = std::max(grid.widths[c], cells.back().width);
        }
        grid.rows.push_back(std::move(cells));
    };
    add(table.head);
    for (const auto& row : table.rows)
        add(row);
    if (grid.width() > room && grid.widths.size() > 1)
        grid.gap = std::max(kLeastColumnGap * set.em(),
                            grid.gap - (grid.width() - room) / static_cast<double>(grid.widths.size() - 1));
    return grid;
}

Setting rowOf(const Grid& grid, std::vector<Setting> cells) {
    Setting row;
    double x = 0;
    for (std::size_t c = 0; c < cells.size(); ++c) {
        row.add(std::move(cells[c]), {c == 0 ? x : x + grid.widths[c] - cells[c].width, 0});
        x += grid.widths[c] + grid.gap;
    }
    row.width = grid.width();
    return row;
}

Setting ruleOf(double width, double thickness) {
    Setting rule;
    QPainterPath path;
    path.addRect(0, 0, width, thickness);
    rule.shapes.push_back({path, 0});
    rule.width = width;
    rule.descent = thickness;
    return rule;
}

} // namespace

constexpr double kHairline = 0.06; ///< of the size; a pixel at the least

namespace {

Stack tableOf(const Table& table, const QFont& words, TypeSize size, double width) {
    Grid grid = gridOf(table, words, Typesetter(size), width);
    const TypeSize whole = size;
    double factor = 1;
    while (grid.width() > width && factor > kSmallest) {
        factor = std::max(kSmallest, factor * std::min(0.99, width / grid.width()));
        QFont smaller = words;
        smaller.setPointSizeF(words.pointSizeF() * factor);
        size = whole.scaled(factor);
        grid = gridOf(table, smaller, Typesetter(size), width);
    }
    Stack stack(kTableLeading * size.pixels);
    for (std::size_t r = 0; r < grid.rows.size(); ++r) {
        if (r == 1 || (table.hasTotal && r + 1 == grid.rows.size()))
            stack.add(ruleOf(grid.width(), std::max(1.0, kHairline * size.pixels)));
        stack.add(rowOf(grid, std::move(grid.rows[r])));
    }
    return stack;
}

} // namespace

Setting setTable(const Table& table, const QFont& words, TypeSize size, double width) {
    return tableOf(table, words, size, width).take();
}

std::vector<Setting> setTableRows(const Table& table, const QFont& words, TypeSize size, double width) {
    return tableOf(table, words, size, width).takeRows();
}

} // namespace tailpoint
