// SPDX-License-Identifier: MIT
#include "ui/files/result.h"

#include "core/explain/explain.h"
#include "core/explain/limits.h"
#include "core/explain/ranges.h"
#include "core/explain/uncertainty.h"
#include "core/figure/compose.h"
#include "core/figure/tolerated.h"

#include <algorithm>
#include <deque>
#include <mutex>

namespace tailpoint {

namespace {

std::size_t withinAnswers(std::size_t chosen, const Solved& solved) {
    return chosen < solved.solutions.size() ? chosen : 0;
}

} // namespace

/// Panel, handout and lecture ask with options of their own, and zooming changes the panel's: a few suffice.
class Result::Memory {
public:
    const Things& things(const Sketch& sketch) {
        std::call_once(m_named, [&] { m_things.emplace(sketch); });
        return *m_things;
    }
    template <class Make>
    const tolerance::Ranges& ranges(Make make) {
        std::call_once(m_ranged, [&] { m_ranges = make(); });
        return m_ranges;
    }
    template <class Make>
    std::shared_ptr<const Tolerated> tolerated(std::size_t solution, Make make) {
        const std::lock_guard guard(m_mutex);
        if (!m_tolerated || m_toleratedOf != solution) {
            m_tolerated = make();
            m_toleratedOf = solution;
        }
        return m_tolerated;
    }
    template <class Make>
    tolerance::Uncertainties uncertainties(const tolerance::UncertaintyAsked& asked, Make make) {
        const std::lock_guard guard(m_uncertainMutex);
        if (m_asked != asked) {
            m_uncertain = make();
            m_asked = asked;
        }
        return m_uncertain;
    }
    template <class Make>
    std::shared_ptr<const Worked> find(const ExplainOptions& options, std::size_t solution, Make make) {
        const std::lock_guard guard(m_mutex);
        const auto known = std::find_if(m_kept.begin(), m_kept.end(), [&](const Kept& kept) {
            return kept.solution == solution && kept.options == options;
        });
        if (known != m_kept.end())
            return known->worked;
        m_kept.push_front({options, solution, std::make_shared<const Worked>(make())});
        if (m_kept.size() > kMost)
            m_kept.pop_back();
        return m_kept.front().worked;
    }

private:
    static constexpr std::size_t kMost = 4;
    struct Kept {
        ExplainOptions options;
        std::size_t solution;
        std::shared_ptr<const Worked> worked;
    };
    std::once_flag m_named, m_ranged;
    tolerance::Ranges m_ranges;
    std::shared_ptr<const Tolerated> m_tolerated; ///< of the answer last asked for
    std::size_t m_toleratedOf = 0;
    std::optional<Things> m_things;
    std::mutex m_uncertainMutex;
    std::optional<tolerance::UncertaintyAsked> m_asked;
    tolerance::Uncertainties m_uncertain;
    std::mutex m_mutex;
    std::deque<Kept> m_kept;
};

Result::Result(const Sketch& given, std::size_t wanted, bool moving)
    : Result(given, solve(given), wanted, false, moving) {}

Result::Result(const Sketch& given, const Solved& known, std::size_t wanted, bool withheld, bool moving)
    : sketch(given), solved(known), chosen(withinAnswers(wanted, solved)),
      construction(construct(sketch, solved, chosen)), isWithheld(withheld), isMoving(moving),
      m_memory(std::make_shared<Memory>()) {}

Construction Result::constructionOf(std::size_t solution) const {
    return solution == chosen ? construction : construct(sketch, solved, solution);
}

const Things& Result::things() const {
    return m_memory->things(sketch);
}

const tolerance::Ranges& Result::ranges() const {
    return m_memory->ranges([&] {
        return isWithheld || !tolerance::boxOf(sketch).hasTolerance
                   ? tolerance::Ranges{}
                   : tolerance::rangesOf(sketch, solved,
                                         isMoving ? tolerance::kWhileDragging : tolerance::kExact);
    });
}

std::shared_ptr<const Tolerated> Result::tolerated(std::size_t solution) const {
    const tolerance::Ranges& known = ranges();
    if (solution >= known.size())
        return nullptr;
    return m_memory->tolerated(solution, [&] {
        Tolerated all{known, {}};
        if (!isMoving)
            all.regions = tolerance::tipRegions(sketch, solved, solution);
        else if (solved.family != Family::twoDirections) // no less work than true ones: for a hand at rest
            all.regions = tolerance::tipRegions(sketch, solved, solution, tolerance::kWhileDragging);
        return std::make_shared<const Tolerated>(std::move(all));
    });
}

tolerance::Uncertainties Result::uncertainties(const tolerance::UncertaintyAsked& asked) const {
    if (isMoving || ranges().empty())
        return {};
    return m_memory->uncertainties(asked, [&] { return uncertaintiesOf(sketch, solved, ranges(), asked); });
}

const tolerance::AnswerRange* Result::rangeOf(std::size_t answer) const {
    return answer < ranges().size() ? &ranges()[answer] : nullptr;
}

bool Result::hasTolerances() const {
    return !isWithheld && tolerance::boxOf(sketch).hasTolerance;
}

std::vector<AngleName> Result::angleNames(std::size_t solution, bool byParallelograms) const {
    return namesOfAnswer(sketch, things(), solved, constructionOf(solution), solution, byParallelograms);
}

std::shared_ptr<const Worked> Result::worked(const ExplainOptions& options, std::size_t solution) const {
    return m_memory->find(options, solution, [&] {
        Worked told = explain(sketch, solved, constructionOf(solution), solution, options, ranges());
        if (options.uncertainty)
            tellUncertainty(told, sketch, solved, solution, uncertainties(*options.uncertainty),
                            *options.uncertainty, options.sentences);
        if (!isWithheld)
            tellLimits(told, sketch, solved, solution, ranges(), options.sentences);
        return told;
    });
}

std::shared_ptr<const Worked> Result::worked(const ExplainOptions& options) const {
    return worked(options, chosen);
}

std::shared_ptr<const Worked> Result::worked() const {
    return worked(ExplainOptions{});
}

Result resultOf(const Sketch& sketch, std::size_t chosen) {
    return Result(sketch, chosen);
}

Result unanswered(const Sketch& sketch) {
    return Result(sketch, asked(sketch), 0, true);
}

} // namespace tailpoint
