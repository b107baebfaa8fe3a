// SPDX-License-Identifier: MIT
// The question in words, to be written or changed: what stands above the sheet, and in handouts and sheets in
// place of what is given and asked. One undo step.
#pragma once

#include "ui/window/window_parts.h"

#include <QDialog>

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace tailpoint {

class WordsDialog : public QDialog {
    Q_OBJECT
public:
    explicit WordsDialog(const WindowParts& parts);
    /// Opens on the words that the sketch has now.
    void ask();

private:
    void build();
    void refresh();
    void take();
    QString words() const;
    std::string fromValues() const;

    WindowParts m_parts;
    QLabel* m_note;
    QPlainTextEdit* m_words;
    QPushButton *m_fromValues, *m_take;
};

/// Characters; beyond it the words have no room beside a figure.
inline constexpr int kLongestWords = 2000;

} // namespace tailpoint
