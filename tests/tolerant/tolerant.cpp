// SPDX-License-Identifier: MIT
// Ranges against a search by trial, by hand: tolerant [CASES] [PERCENT] [DEGREES] [SEED] [BOXES]
// [DRAWS] [CLIMBS] [FROM]: the cases FROM to CASES, each searched from DRAWS points, CLIMBS rounds uphill.
// Prints every case whose range is narrower than what was found, or unmarked and wider by more than 0.1 %,
// then counts and times.
#include "core/solve/tolerance.h"
#include "tests/support/tolerances.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>

using namespace tailpoint;
using namespace tailpoint::testing;
using tolerance::AnswerRange;
using tolerance::DirectionRange;
using tolerance::Range;
using tolerance::VectorRange;

namespace {

struct Count {
    long ranges = 0, marked = 0, narrow = 0, wide = 0, unbounded = 0, any = 0, partly = 0, wrongPart = 0;
};

struct Judge {
    std::uint64_t number;
    Asked asked;
    Count& count;
    Count& family;

    void say(const char* what, int index, const char* of, double found, double stated, double width) const {
        std::printf("case %llu family %d: %s, vector %d, %s: found %.12g, stated %.12g, width %.6g\n",
                    static_cast<unsigned long long>(number), static_cast<int>(asked), what, index, of, found,
                    stated, width);
    }
    void add(long Count::*member) const {
        ++(count.*member);
        ++(family.*member);
    }
};

double turnsFrom(double from, double direction) {
    return direction - from - std::floor((direction - from) / 360) * 360;
}

struct Searcher {
    Trial trial;
    Dice dice;
    std::vector<std::vector<double>> points;
    std::vector<Solution> solutions;
    bool isLost = false, isPartly = false;
    int rounds;

    Searcher(const Sketch& sketch, std::size_t answer, std::uint64_t seed, int draws, int climb)
        : trial(sketch, answer), dice(seed), rounds(climb) {
        points.push_back(trial.nominal());
        for (int i = 0; i < draws; ++i) {
            points.push_back(drawn(trial.knobs(), dice));
        }
        for (auto point = points.begin(); point != points.end();) {
            if (const auto solution = trial.at(*point)) {
                solutions.push_back(*solution);
                ++point;
            } else {
                isLost = true;
                point = points.erase(point);
            }
        }
    }
    /// From the best point drawn, and from where the range says that its end lies.
    template <class Of>
    double greatest(const Of& of, const tolerance::Place& place, Swapped& swapped) {
        std::size_t best = 0;
        for (std::size_t i = 1; i < points.size(); ++i) {
            best = of(solutions[i]) > of(solutions[best]) ? i : best;
        }
        if (points.empty()) {
            return -std::numeric_limits<double>::infinity();
        }
        const double found = climbed(trial, points[best], of, dice, rounds);
        std::vector<double> stated = trial.nominal();
        for (std::size_t i = 0; i < place.size(); ++i) {
            const Knob& knob = trial.knobs()[i];
            const double middle = (knob.least + knob.greatest) / 2;
            stated[i] =
                knob.isDirection ? middle + std::remainder(place[i].value - middle, 360) : place[i].value;
            stated[i] = std::clamp(stated[i], knob.least, knob.greatest);
        }
        if (!trial.at(stated)) {
            const auto valueAt = [&](const std::vector<double>& at) {
                const auto solution = trial.at(at);
                return solution ? of(*solution) : -std::numeric_limits<double>::infinity();
            };
            lastWithAnswer(trial.nominal(), stated, valueAt);
        }
        const double most = std::max(found, climbed(trial, stated, of, dice, rounds));
        return swapped.isOf() ? std::max(most, climbed(swapped, swapped.nominal(), of, dice, 2 * rounds))
                              : most;
    }
};

void judge(const Judge& judge, Searcher& search, Swapped& swapped, const Range& range, int index,
           const char* name, double (*of)(const SolvedForce&), double scale) {
    const double high = search.greatest([&](const Solution& s) { return of(solvedVector(s, index)); },
                                        range.atGreatest, swapped);
    const double low = -search.greatest([&](const Solution& s) { return -of(solvedVector(s, index)); },
                                        range.atLeast, swapped);
    judge.add(&Count::ranges);
    if (range.marked) {
        judge.add(&Count::marked);
    }
    const double room = 1e-12 * scale + 1e-9 * (high - low);
    if (range.greatest && high > *range.greatest + room) {
        judge.say("NARROW above", index, name, high, *range.greatest, high - low);
        judge.add(&Count::narrow);
    }
    if (range.least && low < *range.least - room) {
        judge.say("NARROW below", index, name, low, *range.least, high - low);
        judge.add(&Count::narrow);
    }
    if (!range.greatest || !range.least) {
        judge.add(&Count::unbounded);
        return;
    }
    const double excess = (*range.greatest - *range.least) - (high - low);
    if (!range.marked && !search.isPartly && excess > 1.001e-3 * (high - low) + 1e-11 * scale) {
        judge.say("WIDE", index, name, low, *range.least, high - low);
        judge.say("WIDE", index, name, high, *range.greatest, high - low);
        judge.add(&Count::wide);
    }
}

void judgeDirection(const Judge& judge, Searcher& search, Swapped& swapped, const DirectionRange& range,
                    int index) {
    judge.add(&Count::ranges);
    if (range.marked) {
        judge.add(&Count::marked);
    }
    if (range.any) {
        judge.add(&Count::any);
        return;
    }
    const double width = range.to - range.from;
    const double start = range.from - (360 - width) / 2;
    const auto at = [&](const SolvedForce& vector) {
        return vector.direction ? turnsFrom(start, *vector.direction) : (360.0 - width) / 2;
    };
    const double high =
        search.greatest([&](const Solution& s) { return at(solvedVector(s, index)); }, range.atTo, swapped);
    const double low = -search.greatest([&](const Solution& s) { return -at(solvedVector(s, index)); },
                                        range.atFrom, swapped);
    const double least = (360 - width) / 2, greatest = least + width;
    const double room = 1e-10 + 1e-9 * (high - low);
    if (high > greatest + room || low < least - room) {
        judge.say("NARROW", index, "direction", high - least, width, low - least);
        judge.add(&Count::narrow);
    }
    if (!range.marked && !search.isPartly && width - (high - low) > 1.001e-3 * (high - low) + 1e-9) {
        judge.say("WIDE", index, "direction", low - least, high - greatest, width);
        judge.add(&Count::wide);
    }
}

void judgeAnswer(const Judge& judgeOf, const Sketch& sketch, std::size_t answer, const AnswerRange& range,
                 int draws, int climb) {
    Searcher search(sketch, answer, judgeOf.number + 7, draws, climb);
    search.isPartly = !range.everywhere;
    double scale = 0;
    for (const Force& each : sketch.forces) {
        scale += each.magnitude.value.value_or(0);
    }
    scale += sketch.sum.magnitude.value.value_or(0);
    for (const VectorRange& vector : range.vectors) {
        if (!vector.magnitudeFound && !vector.directionFound) {
            continue;
        }
        Swapped swapped(sketch, answer, vector.index);
        if (vector.magnitudeFound) {
            judge(
                judgeOf, search, swapped, vector.magnitude, vector.index, "magnitude",
                [](const SolvedForce& f) { return f.magnitude; }, scale);
        }
        judge(
            judgeOf, search, swapped, vector.x, vector.index, "x",
            [](const SolvedForce& f) { return f.vector.x(); }, scale);
        judge(
            judgeOf, search, swapped, vector.y, vector.index, "y",
            [](const SolvedForce& f) { return f.vector.y(); }, scale);
        if (vector.directionFound) {
            judgeDirection(judgeOf, search, swapped, vector.direction, vector.index);
        }
    }
    if (search.isLost) {
        judgeOf.add(&Count::partly);
    }
    if (search.isLost && range.everywhere) {
        judgeOf.add(&Count::wrongPart);
        judgeOf.say("PART", 0, "everywhere", 0, 1, 0);
    }
}

void print(const char* name, const Count& count) {
    std::printf(
        "%-24s ranges %7ld marked %6ld (%.2f %%) unbounded %5ld any %5ld narrow %ld wide %ld partly %ld "
        "wrongly everywhere %ld\n",
        name, count.ranges, count.marked,
        100.0 * static_cast<double>(count.marked) / static_cast<double>(std::max(1L, count.ranges)),
        count.unbounded, count.any, count.narrow, count.wide, count.partly, count.wrongPart);
}

} // namespace

int main(int argc, char** argv) {
    const auto argument = [&](int i, double otherwise) { return argc > i ? std::atof(argv[i]) : otherwise; };
    const auto cases = static_cast<std::uint64_t>(argument(1, 10000));
    const double percent = argument(2, 20), degrees = argument(3, 15);
    const auto seed = static_cast<std::uint64_t>(argument(4, 1));
    const tolerance::Effort effort{static_cast<int>(argument(5, tolerance::kExact.boxes))};
    const int draws = static_cast<int>(argument(6, 200)), climb = static_cast<int>(argument(7, 40));
    Count all;
    std::array<Count, kAsked> families;
    std::vector<double> times;
    for (auto i = static_cast<std::uint64_t>(argument(8, 0)); i < cases; ++i) {
        Dice dice(seed * 1'000'003 + i);
        const Asked asked = static_cast<Asked>(i % kAsked);
        const Sketch sketch = tolerantCase(dice, asked, percent, degrees);
        if (firstFault(sketch)) {
            std::printf("case %llu is faulty: %s\n", static_cast<unsigned long long>(i),
                        firstFault(sketch)->message.c_str());
            return 1;
        }
        const Solved solved = solve(sketch);
        if (solved.solutions.empty()) {
            continue;
        }
        const auto start = std::clock();
        const tolerance::Ranges ranges = rangesOf(sketch, solved, effort);
        times.push_back(1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
        for (std::size_t answer = 0; draws > 0 && answer < ranges.size(); ++answer) {
            judgeAnswer({i, asked, all, families[i % kAsked]}, sketch, answer, ranges[answer], draws, climb);
        }
    }
    std::sort(times.begin(), times.end());
    constexpr std::array kNames{"resultant",      "two magnitudes", "magnitude and direction",
                                "two directions", "smallest force", "smallest sum"};
    for (std::size_t i = 0; i < kAsked; ++i) {
        print(kNames[i], families[i]);
    }
    print("all", all);
    std::printf("%zu sketches: median %.3f ms, 90 %% %.3f, 99 %% %.3f, worst %.3f\n", times.size(),
                times[times.size() / 2], times[times.size() * 9 / 10], times[times.size() * 99 / 100],
                times.back());
    return all.narrow + all.wide + all.wrongPart == 0 ? 0 : 1;
}
