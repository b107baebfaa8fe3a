#include "app/common.h"
#include "app/verbs.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace tailpoint {

namespace {

constexpr const char* kReportHelp =
    R"(Usage: tailpoint report FILE [--as text|json] [-o OUT]

Values of the sketch in FILE ('-': standard input): what is given, what was found, the triangle.

  --as text|json   plain text for people (default) or JSON for scripts
  -o OUT           write to this file instead of standard output

Exit status: 0 one answer or two; 1 none, endlessly many, too few or too many unknowns; 2 bad input.
)";

int writeOut(const QByteArray& report, const QString& out) {
    const bool toStandardOutput = out.isEmpty() || out == QLatin1String("-");
    const auto error = toStandardOutput ? writeStandardOutput(report) : saveBytes(out, report);
    if (!error)
        return kDone;
    return complain((toStandardOutput ? QStringLiteral("standard output") : out) + ": " + error->line());
}

/// A slip of the hand that would cost the sketch.
bool isTheSketchItself(const QString& out, const Arguments& arguments) {
    const QString sketch = arguments.files.value(0);
    return !out.isEmpty() && out != QLatin1String("-") && QFileInfo(out).exists() &&
           QFileInfo(out).canonicalFilePath() == QFileInfo(sketch).canonicalFilePath();
}

} // namespace

int runReport(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const auto parsed =
        parseArguments(wordsBehindVerb(argc, argv),
                       {{QStringLiteral("--as"), {QStringLiteral("text"), QStringLiteral("json")}},
                        {QStringLiteral("-o"), {}}});
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(QStringLiteral("report: ") + *fault);
    const auto& arguments = std::get<Arguments>(parsed);
    if (arguments.help)
        return writeOut(kReportHelp, {});
    const QString out = arguments.value(QStringLiteral("-o"));
    if (isTheSketchItself(out, arguments))
        return complain(out + QStringLiteral(": is the sketch itself; write the report to another file"));
    const auto read = readQuestion(arguments, QStringLiteral("report"));
    if (const int* status = std::get_if<int>(&read))
        return *status;
    const auto& result = std::get<Result>(read);
    const bool json = arguments.value(QStringLiteral("--as")) == QLatin1String("json");
    const int written = writeOut(json ? reportJson(result) : reportText(result), out);
    return written == kDone ? exitStatus(result.solved.status) : written;
}

} // namespace tailpoint
