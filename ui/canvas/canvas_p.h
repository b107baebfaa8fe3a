// SPDX-License-Identifier: MIT
// The canvas's inside: what its files share. Nothing outside ui/canvas includes it.
#pragma once

#include "ui/canvas/canvas.h"
#include "ui/canvas/edge_scroll.h"
#include "ui/canvas/force_gesture.h"
#include "ui/canvas/glide.h"
#include "ui/canvas/hit.h"
#include "ui/canvas/label_editor.h"
#include "ui/canvas/nudge.h"
#include "ui/canvas/resting_tips.h"
#include "ui/canvas/reveal.h"
#include "ui/canvas/scene.h"
#include "ui/canvas/static_layer.h"
#include "ui/canvas/typed_edits.h"

#include <QElapsedTimer>
#include <QTimer>
#include <QVariantAnimation>

class QMenu;

namespace tailpoint {

/// What a drag from where the pointer stands would do.
enum class DragEffect { nothing, draws, changes, resizes, turns };

class Canvas::Private {
public:
    Private(Canvas& canvas, SketchDocument& document);

    GestureContext context();
    void say(const QString& text);
    void say(const Sentence& sentence);
    Words symbolAt(int vector) const;
    void refresh(); ///< something that is composed changed
    void documentChanged();
    void documentReplaced();
    void previewEnded();
    void tellFocus(); ///< that the selected vector has the keyboard
    void announce();  ///< to assistive technology, that names have changed

    // canvas_mouse.cpp
    std::unique_ptr<Gesture> gestureFor(const Hit& hit, QPointF at);
    void pressOnStage(QMouseEvent* event);
    void releaseOnStage();
    void begin(std::unique_ptr<Gesture> gesture);
    void end(bool keep);
    void takeMove();
    bool canMove(int vector) const; ///< by its tip
    bool canTurn(int vector) const; ///< by its body
    Sentence whyNot(int vector) const;
    void readPointer(QPointF at);

    // canvas_hover.cpp
    void hoverAt(QPointF at, Qt::KeyboardModifiers held);
    void hoverWith(Qt::KeyboardModifiers held); ///< a key came or went under a pointer at rest
    void tellPart(const std::optional<FigurePart>& part);
    DragEffect effectOf(const Hit& hit) const;
    void showCursor();
    Qt::CursorShape cursorOverTip() const;
    void sayHover();
    Sentence tipWords() const;

    // canvas_menu.cpp
    std::unique_ptr<QMenu> menuFor(int vector);
    std::unique_ptr<QMenu> sheetMenu();

    // canvas_keys.cpp
    bool sheetKey(QKeyEvent* event);
    bool forceKey(QKeyEvent* event);
    bool digitKey(QKeyEvent* event);
    bool arrowKey(QKeyEvent* event);
    void panByKey(QPointF pan);
    bool labelKey(QKeyEvent* event);
    bool holdKey(QKeyEvent* event, bool pressed);
    bool snapKey(QKeyEvent* event);
    bool step(int by); ///< to the next or previous vector; false past the ends

    // canvas_hold.cpp
    void moveGesture(Qt::KeyboardModifiers keys); ///< to the pointer
    bool settle(const Gesture& ended); ///< the view after a drag that is kept; false: not all is seen
    void beginAtEdge();
    void followEdge(); ///< a drag goes to the sheet's edge, or leaves it
    void restAtEdge(); ///< and rests there

    // canvas_edit.cpp
    void openEditor(Cell cell, int vector);
    void keepEditorOnLabel();
    void openScaleEditor();
    std::optional<Refused> takeScale(const QString& text); ///< why not
    template <class Change>
    bool change(int vector, const QString& text, Nudged what, Change change);
    bool toggle(int vector, Entry quantity); ///< given or to find
    bool edit(const Sketch& after, const QString& text);
    bool nudge(int vector, Nudged what, const Sketch& after, const QString& text);
    bool taken(const std::optional<SketchFault>& fault); ///< else says why not

    // canvas_own.cpp
    void ownAnswerBegins();
    void ownAnswerChanged();
    void ownDrawingChanged();
    bool nudgeOwn(int vector, Nudged what, int way, bool fine); ///< own_nudge.cpp
    void sayOwnKeys();
    bool forgetOwn();
    bool isPointing() const; ///< an angle is looked for
    void pointingChanged();
    bool pointWith(QPointF at, bool isPress); ///< false: none is looked for
    bool pointingKey(QKeyEvent* event);

    // canvas_paint.cpp
    void paintUnder(QPainter& painter);
    void paintOver(QPainter& painter);
    void paintHover(QPainter& painter);
    const DisplayList& listNow();

    Canvas& q;
    Scene scene;
    struct {
        Scene::Look look;
        Sketch sketch;
        QSize size;
    } beforeAnswer; ///< when the learner's own answer began
    struct BroughtIn {
        Scene::Look look; ///< before
        View shown;       ///< after
    };
    bool saysSlip = false;                  ///< the hint is of a construction that is drawn
    std::optional<BroughtIn> beforeDrawing; ///< when a construction was brought onto the sheet
    ThemeName theme = ThemeName::paper;
    bool staged = false;
    bool snapping = true;
    bool isStill = false; ///< what is given is not to be moved by hand
    bool animated = true;
    bool keepsForces = true;
    int selected = kNoVector;
    int lit = kNoVector;
    std::vector<FigurePart> litParts;  ///< by a step of the solution
    std::optional<FigurePart> pointed; ///< last told
    bool spaceHeld = false;
    bool focusShown = false; ///< the focus came by key: say where it is
    bool announcing = false;
    bool isByPointer = false; ///< what is said is about what the pointer does: nobody's answer
    QTimer rest;              ///< until a hand rests
    Hit hover;
    Qt::KeyboardModifiers hoverKeys; ///< then
    QPointF pointer;
    bool pointerInside = false;
    double toldDivision = 0; ///< of the sheet, when last told
    std::unique_ptr<Gesture> gesture;
    Qt::MouseButton button = Qt::NoButton;            ///< that holds the gesture
    Qt::KeyboardModifiers keys;                       ///< during a gesture, when last heard of
    std::optional<Qt::KeyboardModifiers> pendingMove; ///< to `pointer`, for the next frame
    std::optional<UnitOf> unitPressed;                ///< what a release there would ask about
    QPointF pressedAt;
    Scene::Look lookBefore;                   ///< when the gesture began
    Scene::Shown shownBefore = Scene::partly; ///< then
    bool ending = false;                      ///< what a gesture does at its end is still the hand's doing
    EdgeScroll edge;
    QTimer edgeClock;
    QElapsedTimer sinceTick;
    Nudges nudges;
    LabelEditor editor;
    Cell edited = Cell::none; ///< what the editor is open over
    std::string editedName;   ///< of the force whose it is
    StaticLayer below{StaticLayer::Part::below}, above{StaticLayer::Part::above};
    RestingTips restingTips;
    Glide glide;
    Reveal reveal;
    DisplayList moving; ///< what is painted while glide or reveal runs
    QVariantAnimation clock;
};

} // namespace tailpoint
