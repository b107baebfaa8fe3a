// SPDX-License-Identifier: MIT
// A worked solution as plain text, and as the fields of a report.
#include "core/explain/explain.h"
#include "core/explain/rows.h"
#include "core/formula/letters.h"

#include <algorithm>
#include <array>

namespace tailpoint {

namespace {

/// Characters as a terminal counts them: a combining arrow takes no room.
std::size_t columns(std::string_view text) {
    std::size_t n = 0;
    for (char32_t c : codePoints(text))
        n += c == 0x20D7 ? 0 : 1;
    return n;
}

/// "N" after "340": a number keeps its unit beside it.
bool isUnit(std::string_view word, std::string_view before) {
    while (!word.empty() && std::string_view(".,;:)").find(word.back()) != std::string_view::npos)
        word.remove_suffix(1);
    return beginsUnit(word) && !before.empty() && before.back() >= '0' && before.back() <= '9';
}

/// The next word, with the unit that belongs to it.
std::string_view takeWord(std::string_view& text) {
    auto end = std::min(text.find(' '), text.size());
    if (end < text.size()) {
        const auto next = std::min(text.find(' ', end + 1), text.size());
        if (isUnit(text.substr(end + 1, next - end - 1), text.substr(0, end)))
            end = next;
    }
    const std::string_view word = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    return word;
}

/// Greedy filling; lines after the first start with `indent` spaces.
void appendWrapped(std::string& out, std::string_view text, const std::string& indent, std::size_t width) {
    out += indent;
    std::size_t at = indent.size();
    bool first = true;
    while (!text.empty()) {
        const std::string_view word = takeWord(text);
        const std::size_t wide = columns(word);
        if (!first && at + 1 + wide > width) {
            out.append("\n").append(indent);
            at = indent.size();
        } else if (!first) {
            out += ' ';
            ++at;
        }
        out += word;
        at += wide;
        first = false;
    }
    out += '\n';
}

void appendJoined(std::string& out, std::string_view text) {
    if (text.empty())
        return;
    if (!out.empty())
        out += "; ";
    out += text;
}

std::string side(const std::optional<Formula>& subject, const Formula& formula, Minus minus) {
    std::string out;
    if (subject) {
        appendText(out, *subject, minus);
        out += " = ";
    }
    appendText(out, formula, minus);
    return out;
}

void appendTable(std::string& out, const Table& table, Minus minus) {
    std::vector<std::vector<std::string>> cells;
    const auto texts = [minus](const std::vector<Formula>& row) {
        std::vector<std::string> line;
        line.reserve(row.size());
        for (const Formula& cell : row)
            line.push_back(toText(cell, minus));
        return line;
    };
    cells.push_back(texts(table.head));
    for (const auto& row : table.rows)
        cells.push_back(texts(row));
    std::vector<std::size_t> widths(table.head.size(), 0);
    for (const auto& row : cells)
        for (std::size_t c = 0; c < row.size(); ++c)
            widths[c] = std::max(widths[c], columns(row[c]));
    std::size_t whole = 0;
    for (std::size_t w : widths)
        whole += w + 3;
    for (std::size_t r = 0; r < cells.size(); ++r) {
        if (r == 1 || (table.hasTotal && r + 1 == cells.size()))
            out.append("     ").append(whole - 3, '-').append("\n");
        out += "     ";
        for (std::size_t c = 0; c < cells[r].size(); ++c) {
            const std::size_t pad = widths[c] - columns(cells[r][c]);
            out.append(c == 0 ? 0 : pad, ' ').append(cells[r][c]);
            if (c + 1 < cells[r].size())
                out.append(c == 0 ? pad : 0, ' ').append("   ");
        }
        out += '\n';
    }
}

constexpr std::string_view kIndent = "     ";

void appendWorking(std::string& out, const Working& working, Minus minus, std::size_t width) {
    const std::string subject = working.subject ? toText(*working.subject, minus) + " = " : std::string();
    const std::size_t head = columns(subject);
    bool first = true;
    for (const Formula* part : sidesOf(working)) {
        out += kIndent;
        if (first)
            out += subject;
        else if (head > 0)
            out.append(head - 2, ' ').append("= ");
        bool rest = false;
        for (const Formula& row : explaining::textRowsOf(*part, width - kIndent.size() - head)) {
            if (rest)
                out.append(kIndent).append(head, ' ');
            appendText(out, row, minus);
            out += '\n';
            rest = true;
        }
        first = false;
    }
}

} // namespace

std::string_view nameOf(Method method) {
    switch (method) {
    case Method::triangle:
        return "triangle";
    case Method::components:
        return "components";
    case Method::suited:
        break;
    }
    return "suited";
}

Method methodFrom(std::string_view name) {
    for (const Method method : {Method::triangle, Method::components})
        if (nameOf(method) == name)
            return method;
    return Method::suited;
}

std::string_view nameOf(Law law) {
    static constexpr std::array<std::string_view, 4> names{"none", "cosines", "sines", "components"};
    return names[static_cast<std::size_t>(law)];
}

std::vector<const Formula*> sidesOf(const Working& working) {
    std::vector<const Formula*> sides;
    for (const auto* side :
         {&working.general, &working.substituted, working.told ? &working.told : &working.value})
        if (*side)
            sides.push_back(&**side);
    return sides;
}

std::vector<Formula> linesOf(const Working& working) {
    std::vector<Formula> lines;
    for (const Formula* part : sidesOf(working)) {
        if (!working.subject)
            lines.push_back(*part);
        else if (lines.empty())
            lines.push_back(equal(*working.subject, *part));
        else
            lines.push_back(equal(inWords({}), *part));
    }
    return lines;
}

StepFields fieldsOf(const Step& step, Minus minus) {
    StepFields fields;
    fields.title = step.title;
    fields.law = nameOf(step.law);
    for (const Working& working : step.workings) {
        if (working.general)
            appendJoined(fields.formula, side(working.subject, *working.general, minus));
        if (working.substituted)
            appendJoined(fields.substitution, side(working.subject, *working.substituted, minus));
        if (working.value)
            appendJoined(fields.result,
                         side(working.subject, working.told ? *working.told : *working.value, minus));
    }
    return fields;
}

std::string toText(const Step& step, Minus minus, std::size_t width) {
    std::string out;
    for (const Prose& prose : step.reasoning)
        appendWrapped(out, toText(prose, minus), "   ", width);
    if (step.table)
        appendTable(out, *step.table, minus);
    for (const Working& working : step.workings)
        appendWorking(out, working, minus, width);
    for (const Prose& prose : step.conclusion)
        appendWrapped(out, toText(prose, minus), "   ", width);
    for (const Prose& prose : step.notes)
        appendWrapped(out, toText(prose, minus), "   | ", width);
    return out;
}

std::string toText(const Worked& worked, Minus minus, std::size_t width, std::size_t from) {
    std::string out;
    for (std::size_t i = from; i < worked.steps.size(); ++i) {
        const std::string head = std::to_string(i + 1);
        out.append(i == from ? "" : "\n").append(head.size() < 2 ? " " : "").append(head).append(" ");
        out.append(worked.steps[i].title).append("\n");
        out += toText(worked.steps[i], minus, width);
    }
    return out;
}

} // namespace tailpoint
