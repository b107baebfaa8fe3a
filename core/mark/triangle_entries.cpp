// SPDX-License-Identifier: MIT
// Entries of the table of slips: the triangle's chain, and the calculator.
#include "core/mark/slips.h"

namespace tailpoint::marking::entries {

std::vector<Slip> triangles() {
    return {
        {.id = "supplement-in-cosines",
         .name = SENTENCE("marking", "supplement in the law of cosines"),
         .place = SlipPlace::calculation,
         .common = 5,
         .strong = SENTENCE(
             "marking", "This is what you get if the supplement of the triangle's angle goes into the law of "
                        "cosines, or if the minus in it is lost: the parallelogram's other diagonal."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to put the supplement of the triangle's angle into the law of "
             "cosines, or to lose the minus in it, which gives the parallelogram's other diagonal."),
         .mend = SENTENCE("marking", "In the law of cosines stands the angle opposite to the side that is "
                                     "sought, within the triangle; between the tails lies its supplement."),
         .ask = SENTENCE("marking", "Which angle did you put into the cosine?"),
         .rewrites = triangle_slips::supplementInCosines},
        {.id = "right-triangle-assumed",
         .name = SENTENCE("marking", "triangle taken as right-angled"),
         .place = SlipPlace::calculation,
         .common = 5,
         .strong = SENTENCE("marking", "This is what you get if the triangle is treated as right-angled: "
                                       "{of} and {with} by Pythagoras, the angle by the tangent."),
         .weak = SENTENCE("marking", "One way to get this number is to treat the triangle as right-angled: "
                                     "{of} and {with} by Pythagoras, the angle by the tangent."),
         .mend = SENTENCE("marking", "Pythagoras holds for a right angle alone; any other angle needs the "
                                     "law of cosines with its last term."),
         .ask = SENTENCE("marking", "Which angle lies between the two sides that you put into Pythagoras?"),
         .rewrites = triangle_slips::rightTriangleAssumed},
        {.id = "factor-two-lost",
         .name = SENTENCE("marking", "the factor 2 lost"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong =
             SENTENCE("marking",
                      "This is what you get if the factor 2 in the last term of the law of cosines is lost."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to lose the factor 2 in the last term of the law of cosines."),
         .mend = SENTENCE("marking", "Write the law of cosines down in letters before you put in numbers: "
                                     "its last term has a factor 2."),
         .ask = SENTENCE("marking", "How did you write the last term of the law of cosines?"),
         .rewrites = triangle_slips::factorTwoLost},
        {.id = "root-forgotten",
         .name = SENTENCE("marking", "root not taken"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong =
             SENTENCE("marking", "This is what you get if the square is stated: the root is not taken."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to state the square, without taking the root."),
         .mend =
             SENTENCE("marking",
                      "The law of cosines and Pythagoras give the square of the side; its root is the side."),
         .ask = SENTENCE("marking", "Is your value the side or its square?"),
         .rewrites = triangle_slips::rootForgotten},
        {.id = "sine-in-cosines",
         .name = SENTENCE("marking", "sine in the law of cosines"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong =
             SENTENCE("marking",
                      "This is what you get if a sine stands in the law of cosines in place of the cosine."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to put a sine into the law of cosines in place of the cosine."),
         .mend = SENTENCE("marking", "Test the formula: for a right angle the last term of the law of "
                                     "cosines vanishes, as the cosine of 90° does."),
         .ask = SENTENCE("marking", "Which function did you key in?"),
         .rewrites = triangle_slips::sineInCosines},
        {.id = "order-of-operations",
         .name = SENTENCE("marking", "order of operations"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE(
             "marking",
             "This is what you get if the last product is taken away before it is multiplied by the cosine."),
         .weak = SENTENCE("marking", "One way to get this number is to take away the last product before it "
                                     "is multiplied by the cosine."),
         .mend = SENTENCE("marking", "Multiply the last term out, the cosine included, and only then take it "
                                     "away from the two squares."),
         .ask = SENTENCE("marking", "In which order did you key in the law of cosines?"),
         .rewrites = triangle_slips::orderOfOperations},
        {.id = "angles-added",
         .name = SENTENCE("marking", "directions added, not subtracted"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if the two directions are added where the angle "
                                       "between them is their difference."),
         .weak = SENTENCE("marking", "One way to get this number is to add the two directions where the "
                                     "angle between them is their difference."),
         .mend = SENTENCE("marking", "The angle between two directions counted from the same axis is their "
                                     "difference; a minus stays with its angle."),
         .ask = SENTENCE("marking", "How did you find the angle between the two?"),
         .rewrites = triangle_slips::anglesAdded},
        {.id = "radian-mode",
         .name = SENTENCE("marking", "calculator set to radians"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the calculator is set to radians."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to calculate with the calculator set to radians."),
         .mend = SENTENCE("marking", "Test the calculator before the first line: the sine of a right angle, "
                                     "sin 90 in degrees or sin 100 in gon, must show 1."),
         .ask = SENTENCE("marking", "What does your calculator show for the sine of a right angle?"),
         .rewrites = triangle_slips::radianMode,
         .isSteep = true},
        {.id = "degree-mode",
         .name = SENTENCE("marking", "calculator set to degrees"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the calculator is set to degrees."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to calculate with the calculator set to degrees."),
         .mend = SENTENCE("marking", "Set the calculator to the unit of the sheet's angles; a quarter turn's "
                                     "sine must come out as 1."),
         .ask = SENTENCE("marking", "What does your calculator show for the sine of a quarter turn?"),
         .rewrites = triangle_slips::degreeMode},
        {.id = "gon-mode",
         .name = SENTENCE("marking", "calculator set to gon"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if the calculator is set to gon (grad)."),
         .weak = SENTENCE(
             "marking", "One way to get this number is to calculate with the calculator set to gon (grad)."),
         .mend = SENTENCE("marking", "Test the calculator before the first line: the sine of a right angle, "
                                     "sin 90 in degrees or sin 100 in gon, must show 1."),
         .ask = SENTENCE("marking", "What does your calculator show for the sine of a right angle?"),
         .rewrites = triangle_slips::gonMode},
        {.id = "radian-mode-once",
         .name = SENTENCE("marking", "one function in radians"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE(
             "marking", "This is what you get if one function is taken with the calculator set to radians."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to take one function with the calculator set to radians."),
         .mend = SENTENCE("marking", "Test the calculator before the first line: the sine of a right angle, "
                                     "sin 90 in degrees or sin 100 in gon, must show 1."),
         .ask = SENTENCE("marking", "Did you work the whole question on one calculator, in one mode?"),
         .rewrites = triangle_slips::radianModeOnce,
         .isSmall = true,
         .isSteep = true},
        {.id = "acute-for-obtuse",
         .name = SENTENCE("marking", "acute angle for obtuse, or the reverse"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the inverse sine's angle is kept where its "
                                       "supplement is due, or the reverse."),
         .weak = SENTENCE("marking", "One way to get this number is to keep the inverse sine's angle where "
                                     "its supplement is due, or the reverse."),
         .mend = SENTENCE("marking",
                          "A sine belongs to two angles. The greatest side lies opposite to the greatest "
                          "angle: compare the squares of the sides to see whether that is obtuse."),
         .ask = SENTENCE("marking", "Is the angle in your drawing acute or obtuse?"),
         .rewrites = triangle_slips::acuteForObtuse},
        {.id = "diagonal-halves-angle",
         .name = SENTENCE("marking", "angle halved by the diagonal"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong =
             SENTENCE("marking",
                      "This is what you get if the diagonal is taken to halve the angle between the forces."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to take the diagonal to halve the angle between the forces."),
         .mend = SENTENCE("marking", "The diagonal halves the angle where the two forces are equal, and "
                                     "there alone; otherwise it lies nearer to the greater force."),
         .ask = SENTENCE("marking", "How did you find the angle beside the resultant?"),
         .rewrites = triangle_slips::diagonalHalvesAngle},
        {.id = "sides-mismatched",
         .name = SENTENCE("marking", "law of sines with other sides"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE(
             "marking",
             "This is what you get if in the law of sines a side stands with the angle of another side."),
         .weak = SENTENCE("marking", "One way to get this number is to put a side beside the angle of "
                                     "another side in the law of sines."),
         .mend = SENTENCE("marking", "In the law of sines each side goes with the angle opposite to it: mark "
                                     "the three pairs in the drawing."),
         .ask = SENTENCE("marking", "Which side lies opposite to the angle that you looked for?"),
         .rewrites = triangle_slips::sidesMismatched},
        {.id = "ratio-inverted",
         .name = SENTENCE("marking", "law of sines upside down"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE("marking",
                            "This is what you get if the law of sines is solved with its ratio upside down."),
         .weak =
             SENTENCE("marking",
                      "One way to get this number is to solve the law of sines with its ratio upside down."),
         .mend = SENTENCE("marking", "Write the law of sines as two equal fractions and multiply crosswise; "
                                     "the greater side must come out with the greater sine."),
         .ask = SENTENCE("marking", "How did you solve the law of sines for what is sought?"),
         .rewrites = triangle_slips::ratioInverted},
        {.id = "inverse-forgotten",
         .name = SENTENCE("marking", "inverse function not taken"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if the value of the sine, cosine or tangent is "
                                       "stated as the angle: the inverse is not taken."),
         .weak = SENTENCE("marking", "One way to get this number is to state the value of the sine, cosine "
                                     "or tangent as the angle, without taking the inverse."),
         .mend = SENTENCE("marking", "A sine is a number up to 1; the angle comes from the inverse function, "
                                     "which has a key of its own."),
         .ask = SENTENCE("marking", "Is your value an angle, or its sine, cosine or tangent?"),
         .rewrites = triangle_slips::inverseForgotten,
         .isSmall = true},
        {.id = "bracket-left-open",
         .name = SENTENCE("marking", "bracket left open"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if a bracket is left open, so that the function "
                                       "takes the whole quotient."),
         .weak = SENTENCE("marking", "One way to get this number is to leave a bracket open, so that the "
                                     "function takes the whole quotient."),
         .mend = SENTENCE("marking", "Close the bracket behind the angle before you divide."),
         .ask = SENTENCE("marking", "Where did you close the bracket of the sine?"),
         .rewrites = triangle_slips::bracketLeftOpen},
        {.id = "cosine-in-sines",
         .name = SENTENCE("marking", "cosine in the law of sines"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE(
             "marking", "This is what you get if a cosine stands in the law of sines in place of the sine."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to put a cosine into the law of sines in place of the sine."),
         .mend = SENTENCE("marking", "The law of sines has sines alone: check the key."),
         .ask = SENTENCE("marking", "Which function did you key in?"),
         .rewrites = triangle_slips::cosineInSines},
        {.id = "referral-forgotten",
         .name = SENTENCE("marking", "angle not referred to the axis"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if an angle on the way is stated as the "
                                       "direction: it is not yet referred to the axis that is asked for."),
         .weak = SENTENCE("marking", "One way to get this number is to state an angle on the way as the "
                                     "direction, before it is referred to the axis that is asked for."),
         .mend = SENTENCE("marking", "An angle of the triangle lies beside a force. Add it to the direction "
                                     "of that force, or take it away, to come to the axis."),
         .ask = SENTENCE("marking", "Between which two lines does your angle lie?"),
         .rewrites = triangle_slips::referralForgotten},
        {.id = "referral-turned",
         .name = SENTENCE("marking", "angle turned off to the wrong side"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the angle is turned off to the wrong side."),
         .weak =
             SENTENCE("marking", "One way to get this number is to turn the angle off to the wrong side."),
         .mend = SENTENCE("marking", "The drawing shows on which side of the known force the sought one "
                                     "lies: turn off the angle to that side."),
         .ask = SENTENCE("marking", "To which side did you turn off the angle?"),
         .rewrites = triangle_slips::referralTurned},
        {.id = "from-other-force",
         .name = SENTENCE("marking", "angle turned off from the other force"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if the angle is turned off from a force other "
                                       "than the one beside which it lies."),
         .weak = SENTENCE("marking", "One way to get this number is to turn the angle off from a force other "
                                     "than the one beside which it lies."),
         .mend = SENTENCE(
             "marking",
             "The angle that the law of sines gave lies beside one of the two forces: start from that one."),
         .ask = SENTENCE("marking", "From which force did you turn off the angle?"),
         .rewrites = triangle_slips::fromOtherForce},
        {.id = "axis-angle-in-triangle",
         .name = SENTENCE("marking", "angle from the axis in the triangle"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if the angle from the axis stands in the law of "
                                       "sines where the triangle's angle is due."),
         .weak = SENTENCE("marking", "One way to get this number is to put the angle from the axis into the "
                                     "law of sines where the triangle's angle is due."),
         .mend = SENTENCE("marking", "In the law of sines stand the triangle's angles: those between the "
                                     "sides, found as differences of the directions."),
         .ask = SENTENCE("marking", "Between which two sides does the angle in your sine lie?"),
         .rewrites = triangle_slips::axisAngleInTriangle},
        {.id = "given-angle-supplement",
         .name = SENTENCE("marking", "supplement of the given angle"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE(
             "marking", "This is what you get if the supplement of the given angle stands in the triangle."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to put the supplement of the given angle into the triangle."),
         .mend = SENTENCE(
             "marking", "Draw the triangle tip to tail and look up which of the two angles lies within it."),
         .ask = SENTENCE("marking", "Which angle of the triangle is known?"),
         .rewrites = triangle_slips::givenAngleSupplement},
        {.id = "included-angle-assumed",
         .name = SENTENCE("marking", "angle taken between the known sides"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if the known angle is taken to lie between the "
                                       "two known sides, and the law of cosines is used for the third."),
         .weak = SENTENCE("marking", "One way to get this number is to take the known angle to lie between "
                                     "the two known sides, and to use the law of cosines for the third."),
         .mend = SENTENCE("marking",
                          "Here the known angle lies opposite to a known side: begin with the law of sines."),
         .ask = SENTENCE("marking", "Between which two sides does the known angle lie?"),
         .rewrites = triangle_slips::includedAngleAssumed},
        {.id = "discriminant-forgotten",
         .name = SENTENCE("marking", "root between two answers left out"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if the root that parts the two answers is left "
                                       "out: this is the foot of the perpendicular, halfway between them."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to leave out the root that parts the two answers, "
                          "which leads to the foot of the perpendicular, halfway between them."),
         .mend = SENTENCE("marking", "The circle cuts the line in two points, at equal distances from the "
                                     "foot of the perpendicular: add that distance, or take it away."),
         .ask = SENTENCE("marking", "How many points do the line and the circle have in common?"),
         .rewrites = triangle_slips::discriminantForgotten},
    };
}

} // namespace tailpoint::marking::entries
