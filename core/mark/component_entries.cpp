// SPDX-License-Identifier: MIT
// Entries of the table of slips: the components' chain.
#include "core/mark/slips.h"

namespace tailpoint::marking::entries {

std::vector<Slip> components() {
    return {
        {.id = "component-sign",
         .name = SENTENCE("marking", "sign of a component"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if a component of {of} has the wrong sign."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to take a component of {of} with the wrong sign."),
         .mend = SENTENCE(
             "marking",
             "Look at the arrow: to the left the x component is negative, downwards the y component."),
         .ask = SENTENCE("marking", "Which signs do the components of {of} have?"),
         .rewrites = component_slips::componentSign},
        {.id = "sine-cosine-exchanged",
         .name = SENTENCE("marking", "sine and cosine exchanged"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong =
             SENTENCE("marking", "This is what you get if sine and cosine are exchanged in the components."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to exchange sine and cosine in the components."),
         .mend = SENTENCE("marking", "The cosine belongs to the leg beside the angle. Test it: at 0° all of "
                                     "the force lies along the axis from which the angle counts. Of a slope "
                                     "the run belongs to x, the rise to y."),
         .ask = SENTENCE("marking", "Which leg lies beside the angle?"),
         .rewrites = component_slips::sineCosineExchanged,
         .goesBySigns = true},
        {.id = "sine-cosine-exchanged-once",
         .name = SENTENCE("marking", "sine and cosine exchanged once"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE(
             "marking", "This is what you get if sine and cosine are exchanged in the components of {of}."),
         .weak =
             SENTENCE("marking",
                      "One way to get this number is to exchange sine and cosine in the components of {of}."),
         .mend = SENTENCE("marking", "The cosine belongs to the leg beside the angle: mark the angle of {of} "
                                     "in the drawing, and from which axis it counts."),
         .ask = SENTENCE("marking", "From which axis does the angle of {of} count?"),
         .rewrites = component_slips::sineCosineExchangedOnce,
         .goesBySigns = true},
        {.id = "component-left-out",
         .name = SENTENCE("marking", "a component left out"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if a component of {of} is left out."),
         .weak = SENTENCE("marking", "One way to get this number is to leave out a component of {of}."),
         .mend = SENTENCE(
             "marking",
             "A force that lies along no axis has two components: list both for each force in a table."),
         .ask = SENTENCE("marking", "Which components of {of} are in your sums?"),
         .rewrites = component_slips::componentLeftOut},
        {.id = "component-whole",
         .name = SENTENCE("marking", "whole magnitude as a component"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking",
                            "This is what you get if the whole magnitude of {of} is taken as its component."),
         .weak =
             SENTENCE("marking",
                      "One way to get this number is to take the whole magnitude of {of} as its component."),
         .mend = SENTENCE("marking",
                          "A component is shorter than its force, unless the force lies along that axis."),
         .ask = SENTENCE("marking", "How long is {of} along that axis?"),
         .rewrites = component_slips::componentWhole,
         .goesBySigns = true},
        {.id = "right-side-lost",
         .name = SENTENCE("marking", "component of the sum left out"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE(
             "marking",
             "This is what you get if a sum of components is set to zero where it is the component of {of}."),
         .weak = SENTENCE("marking", "One way to get this number is to set a sum of components to zero where "
                                     "it is the component of {of}."),
         .mend = SENTENCE("marking",
                          "The forces add up to {of}: on the right side of each sum stands its component."),
         .ask = SENTENCE("marking", "What stands on the right side of your two sums?"),
         .rewrites = component_slips::rightSideLost},
        {.id = "components-added",
         .name = SENTENCE("marking", "components added as numbers"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking",
                            "This is what you get if the two components are added in place of Pythagoras."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to add the two components in place of Pythagoras."),
         .mend = SENTENCE("marking", "The components are the legs of a right triangle: the magnitude is the "
                                     "root of the sum of their squares."),
         .ask = SENTENCE("marking", "How did you put the two components together?"),
         .rewrites = component_slips::componentsAdded},
        {.id = "component-for-force",
         .name = SENTENCE("marking", "a component for the magnitude"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if a component is stated as the magnitude."),
         .weak = SENTENCE("marking", "One way to get this number is to state a component as the magnitude."),
         .mend = SENTENCE("marking",
                          "A component is but a part: the magnitude is the root of the sum of both squares."),
         .ask = SENTENCE("marking", "Is your value the vector or its component?"),
         .rewrites = component_slips::componentForForce},
        {.id = "negative-squared",
         .name = SENTENCE("marking", "negative component squared"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if a negative component is squared without "
                                       "brackets, so that its square is taken away."),
         .weak = SENTENCE("marking", "One way to get this number is to square a negative component without "
                                     "brackets, so that its square is taken away."),
         .mend =
             SENTENCE("marking",
                      "Set a negative number in brackets before you square it; a square is never negative."),
         .ask =
             SENTENCE("marking", "What does your calculator show for the square of the negative component?"),
         .rewrites = component_slips::negativeSquared,
         .goesBySigns = true},
        {.id = "quadrant-missed",
         .name = SENTENCE("marking", "wrong quadrant"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong = SENTENCE(
             "marking",
             "This is what you get if the inverse tangent's value is stated as it is, without the quadrant."),
         .weak = SENTENCE("marking", "One way to get this number is to state the inverse tangent's value as "
                                     "it is, without the quadrant."),
         .mend = SENTENCE("marking", "The signs of the two components tell the quadrant; the inverse tangent "
                                     "knows only their ratio."),
         .ask = SENTENCE("marking", "In which quadrant do your components lie?"),
         .rewrites = component_slips::quadrantMissed},
        {.id = "tangent-inverted",
         .name = SENTENCE("marking", "tangent upside down"),
         .place = SlipPlace::calculation,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the tangent is taken upside down, x over y, "
                                       "or its angle is laid off from the y axis."),
         .weak = SENTENCE("marking", "One way to get this number is to take the tangent upside down, x over "
                                     "y, or to lay off its angle from the y axis."),
         .mend = SENTENCE("marking", "From the x axis the tangent is y over x: the leg opposite to the angle "
                                     "over the leg beside it."),
         .ask = SENTENCE("marking", "Which component stands above in your tangent?"),
         .rewrites = component_slips::tangentInverted,
         .goesBySigns = true},
        {.id = "slope-ratio-taken",
         .name = SENTENCE("marking", "ratio of the legs for a component"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if a component of {of} is taken with the ratio "
                                       "of the slope's legs, where the length of the slope stands below."),
         .weak =
             SENTENCE("marking", "One way to get this number is to take a component of {of} with the ratio "
                                 "of the slope's legs, where the length of the slope stands below."),
         .mend = SENTENCE("marking", "Find the length of the slope's triangle by Pythagoras: a component is "
                                     "the force times a leg over that length."),
         .ask = SENTENCE("marking", "What is the denominator of the ratio for the component of {of}?"),
         .rewrites = component_slips::slopeRatioTaken},
        {.id = "slope-shares",
         .name = SENTENCE("marking", "force shared out by the legs"),
         .place = SlipPlace::calculation,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if {of} is shared out as run to rise, so that "
                                       "its two components add up to it."),
         .weak = SENTENCE("marking", "One way to get this number is to share {of} out as run to rise, so "
                                     "that its two components add up to it."),
         .mend = SENTENCE("marking", "The squares of the components add up to the square of the force: the "
                                     "length of the slope's triangle stands below."),
         .ask = SENTENCE("marking", "What is the denominator of the ratio for the components of {of}?"),
         .rewrites = component_slips::slopeShares},
        {.id = "perpendicular-for-oblique",
         .name = SENTENCE("marking", "projections for oblique components"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong = SENTENCE("marking",
                            "This is what you get if the components along the two oblique lines are taken as "
                            "if at right angles: projected instead of laid off along the lines."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to take the components along the two oblique lines "
                          "as if at right angles: projected instead of laid off along the lines."),
         .mend = SENTENCE("marking", "Draw the parallelogram with its sides along the two lines: their "
                                     "lengths come from the law of sines."),
         .ask = SENTENCE("marking", "Do the two lines make a right angle?"),
         .rewrites = component_slips::perpendicularForOblique},
        {.id = "equation-sign",
         .name = SENTENCE("marking", "sign of a term"),
         .place = SlipPlace::calculation,
         .common = 3,
         .strong =
             SENTENCE("marking", "This is what you get if a term of a sum of components has the wrong sign."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to take a term of a sum of components with the wrong sign."),
         .mend = SENTENCE(
             "marking",
             "Write each term with the sign that its arrow has along the axis, before any number goes in."),
         .ask = SENTENCE("marking", "Which sign does each term of your two sums have?"),
         .rewrites = component_slips::equationSign},
    };
}

} // namespace tailpoint::marking::entries
