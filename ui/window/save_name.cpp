// SPDX-License-Identifier: MIT
#include "ui/window/save_name.h"

#include "ui/window/loss_question.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QPushButton>
#include <QRegularExpression>

namespace tailpoint {

namespace {

struct Asked {
    Q_DECLARE_TR_FUNCTIONS(SaveName)
};

enum class Replace { yes, otherName, no };

bool hasItsEnding(const QString& typed, const SaveName& save) {
    const QString meant = endingMeantBy(typed);
    return save.endings.isEmpty() ? !meant.isEmpty() : save.endings.contains(meant);
}

struct Completed {
    Replace answer = Replace::yes;
    QString name; ///< where the answer is yes
};

/// What stands behind a point and is no ending of ours ("v1.2", "other.txt") may be part of the name or meant
/// as another kind of file.
Completed completed(QWidget* parent, const QString& typed, const SaveName& save) {
    const QFileInfo info(typed);
    if (hasItsEnding(typed, save))
        return {Replace::yes, typed};
    const QString whole = typed + u'.' + save.ending;
    static const QRegularExpression ending(QStringLiteral("^[A-Za-z0-9]{1,5}$"));
    if (!ending.match(info.suffix()).hasMatch())
        return {Replace::yes, whole};
    LossQuestion box(
        parent, "endingQuestion", Asked::tr("Another ending"),
        Asked::tr("%1 does not end in .%2, as this kind of file does.").arg(info.fileName(), save.ending));
    auto* add = box.add(Asked::tr("&Save as %1").arg(QFileInfo(whole).fileName()), QMessageBox::AcceptRole,
                        "addEnding");
    auto* other = box.add(Asked::tr("Choose another &name"), QMessageBox::RejectRole, "chooseAnotherName");
    const QAbstractButton* answer = box.ask(add);
    return {answer == add ? Replace::yes : answer == other ? Replace::otherName : Replace::no, whole};
}

QStringList thoseThere(const QStringList& names) {
    QStringList there;
    for (const QString& name : names)
        if (QFileInfo(name).exists() && !QFileInfo(name).isDir()) // a folder is refused when it is written to
            there << name;
    return there;
}

/// "a, b … z" of many.
QString listed(const QStringList& paths) {
    QStringList names;
    for (const QString& path : paths)
        names << QFileInfo(path).fileName();
    if (names.size() <= 3)
        return names.join(QStringLiteral(", "));
    return QStringLiteral("%1, %2 \u2026 %3").arg(names[0], names[1], names.last());
}

Replace askToReplace(QWidget* parent, const QStringList& there, qsizetype count) {
    LossQuestion box(parent, "replaceQuestion", Asked::tr("Already there"), replaceQuestion(there, count));
    auto* replace = box.add(Asked::tr("&Replace"), QMessageBox::DestructiveRole, "replaceFiles");
    auto* other = box.add(Asked::tr("Choose another &name"), QMessageBox::AcceptRole, "chooseAnotherName");
    const QAbstractButton* answer = box.ask(other);
    return answer == replace ? Replace::yes : answer == other ? Replace::otherName : Replace::no;
}

/// The toolkit's own question would be about the name before its ending.
std::optional<QString> askForName(QWidget* parent, const SaveName& save, const QString& proposed) {
    const QFileInfo info(proposed);
    QFileDialog dialog(parent, save.title, info.isAbsolute() ? info.absolutePath() : QString(), save.filter);
    dialog.setObjectName(QStringLiteral("saveName"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setFileMode(QFileDialog::AnyFile);
    dialog.setOption(QFileDialog::DontConfirmOverwrite);
    dialog.selectFile(info.fileName());
    std::optional<QString>
        taken; // as it was accepted: the list may choose another file when it loses the keys
    QObject::connect(&dialog, &QFileDialog::fileSelected, [&](const QString& file) { taken = file; });
    return dialog.exec() == QDialog::Accepted ? taken : std::nullopt;
}

} // namespace

QString endingMeantBy(const QString& path) {
    static const QRegularExpression ending(QStringLiteral("^([a-z][a-z0-9]{1,3}|tailpoint)$"));
    const QString last = QFileInfo(path).suffix().toLower();
    return ending.match(last).hasMatch() ? last : QString();
}

QString replaceQuestion(const QStringList& there, qsizetype count) {
    if (there.size() == 1)
        return Asked::tr("%1 is there already. Replace it?").arg(listed(there));
    const QString how = there.size() == count
                            ? Asked::tr("%1 files are").arg(there.size())
                            : Asked::tr("%1 of the %2 files are").arg(there.size()).arg(count);
    return Asked::tr("%1 there already: %2. Replace them?").arg(how, listed(there));
}

std::optional<QString> askSaveName(QWidget* parent, const SaveName& save) {
    QString proposed = save.proposed;
    for (;;) {
        const auto typed = askForName(parent, save, proposed);
        if (!typed)
            return std::nullopt;
        const Completed whole = completed(parent, *typed, save);
        if (whole.answer == Replace::no)
            return std::nullopt;
        proposed = *typed;
        if (whole.answer == Replace::otherName)
            continue;
        const QString& name = whole.name;
        const QStringList files = save.files ? save.files(name) : QStringList{name};
        const QStringList there = thoseThere(files);
        const Replace answer = there.isEmpty() ? Replace::yes : askToReplace(parent, there, files.size());
        if (answer != Replace::otherName)
            return answer == Replace::yes ? std::optional(name) : std::nullopt;
        proposed = name;
    }
}

} // namespace tailpoint
