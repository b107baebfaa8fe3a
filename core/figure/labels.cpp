#include "core/figure/labels.h"

#include <algorithm>
#include <numeric>

namespace tailpoint {
namespace {

/// Air between a label and any stroke or other label: must be there, and had better be there.
constexpr double kAir = 2, kComfort = 5;
constexpr double kGap = 4.5; ///< between a label and its own stroke

constexpr double kFarPin = 40; ///< points from the middle of its thing; a pinned label further off is led

/// What a worse kind of place costs, far above any cost of a place beside its thing.
constexpr double kLedCost = 10, kBriefCost = 100, kLostCost = 1000;
constexpr double kWayCost = 0.02; ///< of a point's way from the place that it had, while dragging

/// Unit vectors all round, counter-clockwise from the right; every other ring uses those halfway between.
constexpr int kDirections = 16;
const std::array<Point, 2 * kDirections> kWays = [] {
    std::array<Point, 2 * kDirections> ways;
    for (std::size_t i = 0; i < ways.size(); ++i)
        ways[i] = onCircle({0, 0}, 1, 180.0 / kDirections * static_cast<double>(i));
    return ways;
}();

Extent extentOf(const std::vector<Run>& runs, double size, const TextMeasure& measure) {
    const TextExtent e = measure.measure(runs, Face::serif, size);
    return {e.width, e.ascent + e.descent, e.ascent};
}

/// End of the leader at the box: the point of its rim nearest to the grip, a little outside.
Point rimOf(const Box& box, Point grip) {
    const Box rim = grown(box, 1.6);
    return {std::clamp(grip.x, rim.left, rim.right()), std::clamp(grip.y, rim.top, rim.bottom())};
}

class Placer {
public:
    Placer(Obstacles& obstacles, const TextMeasure& measure, const Placement& previous, double factor)
        : m_obstacles(obstacles), m_measure(measure), m_previous(previous), m_factor(factor) {}

    /// Where it stood last time, with the text that it had; empty if it can't stand there any more.
    std::optional<Placed> keep(const LabelRequest& request) {
        hold(request);
        if (m_held < 0 || m_held >= kLetterFrom)
            return std::nullopt;
        const bool brief = m_held >= kBriefFrom;
        return brief && request.brief.empty()
                   ? std::nullopt
                   : keepRuns(request, brief ? request.brief : request.full, brief);
    }

    /// Where it was put by hand. It may lie over strokes, on its halo, but not over another text; far from
    /// its thing it is led to it.
    std::optional<Placed> pin(const LabelRequest& request) {
        m_held = -1;
        prepare(request, request.full);
        const Box box = boxAround(*request.pinned, m_extent.width, m_extent.height);
        if (!m_obstacles.isRoom(grown(box, kHaloPad)))
            return std::nullopt;
        Placed placed = finish(*request.pinned, kPinned, 0);
        const Point rim = rimOf(box, request.home);
        if (!m_obstacles.isOnSheet(request.home) || length(rim - request.home) < kFarPin * m_factor)
            return placed;
        lead(placed, request.home);
        return placed;
    }

    std::optional<Placed> place(const LabelRequest& request) {
        hold(request);
        if (auto placed = placeRuns(request, request.full))
            return placed;
        if (request.brief.empty() || request.optional)
            return std::nullopt;
        auto placed = placeRuns(request, request.brief);
        if (placed)
            markBrief(*placed);
        return placed;
    }

    /// The letter alone, beside its thing or led to it.
    std::optional<Placed> placeLetter(const LabelRequest& request, char letter) {
        m_held = -1;
        const std::vector<Run> runs{{std::string(1, letter), false, true}};
        auto placed = placeRuns(request, runs);
        if (placed) {
            placed->shortened = true;
            placed->letter = letter;
            placed->candidate += kLetterFrom;
        }
        return placed;
    }

private:
    void hold(const LabelRequest& request) {
        const auto it = m_previous.find(request.id);
        m_held = it == m_previous.end() ? -1 : it->second;
    }

    void prepare(const LabelRequest& request, const std::vector<Run>& runs) {
        m_request = &request;
        m_runs = &runs;
        m_extent = extentOf(runs, request.size, m_measure);
        listGrips(m_grips, request.anchor);
        std::erase_if(m_grips, [&](const Grip& grip) { return !m_obstacles.isOnSheet(grip.at); });
        m_was = m_held < 0 ? std::nullopt : middleAt(m_held % kBriefFrom);
    }

    static void markBrief(Placed& placed) {
        placed.shortened = true;
        placed.candidate += kBriefFrom;
        placed.cost += kBriefCost;
    }

    std::optional<Placed> keepRuns(const LabelRequest& request, const std::vector<Run>& runs, bool brief) {
        prepare(request, runs);
        const int number = m_held % kBriefFrom;
        std::optional<Placed> placed;
        if (number >= kLedFrom) {
            if (const auto led = ledAt(number - kLedFrom))
                placed = finishLed(*led);
        } else if (m_was && isFree(*m_was, kAir)) {
            placed = finish(*m_was, number, 0);
        }
        if (placed && brief)
            markBrief(*placed);
        return placed;
    }

    std::optional<Point> middleAt(int number) {
        if (number >= kLedFrom) {
            const auto led = ledThere(number - kLedFrom);
            return led ? std::optional(led->middle) : std::nullopt;
        }
        listPlaces(m_places, m_request->anchor, m_extent, kGap * m_factor);
        for (const Place& place : m_places)
            if (place.number == number)
                return place.middle;
        return std::nullopt;
    }

    /// While dragging a label that must move goes as near as it can.
    double costOfWay(Point middle) const { return m_was ? kWayCost * length(middle - *m_was) / m_factor : 0; }

    std::optional<Placed> placeRuns(const LabelRequest& request, const std::vector<Run>& runs) {
        prepare(request, runs);
        if (auto placed = beside())
            return placed;
        return request.optional ? std::nullopt : led();
    }

    std::optional<Placed> beside() {
        listPlaces(m_places, m_request->anchor, m_extent, kGap * m_factor);
        const Place* best = nullptr;
        double least = 1e8;
        for (const Place& place : m_places) {
            if (place.cost >= least || !isFree(place.middle, kAir))
                continue;
            const double cost =
                place.cost + (isFree(place.middle, kComfort) ? 0 : 0.5) + costOfWay(place.middle);
            if (cost < least) {
                least = cost;
                best = &place;
            }
        }
        return best ? std::optional(finish(best->middle, best->number, least)) : std::nullopt;
    }

    bool isFree(Point middle, double air) const {
        return m_obstacles.isFree(grown(boxAround(middle, m_extent.width, m_extent.height), air * m_factor));
    }

    static constexpr int kRings = 28;

    struct Led {
        Point middle, grip;
        int number;
        double cost;
    };

    /// Places around the thing: rings of directions, further and further out, for each grip.
    std::optional<Led> ledThere(int number) const {
        const int ring = number / kDirections % kRings, direction = number % kDirections;
        const auto grip = static_cast<std::size_t>(number / kDirections / kRings);
        if (grip >= m_grips.size())
            return std::nullopt;
        const Point unit = kWays[static_cast<std::size_t>(2 * direction + ring % 2)], from = m_grips[grip].at;
        const double away = (14 + 13 * ring) * m_factor, ahead = dot(unit, m_grips[grip].outward);
        Led led{from + (away + reach(m_extent.width, m_extent.height, unit)) * unit, from, number, 0};
        // Outward, but not so that the leader seems to lengthen the arrow.
        led.cost = 0.25 * ring + 0.2 * static_cast<double>(grip) + 0.6 * (1 - ahead) +
                   (ahead > 0.97 ? 1 : 0) + costOfWay(led.middle);
        return led;
    }

    std::optional<Led> ledAt(int number, double most = 1e9) const {
        auto led = ledThere(number);
        if (!led || led->cost >= most || !isFree(led->middle, kAir))
            return std::nullopt;
        const Point rim = rimOf(boxAround(led->middle, m_extent.width, m_extent.height), led->grip);
        if (m_obstacles.crossesText(led->grip, rim))
            return std::nullopt;
        led->cost += 0.9 * m_obstacles.strokesCrossed(led->grip + 0.08 * (rim - led->grip), rim);
        return led;
    }

    std::optional<Placed> led() {
        std::optional<Led> best;
        const int grips = static_cast<int>(m_grips.size());
        for (int ring = 0; ring < kRings; ++ring) {
            if (best && 0.25 * ring >= best->cost)
                break;
            for (int grip = 0; grip < grips; ++grip)
                for (int direction = 0; direction < kDirections; ++direction) {
                    const auto led =
                        ledAt((grip * kRings + ring) * kDirections + direction, best ? best->cost : 1e9);
                    if (led && (!best || led->cost < best->cost))
                        best = led;
                }
        }
        return best ? std::optional(finishLed(*best)) : std::nullopt;
    }

    Placed finishLed(const Led& led) {
        Placed placed = finish(led.middle, kLedFrom + led.number, kLedCost + led.cost);
        lead(placed, led.grip);
        return placed;
    }

    void lead(Placed& placed, Point grip) {
        Path leader;
        leader.role = Role::leader;
        leader.points = {grip, rimOf(placed.text.box, grip)};
        leader.width = 0.6 * m_factor;
        m_obstacles.addLeader(leader.points[0], leader.points[1], leader.width);
        placed.leader = leader;
    }

    Placed finish(Point middle, int candidate, double cost) {
        Placed placed;
        placed.text = textAround(middle, *m_runs, m_request->ink, m_request->size, Face::serif, m_measure);
        placed.text.halo = true;
        placed.candidate = candidate;
        placed.cost = cost;
        m_obstacles.addLabel(placed.text.box);
        return placed;
    }

    Obstacles& m_obstacles;
    const TextMeasure& m_measure;
    const Placement& m_previous;
    double m_factor;
    int m_held = -1;
    std::optional<Point> m_was; ///< middle of the held place as it is now
    const LabelRequest* m_request = nullptr;
    const std::vector<Run>* m_runs = nullptr;
    Extent m_extent;
    std::vector<Place> m_places;
    std::vector<Grip> m_grips;
};

using Labels = std::vector<std::optional<Placed>>;

double costOf(const Labels& labels, const std::vector<LabelRequest>& requests) {
    double cost = 0;
    for (std::size_t i = 0; i < labels.size(); ++i)
        cost += labels[i] ? labels[i]->cost : requests[i].optional ? 1 : kLostCost;
    return cost;
}

/// Those that stand badly go first next time.
std::vector<std::size_t> reordered(const std::vector<std::size_t>& order, const Labels& labels,
                                   const std::vector<LabelRequest>& requests) {
    std::vector<std::size_t> next = order;
    std::stable_partition(next.begin(), next.end(), [&](std::size_t i) {
        return labels[i] ? labels[i]->cost >= kLedCost : !requests[i].optional;
    });
    return next;
}

void addTo(Obstacles& obstacles, const Placed& placed) {
    obstacles.addLabel(placed.text.box);
    if (placed.leader)
        obstacles.addLeader(placed.leader->points[0], placed.leader->points[1], placed.leader->width);
}

/// Key letters for those that found no place at all.
void addLetters(Labels& labels, const std::vector<LabelRequest>& requests, Placer& placer) {
    char letter = 'a';
    for (std::size_t i = 0; i < labels.size() && letter <= 'z'; ++i)
        if (!labels[i] && !requests[i].optional)
            labels[i] = placer.placeLetter(requests[i], letter++);
}

} // namespace

Text textAround(Point middle, const std::vector<Run>& runs, Role ink, double size, Face face,
                const TextMeasure& measure) {
    const TextExtent e = measure.measure(runs, face, size);
    Text text;
    text.ink = ink;
    text.size = size;
    text.face = face;
    text.runs = runs;
    text.box = boxAround(middle, e.width, e.ascent + e.descent);
    text.baseline = {middle.x, text.box.top + e.ascent};
    text.anchor = Anchor::middle;
    return text;
}

Labels placeLabels(const std::vector<LabelRequest>& requests, Obstacles& obstacles,
                   const TextMeasure& measure, const Placement& previous, double factor) {
    Placer placer(obstacles, measure, previous, factor);
    const Obstacles::Mark none = obstacles.mark();
    Labels kept(requests.size());
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < requests.size(); ++i)
        if (requests[i].pinned)
            kept[i] = placer.pin(requests[i]);
    for (std::size_t i = 0; i < requests.size(); ++i)
        if (!kept[i] && !(kept[i] = previous.empty() ? std::nullopt : placer.keep(requests[i])))
            order.push_back(i);
    const Obstacles::Mark start = obstacles.mark(); // what was kept stays
    Labels best = kept;
    double least = 1e300;
    constexpr int most = 4; // rounds; a fifth hardly ever finds more
    for (int round = 0; round < most; ++round) {
        obstacles.backTo(start);
        Labels labels = kept;
        for (const std::size_t i : order)
            labels[i] = placer.place(requests[i]);
        const double cost = costOf(labels, requests);
        const auto next = reordered(order, labels, requests);
        // Leaders alone are worth one more try, names without values and lost labels all of them.
        const bool done = next == order || cost < kLedCost || (round > 0 && least < kBriefCost);
        if (cost < least) {
            least = cost;
            best = std::move(labels);
        }
        if (done)
            break;
        order = next;
    }
    obstacles.backTo(none);
    for (const auto& placed : best)
        if (placed)
            addTo(obstacles, *placed);
    addLetters(best, requests, placer);
    return best;
}

} // namespace tailpoint
