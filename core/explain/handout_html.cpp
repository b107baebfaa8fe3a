// SPDX-License-Identifier: MIT
#include "core/explain/handout.h"
#include "core/explain/rows.h"
#include "core/explain/signs_font.h"

namespace tailpoint {

namespace {

constexpr std::string_view kStyle = R"(
@page { margin: 18mm }
:root { color: #1f2a30; background: #fff }
body { font: 11pt/1.45 "Helvetica Neue", Arial, "DejaVu Sans", sans-serif; max-width: 46em; margin: 2em auto; padding: 0 1.2em }
math { font-family: "Tailpoint Signs", "STIX Two Math", "STIX Math", "STIX", "Latin Modern Math", "Cambria Math", math, serif }
.s { font-family: "STIX Two Math", "STIX Math", "STIX", "Latin Modern Math", "Cambria Math", math, serif }
math { font-size: 1.12em }
.working math { math-style: normal }
.s { font-style: italic; font-size: 1.1em }
h1 { font-size: 1.5em; margin: 0 0 .4em; overflow-wrap: anywhere }
h2 { font-size: .8em; letter-spacing: .12em; text-transform: uppercase; color: #4c585f; border-top: 1px solid #d9d3c4; padding-top: 1em; margin: 1.6em 0 .6em }
h3 { font-size: 1em; margin: 0 0 .3em }
p { margin: .25em 0 }
figure { margin: 1em 0; break-inside: avoid }
figure svg { max-width: 100%; height: auto; max-height: 60vh; display: block; margin: 0 auto }
ol.steps { list-style: none; padding: 0; margin: 0; counter-reset: step }
ol.steps > li { counter-increment: step; position: relative; padding-left: 2.3em; margin: 0 0 1.1em; break-inside: avoid }
ol.steps > li.long { break-inside: auto }
p { orphans: 2; widows: 2 }
ol.steps > li::before { content: counter(step); position: absolute; left: 0; top: .02em; width: 1.5em; height: 1.5em; line-height: 1.5em; text-align: center; border: 1px solid #4c585f; border-radius: 50%; font-size: .85em }
.working { display: grid; grid-template-columns: max-content 1fr; column-gap: .35em; align-items: baseline; margin: -.25em 0 -.25em .4em; padding: .8em 0; overflow-x: auto; overflow-y: hidden; break-inside: avoid }
.working > span { padding: .12em 0 }
p math { margin: 0 .06em 0 .03em }
.note { border-left: 3px solid #a8730a; padding-left: .7em; margin: .45em 0; color: #6b4600; font-size: .92em }
.answer { font-size: 1.25em; margin: .2em 0 }
.caution { border: 1px solid #6b4600; padding: .5em .8em; margin-top: 1.4em; font-size: .92em }
.record { border-top: 1px solid #d9d3c4; margin-top: 1.6em; padding-top: .5em; color: #4c585f; font-size: .85em }
table { border-collapse: collapse; margin: .5em 0 .5em .4em; break-inside: avoid; font-variant-numeric: tabular-nums }
th { font-weight: normal; color: #4c585f; border-bottom: 1px solid #1f2a30 }
th, td { padding: .15em .9em .15em 0; text-align: right }
th:first-child, td:first-child { text-align: left }
table.limits td, table.limits th { text-align: left; vertical-align: baseline; border: 0 }
table.limits th { font-weight: bold; color: #6b4600 }
table.limits th, table.limits td:nth-child(2) { white-space: nowrap }
svg.bar { display: block }
tr.total td { border-top: 1px solid #1f2a30 }
h2, h3 { break-after: avoid }
@media print { body { margin: 0; max-width: none; padding: 0 } .working { overflow: visible } }
)";

void appendParagraph(std::string& out, const Prose& prose, std::string_view cssClass = {}) {
    out += cssClass.empty() ? "<p>" : "<p class=\"" + std::string(cssClass) + "\">";
    out += toHtml(prose);
    out += "</p>\n";
}

void appendCell(std::string& out, const Formula& cell, std::string_view tag) {
    out.append("<").append(tag).append(">");
    out += cell.kind == FormulaKind::words ? xmlEscaped(cell.text) : toMathml(cell);
    out.append("</").append(tag).append(">");
}

void appendTable(std::string& out, const Table& table) {
    out += "<table>\n<thead><tr>";
    for (const Formula& cell : table.head)
        appendCell(out, cell, "th");
    out += "</tr></thead>\n<tbody>\n";
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        out += table.hasTotal && r + 1 == table.rows.size() ? "<tr class=\"total\">" : "<tr>";
        for (const Formula& cell : table.rows[r])
            appendCell(out, cell, "td");
        out += "</tr>\n";
    }
    out += "</tbody>\n</table>\n";
}

/// "= ..." as one formula, so that the relation sign is spaced as a relation.
std::string afterSign(const Formula& formula) {
    std::string math = toMathml(formula);
    return math.insert(std::string_view("<math>").size(), "<mo form=\"infix\">=</mo>");
}

constexpr std::size_t kWidest = 64; ///< characters of a sum that stand in the column

void appendWorking(std::string& out, const Working& working) {
    out += "<div class=\"working\">\n";
    bool first = true;
    for (const Formula* part : sidesOf(working)) {
        if (!working.subject) {
            out += "<span></span><span>" + toMathml(*part) + "</span>\n";
            continue;
        }
        out += "<span>" + (first ? toMathml(*working.subject) : std::string()) + "</span>";
        const std::vector<Formula> rows = explaining::rowsOf(*part, kWidest);
        for (std::size_t i = 0; i < rows.size(); ++i)
            out += i == 0 ? "<span>" + afterSign(rows[i]) + "</span>\n"
                          : "<span></span><span class=\"rest\">" + toMathml(rows[i]) + "</span>\n";
        first = false;
    }
    out += "</div>\n";
}

constexpr std::size_t kLongStep = 4; ///< workings

void appendStep(std::string& out, const Step& step) {
    // Kept whole, a long step would leave up to half a printed page empty.
    out += step.workings.size() >= kLongStep ? "<li class=\"long\">\n" : "<li>\n";
    out += "<h3>" + xmlEscaped(step.title) + "</h3>\n";
    for (const Prose& prose : step.reasoning)
        appendParagraph(out, prose, step.key == StepKey::answer ? "answer" : "");
    if (step.table)
        appendTable(out, *step.table);
    for (const Working& working : step.workings)
        appendWorking(out, working);
    for (const Prose& prose : step.conclusion)
        appendParagraph(out, prose);
    for (const Prose& prose : step.notes)
        appendParagraph(out, prose, "note");
    out += "</li>\n";
}

std::string_view withoutXmlHead(std::string_view svg) {
    const auto start = svg.find("<svg");
    return start == std::string_view::npos ? std::string_view() : svg.substr(start);
}

void appendSteps(std::string& out, const HandoutPart& steps) {
    out += "<h2>" + xmlEscaped(steps.heading) + "</h2>\n<ol class=\"steps\" style=\"counter-reset: step " +
           std::to_string(steps.first - 1) + "\">\n";
    for (const Step* step : steps.steps)
        appendStep(out, *step);
    out += "</ol>\n";
}

} // namespace

std::string htmlHead(std::string_view title, std::string_view moreStyle) {
    std::string out = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                      "<meta name=\"viewport\" content=\"width=device-width\"/>\n<title>";
    out.append(xmlEscaped(title)).append("</title>\n<style>\n");
    out.append("@font-face { font-family: \"Tailpoint Signs\"; src: url(data:font/ttf;base64,");
    out.append(signsFont()).append(") }").append(kStyle).append(moreStyle);
    return out + "</style>\n</head>\n";
}

std::string toHtml(const Statement& given, const Sentence& asked) {
    std::string out;
    if (!given.sentence.pieces.empty())
        appendParagraph(out, given.sentence, "statement");
    if (given.table)
        appendTable(out, *given.table);
    return asked.empty() ? out : out + "<p class=\"statement\">" + toHtml(proseOf(asked)) + "</p>\n";
}

std::string toHtml(const Working& working) {
    std::string out;
    appendWorking(out, working);
    return out;
}

std::string toHtml(const HandoutPart& part) {
    std::string out;
    appendSteps(out, part);
    return out;
}

std::string toHtml(const LegsTold& legs) {
    std::string out = "<h2>" + xmlEscaped(legs.heading) + "</h2>\n";
    appendTable(out, legs.table);
    for (const Prose& remark : legs.remarks)
        appendParagraph(out, remark, "note");
    return out;
}

std::string toHtml(const std::vector<LimitShown>& limits, std::string_view heading,
                   const Sentences* sentences) {
    const Voice voice(sentences);
    std::string out = "<h2>" + xmlEscaped(heading) + "</h2>\n<table class=\"limits\">\n";
    for (const LimitShown& limit : limits) {
        const char* tag = limit.verdict == Bound::within ? "td" : "th";
        out += "<tr><td>" + barSvg(limit.bar, limit.spoken) + "</td><" + tag + ">" +
               xmlEscaped(verdictWord(limit.verdict, sentences)) + "</" + tag + "><td>" +
               toHtml(limit.sentence) + "</td></tr>\n";
    }
    out += "</table>\n";
    appendParagraph(out, limitsRemark(voice));
    return out;
}

std::string toHtml(const Handout& handout) {
    const std::string title = titleOf(handout);
    std::string out = htmlHead(title);
    out.append("<body>\n<h1>").append(xmlEscaped(title)).append("</h1>\n");
    out += toHtml(handout.given, handout.question);
    if (const auto svg = withoutXmlHead(handout.figure); !svg.empty())
        out.append("<figure>\n").append(svg).append("\n</figure>\n");
    for (const HandoutPart& part : partsOf(handout))
        appendSteps(out, part);
    for (std::size_t i = 0; i < handout.limits.size(); ++i)
        out += toHtml(handout.limits[i], limitsHeading(handout, i), handout.sentences);
    for (const LegsTold& legs : handout.legs)
        out += toHtml(legs);
    for (const TableTold& told : handout.tables)
        out += toHtml(told);
    if (!handout.caution.empty())
        out += "<p class=\"caution\">" + xmlEscaped(handout.caution) + "</p>\n";
    if (!handout.record.empty())
        out += "<div class=\"record\">\n";
    for (const std::string& line : handout.record)
        out += "<p>" + xmlEscaped(line) + "</p>\n";
    out += handout.record.empty() ? "</body>\n</html>\n" : "</div>\n</body>\n</html>\n";
    return out;
}

} // namespace tailpoint
