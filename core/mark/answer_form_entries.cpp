// SPDX-License-Identifier: MIT
// Entries of the table of slips: answers in another form.
#include "core/mark/slips.h"

namespace tailpoint::marking::entries {

std::vector<Slip> answerForms() {
    return {
        {.id = "wrong-turn",
         .name = SENTENCE("marking", "angle in the other turning sense"),
         .place = SlipPlace::reporting,
         .common = 5,
         .strong = SENTENCE("marking",
                            "This is what you get if the right angle is stated in the other turning sense."),
         .weak = SENTENCE(
             "marking", "One way to get this number is to state the right angle in the other turning sense."),
         .mend = SENTENCE("marking", "State the sense with the angle: positive in the sheet's sense, "
                                     "negative the other way; of a bearing check its second letter."),
         .ask = SENTENCE("marking", "In which sense do you count the angle?"),
         .forms = answer_forms::wrongTurn,
         .verdict = Verdict::axis,
         .isWritten = true},
        {.id = "wrong-axis",
         .name = SENTENCE("marking", "angle from another axis"),
         .place = SlipPlace::reporting,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the right direction is counted from an axis "
                                       "other than the one that is asked for."),
         .weak = SENTENCE("marking", "One way to get this number is to count the right direction from an "
                                     "axis other than the one that is asked for."),
         .mend = SENTENCE("marking", "Draw the arrow and the axis that the question names, and read the "
                                     "angle off between these two."),
         .ask = SENTENCE("marking", "From which axis do you count the angle?"),
         .forms = answer_forms::wrongAxis,
         .verdict = Verdict::axis,
         .isWritten = true},
        {.id = "opposite",
         .name = SENTENCE("marking", "arrow turned round"),
         .place = SlipPlace::reporting,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the arrow is turned round: the angle is half "
                                       "a turn off, every component has the other sign."),
         .weak = SENTENCE("marking", "One way to get this number is to turn the arrow round: the angle is "
                                     "half a turn off, every component has the other sign."),
         .mend = SENTENCE(
             "marking",
             "Sketch the vectors tip to tail: the resultant runs from the first tail to the last tip."),
         .ask = SENTENCE("marking", "Where does your arrow begin, and where does it end?"),
         .forms = answer_forms::opposite,
         .isOnTheWay = true},
        {.id = "sense-turned",
         .name = SENTENCE("marking", "sign of a pull or a push"),
         .place = SlipPlace::reporting,
         .common = 5,
         .strong =
             SENTENCE("marking", "This is what you get if the size of {of} is right and its sign, which "
                                 "says whether it pulls or pushes, is lost or reversed."),
         .weak = SENTENCE("marking", "One way to get this number is to lose or reverse the sign of {of}, "
                                     "which says whether it pulls or pushes."),
         .mend = SENTENCE("marking", "Draw each unknown force in the sense that counts as positive, and "
                                     "solve: a negative result acts against it, and keeps its sign."),
         .ask = SENTENCE("marking", "Does {of} pull or push, and which sign has that?"),
         .forms = answer_forms::senseTurned},
        {.id = "no-sum-turned",
         .name = SENTENCE("marking", "resultant for the balancing force"),
         .place = SlipPlace::reading,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the resultant of the given forces is stated "
                                       "in place of the force that balances it."),
         .weak = SENTENCE("marking", "One way to get this number is to state the resultant of the given "
                                     "forces in place of the force that balances it."),
         .mend = SENTENCE("marking", "At rest all forces add up to nothing: the balancing force is opposite "
                                     "to the resultant of the others."),
         .ask = SENTENCE("marking", "Is it the resultant that is asked for, or the force that balances it?"),
         .forms = answer_forms::noSumTurned},
        {.id = "complement",
         .name = SENTENCE("marking", "a quarter turn less the angle"),
         .place = SlipPlace::reporting,
         .common = 2,
         .strong = SENTENCE(
             "marking",
             "This is what you get if a quarter turn less the angle is stated in place of the angle."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to state a quarter turn less the angle in place of the angle."),
         .mend = SENTENCE("marking", "Draw the arrow and check whether the angle stands beside the axis that "
                                     "is asked for, or beside the other one."),
         .ask = SENTENCE("marking", "Beside which axis does your angle stand?"),
         .forms = answer_forms::complement,
         .verdict = Verdict::axis,
         .isWritten = true},
        {.id = "supplement",
         .name = SENTENCE("marking", "a half turn less the angle"),
         .place = SlipPlace::reporting,
         .common = 2,
         .strong =
             SENTENCE("marking",
                      "This is what you get if a half turn less the angle is stated in place of the angle."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to state a half turn less the angle in place of the angle."),
         .mend = SENTENCE("marking", "Draw the arrow and check whether the angle stands beside the positive "
                                     "axis or beside the negative one."),
         .ask = SENTENCE("marking", "Beside which end of the axis does your angle stand?"),
         .forms = answer_forms::supplement,
         .verdict = Verdict::axis,
         .isWritten = true,
         .isOnTheWay = true},
        {.id = "unit-confused",
         .name = SENTENCE("marking", "magnitude in another unit"),
         .place = SlipPlace::reporting,
         .common = 3,
         .strong = SENTENCE(
             "marking",
             "This is what you get if the right magnitude is stated in a unit other than the sheet's."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to state the right magnitude in a unit other than the sheet's."),
         .mend = SENTENCE("marking",
                          "Write the unit beside every value, and convert before you state the answer."),
         .ask = SENTENCE("marking", "In which unit is your value?"),
         .forms = answer_forms::unitConfused,
         .verdict = Verdict::unit,
         .isScaled = true,
         .isWritten = true},
        {.id = "radians-for-degrees",
         .name = SENTENCE("marking", "angle in radians for degrees"),
         .place = SlipPlace::reporting,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if the right angle is stated in radians where "
                                       "degrees are due, or the reverse."),
         .weak = SENTENCE("marking", "One way to get this number is to state the right angle in radians "
                                     "where degrees are due, or the reverse."),
         .mend = SENTENCE(
             "marking",
             "Write the unit beside the angle, and convert: a half turn is π radians or 180 degrees."),
         .ask = SENTENCE("marking", "In which unit is your angle?"),
         .forms = answer_forms::radiansForDegrees,
         .verdict = Verdict::unit,
         .isScaled = true,
         .isWritten = true},
        {.id = "gons-for-degrees",
         .name = SENTENCE("marking", "angle in gon for degrees"),
         .place = SlipPlace::reporting,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if the right angle is stated in gon where "
                                       "degrees are due, or the reverse."),
         .weak = SENTENCE("marking", "One way to get this number is to state the right angle in gon where "
                                     "degrees are due, or the reverse."),
         .mend = SENTENCE(
             "marking", "Check the calculator's mode, and convert: a quarter turn is 100 gon or 90 degrees."),
         .ask = SENTENCE("marking", "In which unit is your angle?"),
         .forms = answer_forms::gonsForDegrees,
         .verdict = Verdict::unit,
         .isScaled = true,
         .isWritten = true},
        {.id = "decimal-point",
         .name = SENTENCE("marking", "decimal point moved"),
         .place = SlipPlace::reporting,
         .common = 2,
         .strong =
             SENTENCE("marking", "This is what you get if the decimal point of the right value has moved."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to move the decimal point of the right value."),
         .mend = SENTENCE("marking", "Estimate the size first: a drawing to scale shows at once a value that "
                                     "is ten times too large or too small."),
         .ask = SENTENCE("marking", "How large would you estimate it to be from the drawing?"),
         .forms = answer_forms::decimalPoint,
         .isScaled = true,
         .isWritten = true},
        {.id = "digits-exchanged",
         .name = SENTENCE("marking", "two digits exchanged"),
         .place = SlipPlace::reporting,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if two neighbouring digits of the right value "
                                       "are exchanged in writing it down."),
         .weak = SENTENCE("marking", "One way to get this number is to exchange two neighbouring digits of "
                                     "the right value in writing it down."),
         .mend = SENTENCE("marking", "Compare the written value with the display, digit by digit."),
         .ask = SENTENCE("marking", "What does your calculator show?"),
         .forms = answer_forms::digitsExchanged,
         .isWritten = true},
        {.id = "tip-at-midpoint",
         .name = SENTENCE("marking", "tip where the diagonals cross"),
         .place = SlipPlace::reporting,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if the arrow ends where the two diagonals "
                                       "cross, halfway along the resultant."),
         .weak = SENTENCE("marking", "One way to get this number is to end the arrow where the two diagonals "
                                     "cross, halfway along the resultant."),
         .mend = SENTENCE(
             "marking",
             "The resultant is the whole diagonal: its tip is the corner opposite to the common point."),
         .ask = SENTENCE("marking", "At which corner of the parallelogram does your arrow end?"),
         .forms = answer_forms::tipAtMidpoint},
    };
}

} // namespace tailpoint::marking::entries
