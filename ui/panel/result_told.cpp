// SPDX-License-Identifier: MIT
#include "ui/panel/result_told.h"

#include "core/explain/caution.h"
#include "core/explain/limits.h"
#include "core/explain/spoken.h"
#include "ui/panel/answer_text.h"

namespace tailpoint {

QStringList resultTold(const Result& result, const Worked& worked) {
    QStringList told;
    const auto add = [&](const std::string& words) {
        const QString line = QString::fromStdString(words);
        if (!line.isEmpty() && !told.contains(line))
            told << line;
    };
    if (result.sketch.forces.empty())
        return told;
    if (!result.isWithheld) {
        const Solution* solution = shownSolution(result);
        if (solution != nullptr)
            add(spoken(worked.answer));
        if (const QString which = answerName(result, result.chosen); !which.isEmpty())
            told << which + u'.';
        add(spoken(proseOf(result.solved.message(), result.things())));
        if (solution != nullptr)
            for (const Prose& line : limitsTold(result.sketch, *solution, result.rangeOf(result.chosen)))
                add(spoken(line));
    }
    if (needsCaution(result.sketch))
        add(std::string(cautionLine()));
    return told;
}

} // namespace tailpoint
