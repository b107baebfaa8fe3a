// SPDX-License-Identifier: MIT
#include "ui/window/recover_dialog.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace tailpoint {

namespace {

/// "P, Q, ...": what tells one sketch without a title from another.
QString forcesOf(const Sketch& sketch) {
    constexpr std::size_t most = 4;
    QStringList names;
    for (std::size_t i = 0; i < std::min(most, sketch.forces.size()); ++i)
        names << QString::fromStdString(sketch.forces[i].name);
    return names.join(QStringLiteral(", ")) +
           (sketch.forces.size() > most ? QStringLiteral(", …") : QString());
}

} // namespace

/// Its title and, in brackets, its file.
QString nameOf(const Recovery& recovery) {
    constexpr qsizetype longest = 60;
    QString title = QString::fromStdString(recovery.sketch.title);
    if (title.size() > longest)
        title = title.left(longest) + QChar(0x2026);
    const QString file = QFileInfo(recovery.path).fileName();
    if (title.isEmpty() && file.isEmpty())
        return recovery.sketch.forces.empty()
                   ? RecoverDialog::tr("a sketch without a title")
                   : RecoverDialog::tr("a sketch without a title (%1)").arg(forcesOf(recovery.sketch));
    if (title.isEmpty() || file.isEmpty())
        return title + file;
    return RecoverDialog::tr("%1 (%2)").arg(title, file);
}

QString timeWords(const QDateTime& when) {
    const QDateTime local = when.toLocalTime();
    return local.date() == QDate::currentDate() ? QLocale().toString(local.time(), QLocale::ShortFormat)
                                                : QLocale().toString(local, QLocale::ShortFormat);
}

QString comparedWithFile(const Recovery& recovery) {
    if (recovery.path.isEmpty())
        return {};
    const QDateTime written = QFileInfo(recovery.path).lastModified();
    if (!written.isValid())
        return RecoverDialog::tr(" The file itself is not there any more.");
    return written > recovery.saved
               ? RecoverDialog::tr(" The file itself is newer: %1.").arg(timeWords(written))
               : RecoverDialog::tr(" It is newer than the file, which is of %1.").arg(timeWords(written));
}

namespace {

constexpr QSize kLeast{520, 260}; // pixels

QString rowWords(const Recovery& recovery) {
    const QString what = RecoverDialog::tr("%1, %2.").arg(nameOf(recovery), timeWords(recovery.saved)) +
                         comparedWithFile(recovery);
    return recovery.holder.isEmpty()
               ? what
               : what + RecoverDialog::tr(" It may be open in another window: %1.").arg(recovery.holder);
}

} // namespace

RecoverDialog::RecoverDialog(const QList<Recovery>& found, QWidget* parent)
    : QDialog(parent), m_list(new QListWidget) {
    setObjectName(QStringLiteral("recoverDialog"));
    setWindowTitle(tr("Recover"));
    auto* column = new QVBoxLayout(this);
    auto* label = new QLabel(found.isEmpty() ? tr("Nothing was left unsaved.")
                                             : tr("&Work that was not saved, the latest first:"));
    label->setBuddy(m_list);
    column->addWidget(label);
    m_list->setObjectName(QStringLiteral("recoverList"));
    m_list->setAccessibleName(tr("Work that was not saved"));
    m_list->setWordWrap(true);
    for (const Recovery& recovery : found)
        m_list->addItem(rowWords(recovery));
    m_list->setCurrentRow(0);
    m_list->setVisible(!found.isEmpty());
    column->addWidget(m_list, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->button(QDialogButtonBox::Close)->setIcon({});
    auto* back = buttons->addButton(tr("&Bring it back"), QDialogButtonBox::ActionRole);
    auto* away = buttons->addButton(tr("Throw it &away"), QDialogButtonBox::ActionRole);
    back->setObjectName(QStringLiteral("recoverBringBack"));
    away->setObjectName(QStringLiteral("recoverThrowAway"));
    back->setDefault(true);
    for (QPushButton* button : {back, away})
        button->setVisible(!found.isEmpty());
    connect(back, &QPushButton::clicked, this, [this] { finish(Answer::bringBack); });
    connect(away, &QPushButton::clicked, this, [this] { finish(Answer::throwAway); });
    connect(m_list, &QListWidget::itemActivated, this, [this] { finish(Answer::bringBack); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    if (!found.isEmpty())
        resize(kLeast);
}

void RecoverDialog::finish(Answer answer) {
    m_answer = answer;
    accept();
}

RecoverDialog::Answer RecoverDialog::ask() {
    return exec() == Accepted ? m_answer : Answer::nothing;
}

qsizetype RecoverDialog::row() const {
    return m_list->currentRow();
}

} // namespace tailpoint
