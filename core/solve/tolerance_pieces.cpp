// SPDX-License-Identifier: MIT
// The pieces of an answer, and the answer at a point of the box.
#include "core/solve/tolerance_problem.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace tailpoint::tolerance {
namespace {

using kernel::Circle;
using kernel::Line;
using kernel::Roots;
using kernel::Target;
using kernel::Vec;

constexpr double kHalf = std::numbers::pi;
constexpr double kQuarter = std::numbers::pi / 2;

std::size_t positionOf(const Box& box, int index) {
    const auto found = std::find_if(box.vectors.begin(), box.vectors.end(),
                                    [&](const BoxVector& vector) { return vector.index == index; });
    return static_cast<std::size_t>(found - box.vectors.begin());
}

Unknown unknownAt(const Problem& problem, int index, bool flipped) {
    Unknown unknown;
    unknown.vector = positionOf(problem.box, index);
    const BoxVector& vector = problem.box.vectors[unknown.vector];
    unknown.isLine = vector.directionGiven;
    unknown.flipped = flipped;
    unknown.sector = sectorOf(vector, problem.turnedOf(unknown.vector, flipped));
    if (!vector.magnitudeGiven) {
        unknown.sector.least = 0;
        unknown.sector.greatest = kNever;
    }
    return unknown;
}

Rule ruleOf(const Solved& solved, const std::array<Unknown, 2>& unknown) {
    if (solved.family == Family::smallestForce || solved.family == Family::smallestSum || hasRest(solved)) {
        return Rule::foot;
    }
    if (unknown[0].isLine != unknown[1].isLine) {
        return Rule::circle;
    }
    return unknown[0].isLine ? Rule::lines : Rule::circles;
}

// Second's direction less the first's. Where line meets circle, root 0 lies farther along the line, so that
// the circle's vector points back: more than a quarter turn off. Where circles meet, the first vector of root
// 0 lies counter-clockwise of the target, and the second clockwise of the first.
Relation relationOf(const Piece& piece) {
    if (piece.rule == Rule::circles) {
        return piece.root == 0 ? Relation{false, kHalf, 2 * kHalf} : Relation{false, 0, kHalf};
    }
    if (piece.rule != Rule::circle) {
        return {};
    }
    const Unknown& line = piece.unknown[0].isLine ? piece.unknown[0] : piece.unknown[1];
    const bool back = (piece.root == 0) != line.flipped;
    return back ? Relation{false, kQuarter, 3 * kQuarter} : Relation{false, -kQuarter, kQuarter};
}

struct PieceMaker {
    const Problem& problem;
    const Sketch& sketch;
    const Solved& solved;
    std::vector<Piece> pieces{};

    Piece pieceOf(bool firstFlipped, bool secondFlipped, int root) const {
        Piece piece;
        piece.unknown = {unknownAt(problem, solved.unknownVectors[0], firstFlipped),
                         unknownAt(problem, solved.unknownVectors[1], secondFlipped)};
        piece.hasSecond = true;
        piece.rule = ruleOf(solved, piece.unknown);
        piece.root = root;
        piece.relation = relationOf(piece);
        return piece;
    }

    void add(Piece piece) {
        if (piece.rule != Rule::foot) {
            pieces.push_back(piece);
            return;
        }
        for (const double side : {kQuarter, -kQuarter}) {
            piece.relation = {false, side, side};
            piece.root = side > 0 ? 0 : 1;
            pieces.push_back(piece);
        }
    }

    // The force that would have to push is zero; what is left over points away from it.
    void addStill() {
        Piece piece = pieceOf(false, false, 0);
        piece.rule = Rule::still;
        piece.unknown[piece.unknown[0].isLine ? 0 : 1].sector.greatest = 0;
        piece.relation = {false, kQuarter, 3 * kQuarter};
        pieces.push_back(piece);
    }

    // The smallest force beside the sum: the sum may come out turned round.
    bool isOfSumsLine(const Unknown& line) const {
        return solved.family == Family::smallestForce && problem.box.vectors[line.vector].index == kSumIndex;
    }

    // Which senses each unknown vector may take: its own, the other, or both.
    std::vector<bool> flipsOf(int which, bool lost) const {
        const Unknown unknown =
            unknownAt(problem, solved.unknownVectors[static_cast<std::size_t>(which)], false);
        const bool either =
            problem.box.vectors[unknown.vector].lineOfActionOnly || solved.family == Family::smallestForce;
        if (!unknown.isLine) {
            return {false};
        }
        return either || lost ? std::vector<bool>{false, true} : std::vector<bool>{false};
    }

    void addAll(int root, bool lost) {
        for (const bool first : flipsOf(0, lost)) {
            for (const bool second : flipsOf(1, lost)) {
                const bool mayFirst = flipsOf(0, false).size() == 2 || !first;
                const bool maySecond = flipsOf(1, false).size() == 2 || !second;
                if ((mayFirst && maySecond) != lost) {
                    add(pieceOf(first, second, root));
                }
            }
        }
    }
};

long double distance(const Problem& problem, const Tips& tips, const Piece& piece, const Solution& solution) {
    long double sum = 0;
    for (std::size_t i = 0; i < 2; ++i) {
        const std::size_t at = piece.unknown[i].vector;
        const bool isSum = problem.box.vectors[at].index == kSumIndex;
        const SolvedForce& solved = isSum ? solution.sum : solution.forces[at];
        const Vec own = (isSum ? -tips[i].magnitude : tips[i].magnitude) * tips[i].unit;
        sum += kernel::length(
            {own.x - std::ldexp(static_cast<long double>(solved.vector.x()), -problem.exponent),
             own.y - std::ldexp(static_cast<long double>(solved.vector.y()), -problem.exponent)});
    }
    return sum;
}

// The kernel's root that is this answer; -1: both, where they are one.
int rootOf(const PieceMaker& maker, std::size_t answer) {
    const Solution& solution = maker.solved.solutions[answer];
    const Point nominal = maker.problem.nominal();
    std::array<long double, 2> off{std::numeric_limits<long double>::infinity(),
                                   std::numeric_limits<long double>::infinity()};
    PieceMaker scratch = maker;
    for (int root = 0; root < 2; ++root) {
        scratch.pieces.clear();
        scratch.addAll(root, false);
        for (const Piece& piece : scratch.pieces) {
            if (const auto tips = tipsAt(maker.problem, piece, nominal)) {
                off[static_cast<std::size_t>(root)] = std::fmin(
                    off[static_cast<std::size_t>(root)], distance(maker.problem, *tips, piece, solution));
            }
        }
    }
    return off[0] == off[1] ? -1 : off[0] < off[1] ? 0 : 1;
}

std::vector<Piece> madeOf(const Problem& problem, const Sketch& sketch, const Solved& solved,
                          std::size_t answer, bool lost) {
    PieceMaker maker{problem, sketch, solved};
    if (solved.unknownVectors[0] == kNoVector) {
        return {};
    }
    if (solved.unknownVectors[1] == kNoVector && !hasRest(solved)) {
        Piece piece;
        piece.unknown[0] = unknownAt(problem, solved.unknownVectors[0], false);
        piece.unknown[0].sector.least = 0;
        piece.unknown[0].sector.greatest = kNever;
        return lost ? std::vector<Piece>{} : std::vector<Piece>{piece};
    }
    const Rule rule = maker.pieceOf(false, false, 0).rule;
    if (rule == Rule::foot && lost) {
        return {}; // the smallest is answered everywhere
    }
    if (rule == Rule::lines || rule == Rule::foot) {
        maker.addAll(0, lost);
    } else {
        const int root = rootOf(maker, answer);
        for (int each = 0; each < 2; ++each) {
            if (root < 0 || root == each) {
                maker.addAll(each, lost);
            }
        }
    }
    if (!lost && rule == Rule::foot) {
        const auto& [first, second] = maker.pieces.front().unknown;
        const Unknown& line = first.isLine ? first : second;
        if (!problem.box.vectors[line.vector].lineOfActionOnly && !maker.isOfSumsLine(line) &&
            !hasRest(solved)) {
            maker.addStill();
        }
    }
    return maker.pieces;
}

// Sorted by the kernel's own bands; a found line's magnitude is turned into the piece's sense.
std::optional<Tip> onLine(const kernel::Found& found, const Unknown& unknown) {
    if (!unknown.isLine) {
        return Tip{found.unit, found.magnitude};
    }
    const long double magnitude = unknown.flipped ? 0.0L - found.magnitude : found.magnitude;
    if (magnitude < 0) {
        return std::nullopt;
    }
    return Tip{unknown.flipped ? -found.unit : found.unit, magnitude};
}

Line lineOf(const Problem& problem, const Unknown& unknown, const Point& point) {
    return {problem.unitAt(point, unknown.vector), false};
}

std::optional<Tips> footAt(const Problem& problem, const Piece& piece, const Point& point,
                           const Target& target) {
    const std::size_t lineIs = piece.unknown[0].isLine ? 0 : 1;
    const kernel::Root root = kernel::nearest(lineOf(problem, piece.unknown[lineIs], point), target);
    const std::optional<Tip> line = onLine(root.first, piece.unknown[lineIs]);
    if (!line) {
        return std::nullopt;
    }
    const Tip other{root.second.unit, root.second.magnitude};
    const Tips tips = lineIs == 0 ? Tips{*line, other} : Tips{other, *line};
    const bool left = kernel::cross(tips[0].unit, tips[1].unit) > 0;
    if (left != (piece.root == 0) && other.magnitude != 0) {
        return std::nullopt;
    }
    return tips;
}

std::optional<Tips> stillAt(const Problem& problem, const Piece& piece, const Point& point,
                            const Target& target) {
    const std::size_t line = piece.unknown[0].isLine ? 0 : 1;
    const Vec unit = problem.unitAt(point, piece.unknown[line].vector);
    if (kernel::dot(unit, target.vector) > 0) {
        return std::nullopt;
    }
    const kernel::Found rest = kernel::close(target);
    const Tip still{unit, 0}, left{rest.unit, rest.magnitude};
    return line == 0 ? Tips{still, left} : Tips{left, still};
}

Roots rootsAt(const Problem& problem, const Piece& piece, const Point& point, const Target& target) {
    const auto& [first, second] = piece.unknown;
    const auto circle = [&](const Unknown& unknown) {
        return Circle{problem.magnitudeAt(point, unknown.vector)};
    };
    if (piece.rule == Rule::lines) {
        return kernel::meet(lineOf(problem, first, point), lineOf(problem, second, point), target);
    }
    if (piece.rule == Rule::circles) {
        return kernel::meet(circle(first), circle(second), target);
    }
    return first.isLine ? kernel::meet(lineOf(problem, first, point), circle(second), target)
                        : kernel::meet(circle(first), lineOf(problem, second, point), target);
}

} // namespace

std::vector<Piece> piecesOf(const Problem& problem, const Sketch& sketch, const Solved& solved,
                            std::size_t answer) {
    std::vector<Piece> pieces = madeOf(problem, sketch, solved, answer, false);
    for (Piece& piece : pieces) {
        aim(problem, piece);
    }
    return pieces;
}

std::vector<Piece> lostPiecesOf(const Problem& problem, const Sketch& sketch, const Solved& solved,
                                std::size_t answer) {
    std::vector<Piece> pieces = madeOf(problem, sketch, solved, answer, true);
    for (Piece& piece : pieces) {
        aim(problem, piece);
    }
    return pieces;
}

std::optional<Tips> tipsAt(const Problem& problem, const Piece& piece, const Point& point) {
    const Target target{problem.targetAt(point), problem.scale};
    if (piece.rule == Rule::alone) {
        const kernel::Found found = kernel::close(target);
        return Tips{Tip{found.unit, found.magnitude}, Tip{}};
    }
    if (piece.rule == Rule::foot) {
        return footAt(problem, piece, point, target);
    }
    if (piece.rule == Rule::still) {
        return stillAt(problem, piece, point, target);
    }
    const Roots roots = rootsAt(problem, piece, point, target);
    if (roots.count == 0) {
        return std::nullopt;
    }
    const kernel::Root& root = roots.root[roots.count == 2 ? static_cast<std::size_t>(piece.root) : 0];
    const std::optional<Tip> first = onLine(root.first, piece.unknown[0]);
    const std::optional<Tip> second = onLine(root.second, piece.unknown[1]);
    if (!first || !second) {
        return std::nullopt;
    }
    return Tips{*first, *second};
}

} // namespace tailpoint::tolerance
