// SPDX-License-Identifier: MIT
// The check's last word: what came out beside what the estimate said before anything was computed.
#include "core/explain/agreement.h"
#include "core/explain/families.h"

#include "core/quantity/decimals.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::explaining {

namespace {

/// Where a magnitude lies beside the bounds, to the digits of an answer.
enum class Place { between, onLeast, onMost, outside };

Place placeOf(const Board& board, const Expected& expected, const Formula& size) {
    const double slack = 2 * slackOf(board).shown;
    const double least = expected.least ? expected.least->value : 0, most = expected.most->value;
    if (size.value < least - slack || size.value > most + slack)
        return Place::outside;
    if (size.value >= most)
        return Place::onMost;
    return expected.least && size.value <= least ? Place::onLeast : Place::between;
}

Prose besideOneBound(const Board& board, const Formula& most, const Formula& size, Place place) {
    const auto wording = [&] {
        switch (place) {
        case Place::between:
            return SENTENCE("solution", "The estimate said no more than {most}: {size} is less.");
        case Place::onMost:
            return SENTENCE("solution", "The estimate said no more than {most}: {size} "
                                        "is that bound itself.");
        default:
            return SENTENCE("solution", "The estimate said no more than {most}: {size} is more. There is a "
                                        "slip, or too much was rounded on the way.");
        }
    }();
    return board.say(wording, "most", most, "size", size);
}

Prose besideBounds(const Board& board, const Formula& least, const Formula& most, const Formula& size,
                   Place place) {
    if (least.text == most.text && place != Place::outside)
        return board.say(SENTENCE("solution", "The estimate said {most}: {size} is what came out."), "most",
                         most, "size", size);
    const auto wording = [&] {
        switch (place) {
        case Place::between:
            return SENTENCE("solution", "The estimate said between {least} and {most}: {size} lies between.");
        case Place::onLeast:
            return SENTENCE("solution", "The estimate said between {least} and {most}: to the digits shown "
                                        "{size} is the lower bound itself.");
        case Place::onMost:
            return SENTENCE("solution", "The estimate said between {least} and {most}: to the digits shown "
                                        "{size} is the upper bound itself.");
        case Place::outside:
            break;
        }
        return SENTENCE("solution",
                        "The estimate said between {least} and {most}: {size} lies outside. There is a "
                        "slip, or too much was rounded on the way.");
    }();
    return board.say(wording, "least", least, "most", most, "size", size);
}

/// As the answer shows it, or as it is carried where so few digits don't lie between.
Formula digitsBeside(const Board& board, const Expected& expected, const Vector& found) {
    const Formula shown = board.answered(found.sizeNumber);
    const Place place = placeOf(board, expected, shown);
    return place == Place::between ? shown : found.sizeNumber;
}

/// Of one magnitude.
Prose besideEstimate(const Board& board, const Expected& expected, const Vector& found) {
    const Formula number = digitsBeside(board, expected, found);
    const Place place = placeOf(board, expected, number);
    const Formula size = equal(found.size, number);
    return expected.least ? besideBounds(board, *expected.least, *expected.most, size, place)
                          : besideOneBound(board, *expected.most, size, place);
}

/// Two answers, where the drawing showed two.
std::optional<Prose> bothBeside(const Board& board, const Expected& expected) {
    const Vector &first = board.in(0, expected.size.of), &second = board.in(1, expected.size.of);
    const Formula one = digitsBeside(board, expected, first), two = digitsBeside(board, expected, second);
    if (placeOf(board, expected, one) == Place::outside || placeOf(board, expected, two) == Place::outside)
        return std::nullopt;
    return board.say(SENTENCE("solution", "The estimate said two answers, from {least} to {most}: {first} "
                                          "and {second} both lie there."),
                     "least", *expected.least, "most", *expected.most, "first", equal(first.size, one),
                     "second", equal(second.size, two));
}

/// With one place more where half of the printed number has one.
Formula halfOf(const Formula& whole) {
    const double half = whole.value / 2;
    const int decimals = decimalsOf(whole);
    const std::string same = fixedDecimals(half, decimals), more = fixedDecimals(half, decimals + 1);
    return number(half, more.ends_with('0') ? same : more, whole.sub);
}

/// The resultant of two lies nearer to the greater.
void besideGreater(const Board& board, Step& step) {
    const Vector &p = board.forces()[0], &q = board.forces()[1], &sum = board.found(kSumVector);
    if (p.magnitude == q.magnitude || !sum.direction)
        return;
    const Vector &great = p.magnitude > q.magnitude ? p : q, &small = p.magnitude > q.magnitude ? q : p;
    const QuantityId beside{What::opposite, small.id}, whole{What::between, p.id, q.id};
    const auto angle = board.carried.value(beside), between = board.carried.value(whole);
    if (!angle || !between || 2 * *angle >= *between)
        return;
    step.conclusion.push_back(board.say(
        SENTENCE("solution",
                 "{sum} lies nearer to {great}, as estimated: {angle} is less than half of {whole}, "
                 "{half}."),
        "sum", sum.vector, "great", great.vector, "angle",
        equal(board.symbolOf(beside), board.number(beside)), "whole", board.symbolOf(whole), "half",
        halfOf(board.number(whole))));
}

Wording expectedOrder(const Order& order) {
    switch (order.place) {
    case Order::Place::below:
        return order.alike
                   ? SENTENCE("solution", "The estimate expected the two to be equal and smaller than "
                                          "{known}, as they are: {more} and {less}.")
                   : SENTENCE("solution", "The estimate expected both to be smaller than {known}, "
                                          "and {great} the greater one, as they are: {more} and {less}.");
    case Order::Place::above:
        return order.alike
                   ? SENTENCE("solution", "The estimate expected the two to be equal and greater than "
                                          "{known}, as they are: {more} and {less}.")
                   : SENTENCE("solution", "The estimate expected both to be greater than {known}, "
                                          "and {great} the greater one, as they are: {more} and {less}.");
    case Order::Place::apart:
        return SENTENCE("solution", "The estimate expected {great} to be greater than {known} and {small} to "
                                    "be smaller, as they are: {more} and {less}.");
    case Order::Place::level:
        break;
    }
    return order.alike
               ? SENTENCE("solution", "The estimate expected the two to be equal, as they are: {more} and "
                                      "{less}.")
               : SENTENCE("solution", "The estimate expected {great} to be greater than {small}, as it is: "
                                      "{more} and {less}.");
}

/// Greater and smaller than each other and than what is known, as the angles have them.
void besideOrder(const Board& board, Step& step) {
    const Triangle t(board);
    const Order order(t);
    const Vector &great = board.found(t.r.side[order.great]), &small = board.found(t.r.side[order.small]);
    const double more = great.sizeNumber.value, less = small.sizeNumber.value,
                 known = t.known().sizeNumber.value;
    const bool isOrdered = order.alike ? std::abs(more - less) <= slackOf(board).shown : more >= less;
    const bool isPlaced = order.place == Order::Place::below   ? known >= more
                          : order.place == Order::Place::above ? less >= known
                          : order.place == Order::Place::apart ? more >= known && known >= less
                                                               : true;
    step.conclusion.push_back(board.say(
        isOrdered && isPlaced
            ? expectedOrder(order)
            : SENTENCE("solution", "The estimate expected otherwise than {more} and {less} beside {known}: "
                                   "there is a slip, or too much was rounded on the way."),
        "great", great.size, "small", small.size, "known", equal(t.known().size, t.known().sizeNumber),
        "more", equal(great.size, great.sizeNumber), "less", equal(small.size, small.sizeNumber)));
}

/// In the triangle: as the check has printed it, else from the directions as they are printed and to their
/// decimals.
Formula besideKnown(const Board& board, const Triangle& t, std::size_t side) {
    const Formula letter = t.symbol(3 - t.r.knownSide() - side);
    for (const Working& line : board.worked.steps.back().workings)
        if (line.subject == letter && line.value)
            return *line.value;
    const Vector &known = t.known(), &vector = board.found(t.r.side[side]);
    const double turned =
        std::abs(normalized(vector.wayNumber.value - known.wayNumber.value, board.sketch.angleUnit));
    const double angle = t.r.isOwnAngle(t.r.knownSide(), side) ? turned : board.half() - turned;
    return number(angle,
                  fixedDecimals(angle, std::max(decimalsOf(vector.wayNumber), decimalsOf(known.wayNumber))),
                  vector.wayNumber.sub);
}

/// The angles that two forces make with the known side.
void besideAngles(const Board& board, Step& step) {
    const Triangle t(board);
    const bool swapped = t.sought(0).magnitude < t.sought(1).magnitude;
    const std::size_t great = t.r.sought[swapped ? 1U : 0U], small = t.r.sought[swapped ? 0U : 1U];
    const Formula less = besideKnown(board, t, great), more = besideKnown(board, t, small);
    const bool alike = t.side(great).magnitude == t.side(small).magnitude;
    if (alike ? less.text != more.text : less.value >= more.value)
        return;
    step.conclusion.push_back(board.say(
        alike
            ? SENTENCE("solution", "The estimate expected {great} and {small} to make the same angle with "
                                   "{known} in the triangle: {less} each.")
            : SENTENCE("solution", "The estimate expected {great} to make the smaller angle with {known} in "
                                   "the triangle: {less} is less than the {more} of {small}."),
        "great", t.side(great).vector, "small", t.side(small).vector, "known", t.known().vector, "less", less,
        "more", more));
}

/// Legs beside the hypotenuse.
void besideHypotenuse(const Board& board, Step& step) {
    const Triangle t(board);
    const Vector &u = board.found(t.sought(0).id), &v = board.found(t.sought(1).id), &known = t.known();
    const Formula first = board.answered(u.sizeNumber), second = board.answered(v.sizeNumber);
    const double most = std::max(u.sizeNumber.value, v.sizeNumber.value);
    if (most > known.sizeNumber.value)
        return;
    step.conclusion.push_back(board.say(
        most < known.sizeNumber.value
            ? SENTENCE("solution", "The estimate said less than {known}: {first} and {second} both are.")
            : SENTENCE("solution",
                       "The estimate said less than {known}: {first} and {second}, of which one has "
                       "the same digits."),
        "known", equal(known.size, known.sizeNumber), "first", equal(u.size, first), "second",
        equal(v.size, second)));
}

/// On one line: one of the two takes all that is known, or both nothing.
void besideAll(const Board& board, Step& step) {
    const Triangle t(board);
    const Vector &u = board.found(t.sought(0).id), &v = board.found(t.sought(1).id), &known = t.known();
    const Vector &all = u.magnitude >= v.magnitude ? u : v, &none = u.magnitude >= v.magnitude ? v : u;
    const Formula more = equal(all.size, board.answered(all.sizeNumber)),
                  less = equal(none.size, board.answered(none.sizeNumber));
    step.conclusion.push_back(
        known.magnitude == 0
            ? board.say(SENTENCE("solution",
                                 "The estimate expected both to be zero, as they are: {more} and {less}."),
                        "more", more, "less", less)
            : board.say(SENTENCE("solution", "The estimate expected one of the two to be as great as {known} "
                                             "and the other zero, as they are: {more} and {less}."),
                        "known", equal(known.size, known.sizeNumber), "more", more, "less", less));
}

/// On one line: both directions are that of what is known, or its opposite.
void besideLine(const Board& board, Step& step) {
    const Triangle t(board);
    const Vector &u = board.found(t.sought(0).id), &v = board.found(t.sought(1).id), &known = t.known();
    step.conclusion.push_back(board.say(
        SENTENCE("solution",
                 "The estimate expected all three on one line: {first} and {second} beside {known}, "
                 "no angle or a half turn apart."),
        "first", equal(u.theta, u.wayNumber), "second", equal(v.theta, v.wayNumber), "known",
        equal(known.theta, known.wayNumber)));
}

/// The families whose estimate compares two things that are sought.
void writeComparison(const Board& board, Step& step) {
    if (board.hasStep(StepKey::line))
        return board.solved.family == Family::twoDirections ? besideLine(board, step)
                                                            : besideAll(board, step);
    switch (board.solved.family) {
    case Family::twoMagnitudes:
        return besideOrder(board, step);
    case Family::twoDirections:
        return besideAngles(board, step);
    case Family::smallestForce:
    case Family::smallestSum:
        return besideHypotenuse(board, step);
    default:
        return;
    }
}

} // namespace

void returnToEstimate(Board& board) {
    if (!board.hasStep(StepKey::estimate))
        return;
    Step& step = board.worked.steps.back();
    if (board.expected) {
        const auto both = board.hasTwoAnswers() ? bothBeside(board, *board.expected) : std::nullopt;
        step.conclusion.push_back(
            both ? *both : besideEstimate(board, *board.expected, board.found(board.expected->size.of)));
    } else {
        writeComparison(board, step);
    }
    if (board.hasStep(StepKey::tails))
        besideGreater(board, step);
    if (board.solved.tangent)
        step.conclusion.push_back(board.say(
            SENTENCE("solution",
                     "The drawing left open whether the line touches the circle: by the numbers it does.")));
}

} // namespace tailpoint::explaining
