// SPDX-License-Identifier: MIT
#include "ui/lecture/plan.h"

#include "ui/lecture/ends.h"
#include "ui/lecture/revealed.h"
#include "ui/practice/problem_file.h"

#include <QCoreApplication>
#include <algorithm>

namespace tailpoint {

namespace {

struct PlanWords {
    Q_DECLARE_TR_FUNCTIONS(tailpoint::Lecture)
};

constexpr int kFewLines = 6; ///< of all workings of a step together

int partsOf(const Working& working) {
    return (working.general ? 1 : 0) + (working.substituted ? 1 : 0) + (working.value ? 1 : 0);
}

bool isQuiet(const Step& step) {
    return step.key == StepKey::given || step.key == StepKey::question || step.key == StepKey::end;
}

bool isAnswer(const Step& step) {
    return step.key == StepKey::answer || step.key == StepKey::check || step.key == StepKey::end ||
           step.key == StepKey::rounding;
}

bool isOneOfTwo(const Step& step) {
    return step.key == StepKey::first || step.key == StepKey::second;
}

/// From the triangle's angle at the common point to the axis: both must be seen. A force that the triangle
/// moves away from there is referred where it acts, without the angles that led to it.
bool isReferral(const Step& step) {
    return step.key == StepKey::direction || step.key == StepKey::directions ||
           (isOneOfTwo(step) && step.law == Law::none);
}
bool isReferralOfSum(const Step& step) {
    const FigurePart direction = directionId(kSumVector);
    return isReferral(step) && std::count(step.parts.begin(), step.parts.end(), direction) > 0;
}

bool asksForSmallest(const Solved& solved) {
    return solved.family == Family::smallestForce || solved.family == Family::smallestSum;
}

bool isRoundThePoint(const AngleName& name) {
    return isBetweenRays(name.angle);
}

/// Two known sides tip to tail, for the angle between them, are the beginning of the triangle.
bool standsAlone(const Step& step) {
    return step.triangleAlone || step.key == StepKey::included;
}

/// Carries on in the triangle that has stood alone.
bool staysInTriangle(const Step& step) {
    return standsAlone(step) || step.key == StepKey::rest || (isOneOfTwo(step) && step.law == Law::sines);
}

/// A result stands on the sheet no sooner than it is read out: before, the figure shows the construction that
/// leads to it.
Stage stageBefore(Stage after, Stage previous) {
    switch (after) {
    case Stage::interior:
        return Stage::construction;
    case Stage::magnitudes:
        return std::max(previous, Stage::found);
    case Stage::directions:
    case Stage::between:
    case Stage::triangle:
    case Stage::all:
        return previous;
    default:
        return after;
    }
}

bool speaksOf(const Formula& formula, const QuantityId& angle) {
    QuantityId id = formula.id;
    id.answer = 0;
    return isSame(id, angle) || std::any_of(formula.parts.begin(), formula.parts.end(),
                                            [&](const Formula& part) { return speaksOf(part, angle); });
}

bool speaksOf(const Prose& prose, const QuantityId& angle) {
    return std::any_of(prose.pieces.begin(), prose.pieces.end(), [&](const Piece& piece) {
        const auto* formula = std::get_if<Formula>(&piece);
        return formula && speaksOf(*formula, angle);
    });
}

bool speaksOf(const Step& step, const BeatLine& line, const QuantityId& angle) {
    if (line.kind == BeatLine::Kind::reasoning)
        return speaksOf(step.reasoning[line.index], angle);
    if (line.kind == BeatLine::Kind::conclusion)
        return speaksOf(step.conclusion[line.index], angle);
    if (line.kind == BeatLine::Kind::table)
        return false;
    const auto relations = linesOf(step.workings[line.index]);
    const std::size_t count = std::min(relations.size(), static_cast<std::size_t>(line.parts));
    return std::any_of(relations.begin(), relations.begin() + static_cast<std::ptrdiff_t>(count),
                       [&](const Formula& relation) { return speaksOf(relation, angle); });
}

/// The first of a stop's beats that has the angle's symbol; the first of all where none has it.
std::size_t beatThatNames(const Stop& stop, const QuantityId& angle) {
    for (std::size_t beat = 0; beat < stop.beats.size(); ++beat)
        for (const BeatLine& line : stop.beats[beat])
            if (speaksOf(stop.step, line, angle))
                return beat;
    return 0;
}

/// The half that is kept begins with the greater force.
bool keepsOtherOrder(const Result& result) {
    const auto& solved = result.solved;
    if (solved.family != Family::closePolygon || solved.unknownVectors[0] != kSumIndex ||
        solved.solutions.empty() || result.sketch.forces.size() != 2)
        return false;
    const auto& forces = solved.solutions.front().forces;
    return forces[1].magnitude > forces[0].magnitude;
}

class Planner {
public:
    Planner(const Result& result, const FigureOptions& figure)
        : m_result(result), m_figure(figure), m_solution(result.chosen) {
        m_figure.note = false;    // it tells the answer, or why there is none; the last steps say it in words
        m_figure.legend = false;  // so do they of ranges
        m_figure.caution = false; // the column tells it: in letters for the last row it would take the sheet
    }

    void add(const Step& step, std::size_t solution, Stage otherStage = Stage::all) {
        Stop stop{step, solution, beatsOf(step), 0, m_figure, m_figure, {}, {}, {}};
        stop.resultBeat = resultBeatOf(stop);
        for (const AngleName& name : step.angles)
            if (const std::size_t beat = beatThatNames(stop, name.angle); beat > 0 && !isNamed(name.angle)) {
                stop.unnamed.push_back(name.angle);
                stop.namedAt.push_back(beat);
            }
        stop.after.stage = step.stage;
        stop.after.otherStage = otherStage;
        m_pair = step.pair > 0 ? step.pair : m_pair;
        stop.after.pair = m_pair; // the last of them stays, under the answer
        if (m_pair != kNoPairs)
            stop.after.construction = ConstructionKind::parallelogram;
        m_triangle = m_triangle || (standsAlone(step) && m_result.construction.triangle);
        if (m_triangle && (staysInTriangle(step) || isReferralOfSum(step))) {
            stop.after.construction = ConstructionKind::triangle;
            stop.after.alone = !isReferral(step);
            stop.after.otherOrder = keepsOtherOrder(m_result);
        }
        m_names.insert(m_names.end(), step.angles.begin(), step.angles.end());
        stop.after.names = m_names;
        stop.after.axisAngles = hasRoomForAxisAngles(step);
        if (speaksRoundThePoint() && !isAnswer(step))
            stop.after.construction = ConstructionKind::none;
        if (isReferral(step) && !step.angles.empty()) { // of the triangle's angles the one that is turned off
            stop.after.names = step.angles;
            stop.after.onlyNamed = true;
        }
        // The answer stands on its figure without the angles that led to it.
        stop.after.interior = !isAnswer(step) && (!m_triangle || !isReferral(step) || isReferralOfSum(step));
        stop.before = stop.after;
        stop.before.asGiven = m_stops.empty() || m_stops.back().after.asGiven; // until it is read out
        if (solution != m_solution)
            m_previous = std::min(m_previous, Stage::found); // of this answer nothing has been worked out
        m_solution = solution;
        stop.before.stage = std::min(stop.after.stage, stageBefore(stop.after.stage, m_previous));
        m_previous = stop.after.stage;
        m_stops.push_back(std::move(stop));
    }
    /// Slopes and bearings stand as they are given until a step has referred them to the axis.
    void setAsGiven(bool asGiven) { m_figure.asGiven = asGiven; }
    std::vector<Stop> take() {
        keepGrowing();
        return std::move(m_stops);
    }

private:
    /// What a later step doesn't show yet is not shown before it: known forces that are added up on the way
    /// have a magnitude and a direction of their own, and a step for each.
    void keepGrowing() {
        Stage least = Stage::all;
        for (auto stop = m_stops.rbegin(); stop != m_stops.rend(); ++stop) {
            least = std::min(least, stop->after.stage);
            stop->after.stage = least;
            stop->before.stage = std::min(stop->before.stage, least);
        }
    }

    /// The parallelogram's own angles want the room; three angles round the point leave none.
    bool hasRoomForAxisAngles(const Step& step) const {
        if (isAnswer(step))
            return true;
        if (step.key == StepKey::parallelogram ||
            (step.key == StepKey::angle && asksForSmallest(m_result.solved)))
            return false;
        return !speaksRoundThePoint();
    }
    /// Three forces in equilibrium, by the angles between them.
    bool speaksRoundThePoint() const {
        return !m_result.construction.parallelogram &&
               std::any_of(m_names.begin(), m_names.end(), isRoundThePoint);
    }

    bool isNamed(const QuantityId& angle) const {
        return std::any_of(m_names.begin(), m_names.end(),
                           [&](const AngleName& name) { return isSame(name.angle, angle); });
    }

    static std::size_t resultBeatOf(const Stop& stop) {
        for (std::size_t i = stop.beats.size(); i-- > 0;)
            for (const BeatLine& line : stop.beats[i])
                if (line.kind == BeatLine::Kind::working || line.kind == BeatLine::Kind::table)
                    return isQuiet(stop.step) ? 0 : i;
        return 0;
    }

    const Result& m_result;
    FigureOptions m_figure;
    std::vector<Stop> m_stops;
    Stage m_previous = Stage::given;
    std::size_t m_solution;
    std::vector<AngleName> m_names; ///< so far
    bool m_triangle = false;        ///< it has stood alone
    int m_pair = kNoPairs;          ///< which of the successive parallelograms is drawn
};

/// Bearings and slopes are turned into angles from the axis.
bool isReferringBearings(const Step& step) {
    return step.key == StepKey::directions && step.stage == Stage::directions;
}

bool refersDirections(const Worked& worked) {
    return std::any_of(worked.steps.begin(), worked.steps.end(), isReferringBearings);
}

/// The other of two answers is on the sheet where both are spoken of: where the line meets the circle twice,
/// and at the end.
Stage otherStageFor(const Step& step, Family family) {
    const bool both = step.key == StepKey::end || step.key == StepKey::quadratic ||
                      (step.key == StepKey::sines && family == Family::magnitudeAndDirection);
    return both ? Stage::all : Stage::given;
}

void addTitle(Step& step, std::size_t solution) {
    step.title +=
        (solution == 0 ? PlanWords::tr(": the first") : PlanWords::tr(": the second")).toStdString();
}

} // namespace

std::vector<Beat> beatsOf(const Step& step) {
    std::vector<Beat> beats(1);
    const auto next = [&]() -> Beat& { return isQuiet(step) ? beats.front() : beats.emplace_back(); };
    for (std::size_t i = 0; i < step.reasoning.size(); ++i)
        beats.front().push_back({BeatLine::Kind::reasoning, i, 0});
    if (step.table)
        next().push_back({BeatLine::Kind::table, 0, 0});
    int all = 0;
    for (const Working& working : step.workings)
        all += partsOf(working);
    for (std::size_t i = 0; i < step.workings.size(); ++i) {
        const int parts = partsOf(step.workings[i]);
        for (int part = all <= kFewLines && !isQuiet(step) ? 1 : parts; part <= parts; ++part)
            next().push_back({BeatLine::Kind::working, i, part});
    }
    if (!step.conclusion.empty()) {
        Beat& last = beats.emplace_back();
        for (std::size_t i = 0; i < step.conclusion.size(); ++i)
            last.push_back({BeatLine::Kind::conclusion, i, 0});
    }
    return beats;
}

std::vector<Stop> planOf(const Result& result, const FigureOptions& figure, const ExplainOptions& options) {
    return planOf(result, figure, options, wordsOf(result.sketch));
}

std::vector<Stop> planOf(const Result& result, const FigureOptions& figure, const ExplainOptions& options,
                         const std::string& words) {
    Planner plan(result, figure);
    plan.setAsGiven(true);
    plan.add(opening(result.sketch, words), result.chosen);
    const std::size_t answers = result.solved.solutions.size();
    const bool both = answers == 2;
    const auto worked = result.worked(options, both ? 0 : result.chosen);
    const Worked& first = *worked;
    std::vector<Prose> answered{first.answer};
    bool referred = !refersDirections(first);
    for (Step step : first.steps) {
        referred = referred || isReferringBearings(step);
        plan.setAsGiven(!referred);
        const std::size_t solution = !both ? result.chosen : step.key == StepKey::second ? 1 : 0;
        if (both && (step.key == StepKey::answer || step.key == StepKey::check))
            addTitle(step, 0);
        plan.add(step, solution, both ? otherStageFor(step, result.solved.family) : Stage::all);
    }
    if (both) {
        const auto second = result.worked(options, 1);
        answered.push_back(second->answer);
        for (Step step : second->steps)
            if (step.key == StepKey::answer || step.key == StepKey::check) {
                addTitle(step, 1);
                plan.add(step, 1, otherStageFor(step, result.solved.family));
            }
    }
    if (answers > 0)
        plan.add(closing(result.sketch, std::move(answered)), both ? 0 : result.chosen);
    std::vector<Stop> stops = plan.take();
    markHidden(stops, result.sketch);
    return stops;
}

} // namespace tailpoint
