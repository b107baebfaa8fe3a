// SPDX-License-Identifier: MIT
// Whole processes: start to first paint and peak memory of our window against a bare one.
//   bench_start FLOOR CANDIDATE [ARGUMENT...]     both print their peak memory in kB and end by themselves
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

namespace {

constexpr int kRuns = 21;

struct Run {
    double milliseconds = 0;
    double kilobytes = 0;
};

std::string readAll(int in) {
    std::string all;
    char part[256];
    for (ssize_t got = 0; (got = read(in, part, sizeof part)) > 0;)
        all.append(part, static_cast<std::size_t>(got));
    return all;
}

/// From fork to the end of the process.
bool runOnce(std::vector<char*> arguments, Run& run) {
    int ends[2];
    if (pipe(ends) != 0)
        return false;
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = fork();
    if (child == 0) {
        dup2(ends[1], STDOUT_FILENO);
        close(ends[0]);
        close(ends[1]);
        arguments.push_back(nullptr);
        execv(arguments[0], arguments.data());
        _exit(127);
    }
    close(ends[1]);
    const std::string output = readAll(ends[0]);
    close(ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    run.milliseconds =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0 || output.empty())
        return false;
    run.kilobytes = std::stod(output);
    return true;
}

double median(const std::vector<Run>& runs, double Run::*part) {
    std::vector<double> values;
    for (const Run& run : runs)
        values.push_back(run.*part);
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

void printRow(const char* name, double floor, double ours, const char* unit) {
    std::printf("%-58s %7.1f %-3s %7.1f %-3s %7.2f\n", name, floor, unit, ours, unit, ours / floor);
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) {
        std::fprintf(stderr, "bench_start FLOOR CANDIDATE [ARGUMENT...]\n");
        return 2;
    }
    std::vector<Run> floors(kRuns), ours(kRuns);
    const std::vector<char*> floorCall{argv[1]}, ourCall(argv + 2, argv + argc);
    Run warmUp;
    if (!runOnce(floorCall, warmUp) || !runOnce(ourCall, warmUp)) {
        std::fprintf(stderr, "a window did not open and paint\n");
        return 1;
    }
    for (int i = 0; i < kRuns; ++i)
        if (!runOnce(floorCall, floors[static_cast<std::size_t>(i)]) ||
            !runOnce(ourCall, ours[static_cast<std::size_t>(i)]))
            return 1;
    std::printf("Whole processes against a bare window with one label, %d runs interleaved\n", kRuns);
    std::printf("%-58s %11s %11s %7s\n", "", "floor", "ours", "ratio");
    printRow("start to first paint (goal: at most 1.6)", median(floors, &Run::milliseconds),
             median(ours, &Run::milliseconds), "ms");
    printRow("peak memory (goal: at most 1.45)", median(floors, &Run::kilobytes) / 1024,
             median(ours, &Run::kilobytes) / 1024, "MiB");
    return 0;
}
