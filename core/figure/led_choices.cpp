// Places at the end of a leader: rings around its grip.
#include "core/figure/choices.h"

#include <algorithm>
#include <numbers>

namespace tailpoint {
namespace {

/// A led label's place: one of the directions all round its grip, on one of the rings further and further
/// out. A label in a drag takes any of them, else only a few directions on a few rings: on every other of
/// these rings those halfway between.
constexpr int kDirections = 512, kRings = 160, kEachDirection = 32, kEachRing = 8;
constexpr int kOfGrip = kDirections * kRings;
constexpr int kTurns = kDirections / kEachDirection, kSteps = kRings / kEachRing;
constexpr double kFirstRing = 12, kRingGrowth = 1.02304; ///< points from grip to label, and ring by ring
constexpr double kAwayCost = 0.03;                       ///< of a point
const std::array<Point, kDirections> kWays = [] {
    std::array<Point, kDirections> ways;
    for (std::size_t i = 0; i < ways.size(); ++i)
        ways[i] = onCircle({0, 0}, 1, 360.0 / kDirections * static_cast<double>(i));
    return ways;
}();
const std::array<double, kRings> kAways = [] {
    std::array<double, kRings> aways;
    for (std::size_t i = 0; i < aways.size(); ++i)
        aways[i] = kFirstRing * std::pow(kRingGrowth, static_cast<double>(i));
    return aways;
}();

int gripOf(int number) {
    return number / kOfGrip;
}

int ringOf(int number) {
    return number % kOfGrip / kDirections;
}

/// How much further round the coarse directions of this ring lie.
int shiftOf(int ring) {
    return ring / kEachRing % 2 * (kEachDirection / 2);
}

bool isCoarse(int number) {
    const int ring = ringOf(number);
    return ring % kEachRing == 0 && (number % kDirections - shiftOf(ring)) % kEachDirection == 0;
}

double costOfAway(int ring) {
    return kAwayCost * (kAways[static_cast<std::size_t>(ring)] - kFirstRing);
}

Point wayOf(int number) {
    return kWays[static_cast<std::size_t>(number % kDirections)];
}

/// No other grip is tried for a leader that costs less, and crosses no arrow.
constexpr double kGoodEnough = 4;

/// In place of the number of strokes that a leader crosses.
constexpr signed char kUnknown = -3, kNotCounted = -2, kNotClear = -1;
constexpr double kStrokeCrossed = 0.6, kLeaderCrossed = 1.8;

} // namespace

std::optional<Point> Choices::ledMiddle(int number) {
    prepareGrips();
    if (gripOf(number) >= static_cast<int>(m_grips.size()))
        return std::nullopt;
    Point grip;
    return ringed(number, grip);
}

/// A led label that has to move goes to the nearest place around, on its own leader.
std::optional<Choice> Choices::swung(int number) {
    prepareGrips();
    if (gripOf(number) >= static_cast<int>(m_grips.size()))
        return std::nullopt;
    constexpr int furthest = 9;
    constexpr double step = 3, kFarSwing = 90; // points; further out it looks for another place
    const int ring = ringOf(number), direction = number % kDirections;
    const double away = kAways[static_cast<std::size_t>(ring)];
    const double reached = away + m_extent.width / 2 / m_around->factor;
    const int outward = std::max(1, static_cast<int>(std::lround(step / (away * (kRingGrowth - 1)))));
    const int round =
        std::max(1, static_cast<int>(std::lround(step * kDirections / (2 * std::numbers::pi * reached))));
    const auto at = [&](int out, int turn) -> std::optional<Choice> {
        const int to = ring + out * outward;
        if (to < 0 || to >= kRings || (out >= 0 && kAways[static_cast<std::size_t>(to)] > kFarSwing))
            return std::nullopt;
        const int turned = (direction + turn * round + kDirections) % kDirections;
        const int there = gripOf(number) * kOfGrip + to * kDirections + turned;
        return ledAt(there, costOfAway(to) + costOfTurn(there), std::nullopt, 1e9);
    };
    std::optional<Choice> best;
    const auto consider = [&](int out, int turn) {
        if (const auto choice = at(out, turn); choice && (!best || choice->cost < best->cost))
            best = choice;
    };
    for (int far = 1; far <= furthest && !best; ++far)
        for (int i = -far; i <= far; ++i) {
            consider(i, far);
            consider(i, -far);
            consider(far, i);
            consider(-far, i);
        }
    return best;
}

void Choices::prepareGrips() {
    if (m_gripped)
        return;
    m_gripped = true;
    listGrips(m_grips, m_request->anchor);
    std::erase_if(m_grips, [&](const Grip& grip) { return !m_around->obstacles.isOnSheet(grip.at); });
    m_turns.reserve(m_grips.size() * kTurns);
    m_crossed.assign(m_grips.size() * kTurns * kSteps, kUnknown);
    for (int grip = 0; grip < static_cast<int>(m_grips.size()); ++grip) {
        for (int turn = 0; turn < kTurns; ++turn) {
            const int number = grip * kOfGrip + turn * kEachDirection, further = number + kEachDirection / 2;
            const Point way = wayOf(number), onward = wayOf(further);
            m_turns.push_back({number,
                               static_cast<std::size_t>(turn),
                               {costOfTurn(number), costOfTurn(further)},
                               {way, onward},
                               {reach(m_extent.width, m_extent.height, way),
                                reach(m_extent.width, m_extent.height, onward)}});
        }
        std::sort(m_turns.end() - kTurns, m_turns.end(), [](const Turn& a, const Turn& b) {
            return a.least() < b.least() || (a.least() == b.least() && a.number < b.number);
        });
    }
}

/// Where the strokes that a leader crosses are remembered; only for the coarse places.
signed char& Choices::crossedAt(int number) {
    if (isCoarse(number)) {
        const int ring = gripOf(number) * kSteps + ringOf(number) / kEachRing;
        const int place = ring * kTurns + number % kDirections / kEachDirection;
        return m_crossed[static_cast<std::size_t>(place)];
    }
    m_crossedFine = kUnknown;
    return m_crossedFine;
}

/// Places around the thing: rings of directions, further and further out, for each grip.
Point Choices::ringed(int number, Point& grip) const {
    const Point unit = wayOf(number);
    grip = m_grips[static_cast<std::size_t>(gripOf(number))].at;
    const double away = kAways[static_cast<std::size_t>(ringOf(number))] * m_around->factor;
    return grip + (away + reach(m_extent.width, m_extent.height, unit)) * unit;
}

/// Outward, but not so that the leader seems to lengthen the arrow.
double Choices::costOfTurn(int number) const {
    const int grip = gripOf(number);
    const double ahead = dot(wayOf(number), m_grips[static_cast<std::size_t>(grip)].outward);
    return 0.2 * grip + 0.6 * (1 - ahead) + (!m_angle && ahead > 0.97 ? 1 : 0);
}

/// Do strokes and texts leave room there for the label and its leader?
bool Choices::isRingClear(signed char& crossed, const Box& box, Point grip) const {
    if (crossed == kUnknown)
        crossed = m_around->obstacles.isClear(grown(box, kAir * m_around->factor)) &&
                          !m_around->obstacles.crossesText(grip, rimOf(box, grip))
                      ? kNotCounted
                      : kNotClear;
    return crossed != kNotClear;
}

Choices::Led Choices::ledPlace(int number) const {
    Point grip;
    const Point middle = ringed(number, grip);
    return ledPlace(number, grip, middle);
}

Choices::Led Choices::ledPlace(int number, Point grip, Point middle) const {
    const Box box = boxAt(middle, 0);
    return {number, grip, middle, rimOf(box, grip), box};
}

/// At that place of the rings, if it is free and costs less than `most`. `cost`: of its ring and direction.
std::optional<Choice> Choices::ledAt(int number, double cost, const std::optional<Point>& was, double most) {
    signed char& crossed = crossedAt(number);
    if (crossed == kNotClear)
        return std::nullopt;
    const Led led = ledPlace(number);
    const std::vector<Edges>& labels = m_around->obstacles.labels();
    if (labelCrossed(labels, led.grip, led.rim) ||
        !m_around->obstacles.isVacant(labels, boxAt(led.middle, kAir)))
        return std::nullopt;
    return choiceAt(led, crossed, cost + costOfWay(led.middle, was), most);
}

/// The same for one that is known to be clear of labels. In a crowd few get that far.
std::optional<Choice> Choices::choiceAt(const Led& led, signed char& crossed, double cost,
                                        double most) const {
    const Obstacles& obstacles = m_around->obstacles;
    if (cost >= most || !isRingClear(crossed, led.box, led.grip))
        return std::nullopt;
    const Point from = led.grip + 0.08 * (led.rim - led.grip);
    cost += kLeaderCrossed * obstacles.leadersCrossed(from, led.rim);
    if (cost < most && crossed == kNotCounted)
        crossed = static_cast<signed char>(std::min(obstacles.strokesCrossed(from, led.rim), 100));
    cost += kStrokeCrossed * std::max<int>(crossed, 0);
    return cost < most ? std::optional(Choice{led.middle, kLedFrom + led.number, cost, led.grip, crossed})
                       : std::nullopt;
}

/// Further out in the same direction leaders turn steadily, and grow. So where this one runs into that label,
/// and so does as much of the last one, all between them do.
bool Choices::isShutBy(const Edges& label, const Turn& turn, std::size_t odd, const Led& led) const {
    const double furthest = kAways[(kSteps - 2 + odd) * kEachRing] * m_around->factor;
    const Box last = boxAt(led.grip + (furthest + turn.reach[odd]) * turn.way[odd], 0);
    const Point way = led.rim - led.grip, lastWay = rimOf(last, led.grip) - led.grip;
    const double part = std::sqrt(dot(way, way) / std::max(dot(lastWay, lastWay), 1e-9));
    return label.crossedBy(led.grip, led.grip + part * lastWay);
}

std::optional<Choice> Choices::led(const std::optional<Point>& was) {
    prepareGrips();
    std::optional<Choice> best;
    const auto isGood = [](const Choice& choice) {
        return choice.cost < kGoodEnough && choice.crossed < kArrowWeight;
    };
    for (std::size_t first = 0; first < m_turns.size() && !(best && isGood(*best)); first += kTurns)
        ledFrom(first, was, best);
    return best;
}

/// The labels that can be in the way to each quarter of the sheet about a grip.
void Choices::gatherQuarters(Point grip) {
    const double beside = 2 + kAir * m_around->factor, far = 1e5;
    const double left = grip.x - m_extent.width / 2 - beside, right = grip.x + m_extent.width / 2 + beside;
    const double top = grip.y - m_extent.height / 2 - beside, bottom = grip.y + m_extent.height / 2 + beside;
    for (std::size_t quarter = 0; quarter < m_quarters.size(); ++quarter)
        m_around->obstacles.listLabels(
            {quarter % 2 ? right - far : left, quarter < 2 ? top : bottom - far, far, far},
            m_quarters[quarter]);
}

/// From one grip; `first` of its turns.
void Choices::ledFrom(std::size_t first, const std::optional<Point>& was, std::optional<Choice>& best) {
    gatherQuarters(m_grips[first / kTurns].at);
    for (std::size_t i = first; i < first + kTurns; ++i)
        for (const std::size_t odd : {0U, 1U})
            ledAlong(m_turns[i], odd, &m_crossed[first * kSteps + m_turns[i].turn], was, best);
}

/// On one way out, on even or on odd rings. `crossed`: of the first ring of all.
void Choices::ledAlong(const Turn& turn, std::size_t odd, signed char* crossed,
                       const std::optional<Point>& was, std::optional<Choice>& best) {
    const Obstacles& obstacles = m_around->obstacles;
    const Point grip = m_grips[static_cast<std::size_t>(gripOf(turn.number))].at, way = turn.way[odd];
    const std::vector<Edges>& near = m_quarters[(way.x < 0 ? 1U : 0U) + (way.y < 0 ? 2U : 0U)];
    for (std::size_t step = odd; step < kSteps; step += 2) {
        const int ring = static_cast<int>(step) * kEachRing;
        const double cost = costOfAway(ring) + turn.cost[odd];
        if (best && cost >= best->cost)
            return;
        signed char& there = crossed[step * kTurns];
        if (there == kNotClear)
            continue;
        const double away = kAways[static_cast<std::size_t>(ring)] * m_around->factor;
        const Led led = ledPlace(turn.number + ring * kDirections + shiftOf(ring), grip,
                                 grip + (away + turn.reach[odd]) * way);
        if (obstacles.hasLeft(led.box, way))
            return;
        if (const Edges* label = labelCrossed(near, led.grip, led.rim)) {
            if (isShutBy(*label, turn, odd, led))
                return;
        } else if (obstacles.isVacant(near, boxAt(led.middle, kAir))) {
            if (auto choice =
                    choiceAt(led, there, cost + costOfWay(led.middle, was), best ? best->cost : 1e9))
                best = choice;
        }
    }
}

} // namespace tailpoint
