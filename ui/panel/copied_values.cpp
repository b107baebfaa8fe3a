// SPDX-License-Identifier: MIT
#include "ui/panel/copied_values.h"

#include "core/explain/legs.h"
#include "core/explain/limits.h"
#include "core/explain/question.h"
#include "core/explain/ranges.h"
#include "core/quantity/decimals.h"
#include "core/sketch/cases.h"
#include "core/sketch/shown.h"
#include "ui/panel/answer_text.h"
#include "ui/panel/check_text.h"
#include "ui/panel/copied_cases.h"
#include "ui/panel/figure_rows.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <QMimeData>
#include <QRegularExpression>
#include <QTextDocumentFragment>

namespace tailpoint {

namespace {

struct Copied {
    Q_DECLARE_TR_FUNCTIONS(Copied)
};

/// "10<sup>-14</sup>" in letters that stand raised in plain text, too.
QString withRaisedDigits(QString html) {
    static const QRegularExpression raised(QStringLiteral("<sup>([0-9\u2212]+)</sup>"));
    static const QString digits =
        QStringLiteral("\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079");
    for (auto match = raised.match(html); match.hasMatch(); match = raised.match(html)) {
        QString exponent;
        for (const QChar c : match.captured(1))
            exponent += c.isDigit() ? digits[c.digitValue()] : QChar(0x207b);
        html.replace(match.capturedStart(), match.capturedLength(), exponent);
    }
    return html;
}

QString plainText(const QString& html) {
    return QTextDocumentFragment::fromHtml(withRaisedDigits(html)).toPlainText();
}

/// "vector", then each value; with tolerances what it can be beside it, and what no number says.
QStringList vectorHeads(const Result& result) {
    const auto force = symbolOf(result.sketch.forceUnit), angle = nameOf(result.sketch.angleUnit);
    QStringList heads{Copied::tr("vector")};
    const auto add = [&](const QString& name, std::string_view unit) {
        heads << withUnit(name, unit);
        if (result.hasTolerances()) {
            heads << withUnit(Copied::tr("%1 low").arg(name), unit)
                  << withUnit(Copied::tr("%1 high").arg(name), unit);
        }
    };
    add(Copied::tr("magnitude"), force);
    add(Copied::tr("direction"), angle);
    add(QStringLiteral("x"), force);
    add(QStringLiteral("y"), force);
    return result.hasTolerances() ? heads << Copied::tr("remark") : heads;
}

/// What the empty or outer ends of a range mean.
QString endsRemark(const tolerance::VectorRange& range, const Sketch& sketch) {
    QStringList remarks;
    const auto unbounded = [&](const tolerance::Range& each, const QString& remark) {
        if (!each.least || !each.greatest) {
            remarks << remark;
        }
    };
    unbounded(range.magnitude, Copied::tr("magnitude unbounded"));
    unbounded(range.x, Copied::tr("x unbounded"));
    unbounded(range.y, Copied::tr("y unbounded"));
    if (range.direction.any) {
        remarks << Copied::tr("any direction");
    }
    if (range.isMarked() && !isOneValue(range, sketch)) {
        remarks << Copied::tr("outer bound");
    }
    return remarks.join(QStringLiteral("; "));
}

/// Each value of a row with its two ends behind it.
QStringList cellsWithRanges(const FigureRow& row, const tolerance::VectorRange* range, const Sketch& sketch) {
    QList<EndsTold> ends(row.values.size());
    if (range) {
        ends = {endsTold(range->magnitude, sketch), endsTold(range->direction, sketch),
                endsTold(range->x, sketch), endsTold(range->y, sketch)};
    }
    QStringList cells;
    for (qsizetype i = 0; i < row.values.size(); ++i) {
        const QString value = bareNumber(row.values[i]);
        cells << value << (ends[i].isOne ? value : bareNumber(text(ends[i].from)))
              << (ends[i].isOne ? value : bareNumber(text(ends[i].to)));
    }
    return cells << (range ? endsRemark(*range, sketch) : text(rangeUnknown()));
}

BareTable vectorTable(const Result& result) {
    BareTable table{vectorHeads(result), {}};
    for (const VectorPlace& place : vectorPlaces(result)) {
        if (place.kind != VectorPlace::Kind::vector && place.kind != VectorPlace::Kind::answer) {
            continue;
        }
        const FigureRow row = rowAt(result, place);
        QStringList cells{text(plain(row.label))};
        if (place.kind == VectorPlace::Kind::vector && result.hasTolerances()) {
            const tolerance::AnswerRange* range = result.rangeOf(place.answer);
            cells << cellsWithRanges(row, range ? range->find(place.vector) : nullptr, result.sketch);
        } else {
            for (const QString& value : row.values) {
                cells << bareNumber(value);
            }
        }
        table.rows << cells;
    }
    return table;
}

/// A heading begins each table; one column of it are angles, of two the first are forces.
QList<BareTable> angleTables(const Result& result) {
    const auto force = symbolOf(result.sketch.forceUnit), angle = nameOf(result.sketch.angleUnit);
    QList<BareTable> tables;
    for (const FigureRow& row : shapeRows(result)) {
        if (row.belongsAbove) { // the table of vectors has it
            continue;
        }
        QStringList cells{text(plain(row.label))};
        for (qsizetype i = 0; i < row.values.size(); ++i) {
            const bool isForce = row.values.size() == 2 && i == 0;
            cells << (row.heading ? withUnit(row.values[i], isForce ? force : angle)
                                  : bareNumber(row.values[i]));
        }
        if (row.heading) {
            tables << BareTable{cells, {}};
        } else if (!tables.isEmpty()) {
            tables.back().rows << cells;
        }
    }
    if (!tables.isEmpty() && result.hasTolerances()) {
        tables.back().rows << QStringList{middleNote()};
    }
    return tables;
}

/// Legs under a load, counter-clockwise from it; none where there are none.
QList<BareTable> legTables(const Result& result) {
    const auto legs = legsOf(result.sketch, result.solved, result.chosen, result.rangeOf(result.chosen));
    if (!legs) {
        return {};
    }
    const Sketch& sketch = result.sketch;
    const Things& things = result.things();
    const auto unit = nameOf(sketch.angleUnit);
    const auto angle = [&](double value) { return bareNumber(onScreen(shownAngle(value, sketch))); };
    BareTable table{{Copied::tr("leg that carries %1").arg(text(things.name(legs->load))),
                     withUnit(Copied::tr("from horizontal"), unit),
                     withUnit(Copied::tr("from vertical"), unit),
                     withUnit(Copied::tr("to the next leg"), unit), Copied::tr("tension over load")},
                    {}};
    for (std::size_t i = 0; i < legs->legs.size(); ++i) {
        const Leg& leg = legs->legs[i];
        const bool isLast = i + 1 == legs->legs.size();
        table.rows << QStringList{text(things.name(leg.vector)), angle(leg.fromHorizontal),
                                  angle(leg.fromVertical),
                                  isLast ? QString() : angle(leg.neighbours.back().angle),
                                  bareNumber(onScreen(significant(leg.overLoad, sketch.figures)))};
    }
    if (result.hasTolerances()) {
        table.rows << QStringList{middleNote()};
    }
    return {table};
}

QString asTabs(const BareTable& table) {
    QString all = table.heads.join(u'\t') + u'\n';
    for (const QStringList& row : table.rows) {
        all += row.join(u'\t') + u'\n';
    }
    return all;
}

QString htmlRow(const QStringList& cells, const QString& tag) {
    QString row = QStringLiteral("<tr>");
    for (const QString& cell : cells) {
        row += QStringLiteral("<%1>%2</%1>").arg(tag, cell.toHtmlEscaped());
    }
    return row + QStringLiteral("</tr>\n");
}

QString asHtml(const BareTable& table) {
    QString all = QStringLiteral("<table border=\"1\" cellspacing=\"0\" cellpadding=\"3\">\n");
    all += htmlRow(table.heads, QStringLiteral("th"));
    for (const QStringList& row : table.rows) {
        all += htmlRow(row, QStringLiteral("td"));
    }
    return all + QStringLiteral("</table>\n");
}

QString paragraph(const QString& words) {
    return words.isEmpty() ? QString() : QStringLiteral("<p>%1</p>\n").arg(words.toHtmlEscaped());
}

QString page(const QString& body) {
    return QStringLiteral("<html><head><meta charset=\"utf-8\"/></head><body>\n%1</body></html>\n").arg(body);
}

/// The caution and the record.
QStringList linesOf(const Sketch& sketch, const std::optional<Provenance>& from) {
    QStringList lines;
    for (const std::string& line : closingLines(sketch, from.value_or(Provenance()), from.has_value())) {
        lines << text(line);
    }
    return lines;
}

/// "R = 520 N, 3.6° clockwise from +x", of both answers.
QStringList answerLines(const Result& result) {
    QStringList lines;
    if (!shownSolution(result)) {
        return lines;
    }
    const AnswerText answer = answerText(result);
    const auto add = [&](std::size_t which, const QString& html) {
        const QString name = answerName(result, which);
        lines << (name.isEmpty() ? name : name + u'\n') + plainText(html);
    };
    add(result.chosen, answer.large + QStringLiteral("<br>") + answer.detail);
    if (const QString other = otherAnswerText(result); !other.isEmpty()) {
        add(1 - result.chosen, other);
    }
    return lines;
}

/// What is to be said of ranges and limits, a line each.
QStringList judgedLines(const Result& result) {
    QStringList lines;
    for (const QString& html : {rangeRemarksText(result), limitsText(result)}) {
        if (!html.isEmpty()) {
            lines << plainText(html).split(u'\n');
        }
    }
    return lines;
}

/// With the case that is shown.
QString titleOf(const Sketch& sketch) {
    return text(titleWithCase(sketch));
}

/// Of the states of a sketch with cases.
QList<BareTable> copiedTables(const Result& result, const std::vector<CaseState>& states) {
    return bareTables(result) + caseTables(states, result.sketch);
}

/// What is asked, what came out and what is to be minded, as running text.
QString noteParagraph(const Result& result, const Provenance& from) {
    QStringList sentences{text(plain(question(result.sketch)))};
    if (!result.solved.message().empty()) {
        sentences << text(result.solved.message().text());
    }
    for (QString line : answerLines(result)) {
        line = line.simplified();
        sentences << (line.endsWith(u'.') ? line : line + u'.');
    }
    sentences << judgedLines(result) << linesOf(result.sketch, from);
    for (QString& sentence : sentences) {
        sentence = sentence.endsWith(u'.') ? sentence : sentence + u'.';
    }
    return sentences.join(u' ');
}

} // namespace

QString bareNumber(QString shown) {
    shown.replace(QChar(0x2212), u'-');
    static const QRegularExpression number(QStringLiteral("^-?[0-9][0-9.]*(e[+-]?[0-9]+)?"));
    return number.match(shown).captured();
}

QString withUnit(const QString& head, std::string_view unit) {
    return QStringLiteral("%1 (%2)").arg(head, text(unit));
}

QList<BareTable> bareTables(const Result& result) {
    if (!shownSolution(result)) {
        return {};
    }
    return QList<BareTable>{vectorTable(result)} + angleTables(result) + legTables(result);
}

QString valuesAsText(const Result& result, const ExplainOptions& options,
                     const std::optional<Provenance>& from) {
    const QString title = from ? titleOf(result.sketch) : QString();
    QString all = title.isEmpty() ? title : title + u'\n';
    all += text(plain(question(result.sketch))) + u'\n';
    if (!result.solved.message().empty()) {
        all += text(result.solved.message().text()) + u'\n';
    }
    for (const QString& answer : answerLines(result) + judgedLines(result)) {
        all += answer + u'\n';
    }
    const std::vector<CaseState> states = copiedStates(result);
    for (const BareTable& table : copiedTables(result, states)) {
        all += u'\n' + asTabs(table);
    }
    for (const QString& line : caseLines(states, result.sketch)) {
        all += line + u'\n';
    }
    if (shownSolution(result)) {
        all += u'\n' + plainText(checkText(result, options)) + u'\n';
    }
    for (const QString& line : linesOf(result.sketch, from)) {
        all += u'\n' + line + u'\n';
    }
    return all;
}

QMimeData* valuesForClipboard(const Result& result, const ExplainOptions& options, const Provenance& from) {
    QString html = paragraph(titleOf(result.sketch)) + paragraph(text(plain(question(result.sketch))));
    html += paragraph(text(result.solved.message().text()));
    for (const QString& answer : answerLines(result) + judgedLines(result)) {
        html += paragraph(answer).replace(u'\n', QStringLiteral("<br/>\n"));
    }
    QString tabs;
    const std::vector<CaseState> states = copiedStates(result);
    for (const BareTable& table : copiedTables(result, states)) {
        html += asHtml(table);
        tabs += (tabs.isEmpty() ? QString() : QStringLiteral("\n")) + asTabs(table);
    }
    for (const QString& line : caseLines(states, result.sketch)) {
        html += paragraph(line);
    }
    for (const QString& line : linesOf(result.sketch, from)) {
        html += paragraph(line);
    }
    auto* data = new QMimeData;
    data->setText(valuesAsText(result, options, from));
    data->setHtml(page(html));
    if (!tabs.isEmpty()) {
        data->setData(QStringLiteral("text/tab-separated-values"), tabs.toUtf8());
    }
    return data;
}

QMimeData* noteForClipboard(const Result& result, const QByteArray& figurePng, const Provenance& from) {
    const QString title = titleOf(result.sketch), words = noteParagraph(result, from);
    QString html =
        title.isEmpty() ? QString() : QStringLiteral("<p><b>%1</b></p>\n").arg(title.toHtmlEscaped());
    html += paragraph(words);
    QString plain = (title.isEmpty() ? QString() : title + u'\n') + words + u'\n';
    const std::vector<CaseState> states = copiedStates(result);
    for (const BareTable& table : bareTables(result).mid(0, 1) + caseTables(states, result.sketch)) {
        html += asHtml(table);
        plain += u'\n' + asTabs(table);
    }
    for (const QString& line : caseLines(states, result.sketch)) {
        html += paragraph(line);
        plain += line + u'\n';
    }
    if (!figurePng.isEmpty()) {
        html += QStringLiteral("<p><img alt=\"%1\" src=\"data:image/png;base64,%2\"/></p>\n")
                    .arg(Copied::tr("Figure"), QString::fromLatin1(figurePng.toBase64()));
    }
    auto* data = new QMimeData;
    data->setText(plain);
    data->setHtml(page(html));
    return data;
}

} // namespace tailpoint
