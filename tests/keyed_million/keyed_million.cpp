// SPDX-License-Identifier: MIT
// keyed_million [LINES] [SEED]: keys the printed lines of seeded worked solutions until so many are done, and
// says how many didn't compute.
#include "tests/keyed/keyed_questions.h"

#include <cstdlib>
#include <iostream>

int main(int count, char** words) {
    using namespace tailpoint;
    const std::int64_t wanted = count > 1 ? std::atoll(words[1]) : 1'000'000;
    const std::uint64_t seed = count > 2 ? std::strtoull(words[2], nullptr, 10) : 20261129;
    constexpr std::size_t mostTold = 20;
    testing::Dice dice(seed);
    keyed::Tally tally;
    std::size_t wrong = 0;
    std::uint64_t cases = 0;
    for (; tally.lines < wanted; ++cases) {
        const keyed::Keyed one = keyed::keyed(keyed::someQuestion(dice, cases));
        tally += one.tally;
        for (const std::string& line : one.wrong)
            if (wrong++ < mostTold)
                std::cout << "case " << cases << ": " << line << '\n';
    }
    std::cout << cases << " cases, seed " << seed << ": " << tally.lines << " lines of numbers, "
              << tally.symbolic << " of symbols, " << tally.rounded << " rounded answers, " << tally.relations
              << " bounds, " << tally.cells << " cells, " << tally.prose << " in running text; "
              << tally.excused << " by hand without a value, " << tally.unread << " not read; " << wrong
              << " don't compute\n";
    return wrong == 0 ? 0 : 1;
}
