// The sheet while the learner's own answer is under way.
#include "ui/canvas/canvas_p.h"
#include "ui/marking/own_answer.h"

namespace tailpoint {

void Canvas::setOwnAnswer(OwnAnswer& answer) {
    d->scene.setOwnAnswer(&answer);
    connect(&answer, &OwnAnswer::beginning, this, [this] { d->ownAnswerBegins(); });
    connect(&answer, &OwnAnswer::modeChanged, this, [this] { d->ownAnswerChanged(); });
    connect(&answer, &OwnAnswer::drawnChanged, this, qOverload<>(&QWidget::update));
    connect(&answer, &OwnAnswer::marked, this, qOverload<>(&QWidget::update));
}

void Canvas::Private::ownAnswerBegins() {
    beforeAnswer = {scene.look(), scene.sketch(), q.size()};
}

/// The view comes back as it was; where the sketch has changed, as much of it as that allows.
void Canvas::Private::ownAnswerChanged() {
    hover = {};
    if (scene.ownAnswer() == nullptr) {
        scene.restore(beforeAnswer.look);
        if (beforeAnswer.size != q.size() || !(beforeAnswer.sketch == scene.sketch())) {
            scene.keepInSheet();
        }
    }
    refresh();
}

} // namespace tailpoint
