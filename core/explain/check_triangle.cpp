// The check of an answer by components: the force triangle, its laws worked from what is given.
#include "core/explain/families.h"
#include "core/explain/rounded.h"

#include "core/quantity/decimals.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::explaining {

namespace {

/// Told within the line that takes it.
bool isTold(What what) {
    return what != What::square && what != What::ratio && what != What::term && what != What::gap;
}

/// What the answer holds, under the ids that it has in it.
std::vector<QuantityId> askedFor(const Board& board) {
    std::vector<QuantityId> asked;
    const auto add = [&](VectorId vector) {
        const Vector& found = board.found(vector);
        if (!found.sizeGiven)
            asked.push_back(found.sizeId);
        if (!found.wayGiven && found.direction)
            asked.push_back(found.wayId);
    };
    for (const Vector& force : board.forces())
        add(force.id);
    add(kSumVector);
    return asked;
}

bool isShown(const Board& board, const QuantityId& line) {
    return std::any_of(board.worked.steps.begin(), board.worked.steps.end(), [&](const Step& step) {
        return std::find(step.lines.begin(), step.lines.end(), line) != step.lines.end();
    });
}

/// The triangle's lines that no step has told with the same digits, and those of what is asked; of two
/// answers this one's.
std::vector<QuantityId> linesToShow(const Board& board, const Carried& lines,
                                    const std::vector<QuantityId>& asked) {
    const bool sameDigits = lines.guard() == board.carried.guard();
    std::vector<QuantityId> shown;
    for (const QuantityId& id : lines.quantities()) {
        if (lines.find(id) == nullptr)
            continue; // given
        const bool isOthers = id.answer != 0 && id.answer != board.solution + 1;
        const bool isAsked = std::find(asked.begin(), asked.end(), id) != asked.end();
        if (!isOthers && (isAsked || (isTold(id.what) && !(sameDigits && isShown(board, id)))))
            shown.push_back(id);
    }
    return shown;
}

/// With the given numbers as they stand on the board, and no fewer guard figures.
void settleBeside(const Board& board, Carried& lines) {
    Carried alone = lines; // how many guard figures they take; settled once, numbers stand
    alone.settle();
    for (const QuantityId& id : lines.quantities())
        if (const Decimal& printed = board.carried.decimal(id);
            lines.find(id) == nullptr && !printed.text.empty())
            lines.give(id, printed);
    lines.settleAt(std::max(alone.guard(), board.carried.guard()));
}

/// One in the last place that the sheet shows of it.
double lastPlace(const Board& board, const Formula& number) {
    if (dimensionOf(number.id.what) == Dimension::angle)
        return std::pow(10.0, -shownAngleDecimals(board.sketch));
    const double size = std::abs(number.value);
    return size == 0 ? 0 : std::pow(10.0, std::floor(std::log10(size)) + 1 - board.sketch.figures);
}

/// What the two ways give of a quantity.
struct Difference {
    enum class Size { hidden, lastDigit, slip }; ///< less than the answer shows; one in its last place; more
    Formula here, there;
    double gap = 0;
    Size size = Size::hidden;
};

/// Of what is asked, where the two ways don't print the same.
std::vector<Difference> differences(const Board& board, const Carried& lines,
                                    const std::vector<QuantityId>& asked) {
    std::vector<Difference> different;
    for (const QuantityId& id : asked) {
        if (lines.find(id) == nullptr)
            continue;
        const Formula here = lines.number(id), there = board.number(id);
        const double apart = std::abs(here.value - there.value), turn = 2 * board.half();
        const bool isAngle = dimensionOf(id.what) == Dimension::angle;
        const double gap = isAngle ? std::min(apart, std::abs(turn - apart)) : apart;
        if (gap <= Carried::kNoise * std::abs(there.value))
            continue;
        const auto size = board.answered(here).text == board.answered(there).text ? Difference::Size::hidden
                          : gap <= 1.01 * lastPlace(board, there) ? Difference::Size::lastDigit
                                                                  : Difference::Size::slip;
        const bool isHidden = size == Difference::Size::hidden;
        different.push_back({equal(board.symbolOf(id), isHidden ? here : board.answered(here)),
                             isHidden ? there : board.answered(there), gap, size});
    }
    return different;
}

Prose judged(const Board& board, const Difference& one) {
    const auto wording = [&] {
        switch (one.size) {
        case Difference::Size::hidden:
            return SENTENCE("solution", "Here {here}, by components {there}: they differ by {gap}, less than "
                                        "the answer shows.");
        case Difference::Size::lastDigit:
            return SENTENCE("solution", "Here {here}, by components {there}: they agree but for one in the "
                                        "last digit shown, which is the rounding of the numbers on the way.");
        case Difference::Size::slip:
            break;
        }
        return SENTENCE("solution", "Here {here}, by components {there}: the two ways differ, so there is "
                                    "a slip in one of them.");
    }();
    return board.say(wording, "here", one.here, "there", one.there, "gap",
                     number(one.gap, significant(one.gap, 1), one.there.sub));
}

Working toldAs(const Board& board, const Carried& lines, const QuantityId& line) {
    Working working = lines.working(line);
    if (auto remark = offTheFull(board, lines, line, *working.value))
        working.told = inRow(std::move(*remark));
    return working;
}

/// The figure knows by itself which answer it shows.
QuantityId inFigure(QuantityId angle) {
    angle.answer = 0;
    return angle;
}

} // namespace

bool hasTriangle(const Board& board) {
    const auto routes = routesOf(board.sketch, board.solved);
    return std::any_of(routes.begin(), routes.end(),
                       [](const Route& route) { return route.way == Route::Way::triangle; });
}

void writeTriangleCheck(Board& board) {
    Step& step = board.step(StepKey::check, SENTENCE("solution", "Check by the force triangle"), Stage::all,
                            Law::sines);
    Carried lines(board.sketch, board.things,
                  board.options.handRounding ? Rounding::hand : Rounding::guarded);
    lines.scale = board.carried.scale;
    lines.take(groundOf(board.sketch, board.solved, board.things));
    lines.take(chainOf(board.sketch, board.solved, board.things, {Route::Way::triangle, kNobody}));
    settleBeside(board, lines);
    const std::vector<QuantityId> asked = askedFor(board), shown = linesToShow(board, lines, asked);
    const bool byLami = board.solved.family == Family::twoMagnitudes && board.reduction->loop;
    step.triangleAlone = !byLami;
    if (!byLami)
        step.parts = {part(FigurePart::Kind::triangle)};
    step.reasoning.push_back(board.say(
        byLami ? SENTENCE("solution",
                          "Another way, without the components, by Lami's form of the law of sines: of three "
                          "forces in equilibrium each is proportional to the sine of the angle between the "
                          "other two.")
               : SENTENCE("solution", "Another way, without the components: the three vectors make a "
                                      "triangle, and its angles and sides follow from what is given.")));
    for (const QuantityId& id : shown)
        if (id.what == What::acute)
            step.reasoning.push_back(board.say(
                SENTENCE("solution", "{acute} is the acute angle with the sine that the law of sines gives."),
                "acute", board.symbolOf(id)));
    for (const QuantityId& id : shown) {
        step.workings.push_back(toldAs(board, lines, id));
        step.lines.push_back(id);
        if (id.what == What::between || id.what == What::opposite)
            step.angles.push_back({inFigure(id), board.things.symbol(id)});
    }
    const auto different = differences(board, lines, asked);
    if (different.empty())
        step.conclusion.push_back(board.say(SENTENCE("solution", "Both ways give the same numbers.")));
    for (const Difference& one : different)
        step.conclusion.push_back(judged(board, one));
}

} // namespace tailpoint::explaining
