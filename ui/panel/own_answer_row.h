// SPDX-License-Identifier: MIT
// One quantity of a learner's own answer.
#pragma once

#include "core/mark/mark.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QToolButton;

namespace tailpoint {

class Things;

/// "Magnitude of R in N", "Direction of R in degrees", "Angle of the triangle opposite to R in degrees".
QString spokenName(const Answerable& of, const Sketch& sketch, const Things& things);

/// One quantity: symbol, field, unit, and beside them two lines for the verdict and what is right.
class OwnAnswerRow : public QWidget {
    Q_OBJECT
public:
    /// `answers`: that have a field each, 1 or 2.
    OwnAnswerRow(const Answerable& of, const Sketch& sketch, const Things& things, std::size_t answers);
    QLineEdit* field() const { return m_fields.front(); }
    const QList<QLineEdit*>& fields() const { return m_fields; }
    const Answerable& of() const { return m_of; }
    int symbolWidth() const;
    void setSymbolWidth(int width);
    /// What was drawn or pointed at in place of a typed value: shown in the empty field, and how it is read
    /// out.
    void setDrawn(const QString& reading, const QString& spoken);
    QToolButton* pointButton() const { return m_point; } ///< null where there is nothing to point at
    void setCanPoint(bool can);
    void setVerdictLines(int lines); ///< for which there is room
    /// Plain text; `right`: what is right, once that is told.
    void setVerdict(const QString& words, const QString& right, bool isFault);
    QString verdict() const;

signals:
    void typed(const QString& text, std::size_t answer);
    void entered();
    void removed();
    void pointing();

private:
    void addFields(const Sketch& sketch, const QString& spoken, std::size_t answers);
    void describe();

    Answerable m_of;
    QLabel *m_symbol, *m_unit, *m_verdict;
    QList<QLineEdit*> m_fields; ///< of the first answer, of the second
    QString m_form;             ///< of what is typed, in an empty field
    QToolButton *m_remove = nullptr, *m_point = nullptr;
    QString m_spoken; ///< of what is drawn
};

} // namespace tailpoint
