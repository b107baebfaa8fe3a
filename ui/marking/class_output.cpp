// SPDX-License-Identifier: MIT
#include "ui/marking/class_output.h"

#include "core/quantity/decimals.h"
#include "core/quantity/text.h"

#include <algorithm>
#include <utility>

namespace tailpoint {

void SlipTally::add(const MarkedRow& row) {
    const Finding* slip = row.firstSlip();
    if (slip == nullptr)
        return;
    auto at = std::find_if(m_entries.begin(), m_entries.end(),
                           [&](const Entry& one) { return one.id == slip->id; });
    if (at == m_entries.end())
        at = m_entries.insert(at, Entry{slip->id, 0, {}});
    ++at->count;
    if (m_keepsNames)
        at->who.push_back(row.who);
}

std::vector<SlipTally::Entry> SlipTally::entries() const {
    std::vector<Entry> sorted = m_entries;
    std::sort(sorted.begin(), sorted.end(), [](const Entry& a, const Entry& b) {
        return a.count != b.count ? a.count > b.count : a.id < b.id;
    });
    return sorted;
}

std::string pointsText(double points, char decimalMark) {
    std::string text = shortest(points);
    std::replace(text.begin(), text.end(), '.', decimalMark);
    return text;
}

namespace {

class ClassText final : public ClassOutput {
public:
    std::string row(const MarkedRow& row) override {
        m_tally.add(row);
        std::string out = (row.who.empty() ? "line " + std::to_string(row.line) : oneLine(row.who)) + ": ";
        out += row.marking ? markedText(*row.marking) : "unread: " + row.faults() + '\n';
        if (row.marking && !row.faults().empty())
            out += "  unread: " + row.faults() + '\n';
        if (row.own)
            out += "  override: " + pointsText(row.own->points) + " of " + pointsText(row.of) +
                   (row.own->remark.empty() ? "" : ": " + oneLine(row.own->remark, 400)) + '\n';
        return out + '\n';
    }
    std::string end() override {
        const auto entries = m_tally.entries();
        std::string out = entries.empty() ? "" : "Slips named first:\n";
        for (const SlipTally::Entry& entry : entries)
            out += "  " + std::to_string(entry.count) + "  " + entry.id + '\n';
        return out + (m_caution.empty() ? std::string() : (out.empty() ? "" : "\n") + m_caution + '\n');
    }

private:
    /// The caution stands once, at the end.
    std::string markedText(Marking marking) {
        if (!marking.caution.empty())
            m_caution = std::exchange(marking.caution, {});
        return toText(marking);
    }

    SlipTally m_tally{false};
    std::string m_caution;
};

} // namespace

std::unique_ptr<ClassOutput> classText() {
    return std::make_unique<ClassText>();
}

} // namespace tailpoint
