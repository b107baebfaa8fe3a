// SPDX-License-Identifier: MIT
// marked_classes [QUESTIONS] [STUDENTS] [HONEST] [RANDOM] [SEED]: the four measures of marking, over seeded
// questions of all families.
#include "tests/marked/students.h"

#include <cstdlib>
#include <future>
#include <iostream>
#include <thread>

namespace {

using namespace tailpoint;

void tell(const char* what, const testing::Tally& tally, bool byslip) {
    std::cout << what << ": " << tally.missed << " of " << tally.tried << " (" << 100 * tally.share()
              << " %)";
    if (tally.tooCoarse > 0)
        std::cout << ", not counting " << tally.tooCoarse
                  << " that rounding alone puts beyond what marking allows";
    std::cout << '\n';
    if (byslip)
        for (const auto& [id, counts] : tally.bySlip)
            if (counts.second * 50 > counts.first)
                std::cout << "    " << id << ": " << counts.second << " of " << counts.first << '\n';
    for (std::size_t i = 0; i < std::min<std::size_t>(tally.examples.size(), 40); ++i)
        std::cout << "    " << tally.examples[i] << '\n';
}

testing::Tally namedSlips(std::uint64_t questions, std::uint64_t seed) {
    const std::uint64_t threads = std::max(1U, std::thread::hardware_concurrency());
    std::vector<std::future<testing::Tally>> shares;
    for (std::uint64_t i = 0; i < threads; ++i)
        shares.push_back(
            std::async(std::launch::async, testing::namedSlips, questions, seed, testing::Share{i, threads}));
    testing::Tally all;
    for (auto& share : shares)
        all.add(share.get());
    return all;
}

} // namespace

int main(int count, char** words) {
    const auto wanted = [&](int index, std::uint64_t otherwise) {
        return count > index ? std::strtoull(words[index], nullptr, 10) : otherwise;
    };
    const std::uint64_t seed = wanted(5, 20261129);
    auto first = std::async(std::launch::async, testing::firstNamed, wanted(2, 50'000), 10, seed + 1);
    auto honest = std::async(std::launch::async, testing::honestAnswers, wanted(3, 200'000), seed + 2);
    auto random = std::async(std::launch::async, testing::randomAnswers, wanted(4, 20'000), 20, seed + 3);
    const testing::Tally tallies[] = {namedSlips(wanted(1, 20'000), seed), first.get(), honest.get(),
                                      random.get()};
    tell("slips not among those named", tallies[0], true);
    tell("another slip named first", tallies[1], true);
    tell("honest answers called wrong", tallies[2], false);
    tell("random answers with strong evidence", tallies[3], false);
    const bool isGood = tallies[0].share() <= 0.005 && tallies[1].share() <= 0.1 && tallies[2].missed == 0 &&
                        tallies[3].share() < 0.02;
    return isGood ? 0 : 1;
}
