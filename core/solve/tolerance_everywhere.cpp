// SPDX-License-Identifier: MIT
#include "core/solve/tolerance_everywhere.h"

#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace tailpoint::tolerance {
namespace {

struct Extent {
    long double least = 0, greatest = 0;
};

class Missing {
public:
    Missing(const Problem& problem, const std::vector<Piece>& pieces, const std::vector<Piece>& lost,
            int boxes)
        : problem_(problem), pieces_(pieces), lost_(lost), boxes_(boxes) {}
    bool isMissedNearby() const;
    bool isLostSomewhere() const;
    bool missesSomewhere() const;

private:
    Extent extentOf(const std::vector<Piece>& pieces, std::size_t which) const;
    std::vector<Piece> feetOf(const Piece& piece) const;

    const Problem& problem_;
    const std::vector<Piece>&pieces_, &lost_;
    int boxes_;
};

// Whether there is no answer with one input at an end and the others in the middle, or in one of some
// corners: where that is so nothing need be searched.
bool Missing::isMissedNearby() const {
    constexpr std::uint32_t kCorners = 24;
    const auto isMissed = [&](const Point& point) {
        return std::none_of(pieces_.begin(), pieces_.end(),
                            [&](const Piece& piece) { return tipsAt(problem_, piece, point).has_value(); });
    };
    for (std::size_t i = 0; i < problem_.inputs.size(); ++i) {
        for (const long double end : {problem_.inputs[i].least, problem_.inputs[i].greatest}) {
            Point point = problem_.nominal();
            point[i] = end;
            if (isMissed(point)) {
                return true;
            }
        }
    }
    std::uint32_t bits = 1;
    for (std::uint32_t corner = 0; corner < kCorners; ++corner) {
        Point point;
        for (const Input& input : problem_.inputs) {
            bits = bits * 1664525u + 1013904223u; // D. Knuth, The Art of Computer Programming, vol. 2, 3.3.4
            point.push_back((bits >> 31) != 0 ? input.greatest : input.least);
        }
        if (isMissed(point)) {
            return true;
        }
    }
    return false;
}

// Whether somewhere in the box a vector would have to act against its given sense.
bool Missing::isLostSomewhere() const {
    constexpr long double kSure = 1e-12L;
    for (const Piece& piece : lost_) {
        const std::vector<Piece> alone{piece};
        const std::size_t which = piece.unknown[0].flipped ? 0 : 1;
        Search search(problem_, alone, which, 4 * boxes_);
        if (!search.isEmpty() && search.best(Goal::greatestMagnitude).value <= kSure) {
            search.run(Goal::greatestMagnitude, boxes_);
        }
        if (search.best(Goal::greatestMagnitude).value > kSure) {
            return true;
        }
    }
    return false;
}

// The length of one vector from all that is known, or of the foot from it to a line: from least to greatest.
Extent Missing::extentOf(const std::vector<Piece>& pieces, std::size_t which) const {
    Search search(problem_, pieces, which, 4 * boxes_);
    const Extreme least = search.run(Goal::leastMagnitude, boxes_);
    const Extreme greatest = search.run(Goal::greatestMagnitude, boxes_);
    return {least.best.isThere ? -least.best.value : 0, greatest.best.isThere ? greatest.best.value : 0};
}

// Whether somewhere in the box a line misses a circle, circles miss one another, or lines are parallel.
bool Missing::missesSomewhere() const {
    const Piece& piece = pieces_.front();
    const auto& [first, second] = piece.unknown;
    const auto spanOf = [&](const Unknown& unknown) {
        return problem_.box.vectors[unknown.vector].magnitude;
    };
    const long double room = problem_.slack;
    if (piece.rule == Rule::lines) {
        const double between = second.sector.middle() - first.sector.middle();
        const double reach = (first.sector.width() + second.sector.width()) / 2;
        return std::fabs(std::remainder(between, std::numbers::pi)) < reach;
    }
    if (piece.rule == Rule::circles) {
        Piece whole;
        whole.unknown[0] = first;
        whole.unknown[0].sector = sectorOf(0, kNever, 0, 2 * std::numbers::pi);
        const Extent gap = extentOf({whole}, 0);
        const Span a = spanOf(first), b = spanOf(second);
        return gap.greatest > a.least + b.least + room || gap.least < a.greatest - b.least - room ||
               gap.least < b.greatest - a.least - room;
    }
    if (piece.rule == Rule::circle) {
        const std::size_t circle = first.isLine ? 1 : 0;
        const long double radius = spanOf(piece.unknown[circle]).least;
        return extentOf(feetOf(piece), circle).greatest > radius + room;
    }
    return false;
}

// Line and circle made to line and foot, both ways along the line and to both sides of it.
std::vector<Piece> Missing::feetOf(const Piece& piece) const {
    std::vector<Piece> feet;
    const std::size_t line = piece.unknown[0].isLine ? 0 : 1;
    for (const bool flip : {false, true}) {
        for (const int side : {0, 1}) {
            Piece foot = piece;
            foot.rule = Rule::foot;
            foot.root = side;
            const double quarter = (side == 0 ? 1 : -1) * std::numbers::pi / 2;
            foot.relation = {false, quarter, quarter};
            foot.unknown[1 - line].sector = sectorOf(0, kNever, 0, 2 * std::numbers::pi);
            Unknown& own = foot.unknown[line];
            own.flipped = flip;
            own.sector = sectorOf(problem_.box.vectors[own.vector], problem_.turnedOf(own.vector, flip));
            own.sector.least = 0;
            own.sector.greatest = kNever;
            feet.push_back(foot);
        }
    }
    return feet;
}

} // namespace

bool isEverywhere(const Problem& problem, const std::vector<Piece>& pieces, const std::vector<Piece>& lost,
                  int boxes) {
    const Missing missing(problem, pieces, lost, boxes);
    return !missing.isMissedNearby() && !missing.isLostSomewhere() && !missing.missesSomewhere();
}

} // namespace tailpoint::tolerance
