// SPDX-License-Identifier: MIT
// What a program that ended left in its home: copies of unsaved work, and locks.
#pragma once

#include <QDir>
#include <QList>
#include <QStringList>

namespace whole {

QDir recoveryOf(const QString& home);
QList<double> copiesIn(const QString& home); ///< the first magnitude of each
QStringList locksIn(const QDir& folder);

} // namespace whole
