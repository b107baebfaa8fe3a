// Forces, the sum, the common point, the other answer, the highlight and the note.
#include "core/figure/drawing.h"

#include <algorithm>

namespace tailpoint {
namespace {

bool isMoved(const Drawing& d, int index, Eigen::Vector2d& tail) {
    if (d.kind() != ConstructionKind::triangle || !d.shows(stages::construction))
        return false;
    const ForceTriangle& t = d.options.otherOrder ? *d.construction.otherTriangle : *d.construction.triangle;
    const std::string& name = d.vectors.at(index).name;
    if (name == t.names[1]) {
        tail = t.corners[1];
        return true;
    }
    if (name == t.names[2] && index != kSumIndex) { // the third force in equilibrium closes the triangle
        tail = t.corners[2];
        return true;
    }
    return false;
}

Runs labelOf(const Drawing& d, const PlainVector& vector) {
    const bool shown =
        vector.hasMagnitude && d.options.values && (!vector.foundMagnitude || d.shows(stages::magnitudes));
    if (!shown)
        return nameRuns(vector.name);
    const Origin origin = vector.foundMagnitude ? Origin::computed : Origin::typed;
    return valueRuns(vector.name, shownForceWithUnit(vector.magnitude, d.sketch, origin));
}

/// The side with more room: away from the middle of the other vectors.
double sideOfShaft(const Drawing& d, int index) {
    const Eigen::Vector2d own = d.vectors.at(index).unit;
    double turn = 0;
    const auto weigh = [&](const PlainVector& other, int i) {
        if (i != index && d.isDrawn(other))
            turn += (own.x() * other.unit.y() - own.y() * other.unit.x() > 0 ? 1 : -1);
    };
    for (std::size_t i = 0; i < d.vectors.forces.size(); ++i)
        weigh(d.vectors.forces[i], static_cast<int>(i));
    weigh(d.vectors.sum, kSumIndex);
    if (turn != 0)
        return turn > 0 ? -1 : 1;
    return own.x() >= 0 ? (index == kSumIndex ? -1 : 1) : -1;
}

void drawVector(Drawing& d, int index) {
    const PlainVector& vector = d.vectors.at(index);
    if (!d.isDrawn(vector))
        return;
    const bool isSum = index == kSumIndex;
    const Role role = isSum ? Role::sum : Role::given;
    const Ends ends = endsOf(d, index);
    Group& g = d.add(role, d.idOfVector(index), titleOf(vector, d.referred(index), isSum, d.sketch), index);
    const Style& style = d.options.style;
    addArrow(g.items, role, ends.tail, ends.tip, d.weight(isSum ? style.sumWidth : style.givenWidth),
             isSum ? Head::open : Head::filled);
    d.ask(Shaft{ends.tail, ends.tip}, role, style.labelSize, labelOf(d, vector), nameRuns(vector.name));
    d.labels.back().side = sideOfShaft(d, index);
}

} // namespace

Ends endsOf(const Drawing& d, int index) {
    Eigen::Vector2d tail(0, 0);
    isMoved(d, index, tail);
    return {d.view.toSheet(tail), d.view.toSheet(tail + d.vectors.at(index).vector)};
}

void drawVectors(Drawing& d) {
    for (std::size_t i = 0; i < d.vectors.forces.size(); ++i)
        drawVector(d, static_cast<int>(i));
    drawVector(d, kSumIndex);
}

void drawPoint(Drawing& d) {
    Disc ring;
    ring.centre = d.common();
    ring.radius = 3.2 * d.factor;
    ring.width = 1.2 * d.factor;
    d.add(Role::point, "point", "Common point").items.emplace_back(ring);
}

void drawHighlight(Drawing& d) {
    const int index = d.options.highlighted;
    if (index != kSumIndex && (index < 0 || index >= static_cast<int>(d.vectors.forces.size())))
        return;
    if (!d.isDrawn(d.vectors.at(index)))
        return;
    const Ends ends = endsOf(d, index);
    d.add(Role::highlight, "highlight", "", index)
        .items.emplace_back(line(Role::highlight, ends.tail, ends.tip, 9 * d.factor));
}

void drawOtherAnswer(Drawing& d) {
    if (d.solved.solutions.size() < 2 || !d.shows(stages::found))
        return;
    const std::size_t other = d.options.solution == 0 ? 1 : 0;
    const Vectors vectors = vectorsOf(d.sketch, d.solved, other);
    const auto ghost = [&](int index) {
        const PlainVector& v = vectors.at(index);
        if (!v.found() || !d.isDrawn(v))
            return;
        const Role role = index == kSumIndex ? Role::sum : Role::given;
        Group& g = d.add(role, "other-" + d.idOfVector(index), "The other answer: " + v.name, index);
        addArrow(g.items, role, d.common(), d.view.toSheet(v.vector),
                 d.weight(d.options.style.constructionWidth), Head::open, Dash::dotted);
    };
    for (std::size_t i = 0; i < vectors.forces.size(); ++i)
        ghost(static_cast<int>(i));
    ghost(kSumIndex);
}

void drawNote(Drawing& d) {
    if (d.solved.message.empty() || d.solved.status == Status::unique)
        return;
    Group& g = d.add(Role::label, "note", "");
    Text text;
    text.baseline = {16 * d.factor, d.view.height - 16 * d.factor};
    text.anchor = Anchor::start;
    text.face = Face::sans;
    text.size = 10 * d.factor;
    text.runs = plainRuns(withMinus(d.solved.message));
    const TextExtent e = d.measure.measure(text.runs, text.face, text.size);
    text.box = {text.baseline.x, text.baseline.y - e.ascent, e.width, e.ascent + e.descent};
    g.items.emplace_back(text);
}

} // namespace tailpoint
