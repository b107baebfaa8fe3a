// SPDX-License-Identifier: MIT
// The table of slips, in the order in which equals stand: its entries are in the *_entries.cpp beside the
// patterns. How common a slip is, is a prior (common practice, no source, but for those that are among the
// four most frequent in 678 written examinations: Wallace, Jones, Lin 2024, arXiv 2311.16811); the tally of
// marked classes replaces it.
#include "core/mark/slips.h"

#include <iterator>

namespace tailpoint::marking {

const std::vector<Slip>& catalogue() {
    static const std::vector<Slip> all = [] {
        std::vector<Slip> table;
        for (auto entries : {entries::answerForms, entries::readings, entries::triangles, entries::components,
                             entries::shortCuts}) {
            std::vector<Slip> part = entries();
            std::move(part.begin(), part.end(), std::back_inserter(table));
        }
        return table;
    }();
    return all;
}

} // namespace tailpoint::marking

namespace tailpoint {

std::vector<SlipEntry> slipEntries() {
    std::vector<SlipEntry> all;
    for (const marking::Slip& slip : marking::catalogue())
        all.push_back({slip.id, slip.place, slip.common});
    return all;
}

std::string slipName(std::string_view id, const Sentences* sentences) {
    for (const marking::Slip& slip : marking::catalogue())
        if (slip.id == id)
            return Voice(sentences).text(slip.name);
    return std::string(id);
}

} // namespace tailpoint
