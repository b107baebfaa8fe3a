// SPDX-License-Identifier: MIT
// Find: the question as a sentence, the answer as the largest thing in the panel, and what to do where there
// is none.
#pragma once

#include "ui/document/given_edits.h"
#include "ui/panel/panel_parts.h"

#include <functional>

class QVBoxLayout;

namespace tailpoint {

enum class UnitOf;
class LimitsView;
class SketchDocument;

class FindView : public QWidget {
    Q_OBJECT
public:
    explicit FindView(SketchDocument& document, QWidget* parent = nullptr);
    void refresh();

signals:
    void cellWanted(int vector, tailpoint::Entry cell); ///< a value should be typed there
    void unitAsked(tailpoint::UnitOf of, QPoint at);    ///< the answer's unit was clicked; `at` on the screen

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// A mend that one click makes.
    struct Mend {
        Sentence title;
        std::function<void()> make;
    };
    QList<Mend> mends();
    Words symbolOf(int vector) const;
    void addFixes(QList<Mend>& list);
    void addFrees(QList<Mend>& list) const;
    void addTurns(QList<Mend>& list) const;
    void showOther();
    void showMends(const QList<Mend>& list);
    void apply(const Sketch& after, const QString& step) const;

    SketchDocument& m_document;
    ValueLabel *m_sentence, *m_message;
    QLabel *m_answerName, *m_otherName; ///< of two answers
    SteadyLines *m_answer, *m_detail, *m_otherAnswer;
    LimitsView* m_limits;
    LinkButton* m_other;
    QVBoxLayout* m_mends;
    QList<LinkButton*> m_buttons; ///< kept and filled anew
    QList<std::function<void()>> m_made;
};

} // namespace tailpoint
