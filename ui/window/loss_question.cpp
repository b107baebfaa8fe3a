// SPDX-License-Identifier: MIT
#include "ui/window/loss_question.h"

#include <QPushButton>

namespace tailpoint {

LossQuestion::LossQuestion(QWidget* parent, const char* name, const QString& title, const QString& text)
    : QMessageBox(NoIcon, title, text, NoButton, parent) {
    setObjectName(QLatin1String(name));
    setTextFormat(Qt::PlainText); // names of files are no markup
}

QPushButton* LossQuestion::add(const QString& title, ButtonRole role, const char* name) {
    QPushButton* button = addButton(title, role);
    button->setObjectName(QLatin1String(name));
    // The style's least width would be taken for the whole one where the text above is short.
    const int words = fontMetrics().size(Qt::TextSingleLine | Qt::TextShowMnemonic, title).width();
    button->setStyleSheet(QStringLiteral("min-width: %1px").arg(words + 2));
    return button;
}

QAbstractButton* LossQuestion::ask(QPushButton* safe) {
    QPushButton* cancel = addButton(Cancel);
    cancel->setIcon({});
    setDefaultButton(safe != nullptr ? safe : cancel);
    setEscapeButton(cancel);
    exec();
    return clickedButton() == cancel ? nullptr : clickedButton();
}

} // namespace tailpoint
