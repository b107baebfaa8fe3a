// SPDX-License-Identifier: MIT
// A force resolved along two lines, as printed in textbooks. Triangles given by their angles are laid out
// with the force along +x: the component opposite to angle b acts at the other angle a above it, and the
// other way round.
#include "tests/support/printed.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch resolved(double magnitude, double direction, double first, double second) {
    return sketch({force("U", kToFind, first), force("V", kToFind, second)},
                  force("R", magnitude, direction));
}

const Example kExamples[] = {
    {"30 lb along u and v",
     "Hibbeler, Engineering Mechanics: Statics (30-lb force, u and v axes)",
     resolved(30, 0, 30, -45),
     {sizeOf(0, "22.0"), sizeOf(1, "15.5")}},
    {"350 lb along two struts",
     "Hibbeler, Engineering Mechanics: Statics, 13e, prob. 2-8",
     resolved(350, 0, 45, -60),
     {sizeOf(0, "314"), sizeOf(1, "256")}},
    {"150 N between lines at 45 and 30 degrees",
     "civinnovate.com, worked problem",
     resolved(150, 0, 45, -30),
     {sizeOf(0, "77.63", "77.64571"), sizeOf(1, "109.78", "109.8076")}},
    {"280 N in full double precision",
     "Paulson (Madison College), Statics notebooks (2020), notebook 2, example B",
     resolved(280, 67, -47, 90),
     {sizeOf(0, "160.4178578478851"), sizeOf(1, "375.063553109552")}},
    {"a component larger than the force",
     "Hibbeler, Engineering Mechanics: Statics, example 2.2 (from memory)",
     resolved(600, 0, 30, -120),
     {sizeOf(0, "1039"), sizeOf(1, "600")}},
    {"32.0 km to the south and to the west",
     "OpenStax, College Physics, 2e, sec. 3.3",
     resolved(32.0, 215, 270, 180),
     {sizeOf(0, "18.4"), sizeOf(1, "26.2")}},
    {"the same along axes turned by 45 degrees",
     "OpenStax, College Physics, 2e, sec. 3.3",
     resolved(32.0, 215, 225, 135),
     {sizeOf(0, "31.5"), sizeOf(1, "5.56")}},
    {"1500 N along perpendicular lines",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 1.5",
     resolved(1500, 0, 36, -54),
     {sizeOf(0, "1213.87", "1213.525"), sizeOf(1, "881.27", "881.6779")}},
    {"50 lb on a ramp of 19 degrees",
     "OpenStax, Precalculus, 2e, sec. 8.8, exercise 75",
     resolved(50, -90, -161, -71),
     {sizeOf(0, "16.28"), sizeOf(1, "47.28")}},
    {"1500 lb on a ramp of 30 degrees",
     "OpenStax, Calculus, vol. 3, sec. 2.1, exercise 57",
     resolved(1500, -90, -150, -60),
     {sizeOf(0, "750"), sizeOf(1, "1299")}},
};

TEST(PublishedResolutions, AlongTwoLinesAgreeToHalfAUnitOfTheLastPlace) {
    for (const Example& example : kExamples) {
        expectExample(example);
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
