// SPDX-License-Identifier: MIT
#include "ui/files/csv.h"

#include "ui/files/json_text.h"

#include <algorithm>

namespace tailpoint {

namespace {

bool isBlank(char c) {
    return c == ' ' || c == '\t';
}

bool isBreak(char c) {
    return c == '\n' || c == '\r';
}

std::string_view withoutBlanks(std::string_view text) {
    while (!text.empty() && isBlank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isBlank(text.back()))
        text.remove_suffix(1);
    return text;
}

/// Signs with which a formula begins, full-width ones too.
constexpr std::string_view kFormulaSigns[] = {"=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠"};

bool beginsAsFormula(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    return std::any_of(std::begin(kFormulaSigns), std::end(kFormulaSigns),
                       [&](std::string_view sign) { return text.starts_with(sign); });
}

/// Takes off what csvCell() puts in front.
std::string withoutMark(std::string text) {
    if (text.starts_with('\'') && beginsAsFormula(std::string_view(text).substr(1)))
        text.erase(0, 1);
    return text;
}

bool isFilled(const CsvRow& row) {
    return !row.fault.empty() || std::any_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) {
        return !withoutBlanks(cell).empty();
    });
}

/// Of the first line, outside quotation marks.
CsvForm formOf(std::string_view text) {
    CsvForm form;
    std::size_t commas = 0, semicolons = 0;
    bool isQuoted = false, hasSeen = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (c == '"')
            isQuoted = !isQuoted;
        if (isQuoted)
            continue;
        if (isBreak(c) && hasSeen) {
            form.isCrLf = c == '\r' && i + 1 < text.size() && text[i + 1] == '\n';
            break;
        }
        hasSeen = hasSeen || !isBreak(c);
        commas += c == ',';
        semicolons += c == ';';
    }
    form.separator = semicolons >= commas && semicolons > 0 ? ';' : ',';
    return form;
}

std::size_t digitsAt(std::string_view text, std::size_t at) {
    std::size_t end = at;
    while (end < text.size() && text[end] >= '0' && text[end] <= '9')
        ++end;
    return end - at;
}

bool isSign(std::string_view text, std::size_t at) {
    return at < text.size() && (text[at] == '+' || text[at] == '-');
}

} // namespace

CsvReader::CsvReader(std::string_view text) : m_text(text) {
    const bool isMarked = m_text.starts_with(kByteOrderMark);
    if (isMarked)
        m_text.remove_prefix(kByteOrderMark.size());
    m_form = formOf(m_text);
    m_form.isMarked = isMarked;
}

void CsvReader::takeBreak() {
    m_at += m_text.substr(m_at).starts_with("\r\n") ? 2 : 1;
    ++m_line;
}

/// Precondition: a quotation mark stands here. Line breaks within stay as they are.
CsvReader::Cell CsvReader::quotedCell() {
    Cell cell;
    ++m_at;
    for (;;) {
        if (isAtEnd()) {
            cell.fault = "a quotation mark is opened and never closed; close it or take it out";
            return cell;
        }
        if (m_text[m_at] == '"') {
            ++m_at;
            if (isAtEnd() || m_text[m_at] != '"')
                break;
            cell.text += m_text[m_at++];
        } else if (isAtBreak()) {
            const std::size_t begin = m_at;
            takeBreak();
            cell.text += m_text.substr(begin, m_at - begin);
        } else {
            cell.text += m_text[m_at++];
        }
    }
    while (!isAtEnd() && isBlank(m_text[m_at]) && m_text[m_at] != m_form.separator)
        ++m_at;
    if (!isAtEnd() && !isAtBreak() && m_text[m_at] != m_form.separator)
        cell.fault =
            "text stands behind a closing quotation mark; write a quotation mark within a cell twice";
    return cell;
}

std::string CsvReader::plainCell() {
    const std::size_t begin = m_at;
    while (!isAtEnd() && !isAtBreak() && m_text[m_at] != m_form.separator)
        ++m_at;
    return std::string(m_text.substr(begin, m_at - begin));
}

/// Blanks in front of a quotation mark don't count.
bool CsvReader::stripsBlanksBefore(char c) {
    std::size_t at = m_at;
    while (at < m_text.size() && isBlank(m_text[at]))
        ++at;
    if (at >= m_text.size() || m_text[at] != c)
        return false;
    m_at = at;
    return true;
}

/// Behind a cell: goes on to the next one, or over the line's end.
bool CsvReader::isLastCell() {
    const bool isLast = isAtEnd() || isAtBreak();
    if (!isLast)
        ++m_at; // the separator
    else if (!isAtEnd())
        takeBreak();
    return isLast;
}

/// Precondition: not at the end.
CsvRow CsvReader::row() {
    CsvRow row{m_line, {}, {}};
    for (;;) {
        Cell cell = stripsBlanksBefore('"') ? quotedCell() : Cell{plainCell(), {}};
        row.cells.push_back(withoutMark(std::move(cell.text)));
        if (!cell.fault.empty()) {
            row.fault = std::move(cell.fault);
            return row;
        }
        if (isLastCell())
            return row;
    }
}

/// One line, its quotation marks like other signs: so one that is wrong spoils no row but its own.
CsvRow CsvReader::asItStands() {
    CsvRow row{m_line, {}, {}};
    for (;;) {
        row.cells.push_back(withoutMark(plainCell()));
        if (isLastCell())
            return row;
    }
}

std::optional<CsvRow> CsvReader::next() {
    while (!isAtEnd()) {
        const std::size_t begin = m_at, line = m_line;
        CsvRow one = row();
        if (!one.fault.empty()) {
            m_at = begin;
            m_line = line;
            std::string fault = std::move(one.fault);
            one = asItStands();
            one.fault = std::move(fault);
        }
        if (isFilled(one))
            return one;
    }
    return std::nullopt;
}

bool isPlainNumber(std::string_view text) {
    text = withoutBlanks(text);
    std::size_t at = isSign(text, 0) ? 1 : 0, digits = digitsAt(text, at);
    at += digits;
    while (at < text.size() && (text[at] == '.' || text[at] == ',')) {
        const std::size_t more = digitsAt(text, at + 1);
        digits += more;
        at += 1 + more;
    }
    if (digits == 0)
        return false;
    if (at < text.size() && (text[at] == 'e' || text[at] == 'E')) {
        ++at;
        at += isSign(text, at) ? 1 : 0;
        const std::size_t exponent = digitsAt(text, at);
        return exponent > 0 && at + exponent == text.size();
    }
    return at == text.size();
}

std::string csvCell(std::string_view text, char separator) {
    std::string safe(text);
    if (beginsAsFormula(text) && !isPlainNumber(text))
        safe.insert(0, 1, '\'');
    const bool isEdged = !safe.empty() && (isBlank(safe.front()) || isBlank(safe.back()));
    if (!isEdged && safe.find_first_of("\"\r\n\t") == std::string::npos &&
        safe.find(separator) == std::string::npos)
        return safe;
    std::string out = "\"";
    for (const char c : safe) {
        out += c;
        if (c == '"')
            out += c;
    }
    return out + '"';
}

std::string csvLine(const std::vector<std::string>& cells, const CsvForm& form) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0)
            line += form.separator;
        line += csvCell(cells[i], form.separator);
    }
    return line + (form.isCrLf ? "\r\n" : "\n");
}

} // namespace tailpoint
