// SPDX-License-Identifier: MIT
#include "ui/panel/figure_rows.h"

#include "core/construct/reduction.h"
#include "core/explain/legs.h"
#include "core/explain/ranges.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"
#include "ui/document/given_edits.h"
#include "ui/files/report_values.h"
#include "ui/panel/answer_text.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <algorithm>
#include <numeric>

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

Words words(const QString& plain) {
    return {plain.toStdString(), false};
}

bool isOneOfTwo(const Result& result) {
    return result.solved.solutions.size() == 2;
}

/// Of two answers says which one a shape belongs to.
QString ofAnswer(const QString& shape, const Result& result) {
    return isOneOfTwo(result) ? Figures::tr("%1, answer %2").arg(shape).arg(result.chosen + 1) : shape;
}

void addParallelogram(QList<FigureRow>& rows, const Parallelogram& shape, const Result& result) {
    const Sketch& sketch = result.sketch;
    const Things& things = result.things();
    rows << heading(ofAnswer(Figures::tr("Parallelogram"), result), {Figures::tr("interior angles")});
    const Sentence near{words(Figures::tr("common point, tip of ")), symbolWords(things, kSumVector)};
    const Sentence far{words(Figures::tr("tips of ")), symbolWords(things, shape.first),
                       words(Figures::tr(" and ")), symbolWords(things, shape.second)};
    rows << FigureRow{near, {angleOrNone(shape.interior[0], sketch)}}; // opposite angles are equal
    rows << FigureRow{far, {angleOrNone(shape.interior[1], sketch)}};
    if (shape.shape != Shape::proper) {
        rows << FigureRow{{{std::string(wordsFor(shape.shape)), false}}, {}};
    }
}

/// "K adds up A, B, C": vectors, so no equation of magnitudes.
Sentence knownsAddedUp(const Things& things, const std::vector<std::string>& knowns) {
    Sentence sentence{symbolWords(things, kKnownVector), words(Figures::tr(" adds up "))};
    for (const std::string& name : knowns) {
        if (sentence.size() > 2) {
            sentence.push_back({", ", false});
        }
        sentence.push_back(symbolWords(things, name));
    }
    return sentence;
}

/// The side that stands for several vectors has no index.
VectorId sideOf(const ForceTriangle& triangle, std::size_t side) {
    return triangle.vectors[side] == kNoVector ? kKnownVector : vectorId(triangle.vectors[side]);
}

/// "508", "532*" of an outer bound, "\u221e" of none.
QString endInTable(const EndsTold& ends, bool isFrom) {
    const std::string& end = isFrom ? ends.from : ends.to;
    const QString shown = !end.empty() ? onScreen(end)
                          : isFrom     ? QStringLiteral("\u2212\u221e")
                                       : QStringLiteral("\u221e");
    return ends.isMarked && !ends.isOne ? shown + u'*' : shown;
}

/// What a side that was found can be, under it.
void addEndsOfSide(QList<FigureRow>& rows, const Result& result, int vector) {
    const tolerance::AnswerRange* ranges = result.rangeOf(result.chosen);
    const auto* range = ranges ? ranges->find(vector) : nullptr;
    if (!range || !range->magnitudeFound) {
        return;
    }
    const EndsTold ends = endsTold(range->magnitude, result.sketch);
    if (ends.isOne) {
        return;
    }
    const auto add = [&](const QString& label, bool isFrom) {
        const QString unit = text(symbolOf(result.sketch.forceUnit));
        rows << FigureRow{{words(label)}, {endInTable(ends, isFrom) + u' ' + unit, {}}, false, {}, true};
    };
    add(Figures::tr("from"), true);
    add(Figures::tr("to"), false);
}

void addTriangle(QList<FigureRow>& rows, const ForceTriangle& triangle, const Result& result) {
    const Sketch& sketch = result.sketch;
    const Things& things = result.things();
    rows << heading(isOneOfTwo(result) ? ofAnswer(Figures::tr("Triangle"), result)
                                       : Figures::tr("Force triangle"),
                    {Figures::tr("side"), Figures::tr("opposite angle")});
    for (std::size_t i = 0; i < 3; ++i) {
        rows << FigureRow{{symbolWords(things, sideOf(triangle, i))},
                          {quantity(triangle.sides[i], sketch), angleOrNone(triangle.opposite[i], sketch)}};
        addEndsOfSide(rows, result, triangle.vectors[i]);
    }
    if (!triangle.knowns.empty()) {
        rows << FigureRow{knownsAddedUp(things, triangle.knowns), {}};
    }
}

/// Angles of each leg, then between neighbours, then what each takes of the load.
void addLegs(QList<FigureRow>& rows, const Legs& legs, const Result& result) {
    const Sketch& sketch = result.sketch;
    const Things& things = result.things();
    const auto angle = [&](double value) { return onScreen(shownAngle(value, sketch)); };
    const Words load = symbolWords(things, legs.load);
    rows << FigureRow{{words(Figures::tr("Legs that carry ")), load}, {}, true};
    for (const Leg& leg : legs.legs) { // a value a row: both beside one another are wider than a small panel
        rows << FigureRow{{symbolWords(things, leg.vector), words(Figures::tr(" from horizontal"))},
                          {angle(leg.fromHorizontal)}};
        rows << FigureRow{{symbolWords(things, leg.vector), words(Figures::tr(" from vertical"))},
                          {angle(leg.fromVertical)}};
    }
    for (std::size_t i = 0; i + 1 < legs.legs.size(); ++i) {
        const LegNeighbour& next = legs.legs[i].neighbours.back();
        rows << FigureRow{{words(Figures::tr("between ")), symbolWords(things, legs.legs[i].vector),
                           words(Figures::tr(" and ")), symbolWords(things, next.vector)},
                          {angle(next.angle)}};
    }
    for (const Leg& leg : legs.legs) {
        rows << FigureRow{{words(Figures::tr("tension over load, ")), symbolWords(things, leg.vector)},
                          {onScreen(significant(leg.overLoad, sketch.figures))}};
    }
    bool isAnyLow = false;
    for (const Leg& leg : legs.legs) {
        if (leg.isLow) {
            rows << FigureRow{{symbolWords(things, leg.vector), words(Figures::tr(" stands under 30\u00b0"))},
                              {}};
            isAnyLow = true;
        }
    }
    if (isAnyLow) { // a row of its own: names may be long, and rows don't wrap
        rows << FigureRow{{words(Figures::tr("codes advise against that: ask the maker"))}, {}};
    }
}

FigureRow columnNames(const Sketch& sketch) {
    const auto inUnit =
        [&](const QString& name) { // the values under it are bare; a direction has its own unit
            return Figures::tr("%1, %2").arg(name, text(symbolOf(sketch.forceUnit)));
        };
    return heading({}, {inUnit(Figures::tr("magnitude")), Figures::tr("direction"),
                        inUnit(QStringLiteral("x")), inUnit(QStringLiteral("y"))});
}

/// Of the four columns: what is said of a cell's value.
QString columnSpoken(int column, const QString& vector, const QString& value) {
    switch (column) {
    case 0:
        return Figures::tr("magnitude of %1: %2").arg(vector, value);
    case 1:
        return Figures::tr("direction of %1: %2").arg(vector, value);
    case 2:
        return Figures::tr("x of %1: %2").arg(vector, value);
    default:
        return Figures::tr("y of %1: %2").arg(vector, value);
    }
}

const tolerance::VectorRange* rangeAt(const Result& result, const VectorPlace& place) {
    const tolerance::AnswerRange* range = result.rangeOf(place.answer);
    return range ? range->find(place.vector) : nullptr;
}

/// What each column's value can be, in words: "508 to 532 N".
QStringList rangesInWords(const tolerance::VectorRange& range, const Sketch& sketch) {
    QStringList all;
    for (const Prose& told : {rangeTold(range.magnitude, sketch), rangeTold(range.direction, sketch),
                              rangeTold(range.x, sketch), rangeTold(range.y, sketch)}) {
        all << text(toText(told));
    }
    return all;
}

/// Every value is told with its range, where it has one.
QList<QString> spokenValues(const QList<QString>& values, const Result& result, const VectorPlace& place) {
    const QString name = text(vectorOf(result.sketch, place.vector).name);
    const auto* range = rangeAt(result, place);
    const QStringList ranges = range ? rangesInWords(*range, result.sketch) : QStringList();
    QList<QString> spoken;
    for (int column = 0; column < values.size(); ++column) {
        const QString value = columnSpoken(column, name, values[column]);
        spoken << (range                    ? Figures::tr("%1, range %2").arg(value, ranges[column])
                   : result.hasTolerances() ? Figures::tr("%1, %2").arg(value, text(rangeUnknown()))
                                            : value);
    }
    return spoken;
}

FigureRow vectorRow(const Result& result, const VectorPlace& place, const Solution& solution) {
    const Sketch& sketch = result.sketch;
    const SolvedForce& each = vectorIn(solution, place.vector);
    const Force& given = vectorOf(sketch, place.vector);
    FigureRow row{{symbolWords(result.things(), vectorId(place.vector))},
                  {onScreen(shownForce(each.magnitude, sketch, magnitudeOrigin(each, given))),
                   each.direction ? onScreen(shownDirection(each, given, sketch)) : QStringLiteral("\u2013"),
                   onScreen(shownForce(each.vector.x(), sketch)),
                   onScreen(shownForce(each.vector.y(), sketch))}};
    row.spoken = spokenValues(row.values, result, place);
    return row;
}

QList<EndsTold> endsOf(const tolerance::VectorRange& range, const Sketch& sketch) {
    return {endsTold(range.magnitude, sketch), endsTold(range.direction, sketch), endsTold(range.x, sketch),
            endsTold(range.y, sketch)};
}

/// One end of everything that a vector can be.
FigureRow rangeRow(const Result& result, const VectorPlace& place) {
    const auto* range = rangeAt(result, place);
    if (range == nullptr) {
        return {};
    }
    const bool isFrom = place.kind == VectorPlace::Kind::from;
    const QString label = isFrom ? Figures::tr("from") : Figures::tr("to");
    FigureRow row{{words(label)}, {}};
    row.belongsAbove = true;
    const QString name = text(vectorOf(result.sketch, place.vector).name);
    for (const EndsTold& ends : endsOf(*range, result.sketch)) {
        const auto column = static_cast<int>(row.values.size());
        const bool isAny = column == 1 && range->direction.any;
        row.values << (isAny ? Figures::tr("any") : endInTable(ends, isFrom));
        row.spoken << columnSpoken(column, name, label + u' ' + row.values.back());
    }
    return row;
}

FigureRow noteRow(const QString& note) {
    FigureRow row{{words(note)}, {}};
    row.belongsAbove = true;
    return row;
}

/// Given, and drawn alike in both answers: a line of action may be given and its sense still be each
/// answer's.
bool isCommon(const std::vector<Solution>& answers, int vector) {
    const SolvedForce& first = vectorIn(answers[0], vector);
    return answers.size() == 1 || (!first.magnitudeFound && !first.directionFound &&
                                   first.vector == vectorIn(answers[1], vector).vector);
}

/// The forces, then the sum.
std::vector<int> allVectors(const Sketch& sketch) {
    std::vector<int> vectors(sketch.forces.size());
    std::iota(vectors.begin(), vectors.end(), 0);
    vectors.push_back(kSumIndex);
    return vectors;
}

bool isFound(const SolvedForce& vector) {
    return vector.magnitudeFound || vector.directionFound;
}

/// A vector, and under it what it can be; what is exact throughout the tolerances has no more to be said.
void addPlaces(QList<VectorPlace>& places, const VectorPlace& vector, const Result& result) {
    using Kind = VectorPlace::Kind;
    places << vector;
    if (const auto* range = rangeAt(result, vector)) {
        if (!isOneValue(*range, result.sketch)) {
            places << VectorPlace{Kind::from, vector.vector, vector.answer}
                   << VectorPlace{Kind::to, vector.vector, vector.answer};
        }
    } else if (result.hasTolerances() &&
               isFound(vectorIn(result.solved.solutions[vector.answer], vector.vector))) {
        places << VectorPlace{Kind::unknown, vector.vector, vector.answer};
    }
}

bool hasOuterBound(const QList<VectorPlace>& places, const Result& result) {
    return std::any_of(places.begin(), places.end(), [&](const VectorPlace& place) {
        const auto* range = place.kind == VectorPlace::Kind::from ? rangeAt(result, place) : nullptr;
        return range && range->isMarked();
    });
}

} // namespace

QList<VectorPlace> vectorPlaces(const Result& result) {
    if (!shownSolution(result)) {
        return {};
    }
    using Kind = VectorPlace::Kind;
    const auto& answers = result.solved.solutions;
    QList<VectorPlace> places{{Kind::columns, kNoVector, result.chosen}};
    std::vector<int> own;
    for (const int vector : allVectors(result.sketch)) {
        if (isCommon(answers, vector)) {
            addPlaces(places, {Kind::vector, vector, result.chosen}, result);
        } else {
            own.push_back(vector);
        }
    }
    for (std::size_t answer = 0; answers.size() == 2 && answer < 2; ++answer) {
        places << VectorPlace{Kind::answer, kNoVector, answer};
        for (const int vector : own) {
            addPlaces(places, {Kind::vector, vector, answer}, result);
        }
    }
    if (!result.isMoving && hasOuterBound(places, result)) { // rows don't come and go under a hand
        places << VectorPlace{Kind::outer, kNoVector, result.chosen};
    }
    return places;
}

FigureRow rowAt(const Result& result, const VectorPlace& place) {
    switch (place.kind) {
    case VectorPlace::Kind::columns:
        return columnNames(result.sketch);
    case VectorPlace::Kind::answer:
        return heading(answerName(result, place.answer), {});
    case VectorPlace::Kind::outer:
        return noteRow(Figures::tr("* outer bound: the range lies within"));
    default:
        break;
    }
    const auto& answers = result.solved.solutions;
    if (place.answer >= answers.size() || !hasVector(result.sketch, place.vector)) {
        return {};
    }
    switch (place.kind) {
    case VectorPlace::Kind::unknown:
        return noteRow(text(rangeUnknown()));
    case VectorPlace::Kind::vector:
        return vectorRow(result, place, answers[place.answer]);
    default:
        return rangeRow(result, place);
    }
}

QList<FigureRow> shapeRows(const Result& result) {
    QList<FigureRow> rows;
    if (shownSolution(result)) {
        if (result.construction.parallelogram) {
            addParallelogram(rows, *result.construction.parallelogram, result);
        }
        if (result.construction.triangle) {
            addTriangle(rows, *result.construction.triangle, result);
        }
    }
    return rows;
}

QList<FigureRow> legRows(const Result& result) {
    QList<FigureRow> rows;
    if (!shownSolution(result)) {
        return rows;
    }
    if (const auto legs =
            legsOf(result.sketch, result.solved, result.chosen, result.rangeOf(result.chosen))) {
        addLegs(rows, *legs, result);
    }
    return rows;
}

QString middleNote() {
    return Figures::tr("these at the middle of the tolerances");
}

QList<FigureRow> angleRows(const Result& result) {
    QList<FigureRow> rows = shapeRows(result) + legRows(result);
    if (!rows.isEmpty() && result.hasTolerances()) {
        rows << FigureRow{{words(middleNote())}, {}};
    }
    return rows;
}

} // namespace tailpoint
