// SPDX-License-Identifier: MIT
// The pages of students: a folder, and a name for each, known before anything is written.
#pragma once

#include "app/gui/mark_class.h"

#include <string>
#include <utility>
#include <vector>

namespace tailpoint {

class FeedbackPages {
public:
    /// Who stands in a row, and its line; in the rows' order.
    using People = std::vector<std::pair<std::string, std::size_t>>;

    /// Makes the folder where it isn't there. A fault, or empty. `folder` null: no pages are wanted.
    QString prepare(const QString& folder, const People& people, const QStringList& otherOutputs,
                    const QList<Input>& inputs);
    bool isWanted() const { return !m_folder.isNull(); }
    /// The next row's page; the exit status.
    int write(const std::string& page);
    void skip() { ++m_next; } ///< the next row has none

private:
    QString m_folder;
    QStringList m_paths;
    qsizetype m_next = 0;
};

} // namespace tailpoint
