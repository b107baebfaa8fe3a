// SPDX-License-Identifier: MIT
#include "app/common.h"
#include "app/gui/calls.h"
#include "app/verbs.h"
#include "core/quantity/typed.h"
#include "core/sketch/things.h"
#include "core/solve/sweep.h"
#include "ui/files/files.h"
#include "ui/sweep/sweep_report.h"

#include <QGuiApplication>
#include <memory>

namespace tailpoint {

namespace {

constexpr const char* kSweepHelp =
    R"(Usage: tailpoint sweep FILE --vary "direction of A" --from 0 --to 90 [--steps N] [--as csv|json|svg|text] [-o OUT]

Varies one given value of the sketch in FILE ('-': standard input) and tells what becomes of all that is found.

  --vary WHAT      "direction of A", "magnitude of P": any value that is given; or theta_A, P
  --from X, --to Y a magnitude ("2.5", "2.5 kN") or an angle ("0", "1.2 rad") from the sketch's axis in its
                   sense; an angle may go on beyond a half turn or a whole one
  --steps N        1 to 100000: the values are told at N + 1 places, both ends included (default: 90)
  --as csv         a row a step, heads with units; a cell is empty where there is no answer (default)
  --as json        the same for scripts, with least, greatest and gaps; sought between the steps too
  --as svg         the curves, with least and greatest marked
  --as text        least, greatest and gaps in words
  -o OUT           write to this file instead of standard output

Where there are two answers each has its own curve; directions run on without a jump.
Exit status: 0 done; 1 no answer in the whole range, or nothing to find; 2 bad input.
)";

QList<Option> sweepOptions() {
    return {{QStringLiteral("--vary"), {}},
            {QStringLiteral("--from"), {}},
            {QStringLiteral("--to"), {}},
            {QStringLiteral("--steps"), {}},
            {QStringLiteral("--as"),
             {QStringLiteral("csv"), QStringLiteral("json"), QStringLiteral("svg"), QStringLiteral("text")}},
            {QStringLiteral("-o"), {}}};
}

/// By its words, or as answers are written.
std::optional<Scalar> scalarNamed(const std::string& words, const Sketch& sketch) {
    const Things things(sketch);
    for (const Scalar& scalar : variable(sketch)) {
        const VectorId vector = vectorId(scalar.vector);
        const QuantityId id = scalar.isDirection ? directionId(vector) : magnitudeId(vector);
        if (words == nameOf(scalar, sketch) || words == things.at(id).plain)
            return scalar;
    }
    return std::nullopt;
}

QString whatCanBeVaried(const Sketch& sketch) {
    constexpr int kMostListed = 8;
    QStringList names;
    for (const Scalar& scalar : variable(sketch))
        names << QStringLiteral("\"%1\"").arg(QString::fromStdString(nameOf(scalar, sketch)));
    if (names.isEmpty())
        return QStringLiteral("nothing is given that could be varied");
    const bool isLong = names.size() > kMostListed;
    return QStringLiteral("take one of ") + names.mid(0, kMostListed).join(QStringLiteral(", ")) +
           (isLong ? QStringLiteral(", ...") : QString());
}

using Value = std::variant<double, QString>;

Value directionFrom(const std::string& typed, AngleUnit unit) {
    const auto read = parseDirection(typed, unit);
    if (const auto* error = std::get_if<TypedError>(&read))
        return QString::fromStdString(error->message);
    const auto& direction = std::get<TypedDirection>(read);
    if (direction.form != TypedDirection::Form::angle || direction.tolerance)
        return QStringLiteral("an angle is wanted, as 25 or 0.4 rad, without a tolerance");
    return direction.angle;
}

Value magnitudeFrom(const std::string& typed, ForceUnit unit) {
    const auto read = parseMagnitude(typed, unit);
    if (const auto* error = std::get_if<TypedError>(&read))
        return QString::fromStdString(error->message);
    const auto& magnitude = std::get<TypedMagnitude>(read);
    if (magnitude.tolerance)
        return QStringLiteral("a force is wanted, as 340 or 1.2 kN, without a tolerance");
    return magnitude.value;
}

Value endFrom(const char* option, const Arguments& arguments, bool isDirection, const Sketch& sketch) {
    const QString name = QLatin1String(option);
    if (!arguments.has(name))
        return name + QStringLiteral(" is missing; say from where to where");
    const std::string typed = arguments.value(name).toStdString();
    Value value =
        isDirection ? directionFrom(typed, sketch.angleUnit) : magnitudeFrom(typed, sketch.forceUnit);
    if (auto* fault = std::get_if<QString>(&value))
        *fault = QStringLiteral("%1 %2: %3").arg(name, arguments.value(name), *fault);
    return value;
}

std::variant<SweepRange, QString> rangeFrom(const Arguments& arguments, const Sketch& sketch) {
    const QString what = arguments.value(QStringLiteral("--vary"));
    if (what.isNull())
        return QStringLiteral("--vary is missing; ") + whatCanBeVaried(sketch);
    const auto scalar = scalarNamed(what.toStdString(), sketch);
    if (!scalar)
        return QStringLiteral("--vary \"%1\": is no given value of the sketch; %2")
            .arg(what, whatCanBeVaried(sketch));
    SweepRange range{*scalar};
    for (const auto& [option, end] : {std::pair{"--from", &range.from}, std::pair{"--to", &range.to}}) {
        const Value value = endFrom(option, arguments, scalar->isDirection, sketch);
        if (const auto* fault = std::get_if<QString>(&value))
            return *fault;
        *end = std::get<double>(value);
    }
    if (arguments.has(QStringLiteral("--steps"))) {
        const QString typed = arguments.value(QStringLiteral("--steps"));
        const auto steps = wholeNumber(typed, 1, static_cast<int>(kMostSweepSteps));
        if (!steps)
            return QStringLiteral("--steps %1: wants a whole number from 1 to %2")
                .arg(typed)
                .arg(kMostSweepSteps);
        range.steps = static_cast<std::size_t>(*steps);
    }
    if (const auto fault = faultOf(range, sketch))
        return QStringLiteral("--from, --to: ") + QString::fromStdString(*fault);
    return range;
}

QByteArray sweepAs(const QString& form, const Sweep& sweep, const Sketch& sketch, const QString& file) {
    const Provenance from = provenanceOf(file);
    if (form == QLatin1String("json"))
        return sweepJson(sweep, sketch);
    if (form == QLatin1String("svg"))
        return sweepSvg(sweep, sketch, themeOf(ThemeName::paper), from);
    return form == QLatin1String("text") ? sweepText(sweep, sketch, from) : sweepCsv(sweep, sketch);
}

int runOn(const Arguments& arguments) {
    const QString out = arguments.value(QStringLiteral("-o"), QStringLiteral("-"));
    if (isSameFile(out, arguments.files.value(0))) // a slip that would cost it
        return complain(nameOfOutput(out) +
                        QStringLiteral(": is the sketch itself; write the sweep to another file"));
    const auto read = readQuestion(arguments, QStringLiteral("sweep"));
    if (const int* status = std::get_if<int>(&read))
        return *status;
    const Sketch& sketch = std::get<Result>(read).sketch;
    const auto range = rangeFrom(arguments, sketch);
    if (const auto* fault = std::get_if<QString>(&range))
        return complain(QStringLiteral("sweep: ") + *fault);
    const Sweep swept = sweep(sketch, std::get<SweepRange>(range));
    const int written = writeOut(sweepAs(arguments.value(QStringLiteral("--as"), QStringLiteral("csv")),
                                         swept, sketch, arguments.files.value(0)),
                                 out);
    return written != kDone ? written : swept.hasAnswer() ? kDone : kNoAnswer;
}

/// Fonts, which only the plot needs, cost a start several times that of the bare numbers.
std::unique_ptr<QCoreApplication> applicationForSweep(const Arguments& arguments, int& argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen"); // a verb needs no display server
    if (arguments.value(QStringLiteral("--as")) == QLatin1String("svg"))
        return std::make_unique<QGuiApplication>(argc, argv);
    return std::make_unique<QCoreApplication>(argc, argv);
}

} // namespace

int runSweep(int argc, char** argv) {
    const auto parsed = parseArguments(wordsFrom(2, argc, argv), sweepOptions());
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(QStringLiteral("sweep: ") + *fault);
    const auto& arguments = std::get<Arguments>(parsed);
    if (arguments.help)
        return writeOut(kSweepHelp, {});
    const auto application = applicationForSweep(arguments, argc, argv);
    if (qobject_cast<QGuiApplication*>(application.get()))
        if (const auto status = withoutFonts())
            return *status;
    return runOn(arguments);
}

} // namespace tailpoint
