// SPDX-License-Identifier: MIT
#include "ui/problems/sheet_from.h"

#include "core/quantity/decimals.h"
#include "ui/files/sketch_json.h"
#include "ui/marking/mark_options.h"
#include "ui/practice/problem_file.h"

#include <cmath>

namespace tailpoint {

namespace {

/// Numbers of the sketch that a text doesn't have.
std::optional<std::string> unsaid(const Sketch& sketch, const std::string& statement) {
    const auto missing = [&](const Force& vector) -> std::optional<std::string> {
        std::vector<double> numbers;
        if (vector.magnitude.value.value_or(0) != 0)
            numbers.push_back(*vector.magnitude.value);
        if (const auto* angle = std::get_if<AngleForm>(&vector.direction.form))
            numbers.push_back(std::abs(angle->value));
        for (const double number : numbers)
            if (statement.find(shortest(number)) == std::string::npos)
                return shortest(number);
        return std::nullopt;
    };
    for (const Force& force : sketch.forces)
        if (auto number = missing(force))
            return number;
    return missing(sketch.sum);
}

/// A statement that was made for other numbers would ask another question. Empty: it may stand.
QString takeKeys(Problem& one) {
    one.statement = statementOf(one.sketch);
    const auto id = problemIdOf(one.sketch);
    const auto made = id ? problem(*id) : std::nullopt;
    const bool isUnchanged = made && isSameQuestion(made->sketch, one.sketch);
    one.id = isUnchanged ? *id : ProblemId{{}, 0, 0};
    one.code = isUnchanged ? made->code : sketchCode(one.sketch);
    const auto number =
        id && !isUnchanged && !one.statement.empty() ? unsaid(one.sketch, one.statement) : std::nullopt;
    return number ? QStringLiteral("its statement doesn't speak of %1, which the sketch has; write it anew "
                                   "under \"statement\", or take it out")
                        .arg(QString::fromStdString(*number))
                  : QString();
}

/// Its problem and its marking, or what is wrong with it.
std::variant<SheetVariant, QString> variantIn(const QByteArray& bytes, bool withTolerances) {
    auto read = readSketch(bytes);
    if (const auto* error = std::get_if<FileError>(&read))
        return error->line();
    SheetVariant one;
    one.problem.sketch = withTolerances ? std::get<Sketch>(std::move(read))
                                        : withoutTolerances(std::get<Sketch>(std::move(read)));
    const Sketch& sketch = one.problem.sketch;
    const auto options = markOptionsOf(sketch);
    if (const auto* error = std::get_if<FileError>(&options))
        return error->line();
    const auto& marking = std::get<MarkOptions>(options);
    const Marker marker(sketch, solve(sketch), marking);
    if (const auto& refusal = marker.refusal())
        return QString::fromStdString(*refusal);
    if (const auto error = faultOfPoints(marking, marker))
        return error->line();
    if (QString fault = takeKeys(one.problem); !fault.isEmpty())
        return fault;
    one.problem.bothAnswers = marking.bothAnswers;
    one.scheme = schemeOf(sketch, marking);
    return one;
}

} // namespace

std::variant<ProblemSheet, QString> sheetFrom(const QStringList& files, const SheetRequest& task) {
    ProblemSheet sheet;
    sheet.request.task = task.task;
    sheet.request.blank = task.blank;
    sheet.request.tolerances = task.tolerances;
    sheet.request.count = static_cast<std::size_t>(files.size());
    for (const QString& file : files) {
        const auto bytes = readBytes(file);
        if (const auto* error = std::get_if<FileError>(&bytes))
            return file + QStringLiteral(": ") + error->line();
        auto one = variantIn(std::get<QByteArray>(bytes), task.tolerances);
        if (const auto* fault = std::get_if<QString>(&one))
            return file + QStringLiteral(": ") + *fault;
        sheet.variants.push_back(std::get<SheetVariant>(std::move(one)));
        sheet.variants.back().place = sheet.variants.size();
    }
    return sheet;
}

std::string sketchCode(const Sketch& sketch) {
    std::uint64_t hash = 14695981039346656037ULL; // FNV-1a of 64 bits (Fowler, Noll, Vo), folded
    for (const char c : writeSketch(sketch))
        hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    hash ^= hash >> 32U;
    constexpr std::string_view letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    std::string code;
    for (unsigned i = 0; i < 5; ++i)
        code += letters[hash >> (5 * i) & 31U];
    return code;
}

} // namespace tailpoint
