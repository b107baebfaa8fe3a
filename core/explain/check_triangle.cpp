// SPDX-License-Identifier: MIT
// The check of an answer by components: the force triangle, its laws worked from what is given.
#include "core/explain/agreement.h"
#include "core/explain/families.h"
#include "core/explain/rounded.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::explaining {

namespace {

/// Told within the line that takes it.
bool isTold(What what) {
    return what != What::square && what != What::ratio && what != What::term && what != What::gap &&
           what != What::distance;
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

void addQuantities(std::vector<QuantityId>& all, const Formula& formula) {
    if (formula.id.what != What::none)
        all.push_back(formula.id);
    for (const Formula& part : formula.parts)
        addQuantities(all, part);
}

/// Those asked for and all that leads to them.
std::vector<QuantityId> neededFor(const Carried& lines, std::vector<QuantityId> needed) {
    const auto& all = lines.quantities();
    for (auto id = all.rbegin(); id != all.rend(); ++id)
        if (lines.find(*id) != nullptr && std::find(needed.begin(), needed.end(), *id) != needed.end())
            addQuantities(needed, lines.formulaOf(*id));
    return needed;
}

/// The acute angle needs no letter where one angle of the triangle is that itself.
std::optional<QuantityId> acuteWithin(const Board& board, const Carried& lines) {
    if (!board.hasTwoAnswers())
        for (const QuantityId& id : lines.quantities())
            if (id.what == What::opposite && lines.find(id) != nullptr)
                if (const QuantityId of = lines.formulaOf(id).id;
                    of.what == What::acute && of.part == kOfInverseSine)
                    return of;
    return std::nullopt;
}

/// The triangle's lines that no step has told with the same digits, and those of what is asked; of two
/// answers this one's.
std::vector<QuantityId> linesToShow(const Board& board, const Carried& lines,
                                    const std::vector<QuantityId>& asked) {
    const auto isTheSame = [&](const QuantityId& id) {
        return isShown(board, id) && lines.decimal(id).text == board.carried.decimal(id).text;
    };
    std::vector<QuantityId> shown;
    const std::vector<QuantityId> needed = neededFor(lines, asked);
    const auto acute = acuteWithin(board, lines);
    for (const QuantityId& id : lines.quantities()) {
        if (lines.find(id) == nullptr)
            continue; // given
        const bool isOthers = id.answer != 0 && id.answer != board.solution + 1;
        const bool isAsked = std::find(asked.begin(), asked.end(), id) != asked.end() ||
                             (id.what == What::ratio && board.solved.tangent); // the angle is no inverse sine
        const bool isNeeded = std::find(needed.begin(), needed.end(), id) != needed.end();
        if (id != acute && !isOthers && (isAsked || (isNeeded && isTold(id.what) && !isTheSame(id))))
            shown.push_back(id);
    }
    return shown;
}

/// With the given numbers as they stand on the board, and as many guard figures: more only where what is
/// asked would show other digits.
void settleBeside(const Board& board, Carried& lines, const std::vector<QuantityId>& asked) {
    for (const QuantityId& id : lines.quantities())
        if (const Decimal& printed = board.carried.decimal(id);
            lines.find(id) == nullptr && !printed.text.empty())
            lines.give(id, printed);
    const Carried before = lines; // settled once, numbers stand
    lines.settleAt(board.carried.guard());
    if (board.options.handRounding || std::all_of(asked.begin(), asked.end(), [&](const QuantityId& id) {
            return lines.find(id) == nullptr ||
                   board.answered(lines.number(id)).text == board.answered(board.number(id)).text;
        }))
        return;
    Carried alone = before;
    alone.settle();
    lines = before;
    lines.settleAt(std::max(alone.guard(), board.carried.guard()));
}

/// What the two ways give of a quantity, as they are printed.
struct Difference {
    Formula here, there; ///< to the digits of an answer where those differ
    Prose gap;
    bool isShown = false;     ///< the digits of an answer differ
    bool isLastDigit = false; ///< by no more than one in the last place of them
    bool isRounded = false;   ///< no more than rounding on the way can add up to
    Formula full;             ///< what both give in full; without text where they differ in full as well
};

Formula inFull(const Board& board, const Carried& lines, const QuantityId& id) {
    const auto one = lines.full(id), other = board.carried.full(id);
    if (!one || !other)
        return {};
    const double there = static_cast<double>(*other);
    const Formula here = board.shownNumber(id, static_cast<double>(*one));
    return board.shownNumber(id, there).text == here.text ? here : Formula{};
}

/// Of what is asked, where the two ways don't give the same.
std::vector<Difference> differences(const Board& board, const Carried& lines,
                                    const std::vector<QuantityId>& asked) {
    std::vector<Difference> different;
    for (const QuantityId& id : asked) {
        if (lines.find(id) == nullptr)
            continue;
        Formula here = lines.number(id), there = board.number(id);
        if (here.value == there.value)
            continue;
        const bool isShown = board.answered(here).text != board.answered(there).text;
        const bool isRounded =
            isRoundedApart(board, here, there, std::abs(board.found(id.of).sizeNumber.value));
        Prose off = apart(board, here, there);
        if (isShown) {
            here = board.answered(here);
            there = board.answered(there);
        }
        const bool isLast = distanceOf(board, here, there) <= 1.01 * lastPlaceOf(board, there);
        different.push_back({equal(board.symbolOf(id), std::move(here)), std::move(there), std::move(off),
                             isShown, isLast, isRounded, inFull(board, lines, id)});
    }
    return different;
}

Working toldAs(const Board& board, const Carried& lines, const QuantityId& line) {
    std::vector<QuantityId> inlined;
    if (const auto acute = acuteWithin(board, lines))
        inlined = {*acute};
    Working working = lines.working(line, inlined);
    if (auto remark = offTheFull(board, lines, line, *working.value))
        working.told = inRow(std::move(*remark));
    return working;
}

/// The figure knows by itself which answer it shows.
QuantityId inFigure(QuantityId angle) {
    angle.answer = 0;
    return angle;
}

/// Which other way it is, and what its letters mean.
Prose wayTold(const Board& board, bool byLami, bool isFlat) {
    if (byLami) {
        return board.say(
            SENTENCE("solution",
                     "Another way, without the components, by Lami's form of the law of sines: of three "
                     "forces in equilibrium each is proportional to the sine of the angle between the other "
                     "two."));
    }
    if (isFlat) {
        const Vector &p = board.forces()[0], &q = board.forces()[1];
        return board.say(SENTENCE("solution", "Another way: {p} and {q} lie on one line. Count along it as "
                                              "positive in the sense of {along}; call that axis {axis}."),
                         "p", p.vector, "q", q.vector, "along", (p.magnitude >= q.magnitude ? p : q).vector,
                         "axis", symbol("u"));
    }
    return board.say(SENTENCE("solution", "Another way, without the components: the three vectors make a "
                                          "triangle, and its angles and sides follow from what is given."));
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
    const std::vector<QuantityId> asked = askedFor(board);
    settleBeside(board, lines, asked);
    const std::vector<QuantityId> shown = linesToShow(board, lines, asked);
    const bool byLami = board.solved.family == Family::twoMagnitudes && board.reduction->loop;
    const bool isFlat = lines.find({What::along, kSumVector}) != nullptr;
    step.triangleAlone = !byLami && !isFlat;
    if (step.triangleAlone)
        step.parts = {part(FigurePart::Kind::triangle)};
    if (isFlat)
        step.title = board.text(SENTENCE("solution", "Check along the line"));
    step.reasoning.push_back(wayTold(board, byLami, isFlat));
    if (byLami)
        step.reasoning.push_back(facingNamed(Triangle(board)));
    if (step.triangleAlone)
        step.reasoning.push_back(namedAngles(Triangle(board)));
    for (const QuantityId& id : shown)
        if (id.what == What::acute)
            step.reasoning.push_back(
                id.part == kOfInverseSine
                    ? board.say(
                          SENTENCE("solution", "{acute} is the acute angle that the inverse sine gives."),
                          "acute", board.symbolOf(id))
                    : board.say(SENTENCE("solution", "{acute} is the acute angle from the x axis."), "acute",
                                board.symbolOf(id)));
    for (const QuantityId& id : shown)
        if (id.what == What::between && !byLami)
            step.reasoning.push_back(tailsNamed(board, id));
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
        step.conclusion.push_back(board.say(
            !one.isShown      ? SENTENCE("solution",
                                         "Here {here}, by components {there}: they differ by {gap}, less than the "
                                              "answer shows, so both ways agree.")
            : one.isLastDigit ? SENTENCE("solution", "Here {here}, by components {there}: they agree but for "
                                                     "one in the last digit shown, which comes from rounding "
                                                     "on the way.")
            : board.options.handRounding && !one.full.text.empty()
                ? SENTENCE("solution",
                           "Here {here}, by components {there}: they differ by {gap}. With full values both "
                           "ways give {full}, so that the rounding on the way is the whole reason.")
            : one.isRounded && !board.options.handRounding
                ? SENTENCE("solution",
                           "Here {here}, by components {there}: they differ by {gap}, no more than "
                           "rounding on the way can add up to, so both ways agree.")
                : SENTENCE("solution", "Here {here}, by components {there}: the two ways differ, so there is "
                                       "a slip in one of them."),
            "here", one.here, "there", one.there, "gap", one.gap, "full", one.full));
}

} // namespace tailpoint::explaining
