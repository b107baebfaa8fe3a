// SPDX-License-Identifier: MIT
#include "core/sketch/cases.h"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace tailpoint {
namespace {

const Force* forceIn(const Sketch& sketch, std::string_view name) {
    const auto found = std::find_if(sketch.forces.begin(), sketch.forces.end(),
                                    [&](const Force& force) { return force.name == name; });
    return found == sketch.forces.end() ? nullptr : &*found;
}

Force* vectorIn(Sketch& sketch, std::string_view name) {
    if (sketch.sum.name == name) {
        return &sketch.sum;
    }
    for (Force& force : sketch.forces) {
        if (force.name == name) {
            return &force;
        }
    }
    return nullptr;
}

const CaseChange* changeOf(const LoadCase& one, std::string_view name) {
    const auto found = std::find_if(one.changes.begin(), one.changes.end(),
                                    [&](const CaseChange& change) { return change.of == name; });
    return found == one.changes.end() ? nullptr : &*found;
}

bool isEmpty(const CaseChange& change) {
    return !change.magnitude && !change.direction;
}

/// What is left of a change of a vector as it is now.
void settle(CaseChange& change, const Force& vector, bool isSum) {
    if (!isGiven(vector.magnitude) || (isSum && vector.magnitude.value == 0.0)) {
        change.magnitude.reset();
    }
    if (!isGiven(vector.direction)) {
        change.direction.reset();
    }
}

/// One value of a vector: into the case where it was given before and is so, else into the base. `asksAnew`:
/// a sum becomes zero, or is no longer.
template <class Value>
void put(const Value& before, const Value& after, bool asksAnew, Value& base, std::optional<Value>& changed) {
    if (after == before) {
        return;
    }
    if (!isGiven(after) || !isGiven(base) || asksAnew) {
        base = after;
        changed.reset();
    } else if (after == base) {
        changed.reset();
    } else {
        changed = after;
    }
}

/// The base's vector and its change in the case after the edit; `base` and `shown` are as they were.
Force edited(const Force& base, const Force& shown, const Force& after, bool isSum, CaseChange& change) {
    Force vector = after;
    vector.magnitude = base.magnitude;
    vector.direction = base.direction;
    const bool asksAnew = isSum && (after.magnitude.value == 0.0) != (base.magnitude.value == 0.0);
    put(shown.magnitude, after.magnitude, asksAnew, vector.magnitude, change.magnitude);
    put(shown.direction, after.direction, false, vector.direction, change.direction);
    change.of = after.name;
    return vector;
}

/// A sketch and the case that is edited in it, on the way from one state to the other.
class Lift {
public:
    Lift(const Sketch& base, std::size_t index, const Sketch& after)
        : m_base(base), m_shown(inCase(base, index)), m_case(base.cases[index]), m_result(after) {
        m_result.cases = base.cases;
        m_result.inCase = base.inCase;
    }

    Sketch run(std::size_t index) {
        const bool sameForces = m_result.forces.size() == m_base.forces.size();
        for (std::size_t i = 0; i < m_result.forces.size(); ++i) {
            lift(m_result.forces[i], before(i, sameForces));
        }
        lift(m_result.sum, &m_base.sum);
        m_result.cases[index].changes = changesInOrder();
        settleCases(m_result);
        return std::move(m_result);
    }

private:
    /// The base's force that force `i` is now: by its name, or in its place where it was renamed.
    const Force* before(std::size_t i, bool sameForces) const {
        if (i < m_base.forces.size() && m_base.forces[i].name == m_result.forces[i].name) {
            return &m_base.forces[i];
        }
        if (const Force* named = forceIn(m_base, m_result.forces[i].name)) {
            return named;
        }
        const bool isRenamed = sameForces && !forceIn(m_result, m_base.forces[i].name);
        return isRenamed ? &m_base.forces[i] : nullptr;
    }

    const Force& shownOf(const Force& base) const {
        return &base == &m_base.sum ? m_shown.sum
                                    : m_shown.forces[static_cast<std::size_t>(&base - m_base.forces.data())];
    }

    void lift(Force& vector, const Force* base) {
        if (!base) {
            return; // a new force: every case has it
        }
        const CaseChange* known = changeOf(m_case, base->name);
        CaseChange change = known ? *known : CaseChange{};
        vector = edited(*base, shownOf(*base), Force(vector), base == &m_base.sum, change);
        const auto place = known ? known - m_case.changes.data() : kNew;
        m_changes.push_back({place, std::move(change)});
        if (vector.name != base->name) {
            renameInCases(m_result, base->name, vector.name);
        }
    }

    /// As they stood in the case; new ones last, in the order of the vectors.
    std::vector<CaseChange> changesInOrder() {
        std::stable_sort(m_changes.begin(), m_changes.end(),
                         [](const Placed& a, const Placed& b) { return a.first < b.first; });
        std::vector<CaseChange> changes;
        for (Placed& placed : m_changes) {
            if (!isEmpty(placed.second)) {
                changes.push_back(std::move(placed.second));
            }
        }
        return changes;
    }

    using Placed = std::pair<std::ptrdiff_t, CaseChange>; ///< its place in the case before, or kNew
    static constexpr std::ptrdiff_t kNew = PTRDIFF_MAX;

    const Sketch& m_base;
    Sketch m_shown;
    const LoadCase& m_case;
    Sketch m_result;
    std::vector<Placed> m_changes;
};

} // namespace

Force inCase(Force base, const CaseChange& change) {
    if (change.magnitude) {
        base.magnitude = *change.magnitude;
    }
    if (change.direction) {
        base.direction = *change.direction;
    }
    return base;
}

Sketch inCase(const Sketch& sketch, std::size_t index) {
    Sketch made = asDrawn(sketch);
    for (const CaseChange& change : sketch.cases[index].changes) {
        if (Force* vector = vectorIn(made, change.of)) {
            *vector = inCase(std::move(*vector), change);
        }
    }
    made.inCase = sketch.cases[index].name;
    return made;
}

Sketch asDrawn(Sketch sketch) {
    sketch.cases.clear();
    sketch.inCase.clear();
    return sketch;
}

std::string titleWithCase(const Sketch& sketch) {
    if (sketch.inCase.empty()) {
        return sketch.title;
    }
    const std::string which = "case: " + sketch.inCase;
    return sketch.title.empty() ? which : sketch.title + " (" + which + ")";
}

std::optional<std::size_t> caseNamed(const Sketch& sketch, std::string_view name) {
    for (std::size_t i = 0; i < sketch.cases.size(); ++i) {
        if (sketch.cases[i].name == name) {
            return i;
        }
    }
    return std::nullopt;
}

std::string nextCaseName(const Sketch& sketch) {
    int number = 1;
    while (caseNamed(sketch, "case " + std::to_string(number))) {
        ++number;
    }
    return "case " + std::to_string(number);
}

void renameInCases(Sketch& sketch, const std::string& from, const std::string& to) {
    for (LoadCase& one : sketch.cases) {
        for (CaseChange& change : one.changes) {
            if (change.of == from) {
                change.of = to;
            }
        }
    }
}

void settleCases(Sketch& sketch) {
    for (LoadCase& one : sketch.cases) {
        std::erase_if(one.changes, [&](CaseChange& change) {
            const Force* vector = vectorIn(sketch, change.of);
            if (vector) {
                settle(change, *vector, vector == &sketch.sum);
            }
            return !vector || isEmpty(change);
        });
    }
}

Sketch editedInCase(const Sketch& base, std::size_t index, const Sketch& after) {
    return Lift(base, index, after).run(index);
}

} // namespace tailpoint
