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

/// A bound with one figure, rounded up.
Formula bound(const Board& board, double value) {
    const double unit = value == 0 ? 1 : std::pow(10.0, std::floor(std::log10(value)));
    const double up = std::ceil(value / unit * (1 - 1e-9)) * unit;
    return number(up, significant(up, 1), std::string(symbolOf(board.sketch.forceUnit)));
}

enum class Verdict { equal, carried, shown, byHand, slip };

Verdict verdictOf(const Board& board, double off, const Slack& slack) {
    if (off <= Carried::kNoise * board.carried.scale)
        return Verdict::equal;
    if (within(off, slack.carried))
        return Verdict::carried;
    if (board.options.handRounding)
        return Verdict::byHand;
    return within(off, slack.shown) ? Verdict::shown : Verdict::slip;
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

} // namespace

/// Angles on the way turn all that is turned by them.
Slack slackOf(const Board& board) {
    const double turned = board.carried.scale * 2 * std::numbers::pi / turnIn(board.sketch.angleUnit) *
                          placeOfWay(board, kAddedUp);
    return {placesOf(board, board.carried.guard()),
            std::min(placesOf(board, 0) / 2, std::max(placesOf(board, kAddedUp), turned))};
}

Prose vanishing(const Board& board, long double x, long double y) {
    const Slack slack = slackOf(board);
    const Formula left = board.carried.leftOver(x), up = board.carried.leftOver(y);
    switch (verdictOf(board, largest(x, y), slack)) {
    case Verdict::equal:
        return board.say(
            SENTENCE("solution", "Both sums vanish: the forces hold one another in equilibrium."));
    case Verdict::carried:
        return board.say(SENTENCE("solution",
                                  "Both sums are zero to within the rounding of the forces, {bound}: "
                                  "they hold one another in equilibrium."),
                         "bound", bound(board, slack.carried));
    case Verdict::shown:
        return board.say(SENTENCE("solution",
                                  "Both sums are zero to within the rounding of the answer, {bound}: "
                                  "the forces hold one another in equilibrium."),
                         "bound", bound(board, slack.shown));
    case Verdict::byHand:
        return board.say(
            SENTENCE("solution",
                     "What is left over is more than the rounding of the forces, {bound}: what was "
                     "rounded on the way adds to it."),
            "bound", bound(board, slack.carried));
    case Verdict::slip:
        break;
    }
    return board.say(
        SENTENCE("solution",
                 "The sums don't vanish: {x} and {y} are more than rounding leaves over. Somewhere "
                 "on the way there is a slip."),
        "x", left, "y", up);
}

Prose sameComponents(const Board& board, const Vector& sum, long double x, long double y) {
    const Slack slack = slackOf(board);
    const Formula left = board.carried.leftOver(std::abs(x)), up = board.carried.leftOver(std::abs(y));
    switch (verdictOf(board, largest(x, y), slack)) {
    case Verdict::equal:
        return board.say(SENTENCE("solution", "Both ways lead to the same components of {sum}."), "sum",
                         sum.vector);
    case Verdict::carried:
        return board.say(SENTENCE("solution",
                                  "They differ from those of {sum} by {x} and {y}, no more than the "
                                  "rounding of what was found, {bound}: both ways agree."),
                         "sum", sum.vector, "x", left, "y", up, "bound", bound(board, slack.carried));
    case Verdict::shown:
        return board.say(SENTENCE("solution",
                                  "They differ from those of {sum} by {x} and {y}, no more than the "
                                  "rounding of the answer, {bound}: both ways agree."),
                         "sum", sum.vector, "x", left, "y", up, "bound", bound(board, slack.shown));
    case Verdict::byHand:
        return board.say(
            SENTENCE("solution",
                     "They differ from those of {sum} by {x} and {y}, more than the rounding of what "
                     "was found, {bound}: what was rounded on the way adds to it."),
            "sum", sum.vector, "x", left, "y", up, "bound", bound(board, slack.carried));
    case Verdict::slip:
        break;
    }
    return board.say(SENTENCE("solution",
                              "They differ from those of {sum} by {x} and {y}, more than rounding "
                              "leaves over. Somewhere on the way there is a slip."),
                     "sum", sum.vector, "x", left, "y", up);
}

Prose againAlong(const Board& board, const Vector& sum, long double along, long double across) {
    const Slack slack = slackOf(board);
    const long double off = along - static_cast<long double>(sum.sizeNumber.value);
    const Formula left = board.carried.leftOver(std::abs(off)), up = board.carried.leftOver(std::abs(across));
    switch (verdictOf(board, largest(off, across), slack)) {
    case Verdict::equal:
        return board.say(
            SENTENCE("solution", "Along {sum} its magnitude comes out again, and across it nothing."), "sum",
            sum.vector);
    case Verdict::carried:
        return board.say(SENTENCE("solution",
                                  "That is {size} along {sum} and nothing across it, to within the "
                                  "rounding of what was found, {bound}."),
                         "size", sum.sizeNumber, "sum", sum.vector, "bound", bound(board, slack.carried));
    case Verdict::shown:
        return board.say(SENTENCE("solution",
                                  "That is {size} along {sum} and nothing across it, to within the "
                                  "rounding of the answer, {bound}."),
                         "size", sum.sizeNumber, "sum", sum.vector, "bound", bound(board, slack.shown));
    case Verdict::byHand:
        return board.say(
            SENTENCE("solution",
                     "It is off by {along} along {sum} and by {across} across it, more than the "
                     "rounding of what was found, {bound}: what was rounded on the way adds to it."),
            "along", left, "sum", sum.vector, "across", up, "bound", bound(board, slack.carried));
    case Verdict::slip:
        break;
    }
    return board.say(SENTENCE("solution",
                              "It is off by {along} along {sum} and by {across} across it, more than "
                              "rounding leaves over. Somewhere on the way there is a slip."),
                     "along", left, "sum", sum.vector, "across", up);
}

/// How much further than a force its quotient by a sine may be off is left to the answer's digits.
Prose sameQuotients(const Board& board, const std::array<double, 3>& quotients) {
    const auto [least, most] = std::minmax_element(quotients.begin(), quotients.end());
    const double apart = *most - *least, place = placeOfSize(board, *most, board.carried.guard());
    const Formula off = board.carried.leftOver(apart);
    if (apart <= Carried::kNoise * *most)
        return board.say(SENTENCE("solution", "All three are the same number."));
    if (within(apart, 2 * place))
        return board.say(
            SENTENCE("solution", "All three are the same number to within two in the last place, {off}."),
            "off", off);
    if (board.options.handRounding)
        return board.say(SENTENCE("solution", "They differ by {off}: what was rounded on the way adds up."),
                         "off", off);
    return within(apart, placeOfSize(board, *most, 0))
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

namespace {

/// A difference with one figure.
Formula difference(double value, const Formula& of) {
    return number(value, significant(value, 1), of.sub);
}

/// Within half a turn.
double turnedApart(const Board& board, double a, double b) {
    return std::abs(normalized(a - b, board.sketch.angleUnit));
}

} // namespace

Prose agreement(const Board& board, const Vector& found, const Formula& size, const Formula& way) {
    const double bySize = std::abs(size.value - found.sizeNumber.value),
                 byWay = turnedApart(board, way.value, found.wayNumber.value);
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
            return SENTENCE("solution",
                            "Found were {size} and {way}: they differ by {bySize} and {byWay}, by one "
                            "in the last place at most, so both ways agree.");
        if (!board.options.handRounding && isWithin(0, 0.5))
            return SENTENCE("solution",
                            "Found were {size} and {way}: they differ by {bySize} and {byWay}, less than "
                            "the answer shows, so both ways agree.");
        if (board.options.handRounding)
            return SENTENCE("solution",
                            "Found were {size} and {way}: they differ by {bySize} and {byWay}, more than "
                            "one in the last place. What was rounded on the way adds up.");
        return SENTENCE("solution",
                        "Found were {size} and {way}: they differ by {bySize} and {byWay}, more than "
                        "rounding explains. Somewhere on the way there is a slip.");
    }();
    return board.say(wording, "size", equal(found.size, found.sizeNumber), "way",
                     equal(found.theta, found.wayNumber), "bySize", difference(bySize, size), "byWay",
                     difference(byWay, way));
}

} // namespace tailpoint::explaining
