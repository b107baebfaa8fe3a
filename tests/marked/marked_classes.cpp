// marked_classes [QUESTIONS] [STUDENTS] [HONEST] [RANDOM] [SEED]: the four measures of marking, over seeded
// questions of all families.
#include "tests/marked/students.h"

#include <cstdlib>
#include <iostream>

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

} // namespace

int main(int count, char** words) {
    const auto wanted = [&](int index, std::uint64_t otherwise) {
        return count > index ? std::strtoull(words[index], nullptr, 10) : otherwise;
    };
    const std::uint64_t seed = wanted(5, 20261129);
    const auto named = testing::namedSlips(wanted(1, 20'000), seed);
    tell("slips not among those named", named, true);
    const auto first = testing::firstNamed(wanted(2, 50'000), 10, seed + 1);
    tell("another slip named first", first, true);
    const auto honest = testing::honestAnswers(wanted(3, 200'000), seed + 2);
    tell("honest answers called wrong", honest, false);
    const auto random = testing::randomAnswers(wanted(4, 20'000), 20, seed + 3);
    tell("random answers with strong evidence", random, false);
    return named.share() <= 0.005 && first.share() <= 0.1 && honest.missed == 0 && random.share() < 0.02 ? 0
                                                                                                         : 1;
}
