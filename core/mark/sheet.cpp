#include "core/mark/sheet.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

bool isAmong(const std::vector<std::size_t>& list, std::size_t what) {
    return std::find(list.begin(), list.end(), what) != list.end();
}

} // namespace

/// The first that applies is the verdict of the whole.
static constexpr std::array kWorstFirst{Verdict::slip,       Verdict::other,   Verdict::unit, Verdict::axis,
                                        Verdict::incomplete, Verdict::rounded, Verdict::right};

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
        const bool isOfItsKind = slip.verdict != Verdict::axis || m_question.isDirection(given.cell);
        if (slip.verdict != Verdict::slip && isOfItsKind && !second)
            return slip.verdict;
        if (isChargedBefore(part, fitting))
            return Verdict::follows;
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

void Sheet::remark(const Part& part, MarkedQuantity& quantity, const Given& given) const {
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
    if (given.verdict == Verdict::unit)
        say(SENTENCE("marking", "The value is right; its unit is missing."));
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
    const double right = m_question.right().value[cell];
    if (isThere(right)) {
        marked.expected =
            m_question.isDirection(cell) ? normalized(right, m_question.sketch().angleUnit) : right;
        marked.expectedText = m_telling.shown(cell, right);
    }
    for (std::size_t i = 0; i < part.givens.size(); ++i)
        if (part.givens[i].cell == cell)
            judge(part, i, marked);
    return marked;
}

/// The quantity beside the number that was given for it.
void Sheet::judge(const Part& part, std::size_t index, MarkedQuantity& marked) const {
    const Given& given = part.givens[index];
    marked.given = given.reading.value;
    marked.givenText = m_telling.stated(given);
    marked.verdict = verdictOf(part, index);
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

void Sheet::judge(Part& part) const {
    const std::size_t answer = part.givens.empty() ? 0 : m_question.answerOf(part.givens.front().cell);
    for (std::size_t quantity = 0; quantity < m_question.asked; ++quantity)
        part.cells.push_back(m_question.cell(quantity, answer));
    for (const Given& given : part.givens)
        if (m_question.quantityOf(given.cell) >= m_question.asked)
            part.cells.push_back(given.cell);
    for (const std::size_t cell : part.cells) {
        part.quantities.push_back(marked(part, cell));
        part.points += part.quantities.back().points;
    }
    remarkMoreFigures(part);
    part.verdict = whole(part);
}

} // namespace tailpoint::marking
