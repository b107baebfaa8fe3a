// SPDX-License-Identifier: MIT
#include "ui/problems/write_sheet.h"

#include "core/practice/families.h"
#include "ui/files/sketch_json.h"
#include "ui/practice/problem_file.h"
#include "ui/practice/sheet_task.h"
#include "ui/problems/in_order.h"
#include "ui/problems/sheet_html.h"
#include "ui/problems/sheet_pages.h"

namespace tailpoint {

namespace {

QByteArray sketchFile(const Problem& problem) {
    return problem.id.family.empty() ? writeSketch(problem.sketch) : writeProblem(problem);
}

FileError noSlip(const ProblemSheet& sheet, std::size_t index) {
    return {QString(), QStringLiteral("no slip can be made in a line of the solution of problem %1, %2; %3")
                           .arg(index + 1)
                           .arg(QString::fromStdString(sheet.variants[index].problem.code))
                           .arg(sheet.request.families.empty() ? QStringLiteral("leave that sketch out")
                                                               : QStringLiteral("take another seed"))};
}

FileError tooFew(std::size_t wanted, std::size_t got) {
    return {QString(),
            QStringLiteral("there are no %1 different problems of this family and level, but %2; ask for "
                           "fewer, for more families or for another level")
                .arg(wanted)
                .arg(got)};
}

/// A problem's own file.
std::optional<FileError> writeSketchOf(const ProblemSheet& sheet, std::size_t index,
                                       const NewFolder& folder) {
    return folder.write(QString::fromStdString(sketchName(index)), sketchFile(sheet.variants[index].problem));
}

/// What is made of one problem.
template <class Pages>
struct MadeOfOne {
    typename Pages::Part part;
    std::optional<FileError> error;
};

/// Takes over the questions. Nothing is left of a sheet that has a fault, so that none is looked for here.
template <class Pages>
struct Questions {
    Pages& pages;
    bool operator()(std::size_t i, MadeOfOne<Pages>& made) const {
        if (!made.error)
            pages.addQuestion(i, made.part);
        return !made.error;
    }
    void end() const { pages.endQuestions(); }
};

/// Takes over the key, which is the most to do; here the first fault is told.
template <class Pages>
struct Key {
    Pages& pages;
    SheetWork& work;
    std::optional<FileError>& failed;
    bool operator()(std::size_t i, MadeOfOne<Pages>& made) const {
        failed = made.error;
        if (failed)
            return false;
        pages.addKey(i, made.part);
        ++work.done;
        return true;
    }
    void end() const { pages.endKey(); }
};

/// Writes a sheet and its key problem by problem, whatever their form. `Pages` lays out a problem (part(), on
/// any thread), takes over what is of the question and what is of the key (each in order, on a thread of its
/// own, the last that it hears is its end), and has the files after that.
template <class Pages>
std::optional<FileError> writePages(Pages pages, ProblemSheet& sheet, const NewFolder& folder,
                                    SheetWork& work) {
    const auto isCancelled = [&] { return work.isCancelled.load(); };
    const auto make = [&](std::size_t i) {
        using Made = MadeOfOne<Pages>;
        if (!completed(sheet, i, isCancelled))
            return Made{{}, tooFew(sheet.variants.size(), i)};
        const TaskOnPage task = taskOf(sheet, i);
        if (sheet.request.task == SheetTask::findSlip && !task.flawed)
            return Made{{}, noSlip(sheet, i)};
        return Made{pages.part(i, task), writeSketchOf(sheet, i, folder)};
    };
    std::optional<FileError> failed;
    if (!madeInOrder(sheet.variants.size(), work.isCancelled, make, Key<Pages>{pages, work, failed},
                     Questions<Pages>{pages}))
        return failed;
    for (const auto& [name, bytes] : pages.files()) {
        if (bytes.isEmpty())
            return FileError{name, QStringLiteral("could not be made")};
        if (auto error = folder.write(name, bytes))
            return error;
    }
    return std::nullopt;
}

std::optional<FileError> writeJson(ProblemSheet& sheet, const NewFolder& folder, SheetWork& work) {
    const std::size_t wanted = sheet.variants.size();
    if (!completed(sheet, [&] { return work.isCancelled.load(); }))
        return work.isCancelled ? std::nullopt : std::optional(tooFew(wanted, sheet.variants.size()));
    for (std::size_t i = 0; i < sheet.variants.size() && !work.isCancelled; ++i) {
        if (auto error = writeSketchOf(sheet, i, folder))
            return error;
        ++work.done;
    }
    const auto made = sheetJson(sheet);
    if (const auto* index = std::get_if<std::size_t>(&made))
        return noSlip(sheet, *index);
    return folder.write(QStringLiteral("sheet.json"), QByteArray::fromStdString(std::get<std::string>(made)));
}

std::optional<FileError> writeForm(ProblemSheet& sheet, const SheetLook& look, const NewFolder& folder,
                                   SheetWork& work) {
    switch (look.form) {
    case SheetForm::pdf:
        return writePages(SheetPdf(sheet, look), sheet, folder, work);
    case SheetForm::html:
        return writePages(SheetHtml(sheet, look), sheet, folder, work);
    case SheetForm::json:
        break;
    }
    return writeJson(sheet, folder, work);
}

} // namespace

std::optional<SheetForm> sheetFormFrom(const QString& name) {
    if (name == QLatin1String("pdf"))
        return SheetForm::pdf;
    if (name == QLatin1String("html"))
        return SheetForm::html;
    return name == QLatin1String("json") ? std::optional(SheetForm::json) : std::nullopt;
}

QString titleOf(const ProblemSheet& sheet) {
    const auto& families = sheet.request.families;
    const FamilyEntry* only = families.size() == 1 ? familyNamed(families.front()) : nullptr;
    const QString title =
        only ? QString::fromUtf8(only->title.data(), static_cast<qsizetype>(only->title.size()))
             : QStringLiteral("Problem sheet");
    switch (sheet.request.task) {
    case SheetTask::faded:
        return title + QStringLiteral(" \u00B7 fill in the solution");
    case SheetTask::findSlip:
        return title + QStringLiteral(" \u00B7 find the slip");
    case SheetTask::questions:
        break;
    }
    return title;
}

std::optional<FileError> writeSheet(ProblemSheet& sheet, const SheetLook& look, const NewFolder& folder,
                                    SheetWork& work) {
    if (auto error = writeForm(sheet, look, folder, work); error || work.isCancelled)
        return error;
    return folder.write(QStringLiteral("answers.csv"), QByteArray::fromStdString(answersCsv(sheet)));
}

} // namespace tailpoint
