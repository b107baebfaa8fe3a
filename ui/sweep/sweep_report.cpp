// SPDX-License-Identifier: MIT
#include "ui/sweep/sweep_report.h"

#include "core/explain/caution.h"
#include "core/explain/swept.h"
#include "core/figure/sweep_plot.h"
#include "core/quantity/decimals.h"
#include "core/sketch/cases.h"
#include "ui/files/csv.h"
#include "ui/files/json_text.h"
#include "ui/render/render.h"

namespace tailpoint {

namespace {

std::string unitOf(bool isAngle, const Sketch& sketch) {
    return std::string(isAngle ? nameOf(sketch.angleUnit) : symbolOf(sketch.forceUnit));
}

bool isAngle(const Curve& curve) {
    return curve.of.kind == Swept::Kind::direction;
}

std::string_view kindOf(Swept::Kind kind) {
    switch (kind) {
    case Swept::Kind::direction:
        return "direction";
    case Swept::Kind::larger:
        return "larger";
    case Swept::Kind::magnitude:
        break;
    }
    return "magnitude";
}

std::string_view placeOf(Extreme::Where where) {
    switch (where) {
    case Extreme::Where::endOfRange:
        return "end of the range";
    case Extreme::Where::endOfGap:
        return "end of a gap";
    case Extreme::Where::inside:
        break;
    }
    return "inside";
}

JsonValue extremeJson(const std::optional<Extreme>& extreme) {
    if (!extreme)
        return {};
    std::vector<JsonMember> members{
        {"at", jsonNumber(extreme->at)},
        {"value", extreme->isUnbounded ? JsonValue{} : jsonNumber(extreme->value)},
        {"where", jsonText(placeOf(extreme->where))}};
    if (extreme->isUnbounded)
        members.push_back({"unbounded", jsonTruth(true)});
    return jsonObject(std::move(members));
}

JsonValue curveJson(const Curve& curve, const Sketch& sketch) {
    std::vector<JsonValue> values;
    for (const auto& value : curve.values)
        values.push_back(jsonNumberOrNull(value));
    std::vector<JsonMember> members{{"name", jsonText(nameOf(curve.of, sketch))},
                                    {"quantity", jsonText(kindOf(curve.of.kind))}};
    if (curve.of.answer != 0)
        members.push_back({"answer", jsonNumber(curve.of.answer)});
    members.push_back({"least", extremeJson(curve.least)});
    members.push_back({"greatest", extremeJson(curve.greatest)});
    members.push_back({"values", jsonList(std::move(values))});
    return jsonObject(std::move(members), JsonLayout::lines);
}

/// What is to be minded of the numbers.
std::vector<std::string> remarksOf(const Sweep& sweep, const Sketch& sketch) {
    std::vector<std::string> remarks;
    for (const SweptLimit& limit : sweptLimits(sweep, sketch))
        remarks.push_back(wordsOf(limit, sketch));
    if (std::string note = sweptProofNote(sweep); !note.empty())
        remarks.push_back(std::move(note));
    if (std::string note = sweptToleranceNote(sketch); !note.empty())
        remarks.push_back(std::move(note));
    if (needsCaution(sketch))
        remarks.emplace_back(cautionLine());
    return remarks;
}

std::vector<std::string> feetOf(const Sweep& sweep, const Sketch& sketch, const Provenance& from) {
    std::vector<std::string> feet = remarksOf(sweep, sketch);
    for (std::string& line : recordLines(sketch, from))
        feet.push_back(std::move(line));
    return feet;
}

/// Nothing where no swept vector has a limit.
void addLimits(JsonValue& to, const Sweep& sweep, const Sketch& sketch) {
    std::vector<JsonValue> items;
    for (const SweptLimit& limit : sweptLimits(sweep, sketch)) {
        std::vector<JsonMember> members{{"name", jsonText(nameOf(limit.of, sketch))}};
        if (limit.of.answer != 0)
            members.push_back({"answer", jsonNumber(limit.of.answer)});
        members.push_back({"limit", jsonNumber(limit.use.limit)});
        members.push_back({"utilisation", jsonNumberOrNull(limit.use.utilisation)});
        members.push_back({"verdict", jsonText(nameOf(limit.use.verdict))});
        items.push_back(jsonObject(std::move(members)));
    }
    if (!items.empty())
        to.members.push_back({"limits", jsonList(std::move(items))});
}

JsonValue numbers(const std::vector<double>& all) {
    std::vector<JsonValue> items;
    for (const double one : all)
        items.push_back(jsonNumber(one));
    return jsonList(std::move(items));
}

} // namespace

QByteArray sweepCsv(const Sweep& sweep, const Sketch& sketch, char separator) {
    CsvForm form;
    form.separator = separator;
    const bool varied = sweep.range.varied.isDirection;
    std::vector<std::string> heads{wordsOf(sweep.range.varied, sketch) + " (" + unitOf(varied, sketch) + ")"};
    for (const Curve& curve : sweep.curves)
        heads.push_back(wordsOf(curve.of, sketch) + " (" + unitOf(isAngle(curve), sketch) + ")");
    std::string remark; // in a column of its own, where it breaks no number: once, in the first row
    for (const std::string& each : remarksOf(sweep, sketch))
        remark += (remark.empty() ? "" : " ") + each;
    if (!remark.empty())
        heads.emplace_back("remark");
    std::string all = csvLine(heads, form);
    for (std::size_t i = 0; i < sweep.at.size(); ++i) {
        std::vector<std::string> cells{shortest(sweep.at[i])};
        for (const Curve& curve : sweep.curves)
            cells.push_back(curve.values[i] ? shortest(*curve.values[i]) : std::string());
        if (!remark.empty())
            cells.push_back(i == 0 ? remark : std::string());
        all += csvLine(cells, form);
    }
    return QByteArray::fromStdString(all);
}

QByteArray sweepJson(const Sweep& sweep, const Sketch& sketch) {
    std::vector<JsonValue> curves, gaps;
    for (const Curve& curve : sweep.curves)
        curves.push_back(curveJson(curve, sketch));
    for (const Gap& gap : sweep.gaps)
        gaps.push_back(jsonObject({{"from", jsonNumber(gap.from)}, {"to", jsonNumber(gap.to)}}));
    const Reference& reference = sketch.reference;
    JsonValue out = jsonObject(
        {{"format", jsonText("tailpoint-sweep")},
         {"version", jsonNumber(kSweepVersion)},
         {"title", jsonText(titleWithCase(sketch))},
         {"units", jsonObject({{"force", jsonText(symbolOf(sketch.forceUnit))},
                               {"angle", jsonText(nameOf(sketch.angleUnit))}})},
         {"reference", jsonObject({{"degrees", jsonNumber(reference.axisDegrees)},
                                   {"sense", jsonText(reference.sense == Sense::ccw ? "ccw" : "cw")}})},
         {"varied", jsonObject({{"name", jsonText(nameOf(sweep.range.varied, sketch))},
                                {"from", jsonNumber(sweep.range.from)},
                                {"to", jsonNumber(sweep.range.to)},
                                {"steps", jsonNumber(static_cast<double>(sweep.range.steps))}})},
         {"at", numbers(sweep.at)},
         {"curves", jsonList(std::move(curves), JsonLayout::lines)},
         {"gaps", jsonList(std::move(gaps))}},
        JsonLayout::lines);
    addLimits(out, sweep, sketch);
    if (const std::string note = sweptProofNote(sweep); !note.empty())
        out.members.push_back({"proofRemark", jsonText(note)});
    if (const std::string note = sweptToleranceNote(sketch); !note.empty())
        out.members.push_back({"tolerancesRemark", jsonText(note)});
    if (needsCaution(sketch))
        out.members.push_back({"caution", jsonText(cautionLine())});
    return QByteArray::fromStdString(writeJson(out));
}

QByteArray sweepText(const Sweep& sweep, const Sketch& sketch, const Provenance& from) {
    std::string all = titleWithCase(sketch);
    all += all.empty() ? "" : "\n";
    for (const std::string& line : sweepLines(sweep, sketch))
        all += line + "\n";
    for (const std::string& foot : feetOf(sweep, sketch, from))
        all += foot + "\n";
    return QByteArray::fromStdString(all);
}

DisplayList sweepFigure(const Sweep& sweep, const Sketch& sketch, const Provenance& from) {
    SweepPlotOptions options;
    options.width = kSweepWidth;
    options.height = kSweepHeight;
    options.feet = feetOf(sweep, sketch, from);
    return sweepPlot(sweep, sketch, options, QtTextMeasure()).list;
}

QByteArray sweepSvg(const Sweep& sweep, const Sketch& sketch, const Theme& theme, const Provenance& from) {
    return toSvg(sweepFigure(sweep, sketch, from), theme, {});
}

} // namespace tailpoint
