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

/// Behind the point; -1 with an exponent.
int decimalsOf(std::string_view text) {
    const std::size_t point = text.find('.');
    if (text.find('e') != std::string_view::npos)
        return -1;
    return point == std::string_view::npos ? 0 : static_cast<int>(text.size() - point - 1);
}

/// How far two printed numbers are apart, in the last place that they have.
struct Apart {
    double value = 0, place = 0;
    Formula number, least; ///< the difference, one in the last place
};

Apart apartBy(double value, const Formula& a, const Formula& b) {
    const int decimals = std::max(decimalsOf(a.text), decimalsOf(b.text));
    const bool isPlain = decimalsOf(a.text) >= 0 && decimalsOf(b.text) >= 0;
    const double place =
        isPlain ? std::pow(10.0, -decimals) : std::pow(10.0, std::floor(std::log10(std::abs(a.value))) - 14);
    const auto told = [&](double number) {
        return tailpoint::number(number, isPlain ? fixedDecimals(number, decimals) : significant(number, 1),
                                 a.sub);
    };
    return {value, place, told(value), told(place)};
}

/// Printed alike they are less than one in the last place apart.
Prose told(const Board& board, const Apart& apart) {
    return apart.value < apart.place / 2
               ? board.say(SENTENCE("solution", "less than {place}"), "place", apart.least)
               : Prose{{apart.number}};
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

/// Calls `size(vector)` for every found magnitude that was rounded, `way(vector)` for every such direction.
template <class Size, class Way>
void forEachRounded(const Board& board, Size size, Way way) {
    const auto look = [&](const Vector& vector) {
        if (!vector.sizeGiven && isRounded(board, vector.sizeNumber))
            size(vector);
        if (!vector.wayGiven && vector.direction && isRounded(board, vector.wayNumber))
            way(vector);
    };
    for (const Vector& force : board.forces())
        look(board.found(force.id));
    look(board.found(kSumVector));
}

/// One in the last place of everything found, with so many guard figures.
double placesOf(const Board& board, int guard) {
    double places = 0;
    forEachRounded(
        board,
        [&](const Vector& vector) { places += placeOfSize(board, std::abs(vector.sizeNumber.value), guard); },
        [&](const Vector& vector) {
            places += std::abs(vector.sizeNumber.value) * 2 * std::numbers::pi /
                      turnIn(board.sketch.angleUnit) * placeOfWay(board, guard);
        });
    return places;
}

/// "0.01 N + (184.19 N)(0.001°)(π/180°) = 0.013 N": the same as it is worked out, in pieces that a line of
/// text may break.
Prose placesTold(const Board& board) {
    const int guard = board.carried.guard();
    const std::string force(symbolOf(board.sketch.forceUnit));
    std::vector<Formula> terms;
    forEachRounded(
        board,
        [&](const Vector& vector) {
            const double place = placeOfSize(board, std::abs(vector.sizeNumber.value), guard);
            terms.push_back(number(place, significant(place, 1), force));
        },
        [&](const Vector& vector) {
            const double place = placeOfWay(board, guard);
            Formula turned =
                product(vector.sizeNumber, number(place, significant(place, 1), vector.wayNumber.sub));
            terms.push_back(board.sketch.angleUnit == AngleUnit::rad
                                ? std::move(turned)
                                : product(std::move(turned), over(symbol("π"), board.halfTurn())));
        });
    const double places = placesOf(board, guard);
    const Formula worth = number(places, significant(places, 2), force);
    if (terms.empty())
        return Prose{{worth}};
    Prose told{{terms.front()}};
    if (terms.size() == 1 && terms.front().kind == FormulaKind::number)
        return told;
    for (std::size_t i = 1; i < terms.size(); ++i)
        told =
            board.say(SENTENCE("solution", "{before} + {next}"), "before", std::move(told), "next", terms[i]);
    return board.say(SENTENCE("solution", "{sum} = {value}"), "sum", std::move(told), "value", worth);
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
                                  "One in the last place of what was found moves a sum by up to {bound}, "
                                  "and no more is left over: the forces hold one another in equilibrium."),
                         "bound", placesTold(board));
    case Verdict::shown:
        return board.say(SENTENCE("solution", "What is left over is less than the answer shows: the forces "
                                              "hold one another in equilibrium."));
    case Verdict::byHand:
        return board.say(SENTENCE("solution", "What is left over is what was rounded by hand on the way, "
                                              "added up."));
    case Verdict::slip:
        break;
    }
    return board.say(
        SENTENCE("solution",
                 "The sums don't vanish: {x} and {y} are more than rounding leaves over. Somewhere "
                 "on the way there is a slip."),
        "x", left, "y", up);
}

Prose sameComponents(const Board& board, const Vector& sum, const Compared& x, const Compared& y) {
    const Slack slack = slackOf(board);
    const auto apart = [](const Compared& c) {
        return apartBy(std::abs(c.forces.value - c.sum.value), c.forces, c.sum);
    };
    const Apart byX = apart(x), byY = apart(y);
    const Prose left = told(board, byX), up = told(board, byY);
    const auto verdict = verdictOf(board, std::max(byX.value, byY.value), slack);
    const bool isLastPlace = within(std::max(byX.value, byY.value), std::max(byX.place, byY.place));
    if (isLastPlace && (verdict == Verdict::byHand || verdict == Verdict::shown))
        return board.say(SENTENCE("solution",
                                  "They differ from those of {sum} by {x} and {y}, no more than one in the "
                                  "last place: both ways agree."),
                         "sum", sum.vector, "x", left, "y", up);
    switch (verdict) {
    case Verdict::equal:
        return board.say(SENTENCE("solution", "Both ways lead to the same components of {sum}."), "sum",
                         sum.vector);
    case Verdict::carried:
        return board.say(SENTENCE("solution",
                                  "They differ from those of {sum} by {x} and {y}. One in the last place of "
                                  "what was found moves a component by up to {bound}: both ways agree."),
                         "sum", sum.vector, "x", left, "y", up, "bound", placesTold(board));
    case Verdict::shown:
        return board.say(SENTENCE("solution", "They differ from those of {sum} by {x} and {y}, less than the "
                                              "answer shows: both ways agree."),
                         "sum", sum.vector, "x", left, "y", up);
    case Verdict::byHand:
        return board.say(SENTENCE("solution", "They differ from those of {sum} by {x} and {y}: what was "
                                              "rounded by hand on the way has added up to that."),
                         "sum", sum.vector, "x", left, "y", up);
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
    const Formula off = number(apart, significant(apart, 1), std::string(symbolOf(board.sketch.forceUnit)));
    if (apart <= Carried::kNoise * *most)
        return board.say(SENTENCE("solution", "All three are the same number."));
    if (within(apart, 2 * place))
        return board.say(SENTENCE("solution",
                                  "They differ by {off}, no more than two in the last place: as equal as the "
                                  "rounding allows."),
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
                     equal(found.theta, found.wayNumber), "bySize",
                     told(board, apartBy(bySize, size, found.sizeNumber)), "byWay",
                     told(board, apartBy(byWay, way, found.wayNumber)));
}

} // namespace tailpoint::explaining
