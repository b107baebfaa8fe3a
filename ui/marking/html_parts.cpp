// SPDX-License-Identifier: MIT
#include "ui/marking/html_parts.h"

#include "core/explain/handout.h"

#include <algorithm>
#include <array>
#include <utility>

namespace tailpoint::marking_pages {

std::string_view style() {
    return R"(
table.marks { width: 100%; margin-left: 0 }
table.marks th, table.marks td { text-align: left; vertical-align: top; padding: .3em .9em .3em 0; overflow-wrap: break-word; min-width: 4.5em }
table.marks td { border-bottom: 1px solid #d9d3c4 }
table.marks th.n, table.marks td.n { text-align: right; white-space: nowrap; padding-right: 0 }
table.marks td.words, table.marks .verdict { overflow-wrap: normal }
.scrolls { overflow-x: auto; max-width: 100% }
.about { font-weight: bold; line-height: 1.8; margin: .4em 0 0; padding-bottom: .15em }
.legend { display: grid; grid-template-columns: max-content 1fr; gap: .15em 1em; font-size: .85em; color: #4c585f; margin: .6em 0 }
.legend dt { font-weight: bold }
.legend dd { margin: 0 }
table.many { font-size: .82em }
table.many th, table.many td { min-width: 0; padding-right: .5em }
table.marks tr.told td { padding-left: 1.4em; font-size: .92em; color: #6b4600 }
table.marks { break-inside: auto }
table.marks tr { break-inside: avoid }
.verdict { display: block; font-size: .85em; color: #4c585f }
.verdict.wrong { color: #8a3b12 }
.total { margin: .6em 0 }
section.slip { margin: 0 0 1.4em; break-inside: avoid }
section.slip ul { margin: .2em 0; padding-left: 1.4em }
section.slip h3 .count, .names { font-weight: normal; color: #4c585f }
.beside { display: flex; flex-wrap: wrap; gap: .6em 2.2em; margin: .5em 0 .6em; break-inside: avoid }
.beside > div { min-width: 0; border-left: 2px solid #d9d3c4; padding-left: .8em; max-width: 100% }
.beside > div.changed { border-left-color: #a8730a }
.beside h4 { font-size: .8em; font-weight: normal; color: #4c585f; margin: 0 }
.beside .working { margin: 0; padding: .35em 0 }
.ask { font-size: 1.1em; border-left: 3px solid #1f5f7a; padding-left: .7em; margin: .9em 0 }
.beside .working, section.slip p { overflow-x: auto; max-width: 100% }
figure.tally svg { max-height: none; margin: 0 }
@media (max-width: 40em) { body { padding-left: 1em; padding-right: 1em } .beside { display: block } .beside > div { margin-bottom: .6em } table.marks th, table.marks td { min-width: 0; padding-right: .6em } }
@media print { table.marks thead { display: table-header-group } .scrolls, section.slip p { overflow: visible } table.marks th, table.marks td { overflow-wrap: anywhere } }
)";
}

namespace {

/// The words for verdicts, everywhere the same, and what they mean.
constexpr std::array<std::pair<std::string_view, std::string_view>, 10> kMeanings{
    {{"right", "right"},
     {"rounded", "right within rounding"},
     {"unit", "right but for the unit"},
     {"axis", "right but for the axis or the turn it is counted from"},
     {"follows", "wrong, and right for an earlier wrong value"},
     {"slip", "wrong, and a usual slip gives exactly this"},
     {"other", "wrong, and nothing known gives it"},
     {"missing", "not given"},
     {"incomplete", "not all that is asked is given"},
     {"unread", "could not be read, as a whole or in part"}}};

} // namespace

std::string printable(std::string_view text) {
    std::string shown;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        shown += byte < 0x20 || byte == 0x7F ? ' ' : c;
    }
    for (const std::string_view none : {"\xEF\xBF\xBE", "\xEF\xBF\xBF"}) // no characters, in XML least of all
        for (auto at = shown.find(none); at != std::string::npos; at = shown.find(none))
            shown.erase(at, none.size());
    return shown;
}

std::string safe(std::string_view text) {
    return xmlEscaped(printable(text));
}

std::string person(std::string_view who) {
    return "<bdi>" + safe(who) + "</bdi>";
}

std::string_view meaningOf(std::string_view verdict) {
    for (const auto& [word, meaning] : kMeanings)
        if (word == verdict)
            return meaning;
    return {};
}

std::string legend(const std::set<std::string, std::less<>>& verdicts) {
    std::string out;
    for (const auto& [word, meaning] : kMeanings)
        if (word != "right" && verdicts.contains(word))
            out += "<dt>" + std::string(word) + "</dt><dd>" + std::string(meaning) + "</dd>\n";
    return out.empty() ? out : "<dl class=\"legend\">\n" + out + "</dl>\n";
}

namespace {

std::string hedged(std::string_view id, bool isStrong) {
    return (isStrong ? "" : "may be: ") + slipName(id);
}

} // namespace

std::string slipWords(const Finding& finding) {
    return hedged(finding.id, finding.isStrong);
}

std::string heading(std::string_view id, bool isStrong) {
    std::string name = hedged(id, isStrong);
    if (!name.empty() && name.front() >= 'a' && name.front() <= 'z')
        name.front() = static_cast<char>(name.front() - 'a' + 'A');
    return safe(name);
}

namespace {

/// Where nothing stands in front of the first sign of equality, what is worked out does.
std::string workingHtml(Working working) {
    for (auto* side : {&working.general, &working.substituted})
        if (!working.subject && *side)
            working.subject = std::exchange(*side, std::nullopt);
    return toHtml(working);
}

} // namespace

std::string linesHtml(const Finding& finding) {
    std::string out;
    for (const ChangedLine& line : finding.lines) {
        out += "<div class=\"beside\">\n";
        if (line.right)
            out += "<div><h4>As it should be</h4>" + workingHtml(*line.right) + "</div>\n";
        out += "<div class=\"changed\"><h4>What gives this number</h4>" + workingHtml(line.changed) +
               "</div>\n</div>\n";
    }
    return out;
}

std::string cautionHtml(const std::string& caution) {
    return caution.empty() ? caution : "<p class=\"caution\">" + safe(caution) + "</p>\n";
}

std::string findingHtml(const Finding& finding) {
    std::string out = "<p class=\"about\">" + toHtml(finding.about) + "</p>\n<p>" + toHtml(finding.sentence) +
                      "</p>\n" + linesHtml(finding);
    out += "<p>" + toHtml(finding.mend) + "</p>\n";
    if (finding.readings.empty())
        return out;
    out += "<p>Something else leads to the same:</p>\n<ul>\n";
    for (const Prose& reading : finding.readings)
        out += "<li>" + toHtml(reading) + "</li>\n";
    return out + "</ul>\n";
}

std::string pointsHtml(const MarkedRow& row) {
    std::string out =
        pointsText(row.points()) + " of " + pointsText(row.of) + (row.of == 1 ? " point" : " points");
    if (row.own)
        out +=
            ", set by the marker" + (row.own->remark.empty() ? std::string() : ": " + safe(row.own->remark));
    return out;
}

namespace {

/// Each name above its bar, so that the picture is no wider than a narrow screen.
constexpr int kWidth = 440, kLeft = 2, kBars = 390, kRow = 42, kName = 15, kBar = 18, kTop = 6;

std::string svgText(int x, int y, const std::string& text) {
    return "<text x=\"" + std::to_string(x) + "\" y=\"" + std::to_string(y) + "\">" + text + "</text>\n";
}

std::string bar(const SlipTally::Entry& entry, int index, std::size_t most) {
    const int y = kTop + index * kRow;
    const auto share = static_cast<double>(entry.count) / static_cast<double>(most);
    const int width = std::max(2, static_cast<int>(share * kBars));
    return svgText(kLeft, y + kName - 3, safe(slipName(entry.id))) + "<rect x=\"" + std::to_string(kLeft) +
           "\" y=\"" + std::to_string(y + kName) + "\" width=\"" + std::to_string(width) + "\" height=\"" +
           std::to_string(kBar) + "\" fill=\"#1f5f7a\"/>\n" +
           svgText(kLeft + width + 8, y + kName + kBar - 5, std::to_string(entry.count));
}

std::string inWords(const std::vector<SlipTally::Entry>& entries, std::size_t of) {
    std::string out = "Of " + std::to_string(of) + " answers: ";
    for (std::size_t i = 0; i < entries.size(); ++i)
        out += (i == 0 ? "" : ", ") + std::to_string(entries[i].count) + " with " + slipName(entries[i].id);
    return out + '.';
}

} // namespace

std::string tallySvg(const std::vector<SlipTally::Entry>& entries, std::size_t of) {
    if (entries.empty())
        return {};
    const int height = 2 * kTop + kRow * static_cast<int>(entries.size());
    std::string out =
        "<figure class=\"tally\">\n<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" "
        "aria-labelledby=\"tally-title tally-words\" viewBox=\"0 0 " +
        std::to_string(kWidth) + ' ' + std::to_string(height) + "\" width=\"" + std::to_string(kWidth) +
        "\" height=\"" + std::to_string(height) +
        "\" font-family=\"Helvetica Neue, Arial, DejaVu Sans, sans-serif\" font-size=\"13\" "
        "fill=\"#1f2a30\">\n<title id=\"tally-title\">How often each slip is named first</title>\n"
        "<desc id=\"tally-words\">" +
        safe(inWords(entries, of)) + "</desc>\n";
    for (std::size_t i = 0; i < entries.size(); ++i)
        out += bar(entries[i], static_cast<int>(i), entries.front().count);
    return out + "</svg>\n</figure>\n";
}

} // namespace tailpoint::marking_pages
