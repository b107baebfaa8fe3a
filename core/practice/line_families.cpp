// SPDX-License-Identifier: MIT
// Families that ask for two magnitudes along known lines: components, ropes under a weight, bars that push or
// pull.
#include "core/practice/family.h"

namespace tailpoint::practising {

namespace {

Force downwards(const Draft& draft, std::string name) {
    return draft.force(std::move(name), -180);
}

/// Equal angles would make equal magnitudes.
int otherThan(int angle, const Draft& draft, Draft::Range first, Draft::Range second, Draft::Range third) {
    int other = angle;
    while (other == angle)
        other = draft.angle(first, second, third);
    return other;
}

Sketch obliqueLines(const Draft& draft) {
    const Reference reference = draft.level == 3 ? otherReference(draft.lots) : Reference{};
    const int way = draft.level == 1 ? 0 : draft.angle({}, {-40, 40}, {-60, 60});
    const int left = draft.angle({20, 60}, {20, 65}, {20, 75}),
              right = otherThan(left, draft, {20, 60}, {20, 65}, {20, 75});
    Sketch made = draft.sketch(
        {lineAt("P", countedFrom(reference, way + left)), lineAt("Q", countedFrom(reference, way - right))},
        draft.force("R", countedFrom(reference, way)));
    made.reference = reference;
    return made;
}

/// A rope to the upper right and one to the upper left.
Sketch twoRopes(const Draft& draft) {
    constexpr Draft::Range steepness{20, 70};
    const int right = draft.angle(20, 70), left = otherThan(right, draft, steepness, steepness, steepness);
    std::vector<Force> forces{lineAt("A", right), lineAt("B", 360 - left), downwards(draft, "W")};
    if (draft.level == 3) {
        static const std::vector<std::pair<int, int>> slopes{{4, 3}, {3, 4}, {12, 5}, {3, 2},
                                                             {2, 3}, {5, 2}, {2, 1}};
        const auto [run, rise] = draft.lots.oneOf(slopes);
        forces[0].direction.form = SlopeForm{static_cast<double>(run), static_cast<double>(rise)};
    }
    return draft.sketch(std::move(forces), restingSum());
}

Force barAt(std::string name, int halfDegrees) {
    Force bar = lineAt(std::move(name), halfDegrees);
    bar.lineOfActionOnly = true;
    return bar;
}

/// Both bars as they lead away from the node, towards the wall on the left.
Sketch pushOrPull(const Draft& draft) {
    int upper = draft.angle({120, 160}, {110, 165}, {100, 165});
    int lower = draft.angle({200, 235}, {190, 240}, {190, 250});
    Force load = downwards(draft, "W");
    if (draft.level == 3) {
        const int slant = draft.lots.toss() ? draft.angle(-85, -40) : draft.angle(-140, -95);
        load.direction = lineAt("W", slant).direction;
    }
    if (draft.level > 1 && draft.lots.toss())
        std::swap(upper, lower);
    return draft.sketch({barAt("A", upper), barAt("B", lower), std::move(load)}, restingSum());
}

} // namespace

FamilyRow obliqueLinesFamily() {
    return {
        "oblique-lines",
        "Components along two lines",
        "A force is given; find its components along two lines that are not at right angles.",
        {{{"magnitudes in tens, or whole kilonewtons; angles in fives; the force along the axis",
           "counter-clockwise from +x",
           "components along oblique lines are no perpendicular projections",
           {"perpendicular-for-oblique", "cosine-in-sines", "answers-exchanged", "component-sign"}},
          {"magnitudes in fives, or half kilonewtons; whole degrees; the force off the axis",
           "counter-clockwise from +x",
           "the angles of the triangle are not those from the axis",
           {"perpendicular-for-oblique", "axis-angle-in-triangle", "answers-exchanged", "sign-of-direction"}},
          {"whole magnitudes, or half kilonewtons; half degrees; up to very obtuse angles between the lines",
           "from another axis or clockwise",
           "a component may be greater than the force itself",
           {"perpendicular-for-oblique", "axis-angle-in-triangle", "answers-exchanged", "cosine-in-sines"}}}},
        {{"canal", "Canal boat between two tow paths",
          "Two horses, one on either bank, tow a canal boat with the resultant {R}. Their ropes lead {P:way} "
          "and {Q:way}.",
          "along the canal", kTowing},
         {"target", "Archery target on two cords",
          "An archery target is to be drawn over the grass with {R} by two cords. They lead {P:way} and "
          "{Q:way}.",
          "along the range", kBows},
         {"bridge", "Force at a node along two bars",
          "At a node of a footbridge the force {R} is to be resolved along two bars. They lead {P:way} and "
          "{Q:way}.",
          "along the deck", kBars},
         {"raft", "One pull through two lines",
          "A survey raft is to be towed with {R} through two lines. They lead {P:way} and {Q:way}.",
          "along the fairway", kTowing},
         {"sledge", "Sledge on two traces",
          "Two dogs draw a sledge with the resultant {R}. Their traces lead {P:way} and {Q:way}.",
          "along the track", kTowing}},
        obliqueLines,
        "Find the magnitudes of {P:name} and {Q:name}."};
}

FamilyRow twoRopesFamily() {
    return {
        "two-ropes",
        "A weight on two ropes",
        "A weight hangs from two ropes; find the pull in each.",
        {{{"magnitudes in tens, or whole kilonewtons; angles in fives",
           "from the horizontal, counter-clockwise",
           "each rope does not carry half of the weight; the steeper rope pulls more",
           {"halved-load", "half-load-each", "sine-cosine-exchanged", "answers-exchanged"}},
          {"magnitudes in fives, or half kilonewtons; whole degrees",
           "from the horizontal, counter-clockwise",
           "the angles of the force triangle are not those from the horizontal",
           {"halved-load", "half-load-each", "equal-tensions", "sine-cosine-exchanged", "answers-exchanged"}},
          {"whole magnitudes, or half kilonewtons; half degrees; one rope by its slope",
           "a slope beside angles from the horizontal",
           "run and rise exchanged; two forms of direction in one sum",
           {"slope-exchanged", "halved-load", "sine-cosine-exchanged", "answers-exchanged"}}}},
        {{"lantern", "Lantern between two posts",
          "A lantern hangs from a ring that two cords hold between posts. Its weight, {W:size}, acts "
          "straight down, {W:at}; the cords lead {A:way} and {B:way}.",
          "to the right", kWeights, true},
         {"spotlight", "Spotlight over the stage",
          "A spotlight hangs over a stage from two wires that meet at its clamp. Its weight, {W:size}, acts "
          "straight down, {W:at}; the wires lead {A:way} and {B:way}.",
          "to the right", kWeights, true},
         {"sign", "Shop sign across a lane",
          "A shop sign hangs above a lane from two chains that meet at its hook. Its weight, {W:size}, acts "
          "straight down, {W:at}; the chains lead {A:way} and {B:way}.",
          "to the right", kSigns, true},
         {"bell", "Bell in a ruined tower",
          "A bell hangs from two ropes in a ruined tower; they meet at its yoke. Its weight, {W:size}, acts "
          "straight down, {W:at}; the ropes lead {A:way} and {B:way}.",
          "to the right", kWeights, true},
         {"cable", "Basket on a rope across the gorge",
          "A basket is tied to a rope across a gorge and hangs still. Its weight, {W:size}, acts straight "
          "down, {W:at}; the rope leads {A:way} on one side of it and {B:way} on the other.",
          "to the right", kWeights, true}},
        twoRopes,
        "Find the magnitudes of the pulls {A:name} and {B:name}."};
}

FamilyRow pushOrPullFamily() {
    return {"push-or-pull",
            "Push or pull",
            "A load acts where two bars meet; find the force in each and whether it pushes or pulls.",
            {{{"magnitudes in tens, or whole kilonewtons; angles in fives; the load straight down",
               "counter-clockwise from +x",
               "one bar pulls and the other pushes",
               {"halved-load", "sine-cosine-exchanged", "answers-exchanged", "equation-sign"}},
              {"magnitudes in fives, or half kilonewtons; whole degrees; the load straight down",
               "counter-clockwise from +x",
               "which bar pulls and which pushes is for the numbers to say",
               {"halved-load", "sine-cosine-exchanged", "answers-exchanged", "equation-sign"}},
              {"whole magnitudes, or half kilonewtons; half degrees; the load at a slant",
               "counter-clockwise from +x",
               "the load has two components; the signs of both forces",
               {"sine-cosine-exchanged", "answers-exchanged", "equation-sign", "component-left-out"}}}},
            {{"bracket", "Bracket at a wall",
              "Two bars are fixed to a wall and meet at a pin, on which the load {W} acts. From the pin the "
              "bars lead {A:way} and {B:way}.",
              "away from the wall", kBars, true},
             {"jib", "Jib on the quay",
              "The tie and the strut of a jib meet at its head, which carries {W}. From the head they "
              "lead {A:way} and {B:way}.",
              "to the water", kBars, true},
             {"bridge", "Node of a footbridge under load",
              "Two bars of a footbridge meet at a node, on which {W} acts. From the node they lead {A:way} "
              "and {B:way}.",
              "along the deck", kBars},
             {"awning", "Awning over a stage door",
              "Two rods carry the corner of an awning over a stage door, where {W} acts. From the corner "
              "they lead {A:way} and {B:way}.",
              "away from the door", kWeights, true},
             {"shelf", "Shelf in a workshop",
              "Two rods carry the tip of a shelf in a workshop, on which {W} acts. From the tip they lead "
              "{A:way} and {B:way}.",
              "away from the wall", kWeights, true}},
            pushOrPull,
            "Find the forces {A:name} and {B:name} in the two, and whether each pulls or pushes."};
}

} // namespace tailpoint::practising
