// SPDX-License-Identifier: MIT
#include "ui/marking/marking_csv.h"

#include "ui/files/json_text.h"

namespace tailpoint {

namespace {

std::string headOf(const std::vector<std::string>& cells, const CsvForm& form) {
    return (form.isMarked ? std::string(kByteOrderMark) : std::string()) + csvLine(cells, form);
}

class ClassCsv final : public ClassOutput {
public:
    ClassCsv(const CsvForm& form, const std::vector<std::string>& columns)
        : m_form(form), m_columns(columns) {}

    std::string begin() override {
        std::vector<std::string> cells = m_columns;
        cells.insert(cells.end(), std::begin(kAddedColumns), std::end(kAddedColumns));
        return headOf(cells, m_form);
    }
    std::string row(const MarkedRow& row) override {
        std::vector<std::string> cells = row.cells;
        const Finding* slip = row.firstSlip();
        cells.insert(cells.end(),
                     {std::string(row.verdict()), pointsText(row.points(), m_form.decimalMark()),
                      slip ? slip->id : std::string(),
                      slip && row.faults().empty() ? toText(slip->sentence, Minus::ascii) : row.faults()});
        cells.insert(cells.end(), row.extra.begin(), row.extra.end());
        return csvLine(cells, m_form);
    }

private:
    CsvForm m_form;
    std::vector<std::string> m_columns;
};

class PointsCsv final : public ClassOutput {
public:
    explicit PointsCsv(const CsvForm& form) : m_form(form) {}
    std::string begin() override { return headOf({"who", "points"}, m_form); }
    std::string row(const MarkedRow& row) override {
        return csvLine({row.who, pointsText(row.points(), m_form.decimalMark())}, m_form);
    }

private:
    CsvForm m_form;
};

} // namespace

std::unique_ptr<ClassOutput> classCsv(const ClassMarking& marking) {
    return tableCsv(marking.form(), marking.columns());
}

std::unique_ptr<ClassOutput> tableCsv(const CsvForm& form, const std::vector<std::string>& columns) {
    return std::make_unique<ClassCsv>(form, columns);
}

std::unique_ptr<ClassOutput> pointsCsv(const ClassMarking& marking) {
    return pointsTableCsv(marking.form());
}

std::unique_ptr<ClassOutput> pointsTableCsv(const CsvForm& form) {
    return std::make_unique<PointsCsv>(form);
}

} // namespace tailpoint
