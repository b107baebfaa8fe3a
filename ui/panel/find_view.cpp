// SPDX-License-Identifier: MIT
#include "ui/panel/find_view.h"

#include "core/construct/reduction.h"
#include "core/sketch/shown.h"
#include "ui/document/sheet_edits.h"
#include "ui/panel/answer_text.h"
#include "ui/panel/limits_view.h"
#include "ui/style/symbols.h"
#include "ui/style/theme.h"

#include <QEvent>
#include <QVBoxLayout>

namespace tailpoint {

namespace {

constexpr int kMostMends = 6;

constexpr double kDrawn = 2.1, kNotDrawn = 1.5; ///< letters of an answer beside those around it

QFont largeFont(const QFont& around, double times) {
    QFont font = serifFont();
    font.setPointSizeF(around.pointSizeF() * times);
    return font;
}

bool isDigit(QChar c) {
    return c >= QLatin1Char('0') && c <= QLatin1Char('9');
}

/// The word that begins there, as far as it is one of letters alone.
QStringView wordAt(QStringView text, qsizetype from) {
    const auto isLetter = [](QChar c) { return c.unicode() < 128 && c.isLetter(); };
    qsizetype end = from;
    while (end < text.size() && isLetter(text[end])) {
        ++end;
    }
    const bool goesOn = end < text.size() && (text[end] == QLatin1Char('_') || isDigit(text[end]));
    return goesOn ? QStringView() : text.mid(from, end - from);
}

/// A line breaks between words, never inside "R = 400 N".
QString keptTogether(QString html) {
    html.replace(QStringLiteral(" = "), QStringLiteral("&nbsp;=&nbsp;"));
    html.replace(QStringLiteral(" \u00B1 "), QStringLiteral("&nbsp;\u00B1&nbsp;"));
    for (qsizetype at = html.size() - 1; at > 0; --at) {
        if (html[at] != QLatin1Char(' ') || !isDigit(html[at - 1])) {
            continue;
        }
        const QStringView word = wordAt(html, at + 1);
        if (!word.isEmpty() && word != QLatin1String("at") && word != QLatin1String("and") &&
            word != QLatin1String("so")) {
            html.replace(at, 1, QStringLiteral("&nbsp;"));
        }
    }
    return html;
}

constexpr QLatin1String kForceLink("force"), kAngleLink("angle");

/// Where this unit begins at the end of a line that says a value in it; -1: the line doesn't.
qsizetype unitAtEnd(QStringView line, QStringView unit, bool isApart) {
    const qsizetype at = line.size() - unit.size();
    if (at < 1 || !line.endsWith(unit)) {
        return -1;
    }
    const bool hasBlank = line[at - 1] == QLatin1Char(' ');
    const qsizetype number = at - (hasBlank ? 2 : 1);
    return (hasBlank || !isApart) && number >= 0 && isDigit(line[number]) ? at : -1;
}

/// The unit at a line's end can be clicked, and looks as the rest of the line.
QString withUnitLinks(const QString& html, const Sketch& sketch, const QColor& ink) {
    static const QString kLine = QStringLiteral("<br>");
    const QString force = text(tailpoint::symbolOf(sketch.forceUnit));
    QStringList lines = html.split(kLine);
    for (QString& line : lines) {
        const auto link = [&](qsizetype at, QLatin1String to) {
            line = line.left(at) +
                   QStringLiteral("<a href=\"%1\" style=\"color:%2; text-decoration:none\">%3</a>")
                       .arg(QString(to), ink.name(), line.mid(at));
        };
        if (const qsizetype at = unitAtEnd(line, force, true); at > 0) {
            link(at, kForceLink);
            continue;
        }
        for (const QString& angle :
             {QStringLiteral("\u00b0"), QStringLiteral("gon"), QStringLiteral("rad")}) {
            if (const qsizetype at = unitAtEnd(line, angle, false); at > 0) {
                link(at, kAngleLink);
                break;
            }
        }
    }
    return lines.join(kLine);
}

QString messageHtml(const Result& result) {
    const QString message = phraseHtml(result.solved.message(), result.things()),
                  ranges = rangeRemarksText(result);
    return message + (message.isEmpty() || ranges.isEmpty() ? QString() : QStringLiteral("<br>")) + ranges;
}

} // namespace

FindView::FindView(SketchDocument& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_sentence(new ValueLabel(QStringLiteral("question"))),
      m_message(new ValueLabel(QStringLiteral("findMessage"))),
      m_answerName(quietLabel(QStringLiteral("answerName"))),
      m_otherName(quietLabel(QStringLiteral("otherAnswerName"))),
      m_answer(new SteadyLines(QStringLiteral("answer"))),
      m_detail(new SteadyLines(QStringLiteral("answerDetail"))),
      m_otherAnswer(new SteadyLines(QStringLiteral("otherAnswerValues"))), m_limits(new LimitsView),
      m_other(linkButton({}, QStringLiteral("otherAnswer"))), m_mends(new QVBoxLayout) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    m_answer->label()->setFont(largeFont(font(), kDrawn));
    m_answer->label()->setForegroundRole(QPalette::LinkVisited);
    m_answer->label()->setAccessibleDescription(tr("Answer"));
    m_otherAnswer->label()->setFont(largeFont(font(), kNotDrawn));
    m_otherAnswer->label()->setForegroundRole(QPalette::LinkVisited);
    m_otherAnswer->label()->setAccessibleDescription(tr("The other answer"));
    m_otherAnswer->setWrapped();
    m_answerName->setContentsMargins(0, 6, 0, 0);
    m_otherName->setContentsMargins(0, 6, 0, 0);
    m_sentence->setForegroundRole(QPalette::PlaceholderText);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_sentence, m_answerName, m_answer, m_detail,
                                                           m_otherName, m_otherAnswer, m_message, m_limits}) {
        column->addWidget(widget);
    }
    m_mends->setSpacing(0);
    m_other->setFlush();
    m_mends->addWidget(m_other, 0, Qt::AlignLeft);
    column->addLayout(m_mends);
    column->addSpacing(4);
    m_answer->label()->setTextInteractionFlags(m_answer->label()->textInteractionFlags() |
                                               Qt::LinksAccessibleByMouse); // keys have the table's menu
    m_answer->label()->setFocusPolicy(Qt::StrongFocus);                     // which the flags took away
    connect(m_answer->label(), &QLabel::linkActivated, this, [this](const QString& unit) {
        emit unitAsked(unit == kForceLink ? UnitOf::force : UnitOf::angle, QCursor::pos());
    });
    m_answer->label()->installEventFilter(this);
    connect(m_other, &QPushButton::clicked, this,
            [this] { m_document.choose(1 - m_document.result().chosen); });
}

void FindView::refresh() {
    const Result& result = m_document.result();
    const AnswerText answer = answerText(result);
    m_sentence->show(keptTogether(htmlOf(question(result.sketch))));
    m_answer->show(withUnitLinks(answer.large, result.sketch,
                                 m_answer->label()->palette().color(QPalette::LinkVisited)));
    m_detail->setWrapped(result.hasTolerances()); // a range may be longer than its line
    m_detail->show(answer.detail);
    showOther();
    const auto role = answer.large.isEmpty() ? QPalette::BrightText : QPalette::WindowText;
    if (m_message->foregroundRole() != role) {
        m_message->setForegroundRole(role);
    }
    m_message->show(result.sketch.forces.empty() || result.isWithheld ? QString() // the question says it
                                                                      : messageHtml(result));
    m_limits->show(result);
    showMends(mends());
}

/// The unit's letters have the colour of their line, which learns of another theme after this view.
bool FindView::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_answer->label() && event->type() == QEvent::PaletteChange) {
        refresh();
    }
    return QWidget::eventFilter(watched, event);
}

/// Of two answers both are told; the one that is drawn is the large one and says so.
void FindView::showOther() {
    const Result& result = m_document.result();
    const QString other = otherAnswerText(result);
    const std::size_t which = 1 - result.chosen;
    m_otherAnswer->show(other);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_answerName, m_otherName, m_other}) {
        widget->setVisible(!other.isEmpty());
    }
    m_answerName->setText(answerName(result, result.chosen));
    m_otherName->setText(answerName(result, which));
    m_other->setText(tr("Draw answer %1").arg(which + 1));
}

void FindView::apply(const Sketch& after, const QString& step) const {
    if (const auto fault = m_document.edit(after, step)) {
        m_message->show(text(fault->message).toHtmlEscaped());
    }
}

Words FindView::symbolOf(int vector) const {
    return symbolWords(m_document.result().things(), vectorId(vector));
}

/// Too many unknowns: one click opens the field of one of them.
void FindView::addFixes(QList<Mend>& list) {
    const Sketch& sketch = m_document.sketch();
    for (int vector = kSumIndex; hasVector(sketch, vector) && list.size() < kMostMends; ++vector) {
        for (Entry cell : {Entry::magnitude, Entry::direction}) {
            if (isToFind(sketch, vector, cell)) {
                list << Mend{sentence(cell == Entry::magnitude ? tr("Give the magnitude of %1")
                                                               : tr("Give the direction of %1"),
                                      symbolOf(vector)),
                             [this, vector, cell] { emit cellWanted(vector, cell); }};
            }
        }
    }
}

/// Nothing to find: one click frees a vector.
void FindView::addFrees(QList<Mend>& list) const {
    list << Mend{sentence(tr("Find the resultant")),
                 [this] { apply(askingResultant(m_document.result()), tr("Ask for the resultant")); }};
    const int forces = static_cast<int>(m_document.sketch().forces.size());
    for (int vector = std::max(0, forces - 2); vector < forces; ++vector) {
        const QString name = text(vectorOf(m_document.sketch(), vector).name);
        list << Mend{sentence(tr("Find %1"), symbolOf(vector)), [this, vector, name] {
                         Sketch after = m_document.sketch();
                         vectorOf(after, vector).magnitude = {};
                         vectorOf(after, vector).direction = {};
                         apply(settled(std::move(after)), tr("Ask for %1").arg(name));
                     }};
    }
}

/// An answer was lost to a sense: one click admits the other one.
void FindView::addTurns(QList<Mend>& list) const {
    if (m_document.result().solved.reversed.empty()) {
        return;
    }
    const Solution& lost = m_document.result().solved.reversed.front();
    for (int vector = kSumIndex; vector < static_cast<int>(lost.forces.size()); ++vector) {
        const SolvedForce& each =
            vector == kSumIndex ? lost.sum : lost.forces[static_cast<std::size_t>(vector)];
        if (each.turned && list.size() < kMostMends) {
            list << Mend{sentence(tr("Let %1 act either way along its line"), symbolOf(vector)),
                         [this, vector] {
                             Sketch after = m_document.sketch();
                             vectorOf(after, vector).lineOfActionOnly = true;
                             apply(after, tr("Take the line of action only"));
                         }};
        }
    }
}

QList<FindView::Mend> FindView::mends() {
    QList<Mend> list;
    if (m_document.withholdsAnswer()) {
        return list;
    }
    if (m_document.result().solved.status == Status::underdetermined) {
        addFixes(list);
    } else if (m_document.result().solved.status == Status::overdetermined) {
        addFrees(list);
    }
    addTurns(list);
    return list;
}

void FindView::showMends(const QList<Mend>& list) {
    m_made.clear();
    while (m_buttons.size() < list.size()) {
        const qsizetype place = m_buttons.size();
        auto* button = linkButton({}, QStringLiteral("mend%1").arg(place));
        button->setFlush();
        connect(button, &QPushButton::clicked, this, [this, place] {
            const auto make = m_made.value(place); // a copy: making it fills the list anew
            make();
        });
        m_mends->addWidget(button, 0, Qt::AlignLeft);
        m_buttons << button;
    }
    for (qsizetype i = 0; i < m_buttons.size(); ++i) {
        m_buttons[i]->setVisible(i < list.size());
        if (i < list.size()) {
            m_buttons[i]->setSentence(list[i].title);
            m_made << list[i].make;
        }
    }
}

} // namespace tailpoint
