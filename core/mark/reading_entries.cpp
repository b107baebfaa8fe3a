// SPDX-License-Identifier: MIT
// Entries of the table of slips: questions read wrongly.
#include "core/mark/slips.h"

namespace tailpoint::marking::entries {

std::vector<Slip> readings() {
    return {
        {.id = "sign-of-direction",
         .name = SENTENCE("marking", "direction with the other sign"),
         .place = SlipPlace::reading,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the direction of {of} is read with the other "
                                       "sign, so that it lies on the other side of the axis."),
         .weak = SENTENCE("marking", "One way to get this number is to read the direction of {of} with the "
                                     "other sign, so that it lies on the other side of the axis."),
         .mend = SENTENCE("marking", "Draw {of} where its sign says: positive angles in the sheet's sense, "
                                     "negative ones the other way."),
         .ask = SENTENCE("marking", "On which side of the axis did you draw {of}?"),
         .readings = reading_slips::signOfDirection},
        {.id = "signs-of-directions",
         .name = SENTENCE("marking", "all directions with the other sign"),
         .place = SlipPlace::reading,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if all directions are read with the other sign, "
                                       "so that the whole figure lies on the other side of the axis."),
         .weak = SENTENCE("marking", "One way to get this number is to read all directions with the other "
                                     "sign, so that the whole figure lies on the other side of the axis."),
         .mend = SENTENCE("marking", "Draw each force where its sign says: positive angles in the sheet's "
                                     "sense, negative ones the other way."),
         .ask = SENTENCE("marking", "In which sense does the sheet count its angles?"),
         .readings = reading_slips::signsOfDirections},
        {.id = "other-sense-read",
         .name = SENTENCE("marking", "a given arrow turned round"),
         .place = SlipPlace::reading,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if {of} is taken with its arrow turned round."),
         .weak =
             SENTENCE("marking", "One way to get this number is to take {of} with its arrow turned round."),
         .mend =
             SENTENCE("marking",
                      "Draw {of} with its tail at the common point and its tip where the direction points."),
         .ask = SENTENCE("marking", "Which way does the arrow of {of} point?"),
         .readings = reading_slips::otherSenseRead},
        {.id = "other-axis-read",
         .name = SENTENCE("marking", "direction read from the other axis"),
         .place = SlipPlace::reading,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if a given direction is read from the y axis in "
                                       "place of the axis that the sheet counts from."),
         .weak = SENTENCE("marking", "One way to get this number is to read a given direction from the y "
                                     "axis in place of the axis that the sheet counts from."),
         .mend = SENTENCE("marking",
                          "Before calculating, mark in the drawing the axis from which each angle is given."),
         .ask = SENTENCE("marking", "From which axis did you draw the given angles?"),
         .readings = reading_slips::otherAxisRead},
        {.id = "slope-exchanged",
         .name = SENTENCE("marking", "run and rise exchanged"),
         .place = SlipPlace::reading,
         .common = 3,
         .strong =
             SENTENCE("marking", "This is what you get if run and rise of the slope of {of} are exchanged."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to exchange run and rise of the slope of {of}."),
         .mend = SENTENCE("marking",
                          "Draw the slope's small triangle on {of}: the run lies along x, the rise along y."),
         .ask = SENTENCE("marking", "Which leg of the slope's triangle lies along x?"),
         .readings = reading_slips::slopeExchanged},
        {.id = "bearing-as-angle",
         .name = SENTENCE("marking", "bearing laid off from the x axis"),
         .place = SlipPlace::reading,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if a bearing's angle is laid off from the x "
                                       "axis, where it counts from north or south."),
         .weak = SENTENCE("marking", "One way to get this number is to lay off a bearing's angle from the x "
                                     "axis, where it counts from north or south."),
         .mend = SENTENCE("marking", "A bearing starts at north or south and turns towards east or west: "
                                     "N30°E is 30° from the y axis."),
         .ask = SENTENCE("marking", "From which axis did you lay off the bearing?"),
         .readings = reading_slips::bearingAsAngle},
        {.id = "magnitudes-exchanged",
         .name = SENTENCE("marking", "given magnitudes exchanged"),
         .place = SlipPlace::reading,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if the two given magnitudes are exchanged."),
         .weak = SENTENCE("marking", "One way to get this number is to exchange the two given magnitudes."),
         .mend = SENTENCE("marking",
                          "Write each magnitude beside its arrow in the drawing, and take it from there."),
         .ask = SENTENCE("marking", "Which magnitude stands beside which arrow?"),
         .readings = reading_slips::magnitudesExchanged},
        {.id = "force-left-out",
         .name = SENTENCE("marking", "a force left out"),
         .place = SlipPlace::reading,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if {of} is left out."),
         .weak = SENTENCE("marking", "One way to get this number is to leave out {of}."),
         .mend = SENTENCE("marking",
                          "Count the forces in the drawing and in the calculation: every one belongs in."),
         .ask = SENTENCE("marking", "Which forces are in your sum?"),
         .readings = reading_slips::forceLeftOut},
        {.id = "force-counted-twice",
         .name = SENTENCE("marking", "a force counted twice"),
         .place = SlipPlace::reading,
         .common = 2,
         .strong = SENTENCE("marking", "This is what you get if {of} is counted twice."),
         .weak = SENTENCE("marking", "One way to get this number is to count {of} twice."),
         .mend = SENTENCE("marking", "Tick each force off in the drawing when it goes into the calculation."),
         .ask = SENTENCE("marking", "Which forces are in your sum?"),
         .readings = reading_slips::forceCountedTwice},
        {.id = "resultant-as-a-force",
         .name = SENTENCE("marking", "the given sum as one more force"),
         .place = SlipPlace::reading,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the given resultant {of} is added to the "
                                       "known forces as one more force."),
         .weak = SENTENCE("marking", "One way to get this number is to add the given resultant {of} to the "
                                     "known forces as one more force."),
         .mend = SENTENCE("marking", "The resultant is what all forces add up to: the missing force is the "
                                     "resultant less the known forces."),
         .ask = SENTENCE("marking", "What is {of}, one of the forces or what they add up to?"),
         .readings = reading_slips::resultantAsAForce},
    };
}

} // namespace tailpoint::marking::entries
