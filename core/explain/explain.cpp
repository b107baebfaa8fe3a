// SPDX-License-Identifier: MIT
#include "core/explain/explain.h"

#include "core/explain/ambiguous.h"
#include "core/explain/families.h"

#include <cmath>

namespace tailpoint {

namespace {

using explaining::Board;

using Writer = void (*)(Board&);

bool isResultantOfTwo(const Board& board) {
    return board.solved.family == Family::closePolygon && board.sketch.forces.size() == 2 &&
           board.solved.unknownVectors[0] == kSumIndex;
}

double lengthIn(const Solution& solution, VectorId vector) {
    if (vector == kSumVector)
        return solution.sum.magnitude;
    return vector.kind == VectorId::Kind::force ? solution.forces[vector.index].magnitude : 0;
}

/// How many leading digits of the squares the law of cosines would cancel for the side sought.
int digitsLostByCosines(const Board& board) {
    if (!board.reduction || board.reduction->addsUp() || board.reduction->sought.size() != 1)
        return 0;
    const auto [a, b] = Reduction::others(board.reduction->sought[0]);
    const Solution& solution = board.solved.solutions.front();
    const auto length = [&](std::size_t side) { return lengthIn(solution, board.reduction->side[side]); };
    const double sought = length(board.reduction->sought[0]);
    return sought == 0 ? 0 : static_cast<int>(2 * std::log10(std::hypot(length(a), length(b)) / sought));
}

Writer followResultantOfTwo(Board& board) {
    board.follow(Route::Way::triangle);
    const bool opens = board.carried.find({What::opposite, kSumVector}) != nullptr;
    return opens ? explaining::writeTwoForces : explaining::writeFlat;
}

Writer followClosing(Board& board) {
    board.lost = digitsLostByCosines(board);
    const Method method = board.options.method;
    const bool givesWay = board.lost >= explaining::kMostLost && !board.options.parallelograms;
    if (method == Method::components || (method == Method::suited && givesWay)) {
        board.follow(Route::Way::components);
        return explaining::writeTable;
    }
    if (isResultantOfTwo(board))
        return followResultantOfTwo(board);
    if (addsByParallelograms(board.options) && board.follow(Route::Way::parallelograms))
        return explaining::writePairs;
    if (board.solved.unknownVectors[0] != kSumIndex && board.follow(Route::Way::triangle))
        return explaining::writeMissing;
    board.follow(Route::Way::components);
    return explaining::writeTable;
}

Writer followTriangle(Board& board, Writer writer) {
    const bool atRest =
        board.solved.family == Family::twoMagnitudes && board.reduction && board.reduction->loop;
    const bool byComponents =
        board.options.method == Method::components || (board.options.method == Method::suited && atRest);
    if (byComponents && explaining::hasTriangle(board) && board.follow(Route::Way::components))
        return explaining::writeTwoByComponents;
    board.follow(Route::Way::triangle);
    return explaining::hasTriangle(board) ? writer : explaining::writeAlongOneLine;
}

/// All given: both sides of the equation by components.
void followComparison(Board& board) {
    if (board.solved.family == Family::check)
        board.carried.take(checkOf(board.sketch, board.solved, board.things, board.solution));
}

/// Carries the lines of the way that is told; returns who tells it.
Writer follow(Board& board) {
    if (!board.isAnswered()) {
        followComparison(board);
        return explaining::writeWithoutAnswer;
    }
    switch (board.solved.family) {
    case Family::closePolygon:
        return followClosing(board);
    case Family::twoMagnitudes:
        return followTriangle(board, explaining::writeLines);
    case Family::magnitudeAndDirection:
        return followTriangle(board, explaining::writeAmbiguous);
    case Family::twoDirections:
        return followTriangle(board, explaining::writeSides);
    case Family::smallestForce:
    case Family::smallestSum:
        return followTriangle(board, explaining::writeSmallest);
    case Family::oneUnknown:
        board.follow(Route::Way::components);
        return explaining::writeOneUnknown;
    case Family::check:
    case Family::unclear:
        break;
    }
    return explaining::writeWithoutAnswer;
}

/// Why a question that has its answer by one way only is not told by the other.
Wording onlyWayToTheAnswer(const Board& board) {
    if (board.way != Route::Way::components)
        return SENTENCE("solution", "All vectors lie along one line, and their signs along it say "
                                    "what components would.");
    if (board.solved.family == Family::oneUnknown)
        return SENTENCE("solution", "One unknown needs no triangle: the components give it, and test the "
                                    "equation that is left.");
    return board.reduction && board.reduction->addsUp()
               ? SENTENCE("solution",
                          "The known forces are added up by components, and with these at hand the "
                          "missing one follows by subtraction: the triangle is not needed.")
               : SENTENCE("solution", "So many forces do not come down to one triangle: they are added "
                                      "up by components.");
}

/// Why there is no choice of method where no single answer is worked out; nothing where it is told so anyway.
std::optional<Wording> onlyWayWithoutAnswer(const Board& board) {
    if (board.solved.unknowns.size() > 2)
        return SENTENCE("solution", "Neither a triangle nor components can begin: each settles two unknowns, "
                                    "and no more.");
    if (board.solved.status == Status::none || board.solved.status == Status::endless)
        return SENTENCE("solution",
                        "Triangle or components, the question whether there is an answer comes first, and "
                        "what is given decides it alike for both.");
    if (board.options.method == Method::components)
        return std::nullopt;
    return SENTENCE("solution",
                    "Where nothing is to be found there is no triangle to solve: both sides of the "
                    "equation are compared by their components.");
}

/// Where the way that is asked for is not the one that is told: why not.
void sayOnlyWay(Board& board) {
    const Method method = board.options.method;
    if (method == Method::suited)
        return;
    const bool byComponents = board.way == Route::Way::components;
    if (board.isAnswered() && byComponents == (method == Method::components))
        return;
    const std::optional<Wording> why =
        board.isAnswered() ? onlyWayToTheAnswer(board) : onlyWayWithoutAnswer(board);
    if (!why)
        return;
    for (Step& step : board.worked.steps)
        if (step.key == StepKey::count)
            step.conclusion.push_back(board.say(*why));
}

/// What holds or has no answer is tried at the middle of the tolerances alone.
void sayOfMiddle(Board& board) {
    const bool isTried = board.solved.family == Family::check || board.solved.status == Status::none;
    if (!isTried || board.worked.steps.empty() || !tolerance::boxOf(board.sketch).hasTolerance)
        return;
    board.worked.steps.back().conclusion.push_back(board.say(
        SENTENCE("solution", "This is so at the middle of the tolerances; elsewhere in them it may be "
                             "otherwise.")));
}

/// Those that have a name and a unit; squares, ratios and what a check leaves over are told within lines.
bool isListed(const QuantityId& quantity) {
    const Dimension dimension = dimensionOf(quantity.what);
    return quantity.what != What::gap && (dimension == Dimension::force || dimension == Dimension::angle);
}

/// What leads to the point that is lost to a given sense: by hand as it is printed, else in full.
template <class Add>
void addOtherPoint(const Board& board, Add add) {
    const explaining::Ambiguous q(board);
    std::vector<std::pair<QuantityId, long double>> found;
    const SymbolLookup lookUp = [&](const Formula& symbol) -> std::optional<long double> {
        for (const auto& [id, value] : found)
            if (id == symbol.id)
                return value;
        return board.carried.full(symbol.id);
    };
    for (const auto& [id, line] : explaining::linesToOtherPoint(board, q)) {
        const std::optional<long double> value =
            board.options.handRounding ? std::optional<long double>(line.value->value)
                                       : evaluate(*line.general, board.sketch.angleUnit, lookUp);
        found.emplace_back(id, value.value_or(0));
        add(id, value);
    }
}

} // namespace

bool addsByParallelograms(const ExplainOptions& options) {
    return options.method != Method::components &&
           (options.parallelograms || options.method == Method::triangle);
}

Worked explain(const Sketch& sketch, const Solved& solved, const Construction& construction,
               std::size_t solution, const ExplainOptions& options, const tolerance::Ranges& ranges) {
    Board board(sketch, solved, construction, solution, options);
    if (ranges.size() == solved.solutions.size())
        board.ranges = &ranges;
    const Writer write = follow(board);
    board.settle();
    write(board);
    sayOnlyWay(board);
    sayOfMiddle(board);
    explaining::tellRangesBeside(board);
    return std::move(board.worked);
}

std::vector<WorkedQuantity> quantitiesOf(const Sketch& sketch, const Solved& solved,
                                         const Construction& construction, const ExplainOptions& options) {
    Board board(sketch, solved, construction, 0, options);
    follow(board);
    board.settle();
    std::vector<WorkedQuantity> quantities;
    const auto add = [&](const QuantityId& id, std::optional<long double> value) {
        if (!value || !isListed(id))
            return;
        QuantityId common = id;
        common.answer = 0;
        quantities.push_back({board.things.at(common).plain, board.things.at(id), static_cast<double>(*value),
                              board.shownNumber(id, static_cast<double>(*value))});
    };
    const bool isAmbiguous = board.isAnswered() && board.solved.family == Family::magnitudeAndDirection &&
                             board.way == Route::Way::triangle && explaining::hasTriangle(board),
               isLost = isAmbiguous && explaining::isOneLost(board),
               isWithin = isAmbiguous && explaining::Ambiguous(board).isDecided();
    for (const QuantityId& id : board.carried.quantities())
        if (!isWithin || id.what != What::acute || id.part != kOfInverseSine) // no letter of its own
            add(id, options.handRounding ? board.carried.value(id) : board.carried.full(id));
    if (isLost)
        addOtherPoint(board, add);
    return quantities;
}

} // namespace tailpoint
