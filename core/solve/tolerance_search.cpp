#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <limits>
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
    refine(96);
}

Search::Search(const Problem& problem, const std::vector<Piece>& pieces, std::size_t first, double coarse)
    : problem_(problem), pieces_(pieces), firstIs_(first), coarse_(coarse) {
    known_.push_back(problem.sectors);
    start();
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
        const double sure = reach - 1e-15 * lengthOf(y);
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
    double least = -kNever;
    cell.towardLeast = middle;
    const auto use = [&](Pt y, double value) {
        Pt point;
        Sector ring{1, 1, cell.first.from, cell.first.to, cell.first.atFrom, cell.first.atTo};
        const double reach = ring.support(y, point) + 1e-15 * lengthOf(y);
        if (reach > 0 && -value / reach > least) {
            least = -value / reach;
            cell.towardLeast = y;
        }
        return least > cell.first.greatest;
    };
    descend(
        line, [&](Pt y, Pt& point) { return total.support(y, point); }, use);
    cell.first.least = std::max(cell.first.least, least);
    return cell.first.least <= cell.first.greatest;
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
        const double mine = lengthOf(side) < 1e-15 ? 0.0 : cell.first.support(side, own);
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
           std::min(lengthOf(toward), 1e3);
}

// What halving could take off a cell's bound, and where most of it. The cell's own direction counts in full for
// directions and components, and where the second vector is tied to it.
Search::Looseness Search::loosenessOf(Goal goal, const Cell& cell) const {
    Looseness loose;
    loose.most = cell.first.width() < kThinnest ? 0 : boundOf(goal, cell).gap;
    loose.total = cell.first.width() * std::min(cell.first.greatest, 1e6);
    const bool asMost = goal != Goal::leastMagnitude;
    const bool asLeast = goal != Goal::greatestMagnitude;
    const auto add = [&](const Sector& sector, int which) {
        const double gap = std::max(asMost ? hollow(sector, cell.towardMost) : 0,
                                    asLeast ? hollow(sector, cell.towardLeast) : 0);
        loose.total += gap;
        if (gap > loose.most) {
            loose.most = gap;
            loose.which = which;
        }
    };
    for (std::size_t i = 0; i < known_[cell.known].size(); ++i) {
        add(known_[cell.known][i], static_cast<int>(i));
    }
    if (pieces_[cell.piece].hasSecond) {
        add(cell.second, kSecond);
    }
    return loose;
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
            part.bound = std::min(cell.bound, boundOf(goal, part).value);
            made.push_back(part);
        }
    }
    return made;
}

long double Search::valueOf(Goal goal, const Tips& tips) const {
    const Tip& tip = tips[firstIs_];
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
    default:
        break;
    }
    const long double turned =
        std::remainder(std::atan2(tip.unit.y, tip.unit.x) - base_ - kTurn / 2, static_cast<long double>(kTurn)) +
        kTurn / 2;
    return goal == Goal::to ? turned : kTurn - turned;
}

bool Search::tryPoint(std::size_t piece, const Point& point) {
    const std::optional<Tips> tips = tipsAt(problem_, pieces_[piece], point);
    if (!tips) {
        return false;
    }
    for (std::size_t i = 0; i < kGoals; ++i) {
        const Goal goal = static_cast<Goal>(i);
        if (isOfDirection(goal) && (!hasGap_ || (*tips)[firstIs_].magnitude == 0)) {
            continue;
        }
        const long double value = valueOf(goal, *tips);
        if (!best_[i].isThere || value > best_[i].value) {
            best_[i] = {true, value, point, piece};
        }
    }
    return true;
}

// From a point with an answer toward one without: the last that has one. There a circle is touched, or a line
// is slack.
void Search::tryUpTo(std::size_t piece, const Point& from, const Point& toward) {
    Point point = from;
    long double reached = 0;
    for (long double step = 0.5L; step > 0x1p-56L; step /= 2) {
        for (std::size_t i = 0; i < point.size(); ++i) {
            point[i] = from[i] + (reached + step) * (toward[i] - from[i]);
        }
        reached += tipsAt(problem_, pieces_[piece], point) ? step : 0;
    }
    for (std::size_t i = 0; i < point.size(); ++i) {
        point[i] = from[i] + reached * (toward[i] - from[i]);
    }
    tryPoint(piece, point);
}

// A point without an answer that all but has one: each input is moved by itself to where it has.
void Search::tryNextTo(Goal goal, std::size_t piece, const Point& point) {
    constexpr int kMost = 6;
    int tried = 0;
    for (std::size_t i = 0; i < point.size() && tried < kMost; ++i) {
        for (const long double end : {problem_.inputs[i].least, problem_.inputs[i].greatest}) {
            Point other = point;
            other[i] = end;
            if (end != point[i] && tipsAt(problem_, pieces_[piece], other)) {
                tryUpTo(piece, other, point);
                ++tried;
            }
        }
    }
    const Best& best = best_[static_cast<std::size_t>(goal)];
    if (tried == 0 && best.isThere && best.piece == piece) {
        tryUpTo(piece, Point(best.point), point);
    }
}

// Every input as it leads farthest along `toward`, within the cell.
Point Search::pointToward(const Cell& cell, Pt toward, double direction, bool inner) const {
    const Piece& piece = pieces_[cell.piece];
    const std::vector<Sector>& known = known_[cell.known];
    const Unknown& first = piece.unknown[firstIs_];
    const Pt unit = unitAt(direction);
    const Sector own{cell.first.least, cell.first.least, direction, direction, unit, unit};
    Point point = problem_.nominal();
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
    for (std::size_t i = 0; i < known.size(); ++i) {
        problem_.place(point, problem_.loose[i], known[i], toward, problem_.turnedOf(problem_.loose[i]),
                       inner && hollow(known[i], toward) > 0);
    }
    return point;
}

void Search::tryToward(Goal goal, const Cell& cell, Pt toward, double direction, bool upTo) {
    const Point point = pointToward(cell, toward, direction, false);
    const bool hasAnswer = tryPoint(cell.piece, point);
    const std::vector<Sector>& known = known_[cell.known];
    if (std::any_of(known.begin(), known.end(), [&](const Sector& each) { return hollow(each, toward) > 0; })) {
        tryPoint(cell.piece, pointToward(cell, toward, direction, true));
    }
    if (!upTo) {
        return;
    }
    // Where the proof is sharpest the farthest points change from one to another: between them the vectors close.
    for (const double turn : {1e-7, 1e-3}) {
        const Point left = pointToward(cell, toward + turn * leftOf(toward), direction, false);
        const Point right = pointToward(cell, toward + (-turn) * leftOf(toward), direction, false);
        const bool leftHas = tryPoint(cell.piece, left);
        if (leftHas != tryPoint(cell.piece, right)) {
            tryUpTo(cell.piece, leftHas ? left : right, leftHas ? right : left);
        }
    }
    if (!hasAnswer) {
        tryNextTo(goal, cell.piece, point);
    }
}

void Search::tryCell(Goal goal, const Cell& cell, bool upTo) {
    const bool most = goal != Goal::leastMagnitude;
    const bool least = goal != Goal::greatestMagnitude;
    const bool given = cell.first.width() > 0 && pieces_[cell.piece].unknown[firstIs_].isLine;
    for (const double direction : given ? std::vector<double>{cell.first.from, cell.first.to}
                                        : std::vector<double>{cell.first.middle()}) {
        if (most) {
            tryToward(goal, cell, cell.towardMost, direction, upTo);
        }
        if (least) {
            tryToward(goal, cell, cell.towardLeast, direction, upTo);
        }
    }
}

// Two lines that can be parallel within their tolerances: hair's breadths to both sides of it the magnitudes are
// beyond all bounds, in the senses of one side.
void Search::tryAllButParallel(std::size_t piece) {
    constexpr long double kHair = 0x1p-40L;
    const auto& [first, second] = pieces_[piece].unknown;
    const int one = problem_.inputOf[first.vector][1], two = problem_.inputOf[second.vector][1];
    if (pieces_[piece].rule != Rule::lines || (one < 0 && two < 0)) {
        return;
    }
    const bool firstMoves = one >= 0;
    const Input& moved = problem_.inputs[static_cast<std::size_t>(firstMoves ? one : two)];
    const std::size_t other = firstMoves ? second.vector : first.vector;
    const Arc& arc = problem_.box.vectors[other].direction;
    for (const long double at : {arc.from, arc.nominal, arc.to, moved.least, moved.nominal, moved.greatest}) {
        for (const long double hair : {-kHair, kHair}) {
            Point point = problem_.nominal();
            const long double middle = (moved.least + moved.greatest) / 2;
            const long double to = middle + std::remainder(at + hair - middle, kHalfTurn);
            const long double from = (arc.from + arc.to) / 2 + std::remainder(at - (arc.from + arc.to) / 2, kHalfTurn);
            point[static_cast<std::size_t>(firstMoves ? one : two)] = to;
            const int otherInput = firstMoves ? two : one;
            if (otherInput >= 0) {
                point[static_cast<std::size_t>(otherInput)] = from;
            }
            if (to >= moved.least && to <= moved.greatest && from >= arc.from && from <= arc.to) {
                tryPoint(piece, point);
            }
        }
    }
}

// For each goal the corner to which every input by itself leads from the nominal values.
void Search::tryCorners() {
    for (std::size_t piece = 0; piece < pieces_.size(); ++piece) {
        const Point nominal = problem_.nominal();
        tryPoint(piece, nominal);
        tryAllButParallel(piece);
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
                for (std::size_t g = 0; tips && g < (hasGap_ ? kGoals : 6); ++g) {
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

// The value with one input of the best point moved; none where there is no answer.
long double Search::valueWith(Goal goal, std::size_t input, long double value) const {
    const Best& best = best_[static_cast<std::size_t>(goal)];
    Point point = best.point;
    point[input] = value;
    const std::optional<Tips> tips = tipsAt(problem_, pieces_[best.piece], point);
    return tips ? valueOf(goal, *tips) : std::numeric_limits<long double>::quiet_NaN();
}

// Each input by itself: to its ends, and within them to the top of a parabola through three points.
void Search::settle(Goal goal) {
    const Best& best = best_[static_cast<std::size_t>(goal)];
    const auto attempt = [&](std::size_t input, long double value) {
        Point point = best.point;
        point[input] = value;
        tryPoint(best.piece, point);
    };
    for (int sweep = 0; sweep < 3; ++sweep) {
        for (std::size_t i = 0; i < problem_.inputs.size(); ++i) {
            const Input& input = problem_.inputs[i];
            attempt(i, input.least);
            attempt(i, input.greatest);
            const long double at = best.point[i];
            const long double step = std::fmin(std::fmin(at - input.least, input.greatest - at),
                                               (input.greatest - input.least) / 1024);
            const long double below = valueWith(goal, i, at - step), above = valueWith(goal, i, at + step);
            const long double bend = 2 * best.value - below - above;
            if (step > 0 && bend > 0) {
                attempt(i, std::clamp(at + step * (above - below) / (2 * bend), input.least, input.greatest));
            }
        }
    }
}

// Whether no input by itself leads farther, and all lead somewhere.
bool Search::isSettled(Goal goal) const {
    const Best& best = best_[static_cast<std::size_t>(goal)];
    for (std::size_t i = 0; i < problem_.inputs.size(); ++i) {
        const Input& input = problem_.inputs[i];
        for (const long double step : {(input.greatest - input.least) / 4096, (input.least - input.greatest) / 4096}) {
            const long double at = std::clamp(best.point[i] + step, input.least, input.greatest);
            if (at != best.point[i] && !(valueWith(goal, i, at) <= best.value)) {
                return false;
            }
        }
    }
    return true;
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
    bool isTight = false;
    for (int i = 0; i < boxes && !queue.empty(); ++i) {
        const Cell cell = queue.top();
        queue.pop();
        if (coarse_ == 0) {
            tryCell(goal, cell, i >= 64 && (i & (i - 1)) == 0);
        }
        const double gap = best.isThere ? bound - static_cast<double>(best.value) : kNever;
        const double share = i * 4 >= boxes ? kEnough : 1e-9;
        const Looseness loose = loosenessOf(goal, cell);
        const double size = isOfDirection(goal) ? std::min(cell.first.greatest, 1e6) : 1;
        isTight = bound != kNever && loose.total <= std::max(coarse_, 1e-7 * width(goal) * size + problem_.slack);
        if (isTight && coarse_ == 0 && gap > kEnough * width(goal)) {
            tryCell(goal, cell, true);
        }
        if (isTight || gap <= share * width(goal) + 4 * problem_.slack ||
            (best.isThere && best.value > kFar) || loose.most == 0) {
            break;
        }
        for (const Cell& part : split(goal, cell, loose.which)) {
            queue.push(part);
        }
        bound = queue.empty() ? -kNever : queue.top().bound;
    }
    known_.resize(1);
    bool isTop = false;
    const double room = best.isThere ? bound - static_cast<double>(best.value) : kNever;
    if (room > 8 * problem_.slack && room <= 1e-6 * width(goal)) {
        settle(goal);
        isTop = isSettled(goal);
    }
    const double outer = best.isThere ? std::max(bound, static_cast<double>(best.value)) : bound;
    return {outer, isTight, isTop, best.isThere && best.value > kFar, best};
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
