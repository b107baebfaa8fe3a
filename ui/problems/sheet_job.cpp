// SPDX-License-Identifier: MIT
#include "ui/problems/sheet_job.h"

#include "ui/problems/sheet_from.h"
#include "ui/problems/write_sheet.h"

#include <algorithm>

namespace tailpoint {

namespace {

QString written(const SheetJob& job, ProblemSheet& sheet, NewFolder& folder, SheetWork& work) {
    auto error = writeSheet(sheet, job.look, folder, work);
    if (!error && !work.isCancelled)
        error = folder.finish();
    return error ? job.folder + QStringLiteral(": ") + error->message : QString();
}

} // namespace

std::size_t SheetJob::wanted() const {
    return own.isEmpty() ? request.count * std::max<std::size_t>(1, request.roster.size())
                         : static_cast<std::size_t>(own.size());
}

void SheetJob::run() {
    NewFolder made(folder);
    if (made.fault()) {
        fault = folder + QStringLiteral(": ") + made.fault()->message;
    } else if (!own.isEmpty()) {
        auto sheet = sheetFrom(own, request);
        if (const auto* unfit = std::get_if<QString>(&sheet))
            fault = *unfit;
        else
            fault = written(*this, std::get<ProblemSheet>(sheet), made, work);
    } else {
        ProblemSheet sheet = sheetToDraw(request);
        fault = written(*this, sheet, made, work);
    }
    isOver = true;
}

} // namespace tailpoint
