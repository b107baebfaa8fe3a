// SPDX-License-Identifier: MIT
#include "ui/marking/own_answer.h"

#include "ui/document/sketch_document.h"
#include "ui/marking/mark_options.h"
#include "ui/style/symbols.h"

#include <algorithm>

namespace tailpoint {

namespace {

/// As the sketch's file says it; what it says wrongly, a command line is told.
MarkOptions optionsOf(const Sketch& sketch) {
    const auto options = markOptionsOf(sketch);
    const auto* read = std::get_if<MarkOptions>(&options);
    return read != nullptr ? *read : MarkOptions{};
}

} // namespace

OwnAnswer::OwnAnswer(SketchDocument& document, QObject* parent) : QObject(parent), m_document(document) {
    connect(&document, &SketchDocument::changed, this, &OwnAnswer::sketchChanged);
    connect(&document, &SketchDocument::previewEnded, this, &OwnAnswer::sketchChanged);
    connect(&document, &SketchDocument::replaced, this, &OwnAnswer::sketchReplaced);
}

OwnAnswer::~OwnAnswer() = default;

bool OwnAnswer::begin() {
    if (m_isOn || !whyNot().isEmpty())
        return m_isOn;
    m_document.commit();
    emit beginning();
    m_isOn = true;
    m_document.withholdAnswer(true); // says changed()
    emit modeChanged();
    return true;
}

void OwnAnswer::end() {
    if (!m_isOn)
        return;
    clearMarks();
    endPointing();
    m_isOn = m_standsAside = false;
    m_marker.reset();
    m_document.withholdAnswer(false);
    emit modeChanged();
}

void OwnAnswer::standAside(bool on) {
    if (on == m_standsAside)
        return;
    m_standsAside = on;
    endPointing();
    clearMarks();
    forgetDrawn();
    emit asideChanged();
}

QString OwnAnswer::whyNot() const {
    if (m_marker)
        return text(m_marker->refusal().value_or(std::string()));
    return whyNotNow();
}

QString OwnAnswer::whyNotNow() const {
    if (m_document.sketch().forces.empty())
        return tr("there is no force on the sheet yet");
    const Sketch& sketch = m_document.sketch();
    const Solved solved = m_document.withholdsAnswer() ? solve(sketch) : m_document.result().solved;
    if (solved.family == Family::check)
        return tr("everything is given");
    return solved.solutions.empty() ? tr("this question has no answer") : QString();
}

/// What a hand moves is marked once it rests.
void OwnAnswer::sketchChanged() {
    if (!m_isOn)
        return;
    clearMarks();
    endPointing();
    if (!m_document.isPreviewing())
        renew();
}

void OwnAnswer::renew() {
    const Sketch& sketch = m_document.sketch();
    const MarkOptions options = optionsOf(sketch);
    m_hasScheme = !options.points.empty();
    m_wantsBoth = options.bothAnswers;
    m_isSigned = options.signedSenses;
    m_marker = std::make_unique<Marker>(sketch, solve(sketch), options);
    const std::vector<VectorId> sought = drawable();
    std::erase_if(m_drawn, [&](const auto& one) {
        return std::find(sought.begin(), sought.end(), one.first) == sought.end();
    });
    for (auto& [vector, tip] : m_drawn)
        tip = held(vector, tip);
    renewPointed();
    emit fieldsChanged();
    emit drawnChanged();
}

void OwnAnswer::sketchReplaced() {
    m_typed.clear();
    m_added.clear();
    m_drawn.clear();
    m_pointed.clear();
    if (m_isOn && !whyNotNow().isEmpty()) // the marker is still of the sketch that was open before
        return end();
    if (m_isOn)
        renew();
}

std::vector<Answerable> OwnAnswer::fields() const {
    std::vector<Answerable> all;
    if (!m_marker)
        return all;
    for (const Answerable& one : m_marker->quantities())
        if (one.asked)
            all.push_back(one);
    for (const std::string& name : m_added)
        if (const Answerable* one = m_marker->named(name); one != nullptr && !one->asked)
            all.push_back(*one);
    return all;
}

std::vector<Answerable> OwnAnswer::addable() const {
    std::vector<Answerable> all;
    if (m_marker)
        for (const Answerable& one : m_marker->quantities())
            if (!one.asked && std::find(m_added.begin(), m_added.end(), one.name) == m_added.end())
                all.push_back(one);
    return all;
}

void OwnAnswer::addField(const std::string& name) {
    if (std::find(m_added.begin(), m_added.end(), name) == m_added.end()) {
        m_added.push_back(name);
        clearMarks();
        emit fieldsChanged();
    }
}

void OwnAnswer::removeField(const std::string& name) {
    if (std::erase(m_added, name) > 0) {
        m_typed.erase(name);
        m_pointed.erase(name);
        if (m_pointing == name)
            endPointing();
        clearMarks();
        emit fieldsChanged();
    }
}

std::size_t OwnAnswer::answersToGive() const {
    return m_wantsBoth && m_marker && m_marker->answers() == 2 ? 2 : 1;
}

QString OwnAnswer::typed(const std::string& name, std::size_t answer) const {
    const auto found = m_typed.find(name);
    return found == m_typed.end() ? QString() : found->second[answer];
}

void OwnAnswer::type(const std::string& name, const QString& text, std::size_t answer) {
    if (typed(name, answer) != text) {
        m_typed[name][answer] = text;
        endPointing();
        clearMarks();
    }
}

void OwnAnswer::clearMarks() {
    if (!m_marking && m_faults.empty() && !m_answerShown && !m_slipShown)
        return;
    m_marking.reset();
    m_faults.clear();
    m_answerShown = m_slipShown = false;
    emit marked();
}

namespace {

/// Two values in one field: a semicolon, or the words of the learner's language.
QString withSemicolons(QString value) {
    return value.replace(OwnAnswer::tr(" or "), QStringLiteral("; "))
        .replace(OwnAnswer::tr(" and "), QStringLiteral("; "))
        .trimmed();
}

} // namespace

/// Both answers' values in one, as they are read.
std::string OwnAnswer::valueOf(const std::string& name) const {
    const QString first = withSemicolons(typed(name, 0)),
                  second = answersToGive() == 2 ? withSemicolons(typed(name, 1)) : QString();
    const QString between = first.isEmpty() || second.isEmpty() ? QString() : QStringLiteral("; ");
    return (first + between + second).toStdString();
}

/// An answer of which one value is given, and another is not while the other answer has it.
void OwnAnswer::findHalves() {
    std::array<bool, 2> has{false, false};
    const auto isIn = [this](const Answerable& one, std::size_t answer) {
        return !typed(one.name, answer).trimmed().isEmpty() ||
               withSemicolons(typed(one.name, 1 - answer)).contains(QLatin1Char(';'));
    };
    const auto isOfEach = [](const Answerable& one) { // an angle between vectors may be common to both
        return one.id.what != What::between && one.id.what != What::opposite;
    };
    for (std::size_t answer = 0; answer < 2; ++answer)
        for (const Answerable& one : fields())
            has[answer] = has[answer] || isIn(one, answer);
    for (const Answerable& one : fields())
        if (has[0] && has[1] && isOfEach(one) && isIn(one, 0) != isIn(one, 1))
            m_faults[one.name] =
                onScreen(one.name + ": ") +
                tr("one answer has a value and the other has none; give both, or one answer alone");
}

/// Empty where something can't be read.
std::optional<Attempt> OwnAnswer::readAttempt() {
    Attempt attempt;
    std::vector<std::string> all;
    for (const Answerable& one : fields()) {
        const std::string value = valueOf(one.name);
        if (value.empty())
            continue;
        auto read = m_marker->read(one.name, value);
        if (const auto* fault = std::get_if<AttemptFault>(&read))
            m_faults[one.name] = onScreen(fault->message);
        else
            attempt.values.push_back(std::get<GivenValue>(std::move(read)));
        all.push_back(one.name + " = " + value);
    }
    if (m_faults.empty() && answersToGive() == 2)
        findHalves();
    if (m_faults.empty()) { // two values go with two
        const auto together = m_marker->read(all);
        if (const auto* fault = std::get_if<AttemptFault>(&together);
            fault != nullptr && fault->code == AttemptFault::Code::manyValues)
            m_faults[fault->name] = onScreen(fault->message);
    }
    addDrawn(attempt);
    addPointed(attempt);
    return m_faults.empty() ? std::optional(std::move(attempt)) : std::nullopt;
}

bool OwnAnswer::tellsPoints() const {
    if (!m_marker)
        return false;
    const auto& all = m_marker->quantities();
    return m_hasScheme ||
           std::count_if(all.begin(), all.end(), [](const Answerable& one) { return one.asked; }) > 1;
}

void OwnAnswer::mark() {
    if (m_isOn)
        m_document.commit(); // what a hand still holds
    if (!m_isOn || m_standsAside || !m_marker || m_marker->refusal())
        return;
    endPointing();
    m_faults.clear();
    m_marking.reset();
    m_answerShown = m_slipShown = false;
    if (const auto attempt = readAttempt())
        m_marking = m_marker->mark(*attempt);
    ++m_timesMarked;
    emit marked();
}

void OwnAnswer::showAnswer(bool on) {
    if (m_marking && on != m_answerShown) {
        m_answerShown = on;
        emit marked();
    }
}

void OwnAnswer::showSlip(bool on) {
    if (on != m_slipShown && (!on || canShowSlip())) {
        m_slipShown = on;
        emit marked();
    }
}

} // namespace tailpoint
