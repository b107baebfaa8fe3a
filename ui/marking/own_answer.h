// SPDX-License-Identifier: MIT
// A learner's own answer to the open question: values as typed, vectors as drawn, and how they were marked.
// While it is under way the document withholds the answer; it alone knows it, and tells it on demand. It is
// no part of the sketch: no file has it, and no undo step goes through it.
#pragma once

#include "core/figure/attempt_strokes.h"
#include "core/figure/pointable_angles.h"
#include "core/mark/mark.h"

#include <Eigen/Core>
#include <QObject>
#include <QString>
#include <array>
#include <map>
#include <memory>

namespace tailpoint {

class SketchDocument;

class OwnAnswer : public QObject {
    Q_OBJECT
public:
    explicit OwnAnswer(SketchDocument& document, QObject* parent = nullptr);
    ~OwnAnswer() override;

    bool isOn() const { return m_isOn; }
    /// Something else asks meanwhile: the answer is withheld, but there are no fields and nothing is drawn.
    bool standsAside() const { return m_standsAside; }
    void standAside(bool on);
    /// False, and nothing happens, where the question has no answer: whyNot().
    bool begin();
    void end();
    /// Why there is nothing to answer in the open question; empty where there is.
    QString whyNot() const;

    /// What is asked, in the question's order, then the values on the way that were added.
    std::vector<Answerable> fields() const;
    const Answerable* named(const std::string& name) const {
        return m_marker ? m_marker->named(name) : nullptr;
    }
    /// Values on the way that can be added yet.
    std::vector<Answerable> addable() const;
    void addField(const std::string& name);
    void removeField(const std::string& name);

    /// How many answers have fields of their own: 2 where both are asked for.
    std::size_t answersToGive() const;
    /// A magnitude's sign tells its sense.
    bool hasSignedSenses() const { return m_isSigned; }

    /// By plain name, of the first answer or the second (0, 1); kept while the window is open, whatever
    /// becomes of the sketch, until another is opened.
    QString typed(const std::string& name, std::size_t answer = 0) const;
    void type(const std::string& name, const QString& text, std::size_t answer = 0);

    /// The vectors of which a magnitude or a direction is asked.
    std::vector<VectorId> drawable() const;
    /// Sketch coordinates, from the common point; empty: not drawn.
    std::optional<Eigen::Vector2d> drawn(VectorId vector) const;
    /// What is given of the vector holds: its direction, or its magnitude.
    Eigen::Vector2d held(VectorId vector, const Eigen::Vector2d& tip) const;
    void draw(VectorId vector, const std::optional<Eigen::Vector2d>& tip);
    void forgetDrawn();
    bool isDrawn() const { return !m_drawn.empty(); }
    /// What the drawn vector says of this quantity, "335 N"; empty where nothing is drawn.
    QString drawnText(const Answerable& of) const;

    /// An angle on the way can be pointed at in place of a value, where the sheet has some to point at.
    bool canPoint(const Answerable& of) const;
    /// From now on the sheet offers pointable(); `name` is the quantity that is looked for.
    void beginPointing(const std::string& name);
    void endPointing();
    const std::string& pointing() const { return m_pointing; } ///< empty: nothing is looked for
    const std::vector<PointableAngle>& pointable() const { return m_pointable; }
    std::optional<std::size_t> pointsAt() const { return m_pointsAt; } ///< under the pointer, or by keys
    void pointAt(std::optional<std::size_t> index);
    void takePointed(); ///< the one that is pointed at; the looking is over
    /// What was taken for it; empty: nothing, or the sheet has it no more.
    const PointableAngle* pointed(const std::string& name) const;
    void forgetPointed(const std::string& name);

    /// Typed values win over drawn ones. What can't be read is kept as faults(), by name, and nothing is
    /// marked.
    void mark();
    const std::optional<Marking>& marking() const { return m_marking; }
    int timesMarked() const { return m_timesMarked; } ///< to tell a new marking from another look at one
    const std::map<std::string, QString>& faults() const { return m_faults; }
    /// The sketch's file says how many points each value is worth.
    bool hasScheme() const { return m_hasScheme; }
    /// Or there is more than one value to have a point for.
    bool tellsPoints() const;
    double pointsToHave() const { return m_marker ? m_marker->of() : 0; }

    void showAnswer(bool on);
    bool isAnswerShown() const { return m_answerShown; }
    /// The construction that gives the number of the likeliest slip, on the sheet.
    void showSlip(bool on);
    bool isSlipShown() const { return m_slipShown; }
    bool canShowSlip() const;
    std::vector<AttemptStroke> slipDrawing() const;   ///< empty unless shown
    std::vector<AttemptStroke> answerDrawing() const; ///< the same, of all answers

signals:
    void beginning();   ///< the answer is about to be withheld
    void modeChanged(); ///< begun, or ended and the answer told again
    void asideChanged();
    void fieldsChanged(); ///< other quantities
    void drawnChanged();
    void pointingChanged(); ///< begun, over, or at another angle
    void marked();          ///< marking() and faults() are new or gone, or more is shown of them

private:
    QString whyNotNow() const; ///< of the sketch as it stands, whatever the marker was made of
    void sketchChanged();
    void sketchReplaced();
    void renew();
    void clearMarks();
    std::optional<Attempt> readAttempt();
    std::string valueOf(const std::string& name) const;
    void findHalves();
    void addDrawn(Attempt& attempt) const;
    void addPointed(Attempt& attempt) const;
    void renewPointed();

    SketchDocument& m_document;
    std::unique_ptr<Marker> m_marker; ///< of the sketch as it stood when no hand moved it
    bool m_isOn = false, m_standsAside = false, m_answerShown = false, m_slipShown = false,
         m_hasScheme = false;
    int m_timesMarked = 0;
    bool m_wantsBoth = false, m_isSigned = false; ///< by the sketch's file
    std::vector<std::string> m_added;
    std::map<std::string, std::array<QString, 2>> m_typed;
    std::map<std::string, QString> m_faults;
    std::map<VectorId, Eigen::Vector2d> m_drawn;
    std::map<std::string, PointableAngle> m_pointed;
    std::string m_pointing;
    std::vector<PointableAngle> m_pointable;
    std::optional<std::size_t> m_pointsAt;
    std::optional<Marking> m_marking;
};

} // namespace tailpoint
