// SPDX-License-Identifier: MIT
#include "core/explain/agreement.h"

#include "core/quantity/decimals.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

constexpr int kAddedUp = 1; ///< guard figures that are left when roundings on the way have added up

double placeOfSize(const Board& board, double size, int guard) {
    const double lead = size == 0 ? 0 : std::floor(std::log10(std::abs(size)));
    return std::pow(10.0, lead + 1 - figuresOf(size, board.sketch) - guard);
}

double placeOfWay(const Board& board, int guard) {
    return std::pow(10.0, -shownAngleDecimals(board.sketch) - guard);
}

bool isRounded(const Board& board, const Formula& number) {
    return !board.carried.decimal(number.id).exactly;
}

/// A tick more: the places that the comparison itself is rounded to.
bool within(double off, double slack) {
    return off <= slack * (1 + 1e-9);
}

/// Of all magnitudes: sums printed by hand are themselves rounded to its last place.
double greatestOf(const Board& board) {
    double greatest = board.found(kSumVector).sizeNumber.value;
    for (const Vector& force : board.forces())
        greatest = std::max(greatest, board.found(force.id).sizeNumber.value);
    return greatest;
}

enum class Verdict { equal, shown, addedUp, lastPlace, byHand, slip };

Verdict verdictOf(const Board& board, double off, const Slack& slack) {
    if (off <= Carried::kNoise * board.carried.scale)
        return Verdict::equal;
    if (board.options.handRounding)
        return within(off, slack.carried + placeOfSize(board, greatestOf(board), 0)) ? Verdict::lastPlace
                                                                                     : Verdict::byHand;
    return within(off, std::max(slack.carried, slack.shown)) ? Verdict::shown
           : within(off, slack.addedUp)                      ? Verdict::addedUp
                                                             : Verdict::slip;
}

double largest(long double x, long double y) {
    return static_cast<double>(std::max(std::abs(x), std::abs(y)));
}

} // namespace

namespace {

/// One in the last place of everything found, with so many guard figures.
double placesOf(const Board& board, int guard) {
    double places = 0;
    const auto add = [&](const Vector& vector) {
        const double size = std::abs(vector.sizeNumber.value);
        const double unit = 2 * std::numbers::pi / turnIn(board.sketch.angleUnit);
        if (!vector.sizeGiven && isRounded(board, vector.sizeNumber))
            places += placeOfSize(board, size, guard);
        if (!vector.wayGiven && vector.direction && isRounded(board, vector.wayNumber))
            places += size * unit * placeOfWay(board, guard);
    };
    for (const Vector& force : board.forces())
        add(board.found(force.id));
    add(board.found(kSumVector));
    return places;
}

/// One in the last place that is carried, of each component and of the angles that lead from one to another.
double worstOf(const Board& board) {
    constexpr int angles = 4;
    const int guard = board.carried.guard();
    const double unit = 2 * std::numbers::pi / turnIn(board.sketch.angleUnit),
                 forces = static_cast<double>(board.forces().size());
    return placesOf(board, guard) + (forces + 2) * placeOfSize(board, greatestOf(board), guard) +
           angles * board.carried.scale * unit * placeOfWay(board, guard);
}

bool isAngle(const Board& board, const Formula& number) {
    return !number.sub.empty() && number.sub == board.halfTurn().sub;
}

} // namespace

/// Angles on the way turn all that is turned by them.
Slack slackOf(const Board& board) {
    const double turned = board.carried.scale * 2 * std::numbers::pi / turnIn(board.sketch.angleUnit) *
                          placeOfWay(board, kAddedUp);
    return {placesOf(board, board.carried.guard()),
            std::min(placesOf(board, 0) / 2, std::max(placesOf(board, kAddedUp), turned)), worstOf(board)};
}

bool isRoundedApart(const Board& board, const Formula& a, const Formula& b, double size) {
    const double unit = 2 * std::numbers::pi / turnIn(board.sketch.angleUnit), most = worstOf(board);
    return within(distanceOf(board, a, b), isAngle(board, a) ? most / (size * unit) : most);
}

int decimalsOf(const Formula& number) {
    const auto point = number.text.find('.');
    return point == std::string::npos ? 0 : static_cast<int>(number.text.size() - point - 1);
}

double lastPlaceOf(const Board& board, const Formula& number, int guard) {
    return isAngle(board, number) ? placeOfWay(board, guard) : placeOfSize(board, number.value, guard);
}

bool isWithinOnePlace(const Board& board, const Formula& a, const Formula& b) {
    return within(distanceOf(board, a, b), lastPlaceOf(board, b));
}

double distanceOf(const Board& board, const Formula& a, const Formula& b) {
    const double gap = std::abs(a.value - b.value);
    return isAngle(board, a) ? std::abs(normalized(gap, board.sketch.angleUnit)) : gap;
}

namespace {

/// Without zeros at its end that say nothing.
std::string withoutZeros(std::string digits) {
    if (digits.find('.') == std::string::npos)
        return digits;
    digits.erase(digits.find_last_not_of('0') + 1);
    if (digits.ends_with('.'))
        digits.pop_back();
    return digits;
}

} // namespace

Prose apart(const Board& board, const Formula& a, const Formula& b) {
    const double off = std::abs(a.value - b.value);
    if (a.text.find('e') != std::string::npos || b.text.find('e') != std::string::npos)
        return board.say(SENTENCE("solution", "{gap}"), "gap", number(off, significant(off, 1), a.sub));
    const int decimals = std::max(decimalsOf(a), decimalsOf(b));
    const std::string digits = withoutZeros(fixedDecimals(off, decimals));
    if (digits != "0")
        return board.say(SENTENCE("solution", "{gap}"), "gap", number(off, digits, a.sub));
    const double place = std::pow(10.0, -decimals);
    return board.say(SENTENCE("solution", "less than {place}"), "place",
                     number(place, fixedDecimals(place, decimals), a.sub));
}

Prose vanishing(const Board& board, const Formula& x, const Formula& y) {
    switch (verdictOf(board, largest(x.value, y.value), slackOf(board))) {
    case Verdict::equal:
        return board.say(SENTENCE("solution", "Both sums vanish: the forces are in equilibrium."));
    case Verdict::shown:
        return board.say(SENTENCE("solution",
                                  "{x} and {y} are left over, too little to show in the answer: the "
                                  "forces are in equilibrium."),
                         "x", x, "y", y);
    case Verdict::addedUp:
        return board.say(SENTENCE("solution",
                                  "{x} and {y} are left over, no more than rounding on the way can "
                                  "add up to: the forces are in equilibrium."),
                         "x", x, "y", y);
    case Verdict::lastPlace:
        return board.say(SENTENCE("solution", "{x} and {y} are left over, no more than a change of one "
                                              "unit in the last place of the numbers could cause: the "
                                              "forces are in equilibrium."),
                         "x", x, "y", y);
    case Verdict::byHand:
        return board.say(SENTENCE("solution", "{x} and {y} are left over, more than a change of one unit "
                                              "in the last place of the numbers could cause: what was "
                                              "rounded on the way adds up."),
                         "x", x, "y", y);
    case Verdict::slip:
        break;
    }
    return board.say(
        SENTENCE("solution",
                 "The sums don't vanish: {x} and {y} are more than rounding leaves over. Somewhere "
                 "on the way there is a slip."),
        "x", x, "y", y);
}

Prose sameComponents(const Board& board, const Vector& sum, const Formula& x, const Formula& sumX,
                     const Formula& y, const Formula& sumY) {
    const double off = largest(x.value - sumX.value, y.value - sumY.value);
    const auto wording = [&] {
        switch (verdictOf(board, off, slackOf(board))) {
        case Verdict::equal:
            return SENTENCE("solution", "Both sides have the same components, those of {sum}.");
        case Verdict::shown:
            return SENTENCE(
                "solution",
                "The sums differ from the components of {sum} by {x} and by {y}, too little to show in the "
                "answer: both sides agree.");
        case Verdict::addedUp:
            return SENTENCE("solution",
                            "The sums differ from the components of {sum} by {x} and by {y}, no more than "
                            "rounding on the way can add up to: both sides agree.");
        case Verdict::lastPlace:
            return SENTENCE("solution",
                            "The sums differ from the components of {sum} by {x} and by {y}, no more than a "
                            "change of one "
                            "unit in the last place of the numbers could cause: both sides agree.");
        case Verdict::byHand:
            return SENTENCE("solution", "The sums differ from the components of {sum} by {x} and by "
                                        "{y}, more than a change of one unit in the last place of "
                                        "the numbers could cause: what was rounded on the way adds "
                                        "up.");
        case Verdict::slip:
            break;
        }
        return SENTENCE(
            "solution",
            "The sums differ from the components of {sum} by {x} and by {y}, more than rounding leaves "
            "over. Somewhere on the way there is a slip.");
    }();
    return board.say(wording, "sum", sum.vector, "x", apart(board, x, sumX), "y", apart(board, y, sumY));
}

Prose againAlong(const Board& board, const Vector& sum, const Formula& along, const Formula& across) {
    const Formula size = equal(sum.size, sum.sizeNumber);
    const auto wording = [&] {
        switch (verdictOf(board, largest(along.value - sum.sizeNumber.value, across.value), slackOf(board))) {
        case Verdict::equal:
            return SENTENCE("solution", "Along {sum} its magnitude comes out again, and across it zero.");
        case Verdict::shown:
            return SENTENCE(
                "solution",
                "Along {sum} the sum, {along}, differs from {size} by {off}, and {across} is left "
                "across it, where it should be zero: both too little to show in the answer, "
                "so both ways agree.");
        case Verdict::addedUp:
            return SENTENCE("solution",
                            "Along {sum} the sum, {along}, differs from {size} by {off}, and {across} "
                            "is left across it, where it should be zero: no more than rounding on "
                            "the way can add up to, so both ways agree.");
        case Verdict::lastPlace:
            return SENTENCE("solution", "Along {sum} the sum, {along}, differs from {size} by {off}, "
                                        "and {across} is left across it, where it should be zero: no "
                                        "more than a change of one unit in the last place of the "
                                        "numbers could cause, so both ways agree.");
        case Verdict::byHand:
            return SENTENCE("solution", "Along {sum} the sum, {along}, differs from {size} by {off}, "
                                        "and {across} is left across it, where it should be zero: "
                                        "more than a change of one unit in the last place of the "
                                        "numbers could cause. What was rounded on the way adds up.");
        case Verdict::slip:
            break;
        }
        return SENTENCE(
            "solution",
            "Along {sum} the sum, {along}, differs from {size} by {off}, and {across} is left across "
            "it, where it should be zero: more than rounding leaves over. Somewhere on "
            "the way there is a slip.");
    }();
    return board.say(wording, "sum", sum.vector, "size", size, "off", apart(board, along, sum.sizeNumber),
                     "along", along, "across", across);
}

Prose rightAngle(const Board& board, const Vector& smallest, const Vector& line, const Formula& along) {
    const int guard = board.options.handRounding ? 0 : kAddedUp;
    const double leg = smallest.sizeNumber.value, whole = line.sizeNumber.value,
                 unit = 2 * std::numbers::pi / turnIn(board.sketch.angleUnit);
    const double slack = leg * placeOfSize(board, whole, guard) / whole + placeOfSize(board, leg, guard) +
                         2 * leg * unit * placeOfWay(board, guard);
    const auto wording = [&] {
        if (std::abs(along.value) <= Carried::kNoise * board.carried.scale)
            return SENTENCE("solution",
                            "The scalar product of {smallest} and {line} is zero: {smallest} has no "
                            "component along {line}, is at right angles to it, and so the smallest.");
        if (within(std::abs(along.value), slack))
            return SENTENCE("solution",
                            "That is what {smallest} has along {line}, by the scalar product of the "
                            "two: zero but for rounding, so {smallest} is at right angles to {line}, "
                            "and the smallest.");
        if (board.options.handRounding)
            return SENTENCE("solution", "That is what {smallest} has along {line}, by the scalar "
                                        "product of the two: more than a change of one unit in the "
                                        "last place of the numbers could cause. What was rounded on "
                                        "the way adds up.");
        return SENTENCE("solution",
                        "The scalar product of {smallest} and {line} is not zero, so the two do not "
                        "enclose a right angle: there is a slip on the way.");
    }();
    return board.say(wording, "smallest", smallest.vector, "line", line.vector);
}

/// How much further than a force its quotient by a sine may be off is left to the answer's digits.
Prose sameQuotients(const Board& board, const std::array<Formula, 3>& quotients) {
    const auto [least, most] =
        std::minmax_element(quotients.begin(), quotients.end(),
                            [](const Formula& a, const Formula& b) { return a.value < b.value; });
    const double gap = most->value - least->value,
                 place = placeOfSize(board, most->value, board.carried.guard());
    if (gap <= Carried::kNoise * most->value)
        return board.say(SENTENCE("solution", "All three are the same number."));
    const Prose off = apart(board, *most, *least);
    if (within(gap, place))
        return board.say(SENTENCE("solution", "They differ by {off}, one in the last place: as equal as the "
                                              "rounding allows."),
                         "off", off);
    if (board.options.handRounding)
        return board.say(SENTENCE("solution", "They differ by {off}: what was rounded on the way adds up."),
                         "off", off);
    return within(gap, placeOfSize(board, most->value, 0))
               ? board.say(SENTENCE("solution",
                                    "They differ by {off}, less than an answer shows: all three are the "
                                    "same number."),
                           "off", off)
               : board.say(
                     SENTENCE("solution",
                              "They differ by {off}, more than rounding explains. Somewhere on the way there "
                              "is a slip."),
                     "off", off);
}

Prose turnedApart(const Board& board, const Formula& a, const Formula& b) {
    if (!isAngle(board, a))
        return apart(board, a, b);
    Formula near = a;
    near.value = b.value + normalized(a.value - b.value, board.sketch.angleUnit);
    return apart(board, near, b);
}

Prose agreement(const Board& board, const Vector& found, const Formula& size, const Formula& way) {
    const double bySize = std::abs(size.value - found.sizeNumber.value),
                 byWay = distanceOf(board, way, found.wayNumber);
    const auto isWithin = [&](int guard, double places) {
        return within(bySize, places * placeOfSize(board, found.sizeNumber.value, guard)) &&
               within(byWay, places * placeOfWay(board, guard));
    };
    if (size.text == found.sizeNumber.text && byWay <= Carried::kNoise * board.half())
        return board.say(SENTENCE("solution", "Magnitude and direction are those found: {size} and {way}."),
                         "size", equal(found.size, found.sizeNumber), "way",
                         equal(found.theta, found.wayNumber));
    const auto wording = [&] {
        if (isWithin(board.carried.guard(), 1))
            return SENTENCE("solution", "The triangle gave {size} and {way}: they differ by {bySize} "
                                        "and by {byWay}, by one in the last place at most, so both "
                                        "ways agree.");
        if (!board.options.handRounding && isWithin(0, 0.5))
            return SENTENCE("solution", "The triangle gave {size} and {way}: they differ by {bySize} "
                                        "and by {byWay}, less than the answer shows, so both ways "
                                        "agree.");
        if (board.options.handRounding)
            return SENTENCE("solution", "The triangle gave {size} and {way}: they differ by {bySize} "
                                        "and by {byWay}, more than one in the last place. What was "
                                        "rounded on the way adds up.");
        if (isRoundedApart(board, size, found.sizeNumber, found.sizeNumber.value) &&
            isRoundedApart(board, way, found.wayNumber, found.sizeNumber.value))
            return SENTENCE("solution", "The triangle gave {size} and {way}: they differ by {bySize} "
                                        "and by {byWay}, no more than rounding on the way can add up to, so "
                                        "both ways agree.");
        return SENTENCE("solution", "The triangle gave {size} and {way}: they differ by {bySize} "
                                    "and by {byWay}, more than rounding explains. Somewhere on "
                                    "the way there is a slip.");
    }();
    return board.say(wording, "size", equal(found.size, found.sizeNumber), "way",
                     equal(found.theta, found.wayNumber), "bySize", apart(board, size, found.sizeNumber),
                     "byWay", turnedApart(board, way, found.wayNumber));
}

} // namespace tailpoint::explaining
