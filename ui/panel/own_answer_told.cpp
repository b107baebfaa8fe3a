// SPDX-License-Identifier: MIT
// What the fields are told: verdicts, findings, points, the angle that is pointed at.
#include "ui/document/sketch_document.h"
#include "ui/panel/own_answer_row.h"
#include "ui/panel/own_answer_view.h"
#include "ui/panel/own_answer_words.h"
#include "ui/panel/panel_parts.h"
#include "ui/panel/spoken_line.h"
#include "ui/style/symbols.h"

#include <QLineEdit>
#include <QRegularExpression>

namespace tailpoint {

void OwnAnswerView::showMarks() {
    const auto& marking = m_answer.marking();
    for (OwnAnswerRow* row : std::as_const(m_rows)) {
        QStringList words, right;
        if (const auto fault = m_answer.faults().find(row->of().name); fault != m_answer.faults().end()) {
            row->setVerdict(isHalf(row->of().name) ? tr("one is missing: see below")
                                                   : tr("can't be read: see below"),
                            {}, true);
            continue;
        }
        for (const MarkedQuantity& quantity : marking ? marking->quantities : std::vector<MarkedQuantity>())
            if (quantity.name == row->of().name) {
                words << wordsOfVerdict(quantity) + ownPoints(quantity);
                const std::string range = rangeWords(quantity);
                right << onScreen(quantity.expectedText + (range.empty() ? range : ", " + range));
            }
        row->setVerdict(words.join(QStringLiteral("; ")),
                        m_answer.isAnswerShown() ? tr("It is %1").arg(right.join(tr(" or "))) : QString(),
                        false);
    }
    m_show->setVisible(marking.has_value());
    m_show->setText(m_answer.isAnswerShown() ? tr("Hide the answer") : tr("Show the answer"));
    m_show->updateGeometry();
    showFindings();
    tell();
}

/// Of two answers one has its value.
bool OwnAnswerView::isHalf(const std::string& name) const {
    return m_answer.answersToGive() == 2 &&
           m_answer.typed(name, 0).isEmpty() != m_answer.typed(name, 1).isEmpty();
}

QString OwnAnswerView::wordsFor(const PointableAngle& angle) const {
    const Result& result = m_document.result();
    return onScreen(plain(wordsOf(angle, result.sketch, result.things())));
}

/// Of an angle that was pointed at, which one it was.
QString OwnAnswerView::wordsOfVerdict(const MarkedQuantity& quantity) const {
    const PointableAngle* angle = m_answer.pointed(quantity.name);
    const bool isPointed = angle != nullptr && m_answer.typed(quantity.name).isEmpty();
    MarkedQuantity shown = quantity;
    for (std::string& name : shown.followsFrom)
        name = printed(name).toStdString();
    if (!isPointed || quantity.verdict == Verdict::right)
        return verdictWords(shown);
    const Answerable* of = m_answer.named(quantity.name);
    return of != nullptr && isSame(of->id, angle->angle)
               ? tr("the right one, as you drew it")
               : tr("not right: that is %1")
                     .arg(text(inPrint(m_document.result().things().symbol(angle->angle))));
}

/// A reader's fault, the quantities' names in it by their symbols.
Prose OwnAnswerView::withSymbols(const QString& fault) const {
    static const QRegularExpression word(QStringLiteral("[A-Za-z0-9_]+"));
    Prose prose;
    qsizetype done = 0;
    for (auto match = word.globalMatch(fault); match.hasNext();) {
        const auto at = match.next();
        const Answerable* of = m_answer.named(at.captured().toStdString());
        if (of == nullptr || text(of->name) != at.captured())
            continue;
        appendText(prose, fault.mid(done, at.capturedStart() - done).toStdString());
        prose.pieces.emplace_back(m_document.result().things().formula(of->id));
        done = at.capturedEnd();
    }
    appendText(prose, fault.mid(done).toStdString());
    return prose;
}

/// Where the sketch's file weighs them.
QString OwnAnswerView::ownPoints(const MarkedQuantity& quantity) const {
    return m_answer.hasScheme() && quantity.asked && quantity.verdict != Verdict::missing
               ? QStringLiteral(" \u00b7 ") + pointsWords(quantity.points, quantity.of)
               : QString();
}

void OwnAnswerView::showFindings() {
    std::vector<MarkedText::Block> blocks;
    for (const auto& [name, fault] : m_answer.faults())
        blocks.push_back({withSymbols(fault), {}, MarkedText::Ink::warning, 4});
    if (const auto& marking = m_answer.marking())
        blocks = findingBlocks(*marking, m_answer.isAnswerShown());
    QString why = m_answer.isOn() ? m_answer.whyNot() : QString();
    if (!why.isEmpty()) {
        why[0] = why[0].toUpper();
        blocks.push_back({inProse(why.toStdString()), {}, MarkedText::Ink::warning, 4});
    }
    m_findings->show(std::move(blocks));
    m_slip->setVisible(m_answer.canShowSlip());
    m_slip->setText(m_answer.isSlipShown() ? tr("Take it off the sheet") : tr("Show what gives this number"));
    m_slip->updateGeometry();
}

/// Which angle is meant stands, and is spoken, in the line for the whole; the keyboard comes back to the row.
void OwnAnswerView::showPointing() {
    const std::string& name = m_answer.pointing();
    if (name.empty()) {
        const bool isHere = isAncestorOf(window()->focusWidget()); // a hand went on by itself
        for (const OwnAnswerRow* row : std::as_const(m_rows))
            if (row->of().name == m_looking && !isHere)
                row->field()->setFocus(Qt::OtherFocusReason);
        m_looking.clear();
        return tell();
    }
    m_looking = name;
    const auto at = m_answer.pointsAt();
    QString words = at ? wordsFor(m_answer.pointable()[*at]) : tr("Which angle is %1?").arg(printed(name));
    words[0] = words[0].toUpper();
    m_summary->say(words, words);
}

/// The line for the whole is spoken, with every verdict in it.
void OwnAnswerView::tell() {
    const auto& marking = m_answer.marking();
    const QString words = marking                     ? summaryWords(*marking)
                          : m_answer.faults().empty() ? QString()
                                                      : tr("Nothing is marked yet.");
    const QString points =
        marking && m_answer.tellsPoints() ? pointsWords(marking->points, marking->of) : QString();
    m_points->setText(points);
    QStringList spoken{words};
    for (const OwnAnswerRow* row : m_rows)
        if (!row->verdict().isEmpty())
            spoken << row->field()->accessibleName() + QStringLiteral(": ") + row->verdict();
    if (!points.isEmpty())
        spoken << points;
    if (!m_findings->spokenText().isEmpty())
        spoken << m_findings->spokenText();
    m_summary->say(words, words.isEmpty() ? QString() : spoken.join(u'\n'));
}

} // namespace tailpoint
