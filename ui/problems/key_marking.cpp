// SPDX-License-Identifier: MIT
#include "ui/problems/key_marking.h"

#include "core/quantity/text.h"
#include "core/quantity/utf8.h"
#include "ui/files/sketch_json.h"
#include "ui/marking/mark_options.h"
#include "ui/practice/problem_sheet.h"

#include <algorithm>
#include <charconv>

namespace tailpoint {

namespace {

std::string trimmed(const std::string& text) {
    return QString::fromStdString(text).trimmed().toStdString();
}

std::string_view viewOf(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

bool isAdded(const std::string& head) {
    return std::find(std::begin(kAddedColumns), std::end(kAddedColumns), head) != std::end(kAddedColumns);
}

/// "3", "0003", "Ada Byron, 3": the number behind the last comma.
std::optional<std::size_t> numberIn(const std::string& who) {
    const auto comma = who.rfind(',');
    const std::string digits = trimmed(comma == std::string::npos ? who : who.substr(comma + 1));
    std::size_t number = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    const bool isWhole = read.ec == std::errc() && read.ptr == digits.data() + digits.size();
    return isWhole && number > 0 ? std::optional(number) : std::nullopt;
}

} // namespace

std::variant<SheetKey, QString> SheetKey::open(const QString& folder) {
    SheetKey key;
    key.m_folder = folder;
    const QString table = folder + QStringLiteral("/answers.csv");
    const auto bytes = readBytes(table, QStringLiteral("key"));
    if (const auto* error = std::get_if<FileError>(&bytes))
        return table + QStringLiteral(": ") + error->line();
    CsvReader reader(viewOf(std::get<QByteArray>(bytes)));
    reader.next(); // the heads
    std::size_t index = 0;
    while (const auto row = reader.next()) {
        const std::string who = row->cells.empty() ? std::string() : trimmed(row->cells.front());
        if (!key.m_index.emplace(who, index).second)
            return QStringLiteral("%1:%2: '%3' stands twice; take the table that was made with the sheet")
                .arg(table)
                .arg(row->line)
                .arg(QString::fromStdString(oneLine(who)));
        ++index;
        if (numberIn(who) != index || who.find(',') != std::string::npos)
            key.m_hasRoster = true;
    }
    if (index == 0)
        return table + QStringLiteral(": has no rows; take the table that was made with the sheet");
    return key;
}

std::variant<const SheetKey::Question*, std::string> SheetKey::questionOf(const std::string& who) {
    if (const auto found = m_index.find(who); found != m_index.end())
        return question(found->second);
    const auto number = m_hasRoster ? std::nullopt : numberIn(who);
    if (number && *number <= m_index.size())
        return question(*number - 1);
    return '\'' + oneLine(who) + "' has no question in the key's answers.csv; write " +
           (m_hasRoster ? "the name as it stands there"
                        : "the number of the problem behind the name, as in \"Ada Byron, 3\"");
}

std::variant<const SheetKey::Question*, std::string> SheetKey::question(std::size_t index) {
    if (m_open == index)
        return m_question.get();
    const QString name = QString::fromStdString(sketchName(index));
    const auto fault = [&](const QString& why) { return (name + QStringLiteral(": ") + why).toStdString(); };
    const auto bytes = readBytes(m_folder + QLatin1Char('/') + name);
    if (const auto* error = std::get_if<FileError>(&bytes))
        return fault(error->line());
    auto sketch = readSketch(std::get<QByteArray>(bytes));
    if (const auto* error = std::get_if<FileError>(&sketch))
        return fault(error->line());
    const auto options = markOptionsOf(std::get<Sketch>(sketch));
    if (const auto* error = std::get_if<FileError>(&options))
        return fault(error->line());
    Marker marker(std::get<Sketch>(sketch), solve(std::get<Sketch>(sketch)), std::get<MarkOptions>(options));
    if (const auto& refusal = marker.refusal())
        return fault(QString::fromStdString(*refusal));
    m_question = std::make_unique<Question>(Question{std::get<Sketch>(std::move(sketch)), std::move(marker)});
    m_open = index;
    return m_question.get();
}

std::variant<KeyMarking, ClassFault> KeyMarking::open(std::string_view text, SheetKey& key) {
    if (firstNonUtf8(text) != std::string_view::npos)
        return ClassFault{0, "is not UTF-8; save it as CSV in UTF-8"};
    KeyMarking opened(CsvReader(text), key);
    const auto head = opened.m_reader.next();
    if (!head)
        return ClassFault{0, "is empty; the first row names the columns: who, then quantities"};
    if (!head->fault.empty())
        return ClassFault{head->line, head->fault};
    for (const std::string& cell : head->cells) {
        const std::string name = trimmed(cell);
        if (!name.empty() && std::find(opened.m_all.begin(), opened.m_all.end(), name) != opened.m_all.end())
            return ClassFault{head->line,
                              '\'' + oneLine(name) + "' stands twice; take one of the columns out"};
        opened.m_all.push_back(name);
        if (!isAdded(name))
            opened.m_columns.push_back(cell);
    }
    return opened;
}

/// The row as a table of its own: what its question asks, and what else is filled in.
MarkedRow KeyMarking::marked(const CsvRow& row, const SheetKey::Question& question) const {
    std::vector<std::string> heads{"who"}, cells{row.cells.front()};
    for (const Answerable& one : question.marker.quantities())
        if (one.asked) {
            heads.push_back(one.name);
            cells.emplace_back();
        }
    for (std::size_t i = 1; i < row.cells.size(); ++i) {
        const std::string head = i < m_all.size() ? m_all[i] : std::string();
        if (trimmed(row.cells[i]).empty() || isAdded(head))
            continue;
        const Answerable* quantity = question.marker.named(head);
        const std::string name = quantity ? quantity->name : head;
        const auto found = std::find(heads.begin() + 1, heads.end(), name);
        if (found == heads.end()) {
            heads.push_back(name);
            cells.push_back(row.cells[i]);
        } else {
            cells[static_cast<std::size_t>(found - heads.begin())] = row.cells[i];
        }
    }
    const std::string table = csvLine(heads, {}) + csvLine(cells, {});
    auto opened = ClassMarking::open(table, question.marker);
    if (const auto* fault = std::get_if<ClassFault>(&opened)) {
        MarkedRow unread;
        unread.fault = fault->message;
        unread.of = question.marker.of();
        return unread;
    }
    return std::get<ClassMarking>(opened).next().value_or(MarkedRow());
}

std::optional<MarkedRow> KeyMarking::next() {
    auto row = m_reader.next();
    if (!row)
        return std::nullopt;
    row->cells.resize(std::max<std::size_t>(1, row->cells.size()));
    const std::string who = trimmed(row->cells.front());
    MarkedRow out;
    out.fault = row->fault;
    m_sketch = nullptr;
    if (out.fault.empty()) {
        const auto question = m_key->questionOf(who);
        if (const auto* fault = std::get_if<std::string>(&question)) {
            out.fault = *fault;
        } else {
            const SheetKey::Question& own = *std::get<const SheetKey::Question*>(question);
            m_sketch = &own.sketch;
            out = marked(*row, own);
        }
    }
    out.line = row->line;
    out.who = who;
    out.cells.clear();
    for (std::size_t i = 0; i < m_all.size(); ++i)
        if (!isAdded(m_all[i]))
            out.cells.push_back(i < row->cells.size() ? row->cells[i] : std::string());
    out.extra.clear();
    if (row->cells.size() > m_all.size())
        out.extra.assign(row->cells.begin() + static_cast<std::ptrdiff_t>(m_all.size()), row->cells.end());
    return out;
}

} // namespace tailpoint
