// SPDX-License-Identifier: MIT
// Families that ask for a resultant: two forces, several, by slopes, by bearings.
#include "core/practice/family.h"

namespace tailpoint::practising {

namespace {

/// Both on the side to which the scene's axis points.
Sketch twoForces(const Draft& draft) {
    const Reference reference = draft.level == 3 ? otherReference(draft.lots) : Reference{};
    const int first = draft.angle({5, 25}, {20, 65}, {25, 80});
    const int spread = draft.angle({35, 60}, {60, 115}, {95, 150});
    const bool isMirrored = draft.level == 3 && draft.lots.toss();
    const int second = draft.level == 1 ? first + spread : first - spread;
    Sketch made = draft.sketch({draft.force("P", countedFrom(reference, isMirrored ? -first : first)),
                                draft.force("Q", countedFrom(reference, isMirrored ? -second : second))},
                               unknownForce("R"));
    made.reference = reference;
    return made;
}

Sketch severalForces(const Draft& draft) {
    std::vector<Force> forces{draft.force("P", draft.angle(8, 55)), draft.force("Q", draft.angle(95, 165)),
                              draft.force("S", draft.angle(-80, -10))};
    if (draft.level >= 2)
        forces.push_back(draft.force("T", draft.angle(-170, -100)));
    if (draft.level == 3) // along an axis: one of its components is nothing
        forces.push_back(draft.force("U", 180 * draft.lots.between(0, 3)));
    return draft.sketch(std::move(forces), unknownForce("R"));
}

struct Leg {
    int run, rise;
};

/// With whole hypotenuse, and without.
Leg someLeg(const Draft& draft, bool isWhole) {
    static const std::vector<Leg> whole{{3, 4}, {4, 3}, {5, 12}, {12, 5}, {8, 15}, {15, 8}};
    static const std::vector<Leg> other{{1, 2}, {2, 1}, {2, 3}, {3, 2}, {1, 3},
                                        {3, 1}, {2, 5}, {5, 2}, {3, 5}, {5, 3}};
    return draft.lots.oneOf(isWhole ? whole : other);
}

Sketch slopes(const Draft& draft) {
    const Leg first = someLeg(draft, true), second = someLeg(draft, draft.level == 1);
    const int side = draft.level == 1 ? 1 : draft.lots.toss() ? 1 : -1;
    std::vector<Force> forces{slopeOf("P", draft.size(), first.run, first.rise),
                              slopeOf("Q", draft.size(), side * second.run, -side * second.rise)};
    if (draft.level == 2 && side == 1)
        forces[1] = slopeOf("Q", *forces[1].magnitude.value, -second.run, second.rise);
    if (draft.level == 3)
        forces.push_back(draft.force("S", draft.angle(-170, -100)));
    return draft.sketch(std::move(forces), unknownForce("R"));
}

Force someBearing(const Draft& draft, std::string name, char from, char toward) {
    const int degrees = draft.angle(10, 80);
    return bearingOf(std::move(name), draft.size(), from, degrees, toward);
}

Sketch bearings(const Draft& draft) {
    const bool isWest = draft.lots.toss();
    std::vector<Force> forces{someBearing(draft, "P", 'N', 'E')};
    forces.push_back(draft.level == 1 ? someBearing(draft, "Q", 'N', isWest ? 'W' : 'E')
                                      : someBearing(draft, "Q", 'S', 'E'));
    if (draft.level == 3)
        forces.push_back(someBearing(draft, "S", isWest ? 'N' : 'S', 'W'));
    Sketch made = draft.sketch(std::move(forces), unknownForce("R"));
    made.reference = {90, Sense::cw};
    return made;
}

} // namespace

FamilyRow twoForcesFamily() {
    return {
        "two-forces",
        "Two forces and their resultant",
        "Find the magnitude and the direction of the resultant of two forces.",
        {{{"magnitudes in tens, or whole kilonewtons; angles in fives; an acute angle between the forces",
           "counter-clockwise from +x, both directions positive",
           "the angle in the law of cosines is not the one between the tails; the direction is counted from "
           "the axis",
           {"supplement-in-cosines", "right-triangle-assumed", "referral-forgotten", "magnitudes-added",
            "factor-two-lost"}},
          {"magnitudes in fives, or half kilonewtons; whole degrees; from acute to obtuse",
           "counter-clockwise from +x, one direction negative",
           "the angle between the tails needs the sign; an angle is turned off to the right side",
           {"supplement-in-cosines", "right-triangle-assumed", "sign-of-direction", "referral-forgotten",
            "referral-turned"}},
          {"whole magnitudes, or half kilonewtons; half degrees; an obtuse angle between the forces",
           "from another axis or clockwise",
           "the resultant may be smaller than a force; axis and turning sense of the answer",
           {"supplement-in-cosines", "right-triangle-assumed", "wrong-turn", "referral-forgotten",
            "referral-turned", "from-other-force"}}}},
        {{"raft", "Survey raft on two tow lines",
          "Two boats tow a survey raft; both lines are made fast to the same ring. The first boat pulls with "
          "{P}, the second with {Q}.",
          "along the fairway", kTowing},
         {"kite", "Two kites on one handle",
          "Two kites pull at the same handle. Seen from above, the horizontal parts of their pulls are {P} "
          "and "
          "{Q}.",
          "downwind", kCords},
         {"sledge", "Two dogs before a sledge",
          "Two dogs draw a loaded sledge by traces that are hooked to the same ring. One pulls with {P}, the "
          "other with {Q}.",
          "along the track", kTraces},
         {"stage", "Two wires at one shackle over the stage",
          "Two level wires of a theatre's rigging lead to the same shackle. Seen from above, one pulls with "
          "{P} and the other with {Q}.",
          "towards the audience", kWires, true},
         {"barge", "Barge between two tugs",
          "Two tugs pull at the bow of a barge, one with {P} and the other with {Q}.", "downstream", kTugs}},
        twoForces,
        "Find the magnitude and the direction of the resultant {R:name}."};
}

FamilyRow severalForcesFamily() {
    return {
        "several-forces",
        "Several forces and their resultant",
        "Find the magnitude and the direction of the resultant of three, four or five forces.",
        {{{"three forces; magnitudes in tens, or whole kilonewtons; angles in fives",
           "counter-clockwise from +x, one direction negative",
           "the sign of each component; sine and cosine",
           {"component-sign", "sine-cosine-exchanged", "components-added", "force-left-out",
            "tangent-inverted"},
           98},
          {"four forces, one in each quadrant; magnitudes in fives, or half kilonewtons; whole degrees",
           "counter-clockwise from +x, two directions negative",
           "two signs in every column; the quadrant of the resultant",
           {"sine-cosine-exchanged", "components-added", "quadrant-missed", "force-left-out",
            "tangent-inverted"}},
          {"five forces, one of them along an axis; whole magnitudes, or half kilonewtons; half degrees",
           "counter-clockwise from +x",
           "a component that is nothing; the quadrant of the resultant",
           {"sine-cosine-exchanged", "components-added", "quadrant-missed", "force-counted-twice",
            "tangent-inverted"}}}},
        {{"ring", "Teams around one ring",
          "On a field several teams pull at ropes that are tied to one iron ring. Their pulls are {given}.",
          "east", kTowing},
         {"mast", "Stays of a mast, seen from above",
          "Seen from above, the horizontal parts of the pulls of a mast's stays at its head are {given}.",
          "towards the bow", kWires, true},
         {"raft", "Lines at the raft's ring",
          "Several boats keep a survey raft in place by lines to one ring. The lines pull with {given}.",
          "upstream", kTowing},
         {"bridge", "Node of a footbridge",
          "The bars that meet at a node of a footbridge exert on it the forces {given}.", "along the deck",
          kBars},
         {"marquee", "Guy ropes of a marquee",
          "Seen from above, the horizontal parts of the guy ropes' pulls at the head of a marquee's pole are "
          "{given}.",
          "east", kCords}},
        severalForces,
        "Find the magnitude and the direction of the resultant {R:name}."};
}

FamilyRow slopesFamily() {
    return {
        "slopes",
        "Directions by run and rise",
        "Find the resultant of forces whose directions are given by slopes.",
        {{{"two slopes with a whole hypotenuse; magnitudes in tens, or whole kilonewtons",
           "run : rise along +x and +y; the answer counter-clockwise from +x",
           "run and rise exchanged; 3/4 taken for 3/5; the sign of a rise",
           {"slope-exchanged", "slope-ratio-taken", "sine-cosine-exchanged", "component-sign",
            "components-added"},
           98},
          {"one slope with a whole hypotenuse, one without; magnitudes in fives, or half kilonewtons",
           "a force points to the left",
           "the sign of the run; the hypotenuse of the second slope",
           {"slope-exchanged", "slope-shares", "component-sign", "components-added", "tangent-inverted"}},
          {"two slopes and an angle; whole magnitudes, or half kilonewtons; half degrees",
           "slopes beside an angle from +x",
           "two forms of direction in one sum; the quadrant of the resultant",
           {"slope-exchanged", "slope-shares", "sine-cosine-exchanged", "components-added",
            "tangent-inverted"}}}},
        {{"stakes", "Stakes on a grid",
          "On a surveyor's grid of stakes cords run from one stake to others. They pull at it with {given}.",
          "east", kCords},
         {"truss", "Bars of a bridge on squared paper",
          "The bars at a node of a bridge are drawn on squared paper. They exert on it the forces {given}.",
          "along the deck", kBars},
         {"net", "Corner of a climbing net",
          "Cords of a climbing net meet in a knot. They pull at it with {given}.", "to the right", kTraces},
         {"kite", "Bridle of a box kite",
          "The cords of a box kite's bridle meet at a ring. They pull at it with {given}.", "downwind",
          kCords}},
        slopes,
        "Find the magnitude and the direction of the resultant {R:name}."};
}

FamilyRow bearingsFamily() {
    return {
        "bearings",
        "Directions by compass",
        "Find the resultant of forces whose directions are given by bearings.",
        {{{"two bearings from north; magnitudes in tens, or whole kilonewtons; angles in fives",
           "bearings; the answer as one",
           "a bearing is counted from north, not from the x axis",
           {"bearing-as-angle", "supplement-in-cosines", "right-triangle-assumed", "magnitudes-added"}},
          {"one bearing from north, one from south; magnitudes in fives, or half kilonewtons; whole degrees",
           "bearings; the answer as one",
           "the angle between N30°E and S65°E; from which end the answer is counted",
           {"bearing-as-angle", "supplement-in-cosines", "angles-added", "right-triangle-assumed",
            "magnitudes-added"}},
          {"three bearings; whole magnitudes, or half kilonewtons; half degrees",
           "bearings; the answer as one",
           "the signs of northings and eastings; the quadrant of the answer",
           {"bearing-as-angle", "components-added", "force-left-out", "tangent-inverted"}}}},
        {{"tugs", "Tugs in an estuary",
          "Tugs turn a freighter in an estuary; their lines meet at its bow. They pull with {given}.", "east",
          kTugs},
         {"raft", "Survey raft by compass", "Boats pull at the ring of a survey raft with {given}.", "east",
          kTowing},
         {"dogs", "Sledge on the ice field", "On an ice field teams of dogs pull at one sledge with {given}.",
          "east", kTraces},
         {"balloon", "Ground crew of a balloon",
          "A ground crew holds a balloon by ropes to one ring. Seen from above, the horizontal parts of "
          "their "
          "pulls are {given}.",
          "east", kTowing, true}},
        bearings,
        "Find the magnitude and the bearing of the resultant {R:name}."};
}

} // namespace tailpoint::practising
