// SPDX-License-Identifier: MIT
// File > Recover: every sketch that a crash left, to bring back or to throw away.
#pragma once

#include "ui/document/recovery.h"

#include <QDialog>

class QListWidget;
class QPushButton;

namespace tailpoint {

QString nameOf(const Recovery& recovery); ///< title and file, or what it is drawn from
QString timeWords(const QDateTime& when); ///< local, short; of today the time alone
QString
comparedWithFile(const Recovery& recovery); ///< older or newer than its file; empty: nothing to compare

class RecoverDialog : public QDialog {
    Q_OBJECT
public:
    enum class Answer { nothing, bringBack, throwAway };
    RecoverDialog(const QList<Recovery>& found, QWidget* parent);
    Answer ask(); ///< about the one at row()
    qsizetype row() const;

private:
    void finish(Answer answer);
    QListWidget* m_list;
    Answer m_answer = Answer::nothing;
};

} // namespace tailpoint
