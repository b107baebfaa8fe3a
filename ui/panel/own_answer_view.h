// SPDX-License-Identifier: MIT
// In Find, where the answer would stand: a field for every quantity that is asked, and for values on the way;
// what was marked stands beside and under them. No verdict moves a field: their room is kept.
#pragma once

#include "ui/marking/own_answer.h"
#include "ui/panel/marked_text.h"
#include "ui/style/theme.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tailpoint {

class LinkButton;
class OwnAnswerRow;
class SketchDocument;
class SpokenLine;

class OwnAnswerView : public QWidget {
    Q_OBJECT
public:
    OwnAnswerView(SketchDocument& document, OwnAnswer& answer, QWidget* parent = nullptr);
    OwnAnswer& answer() const { return m_answer; }
    void setTheme(const Theme& theme);
    /// Puts the keyboard into the first field.
    void takeFocus();
    /// What Tab takes one after another: the fields, then the button that marks.
    QList<QWidget*> tabOrder() const;

signals:
    void tabOrderChanged();

private:
    void build();
    void makeRows();
    void addRow(const Answerable& of);
    void showDrawn();
    void showMarks();
    void showFindings();
    QString ownPoints(const MarkedQuantity& quantity) const;
    void showPointing();
    QString wordsFor(const PointableAngle& angle) const;
    QString wordsOfVerdict(const MarkedQuantity& quantity) const;
    void tell();
    void showNote();
    bool isHalf(const std::string& name) const;
    Prose withSymbols(const QString& fault) const;
    QString printed(const std::string& name) const; ///< a quantity's symbol
    void openMenu();

    SketchDocument& m_document;
    OwnAnswer& m_answer;
    QList<OwnAnswerRow*> m_rows;
    std::string m_looking; ///< for which angle
    QVBoxLayout* m_fields;
    QLabel* m_note; ///< what the form of the answer is
    LinkButton *m_add, *m_forget, *m_show, *m_slip;
    QPushButton* m_mark;
    SpokenLine* m_summary;
    QLabel* m_points;
    MarkedText* m_findings;
};

} // namespace tailpoint
