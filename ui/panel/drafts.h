// SPDX-License-Identifier: MIT
// Typed texts that could not be taken: kept where they were typed until they are mended or given up.
#pragma once

#include "core/sketch/sketch.h"

#include <QString>
#include <QStringList>
#include <map>
#include <optional>

namespace tailpoint {

struct Draft {
    QString text, message;
    QStringList readings{}; ///< of a number in it that reads two ways
};

/// Kept by the vector's name and the column: rows may move.
class Drafts {
public:
    const Draft* find(const std::string& vector, int column) const;
    void keep(const std::string& vector, int column, Draft draft);
    bool drop(const std::string& vector, int column); ///< true: there was one
    void clear() { m_drafts.clear(); }
    /// A draft goes when the vector that it was typed for does.
    void dropStray(const Sketch& sketch);
    /// The first that still waits, and whose it is.
    struct Waiting {
        std::string vector;
        QString message;
    };
    std::optional<Waiting> first() const;

private:
    std::map<std::pair<std::string, int>, Draft> m_drafts;
};

} // namespace tailpoint
