// SPDX-License-Identifier: MIT
#include "ui/lecture/revealed.h"

#include <algorithm>
#include <map>
#include <set>

namespace tailpoint {

namespace {

using Ids = std::set<QuantityId>;

/// What the words call their quantities.
class Reader {
public:
    explicit Reader(const std::vector<Stop>& stops) {
        for (const Stop& stop : stops)
            for (const Working& working : stop.step.workings)
                if (const QuantityId id = resultOf(working); id.what != What::none)
                    m_answers[id].insert(stop.solution);
    }

    /// What a working comes to.
    QuantityId resultOf(const Working& working) const {
        return working.value && working.subject ? working.subject->id : QuantityId{};
    }

    Ids resultsOf(const Stop& stop) const {
        Ids results;
        for (const Working& working : stop.step.workings)
            add(results, resultOf(working), stop.solution);
        return results;
    }

    void reveal(Ids& ids, const Stop& stop, const BeatLine& line) const {
        switch (line.kind) {
        case BeatLine::Kind::reasoning:
            return reveal(ids, stop.step.reasoning[line.index], stop.solution);
        case BeatLine::Kind::conclusion:
            return reveal(ids, stop.step.conclusion[line.index], stop.solution);
        case BeatLine::Kind::table:
            return; // components, which no figure shows
        case BeatLine::Kind::working:
            break;
        }
        const Working& working = stop.step.workings[line.index];
        if (static_cast<std::size_t>(line.parts) >= linesOf(working).size())
            add(ids, resultOf(working), stop.solution);
    }

private:
    /// What both answers come to is each answer's own.
    void add(Ids& ids, QuantityId id, std::size_t solution) const {
        if (id.what == What::none)
            return;
        const auto answers = m_answers.find(id);
        if (answers != m_answers.end() && answers->second.size() > 1)
            id.answer = static_cast<std::uint8_t>(solution + 1);
        ids.insert(id);
    }

    /// "R = 520 N" anywhere in a sentence.
    void reveal(Ids& ids, const Formula& f, std::size_t solution) const {
        const auto isNumber = [](const Formula& part) { return part.kind == FormulaKind::number; };
        if (f.kind == FormulaKind::relation && std::any_of(f.parts.begin(), f.parts.end(), isNumber))
            add(ids, f.parts.front().id, solution);
        for (const Formula& part : f.parts)
            reveal(ids, part, solution);
    }

    void reveal(Ids& ids, const Prose& prose, std::size_t solution) const {
        for (const Piece& piece : prose.pieces)
            if (const auto* formula = std::get_if<Formula>(&piece))
                reveal(ids, *formula, solution);
    }

    std::map<QuantityId, std::set<std::size_t>> m_answers; ///< which of two answers come to it
};

void addGiven(Ids& ids, const Force& force, VectorId vector) {
    if (isGiven(force.magnitude))
        ids.insert(magnitudeId(vector));
    if (isGiven(force.direction))
        ids.insert(directionId(vector));
}

Ids givenOf(const Sketch& sketch) {
    Ids ids;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        addGiven(ids, sketch.forces[i], forceVector(i));
    addGiven(ids, sketch.sum, kSumVector);
    return ids;
}

} // namespace

void markHidden(std::vector<Stop>& stops, const Sketch& sketch) {
    const Reader reader(stops);
    const Ids given = givenOf(sketch); // may be seen from the first
    Ids revealed, results;
    for (const Stop& stop : stops)
        for (QuantityId id : reader.resultsOf(stop)) {
            const QuantityId common{id.what, id.of, id.with, 0, id.part};
            if (!given.contains(common))
                results.insert(id);
        }
    for (Stop& stop : stops)
        for (const Beat& beat : stop.beats) {
            for (const BeatLine& line : beat)
                reader.reveal(revealed, stop, line);
            std::set_difference(results.begin(), results.end(), revealed.begin(), revealed.end(),
                                std::back_inserter(stop.hidden.emplace_back()));
        }
}

} // namespace tailpoint
