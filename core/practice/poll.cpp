#include "core/practice/poll.h"

#include "core/mark/slip_numbers.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"
#include "core/solve/solve.h"

#include <algorithm>
#include <numeric>

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
    /// What a slip makes of a quantity: of two answers the one that it leaves alone as it is.
    struct Made {
        std::string id;
        std::vector<std::string> texts;
        double value = 0;
    };

    std::string shown(std::size_t quantity, double value) const {
        return m_table.asked[quantity].dimension == Dimension::angle ? shownAngle(value, m_sketch)
                                                                     : shownForceWithUnit(value, m_sketch);
    }

    Made madeOf(std::size_t quantity, std::string_view id, const AskedNumbers& numbers) const {
        Made made{std::string(id), {}, 0};
        for (std::size_t i = 0; i < m_table.answers; ++i) {
            const std::size_t cell = quantity * m_table.answers + i;
            const double value =
                numbers.values[cell] ? *numbers.values[cell] : m_table.right.values[cell].value_or(0);
            made.texts.push_back(shown(quantity, value));
            if (i == 0)
                made.value = value;
        }
        return made;
    }

    /// The likeliest first; equals in the table's order.
    std::vector<Made> wrongOf(std::size_t quantity) const {
        std::vector<Made> all;
        for (const SlipNumbers& slip : m_table.slips)
            if (slip.changes)
                all.push_back(madeOf(quantity, slip.id, slip.numbers));
        std::stable_sort(all.begin(), all.end(), [](const Made& a, const Made& b) {
            return commonnessOf(a.id) > commonnessOf(b.id);
        });
        return all;
    }

    /// As a choice, where marking names that slip for it.
    std::optional<PollChoice> choiceOf(const std::string& name, const Made& made) const {
        const auto read = m_marker.read({name + " = " + joined(made.texts, "; ")});
        const auto* attempt = std::get_if<Attempt>(&read);
        if (attempt == nullptr)
            return std::nullopt;
        for (const Finding& finding : m_marker.mark(*attempt).slips)
            if (finding.second.empty() && finding.id == made.id)
                return PollChoice{joined(made.texts, " or "), made.value, made.id, finding.sentence,
                                  finding.lines};
        return std::nullopt;
    }

    Poll pollOf(std::size_t quantity) const {
        const Answerable& asked = m_table.asked[quantity];
        Poll poll{asked.name, m_things.symbol(asked.id), {}};
        const Made right = madeOf(quantity, {}, m_table.right);
        poll.choices.push_back({joined(right.texts, " or "), right.value, {}, {}, {}});
        for (const Made& made : wrongOf(quantity)) {
            if (poll.choices.size() > kPollSlips)
                break;
            const std::string text = joined(made.texts, " or ");
            if (std::any_of(poll.choices.begin(), poll.choices.end(),
                            [&](const PollChoice& other) { return other.text == text; }))
                continue;
            if (auto choice = choiceOf(asked.name, made))
                poll.choices.push_back(std::move(*choice));
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
