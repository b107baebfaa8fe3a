// SPDX-License-Identifier: MIT
// Tables as spreadsheets write and read them: cells parted by commas or semicolons. What is written can't act
// as a formula where it is opened.
// Source: RFC 4180 for quotation marks and line breaks within cells.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tailpoint {

/// How a file is written, so that what is made from it is written in the same way.
struct CsvForm {
    char separator = ',';
    bool isMarked = false; ///< a UTF-8 byte order mark in front
    bool isCrLf = false;   ///< line ends
    /// Where commas are decimal marks, semicolons part the cells.
    char decimalMark() const { return separator == ';' ? ',' : '.'; }
};

struct CsvRow {
    std::size_t line = 0; ///< of the file, counted from 1, in which the row begins
    std::vector<std::string> cells;
    /// What is wrong with its quotation marks, with the mend; the row is then one line, its cells as they
    /// stand there. Empty: nothing.
    std::string fault;
};

/// Reads row by row and keeps no more than one.
class CsvReader {
public:
    /// `text`: UTF-8, kept alive by the caller. Its first row decides about separator and line ends: a
    /// separator is whatever stands there more often outside quotation marks, the semicolon where neither is.
    explicit CsvReader(std::string_view text);

    const CsvForm& form() const { return m_form; }
    /// The next row in which any cell is filled; empty at the end. The mark by which csvCell() keeps a text
    /// from being a formula is taken off.
    std::optional<CsvRow> next();

private:
    struct Cell {
        std::string text, fault;
    };
    Cell quotedCell();
    std::string plainCell();
    CsvRow row();
    CsvRow asItStands();
    bool isAtEnd() const { return m_at >= m_text.size(); }
    bool isAtBreak() const { return m_text[m_at] == '\n' || m_text[m_at] == '\r'; }
    void takeBreak();
    bool isLastCell();
    bool stripsBlanksBefore(char c);

    std::string_view m_text;
    std::size_t m_at = 0, m_line = 1;
    CsvForm m_form;
};

/// "-3.6", "+1,5", "2e3": a number and nothing else.
bool isPlainNumber(std::string_view text);

/// A cell as it is written: in quotation marks where that is needed, and with an apostrophe in front where a
/// spreadsheet would take it for a formula (=, +, -, @, a tab or a line end in front; a number stays one).
std::string csvCell(std::string_view text, char separator = ',');
/// A whole line with its end.
std::string csvLine(const std::vector<std::string>& cells, const CsvForm& form);

} // namespace tailpoint
