#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <numbers>
#include <queue>

namespace tailpoint::tolerance {
namespace {

constexpr double kTurn = 2 * std::numbers::pi;
/// Directions closer than this are one; nothing is halved below it.
constexpr double kThinnest = 1e-14;

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

// The part of `sector` that lies within from..to, whole turns apart; false: none. Where two parts would, all
// of it.
bool cut(Sector& sector, double from, double to) {
    if (to - from >= kTurn) {
        return true;
    }
    constexpr double kRoom = 1e-15 * 8;
    int parts = 0;
    double low = 0, high = 0;
    const double start = std::floor((sector.from - to) / kTurn) * kTurn;
    for (int i = 0; i < 4; ++i) {
        const double a = std::max(sector.from, from + start + i * kTurn - kRoom);
        const double b = std::min(sector.to, to + start + i * kTurn + kRoom);
        if (a <= b) {
            ++parts;
            low = a;
            high = b;
        }
    }
    if (parts != 1) {
        return parts != 0;
    }
    if (low != sector.from) {
        sector.from = low;
        sector.atFrom = unitAt(low);
    }
    if (high != sector.to) {
        sector.to = high;
        sector.atTo = unitAt(high);
    }
    return true;
}

struct Probe {
    double t = 0, value = 0, slope = 0;
};

/// Walks down a support function, which is convex, along a line of directions: brackets its lowest place and
/// cuts it by the slopes at both ends. Each direction that was looked at is handed to `use`, which ends the
/// walk by returning true: any of them proves something.
template <class Support, class Use>
void descend(const Line2& line, const Support& support, const Use& use) {
    bool ended = false;
    const auto at = [&](double t) {
        const Pt y = line.base + t * line.step;
        Pt point;
        Probe probe{t, support(y, point), 0};
        probe.slope = dot(point, line.step);
        ended = use(y, probe.value);
        return probe;
    };
    Probe left = at(std::clamp(0.0, line.low, line.high));
    if (ended || left.slope == 0 || left.value == kNever) {
        return;
    }
    const double sense = left.slope < 0 ? 1 : -1;
    Probe right = left;
    double stride = 0.25;
    for (int i = 0; i < 18; ++i, stride *= 4) {
        const double t = std::clamp(left.t + sense * stride, line.low, line.high);
        if (t == left.t) {
            return; // the lowest place is where the line ends
        }
        right = at(t);
        if (ended) {
            return;
        }
        if (right.value == kNever || right.slope * sense >= 0) {
            break;
        }
        left = right;
    }
    if (right.value == kNever || right.slope * sense <= 0) {
        return;
    }
    if (sense < 0) {
        std::swap(left, right);
    }
    for (int i = 0; i < 40; ++i) {
        const double t = (right.value - left.value + left.slope * left.t - right.slope * right.t) /
                         (left.slope - right.slope);
        if (!(t > left.t && t < right.t)) {
            return;
        }
        const double predicted = left.value + left.slope * (t - left.t);
        const Probe middle = at(t);
        if (ended || middle.slope == 0 || middle.value - predicted <= 1e-15 * (1 + std::fabs(t))) {
            return;
        }
        (middle.slope < 0 ? left : right) = middle;
    }
}

} // namespace

Search::Search(const Problem& problem, const std::vector<Piece>& pieces, std::size_t first)
    : problem_(problem), pieces_(pieces), firstIs_(first) {
    known_.push_back(problem.sectors);
    start();
    tryCorners();
    refine(48);
}

void Search::start() {
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
    constexpr double kFine = std::numbers::pi / 90;
    for (int i = 0; i < boxes; ++i) {
        const auto widest = std::max_element(cells_.begin(), cells_.end(), [](const Cell& a, const Cell& b) {
            return a.first.width() < b.first.width();
        });
        if (widest == cells_.end() || widest->first.width() < kFine) {
            return;
        }
        Cell other = *widest;
        other.first = widest->first.half(true);
        widest->first = widest->first.half(false);
        const bool keepsOther = narrow(other);
        if (!narrow(*widest)) {
            cells_.erase(widest);
        }
        if (keepsOther) {
            cells_.push_back(other);
        }
    }
}

Total Search::totalOf(const Cell& cell) const {
    const bool hasSecond = pieces_[cell.piece].hasSecond;
    return {{static_cast<double>(problem_.fixed.x), static_cast<double>(problem_.fixed.y)},
            &known_[cell.known],
            hasSecond ? &cell.second : nullptr,
            problem_.slack};
}

bool Search::relate(Cell& cell) const {
    const Piece& piece = pieces_[cell.piece];
    if (!piece.hasSecond || piece.relation.any) {
        return true;
    }
    const double low = firstIs_ == 0 ? piece.relation.low : -piece.relation.high;
    const double high = firstIs_ == 0 ? piece.relation.high : -piece.relation.low;
    return cut(cell.second, cell.first.from + low, cell.first.to + high) &&
           cut(cell.first, cell.second.from - high, cell.second.to - low);
}

bool Search::narrow(Cell& cell) const {
    return relate(cell) && boundMost(cell) && boundLeast(cell) && cell.first.least <= cell.first.greatest;
}

// v of magnitude m along u closes the rest: for any y the rest's support is at least -m u.y. Along y = -u it
// bounds m from above.
bool Search::boundMost(Cell& cell) const {
    const Total total = totalOf(cell);
    const Pt middle = unitAt(cell.first.middle());
    Line2 line{-middle, leftOf(middle)};
    if (total.second != nullptr && total.second->isEndless()) {
        line = within(line, *total.second);
    }
    if (line.isEmpty()) {
        return true;
    }
    bool possible = true;
    double most = kNever, lowest = kNever;
    const auto use = [&](Pt y, double value) {
        const double reach = std::min(-dot(y, cell.first.atFrom), -dot(y, cell.first.atTo));
        const double sure = reach - 1e-15 * std::hypot(y.x, y.y);
        possible = possible && !(value < 0 && sure >= 0);
        if (value < lowest) {
            lowest = value;
        }
        if (sure > 0 && value / sure < most) {
            most = value / sure;
            cell.towardMost = y;
        }
        return !possible;
    };
    descend(
        line, [&](Pt y, Pt& point) { return total.support(y, point); }, use);
    cell.most = lowest;
    cell.first.greatest = std::min(cell.first.greatest, most);
    return possible;
}

bool Search::boundLeast(Cell& cell) const {
    const Total total = totalOf(cell);
    const Pt middle = unitAt(cell.first.middle());
    Line2 line{middle, leftOf(middle)};
    if (total.second != nullptr && total.second->isEndless()) {
        line = within(line, *total.second);
    }
    if (line.isEmpty()) {
        return true;
    }
    double least = cell.first.least;
    cell.towardLeast = middle;
    const auto use = [&](Pt y, double value) {
        Pt point;
        Sector ring{1, 1, cell.first.from, cell.first.to, cell.first.atFrom, cell.first.atTo};
        const double reach = ring.support(y, point) + 1e-15 * std::hypot(y.x, y.y);
        if (value < 0 && -value / reach > least) {
            least = -value / reach;
            cell.towardLeast = y;
        }
        return least > cell.first.greatest;
    };
    descend(
        line, [&](Pt y, Pt& point) { return total.support(y, point); }, use);
    cell.first.least = least;
    return least <= cell.first.greatest;
}

double Search::componentBound(Pt along, const Cell& cell) const {
    Pt point;
    const Sector ring{1, 1, cell.first.from, cell.first.to, cell.first.atFrom, cell.first.atTo};
    const double cosine = ring.support(along, point);
    double bound = cosine > 0 ? (cell.first.isEndless() ? kNever : cell.first.greatest * cosine)
                              : cell.first.least * cosine;
    const Total total = totalOf(cell);
    Line2 line{-along, leftOf(unitAt(cell.first.middle()))};
    if (total.second != nullptr && total.second->isEndless()) {
        line = within(line, *total.second);
    }
    if (cell.first.width() < kThinnest || line.isEmpty()) {
        return bound;
    }
    const auto support = [&](Pt y, Pt& where) {
        Pt own;
        const double rest = total.support(y, where);
        const Pt side = along + y;
        const double mine = std::hypot(side.x, side.y) < 1e-15 ? 0.0 : cell.first.support(side, own);
        where = where + own;
        return rest + mine;
    };
    descend(line, support, [&](Pt, double value) {
        bound = std::min(bound, value);
        return false;
    });
    return bound;
}

Search::Bounds Search::boundOf(Goal goal, const Cell& cell) const {
    const double width = cell.first.width();
    const double size = std::min(cell.first.greatest, 1e6);
    switch (goal) {
    case Goal::greatestMagnitude:
        return {cell.first.greatest, cell.first.greatest - cell.most};
    case Goal::leastMagnitude:
        return {-cell.first.least, size * width * width / 8};
    case Goal::from:
        return {kTurn - std::remainder(cell.first.from - base_ - kTurn / 2, kTurn) - kTurn / 2, width * size};
    case Goal::to:
        return {std::remainder(cell.first.to - base_ - kTurn / 2, kTurn) + kTurn / 2, width * size};
    default:
        break;
    }
    const double sign = isGreatest(goal) ? 1 : -1;
    const Pt along = goal == Goal::leastX || goal == Goal::greatestX ? Pt{sign, 0} : Pt{0, sign};
    return {componentBound(along, cell), size * width / 8};
}

// How far a sector's inner side lies within the straight line across it, where that is what counts.
double Search::hollow(const Sector& sector, Pt toward) const {
    if (sector.least == 0 || sector.width() < kThinnest || !sector.faces(-toward)) {
        return 0;
    }
    return sector.least * (1 - std::cos(std::min(sector.width() / 2, kTurn / 4))) *
           std::min(std::hypot(toward.x, toward.y), 1e3);
}

std::optional<std::vector<Cell>> Search::split(Goal goal, const Cell& cell) {
    double widest = cell.first.width() < kThinnest ? 0 : boundOf(goal, cell).gap;
    int which = -1; // the first
    const bool both = goal != Goal::greatestMagnitude && goal != Goal::leastMagnitude;
    const auto score = [&](const Sector& sector) {
        const double most = goal == Goal::leastMagnitude ? 0 : hollow(sector, cell.towardMost);
        const double least = goal == Goal::greatestMagnitude && !both ? 0 : hollow(sector, cell.towardLeast);
        return std::max(most, least);
    };
    for (std::size_t i = 0; i < known_[cell.known].size(); ++i) {
        if (const double gap = score(known_[cell.known][i]); gap > widest) {
            widest = gap;
            which = static_cast<int>(i);
        }
    }
    const bool second = pieces_[cell.piece].hasSecond && score(cell.second) > widest;
    if (!second && which < 0 && cell.first.width() < kThinnest) {
        return std::nullopt;
    }
    std::vector<Cell> made;
    for (const bool upper : {false, true}) {
        Cell part = cell;
        if (second) {
            part.second = cell.second.half(upper);
        } else if (which < 0) {
            part.first = cell.first.half(upper);
        } else {
            std::vector<Sector> sectors = known_[cell.known];
            sectors[static_cast<std::size_t>(which)] = sectors[static_cast<std::size_t>(which)].half(upper);
            known_.push_back(std::move(sectors));
            part.known = known_.size() - 1;
        }
        if (narrow(part)) {
            part.bound = std::min(cell.bound, boundOf(goal, part).value);
            made.push_back(part);
        }
    }
    return made;
}

long double Search::valueOf(Goal goal, const Tips& tips) const {
    const Tip& tip = tips[firstIs_];
    const long double turned = std::remainder(std::atan2(tip.unit.y, tip.unit.x) - base_ - kTurn / 2,
                                              static_cast<long double>(kTurn)) +
                               kTurn / 2;
    switch (goal) {
    case Goal::leastMagnitude:
        return -tip.magnitude;
    case Goal::greatestMagnitude:
        return tip.magnitude;
    case Goal::leastX:
        return -tip.magnitude * tip.unit.x;
    case Goal::greatestX:
        return tip.magnitude * tip.unit.x;
    case Goal::leastY:
        return -tip.magnitude * tip.unit.y;
    case Goal::greatestY:
        return tip.magnitude * tip.unit.y;
    case Goal::from:
        return kTurn - turned;
    case Goal::to:
        break;
    }
    return turned;
}

void Search::tryPoint(std::size_t piece, const Point& point) {
    const std::optional<Tips> tips = tipsAt(problem_, pieces_[piece], point);
    if (!tips) {
        return;
    }
    for (std::size_t i = 0; i < kGoals; ++i) {
        const Goal goal = static_cast<Goal>(i);
        if (isOfDirection(goal) && (*tips)[firstIs_].magnitude == 0) {
            continue;
        }
        const long double value = valueOf(goal, *tips);
        if (!best_[i].isThere || value > best_[i].value) {
            best_[i] = {true, value, point, piece};
        }
    }
}

void Search::tryToward(const Cell& cell, Pt toward, double direction) {
    const Piece& piece = pieces_[cell.piece];
    Point point = problem_.nominal();
    const std::vector<Sector>& known = known_[cell.known];
    const Unknown& first = piece.unknown[firstIs_];
    const Sector own{cell.first.least, cell.first.least,  direction,
                     direction,        unitAt(direction), unitAt(direction)};
    problem_.place(point, first.vector, own, toward, problem_.turnedOf(first.vector, first.flipped));
    if (const int input = problem_.inputOf[first.vector][0]; input >= 0) {
        const Input& range = problem_.inputs[static_cast<std::size_t>(input)];
        const long double middle = (static_cast<long double>(cell.first.least) + cell.first.greatest) / 2;
        point[static_cast<std::size_t>(input)] = std::clamp(middle, range.least, range.greatest);
    }
    if (piece.hasSecond) {
        const Unknown& second = piece.unknown[1 - firstIs_];
        problem_.place(point, second.vector, cell.second, toward,
                       problem_.turnedOf(second.vector, second.flipped));
    }
    bool hollowed = false;
    for (std::size_t i = 0; i < known.size(); ++i) {
        problem_.place(point, problem_.loose[i], known[i], toward, problem_.turnedOf(problem_.loose[i]));
        hollowed = hollowed || hollow(known[i], toward) > 0;
    }
    tryPoint(cell.piece, point);
    if (hollowed) {
        for (std::size_t i = 0; i < known.size(); ++i) {
            problem_.place(point, problem_.loose[i], known[i], toward, problem_.turnedOf(problem_.loose[i]),
                           hollow(known[i], toward) > 0);
        }
        tryPoint(cell.piece, point);
    }
}

void Search::tryCell(Goal goal, const Cell& cell) {
    const bool most = goal != Goal::leastMagnitude;
    const bool least = goal != Goal::greatestMagnitude;
    const bool given = cell.first.width() > 0 && pieces_[cell.piece].unknown[firstIs_].isLine;
    for (const double direction : given ? std::vector<double>{cell.first.from, cell.first.to}
                                        : std::vector<double>{cell.first.middle()}) {
        if (most) {
            tryToward(cell, cell.towardMost, direction);
        }
        if (least) {
            tryToward(cell, cell.towardLeast, direction);
        }
    }
}

// For each goal the corner to which every input by itself leads from the nominal values.
void Search::tryCorners() {
    for (std::size_t piece = 0; piece < pieces_.size(); ++piece) {
        const Point nominal = problem_.nominal();
        tryPoint(piece, nominal);
        const std::optional<Tips> middle = tipsAt(problem_, pieces_[piece], nominal);
        if (!middle) {
            continue;
        }
        std::array<Point, kGoals> corners;
        corners.fill(nominal);
        for (std::size_t i = 0; i < problem_.inputs.size() && i < 64; ++i) {
            for (const long double end : {problem_.inputs[i].least, problem_.inputs[i].greatest}) {
                Point moved = nominal;
                moved[i] = end;
                const std::optional<Tips> tips = tipsAt(problem_, pieces_[piece], moved);
                for (std::size_t g = 0; tips && g < kGoals; ++g) {
                    const Goal goal = static_cast<Goal>(g);
                    corners[g][i] = valueOf(goal, *tips) > valueOf(goal, *middle) ? end : corners[g][i];
                }
            }
        }
        for (const Point& corner : corners) {
            tryPoint(piece, corner);
        }
    }
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

Extreme Search::run(Goal goal, int boxes) {
    constexpr double kFar = 0x1p30;
    const auto below = [](const Cell& a, const Cell& b) { return a.bound < b.bound; };
    std::priority_queue<Cell, std::vector<Cell>, decltype(below)> queue(below);
    for (Cell cell : cells_) {
        cell.bound = boundOf(goal, cell).value;
        queue.push(cell);
    }
    const Best& best = best_[static_cast<std::size_t>(goal)];
    double bound = queue.empty() ? -kNever : queue.top().bound;
    for (int i = 0; i < boxes && !queue.empty(); ++i) {
        const Cell cell = queue.top();
        queue.pop();
        tryCell(goal, cell);
        const double gap = best.isThere ? bound - static_cast<double>(best.value) : kNever;
        const double share = i * 4 >= boxes ? kEnough : 1e-9;
        if (gap <= share * width(goal) + 4 * problem_.slack || (best.isThere && best.value > kFar)) {
            break;
        }
        const std::optional<std::vector<Cell>> parts = split(goal, cell);
        if (!parts) {
            break;
        }
        for (const Cell& part : *parts) {
            queue.push(part);
        }
        bound = queue.empty() ? -kNever : queue.top().bound;
    }
    known_.resize(1);
    const double outer = best.isThere ? std::max(bound, static_cast<double>(best.value)) : bound;
    return {outer, best.isThere && best.value > kFar, best};
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
    tryCorners();
}

} // namespace tailpoint::tolerance
