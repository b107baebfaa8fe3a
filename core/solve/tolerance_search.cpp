// SPDX-License-Identifier: MIT
#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <queue>
#include <utility>

namespace tailpoint::tolerance {
namespace {

/// With fewer boxes than this a bound that no point reaches is not looked into: it stands as an outer one.
constexpr int kThorough = kExact.boxes / 8;
/// A magnitude beyond so many times all that is given is beyond all bounds.
constexpr double kFar = 0x1p30;

// Every direction that is halved at the start: wider parts bound nothing.
std::vector<Sector> slicesOf(const Sector& sector, double widest) {
    const int count = std::max(1, static_cast<int>(std::ceil(sector.width() / widest - 1e-9)));
    std::vector<Sector> slices;
    for (int i = 0; i < count; ++i) {
        Sector slice = sector;
        if (i > 0) {
            slice.from = sector.from + sector.width() * i / count;
            slice.atFrom = unitAt(slice.from);
        }
        if (i + 1 < count) {
            slice.to = sector.from + sector.width() * (i + 1) / count;
            slice.atTo = unitAt(slice.to);
        }
        slices.push_back(slice);
    }
    return slices;
}

} // namespace

Search::Search(const Problem& problem, const std::vector<Piece>& pieces, std::size_t first, int boxes)
    : problem_(problem), pieces_(pieces), firstIs_(first) {
    caps_.fill(kNever);
    known_.push_back(problem.sectors);
    if (boxes < kThorough) {
        leastStep_ = 0x1p-14L;
    }
    start();
    tryCorners();
    refine(boxes * 2 / 5);
}

Search::Search(const Problem& problem, const std::vector<Piece>& pieces, std::size_t first, double coarse)
    : problem_(problem), pieces_(pieces), firstIs_(first), coarse_(coarse) {
    caps_.fill(kNever);
    known_.push_back(problem.sectors);
    start();
}

void Search::start() {
    constexpr double kPart = 1e-8, kRounding = 1e-15;
    long double loose = 0;
    for (const Input& input : problem_.inputs) {
        const Span& size = problem_.box.vectors[input.vector].magnitude;
        const long double arm = input.isDirection ? std::fmax(size.greatest, 0x1p-10L) : 1;
        loose += arm * (input.greatest - input.least);
    }
    fine_ = std::fmax(kRounding, kPart * static_cast<double>(loose));
    constexpr double kWidest = std::numbers::pi / 4;
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
        const Piece& piece = pieces_[i];
        const Sector& second = piece.unknown[1 - firstIs_].sector;
        const std::vector<Sector> seconds =
            piece.hasSecond ? slicesOf(second, kWidest) : std::vector<Sector>(1);
        for (const Sector& firstSlice : slicesOf(piece.unknown[firstIs_].sector, kWidest)) {
            for (const Sector& secondSlice : seconds) {
                Cell cell;
                cell.piece = i;
                cell.first = firstSlice;
                cell.second = secondSlice;
                if (narrow(cell)) {
                    cells_.push_back(cell);
                }
            }
        }
    }
}

// Halves the widest directions of the unknown vectors, so that all searches start from what is left.
void Search::refine(int boxes) {
    constexpr double kFine = std::numbers::pi / 60;
    const auto secondWidth = [](const Cell& cell) {
        return cell.second.isEndless() ? 0 : cell.second.width();
    };
    const auto widthOf = [&](const Cell& cell) { return std::max(cell.first.width(), secondWidth(cell)); };
    for (int i = 0; i < boxes; ++i) {
        const auto widest = std::max_element(cells_.begin(), cells_.end(), [&](const Cell& a, const Cell& b) {
            return widthOf(a) < widthOf(b);
        });
        if (widest == cells_.end() || widthOf(*widest) < kFine) {
            return;
        }
        Cell other = *widest;
        Sector Cell::*part = widest->first.width() >= secondWidth(*widest) ? &Cell::first : &Cell::second;
        other.*part = (*widest.*part).half(true);
        *widest.*part = (*widest.*part).half(false);
        const bool keepsOther = narrow(other);
        if (!narrow(*widest)) {
            cells_.erase(widest);
        }
        if (keepsOther) {
            cells_.push_back(other);
        }
    }
}

std::vector<Cell> Search::split(Goal goal, const Cell& cell, int which) {
    std::vector<Cell> made;
    for (const bool upper : {false, true}) {
        Cell part = cell;
        if (which == kSecond) {
            part.second = cell.second.half(upper);
        } else if (which == kFirst) {
            part.first = cell.first.half(upper);
        } else {
            std::vector<Sector> sectors = known_[cell.known];
            Sector& own = sectors[static_cast<std::size_t>(which)];
            own = own.half(upper);
            known_.push_back(std::move(sectors));
            part.known = known_.size() - 1;
        }
        if (narrow(part)) {
            part.bound = std::min(cell.bound, boundOf(goal, part));
            made.push_back(part);
        }
    }
    return made;
}

// Whether the vector is next to nothing in it, by no more than rounding: such a one has no direction.
bool Search::isNothing(const Cell& cell) const {
    return cell.first.greatest <= 64 * problem_.slack && best_[static_cast<std::size_t>(Goal::to)].isThere;
}

double Search::width(Goal goal) const {
    const std::size_t i = static_cast<std::size_t>(goal);
    const Best& one = best_[i];
    const Best& other = best_[i ^ 1];
    if (!one.isThere || !other.isThere) {
        return 0;
    }
    const double sum = static_cast<double>(one.value + other.value);
    return isOfDirection(goal) ? sum - kTurn : sum;
}

bool Search::mayBe(bool flipped) const {
    return std::any_of(cells_.begin(), cells_.end(), [&](const Cell& cell) {
        return pieces_[cell.piece].unknown[firstIs_].flipped == flipped;
    });
}

/// Cells by their bounds, the greatest first. A bound that costs nothing comes first: most are never asked
/// for more.
class Search::Open {
public:
    Open(const Search& search, Goal goal) : search_(search), goal_(goal) {
        for (Cell cell : search.cells_) {
            cell.bound = search.quickBound(goal, cell);
            cell.isQuick = true;
            push(cell);
        }
        settle();
    }
    bool isEmpty() const { return cells_.empty(); }
    double bound() const { return isEmpty() ? -kNever : cells_.top().bound; }
    Cell pop() {
        const Cell cell = cells_.top();
        cells_.pop();
        return cell;
    }
    void add(const std::vector<Cell>& parts) {
        for (const Cell& part : parts) {
            push(part);
        }
        settle();
    }

private:
    struct Below {
        bool operator()(const Cell& a, const Cell& b) const { return a.bound < b.bound; }
    };
    void push(const Cell& cell) {
        if (!isOfDirection(goal_) || !search_.isNothing(cell)) {
            cells_.push(cell);
        }
    }
    void settle() {
        while (!isEmpty() && cells_.top().isQuick) {
            Cell cell = pop();
            cell.bound = std::min(cell.bound, search_.boundOf(goal_, cell));
            cell.isQuick = false;
            cells_.push(cell);
        }
    }

    const Search& search_;
    Goal goal_;
    std::priority_queue<Cell, std::vector<Cell>, Below> cells_;
};

// What is left of a cell's looseness where it is as thin as can be.
double Search::thinnestOf(Goal goal, const Cell& cell) const {
    const double size = isOfDirection(goal) ? std::min(cell.first.greatest, 1e6) : 1;
    return std::max(coarse_, 1e-7 * width(goal) * size + problem_.slack);
}

// Whether the bound of a cell as thin as can be is true: a point reaches it, or at least no hollow side is to
// blame that none does. Else `loose` says where to halve it.
bool Search::isTrue(Goal goal, double bound, const Cell& cell, bool thoroughly, Looseness& loose) {
    if (coarse_ == 0 && isReached(goal, bound, cell, thoroughly)) {
        return true;
    }
    const Looseness doubt = doubtOf(goal, cell);
    if (doubt.total <= thinnestOf(goal, cell)) {
        return true;
    }
    loose = doubt;
    return false;
}

Extreme Search::run(Goal goal, int boxes) {
    Open open(*this, goal);
    const Best& best = best_[static_cast<std::size_t>(goal)];
    const double cap = caps_[static_cast<std::size_t>(goal)];
    double bound = std::min(cap, open.bound());
    bool tight = false, isFirst = true;
    for (int i = 0; i < boxes && !open.isEmpty(); ++i) {
        const Cell cell = open.pop();
        if (coarse_ == 0 && (i < 16 || i % 4 == 0)) {
            tryCell(goal, cell, i >= 64 && (i & (i - 1)) == 0);
        }
        if (coarse_ == 0 && i % 8 == 5 && boxes >= kThorough) {
            tryVector(cell, farthestOf(goal, cell));
        }
        const double gap = best.isThere ? bound - static_cast<double>(best.value) : kNever;
        const double share = i * 4 >= boxes || bound == cap ? kEnough : 1e-9;
        Looseness loose = loosenessOf(goal, cell);
        const bool isThin = bound != kNever && loose.total <= thinnestOf(goal, cell);
        if (isThin && coarse_ == 0 && boxes < kThorough) {
            tight = gap <= kEnough * width(goal);
            break;
        }
        tight = isThin && isTrue(goal, bound, cell, std::exchange(isFirst, isFirst && !isThin), loose);
        if (tight || gap <= share * width(goal) + 4 * problem_.slack || (best.isThere && best.value > kFar) ||
            loose.most == 0) {
            break;
        }
        open.add(split(goal, cell, loose.which));
        bound = std::min(cap, open.bound());
    }
    known_.resize(1);
    return ended(goal, bound, tight);
}

Extreme Search::ended(Goal goal, double bound, bool isTight) {
    const Best& best = best_[static_cast<std::size_t>(goal)];
    if (goal == Goal::leastMagnitude && bound >= 0 && coarse_ == 0) {
        tryClosed();
    }
    bool isTop = false;
    const double room = best.isThere ? bound - static_cast<double>(best.value) : kNever;
    if (room > 8 * problem_.slack && room <= 1e-6 * width(goal)) {
        settle(goal);
        isTop = isSettled(goal);
    }
    const double outer = best.isThere ? std::max(bound, static_cast<double>(best.value)) : bound;
    return {outer, isTight, isTop, best.isThere && best.value > kFar, best};
}

void Search::cap(Goal goal, double bound, Pt vector) {
    caps_[static_cast<std::size_t>(goal)] = bound;
    for (std::size_t i = 0; i < pieces_.size() && coarse_ == 0; ++i) {
        Cell whole;
        whole.piece = i;
        whole.first = pieces_[i].unknown[firstIs_].sector;
        whole.second = pieces_[i].unknown[1 - firstIs_].sector;
        tryVector(whole, vector);
    }
}

void Search::findGap(int boxes) {
    refine(boxes);
    std::vector<std::pair<double, double>> arcs;
    for (const Cell& cell : cells_) {
        const double from = cell.first.from - std::floor(cell.first.from / kTurn) * kTurn;
        arcs.emplace_back(from, from + cell.first.width());
    }
    std::sort(arcs.begin(), arcs.end());
    double widest = 0;
    double reached = arcs.empty() ? 0 : arcs.front().first;
    const auto gap = [&](double next) {
        if (next - reached > widest) {
            widest = next - reached;
            base_ = (next + reached) / 2;
        }
    };
    for (const auto& [from, to] : arcs) {
        gap(from);
        reached = std::max(reached, to);
    }
    if (!arcs.empty()) {
        gap(arcs.front().first + kTurn);
    }
    hasGap_ = widest > 1e-9;
    for (std::size_t i = 0; i < kGoals; ++i) {
        if (isOfDirection(static_cast<Goal>(i))) {
            best_[i] = {};
        }
    }
    for (const Best& best : std::array(best_)) {
        if (best.isThere) {
            tryPoint(best.piece, best.point);
        }
    }
    if (coarse_ == 0) {
        tryCorners();
    }
}

} // namespace tailpoint::tolerance
