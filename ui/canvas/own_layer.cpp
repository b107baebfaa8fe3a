// SPDX-License-Identifier: MIT
#include "ui/canvas/own_layer.h"

#include "core/construct/reduction.h"
#include "core/figure/attempt_list.h"
#include "core/figure/hit.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/words.h"
#include "ui/marking/own_answer.h"
#include "ui/style/painted_sentence.h"
#include "ui/style/symbols.h"

#include <QLineF>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {

namespace {

constexpr double kThin = 1.2, kHead = 9, kHeadSpread = 0.36; // pixels, pixels, radians either side
constexpr double kLabel = 13;                                // points, as labels of the figure
constexpr double kSelected = 4;                              // its ring of the keyboard, outside it
constexpr double kRing = 7;                                  // of a tip that can be dragged
constexpr double kBeside = 0.35;                             // radians: so near another arrow it is lost
constexpr double kClearOfOwn = 24;                           // points from a label: its own has room
constexpr double kShortest = 40;                             // pixels: clear of the common point
constexpr double kBeyond = 18;                               // points from a tip to its name
constexpr double kInside = 30;                               // points from the sheet's edge
constexpr double kFirstPart = 0.4;                           // of the longest given force
constexpr double kFirstPixels = 120;                         // without one
constexpr double kTipBox = 44;                               // points about a tip: its ring and its name

Eigen::Vector2d turned(const Eigen::Vector2d& v, double radians) {
    const double c = std::cos(radians), s = std::sin(radians);
    return {c * v.x() - s * v.y(), s * v.x() + c * v.y()};
}

double longestGiven(const Sketch& sketch) {
    double longest = sketch.sum.magnitude.value.value_or(0);
    for (const Force& force : sketch.forces)
        longest = std::max(longest, force.magnitude.value.value_or(0));
    return longest;
}

bool isBeside(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return std::abs(std::atan2(a.x() * b.y() - a.y() * b.x(), a.dot(b))) < kBeside;
}

bool isOnLabel(const std::vector<SheetLabel>& labels, const Point& at) {
    return std::any_of(labels.begin(), labels.end(), [&](const SheetLabel& label) {
        const QRectF box(label.box.left, label.box.top, label.box.width, label.box.height);
        return box.adjusted(-kClearOfOwn, -kClearOfOwn, kClearOfOwn, kClearOfOwn).contains(at.x, at.y);
    });
}

bool isFree(const Scene& scene, const Eigen::Vector2d& tip) {
    const View& view = scene.sheet().view();
    const QRectF room = QRectF(0, 0, view.width, view.height).adjusted(kInside, kInside, -kInside, -kInside);
    const Point at = view.toSheet(tip);
    return room.contains(at.x, at.y) && !isOnLabel(labelsOn(scene.figure().list), at);
}

/// Of a given direction: in the sense in which it is given, whichever the answer has.
Eigen::Vector2d placeAlong(const Scene& scene, const Eigen::Vector2d& unit, double length) {
    const double shortest = kShortest / scene.sheet().pixelsPerUnit();
    const Eigen::Vector2d name = kBeyond / scene.sheet().view().scale * unit; // where its own stands
    for (const double size : {1.0, 0.65, 1.35, 1.7, 2.1})
        if (const Eigen::Vector2d tip = size * length * unit;
            size * length >= shortest && isFree(scene, tip) && isFree(scene, tip + name))
            return tip;
    return std::max(length, shortest) * unit;
}

/// Off the axis that the question counts from, where nothing else stands. Says nothing of the answer: it is
/// made from what is given.
Eigen::Vector2d firstPlace(const Scene& scene, VectorId vector, const std::vector<Eigen::Vector2d>& taken) {
    const Sketch& sketch = scene.sketch();
    const SheetView& sheet = scene.sheet();
    const double longest = longestGiven(sketch);
    const double length = longest > 0 ? kFirstPart * longest : kFirstPixels / sheet.pixelsPerUnit();
    const auto axis = unitVector(Direction{AngleForm{0}, {}}, sketch);
    const Eigen::Vector2d along =
        length * (axis ? Eigen::Vector2d(double(axis->cos), double(axis->sin)) : Eigen::Vector2d(1, 0));
    if (const Force* force = forceAt(sketch, indexOf(vector)))
        if (const auto unit = unitVector(force->direction, sketch))
            return placeAlong(scene, {double(unit->cos), double(unit->sin)}, length);
    std::optional<Eigen::Vector2d> anywhere; // long enough to be taken
    for (const double size : {1.0, 0.65}) {
        for (const double degrees : {70.0, 100.0, -70.0, -100.0, 130.0, -130.0, 160.0, -160.0, 40.0, -40.0}) {
            const Eigen::Vector2d place =
                scene.ownAnswer()->held(vector, turned(size * along, degrees * std::numbers::pi / 180));
            const auto isNear = [&](const Eigen::Vector2d& other) { return isBeside(place, other); };
            if (std::hypot(place.x(), place.y()) * sheet.pixelsPerUnit() < kShortest)
                continue;
            if (isFree(scene, place) && std::none_of(taken.begin(), taken.end(), isNear))
                return place;
            anywhere = anywhere ? anywhere : place;
        }
    }
    return anywhere.value_or(along);
}

/// The constructions of the slip and of what is right, as far as they are to be shown.
void paintMarked(QPainter& painter, const Scene& scene, const OwnAnswer& answer, const Theme& theme) {
    std::vector<AttemptStroke> strokes = answer.slipDrawing();
    const std::vector<AttemptStroke> right = answer.answerDrawing();
    strokes.insert(strokes.end(), right.begin(), right.end());
    if (strokes.empty())
        return;
    const SheetView& sheet = scene.sheet();
    std::vector<Box> tips;
    for (const OwnTip& own : ownTips(scene)) {
        const Point at = sheet.view().toSheet(own.tip);
        tips.push_back({at.x - kTipBox / 2, at.y - kTipBox / 2, kTipBox, kTipBox});
    }
    painter.save();
    painter.scale(sheet.pixelsPerPoint(), sheet.pixelsPerPoint());
    paint(
        painter,
        attemptList(strokes, scene.figure().list, sheet.view(), scene.options().style, scene.measure(), tips),
        theme, Layer::foreground);
    painter.restore();
}

Sentence nameOf(const Scene& scene, VectorId vector) {
    return {symbolWords(scene.result().things(), vector)};
}

/// Where the sheet tells something that belongs to no part of the figure: note, caution, key, title block;
/// pixels.
std::vector<QRectF> toldOn(const Scene& scene) {
    std::vector<QRectF> boxes;
    for (const Group& group : scene.figure().list.groups) {
        if (group.part || (group.role != Role::label && group.role != Role::titleblock))
            continue;
        for (const Item& item : group.items)
            if (const auto* text = std::get_if<Text>(&item))
                boxes.push_back(scene.sheet().toPixels(text->box));
    }
    return boxes;
}

/// Paints over the figure in pixels.
class OwnPainter {
public:
    OwnPainter(QPainter& painter, const Scene& scene, const Theme& theme)
        : m_painter(painter), m_scene(scene), m_theme(theme), m_font(serifFont()), m_told(toldOn(scene)) {
        m_font.setPixelSize(static_cast<int>(std::lround(kLabel * scene.sheet().pixelsPerPoint())));
    }

    void tip(const OwnTip& own, bool isSelected) {
        const QColor colour = roleColour(own.vector);
        if (isSelected) {
            m_painter.setPen(QPen(colour, 2 * kThin));
            m_painter.setBrush(m_theme.highlight);
            m_painter.drawEllipse(m_scene.sheet().toPixels(own.tip), kRing + kSelected, kRing + kSelected);
        }
        pen(own.isDrawn ? colour : m_theme.construction, own.isDrawn ? Qt::SolidLine : Qt::DotLine);
        if (own.isDrawn)
            arrow(own.tip);
        else
            shaft(own.tip);
        m_painter.setPen(QPen(colour, kThin));
        m_painter.drawEllipse(m_scene.sheet().toPixels(own.tip), kRing, kRing);
        label(own.tip, nameOf(m_scene, own.vector), colour);
    }

    QColor roleColour(VectorId vector) const {
        return m_theme.colour(vector == kSumVector ? Role::sum : Role::given);
    }

private:
    void pen(const QColor& colour, Qt::PenStyle style) {
        QPen pen(colour, kThin, style, Qt::FlatCap);
        if (style == Qt::DashLine)
            pen.setDashPattern({6, 4});
        m_painter.setPen(pen);
        m_painter.setBrush(Qt::NoBrush);
    }

    QPointF shaft(const Eigen::Vector2d& to) {
        const QPointF from = m_scene.sheet().toPixels(Eigen::Vector2d(0, 0));
        m_painter.drawLine(from, m_scene.sheet().toPixels(to));
        return from;
    }

    void arrow(const Eigen::Vector2d& to) {
        const QPointF from = shaft(to), tip = m_scene.sheet().toPixels(to);
        const double back = std::atan2(from.y() - tip.y(), from.x() - tip.x());
        QPen head = m_painter.pen();
        head.setStyle(Qt::SolidLine);
        m_painter.setPen(head);
        for (const double way : {back - kHeadSpread, back + kHeadSpread})
            m_painter.drawLine(tip, tip + kHead * QPointF(std::cos(way), std::sin(way)));
    }

    /// Beyond the tip, or beside it where it would lie over what the sheet tells; on a ground of the sheet's
    /// own.
    void label(const Eigen::Vector2d& tip, const Sentence& words, const QColor& colour) {
        const PaintedSentence set(m_font, 1);
        const QFontMetricsF metrics(m_font);
        const QRectF box = labelBox(tip, {set.width(words), metrics.height()});
        m_painter.fillRect(box.adjusted(-2, 0, 2, 0), m_theme.sheet);
        m_painter.setPen(colour);
        set.draw(m_painter, {box.left(), box.top() + metrics.ascent()}, words);
    }

    QRectF labelBox(const Eigen::Vector2d& tip, QSizeF size) const {
        const double away = std::hypot(tip.x(), tip.y());
        const Eigen::Vector2d beyond = away > 0 ? Eigen::Vector2d(tip / away) : Eigen::Vector2d(1, 0);
        const auto isTold = [&](const QRectF& box) {
            return std::any_of(m_told.begin(), m_told.end(),
                               [&](const QRectF& told) { return told.intersects(box); });
        };
        for (const double degrees : {0.0, 60.0, -60.0, 120.0, -120.0, 180.0})
            if (const QRectF box = boxToward(tip, turned(beyond, degrees * std::numbers::pi / 180), size);
                !isTold(box))
                return box;
        return boxToward(tip, beyond, size);
    }

    /// Kept on the sheet.
    QRectF boxToward(const Eigen::Vector2d& tip, const Eigen::Vector2d& way, QSizeF size) const {
        QRectF box({}, size);
        box.moveCenter(m_scene.sheet().toPixels(tip) +
                       QPointF(way.x() * (box.width() / 2 + 15), -way.y() * (box.height() / 2 + 13)));
        const View& view = m_scene.sheet().view();
        const QRectF all(QPointF(4, 4),
                         m_scene.sheet().toPixels(Point{view.width, view.height}) - QPointF(4, 4));
        box.moveLeft(std::clamp(box.left(), all.left(), std::max(all.left(), all.right() - box.width())));
        box.moveTop(std::clamp(box.top(), all.top(), std::max(all.top(), all.bottom() - box.height())));
        return box;
    }

    QPainter& m_painter;
    const Scene& m_scene;
    const Theme& m_theme;
    QFont m_font;
    std::vector<QRectF> m_told;
};

} // namespace

std::vector<OwnTip> ownTips(const Scene& scene) {
    const OwnAnswer* answer = scene.ownAnswer();
    if (answer == nullptr)
        return {};
    std::vector<Eigen::Vector2d> taken;
    for (const DrawnVector& drawn : scene.drawn())
        taken.push_back(drawn.tip);
    std::vector<OwnTip> tips;
    for (const VectorId vector : answer->drawable()) {
        const auto drawn = answer->drawn(vector);
        if (!drawn && (answer->isSlipShown() || answer->isAnswerShown()))
            continue; // nothing to be taken: what is shown has the room
        tips.push_back({vector, drawn ? *drawn : firstPlace(scene, vector, taken), drawn.has_value()});
        taken.push_back(tips.back().tip);
    }
    return tips;
}

void paintOwnAnswer(QPainter& painter, const Scene& scene, const Theme& theme, int selected) {
    const OwnAnswer* answer = scene.ownAnswer();
    if (answer == nullptr)
        return;
    OwnPainter own(painter, scene, theme);
    paintMarked(painter, scene, *answer, theme);
    for (const OwnTip& tip : ownTips(scene))
        own.tip(tip, indexOf(tip.vector) == selected);
}

OwnTipGesture::OwnTipGesture(GestureContext context, OwnAnswer& answer, const DrawnVector& drawn,
                             QPointF press)
    : m_context(std::move(context)), m_answer(answer), m_drawn(drawn), m_press(press),
      m_grip(press - m_context.scene.sheet().toPixels(drawn.tip)),
      m_before(answer.drawn(vectorId(drawn.vector))) {}

void OwnTipGesture::move(const Pointer& pointer) {
    if (!m_moved && QLineF(m_press, pointer.at).length() < kDragStart)
        return;
    m_moved = true;
    const VectorId vector = vectorId(m_drawn.vector);
    m_answer.draw(vector, m_context.scene.sheet().toSketch(pointer.at - m_grip));
    const Eigen::Vector2d tip = *m_answer.drawn(vector);
    const Polar polar = polarOf(tip, m_context.scene.sketch());
    m_feedback.name = nameOf(m_context.scene, vector);
    m_feedback.readout = words::place(polar.magnitude, polar.referred, m_context.scene.sketch());
    m_feedback.tip = tip;
}

/// Where the magnitude is given the tip goes round a circle, and more sheet doesn't help.
bool OwnTipGesture::reaches(Qt::KeyboardModifiers) const {
    const Force* force = forceAt(m_context.scene.sketch(), m_drawn.vector);
    return m_moved && force != nullptr && !isGiven(force->magnitude);
}

void OwnTipGesture::cancel() {
    if (m_moved)
        m_answer.draw(vectorId(m_drawn.vector), m_before);
}

} // namespace tailpoint
