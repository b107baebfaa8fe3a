// SPDX-License-Identifier: MIT
#include "ui/practice/practice.h"

#include "ui/document/sketch_document.h"
#include "ui/marking/own_answer.h"
#include "ui/practice/problem_file.h"
#include "ui/style/symbols.h"

#include <QDateTime>
#include <algorithm>

namespace tailpoint {

namespace {

bool isRight(Verdict verdict) {
    return verdict == Verdict::right || verdict == Verdict::rounded;
}

/// The problem of a file's code, where the file still has its values.
std::optional<Problem> problemOf(const Sketch& sketch) {
    const auto id = problemIdOf(sketch);
    auto made = id ? problem(*id) : std::nullopt;
    return made && isSameQuestion(made->sketch, sketch) ? made : std::nullopt;
}

bool hasDigit(const QString& text) {
    return std::any_of(text.begin(), text.end(), [](QChar letter) { return letter.isDigit(); });
}

} // namespace

Practice::Practice(SketchDocument& document, OwnAnswer& answer, Sitting& sitting, QObject* parent)
    : QObject(parent), m_document(document), m_answer(answer), m_sitting(sitting) {
    connect(&document, &SketchDocument::replaced, this, &Practice::documentReplaced);
    connect(&document, &SketchDocument::changed, this, &Practice::documentChanged);
    connect(&document, &SketchDocument::previewEnded, this, &Practice::documentChanged);
    connect(&answer, &OwnAnswer::marked, this, &Practice::marked);
    connect(&answer, &OwnAnswer::modeChanged, this, &Practice::modeChanged);
    connect(&answer, &OwnAnswer::asideChanged, this, &Practice::hintsChanged);
    documentReplaced();
}

void Practice::documentReplaced() {
    const Sketch& sketch = m_document.sketch();
    m_opened = problemOf(sketch);
    m_hints = {};
    const auto expected = std::exchange(m_expected, std::nullopt);
    m_aimedAt = expected.value_or(std::string());
    m_isExample = !expected && !m_answer.isOn();
    m_hasMarked = m_hasHint = m_isSolved = m_isWorked = false;
    m_right.clear();
    m_typedBefore.clear();
    m_place.reset();
    m_statement = statementOf(sketch);
    const auto id = problemIdOf(sketch);
    const auto made = id && wordsOf(sketch) != m_statement ? tailpoint::problem(*id) : std::nullopt;
    m_spokenOf = made ? made->sketch : sketch;
    look();
}

/// Other words are said of the values that stand beside them; a hand that moves something is waited for.
void Practice::documentChanged() {
    if (m_document.isPreviewing())
        return;
    if (std::string statement = statementOf(m_document.sketch()); statement != m_statement) {
        m_statement = std::move(statement);
        m_spokenOf = m_document.sketch();
    }
    look();
}

void Practice::look() {
    const Sketch& sketch = m_document.sketch();
    m_isStale = !m_statement.empty() && !isSameQuestion(m_spokenOf, sketch);
    m_problem = m_opened && isSameQuestion(m_opened->sketch, sketch) ? m_opened : std::nullopt;
    emit problemChanged();
    emit hintsChanged();
}

void Practice::confirmStatement() {
    m_spokenOf = m_document.sketch();
    look();
}

QString Practice::statement() const {
    return m_isStale ? QString() : text(m_statement);
}

/// Who leaves sees the answer.
void Practice::modeChanged() {
    if (m_problem && !m_answer.isOn())
        seen();
    emit hintsChanged();
}

/// What was answered before stays as it was answered.
void Practice::seen() {
    if (!m_place)
        m_isExample = true;
}

void Practice::becomeExample() {
    if (m_isSolved || m_isExample)
        return;
    m_isExample = true;
    if (const RecordEntry* own = m_place ? m_sitting.entry(*m_place) : nullptr) {
        RecordEntry entry = *own;
        entry.lastHint = true;
        m_sitting.change(*m_place, entry);
        emit recorded();
    }
}

bool Practice::canHint() const {
    return m_problem && m_answer.isOn() && !m_answer.standsAside() && !m_isSolved &&
           (m_hints.lines().empty() || m_hints.hasNext());
}

std::map<std::string, QString> Practice::typed() const {
    std::map<std::string, QString> all;
    for (const Answerable& one : m_answer.fields())
        if (const QString value = m_answer.typed(one.name).trimmed(); hasDigit(value))
            all[one.name] = value;
    return all;
}

/// Since the last hint: a value in a field that stood not in it, or an answer that was marked.
bool Practice::hasEntered() const {
    const auto now = typed();
    return m_hasMarked || std::any_of(now.begin(), now.end(), [this](const auto& field) {
               const auto before = m_typedBefore.find(field.first);
               return before == m_typedBefore.end() || before->second != field.second;
           });
}

std::vector<QuantityId> Practice::asked() const {
    std::vector<QuantityId> ids;
    for (const Answerable& one : m_answer.fields())
        if (one.asked)
            ids.push_back(one.id);
    return ids;
}

bool Practice::openHint() {
    if (!canHint() || (m_hasHint && !hasEntered()))
        return false;
    if (m_hints.lines().empty()) { // solved only for who asks
        m_hints = Hints(m_problem->sketch);
        m_hints.setRight(m_right);
    }
    if (!m_hints.hasNext())
        return false;
    m_hints.open();
    m_hasHint = true;
    m_hasMarked = false;
    m_typedBefore = typed();
    if (m_hints.tellsAll(asked()))
        becomeExample();
    emit hintsChanged();
    return true;
}

void Practice::marked() {
    const auto& marking = m_answer.marking();
    if (!m_problem || !marking)
        return;
    const bool isNew = std::exchange(m_timesMarked, m_answer.timesMarked()) != m_answer.timesMarked();
    if (!isNew && !m_answer.isAnswerShown())
        return; // looked at what gives the number
    m_hasMarked = true;
    if (m_answer.isAnswerShown())
        seen();
    else
        enter(*marking);
    m_right.clear();
    for (const MarkedQuantity& one : marking->quantities)
        if (QuantityId id = one.id; isRight(one.verdict)) {
            id.answer = 0;
            m_right.insert(id);
        }
    m_hints.setRight(m_right);
    emit hintsChanged();
}

void Practice::workAsExample() {
    m_isWorked = true;
    m_hints = {}; // they would tell what the lines ask
    m_hasHint = false;
    becomeExample();
    emit hintsChanged();
}

void Practice::enterExample(WorkedAs worked, bool wentWell, int blank) {
    RecordEntry entry = exampleEntry(*m_problem, worked, wentWell, m_sitting.number(), blank);
    entry.when = QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString();
    m_sitting.add(entry);
    emit recorded();
}

/// The first whole answer counts; a slip of a later one is remembered too.
void Practice::enter(const Marking& marking) {
    if (marking.verdict == Verdict::incomplete || m_isWorked)
        return;
    RecordEntry entry =
        recordEntry(*m_problem, marking, m_isExample && !m_isSolved, m_sitting.number(), m_aimedAt);
    const bool wasSolved = std::exchange(m_isSolved, m_isSolved || isRight(marking.verdict));
    const RecordEntry* own = m_place ? m_sitting.entry(*m_place) : nullptr;
    if (own == nullptr) {
        entry.when = QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString();
        m_place = m_sitting.add(entry);
        return emit recorded();
    }
    RecordEntry before = *own;
    for (const std::string& slip : entry.slips)
        if (!isRight(before.verdict) &&
            std::find(before.slips.begin(), before.slips.end(), slip) == before.slips.end())
            before.slips.push_back(slip);
    if (!wasSolved) {
        ++before.tries;
        before.cameRight = m_isSolved;
    }
    m_sitting.change(*m_place, before);
    emit recorded();
}

ProblemId Practice::onceMore(std::uint32_t seed) const {
    ProblemId id = m_problem->id;
    id.number = problemNumber(seed, 0);
    if (id.number == m_problem->id.number)
        id.number = (id.number + 1) % kProblemNumbers;
    return id;
}

ProblemId Practice::harder(std::uint32_t seed) const {
    return {m_problem->id.family, m_problem->id.level + 1, problemNumber(seed, 0)};
}

/// Who went on unanswered stays at the level that was chosen.
NextProblem Practice::next(std::uint32_t seed) const {
    NextProblem next = nextProblem(m_sitting.record(), m_problem->id.family, m_sitting.number(), seed);
    if (!m_place && next.reason == NextReason::plain)
        next.problem.level = m_problem->id.level;
    return next;
}

} // namespace tailpoint
