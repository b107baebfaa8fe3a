// SPDX-License-Identifier: MIT
#include "core/figure/attempt_list.h"

#include "core/figure/labels.h"
#include "core/figure/strokes.h"

#include <algorithm>
#include <numbers>

namespace tailpoint {
namespace {

using Kind = AttemptStroke::Kind;

constexpr double kAside = 6;                       ///< points, a step off a stroke on the same line
constexpr double kCornerArc = 0.3, kLeastArc = 20; ///< of the leg; points
constexpr double kDirectionStep = 20;              ///< points between arcs of directions
constexpr double kHeadAt = 8;                      ///< points, of a thin arrow's head
constexpr double kCut = 0.5;                       ///< points that a tip lies beyond the sheet
constexpr double kThickness = 1.2;                 ///< by the construction's

double degreesFrom(Point a, Point b) {
    return degreesOf(b - a);
}

double reachOfArcs(const DisplayList& list, Point centre) {
    double reach = 2 * kDirectionStep;
    for (const Group& group : list.groups)
        for (const Item& item : group.items)
            if (const Arc* arc = std::get_if<Arc>(&item);
                arc && length(arc->centre - centre) < 1 && std::abs(arc->sweepDegrees) < 360)
                reach = std::max(reach, arc->radius);
    return reach;
}

void include(std::optional<Box>& all, Point p) {
    if (!all)
        all = Box{p.x, p.y, 0, 0};
    const double left = std::min(all->left, p.x), top = std::min(all->top, p.y);
    all = Box{left, top, std::max(all->right(), p.x) - left, std::max(all->bottom(), p.y) - top};
}

/// The title block's frame: nothing runs over it.
std::vector<Box> coversOf(const DisplayList& list) {
    std::vector<Box> covers;
    for (const Group& group : list.groups) {
        std::optional<Box> frame;
        for (const Item& item : group.items)
            if (const Path* path = std::get_if<Path>(&item); path && group.role == Role::titleblock)
                for (const Point p : path->points)
                    include(frame, p);
        if (frame)
            covers.push_back(*frame);
    }
    return covers;
}

class Listing {
public:
    Listing(const DisplayList& under, const View& view, const Style& style)
        : m_view(view), m_style(style), m_sheet{0, 0, view.width, view.height}, m_under(under),
          m_covers(coversOf(under)), m_arcs(reachOfArcs(under, view.origin)) {
        m_list.width = view.width;
        m_list.height = view.height;
    }

    void add(const AttemptStroke& stroke) {
        Group group;
        group.role = stroke.isRight ? (stroke.of == kSumVector ? Role::sum
                                       : stroke.of == kNobody  ? Role::construction
                                                               : Role::given)
                                    : Role::construction;
        group.id = "own-" + std::to_string(m_list.groups.size());
        group.title = {plainText(stroke.label), {}};
        m_list.groups.push_back(std::move(group));
        const auto feature = draw(stroke, m_list.groups.back());
        if (feature && !stroke.label.empty())
            ask(stroke, *feature);
        m_isCut = false;
    }

    /// Texts of the figure that strokes run into stand before them.
    void liftTexts() {
        Obstacles strokes(m_sheet, m_sheet);
        for (const Group& group : m_list.groups)
            for (const Item& item : group.items)
                strokes.add(item);
        strokes.settle();
        Group lifted;
        lifted.role = Role::label;
        lifted.id = "own-texts";
        for (const Group& group : m_under.groups)
            for (const Item& item : group.items)
                if (const Text* text = std::get_if<Text>(&item);
                    text != nullptr && !strokes.isClearOfStrokes(text->box)) {
                    lifted.items.emplace_back(*text);
                    std::get<Text>(lifted.items.back()).halo = true;
                }
        m_list.groups.push_back(std::move(lifted));
    }

    void putLabels(const TextMeasure& measure, std::span<const Box> taken) {
        Obstacles obstacles(m_sheet, grown(m_sheet, -2));
        int owner = static_cast<int>(m_list.groups.size());
        for (const Group& group : m_under.groups)
            if (group.role != Role::sheet && group.role != Role::grid && group.role != Role::highlight &&
                group.role != Role::region)
                for (const Item& item : group.items)
                    obstacles.add(item, owner++, kArrowWeight);
        for (std::size_t i = 0; i < m_list.groups.size(); ++i)
            for (const Item& item : m_list.groups[i].items)
                obstacles.add(item, static_cast<int>(i));
        obstacles.settle();
        for (const Box& box : taken)
            obstacles.addLabel(box);
        std::erase_if(m_requests, [&](LabelRequest& request) {
            return !keepSeen(request.anchor, m_sheet, m_covers, m_style.factor);
        });
        auto placed = placeLabels(m_requests, obstacles, measure, {}, m_style.factor);
        for (std::size_t i = 0; i < placed.size(); ++i) {
            if (!placed[i] || placed[i]->letter) // there is no key that would tell what it means
                continue;
            Group& group = m_list.groups[m_requests[i].group];
            if (placed[i]->leader)
                group.items.emplace_back(std::move(*placed[i]->leader));
            placed[i]->text.halo = true;
            group.items.emplace_back(std::move(placed[i]->text));
        }
    }
    DisplayList take() { return std::move(m_list); }

private:
    double width() const {
        return kThickness * std::max(m_style.constructionWidth * m_style.factor, m_style.leastStroke);
    }

    void ask(const AttemptStroke& stroke, const Feature& feature) {
        LabelRequest request;
        request.group = m_list.groups.size() - 1;
        request.id = m_list.groups.back().id;
        request.anchor = feature;
        request.ink = stroke.isRight ? m_list.groups.back().role : Role::label;
        request.size = (stroke.kind == Kind::arc ? m_style.angleSize : m_style.labelSize) * m_style.factor;
        request.full = stroke.label;
        if (m_isCut) {
            const Runs far = plainRuns(", beyond the sheet");
            request.full.insert(request.full.end(), far.begin(), far.end());
        }
        request.home = homeOf(feature);
        m_requests.push_back(std::move(request));
    }

    std::optional<Feature> draw(const AttemptStroke& stroke, Group& group) {
        const Dash dash = stroke.isRight ? Dash::solid : Dash::dashed;
        Point a = m_view.toSheet(stroke.from), b = m_view.toSheet(stroke.to);
        const Point off = stroke.aside * kAside * m_style.factor * leftOf(unitFrom(a, b));
        a = a + off;
        b = b + off;
        switch (stroke.kind) {
        case Kind::arc:
            return drawArc(stroke, a, b, group);
        case Kind::circle:
            return drawCircle(a, length(b - a), dash, group);
        case Kind::ray:
            b = a + (m_sheet.width + m_sheet.height) * unitFrom(a, b);
            break;
        case Kind::arrow:
        case Kind::line:
            break;
        }
        if (length(b - a) < 1)
            return std::nullopt;
        const Shaft shaft{a, b};
        const Point tip = b;
        if (!clip(m_sheet, a, b))
            return std::nullopt;
        m_isCut = stroke.kind == Kind::arrow && length(tip - b) > kCut;
        addLine(a, b, dash, group);
        if (stroke.kind == Kind::arrow && !m_isCut)
            addHead(group.items, group.role, tip, unitFrom(shaft.tail, tip),
                    std::min(kHeadAt * m_style.factor, 0.4 * length(tip - shaft.tail)), Head::small, width());
        return Shaft{a, b};
    }

    void addLine(Point a, Point b, Dash dash, Group& group) const {
        for (const auto& [from, to] : visibleParts(a, b, m_sheet, m_covers))
            group.items.emplace_back(line(group.role, a + from * (b - a), a + to * (b - a), width(), dash));
    }

    std::optional<Feature> drawArc(const AttemptStroke& stroke, Point corner, Point leg, Group& group) {
        const double sweep = stroke.sweep * 180 / std::numbers::pi;
        double radius =
            std::clamp(kCornerArc * length(leg - corner), kLeastArc, 2 * kLeastArc) * m_style.factor;
        if (stroke.isDirection)
            radius = m_arcs + kDirectionStep * ++m_directions;
        addArc(group.items, group.role, corner, radius, degreesFrom(corner, leg), sweep, width(),
               stroke.isDirection);
        for (Item& item : group.items)
            if (Arc* arc = std::get_if<Arc>(&item))
                arc->dash = Dash::dashed;
        return Sector{corner, radius, degreesFrom(corner, leg), sweep};
    }

    std::optional<Feature> drawCircle(Point centre, double radius, Dash dash, Group& group) {
        const auto seen = visibleArcs(centre, radius, m_sheet, m_covers);
        for (const auto& [start, sweep] : seen)
            group.items.emplace_back(Arc{group.role, centre, radius, start, sweep, width(), dash});
        return seen.empty() ? drawBeyond(centre, dash, group)
                            : std::optional<Feature>(
                                  Sector{centre, radius, seen.front()[0], seen.front()[1], {}, false, false});
    }

    /// What lies wholly beyond the sheet is told on the way to its farthest corner.
    std::optional<Feature> drawBeyond(Point centre, Dash dash, Group& group) {
        const Point corner{centre.x > m_sheet.width / 2 ? 0 : m_sheet.width,
                           centre.y > m_sheet.height / 2 ? 0 : m_sheet.height};
        const auto seen = visibleParts(centre, corner, m_sheet, m_covers);
        if (seen.empty())
            return std::nullopt;
        m_isCut = true;
        const Point from = centre + seen.front()[0] * (corner - centre),
                    to = centre + seen.front()[1] * (corner - centre);
        group.items.emplace_back(line(group.role, from, to, width(), dash));
        return Shaft{from, to};
    }

    const View& m_view;
    const Style& m_style;
    Box m_sheet;
    const DisplayList& m_under;
    std::vector<Box> m_covers;
    DisplayList m_list;
    std::vector<LabelRequest> m_requests;
    double m_arcs;        ///< how far the figure's own arcs reach from the common point, points
    int m_directions = 0; ///< arcs of directions so far
    bool m_isCut = false; ///< the stroke that is being added goes on beyond the sheet
};

} // namespace

DisplayList attemptList(const std::vector<AttemptStroke>& strokes, const DisplayList& under, const View& view,
                        const Style& style, const TextMeasure& measure, std::span<const Box> taken) {
    Listing listing(under, view, style);
    for (const bool isRight : {false, true})
        for (const AttemptStroke& stroke : strokes)
            if (stroke.isRight == isRight)
                listing.add(stroke);
    listing.liftTexts();
    listing.putLabels(measure, taken);
    return listing.take();
}

} // namespace tailpoint
