// SPDX-License-Identifier: MIT
// The page of a class.
#include "ui/marking/html_parts.h"
#include "ui/marking/marking_html.h"

#include "core/explain/handout.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint {

namespace {

using namespace marking_pages;

/// In the order in which a summary counts them, with the words for one and for several.
struct Counted {
    std::string_view verdict, words;
};
constexpr std::array kCounted{Counted{"right", "right"},
                              Counted{"rounded", "right within rounding"},
                              Counted{"unit", "right but for the unit"},
                              Counted{"axis", "counted from another axis or in the other turn"},
                              Counted{"incomplete", "incomplete"},
                              Counted{"slip", "with a slip that is known"},
                              Counted{"other", "wrong in a way that nothing known explains"},
                              Counted{"unread", "not read"}};

/// What one slip leads to in this question, however many came to it.
struct SlipGroup {
    std::string id, second, lines; ///< together they tell groups apart
    Finding finding;
    std::optional<Prose> ask;
    std::size_t count = 0;
    std::vector<std::string> who;
};

bool isWrong(Verdict verdict) {
    return verdict != Verdict::right && verdict != Verdict::rounded && verdict != Verdict::follows;
}

class ClassHtml final : public ClassOutput {
public:
    ClassHtml(const Sketch& sketch, const ClassMarking& marking, bool names)
        : m_sketch(sketch), m_columns(marking.columns()), m_answered(marking.answered()), m_names(names) {}

    std::string row(const MarkedRow& row) override {
        ++m_count;
        m_points += row.points();
        m_of = row.of;
        if (row.marking)
            m_caution = row.marking->caution;
        m_tally.add(row);
        const auto counted = std::find_if(kCounted.begin(), kCounted.end(),
                                          [&](const Counted& one) { return one.verdict == row.verdict(); });
        if (counted != kCounted.end())
            ++m_verdicts[static_cast<std::size_t>(counted - kCounted.begin())];
        if (row.firstSlip())
            group(row);
        appendRow(row);
        return {};
    }

    std::string end() override {
        Handout handout;
        handout.title = m_sketch.title;
        const std::string title = titleOf(handout);
        std::string out = htmlHead(title + ": the class", style()) + "<body>\n<h1>" + safe(title) + "</h1>\n";
        out += toHtml(statement(m_sketch), question(m_sketch)) + summary();
        const auto entries = m_tally.entries();
        out += "<h2>Slips by how often each is named first</h2>\n";
        out += entries.empty() ? "<p>No slip is named.</p>\n" : tallySvg(entries, m_count);
        out += slips(entries);
        return out + "<h2>Answers</h2>\n" + table() + cautionHtml(m_caution) + "</body>\n</html>\n";
    }

private:
    void group(const MarkedRow& row) {
        const Finding& slip = *row.firstSlip();
        std::string lines = linesHtml(slip);
        auto at = std::find_if(m_groups.begin(), m_groups.end(), [&](const SlipGroup& one) {
            return one.id == slip.id && one.second == slip.second && one.lines == lines;
        });
        if (at == m_groups.end())
            at = m_groups.insert(at, {slip.id, slip.second, std::move(lines), slip, row.marking->ask, 0, {}});
        else if (at->finding.isStrong && !slip.isStrong) // said with no more certainty than it has for each
            at->finding = slip;
        ++at->count;
        if (m_names)
            at->who.push_back(row.who.empty() ? "line " + std::to_string(row.line) : row.who);
    }

    std::string wordOf(std::string_view verdict) {
        m_words.emplace(verdict);
        return std::string(verdict);
    }

    std::string cell(const MarkedRow& row, std::size_t column) {
        std::string out = "<td>" + safe(row.cells[column]);
        if (row.marking)
            for (const MarkedQuantity& quantity : row.marking->quantities)
                if (quantity.name == m_answered[column]->name)
                    out += std::string("<span class=\"verdict") +
                           (isWrong(quantity.verdict) ? " wrong" : "") + "\">" +
                           wordOf(nameOf(quantity.verdict)) + "</span>";
        return out + "</td>";
    }

    void appendRow(const MarkedRow& row) {
        std::size_t columns = 3;
        m_rows += "<tr><td>" + person(row.who) + "</td>";
        for (std::size_t i = 1; i < m_answered.size(); ++i)
            if (m_answered[i] != nullptr)
                m_rows += cell(row, i), ++columns;
        m_rows += "<td class=\"words\">" + wordOf(row.verdict());
        if (m_names && row.firstSlip())
            m_rows += "<span class=\"verdict\">" + safe(slipWords(*row.firstSlip())) + "</span>";
        m_rows += "</td><td class=\"n\">" + pointsText(row.points());
        if (row.own)
            m_rows += "<span class=\"verdict\">set by the marker</span>";
        m_rows += "</td></tr>\n";
        if (row.own && !row.own->remark.empty())
            appendNote(columns, "Points set by the marker: " + safe(row.own->remark));
        if (const std::string fault = row.faults(); !fault.empty())
            appendNote(columns, "Line " + std::to_string(row.line) + ": " + safe(fault));
    }

    /// Below a row, as wide as the table.
    void appendNote(std::size_t columns, const std::string& note) {
        m_rows +=
            "<tr class=\"told\"><td colspan=\"" + std::to_string(columns) + "\">" + note + "</td></tr>\n";
    }

    std::string summary() const {
        std::string out;
        for (std::size_t i = 0; i < kCounted.size(); ++i)
            if (m_verdicts[i] > 0)
                out += (out.empty() ? "" : ", ") + std::to_string(m_verdicts[i]) + ' ' +
                       std::string(kCounted[i].words);
        const std::string count = std::to_string(m_count) + (m_count == 1 ? " answer" : " answers");
        if (m_count == 0)
            return "<p class=\"answer\">No answers.</p>\n";
        const double mean = std::round(m_points / static_cast<double>(m_count) * 100) / 100;
        return "<p class=\"answer\">" + count + ": " + out + ".</p>\n<p>On average " + pointsText(mean) +
               " of " + pointsText(m_of) + (m_of == 1 ? " point" : " points") + ".</p>\n";
    }

    /// In the tally's order.
    std::string slips(const std::vector<SlipTally::Entry>& entries) const {
        std::string out;
        for (const SlipTally::Entry& entry : entries)
            for (const SlipGroup& one : m_groups)
                if (one.id == entry.id)
                    out += section(one);
        return out;
    }

    std::string section(const SlipGroup& group) const {
        std::string out = "<section class=\"slip\">\n<h3>" + heading(group.id, group.finding.isStrong);
        if (!group.second.empty())
            out += " and " + safe(slipName(group.second));
        out += " <span class=\"count\">(" + std::to_string(group.count) +
               (group.count == 1 ? " answer" : " answers") + ")</span></h3>\n";
        for (std::size_t i = 0; i < group.who.size(); ++i)
            out += (i == 0 ? "<p class=\"names\">" : ", ") + person(group.who[i]) +
                   (i + 1 == group.who.size() ? "</p>\n" : "");
        out += findingHtml(group.finding);
        if (group.ask)
            out += "<p class=\"ask\">" + toHtml(*group.ask) + "</p>\n";
        return out + "</section>\n";
    }

    std::string table() const {
        const Things things(m_sketch);
        constexpr std::ptrdiff_t most = 6; // quantities that stand side by side in the page's type
        const bool isWide = std::count(m_answered.begin(), m_answered.end(), nullptr) + most <
                            static_cast<std::ptrdiff_t>(m_answered.size());
        std::string out = std::string("<div class=\"scrolls\">\n<table class=\"marks") +
                          (isWide ? " many" : "") + "\">\n<thead><tr><th>" + safe(m_columns.front()) +
                          "</th>";
        for (const Answerable* quantity : m_answered)
            if (quantity != nullptr)
                out += "<th>" + toMathml(things.formula(quantity->id)) + "</th>";
        return out + "<th>Verdict</th><th class=\"n\">Points of " + pointsText(m_of) +
               "</th></tr></thead>\n<tbody>\n" + m_rows + "</tbody>\n</table>\n</div>\n" + legend(m_words);
    }

    const Sketch& m_sketch;
    std::vector<std::string> m_columns;
    std::vector<const Answerable*> m_answered; ///< by the columns
    bool m_names;
    SlipTally m_tally{false};
    std::vector<SlipGroup> m_groups;
    std::array<std::size_t, kCounted.size()> m_verdicts{};
    std::size_t m_count = 0;
    double m_points = 0, m_of = 0;
    std::string m_caution;
    std::string m_rows;
    std::set<std::string, std::less<>> m_words; ///< of verdicts, for the legend
};

} // namespace

std::unique_ptr<ClassOutput> classHtml(const Sketch& sketch, const ClassMarking& marking, bool names) {
    return std::make_unique<ClassHtml>(sketch, marking, names);
}

} // namespace tailpoint
