// First and last steps of every solution.
#include "core/explain/families.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr std::size_t kMostListed = 8; ///< forces told one by one in a sentence

std::string formWords(const Direction& direction, const Sketch& sketch) {
    if (std::holds_alternative<SlopeForm>(direction.form))
        return "run : rise = " + shownAsGiven(direction, sketch);
    return shownAsGiven(direction, sketch);
}

/// "P = 340 N at θ_P = 25.0°"; what is to be found is said so.
void appendGiven(Prose& prose, const Blackboard& board, const Arrow& arrow, const Force& given) {
    if (!arrow.sizeGiven && !arrow.directionGiven) {
        append(prose, say("{}: {} and {} to find", arrow.vector, arrow.size, arrow.theta));
        return;
    }
    if (arrow.sizeGiven)
        append(prose, say("{}: {}", arrow.vector, equal(arrow.size, arrow.sizeNumber)));
    else
        append(prose, say("{}: {} to find", arrow.vector, arrow.size));
    if (!arrow.directionGiven) {
        append(prose, say("in the direction {}, to find", arrow.theta));
        return;
    }
    const auto* angle = std::get_if<AngleForm>(&given.direction.form);
    if (angle && !arrow.turned && angle->value == arrow.direction)
        append(prose, say("at {}", equal(arrow.theta, arrow.directionNumber)));
    else
        append(prose, say(std::holds_alternative<SlopeForm>(given.direction.form) ? "along {}" : "at {}",
                          inWords(withMinusSigns(formWords(given.direction, board.sketch)))));
    if (given.lineOfActionOnly)
        append(prose, say("(line of action alone: either sense will do)"));
}

void writeForces(Blackboard& board, Step& step) {
    if (board.forces.size() > kMostListed) {
        step.reasoning.push_back(
            say("{} forces act through one point; they are listed in the component table.",
                count(static_cast<int>(board.forces.size()))));
        return;
    }
    for (std::size_t i = 0; i < board.forces.size(); ++i) {
        Prose line;
        appendGiven(line, board, board.forces[i], board.sketch.forces[i]);
        line.pieces.emplace_back(std::string("."));
        step.reasoning.push_back(std::move(line));
    }
}

Formula vectorEquation(const Blackboard& board) {
    std::vector<Formula> terms;
    const std::size_t n = board.forces.size();
    for (std::size_t i = 0; i < n; ++i)
        if (n <= kMostListed || i < 2 || i + 1 == n)
            terms.push_back(board.forces[i].vector);
        else if (i == 2)
            terms.push_back(inWords("…"));
    return sumOf(std::move(terms));
}

void writeSought(Blackboard& board, Step& step) {
    if (isEquilibrium(board.sketch)) {
        step.reasoning.push_back(say("They are to hold one another in equilibrium: their sum is zero."));
        step.workings.push_back({{}, equal(vectorEquation(board), inWords("0")), {}, {}});
        return;
    }
    if (sumWhollyUnknown(board)) {
        step.reasoning.push_back(say("To find: the resultant {}, its magnitude {} and its direction {}.",
                                     board.sum.vector, board.sum.size, board.sum.theta));
    } else {
        Prose line = say("Their resultant");
        appendGiven(line, board, board.sum, board.sketch.sum);
        line.pieces.emplace_back(std::string("."));
        step.reasoning.push_back(std::move(line));
    }
    step.workings.push_back({{}, equal(board.sum.vector, vectorEquation(board)), {}, {}});
}

} // namespace

bool sumWhollyUnknown(const Blackboard& board) {
    return !board.sum.sizeGiven && !board.sum.directionGiven;
}

void writeGiven(Blackboard& board) {
    Step& step = board.step("given", "Given and to find", Stage::directions);
    for (const Arrow& arrow : board.forces)
        if (arrow.index < static_cast<int>(kMostListed))
            step.parts.push_back(arrowPart(arrow.index));
    step.parts.push_back(part(FigurePart::Kind::axis));
    writeForces(board, step);
    writeSought(board, step);
    const std::string turn = board.sketch.reference.sense == Sense::ccw ? "counter-clockwise" : "clockwise";
    step.conclusion.push_back(
        say("Angles are measured from {}, {} being positive.", board.axisWords(), inWords(turn)));
    step.conclusion.push_back(
        say("Taken for granted: the body may be treated as a particle, and all forces lie in "
            "one plane and meet in one point."));
}

namespace {

/// "Unknown are the magnitude of R and the direction of R."
Prose unknownsTold(const Blackboard& board) {
    std::vector<std::pair<const char*, VectorId>> unknowns;
    for (const VectorId vector : vectorsToFind(board.sketch)) {
        const Force& given = vector == kSumVector ? board.sketch.sum : board.sketch.forces[vector.index];
        if (!isGiven(given.magnitude))
            unknowns.emplace_back("the magnitude of {}", vector);
        if (!isGiven(given.direction))
            unknowns.emplace_back("the direction of {}", vector);
    }
    if (unknowns.empty())
        return say("Nothing is unknown.");
    Prose out = say(unknowns.size() == 1 ? "Unknown is" : "Unknown are");
    for (std::size_t i = 0; i < unknowns.size(); ++i) {
        if (i > 0)
            appendPieces(out, i + 1 < unknowns.size() ? "," : " and", {});
        append(out, say(unknowns[i].first, board.things.vectorFormula(unknowns[i].second)));
    }
    appendPieces(out, ".", {});
    return out;
}

} // namespace

void writeCount(Blackboard& board) {
    Step& step = board.step("count", "Count the unknowns", Stage::directions);
    step.reasoning.push_back(
        say("In a plane the vector equation stands for two scalar equations, one along each "
            "of two axes."));
    step.reasoning.push_back(unknownsTold(board));
    switch (board.solved.family) {
    case Family::closePolygon:
        step.reasoning.push_back(
            say("Two unknowns of one vector: it closes the polygon of all the others, and "
                "there is just one such vector."));
        break;
    case Family::twoMagnitudes:
        step.reasoning.push_back(
            say("Two magnitudes along known lines: line meets line, in one point unless the "
                "lines are parallel."));
        break;
    case Family::magnitudeAndDirection:
        step.reasoning.push_back(
            say("A magnitude along a known line and a direction of known magnitude: a line "
                "meets a circle, in no point, in one or in two."));
        break;
    case Family::twoDirections:
        step.reasoning.push_back(
            say("Two directions of known magnitudes: a circle meets a circle, in no point, in "
                "one or in two."));
        break;
    case Family::smallestForce:
    case Family::smallestSum:
        step.reasoning.push_back(
            say("That is one unknown too many for two equations; that {} is to be as small as can be "
                "makes up for it.",
                symbol(board.things.symbolNamed(*board.sketch.smallest), {})));
        break;
    case Family::check:
    case Family::unclear:
        break;
    }
    writeDirections(board);
}

namespace {

/// "3.6° clockwise from +x", the angle as a number.
Prose wayOf(const Blackboard& board, const Arrow& arrow) {
    const double value = arrow.directionNumber.value;
    const std::string words = withMinusSigns(directionWords(value, board.sketch)),
                      size = shownAngle(std::abs(value), board.sketch);
    if (!words.starts_with(size))
        return say(words);
    return say("{}" + words.substr(size.size()), numberWithUnit(std::abs(value), size));
}

/// "R = 520 N, 3.6° clockwise from +x" of one vector, as far as it was asked for.
void appendFound(Prose& prose, const Blackboard& board, const Arrow& arrow) {
    if (!prose.pieces.empty())
        prose.pieces.emplace_back(std::string(";"));
    const bool noDirection = !arrow.direction;
    if (noDirection && !arrow.sizeGiven) {
        append(prose, say("{}: it has no direction", equal(arrow.size, arrow.sizeNumber)));
        return;
    }
    if (!arrow.sizeGiven && !arrow.directionGiven) {
        append(prose, say("{},", equal(arrow.size, arrow.sizeNumber)));
        append(prose, wayOf(board, arrow));
    } else if (!arrow.sizeGiven) {
        append(prose, say("{}", equal(arrow.size, arrow.sizeNumber)));
        if (arrow.turned) {
            prose.pieces.emplace_back(std::string(", in the other sense of its line:"));
            append(prose, wayOf(board, arrow));
        }
    } else if (!arrow.directionGiven) {
        append(prose, say("{} acts", arrow.vector));
        append(prose, wayOf(board, arrow));
    }
}

bool wasSought(const Arrow& arrow) {
    return !arrow.sizeGiven || (!arrow.directionGiven && arrow.magnitude != 0);
}

/// "P = 180 N; Q acts 10.3° clockwise from +x." of all that was asked for.
Prose foundOn(const Blackboard& board) {
    Prose found;
    for (const Arrow& arrow : board.forces)
        if (wasSought(arrow))
            appendFound(found, board, arrow);
    if (wasSought(board.sum))
        appendFound(found, board, board.sum);
    found.pieces.emplace_back(std::string("."));
    return found;
}

} // namespace

void writeAnswer(Blackboard& board, const Blackboard* other) {
    Step& step = board.step("answer", "Answer", Stage::all);
    for (const Arrow& arrow : board.forces)
        if (wasSought(arrow))
            step.parts.push_back(arrowPart(arrow.index));
    if (wasSought(board.sum))
        step.parts.push_back(arrowPart(kSumIndex));
    board.worked.answer = foundOn(board);
    step.reasoning.push_back(board.worked.answer);
    if (other) {
        Prose also = say("The other answer holds as well:");
        append(also, foundOn(*other));
        step.conclusion.push_back(std::move(also));
    }
    if (!board.solved.message.empty())
        step.conclusion.push_back(say(withMinusSigns(board.solved.message)));
}

namespace {

struct Cost {
    const Arrow& arrow;
    bool ofSize;
    double full;
    Formula carried;
};

void appendCost(Blackboard& board, Step& step, const Cost& cost) {
    const Formula& symbol = cost.ofSize ? cost.arrow.size : cost.arrow.theta;
    const Formula full = cost.ofSize ? board.force(cost.full) : board.angleInUnit(cost.full);
    const double gap = std::abs(cost.carried.value - cost.full);
    const Formula off = number(gap, significant(gap, 2), full.sub);
    step.reasoning.push_back(
        say(full.text == cost.carried.text
                ? "{} by hand and {} with full values show the same digits; the rounding moved it by {}."
                : "{} by hand, but {} with full values: the rounding moved it by {} and changed the last "
                  "shown digit.",
            equal(symbol, cost.carried), full, off));
}

} // namespace

void writeRoundingCost(Blackboard& board) {
    if (!board.options.handRounding || board.solution >= board.solved.solutions.size())
        return;
    Step& step = board.step("rounding", "What the rounding by hand costs", Stage::all);
    const Solution& full = board.solved.solutions[board.solution];
    const auto compare = [&](const Arrow& arrow, const SolvedForce& solved) {
        if (solved.magnitudeFound)
            appendCost(board, step, {arrow, true, solved.magnitude, arrow.sizeNumber});
        if (solved.directionFound && solved.direction)
            appendCost(board, step, {arrow, false, *solved.direction, arrow.directionNumber});
    };
    for (std::size_t i = 0; i < board.forces.size(); ++i)
        compare(board.forces[i], full.forces[i]);
    compare(board.sum, full.sum);
}

} // namespace tailpoint::explaining
