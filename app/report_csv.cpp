// SPDX-License-Identifier: MIT
#include "app/report_csv.h"

#include "core/explain/caution.h"
#include "core/explain/limits.h"
#include "core/quantity/decimals.h"
#include "ui/files/csv.h"

#include <algorithm>

namespace tailpoint {

namespace {

std::string cell(std::optional<double> number) {
    return number ? shortest(*number) : std::string();
}

/// `range`: null where nothing has a tolerance.
void addVector(TabledRow& row, const SolvedForce& vector, VectorId id, const Result& result,
               const tolerance::VectorRange* range, std::optional<double> utilisation) {
    const Sketch& sketch = result.sketch;
    if (vector.magnitudeFound) {
        row.quantities.push_back({result.things().at(magnitudeId(id)).plain,
                                  std::string(symbolOf(sketch.forceUnit)), vector.magnitude});
        row.quantities.back().utilisation = utilisation;
        if (range) {
            row.quantities.back().low = range->magnitude.least;
            row.quantities.back().high = range->magnitude.greatest;
        }
    }
    if (vector.directionFound) {
        row.quantities.push_back({result.things().at(directionId(id)).plain,
                                  std::string(nameOf(sketch.angleUnit)), vector.direction});
        if (range && !range->direction.any) {
            row.quantities.back().low = range->direction.from;
            row.quantities.back().high = range->direction.to;
        }
    }
}

TabledRow emptyRow(const QString& file, const Result& result) {
    TabledRow row;
    row.file = file.toStdString();
    row.status = nameOf(result.solved.status);
    row.message = result.solved.message().text();
    if (needsCaution(result.sketch))
        row.caution = cautionLine();
    return row;
}

/// Without an answer the limits of what is given bind all the same.
void addGivenLimits(TabledRow& row, const Result& result) {
    const Sketch& sketch = result.sketch;
    const StatedAlone alone = statedAlone(sketch);
    for (const LimitUse& use : limitsOf(sketch, alone.solution, &alone.range)) {
        const SolvedForce& vector = use.index == kSumIndex
                                        ? alone.solution.sum
                                        : alone.solution.forces[static_cast<std::size_t>(use.index)];
        row.quantities.push_back({result.things().at(magnitudeId(vectorId(use.index))).plain,
                                  std::string(symbolOf(sketch.forceUnit)), vector.magnitude});
        row.quantities.back().utilisation = use.utilisation;
    }
}

std::vector<std::string> namesIn(const std::vector<TabledRow>& rows) {
    std::vector<std::string> names;
    for (const TabledRow& row : rows)
        for (const TabledQuantity& quantity : row.quantities)
            if (std::find(names.begin(), names.end(), quantity.name) == names.end())
                names.push_back(quantity.name);
    return names;
}

std::vector<std::string> headsOf(const std::vector<std::string>& names, bool isCautioned) {
    std::vector<std::string> heads{"file", "case", "status"};
    for (const std::string& name : names)
        heads.insert(heads.end(),
                     {name, name + " low", name + " high", name + " utilisation", name + " unit"});
    heads.insert(heads.end(), {"solution", "message"});
    if (isCautioned)
        heads.emplace_back("caution");
    return heads;
}

std::vector<std::string> cellsOf(const TabledRow& row, const std::vector<std::string>& names,
                                 bool isCautioned) {
    std::vector<std::string> cells{row.file, row.caseName, row.status};
    for (const std::string& name : names) {
        const auto found = std::find_if(row.quantities.begin(), row.quantities.end(),
                                        [&](const TabledQuantity& one) { return one.name == name; });
        const TabledQuantity quantity = found == row.quantities.end() ? TabledQuantity{} : *found;
        cells.insert(cells.end(), {cell(quantity.value), cell(quantity.low), cell(quantity.high),
                                   cell(quantity.utilisation), quantity.unit});
    }
    cells.push_back(row.solution ? std::to_string(*row.solution) : std::string());
    cells.push_back(row.message);
    if (isCautioned)
        cells.push_back(row.caution);
    return cells;
}

} // namespace

std::vector<TabledRow> tabledRows(const QString& file, const Result& result, const std::string& caseName) {
    std::vector<TabledRow> rows;
    const tolerance::Ranges& ranges = result.ranges();
    for (std::size_t s = 0; s < result.solved.solutions.size(); ++s) {
        const Solution& solution = result.solved.solutions[s];
        TabledRow row = emptyRow(file, result);
        row.solution = s + 1;
        const auto rangeOf = [&](int vector) { return s < ranges.size() ? ranges[s].find(vector) : nullptr; };
        const auto uses = limitsOf(result.sketch, solution, s < ranges.size() ? &ranges[s] : nullptr);
        const auto utilisationOf = [&](int vector) {
            const auto use = std::find_if(uses.begin(), uses.end(),
                                          [&](const LimitUse& one) { return one.index == vector; });
            return use == uses.end() ? std::nullopt : use->utilisation;
        };
        for (std::size_t i = 0; i < solution.forces.size(); ++i) {
            const int vector = static_cast<int>(i);
            addVector(row, solution.forces[i], forceVector(i), result, rangeOf(vector),
                      utilisationOf(vector));
        }
        addVector(row, solution.sum, kSumVector, result, rangeOf(kSumIndex), utilisationOf(kSumIndex));
        rows.push_back(std::move(row));
    }
    if (rows.empty()) {
        rows.push_back(emptyRow(file, result));
        addGivenLimits(rows.back(), result);
    }
    for (TabledRow& row : rows)
        row.caseName = caseName;
    return rows;
}

TabledRow badRow(const QString& file, const QString& fault) {
    TabledRow row;
    row.file = file.toStdString();
    row.status = "bad";
    row.message = fault.toStdString();
    return row;
}

QByteArray reportCsv(const std::vector<TabledRow>& rows) {
    const auto names = namesIn(rows);
    const bool isCautioned =
        std::any_of(rows.begin(), rows.end(), [](const TabledRow& row) { return !row.caution.empty(); });
    std::string all = csvLine(headsOf(names, isCautioned), {});
    for (const TabledRow& row : rows)
        all += csvLine(cellsOf(row, names, isCautioned), {});
    return QByteArray::fromStdString(all);
}

} // namespace tailpoint
