// SPDX-License-Identifier: MIT
#include "ui/lecture/ends.h"

#include "core/explain/caution.h"
#include "core/explain/question.h"

#include <QCoreApplication>

namespace tailpoint {

namespace {

struct Told {
    Q_DECLARE_TR_FUNCTIONS(tailpoint::Lecture)
};

/// A line each, so that the column can be paged where they are many.
std::vector<Prose> sentencesOf(const std::string& words) {
    std::vector<Prose> lines;
    std::size_t from = 0;
    const auto add = [&](std::size_t to) {
        if (to > from)
            lines.push_back(inProse(words.substr(from, to - from)));
    };
    for (std::size_t at = 0; at < words.size(); ++at) {
        const bool isEnd = words[at] == ' ' && at > 0 && (words[at - 1] == '.' || words[at - 1] == '?');
        if (isEnd || words[at] == '\n') {
            add(at);
            from = at + 1;
        }
    }
    add(words.size());
    return lines;
}

/// The whole caution; at the steps between them the foot of the column has a short one.
void addCaution(Step& step, const Sketch& sketch) {
    if (needsCaution(sketch))
        step.reasoning.push_back(inProse(std::string(cautionLine())));
}

} // namespace

Step opening(const Sketch& sketch, const std::string& words) {
    Step step;
    step.key = StepKey::question;
    step.title = Told::tr("The question").toStdString(); // the sheet's title block has its title
    step.reasoning = sentencesOf(words);
    if (step.reasoning.empty())
        step.reasoning.push_back(proseOf(question(sketch)));
    addCaution(step, sketch);
    step.stage = Stage::given;
    return step;
}

Step closing(const Sketch& sketch, std::vector<Prose> answers) {
    Step step;
    step.key = StepKey::end;
    step.title = (answers.size() > 1 ? Told::tr("Both answers") : Told::tr("The answer")).toStdString();
    step.reasoning = std::move(answers);
    addCaution(step, sketch);
    step.stage = Stage::all;
    return step;
}

} // namespace tailpoint
