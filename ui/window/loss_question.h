// SPDX-License-Identifier: MIT
// A question before something is lost: its answers are named by verbs, Return takes the safe one, Escape the
// one that does nothing.
#pragma once

#include <QMessageBox>

class QPushButton;

namespace tailpoint {

class LossQuestion : public QMessageBox {
public:
    LossQuestion(QWidget* parent, const char* name, const QString& title, const QString& text);
    QPushButton* add(const QString& title, ButtonRole role, const char* name);
    /// Asks; the answer that was pressed, null for Cancel, which is the safe one where `safe` is null.
    QAbstractButton* ask(QPushButton* safe = nullptr);
};

} // namespace tailpoint
