// SPDX-License-Identifier: MIT
#include "ui/problems/sheet_html.h"

#include "core/explain/caution.h"
#include "core/quantity/text.h"
#include "core/sketch/shown.h"
#include "ui/handout/handout_blocks.h"
#include "ui/problems/sheet_pages.h"
#include "ui/problems/write_sheet.h"
#include "ui/render/render.h"
#include "ui/style/theme.h"

namespace tailpoint {

namespace {

constexpr std::string_view kStyle = R"(
section { break-before: page; border-top: 1px solid #1f2a30; margin-top: 2.4em; padding-top: .6em }
section:first-of-type { break-before: auto }
.head { display: flex; justify-content: space-between; gap: 2em; font-size: .82em; color: #4c585f; margin: 0 0 .8em }
.head b { color: #1f2a30; letter-spacing: .06em }
.line { display: inline-block; border-bottom: 1px solid #1f2a30; min-width: 14em }
figure svg { max-height: none }
.room svg { display: block; max-width: 100% }
.room .blank { height: 7cm }
.asked { display: flex; gap: 1.6em; margin: 1.2em 0 }
.asked span { flex: 1; display: flex; gap: .4em; align-items: baseline }
.asked i { flex: 1; border-bottom: 1px solid #1f2a30 }
.margin td, .margin th { text-align: left }
.margin td:first-child, .margin th:first-child { text-align: right }
.quiet { color: #4c585f; font-size: .9em }
@media print { section { border-top: 0; margin-top: 0; padding-top: 0; display: table; width: 100% }
.running { display: table-header-group; break-inside: avoid } .body { display: table-row-group } }
)";

std::string escaped(const QString& text) {
    return xmlEscaped(text.toStdString());
}

/// Ids are unique within a page: of several figures each has its own.
std::string figureHtml(DisplayList list, std::size_t index) {
    const std::string prefix = "p" + std::to_string(index + 1) + "-";
    for (Group& group : list.groups)
        group.id = prefix + group.id;
    QString svg = QString::fromUtf8(toSvg(list, printTheme(), {}));
    const QString own = QString::fromStdString(prefix);
    for (const char* id : {"title", "desc"}) // of the figure as a whole
        svg.replace(QStringLiteral(" id=\"%1\"").arg(QLatin1String(id)),
                    QStringLiteral(" id=\"%1%2\"").arg(own, QLatin1String(id)));
    svg.replace(QStringLiteral("aria-labelledby=\"title desc\""),
                QStringLiteral("aria-labelledby=\"%1title %1desc\"").arg(own));
    const qsizetype begin = svg.indexOf(QLatin1String("<svg"));
    return begin < 0 ? std::string() : "<figure>\n" + svg.mid(begin).toStdString() + "\n</figure>\n";
}

/// Squares of 1 cm, halved by fainter lines.
std::string gridHtml() {
    constexpr int across = 16, down = 7;
    const auto lines = [](bool isWhole) {
        std::string path;
        const auto at = [](int halves) { return std::to_string(halves / 2) + (halves % 2 ? ".5" : ""); };
        for (int i = isWhole ? 0 : 1; i <= 2 * across; i += 2)
            path += "M" + at(i) + " 0V" + std::to_string(down);
        for (int i = isWhole ? 0 : 1; i <= 2 * down; i += 2)
            path += "M0 " + at(i) + "H" + std::to_string(across);
        return path;
    };
    const auto stroke = [&](bool isWhole, const QColor& colour) {
        return "<path d=\"" + lines(isWhole) + "\" fill=\"none\" stroke=\"" + colour.name().toStdString() +
               "\" stroke-width=\"0.012\"/>\n";
    };
    const Theme& theme = printTheme();
    return "<svg width=\"16cm\" height=\"7cm\" viewBox=\"-0.01 -0.01 16.02 7.02\" aria-hidden=\"true\">\n" +
           stroke(false, theme.hairline) + stroke(true, theme.quietInk) + "</svg>\n";
}

std::string headHtml(const ProblemPlace& place, const std::string& code) {
    return "<div class=\"running\"><p class=\"head\"><span>" + escaped(place.title) + "</span><span>" +
           (place.student.isEmpty() ? "Name <span class=\"line\"></span>" : escaped(place.student)) +
           "</span><b>" + xmlEscaped(code) + "</b></p></div>\n<div class=\"body\">\n";
}

std::string problemHtml(const Problem& problem, const ProblemPlace& place, const SheetLook& look,
                        const TaskOnPage& task, std::size_t index) {
    const ExerciseFigure figure = figureOf(problem, look, kHandoutWidth * unitsInPoint());
    std::string out = "<section>\n" + headHtml(place, problem.code) + "<h1>" +
                      xmlEscaped(problemHeading(problem, place)) + "</h1>\n";
    out += problem.statement.empty()
               ? toHtml(statement(problem.sketch), question(problem.sketch))
               : "<p class=\"statement\">" + xmlEscaped(keptTogether(problem.statement)) + "</p>\n";
    out += figureHtml(figure.list, index);
    if (needsCaution(problem.sketch))
        out += "<p class=\"caution\">" + xmlEscaped(cautionLine()) + "</p>\n";
    out += taskHtml(task, problem.bothAnswers);
    out += "<div class=\"room\">\n<p class=\"quiet\">" + xmlEscaped(roomWords(problem, figure, look.grid)) +
           "</p>\n" + (look.grid ? gridHtml() : "<div class=\"blank\"></div>\n") + "</div>\n";
    for (const std::string& head : answerHeads(problem)) {
        out += "<p class=\"asked\"><b>" + head + "</b>";
        for (const Formula& symbol : askedSymbols(problem.sketch))
            out += "<span>" + toMathml(symbol) + " = <i></i></span>";
        out += "</p>\n";
    }
    return out + "</div>\n</section>\n";
}

std::string marginHtml(const SheetVariant& variant) {
    const auto lines = marginOf(variant.scheme);
    if (lines.empty())
        return {};
    std::string out = "<table class=\"margin\">\n<thead><tr><th>Number</th><th>for</th><th>Points of " +
                      pointsOf(variant.scheme) + "</th><th>Slip</th></tr></thead>\n<tbody>\n";
    for (const MarginLine& line : lines)
        out += "<tr><td>" + xmlEscaped(withMinusSigns(line.number)) + "</td><td>" + toMathml(line.symbol) +
               answerName(line.answer) + "</td><td>" + line.points + "</td><td>" + toHtml(line.slip) +
               "</td></tr>\n";
    return out + "</tbody>\n</table>\n<p class=\"quiet\">" + marginNote(variant.scheme) + "</p>\n";
}

std::string keyHtml(const SheetVariant& variant, const ProblemPlace& place, const TaskOnPage& task,
                    bool solution, std::size_t index) {
    const Problem& problem = variant.problem;
    std::string out = "<section>\n<div class=\"running\"><p class=\"head\"><span>" + escaped(place.student) +
                      "</span><b>" + xmlEscaped(problem.code) + "</b></p></div>\n<div class=\"body\">\n<h1>" +
                      xmlEscaped(problemHeading(problem, place)) + "</h1>\n";
    for (const Prose& line : answerLines(variant.scheme))
        out += "<p class=\"answer\">" + toHtml(line) + "</p>\n";
    out += "<p class=\"quiet\">" + toHtml(pointsLine(variant.scheme)) + "</p>\n" + taskKeyHtml(task);
    if (!task.flawed)
        out += marginHtml(variant);
    if (solution) {
        const KeySolution made = keySolution(problem.sketch);
        out += figureHtml(made.figure, index);
        for (const HandoutPart& part : partsOf(made.handout))
            out += toHtml(part);
        if (!made.handout.caution.empty())
            out += "<p class=\"caution\">" + xmlEscaped(made.handout.caution) + "</p>\n";
    }
    return out + "</div>\n</section>\n";
}

} // namespace

SheetHtml::SheetHtml(const ProblemSheet& sheet, const SheetLook& look)
    : m_sheet(sheet), m_look(look), m_title(titleOf(sheet)),
      m_pages(htmlHead(m_title.toStdString(), kStyle) + "<body>\n"),
      m_key(htmlHead("Key \u00B7 " + m_title.toStdString(),
                     std::string(kStyle) +
                         (look.solutions ? "" : "section { break-before: auto; break-inside: avoid }\n")) +
            "<body>\n<h1>Key \u00B7 " + escaped(m_title) + "</h1>\n") {}

SheetHtml::Part SheetHtml::part(std::size_t index, const TaskOnPage& task) const {
    const SheetVariant& variant = m_sheet.variants[index];
    const ProblemPlace place = placeOf(m_sheet, index, m_title);
    return {problemHtml(variant.problem, place, m_look, task, index),
            keyHtml(variant, place, task, m_look.solutions, index)};
}

std::vector<std::pair<QString, QByteArray>> SheetHtml::files() {
    constexpr std::string_view end = "</body>\n</html>\n";
    std::vector<std::pair<QString, QByteArray>> all;
    all.emplace_back(QStringLiteral("sheet.html"), QByteArray::fromStdString(m_pages.append(end)));
    all.emplace_back(QStringLiteral("key.html"), QByteArray::fromStdString(m_key.append(end)));
    return all;
}

} // namespace tailpoint
