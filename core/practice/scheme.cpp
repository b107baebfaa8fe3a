// SPDX-License-Identifier: MIT
#include "core/practice/scheme.h"

#include "core/explain/wording.h"
#include "core/mark/slip_numbers.h"
#include "core/practice/drawn.h"
#include "core/practice/families.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"
#include "core/solve/tolerance.h"

#include <algorithm>
#include <tuple>

namespace tailpoint {

namespace {

constexpr std::string_view kEitherSign = "\u00B1";
/// Priors of slips, for a question that is of no family: of any, and of those in reading it and of short
/// cuts, of which only few can be made in one question. A longer list is no longer seen at a glance.
constexpr int kCommonEnough = 4, kCommonInReading = 3;

std::vector<std::string_view> commonSlips() {
    std::vector<std::string_view> ids;
    for (const SlipEntry& slip : slipEntries()) {
        const bool isOfTheQuestion = slip.place == SlipPlace::reading || slip.place == SlipPlace::shortCut;
        if (slip.common >= (isOfTheQuestion ? kCommonInReading : kCommonEnough))
            ids.push_back(slip.id);
    }
    return ids;
}

constexpr std::string_view kSenseTurned = "sense-turned";

class SchemeMaker {
public:
    /// Precondition: the marker is of this sketch.
    SchemeMaker(const Sketch& sketch, const Marker& marker)
        : m_sketch(sketch), m_solved(solve(sketch)), m_things(sketch), m_marker(marker) {}

    /// Without entries where nothing can be marked.
    Scheme make() {
        Scheme scheme;
        auto table = slipTable(m_marker);
        if (!table)
            return scheme;
        m_table = std::move(*table);
        scheme.of = m_marker.of();
        scheme.isSigned = isSigned(m_sketch);
        std::vector<Marking> marked;
        for (const SlipNumbers& slip : m_table.slips)
            marked.push_back(isListed(slip) ? markedWith(slip) : Marking{});
        for (std::size_t i = 0; i < m_table.asked.size(); ++i)
            scheme.answers.push_back(answer(i));
        addRanges(scheme);
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

    bool isOpen(std::size_t quantity) const {
        const QuantityId& id = m_table.asked[quantity].id;
        const Force& force =
            id.of.kind == VectorId::Kind::force ? m_sketch.forces[id.of.index] : m_sketch.sum;
        return id.what == What::magnitude && force.lineOfActionOnly;
    }

    /// A slip's number as it is stated: with the sign of the sense that the slip has, else of the right one.
    double statedValue(const SlipNumbers& slip, std::size_t cell, double value) const {
        const std::size_t quantity = cell / m_table.answers;
        if (!isOpen(quantity))
            return value;
        return slip.against[cell] ? (*slip.against[cell] ? -value : value)
                                  : signedValue(quantity, cell % m_table.answers, value);
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

    /// As marking tells them beside the right answers.
    void addRanges(Scheme& scheme) const {
        if (!tolerance::boxOf(m_sketch).hasTolerance)
            return;
        const auto read = m_marker.read(rightAnswers(scheme));
        const auto* attempt = std::get_if<Attempt>(&read);
        const Marking marking = attempt ? m_marker.mark(*attempt) : Marking{};
        for (SchemeAnswer& answer : scheme.answers)
            for (const MarkedQuantity& one : marking.quantities)
                if (one.name == answer.name)
                    answer.ranges.push_back(rangeWords(one));
    }

    /// What who makes this slip and nothing else, and states all that is asked, is given.
    Marking markedWith(const SlipNumbers& slip) const {
        return markedWith([&](std::size_t cell) {
            const auto& value = slip.numbers.values[cell];
            return value ? std::optional(statedValue(slip, cell, *value)) : std::nullopt;
        });
    }
    /// The same of what `statedAt` has in a cell, else the right value.
    template <class StatedAt>
    Marking markedWith(StatedAt statedAt) const {
        std::vector<std::string> answers;
        for (std::size_t quantity = 0; quantity < m_table.asked.size(); ++quantity) {
            std::string text = m_table.asked[quantity].name + " = ";
            for (std::size_t i = 0; i < m_table.answers; ++i) {
                const std::size_t cell = quantity * m_table.answers + i;
                const double right = signedValue(quantity, i, m_table.right.values[cell].value_or(0));
                text += (i > 0 ? "; " : "") + stated(quantity, statedAt(cell).value_or(right));
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
                right && shown(quantity, value) == shown(quantity, signedValue(quantity, i, *right)))
                return true;
        const std::string& name = m_table.asked[quantity].name;
        return std::any_of(marking.quantities.begin(), marking.quantities.end(),
                           [&](const MarkedQuantity& one) {
                               return one.name == name && one.given &&
                                      shown(quantity, *one.given) == shown(quantity, value) &&
                                      (one.verdict == Verdict::right || one.verdict == Verdict::rounded);
                           });
    }

    SlipNumber number(std::size_t at, std::size_t quantity, std::size_t answer, double value) const {
        const SlipNumbers& slip = m_table.slips[at];
        const std::size_t cell = quantity * m_table.answers + answer;
        SlipNumber out;
        out.name = m_table.asked[quantity].name;
        out.isEitherSense = isOpen(quantity) && !slip.against[cell];
        out.value = out.isEitherSense ? std::abs(value) : statedValue(slip, cell, value);
        out.text = std::string(out.isEitherSense ? kEitherSign : "") + shown(quantity, out.value);
        out.slips = {std::string(slip.id)};
        out.labels = {{std::string(slip.id), placeOf(slip.at)}};
        out.answer = m_table.answers == 2 ? static_cast<int>(answer + 1) : 0;
        return out;
    }

    Prose placeOf(const std::optional<QuantityId>& at) const {
        if (!at)
            return {};
        const Voice voice;
        const auto name = [this](VectorId vector) { return m_things.formula(magnitudeId(vector)); };
        if (at->what == What::between)
            return voice.say(SENTENCE("practice", "angle between {a} and {b}"), "a", name(at->of), "b",
                             name(at->with));
        if (at->what == What::opposite)
            return voice.say(SENTENCE("practice", "angle opposite to {a}"), "a", name(at->of));
        const bool isOfVector = at->what == What::magnitude || at->what == What::direction;
        return {{isOfVector ? name(at->of) : m_things.formula(*at)}};
    }

    void addNumbers(std::size_t quantity, const std::vector<Marking>& marked, Scheme& scheme) const {
        std::vector<SlipNumber> numbers;
        for (std::size_t at = 0; at < m_table.slips.size(); ++at)
            for (std::size_t i = 0; isListed(m_table.slips[at]) && i < m_table.answers; ++i) {
                const std::size_t cell = quantity * m_table.answers + i;
                const auto value = m_table.slips[at].numbers.values[cell];
                if (!value || passes(marked[at], quantity, statedValue(m_table.slips[at], cell, *value)))
                    continue;
                numbers.push_back(number(at, quantity, i, *value));
                numbers.back().points = marked[at].points;
            }
        addOtherSense(quantity, numbers);
        std::stable_sort(numbers.begin(), numbers.end(), [](const SlipNumber& a, const SlipNumber& b) {
            return std::tie(a.value, a.answer) < std::tie(b.value, b.answer);
        });
        for (SlipNumber& one : numbers)
            join(scheme.numbers, std::move(one));
    }

    /// A lost sign is added by itself, whatever slips are looked for.
    static bool isListed(const SlipNumbers& slip) { return slip.changes && slip.id != kSenseTurned; }

    /// Along a line whose sense is open: the right size with the other sign, whatever slips are likely.
    void addOtherSense(std::size_t quantity, std::vector<SlipNumber>& numbers) const {
        for (std::size_t i = 0; i < m_table.answers && isOpen(quantity); ++i) {
            const double value =
                -signedValue(quantity, i, m_table.right.values[quantity * m_table.answers + i].value_or(0));
            const Marking marking = markedWith([&](std::size_t other) {
                return other == quantity * m_table.answers + i ? std::optional(value) : std::nullopt;
            });
            if (passes(marking, quantity, value))
                continue;
            numbers.push_back({.name = m_table.asked[quantity].name,
                               .value = value,
                               .text = shown(quantity, value),
                               .slips = {std::string(kSenseTurned)},
                               .labels = {{std::string(kSenseTurned), {}}},
                               .answer = m_table.answers == 2 ? static_cast<int>(i + 1) : 0,
                               .points = marking.points});
        }
    }

    static bool isAlike(const SlipNumber& a, const SlipNumber& b) {
        return a.name == b.name && a.text == b.text && a.answer == b.answer && a.points == b.points;
    }

    /// What prints alike and earns the same is one entry.
    static void join(std::vector<SlipNumber>& numbers, SlipNumber number) {
        const auto same = std::find_if(numbers.begin(), numbers.end(),
                                       [&](const SlipNumber& other) { return isAlike(other, number); });
        if (same == numbers.end())
            return numbers.push_back(std::move(number));
        const std::string& slip = number.slips.front();
        if (std::find(same->slips.begin(), same->slips.end(), slip) == same->slips.end())
            same->slips.push_back(slip);
        if (std::find(same->labels.begin(), same->labels.end(), number.labels.front()) == same->labels.end())
            same->labels.push_back(std::move(number.labels.front()));
    }

    const Sketch& m_sketch;
    const Solved m_solved;
    SlipTable m_table;
    Things m_things;
    const Marker& m_marker;
};

} // namespace

namespace {

/// The places of one slip; none where one of them is none.
std::vector<Prose> placesOf(const SlipNumber& number, const std::string& slip) {
    std::vector<Prose> places;
    for (const SlipLabel& label : number.labels) {
        if (label.slip == slip && label.place.pieces.empty())
            return {};
        if (label.slip == slip)
            places.push_back(label.place);
    }
    return places;
}

} // namespace

Prose labelOf(const SlipNumber& number) {
    Prose all;
    for (const std::string& slip : number.slips) {
        appendText(all, (all.pieces.empty() ? "" : " or ") + slipName(slip));
        const std::vector<Prose> places = placesOf(number, slip);
        for (std::size_t i = 0; i < places.size(); ++i) {
            appendText(all, i == 0 ? ": " : " or ");
            all.pieces.insert(all.pieces.end(), places[i].pieces.begin(), places[i].pieces.end());
        }
    }
    return all;
}

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

Scheme schemeOf(const DrawnProblem& drawn) {
    return SchemeMaker(drawn.problem.sketch, drawn.marker).make();
}

Scheme schemeOf(const Sketch& sketch, const MarkOptions& options, std::span<const std::string_view> slips) {
    const std::vector<std::string_view> wanted =
        slips.empty() ? commonSlips() : std::vector<std::string_view>(slips.begin(), slips.end());
    MarkOptions alone = options;
    alone.onlySlips.assign(wanted.begin(), wanted.end());
    alone.saysWhy = false;
    return SchemeMaker(sketch, Marker(sketch, solve(sketch), alone)).make();
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
