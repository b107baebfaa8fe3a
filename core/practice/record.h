// SPDX-License-Identifier: MIT
// What was practised, and what to practise next: a pure function of the record and a seed.
#pragma once

#include "core/mark/mark.h"
#include "core/practice/problem.h"

namespace tailpoint {

/// How a problem was worked.
enum class WorkedAs : std::uint8_t {
    question, ///< answered
    faded,    ///< a worked solution with blank lines
    flawed    ///< a worked solution with a slip in it
};
std::string_view nameOf(WorkedAs worked); ///< "question", "faded", "flawed"

/// One problem, answered; or worked as an example, which steers nothing.
struct RecordEntry {
    ProblemId problem;
    std::string scene;
    int sitting = 1;  ///< counted from 1, never falling
    std::string when; ///< as the caller writes it; nothing is concluded from it
    Verdict verdict = Verdict::other;
    std::vector<std::string> slips; ///< ids named first with strong evidence; weak ones aren't kept
    bool lastHint = false;          ///< the last hint was opened: it counts as an example, not as an answer
    std::string aimedAt;            ///< the slip at which the question was aimed; empty: none
    WorkedAs worked = WorkedAs::question; ///< an example: `lastHint` is set, and no slips are kept
    int blank = 0;                        ///< of a faded one, so many lines were; right: all filled at once
    int tries = 1;          ///< whole answers that were marked until it was right; steers nothing
    bool cameRight = false; ///< not at once, but in the end; steers nothing
    bool operator==(const RecordEntry&) const = default;
};

struct PracticeRecord {
    std::vector<RecordEntry> entries; ///< oldest first
    bool operator==(const PracticeRecord&) const = default;
};

/// What marking leaves for the record: the verdict, and the slip named first where its evidence is strong.
RecordEntry recordEntry(const Problem& problem, const Marking& marking, bool lastHint, int sitting,
                        std::string aimedAt = {});

/// Why this problem comes next.
enum class NextReason : std::uint8_t {
    plain,      ///< more of the same
    afterSlip,  ///< aimed at the slip just made
    askedAgain, ///< a slip that went away is asked again: three questions later, or in the next sitting
    higher      ///< three right in a row, in two scenes at least, without the last hint
};
std::string_view nameOf(NextReason reason); ///< "plain", "after-slip", "asked-again", "higher"

struct NextProblem {
    ProblemId problem;
    NextReason reason = NextReason::plain;
    std::string aimedAt;        ///< a slip's id; empty: none
    bool offersExample = false; ///< two named slips at this level since the last example: a faded one is
                                ///< offered first
    bool operator==(const NextProblem&) const = default;
};

/// How many problems are looked at for one that a slip above all changes.
inline constexpr int kAimTrials = 12;
/// So many right answers raise the level; so many questions later a slip that went away is asked again.
inline constexpr int kRightToRise = 3, kAskedAgainAfter = 3;

/// The next problem of a family, at the level at which its last one stood (1 where there is none). `sitting`
/// is the present one. Weak evidence steers nothing, nor does a slip of other families. Precondition: the
/// family exists.
NextProblem nextProblem(const PracticeRecord& record, std::string_view family, int sitting,
                        std::uint32_t seed);

/// A problem worked as an example: counted as such, without slips. `blank`: of a faded one.
RecordEntry exampleEntry(const Problem& problem, WorkedAs worked, bool wentWell, int sitting, int blank = 0);

/// So many lines of the next faded example are blank: one, and one more than the last time at that level each
/// time all went well.
int nextBlank(const PracticeRecord& record, const ProblemId& of);

/// How much a slip above all changes a problem's answer: 0 where it changes nothing or looks like another
/// likely slip; else how far its numbers lie from what is right, as a share of the magnitude or of a right
/// angle, the greatest of all asked, at most 1, less half of the same of the likely slip that comes next.
double aim(const Problem& problem, std::string_view slip);

/// Slips that were named in the record and, aimed at later, did not come back.
std::vector<std::string> slipsGone(const PracticeRecord& record);

} // namespace tailpoint
