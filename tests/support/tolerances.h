// SPDX-License-Identifier: MIT
// Seeded sketches with tolerances, of every family, and a search of their boxes by trial: points drawn,
// corners, then steps uphill from the best. It knows solve() and nothing of core/solve/tolerance. Degrees.
#pragma once

#include "core/solve/solve.h"
#include "tests/support/cases.h"

#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>
#include <vector>

namespace tailpoint::testing {

/// A given value of a sketch that has a tolerance.
struct Knob {
    int index = kSumIndex;
    bool isDirection = false;
    double least = 0, greatest = 0;
};

inline Force& vectorOf(Sketch& sketch, int index) {
    return index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(index)];
}

inline std::vector<Knob> knobsOf(const Sketch& sketch) {
    std::vector<Knob> knobs;
    const auto add = [&](const Force& force, int index) {
        if (force.magnitude.value && force.magnitude.tolerance) {
            const Margins margins = marginsOf(force.magnitude);
            knobs.push_back({index, false, std::fmax(0, *force.magnitude.value - margins.minus),
                             *force.magnitude.value + margins.plus});
        }
        if (const auto* angle = std::get_if<AngleForm>(&force.direction.form);
            angle != nullptr && force.direction.tolerance) {
            const Margins margins = marginsOf(force.direction, sketch);
            knobs.push_back({index, true, angle->value - margins.minus, angle->value + margins.plus});
        }
    };
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        add(sketch.forces[i], static_cast<int>(i));
    }
    add(sketch.sum, kSumIndex);
    return knobs;
}

inline void set(Sketch& sketch, const Knob& knob, double value) {
    Force& force = vectorOf(sketch, knob.index);
    if (knob.isDirection) {
        force.direction.form = AngleForm{value};
    } else {
        force.magnitude.value = value;
    }
}

inline const SolvedForce& solvedVector(const Solution& solution, int index) {
    return index == kSumIndex ? solution.sum : solution.forces[static_cast<std::size_t>(index)];
}

/// Which of two roots a solution is: where line meets circle, whether the circle's vector goes along the
/// line's given sense; where circles meet, whether the second lies counter-clockwise of the first.
inline bool rootOf(const Sketch& sketch, const Solved& solved, const Solution& solution) {
    const auto [first, second] = solved.unknownVectors;
    if (second == kNoVector || solved.family == Family::twoMagnitudes || sketch.smallest) {
        return true;
    }
    const auto forceSide = [&](int index) {
        return Eigen::Vector2d((index == kSumIndex ? -1 : 1) * solvedVector(solution, index).vector);
    };
    const Eigen::Vector2d a = forceSide(first), b = forceSide(second);
    if (solved.family == Family::twoDirections) {
        return a.x() * b.y() - a.y() * b.x() > 0;
    }
    const bool firstIsLine = !solvedVector(solution, first).directionFound;
    const int line = firstIsLine ? first : second;
    const Force& given = line == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(line)];
    const CosSin unit = *unitVector(given.direction, sketch);
    const Eigen::Vector2d along((line == kSumIndex ? -1 : 1) * static_cast<double>(unit.cos),
                                (line == kSumIndex ? -1 : 1) * static_cast<double>(unit.sin));
    return along.dot(firstIsLine ? b : a) > 0;
}

/// The answer with this root at a point of the box, or none.
class Trial {
public:
    Trial(Sketch sketch, std::size_t answer) : sketch_(std::move(sketch)), knobs_(knobsOf(sketch_)) {
        const Solved solved = solve(sketch_);
        root_ = rootOf(sketch_, solved, solved.solutions[answer]);
        for (const Knob& knob : knobs_) {
            const Force& force = vectorOf(sketch_, knob.index);
            nominal_.push_back(knob.isDirection ? std::get<AngleForm>(force.direction.form).value
                                                : *force.magnitude.value);
        }
    }
    const std::vector<Knob>& knobs() const { return knobs_; }
    const std::vector<double>& nominal() const { return nominal_; }
    std::optional<Solution> at(const std::vector<double>& values) {
        for (std::size_t i = 0; i < knobs_.size(); ++i) {
            set(sketch_, knobs_[i], values[i]);
        }
        const Solved solved = solve(sketch_);
        for (const Solution& solution : solved.solutions) {
            if (solved.tangent || rootOf(sketch_, solved, solution) == root_) {
                return solution;
            }
        }
        return std::nullopt;
    }

private:
    Sketch sketch_;
    std::vector<Knob> knobs_;
    std::vector<double> nominal_;
    bool root_ = true;
};

using Measure = double (*)(const SolvedForce& vector);

/// The same the other way round, for where a root ends (a circle is touched, a line is slack) and solve() as
/// a function of the given values has a cliff: of the two vectors to find, `index` is chosen whole, the other
/// is what is left over, and its own given value must come out within its tolerance. Only where it has one.
class Swapped {
public:
    Swapped(Sketch sketch, std::size_t answer, int index) : sketch_(std::move(sketch)), index_(index) {
        const Solved solved = solve(sketch_);
        const Solution& solution = solved.solutions[answer];
        if (solved.unknownVectors[1] == kNoVector || sketch_.smallest || solved.tangent) {
            return;
        }
        solved_ = solved;
        root_ = rootOf(sketch_, solved, solution);
        other_ = solved.unknownVectors[0] == index ? solved.unknownVectors[1] : solved.unknownVectors[0];
        for (const Knob& knob : knobsOf(sketch_)) {
            if (knob.index == other_) {
                otherKnob_ = knob;
            } else {
                add(knob, valueOf(knob));
            }
        }
        const SolvedForce& own = solvedVector(solution, index);
        if (!own.direction) {
            otherKnob_.reset();
            return;
        }
        if (own.directionFound) {
            add({index, true, *own.direction - 180, *own.direction + 180}, *own.direction);
        } else {
            add({index, false, 0, 20 * own.magnitude + 1e-3}, own.magnitude);
            turned_ = own.turned;
        }
    }
    bool isOf() const { return otherKnob_.has_value(); }
    const std::vector<Knob>& knobs() const { return knobs_; }
    const std::vector<double>& nominal() const { return nominal_; }
    std::optional<Solution> at(const std::vector<double>& values) {
        for (std::size_t i = 0; i < knobs_.size(); ++i) {
            set(sketch_, knobs_[i], values[i]);
        }
        Eigen::Vector2d rest(0, 0);
        Eigen::Vector2d own(0, 0);
        for (int i = kSumIndex; i < static_cast<int>(sketch_.forces.size()); ++i) {
            if (i == other_) {
                continue;
            }
            const Force& force = vectorOf(sketch_, i);
            const double sign = i == kSumIndex ? -1 : 1;
            const std::optional<CosSin> unit = unitVector(force.direction, sketch_);
            if (!unit) {
                continue; // a sum that is zero
            }
            Eigen::Vector2d vector = *force.magnitude.value * Eigen::Vector2d(static_cast<double>(unit->cos),
                                                                              static_cast<double>(unit->sin));
            if (i == index_ && turned_) {
                vector = -vector;
            }
            rest += sign * vector;
            own = i == index_ ? vector : own;
        }
        const Eigen::Vector2d left = (other_ == kSumIndex ? 1 : -1) * rest;
        return solutionOf(own, left);
    }

private:
    double valueOf(const Knob& knob) {
        const Force& force = vectorOf(sketch_, knob.index);
        return knob.isDirection ? std::get<AngleForm>(force.direction.form).value : *force.magnitude.value;
    }
    void add(const Knob& knob, double nominal) {
        knobs_.push_back(knob);
        nominal_.push_back(nominal);
    }
    SolvedForce filled(int index, const Eigen::Vector2d& vector) const {
        SolvedForce made = solvedVector(solved_.solutions.front(), index);
        made.vector = vector;
        made.magnitude = vector.norm();
        made.direction = referredDirection(vector.x(), vector.y(), sketch_);
        return made;
    }
    std::optional<Solution> solutionOf(const Eigen::Vector2d& own, const Eigen::Vector2d& left) {
        Solution solution = solved_.solutions.front();
        const auto put = [&](int index, const Eigen::Vector2d& vector) {
            (index == kSumIndex ? solution.sum : solution.forces[static_cast<std::size_t>(index)]) =
                filled(index, vector);
        };
        put(index_, own);
        put(other_, left);
        const SolvedForce& other = solvedVector(solution, other_);
        if (!other.direction) {
            return std::nullopt;
        }
        if (otherKnob_->isDirection) {
            const Force& force =
                other_ == kSumIndex ? sketch_.sum : sketch_.forces[static_cast<std::size_t>(other_)];
            const double middle = (otherKnob_->least + otherKnob_->greatest) / 2;
            double off = std::remainder(*other.direction - middle, 360);
            if (force.lineOfActionOnly) {
                off = std::remainder(off, 180);
            }
            if (std::fabs(off) > (otherKnob_->greatest - otherKnob_->least) / 2) {
                return std::nullopt;
            }
            // Which root it is depends on where the line lies now, not on where it was given.
            set(sketch_, *otherKnob_, middle + off);
        } else if (other.magnitude < otherKnob_->least || other.magnitude > otherKnob_->greatest) {
            return std::nullopt;
        }
        return rootOf(sketch_, solved_, solution) == root_ ? std::optional(solution) : std::nullopt;
    }

    Sketch sketch_;
    Solved solved_;
    int index_ = kSumIndex, other_ = kNoVector;
    std::optional<Knob> otherKnob_;
    bool root_ = true, turned_ = false;
    std::vector<Knob> knobs_;
    std::vector<double> nominal_;
};

/// Between a point with an answer and one without: moves `toward` to about the last that has one.
template <class ValueAt>
double lastWithAnswer(const std::vector<double>& from, std::vector<double>& toward, const ValueAt& valueAt) {
    const std::vector<double> end = toward;
    double reached = 0, best = -std::numeric_limits<double>::infinity();
    for (double step = 0.5; step > 1e-9; step /= 2) {
        std::vector<double> next = from;
        for (std::size_t i = 0; i < next.size(); ++i) {
            next[i] += (reached + step) * (end[i] - from[i]);
        }
        if (const double value = valueAt(next); value > -std::numeric_limits<double>::infinity()) {
            reached += step;
            best = value;
            toward = next;
        }
    }
    return best;
}

/// Uphill from `values` by steps along one value or all, halved where none leads up. A step to where there is
/// no answer is drawn back toward `home`, which has one: so it goes along the edge of what has.
template <class AnyTrial, class Of>
double climbed(AnyTrial& trial, std::vector<double> values, const Of& of, Dice& dice, int rounds) {
    const std::vector<double> home = trial.nominal();
    const std::vector<Knob>& knobs = trial.knobs();
    const auto valueAt = [&](const std::vector<double>& at) {
        const std::optional<Solution> solution = trial.at(at);
        return solution ? of(*solution) : -std::numeric_limits<double>::infinity();
    };
    double best = valueAt(values);
    double step = 0.25;
    for (int round = 0; round < rounds; ++round) {
        bool better = false;
        const std::vector<double> before = values;
        const auto attempt = [&](std::vector<double> next) {
            double value = valueAt(next);
            if (value == -std::numeric_limits<double>::infinity()) {
                value = lastWithAnswer(home, next, valueAt);
            }
            if (value > best) {
                best = value;
                values = next;
                better = true;
            }
        };
        for (std::size_t i = 0; i < knobs.size(); ++i) {
            for (const double sense : {-1.0, 1.0}) {
                std::vector<double> next = values;
                next[i] = std::clamp(next[i] + sense * step * (knobs[i].greatest - knobs[i].least),
                                     knobs[i].least, knobs[i].greatest);
                attempt(next);
            }
        }
        for (std::size_t i = 0; i < 2 * knobs.size(); ++i) {
            std::vector<double> next = values;
            for (std::size_t k = 0; k < knobs.size(); ++k) {
                next[k] =
                    std::clamp(next[k] + dice.between(-step, step) * (knobs[k].greatest - knobs[k].least),
                               knobs[k].least, knobs[k].greatest);
            }
            attempt(next);
        }
        constexpr int kMostOn = 60; // twice as far each time, and what still leads is noise
        int on = 0;                 // along what led up as a whole: a ridge goes across the inputs
        for (bool leads = better; leads && on < kMostOn; ++on) {
            std::vector<double> next = values;
            for (std::size_t k = 0; k < knobs.size(); ++k) {
                next[k] = std::clamp(2 * values[k] - before[k], knobs[k].least, knobs[k].greatest);
            }
            const double reached = best;
            attempt(next);
            leads = best > reached;
        }
        step *= better ? 1.0 : 0.5;
    }
    return best;
}

/// Points of the box: drawn, and corners among them.
inline std::vector<double> drawn(const std::vector<Knob>& knobs, Dice& dice) {
    std::vector<double> values;
    const bool corner = dice.whole(3) == 0;
    for (const Knob& knob : knobs) {
        const double part = corner || dice.whole(4) == 0 ? static_cast<double>(dice.toss()) : dice.part();
        values.push_back(part == 1 ? knob.greatest : knob.least + part * (knob.greatest - knob.least));
    }
    return values;
}

/// Families that have a range, as tolerantCase() makes them.
enum class Asked { resultant, magnitudes, magnitudeAndDirection, directions, smallestForce, smallestSum };
inline constexpr std::size_t kAsked = 6;

namespace tolerant {

inline void loosen(Force& force, Dice& dice, double percent, double degrees) {
    if (force.magnitude.value && dice.whole(3) != 0) {
        const double part = percent * (0.01 + dice.part()) / 1.01;
        if (dice.whole(4) == 0) {
            force.magnitude.tolerance = Tolerance{part, part, true};
        } else {
            const double plus = *force.magnitude.value * part / 100;
            force.magnitude.tolerance = Tolerance{plus, dice.whole(4) == 0 ? 0 : plus, false};
        }
    }
    if (isGiven(force.direction) && dice.whole(3) != 0) {
        const double plus = degrees * (0.01 + dice.part()) / 1.01;
        force.direction.tolerance = Tolerance{plus, dice.whole(4) == 0 ? plus / 3 : plus, false};
    }
}

} // namespace tolerant

/// Two to six vectors beside the sum; the values of one closed polygon, so that there is an answer.
/// Tolerances up to `percent` and `degrees`.
inline Sketch tolerantCase(Dice& dice, Asked asked, double percent, double degrees) {
    const std::size_t count = 2 + dice.whole(5);
    std::vector<Force> forces;
    Eigen::Vector2d sum(0, 0);
    for (std::size_t i = 0; i < count; ++i) {
        const double magnitude = dice.toss() ? std::round(dice.between(1, 400)) : dice.power(0, 3);
        const double at = dice.toss() ? std::round(dice.between(-180, 180)) : dice.between(-180, 180);
        forces.push_back(force("F" + std::to_string(i), magnitude, at));
        const double radians = at * std::numbers::pi / 180;
        sum += magnitude * Eigen::Vector2d(std::cos(radians), std::sin(radians));
    }
    Force total = force("R", sum.norm(), std::atan2(sum.y(), sum.x()) * 180 / std::numbers::pi);
    const std::size_t one = dice.whole(count);
    const std::size_t two = (one + 1 + dice.whole(count - 1)) % count;
    const bool ofSum = dice.whole(4) == 0;
    Force& first = forces[one];
    Force& second = ofSum ? total : forces[two];
    switch (asked) {
    case Asked::resultant:
        (dice.whole(4) == 0 ? forces[one] : total) = force("R", kToFind, kToFind);
        break;
    case Asked::magnitudes:
        first.magnitude.value.reset();
        second.magnitude.value.reset();
        break;
    case Asked::magnitudeAndDirection:
        (dice.toss() ? first : second).magnitude.value.reset();
        (first.magnitude.value ? first : second).direction.form = ToFind{};
        break;
    case Asked::directions:
        first.direction.form = ToFind{};
        second.direction.form = ToFind{};
        break;
    case Asked::smallestForce:
        first = force(first.name, kToFind, kToFind);
        total.magnitude.value.reset();
        break;
    case Asked::smallestSum:
        first.magnitude.value.reset();
        total = force("R", kToFind, kToFind);
        break;
    }
    for (std::size_t i = 0; i < count; ++i) {
        forces[i].name = "F" + std::to_string(i);
    }
    total.name = "R";
    for (Force& each : forces) {
        tolerant::loosen(each, dice, percent, degrees);
        each.lineOfActionOnly = !each.magnitude.value && isGiven(each.direction) && dice.whole(4) == 0;
    }
    tolerant::loosen(total, dice, percent, degrees);
    total.lineOfActionOnly = !total.magnitude.value && isGiven(total.direction) && dice.whole(4) == 0;
    Sketch made = sketch(std::move(forces), std::move(total));
    if (asked == Asked::smallestForce) {
        made.smallest = made.forces[one].name;
    } else if (asked == Asked::smallestSum) {
        made.smallest = made.sum.name;
    }
    return anyReference(dice, made);
}

} // namespace tailpoint::testing
