// The sheet while the learner's own answer is under way.
#include "ui/canvas/canvas_p.h"
#include "ui/marking/own_answer.h"

namespace tailpoint {

void Canvas::setOwnAnswer(OwnAnswer& answer) {
    d->scene.setOwnAnswer(&answer);
    connect(&answer, &OwnAnswer::beginning, this, [this] { d->ownAnswerBegins(); });
    connect(&answer, &OwnAnswer::modeChanged, this, [this] { d->ownAnswerChanged(); });
    connect(&answer, &OwnAnswer::drawnChanged, this, qOverload<>(&QWidget::update));
    connect(&answer, &OwnAnswer::marked, this, [this] { d->ownDrawingChanged(); });
}

void Canvas::Private::ownAnswerBegins() {
    beforeAnswer = {scene.look(), scene.sketch(), q.size()};
}

/// A construction that reaches beyond the sheet is brought onto it, and the view is as it was once that is
/// taken off again, unless a hand has moved it.
void Canvas::Private::ownDrawingChanged() {
    const OwnAnswer* answer = scene.ownAnswer();
    std::vector<AttemptStroke> strokes =
        answer != nullptr ? answer->slipDrawing() : std::vector<AttemptStroke>();
    if (answer != nullptr)
        for (AttemptStroke& stroke : answer->answerDrawing())
            strokes.push_back(std::move(stroke));
    if (beforeDrawing && beforeDrawing->shown == scene.sheet().view())
        scene.restore(beforeDrawing->look);
    beforeDrawing.reset();
    const Scene::Look look = scene.look();
    if (!strokes.empty() && scene.bringInDrawing(strokes))
        beforeDrawing = {look, scene.sheet().view()};
    refresh();
}

/// The view comes back as it was; where the sketch has changed, as much of it as that allows.
void Canvas::Private::ownAnswerChanged() {
    hover = {};
    beforeDrawing.reset();
    if (scene.ownAnswer() == nullptr) {
        scene.restore(beforeAnswer.look);
        if (beforeAnswer.size != q.size() || !(beforeAnswer.sketch == scene.sketch())) {
            scene.keepInSheet();
        }
    }
    refresh();
}

} // namespace tailpoint
