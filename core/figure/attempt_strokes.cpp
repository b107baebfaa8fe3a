// SPDX-License-Identifier: MIT
#include "core/figure/attempt_strokes.h"

#include "core/figure/slip_size.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

using Vector = Eigen::Vector2d;
using Kind = AttemptStroke::Kind;

constexpr std::size_t kMostDrawn = 48; ///< forces: beyond that nobody could tell the strokes apart
constexpr double kClosed = 0.01;       ///< of all magnitudes: tips that meet, as drawn
constexpr double kOneLength = 1e-6;    ///< relative: the magnitude as it is given

class SlipDrawing {
public:
    SlipDrawing(const Sketch& sketch, const Marking& marking)
        : m_sketch(sketch), m_slip(marking.slips.front()), m_numbers(sketch, marking), m_maker(sketch),
          m_sizes(sketch, m_slip, m_numbers, m_maker), m_asked(asked(sketch)) {}

    std::vector<AttemptStroke> strokes() {
        m_numbers.forEachVector([&](VectorId vector) { addVector(vector); });
        const bool isAlone = m_asked.family == Family::closePolygon;
        if (isAlone && vectorId(m_asked.unknownVectors[0]) == kSumVector && m_sketch.forces.size() == 2)
            addParallelogram();
        else if (!isAlone || m_anyChanged || vectorId(m_asked.unknownVectors[0]) == kSumVector)
            addPolygon();
        return m_maker.take();
    }

private:
    bool isWithin(const Vector& a, const Vector& b) const {
        return (a - b).norm() <= kClosed * m_numbers.scale();
    }

    void addVector(VectorId vector) {
        const SlipVector one = m_numbers.at(vector);
        if (m_numbers.isGivenWhole(vector)) {
            if (one.isChanged)
                addChanged(vector, one);
            return;
        }
        m_anyChanged = m_anyChanged || one.isChanged;
        if (one.isWhole())
            addWhole(vector, one);
        else if (one.size && one.isWrongSize)
            m_sizes.add(vector, *one.size);
        else if (one.radians && (one.isWrongWay || one.isChanged))
            m_maker.add(Kind::ray, {0, 0},
                        m_numbers.scale() * Vector(std::cos(*one.radians), std::sin(*one.radians)),
                        m_maker.yours(vector), vector);
        if (one.referred && one.isWrongWay)
            m_maker.addDirection(*one.referred);
    }

    /// A given force as it was read, or as its components make it.
    void addChanged(VectorId vector, const SlipVector& one) {
        m_anyChanged = true;
        if (*one.size == 0)
            return;
        const double given = *m_numbers.given(vector).magnitude.value;
        const bool isSize = std::abs(*one.size - given) > kOneLength * given;
        m_maker.add(Kind::arrow, {0, 0}, one.vector(),
                    m_maker.yours(vector, isSize ? one.size : std::nullopt), vector);
        if (one.referred)
            m_maker.addDirection(*one.referred);
        if (!m_slip.read)
            m_maker.addLegs(vector, one.vector());
    }

    void addWhole(VectorId vector, const SlipVector& one) {
        const bool isSizeSought = !isGiven(m_numbers.given(vector).magnitude);
        m_maker.add(Kind::arrow, {0, 0}, one.vector(),
                    m_maker.yours(vector, isSizeSought ? one.size : std::nullopt), vector);
        const bool isAlone = m_asked.family == Family::closePolygon; // of two the legs would hide the figure
        const auto parts = m_slip.read || !isAlone ? std::nullopt : m_numbers.components(vector);
        if (parts && (*parts - one.vector()).norm() <= kClosed * *one.size) {
            if (!m_anyChanged) // else the force's own legs stand there
                m_maker.addLegs(vector, one.vector());
        } else if (one.isWrongSize && m_sizes.byTriangle()) {
            m_sizes.addOtherDiagonal(vector, *one.size);
        }
    }

    void addParallelogram() {
        const SlipVector first = m_numbers.at(forceVector(0)), second = m_numbers.at(forceVector(1)),
                         sum = m_numbers.at(kSumVector);
        if (!sum.isWhole())
            return;
        const Vector a = first.vector(), b = second.vector(), c = sum.vector();
        if (isWithin(a + b, c)) {
            m_maker.add(Kind::line, a, c);
            m_maker.add(Kind::line, b, c);
        } else if (!m_slip.routes.empty() && m_sizes.byTriangle()) {
            const bool isSecond = m_slip.routes.front().begun == forceVector(1);
            addThirdSide(isSecond ? b : a, c, isSecond ? *first.size : *second.size);
        }
    }
    /// That the triangle with these two would need; where it is as long as the force, the angle before it.
    void addThirdSide(const Vector& known, const Vector& sum, double size) {
        m_maker.add(Kind::line, known, sum);
        if (std::abs((sum - known).norm() - size) <= kClosed * m_numbers.scale())
            m_maker.addCorner(known, -known, sum - known);
    }

    /// Tip to tail, what is given first; closed or not. Of a sum that is sought only where it closes: the
    /// right sum's polygon is none of the learner's.
    void addPolygon() {
        std::vector<VectorId> order, sought;
        for (std::size_t i = 0; i < m_sketch.forces.size(); ++i)
            (m_numbers.isGivenWhole(forceVector(i)) ? order : sought).push_back(forceVector(i));
        order.insert(order.end(), sought.begin(), sought.end());
        const SlipVector sum = m_numbers.at(kSumVector);
        const bool isRest = isEquilibrium(m_sketch);
        if ((!isRest && !sum.isWhole()) || !std::all_of(order.begin(), order.end(), [&](VectorId each) {
                return m_numbers.at(each).isWhole();
            }))
            return;
        std::vector<Vector> tails;
        Vector at(0, 0);
        for (const VectorId each : order) {
            tails.push_back(at);
            at += m_numbers.at(each).vector();
        }
        const Vector end = isRest ? Vector(0, 0) : sum.vector();
        const bool isClosed = isWithin(at, end);
        if (!isClosed && sought.empty())
            return;
        for (std::size_t i = 0; i < order.size(); ++i)
            if (!tails[i].isZero())
                m_maker.add(Kind::arrow, tails[i], tails[i] + m_numbers.at(order[i]).vector(),
                            m_maker.named(order[i]), order[i]);
        if (!isClosed)
            m_maker.add(Kind::line, at, end, plainRuns("gap"));
    }

    const Sketch& m_sketch;
    const Finding& m_slip;
    AttemptNumbers m_numbers;
    StrokeMaker m_maker;
    SlipSize m_sizes;
    Solved m_asked;
    bool m_anyChanged = false;
};

} // namespace

std::vector<AttemptStroke> slipStrokes(const Sketch& sketch, const Marking& marking) {
    if (marking.slips.empty() || sketch.forces.size() > kMostDrawn)
        return {};
    return SlipDrawing(sketch, marking).strokes();
}

} // namespace tailpoint
