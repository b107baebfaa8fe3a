// SPDX-License-Identifier: MIT
// Directions given by slope or bearing, or beyond half a turn, as the sheet measures them.
#include "core/explain/families.h"

#include <algorithm>

namespace tailpoint::explaining {

namespace {

using Vectors = std::vector<const Vector*>;

/// Those whose given direction is not the angle that the sheet measures.
Vectors toBeReferred(const Board& board) {
    Vectors vectors;
    const auto add = [&](const Vector& vector) {
        if (board.carried.find(directionId(vector.id)) != nullptr && vector.wayGiven && vector.direction)
            vectors.push_back(&vector);
    };
    for (const Vector& force : board.forces())
        add(force);
    add(board.sum());
    return vectors;
}

/// How the forms at hand become angles, and nothing of other forms.
void introduce(const Board& board, Step& step, const Vectors& vectors) {
    const auto any = [&](auto isForm) {
        return std::any_of(vectors.begin(), vectors.end(),
                           [&](const Vector* v) { return isForm(board.given(v->id).direction.form); });
    };
    const bool slopes = any([](const auto& f) { return std::holds_alternative<SlopeForm>(f); });
    const bool bearings = any([](const auto& f) { return std::holds_alternative<BearingForm>(f); });
    if (slopes)
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "The run of a slope is counted to the right, its rise upwards.")));
    if (bearings)
        step.reasoning.push_back(
            countsFromNorth(board.sketch)
                ? board.say(SENTENCE("solution", "A bearing is measured from north or south; here +y points "
                                                 "north, and directions count from it, clockwise."))
                : board.say(
                      SENTENCE("solution", "A bearing is measured from north or south, north being +y.")));
    const bool overX = std::any_of(vectors.begin(), vectors.end(),
                                   [&](const Vector* v) { return isToldFromX(board, v->id); });
    if (overX && !isPlainReference(board.sketch))
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "The angle {psi} is measured counter-clockwise from +x; from it "
                                           "follows the one from {axis}."),
                      "psi", symbol(board.things.fromXLetter()), "axis", board.axisWords()));
    if (any([](const auto& f) { return std::holds_alternative<AngleForm>(f); }))
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "Beyond half a turn, {half}, the same direction is given by an "
                                           "angle a full turn of {full} less or more."),
                      "half", board.halfTurn(), "full", board.fullTurn()));
}

/// What ψ is.
Prose tellFromX(const Board& board) {
    return board.say(SENTENCE("solution", "{psi} is the angle from +x, counter-clockwise."), "psi",
                     symbol(board.things.fromXLetter()));
}

} // namespace

bool isToldFromX(const Board& board, VectorId vector) {
    const auto& form = board.given(vector).direction.form;
    return std::holds_alternative<SlopeForm>(form) ||
           (std::holds_alternative<BearingForm>(form) && !countsFromNorth(board.sketch));
}

void introduceFromX(const Board& board, Step& step) {
    const Formula psi = symbol(board.things.fromXLetter());
    const auto isPsi = [&](const Piece& piece) {
        const auto* formula = std::get_if<Formula>(&piece);
        return formula != nullptr && *formula == psi;
    };
    const auto tells = [&](const Prose& prose) {
        return std::any_of(prose.pieces.begin(), prose.pieces.end(), isPsi);
    };
    if (std::none_of(board.worked.steps.begin(), board.worked.steps.end(), [&](const Step& told) {
            return std::any_of(told.reasoning.begin(), told.reasoning.end(), tells);
        }))
        step.reasoning.push_back(tellFromX(board));
}

void writeDirections(Board& board) {
    constexpr std::size_t most = 8; // beyond, the component table shows the angles
    const Vectors vectors = toBeReferred(board);
    if (vectors.empty() || vectors.size() > most)
        return;
    Step& step =
        board.step(StepKey::directions, SENTENCE("solution", "Directions from the axis"), Stage::directions);
    introduce(board, step, vectors);
    for (const Vector* vector : vectors) {
        step.parts.push_back(part(FigurePart::Kind::direction, vector->index));
        const QuantityId fromX{What::fromX, vector->id};
        if (isToldFromX(board, vector->id) && board.carried.find(fromX) != nullptr)
            board.show(step, fromX);
        board.show(step, directionId(vector->id));
    }
}

} // namespace tailpoint::explaining
