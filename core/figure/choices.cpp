#include "core/figure/choices.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kWayCost = 0.02; ///< of a point's way from the place that it had, while dragging

/// Unit vectors all round, counter-clockwise from the right; every other ring uses those halfway between.
constexpr int kRings = 28, kDirections = 16;
constexpr double kRingCost = 0.25;
const std::array<Point, 2 * kDirections> kWays = [] {
    std::array<Point, 2 * kDirections> ways;
    for (std::size_t i = 0; i < ways.size(); ++i)
        ways[i] = onCircle({0, 0}, 1, 180.0 / kDirections * static_cast<double>(i));
    return ways;
}();

/// In place of the number of strokes that a leader crosses.
constexpr signed char kUnknown = -3, kNotCounted = -2, kNotClear = -1;
constexpr double kStrokeCrossed = 0.9, kLeaderCrossed = 1.8;

int ringOf(int number) {
    return number / kDirections % kRings;
}

Point wayOf(int number) {
    return kWays[static_cast<std::size_t>(2 * (number % kDirections) + ringOf(number) % 2)];
}

} // namespace

Point rimOf(const Box& box, Point grip) {
    const Box rim = grown(box, 1.6);
    return {std::clamp(grip.x, rim.left, rim.right()), std::clamp(grip.y, rim.top, rim.bottom())};
}

Choices::Choices(const LabelRequest& request, const std::vector<Run>& runs, const Surroundings& around,
                 const TextMeasure& measure)
    : m_request(&request), m_runs(&runs), m_around(&around) {
    const TextExtent e = measure.measure(runs, Face::serif, request.size);
    m_extent = {e.width, e.ascent + e.descent, e.ascent};
    if (const auto* sector = std::get_if<Sector>(&request.anchor); sector && sector->angle)
        m_angle = sector;
}

Box Choices::boxAt(Point middle, double air) const {
    return grown(boxAround(middle, m_extent.width, m_extent.height), air * m_around->factor);
}

/// Without a leader an angle's value stands between its own legs.
bool Choices::isInWedge(const Box& box) const {
    return !m_angle || standsBetweenLegs(box, *m_angle);
}

/// It had better stand at its own arc, too: while dragging it may keep its place when another comes nearer.
bool Choices::isAtOwnArc(const Box& box) const {
    if (!m_angle)
        return true;
    const double own = gapToArc(box, *m_angle);
    return std::none_of(m_around->angles.begin(), m_around->angles.end(),
                        [&](const Sector* other) { return other != m_angle && gapToArc(box, *other) < own; });
}

/// Between legs that are the legs of a smaller angle too it could be taken for that angle's value.
bool Choices::isInSmallerAngle(Point middle) const {
    return std::any_of(m_around->angles.begin(), m_around->angles.end(), [&](const Sector* other) {
        return other != m_angle && length(other->centre - m_angle->centre) < 1e-6 &&
               std::abs(other->sweepDegrees) < std::abs(m_angle->sweepDegrees) &&
               standsBetweenLegs({middle.x, middle.y, 0, 0}, *other);
    });
}

bool Choices::isOffOthers(Point middle) const {
    return m_around->obstacles.isQuiet(boxAt(middle, kComfort), static_cast<int>(m_request->group));
}

const Choices::Verdict& Choices::verdict(std::size_t i) {
    Verdict& v = m_verdicts[i];
    if (v.known)
        return v;
    const Place& place = m_places[i];
    v.known = true;
    v.allowed = m_around->obstacles.isClear(boxAt(place.middle, kAir)) && isInWedge(boxAt(place.middle, 0)) &&
                isAtOwnArc(boxAt(place.middle, 0));
    if (v.allowed)
        v.cost = place.cost + (isOffOthers(place.middle) ? 0 : 0.5) +
                 (m_angle && isInSmallerAngle(place.middle) ? 0.5 : 0);
    return v;
}

double Choices::costOfWay(Point middle, const std::optional<Point>& was) const {
    return was ? kWayCost * length(middle - *was) / m_around->factor : 0;
}

std::optional<Choice> Choices::beside(const std::optional<Point>& was) {
    if (m_listed == Listed::none) {
        m_restFrom = listFirstPlaces(m_places, m_request->anchor, m_extent, kGap * m_around->factor);
        m_verdicts.assign(m_places.size(), {});
        m_listed = Listed::first;
    }
    auto best = bestOfListed(was);
    if (m_listed == Listed::all || (best && best->cost <= m_restFrom))
        return best;
    listPlaces(m_places, m_request->anchor, m_extent, kGap * m_around->factor);
    m_verdicts.assign(m_places.size(), {});
    m_listed = Listed::all;
    return bestOfListed(was);
}

std::optional<Choice> Choices::bestOfListed(const std::optional<Point>& was) {
    std::optional<Choice> best;
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const Place& place = m_places[i];
        if (best && place.cost >= best->cost)
            break; // they come in the order of their cost
        if (!verdict(i).allowed)
            continue;
        const double cost = m_verdicts[i].cost + costOfWay(place.middle, was);
        if ((!best || cost < best->cost) && m_around->obstacles.isVacant(boxAt(place.middle, kAir)))
            best = Choice{place.middle, place.number, cost, {}};
    }
    return best;
}

std::optional<Choice> Choices::slid(int number) {
    if (number >= kLedFrom)
        return std::nullopt;
    listSlides(m_slides, m_request->anchor, m_extent, kGap * m_around->factor, number);
    for (const Place& place : m_slides)
        if (m_around->obstacles.isFree(boxAt(place.middle, kAir)) && isInWedge(boxAt(place.middle, 0)))
            return Choice{place.middle, place.number, 0, {}};
    return std::nullopt;
}

std::optional<Point> Choices::middleOf(int number) const {
    if (number < kLedFrom)
        return placeOf(m_request->anchor, m_extent, kGap * m_around->factor, number);
    return std::nullopt;
}

std::optional<Choice> Choices::held(int number) {
    if (number < kLedFrom) {
        const auto middle = middleOf(number);
        if (!middle || !m_around->obstacles.isFree(boxAt(*middle, kAir)) || !isInWedge(boxAt(*middle, 0)))
            return std::nullopt;
        return Choice{*middle, number, 0, {}};
    }
    prepareGrips();
    const int ring = number - kLedFrom;
    return ring < static_cast<int>(m_crossed.size()) ? ledAt(ring, std::nullopt, 1e9) : std::nullopt;
}

void Choices::prepareGrips() {
    if (m_gripped)
        return;
    m_gripped = true;
    listGrips(m_grips, m_request->anchor);
    std::erase_if(m_grips, [&](const Grip& grip) { return !m_around->obstacles.isOnSheet(grip.at); });
    m_crossed.assign(m_grips.size() * kRings * kDirections, kUnknown);
}

/// Places around the thing: rings of directions, further and further out, for each grip.
Point Choices::ringed(int number, Point& grip) const {
    const Point unit = wayOf(number);
    grip = m_grips[static_cast<std::size_t>(number / kDirections / kRings)].at;
    const double away = (14 + 13 * ringOf(number)) * m_around->factor;
    return grip + (away + reach(m_extent.width, m_extent.height, unit)) * unit;
}

/// Outward, but not so that the leader seems to lengthen the arrow.
double Choices::costOfRing(int number) const {
    const int grip = number / kDirections / kRings;
    const double ahead = dot(wayOf(number), m_grips[static_cast<std::size_t>(grip)].outward);
    return kRingCost * ringOf(number) + 0.2 * grip + 0.6 * (1 - ahead) + (!m_angle && ahead > 0.97 ? 1 : 0);
}

/// Do strokes and texts leave room there for the label and its leader?
bool Choices::isRingClear(int number, const Box& box, Point grip) {
    signed char& crossed = m_crossed[static_cast<std::size_t>(number)];
    if (crossed == kUnknown)
        crossed = m_around->obstacles.isClear(grown(box, kAir * m_around->factor)) &&
                          !m_around->obstacles.crossesText(grip, rimOf(box, grip))
                      ? kNotCounted
                      : kNotClear;
    return crossed != kNotClear;
}

int Choices::strokesCrossed(int number, Point from, Point to) {
    signed char& crossed = m_crossed[static_cast<std::size_t>(number)];
    if (crossed < 0)
        crossed = static_cast<signed char>(std::min(m_around->obstacles.strokesCrossed(from, to), 100));
    return crossed;
}

/// At that place of the rings, if it is free and costs less than `most`.
std::optional<Choice> Choices::ledAt(int number, const std::optional<Point>& was, double most) {
    double cost = costOfRing(number);
    if (cost >= most || m_crossed[static_cast<std::size_t>(number)] == kNotClear)
        return std::nullopt;
    Point grip;
    const Point middle = ringed(number, grip);
    cost += costOfWay(middle, was);
    const Box box = boxAt(middle, 0);
    const Obstacles& obstacles = m_around->obstacles;
    if (cost >= most || !isRingClear(number, box, grip) || !obstacles.isVacant(boxAt(middle, kAir)))
        return std::nullopt;
    const Point rim = rimOf(box, grip), from = grip + 0.08 * (rim - grip);
    if (obstacles.crossesLabel(grip, rim))
        return std::nullopt;
    cost += kLeaderCrossed * obstacles.leadersCrossed(from, rim);
    if (cost < most)
        cost += kStrokeCrossed * strokesCrossed(number, from, rim);
    return cost < most ? std::optional(Choice{middle, kLedFrom + number, cost, grip}) : std::nullopt;
}

std::optional<Choice> Choices::led(const std::optional<Point>& was) {
    prepareGrips();
    std::optional<Choice> best;
    const int grips = static_cast<int>(m_grips.size());
    for (int ring = 0; ring < kRings && !(best && kRingCost * ring >= best->cost); ++ring)
        for (int grip = 0; grip < grips; ++grip)
            for (int direction = 0; direction < kDirections; ++direction) {
                const int number = (grip * kRings + ring) * kDirections + direction;
                if (auto choice = ledAt(number, was, best ? best->cost : 1e9))
                    best = choice;
            }
    return best;
}

} // namespace tailpoint
