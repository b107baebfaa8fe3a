#include "core/figure/attempt_strokes.h"

namespace tailpoint {

std::vector<AttemptStroke> rightStrokes(const Sketch& sketch, const Solved& solved) {
    const Things things(sketch);
    std::vector<AttemptStroke> strokes;
    const auto add = [&](AttemptStroke::Kind kind, const Eigen::Vector2d& from, const Eigen::Vector2d& to,
                         Runs label = {}, VectorId of = kNobody) {
        AttemptStroke stroke;
        stroke.kind = kind;
        stroke.of = of;
        stroke.from = from;
        stroke.to = to;
        stroke.isRight = true;
        stroke.label = std::move(label);
        strokes.push_back(std::move(stroke));
    };
    for (std::size_t i = 0; i < solved.solutions.size(); ++i) {
        const Solution& solution = solved.solutions[i];
        const Construction made = construct(sketch, solved, i);
        if (made.parallelogram && made.shape == Shape::proper) {
            const auto& corners = made.parallelogram->corners;
            add(AttemptStroke::Kind::line, corners[1], corners[2]);
            add(AttemptStroke::Kind::line, corners[3], corners[2]);
        } else {
            for (std::size_t side = 1; side + 1 < made.polygon.corners.size(); ++side)
                add(AttemptStroke::Kind::line, made.polygon.corners[side], made.polygon.corners[side + 1]);
        }
        const auto addFound = [&](VectorId vector, const SolvedForce& found) {
            if (found.magnitudeFound || found.directionFound)
                add(AttemptStroke::Kind::arrow, {0, 0}, found.vector,
                    valueRuns(things.symbol(vector), shownForceWithUnit(found.magnitude, sketch)), vector);
        };
        for (std::size_t force = 0; force < solution.forces.size(); ++force)
            addFound(forceVector(force), solution.forces[force]);
        addFound(kSumVector, solution.sum);
    }
    return strokes;
}

} // namespace tailpoint
