// SPDX-License-Identifier: MIT
#include "core/practice/family.h"

#include "core/construct/construct.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::practising {

namespace {

constexpr int kQuarter = 180; ///< half degrees

/// In (-360, 360] half degrees.
int withinATurn(int halfDegrees) {
    const int turned = halfDegrees % (4 * kQuarter);
    return turned > 2 * kQuarter     ? turned - 4 * kQuarter
           : turned <= -2 * kQuarter ? turned + 4 * kQuarter
                                     : turned;
}

Direction at(int halfDegrees) {
    Direction direction;
    direction.form = AngleForm{withinATurn(halfDegrees) / 2.0};
    return direction;
}

bool endsInZero(const std::string& shown) {
    const auto last = shown.find_last_of("0123456789");
    return last == shown.npos || shown[last] == '0';
}

bool isRound(const SolvedForce& found, const Sketch& sketch) {
    return (found.magnitudeFound && endsInZero(shownForce(found.magnitude, sketch))) ||
           (found.directionFound && !sketch.smallest && // at right angles to what is given
            endsInZero(shownAngle(found.direction.value_or(0), sketch)));
}

std::vector<const SolvedForce*> vectorsOf(const Solution& solution) {
    std::vector<const SolvedForce*> all;
    for (const SolvedForce& force : solution.forces)
        all.push_back(&force);
    if (solution.sum.magnitude > 0)
        all.push_back(&solution.sum);
    return all;
}

bool isInProportion(const std::vector<const SolvedForce*>& vectors) {
    double greatest = 0;
    for (const SolvedForce* one : vectors)
        greatest = std::max(greatest, one->magnitude);
    return std::all_of(vectors.begin(), vectors.end(), [&](const SolvedForce* one) {
        return one->magnitude >= kLeastShare * greatest && (!one->directionFound || one->direction);
    });
}

/// Two magnitudes that read alike could be exchanged and nobody would see it.
bool hasEqualAnswers(const std::vector<const SolvedForce*>& vectors, const Sketch& sketch) {
    std::vector<std::string> shown;
    for (const SolvedForce* one : vectors)
        if (one->magnitudeFound)
            shown.push_back(shownForce(one->magnitude, sketch));
    std::sort(shown.begin(), shown.end());
    return std::adjacent_find(shown.begin(), shown.end()) != shown.end();
}

bool isNeedle(const Construction& construction) {
    const double sharpest = toRadians(kSharpest, AngleUnit::deg);
    return construction.triangle &&
           std::any_of(construction.triangle->opposite.begin(), construction.triangle->opposite.end(),
                       [&](const std::optional<double>& angle) { return !angle || *angle < sharpest; });
}

} // namespace

int Draft::angle(int low, int high) const {
    const int step = byLevel(10, 2, 1), first = (2 * low + (low > 0 ? step - 1 : 0)) / step,
              last = 2 * high / step;
    int drawn = 0;
    do
        drawn = step * lots.between(first, last);
    while (drawn % kQuarter == 0);
    return drawn;
}

int Draft::angle(Range first, Range second, Range third) const {
    const Range range = level == 1 ? first : level == 2 ? second : third;
    return angle(range.low, range.high);
}

double Draft::size(int low, int high) const {
    const Sizes& sizes = scene.sizes;
    const int step = sizes.halves[static_cast<std::size_t>(level - 1)], range = sizes.high - sizes.low;
    const int first = 2 * (sizes.low + range * low / 100) / step,
              last = 2 * (sizes.low + range * high / 100) / step;
    return std::max(1, lots.between(first, last)) * step / 2.0;
}

Force Draft::force(std::string name, int halfDegrees) const {
    Force made;
    made.name = std::move(name);
    made.magnitude.value = size();
    made.direction = at(halfDegrees);
    return made;
}

Sketch Draft::sketch(std::vector<Force> forces, Force sum) const {
    Sketch made = emptySketch();
    made.title = scene.title;
    made.forceUnit = scene.sizes.unit;
    made.forces = std::move(forces);
    made.sum = std::move(sum);
    made.caution = scene.caution;
    return made;
}

Force unknownForce(std::string name) {
    Force made;
    made.name = std::move(name);
    return made;
}

Force lineAt(std::string name, int halfDegrees) {
    Force made = unknownForce(std::move(name));
    made.direction = at(halfDegrees);
    return made;
}

Force slopeOf(std::string name, double size, int run, int rise) {
    Force made = unknownForce(std::move(name));
    made.magnitude.value = size;
    made.direction.form = SlopeForm{static_cast<double>(run), static_cast<double>(rise)};
    return made;
}

Force bearingOf(std::string name, double size, char from, int halfDegrees, char toward) {
    Force made = unknownForce(std::move(name));
    made.magnitude.value = size;
    made.direction.form = BearingForm{from, halfDegrees / 2.0, toward};
    return made;
}

Force restingSum() {
    Force sum = unknownForce("R");
    sum.magnitude.value = 0;
    return sum;
}

int countedFrom(const Reference& reference, int halfDegrees) {
    const int axis = 2 * static_cast<int>(reference.axisDegrees);
    return withinATurn(reference.sense == Sense::ccw ? halfDegrees - axis : axis - halfDegrees);
}

Reference otherReference(Lots& lots) {
    static const std::vector<Reference> all{
        {90, Sense::cw}, {180, Sense::ccw}, {270, Sense::ccw}, {0, Sense::cw}};
    return lots.oneOf(all);
}

const std::vector<FamilyRow>& familyRows() {
    static const std::vector<FamilyRow> rows{
        twoForcesFamily(), severalForcesFamily(),      missingForceFamily(),  obliqueLinesFamily(),
        twoRopesFamily(),  threeInEquilibriumFamily(), smallestForceFamily(), twoAnswersFamily(),
        slopesFamily(),    bearingsFamily(),           pushOrPullFamily()};
    return rows;
}

bool isSensible(const Sketch& sketch, const Solved& solved, std::size_t answers) {
    if (solved.solutions.size() != answers || solved.tangent)
        return false;
    for (std::size_t i = 0; i < answers; ++i) {
        const auto vectors = vectorsOf(solved.solutions[i]);
        if (!isInProportion(vectors) || hasEqualAnswers(vectors, sketch) ||
            isNeedle(construct(sketch, solved, i)) ||
            std::any_of(vectors.begin(), vectors.end(),
                        [&](const SolvedForce* one) { return isRound(*one, sketch); }))
            return false;
    }
    return true;
}

} // namespace tailpoint::practising

namespace tailpoint {

const std::vector<FamilyEntry>& problemFamilies() {
    static const std::vector<FamilyEntry> entries = [] {
        std::vector<FamilyEntry> all;
        for (const practising::FamilyRow& row : practising::familyRows()) {
            all.push_back({row.id, row.title, row.asks, row.levels, {}});
            for (const practising::SceneRow& scene : row.scenes)
                all.back().scenes.push_back({scene.id, scene.title, scene.caution});
        }
        return all;
    }();
    return entries;
}

const FamilyEntry* familyNamed(std::string_view id) {
    const auto& all = problemFamilies();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const FamilyEntry& one) { return one.id == id; });
    return found == all.end() ? nullptr : &*found;
}

} // namespace tailpoint
