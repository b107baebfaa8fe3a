// SPDX-License-Identifier: MIT
// The numeric kernel of each family for two forces and their sum, from magnitudes and degrees to magnitudes
// and degrees, against the textbook's closed form written down in double with the same sine and cosine. How
// the closed form does with the standard library's sine and cosine stands beside it: what the exact reduction
// costs.
#include "core/solve/kernel.h"
#include "tests/benchmarks/allocations.h"
#include "tests/benchmarks/ratios.h"

#include <array>
#include <cmath>
#include <cstdlib>

using namespace tailpoint;
using kernel::Circle;
using kernel::Line;
using kernel::Root;
using kernel::Target;
using kernel::Vec;

namespace {

/// P and Q, and a sum R that they can make up in every family.
struct Case {
    double p, pDegrees, q, qDegrees, r, rDegrees;
};

constexpr std::size_t kCases = 64;

std::array<Case, kCases> cases() {
    std::array<Case, kCases> made{};
    for (std::size_t i = 0; i < kCases; ++i) {
        const double turn = static_cast<double>(i);
        made[i] = {300 + turn, 25 + turn / 8, 250 + 2 * turn, -40 - turn / 4, 0, 0};
        const double x = made[i].p * std::cos(made[i].pDegrees * M_PI / 180) +
                         made[i].q * std::cos(made[i].qDegrees * M_PI / 180);
        const double y = made[i].p * std::sin(made[i].pDegrees * M_PI / 180) +
                         made[i].q * std::sin(made[i].qDegrees * M_PI / 180);
        made[i].r = std::hypot(x, y);
        made[i].rDegrees = std::atan2(y, x) * 180 / M_PI;
    }
    return made;
}

struct Plain {
    double x, y;
};
using Trigonometry = Plain (*)(double degrees);
Plain library(double degrees) {
    return {std::cos(degrees * M_PI / 180), std::sin(degrees * M_PI / 180)};
}
/// The same sine and cosine as the kernel is fed with: exactly reduced, in extended precision.
Plain exact(double degrees) {
    const CosSin unit = cosSin(degrees, AngleUnit::deg);
    return {static_cast<double>(unit.cos), static_cast<double>(unit.sin)};
}
double degreesOf(double x, double y) {
    return std::atan2(y, x) * 180 / M_PI;
}

/// What a family finds, at most two answers of two numbers.
using Answer = std::array<double, 4>;

template <Trigonometry plain>
Answer resultantByHand(const Case& c) {
    const Plain p = plain(c.pDegrees), q = plain(c.qDegrees);
    const double x = c.p * p.x + c.q * q.x, y = c.p * p.y + c.q * q.y;
    return {std::hypot(x, y), degreesOf(x, y), 0, 0};
}

template <Trigonometry plain>
Answer magnitudesByHand(const Case& c) {
    const Plain p = plain(c.pDegrees), q = plain(c.qDegrees), r = plain(c.rDegrees);
    const double det = p.x * q.y - p.y * q.x;
    return {c.r * (r.x * q.y - r.y * q.x) / det, c.r * (p.x * r.y - p.y * r.x) / det, 0, 0};
}

template <Trigonometry plain>
Answer mixedByHand(const Case& c) {
    const Plain p = plain(c.pDegrees), r = plain(c.rDegrees);
    const double along = c.r * (p.x * r.x + p.y * r.y), across = c.r * (p.x * r.y - p.y * r.x);
    const double half = std::sqrt(c.q * c.q - across * across);
    const auto direction = [&](double m) { return degreesOf(c.r * r.x - m * p.x, c.r * r.y - m * p.y); };
    return {along + half, direction(along + half), along - half, direction(along - half)};
}

template <Trigonometry plain>
Answer directionsByHand(const Case& c) {
    const Plain r = plain(c.rDegrees);
    const double along = (c.r * c.r + c.p * c.p - c.q * c.q) / (2 * c.r);
    const double left = std::sqrt(c.p * c.p - along * along);
    const auto first = [&](double side) { return Plain{along * r.x - side * r.y, along * r.y + side * r.x}; };
    const Plain a = first(left), b = first(-left);
    return {degreesOf(a.x, a.y), degreesOf(c.r * r.x - a.x, c.r * r.y - a.y), degreesOf(b.x, b.y),
            degreesOf(c.r * r.x - b.x, c.r * r.y - b.y)};
}

template <Trigonometry plain>
Answer smallestByHand(const Case& c) {
    const Plain p = plain(c.pDegrees), r = plain(c.rDegrees);
    const double along = c.r * (p.x * r.x + p.y * r.y);
    const double x = c.r * r.x - along * p.x, y = c.r * r.y - along * p.y;
    return {along, std::hypot(x, y), degreesOf(x, y), 0};
}

Vec unitOf(double degrees) {
    return kernel::vec(cosSin(degrees, AngleUnit::deg));
}
double referred(Vec v) {
    return directionOf(v.x, v.y, AngleUnit::deg).value_or(0);
}

Target targetOf(const Case& c, double circles) {
    kernel::VectorSum gap;
    gap.add(static_cast<long double>(c.r) * unitOf(c.rDegrees), c.r);
    return {gap.settled(), gap.scale() + circles};
}

Answer resultant(const Case& c) {
    kernel::VectorSum sum;
    sum.add(static_cast<long double>(c.p) * unitOf(c.pDegrees), c.p);
    sum.add(static_cast<long double>(c.q) * unitOf(c.qDegrees), c.q);
    const kernel::Found found = kernel::close({sum.settled(), sum.scale()});
    return {static_cast<double>(found.magnitude), referred(found.unit), 0, 0};
}

Answer magnitudes(const Case& c) {
    const auto roots = kernel::meet(Line{unitOf(c.pDegrees)}, Line{unitOf(c.qDegrees)}, targetOf(c, 0));
    const Root& root = roots.root[0];
    return {static_cast<double>(root.first.magnitude), static_cast<double>(root.second.magnitude), 0, 0};
}

Answer mixed(const Case& c) {
    const auto roots = kernel::meet(Line{unitOf(c.pDegrees)}, Circle{c.q}, targetOf(c, c.q));
    const auto& [far, near] = roots.root;
    return {static_cast<double>(far.first.magnitude), referred(far.second.unit),
            static_cast<double>(near.first.magnitude), referred(near.second.unit)};
}

Answer directions(const Case& c) {
    const auto roots = kernel::meet(Circle{c.p}, Circle{c.q}, targetOf(c, c.p + c.q));
    const auto& [over, under] = roots.root;
    return {referred(over.first.unit), referred(over.second.unit), referred(under.first.unit),
            referred(under.second.unit)};
}

Answer smallest(const Case& c) {
    const Root root = kernel::nearest(Line{unitOf(c.pDegrees)}, targetOf(c, 0));
    return {static_cast<double>(root.first.magnitude), static_cast<double>(root.second.magnitude),
            referred(root.second.unit), 0};
}

using Kernel = Answer (*)(const Case&);

void run(benchmark::State& state, Kernel kernel) {
    const auto inputs = cases();
    std::size_t i = 0;
    const long before = bench::allocations();
    for (auto _ : state) {
        benchmark::DoNotOptimize(kernel(inputs[i]));
        i = (i + 1) % kCases;
    }
    state.counters["allocations"] =
        static_cast<double>(bench::allocations() - before) / static_cast<double>(state.iterations());
}

struct Family {
    const char* name;
    Kernel byHand, byHandPlainly, ours;
};
constexpr std::array kFamilies{
    Family{"magnitude and direction of the sum", resultantByHand<exact>, resultantByHand<library>, resultant},
    Family{"two magnitudes", magnitudesByHand<exact>, magnitudesByHand<library>, magnitudes},
    Family{"a magnitude and a direction", mixedByHand<exact>, mixedByHand<library>, mixed},
    Family{"two directions", directionsByHand<exact>, directionsByHand<library>, directions},
    Family{"the smallest force", smallestByHand<exact>, smallestByHand<library>, smallest}};

/// Both must say the same, or the ratio compares two different things.
void insistOnAgreement() {
    for (const Case& c : cases())
        for (const Family& family : kFamilies) {
            const Answer hand = family.byHand(c), ours = family.ours(c);
            for (std::size_t i = 0; i < hand.size(); ++i)
                if (std::abs(hand[i] - ours[i]) > 1e-6 * (1 + std::abs(hand[i]))) {
                    std::fprintf(stderr, "%s: by hand %.17g, kernel %.17g\n", family.name, hand[i], ours[i]);
                    std::exit(1);
                }
        }
}

} // namespace

int main(int argc, char** argv) {
    insistOnAgreement();
    for (const Family& family : kFamilies) {
        benchmark::RegisterBenchmark((std::string(family.name) + "/floor").c_str(), run, family.byHand);
        benchmark::RegisterBenchmark((std::string(family.name) + "/by hand, library trigonometry").c_str(),
                                     run, family.byHandPlainly);
        benchmark::RegisterBenchmark((std::string(family.name) + "/kernel").c_str(), run, family.ours);
    }
    return bench::runRatios(argc, argv,
                            "Kernels for two forces, against the closed form by hand with the same "
                            "trigonometry (goal: at most 10)");
}
