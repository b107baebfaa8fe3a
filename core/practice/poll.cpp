// SPDX-License-Identifier: MIT
#include "core/practice/poll.h"

#include "core/explain/wording.h"
#include "core/mark/slip_numbers.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"
#include "core/solve/solve.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

namespace tailpoint {

namespace {

int commonnessOf(std::string_view id) {
    for (const SlipEntry& slip : slipEntries())
        if (slip.id == id)
            return slip.common;
    return 0;
}

std::string joined(const std::vector<std::string>& texts, const char* between) {
    std::string out;
    for (const std::string& text : texts)
        out += (out.empty() ? "" : between) + text;
    return out;
}

/// What is stated is a square: no class is asked whether a force is so many newtons squared.
constexpr std::string_view kStatesASquare = "root-forgotten";

/// No further from what is right than this is a choice that somebody may take for it.
constexpr double kMostTimes = 10;

class PollMaker {
public:
    PollMaker(const Sketch& sketch, const Solved& solved, SlipTable table)
        : m_sketch(sketch), m_things(sketch), m_table(std::move(table)), m_marker(sketch, solved) {}

    std::vector<Poll> make() const {
        std::vector<Poll> polls;
        for (std::size_t i = 0; i < m_table.asked.size(); ++i)
            if (Poll poll = pollOf(i); poll.choices.size() > 1)
                polls.push_back(std::move(poll));
        return polls;
    }

private:
    /// What a slip makes of a quantity, an answer after the other: of two the one that it leaves alone as it
    /// is.
    struct Made {
        std::string id;
        std::vector<double> values;
    };

    bool isAngle(std::size_t quantity) const { return m_table.asked[quantity].dimension == Dimension::angle; }
    std::string shown(std::size_t quantity, double value) const {
        return isAngle(quantity) ? shownAngle(value, m_sketch) : shownForceWithUnit(value, m_sketch);
    }

    Made madeOf(std::size_t quantity, std::string_view id, const AskedNumbers& numbers) const {
        Made made{std::string(id), {}};
        for (std::size_t i = 0; i < m_table.answers; ++i) {
            const std::size_t cell = quantity * m_table.answers + i;
            made.values.push_back(numbers.values[cell] ? *numbers.values[cell]
                                                       : m_table.right.values[cell].value_or(0));
        }
        return made;
    }

    /// As a choice has it: ascending, and once what prints alike.
    std::vector<std::string> textsOf(std::size_t quantity, std::vector<double> values) const {
        std::sort(values.begin(), values.end());
        std::vector<std::string> texts;
        for (const double value : values)
            texts.push_back(shown(quantity, value));
        texts.erase(std::unique(texts.begin(), texts.end()), texts.end());
        return texts;
    }

    /// Two choices with the same are one: whichever of two answers comes first, whatever whole turns a
    /// direction has more, and whatever the sign where the sense is open.
    std::vector<std::string> setOf(std::size_t quantity, std::vector<double> values) const {
        for (double& value : values) {
            if (isAngle(quantity)) {
                value = roundedAsShown(std::remainder(value, m_table.turn), m_sketch);
                value += 2 * value <= -m_table.turn ? m_table.turn : 0;
            } else {
                value = std::abs(value); // negative ones are choices only where the sense is open
            }
        }
        return textsOf(quantity, std::move(values));
    }

    /// A magnitude that nobody would state: negative where the right one is not, or out of all proportion.
    bool isAbsurd(std::size_t quantity, const Made& made, const Made& right) const {
        if (isAngle(quantity))
            return false;
        const auto bySize = [](double a, double b) { return std::abs(a) < std::abs(b); };
        const auto isNegative = [](double value) { return value < 0; };
        const auto [least, most] = std::minmax_element(right.values.begin(), right.values.end(), bySize);
        const bool signs = std::any_of(right.values.begin(), right.values.end(), isNegative);
        return std::any_of(made.values.begin(), made.values.end(), [&](double value) {
            return (value < 0 && !signs) || std::abs(value) * kMostTimes < std::abs(*least) ||
                   std::abs(value) > kMostTimes * std::abs(*most);
        });
    }

    /// The likeliest first; equals in the table's order.
    std::vector<Made> wrongOf(std::size_t quantity, const Made& right) const {
        std::vector<Made> all;
        for (const SlipNumbers& slip : m_table.slips) {
            if (!slip.changes || slip.id == kStatesASquare)
                continue;
            if (Made made = madeOf(quantity, slip.id, slip.numbers); !isAbsurd(quantity, made, right))
                all.push_back(std::move(made));
        }
        std::stable_sort(all.begin(), all.end(), [](const Made& a, const Made& b) {
            return commonnessOf(a.id) > commonnessOf(b.id);
        });
        return all;
    }

    PollChoice choiceFor(std::size_t quantity, const Made& made) const {
        PollChoice choice;
        choice.text = joined(textsOf(quantity, made.values), " or ");
        choice.value = *std::min_element(made.values.begin(), made.values.end());
        choice.slip = made.id;
        return choice;
    }

    /// As a choice, where marking names that slip for it.
    std::optional<PollChoice> wrongChoice(std::size_t quantity, const Made& made) const {
        std::vector<std::string> stated;
        for (const double value : made.values)
            stated.push_back(shown(quantity, value));
        const auto read = m_marker.read({m_table.asked[quantity].name + " = " + joined(stated, "; ")});
        const auto* attempt = std::get_if<Attempt>(&read);
        if (attempt == nullptr)
            return std::nullopt;
        for (const Finding& finding : m_marker.mark(*attempt).slips)
            if (finding.second.empty() && finding.id == made.id) {
                PollChoice choice = choiceFor(quantity, made);
                choice.sentence = finding.sentence;
                choice.lines = finding.lines;
                return choice;
            }
        return std::nullopt;
    }

    /// "The direction of R from +x, counter-clockwise positive".
    Prose askedWords(std::size_t quantity) const {
        const VectorId vector = m_table.asked[quantity].id.of;
        const Voice voice;
        const bool both = m_table.answers > 1;
        const Formula name = vectorSymbol(m_things.symbol(vector));
        if (!isAngle(quantity))
            return voice.say(both ? SENTENCE("practice", "Both magnitudes of {vector}")
                                  : SENTENCE("practice", "The magnitude of {vector}"),
                             "vector", name);
        const bool ccw = m_sketch.reference.sense == Sense::ccw;
        const auto wording = [&] {
            if (both)
                return ccw ? SENTENCE("practice",
                                      "Both directions of {vector} from {axis}, counter-clockwise positive")
                           : SENTENCE("practice",
                                      "Both directions of {vector} from {axis}, clockwise positive");
            return ccw ? SENTENCE("practice",
                                  "The direction of {vector} from {axis}, counter-clockwise positive")
                       : SENTENCE("practice", "The direction of {vector} from {axis}, clockwise positive");
        }();
        return voice.say(wording, "vector", name, "axis", withMinusSigns(axisName(m_sketch.reference)));
    }

    Poll pollOf(std::size_t quantity) const {
        const Answerable& asked = m_table.asked[quantity];
        const Made right = madeOf(quantity, {}, m_table.right);
        Poll poll{asked.name, m_things.symbol(asked.id), askedWords(quantity), {choiceFor(quantity, right)}};
        std::set<std::vector<std::string>> sets{setOf(quantity, right.values)};
        for (const Made& made : wrongOf(quantity, right)) {
            if (poll.choices.size() > kPollSlips)
                break;
            const auto set = setOf(quantity, made.values);
            if (sets.contains(set))
                continue;
            if (auto choice = wrongChoice(quantity, made)) {
                poll.choices.push_back(std::move(*choice));
                sets.insert(set);
            }
        }
        std::stable_sort(poll.choices.begin(), poll.choices.end(),
                         [](const PollChoice& a, const PollChoice& b) { return a.value < b.value; });
        return poll;
    }

    const Sketch& m_sketch;
    Things m_things;
    SlipTable m_table;
    Marker m_marker;
};

} // namespace

std::vector<Poll> pollsOf(const Sketch& sketch) {
    const Solved solved = solve(sketch);
    auto table = slipTable(sketch, solved);
    return table ? PollMaker(sketch, solved, std::move(*table)).make() : std::vector<Poll>();
}

void Ballot::goOn() {
    if (m_phase != Phase::closed)
        m_phase = static_cast<Phase>(static_cast<int>(m_phase) + 1);
}

void Ballot::goBack() {
    if (m_phase != Phase::first)
        m_phase = static_cast<Phase>(static_cast<int>(m_phase) - 1);
}

void Ballot::setVotes(std::size_t choice, int votes) {
    if (takesVotes() && choice < choices() && votes >= 0 && votes <= kMostVotes)
        m_votes[m_phase == Phase::second ? 1 : 0][choice] = votes;
}

int Ballot::total(bool second) const {
    const std::vector<int>& votes = m_votes[second ? 1 : 0];
    return std::accumulate(votes.begin(), votes.end(), 0);
}

std::optional<double> Ballot::share(bool second, std::size_t choice) const {
    const int all = total(second);
    if (m_phase != Phase::closed || all == 0)
        return std::nullopt;
    return static_cast<double>(votes(second, choice)) / all;
}

} // namespace tailpoint
