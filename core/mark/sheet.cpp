#include "core/mark/sheet.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

/// The first that applies is the verdict of the whole.
constexpr std::array kWorstFirst{Verdict::slip,       Verdict::other,   Verdict::unit, Verdict::axis,
                                 Verdict::incomplete, Verdict::rounded, Verdict::right};

std::size_t rankOf(Verdict verdict) {
    return static_cast<std::size_t>(std::find(kWorstFirst.begin(), kWorstFirst.end(), verdict) -
                                    kWorstFirst.begin());
}

bool isAmong(const std::vector<std::size_t>& list, std::size_t what) {
    return std::find(list.begin(), list.end(), what) != list.end();
}

} // namespace

/// Of a wrong one: what the likeliest finding that explains it makes of it.
Verdict Sheet::verdictOf(const Part& part, std::size_t index) const {
    const Given& given = part.givens[index];
    if (!given.isWrong())
        return given.verdict;
    if (given.verdict == Verdict::follows) { // what a short cut gives besides was never calculated
        const bool isShortCut =
            !part.fittings.empty() && isAmong(part.fittings.front().explained, index) &&
            m_telling.slipOf(part.fittings.front().slips.front().first).place == SlipPlace::shortCut;
        return isShortCut ? Verdict::slip : Verdict::follows;
    }
    for (const Fitting& fitting : part.fittings) {
        if (!isAmong(fitting.explained, index))
            continue;
        const Slip& slip = m_telling.slipOf(fitting.slips.front().first);
        const auto& second = fitting.slips.front().second;
        if (slip.verdict != Verdict::slip && !second)
            return slip.verdict;
        const auto place = static_cast<std::size_t>(
            std::find(fitting.explained.begin(), fitting.explained.end(), index) - fitting.explained.begin());
        // one slip costs once, two cost twice, and all that a short cut gives
        const bool isFirst =
            place == 0 || (place == 1 && second && m_telling.changes(*second, given.cell) &&
                           !m_telling.changes(*second, part.givens[fitting.explained[0]].cell));
        return isFirst || slip.place == SlipPlace::shortCut ? Verdict::slip : Verdict::follows;
    }
    return Verdict::other;
}

/// Of what follows: whether a slip stands at its beginning.
Verdict Sheet::rootOf(const Part& part, std::size_t index, int depth) const {
    const Given& given = part.givens[index];
    const Verdict own = verdictOf(part, index);
    if (own != Verdict::follows)
        return own;
    if (given.follows.empty()) // explained by a slip that is charged elsewhere
        return Verdict::slip;
    Verdict worst = Verdict::right;
    for (const std::size_t source : given.follows) {
        const Verdict one = depth > 0 ? rootOf(part, source, depth - 1) : Verdict::other;
        if (one == Verdict::other || worst == Verdict::right)
            worst = one;
    }
    return worst == Verdict::slip || worst == Verdict::unit || worst == Verdict::axis ? Verdict::slip
                                                                                      : Verdict::other;
}

double Sheet::pointsOf(const Part& part, const MarkedQuantity& quantity, std::size_t index) const {
    const MarkOptions& options = m_question.options;
    switch (quantity.verdict) {
    case Verdict::right:
    case Verdict::rounded:
        return quantity.of;
    case Verdict::follows:
        return options.followThrough ? quantity.of : 0;
    case Verdict::unit:
        return options.creditUnit * quantity.of;
    case Verdict::axis:
        return options.creditAxis * quantity.of;
    case Verdict::slip:
        for (const Fitting& fitting : part.fittings) {
            const SlipPlace place = m_telling.slipOf(fitting.slips.front().first).place;
            if (isAmong(fitting.explained, index))
                return fitting.isStrong && (place == SlipPlace::reading || place == SlipPlace::calculation)
                           ? options.creditSlip * quantity.of
                           : 0;
        }
        return 0;
    default:
        return 0;
    }
}

Verdict Sheet::whole(const Part& part) const {
    Verdict worst = Verdict::right;
    const auto take = [&](Verdict one) {
        if (rankOf(one) < rankOf(worst))
            worst = one;
    };
    for (const MarkedQuantity& quantity : part.quantities) {
        if (!quantity.asked)
            continue;
        if (quantity.verdict == Verdict::missing)
            take(Verdict::incomplete);
        else if (quantity.verdict != Verdict::follows)
            take(quantity.verdict);
    }
    for (std::size_t i = 0; i < part.givens.size(); ++i)
        if (m_question.quantityOf(part.givens[i].cell) < m_question.asked &&
            verdictOf(part, i) == Verdict::follows)
            take(rootOf(part, i, 4));
    return worst;
}

void Sheet::remark(Part& part, MarkedQuantity& quantity, const Given& given) const {
    const Voice voice(m_question.options.sentences);
    const auto say = [&](const Wording& wording) { quantity.remarks.push_back(voice.say(wording)); };
    if (given.isTurned && quantity.verdict != Verdict::unit) {
        const bool hasWay = std::any_of(part.givens.begin(), part.givens.end(), [&](const Given& other) {
            return other.value->id == directionId(given.value->id.of);
        });
        say(hasWay
                ? SENTENCE("marking", "A negative magnitude on the opposite direction is the same vector; a "
                                      "magnitude is stated without a sign.")
                : SENTENCE("marking",
                           "The sign tells the sense along the line of action; the magnitude itself "
                           "has none."));
    }
    if (given.isOtherReading)
        say(SENTENCE("marking", "The comma reads two ways; the reading that is right was taken."));
    if (quantity.verdict == Verdict::rounded)
        quantity.remarks.push_back(voice.say(
            SENTENCE("marking", "Right within rounding; to the figures that are asked for it is {value}."),
            "value", inWords(quantity.expectedText)));
    if (quantity.verdict == Verdict::unit && given.isGood() == false && given.verdict == Verdict::unit)
        say(SENTENCE("marking", "The value is right; its unit is missing."));
    if (!quantity.followsFrom.empty())
        quantity.remarks.push_back(
            voice.say(SENTENCE("marking", "Right for the value that you have for {source}."), "source",
                      m_question.things.formula(part.givens[given.follows.front()].value->id)));
}

void Sheet::judge(Part& part) const {
    const auto add = [&](std::size_t quantity, std::size_t answer) {
        const Answerable& of = m_question.quantities[quantity];
        const std::size_t cell = m_question.cell(quantity, answer);
        MarkedQuantity marked;
        marked.id = m_question.ownId(cell);
        marked.name = of.name;
        marked.asked = of.asked;
        marked.of = of.points;
        const double right = m_question.right().value[cell];
        if (isThere(right)) {
            marked.expected =
                m_question.isDirection(cell) ? normalized(right, m_question.sketch().angleUnit) : right;
            marked.expectedText = m_telling.shown(cell, right);
        }
        for (std::size_t i = 0; i < part.givens.size(); ++i) {
            const Given& given = part.givens[i];
            if (given.cell != cell)
                continue;
            marked.given = given.reading.value;
            marked.givenText = given.number->drawn ? m_telling.shown(cell, given.reading.value)
                                                   : m_telling.asGiven(cell, *given.number);
            marked.verdict = verdictOf(part, i);
            for (const std::size_t source :
                 marked.verdict == Verdict::follows ? given.follows : std::vector<std::size_t>())
                marked.followsFrom.push_back(part.givens[source].value->name);
            marked.points = pointsOf(part, marked, i);
            remark(part, marked, given);
        }
        part.points += marked.points;
        part.quantities.push_back(std::move(marked));
        part.cells.push_back(cell);
    };
    const std::size_t answer = part.givens.empty() ? 0 : m_question.answerOf(part.givens.front().cell);
    for (std::size_t quantity = 0; quantity < m_question.asked; ++quantity)
        add(quantity, answer);
    for (const Given& given : part.givens)
        if (m_question.quantityOf(given.cell) >= m_question.asked)
            add(m_question.quantityOf(given.cell), answer);
    for (const Given& given : part.givens) // once
        if (given.isMoreThanAsked) {
            const Voice voice(m_question.options.sentences);
            const auto at = std::find(part.cells.begin(), part.cells.end(), given.cell);
            MarkedQuantity& marked = part.quantities[static_cast<std::size_t>(at - part.cells.begin())];
            marked.remarks.push_back(
                voice.say(SENTENCE("marking", "More figures than the question asks for: {value} will do."),
                          "value", inWords(marked.expectedText)));
            break;
        }
    part.verdict = whole(part);
}

Part Sheet::part(const Attempt& attempt, std::size_t answer, std::size_t position) const {
    Part part;
    part.givens = givenIn(m_question, attempt, answer, position);
    findFollowing(m_question, part.givens);
    part.fittings = m_findings.find(part.givens);
    judge(part);
    return part;
}

namespace {

std::ptrdiff_t goodOnes(const Part& part) {
    return std::count_if(part.quantities.begin(), part.quantities.end(), [](const MarkedQuantity& one) {
        return one.asked && (one.verdict == Verdict::right || one.verdict == Verdict::rounded);
    });
}

/// Numbers that the likeliest finding explains, less those that speak against it; two slips explain less
/// well.
std::ptrdiff_t weightOf(const Part& part) {
    if (part.fittings.empty())
        return 0;
    const Fitting& first = part.fittings.front();
    return static_cast<std::ptrdiff_t>(first.explained.size()) -
           static_cast<std::ptrdiff_t>(first.contradicted) - (first.slips.front().second ? 1 : 0);
}

/// More points; then more that is right; then the one of which more is explained; then the milder verdict.
bool isBetter(const Part& a, const Part& b) {
    if (a.points != b.points)
        return a.points > b.points;
    if (goodOnes(a) != goodOnes(b))
        return goodOnes(a) > goodOnes(b);
    return weightOf(a) != weightOf(b) ? weightOf(a) > weightOf(b) : rankOf(a.verdict) > rankOf(b.verdict);
}

} // namespace

Marking Sheet::made(Part part) const {
    Marking out;
    out.verdict = part.verdict;
    out.points = part.points;
    for (MarkedQuantity& quantity : part.quantities)
        out.of += quantity.of;
    out.quantities = std::move(part.quantities);
    for (const Fitting& fitting : part.fittings)
        out.slips.push_back(m_telling.finding(fitting, part.givens));
    if (!part.fittings.empty())
        out.ask = m_telling.ask(part.fittings.front());
    return out;
}

/// Both pairs are given: each counts half.
Marking Sheet::both(const Attempt& attempt) const {
    std::array<Part, 2> straight{part(attempt, 0, 0), part(attempt, 1, 1)},
        crossed{part(attempt, 1, 0), part(attempt, 0, 1)};
    const bool isCrossed = crossed[0].points + crossed[1].points > straight[0].points + straight[1].points;
    std::array<Part, 2>& best = isCrossed ? crossed : straight;
    Marking out;
    for (std::size_t i = 0; i < 2; ++i) {
        const Verdict verdict = best[i].verdict;
        Marking one = made(std::move(best[i]));
        if (i == 0 || rankOf(verdict) < rankOf(out.verdict))
            out.verdict = verdict;
        for (MarkedQuantity& quantity : one.quantities) {
            quantity.answer = static_cast<int>(i + 1);
            quantity.of /= 2;
            quantity.points /= 2;
            out.points += quantity.points;
            out.of += quantity.of;
            out.quantities.push_back(std::move(quantity));
        }
        for (Finding& finding : one.slips)
            if (std::none_of(out.slips.begin(), out.slips.end(), [&](const Finding& other) {
                    return other.id == finding.id && other.gives == finding.gives;
                }))
                out.slips.push_back(std::move(finding));
        if (!out.ask)
            out.ask = std::move(one.ask);
    }
    return out;
}

Marking Sheet::mark(const Attempt& attempt) const {
    const bool isPair = std::any_of(attempt.values.begin(), attempt.values.end(),
                                    [](const GivenValue& value) { return value.numbers.size() > 1; });
    if (isPair && m_question.answers == 2)
        return both(attempt);
    Part best = part(attempt, 0, 0);
    for (std::size_t answer = 1; answer < m_question.answers; ++answer)
        if (Part other = part(attempt, answer, 0); isBetter(other, best))
            best = std::move(other);
    Marking out = made(std::move(best));
    if (m_question.answers < 2 || !out.isRight())
        return out;
    const Voice voice(m_question.options.sentences);
    out.remarks.push_back(voice.say(SENTENCE("marking", "There is a second answer to this question.")));
    if (m_question.options.bothAnswers) {
        out.verdict = Verdict::incomplete;
        out.points /= 2;
    }
    return out;
}

} // namespace tailpoint::marking
