// SPDX-License-Identifier: MIT
// Names of files made from names of people.
#pragma once

#include <QHash>
#include <QString>
#include <string_view>

namespace tailpoint {

/// Gives each person a name of a file that any file system takes and nobody else's page has: letters of every
/// script and digits, all else a hyphen, at most kLongestStem of UTF-8, and where two would be one, however a
/// file system folds letters, a number behind the later.
class FeedbackNames {
public:
    static constexpr qsizetype kLongestStem = 96; ///< bytes
    /// "anna-müller.html"; without a name by the line of the row.
    QString next(std::string_view who, std::size_t line);

private:
    QHash<QString, int> m_taken; ///< folded, with the last number put behind it
};

} // namespace tailpoint
