// SPDX-License-Identifier: MIT
// marking/: answers of a whole class to one question, read from a table, marked row by row, and told as text,
// JSON, CSV or HTML. What an answer is worth says core/mark; nothing is computed here.
//
//   auto opened = ClassMarking::open(text, marker);            // text and marker outlive it
//   if (const auto* fault = std::get_if<ClassFault>(&opened)) ...
//   while (auto row = std::get<ClassMarking>(opened).next()) output.row(*row);      // class_output.h
#pragma once

#include "core/mark/mark.h"
#include "ui/files/csv.h"

namespace tailpoint {

/// What a marker decides in place of the program.
struct OwnPoints {
    double points = 0;
    std::string remark;
};

/// A student's row.
struct MarkedRow {
    std::size_t line = 0; ///< of the file, counted from 1
    std::string who;
    std::vector<std::string> cells; ///< of ClassMarking::columns(), as they stood
    std::vector<std::string> extra; ///< more cells than the first row has: what can't be read is kept too
    std::optional<Marking> marking; ///< empty: the row can't be read
    /// Then why, with the mend; beside a marking, why a cell of it is `unread`.
    std::string fault;
    std::optional<OwnPoints> own;
    std::string ownFault; ///< why they can't be read: the marker's affair, and the answers are marked
    double of = 0;        ///< points that can be had

    std::string faults() const;       ///< both, for who marks; empty: none
    double points() const;            ///< the marker's own, where there are such
    std::string_view verdict() const; ///< "unread" where it can't be read
    /// The likeliest slip; nullptr: none is named.
    const Finding* firstSlip() const;
};

/// Why a class can't be marked at all, with the mend. `line` 0: of the file as a whole.
struct ClassFault {
    std::size_t line = 0;
    std::string message;
};

/// The first column says who, the others are quantities of the question, in any order. A column `override`
/// has a marker's own points and a remark ("2: shown orally"). The columns that an output adds
/// (kAddedColumns) are passed over; one whose head stands in parentheses is kept and not marked.
class ClassMarking {
public:
    static std::variant<ClassMarking, ClassFault> open(std::string_view text, const Marker& marker);

    const CsvForm& form() const { return m_reader.form(); }
    /// Heads of the columns that are kept, as they stand in the file.
    const std::vector<std::string>& columns() const { return m_columns; }
    /// Which quantity each of them answers; nullptr: none. They are the marker's.
    std::vector<const Answerable*> answered() const;
    /// The next row, marked; empty at the end.
    std::optional<MarkedRow> next();
    /// The same without its marking.
    std::optional<MarkedRow> nextUnmarked();

private:
    enum class Kind { who, quantity, own, kept, added };
    struct Column {
        Kind kind = Kind::added;
        std::string name; ///< of the quantity, or as the head has it
    };
    ClassMarking(CsvReader reader, const Marker& marker);
    std::optional<ClassFault> readHead(const CsvRow& head);
    std::variant<Column, std::string> columnOf(const std::string& name, std::size_t index) const;
    MarkedRow unmarked(const CsvRow& row) const;
    void mark(const CsvRow& row, MarkedRow& marked) const;

    std::optional<CsvRow> nextRow();

    CsvReader m_reader;
    const Marker* m_marker;
    std::vector<Column> m_all;
    std::vector<std::string> m_columns;
};

/// What an output of ours adds to the columns.
inline constexpr std::string_view kAddedColumns[] = {"verdict", "points", "slip", "sentence"};
inline constexpr std::string_view kOwnPointsColumn = "override";

/// "2: shown orally", "1,5", of at most `of` points; or what is wrong with it and the mend.
std::variant<OwnPoints, std::string> readOwnPoints(std::string_view text, double of);

} // namespace tailpoint
