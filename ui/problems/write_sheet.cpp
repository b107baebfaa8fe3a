#include "ui/problems/write_sheet.h"

#include "core/practice/families.h"
#include "ui/document/sketch_json.h"
#include "ui/practice/problem_file.h"
#include "ui/problems/in_order.h"
#include "ui/problems/sheet_html.h"
#include "ui/problems/sheet_pages.h"

namespace tailpoint {

namespace {

QByteArray sketchFile(const Problem& problem) {
    return problem.id.family.empty() ? writeSketch(problem.sketch) : writeProblem(problem);
}

/// Writes a sheet and its key problem by problem, whatever their form. `Pages` lays out a problem (part(), on
/// any thread), takes it over (add(), in order), and has the files in the end.
template <class Pages>
std::optional<FileError> writePages(Pages pages, const ProblemSheet& sheet, const NewFolder& folder,
                                    SheetWork& work) {
    const bool isWhole = madeInOrder(
        sheet.variants.size(), work.isCancelled, [&](std::size_t i) { return pages.part(i); },
        [&](std::size_t i, auto part) {
            pages.add(i, std::move(part));
            ++work.done;
            return true;
        });
    if (!isWhole)
        return std::nullopt;
    for (const auto& [name, bytes] : pages.files()) {
        if (bytes.isEmpty())
            return FileError{name, QStringLiteral("could not be made")};
        if (auto error = folder.write(name, bytes))
            return error;
    }
    return std::nullopt;
}

std::optional<FileError> writeForm(const ProblemSheet& sheet, const SheetLook& look, const NewFolder& folder,
                                   SheetWork& work) {
    switch (look.form) {
    case SheetForm::pdf:
        return writePages(SheetPdf(sheet, look), sheet, folder, work);
    case SheetForm::html:
        return writePages(SheetHtml(sheet, look), sheet, folder, work);
    case SheetForm::json:
        break;
    }
    work.done = static_cast<int>(sheet.variants.size());
    return folder.write(QStringLiteral("sheet.json"), QByteArray::fromStdString(sheetJson(sheet)));
}

} // namespace

std::optional<SheetForm> sheetFormFrom(const QString& name) {
    if (name == QLatin1String("pdf"))
        return SheetForm::pdf;
    if (name == QLatin1String("html"))
        return SheetForm::html;
    return name == QLatin1String("json") ? std::optional(SheetForm::json) : std::nullopt;
}

QString tooFewWords(std::size_t wanted, std::size_t got) {
    return QStringLiteral(
               "there are no %1 different ones of this family and level, but %2; ask for fewer, for "
               "more families or for another level")
        .arg(wanted)
        .arg(got);
}

QString titleOf(const ProblemSheet& sheet) {
    const auto& families = sheet.request.families;
    const FamilyEntry* only = families.size() == 1 ? familyNamed(families.front()) : nullptr;
    return only ? QString::fromUtf8(only->title.data(), static_cast<qsizetype>(only->title.size()))
                : QStringLiteral("Problem sheet");
}

std::optional<FileError> writeSheet(const ProblemSheet& sheet, const SheetLook& look, const NewFolder& folder,
                                    SheetWork& work) {
    for (std::size_t i = 0; i < sheet.variants.size() && !work.isCancelled; ++i)
        if (auto error =
                folder.write(QString::fromStdString(sketchName(i)), sketchFile(sheet.variants[i].problem)))
            return error;
    if (auto error =
            folder.write(QStringLiteral("answers.csv"), QByteArray::fromStdString(answersCsv(sheet))))
        return error;
    return writeForm(sheet, look, folder, work);
}

} // namespace tailpoint
