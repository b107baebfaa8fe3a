// SPDX-License-Identifier: MIT
// panel/: Given, Find, Solution, Check beside the sheet. Reads SketchDocument::result() once a frame at most
// and keeps no number of it; what is typed becomes an edit of the document.
#pragma once

#include "core/construct/figure_part.h"
#include "core/explain/explain.h"
#include "ui/document/given_edits.h"
#include "ui/style/theme.h"

#include <QElapsedTimer>
#include <QScrollArea>
#include <QTimer>

class QLabel;
class QVBoxLayout;

namespace tailpoint {

class AnglesModel;
class FindView;
class GivenView;
class OwnAnswer;
class OwnAnswerView;
class PanelTable;
class SectionHead;
class SketchDocument;
class SolutionView;
class SteadyLines;
class ValueLabel;
class VectorsModel;
enum class UnitOf;

class Panel : public QScrollArea {
    Q_OBJECT
public:
    /// With `ownAnswer` a learner's own answer has its place in Find while it is under way.
    explicit Panel(SketchDocument& document, OwnAnswer* ownAnswer = nullptr, QWidget* parent = nullptr);
    ~Panel() override;

    void setTheme(ThemeName name);
    /// Follows the canvas: an index into forces, kSumIndex, or kNoVector.
    void select(int vector);
    /// Opens the field of a cell, with the keyboard in it.
    void edit(int vector, Entry cell);
    void addForce();
    void paste(const QString& lines);
    /// One division of the sheet: for the solution's check by scale, and for the size of a first force.
    void setDivision(double forceUnits);
    /// Puts the keyboard into the table of given values, or while a learner's own answer is under way into
    /// its first field.
    void takeFocus();
    /// Takes what is typed in an open field, as before saving or closing.
    void finishTyping();
    /// Shows now what the next frame would: before the sheet is painted, so that both are of one result.
    void catchUp();

    /// Names of the sections that are folded ("values", "check", "solution").
    QStringList folded() const;
    void setFolded(const QStringList& names);

    const ExplainOptions& explainOptions() const; ///< of the worked solution
    /// What was found, in words to be heard: a sentence each of the answer, of what is to be said of it, and
    /// of each limit, and the caution; of a withheld answer nothing.
    QStringList resultTold() const;
    bool handRounding() const;
    void setHandRounding(bool on);
    Method method() const; ///< of the worked solution
    void setMethod(Method method);
    bool byParallelograms() const;
    void setByParallelograms(bool on); ///< more than two forces: two at a time
    void setUncertainty(const std::optional<tolerance::UncertaintyAsked>& asked); ///< empty: not told
    /// The pointer stands on this part of the sheet: the step that speaks of it is lit. It is scrolled to
    /// only if somebody is reading the solution, and once the pointer rests.
    void lightPart(const std::optional<FigurePart>& part);

    OwnAnswerView* ownAnswer() const { return m_own; } ///< null where there is none
    void addUnderFind(QWidget* part);                  ///< under the learner's own answer

    QSize sizeHint() const override;

signals:
    void givenTold(const QString& line); ///< of what is typed: what was understood, or why not
    void foldingChanged();
    void unitAsked(tailpoint::UnitOf of, QPoint at); ///< a unit beside a value was clicked
    void selected(int vector);                       ///< a row was chosen; kNoVector: none or several
    void pointedAt(int vector);                      ///< the pointer stands on its row; kNoVector: on none
    /// What the step under the pointer speaks of; empty: no step.
    void partsPointed(const std::vector<tailpoint::FigurePart>& parts);

private:
    void build();
    enum class Shown { always, answered };
    /// Without a name it can't be folded.
    void addSection(const QString& title, QLabel* aside, QList<QWidget*> contents, const QString& name = {},
                    Shown shown = Shown::always);
    void showSections();
    void showCell();
    void connectParts();
    void documentChanged();
    void refresh();
    void refreshSolution();
    void showLitStep();
    void showAttended(const QRect& place);
    void ownAnswerChanged();
    void showHidden();

    SketchDocument& m_document;
    GivenView* m_given;
    FindView* m_find;
    OwnAnswerView* m_own;
    QLabel *m_reference, *m_carried, *m_hidden;
    VectorsModel* m_vectors;
    AnglesModel* m_angles;
    PanelTable *m_vectorTable, *m_angleTable;
    SteadyLines* m_check;
    ValueLabel* m_caution;
    SolutionView* m_steps;
    struct Section {
        QString name;
        Shown shown = Shown::always;
        QWidget *rule = nullptr, *head = nullptr, *body = nullptr;
        SectionHead* fold = nullptr;
    };
    QList<Section> m_sections;
    QVBoxLayout* m_column;
    QTimer m_frame, m_rest{this}; ///< m_rest: the pointer rests on a part of the sheet
    QElapsedTimer m_sinceRefresh;
};

} // namespace tailpoint
