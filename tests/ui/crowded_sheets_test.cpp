// SPDX-License-Identifier: MIT
// Sheets with several labels, small and in large letters: an angle's value stands in its own angle, and no
// label is led across a force. Told from what is drawn, with the fonts of the screen.
#include "tests/core/figure/wedges.h"
#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"

#include <QDir>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

/// The sheet's room beside the panel, logical pixels: in a window of 1366 by 768, of 800 by 600, and of 1366
/// by 768 at 200 %.
constexpr QSize kSheets[]{{965, 640}, {499, 480}, {382, 264}};
constexpr ConstructionKind kKinds[]{ConstructionKind::parallelogram, ConstructionKind::triangle,
                                    ConstructionKind::polygon, ConstructionKind::none};

class CrowdedSheets : public ::testing::TestWithParam<const char*> {};

TEST_P(CrowdedSheets, HaveValuesInTheirOwnAnglesAndNoLabelLedAcrossAForce) {
    SketchDocument document;
    ASSERT_FALSE(document.open(QDir(QStringLiteral(TAILPOINT_SAMPLES)).filePath(QLatin1String(GetParam()))));
    Canvas canvas(document);
    canvas.setAnimated(false);
    int labels = 0;
    for (const QSize sheet : kSheets)
        for (const ConstructionKind kind : kKinds) {
            canvas.resize(sheet);
            canvas.setConstruction(kind);
            canvas.fit();
            canvas.grab();
            SCOPED_TRACE(std::to_string(sheet.width()) + ", construction " +
                         std::to_string(static_cast<int>(kind)));
            const DisplayList& list = canvas.figure().list;
            for (const std::string& bad : testing::valuesInOtherAngles(list))
                ADD_FAILURE() << bad;
            for (const std::string& bad : testing::leadersAcrossForces(list))
                ADD_FAILURE() << bad;
            for (const testing::DrawnAngle& angle : testing::anglesOf(list))
                labels += angle.value != nullptr ? 1 : 0;
        }
    EXPECT_GT(labels, 0) << "nothing was looked at";
}

INSTANTIATE_TEST_SUITE_P(Samples, CrowdedSheets,
                         ::testing::Values("five-forces.json", "survey-raft.json", "mooring-gon.json",
                                           "raft-in-weather.json", "missing-force.json", "bridle.json",
                                           "ring-at-rest.json", "obtuse-pulls.json"),
                         [](const auto& instance) {
                             std::string name = instance.param;
                             name.resize(name.find('.'));
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

} // namespace TAILPOINT_FILE
} // namespace tailpoint
