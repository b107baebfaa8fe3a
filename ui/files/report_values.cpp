// SPDX-License-Identifier: MIT
#include "ui/files/report_values.h"

#include "core/sketch/shown.h"
#include "ui/files/result.h"

#include <algorithm>

namespace tailpoint {

namespace {

double distance(const Solution& a, const Solution& b) {
    double largest = (a.sum.vector - b.sum.vector).norm();
    for (std::size_t i = 0; i < a.forces.size(); ++i)
        largest = std::max(largest, (a.forces[i].vector - b.forces[i].vector).norm());
    return largest;
}

/// Where the freer question has no such answer, the root stands as it was found.
Answer withSenseLeftOpen(const Sketch& sketch, const Solved& solved, const Solution& lost) {
    Answer answer{sketch, {}, 0};
    for (std::size_t i = 0; i < lost.forces.size(); ++i)
        answer.sketch.forces[i].lineOfActionOnly |= lost.forces[i].turned;
    answer.sketch.sum.lineOfActionOnly |= lost.sum.turned;
    answer.solved = solve(answer.sketch);
    const auto& found = answer.solved.solutions;
    const auto same =
        std::find_if(found.begin(), found.end(), [&](const Solution& s) { return distance(s, lost) == 0; });
    if (same != found.end()) {
        answer.index = static_cast<std::size_t>(same - found.begin());
        return answer;
    }
    answer = {sketch, solved, 0};
    answer.solved.solutions = {lost};
    return answer;
}

} // namespace

Origin magnitudeOrigin(const SolvedForce& solved, const Force& given) {
    return given.magnitude.value == solved.magnitude ? Origin::typed : Origin::computed;
}

std::string shownMagnitude(const SolvedForce& solved, const Force& given, const Sketch& sketch) {
    return shownForceWithUnit(solved.magnitude, sketch, magnitudeOrigin(solved, given));
}

std::string shownDirection(const SolvedForce& solved, const Force& given, const Sketch& sketch) {
    if (!solved.direction)
        return "no direction";
    const auto* angle = std::get_if<AngleForm>(&given.direction.form);
    const bool typed = angle && normalized(angle->value, sketch.angleUnit) == *solved.direction;
    return shownAngle(*solved.direction, sketch, typed ? Origin::typed : Origin::computed);
}

std::vector<Answer> answersOf(const Sketch& sketch, const Solved& solved) {
    std::vector<Answer> answers;
    for (std::size_t i = 0; i < solved.solutions.size(); ++i)
        answers.push_back({sketch, solved, i});
    return answers;
}

tolerance::Ranges rangesOfReversed(const Answer& answer) {
    const auto isOpen = [](const SolvedForce& solved, const Force& given) {
        return !solved.turned || given.lineOfActionOnly;
    };
    const Solution& solution = answer.solution();
    bool areOpen = isOpen(solution.sum, answer.sketch.sum);
    for (std::size_t i = 0; i < solution.forces.size(); ++i)
        areOpen = areOpen && isOpen(solution.forces[i], answer.sketch.forces[i]);
    return areOpen ? Result(answer.sketch, answer.solved, answer.index).ranges() : tolerance::Ranges{};
}

std::vector<Answer> reversedAnswersOf(const Sketch& sketch, const Solved& solved) {
    std::vector<Answer> answers;
    for (const Solution& lost : solved.reversed)
        answers.push_back(withSenseLeftOpen(sketch, solved, lost));
    return answers;
}

} // namespace tailpoint
