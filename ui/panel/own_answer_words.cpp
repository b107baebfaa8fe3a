// SPDX-License-Identifier: MIT
#include "ui/panel/own_answer_words.h"

#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

struct Marks {
    Q_DECLARE_TR_FUNCTIONS(Marks)
};

constexpr std::size_t kMostFindings = 3;

using Block = MarkedText::Block;
using Ink = MarkedText::Ink;

/// A number of a text, beside the answer as it stands on paper and in full.
bool isNear(double number, const MarkedQuantity& quantity, double expected) {
    const double right = std::abs(expected);
    const double half = quantity.id.what == What::magnitude ? 0.002 * right : std::max(0.06, 0.0005 * right);
    return std::abs(number - right) <= half;
}

/// Of a bearing the angle from north or south.
std::optional<double> shownNumber(const MarkedQuantity& quantity) {
    static const QRegularExpression number(QStringLiteral("\\d+(\\.\\d+)?"));
    const auto match = number.match(QString::fromStdString(quantity.expectedText));
    return match.hasMatch() ? std::optional(match.captured().toDouble()) : std::nullopt;
}

/// It has the value of something that the learner hasn't got right yet.
bool tellsAnswer(const QString& words, const Marking& marking) {
    static const QRegularExpression number(QStringLiteral("\\d+(\\.\\d+)?"));
    for (auto match = number.globalMatch(words); match.hasNext();) {
        const double value = match.next().captured().toDouble();
        for (const MarkedQuantity& quantity : marking.quantities)
            if (quantity.expected && quantity.verdict != Verdict::right &&
                (isNear(value, quantity, *quantity.expected) ||
                 isNear(value, quantity, shownNumber(quantity).value_or(*quantity.expected))))
                return true;
    }
    return false;
}

/// In letters alone where its numbers would tell.
Working untold(Working working, const Marking& marking) {
    if (!tellsAnswer(MarkedText::plainOf(working), marking))
        return working;
    working.substituted.reset();
    working.told.reset();
    if (working.value && tellsAnswer(QString::fromStdString(toText(Prose{{*working.value}})), marking))
        working.value.reset();
    return working;
}

void addProse(std::vector<Block>& blocks, const Prose& prose, Ink ink = Ink::plain, double before = 4) {
    blocks.push_back({prose, {}, ink, before});
}

/// A line of the answer's form has what is right in it.
void addLines(std::vector<Block>& blocks, const Finding& finding, const Marking& marking, bool withAnswer) {
    if (finding.place == SlipPlace::reporting && !withAnswer)
        return;
    for (const ChangedLine& line : finding.lines) {
        blocks.push_back({{}, withAnswer ? line.changed : untold(line.changed, marking), Ink::plain, 8});
        if (withAnswer && line.right) {
            addProse(blocks, inProse(Marks::tr("The line as it should be:").toStdString()), Ink::quiet, 6);
            blocks.push_back({{}, *line.right, Ink::plain, 6});
        }
    }
}

void addRemark(std::vector<Block>& blocks, const Prose& remark, const Marking& marking, bool withAnswer) {
    if (withAnswer || !tellsAnswer(QString::fromStdString(toText(remark)), marking))
        addProse(blocks, remark, Ink::quiet, 8);
}

void addFinding(std::vector<Block>& blocks, const Finding& finding, const Marking& marking, bool withAnswer,
                bool isFirst) {
    addProse(blocks, finding.sentence, Ink::plain, isFirst ? 2 : 14);
    for (const Prose& reading : finding.readings)
        addProse(blocks, reading);
    addLines(blocks, finding, marking, withAnswer);
    addProse(blocks, finding.mend, Ink::quiet, 6);
}

} // namespace

QString verdictWords(const MarkedQuantity& quantity) {
    switch (quantity.verdict) {
    case Verdict::right:
        return Marks::tr("right");
    case Verdict::rounded:
        return quantity.isLastFigure ? Marks::tr("right but for its last figure")
                                     : Marks::tr("right, to fewer figures");
    case Verdict::unit:
        return Marks::tr("right but for the unit");
    case Verdict::axis:
        return Marks::tr("from another axis or sense");
    case Verdict::follows: {
        QStringList names;
        for (const std::string& name : quantity.followsFrom)
            names << text(name);
        return names.isEmpty() ? Marks::tr("follows from the same slip")
                               : Marks::tr("follows from %1").arg(names.join(Marks::tr(" and ")));
    }
    case Verdict::slip:
        return Marks::tr("not right: see below");
    case Verdict::other:
        return Marks::tr("not right");
    case Verdict::missing:
    case Verdict::incomplete:
    case Verdict::unread: // the fault is said in its place
        break;
    }
    return Marks::tr("no value yet");
}

namespace {

bool isLastFigureAlone(const Marking& marking) {
    return std::all_of(marking.quantities.begin(), marking.quantities.end(), [](const MarkedQuantity& one) {
        return one.verdict != Verdict::rounded || one.isLastFigure;
    });
}

} // namespace

QString summaryWords(const Marking& marking) {
    switch (marking.verdict) {
    case Verdict::right:
        return Marks::tr("All that is asked is right.");
    case Verdict::rounded:
        return isLastFigureAlone(marking) ? Marks::tr("Right but for a last figure.")
                                          : Marks::tr("Right, to fewer figures than asked.");
    case Verdict::unit:
        return Marks::tr("Right but for a unit.");
    case Verdict::axis:
        return Marks::tr("Right but for the axis or the sense.");
    case Verdict::incomplete:
    case Verdict::missing:
        return Marks::tr("A value is still missing.");
    default:
        return marking.points > 0 || std::any_of(marking.quantities.begin(), marking.quantities.end(),
                                                 [](const MarkedQuantity& one) {
                                                     return one.asked && (one.verdict == Verdict::right ||
                                                                          one.verdict == Verdict::rounded);
                                                 })
                   ? Marks::tr("Not all of it is right yet.")
                   : Marks::tr("It is not right yet.");
    }
}

QString pointsWords(double points, double of) {
    const auto shown = [](double value) { return onScreen(QString::number(value, 'g', 4)); };
    return of == 1 ? Marks::tr("%1 of 1 point").arg(shown(points))
                   : Marks::tr("%1 of %2 points").arg(shown(points), shown(of));
}

std::vector<Block> findingBlocks(const Marking& marking, bool withAnswer) {
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < std::min(kMostFindings, marking.slips.size()); ++i)
        addFinding(blocks, marking.slips[i], marking, withAnswer, i == 0);
    for (const MarkedQuantity& quantity : marking.quantities)
        for (const Prose& remark : quantity.remarks)
            addRemark(blocks, remark, marking, withAnswer);
    for (const Prose& remark : marking.remarks)
        addRemark(blocks, remark, marking, withAnswer);
    if (marking.ask)
        addProse(blocks, *marking.ask, Ink::plain, 12);
    return blocks;
}

} // namespace tailpoint
