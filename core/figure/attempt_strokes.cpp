#include "core/figure/attempt_strokes.h"

#include "core/figure/slip_numbers.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace tailpoint {
namespace {

using Vector = Eigen::Vector2d;
using Kind = AttemptStroke::Kind;

constexpr double kOneSize = 1e-6;     ///< relative: the same number by another way
constexpr double kClosed = 0.01;      ///< of all magnitudes: tips that meet, as drawn
constexpr double kLeastSweep = 0.035; ///< radians: a smaller arc isn't seen
constexpr double kFlat = 0.02;        ///< radians: a triangle as thin as a line

double cross(const Vector& a, const Vector& b) {
    return a.x() * b.y() - a.y() * b.x();
}
Vector turnedBy(const Vector& v, double radians) {
    const double c = std::cos(radians), s = std::sin(radians);
    return {c * v.x() - s * v.y(), s * v.x() + c * v.y()};
}
bool isClose(double a, double b) {
    return std::abs(a - b) <= kOneSize * std::max(std::abs(a), std::abs(b));
}

/// Two known sides that are added tip to tail, and whether the third runs back to where they began.
struct KnownSides {
    VectorId first, second;
    Vector a, b;
    bool areTails = false; ///< both stand at the common point as they are drawn
    bool isLoop = false;
};

class SlipDrawing {
public:
    SlipDrawing(const Sketch& sketch, const Marking& marking)
        : m_sketch(sketch), m_slip(marking.slips.front()), m_things(sketch), m_numbers(sketch, marking),
          m_asked(asked(sketch)) {}

    std::vector<AttemptStroke> strokes() {
        forEachVector([&](VectorId vector) { addVector(vector); });
        if (m_asked.family == Family::closePolygon && vectorId(m_asked.unknownVectors[0]) == kSumVector)
            m_sketch.forces.size() == 2 ? addParallelogram() : addPolygon();
        else if (m_asked.family != Family::closePolygon || m_anyChanged)
            addPolygon();
        return std::move(m_strokes);
    }

private:
    template <class Take>
    void forEachVector(Take take) const {
        for (std::size_t i = 0; i < m_sketch.forces.size(); ++i)
            take(forceVector(i));
        take(kSumVector);
    }

    /// "your R = 335 N"; without a value the name alone.
    Runs yours(VectorId vector, const std::optional<double>& size) const {
        Runs runs = plainRuns("your ");
        const Symbol symbol = m_things.symbol(vector);
        const Runs named = size ? valueRuns(symbol, shownForceWithUnit(*size, m_sketch)) : symbolRuns(symbol);
        runs.insert(runs.end(), named.begin(), named.end());
        return runs;
    }
    void add(Kind kind, const Vector& from, const Vector& to, Runs label = {}, VectorId of = kNobody,
             int aside = 0) {
        AttemptStroke stroke;
        stroke.kind = kind;
        stroke.of = of;
        stroke.from = from;
        stroke.to = to;
        stroke.aside = aside;
        stroke.label = std::move(label);
        m_strokes.push_back(std::move(stroke));
    }
    void addArc(const Vector& at, const Vector& leg, double sweep, double value, bool isDirection) {
        if (std::abs(sweep) < kLeastSweep)
            return;
        add(Kind::arc, at, at + leg, plainRuns(withMinusSigns(shownAngle(value, m_sketch))));
        m_strokes.back().sweep = sweep;
        m_strokes.back().isDirection = isDirection;
    }
    /// From the axis, in the sheet's sense.
    void addDirection(double referred) {
        const double axis = m_sketch.reference.axisDegrees * std::numbers::pi / 180;
        const double sweep = referred * 2 * std::numbers::pi / turnIn(m_sketch.angleUnit);
        addArc({0, 0}, {std::cos(axis), std::sin(axis)},
               m_sketch.reference.sense == Sense::ccw ? sweep : -sweep, referred, true);
    }
    /// Along x, then along y.
    void addLegs(VectorId vector, const Vector& to) {
        if (std::min(std::abs(to.x()), std::abs(to.y())) <= kClosed * to.norm())
            return;
        const Vector corner(to.x(), 0);
        add(Kind::line, {0, 0}, corner, symbolRuns(m_things.symbol(QuantityId{What::x, vector})));
        add(Kind::line, corner, to, symbolRuns(m_things.symbol(QuantityId{What::y, vector})));
    }

    void addVector(VectorId vector) {
        const SlipVector one = m_numbers.at(vector);
        if (m_numbers.isGivenWhole(vector)) {
            if (one.isChanged)
                addChanged(vector, one);
            return;
        }
        m_anyChanged = m_anyChanged || one.isChanged;
        const auto shown = one.isWrongSize ? one.size : std::nullopt;
        if (one.isWhole())
            addWhole(vector, one);
        else if (one.size && one.isWrongSize)
            addSize(vector, *one.size);
        else if (one.radians && (one.isWrongWay || one.isChanged))
            add(Kind::ray, {0, 0}, m_numbers.scale() * Vector(std::cos(*one.radians), std::sin(*one.radians)),
                yours(vector, shown), vector);
        if (one.referred && one.isWrongWay)
            addDirection(*one.referred);
    }
    void addChanged(VectorId vector, const SlipVector& one) {
        m_anyChanged = true;
        if (*one.size == 0)
            return;
        const bool isSize = !isClose(*one.size, *m_numbers.given(vector).magnitude.value);
        add(Kind::arrow, {0, 0}, one.vector(), yours(vector, isSize ? one.size : std::nullopt), vector);
        if (!m_slip.read)
            addLegs(vector, one.vector());
    }
    void addWhole(VectorId vector, const SlipVector& one) {
        const bool isSizeSought = !isGiven(m_numbers.given(vector).magnitude);
        add(Kind::arrow, {0, 0}, one.vector(), yours(vector, isSizeSought ? one.size : std::nullopt), vector);
        const bool isAlone = m_asked.family == Family::closePolygon; // of two the legs would hide the figure
        const auto parts = m_slip.read || !isAlone ? std::nullopt : m_numbers.components(vector);
        if (parts && (*parts - one.vector()).norm() <= kClosed * *one.size) {
            if (!m_anyChanged) // else the force's own legs stand there
                addLegs(vector, one.vector());
        } else if (one.isWrongSize && byTriangle()) {
            addOtherDiagonal(vector, *one.size);
        }
    }

    bool byTriangle() const {
        return std::none_of(m_slip.routes.begin(), m_slip.routes.end(),
                            [](const Route& route) { return route.way == Route::Way::components; });
    }

    /// Of what is sought: the other two sides, where each is one given vector.
    std::optional<KnownSides> knownSides(VectorId sought) const {
        const auto sides = sidesOf(m_sketch);
        const std::size_t at = sides ? sides->indexOf(sought) : 3;
        if (at == 3)
            return std::nullopt;
        const auto [i, j] = Reduction::others(at);
        const VectorId one = sides->side[i], two = sides->side[j];
        for (const VectorId side : {one, two})
            if (side == kKnownVector || !m_numbers.isGivenWhole(side) || m_numbers.at(side).isChanged)
                return std::nullopt;
        const Vector a = m_numbers.at(one).vector(), b = m_numbers.at(two).vector();
        if (sides->loop || at == 2)
            return KnownSides{one, two, a, b, true, sides->loop};
        return KnownSides{two, one, b, -a, false, false}; // side 2 less the other
    }

    /// A magnitude alone: by which drawing it comes about.
    void addSize(VectorId vector, double size) {
        if (!addComponent(vector, size) && !addEndToEnd(vector, size) &&
            !(byTriangle() && (addOtherDiagonal(vector, size) || addTriangle(vector, size))))
            add(Kind::circle, {0, 0}, {size, 0}, yours(vector, size), vector);
    }
    bool addComponent(VectorId vector, double size) {
        const auto parts = m_numbers.components(vector);
        if (!parts || (!isClose(std::abs(parts->x()), size) && !isClose(std::abs(parts->y()), size)))
            return false;
        const Vector to = isClose(std::abs(parts->x()), size) ? Vector(parts->x(), 0) : Vector(0, parts->y());
        add(Kind::arrow, {0, 0}, to, yours(vector, size), vector, 1);
        return true;
    }
    /// Magnitudes added, whatever their directions: in one line.
    bool addEndToEnd(VectorId vector, double size) {
        if (!isClose(size, m_numbers.scale()) || m_sketch.forces.empty())
            return false;
        std::optional<Vector> along;
        double at = 0;
        forEachVector([&](VectorId each) {
            if (!m_numbers.isGivenWhole(each))
                return;
            const SlipVector one = m_numbers.at(each);
            if (along) // the first stands there
                add(Kind::arrow, at * *along, (at + *one.size) * *along, symbolRuns(m_things.symbol(each)),
                    each);
            else
                along = Vector(std::cos(*one.radians), std::sin(*one.radians));
            at += *one.size;
        });
        if (along)
            add(Kind::arrow, {0, 0}, size * *along, yours(vector, size), vector, 1);
        return along.has_value();
    }
    bool addOtherDiagonal(VectorId vector, double size) {
        const auto sides = knownSides(vector);
        if (!sides || !sides->areTails || !isClose((sides->a - sides->b).norm(), size))
            return false;
        add(Kind::line, sides->b, sides->a, yours(vector, size));
        return true;
    }
    /// The triangle of three sides.
    bool addTriangle(VectorId vector, double size) {
        const auto sides = knownSides(vector);
        if (!sides)
            return false;
        const double a = sides->a.norm(), b = sides->b.norm();
        const double cosine = (a * a + b * b - size * size) / (2 * a * b);
        if (!(std::abs(cosine) <= 1 + kOneSize))
            return false;
        const double angle = std::acos(std::clamp(cosine, -1.0, 1.0));
        const Vector back = -sides->a / a;
        const double sense = cross(back, sides->b) < 0 ? -1 : 1;
        const Vector end = sides->a + b * turnedBy(back, sense * angle);
        const bool isFlat = angle < kFlat || std::numbers::pi - angle < kFlat;
        add(Kind::arrow, sides->a, end, symbolRuns(m_things.symbol(sides->second)), sides->second,
            isFlat ? 1 : 0);
        const Vector none(0, 0);
        add(Kind::arrow, sides->isLoop ? end : none, sides->isLoop ? none : end, yours(vector, size), vector,
            isFlat ? 2 : 0);
        if (!isFlat)
            addArc(sides->a, back, sense * angle, angle * turnIn(m_sketch.angleUnit) / (2 * std::numbers::pi),
                   false);
        return true;
    }

    void addParallelogram() {
        const SlipVector first = m_numbers.at(forceVector(0)), second = m_numbers.at(forceVector(1)),
                         sum = m_numbers.at(kSumVector);
        if (!sum.isWhole())
            return;
        const Vector a = first.vector(), b = second.vector(), c = sum.vector();
        if ((a + b - c).norm() <= kClosed * m_numbers.scale()) {
            add(Kind::line, a, c);
            add(Kind::line, b, c);
        } else if (!m_slip.routes.empty() && byTriangle()) {
            const bool isSecond = m_slip.routes.front().begun == forceVector(1);
            addThirdSide(isSecond ? b : a, c, isSecond ? *first.size : *second.size);
        }
    }
    /// That the triangle with these two would need; where it is as long as the force, the angle before it.
    void addThirdSide(const Vector& known, const Vector& sum, double size) {
        add(Kind::line, known, sum);
        const Vector back = -known, on = sum - known;
        if (std::abs(on.norm() - size) > kClosed * m_numbers.scale())
            return;
        const double sweep = std::atan2(cross(back, on), back.dot(on));
        addArc(known, back, sweep, std::abs(sweep) * turnIn(m_sketch.angleUnit) / (2 * std::numbers::pi),
               false);
    }

    /// Tip to tail, what is given first; closed or not.
    void addPolygon() {
        std::vector<VectorId> order, sought;
        for (std::size_t i = 0; i < m_sketch.forces.size(); ++i)
            (m_numbers.isGivenWhole(forceVector(i)) ? order : sought).push_back(forceVector(i));
        order.insert(order.end(), sought.begin(), sought.end());
        Vector at(0, 0);
        std::vector<std::pair<Vector, VectorId>> sides;
        for (const VectorId each : order) {
            const SlipVector one = m_numbers.at(each);
            if (!one.isWhole())
                return;
            sides.emplace_back(at, each);
            at += one.vector();
        }
        const SlipVector sum = m_numbers.at(kSumVector);
        const bool isRest = isEquilibrium(m_sketch);
        if (!isRest && !sum.isWhole())
            return;
        const Vector end = isRest ? Vector(0, 0) : sum.vector();
        const bool isClosed = (at - end).norm() <= kClosed * m_numbers.scale();
        if (!isClosed && sought.empty()) // the right sum's polygon is none of the learner's
            return;
        for (const auto& [from, each] : sides)
            if (!from.isZero())
                add(Kind::arrow, from, from + m_numbers.at(each).vector(), symbolRuns(m_things.symbol(each)),
                    each);
        if (!isClosed)
            add(Kind::line, at, end, plainRuns("gap"));
    }

    const Sketch& m_sketch;
    const Finding& m_slip;
    Things m_things;
    SlipNumbers m_numbers;
    Solved m_asked;
    bool m_anyChanged = false;
    std::vector<AttemptStroke> m_strokes;
};

} // namespace

std::vector<AttemptStroke> slipStrokes(const Sketch& sketch, const Marking& marking) {
    return marking.slips.empty() ? std::vector<AttemptStroke>() : SlipDrawing(sketch, marking).strokes();
}

} // namespace tailpoint
