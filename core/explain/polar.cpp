// SPDX-License-Identifier: MIT
// Magnitude and direction of a vector from its components.
#include "core/explain/families.h"
#include "core/explain/quadrant.h"
#include "core/explain/slip.h"

#include <algorithm>

namespace tailpoint::explaining {

namespace {

void writePythagoras(Board& board, const Vector& vector) {
    Step& step = board.step(StepKey::magnitude, SENTENCE("solution", "Magnitude from the components"),
                            Stage::magnitudes, Law::components);
    step.parts = {arrowPart(vector.index)};
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "The components stand at right angles to each other, so the magnitude "
                                       "follows from Pythagoras' theorem.")));
    board.show(step, vector.sizeId);
}

/// The acute angle, and what the quadrant makes of it; in the first it is the direction itself.
void writeLines(Board& board, Step& step, const Vector& vector) {
    QuantityId target = vector.wayId, acute = vector.wayId;
    if (!isPlainReference(board.sketch))
        target.what = What::fromX;
    acute.what = What::acute;
    std::vector<QuantityId> inlined;
    if (board.carried.formulaOf(target).id == acute)
        inlined = {acute};
    else if (board.carried.find(acute) != nullptr) { // on an axis there is none
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "{acute} is the acute angle from the x axis."), "acute",
                      board.symbolOf(acute)));
        board.show(step, acute);
    }
    if (!isPlainReference(board.sketch))
        introduceFromX(board, step);
    board.show(step, target, inlined);
    if (!isPlainReference(board.sketch))
        board.show(step, vector.wayId);
}

/// What the calculator would make of the quotient, where that is another quadrant.
std::optional<Prose> aboutTangent(Board& board, const Vector& vector, const QuantityId& x,
                                  const QuantityId& y) {
    QuantityId target = vector.wayId;
    if (!isPlainReference(board.sketch))
        target.what = What::fromX;
    const Formula xSymbol = board.symbolOf(x), ySymbol = board.symbolOf(y);
    const Eigen::Vector2d signs = withoutNoise(vector);
    const bool elsewhere = signs.x() < 0 && signs.y() != 0;
    if (const auto value =
            !elsewhere ? std::nullopt : slipped(board, target, apply("arctan", over(ySymbol, xSymbol))))
        return board.say(SENTENCE("solution",
                                  "The inverse tangent of {quotient} alone would give {value}, which "
                                  "points the opposite way: let the signs of both components decide."),
                         "quotient", over(ySymbol, xSymbol), "value", *value);
    QuantityId acute = vector.wayId;
    acute.answer = x.answer;
    acute.what = What::acute;
    if (board.isTangentTold || board.carried.find(acute) == nullptr)
        return std::nullopt; // told once; on an axis no quotient is formed
    if (const auto value = slipped(
            board, {{acute, apply("arctan", over(absolute(xSymbol), absolute(ySymbol)))}}, vector.wayId)) {
        board.isTangentTold = true;
        return board.say(SENTENCE("solution",
                                  "The tangent is y over x: with x over y {theta} would come out as "
                                  "{value}."),
                         "theta", vector.theta, "value", *value);
    }
    return std::nullopt;
}

} // namespace

void writePolar(Board& board, const Vector& vector) {
    writePythagoras(board, vector);
    if (!vector.direction)
        return;
    Step& step =
        board.step(StepKey::direction, SENTENCE("solution", "Direction, its quadrant from the signs"),
                   Stage::all, Law::components);
    step.parts = {part(FigurePart::Kind::direction, vector.index), part(FigurePart::Kind::axis)};
    writeWayFromComponents(board, step, vector);
}

void writeWayFromComponents(Board& board, Step& step, const Vector& vector, bool below) {
    const std::uint8_t answer = std::max(vector.sizeId.answer, vector.wayId.answer);
    const QuantityId x{What::x, vector.id, {}, answer}, y{What::y, vector.id, {}, answer};
    step.reasoning.push_back(
        below ? board.say(SENTENCE("solution", "As the components below will show, {told}"), "told",
                          liesBySigns(board, vector))
              : liesBySigns(board, vector));
    writeLines(board, step, vector);
    if (auto told = aboutTangent(board, vector, x, y))
        if (std::none_of(board.worked.steps.begin(), board.worked.steps.end(), [&](const Step& other) {
                return std::find(other.notes.begin(), other.notes.end(), *told) != other.notes.end();
            }))
            step.notes.push_back(std::move(*told));
}

} // namespace tailpoint::explaining
