// SPDX-License-Identifier: MIT
// Branch and bound for one unknown vector of one answer: how far its magnitude, components and direction can
// go. Used inside solve/tolerance.
//
// A cell is a part of the directions of both unknown vectors (and of known ones where their hollow inner side
// matters). What the other vectors can add up to is seen through their support functions, which bounds the
// magnitude of the first from both sides, or proves that nothing closes. Every bound is of second order in
// the cell's width where the extreme lies within.
#pragma once

#include "core/solve/tolerance.h"
#include "core/solve/tolerance_problem.h"

#include <numbers>

namespace tailpoint::tolerance {

inline constexpr double kTurn = 2 * std::numbers::pi;

enum class Goal { leastMagnitude, greatestMagnitude, leastX, greatestX, leastY, greatestY, from, to };
inline constexpr std::size_t kGoals = 8;
inline bool isOfDirection(Goal goal) {
    return goal == Goal::from || goal == Goal::to;
}
inline bool isGreatest(Goal goal) {
    return goal == Goal::greatestMagnitude || goal == Goal::greatestX || goal == Goal::greatestY ||
           goal == Goal::to;
}

/// Of a component: the way that it is looked for along.
inline Pt alongOf(Goal goal) {
    const double sign = isGreatest(goal) ? 1 : -1;
    return goal == Goal::leastX || goal == Goal::greatestX ? Pt{sign, 0} : Pt{0, sign};
}

/// Part of a piece. `first` is the vector that is looked for; its magnitude is narrowed to what can close.
struct Cell {
    std::size_t piece = 0;
    Sector first, second;
    std::size_t known = 0;      ///< which set of the known vectors' sectors
    Pt towardMost, towardLeast; ///< the proofs' directions for the greatest and the least magnitude, or zero
    double most = kNever;       ///< greatest magnitude, were the first's direction that of its middle
    double bound = kNever;      ///< of the goal, always as if the greatest were looked for
    bool isQuick = false;       ///< the bound is one that cost nothing
};

/// The best that was found at a point of the box.
struct Best {
    bool isThere = false;
    long double value = 0; ///< as if the greatest were looked for
    Point point;
    std::size_t piece = 0;
};

/// What a range's end may be off, as a part of the range: two ends together 0.1 %.
inline constexpr double kEnough = 4e-4;
/// Directions closer than this are one; nothing is halved below it.
inline constexpr double kThinnest = 1e-14;

struct Extreme {
    double bound = kNever; ///< outer, as if the greatest were looked for; kNever: none was found
    /// The bound is true though no point was found that reaches it: what it was proved for is thin enough.
    bool isTight = false;
    /// Next to the best point no input leads farther: what the bound is above it was not yet halved off.
    bool isTop = false;
    bool isUnbounded = false;
    Best best;
};

class Search {
public:
    /// `first`: which of the pieces' unknown vectors is looked for. `boxes`: of its runs; a few of them are
    /// spent beforehand on what all have in common.
    Search(const Problem& problem, const std::vector<Piece>& pieces, std::size_t first,
           int boxes = kExact.boxes);
    /// A quick one that ends where no bound can be off by more than about `coarse`; it tries no points.
    Search(const Problem& problem, const std::vector<Piece>& pieces, std::size_t first, double coarse);

    /// Whether any part of the box was not proved to have no answer.
    bool isEmpty() const { return cells_.empty(); }
    /// Directions as seen from `base`, counter-clockwise, radians: the middle of the widest gap that no
    /// direction of the vector lies in. False: no gap was found, any direction may be.
    bool hasGap() const { return hasGap_; }
    double base() const { return base_; }
    /// To be asked before the search of a direction: looks for a gap with so many boxes.
    void findGap(int boxes);
    /// Ends when bound and best are so close together that nothing is to be gained, or close enough for who
    /// reads it and a quarter of the boxes is spent, or when all are.
    Extreme run(Goal goal, int boxes);
    /// No run's bound of this goal need be above, as is known from elsewhere: of that vector, which is tried.
    void cap(Goal goal, double bound, Pt vector);
    /// Whether anything may be found against the given sense of its line (or along it).
    bool mayBe(bool flipped) const;
    /// How far apart the best points of a goal and its opposite lie.
    double width(Goal goal) const;
    /// The best of all points tried so far.
    const Best& best(Goal goal) const { return best_[static_cast<std::size_t>(goal)]; }
    /// False: the piece has no answer there.
    bool tryPoint(std::size_t piece, const Point& point);
    long double valueOf(Goal goal, const Tips& tips) const;

private:
    static constexpr int kFirst = -1, kSecond = -2;
    struct Looseness {
        double most = 0, total = 0;
        int which = kFirst; ///< a known vector, or one of the two
        void add(double gap, int at) {
            total += gap;
            if (gap > most) {
                most = gap;
                which = at;
            }
        }
    };
    class Open;
    void start();
    void tryCorners();
    void tryAllButParallel(std::size_t piece);
    bool narrow(Cell& cell) const;
    double fineOf(const Cell& cell) const;
    bool relate(Cell& cell) const;
    bool boundMost(Cell& cell) const;
    bool boundLeast(Cell& cell) const;
    Total totalOf(const Cell& cell) const;
    double boundOf(Goal goal, const Cell& cell) const;
    double gapOf(Goal goal, const Cell& cell) const;
    double quickBound(Goal goal, const Cell& cell) const;
    double componentBound(Goal goal, const Cell& cell) const;
    void tryCell(Goal goal, const Cell& cell, bool upTo);
    void tryToward(Goal goal, const Cell& cell, Pt toward, double direction, bool upTo);
    Point pointToward(const Cell& cell, Pt toward, double direction, bool inner) const;
    void tryVector(const Cell& cell, Pt own);
    long double offOf(const Piece& piece, const Point& point, kernel::Vec own) const;
    void placeOther(const Piece& piece, Point& point, kernel::Vec own) const;
    Pt farthestOf(Goal goal, const Cell& cell) const;
    void tryClosed();
    void closeIn(Point& point, kernel::Vec own, int sweeps) const;
    void tryOtherPieces(Goal goal);
    void settle(Goal goal);
    void settleInput(Goal goal, std::size_t input);
    void climb(Goal goal);
    bool isReached(Goal goal, double bound, const Cell& cell, bool thoroughly);
    double thinnestOf(Goal goal, const Cell& cell) const;
    bool isTrue(Goal goal, double bound, const Cell& cell, bool thoroughly, Looseness& loose);
    Extreme ended(Goal goal, double bound, bool isTight);
    bool isSettled(Goal goal) const;
    long double valueWith(Goal goal, std::size_t input, long double value) const;
    void tryNextTo(Goal goal, std::size_t piece, const Point& point);
    void tryUpTo(std::size_t piece, const Point& from, const Point& toward);
    Looseness loosenessOf(Goal goal, const Cell& cell) const;
    Looseness doubtOf(Goal goal, const Cell& cell) const;
    bool isNothing(const Cell& cell) const;
    std::vector<Cell> split(Goal goal, const Cell& cell, int which);
    double hollow(const Sector& sector, Pt toward) const;
    void refine(int boxes);

    const Problem& problem_;
    const std::vector<Piece>& pieces_;
    std::size_t firstIs_ = 0;
    std::vector<std::vector<Sector>> known_;
    std::vector<Cell> cells_;
    std::array<Best, kGoals> best_;
    std::array<double, kGoals> caps_;
    double coarse_ = 0;
    long double leastStep_ = 0x1p-56L; ///< to a last point with an answer
    double fine_ =
        1e-15; ///< what a bound may be off beyond rounding: a small part of what the box makes of it
    bool hasGap_ = false;
    double base_ = 0;
};

} // namespace tailpoint::tolerance
