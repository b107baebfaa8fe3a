// SPDX-License-Identifier: MIT
// The frame that dialogs have in common.
#pragma once

#include <QList>

class QDialog;
class QDialogButtonBox;
class QWidget;

namespace tailpoint {

/// Lays `parts` one below the other with `buttons` under them, which get no icons; the first part takes the
/// room that is over.
void frameDialog(QDialog& dialog, const QList<QWidget*>& parts, QDialogButtonBox* buttons);

} // namespace tailpoint
