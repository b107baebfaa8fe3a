// SPDX-License-Identifier: MIT
// Questions whose triangle has no height, or that have no answer, none to work out, or infinitely many.
#pragma once

#include "tests/support/sketches.h"

namespace tailpoint::testing {

inline std::vector<Sketch> flatQuestions() {
    const Force p = force("P", kToFind, 20), q = force("Q", kToFind, 80), x = force("X", kToFind, kToFind);
    const Force line = either(force("P", kToFind, 20)), sum = force("R", kToFind, kToFind);
    std::vector<Sketch> out{
        sketch({force("P", 30, 20), force("Q", 50, 20)}),
        sketch({force("P", 410, 30), force("Q", 160, -150)}),
        sketch({force("P", 250, 30), force("Q", 250, -150)}),
        sketch({force("P", 250, 30), force("Q", 0, 80)}),
        sketch({force("P", 0, 30), force("Q", 0, 80)}),
        sketch({p, q}, force("R", 300, 20)),
        balanced({force("P", kToFind, 200), q, force("W", 300, 20)}),
        balanced({force("P", kToFind, 200), q, force("W", 300, 20), force("V", 300, -160)}),
        sketch({p, force("Q", 200, kToFind)}, force("R", 300, 20)),
        sketch({line, force("Q", 400, kToFind)}, force("R", 300, 20)),
        sketch({force("P", 200, kToFind), force("Q", 300, kToFind)}, force("R", 500, 20)),
        sketch({force("P", 700, kToFind), force("Q", 300, kToFind)}, force("R", 400, 20)),
        smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 25)), "Q"),
        smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 115)), "Q"),
        smallest(sketch({force("P", 340, 25), force("Q", kToFind, 60)}, sum), "R"),
    };
    return out;
}

inline std::vector<Sketch> unansweredQuestions() {
    const Force p = force("P", kToFind, 35), q = force("Q", kToFind, 35), back = force("Q", kToFind, -145);
    return {
        sketch({p, q}, force("R", 300, 80)),
        balanced({force("A", kToFind, 30), force("B", kToFind, -150), force("P", 500, 270)}),
        sketch({force("P", kToFind, 100), force("Q", kToFind, -60)}, force("R", 400, 170)),
        sketch({force("P", kToFind, 100), force("Q", kToFind, 20)}, force("R", 400, 10)),
        sketch({p, q}, force("R", 400, -145)),
        sketch({force("P", kToFind, 40), force("Q", 150, kToFind)}, force("R", 400, 10)),
        sketch({force("A", 400, 10), force("P", kToFind, 40), force("Q", 150, kToFind)}, force("R", 20, 100)),
        sketch({force("P", kToFind, 150), force("Q", 320, kToFind)}, force("R", 400, 10)),
        sketch({force("P", 150, kToFind), force("Q", 200, kToFind)}, force("R", 420, 5)),
        sketch({force("P", 700, kToFind), force("Q", 200, kToFind)}, force("R", 400, 20)),
        balanced({force("P", 250, kToFind), force("Q", 200, kToFind)}),
        sketch({p, q}, force("R", 300, 35)),
        sketch({p, back}, force("R", 300, 35)),
        sketch({p, back}, force("R", 300, -145)),
        balanced({p, back}),
        balanced({force("P", 250, kToFind), force("Q", 250, kToFind)}),
        sketch({force("P", 250, kToFind)}, force("R", 250, kToFind)),
        sketch({force("P", 340, 25), force("Q", 275, -40)}, force("R", 520, -3.6)),
        balanced({force("P", 250, 30), force("Q", 250, 150), force("W", 270, 270)}),
    };
}

/// The same with another reference, another unit of angle.
inline Sketch asOnAnotherSheet(Sketch s, int number) {
    if (number % 3 == 1)
        s.reference = {90, Sense::cw};
    if (number % 3 != 2)
        return s;
    s.angleUnit = AngleUnit::gon;
    const auto turn = [](Force& one) {
        if (auto* angle = std::get_if<AngleForm>(&one.direction.form))
            angle->value = angle->value / 0.9;
    };
    for (Force& one : s.forces)
        turn(one);
    turn(s.sum);
    return s;
}

} // namespace tailpoint::testing
