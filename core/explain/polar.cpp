// Magnitude and direction of a vector from its components.
#include "core/explain/families.h"
#include "core/explain/quadrant.h"

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

Formula signOf(const Board& board, const QuantityId& component, double value) {
    const Relation sign = value < 0 ? Relation::less : value > 0 ? Relation::greater : Relation::equal;
    return related(board.symbolOf(component), sign, count(0));
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
    else if (board.carried.find(acute) != nullptr) // on an axis there is none
        board.show(step, acute);
    board.show(step, target, inlined);
    if (!isPlainReference(board.sketch))
        board.show(step, vector.wayId);
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
    QuantityId x = vector.sizeId, y = vector.sizeId;
    x.what = What::x;
    y.what = What::y;
    const Eigen::Vector2d signs = withoutNoise(vector);
    step.reasoning.push_back(
        liesBySigns(board, vector, signOf(board, x, signs.x()), signOf(board, y, signs.y())));
    writeLines(board, step, vector);
    step.notes.push_back(board.say(SENTENCE(
        "solution", "The inverse tangent of a quotient knows only the first and the fourth quadrant: let "
                    "the signs of both components decide.")));
}

} // namespace tailpoint::explaining
