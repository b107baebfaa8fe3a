// SPDX-License-Identifier: MIT
#include "ui/practice/line_exercise.h"

#include "core/practice/families.h"
#include "ui/document/sketch_document.h"
#include "ui/marking/mark_options.h"
#include "ui/marking/own_answer.h"
#include "ui/practice/practice.h"
#include "ui/style/symbols.h"

#include <QScopedValueRollback>
#include <algorithm>

namespace tailpoint {

namespace {

/// As the sketch's file says it.
MarkOptions markingOf(const Sketch& sketch) {
    const auto options = markOptionsOf(sketch);
    const auto* read = std::get_if<MarkOptions>(&options);
    return read != nullptr ? *read : MarkOptions{};
}

/// By one of the slips that are likely there, else by another of its calculation; the seed says which.
std::optional<FlawedSolution> flawedFor(const Problem& problem, std::uint32_t seed) {
    const FamilyEntry* family = familyNamed(problem.id.family);
    return family == nullptr
               ? std::nullopt
               : flawedBySome(problem.sketch,
                              family->levels[static_cast<std::size_t>(problem.id.level - 1)].slips, seed);
}

} // namespace

LineExercise::LineExercise(SketchDocument& document, OwnAnswer& answer, Practice& practice, QObject* parent)
    : QObject(parent), m_document(document), m_answer(answer), m_practice(practice) {
    connect(&document, &SketchDocument::replaced, this, &LineExercise::end);
    connect(&practice, &Practice::problemChanged, this, &LineExercise::problemChanged);
    connect(&answer, &OwnAnswer::modeChanged, this, &LineExercise::modeChanged);
}

LineExercise::~LineExercise() = default;

/// Other values make another question of it.
void LineExercise::problemChanged() {
    const auto& problem = m_practice.problem();
    if (isOn() && (!problem || problem->id != *m_problem))
        end();
}

/// Who leaves, or begins to answer by himself, is done with it.
void LineExercise::modeChanged() {
    if (!m_isTurning && isOn())
        end();
}

void LineExercise::end() {
    if (!isOn())
        return;
    m_worked = WorkedAs::question;
    m_isDone = false;
    m_asked.reset();
    m_flawed.reset();
    m_faded = {};
    m_shown = {};
    m_came = {};
    m_answer.standAside(false);
    emit changed();
}

bool LineExercise::begin(WorkedAs worked) {
    const QScopedValueRollback turning(m_isTurning, true);
    if (!m_answer.isOn() && !m_answer.begin())
        return false;
    m_worked = worked;
    m_problem = m_practice.problem()->id;
    m_asked.emplace(m_document.sketch(), markingOf(m_document.sketch()));
    m_flawed.reset();
    m_faded = {};
    m_isFound = m_isDone = m_hasTried = false;
    m_wentWell = true;
    m_blank = m_left = 0;
    m_came = {};
    m_practice.workAsExample();
    return true;
}

bool LineExercise::beginFaded() {
    if (!m_practice.problem() || !begin(WorkedAs::faded))
        return false;
    const int wanted = nextBlank(m_practice.sitting().record(), *m_problem);
    m_blank = m_left = std::min(static_cast<std::size_t>(wanted), m_asked->lines().size());
    fade();
    m_answer.standAside(!asksLawAlone());
    emit changed();
    return true;
}

bool LineExercise::beginFlawed(std::uint32_t seed) {
    auto made = m_practice.problem() ? flawedFor(*m_practice.problem(), seed) : std::nullopt;
    if (!made || !begin(WorkedAs::flawed))
        return false;
    m_flawed = std::move(made);
    m_shown = m_flawed->worked;
    m_answer.standAside(true);
    emit changed();
    return true;
}

bool LineExercise::hasSlip(const Problem& problem) {
    return flawedFor(problem, 0).has_value();
}

void LineExercise::fade() {
    m_faded = faded(m_asked->worked(), m_left);
    m_shown = m_faded.worked;
}

std::optional<WorkingPlace> LineExercise::asked() const {
    if (m_isDone)
        return std::nullopt;
    if (m_flawed)
        return m_isFound ? std::optional(m_flawed->flaw) : std::nullopt;
    return m_faded.blank.empty() ? std::nullopt : std::optional(m_faded.blank.front().place);
}

std::string LineExercise::prompt() const {
    return m_faded.onlyLaw         ? m_faded.prompt
           : m_faded.blank.empty() ? std::string()
                                   : m_faded.blank.front().prompt;
}

void LineExercise::fill(std::optional<Principle> principle, const QString& typed) {
    if (m_worked != WorkedAs::faded || m_isDone)
        return;
    if (asksLawAlone())
        return fillLaw(principle);
    m_came = {};
    const std::string number = typed.trimmed().toStdString();
    if (!principle || number.empty()) {
        m_came.fault =
            principle ? tr("Type the number that the line comes to.") : tr("Choose on what the line rests.");
        return emit answered();
    }
    auto read = m_asked->mark(line(), number);
    if (const auto* fault = std::get_if<AttemptFault>(&read)) {
        m_came.fault = onScreen(fault->message);
        return emit answered();
    }
    m_came.mark = std::get<LineMark>(std::move(read));
    m_came.isPrincipleRight = *principle == m_asked->lines()[line()].principle;
    if (m_came.mark->isRight() && *m_came.isPrincipleRight)
        return take(false);
    m_wentWell = false;
    m_hasTried = true;
    emit answered();
}

void LineExercise::fillLaw(std::optional<Principle> principle) {
    m_came = {};
    if (!principle) {
        m_came.fault = tr("Choose the law.");
        return emit answered();
    }
    m_came.isPrincipleRight = *principle == m_asked->principleAtStart();
    if (*m_came.isPrincipleRight)
        return finish();
    m_wentWell = false;
    m_hasTried = true;
    emit answered();
}

/// The first blank line is blank no more.
void LineExercise::take(bool isGivenUp) {
    m_came.line = m_asked->working(line());
    m_came.isGivenUp = isGivenUp;
    m_hasTried = false;
    --m_left;
    fade();
    if (m_left == 0)
        return finish();
    emit changed();
    emit answered();
}

void LineExercise::pointAt(WorkingPlace place) {
    if (!m_flawed || m_isFound || m_isDone)
        return;
    m_came = {};
    if (place == m_flawed->flaw) {
        m_isFound = true;
        emit changed();
    } else {
        m_wentWell = false;
        m_came.computes = place;
    }
    emit answered();
}

void LineExercise::mend(const QString& typed) {
    if (!m_flawed || !m_isFound || m_isDone)
        return;
    m_came = {};
    auto read = m_asked->mark(m_flawed->right, m_flawed->route, typed.trimmed().toStdString());
    if (const auto* fault = std::get_if<AttemptFault>(&read)) {
        m_came.fault = onScreen(fault->message);
        return emit answered();
    }
    m_came.mark = std::get<LineMark>(std::move(read));
    if (m_came.mark->isRight()) {
        m_came.line = m_flawed->right;
        return finish();
    }
    m_wentWell = false;
    m_hasTried = true;
    emit answered();
}

void LineExercise::showLine() {
    if (!canShowLine())
        return;
    m_came = {};
    m_came.isGivenUp = true;
    if (m_worked == WorkedAs::faded && !asksLawAlone())
        return take(true);
    if (m_flawed)
        m_came.line = m_flawed->right;
    finish();
}

/// The answer may be seen now; where the law alone was asked for, the question goes on with its fields.
void LineExercise::finish() {
    m_isDone = true;
    m_hasTried = false;
    m_practice.enterExample(m_worked, m_wentWell, static_cast<int>(m_blank));
    const QScopedValueRollback turning(m_isTurning, true);
    m_answer.standAside(false);
    if (!asksLawAlone())
        m_answer.end();
    emit changed();
    emit answered();
}

} // namespace tailpoint
