#include "ui/lecture/said.h"

#include <set>

namespace tailpoint {

namespace {

using Numbers = std::set<std::string>; ///< as the figure shows them, without sign

void take(Numbers& numbers, const Formula& f) {
    if (f.kind == FormulaKind::number && !f.sub.empty()) {
        const std::string digits = f.text.starts_with('-') ? f.text.substr(1) : f.text;
        numbers.insert(digits + (f.sub == "\u00b0" ? "" : " ") + f.sub);
    }
    for (const Formula& part : f.parts)
        take(numbers, part);
}

void take(Numbers& numbers, const Prose& prose) {
    for (const Piece& piece : prose.pieces)
        if (const auto* formula = std::get_if<Formula>(&piece))
            take(numbers, *formula);
}

void take(Numbers& numbers, const Table& table) {
    for (const auto& row : table.rows)
        for (const Formula& cell : row)
            take(numbers, cell);
}

void take(Numbers& numbers, const Step& step, const BeatLine& line) {
    switch (line.kind) {
    case BeatLine::Kind::reasoning:
        return take(numbers, step.reasoning[line.index]);
    case BeatLine::Kind::conclusion:
        return take(numbers, step.conclusion[line.index]);
    case BeatLine::Kind::table:
        return take(numbers, *step.table);
    case BeatLine::Kind::working:
        break;
    }
    const std::vector<Formula> relations = linesOf(step.workings[line.index]);
    for (std::size_t i = 0; i < relations.size() && i < static_cast<std::size_t>(line.parts); ++i)
        take(numbers, relations[i]);
}

Numbers resultsOf(const Step& step) {
    Numbers results;
    for (const Working& working : step.workings)
        if (working.value)
            take(results, *working.value);
    return results;
}

} // namespace

void markUnsaid(std::vector<Stop>& stops) {
    Numbers said, results;
    for (const Stop& stop : stops) {
        results.merge(resultsOf(stop.step));
        if (stop.step.key == StepKey::given) // what is given may be seen from the first
            for (const Prose& prose : stop.step.reasoning)
                take(said, prose);
    }
    for (Stop& stop : stops)
        for (const Beat& beat : stop.beats) {
            for (const BeatLine& line : beat)
                take(said, stop.step, line);
            std::vector<std::string>& unsaid = stop.unsaid.emplace_back();
            for (const std::string& number : results)
                if (!said.contains(number))
                    unsaid.push_back(number);
        }
}

} // namespace tailpoint
