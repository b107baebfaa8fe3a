// SPDX-License-Identifier: MIT
// benchmarks/: what something costs as a multiple of a floor that does only the work nobody can avoid.
// Ratios survive a change of machine better than microseconds; floor and candidate run interleaved, and the
// medians are compared.
#pragma once

#include <benchmark/benchmark.h>
#include <map>
#include <string>
#include <vector>

namespace tailpoint::bench {

/// Collects the repetitions of benchmarks named "ROW/floor" and "ROW/WHAT" and prints one line a candidate.
class RatioReporter : public benchmark::BenchmarkReporter {
public:
    bool ReportContext(const Context&) override { return true; }
    void ReportRuns(const std::vector<Run>& runs) override;
    void Finalize() override;

private:
    struct Timed {
        std::vector<double> nanoseconds;
        double allocations = -1; ///< per call, where counted
    };
    std::vector<std::string> m_order;
    std::map<std::string, Timed> m_timed;
};

/// Runs all registered benchmarks interleaved, `repetitions` each, and prints the table.
int runRatios(int argc, char** argv, const char* title);

} // namespace tailpoint::bench
