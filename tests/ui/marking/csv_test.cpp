// SPDX-License-Identifier: MIT
// Tables as they come from spreadsheets, and cells that can't act as formulas where they go.
#include "ui/files/csv.h"

#include <gtest/gtest.h>

#include <random>

namespace tailpoint {
namespace TAILPOINT_FILE {

using Cells = std::vector<std::string>;

std::vector<CsvRow> rowsOf(std::string_view text) {
    CsvReader reader(text);
    std::vector<CsvRow> rows;
    while (auto row = reader.next())
        rows.push_back(std::move(*row));
    return rows;
}

Cells cellsOf(std::string_view line) {
    const auto rows = rowsOf(line);
    EXPECT_EQ(rows.size(), 1U) << line;
    return rows.empty() ? Cells() : rows.front().cells;
}

TEST(ReadingATable, TakesCommasOrSemicolonsAsTheFirstRowHasThem) {
    EXPECT_EQ(cellsOf("who,R,theta_R"), (Cells{"who", "R", "theta_R"}));
    EXPECT_EQ(cellsOf("who;R;theta_R"), (Cells{"who", "R", "theta_R"}));
    EXPECT_EQ(cellsOf("name, given name;R;theta_R"), (Cells{"name, given name", "R", "theta_R"}));
    EXPECT_EQ(cellsOf("\"a;b;c\",R"), (Cells{"a;b;c", "R"})) << "within quotation marks nothing is counted";
    EXPECT_EQ(rowsOf("who;R\ns1;1,5\n").at(1).cells, (Cells{"s1", "1,5"}));
}

TEST(ReadingATable, TakesEveryLineEndAndALastLineWithoutOne) {
    for (const char* text :
         {"a,b\n1,2\n3,4", "a,b\r\n1,2\r\n3,4\r\n", "a,b\r1,2\r3,4\r", "\na,b\n\n1,2\n \n3,4\n\n"}) {
        const auto rows = rowsOf(text);
        ASSERT_EQ(rows.size(), 3U) << text;
        EXPECT_EQ(rows[2].cells, (Cells{"3", "4"})) << text;
    }
    EXPECT_TRUE(CsvReader("a\r\nb").form().isCrLf);
    EXPECT_FALSE(CsvReader("a\nb\r\n").form().isCrLf);
}

TEST(ReadingATable, PassesOverAByteOrderMarkAndRemembersIt) {
    EXPECT_EQ(cellsOf("\xEF\xBB\xBFwho,R"), (Cells{"who", "R"}));
    EXPECT_TRUE(CsvReader("\xEF\xBB\xBFwho,R").form().isMarked);
    EXPECT_FALSE(CsvReader("who,R").form().isMarked);
}

TEST(ReadingATable, UnfoldsQuotedCells) {
    EXPECT_EQ(cellsOf(R"("Li, ""Leo""",12)"), (Cells{R"(Li, "Leo")", "12"}));
    EXPECT_EQ(cellsOf("\"two\nlines\", \"b\" ,c"), (Cells{"two\nlines", "b", "c"}));
    EXPECT_EQ(cellsOf("\"\",\"\"\"\",x"), (Cells{"", "\"", "x"}));
    EXPECT_EQ(cellsOf("5\" rope,2"), (Cells{"5\" rope", "2"}))
        << "a mark within a cell is a sign like others";
}

TEST(ReadingATable, CountsTheLinesOfTheFileBrokenCellsToo) {
    const auto rows = rowsOf("a,b\n\"x\ny\",1\r\n\nc,2\n");
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].line, 1U);
    EXPECT_EQ(rows[1].line, 2U);
    EXPECT_EQ(rows[2].line, 5U);
}

TEST(ReadingATable, LetsAWrongQuotationMarkSpoilItsOwnRowOnly) {
    const auto rows = rowsOf("who,R\n\"s1,1\ns2,2\n\"s3\"x,3\ns4,\"4\"\ns5,\"5");
    ASSERT_EQ(rows.size(), 6U);
    EXPECT_NE(rows[1].fault, "");
    EXPECT_EQ(rows[1].cells, (Cells{"\"s1", "1"}));
    EXPECT_EQ(rows[2].fault, "");
    EXPECT_EQ(rows[2].cells, (Cells{"s2", "2"}));
    EXPECT_NE(rows[3].fault.find("twice"), std::string::npos);
    EXPECT_EQ(rows[4].cells, (Cells{"s4", "4"}));
    EXPECT_NE(rows[5].fault.find("never closed"), std::string::npos);
    EXPECT_EQ(rows[5].line, 6U);
}

TEST(ReadingATable, HasNoRowsWhereNothingIsFilled) {
    for (const char* text : {"", "\n\n", "\xEF\xBB\xBF", ",,,\r\n,\n", " \t \n\"\",\" \"\n"})
        EXPECT_TRUE(rowsOf(text).empty()) << text;
}

TEST(WritingACell, LeavesNoFormulaForASpreadsheet) {
    // Source: signs with which spreadsheets begin a formula, common practice, no source
    for (const char* text : {"=1+1", "+1+1", "-1+1", "@SUM(A1)", "-2+3+cmd|' /C calc'!A0", "=", "-", "+",
                             "  =1", "-8.7; -77.3", "-3.6°", "＝1", "－1"}) {
        const std::string cell = csvCell(text);
        const std::string shown = cell.starts_with('"') ? cell.substr(1) : cell;
        EXPECT_EQ(shown.front(), '\'') << text;
        EXPECT_EQ(rowsOf("a,b\nx," + cell).at(1).cells.at(1), text) << "and comes back as it was";
    }
    EXPECT_EQ(csvCell("\t=1"), "\"'\t=1\"");
    EXPECT_EQ(csvCell("\r=1"), "\"'\r=1\"");
}

TEST(WritingACell, LeavesNumbersNumbers) {
    for (const char* text : {"-3.6", "+12", "-3,6", "-1.2e-3", "520", "-1,234.5", "-.5"})
        EXPECT_EQ(csvCell(text).find('\''), std::string::npos) << text;
    EXPECT_TRUE(isPlainNumber("-1.2e-3"));
    for (const char* text : {"", "-", ".", "1e", "1+1", "--1", "1 2", "-e3", "0x10"})
        EXPECT_FALSE(isPlainNumber(text)) << text;
}

TEST(WritingALine, KeepsTheFormOfTheFile) {
    EXPECT_EQ(csvLine({"a", "b;c", "d"}, {';', false, true}), "a;\"b;c\";d\r\n");
    EXPECT_EQ(csvLine({"a", "", " b"}, {}), "a,,\" b\"\n");
    EXPECT_EQ((CsvForm{';', false, false}.decimalMark()), ',');
    EXPECT_EQ(CsvForm{}.decimalMark(), '.');
}

TEST(Tables, AreReadAsTheyWereWrittenWhateverIsInThem) {
    const std::vector<std::string> signs{"a",  "1",  "=",    "+",  "-", "@", "'",  "\"",           ",", ";",
                                         "\n", "\r", "\r\n", "\t", " ", "é", "名", "\xEF\xBB\xBF", "−"};
    constexpr unsigned seed = 20261129;
    std::mt19937 random(seed);
    const auto pick = [&](std::size_t most) {
        return std::uniform_int_distribution<std::size_t>(0, most)(random);
    };
    for (int i = 0; i < 20'000; ++i) {
        const CsvForm form{pick(1) == 0 ? ',' : ';', pick(1) == 0, pick(1) == 0};
        Cells cells;
        for (std::size_t cell = 0, count = pick(3); cell <= count; ++cell) {
            std::string text;
            for (std::size_t sign = 0, length = pick(5); sign < length; ++sign)
                text += signs[pick(signs.size() - 1)];
            // an apostrophe in front of a formula is the mark that is taken off
            cells.push_back(text.starts_with('\'') ? "a" + text : text);
        }
        const std::string text = csvLine({"x", "y", "z", "w"}, form) + csvLine(cells, form);
        const auto rows = rowsOf(text);
        const bool isFilled = std::any_of(cells.begin(), cells.end(), [](const std::string& cell) {
            return cell.find_first_not_of(" \t") != std::string::npos;
        });
        ASSERT_EQ(rows.size(), isFilled ? 2U : 1U) << "seed " << seed << ", case " << i << ": " << text;
        if (isFilled) {
            ASSERT_EQ(rows[1].cells, cells) << "seed " << seed << ", case " << i << ": " << text;
            ASSERT_EQ(rows[1].fault, "");
        }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
