// SPDX-License-Identifier: MIT
#include "app/common.h"

#include "app/verbs.h"
#include "core/sketch/cases.h"
#include "ui/files/sketch_json.h"

#include <QCoreApplication>

#include <cstdio>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace tailpoint {

namespace {

/// Names and texts from outside keep the one line one line.
QString onOneLine(QString text) {
    for (QChar& c : text)
        if (c.category() == QChar::Other_Control || c == QChar::LineSeparator ||
            c == QChar::ParagraphSeparator)
            c = QLatin1Char(' ');
    return text;
}

} // namespace

QString nameOfInput(const QString& file) {
    return file == QLatin1String("-") ? QStringLiteral("standard input") : file;
}

int complain(const QString& line) {
    const QByteArray bytes = ("tailpoint: " + onOneLine(line) + '\n').toUtf8();
    std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stderr);
    return kBad;
}

QStringList wordsFrom(int first, int argc, char** argv) {
    QStringList words;
    for (int i = first; i < argc; ++i)
        words << QString::fromLocal8Bit(argv[i]);
    return words;
}

void silenceQt() {
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
}

void keepMemory() {
#ifdef __GLIBC__
    constexpr int kMegabyte = 1 << 20;
    mallopt(M_MMAP_THRESHOLD, 32 * kMegabyte); // else every page asks the system anew for what packs it
    mallopt(M_TRIM_THRESHOLD, 512 * kMegabyte);
    mallopt(M_TOP_PAD, 16 * kMegabyte);
#endif
}

QString nameOfOutput(const QString& file) {
    return file == QLatin1String("-") ? QStringLiteral("standard output") : file;
}

std::variant<Result, int> readQuestion(const Arguments& arguments, const QString& verb) {
    if (arguments.files.size() != 1)
        return complain(QStringLiteral("%1 wants one FILE; see tailpoint %1 --help").arg(verb));
    const QString& file = arguments.files.front();
    const auto read = resultFrom(file);
    if (const auto* error = std::get_if<FileError>(&read))
        return complain(nameOfInput(file) + ": " + error->line());
    return std::get<Result>(read);
}

std::variant<Result, QString> inCaseAsked(const Arguments& arguments, const Result& question) {
    const QString option = QStringLiteral("--case");
    if (!arguments.has(option))
        return question;
    const Sketch& sketch = question.sketch;
    if (sketch.cases.empty())
        return QStringLiteral("--case: the sketch has no cases; leave it out");
    if (const auto index = caseNamed(sketch, arguments.value(option).toStdString()))
        return resultOf(inCase(sketch, *index));
    QStringList names;
    for (const LoadCase& one : sketch.cases)
        names << QString::fromStdString(one.name);
    return QStringLiteral("--case %1: there is no such case; take one of %2")
        .arg(arguments.value(option).left(60), names.join(QStringLiteral(", ")));
}

bool hidesTolerances(const Arguments& arguments) {
    return arguments.value(QLatin1String(kTolerancesOption)) == QLatin1String("hidden");
}

std::variant<Result, QString> withTolerancesAsked(const Arguments& arguments, const Result& question) {
    if (!hidesTolerances(arguments))
        return question;
    if (statesLimits(question.sketch))
        return QStringLiteral(
            "--tolerances hidden: the sketch states limits, which are judged at the worst end of "
            "the tolerances; leave it out");
    return resultOf(withoutTolerances(question.sketch));
}

std::variant<Result, QString> asAsked(const Arguments& arguments, const Result& question) {
    const auto inCase = inCaseAsked(arguments, question);
    const auto* asked = std::get_if<Result>(&inCase);
    return asked ? withTolerancesAsked(arguments, *asked) : inCase;
}

std::variant<Result, FileError> resultFrom(const QString& file) {
    const auto bytes = readBytes(file);
    if (const auto* error = std::get_if<FileError>(&bytes))
        return *error;
    const auto sketch = readSketch(std::get<QByteArray>(bytes));
    if (const auto* error = std::get_if<FileError>(&sketch))
        return *error;
    return resultOf(std::get<Sketch>(sketch));
}

int writeOut(const QByteArray& bytes, const QString& out) {
    const bool toStandardOutput = out.isEmpty() || out == QLatin1String("-");
    const auto error = toStandardOutput ? writeStandardOutput(bytes) : saveBytes(out, bytes);
    if (!error)
        return kDone;
    return complain(nameOfOutput(toStandardOutput ? QStringLiteral("-") : out) + ": " + error->line());
}

int exitStatus(Status status) {
    return status == Status::unique || status == Status::two ? kDone : kNoAnswer;
}

} // namespace tailpoint
