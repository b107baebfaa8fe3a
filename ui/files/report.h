// SPDX-License-Identifier: MIT
// The report of a sketch: values and words, as JSON for scripts and as plain text for people.
#pragma once

#include "core/explain/explain.h"
#include "ui/files/provenance.h"
#include "ui/files/result.h"

#include <QByteArray>

namespace tailpoint {

inline constexpr int kReportVersion = 1;

/// resources/report.schema.json says what is in it. Numbers are full doubles in the sheet's units, directions
/// from its axis in its sense in (-half turn, half turn], x and y along the sheet's axes.
QByteArray reportJson(const Result& result, const ExplainOptions& options = {});

/// UTF-8, at most about 80 columns, every answer in turn; at its end the record, where it is told whence it
/// comes.
QByteArray reportText(const Result& result, const ExplainOptions& options = {},
                      const std::optional<Provenance>& from = {});

} // namespace tailpoint
