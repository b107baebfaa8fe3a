// What of an own answer's marking can be drawn: a slip's vector, and the answer.
#include "ui/marking/own_answer.h"

#include "core/construct/reduction.h"
#include "core/sketch/shown.h"
#include "ui/document/given_edits.h"
#include "ui/document/sketch_document.h"
#include "ui/style/symbols.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {

namespace {

bool isTraced(const Answerable* of) {
    return of != nullptr && (of->id.what == What::magnitude || of->id.what == What::direction) &&
           (of->id.of.kind == VectorId::Kind::force || of->id.of == kSumVector);
}

std::optional<double> radiansOf(const Direction& direction, const Sketch& sketch) {
    const auto unit = unitVector(direction, sketch);
    return unit ? std::optional(std::atan2(double(unit->sin), double(unit->cos))) : std::nullopt;
}

const SolvedForce& solvedOf(const Solution& solution, VectorId vector) {
    return vector == kSumVector ? solution.sum : solution.forces.at(vector.index);
}

} // namespace

bool OwnAnswer::canShowSlip() const {
    if (!m_marking || m_marking->slips.empty())
        return false;
    const auto& gives = m_marking->slips.front().gives;
    return std::any_of(gives.begin(), gives.end(),
                       [&](const auto& one) { return isTraced(m_marker->named(one.first)); });
}

/// With what is given of the vector.
TracedVector& OwnAnswer::tracedOf(std::vector<TracedVector>& traced, VectorId vector) const {
    const auto found = std::find_if(traced.begin(), traced.end(),
                                    [&](const TracedVector& one) { return one.vector == vector; });
    if (found != traced.end())
        return *found;
    TracedVector one{vector, {}, {}, {}};
    const Sketch& sketch = m_document.sketch();
    if (const int index = tailpoint::indexOf(vector); hasVector(sketch, index)) {
        one.magnitude = vectorOf(sketch, index).magnitude.value;
        one.radians = radiansOf(vectorOf(sketch, index).direction, sketch);
    }
    traced.push_back(one);
    return traced.back();
}

std::vector<TracedVector> OwnAnswer::tracedSlip() const {
    std::vector<TracedVector> traced;
    if (!m_slipShown || !canShowSlip())
        return traced;
    const Sketch& sketch = m_document.sketch();
    for (const auto& [name, value] : m_marking->slips.front().gives) {
        const Answerable* of = m_marker->named(name);
        if (!isTraced(of))
            continue;
        TracedVector& one = tracedOf(traced, of->id.of);
        if (of->id.what == What::magnitude) {
            one.magnitude = value;
            one.words = onScreen(shownForceWithUnit(value, sketch)) + one.words;
        } else {
            one.radians = radiansOf({AngleForm{value}, {}}, sketch);
            one.words += (one.words.isEmpty() ? QString() : tr(" at ")) + onScreen(shownAngle(value, sketch));
        }
    }
    for (TracedVector& one : traced)
        if (one.magnitude && *one.magnitude < 0) { // the arrow turned round
            one.magnitude = -*one.magnitude;
            if (one.radians)
                one.radians = *one.radians + std::numbers::pi;
        }
    return traced;
}

std::vector<TracedVector> OwnAnswer::tracedAnswer() const {
    std::vector<TracedVector> traced;
    if (!m_answerShown)
        return traced;
    const Sketch& sketch = m_document.sketch();
    for (const Solution& solution : solve(sketch).solutions)
        for (const VectorId vector : drawable()) {
            const SolvedForce& found = solvedOf(solution, vector);
            traced.push_back({vector, found.magnitude, std::atan2(found.vector.y(), found.vector.x()),
                              onScreen(shownForceWithUnit(found.magnitude, sketch))});
        }
    return traced;
}

} // namespace tailpoint
