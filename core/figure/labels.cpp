// SPDX-License-Identifier: MIT
// The passes over all labels: which place is taken, in which order, in which round.
#include "core/figure/label_search.h"

#include <algorithm>
#include <numeric>

namespace tailpoint {
namespace {

constexpr double kFarPin = 40; ///< points from the middle of its thing; a pinned label further off is led

/// What a worse kind of place costs, far above any cost of a place beside its thing.
constexpr double kLeaderCost = 10, kAbbreviationCost = 100, kUnplacedCost = 1000;

class Placer {
public:
    Placer(const std::vector<LabelRequest>& requests, Obstacles& obstacles, const TextMeasure& measure,
           const Placement& previous, double factor)
        : m_requests(requests), m_obstacles(obstacles), m_measure(measure),
          m_previous(previous), m_around{obstacles, {}, {}, factor}, m_full(requests.size()),
          m_abbreviation(requests.size()) {
        for (const LabelRequest& request : requests)
            if (const auto* sector = std::get_if<Sector>(&request.anchor); sector && sector->angle)
                m_around.angles.push_back(sector);
            else if (isArrow(request))
                m_around.arrows.push_back(&std::get<Shaft>(request.anchor));
    }

    /// Where it stood last time, with the text that it had; empty if it can't stand there any more.
    std::optional<Placed> keep(std::size_t i) {
        return again(i, [](LabelSearch& search, const Place& place) { return search.keep(place); });
    }

    /// The nearest place to slide to from there.
    std::optional<Placed> slide(std::size_t i) {
        return again(i, [](LabelSearch& search, const Place& place) { return search.slide(place); });
    }

    /// Where it was put by hand. It may lie over strokes, on its halo, but not over another text; far from
    /// its thing it is led to it.
    std::optional<Placed> pin(std::size_t i) {
        const LabelRequest& request = m_requests[i];
        LabelSearch& search = full(i);
        const Box box = boxAround(*request.pinned, search.extent().width, search.extent().height);
        if (!m_obstacles.isClearOfTexts(grown(box, kHaloPad)))
            return std::nullopt;
        ChosenPlace choice{*request.pinned, {PlaceKind::pinned, {}, 0, 0}, 0, {}};
        const Point rim = rimOf(box, request.home);
        if (m_obstacles.isOnSheet(request.home) && length(rim - request.home) >= kFarPin * m_around.factor)
            choice.anchorPoint = request.home;
        return finish(request, search, choice);
    }

    std::optional<Placed> place(std::size_t i) {
        const LabelRequest& request = m_requests[i];
        if (auto placed = placeWith(i, full(i)))
            return placed;
        if (request.abbreviation.empty() || request.optional)
            return std::nullopt;
        auto placed = placeWith(i, abbreviation(i));
        if (placed)
            markAbbreviated(*placed);
        return placed;
    }

    /// The letter alone, beside its thing or led to it; across an arrow only where there is no other way.
    std::optional<Placed> placeLetter(std::size_t i, char letter) {
        const std::vector<Run> runs{{std::string(1, letter), false, true}};
        LabelSearch search(m_requests[i], runs, m_around, m_measure);
        auto placed = choose(m_requests[i], search, {});
        if (!placed) {
            search.mayCrossArrows();
            placed = choose(m_requests[i], search, {});
        }
        if (placed) {
            placed->place.text = LabelText::keyLetter;
            placed->letter = letter;
        }
        return placed;
    }

private:
    LabelSearch& full(std::size_t i) { return made(m_full[i], i, m_requests[i].full); }
    LabelSearch& abbreviation(std::size_t i) {
        return made(m_abbreviation[i], i, m_requests[i].abbreviation);
    }
    LabelSearch& made(std::optional<LabelSearch>& search, std::size_t i, const std::vector<Run>& runs) {
        return search ? *search : search.emplace(m_requests[i], runs, m_around, m_measure);
    }

    const LabelPlace* previousOf(std::size_t i) const {
        const auto it = m_previous.labels.find(m_requests[i].id);
        return it == m_previous.labels.end() ? nullptr : &it->second;
    }

    static void markAbbreviated(Placed& placed) {
        placed.place.text = LabelText::abbreviated;
        placed.cost += kAbbreviationCost;
    }

    /// Takes up the place of last time, with the text of last time.
    template <class Take>
    std::optional<Placed> again(std::size_t i, Take take) {
        const LabelPlace* held = previousOf(i);
        if (!held || held->place.kind == PlaceKind::pinned || held->text == LabelText::keyLetter)
            return std::nullopt;
        const bool abbreviated = held->text == LabelText::abbreviated;
        if (abbreviated && m_requests[i].abbreviation.empty())
            return std::nullopt;
        LabelSearch& search = abbreviated ? abbreviation(i) : full(i);
        const auto choice = take(search, held->place);
        if (!choice)
            return std::nullopt;
        Placed placed = finish(m_requests[i], search, *choice);
        if (abbreviated)
            markAbbreviated(placed);
        return placed;
    }

    /// While dragging a label that must move goes as near as it can.
    std::optional<Placed> placeWith(std::size_t i, LabelSearch& search) {
        const LabelPlace* held = previousOf(i);
        if (held && held->place.kind == PlaceKind::pinned)
            return choose(m_requests[i], search, m_requests[i].pinned);
        return choose(m_requests[i], search, held ? search.middleOf(held->place) : std::nullopt);
    }

    std::optional<Placed> choose(const LabelRequest& request, LabelSearch& search,
                                 const std::optional<Point>& previousMiddle) {
        auto choice = search.bestBesideFeature(previousMiddle);
        if (!choice && !request.optional)
            choice = search.bestOnLeader(previousMiddle);
        return choice ? std::optional(finish(request, search, *choice)) : std::nullopt;
    }

    Placed finish(const LabelRequest& request, const LabelSearch& search, const ChosenPlace& choice) {
        Placed placed;
        placed.text = textAround(choice.middle, search.runs(), request.ink, request.size, search.extent());
        placed.text.halo = true;
        placed.place.place = choice.place;
        placed.cost = choice.cost;
        m_obstacles.addLabel(placed.text.box);
        if (choice.anchorPoint)
            lead(placed, *choice.anchorPoint);
        return placed;
    }

    void lead(Placed& placed, Point anchorPoint) {
        Path leader;
        leader.role = Role::leader;
        leader.points = {anchorPoint, rimOf(placed.text.box, anchorPoint)};
        leader.width = 0.6 * m_around.factor;
        m_obstacles.addLeader(leader.points[0], leader.points[1], leader.width);
        placed.leader = leader;
        placed.cost += kLeaderCost;
    }

    const std::vector<LabelRequest>& m_requests;
    Obstacles& m_obstacles;
    const TextMeasure& m_measure;
    const Placement& m_previous;
    Surroundings m_around;
    std::vector<std::optional<LabelSearch>> m_full, m_abbreviation; ///< by request, made when first asked for
};

using Labels = std::vector<std::optional<Placed>>;

double costOf(const Labels& labels, const std::vector<LabelRequest>& requests) {
    double cost = 0;
    for (std::size_t i = 0; i < labels.size(); ++i)
        cost += labels[i] ? labels[i]->cost : requests[i].optional ? 1 : kUnplacedCost;
    return cost;
}

/// Does every label that must be there stand there with its full text?
bool areWhole(const Labels& labels, const std::vector<LabelRequest>& requests) {
    for (std::size_t i = 0; i < labels.size(); ++i)
        if (labels[i] ? labels[i]->isAbbreviated() : !requests[i].optional)
            return false;
    return true;
}

/// Those that stand badly go first next time; the axis' name has but one good place and goes before them.
std::vector<std::size_t> reordered(const std::vector<std::size_t>& order, const Labels& labels,
                                   const std::vector<LabelRequest>& requests) {
    std::vector<std::size_t> next = order;
    std::stable_partition(next.begin(), next.end(), [&](std::size_t i) {
        if (std::holds_alternative<LineEnd>(requests[i].anchor))
            return true;
        return labels[i] ? labels[i]->cost >= kLeaderCost : !requests[i].optional;
    });
    return next;
}

void addTo(Obstacles& obstacles, const Placed& placed) {
    obstacles.addLabel(placed.text.box);
    if (placed.leader)
        obstacles.addLeader(placed.leader->points[0], placed.leader->points[1], placed.leader->width);
}

// The passes, in the order in which they are made.

/// First, those put there by hand.
void putPinned(Labels& kept, const std::vector<LabelRequest>& requests, Placer& placer) {
    for (std::size_t i = 0; i < requests.size(); ++i)
        if (requests[i].pinned)
            kept[i] = placer.pin(i);
}

/// In a drag, those whose places are still free.
void keepPlaces(Labels& kept, Placer& placer) {
    for (std::size_t i = 0; i < kept.size(); ++i)
        if (!kept[i])
            kept[i] = placer.keep(i);
}

/// In a drag, those that find a free place near their last one.
void slideAlongRails(Labels& kept, Placer& placer) {
    for (std::size_t i = 0; i < kept.size(); ++i)
        if (!kept[i])
            kept[i] = placer.slide(i);
}

/// All others, round after round in a better order; what was kept stays.
Labels bestOfRounds(const Labels& kept, const std::vector<LabelRequest>& requests, Obstacles& obstacles,
                    Placer& placer) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < kept.size(); ++i)
        if (!kept[i])
            order.push_back(i);
    const Obstacles::Mark start = obstacles.mark();
    Labels best = kept;
    double least = 1e300;
    constexpr int most = 4; // rounds; a fifth hardly ever finds more, nor does one after a third in vain
    for (int round = 0; round < most; ++round) {
        obstacles.backTo(start);
        Labels labels = kept;
        for (const std::size_t i : order)
            labels[i] = placer.place(i);
        const double cost = costOf(labels, requests);
        const auto next = reordered(order, labels, requests);
        // Leaders alone are worth one more try, names without values and unplaced labels all of them.
        const bool better = cost < least;
        if (better) {
            least = cost;
            best = std::move(labels);
        }
        if (next == order || least < kLeaderCost || (round > 0 && areWhole(best, requests)) ||
            (round > 1 && !better))
            break;
        order = next;
    }
    return best;
}

/// Last, key letters for those that found no place at all.
void addKeyLetters(Labels& labels, const std::vector<LabelRequest>& requests, Placer& placer) {
    char letter = 'a';
    for (std::size_t i = 0; i < labels.size() && letter <= 'z'; ++i)
        if (!labels[i] && !requests[i].optional)
            labels[i] = placer.placeLetter(i, letter++);
}

} // namespace

Text textAround(Point middle, const std::vector<Run>& runs, Role ink, double size, const Extent& extent) {
    Text text;
    text.ink = ink;
    text.size = size;
    text.face = Face::serif;
    text.runs = runs;
    text.box = boxAround(middle, extent.width, extent.height);
    text.baseline = {middle.x, text.box.top + extent.ascent};
    text.anchor = Anchor::middle;
    return text;
}

Labels placeLabels(const std::vector<LabelRequest>& requests, Obstacles& obstacles,
                   const TextMeasure& measure, const Placement& previous, double factor) {
    Placer placer(requests, obstacles, measure, previous, factor);
    const Obstacles::Mark none = obstacles.mark();
    Labels kept(requests.size());
    putPinned(kept, requests, placer);
    if (!previous.labels.empty()) {
        keepPlaces(kept, placer);
        slideAlongRails(kept, placer);
    }
    Labels best = bestOfRounds(kept, requests, obstacles, placer);
    obstacles.backTo(none);
    for (const auto& placed : best)
        if (placed)
            addTo(obstacles, *placed);
    addKeyLetters(best, requests, placer);
    return best;
}

} // namespace tailpoint
