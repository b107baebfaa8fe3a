// SPDX-License-Identifier: MIT
#include "core/figure/stroke_maker.h"

namespace tailpoint {

std::vector<AttemptStroke> rightStrokes(const Sketch& sketch, const Solved& solved) {
    StrokeMaker maker(sketch);
    for (std::size_t i = 0; i < solved.solutions.size(); ++i) {
        const Construction made = construct(sketch, solved, i);
        if (made.parallelogram && made.shape == Shape::proper) {
            const auto& corners = made.parallelogram->corners;
            for (const std::size_t tip : {1U, 3U})
                maker.add(AttemptStroke::Kind::line, corners[tip], corners[2]);
        } else {
            for (std::size_t side = 1; side + 1 < made.polygon.corners.size(); ++side)
                maker.add(AttemptStroke::Kind::line, made.polygon.corners[side],
                          made.polygon.corners[side + 1]);
        }
        const auto addFound = [&](VectorId vector, const SolvedForce& found) {
            if (found.magnitudeFound || found.directionFound)
                maker.add(AttemptStroke::Kind::arrow, {0, 0}, found.vector,
                          maker.named(vector, found.magnitude), vector);
        };
        for (std::size_t force = 0; force < solved.solutions[i].forces.size(); ++force)
            addFound(forceVector(force), solved.solutions[i].forces[force]);
        addFound(kSumVector, solved.solutions[i].sum);
    }
    std::vector<AttemptStroke> strokes = maker.take();
    for (AttemptStroke& stroke : strokes)
        stroke.isRight = true;
    return strokes;
}

} // namespace tailpoint
