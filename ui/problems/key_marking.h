// SPDX-License-Identifier: MIT
// A class marked by a sheet's folder: each answer against the question that its student had.
#pragma once

#include "ui/marking/class_marking.h"

#include <QString>
#include <map>
#include <memory>

namespace tailpoint {

/// Reads `DIR/answers.csv` for who has which question, and the questions from `DIR/sketches` as they are
/// needed.
class SheetKey {
public:
    /// A fault is one line with the mend.
    static std::variant<SheetKey, QString> open(const QString& folder);

    struct Question {
        Sketch sketch;
        Marker marker;
    };
    /// Of who stands in the first column of answers.csv; where that counts problems and names nobody, of
    /// "Ada Byron, 3", "3" or "0003". Or why there is none. It lives until the next is asked for.
    std::variant<const Question*, std::string> questionOf(const std::string& who);

private:
    std::variant<const Question*, std::string> question(std::size_t index);

    QString m_folder;
    std::map<std::string, std::size_t> m_index; ///< by who, from 0
    bool m_hasRoster = false;
    std::optional<std::size_t> m_open;
    std::unique_ptr<Question> m_question;
};

/// A table of answers, its rows marked one by one by such a key. The first column says who, the others are
/// quantities of any of the questions; kOwnPointsColumn and kAddedColumns are as in ClassMarking.
class KeyMarking {
public:
    /// `text` and `key` outlive it.
    static std::variant<KeyMarking, ClassFault> open(std::string_view text, SheetKey& key);
    const CsvForm& form() const { return m_reader.form(); }
    /// Heads of the columns that are kept.
    const std::vector<std::string>& columns() const { return m_columns; }
    std::optional<MarkedRow> next();
    /// The question of the row that came last, until the next; nullptr: there is none for who stands there.
    const Sketch* sketch() const { return m_sketch; }

private:
    KeyMarking(CsvReader reader, SheetKey& key) : m_reader(reader), m_key(&key) {}
    MarkedRow marked(const CsvRow& row, const SheetKey::Question& question) const;

    CsvReader m_reader;
    SheetKey* m_key;
    const Sketch* m_sketch = nullptr;
    std::vector<std::string> m_all, m_columns; ///< trimmed heads of all columns; of those kept, as they stand
};

} // namespace tailpoint
