// SPDX-License-Identifier: MIT
// Where to save: asks for a name, completes it, and asks before anything that is there is replaced. Save as,
// Export figure and Make handout all ask through here, so that the question is about the names that are
// written, and comes once.
#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <optional>

class QWidget;

namespace tailpoint {

/// What stands behind the last point and is meant as the ending of a file: two to four letters and digits,
/// the first a letter, or our own; in small letters. Empty for "raft" and for "v1.2".
QString endingMeantBy(const QString& path);

struct SaveName {
    QString title, proposed, filter;
    QString ending;                                     ///< put on a name that has none of its own
    QStringList endings{};                              ///< that a name may have; empty: any that is meant
    std::function<QStringList(const QString&)> files{}; ///< written for that name; empty: the name itself
};

/// The name with its ending, free to be written; empty: nobody wants to save any more.
std::optional<QString> askSaveName(QWidget* parent, const SaveName& save);

/// One question for all of these files that are there already; "of the 9 files" where only some of `count`
/// are.
QString replaceQuestion(const QStringList& there, qsizetype count);

} // namespace tailpoint
