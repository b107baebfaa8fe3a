// practiced [NUMBERS] [FAMILY]: so many problems of every family and level, checked as the tests do, and the
// share in which all likely slips are told apart.
#include "tests/practiced/practised.h"

#include <cstdlib>
#include <iostream>

int main(int count, char** words) {
    using namespace tailpoint;
    const std::uint64_t numbers = count > 1 ? std::strtoull(words[1], nullptr, 10) : 10'000;
    std::uint64_t faults = 0;
    for (const FamilyEntry& family : problemFamilies()) {
        if (count > 2 && family.id != words[2])
            continue;
        for (int level = 1; level <= kLevels; ++level) {
            testing::PracticeCounts counts;
            for (std::uint64_t i = 0; i < numbers; ++i)
                testing::checkProblem({std::string(family.id), level, problemNumber(1, i)}, counts);
            std::cout << family.id << ' ' << level << ": " << counts.problems << " problems, separable "
                      << 100.0 * static_cast<double>(counts.separable) / static_cast<double>(counts.problems)
                      << " %, " << counts.answers << " answers, " << counts.slips << " slips ("
                      << 100.0 * static_cast<double>(counts.slipsFirst) /
                             static_cast<double>(std::max<std::uint64_t>(counts.slips, 1))
                      << " % named first)" << std::endl;
            for (const auto& [what, times] : counts.faults) {
                std::cout << "    " << times << " times: " << what << '\n';
                faults += times;
            }
            for (const std::string& example : counts.examples)
                std::cout << "        " << example << '\n';
        }
    }
    return faults == 0 ? 0 : 1;
}
