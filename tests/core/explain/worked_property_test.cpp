// SPDX-License-Identifier: MIT
// What must hold of every worked solution, over seeded questions of every family.
#include "core/explain/explain.h"
#include "core/sketch/shown.h"
#include "tests/core/explain/questions.h"

#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <numbers>
#include <set>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

constexpr int kCases = 10'000;
constexpr std::uint64_t kSeed = 20240611;
constexpr double kHalf = 0.5 + 1.0 / 1000; ///< of the last printed place: ties are told within 1/1024 of it

struct Case {
    int number = 0;
    Sketch sketch;
    Solved solved;
    std::size_t solution = 0;
    Construction construction;
    double scale = 0;

    std::string name() const { return "seed " + std::to_string(kSeed) + ", case " + std::to_string(number); }
    std::optional<double> valueOf(const Formula& formula) const {
        const auto value = evaluate(formula, sketch.angleUnit);
        return value ? std::optional(static_cast<double>(*value)) : std::nullopt;
    }
    Worked worked(bool byHand) const {
        ExplainOptions options;
        options.handRounding = byHand;
        return explain(sketch, solved, construction, solution, options);
    }
};

/// Of a question without an answer.
double givenScale(const Sketch& sketch) {
    double scale = sketch.sum.magnitude.value.value_or(0);
    for (const Force& force : sketch.forces)
        scale += force.magnitude.value.value_or(0);
    return std::max(scale, 1.0);
}

double scaleOf(const Solution& solution) {
    double scale = solution.sum.magnitude;
    for (const SolvedForce& force : solution.forces)
        scale += force.magnitude;
    return scale;
}

/// Calls `check` with every case, each with every one of its answers.
template <class Check>
void forEachCase(Check check) {
    Dice dice(kSeed);
    for (int i = 0; i < kCases && !::testing::Test::HasFailure(); ++i) {
        Case c;
        c.number = i;
        c.sketch = someQuestion(dice, i % kQuestionKinds);
        c.solved = solve(c.sketch);
        const std::size_t answers = std::max<std::size_t>(1, c.solved.solutions.size());
        for (c.solution = 0; c.solution < answers; ++c.solution) {
            c.construction = construct(c.sketch, c.solved, c.solution);
            c.scale =
                c.solved.solutions.empty() ? givenScale(c.sketch) : scaleOf(c.solved.solutions[c.solution]);
            check(c);
        }
    }
}

bool isAngle(const Formula& number) {
    return number.sub == "°" || number.sub == "rad" || number.sub == "gon";
}

/// One in the last place of a number as it is printed; zeros before the point count as far as figures go.
double lastPlace(const Formula& number, int figures) {
    const auto [digits, exponent] = splitExponent(number.text);
    const int power = exponent.empty() ? 0 : std::stoi(std::string(exponent));
    const auto point = digits.find('.');
    if (point != std::string_view::npos)
        return std::pow(10.0, power - static_cast<int>(digits.size() - point - 1));
    const int whole = static_cast<int>(digits.size()) - (digits.front() == '-' ? 1 : 0);
    return std::pow(10.0, power + std::max(0, whole - figures));
}

template <class Visit>
void visitSymbols(const Formula& formula, Visit visit) {
    if (formula.kind == FormulaKind::symbol)
        visit(formula);
    for (const Formula& part : formula.parts)
        visitSymbols(part, visit);
}

template <class Visit>
void visitSymbols(const Prose& prose, Visit visit) {
    for (const Piece& piece : prose.pieces)
        if (const auto* formula = std::get_if<Formula>(&piece))
            visitSymbols(*formula, visit);
}

TEST(WorkedProperty, EverySubstitutionEvaluatesToItsResultsLastDigit) {
    int checked = 0;
    forEachCase([&](const Case& c) {
        for (const Step& step : c.worked(false).steps)
            for (const Working& w : step.workings) {
                if (!w.substituted || !w.value)
                    continue;
                ++checked;
                const auto value = c.valueOf(*w.substituted), shown = c.valueOf(*w.value);
                ASSERT_TRUE(value) << c.name() << ", step " << nameOf(step.key) << ": "
                                   << toText(*w.substituted);
                const double slack = kHalf * lastPlace(*w.value, c.sketch.figures + 2) + 1e-12 * c.scale;
                ASSERT_NEAR(*value, *shown, slack) << c.name() << ", step " << nameOf(step.key) << ": "
                                                   << toText(*w.substituted) << " = " << toText(*w.value);
            }
    });
    EXPECT_GT(checked, 5 * kCases);
}

TEST(WorkedProperty, ParallelogramByParallelogramLeadsToTheSameResultant) {
    int paired = 0;
    forEachCase([&](const Case& c) {
        if (c.number % kQuestionKinds != 1 || c.solved.solutions.empty())
            return;
        ExplainOptions options;
        options.parallelograms = true;
        const Worked worked = explain(c.sketch, c.solved, c.construction, c.solution, options);
        EXPECT_EQ(toText(worked.answer), toText(c.worked(false).answer)) << c.name();
        for (const Step& step : worked.steps) {
            paired += step.key == StepKey::pair ? 1 : 0;
            for (const Working& w : step.workings) {
                if (!w.substituted || !w.value)
                    continue;
                const auto value = c.valueOf(*w.substituted), shown = c.valueOf(*w.value);
                ASSERT_TRUE(value) << c.name() << ", step " << nameOf(step.key) << ": "
                                   << toText(*w.substituted);
                const double slack = kHalf * lastPlace(*w.value, c.sketch.figures + 2) + 1e-12 * c.scale;
                ASSERT_NEAR(*value, *shown, slack) << c.name() << ", step " << nameOf(step.key) << ": "
                                                   << toText(*w.substituted) << " = " << toText(*w.value);
            }
        }
    });
    EXPECT_GT(paired, kCases / 10);
}

/// "-0.310 N" as "-0.31 N": what a sum leaves over claims no places that its terms don't have.
std::string withoutZeros(const std::string& shown) {
    const auto point = shown.find('.'), space = shown.find(' ');
    if (point == std::string::npos || shown.find('e') != std::string::npos)
        return shown;
    auto end = shown.find_last_not_of('0', space - 1);
    end = end == point ? point : end + 1;
    return shown.substr(0, end) + shown.substr(space);
}

/// What a sum leaves over when its terms cancel is told without zeros at its end.
TEST(WorkedProperty, ByHandEveryResultIsTheRoundedValueOfTheShownNumbers) {
    int checked = 0;
    forEachCase([&](const Case& c) {
        for (const Step& step : c.worked(true).steps)
            for (const Working& w : step.workings) {
                if (!w.substituted || !w.value)
                    continue;
                const auto value = c.valueOf(*w.substituted); // values are the shown digits here
                if (!value)
                    continue; // the rounded sine exceeds 1: the full angle stands
                ++checked;
                const std::string expected =
                    isAngle(*w.value) ? shownAngle(*value, c.sketch) : shownForceWithUnit(*value, c.sketch);
                const std::string got = w.value->text + (w.value->sub == "°" ? "" : " ") + w.value->sub;
                if (w.value->value == 0 && std::abs(*value) < 1e-9 * c.scale)
                    continue; // a component that vanishes but for its own rounding
                const bool cancels = std::abs(*value) < c.scale * std::pow(10.0, 1 - c.sketch.figures);
                ASSERT_TRUE(got == expected || (cancels && got == withoutZeros(expected)))
                    << got << " for " << expected << ", " << c.name() << ", step " << nameOf(step.key) << ": "
                    << toText(*w.substituted);
            }
    });
    EXPECT_GT(checked, 5 * kCases);
}

/// What each symbol of a solution must show: from Solved and Construction alone.
using Expected = std::map<std::string, std::string>;

void expectVector(Expected& out, const SolvedForce& f, const Sketch& sketch, const std::string& prime) {
    Formula size = magnitudeSymbol(f.name);
    size.text += prime;
    out[keyOf(size)] = shownForceWithUnit(f.magnitude, sketch);
    const std::string sub = size.text.substr(0, size.text.size() - prime.size()) + size.sub;
    // Of a line found in the other sense θ is the direction drawn, θ′ the one in which it acts.
    if (f.direction)
        out[keyOf(symbol("θ" + (f.turned && prime.empty() ? "′" : prime), sub))] =
            shownAngle(*f.direction, sketch);
}

Expected expectedOf(const Case& c) {
    Expected out;
    for (std::size_t i = 0; i < c.solved.solutions.size(); ++i) {
        const std::string prime = c.solved.solutions.size() < 2 ? "" : i == 0 ? "′" : "″";
        const Solution& s = c.solved.solutions[i];
        for (const SolvedForce& f : s.forces)
            expectVector(out, f, c.sketch, prime);
        expectVector(out, s.sum, c.sketch, prime);
        const Construction drawn = construct(c.sketch, c.solved, i);
        static constexpr const char* angles[] = {"α", "β", "γ"};
        for (std::size_t a = 0; drawn.triangle && a < 3; ++a)
            if (drawn.triangle->opposite[a])
                out[angles[a] + prime] = shownAngleFromRadians(*drawn.triangle->opposite[a], c.sketch);
    }
    return out;
}

TEST(WorkedProperty, EveryResultEqualsTheSolvedValueToTheShownDigit) {
    int checked = 0;
    forEachCase([&](const Case& c) {
        if (c.solved.solutions.empty())
            return;
        const Expected expected = expectedOf(c);
        for (const Step& step : c.worked(false).steps) {
            if (step.key == StepKey::check) // another way to the answer, with its own last place
                continue;
            for (const Working& w : step.workings) {
                if (!w.subject || !w.value || w.subject->kind != FormulaKind::symbol)
                    continue;
                const auto found = expected.find(keyOf(*w.subject));
                if (found == expected.end())
                    continue;
                ++checked;
                const double value = w.value->value;
                ASSERT_EQ(isAngle(*w.value) ? shownAngle(value, c.sketch)
                                            : shownForceWithUnit(value, c.sketch),
                          found->second)
                    << c.name() << ", step " << nameOf(step.key) << ": " << toText(*w.subject);
            }
        }
    });
    EXPECT_GT(checked, 2 * kCases);
}

/// Symbols by the time a reader reaches a place.
class Reader {
public:
    explicit Reader(const Case& c) : m_case(c) {}

    void read(const Step& step) {
        for (const Prose& prose : step.reasoning)
            introduce(prose);
        if (step.table)
            for (const auto& row : step.table->rows)
                introduceRow(row);
        for (const Working& w : step.workings)
            read(w, step);
        for (const Prose& prose : step.conclusion)
            introduce(prose);
    }

private:
    void introduce(const Prose& prose) {
        visitSymbols(prose, [&](const Formula& s) { m_known.insert(keyOf(s)); });
    }
    void introduceRow(const std::vector<Formula>& row) {
        visitSymbols(row.front(), [&](const Formula& s) {
            m_known.insert(keyOf(componentSymbol(plainName(s), 'x')));
            m_known.insert(keyOf(componentSymbol(plainName(s), 'y')));
            m_known.insert(keyOf(componentSymbol(plainName(s), 'u')));
            m_known.insert(keyOf(componentSymbol(plainName(s), 'v')));
        });
    }
    static std::string plainName(const Formula& vector) {
        return vector.sub.empty() ? vector.text : vector.text + "_" + vector.sub;
    }
    void read(const Working& w, const Step& step) {
        for (const auto* part : {&w.general, &w.substituted})
            if (*part)
                visitSymbols(**part, [&](const Formula& s) {
                    EXPECT_TRUE(m_known.contains(keyOf(s)) || w.subject == s)
                        << m_case.name() << ", step " << nameOf(step.key) << ": " << toText(s) << " in "
                        << toText(**part);
                });
        if (w.subject)
            visitSymbols(*w.subject, [&](const Formula& s) { m_known.insert(keyOf(s)); });
    }

    const Case& m_case;
    std::set<std::string> m_known;
};

TEST(WorkedProperty, EverySymbolIsIntroducedBeforeItIsUsed) {
    forEachCase([](const Case& c) {
        Reader reader(c);
        for (const Step& step : c.worked(false).steps)
            reader.read(step);
    });
}

bool isMagnitudeOf(const Sketch& sketch, const Formula& f) {
    const Formula& bare = f.kind == FormulaKind::negative ? f.parts[0] : f;
    if (bare.kind != FormulaKind::symbol || bare.bold)
        return false;
    for (const Force& force : sketch.forces)
        if (magnitudeSymbol(force.name) == bare)
            return true;
    return magnitudeSymbol(sketch.sum.name) == bare;
}

/// A sum of magnitudes alone, as if they were vectors.
bool addsMagnitudes(const Sketch& sketch, const Formula& f) {
    if (f.kind != FormulaKind::sum)
        return false;
    for (const Formula& part : f.parts)
        if (!isMagnitudeOf(sketch, part))
            return false;
    return true;
}

void expectVectorsAlone(const Formula& f, const std::string& where) {
    bool bold = false, light = false;
    visitSymbols(f, [&](const Formula& s) { (s.bold ? bold : light) = true; });
    EXPECT_FALSE(bold && light) << where << ": " << toText(f);
}

TEST(WorkedProperty, NoEquationAddsMagnitudesAsIfTheyWereVectors) {
    forEachCase([](const Case& c) {
        for (const Step& step : c.worked(false).steps)
            for (const Working& w : step.workings) {
                if (!w.general)
                    continue;
                const std::string where = c.name() + ", step " + std::string(nameOf(step.key));
                if (w.subject) {
                    EXPECT_FALSE(addsMagnitudes(c.sketch, *w.general)) << where << ": " << toText(*w.general);
                    EXPECT_FALSE(w.subject->bold) << where;
                }
                if (w.general->kind == FormulaKind::relation)
                    expectVectorsAlone(*w.general, where);
            }
    });
}

TEST(WorkedProperty, EverySolutionEndsInASentenceAndEveryStepHasATitle) {
    forEachCase([](const Case& c) {
        const Worked worked = c.worked(c.number % 2 == 0);
        ASSERT_FALSE(worked.steps.empty()) << c.name();
        EXPECT_TRUE(toText(worked.answer).ends_with(".")) << c.name() << ": " << toText(worked.answer);
        for (const Step& step : worked.steps)
            EXPECT_FALSE(step.title.empty()) << c.name();
        const std::string text = toText(worked);
        for (const char* bad : {"nan", "inf", "-0 ", "-0.0°", "{}", "  ,"})
            EXPECT_EQ(text.find(bad), std::string::npos) << c.name() << ": " << bad << "\n" << text;
    });
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
