// SPDX-License-Identifier: MIT
#include "core/figure/sweep_plot.h"

#include <array>
#include <cmath>

namespace tailpoint {
namespace {

double niceStep(double least, bool areDegrees) {
    static constexpr std::array degrees{15.0, 30.0, 45.0, 90.0, 180.0, 360.0};
    if (areDegrees && least > 10) {
        for (const double step : degrees) {
            if (step >= least) {
                return step;
            }
        }
    }
    const double power = std::pow(10.0, std::floor(std::log10(least)));
    for (const double times : {1.0, 2.0, 5.0}) {
        if (times * power >= least * (1 - 1e-12)) {
            return times * power;
        }
    }
    return 10 * power;
}

} // namespace

std::vector<double> niceMarks(double low, double high, int wanted, bool areDegrees) {
    std::vector<double> marks;
    if (!(high > low) || wanted < 1) {
        return marks;
    }
    const double step = niceStep((high - low) / wanted, areDegrees);
    const double first = std::ceil(low / step - 1e-9), last = std::floor(high / step + 1e-9);
    for (double k = first; k <= last && marks.size() < 1000; ++k) {
        marks.push_back(k * step + 0.0);
    }
    return marks;
}

} // namespace tailpoint
