// SPDX-License-Identifier: MIT
#include "ui/panel/line_exercise_view.h"

#include "ui/document/sketch_document.h"
#include "ui/panel/marked_text.h"
#include "ui/panel/own_answer_words.h"
#include "ui/panel/panel_parts.h"
#include "ui/panel/solution_lines.h"
#include "ui/panel/spoken_line.h"
#include "ui/practice/line_exercise.h"
#include "ui/style/symbols.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace tailpoint {

namespace {

constexpr int kField = 108; // pixels
constexpr int kSaidLines = 2;

QLabel* wrapped(const QString& objectName) {
    auto* label = new QLabel;
    label->setObjectName(objectName);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

QString unitOf(const Sketch& sketch, What what) {
    switch (what) {
    case What::magnitude:
    case What::x:
    case What::y:
    case What::along:
    case What::distance:
        return text(symbolOf(sketch.forceUnit));
    case What::direction:
    case What::fromX:
    case What::between:
    case What::opposite:
    case What::acute:
        return sketch.angleUnit == AngleUnit::deg ? QStringLiteral("\u00b0") : text(nameOf(sketch.angleUnit));
    default:
        return {};
    }
}

} // namespace

LineExerciseView::LineExerciseView(SketchDocument& document, LineExercise& exercise, QWidget* parent)
    : QWidget(parent), m_document(document), m_exercise(exercise), m_head(headingLabel(QString())),
      m_task(wrapped(QStringLiteral("exerciseTask"))), m_lines(new SolutionLines), m_form(new QWidget),
      m_prompt(wrapped(QStringLiteral("exercisePrompt"))), m_subject(new QLabel), m_unit(new QLabel),
      m_principle(new QComboBox), m_number(new QLineEdit), m_enter(new QPushButton(tr("&Enter it"))),
      m_show(linkButton(tr("Show the line"), QStringLiteral("exerciseShow"))),
      m_said(new SpokenLine(QStringLiteral("exerciseSaid"))),
      m_findings(new MarkedText(QStringLiteral("exerciseFindings"))) {
    setObjectName(QStringLiteral("lineExercise"));
    setFocusPolicy(Qt::ClickFocus);
    build();
    connect(&exercise, &LineExercise::changed, this, &LineExerciseView::refresh);
    connect(&exercise, &LineExercise::answered, this, &LineExerciseView::tell);
    connect(m_lines, &SolutionLines::chosen, this, [this](const WorkingPlace& place) {
        if (m_exercise.flawed() != nullptr && !m_exercise.isFound())
            m_exercise.pointAt(place);
    });
    connect(m_lines, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0 && m_lines->hasFocus())
            emit wentTo(m_lines->visualItemRect(m_lines->item(row)).translated(m_lines->pos()));
    });
    connect(m_enter, &QPushButton::clicked, this, &LineExerciseView::enter);
    connect(m_number, &QLineEdit::returnPressed, this, &LineExerciseView::enter);
    connect(m_show, &QPushButton::clicked, &exercise, &LineExercise::showLine);
    hide();
}

void LineExerciseView::build() {
    m_said->setWordWrap(true);
    m_said->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_said->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_said->setFixedHeight(kSaidLines * m_said->fontMetrics().lineSpacing() + 2); // no word moves a field
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(6);
    column->addWidget(m_head);
    column->addWidget(m_task);
    column->addWidget(m_lines);
    column->addWidget(m_form);
    buildForm();
    column->addWidget(m_said);
    column->addWidget(m_findings);
}

QVBoxLayout* LineExerciseView::buildForm() {
    m_principle->setObjectName(QStringLiteral("exercisePrinciple"));
    m_principle->setAccessibleName(tr("What the line rests on"));
    m_principle->addItem(tr("Choose what it rests on"));
    for (const Principle one : kPrinciples)
        m_principle->addItem(text(principleName(one)));
    m_principle->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed); // as wide as the panel, no wider
    m_number->setObjectName(QStringLiteral("exerciseNumber"));
    m_number->setMaximumWidth(kField);
    m_subject->setObjectName(QStringLiteral("exerciseSubject"));
    m_unit->setForegroundRole(QPalette::PlaceholderText);
    m_enter->setObjectName(QStringLiteral("exerciseEnter"));
    m_show->setFlush();
    QFont large = m_subject->font();
    large.setPointSizeF(large.pointSizeF() * 1.2);
    m_subject->setFont(large);
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    row->addWidget(m_subject);
    row->addWidget(m_number);
    row->addWidget(m_unit);
    row->addWidget(m_enter);
    row->addStretch(1);
    row->addWidget(m_show);
    auto* form = new QVBoxLayout(m_form);
    form->setContentsMargins(0, 4, 0, 0);
    form->setSpacing(6);
    form->addWidget(m_prompt);
    form->addWidget(m_principle);
    form->addLayout(row);
    return form;
}

void LineExerciseView::setTheme(const Theme& theme) {
    m_lines->setTheme(theme);
    m_findings->setTheme(theme);
}

void LineExerciseView::takeFocus() {
    if (m_exercise.flawed() != nullptr && !m_exercise.isFound())
        m_lines->takeFocus();
    else if (m_exercise.worked() == WorkedAs::faded && !m_exercise.isDone())
        m_principle->setFocus(Qt::OtherFocusReason);
    else if (!m_exercise.isDone())
        m_number->setFocus(Qt::OtherFocusReason);
    else
        setFocus(Qt::OtherFocusReason); // nothing is typed into anything by chance
}

QList<QWidget*> LineExerciseView::tabOrder() const {
    return {m_lines, m_principle, m_number, m_enter, m_show};
}

void LineExerciseView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    emit asks();
}

std::optional<Principle> LineExerciseView::principle() const {
    const int at = m_principle->currentIndex();
    return at > 0 ? std::optional(kPrinciples[static_cast<std::size_t>(at - 1)]) : std::nullopt;
}

void LineExerciseView::enter() {
    if (m_exercise.flawed() != nullptr)
        m_exercise.mend(m_number->text());
    else
        m_exercise.fill(principle(), m_number->text());
}

/// Another line is asked for, or nothing: fields are empty again, and the keyboard goes where it was.
void LineExerciseView::refresh() {
    const bool hadFocus = isAncestorOf(focusWidget()) || hasFocus();
    setVisible(m_exercise.isOn());
    if (!m_exercise.isOn()) {
        m_lines->clearLines();
        m_said->say({}, {});
        m_findings->show({});
        return;
    }
    m_head->setText(headWords());
    m_task->setText(taskWords());
    m_task->setVisible(!m_task->text().isEmpty());
    setAccessibleName(m_head->text());
    m_number->clear();
    m_principle->setCurrentIndex(0);
    showLines();
    showForm();
    tell();
    if (hadFocus)
        takeFocus();
    emit asks();
}

QString LineExerciseView::headWords() const {
    if (m_exercise.worked() == WorkedAs::flawed)
        return tr("Find the slip");
    return m_exercise.asksLawAlone() ? tr("How does it start?") : tr("Fill in the solution");
}

QString LineExerciseView::taskWords() const {
    if (m_exercise.isDone())
        return {};
    if (m_exercise.worked() == WorkedAs::flawed)
        return m_exercise.isFound() ? tr("Mend it: which number should this line come to?")
                                    : tr("A slip has got into one line; what follows from it carries its "
                                         "number on. Point at that "
                                         "line: a click, or arrows and Return.");
    if (m_exercise.asksLawAlone())
        return tr("Every line is yours this time. First say how the solution starts, then answer above.");
    const auto left = static_cast<int>(m_exercise.blankLines());
    return left == 1 ? tr("One line is blank. What does it rest on, and what does it come to?")
                     : tr("%1 lines are blank. Fill in the first of them, marked at its left.").arg(left);
}

void LineExerciseView::showLines() {
    SolutionLines::Shown shown;
    shown.worked = &m_exercise.shown();
    shown.linesAlone = m_exercise.worked() == WorkedAs::flawed;
    shown.asked = m_exercise.asked();
    if (m_exercise.flawed() != nullptr && m_exercise.isFound())
        shown.remarks[m_exercise.flawed()->flaw] = tr("The slip is in this line.");
    const bool hasLines = !(m_exercise.asksLawAlone() && !m_exercise.isDone());
    m_lines->setVisible(hasLines && (m_exercise.flawed() != nullptr || !m_exercise.isDone()));
    m_lines->show(shown);
}

void LineExerciseView::showForm() {
    const bool isFlawed = m_exercise.worked() == WorkedAs::flawed;
    m_form->setVisible(!m_exercise.isDone() && (!isFlawed || m_exercise.isFound()));
    m_principle->setVisible(!isFlawed);
    const QString prompt = text(m_exercise.prompt());
    m_prompt->setText(prompt);
    m_prompt->setVisible(!prompt.isEmpty());
    m_principle->setAccessibleDescription(prompt);
    const bool hasNumber = !m_exercise.asksLawAlone();
    for (QWidget* part : std::initializer_list<QWidget*>{m_subject, m_number, m_unit})
        part->setVisible(hasNumber);
    showSubject();
}

void LineExerciseView::showSubject() {
    const auto place = m_exercise.asked();
    if (!place)
        return;
    const Worked& worked = m_exercise.shown();
    const Formula& subject = *worked.steps[place->step].workings[place->working].subject;
    m_subject->setText(htmlOf(Prose{{subject}}) + QStringLiteral(" ="));
    m_unit->setText(unitOf(m_document.sketch(), subject.id.what));
    m_number->setAccessibleName(tr("What %1 comes to").arg(QString::fromStdString(toText(subject))));
}

QString LineExerciseView::doneWords() const {
    if (m_exercise.worked() == WorkedAs::flawed)
        return m_exercise.wentWell() ? tr("Found and mended at the first try.") : tr("Found and mended.");
    if (m_exercise.asksLawAlone())
        return tr("Yes: %1. Now answer the question above.").arg(m_principle->currentText());
    return m_exercise.wentWell() ? tr("All of it right at once: next time one more line is blank.")
                                 : tr("The solution stands whole; it is in the section Solution.");
}

/// In one line.
QString LineExerciseView::cameWords() const {
    const LineExercise::Came& came = m_exercise.came();
    if (!came.fault.isEmpty())
        return came.fault;
    if (came.computes)
        return tr("Not that line: with the numbers before it, it is right.");
    if (m_exercise.isDone())
        return came.isGivenUp ? tr("That is the line as it should be.") : doneWords();
    if (came.line)
        return came.isGivenUp ? tr("The line is filled in. Now the next one.")
                              : tr("Right. Now the next one.");
    if (m_exercise.flawed() != nullptr && m_exercise.isFound() && !came.mark)
        return tr("That is the line.");
    if (m_exercise.asksLawAlone() && came.isPrincipleRight)
        return tr("Not that one: what is known of the triangle?");
    if (!came.mark)
        return {};
    if (!came.mark->isRight())
        return came.isPrincipleRight.value_or(false) ? tr("It rests on that, but the number is not right.")
               : came.isPrincipleRight               ? tr("Neither what it rests on nor the number is right.")
                                                     : tr("The number is not right.");
    return tr("The number is right, but the line rests on something else.");
}

void LineExerciseView::tell() {
    m_show->setVisible(m_exercise.canShowLine());
    showFindings();
    if (const auto& computes = m_exercise.came().computes) {
        SolutionLines::Shown shown;
        shown.worked = &m_exercise.shown();
        shown.linesAlone = true;
        shown.remarks[*computes] = tr("This line is right.");
        m_lines->show(shown);
    }
    const QString words = m_exercise.isOn() ? cameWords() : QString();
    const QString more = m_findings->spokenText();
    QStringList spoken{words};
    if (!more.isEmpty())
        spoken << more;
    if (!m_task->text().isEmpty())
        spoken << m_task->text();
    m_said->say(words, spoken.join(u'\n'));
}

/// What a slip did, and in the end what it was and what to do instead.
void LineExerciseView::showFindings() {
    using Block = MarkedText::Block;
    using Ink = MarkedText::Ink;
    std::vector<Block> blocks;
    const LineExercise::Came& came = m_exercise.came();
    if (came.mark && came.mark->marking && !came.mark->isRight())
        blocks = findingBlocks(*came.mark->marking, false);
    if (came.line && !m_exercise.flawed())
        blocks.push_back({{}, came.line, Ink::plain, 4});
    if (const FlawedSolution* flawed = m_exercise.flawed(); flawed != nullptr && m_exercise.isDone()) {
        QString name = text(slipName(flawed->slip));
        name[0] = name[0].toUpper();
        blocks.push_back({inProse(tr("The slip: %1.").arg(name).toStdString()), {}, Ink::plain, 4});
        blocks.push_back({inProse(tr("The line as it should be:").toStdString()), {}, Ink::quiet, 8});
        blocks.push_back({{}, flawed->right, Ink::plain, 6});
        blocks.push_back({flawed->mend, {}, Ink::plain, 10});
    }
    for (const Prose& prose : m_exercise.why())
        if (m_exercise.asksLawAlone())
            blocks.push_back({prose, {}, Ink::plain, 4});
    m_findings->show(std::move(blocks));
}

} // namespace tailpoint
