// SPDX-License-Identifier: MIT
#include "ui/files/report_lines.h"

#include "core/quantity/units.h"
#include "core/quantity/utf8.h"

#include <algorithm>
#include <string_view>

namespace tailpoint::report {

namespace {

/// Where the word that begins at `at` ends; a unit stays with its number.
std::size_t wordEnd(const std::string& text, std::size_t at) {
    std::size_t end = std::min(text.find(' ', at), text.size());
    if (end == text.size() || end == at || text[end - 1] < '0' || text[end - 1] > '9')
        return end;
    const std::string_view next = std::string_view(text).substr(end + 1);
    return beginsUnit(next.substr(0, next.find_first_of(" .,;:)")))
               ? std::min(text.find(' ', end + 1), text.size())
               : end;
}

} // namespace

std::string table(const Rows& rows) {
    std::vector<std::size_t> widths;
    for (const auto& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i) {
            widths.resize(std::max(widths.size(), i + 1));
            widths[i] = std::max(widths[i], characterCount(row[i]));
        }
    std::string out;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string gap(widths[i] - characterCount(row[i]), ' ');
            line += i == 0 ? "  " + row[i] + gap : "   " + gap + row[i];
        }
        out += line.substr(0, line.find_last_not_of(' ') + 1) + '\n';
    }
    return out;
}

std::string paragraph(const std::string& text) {
    std::string out, line;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = wordEnd(text, at);
        const std::string word = text.substr(at, end - at);
        if (!line.empty() && characterCount(line) + 1 + characterCount(word) > kColumns - 2) {
            out += "  " + line + '\n';
            line.clear();
        }
        line += (line.empty() ? "" : " ") + word;
        at = end + 1;
    }
    return line.empty() ? out : out + "  " + line + '\n';
}

std::string heading(const std::string& text) {
    return '\n' + text + '\n';
}

} // namespace tailpoint::report
