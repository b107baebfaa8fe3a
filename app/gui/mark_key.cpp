// SPDX-License-Identifier: MIT
#include "app/gui/mark_key.h"

#include "app/common.h"
#include "app/gui/feedback.h"
#include "app/verbs.h"
#include "core/quantity/text.h"
#include "ui/files/files.h"
#include "ui/marking/marking_csv.h"
#include "ui/marking/marking_html.h"
#include "ui/marking/marking_json.h"
#include "ui/problems/key_html.h"

#include <algorithm>

namespace tailpoint {

namespace {

std::unique_ptr<ClassOutput> outputFor(const Arguments& arguments, const KeyMarking& marking) {
    const QString form = arguments.value(QStringLiteral("--as"));
    if (form == QLatin1String("json"))
        return classJson();
    if (form == QLatin1String("html"))
        return keyHtml(marking, arguments.has(QStringLiteral("--names")));
    return form == QLatin1String("text") ? classText() : tableCsv(marking.form(), marking.columns());
}

struct Written {
    std::unique_ptr<ClassOutput> output;
    QString file;
    std::string bytes;
};

std::string trimmed(const std::string& text) {
    return QString::fromStdString(text).trimmed().toStdString();
}

/// What may stand in a head besides quantities: a marker's own points, and in parentheses what isn't marked.
bool isBesides(const std::string& name) {
    return name.empty() || name == kOwnPointsColumn || (name.front() == '(' && name.back() == ')');
}

/// Heads of the sheet's own answers: what its questions ask for.
std::vector<std::string> askedIn(const QString& folder) {
    const auto bytes = readBytes(folder + QStringLiteral("/answers.csv"), QStringLiteral("key"));
    const QByteArray* text = std::get_if<QByteArray>(&bytes);
    if (text == nullptr)
        return {};
    CsvReader reader({text->constData(), static_cast<std::size_t>(text->size())});
    const auto heads = reader.next();
    std::vector<std::string> asked;
    for (const std::string& head : heads ? heads->cells : std::vector<std::string>())
        asked.push_back(trimmed(head));
    return asked;
}

/// A head that neither a question of the table's students has nor is asked for on the sheet; empty where
/// there is none.
std::string unknownColumn(const QByteArray& text, const QString& folder, SheetKey& key,
                          const std::vector<std::string>& columns) {
    std::vector<std::string> open;
    const std::vector<std::string> asked = askedIn(folder);
    for (std::size_t i = 1; i < columns.size(); ++i)
        if (const std::string name = trimmed(columns[i]);
            !isBesides(name) && std::find(asked.begin(), asked.end(), name) == asked.end())
            open.push_back(name);
    CsvReader reader({text.constData(), static_cast<std::size_t>(text.size())});
    reader.next(); // the heads
    bool any = false;
    while (const auto row = open.empty() ? std::nullopt : reader.next()) {
        const auto question =
            key.questionOf(row->cells.empty() ? std::string() : trimmed(row->cells.front()));
        if (const auto* found = std::get_if<const SheetKey::Question*>(&question)) {
            any = true;
            std::erase_if(open,
                          [&](const std::string& name) { return (*found)->marker.named(name) != nullptr; });
        }
    }
    return any && !open.empty() ? open.front() : std::string();
}

/// All rows, each told where it can't be read. The exit status.
int markAll(KeyMarking& marking, std::vector<Written>& all, FeedbackPages& feedback, const QString& table) {
    int status = kDone;
    for (Written& one : all)
        one.bytes += one.output->begin();
    while (const auto row = status == kDone ? marking.next() : std::nullopt) {
        if (const std::string fault = row->faults(); !fault.empty())
            complain(
                QStringLiteral("%1:%2: %3").arg(table).arg(row->line).arg(QString::fromStdString(fault)));
        for (Written& one : all)
            one.bytes += one.output->row(*row);
        if (feedback.isWanted() && marking.sketch())
            status = feedback.write(studentHtml(*marking.sketch(), *row));
        else
            feedback.skip(); // nobody's question
    }
    for (Written& one : all)
        one.bytes += one.output->end();
    return status;
}

FeedbackPages::People peopleIn(std::string_view table) {
    CsvReader reader(table);
    FeedbackPages::People people;
    reader.next(); // the heads
    while (const auto row = reader.next())
        people.emplace_back(row->cells.empty()
                                ? std::string()
                                : QString::fromStdString(row->cells.front()).trimmed().toStdString(),
                            row->line);
    return people;
}

/// What would be lost where a name of an output is one of them.
QList<Input> inputsOf(const QString& key, const QString& table) {
    return {{table, QStringLiteral("the class's table")},
            {key + QStringLiteral("/answers.csv"), QStringLiteral("the sheet's key")}};
}

} // namespace

QString clashWithKey(const Arguments& arguments) {
    if (!arguments.files.isEmpty())
        return QStringLiteral("--key has the questions, so FILE has no say; take one of them out");
    if (!arguments.has(QStringLiteral("--answers")) || arguments.has(QStringLiteral("--answer")))
        return QStringLiteral("--key goes with --answers CLASS.csv");
    const bool isPage = arguments.value(QStringLiteral("--as")) == QLatin1String("html");
    return arguments.has(QStringLiteral("--names")) && !isPage
               ? QStringLiteral("--names goes with --as html; take it out")
               : QString();
}

int markByKey(const Arguments& arguments) {
    const QString table = arguments.value(QStringLiteral("--answers"));
    auto opened = SheetKey::open(arguments.value(QStringLiteral("--key")));
    if (const auto* fault = std::get_if<QString>(&opened))
        return complain(*fault);
    const auto bytes = readBytes(table, QStringLiteral("class"));
    if (const auto* error = std::get_if<FileError>(&bytes))
        return complain(nameOfInput(table) + ": " + error->line());
    const QByteArray& text = std::get<QByteArray>(bytes);
    auto read = KeyMarking::open({text.constData(), static_cast<std::size_t>(text.size())},
                                 std::get<SheetKey>(opened));
    if (const auto* fault = std::get_if<ClassFault>(&read))
        return complain(nameOfInput(table) +
                        (fault->line > 0 ? QStringLiteral(":%1").arg(fault->line) : QString()) + ": " +
                        QString::fromStdString(fault->message));
    auto& marking = std::get<KeyMarking>(read);
    if (const std::string name = unknownColumn(text, arguments.value(QStringLiteral("--key")),
                                               std::get<SheetKey>(opened), marking.columns());
        !name.empty())
        return complain(
            QStringLiteral("%1: '%2' is no quantity of these questions; a column that is not to be "
                           "marked has its name in parentheses")
                .arg(nameOfInput(table), QString::fromStdString(oneLine(name))));
    std::vector<Written> all;
    all.push_back(
        {outputFor(arguments, marking), arguments.value(QStringLiteral("-o"), QStringLiteral("-")), {}});
    if (arguments.has(QStringLiteral("--points")))
        all.push_back({pointsTableCsv(marking.form()), arguments.value(QStringLiteral("--points")), {}});
    QStringList outputs;
    for (const Written& one : all)
        outputs << one.file;
    const QList<Input> inputs = inputsOf(arguments.value(QStringLiteral("--key")), table);
    if (const QString fault = faultOfOutputs(outputs, inputs); !fault.isEmpty())
        return complain(fault);
    FeedbackPages feedback;
    if (const QString fault = feedback.prepare(
            arguments.value(QStringLiteral("--feedback")),
            peopleIn({text.constData(), static_cast<std::size_t>(text.size())}), outputs, inputs);
        !fault.isEmpty())
        return complain(fault);
    int status = markAll(marking, all, feedback, nameOfInput(table));
    for (const Written& one : all)
        if (status == kDone)
            status = writeMarking(one.file, QByteArray::fromStdString(one.bytes));
    return status;
}

} // namespace tailpoint
