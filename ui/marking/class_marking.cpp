// SPDX-License-Identifier: MIT
#include "ui/marking/class_marking.h"

#include "core/quantity/decimals.h"
#include "core/quantity/text.h"
#include "core/quantity/utf8.h"

#include <algorithm>
#include <charconv>

namespace tailpoint {

namespace {

std::string trimmed(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n";
    const auto begin = text.find_first_not_of(blanks);
    if (begin == std::string_view::npos)
        return {};
    return std::string(text.substr(begin, text.find_last_not_of(blanks) - begin + 1));
}

std::string inMarks(std::string_view text) {
    return '\'' + oneLine(text) + '\'';
}

std::string namesOf(const Marker& marker) {
    constexpr std::size_t most = 24;
    std::string names;
    const auto& all = marker.quantities();
    for (std::size_t i = 0; i < all.size() && i < most; ++i)
        names += (i == 0 ? "" : ", ") + all[i].name;
    return names + (all.size() > most ? ", ..." : "");
}

void dropEmptyEnd(std::vector<std::string>& cells) {
    while (!cells.empty() && trimmed(cells.back()).empty())
        cells.pop_back();
}

std::size_t lineAt(std::string_view text, std::size_t offset) {
    return 1 + static_cast<std::size_t>(
                   std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(offset), '\n'));
}

std::optional<ClassFault> faultOfBytes(std::string_view text) {
    constexpr std::string_view mend = "save it as CSV in UTF-8";
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF"))
        return ClassFault{0, "is UTF-16; " + std::string(mend)};
    if (text.starts_with("PK\x03\x04"))
        return ClassFault{0, "is a workbook or an archive; " + std::string(mend)};
    if (const std::size_t at = firstNonUtf8(text); at != std::string_view::npos)
        return ClassFault{lineAt(text, at), "is not UTF-8; " + std::string(mend)};
    return std::nullopt;
}

} // namespace

std::string MarkedRow::faults() const {
    return fault + (fault.empty() || ownFault.empty() ? "" : "; ") + ownFault;
}

double MarkedRow::points() const {
    if (own)
        return own->points;
    return marking ? marking->points : 0;
}

std::string_view MarkedRow::verdict() const {
    return marking ? nameOf(marking->verdict) : std::string_view("unread");
}

const Finding* MarkedRow::firstSlip() const {
    return marking && !marking->slips.empty() ? &marking->slips.front() : nullptr;
}

ClassMarking::ClassMarking(CsvReader reader, const Marker& marker) : m_reader(reader), m_marker(&marker) {}

std::variant<ClassMarking, ClassFault> ClassMarking::open(std::string_view text, const Marker& marker) {
    if (const auto fault = faultOfBytes(text))
        return *fault;
    ClassMarking opened(CsvReader(text), marker);
    const auto head = opened.m_reader.next();
    if (!head)
        return ClassFault{
            0, "is empty; the first row names the columns: who, then quantities of the question (" +
                   namesOf(marker) + ")"};
    if (!head->fault.empty())
        return ClassFault{head->line, head->fault};
    if (const auto fault = opened.readHead(*head))
        return *fault;
    return opened;
}

std::variant<ClassMarking::Column, std::string> ClassMarking::columnOf(const std::string& name,
                                                                       std::size_t index) const {
    const Answerable* quantity = m_marker->named(name);
    if (index == 0)
        return quantity == nullptr ? std::variant<Column, std::string>(Column{Kind::who, {}})
                                   : "the first column says who; put one in front of " + inMarks(name);
    if (quantity != nullptr)
        return Column{Kind::quantity, quantity->name};
    if (name == kOwnPointsColumn)
        return Column{Kind::own, std::string(kOwnPointsColumn)};
    if (std::find(std::begin(kAddedColumns), std::end(kAddedColumns), name) != std::end(kAddedColumns))
        return Column{Kind::added, name};
    if (name.size() > 2 && name.front() == '(' && name.back() == ')')
        return Column{Kind::kept, name};
    if (name.empty())
        return "column " + std::to_string(index + 1) + " has no name; name a quantity of the question (" +
               namesOf(*m_marker) + ") or take the column out";
    return inMarks(name) +
           " is no quantity of this question; the first row names the columns: who, then any of " +
           namesOf(*m_marker) + "; a column that is not to be marked has its name in parentheses";
}

std::optional<ClassFault> ClassMarking::readHead(const CsvRow& head) {
    std::vector<std::string> names = head.cells;
    dropEmptyEnd(names);
    bool hasQuantity = false;
    for (std::size_t i = 0; i < names.size(); ++i) {
        const auto column = columnOf(trimmed(names[i]), i);
        if (const auto* fault = std::get_if<std::string>(&column))
            return ClassFault{head.line, *fault};
        const auto& one = std::get<Column>(column);
        for (const Column& other : m_all)
            if (one.kind != Kind::who && other.kind != Kind::who && other.name == one.name)
                return ClassFault{head.line,
                                  inMarks(one.name) + " stands twice; take one of the columns out"};
        hasQuantity = hasQuantity || one.kind == Kind::quantity;
        m_all.push_back(one);
        if (one.kind != Kind::added)
            m_columns.push_back(names[i]);
    }
    if (!hasQuantity)
        return ClassFault{head.line,
                          "no column has answers; the first row names the columns: who, then any of " +
                              namesOf(*m_marker)};
    return std::nullopt;
}

std::vector<const Answerable*> ClassMarking::answered() const {
    std::vector<const Answerable*> quantities;
    for (const Column& column : m_all)
        if (column.kind != Kind::added)
            quantities.push_back(column.kind == Kind::quantity ? m_marker->named(column.name) : nullptr);
    return quantities;
}

void ClassMarking::mark(const CsvRow& row, MarkedRow& marked) const {
    std::vector<std::string> answers;
    std::vector<UnreadValue> unread;
    for (std::size_t i = 0; i < row.cells.size() && i < m_all.size(); ++i) {
        if (m_all[i].kind != Kind::quantity || trimmed(row.cells[i]).empty())
            continue;
        const auto value = m_marker->read(m_all[i].name, row.cells[i]);
        if (const auto* fault = std::get_if<AttemptFault>(&value)) {
            unread.push_back({m_marker->named(m_all[i].name)->id, oneLine(trimmed(row.cells[i]))});
            marked.fault += (marked.fault.empty() ? "" : "; ") + fault->message;
        } else {
            answers.push_back(m_all[i].name + " = " + row.cells[i]);
        }
    }
    auto read = m_marker->read(answers);
    if (const auto* fault = std::get_if<AttemptFault>(&read)) { // one value, and two
        marked.fault += (marked.fault.empty() ? "" : "; ") + fault->message;
        return;
    }
    auto& attempt = std::get<Attempt>(read);
    attempt.unread = std::move(unread);
    marked.marking = m_marker->mark(attempt);
}

std::optional<CsvRow> ClassMarking::nextRow() {
    auto row = m_reader.next();
    if (row)
        dropEmptyEnd(row->cells);
    return row;
}

MarkedRow ClassMarking::unmarked(const CsvRow& row) const {
    MarkedRow marked;
    marked.line = row.line;
    marked.of = m_marker->of();
    marked.fault = row.fault;
    for (std::size_t i = m_all.size(); i < row.cells.size(); ++i)
        marked.extra.push_back(row.cells[i]);
    if (marked.fault.empty() && !marked.extra.empty())
        marked.fault = "the row has more cells than the first row has names; put a cell with a comma or a "
                       "semicolon within it in quotation marks";
    for (std::size_t i = 0; i < m_all.size(); ++i) {
        const std::string cell = i < row.cells.size() ? row.cells[i] : std::string();
        if (m_all[i].kind == Kind::who)
            marked.who = trimmed(cell);
        if (m_all[i].kind == Kind::own && marked.fault.empty() && !trimmed(cell).empty()) {
            auto own = readOwnPoints(cell, marked.of);
            if (auto* fault = std::get_if<std::string>(&own))
                marked.ownFault = std::move(*fault);
            else
                marked.own = std::get<OwnPoints>(std::move(own));
        }
        if (m_all[i].kind != Kind::added)
            marked.cells.push_back(cell);
    }
    return marked;
}

std::optional<MarkedRow> ClassMarking::nextUnmarked() {
    const auto row = nextRow();
    return row ? std::optional(unmarked(*row)) : std::nullopt;
}

std::optional<MarkedRow> ClassMarking::next() {
    const auto row = nextRow();
    if (!row)
        return std::nullopt;
    MarkedRow marked = unmarked(*row);
    if (marked.fault.empty())
        mark(*row, marked);
    return marked;
}

std::variant<OwnPoints, std::string> readOwnPoints(std::string_view text, double of) {
    const std::size_t colon = text.find(':');
    std::string number = trimmed(text.substr(0, colon));
    std::replace(number.begin(), number.end(), ',', '.');
    double points = 0;
    const char* const first = number.data() + (number.starts_with('+') ? 1 : 0);
    const char* const last = number.data() + number.size();
    const auto read = std::from_chars(first, last, points);
    if (read.ec != std::errc() || read.ptr != last)
        return "override: " + inMarks(text) +
               " has no points in front; write points and a remark, as 2: shown orally";
    if (!(points >= 0 && points <= of))
        return "override: " + inMarks(number) + " is outside 0 to " + shortest(of) +
               " points; write what is meant";
    return OwnPoints{points,
                     colon == std::string_view::npos ? std::string() : trimmed(text.substr(colon + 1))};
}

} // namespace tailpoint
