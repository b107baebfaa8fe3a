#include "ui/panel/answer_text.h"

#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"
#include "ui/document/report_values.h"
#include "ui/panel/given_edits.h"
#include "ui/panel/symbols.h"

#include <QCoreApplication>
#include <QTextDocumentFragment>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

struct Answers {
    Q_DECLARE_TR_FUNCTIONS(Answers)
};

const Solution* shownSolution(const Result& result) {
    const auto& solutions = result.solved.solutions;
    const bool any = !result.sketch.forces.empty() && result.chosen < solutions.size();
    return any ? &solutions[result.chosen] : nullptr;
}

QString force(double value, const Sketch& sketch) {
    return onScreen(shownForceWithUnit(value, sketch));
}

QString joined(const QString& html) { // a quantity is not broken across lines
    return QStringLiteral("<span style=\"white-space:nowrap\">%1</span>").arg(html);
}

QString components(const SolvedForce& found, const Sketch& sketch) {
    return joined(symbolHtml(found.name, QStringLiteral("x")) + u' ' + force(found.vector.x(), sketch)) +
           QStringLiteral(" &nbsp; ") +
           joined(symbolHtml(found.name, QStringLiteral("y")) + u' ' + force(found.vector.y(), sketch));
}

QString largeLine(const SolvedForce& found, const Sketch& sketch) {
    const QString name = symbolInSerif(found.name);
    if (found.magnitudeFound) {
        return joined(Answers::tr("%1 = %2").arg(name, force(found.magnitude, sketch)));
    }
    return found.direction
               ? joined(Answers::tr("%1 at %2").arg(name, onScreen(shownAngle(*found.direction, sketch))))
               : Answers::tr("%1: no direction").arg(name);
}

/// Direction in words; the components of a vector that is found alone. Their line is their own, so that
/// nothing is wrapped anew while a drag makes numbers longer.
QString detailLine(const SolvedForce& found, const Sketch& sketch, bool alone) {
    QString line = onScreen(directionWords(found.direction, sketch));
    if (found.turned) {
        line += Answers::tr(", in the other sense of its line");
    }
    return alone ? line + QStringLiteral("<br>") + components(found, sketch)
                 : symbolHtml(found.name) + QStringLiteral(": ") + line;
}

std::vector<const SolvedForce*> foundVectors(const Solution& solution) {
    std::vector<const SolvedForce*> found;
    for (const SolvedForce& each : solution.forces) {
        if (each.magnitudeFound || each.directionFound) {
            found.push_back(&each);
        }
    }
    if (solution.sum.magnitudeFound || solution.sum.directionFound || found.empty()) {
        found.push_back(&solution.sum);
    }
    return found;
}

/// "5.7 . 10^-14 N": a residual is a matter of its power of ten.
QString residualHtml(double residual, const Sketch& sketch) {
    const QString unit = QStringLiteral(" ") + text(symbolOf(sketch.forceUnit));
    if (residual == 0) {
        return QStringLiteral("0") + unit;
    }
    const QString shown = QString::number(residual, 'e', 1);
    const qsizetype mark = shown.indexOf(u'e');
    const int exponent = shown.mid(mark + 1).toInt();
    return QStringLiteral("%1 \u00b7 10<sup>%2</sup>%3")
        .arg(shown.left(mark), onScreen(QString::number(exponent)), unit);
}

constexpr qsizetype kLongestSum = 28; // characters of a written-out sum, before its last term

using Part = double (*)(const Eigen::Vector2d&);

/// One place for all terms of a sum, a digit beyond the sheet's: what stands there can be added up by hand.
class SumDigits {
public:
    SumDigits(const Solution& solution, Part part, const Sketch& sketch) : m_sketch(sketch) {
        double greatest = std::fabs(part(solution.sum.vector));
        for (const SolvedForce& each : solution.forces) {
            greatest = std::max(greatest, std::fabs(part(each.vector)));
        }
        m_decimals = greatest > 0 ? sketch.figures - static_cast<int>(std::floor(std::log10(greatest))) : 0;
    }
    QString shown(double value) const {
        const bool plain = m_decimals <= 12 && m_decimals >= -6;
        return onScreen(plain ? fixedDecimals(value, std::max(0, m_decimals)) : shownForce(value, m_sketch));
    }

private:
    const Sketch& m_sketch;
    int m_decimals = 0;
};

/// "x: 308.1 + 210.7 = 518.8 N"; long sums are counted.
QString sumLine(const QString& axis, Part part, const Solution& solution, const Sketch& sketch) {
    const SumDigits digits(solution, part, sketch);
    QString terms;
    for (const SolvedForce& each : solution.forces) {
        if (terms.size() > kLongestSum) {
            terms = Answers::tr("sum of %1 components").arg(solution.forces.size());
            break;
        }
        const bool minus = part(each.vector) < 0;
        const QString sign = terms.isEmpty() ? minus ? QStringLiteral("\u2212") : QString()
                             : minus ? QStringLiteral(" \u2212 ")
                                             : QStringLiteral(" + ");
        terms += sign + digits.shown(std::fabs(part(each.vector)));
    }
    return Answers::tr("%1: %2 = %3 %4")
        .arg(axis, terms, digits.shown(part(solution.sum.vector)), text(symbolOf(sketch.forceUnit)));
}

FigureRow heading(const QString& label, const QList<QString>& values) {
    return {{{label.toStdString(), false}}, values, true};
}

QString angleOrNone(std::optional<double> radians, const Sketch& sketch) {
    return radians ? onScreen(shownAngleFromRadians(*radians, sketch)) : QStringLiteral("\u2013");
}

void addParallelogram(QList<FigureRow>& rows, const Parallelogram& shape, const Sketch& sketch) {
    rows << heading(Answers::tr("Parallelogram"), {Answers::tr("interior angles")});
    const auto words = [](const QString& part) { return Words{part.toStdString(), false}; };
    const Sentence near{words(Answers::tr("common point, tip of ")), {sketch.sum.name, true}};
    const Sentence far{words(Answers::tr("tips of ")),
                       {shape.first, true},
                       words(Answers::tr(" and ")),
                       {shape.second, true}};
    rows << FigureRow{near, {angleOrNone(shape.interior[0], sketch)}}; // opposite angles are equal
    rows << FigureRow{far, {angleOrNone(shape.interior[1], sketch)}};
    if (shape.shape != Shape::proper) {
        rows << FigureRow{{{std::string(wordsFor(shape.shape)), false}}, {}};
    }
}

/// "K adds up A, B, C": vectors, so no equation of magnitudes.
Sentence knownsAddedUp(const std::vector<std::string>& knowns) {
    Sentence sentence{{"K", true}, {Answers::tr(" adds up ").toStdString(), false}};
    for (const std::string& name : knowns) {
        if (sentence.size() > 2) {
            sentence.push_back({", ", false});
        }
        sentence.push_back({name, true});
    }
    return sentence;
}

void addTriangle(QList<FigureRow>& rows, const ForceTriangle& triangle, const Sketch& sketch) {
    rows << heading(Answers::tr("Force triangle"), {Answers::tr("side"), Answers::tr("opposite angle")});
    for (std::size_t i = 0; i < 3; ++i) {
        rows << FigureRow{{{triangle.names[i], true}},
                          {force(triangle.sides[i], sketch), angleOrNone(triangle.opposite[i], sketch)}};
    }
    if (!triangle.knowns.empty()) {
        rows << FigureRow{knownsAddedUp(triangle.knowns), {}};
    }
}

QString plainText(const QString& html) {
    return QTextDocumentFragment::fromHtml(html).toPlainText();
}

QString asLine(const FigureRow& row) {
    return text(plain(row.label)) + (row.values.isEmpty() ? QString() : u'\t' + row.values.join(u'\t')) +
           u'\n';
}

} // namespace

bool hasAnswer(const Result& result) {
    return shownSolution(result) != nullptr;
}

QString htmlOf(const Sentence& sentence) {
    QString html;
    for (const Words& words : sentence) {
        html += words.symbol ? symbolHtml(words.text) : onScreen(words.text).toHtmlEscaped();
    }
    return html;
}

AnswerText answerText(const Result& result) {
    const Solution* solution = shownSolution(result);
    if (!solution) {
        return {};
    }
    const auto found = foundVectors(*solution);
    QStringList large, detail;
    for (const SolvedForce* each : found) {
        large << largeLine(*each, result.sketch);
        detail << detailLine(*each, result.sketch, found.size() == 1);
    }
    return {large.join(QStringLiteral("<br>")), detail.join(QStringLiteral("<br>"))};
}

int agreeingDigits(const Solution& solution) {
    Eigen::Vector2d sum{0, 0};
    double scale = solution.sum.magnitude;
    for (const SolvedForce& each : solution.forces) {
        sum += each.vector;
        scale = std::max(scale, each.magnitude);
    }
    const double apart = std::hypot(sum.x() - solution.sum.vector.x(), sum.y() - solution.sum.vector.y());
    if (scale == 0 || apart == 0) {
        return 15;
    }
    return static_cast<int>(std::clamp(std::floor(-std::log10(apart / scale)), 0.0, 15.0));
}

QString checkText(const Result& result) {
    const Solution* solution = shownSolution(result);
    if (!solution) {
        return {};
    }
    const Sketch& sketch = result.sketch;
    const QStringList lines{
        sumLine(
            QStringLiteral("x"), [](const Eigen::Vector2d& v) { return v.x(); }, *solution, sketch),
        sumLine(
            QStringLiteral("y"), [](const Eigen::Vector2d& v) { return v.y(); }, *solution, sketch),
        Answers::tr("The sum by components agrees to %1 digits").arg(agreeingDigits(*solution)),
        Answers::tr("Residual %1").arg(residualHtml(solution->residual, sketch))};
    return lines.join(QStringLiteral("<br>"));
}

FigureRow vectorHeading() {
    return heading(Answers::tr("Force"), {Answers::tr("magnitude"), Answers::tr("direction"),
                                          QStringLiteral("x"), QStringLiteral("y")});
}

FigureRow vectorRow(const Result& result, int vector) {
    const Sketch& sketch = result.sketch;
    const Solution* solution = shownSolution(result);
    if (!solution || !hasVector(sketch, vector)) {
        return {};
    }
    const SolvedForce& each =
        vector == kSumIndex ? solution->sum : solution->forces.at(static_cast<std::size_t>(vector));
    const Force& given = vectorOf(sketch, vector);
    return {{{each.name, true}},
            {onScreen(shownMagnitude(each, given, sketch)),
             each.direction ? onScreen(shownDirection(each, given, sketch)) : QStringLiteral("\u2013"),
             force(each.vector.x(), sketch), force(each.vector.y(), sketch)}};
}

QList<FigureRow> angleRows(const Result& result) {
    QList<FigureRow> rows;
    if (shownSolution(result)) {
        if (result.construction.parallelogram) {
            addParallelogram(rows, *result.construction.parallelogram, result.sketch);
        }
        if (result.construction.triangle) {
            addTriangle(rows, *result.construction.triangle, result.sketch);
        }
    }
    return rows;
}

QString valuesAsText(const Result& result) {
    const AnswerText answer = answerText(result);
    QString all = text(plain(question(result.sketch))) + u'\n';
    if (!result.solved.message.empty()) {
        all += text(result.solved.message) + u'\n';
    }
    if (!shownSolution(result)) {
        return all;
    }
    all += plainText(answer.large) + u'\n' + plainText(answer.detail) + QStringLiteral("\n\n");
    all += asLine(vectorHeading());
    for (std::size_t i = 0; i < result.sketch.forces.size(); ++i) {
        all += asLine(vectorRow(result, static_cast<int>(i)));
    }
    all += asLine(vectorRow(result, kSumIndex));
    for (const FigureRow& row : angleRows(result)) {
        all += (row.heading ? QStringLiteral("\n") : QString()) + asLine(row);
    }
    return all + u'\n' + plainText(checkText(result)) + u'\n';
}

} // namespace tailpoint
