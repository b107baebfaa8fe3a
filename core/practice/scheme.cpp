#include "core/practice/scheme.h"

#include "core/mark/slip_numbers.h"
#include "core/practice/families.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"

#include <algorithm>
#include <tuple>

namespace tailpoint {

namespace {

constexpr int kCommonEnough = 3; ///< prior of a slip, for a question that is of no family

std::vector<std::string_view> commonSlips() {
    std::vector<std::string_view> ids;
    for (const SlipEntry& slip : slipEntries())
        if (slip.common >= kCommonEnough)
            ids.push_back(slip.id);
    return ids;
}

class SchemeMaker {
public:
    SchemeMaker(const Sketch& sketch, const MarkOptions& options, SlipTable table)
        : m_sketch(sketch), m_solved(solve(sketch)), m_table(std::move(table)), m_things(sketch),
          m_marker(sketch, m_solved, options) {}

    Scheme make() const {
        Scheme scheme;
        scheme.of = m_marker.of();
        scheme.isSigned = isSigned(m_sketch);
        std::vector<Marking> marked;
        for (const SlipNumbers& slip : m_table.slips)
            marked.push_back(slip.changes ? markedWith(slip) : Marking{});
        for (std::size_t i = 0; i < m_table.asked.size(); ++i)
            scheme.answers.push_back(answer(i));
        for (std::size_t i = 0; i < m_table.asked.size(); ++i)
            addNumbers(i, marked, scheme);
        return scheme;
    }

private:
    bool isDirection(std::size_t quantity) const {
        return m_table.asked[quantity].id.what == What::direction;
    }
    std::string shown(std::size_t quantity, double value) const {
        if (const std::string bearing = isDirection(quantity) ? bearingWords(value, m_sketch) : std::string();
            !bearing.empty())
            return bearing;
        return m_table.asked[quantity].dimension == Dimension::angle ? shownAngle(value, m_sketch)
                                                                     : shownForceWithUnit(value, m_sketch);
    }
    std::string stated(std::size_t quantity, double value) const {
        if (const std::string bearing = isDirection(quantity) ? bearingWords(value, m_sketch) : std::string();
            !bearing.empty())
            return bearing;
        return m_table.asked[quantity].dimension == Dimension::angle
                   ? fixedDecimals(value, shownAngleDecimals(m_sketch))
                   : shownForce(value, m_sketch);
    }
    /// Along a line whose sense is open a force is counted as it is given there: negative the other way.
    double signedValue(std::size_t quantity, std::size_t answer, double value) const {
        const QuantityId& id = m_table.asked[quantity].id;
        const Solution& solution = m_solved.solutions[answer];
        const SolvedForce& found =
            id.of.kind == VectorId::Kind::force ? solution.forces[id.of.index] : solution.sum;
        return id.what == What::magnitude && found.turned ? -value : value;
    }

    SchemeAnswer answer(std::size_t quantity) const {
        const Answerable& asked = m_marker.quantities()[quantity];
        SchemeAnswer out{asked.name, m_things.symbol(asked.id), asked.points, {}, {}, {}};
        for (std::size_t i = 0; i < m_table.answers; ++i) {
            const double value =
                signedValue(quantity, i, m_table.right.values[quantity * m_table.answers + i].value_or(0));
            out.values.push_back(value);
            out.texts.push_back(shown(quantity, value));
            out.numbers.push_back(stated(quantity, value));
        }
        return out;
    }

    /// What who makes this slip and nothing else, and states all that is asked, is given.
    Marking markedWith(const SlipNumbers& slip) const {
        std::vector<std::string> answers;
        for (std::size_t quantity = 0; quantity < m_table.asked.size(); ++quantity) {
            std::string text = m_table.asked[quantity].name + " = ";
            for (std::size_t i = 0; i < m_table.answers; ++i) {
                const std::size_t cell = quantity * m_table.answers + i;
                const auto value =
                    slip.numbers.values[cell] ? slip.numbers.values[cell] : m_table.right.values[cell];
                text += (i > 0 ? "; " : "") + stated(quantity, value.value_or(0));
            }
            answers.push_back(std::move(text));
        }
        const auto read = m_marker.read(answers);
        const auto* attempt = std::get_if<Attempt>(&read);
        return attempt ? m_marker.mark(*attempt) : Marking{};
    }

    /// Nobody could tell by this number that it is wrong: it is right, of either answer, or taken for
    /// rounded.
    bool passes(const Marking& marking, std::size_t quantity, double value) const {
        for (std::size_t i = 0; i < m_table.answers; ++i)
            if (const auto right = m_table.right.values[quantity * m_table.answers + i];
                right && shown(quantity, value) == shown(quantity, *right))
                return true;
        const std::string& name = m_table.asked[quantity].name;
        return std::any_of(marking.quantities.begin(), marking.quantities.end(),
                           [&](const MarkedQuantity& one) {
                               return one.name == name && one.given &&
                                      shown(quantity, *one.given) == shown(quantity, value) &&
                                      (one.verdict == Verdict::right || one.verdict == Verdict::rounded);
                           });
    }

    void addNumbers(std::size_t quantity, const std::vector<Marking>& marked, Scheme& scheme) const {
        std::vector<SlipNumber> numbers;
        for (std::size_t at = 0; at < m_table.slips.size(); ++at)
            for (std::size_t i = 0; m_table.slips[at].changes && i < m_table.answers; ++i) {
                const SlipNumbers& slip = m_table.slips[at];
                const std::size_t cell = quantity * m_table.answers + i;
                const auto value = slip.numbers.values[cell];
                if (!value || passes(marked[at], quantity, *value))
                    continue;
                numbers.push_back({m_table.asked[quantity].name,
                                   *value,
                                   shown(quantity, *value),
                                   {std::string(slip.id)},
                                   slipName(slip.id),
                                   m_table.answers == 2 ? static_cast<int>(i + 1) : 0,
                                   marked[at].points});
            }
        std::stable_sort(numbers.begin(), numbers.end(), [](const SlipNumber& a, const SlipNumber& b) {
            return std::tie(a.value, a.answer) < std::tie(b.value, b.answer);
        });
        for (SlipNumber& number : numbers)
            join(scheme.numbers, std::move(number));
    }

    /// What prints alike and earns the same is one entry.
    static void join(std::vector<SlipNumber>& numbers, SlipNumber number) {
        for (SlipNumber& other : numbers) {
            if (other.name != number.name || other.text != number.text || other.answer != number.answer ||
                other.points != number.points)
                continue;
            if (std::find(other.slips.begin(), other.slips.end(), number.slips.front()) ==
                other.slips.end()) {
                other.slips.push_back(number.slips.front());
                other.label += " or " + number.label;
            }
            return;
        }
        numbers.push_back(std::move(number));
    }

    const Sketch& m_sketch;
    const Solved m_solved;
    SlipTable m_table;
    Things m_things;
    Marker m_marker;
};

} // namespace

bool isSigned(const Sketch& sketch) {
    return sketch.sum.lineOfActionOnly ||
           std::any_of(sketch.forces.begin(), sketch.forces.end(),
                       [](const Force& force) { return force.lineOfActionOnly; });
}

MarkOptions markOptionsFor(const Problem& problem) {
    MarkOptions options;
    options.bothAnswers = problem.bothAnswers;
    options.signedSenses = isSigned(problem.sketch);
    return options;
}

Scheme schemeOf(const Problem& problem) {
    const FamilyEntry* family = familyNamed(problem.id.family);
    if (family == nullptr)
        return {};
    return schemeOf(problem.sketch, markOptionsFor(problem),
                    family->levels[static_cast<std::size_t>(problem.id.level - 1)].slips);
}

Scheme schemeOf(const Sketch& sketch, const MarkOptions& options, std::span<const std::string_view> slips) {
    const std::vector<std::string_view> wanted =
        slips.empty() ? commonSlips() : std::vector<std::string_view>(slips.begin(), slips.end());
    auto table = slipTable(sketch, solve(sketch), wanted);
    MarkOptions alone = options;
    alone.onlySlips.assign(wanted.begin(), wanted.end());
    return table ? SchemeMaker(sketch, alone, std::move(*table)).make() : Scheme{};
}

std::vector<std::string> rightAnswers(const Scheme& scheme) {
    std::vector<std::string> answers;
    for (const SchemeAnswer& answer : scheme.answers) {
        std::string text = answer.name + " = ";
        for (std::size_t i = 0; i < answer.texts.size(); ++i)
            text += (i > 0 ? "; " : "") + answer.texts[i];
        answers.push_back(std::move(text));
    }
    return answers;
}

} // namespace tailpoint
