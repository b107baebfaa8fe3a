// The check of an answer by components: the force triangle, its laws worked from what is given.
#include "core/explain/families.h"

#include <algorithm>

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

/// The triangle's lines that no step has told, and those of what is asked; of two answers this one's.
std::vector<QuantityId> linesToShow(const Board& board, const Chain& chain,
                                    const std::vector<QuantityId>& asked) {
    std::vector<QuantityId> shown;
    for (const Line& line : chain.lines) {
        const QuantityId& id = line.subject;
        const bool isOthers = id.answer != 0 && id.answer != board.solution + 1;
        const bool isAsked = std::find(asked.begin(), asked.end(), id) != asked.end();
        if (!isOthers && (isAsked || (isTold(id.what) && !isShown(board, id))))
            shown.push_back(id);
    }
    return shown;
}

/// What the two ways give, where that is not the same; empty where it is.
std::vector<std::pair<Formula, Formula>> differences(const Board& board, const Carried& lines,
                                                     const std::vector<QuantityId>& asked) {
    std::vector<std::pair<Formula, Formula>> different;
    for (const QuantityId& id : asked) {
        if (lines.find(id) == nullptr)
            continue;
        Formula here = board.answered(lines.number(id)), there = board.answered(board.number(id));
        if (here.text != there.text)
            different.emplace_back(equal(board.symbolOf(id), std::move(here)), std::move(there));
    }
    return different;
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
    Chain chain = chainOf(board.sketch, board.solved, board.things, {Route::Way::triangle, kNobody});
    const std::vector<QuantityId> asked = askedFor(board), shown = linesToShow(board, chain, asked);
    lines.take(std::move(chain));
    lines.settle();
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
    for (const QuantityId& id : shown) {
        step.workings.push_back(lines.working(id));
        step.lines.push_back(id);
        if (id.what == What::between || id.what == What::opposite)
            step.angles.push_back({id, board.things.symbol(id)});
    }
    const auto different = differences(board, lines, asked);
    if (different.empty())
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "Both ways give the same numbers, to the digits shown.")));
    for (const auto& [here, there] : different)
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "Here {here}, by components {there}: the two ways differ."),
                      "here", here, "there", there));
}

} // namespace tailpoint::explaining
