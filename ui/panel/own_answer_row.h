// One quantity of a learner's own answer.
#pragma once

#include "core/mark/mark.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QToolButton;

namespace tailpoint {

class Things;

/// "Magnitude of R in N", "Direction of R in degrees", "beta in degrees".
QString spokenName(const Answerable& of, const Sketch& sketch, const Things& things);

/// One quantity: symbol, field, unit, and beside them two lines for the verdict and what is right.
class OwnAnswerRow : public QWidget {
    Q_OBJECT
public:
    OwnAnswerRow(const Answerable& of, const Sketch& sketch, const Things& things);
    QLineEdit* field() const { return m_field; }
    const Answerable& of() const { return m_of; }
    int symbolWidth() const;
    void setSymbolWidth(int width);
    void setDrawn(const QString& reading);
    /// Plain text; `right`: what is right, once that is told.
    void setVerdict(const QString& words, const QString& right, bool isFault);
    QString verdict() const;

signals:
    void typed(const QString& text);
    void entered();
    void removed();

private:
    void describe();

    Answerable m_of;
    QLabel *m_symbol, *m_unit, *m_verdict;
    QLineEdit* m_field;
    QToolButton* m_remove = nullptr;
};

} // namespace tailpoint
