// SPDX-License-Identifier: MIT
#include "ui/problems/key_html.h"

#include "core/explain/handout.h"
#include "core/quantity/text.h"
#include "ui/marking/html_parts.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

using namespace marking_pages;

/// One slip, or two at once, with the first answer that came to it: numbers differ from question to question.
struct SlipGroup {
    std::string id, second, of, example, ask;
    std::size_t count = 0;
    bool isStrong = false; ///< for each of them
    std::vector<std::string> who;
};

std::string titleOfQuestion(const Sketch& sketch) {
    Handout handout;
    handout.title = sketch.title;
    return titleOf(handout);
}

class KeyHtml final : public ClassOutput {
public:
    KeyHtml(const KeyMarking& marking, bool names) : m_marking(marking), m_names(names) {}

    std::string row(const MarkedRow& row) override {
        ++m_count;
        ++m_verdicts[std::string(row.verdict())];
        m_points += row.points();
        m_of += row.of;
        m_tally.add(row);
        if (row.firstSlip() && m_marking.sketch())
            group(row, *m_marking.sketch());
        appendRow(row);
        return {};
    }

    std::string end() override {
        const std::string title = "The class, each with questions of their own";
        std::string out = htmlHead(title, style()) + "<body>\n<h1>" + title + "</h1>\n" + summary();
        const auto entries = m_tally.entries();
        out += "<h2>Slips by how often each is named first</h2>\n";
        out += entries.empty() ? "<p>No slip is named.</p>\n" : tallySvg(entries, m_count);
        for (const SlipTally::Entry& entry : entries)
            for (const SlipGroup& one : m_groups)
                if (one.id == entry.id)
                    out += section(one);
        return out + "<h2>Answers</h2>\n<div class=\"scrolls\">\n<table class=\"marks\">\n<thead><tr><th>" +
               safe(m_marking.columns().empty() ? std::string("who") : m_marking.columns().front()) +
               "</th><th>Question</th><th>Answers</th><th>Verdict</th><th "
               "class=\"n\">Points</th></tr></thead>\n"
               "<tbody>\n" +
               m_rows + "</tbody>\n</table>\n</div>\n" + legend(m_words) + "</body>\n</html>\n";
    }

private:
    void group(const MarkedRow& row, const Sketch& sketch) {
        const Finding& slip = *row.firstSlip();
        auto at = std::find_if(m_groups.begin(), m_groups.end(), [&](const SlipGroup& one) {
            return one.id == slip.id && one.second == slip.second;
        });
        if (at == m_groups.end())
            at = m_groups.insert(at, {slip.id,
                                      slip.second,
                                      safe(titleOfQuestion(sketch)),
                                      findingHtml(slip),
                                      row.marking->ask ? toHtml(*row.marking->ask) : std::string(),
                                      0,
                                      slip.isStrong,
                                      {}});
        ++at->count;
        at->isStrong = at->isStrong && slip.isStrong;
        if (m_names)
            at->who.push_back(row.who.empty() ? "line " + std::to_string(row.line) : row.who);
    }

    std::string wordOf(std::string_view verdict) {
        m_words.emplace(verdict);
        return std::string(verdict);
    }

    std::string answersOf(const MarkedRow& row, const Sketch& sketch) {
        const Things things(sketch);
        std::string out;
        for (const MarkedQuantity& quantity : row.marking->quantities)
            if (quantity.given || quantity.asked)
                out += (out.empty() ? "" : "<br/>") + toMathml(things.formula(quantity.id)) + " = " +
                       (quantity.given ? safe(quantity.givenText) : std::string("&#8212;")) + " (" +
                       wordOf(nameOf(quantity.verdict)) + ')';
        return out;
    }

    void appendRow(const MarkedRow& row) {
        const Sketch* sketch = m_marking.sketch();
        m_rows += "<tr><td>" + person(row.who) + "</td><td class=\"words\">" +
                  (sketch ? safe(titleOfQuestion(*sketch)) : std::string()) + "</td><td>" +
                  (sketch && row.marking ? answersOf(row, *sketch) : std::string()) +
                  "</td><td class=\"words\">" + wordOf(row.verdict());
        if (m_names && row.firstSlip())
            m_rows += "<span class=\"verdict\">" + safe(slipWords(*row.firstSlip())) + "</span>";
        m_rows += "</td><td class=\"n\">" + pointsText(row.points()) + " of " + pointsText(row.of);
        if (row.own)
            m_rows += "<span class=\"verdict\">set by the marker</span>";
        m_rows += "</td></tr>\n";
        if (row.own && !row.own->remark.empty())
            appendNote("Points set by the marker: " + safe(row.own->remark));
        if (!row.marking)
            appendNote("Line " + std::to_string(row.line) + ": " + safe(row.fault));
    }

    /// Below a row, as wide as the table.
    void appendNote(const std::string& note) {
        m_rows += "<tr class=\"told\"><td colspan=\"5\">" + note + "</td></tr>\n";
    }

    std::string summary() const {
        if (m_count == 0)
            return "<p class=\"answer\">No answers.</p>\n";
        std::string out;
        for (const auto& [verdict, count] : m_verdicts)
            out += (out.empty() ? "" : ", ") + std::to_string(count) + ' ' + verdict;
        const double share = m_of > 0 ? std::round(100 * m_points / m_of) : 0;
        return "<p class=\"answer\">" + std::to_string(m_count) + (m_count == 1 ? " answer" : " answers") +
               ": " + out + ".</p>\n<p>Together " + pointsText(m_points) + " of " + pointsText(m_of) +
               " points, " + pointsText(share) + " %.</p>\n";
    }

    static std::string section(const SlipGroup& group) {
        std::string out = "<section class=\"slip\">\n<h3>" + heading(group.id, group.isStrong);
        if (!group.second.empty())
            out += " and " + safe(slipName(group.second));
        out += " <span class=\"count\">(" + std::to_string(group.count) +
               (group.count == 1 ? " answer" : " answers") + ")</span></h3>\n";
        for (std::size_t i = 0; i < group.who.size(); ++i)
            out += (i == 0 ? "<p class=\"names\">" : ", ") + person(group.who[i]) +
                   (i + 1 == group.who.size() ? "</p>\n" : "");
        out += "<p>In the question \u201C" + group.of + "\u201D:</p>\n" + group.example;
        if (!group.ask.empty())
            out += "<p class=\"ask\">" + group.ask + "</p>\n";
        return out + "</section>\n";
    }

    const KeyMarking& m_marking;
    bool m_names;
    SlipTally m_tally{false};
    std::vector<SlipGroup> m_groups;
    std::map<std::string, std::size_t> m_verdicts;
    std::size_t m_count = 0;
    double m_points = 0, m_of = 0;
    std::string m_rows;
    std::set<std::string, std::less<>> m_words; ///< of verdicts, for the legend
};

} // namespace

std::unique_ptr<ClassOutput> keyHtml(const KeyMarking& marking, bool names) {
    return std::make_unique<KeyHtml>(marking, names);
}

} // namespace tailpoint
