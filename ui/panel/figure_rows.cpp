#include "ui/panel/figure_rows.h"

#include "core/sketch/shown.h"
#include "ui/document/given_edits.h"
#include "ui/document/report_values.h"
#include "ui/panel/answer_text.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <algorithm>

namespace tailpoint {

namespace {

struct Figures {
    Q_DECLARE_TR_FUNCTIONS(Figures)
};

FigureRow heading(const QString& label, const QList<QString>& values) {
    return {{{label.toStdString(), false}}, values, true};
}

QString angleOrNone(std::optional<double> radians, const Sketch& sketch) {
    return radians ? onScreen(shownAngleFromRadians(*radians, sketch)) : QStringLiteral("\u2013");
}

void addParallelogram(QList<FigureRow>& rows, const Parallelogram& shape, const Sketch& sketch) {
    rows << heading(Figures::tr("Parallelogram"), {Figures::tr("interior angles")});
    const auto words = [](const QString& part) { return Words{part.toStdString(), false}; };
    const Sentence near{words(Figures::tr("common point, tip of ")), {sketch.sum.name, true}};
    const Sentence far{words(Figures::tr("tips of ")),
                       {shape.first, true},
                       words(Figures::tr(" and ")),
                       {shape.second, true}};
    rows << FigureRow{near, {angleOrNone(shape.interior[0], sketch)}}; // opposite angles are equal
    rows << FigureRow{far, {angleOrNone(shape.interior[1], sketch)}};
    if (shape.shape != Shape::proper) {
        rows << FigureRow{{{std::string(wordsFor(shape.shape)), false}}, {}};
    }
}

/// The side that stands for several vectors.
std::string nameOfKnown(const ForceTriangle& triangle) {
    const auto side = std::find(triangle.vectors.begin(), triangle.vectors.end(), kNoVector);
    return side == triangle.vectors.end()
               ? std::string()
               : triangle.names[static_cast<std::size_t>(side - triangle.vectors.begin())];
}

/// "K adds up A, B, C": vectors, so no equation of magnitudes.
Sentence knownsAddedUp(const std::string& known, const std::vector<std::string>& knowns) {
    Sentence sentence{{known, true}, {Figures::tr(" adds up ").toStdString(), false}};
    for (const std::string& name : knowns) {
        if (sentence.size() > 2) {
            sentence.push_back({", ", false});
        }
        sentence.push_back({name, true});
    }
    return sentence;
}

void addTriangle(QList<FigureRow>& rows, const ForceTriangle& triangle, const Sketch& sketch) {
    rows << heading(Figures::tr("Force triangle"), {Figures::tr("side"), Figures::tr("opposite angle")});
    for (std::size_t i = 0; i < 3; ++i) {
        rows << FigureRow{{{triangle.names[i], true}},
                          {quantity(triangle.sides[i], sketch), angleOrNone(triangle.opposite[i], sketch)}};
    }
    if (!triangle.knowns.empty()) {
        rows << FigureRow{knownsAddedUp(nameOfKnown(triangle), triangle.knowns), {}};
    }
}

} // namespace

FigureRow vectorHeading() {
    return heading(Figures::tr("Force"), {Figures::tr("magnitude"), Figures::tr("direction"),
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
             quantity(each.vector.x(), sketch), quantity(each.vector.y(), sketch)}};
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

} // namespace tailpoint
