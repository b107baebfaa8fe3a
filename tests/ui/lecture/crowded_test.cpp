// SPDX-License-Identifier: MIT
// In front of a class too an angle's value stands in its own angle, and no label is led across a force.
#include "tests/core/figure/wedges.h"
#include "tests/ui/lecture/lecture_fixture.h"

namespace tailpoint {
namespace TAILPOINT_FILE {

class CrowdedLecture : public LectureTest {};

TEST_F(CrowdedLecture, HasValuesInTheirOwnAnglesAndNoLabelLedAcrossAForce) {
    int angles = 0;
    for (const char* name : {"five-forces.json", "mooring-gon.json", "survey-raft.json"})
        for (const QSize room : kRooms) {
            open(sampleNamed(name), room);
            for (std::size_t s = 0; s < view.stops().size(); ++s) {
                view.goTo(s, true);
                SCOPED_TRACE(std::string(name) + ", " + now().step.title + ", " +
                             std::to_string(room.width()));
                for (const std::string& bad :
                     testing::valuesInOtherAngles(list(), view.canvas().figureOptions().style.factor))
                    ADD_FAILURE() << bad;
                for (const std::string& bad : testing::leadersAcrossForces(list()))
                    ADD_FAILURE() << bad;
                for (const testing::DrawnAngle& angle : testing::anglesOf(list()))
                    angles += angle.value != nullptr ? 1 : 0;
            }
        }
    EXPECT_GT(angles, 20);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
