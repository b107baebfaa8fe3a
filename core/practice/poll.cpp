#include "core/practice/poll.h"

#include "core/practice/scheme.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace tailpoint {

namespace {

std::vector<std::string_view> allSlips() {
    std::vector<std::string_view> ids;
    for (const SlipEntry& slip : slipEntries())
        ids.push_back(slip.id);
    return ids;
}

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
    explicit PollMaker(const Sketch& sketch)
        : m_marker(sketch, solve(sketch)), m_scheme(schemeOf(sketch, {}, allSlips())) {}

    std::vector<Poll> make() const {
        std::vector<Poll> polls;
        for (const SchemeAnswer& answer : m_scheme.answers)
            if (Poll poll = pollOf(answer); poll.choices.size() > 1)
                polls.push_back(std::move(poll));
        return polls;
    }

private:
    /// What a slip makes of the quantity: of two answers the one that it leaves alone as it is.
    struct Made {
        std::string id;
        std::vector<std::string> texts;
        double value = 0;
    };

    std::vector<Made> madeOf(const SchemeAnswer& answer) const {
        std::map<std::string, Made> bySlip;
        for (const SlipNumber& number : m_scheme.numbers)
            for (const std::string& id :
                 number.name == answer.name ? number.slips : std::vector<std::string>()) {
                Made& made =
                    bySlip.try_emplace(id, Made{id, answer.texts, answer.values.front()}).first->second;
                const std::size_t at = number.answer == 2 ? 1 : 0;
                made.texts[at] = number.text;
                if (at == 0)
                    made.value = number.value;
            }
        std::vector<Made> all;
        for (const SlipEntry& slip : slipEntries()) // the table's order, so that equals stay in it
            if (const auto found = bySlip.find(std::string(slip.id)); found != bySlip.end())
                all.push_back(found->second);
        std::stable_sort(all.begin(), all.end(), [](const Made& a, const Made& b) {
            return commonnessOf(a.id) > commonnessOf(b.id);
        });
        return all;
    }

    /// As a choice, where marking names that slip for it.
    std::optional<PollChoice> choiceOf(const SchemeAnswer& answer, const Made& made) const {
        const auto read = m_marker.read({answer.name + " = " + joined(made.texts, "; ")});
        const auto* attempt = std::get_if<Attempt>(&read);
        if (attempt == nullptr)
            return std::nullopt;
        for (const Finding& finding : m_marker.mark(*attempt).slips)
            if (finding.second.empty() && finding.id == made.id)
                return PollChoice{joined(made.texts, " or "), made.value, made.id, finding.sentence,
                                  finding.lines};
        return std::nullopt;
    }

    Poll pollOf(const SchemeAnswer& answer) const {
        Poll poll{answer.name, answer.symbol, {}};
        poll.choices.push_back({joined(answer.texts, " or "), answer.values.front(), {}, {}, {}});
        for (const Made& made : madeOf(answer)) {
            if (poll.choices.size() > kPollSlips)
                break;
            const std::string text = joined(made.texts, " or ");
            if (std::any_of(poll.choices.begin(), poll.choices.end(),
                            [&](const PollChoice& other) { return other.text == text; }))
                continue;
            if (auto choice = choiceOf(answer, made))
                poll.choices.push_back(std::move(*choice));
        }
        std::stable_sort(poll.choices.begin(), poll.choices.end(),
                         [](const PollChoice& a, const PollChoice& b) { return a.value < b.value; });
        return poll;
    }

    Marker m_marker;
    Scheme m_scheme;
};

} // namespace

std::vector<Poll> pollsOf(const Sketch& sketch) {
    return PollMaker(sketch).make();
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
