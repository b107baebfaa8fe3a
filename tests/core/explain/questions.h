// SPDX-License-Identifier: MIT
// Seeded questions of every family, moderately conditioned: what a lecturer might ask.
#pragma once

#include "tests/support/cases.h"
#include "tests/support/sketches.h"

namespace tailpoint::testing {

/// Given a tenth of a degree, or now and then a slope or a bearing.
inline Direction someDirection(Dice& dice) {
    Direction direction;
    switch (dice.whole(8)) {
    case 0:
        direction.form = SlopeForm{dice.between(-4, 4) + 4.5, std::round(dice.between(-5, 5))};
        break;
    case 1:
        direction.form =
            BearingForm{dice.toss() ? 'N' : 'S', std::round(dice.between(0, 90)), dice.toss() ? 'E' : 'W'};
        break;
    default:
        direction.form = AngleForm{std::round(dice.between(-1800, 1800)) / 10};
    }
    return direction;
}

inline Force someForce(Dice& dice, std::string name, bool size, bool way) {
    Force made;
    made.name = std::move(name);
    if (size)
        made.magnitude.value = dice.toss() ? std::round(dice.between(20, 900)) : dice.between(20, 900);
    if (way)
        made.direction = someDirection(dice);
    return made;
}

inline constexpr int kQuestionKinds = 12;

/// `kind` below kQuestionKinds; see the cases.
inline Sketch someQuestion(Dice& dice, int kind) {
    Sketch s = emptySketch();
    const bool known = true, sought = false;
    const auto add = [&](const char* name, bool size, bool way) {
        s.forces.push_back(someForce(dice, name, size, way));
    };
    const auto given = [&](std::size_t n) {
        static constexpr const char* names[] = {"P", "Q", "F1", "F2", "A", "T_AB"};
        for (std::size_t i = 0; i < n; ++i)
            add(names[i], known, known);
    };
    const auto sum = [&](bool size, bool way) { s.sum = someForce(dice, "R", size, way); };
    const auto rest = [&] { s.sum = force("R", 0, kToFind); };
    switch (kind) {
    case 0: // resultant of two
        given(2);
        break;
    case 1: // resultant of many
        given(3 + dice.whole(4));
        break;
    case 2: // missing force
        given(1 + dice.whole(3)), add("X", sought, sought), sum(known, known);
        break;
    case 3: // equilibrant
        given(2 + dice.whole(2)), add("X", sought, sought), rest();
        break;
    case 4: // oblique components, or a rest along two lines
        given(dice.whole(3)), add("U", sought, known), add("V", sought, known), sum(known, known);
        break;
    case 5: // equilibrium with two magnitudes
        given(1 + dice.whole(2)), add("U", sought, known), add("V", sought, known), rest();
        break;
    case 6: // magnitude of a force and of the sum
        given(1 + dice.whole(2)), add("U", sought, known), sum(sought, known);
        break;
    case 7: // ambiguous
        given(dice.whole(2)), add("U", sought, known), add("V", known, sought), sum(known, known);
        s.forces[s.forces.size() - 2].lineOfActionOnly = dice.toss();
        break;
    case 8: // ambiguous, the sum's direction sought
        given(1), add("U", sought, known), sum(known, sought);
        break;
    case 9: // three sides
        given(dice.whole(2)), add("U", known, sought), add("V", known, sought);
        if (s.forces.size() > 2 && dice.toss())
            rest();
        else
            sum(known, known);
        break;
    case 10: // smallest force
        given(1 + dice.whole(2)), add("U", sought, sought), sum(sought, known), s.smallest = "U";
        break;
    default: // smallest sum
        given(1 + dice.whole(2)), add("U", sought, known), s.smallest = "R";
        s.forces.back().lineOfActionOnly = dice.toss();
    }
    if (dice.whole(3) == 0) {
        s.reference.axisDegrees = 90.0 * static_cast<double>(dice.whole(4));
        s.reference.sense = dice.toss() ? Sense::ccw : Sense::cw;
    }
    if (dice.whole(6) == 0) {
        s.angleUnit = dice.toss() ? AngleUnit::rad : AngleUnit::gon;
        for (Force& f : s.forces)
            if (auto* angle = std::get_if<AngleForm>(&f.direction.form))
                angle->value = std::round(angle->value * turnIn(s.angleUnit) / 360 * 100) / 100;
        if (auto* angle = std::get_if<AngleForm>(&s.sum.direction.form))
            angle->value = std::round(angle->value * turnIn(s.angleUnit) / 360 * 100) / 100;
    }
    if (dice.whole(5) == 0)
        s.figures = 2 + static_cast<int>(dice.whole(5));
    return s;
}

} // namespace tailpoint::testing
