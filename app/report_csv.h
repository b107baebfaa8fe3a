// SPDX-License-Identifier: MIT
// Several sketches as one table: a row a file and solution.
#pragma once

#include "ui/files/result.h"

#include <QByteArray>
#include <QString>
#include <optional>
#include <string>
#include <vector>

namespace tailpoint {

/// A quantity of a row: its value, and where it lies when the given values have tolerances.
struct TabledQuantity {
    std::string name, unit; ///< "R", "theta_R"; sheet's unit
    std::optional<double> value;
    /// Empty: no tolerance is given, or there is no bound. Of a direction the ends of its arc.
    std::optional<double> low{}, high{};
    std::optional<double> utilisation{}; ///< per cent of the limit; empty: none is given
};

struct TabledRow {
    std::string file, caseName, status;
    std::optional<std::size_t> solution; ///< from 1; empty: none
    std::vector<TabledQuantity> quantities;
    std::string message; ///< what the solver remarks, or what is wrong with the file
    std::string caution; ///< empty: none is needed
};

/// A row each solution; one without quantities where there is no answer. Told is what was found.
std::vector<TabledRow> tabledRows(const QString& file, const Result& result,
                                  const std::string& caseName = {});
/// "bad", and why.
TabledRow badRow(const QString& file, const QString& fault);

/// file, case, status; then of every quantity that any row has its value, low, high, utilisation and unit;
/// then the solution's number, the message and, where any row has one, the caution. Numbers are full doubles
/// with a point.
QByteArray reportCsv(const std::vector<TabledRow>& rows);

} // namespace tailpoint
