// SPDX-License-Identifier: MIT
// Families that ask for one force among others: a missing one, one that keeps the rest in equilibrium, the
// smallest, one of known size.
#include "core/practice/family.h"

namespace tailpoint::practising {

namespace {

Reference referenceFor(const Draft& draft) {
    return draft.level == 3 ? otherReference(draft.lots) : Reference{};
}

/// Two known forces as in the level: both positive, one negative, from another axis.
std::vector<Force> twoKnown(const Draft& draft, const Reference& reference) {
    const int first = draft.angle({10, 45}, {15, 75}, {20, 80});
    const int spread = draft.angle({35, 70}, {55, 125}, {70, 140});
    const int second = draft.level == 1 ? first + spread : first - spread;
    return {draft.force("P", countedFrom(reference, first)),
            draft.force("Q", countedFrom(reference, second))};
}

Sketch missingForce(const Draft& draft) {
    const Reference reference = referenceFor(draft);
    std::vector<Force> forces = twoKnown(draft, reference);
    forces.push_back(unknownForce("S"));
    const int way = draft.angle({5, 40}, {-40, 40}, {-60, 60});
    Force sum = draft.force("R", countedFrom(reference, way));
    sum.magnitude.value = draft.size(80, 150);
    Sketch made = draft.sketch(std::move(forces), std::move(sum));
    made.reference = reference;
    return made;
}

Sketch threeInEquilibrium(const Draft& draft) {
    const Reference reference = referenceFor(draft);
    std::vector<Force> forces = twoKnown(draft, reference);
    forces.push_back(unknownForce("H"));
    Sketch made = draft.sketch(std::move(forces), restingSum());
    made.reference = reference;
    return made;
}

Sketch smallestForce(const Draft& draft) {
    const Reference reference = referenceFor(draft);
    const int way = draft.level == 1 ? 0 : draft.angle({}, {-35, 35}, {-60, 60});
    const int off = draft.angle({20, 65}, {15, 70}, {15, 72});
    const bool isLeft = draft.level == 1 || draft.lots.toss();
    Sketch made = draft.sketch(
        {draft.force("P", countedFrom(reference, isLeft ? way + off : way - off)), unknownForce("Q")},
        lineAt("R", countedFrom(reference, way)));
    made.smallest = "Q";
    made.reference = reference;
    return made;
}

Sketch twoAnswers(const Draft& draft) {
    const Reference reference = referenceFor(draft);
    const int way = draft.level == 1 ? 0 : draft.angle({}, {-30, 30}, {-60, 60}), off = draft.angle(25, 60);
    Force sum = draft.force("R", countedFrom(reference, way)), second = unknownForce("Q");
    sum.magnitude.value = draft.size(60, 140);
    second.magnitude.value = draft.size(20, 110);
    const bool isLeft = draft.level == 1 || draft.lots.toss();
    Sketch made =
        draft.sketch({lineAt("P", countedFrom(reference, isLeft ? way + off : way - off)), std::move(second)},
                     std::move(sum));
    made.reference = reference;
    return made;
}

} // namespace

FamilyRow missingForceFamily() {
    return {
        "missing-force",
        "A missing force",
        "Two forces and the resultant of three are known; find the third force.",
        {{{"magnitudes in tens, or whole kilonewtons; angles in fives",
           "counter-clockwise from +x, all directions positive",
           "the known forces are taken away from the resultant, not added to it",
           {"resultant-as-a-force", "other-sense-read", "component-sign", "sine-cosine-exchanged"}},
          {"magnitudes in fives, or half kilonewtons; whole degrees",
           "counter-clockwise from +x, one direction negative",
           "signs of the components that are taken away; the quadrant of the third force",
           {"resultant-as-a-force", "force-left-out", "sine-cosine-exchanged", "quadrant-missed"}},
          {"whole magnitudes, or half kilonewtons; half degrees",
           "from another axis or clockwise",
           "axis and turning sense of the answer; the quadrant of the third force",
           {"resultant-as-a-force", "force-left-out", "sine-cosine-exchanged", "wrong-turn"}}}},
        {{"raft", "A third boat for the raft",
          "Three boats are to tow a survey raft with the resultant {R}. Two of them pull with {P} and {Q}.",
          "along the fairway", kTowing},
         {"trunk", "Three ropes round a fallen trunk",
          "Three ropes are to pull at a fallen trunk with the resultant {R}. Two of them pull with {P} and "
          "{Q}.",
          "along the path", kTraces, true},
         {"sledge", "The third dog",
          "Three dogs draw a sledge, and their resultant is {R}. Two of them pull with {P} and {Q}.",
          "along the track", kTraces},
         {"bridge", "The third bar at a node",
          "Three bars meet at a node of a footbridge and load it with the resultant {R}. Two of them exert "
          "{P} and {Q}.",
          "along the deck", kBars},
         {"capstan", "Three ropes at one post",
          "Three ropes lead to one post, seen from above, and load it with the resultant {R}. Two of them "
          "pull with {P} and {Q}.",
          "towards the quay", kCapstan, true}},
        missingForce,
        "Find the magnitude and the direction of the third force {S:name}."};
}

FamilyRow threeInEquilibriumFamily() {
    return {
        "three-in-equilibrium",
        "Three forces in equilibrium",
        "Two forces are known; find the third that keeps them in equilibrium.",
        {{{"magnitudes in tens, or whole kilonewtons; angles in fives; an acute angle between the forces",
           "counter-clockwise from +x, both known directions positive",
           "the third force is opposite to the resultant of the two",
           {"no-sum-turned", "supplement-in-cosines", "right-triangle-assumed", "magnitudes-added"}},
          {"magnitudes in fives, or half kilonewtons; whole degrees",
           "counter-clockwise from +x, one direction negative",
           "the third force is opposite to the resultant; the angle between the tails needs the sign",
           {"no-sum-turned", "supplement-in-cosines", "right-triangle-assumed", "sign-of-direction"}},
          {"whole magnitudes, or half kilonewtons; half degrees; from acute to obtuse",
           "from another axis or clockwise",
           "the third force is opposite to the resultant; axis and turning sense of the answer",
           {"no-sum-turned", "supplement-in-cosines", "right-triangle-assumed", "wrong-turn"}}}},
        {{"ring", "Three teams and a ring that stays",
          "Three teams pull at ropes that are tied to one ring, and the ring stays where it is. Two of "
          "them pull with {P} and {Q}.",
          "east", kTowing},
         {"pole", "Head of a tent pole",
          "Seen from above, three guy ropes hold the head of a tent pole in place. The horizontal parts of "
          "two of their pulls are {P} and {Q}.",
          "east", kCords},
         {"raft", "Raft at rest on three lines",
          "A survey raft lies at rest in still water on three lines to one ring. Two of them pull with "
          "{P} and {Q}.",
          "along the shore", kTowing, true},
         {"target", "Ring in the middle of a target",
          "Three cords hold a ring in the middle of an archery target. Two of them pull at it with {P} and "
          "{Q}.",
          "to the right", kBows},
         {"bridge", "Node of a footbridge at rest",
          "Three bars meet at a node of a footbridge, which is at rest. Two of them exert {P} and {Q}.",
          "along the deck", kBars}},
        threeInEquilibrium,
        "Find the magnitude and the direction of the third force {H:name}."};
}

FamilyRow smallestForceFamily() {
    return {"smallest-force",
            "The smallest force",
            "Find the smallest force that puts the resultant on a given line.",
            {{{"magnitudes in tens, or whole kilonewtons; angles in fives; the resultant along the axis",
               "counter-clockwise from +x",
               "the smallest force is at right angles to the resultant, not to the given force",
               {"smallest-to-the-force", "opposite", "answers-exchanged"}},
              {"magnitudes in fives, or half kilonewtons; whole degrees; the resultant off the axis",
               "counter-clockwise from +x",
               "the angle between force and resultant; to which side the right angle is turned",
               {"smallest-to-the-force", "opposite", "answers-exchanged", "sign-of-direction"}},
              {"whole magnitudes, or half kilonewtons; half degrees",
               "from another axis or clockwise",
               "axis and turning sense of the answer",
               {"smallest-to-the-force", "opposite", "answers-exchanged", "wrong-turn"}}}},
            {{"raft", "The least that keeps the raft on course",
              "A boat tows a survey raft with {P}. A second boat is to see to it that the resultant acts "
              "along the course, {R}.",
              "along the fairway", kTowing},
             {"sledge", "The least that keeps the sledge on its track",
              "A dog draws a sledge with {P}. A second dog is to see to it that the resultant acts along the "
              "track, {R}.",
              "north-east", kTraces},
             {"kite", "A hand on the kite's line",
              "A kite pulls at its ring with {P}. A friend pulls at the ring so that the resultant acts "
              "along the pilot's line, {R}.",
              "downwind", kCords},
             {"trunk", "A guiding rope round a trunk",
              "A fallen trunk is dragged by a rope that pulls with {P}. A guiding rope is to put the "
              "resultant along the path, {R}.",
              "east", kTowing, true},
             {"bridge", "A tie at the bridge's node",
              "A bar loads a node of a footbridge with {P}. A tie is to put the resultant along the next "
              "bar, {R}.",
              "along the deck", kBars}},
            smallestForce,
            "Find the smallest force {Q:name} that does it, its direction, and the resultant's magnitude "
            "{R:name}."};
}

FamilyRow twoAnswersFamily() {
    return {
        "two-answers",
        "Two possible triangles",
        "The direction of one force, the magnitude of the other and the resultant are known; two triangles "
        "fit.",
        {{{"magnitudes in tens, or whole kilonewtons; angles in fives; the resultant along the axis",
           "counter-clockwise from +x",
           "an inverse sine has two angles; both lead to an answer",
           {"included-angle-assumed", "discriminant-forgotten", "answers-mixed"},
           100},
          {"magnitudes in fives, or half kilonewtons; whole degrees; the resultant off the axis",
           "counter-clockwise from +x",
           "the angle between the first force and the resultant; both answers",
           {"included-angle-assumed", "discriminant-forgotten", "answers-mixed"}},
          {"whole magnitudes, or half kilonewtons; half degrees",
           "from another axis or clockwise",
           "axis and turning sense of both answers",
           {"included-angle-assumed", "discriminant-forgotten", "answers-mixed"}}}},
        {{"raft", "A second boat of known pull",
          "Two boats are to give a survey raft the pull {R}. The line of the first boat leads {P:way}, and "
          "the engine of the second pulls with {Q}.",
          "along the fairway", kTowing},
         {"sledge", "A second dog of known strength",
          "Two dogs are to draw a sledge with {R}. The trace of the first leads {P:way}, and the second "
          "pulls with {Q}.",
          "along the track", kTraces},
         {"kite", "A kite and a steady hand",
          "A kite and a friend pull at one ring, and their resultant is {R}. The kite's line leads {P:way}; "
          "the friend pulls with {Q}.",
          "downwind", kCords},
         {"stage", "Two lines to a stage machine",
          "Two ropes lead to a carriage on a stage, seen from above, and pull at it with the resultant {R}. "
          "The first leads {P:way}, and the second is kept at {Q} by a spring.",
          "towards the audience", kBows, true},
         {"target", "Two cords to an archery target",
          "Two cords draw an archery target over the grass with the resultant {R}. The first leads {P:way}; "
          "in "
          "the second a gauge shows {Q}.",
          "along the range", kBows}},
        twoAnswers,
        "There are two possibilities. Find both: the magnitude of {P:name} and the direction of {Q:name}.",
        2};
}

} // namespace tailpoint::practising
