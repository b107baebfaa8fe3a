// SPDX-License-Identifier: MIT
#include "core/mark/findings.h"

#include <algorithm>
#include <map>

namespace tailpoint::marking {

namespace {

constexpr double kOneNumber = 1e-6; ///< relative: numbers that no answer could tell apart
constexpr double kSingle = 1e-6;    ///< what single precision is off
constexpr std::size_t kMostFindings = 6;

/// Place in the calculation: the line of the first chain that has it.
std::size_t orderOf(const Question& question, std::size_t cell) {
    for (const Way& way : question.own.ways)
        if (way.slots[cell] != Program::kNoSlot)
            return way.program.lineOf(way.program.quantity(way.slots[cell]));
    return question.cells() + cell;
}

/// A number of degrees on a sheet in radians is coarse, and told by its digits all the same; a plain nought
/// is what somebody writes whose slip leaves nothing at all.
bool canBeTold(const Question& question, const Given& given, double value, const Slip* slip) {
    if (slip != nullptr && slip->isSmall && given.reading.value == 0 && question.isDirection(given.cell))
        return false;
    if (given.isWrongSense) // its size is right: no slip of the calculation is told
        return slip != nullptr && slip->forms == answer_forms::senseTurned;
    const bool isAngleInside =
        question.dimension(given.cell) == Dimension::angle && !question.isDirection(given.cell);
    if (slip != nullptr && slip->isWritten && given.number->drawn && !isAngleInside)
        return false;
    const bool isOfOtherUnit = slip != nullptr && slip->verdict == Verdict::unit && given.reading.half <= 0.5;
    const bool isNought =
        value == 0 && given.reading.value == 0 && given.reading.half <= 0.5 * given.reading.unit;
    return given.isWrong() && (!given.isTooCoarse || isOfOtherUnit || isNought);
}

/// What a number says of the given ones.
struct Fit {
    std::vector<std::size_t> explained;
    std::size_t contradicted = 0, againstRight = 0;
};
/// `slip`: a single one.
Fit fitOf(const Question& question, const std::vector<Given>& givens, const Numbers& numbers,
          const Slip* slip, const std::function<bool(std::size_t)>& isChanged) {
    Fit fit;
    for (std::size_t i = 0; i < givens.size(); ++i) {
        const Given& given = givens[i];
        const double value = numbers.value[given.cell], tolerance = numbers.tolerance[given.cell];
        if (!isThere(value) || !isChanged(given.cell))
            continue;
        const bool isFitting = slip != nullptr && slip->isScaled
                                   ? fitsScaled(question, given.cell, given.reading, value, tolerance)
                                   : fits(question, given.cell, given.reading, value, tolerance);
        if (isFitting && canBeTold(question, given, value, slip))
            fit.explained.push_back(i);
        else if (!isFitting && given.verdict != Verdict::follows) {
            ++fit.contradicted;
            fit.againstRight += given.isGood() ? 1 : 0;
        }
    }
    return fit;
}

/// Whether what is explained is so near that the given digits alone allow it.
bool isNear(const Question& question, const std::vector<Given>& givens, const Fitting& fitting) {
    return std::all_of(fitting.explained.begin(), fitting.explained.end(), [&](std::size_t i) {
        const Given& given = givens[i];
        return fits(question, given.cell, given.reading, fitting.numbers.value[given.cell], 0);
    });
}

/// A negative magnitude alone: that is what is told of it, no slip that gives its size.
bool isSizeAloneOfNegative(const Question& question, const std::vector<Given>& givens, const Fit& fit,
                           const Numbers& numbers) {
    const Given& given = givens[fit.explained.front()];
    const QuantityId& id = given.value->id;
    return fit.explained.size() == 1 && id.what == What::magnitude && given.reading.value < 0 &&
           numbers.value[given.cell] > 0 && !hasFreeSense(question, id.of);
}

bool isOneNumber(const Question& question, const std::vector<Given>& givens, const Fitting& a,
                 const Fitting& b) {
    return a.explained == b.explained &&
           std::all_of(a.explained.begin(), a.explained.end(), [&](std::size_t i) {
               const std::size_t cell = givens[i].cell;
               const double x = a.numbers.value[cell], y = b.numbers.value[cell];
               const double scale =
                   question.dimension(cell) == Dimension::angle ? question.degree() : std::abs(x);
               return std::min(question.apart(cell, x, y), std::abs(std::abs(x) - std::abs(y))) <=
                      kOneNumber * scale;
           });
}

} // namespace

bool areOneByNature(std::string_view a, std::string_view b) {
    static const std::vector<std::vector<std::string_view>> lists{
        {"wrong-axis", "complement", "supplement", "sine-cosine-exchanged", "tangent-inverted"},
        {"opposite", "no-sum-turned", "quadrant-missed"},
        {"supplement-in-cosines", "difference-taken", "other-sense-read"},
        {"from-other-force", "magnitudes-exchanged", "sides-mismatched"},
        {"diagonal-halves-angle", "direction-averaged"},
        {"sign-of-direction", "component-sign"},
        {"other-axis-read", "sine-cosine-exchanged-once"},
        {"radian-mode-once", "inverse-forgotten"}};
    const auto holds = [](const auto& list, std::string_view id) {
        return std::find(list.begin(), list.end(), id) != list.end();
    };
    return a == b || std::any_of(lists.begin(), lists.end(),
                                 [&](const auto& list) { return holds(list, a) && holds(list, b); });
}

Pairs& Findings::pairs() const {
    if (!m_pairs)
        m_pairs = std::make_unique<Pairs>(m_question, m_alternatives);
    return *m_pairs;
}

namespace {

/// Has nothing right against it; explains more; contradicts less; needs no rounding on the way; is more
/// common; stands earlier.
class Ranking {
public:
    explicit Ranking(const Alternatives& alternatives) : m_alternatives(alternatives) {}

    bool operator()(const Fitting& a, const Fitting& b) const {
        if ((a.againstRight > 0) != (b.againstRight > 0))
            return b.againstRight > 0;
        if (a.explained.size() != b.explained.size())
            return a.explained.size() > b.explained.size();
        if (a.contradicted != b.contradicted)
            return a.contradicted < b.contradicted;
        if (a.isNear != b.isNear)
            return a.isNear;
        if (common(a) != common(b))
            return common(a) > common(b);
        return a.slips.front().first < b.slips.front().first;
    }
    const Slip& slip(const Fitting& fitting) const {
        return m_alternatives.slip(m_alternatives.at(fitting.slips.front().first));
    }
    int common(const Fitting& fitting) const {
        const auto& one = fitting.slips.front();
        const int first = slip(fitting).common;
        return one.second ? first + m_alternatives.slip(m_alternatives.at(*one.second)).common : first;
    }

private:
    const Alternatives& m_alternatives;
};

/// Of slips that are one number the first in rank, a form of the answer before all.
std::vector<Fitting> merged(const Question& question, const Alternatives& alternatives,
                            const std::vector<Given>& givens, std::vector<Fitting> fittings) {
    const Ranking ranking(alternatives);
    std::vector<Fitting> out;
    for (Fitting& one : fittings) {
        const auto same = std::find_if(out.begin(), out.end(), [&](const Fitting& other) {
            return isOneNumber(question, givens, one, other) ||
                   (one.explained == other.explained &&
                    areOneByNature(ranking.slip(one).id, ranking.slip(other).id));
        });
        if (same == out.end()) {
            out.push_back(std::move(one));
            continue;
        }
        if (one.againstRight > 0 && same->againstRight == 0)
            continue;
        const Slip &slip = ranking.slip(one), &other = ranking.slip(*same);
        const bool isUnit = slip.verdict == Verdict::unit && isOneNumber(question, givens, one, *same);
        const bool leads = (isUnit || areOneByNature(slip.id, other.id)) &&
                           slip.place == SlipPlace::reporting && other.place != SlipPlace::reporting &&
                           one.contradicted <= same->contradicted;
        if (leads)
            std::swap(*same, one);
        same->slips.insert(same->slips.end(), one.slips.begin(), one.slips.end());
    }
    return out;
}

/// Those that explain what better ones don't, and their equals but for those with something right against
/// them.
std::vector<Fitting> chosen(std::vector<Fitting> fittings, const std::vector<Given>& givens) {
    std::vector<Fitting> out;
    std::vector<bool> explained(givens.size(), false);
    for (std::size_t i = 0; i < givens.size(); ++i)
        explained[i] = givens[i].verdict == Verdict::follows;
    for (Fitting& one : fittings) {
        const bool isNew = std::any_of(one.explained.begin(), one.explained.end(),
                                       [&](std::size_t i) { return !explained[i]; });
        const bool isEqual = std::any_of(out.begin(), out.end(), [&](const Fitting& other) {
            return other.explained == one.explained && other.contradicted == one.contradicted &&
                   one.againstRight == 0;
        });
        if ((!isNew && !isEqual) || out.size() == kMostFindings)
            continue;
        for (const std::size_t i : one.explained)
            explained[i] = true;
        out.push_back(std::move(one));
    }
    return out;
}

} // namespace

std::vector<Fitting> Findings::singles(const std::vector<Given>& givens) const {
    std::vector<Fitting> all;
    const auto& alternatives = m_alternatives.singles();
    for (std::size_t i = 0; i < alternatives.size(); ++i) {
        const Alternative& one = alternatives[i];
        Fit fit = fitOf(m_question, givens, one.numbers, &m_alternatives.slip(one),
                        [&](std::size_t cell) { return one.changed[cell]; });
        if (fit.explained.empty() || isSizeAloneOfNegative(m_question, givens, fit, one.numbers))
            continue;
        Fitting fitting;
        fitting.slips.push_back({i, {}});
        fitting.numbers = one.numbers;
        fitting.explained = std::move(fit.explained);
        fitting.contradicted = fit.contradicted;
        fitting.againstRight = fit.againstRight;
        fitting.isNear = isNear(m_question, givens, fitting);
        all.push_back(std::move(fitting));
    }
    return all;
}

void Findings::addPairs(const std::vector<Given>& givens, std::vector<Fitting>& fittings) const {
    std::vector<const Given*> wrong;
    for (const Given& given : givens)
        if (given.isWrong() && !given.isTooCoarse && given.cell < pairs().columns())
            wrong.push_back(&given);
    const bool isDrawn =
        std::any_of(wrong.begin(), wrong.end(), [](const Given* given) { return given->number->drawn; });
    const auto isWritten = [&](std::size_t slip) {
        return m_alternatives.slip(m_alternatives.at(slip)).isWritten;
    };
    for (std::size_t pair = 0; pair < pairs().all().size(); ++pair) {
        const auto explained = std::count_if(wrong.begin(), wrong.end(), [&](const Given* given) {
            const double value = pairs().value(pair, given->cell);
            return isThere(value) && fits(m_question, given->cell, given->reading, value,
                                          pairs().tolerance(pair, given->cell) + kSingle * std::abs(value));
        });
        if (explained < 2)
            continue;
        Fitting fitting;
        const auto [first, second] = pairs().slipsOf(pair);
        if (isDrawn && (isWritten(first) || isWritten(second)))
            continue;
        fitting.slips.push_back({first, second});
        fitting.numbers = pairs().numbersOf(pair);
        Fit fit = fitOf(m_question, givens, fitting.numbers, nullptr, [&](std::size_t cell) {
            return !isSame(m_question, cell, fitting.numbers.value[cell], m_question.right().value[cell]);
        });
        fitting.explained = std::move(fit.explained);
        fitting.contradicted = fit.contradicted;
        fitting.isNear = isNear(m_question, givens, fitting);
        if (fitting.explained.size() >= 2 && fitting.contradicted == 0)
            fittings.push_back(std::move(fitting));
    }
}

std::vector<Fitting> Findings::find(const std::vector<Given>& givens) const {
    std::vector<std::size_t> open; // wrong, and following from nothing
    for (std::size_t i = 0; i < givens.size(); ++i)
        if ((givens[i].isWrong() || givens[i].isWrongSense) && givens[i].verdict != Verdict::follows)
            open.push_back(i);
    if (open.empty())
        return {};
    const Ranking ranking(m_alternatives);
    auto fittings = singles(givens);
    const bool areFitted = std::all_of(open.begin(), open.end(), [&](std::size_t i) {
        return std::any_of(fittings.begin(), fittings.end(), [&](const Fitting& one) {
            return one.contradicted == 0 &&
                   std::find(one.explained.begin(), one.explained.end(), i) != one.explained.end();
        });
    });
    const bool withPairs = open.size() > 1 && !areFitted;
    if (withPairs)
        addPairs(givens, fittings);
    std::stable_sort(fittings.begin(), fittings.end(), ranking);
    std::map<std::vector<std::size_t>, double> known; // evidence goes by what is explained
    const auto weighOnce = [&](Fitting& one) {
        std::vector<std::size_t> explained = one.explained;
        std::sort(explained.begin(), explained.end());
        const auto [at, isNew] = known.try_emplace(explained, 0.0);
        if (isNew)
            at->second = covered(givens, one.explained, withPairs);
        one.covered = at->second;
        // the right digits with the other sign are no accident
        const bool isSense = m_alternatives.slip(m_alternatives.at(one.slips.front().first)).forms ==
                             answer_forms::senseTurned;
        one.isStrong = one.contradicted == 0 && (one.covered < kMostCovered || isSense);
    };
    std::erase_if(fittings, [&](Fitting& one) {
        if (one.slips.front().second)
            weighOnce(one);
        return one.slips.front().second && one.covered > kMostCoveredByPairs;
    });
    fittings = chosen(merged(m_question, m_alternatives, givens, std::move(fittings)), givens);
    for (Fitting& fitting : fittings) {
        std::sort(fitting.explained.begin(), fitting.explained.end(), [&](std::size_t a, std::size_t b) {
            return orderOf(m_question, givens[a].cell) < orderOf(m_question, givens[b].cell);
        });
        weighOnce(fitting);
    }
    return fittings;
}

} // namespace tailpoint::marking
