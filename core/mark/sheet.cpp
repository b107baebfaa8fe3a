// SPDX-License-Identifier: MIT
#include "core/mark/sheet.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

bool isAmong(const std::vector<std::size_t>& list, std::size_t what) {
    return std::find(list.begin(), list.end(), what) != list.end();
}

} // namespace

/// The first that applies is the verdict of the whole.
static constexpr std::array kWorstFirst{Verdict::unread,  Verdict::slip, Verdict::other,
                                        Verdict::unit,    Verdict::axis, Verdict::incomplete,
                                        Verdict::rounded, Verdict::right};

std::size_t rankOf(Verdict verdict) {
    return static_cast<std::size_t>(std::find(kWorstFirst.begin(), kWorstFirst.end(), verdict) -
                                    kWorstFirst.begin());
}

/// The same slip in reading or calculation has cost another number already.
bool Sheet::isChargedBefore(const Part& part, const Fitting& fitting) const {
    const Slip& slip = m_telling.slipOf(fitting.slips.front().first);
    return (slip.place == SlipPlace::reading || slip.place == SlipPlace::calculation) &&
           !fitting.slips.front().second &&
           std::any_of(part.fittings.data(), &fitting, [&](const Fitting& other) {
               return !other.slips.front().second && other.explained != fitting.explained &&
                      &m_telling.slipOf(other.slips.front().first) == &slip;
           });
}

/// A slip is found by a number's size; where the sign counts, it follows from it with the right one alone.
bool Sheet::isAgainstSense(const Part& part, std::size_t index, const Fitting& fitting) const {
    const Given& given = part.givens[index];
    return isSignedBySense(m_question, given.cell) &&
           (given.reading.value < 0) != (fitting.numbers.value[given.cell] < 0);
}

namespace {

/// What a short cut gives besides was never calculated.
bool costsAllIt(const Slip& slip) {
    return slip.place == SlipPlace::shortCut && !slip.isOneSlip;
}

} // namespace

/// Of a wrong one: what the likeliest finding that explains it makes of it.
Verdict Sheet::verdictOf(const Part& part, std::size_t index) const {
    const Given& given = part.givens[index];
    if (!given.isWrong() && !given.isWrongSense)
        return given.verdict;
    if (given.verdict == Verdict::follows) {
        const bool costsAll = !part.fittings.empty() && isAmong(part.fittings.front().explained, index) &&
                              costsAllIt(m_telling.slipOf(part.fittings.front().slips.front().first));
        return costsAll ? Verdict::slip : Verdict::follows;
    }
    for (const Fitting& fitting : part.fittings) {
        if (!isAmong(fitting.explained, index))
            continue;
        const Slip& slip = m_telling.slipOf(fitting.slips.front().first);
        const auto& second = fitting.slips.front().second;
        const bool isOfItsKind = slip.verdict != Verdict::axis || m_question.isDirection(given.cell);
        if (slip.verdict != Verdict::slip && isOfItsKind && !second)
            return slip.verdict;
        if (isChargedBefore(part, fitting) && !isAgainstSense(part, index, fitting))
            return Verdict::follows;
        const auto place = static_cast<std::size_t>(
            std::find(fitting.explained.begin(), fitting.explained.end(), index) - fitting.explained.begin());
        // one slip costs once, two cost twice, and all that a short cut gives
        const bool isFirst = place == 0 || isAgainstSense(part, index, fitting) ||
                             (place == 1 && second && m_telling.changes(*second, given.cell) &&
                              !m_telling.changes(*second, part.givens[fitting.explained[0]].cell));
        return isFirst || costsAllIt(slip) ? Verdict::slip : Verdict::follows;
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
        if (quantity.verdict == Verdict::unread)
            take(Verdict::unread);
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

/// Where a direction says the sense, and none that is given turns it round.
bool Sheet::isNegativeSize(const Given& given) const {
    const QuantityId& id = given.value->id;
    return id.what == What::magnitude && given.reading.value < 0 && !given.isTurned && !given.isGood() &&
           !hasFreeSense(m_question, id.of);
}

void Sheet::remark(const Part& part, MarkedQuantity& quantity, const Given& given) const {
    const Voice voice(m_question.options.sentences);
    const auto say = [&](const Wording& wording) { quantity.remarks.push_back(voice.say(wording)); };
    if (given.isTurned && quantity.verdict != Verdict::unit && !m_question.options.signedSenses) {
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
    if (given.isWrongSense && quantity.verdict == Verdict::other)
        quantity.remarks.push_back(voice.say(
            given.stated() < 0
                ? SENTENCE("marking",
                           "The size is right, its sign is not: {vector} acts in the sense drawn, and "
                           "is positive.")
                : SENTENCE("marking",
                           "The size is right, its sign is missing: {vector} acts against the sense "
                           "drawn, and is negative."),
            "vector", m_question.things.vectorFormula(given.value->id.of)));
    if (quantity.verdict == Verdict::rounded)
        quantity.remarks.push_back(voice.say(
            SENTENCE("marking", "Right within rounding; to the figures that are asked for it is {value}."),
            "value", inWords(quantity.expectedText)));
    if (given.number->isMass)
        quantity.remarks.push_back(voice.say(
            SENTENCE("marking", "Kilograms and tonnes are units of mass; a force is stated in {unit}."),
            "unit", inWords(std::string(symbolOf(m_question.sketch().forceUnit)))));
    else if (given.verdict == Verdict::unit)
        say(SENTENCE("marking", "The value is right; its unit is missing."));
    if (isNegativeSize(given))
        say(SENTENCE("marking", "A magnitude is never negative: the sense stands in the direction."));
    if (!quantity.followsFrom.empty())
        quantity.remarks.push_back(
            voice.say(SENTENCE("marking", "Right for the value that you have for {source}."), "source",
                      m_question.things.formula(part.givens[given.follows.front()].value->id)));
}

MarkedQuantity Sheet::marked(const Part& part, std::size_t cell) const {
    const Answerable& of = m_question.quantities[m_question.quantityOf(cell)];
    MarkedQuantity marked;
    marked.id = m_question.ownId(cell);
    marked.name = of.name;
    marked.asked = of.asked;
    marked.of = of.points;
    double size = m_question.right().value[cell];
    for (const Given& given : part.givens)
        if (given.cell == cell)
            size = rightFor(m_question, given);
    const double right = isNegativeBySense(m_question, cell) ? -size : size;
    if (isThere(right)) {
        marked.expected =
            m_question.isDirection(cell) ? normalized(right, m_question.sketch().angleUnit) : right;
        marked.expectedText = m_telling.shown(cell, right);
        m_telling.addRange(cell, marked);
    }
    for (const UnreadValue& one : part.unread)
        if (m_question.find(one.id) == m_question.quantityOf(cell)) {
            marked.verdict = Verdict::unread;
            marked.givenText = one.text;
        }
    for (std::size_t i = 0; i < part.givens.size(); ++i)
        if (part.givens[i].cell == cell)
            judge(part, i, marked);
    return marked;
}

/// The quantity beside the number that was given for it.
void Sheet::judge(const Part& part, std::size_t index, MarkedQuantity& marked) const {
    const Given& given = part.givens[index];
    marked.given = given.stated();
    marked.givenText = m_telling.stated(given);
    marked.verdict = verdictOf(part, index);
    marked.isLastFigure = marked.verdict == Verdict::rounded && given.isLastFigure;
    if (marked.verdict == Verdict::follows)
        for (const std::size_t source : given.follows)
            marked.followsFrom.push_back(part.givens[source].value->name);
    marked.points = pointsOf(part, marked, index);
    remark(part, marked, given);
}

/// Once, however many have them.
void Sheet::remarkMoreFigures(Part& part) const {
    for (const Given& given : part.givens) {
        const auto at = std::find(part.cells.begin(), part.cells.end(), given.cell);
        if (!given.isMoreThanAsked || at == part.cells.end())
            continue;
        MarkedQuantity& marked = part.quantities[static_cast<std::size_t>(at - part.cells.begin())];
        marked.remarks.push_back(
            Voice(m_question.options.sentences)
                .say(SENTENCE("marking", "More figures than the question asks for: {value} will do."),
                     "value", inWords(marked.expectedText)));
        return;
    }
}

/// What follows from an error is pardoned, the error itself is not: where nothing that is asked is right and
/// all of it follows, the first pays for it.
void Sheet::chargeOnce(Part& part) const {
    MarkedQuantity* first = nullptr;
    for (MarkedQuantity& quantity : part.quantities) {
        if (!quantity.asked || quantity.verdict == Verdict::missing || quantity.verdict == Verdict::unread)
            continue;
        if (quantity.verdict != Verdict::follows)
            return;
        first = first == nullptr ? &quantity : first;
    }
    if (first == nullptr || first->points == 0)
        return;
    first->points = 0;
    first->remarks.push_back(Voice(m_question.options.sentences)
                                 .say(SENTENCE("marking", "The error before it is charged here, once.")));
}

void Sheet::judge(Part& part) const {
    const std::size_t answer = part.givens.empty() ? 0 : m_question.answerOf(part.givens.front().cell);
    for (std::size_t quantity = 0; quantity < m_question.asked; ++quantity)
        part.cells.push_back(m_question.cell(quantity, answer));
    for (const Given& given : part.givens)
        if (m_question.quantityOf(given.cell) >= m_question.asked)
            part.cells.push_back(given.cell);
    for (const UnreadValue& one : part.unread)
        if (const std::size_t quantity = m_question.find(one.id);
            quantity >= m_question.asked && quantity < m_question.quantities.size())
            part.cells.push_back(m_question.cell(quantity, answer));
    for (const std::size_t cell : part.cells) {
        part.quantities.push_back(marked(part, cell));
    }
    chargeOnce(part);
    for (const MarkedQuantity& quantity : part.quantities)
        part.points += quantity.points;
    remarkMoreFigures(part);
    part.verdict = whole(part);
}

} // namespace tailpoint::marking
