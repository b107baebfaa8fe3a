// SPDX-License-Identifier: MIT
// A small field over a label of the sheet. What isn't taken keeps its text and says why beside it; of a
// number that reads two ways a click or a key takes the one or the other.
#pragma once

#include "ui/document/given_edits.h"
#include "ui/style/theme.h"

#include <QLabel>
#include <QLineEdit>
#include <functional>
#include <optional>

namespace tailpoint {

class LabelEditor : public QLineEdit {
    Q_OBJECT
public:
    /// Tries to take the text; the answer says why not, and is empty when it was taken.
    using Take = std::function<std::optional<Refused>(const QString&)>;

    /// Hidden until opened; lives in `sheet`.
    explicit LabelEditor(QWidget* sheet);

    /// `what` names the field for assistive technology.
    void open(const QRectF& over, const QString& text, const QString& what, const Theme& theme, Take take);
    bool isOpen() const { return m_open; }
    /// The label is elsewhere: the field goes along, with what is typed in it. Nothing while it is closed.
    void follow(const QRectF& over);
    /// Closes without taking anything.
    void leave();
    QString complaint() const { return m_note->isHidden() ? QString() : m_complaint; }

signals:
    void closed();
    void complained(const QString& why); ///< what was typed is not taken

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    bool commit();
    void close();
    void complain(const Refused& why);
    void takeReading(qsizetype which);
    void place(const QRectF& over);
    void placeNote();
    void widen();

    QLabel* m_note;
    Take m_take;
    QString m_first, m_complaint;
    QStringList m_readings; ///< of the text that was not taken
    bool m_open = false;
};

} // namespace tailpoint
