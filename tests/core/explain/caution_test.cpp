// SPDX-License-Identifier: MIT
// Where the caution stands, and where it does not: words, units, limits.
#include "core/explain/caution.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint {

/// A note of a file, for core/sketch/opaque.h.
struct Note {
    std::string text;
    bool operator==(const Note&) const = default;
};
std::string wordsIn(const Note& note) {
    return note.text;
}

namespace TAILPOINT_FILE {

using namespace testing;

Sketch titled(std::string title) {
    Sketch made = sketch({force("P", 340, 25)});
    made.title = std::move(title);
    return made;
}

TEST(TheCaution, StandsWhereTheTitleSpeaksOfLiftingTowingOrAnchoring) {
    for (const char* title : {"Hoisting the raft",
                              "Sling under the survey buoy",
                              "LIFT of a pump",
                              "Bridle, two legs",
                              "A guy and its anchor",
                              "Guys of the mast",
                              "Guy-wires",
                              "Tow of the barge",
                              "Two tow lines",
                              "Towing astern",
                              "Tow-line over the bow",
                              "Eye bolt in the quay",
                              "Eye-bolts",
                              "Eyebolt",
                              "Padeye, port side",
                              "Pad eye",
                              "Davit and boat",
                              "Lashing of a drum",
                              "Lashed crates",
                              "Anchorage in the rock",
                              "Rope with a load",
                              "Load under two chains",
                              "Two legs and a weight",
                              "Shackles at the ring",
                              "Winched up",
                              "A lantern hangs from two cords",
                              "Moored raft",
                              "Suspended bell",
                              "Two tugs and a pontoon",
                              "Turnbuckle"})
        EXPECT_TRUE(needsCaution(titled(title))) << title;
}

TEST(TheCaution, IsNotOnEverySheet) {
    for (const char* title : {"",
                              "Survey raft",
                              "Tower crew",
                              "Towards the quay",
                              "Towel",
                              "Stowed gear",
                              "Bow at full draw",
                              "An archer's string",
                              "Dog sledge on two traces",
                              "Sledge with a loaded basket",
                              "Guyana's coast",
                              "Tug of war",
                              "A tug-of-war with three teams",
                              "Change of course",
                              "Ropes round a fallen trunk",
                              "Workload",
                              "Weight of a stone",
                              "Load on a node",
                              "Uplifting winds",
                              "Eyelashes",
                              "Two boats",
                              "Disguised",
                              "A ring at rest on three lines",
                              "Orange"})
        EXPECT_FALSE(needsCaution(titled(title))) << title;
}

TEST(TheCaution, StandsByTheNamesOfForcesAndOfTheSum) {
    Sketch named = titled("Survey raft");
    named.forces[0].name = "Sling 1";
    EXPECT_TRUE(sceneAsksCaution(named));
    named.forces[0].name = "P";
    EXPECT_FALSE(sceneAsksCaution(named));
    named.sum.name = "Anchor pull";
    EXPECT_TRUE(sceneAsksCaution(named));
    Sketch apart = titled("A rope"); // the rope in the title, the load in a name
    apart.forces[0].name = "Load";
    EXPECT_TRUE(sceneAsksCaution(apart));
}

TEST(TheCaution, StandsByTheNotesOfTheFile) {
    Sketch noted = titled("Survey raft");
    noted.unknownKeys = Opaque::of(Note{"Two davits hold the boat."});
    EXPECT_TRUE(sceneAsksCaution(noted));
    noted.unknownKeys = Opaque::of(Note{"Two boats hold the raft."});
    EXPECT_FALSE(sceneAsksCaution(noted));
    noted.forces[0].unknownKeys = Opaque::of(Note{"from the mooring"});
    EXPECT_TRUE(sceneAsksCaution(noted));
    noted.forces[0].unknownKeys = Opaque::of(7); // without words
    EXPECT_FALSE(sceneAsksCaution(noted));
}

TEST(TheCaution, StandsByALimitAndByAUnitInWhichLoadsAreWeighed) {
    Sketch limited = titled("Survey raft");
    limited.forces[0].limit = TypedForce{400, ForceUnit::N, {}};
    EXPECT_TRUE(sceneAsksCaution(limited));
    limited.forces[0].limit.reset();
    limited.sum.limit = TypedForce{400, ForceUnit::N, {}};
    EXPECT_TRUE(sceneAsksCaution(limited));
    for (const LoadUnit& unit : {LoadUnit(MassUnit::kg), LoadUnit(MassUnit::t), LoadUnit(ForceUnit::kgf),
                                 LoadUnit(ForceUnit::tonf), LoadUnit(ForceUnit::shortTonf)}) {
        Sketch weighed = titled("Survey raft");
        weighed.forces[0].magnitude = magnitudeOf(TypedForce{0.5, unit, {}}, ForceUnit::N, kStandardGravity);
        EXPECT_TRUE(sceneAsksCaution(weighed)) << symbolOf(unit);
    }
    Sketch pulled = titled("Survey raft");
    pulled.forces[0].magnitude =
        magnitudeOf(TypedForce{0.5, ForceUnit::kN, {}}, ForceUnit::N, kStandardGravity);
    EXPECT_FALSE(sceneAsksCaution(pulled));
    Sketch sheet = titled("Survey raft");
    sheet.forceUnit = ForceUnit::kgf; // a classroom's sheet may be in it
    EXPECT_FALSE(sceneAsksCaution(sheet));
    sheet.forceUnit = ForceUnit::tonf;
    EXPECT_TRUE(sceneAsksCaution(sheet));
}

TEST(TheCaution, IsAskedForByItsSwitch) {
    Sketch asked = titled("Survey raft");
    asked.caution = true;
    EXPECT_TRUE(needsCaution(asked));
    EXPECT_FALSE(sceneAsksCaution(asked));
}

TEST(TheCaution, SaysWhatIsNotCovered) {
    const std::string line(cautionLine());
    for (const char* words : {"not a design", "dynamic", "centre of mass", "stretch", "out of the plane",
                              "fittings", "competent person", "maker"})
        EXPECT_NE(line.find(words), std::string::npos) << words;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
