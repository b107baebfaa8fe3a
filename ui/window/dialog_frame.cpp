// SPDX-License-Identifier: MIT
#include "ui/window/dialog_frame.h"

#include <QAbstractButton>
#include <QDialog>
#include <QDialogButtonBox>
#include <QVBoxLayout>

namespace tailpoint {

void frameDialog(QDialog& dialog, const QList<QWidget*>& parts, QDialogButtonBox* buttons) {
    for (QAbstractButton* button : buttons->buttons())
        button->setIcon({});
    auto* column = new QVBoxLayout(&dialog);
    column->setContentsMargins(20, 18, 20, 16);
    column->setSpacing(10);
    for (QWidget* part : parts)
        column->addWidget(part, part == parts.first() ? 1 : 0);
    column->addWidget(buttons);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
}

} // namespace tailpoint
