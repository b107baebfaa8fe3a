// SPDX-License-Identifier: MIT
#include "app/gui/mark_class.h"

#include "app/common.h"
#include "app/gui/feedback.h"
#include "app/verbs.h"
#include "ui/files/files.h"
#include "ui/marking/marking_csv.h"
#include "ui/marking/marking_html.h"
#include "ui/marking/marking_json.h"

#include <QDir>
#include <QFileInfo>

namespace tailpoint {

namespace {

QString wouldReplace(const Input& input) {
    return QStringLiteral(": is %1 itself; write the marking to another file").arg(input.second);
}

std::unique_ptr<ClassOutput> outputFor(const Arguments& arguments, const MarkedQuestion& question,
                                       const ClassMarking& marking) {
    const QString form = arguments.value(QStringLiteral("--as"));
    if (form == QLatin1String("json"))
        return classJson();
    if (form == QLatin1String("html"))
        return classHtml(question.sketch, marking, arguments.has(QStringLiteral("--names")));
    return form == QLatin1String("text") ? classText() : classCsv(marking);
}

std::string_view viewOf(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

/// Collects what goes to a file, which is written as a whole; standard output gets it in pieces as it comes.
class Sink {
public:
    explicit Sink(const QString& out) : m_out(out) {}
    int add(const std::string& text) {
        m_bytes.append(text.data(), static_cast<qsizetype>(text.size()));
        return isStream() && m_bytes.size() >= kPiece ? flush() : kDone;
    }
    int flush() {
        const int status = writeMarking(m_out, m_bytes);
        m_bytes.clear();
        return status;
    }

private:
    static constexpr qsizetype kPiece = qsizetype{1} << 16;
    bool isStream() const { return m_out == QLatin1String("-"); }
    QString m_out;
    QByteArray m_bytes;
};

/// An output and where it goes.
struct Target {
    std::unique_ptr<ClassOutput> output;
    Sink sink;
};

int writeClass(ClassMarking& marking, std::vector<Target>& targets, FeedbackPages& feedback,
               const MarkedQuestion& question, const QString& table) {
    int status = kDone;
    const auto give = [&](auto piece) {
        for (Target& target : targets)
            if (status == kDone)
                status = target.sink.add(piece(*target.output));
    };
    give([](ClassOutput& output) { return output.begin(); });
    while (const auto row = status == kDone ? marking.next() : std::nullopt) {
        if (const std::string fault = row->faults(); !fault.empty())
            complain(
                QStringLiteral("%1:%2: %3").arg(table).arg(row->line).arg(QString::fromStdString(fault)));
        give([&](ClassOutput& output) { return output.row(*row); });
        if (status == kDone && feedback.isWanted())
            status = feedback.write(studentHtml(question.sketch, *row));
    }
    give([](ClassOutput& output) { return output.end(); });
    for (Target& target : targets)
        if (status == kDone)
            status = target.sink.flush();
    return status;
}

FeedbackPages::People peopleIn(std::string_view table, const Marker& marker) {
    auto opened = ClassMarking::open(table, marker);
    FeedbackPages::People people;
    while (const auto row = std::get<ClassMarking>(opened).nextUnmarked()) // it was opened before
        people.emplace_back(row->who, row->line);
    return people;
}

QString lineOf(const ClassFault& fault, const QString& table) {
    const QString place = fault.line == 0 ? table : QStringLiteral("%1:%2").arg(table).arg(fault.line);
    return place + ": " + QString::fromStdString(fault.message);
}

/// What would be found out only once other outputs are written.
QString faultOfPlace(const QString& output) {
    const QFileInfo info(finalPath(output));
    if (output == QLatin1String("-"))
        return {};
    if (info.isDir())
        return output + QStringLiteral(": is a folder; name a file in it");
    return info.dir().exists()
               ? QString()
               : output + QStringLiteral(": not saved: the folder does not exist; make it first or "
                                         "save elsewhere");
}

} // namespace

QString faultOfOutputs(const QStringList& outputs, const QList<Input>& inputs) {
    for (const QString& output : outputs)
        for (const Input& input : inputs)
            if (isSameFile(output, input.first)) // a slip that would cost it
                return nameOfOutput(output) + wouldReplace(input);
    for (const QString& output : outputs)
        if (const QString fault = faultOfPlace(output); !fault.isEmpty())
            return fault;
    for (qsizetype i = 1; i < outputs.size(); ++i)
        if (outputs[i] == outputs[0] || finalPath(outputs[i]) == finalPath(outputs[0]))
            return nameOfOutput(outputs[i]) + QStringLiteral(": is written twice; name another file");
    return {};
}

int writeMarking(const QString& out, const QByteArray& bytes) {
    const auto error = out == QLatin1String("-") ? writeStandardOutput(bytes) : saveBytes(out, bytes);
    return error ? complain(nameOfOutput(out) + ": " + error->line()) : kDone;
}

int markClass(const Arguments& arguments, const MarkedQuestion& question) {
    const QString table = arguments.value(QStringLiteral("--answers")), sketch = arguments.files[0];
    const auto bytes = readBytes(table, QStringLiteral("class"));
    if (const auto* error = std::get_if<FileError>(&bytes))
        return complain(nameOfInput(table) + ": " + error->line());
    const std::string_view text = viewOf(std::get<QByteArray>(bytes));
    auto opened = ClassMarking::open(text, question.marker);
    if (const auto* fault = std::get_if<ClassFault>(&opened))
        return complain(lineOf(*fault, nameOfInput(table)));
    auto& marking = std::get<ClassMarking>(opened);
    QStringList outputs{arguments.value(QStringLiteral("-o"), QStringLiteral("-"))};
    std::vector<Target> targets;
    targets.push_back({outputFor(arguments, question, marking), Sink(outputs[0])});
    if (arguments.has(QStringLiteral("--points"))) {
        outputs << arguments.value(QStringLiteral("--points"));
        targets.push_back({pointsCsv(marking), Sink(outputs[1])});
    }
    const QList<Input> inputs{{sketch, QStringLiteral("the sketch")},
                              {table, QStringLiteral("the class's table")}};
    if (const QString fault = faultOfOutputs(outputs, inputs); !fault.isEmpty())
        return complain(fault);
    FeedbackPages feedback;
    if (const QString fault = feedback.prepare(arguments.value(QStringLiteral("--feedback")),
                                               peopleIn(text, question.marker), outputs, inputs);
        !fault.isEmpty())
        return complain(fault);
    return writeClass(marking, targets, feedback, question, nameOfInput(table));
}

} // namespace tailpoint
