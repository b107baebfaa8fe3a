// SPDX-License-Identifier: MIT
// practiced [NUMBERS] [FAMILY] [FROM]: so many problems of every family and level, from the FROM-th on,
// checked as the tests do, and the share in which all likely slips are told apart. On all cores; what is said
// is the same however many there are.
#include "tests/practiced/practised.h"

#include <atomic>
#include <cstdlib>
#include <iostream>
#include <thread>

namespace tailpoint::testing {
namespace {

struct Range {
    std::uint64_t from = 0, count = 0;
};

/// In pieces, which the cores take as they are free and which are told in their order.
PracticeCounts checkAll(const FamilyEntry& family, int level, const Range& range) {
    constexpr std::uint64_t piece = 50;
    std::vector<PracticeCounts> parts((range.count + piece - 1) / piece);
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t part = next++; part < parts.size(); part = next++)
            for (std::uint64_t i = part * piece; i < std::min(range.count, (part + 1) * piece); ++i)
                checkProblem({std::string(family.id), level, problemNumber(1, range.from + i)}, parts[part]);
    };
    std::vector<std::thread> others;
    for (unsigned core = 1; core < std::max(1U, std::thread::hardware_concurrency()); ++core)
        others.emplace_back(work);
    work();
    for (std::thread& other : others)
        other.join();
    PracticeCounts all;
    for (const PracticeCounts& part : parts)
        all.add(part);
    return all;
}

/// How many faults there were.
std::uint64_t tell(const FamilyEntry& family, int level, const PracticeCounts& counts) {
    const auto share = [](std::uint64_t part, std::uint64_t whole) {
        return 100.0 * static_cast<double>(part) / static_cast<double>(std::max<std::uint64_t>(whole, 1));
    };
    std::cout << family.id << ' ' << level << ": " << counts.problems << " problems, separable "
              << share(counts.separable, counts.problems) << " %, " << counts.answers << " answers, "
              << counts.slips << " slips (" << share(counts.slipsFirst, counts.slips) << " % named first, "
              << counts.asRight << " as good as right, which the problem says)" << std::endl;
    std::uint64_t faults = 0;
    for (const auto& [what, times] : counts.faults) {
        std::cout << "    " << times << " times: " << what << '\n';
        faults += times;
    }
    for (const std::string& example : counts.examples)
        std::cout << "        " << example << '\n';
    return faults;
}

} // namespace
} // namespace tailpoint::testing

int main(int count, char** words) {
    using namespace tailpoint;
    const auto number = [&](int index, std::uint64_t otherwise) {
        return count > index ? std::strtoull(words[index], nullptr, 10) : otherwise;
    };
    const ::testing::Range range{number(3, 0), number(1, 10'000)};
    std::uint64_t faults = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels && (count <= 2 || family.id == words[2]); ++level)
            faults += testing::tell(family, level, testing::checkAll(family, level, range));
    return faults == 0 ? 0 : 1;
}
