// SPDX-License-Identifier: MIT
#include "core/practice/record.h"

#include "core/mark/slip_numbers.h"
#include "core/practice/families.h"
#include "core/practice/lots.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace tailpoint {

namespace {

constexpr std::size_t kSlipsForExample = 2;

/// What was answered of one family, in their order.
std::vector<const RecordEntry*> entriesOf(const PracticeRecord& record, std::string_view family) {
    std::vector<const RecordEntry*> entries;
    for (const RecordEntry& entry : record.entries)
        if (entry.problem.family == family && entry.worked == WorkedAs::question)
            entries.push_back(&entry);
    return entries;
}

bool isRight(const RecordEntry& entry) {
    return entry.verdict == Verdict::right || entry.verdict == Verdict::rounded;
}

using Entries = std::vector<const RecordEntry*>;

/// The level's last answers: so many right in a row, in two scenes at least, without the last hint.
bool rises(const Entries& entries, int level) {
    std::set<std::string> scenes;
    int right = 0;
    for (auto at = entries.rbegin(); at != entries.rend() && right < kRightToRise; ++at) {
        const RecordEntry& entry = **at;
        if (entry.problem.level != level || !isRight(entry) || entry.lastHint)
            return false;
        scenes.insert(entry.scene);
        ++right;
    }
    return right == kRightToRise && scenes.size() >= 2;
}

/// Named at that level since the last time an answer there was right, or an example was worked.
std::size_t slipsNamedAt(const PracticeRecord& record, std::string_view family, int level) {
    std::size_t named = 0;
    for (auto at = record.entries.rbegin(); at != record.entries.rend(); ++at) {
        if (at->problem.family != family)
            continue;
        if (at->problem.level != level || at->worked != WorkedAs::question || (isRight(*at) && !at->lastHint))
            break;
        named += at->slips.empty() ? 0 : 1;
    }
    return named;
}

/// Where a slip went away: asked for again and not made.
std::optional<std::size_t> wentAwayAt(const Entries& entries, const std::string& slip) {
    std::optional<std::size_t> at;
    bool isMade = false;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const RecordEntry& entry = *entries[i];
        if (std::find(entry.slips.begin(), entry.slips.end(), slip) != entry.slips.end()) {
            isMade = true;
            at.reset();
        } else if (isMade && !at && entry.aimedAt == slip && isRight(entry) && !entry.lastHint)
            at = i;
    }
    return at;
}

std::vector<std::string> slipsEverMade(const Entries& entries) {
    std::vector<std::string> slips;
    for (const RecordEntry* entry : entries)
        for (const std::string& slip : entry->slips)
            if (std::find(slips.begin(), slips.end(), slip) == slips.end())
                slips.push_back(slip);
    return slips;
}

/// To be asked again: three questions after it went away, and once in the next sitting.
bool isDue(const Entries& entries, const std::string& slip, std::size_t gone, int sitting) {
    const auto askedSince = [&](int inSitting) {
        return std::any_of(
            entries.begin() + static_cast<std::ptrdiff_t>(gone) + 1, entries.end(),
            [&](const RecordEntry* entry) { return entry->aimedAt == slip && entry->sitting == inSitting; });
    };
    const int goneIn = entries[gone]->sitting;
    if (sitting == goneIn)
        return entries.size() - gone >= kAskedAgainAfter && !askedSince(sitting);
    const bool isNextSitting = std::none_of(entries.begin(), entries.end(), [&](const RecordEntry* entry) {
        return entry->sitting > goneIn && entry->sitting < sitting;
    });
    return isNextSitting && !askedSince(sitting);
}

std::optional<std::string> dueSlip(const Entries& entries, int sitting) {
    for (const std::string& slip : slipsEverMade(entries))
        if (const auto gone = wentAwayAt(entries, slip); gone && isDue(entries, slip, *gone, sitting))
            return slip;
    return std::nullopt;
}

/// Greatest change among what is asked, as a share of the magnitude or of a right angle, at most 1.
double changeBy(const SlipTable& table, const SlipNumbers& slip) {
    double most = 0;
    for (std::size_t cell = 0; cell < table.cells(); ++cell) {
        const auto value = slip.numbers.values[cell], right = table.right.values[cell];
        if (!value || !right)
            continue;
        const bool isAngle = table.asked[cell / table.answers].dimension == Dimension::angle;
        const double whole = isAngle ? table.turn / 4 : std::abs(*right);
        most = std::max(most, whole == 0 ? 1 : table.apart(cell, *value, *right) / whole);
    }
    return std::min(most, 1.0);
}

/// The problem that a slip above all changes, of some.
std::optional<ProblemId> aimedProblem(ProblemId id, std::string_view slip, std::uint32_t seed) {
    std::optional<ProblemId> best;
    double most = 0;
    for (std::size_t i = 0; i < kAimTrials; ++i) {
        id.number = problemNumber(seed, i);
        const auto one = problem(id);
        const double here = one ? aim(*one, slip) : 0;
        if (here > most) {
            most = here;
            best = id;
        }
    }
    return best;
}

std::uint32_t mixed(std::uint32_t seed, std::size_t count) {
    return practising::Lots(std::uint64_t{seed}, std::uint64_t{count}).below(kProblemNumbers);
}

} // namespace

RecordEntry recordEntry(const Problem& problem, const Marking& marking, bool lastHint, int sitting,
                        std::string aimedAt) {
    RecordEntry entry;
    entry.problem = problem.id;
    entry.scene = problem.scene;
    entry.sitting = sitting;
    entry.verdict = marking.verdict;
    entry.lastHint = lastHint;
    entry.aimedAt = std::move(aimedAt);
    if (!marking.isRight() && !marking.slips.empty() && marking.slips.front().isStrong)
        entry.slips.push_back(marking.slips.front().id);
    return entry;
}

RecordEntry exampleEntry(const Problem& problem, WorkedAs worked, bool wentWell, int sitting, int blank) {
    RecordEntry entry;
    entry.problem = problem.id;
    entry.scene = problem.scene;
    entry.sitting = sitting;
    entry.verdict = wentWell ? Verdict::right : Verdict::other;
    entry.lastHint = true;
    entry.worked = worked;
    entry.blank = blank;
    return entry;
}

int nextBlank(const PracticeRecord& record, const ProblemId& of) {
    for (auto at = record.entries.rbegin(); at != record.entries.rend(); ++at)
        if (at->problem.family == of.family && at->problem.level == of.level && at->worked == WorkedAs::faded)
            return std::max(1, isRight(*at) ? at->blank + 1 : at->blank);
    return 1;
}

std::string_view nameOf(WorkedAs worked) {
    return worked == WorkedAs::faded ? "faded" : worked == WorkedAs::flawed ? "flawed" : "question";
}

std::string_view nameOf(NextReason reason) {
    switch (reason) {
    case NextReason::plain:
        return "plain";
    case NextReason::afterSlip:
        return "after-slip";
    case NextReason::askedAgain:
        return "asked-again";
    case NextReason::higher:
        break;
    }
    return "higher";
}

double aim(const Problem& problem, std::string_view slip) {
    const FamilyEntry* family = familyNamed(problem.id.family);
    if (family == nullptr)
        return 0;
    std::vector<std::string_view> ids = family->levels[static_cast<std::size_t>(problem.id.level - 1)].slips;
    if (std::find(ids.begin(), ids.end(), slip) == ids.end())
        ids.push_back(slip);
    const auto table = slipTable(problem.sketch, solve(problem.sketch), ids);
    if (!table)
        return 0;
    double own = 0, next = 0;
    for (const SlipNumbers& one : table->slips) {
        if (!one.changes)
            continue;
        double& most = one.id == slip ? own : next;
        most = std::max(most, changeBy(*table, one));
        for (const SlipNumbers& other : table->slips)
            if (one.id == slip && other.id != slip && other.changes &&
                !table->tellsApart(one.numbers, other.numbers))
                return 0;
        if (one.id == slip && !table->tellsApart(one.numbers, table->right))
            return 0;
    }
    return own == 0 ? 0 : std::max(own - next / 2, 1e-6);
}

std::vector<std::string> slipsGone(const PracticeRecord& record) {
    Entries all;
    for (const RecordEntry& entry : record.entries)
        if (entry.worked == WorkedAs::question)
            all.push_back(&entry);
    std::vector<std::string> gone;
    for (const std::string& slip : slipsEverMade(all))
        if (wentAwayAt(all, slip))
            gone.push_back(slip);
    return gone;
}

NextProblem nextProblem(const PracticeRecord& record, std::string_view family, int sitting,
                        std::uint32_t seed) {
    const Entries entries = entriesOf(record, family);
    const int level = entries.empty() ? 1 : entries.back()->problem.level;
    const std::uint32_t own = mixed(seed, entries.size());
    NextProblem next{{std::string(family), level, own}, NextReason::plain, {}, false};
    next.offersExample = slipsNamedAt(record, family, level) >= kSlipsForExample;
    const auto aimAt = [&](const std::string& slip, NextReason reason) {
        const auto found = aimedProblem(next.problem, slip, own);
        if (!found)
            return false;
        next.problem = *found;
        next.reason = reason;
        next.aimedAt = slip;
        return true;
    };
    if (!entries.empty() && !entries.back()->slips.empty() &&
        aimAt(entries.back()->slips.front(), NextReason::afterSlip))
        return next;
    if (const auto slip = dueSlip(entries, sitting); slip && aimAt(*slip, NextReason::askedAgain))
        return next;
    if (level < kLevels && rises(entries, level)) {
        ++next.problem.level;
        next.reason = NextReason::higher;
    }
    return next;
}

} // namespace tailpoint
