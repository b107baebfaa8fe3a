// SPDX-License-Identifier: MIT
// The page of one student.
#include "ui/marking/html_parts.h"
#include "ui/marking/marking_html.h"

#include "core/explain/handout.h"

#include <algorithm>

namespace tailpoint {

namespace {

using namespace marking_pages;

/// Below the value that is right.
std::string rangeHtml(const MarkedQuantity& quantity) {
    const std::string words = quantity.expectedText.empty() ? std::string() : rangeWords(quantity);
    return words.empty() ? words : "<span class=\"verdict\">" + safe(words) + "</span>";
}

std::string rowOf(const MarkedQuantity& quantity, const Things& things) {
    std::string out = "<tr><td>" + toMathml(things.formula(quantity.id));
    if (quantity.answer > 0)
        out += " (answer " + std::to_string(quantity.answer) + ")";
    out += "</td><td>" + (quantity.givenText.empty() ? std::string("&#8212;") : safe(quantity.givenText)) +
           "</td><td>" + safe(quantity.expectedText) + rangeHtml(quantity) + "</td><td>" +
           std::string(nameOf(quantity.verdict)) + "</td><td class=\"n\">";
    out += quantity.asked ? pointsText(quantity.points) + " of " + pointsText(quantity.of) : std::string();
    return out + "</td></tr>\n";
}

std::string tableOf(const Marking& marking, const Things& things) {
    std::string out = "<div class=\"scrolls\">\n<table "
                      "class=\"marks\">\n<thead><tr><th>Quantity</th><th>Your answer</th><th>Right</th>"
                      "<th>Verdict</th><th class=\"n\">Points</th></tr></thead>\n<tbody>\n";
    std::set<std::string, std::less<>> words;
    for (const MarkedQuantity& quantity : marking.quantities) {
        out += rowOf(quantity, things);
        words.emplace(nameOf(quantity.verdict));
    }
    return out + "</tbody>\n</table>\n</div>\n" + legend(words);
}

std::string remarksOf(const Marking& marking, const Things& things) {
    std::string out;
    for (const MarkedQuantity& quantity : marking.quantities)
        for (const Prose& remark : quantity.remarks)
            out += "<p>" + toMathml(things.formula(quantity.id)) + ": " + toHtml(remark) + "</p>\n";
    for (const Prose& remark : marking.remarks)
        out += "<p>" + toHtml(remark) + "</p>\n";
    return out;
}

std::string slipsOf(const Marking& marking) {
    std::string out;
    const bool isStrong = std::any_of(marking.slips.begin(), marking.slips.end(),
                                      [](const Finding& finding) { return finding.isStrong; });
    if (!marking.slips.empty())
        out += isStrong ? "<h2>What gives this number</h2>\n" : "<h2>What may give this number</h2>\n";
    for (const Finding& finding : marking.slips)
        out += "<section class=\"slip\">\n" + findingHtml(finding) + "</section>\n";
    if (marking.ask)
        out += "<p class=\"ask\">" + toHtml(*marking.ask) + "</p>\n";
    return out;
}

std::string bodyOf(const MarkedRow& row, const Sketch& sketch) {
    const std::string total = "<p class=\"total\">" + pointsHtml(row) + "</p>\n";
    if (!row.marking)
        return "<p>Your answer could not be read: " + safe(row.fault) + ".</p>\n" + total;
    const Things things(sketch);
    const std::string unread =
        row.fault.empty() ? std::string() : "<p>Not all of it could be read: " + safe(row.fault) + ".</p>\n";
    return tableOf(*row.marking, things) + unread + total + remarksOf(*row.marking, things) +
           slipsOf(*row.marking) + cautionHtml(row.marking->caution);
}

} // namespace

std::string studentHtml(const Sketch& sketch, const MarkedRow& row) {
    Handout handout;
    handout.title = sketch.title;
    const std::string title = titleOf(handout);
    std::string out = htmlHead(row.who.empty() ? title : printable(row.who) + ": " + title, style());
    out += "<body>\n<h1>" + safe(title) + "</h1>\n";
    if (!row.who.empty())
        out += "<p>" + person(row.who) + "</p>\n";
    out += toHtml(statement(sketch), question(sketch)) + "<h2>Your answer</h2>\n";
    return out + bodyOf(row, sketch) + "</body>\n</html>\n";
}

} // namespace tailpoint
