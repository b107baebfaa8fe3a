// SPDX-License-Identifier: MIT
#include "ui/practice/hints.h"

#include "core/practice/faded.h"
#include "ui/files/result.h"

#include <QRegularExpression>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

using Told = HintedLine::Told;

/// Common to both answers, as the fields are.
QuantityId common(QuantityId id) {
    id.answer = 0;
    return id;
}

constexpr double kAlike = 0.002; ///< of two printed numbers: as near as an answer's three figures

std::optional<double> numberOf(const Formula& value) {
    static const QRegularExpression number(QStringLiteral("\\d+(\\.\\d+)?"));
    const auto found = number.match(QString::fromStdString(toText(Prose{{value}})));
    return found.hasMatch() ? std::optional(found.captured().toDouble()) : std::nullopt;
}

HintedLine lineAt(const Worked& worked, const WorkingPlace& place, const Things& things) {
    const Step& step = worked.steps[place.step];
    HintedLine line;
    if (step.lines.size() == step.workings.size())
        line.gives = common(step.lines[place.working]);
    line.principle = step.title;
    line.numbers = step.workings[place.working];
    line.asks = askedNext(step, *line.numbers.subject, things);
    line.comesTo = numberOf(*line.numbers.value); // a calculated line has one
    line.numbers.value.reset();
    line.numbers.told.reset();
    line.letters = line.numbers;
    line.letters.substituted.reset();
    return line;
}

Told after(const HintedLine& line) {
    const bool hasLetters = line.letters.general.has_value(),
               hasNumbers = line.numbers.substituted.has_value();
    if (line.told == Told::nothing)
        return Told::principle;
    return line.told == Told::principle && hasLetters ? Told::letters
           : line.told != Told::numbers && hasNumbers ? Told::numbers
                                                      : Told::nothing;
}

} // namespace

Hints::Hints(const Sketch& sketch) {
    const Result result(sketch);
    if (result.solved.solutions.empty())
        return;
    const auto worked = result.worked();
    for (const WorkingPlace& place : calculatedLines(*worked))
        m_lines.push_back(lineAt(*worked, place, result.things()));
}

std::size_t Hints::next() const {
    const auto found = std::find_if(m_lines.begin(), m_lines.end(), [&](const HintedLine& line) {
        return !isRight(line.gives) && after(line) != Told::nothing;
    });
    return static_cast<std::size_t>(found - m_lines.begin());
}

const HintedLine& Hints::open() {
    HintedLine& line = m_lines[next()];
    line.told = after(line);
    return line;
}

/// What the line comes to is asked, or prints as something that is: an angle on the way may be the direction.
bool Hints::tellsOne(const HintedLine& line, const std::vector<QuantityId>& asked) const {
    return std::any_of(m_lines.begin(), m_lines.end(), [&](const HintedLine& other) {
        const bool isAsked =
            other.gives && std::find(asked.begin(), asked.end(), *other.gives) != asked.end();
        const bool isAlike =
            &line == &other || (line.comesTo && other.comesTo &&
                                std::abs(*line.comesTo - *other.comesTo) <= kAlike * *other.comesTo);
        return isAsked && isAlike && !isRight(other.gives);
    });
}

bool Hints::tellsAll(const std::vector<QuantityId>& asked) const {
    bool isTold = false; // a value that is asked stands in the numbers of a later line
    for (const HintedLine& line : m_lines) {
        if (isTold && line.told == Told::numbers)
            return true;
        isTold = isTold || tellsOne(line, asked);
    }
    return !m_lines.empty() && !hasNext();
}

} // namespace tailpoint
