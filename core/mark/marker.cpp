// SPDX-License-Identifier: MIT
#include "core/mark/attempt.h"
#include "core/mark/marker_parts.h"

#include <algorithm>

namespace tailpoint {

using namespace marking;

Marker::Marker(const Sketch& sketch, const Solved& solved, const MarkOptions& options)
    : m_parts(std::make_unique<MarkerParts>(sketch, solved, options)) {}
Marker::~Marker() = default;
Marker::Marker(Marker&&) noexcept = default;
Marker& Marker::operator=(Marker&&) noexcept = default;

const std::optional<std::string>& Marker::refusal() const {
    return m_parts->question.refusal;
}

const std::vector<Answerable>& Marker::quantities() const {
    return m_parts->question.quantities;
}

double Marker::of() const {
    double points = 0;
    for (const Answerable& one : quantities())
        points += one.points;
    return points;
}

std::size_t Marker::answers() const {
    return refusal() ? 0 : m_parts->question.answers;
}

const Answerable* Marker::named(std::string_view name) const {
    return marking::named(m_parts->question, name);
}

Readable<GivenValue> Marker::read(std::string_view name, std::string_view value) const {
    return readValue(m_parts->question, name, value);
}

Readable<Attempt> Marker::read(const std::vector<std::string>& answers) const {
    return readAnswers(m_parts->question, answers);
}

namespace {

/// Drawn against the sense in which the vector's direction is given.
bool isAgainstGiven(const Sketch& sketch, VectorId vector, double x, double y) {
    const Force& force = vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
    const auto unit = unitVector(force.direction, sketch);
    return unit && x * static_cast<double>(unit->cos) + y * static_cast<double>(unit->sin) < 0;
}

} // namespace

std::vector<GivenValue> Marker::drawn(VectorId vector, double x, double y) const {
    const Question& question = m_parts->question;
    std::vector<GivenValue> values;
    const auto add = [&](const QuantityId& id, double value, double half) {
        const std::size_t quantity = question.find(id);
        if (quantity < question.quantities.size())
            values.push_back(
                {id, question.quantities[quantity].name, {{{}, {{value, half, 15}}, true, true}}});
    };
    const std::size_t size = question.find(magnitudeId(vector));
    const double length = std::hypot(x, y), right = size < question.quantities.size()
                                                        ? question.right().value[question.cell(size, 0)]
                                                        : length;
    const bool isSigned =
        size < question.quantities.size() && isSignedBySense(question, question.cell(size, 0));
    add(magnitudeId(vector), isSigned && isAgainstGiven(question.sketch(), vector, x, y) ? -length : length,
        kDrawnMagnitude * std::abs(right));
    if (const auto direction = referredDirection(x, y, question.sketch()))
        add(directionId(vector), *direction, kDrawnDegrees * question.degree());
    return values;
}

GivenValue Marker::pointed(const QuantityId& quantity, double angle) const {
    const Question& question = m_parts->question;
    const std::size_t at = question.find(quantity);
    const std::string name = at < question.quantities.size() ? question.quantities[at].name : std::string();
    return {quantity, name, {{{}, {{angle, kDrawnDegrees * question.degree(), 15}}, true, true}}};
}

Marking Marker::mark(const Attempt& attempt) const {
    if (m_parts->question.refusal)
        return {};
    const Question& question = m_parts->question;
    Marking marking = Sheet{question, *m_parts->findings, *m_parts->telling}.mark(attempt);
    if (question.hasTolerances)
        marking.remarks.push_back(
            Voice(question.options.sentences)
                .say(SENTENCE("marking", "An answer is marked against the stated values, "
                                         "whatever their tolerances.")));
    if (m_parts->needsCaution)
        marking.caution = cautionLine();
    return marking;
}

} // namespace tailpoint
