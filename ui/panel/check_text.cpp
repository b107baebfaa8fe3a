// SPDX-License-Identifier: MIT
#include "ui/panel/check_text.h"

#include "core/explain/explain.h"
#include "ui/panel/answer_text.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>

namespace tailpoint {

namespace {

struct Checks {
    Q_DECLARE_TR_FUNCTIONS(Checks)
};

/// What a check compares: components, what they leave over, and what was found. The angles on the way to it
/// stand in the solution.
bool isCompared(const QuantityId& id) {
    static constexpr std::array kCompared{What::magnitude, What::direction, What::x,
                                          What::y,         What::along,     What::gap};
    return std::find(kCompared.begin(), kCompared.end(), id.what) != kCompared.end();
}

const Step* lastCheck(const Worked& worked) {
    const auto found = std::find_if(worked.steps.rbegin(), worked.steps.rend(),
                                    [](const Step& step) { return step.key == StepKey::check; });
    return found == worked.steps.rend() ? nullptr : &*found;
}

/// "R_x = 518.81 N", which breaks nowhere.
QString lineHtml(const Working& working) {
    return htmlOf(Prose{{equal(*working.subject, *working.value)}});
}

QStringList comparedNumbers(const Step& check) {
    QStringList lines;
    for (std::size_t i = 0; i < check.workings.size(); ++i) {
        const Working& working = check.workings[i];
        const bool compared = i < check.lines.size() && isCompared(check.lines[i]);
        if (compared && working.subject && working.value) {
            lines << lineHtml(working);
        }
    }
    return lines;
}

} // namespace

QString checkText(const Result& result, const ExplainOptions& options) {
    if (!shownSolution(result)) {
        return {};
    }
    const auto worked = result.worked(options);
    const Step* check = lastCheck(*worked);
    if (check == nullptr || check->conclusion.empty()) { // no number is compared with another
        return {};
    }
    QStringList lines{text(check->title).toHtmlEscaped()};
    if (const QString name = answerName(result, result.chosen); !name.isEmpty()) {
        lines.prepend(name);
    }
    const QStringList numbers = comparedNumbers(*check);
    if (numbers.isEmpty()) { // told within sentences
        for (const Prose& prose : check->reasoning) {
            lines << htmlOf(prose);
        }
    } else {
        lines << numbers.join(QStringLiteral(", "));
    }
    const bool oneJudgement = check->law == Law::components && !numbers.isEmpty(); // remarks come after it
    const std::size_t told = check->conclusion.size();
    for (std::size_t i = 0; i < (oneJudgement ? std::min<std::size_t>(1, told) : told); ++i) {
        lines << htmlOf(check->conclusion.at(i));
    }
    if (result.hasTolerances()) {
        lines << Checks::tr("Compared at the middle of the tolerances.");
    }
    return lines.join(QStringLiteral("<br>"));
}

} // namespace tailpoint
