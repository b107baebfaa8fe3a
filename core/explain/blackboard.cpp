#include "core/explain/blackboard.h"

#include "core/construct/reduction.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

/// A vector without an answer: what is given of it.
SolvedForce asGiven(const Force& force, const Sketch& sketch) {
    SolvedForce given;
    const auto unit = unitVector(force.direction, sketch);
    if (!unit || !force.magnitude.value)
        return given;
    given.magnitude = *force.magnitude.value;
    given.vector =
        given.magnitude * Eigen::Vector2d(static_cast<double>(unit->cos), static_cast<double>(unit->sin));
    return given;
}

} // namespace

Blackboard::Blackboard(const Sketch& theSketch, const Solved& theSolved, const Construction& theConstruction,
                       std::size_t theSolution, const ExplainOptions& theOptions)
    : sketch(theSketch), solved(theSolved), construction(theConstruction), options(theOptions),
      solution(theSolution), things(theSketch) {
    alpha = symbol(things.angleLetter(0));
    beta = symbol(things.angleLetter(1));
    gamma = symbol(things.angleLetter(2));
    worked.steps.reserve(24);
    if (solution < solved.solutions.size()) {
        const Solution& found = solved.solutions[solution];
        forces.reserve(found.forces.size());
        for (std::size_t i = 0; i < found.forces.size(); ++i)
            forces.push_back(arrowOf(found.forces[i], sketch.forces[i], static_cast<int>(i)));
        sum = arrowOf(found.sum, sketch.sum, kSumIndex);
        scale = sum.magnitude;
        for (const Arrow& arrow : forces)
            scale += arrow.magnitude;
        return;
    }
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        forces.push_back(arrowOf(asGiven(sketch.forces[i], sketch), sketch.forces[i], static_cast<int>(i)));
    sum = arrowOf(asGiven(sketch.sum, sketch), sketch.sum, kSumIndex);
}

Arrow Blackboard::arrowNamed(VectorId id) const {
    Arrow arrow;
    arrow.id = id;
    arrow.name = things.name(id);
    arrow.vector = things.vectorFormula(id);
    arrow.size = things.formula(magnitudeId(id));
    arrow.theta = things.formula(directionId(id));
    return arrow;
}

Arrow Blackboard::madeArrow(VectorId id, const Eigen::Vector2d& v) const {
    Arrow arrow = arrowNamed(id);
    arrow.v = v;
    arrow.magnitude = std::hypot(v.x(), v.y());
    arrow.direction =
        referredDirection(static_cast<long double>(v.x()), static_cast<long double>(v.y()), sketch);
    arrow.sizeNumber = force(arrow.magnitude);
    if (arrow.direction)
        arrow.directionNumber = angleInUnit(*arrow.direction);
    return arrow;
}

Arrow Blackboard::arrowOf(const SolvedForce& found, const Force& given, int index) const {
    Arrow arrow = arrowNamed(vectorId(index));
    arrow.index = index;
    arrow.sizeGiven = isGiven(given.magnitude);
    arrow.directionGiven = isGiven(given.direction);
    arrow.magnitude = arrow.sizeGiven ? *given.magnitude.value : found.magnitude;
    arrow.v = found.vector;
    arrow.turned = found.turned;
    arrow.direction = found.direction;
    if (!arrow.direction && arrow.directionGiven)
        arrow.direction = referredDirection(given.direction, sketch);
    const bool typedAngle = std::holds_alternative<AngleForm>(given.direction.form) && !found.turned;
    arrow.sizeNumber = force(arrow.magnitude, arrow.sizeGiven ? Origin::typed : Origin::computed);
    if (arrow.direction)
        arrow.directionNumber = angleInUnit(*arrow.direction, typedAngle ? Origin::typed : Origin::computed);
    return arrow;
}

Formula Blackboard::numberOf(double value, std::string_view shown) const {
    Formula made = numberWithUnit(value, shown);
    if (options.handRounding)
        made.value = shownValue(made);
    return made;
}

Formula Blackboard::force(double value, Origin origin) const {
    return numberOf(value, shownForceWithUnit(value, sketch, origin));
}

Formula Blackboard::angle(double radians) const {
    return angleInUnit(fromRadians(radians, sketch.angleUnit));
}

Formula Blackboard::angleInUnit(double value, Origin origin) const {
    return numberOf(value, shownAngle(value, sketch, origin));
}

Formula Blackboard::axisWords() const {
    return inWords(withMinusSigns(axisName(sketch.reference)));
}

Formula Blackboard::halfTurn() const {
    switch (sketch.angleUnit) {
    case AngleUnit::deg:
        return number(180, "180", "°");
    case AngleUnit::gon:
        return number(200, "200", "gon");
    case AngleUnit::rad:
        break;
    }
    return number(half(), "π", "rad");
}

Formula Blackboard::fullTurn() const {
    switch (sketch.angleUnit) {
    case AngleUnit::deg:
        return number(360, "360", "°");
    case AngleUnit::gon:
        return number(400, "400", "gon");
    case AngleUnit::rad:
        break;
    }
    return number(2 * half(), "2π", "rad");
}

Formula Blackboard::settle(Working& working, double full, Quantity quantity) const {
    if (options.handRounding && working.substituted)
        if (const auto carried = evaluate(*working.substituted, sketch.angleUnit))
            full = quantity == Quantity::force && std::abs(*carried) < kNoise * scale
                       ? 0
                       : static_cast<double>(*carried);
    Formula value = quantity == Quantity::angle ? angleInUnit(full) : force(full);
    working.value = value;
    return value;
}

bool Blackboard::hasStep(std::string_view key) const {
    for (const Step& made : worked.steps)
        if (made.key == key)
            return true;
    return false;
}

Step& Blackboard::step(std::string key, std::string title, Stage stage, Law law) {
    Step& made = worked.steps.emplace_back();
    made.key = std::move(key);
    made.title = std::move(title);
    made.stage = stage;
    made.law = law;
    return made;
}

double Blackboard::valueOf(const Formula& angle) const {
    return static_cast<double>(evaluate(angle, sketch.angleUnit).value_or(0));
}

std::string listed(const std::vector<std::string>& items) {
    std::string out;
    for (std::size_t i = 0; i < items.size(); ++i)
        out.append(i == 0 ? "" : i + 1 == items.size() ? " and " : ", ").append(items[i]);
    return out;
}

} // namespace tailpoint::explaining
