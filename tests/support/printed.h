// SPDX-License-Identifier: MIT
// Printed answers of books: a value agrees when it lies within half a unit of the last printed place.
#pragma once

#include "core/solve/solve.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <functional>
#include <string>
#include <vector>

namespace tailpoint::testing {

/// One unit in the last printed place: "53.1" has 0.1, "3.66e3" (3660 printed to three figures) has 10.
inline double lastPlaceOf(const std::string& printed) {
    const std::size_t exponentAt = printed.find('e');
    const std::string digits = printed.substr(0, exponentAt);
    const int exponent = exponentAt == std::string::npos ? 0 : std::atoi(printed.c_str() + exponentAt + 1);
    const std::size_t point = digits.find('.');
    const int decimals = point == std::string::npos ? 0 : static_cast<int>(digits.size() - point - 1);
    return std::pow(10.0, exponent - decimals);
}

/// Ties lie on the border; a hair keeps them inside.
inline bool agrees(double value, const std::string& printed) {
    return std::fabs(value - std::stod(printed)) <=
           lastPlaceOf(printed) * (0.5 + 1e-9) + 1e-15 * std::fabs(value);
}

/// The same modulo a turn of 360 degrees.
inline bool agreesAsDirection(double degrees, const std::string& printed) {
    const double difference = std::remainder(degrees - std::stod(printed), 360);
    return std::fabs(difference) <= lastPlaceOf(printed) * (0.5 + 1e-9);
}

/// One printed answer. With `exact`, the printed one comes from rounded intermediates or is a slip of the
/// source: the value must agree with `exact` and must not agree with the print.
struct Answer {
    std::string what;
    std::function<double(const Solution&)> value;
    std::string printed;
    std::string exact;
    bool direction = false;
};

inline std::function<double(const Solution&)> magnitudeAt(std::size_t i) {
    return [i](const Solution& solution) { return solution.forces.at(i).magnitude; };
}

inline Answer size(std::string printed, std::string exact = "") {
    return {"R", [](const Solution& s) { return s.sum.magnitude; }, std::move(printed), std::move(exact)};
}
inline Answer direction(std::string printed, std::string exact = "") {
    return {"direction of R", [](const Solution& s) { return s.sum.direction.value(); }, std::move(printed),
            std::move(exact), true};
}
inline Answer x(std::string printed, std::string exact = "") {
    return {"Rx", [](const Solution& s) { return s.sum.vector.x(); }, std::move(printed), std::move(exact)};
}
inline Answer y(std::string printed, std::string exact = "") {
    return {"Ry", [](const Solution& s) { return s.sum.vector.y(); }, std::move(printed), std::move(exact)};
}
inline Answer sizeOf(std::size_t i, std::string printed, std::string exact = "") {
    return {"magnitude of force " + std::to_string(i), magnitudeAt(i), std::move(printed), std::move(exact)};
}
inline Answer directionOf(std::size_t i, std::string printed) {
    return {"direction of force " + std::to_string(i),
            [i](const Solution& s) { return s.forces.at(i).direction.value(); }, std::move(printed), "",
            true};
}
inline Answer xOf(std::size_t i, std::string printed) {
    return {"x of force " + std::to_string(i), [i](const Solution& s) { return s.forces.at(i).vector.x(); },
            std::move(printed), ""};
}
inline Answer yOf(std::size_t i, std::string printed) {
    return {"y of force " + std::to_string(i), [i](const Solution& s) { return s.forces.at(i).vector.y(); },
            std::move(printed), ""};
}
inline Answer derived(std::string what, std::function<double(const Solution&)> value, std::string printed) {
    return {std::move(what), std::move(value), std::move(printed), ""};
}

inline void expectPrinted(const std::string& what, double value, const std::string& printed) {
    EXPECT_TRUE(agrees(value, printed)) << what << " is " << value << ", printed " << printed;
}

inline void expectAnswer(const Answer& answer, const Solution& solution) {
    const double value = answer.value(solution);
    const auto fits = [&](const std::string& printed) {
        return answer.direction ? agreesAsDirection(value, printed) : agrees(value, printed);
    };
    if (answer.exact.empty()) {
        EXPECT_TRUE(fits(answer.printed)) << answer.what << " is " << value << ", printed " << answer.printed;
        return;
    }
    EXPECT_TRUE(fits(answer.exact)) << answer.what << " is " << value << ", exact " << answer.exact;
    EXPECT_FALSE(fits(answer.printed)) << answer.what << " agrees with " << answer.printed << " after all";
}

/// A published example: where it stands, what is given, what is printed.
struct Example {
    std::string name, source;
    Sketch given;
    std::vector<Answer> answers;
};

inline void expectExample(const Example& example) {
    SCOPED_TRACE(example.name + " (" + example.source + ")");
    const auto fault = firstFault(example.given);
    ASSERT_FALSE(fault) << fault->place << " " << fault->message;
    const Solved solved = solve(example.given);
    ASSERT_EQ(solved.status, Status::unique) << solved.message().text();
    for (const Answer& answer : example.answers) {
        expectAnswer(answer, solved.solutions.front());
    }
}

} // namespace tailpoint::testing
