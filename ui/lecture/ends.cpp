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

/// The whole caution; at the steps between them the foot of the column has a short one.
void addCaution(Step& step, const Sketch& sketch) {
    if (needsCaution(sketch))
        step.reasoning.push_back(inProse(std::string(cautionLine())));
}

} // namespace

Step opening(const Sketch& sketch) {
    Step step;
    step.key = StepKey::question;
    step.title = Told::tr("The question").toStdString(); // the sheet's title block has its title
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
