// SPDX-License-Identifier: MIT
// What is made of a marked class, row by row.
#pragma once

#include "ui/marking/class_marking.h"

namespace tailpoint {

/// How often each slip is the one that is named first.
class SlipTally {
public:
    struct Entry {
        std::string id;
        std::size_t count = 0;
        std::vector<std::string> who;
    };
    explicit SlipTally(bool keepsNames) : m_keepsNames(keepsNames) {}
    void add(const MarkedRow& row);
    /// The most frequent first, then by id.
    std::vector<Entry> entries() const;

private:
    bool m_keepsNames;
    std::vector<Entry> m_entries;
};

/// An output of a class, as it is made: what begins it, each row in its turn, what ends it.
class ClassOutput {
public:
    virtual ~ClassOutput() = default;
    virtual std::string begin() { return {}; }
    virtual std::string row(const MarkedRow& row) = 0;
    virtual std::string end() { return {}; }
};

/// "2", "0.5": points as they are written.
std::string pointsText(double points, char decimalMark = '.');

/// Plain text for people: each student, then the tally.
std::unique_ptr<ClassOutput> classText();

} // namespace tailpoint
