// SPDX-License-Identifier: MIT
// 1,000,000 seeded sketches against 113 bits. Not part of CTest: build and run the target oracle_million.
//   oracle_million [CASES] [SEED]
#include "tests/support/referee.h"

#include <boost/multiprecision/float128.hpp>

#include <cstdio>
#include <cstdlib>

namespace {

using namespace tailpoint;
using namespace tailpoint::testing;
using Real = boost::multiprecision::float128;

void print(const Referee<Real>& referee) {
    std::printf("%-36s %12s %14s\n", "quantity", "checks", "largest/bound");
    for (const auto& [what, tally] : referee.tallies()) {
        std::printf("%-36s %12llu %14.6f\n", what.c_str(), static_cast<unsigned long long>(tally.checks),
                    tally.worst);
    }
    std::printf("cases %llu, within the bands (not counted) %llu, roots with backward bounds only %llu\n",
                static_cast<unsigned long long>(referee.cases()),
                static_cast<unsigned long long>(referee.exempt()),
                static_cast<unsigned long long>(referee.backwardOnly()));
    for (const std::string& fault : referee.faults()) {
        std::printf("FAULT %s\n", fault.c_str());
    }
}

} // namespace

int main(int count, char** values) {
    const std::uint64_t cases = count > 1 ? std::strtoull(values[1], nullptr, 10) : 1'000'000;
    const std::uint64_t seed = count > 2 ? std::strtoull(values[2], nullptr, 10) : 20260101;
    Dice dice(seed);
    Referee<Real> referee;
    for (std::uint64_t i = 0; i < cases; ++i) {
        referee.judge(anyCase(dice, i));
    }
    std::printf("seed %llu\n", static_cast<unsigned long long>(seed));
    print(referee);
    return referee.faults().empty() ? 0 : 1;
}
