// SPDX-License-Identifier: MIT
#include "ui/panel/answer_text.h"

#include "core/construct/reduction.h"
#include "core/explain/limits.h"
#include "core/explain/ranges.h"
#include "core/sketch/shown.h"
#include "ui/panel/check_text.h"
#include "ui/panel/figure_rows.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QTextDocumentFragment>

namespace tailpoint {

namespace {

struct Answers {
    Q_DECLARE_TR_FUNCTIONS(Answers)
};

/// One that was found, or the sum.
struct Found {
    VectorId id;
    const SolvedForce& vector;
};

QString largeLine(const Found& of, const Result& result) {
    const SolvedForce& found = of.vector;
    const Sketch& sketch = result.sketch;
    const QString name = symbolInSerif(result.things().symbol(of.id));
    if (found.magnitudeFound) {
        return Answers::tr("%1 = %2").arg(name, quantity(found.magnitude, sketch));
    }
    return found.direction ? Answers::tr("%1 at %2").arg(name, onScreen(shownAngle(*found.direction, sketch)))
                           : Answers::tr("%1: no direction").arg(name);
}

/// Null where there are no ranges.
const tolerance::VectorRange* rangeOf(const Result& result, std::size_t answer, VectorId vector) {
    const tolerance::AnswerRange* range = result.rangeOf(answer);
    return range ? range->find(indexOf(vector)) : nullptr;
}

QString inPlainText(const Prose& told) {
    return QString::fromStdString(toText(told));
}

/// What was found of the vector, within the tolerances: "509 to 530 N, −5.1° to −2.2°".
QString rangeText(const Found& found, const tolerance::VectorRange& range, const Sketch& sketch) {
    QStringList ranges;
    if (found.vector.magnitudeFound) {
        ranges << inPlainText(rangeTold(range.magnitude, sketch));
    }
    if (found.vector.directionFound) {
        ranges << inPlainText(rangeTold(range.direction, sketch));
    }
    return ranges.join(QStringLiteral(", "));
}

/// "range 509 to 530 N" of a found magnitude, in a line of its own below it; empty where there are no
/// tolerances.
QString rangeLine(const Found& found, const Result& result) {
    if (!result.hasTolerances()) {
        return {};
    }
    const auto* range = rangeOf(result, result.chosen, found.id);
    if (range && !found.vector.magnitudeFound) {
        return {};
    }
    return (range ? Answers::tr("range %1").arg(inPlainText(rangeTold(range->magnitude, result.sketch)))
                  : text(rangeUnknown())) +
           QStringLiteral("<br>");
}

/// ", range -5.1 to -2.2 degrees", behind a found direction.
QString directionRange(const Found& found, const Result& result) {
    const auto* range = rangeOf(result, result.chosen, found.id);
    return range && found.vector.directionFound
               ? Answers::tr(", range %1").arg(inPlainText(rangeTold(range->direction, result.sketch)))
               : QString();
}

/// Beside one another; with ranges one under the other.
QString components(const Found& found, const Result& result) {
    const auto* range = rangeOf(result, result.chosen, found.id);
    const auto component = [&](What what, double value, const tolerance::Range* ends) {
        const QString told =
            symbolHtml(result.things().symbol({what, found.id})) + u' ' + quantity(value, result.sketch);
        if (!result.hasTolerances()) {
            return told;
        }
        return ends ? Answers::tr("%1, range %2").arg(told, inPlainText(rangeTold(*ends, result.sketch)))
                    : Answers::tr("%1, %2").arg(told, text(rangeUnknown()));
    };
    return component(What::x, found.vector.vector.x(), range ? &range->x : nullptr) +
           (result.hasTolerances() ? QStringLiteral("<br>") : QStringLiteral(" &nbsp; ")) +
           component(What::y, found.vector.vector.y(), range ? &range->y : nullptr);
}

/// Direction in words; the components of a vector that is found alone. Their line is their own, so that
/// nothing is wrapped anew while a drag makes numbers longer.
QString detailLine(const Found& found, const Result& result, bool alone) {
    QString line = onScreen(directionWords(found.vector.direction, result.sketch));
    if (const std::string bearing = bearingWords(found.vector.direction, result.sketch); !bearing.empty()) {
        line += Answers::tr(", bearing %1").arg(onScreen(bearing));
    }
    if (found.vector.turned) {
        line += Answers::tr(", in the other sense of its line");
    }
    line += directionRange(found, result);
    const QString range = rangeLine(found, result);
    return alone ? range + line + QStringLiteral("<br>") + components(found, result)
                 : symbolHtml(result.things().symbol(found.id)) + QStringLiteral(": ") + range + line;
}

std::vector<Found> foundVectors(const Solution& solution) {
    std::vector<Found> found;
    for (std::size_t i = 0; i < solution.forces.size(); ++i) {
        if (solution.forces[i].magnitudeFound || solution.forces[i].directionFound) {
            found.push_back({forceVector(i), solution.forces[i]});
        }
    }
    if (solution.sum.magnitudeFound || solution.sum.directionFound || found.empty()) {
        found.push_back({kSumVector, solution.sum});
    }
    return found;
}

} // namespace

const Solution* shownSolution(const Result& result) {
    const auto& solutions = result.solved.solutions;
    const bool any = !result.sketch.forces.empty() && result.chosen < solutions.size();
    return any ? &solutions[result.chosen] : nullptr;
}

QString quantity(double force, const Sketch& sketch) {
    return onScreen(shownForceWithUnit(force, sketch));
}

AnswerText answerText(const Result& result) {
    const Solution* solution = shownSolution(result);
    if (!solution) {
        return {};
    }
    const auto found = foundVectors(*solution);
    QStringList large, detail;
    for (const Found& each : found) {
        large << largeLine(each, result);
        detail << detailLine(each, result, found.size() == 1);
    }
    return {large.join(QStringLiteral("<br>")), detail.join(QStringLiteral("<br>"))};
}

QString limitsText(const Result& result) {
    const Solution* solution = shownSolution(result);
    if (!solution) {
        return {};
    }
    QStringList lines;
    for (const Prose& line : limitsTold(result.sketch, *solution, result.rangeOf(result.chosen))) {
        lines << onScreen(toText(line)).toHtmlEscaped();
    }
    return lines.join(QStringLiteral("<br>"));
}

QString rangeRemarksText(const Result& result) {
    const tolerance::AnswerRange* range = shownSolution(result) ? result.rangeOf(result.chosen) : nullptr;
    if (!range) {
        return {};
    }
    QStringList lines;
    for (const Prose& line : rangeRemarks(*range, result.sketch, Voice(),
                                          result.isMoving ? OuterBounds::silent : OuterBounds::told)) {
        lines << htmlOf(line);
    }
    return lines.join(QStringLiteral("<br>"));
}

QString answerName(const Result& result, std::size_t answer) {
    if (result.solved.solutions.size() != 2) {
        return {};
    }
    return (answer == result.chosen ? Answers::tr("Answer %1 of 2, drawn") : Answers::tr("Answer %1 of 2"))
        .arg(answer + 1);
}

QString otherAnswerText(const Result& result) {
    if (!shownSolution(result) || result.solved.solutions.size() != 2) {
        return {};
    }
    QStringList found;
    for (const Found& each : foundVectors(result.solved.solutions[1 - result.chosen])) {
        const auto* range = rangeOf(result, 1 - result.chosen, each.id);
        QString line = largeLine(each, result);
        QString told = range ? rangeText(each, *range, result.sketch) : QString();
        if (told.isEmpty() && result.hasTolerances()) {
            told = text(rangeUnknown());
        }
        if (!told.isEmpty()) {
            line = Answers::tr("%1 (%2)").arg(line, told);
        }
        found << line.replace(u' ', QChar::Nbsp);
    }
    return found.join(QStringLiteral(", "));
}

} // namespace tailpoint
