// SPDX-License-Identifier: MIT
// sketch/: what is given, and nothing that was computed. Plain values: comparable, copyable, no ids, no
// pointers to be followed.
#pragma once

#include "core/quantity/angle.h"
#include "core/quantity/tolerance.h"
#include "core/quantity/units.h"
#include "core/sketch/opaque.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace tailpoint {

enum class Sense { ccw, cw };

/// Where directions are measured from: the axis stands `axisDegrees` counter-clockwise from +x, and angles
/// grow in `sense`. +x, +y, -x, -y are 0, 90, 180, 270.
struct Reference {
    double axisDegrees = 0;
    Sense sense = Sense::ccw;
    bool operator==(const Reference&) const = default;
};

/// Forms in which a direction can be given. Slopes and bearings are absolute (x right, y up = north).
struct ToFind {
    bool operator==(const ToFind&) const = default;
};
/// A value that is stated in a unit of its own (`"unit"` beside it in a file), as it stands there. It goes as
/// soon as the value is changed; the value itself is always in the sheet's unit.
struct TypedAngle {
    double value = 0;
    AngleUnit unit = AngleUnit::deg;
    std::optional<Tolerance> tolerance; ///< in the same unit
    bool operator==(const TypedAngle&) const = default;
};
/// A unit of mass: the weight of that mass is meant, by the sheet's g.
struct TypedForce {
    double value = 0;
    LoadUnit unit = ForceUnit::N;
    std::optional<Tolerance> tolerance;
    bool operator==(const TypedForce&) const = default;
};

struct AngleForm {
    double value =
        0; ///< in the sheet's angle unit, from the reference axis in its sense; within kLargestAngle
    std::optional<TypedAngle> typed{}; ///< then value and tolerance are those of directionOf
    bool operator==(const AngleForm&) const = default;
};
struct SlopeForm {
    double run = 1, rise = 0; ///< signed, not both zero
    bool operator==(const SlopeForm&) const = default;
};
struct BearingForm {
    char from = 'N';    ///< 'N' or 'S'
    double degrees = 0; ///< 0..90
    char toward = 'E';  ///< 'E' or 'W'
    bool operator==(const BearingForm&) const = default;
};

struct Direction {
    std::variant<ToFind, AngleForm, SlopeForm, BearingForm> form;
    /// Sheet's angle unit; `plus` is where the angle grows: in the sheet's sense, of a bearing away from its
    /// pole.
    std::optional<Tolerance> tolerance;
    bool operator==(const Direction&) const = default;
};

struct Magnitude {
    std::optional<double> value; ///< sheet's force unit, >= 0; empty: to find
    std::optional<Tolerance> tolerance;
    std::optional<TypedForce> typed{}; ///< then value and tolerance are those of magnitudeOf
    bool operator==(const Magnitude&) const = default;
};

/// A value in a unit of its own, converted into the sheet's; a mass is its weight by `gravity` (m/s2).
Magnitude magnitudeOf(const TypedForce& typed, ForceUnit sheet, double gravity);
Direction directionOf(const TypedAngle& typed, AngleUnit sheet);
/// The mass whose weight is stated, by a unit of mass or in kgf; else empty.
std::optional<double> kilogrammesOf(const TypedForce& typed);

/// Where a label stands, from the middle of what it belongs to: points on paper to the right and up, at the
/// figure's normal size.
struct LabelPin {
    double right = 0, up = 0;
    bool operator==(const LabelPin&) const = default;
};

/// Directions that a vector may take: within so much of an axis, either way.
struct Permitted {
    double axis = 0;   ///< sheet's angle unit, from the reference axis in its sense; within kLargestAngle
    double within = 0; ///< sheet's angle unit, > 0, at most a half turn
    bool operator==(const Permitted&) const = default;
};

/// A force with its tail at the common point (or the sum of them all).
struct Force {
    std::string name; ///< 1..16 printable characters, unique in the sketch
    Magnitude magnitude;
    Direction direction;
    bool lineOfActionOnly = false;                     ///< `"sense": "either"`: both senses admissible
    Opaque unknownKeys;                                ///< of the file, for who reads and writes it
    std::optional<LabelPin> label{}, directionLabel{}; ///< put there by hand; empty: found anew
    std::optional<TypedForce> limit{};                 ///< most that it may be, > 0, in a unit of its own
    std::optional<Permitted> permitted{};
    bool operator==(const Force&) const = default;
};

inline constexpr double kFurthestPin = 10'000; ///< points, either way
inline constexpr std::size_t kMostForces = 10'000;
inline constexpr std::size_t kLongestName = 16; ///< code points
inline constexpr int kMostFigures = 12;
inline constexpr int kMostAngleDecimals = 8;
/// Magnitudes are 0 or within these, in the sheet's unit: no square or product of two leaves the range of
/// double.
inline constexpr double kSmallestMagnitude = 1e-150, kLargestMagnitude = 1e150;
/// Angles and their tolerances, in the sheet's unit, either way: beyond it a double no longer tells a
/// direction to the last digit that is shown, and the number fills a line.
inline constexpr double kLargestAngle = 1e10;

/// Another value for one vector in a case: what is empty stays as the sketch has it.
struct CaseChange {
    std::string of; ///< name of a force or of the sum
    std::optional<Magnitude> magnitude;
    std::optional<Direction> direction;
    Opaque unknownKeys{};
    bool operator==(const CaseChange&) const = default;
};
/// The same question with other given values, under a name. What is to find is so in every case, what is
/// given has a value in every case; a sum that is zero is zero in every case.
struct LoadCase {
    std::string name;                ///< 1..kLongestCaseName printable characters, unique in the sketch
    std::vector<CaseChange> changes; ///< one a vector at most
    Opaque unknownKeys{};
    bool operator==(const LoadCase&) const = default;
};
inline constexpr std::size_t kMostCases = 100;
inline constexpr std::size_t kLongestCaseName = 24; ///< code points: it stands at the tip of an arrow

/// Who answers for a sketch, as its title block says it; empty: not said.
struct TitleBlock {
    std::string drawn, checked, revision; ///< a line of printable characters each
    bool operator==(const TitleBlock&) const = default;
};

/// m/s2; from a small moon's to a giant planet's.
inline constexpr double kLeastGravity = 0.01, kMostGravity = 100;

struct Sketch {
    std::string title;
    ForceUnit forceUnit = ForceUnit::N;
    AngleUnit angleUnit = AngleUnit::deg;
    Reference reference;
    int figures = 3;           ///< significant figures of shown forces, 1..12
    bool moreAfterOne = false; ///< one figure more where the first digit is a 1 (common in engineering texts)
    int angleDecimals = 1;     ///< decimals of shown angles, 0..8
    std::vector<Force> forces;
    Force sum; ///< R: usually both to find; {magnitude 0, direction to find} is equilibrium
    std::optional<std::string> smallest; ///< name of the force (or the sum) asked to be smallest
    bool caution = false;                ///< lifting, anchoring or the like: the caution is asked for
    double gravity = kStandardGravity;   ///< m/s2, kLeastGravity to kMostGravity: a mass's weight
    TitleBlock titleBlock;
    std::vector<LoadCase> cases; ///< see core/sketch/cases.h
    std::string inCase;          ///< of what inCase() makes: the case's name. No file has it
    Opaque unknownKeys;          ///< as in Force
    bool operator==(const Sketch&) const = default;
};

bool isGiven(const Magnitude& magnitude);
bool isGiven(const Direction& direction);
/// How far a value that is given may lie above and below itself; both 0 without a tolerance.
struct Margins {
    double plus = 0, minus = 0; ///< >= 0
};
/// In the sheet's force unit. `minus` may be more than the value: a magnitude ends at 0 all the same.
Margins marginsOf(const Magnitude& magnitude);
/// In the sheet's angle unit; plus is turned in the sheet's sense.
Margins marginsOf(const Direction& direction, const Sketch& sketch);
/// The most that a force may be, in the sheet's unit; empty where no limit is stated.
std::optional<double> limitOf(const Force& force, const Sketch& sketch);
/// A mass beside a value, or in a limit: then g has a say.
bool hasMass(const Sketch& sketch);
/// The sum is stated to be zero.
bool isEquilibrium(const Sketch& sketch);

/// Unit vector of a given direction, absolute (ccw from +x); empty where it is to be found.
std::optional<CosSin> unitVector(const Direction& direction, const Sketch& sketch);

/// The direction of (x, y) as the sheet says it: its angle unit, from its axis, in its sense, in (-half turn,
/// half turn].
std::optional<double> referredDirection(long double x, long double y, const Sketch& sketch);

/// Whether directions are counted counter-clockwise from +x.
bool isPlainReference(const Sketch& sketch);

/// A given direction as the sheet says it: a typed angle is normalised exactly, slopes and bearings are
/// referred.
std::optional<double> referredDirection(const Direction& direction, const Sketch& sketch);
/// The same, but a given angle as it was given, less whole turns: 223° is 223°. Within a full turn, either
/// way.
std::optional<double> referredAsGiven(const Direction& direction, const Sketch& sketch);

/// The stated values alone, in the cases too: for who leaves tolerances out. Limits stay.
Sketch withoutTolerances(Sketch sketch);
/// A limit or permitted directions are stated: judged at the worst end of the tolerances, so that these
/// cannot be left out.
bool statesLimits(const Sketch& sketch);

/// First free of P, Q, S, T, U, V, W, then F1, F2, ...
std::string nextForceName(const Sketch& sketch);
/// First free of R, S, T among the forces' names.
std::string defaultSumName(const std::vector<Force>& forces);

/// What is wrong with a sketch, as a code beside its words.
enum class FaultCode {
    notFinite,
    negative,            ///< a magnitude
    magnitudeOutOfRange, ///< beyond kLargestMagnitude, or below kSmallestMagnitude and not 0
    angleTooLarge,       ///< beyond kLargestAngle: a direction, the axis
    toleranceWithoutValue,
    toleranceNotPositive, ///< below 0, or 0 both ways
    toleranceTooLarge,
    toleranceUneven,     ///< a percentage that is not the same both ways
    toleranceOfNoNumber, ///< a percentage of a slope or a bearing
    slopeOutOfRange,
    slopeWithoutDirection, ///< run and rise are 0
    bearingLetters,        ///< not from N or S toward E or W
    bearingAngle,          ///< not within 0 to 90 degrees
    ownUnitDiffers,        ///< a value in a unit of its own is not the one beside it
    limitOutOfRange,       ///< not above 0, or beyond kLargestMagnitude
    limitWithTolerance,
    permittedOutOfRange, ///< `within` not above 0 or beyond a half turn
    gravityOutOfRange,
    unprintable, ///< characters of a name or of the title
    nameLength,
    nameBlank,
    nameTaken,
    labelTooFar,
    titleTooLong,
    figuresOutOfRange,
    angleDecimalsOutOfRange,
    tooManyForces,
    smallestUnknown, ///< what is to be the smallest is no vector of the sketch
    tooManyCases,
    caseNameTaken,      ///< by another case, or it is what the sheet without a case is called
    caseOfUnknown,      ///< a case changes what is no vector of the sketch
    caseChangesTwice,   ///< one vector
    caseChangesNothing, ///< a change without a value
    caseChangesToFind,  ///< what is to find, or would be
    caseMovesRest       ///< the sum is zero in the case or in the sketch, and not in the other
};
inline constexpr std::size_t kFaultCodes = static_cast<std::size_t>(FaultCode::caseMovesRest) + 1;

/// What is wrong with a sketch, if anything: place ("forces[2].magnitude"), what, and the mend.
struct SketchFault {
    FaultCode code;
    std::string place;
    std::string message;
};
std::optional<SketchFault> firstFault(const Sketch& sketch);

/// The default: no forces, N, degrees, from +x counter-clockwise, sum R to find.
Sketch emptySketch();

} // namespace tailpoint
