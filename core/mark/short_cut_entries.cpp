// SPDX-License-Identifier: MIT
// Entries of the table of slips: short cuts.
#include "core/mark/slips.h"

namespace tailpoint::marking::entries {

std::vector<Slip> shortCuts() {
    return {
        {.id = "magnitudes-added",
         .name = SENTENCE("marking", "magnitudes added"),
         .place = SlipPlace::shortCut,
         .common = 5,
         .strong = SENTENCE("marking", "This is what you get if the magnitudes are added as numbers."),
         .weak = SENTENCE("marking", "One way to get this number is to add the magnitudes as numbers."),
         .mend = SENTENCE(
             "marking", "Forces add tip to tail: their magnitudes add up only where all point the same way."),
         .ask = SENTENCE("marking", "Do the forces point the same way?"),
         .shortCuts = short_cuts::magnitudesAdded},
        {.id = "magnitudes-subtracted",
         .name = SENTENCE("marking", "magnitudes subtracted"),
         .place = SlipPlace::shortCut,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if the magnitudes are subtracted as numbers."),
         .weak = SENTENCE("marking", "One way to get this number is to subtract the magnitudes as numbers."),
         .mend = SENTENCE(
             "marking",
             "Magnitudes are subtracted only where two forces point opposite ways; else draw the triangle."),
         .ask = SENTENCE("marking", "Do the two forces point opposite ways?"),
         .shortCuts = short_cuts::magnitudesSubtracted},
        {.id = "direction-averaged",
         .name = SENTENCE("marking", "directions averaged"),
         .place = SlipPlace::shortCut,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if the two directions are averaged."),
         .weak = SENTENCE("marking", "One way to get this number is to average the two directions."),
         .mend = SENTENCE("marking", "The resultant lies halfway between two equal forces only; find its "
                                     "angle from the triangle or from the components."),
         .ask = SENTENCE("marking", "How did you find the direction?"),
         .shortCuts = short_cuts::directionAveraged},
        {.id = "difference-taken",
         .name = SENTENCE("marking", "difference for the sum"),
         .place = SlipPlace::shortCut,
         .common = 3,
         .strong = SENTENCE(
             "marking",
             "This is what you get if the difference of the two forces is taken in place of their sum."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to take the difference of the two forces in place of their sum."),
         .mend = SENTENCE("marking", "Tip to tail the sum runs from the first tail to the last tip; the line "
                                     "that joins the two tips is the difference."),
         .ask = SENTENCE("marking", "Which diagonal of the parallelogram did you take?"),
         .readings = reading_slips::differenceTaken},
        {.id = "halved-load",
         .name = SENTENCE("marking", "half of the load for each"),
         .place = SlipPlace::shortCut,
         .common = 4,
         .strong = SENTENCE("marking", "This is what you get if each of the two takes half of {of}."),
         .weak =
             SENTENCE("marking", "One way to get this number is to let each of the two take half of {of}."),
         .mend = SENTENCE("marking", "Only their upward parts share the load, and half each only where both "
                                     "are equally steep; oblique they pull against each other as well."),
         .ask = SENTENCE("marking", "What do the two carry along x?"),
         .shortCuts = short_cuts::halvedLoad},
        {.id = "half-load-each",
         .name = SENTENCE("marking", "half of the load with each sine"),
         .place = SlipPlace::shortCut,
         .common = 3,
         .strong = SENTENCE(
             "marking",
             "This is what you get if half of {of} is given to each, with the sine of its own angle."),
         .weak = SENTENCE(
             "marking",
             "One way to get this number is to give half of {of} to each, with the sine of its own angle."),
         .mend = SENTENCE("marking", "The two don't share the load in halves unless they lie symmetrically: "
                                     "write both sums of components."),
         .ask = SENTENCE("marking", "Do the two lie symmetrically?"),
         .shortCuts = short_cuts::halfLoadEach},
        {.id = "equal-tensions",
         .name = SENTENCE("marking", "equal pulls assumed"),
         .place = SlipPlace::shortCut,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if both are taken to pull equally."),
         .weak = SENTENCE("marking", "One way to get this number is to take both to pull equally."),
         .mend = SENTENCE(
             "marking", "Along x the two must cancel: they pull equally only where they are equally steep."),
         .ask = SENTENCE("marking", "What is the sum along x with your values?"),
         .shortCuts = short_cuts::equalTensions},
        {.id = "answers-exchanged",
         .name = SENTENCE("marking", "answers exchanged"),
         .place = SlipPlace::shortCut,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if the two answers are exchanged."),
         .weak = SENTENCE("marking", "One way to get this number is to exchange the two answers."),
         .mend = SENTENCE(
             "marking", "Check each value against the drawing: the longer arrow has the greater magnitude."),
         .ask = SENTENCE("marking", "Which value belongs to {of}, and which to {with}?"),
         .shortCuts = short_cuts::answersExchanged,
         .isOneSlip = true},
        {.id = "answers-mixed",
         .name = SENTENCE("marking", "two answers mixed"),
         .place = SlipPlace::shortCut,
         .common = 5,
         .strong = SENTENCE(
             "marking",
             "This is what you get if a value of the one answer is put together with one of the other."),
         .weak = SENTENCE("marking", "One way to get this number is to put a value of the one answer "
                                     "together with one of the other."),
         .mend = SENTENCE("marking", "Each answer is a pair: finish one triangle, then the other."),
         .ask = SENTENCE("marking", "To which of the two triangles does each of your values belong?"),
         .shortCuts = short_cuts::answersMixed},
        {.id = "g-rounded",
         .name = SENTENCE("marking", "g taken as 10 m/s²"),
         .place = SlipPlace::shortCut,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if g is taken as 10 m/s²."),
         .weak = SENTENCE("marking", "One way to get this number is to take g as 10 m/s²."),
         .mend = SENTENCE("marking", "Take g as 9.81 m/s², unless the question says otherwise."),
         .ask = SENTENCE("marking", "Which value of g did you take?"),
         .readings = reading_slips::gRounded},
        {.id = "mass-as-weight",
         .name = SENTENCE("marking", "kilogrammes as newtons"),
         .place = SlipPlace::shortCut,
         .common = 3,
         .strong = SENTENCE("marking", "This is what you get if the kilogrammes are taken as newtons."),
         .weak = SENTENCE("marking", "One way to get this number is to take the kilogrammes as newtons."),
         .mend = SENTENCE("marking", "The weight is the mass times g: kilogrammes are not a force."),
         .ask = SENTENCE("marking", "What is the weight of that mass?"),
         .readings = reading_slips::massAsWeight},
        {.id = "smallest-to-the-force",
         .name = SENTENCE("marking", "at right angles to the force"),
         .place = SlipPlace::shortCut,
         .common = 3,
         .strong = SENTENCE("marking",
                            "This is what you get if the smallest force is laid off at right angles to the "
                            "given force, where it must be at right angles to the line of the resultant."),
         .weak = SENTENCE("marking",
                          "One way to get this number is to lay off the smallest force at right angles to "
                          "the given force, where it must be at right angles to the line of the resultant."),
         .mend = SENTENCE("marking", "The shortest way from a point to a line is perpendicular to the line: "
                                     "the smallest force stands at right angles to the known line."),
         .ask = SENTENCE("marking", "To which line is your force perpendicular?"),
         .shortCuts = short_cuts::smallestToTheForce},
    };
}

} // namespace tailpoint::marking::entries
