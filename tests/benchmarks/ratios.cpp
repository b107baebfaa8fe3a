// SPDX-License-Identifier: MIT
#include "tests/benchmarks/ratios.h"

#include <algorithm>
#include <cstdio>

namespace tailpoint::bench {

namespace {

double median(std::vector<double> values) {
    if (values.empty())
        return 0;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

std::string rowOf(const std::string& name) {
    return name.substr(0, name.rfind('/'));
}

bool isFloor(const std::string& name) {
    return name.ends_with("/floor");
}

/// Google Benchmark appends "/repeats:9" and the like; what stands before is our name.
std::string plainName(const benchmark::BenchmarkReporter::Run& run) {
    return run.run_name.function_name;
}

} // namespace

void RatioReporter::ReportRuns(const std::vector<Run>& runs) {
    for (const Run& run : runs) {
        if (run.run_type != Run::RT_Iteration)
            continue;
        const std::string name = plainName(run);
        if (m_timed.find(name) == m_timed.end())
            m_order.push_back(name);
        Timed& timed = m_timed[name];
        timed.nanoseconds.push_back(run.GetAdjustedCPUTime());
        const auto counted = run.counters.find("allocations");
        if (counted != run.counters.end())
            timed.allocations = counted->second;
    }
}

void RatioReporter::Finalize() {
    std::printf("%-66s %12s %12s %8s %12s\n", "", "floor", "ours", "ratio", "allocations");
    std::sort(m_order.begin(), m_order.end());
    for (const std::string& name : m_order) {
        if (isFloor(name))
            continue;
        const double floor = median(m_timed[rowOf(name) + "/floor"].nanoseconds);
        const Timed& ours = m_timed[name];
        const double cost = median(ours.nanoseconds);
        std::printf("%-66s %9.1f ns %9.1f ns %8.2f", name.c_str(), floor, cost,
                    floor > 0 ? cost / floor : 0.0);
        if (ours.allocations >= 0)
            std::printf(" %12.2f", ours.allocations);
        std::printf("\n");
    }
}

int runRatios(int argc, char** argv, const char* title) {
    std::vector<std::string> texts(argv, argv + argc);
    texts.insert(texts.begin() + 1,
                 {"--benchmark_repetitions=11", "--benchmark_enable_random_interleaving=true",
                  "--benchmark_min_time=0.05"});
    std::vector<char*> arguments;
    for (std::string& text : texts)
        arguments.push_back(text.data());
    int count = static_cast<int>(arguments.size());
    arguments.push_back(nullptr);
    benchmark::Initialize(&count, arguments.data());
    if (benchmark::ReportUnrecognizedArguments(count, arguments.data()))
        return 2;
    std::printf("%s\n", title);
    RatioReporter reporter;
    benchmark::RunSpecifiedBenchmarks(&reporter);
    return 0;
}

} // namespace tailpoint::bench
