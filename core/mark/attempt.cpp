// SPDX-License-Identifier: MIT
#include "core/mark/attempt.h"
#include "core/mark/match.h"

#include "core/quantity/text.h"
#include "core/quantity/utf8.h"

#include <algorithm>
#include <array>

namespace tailpoint::marking {

namespace {

using Code = AttemptFault::Code;

std::string quoted(std::string_view text) {
    return "'" + oneLine(text) + "'";
}

constexpr std::array<std::pair<char32_t, std::string_view>, 24> kGreek{
    {{U'α', "alpha"},  {U'β', "beta"}, {U'γ', "gamma"}, {U'δ', "delta"}, {U'ε', "epsilon"},
     {U'ζ', "zeta"},   {U'η', "eta"},  {U'θ', "theta"}, {U'ι', "iota"},  {U'κ', "kappa"},
     {U'λ', "lambda"}, {U'μ', "mu"},   {U'ν', "nu"},    {U'ξ', "xi"},    {U'ο', "omicron"},
     {U'π', "pi"},     {U'ρ', "rho"},  {U'σ', "sigma"}, {U'τ', "tau"},   {U'υ', "upsilon"},
     {U'φ', "phi"},    {U'χ', "chi"},  {U'ψ', "psi"},   {U'ω', "omega"}}};

void appendSpelled(std::string& out, char32_t c) {
    for (const auto& [letter, name] : kGreek)
        if (letter == c) {
            out += name;
            return;
        }
    if (c >= 0x2080 && c <= 0x2089) // lowered digits
        out += static_cast<char>('0' + (c - 0x2080));
    else if (c == U'ϑ')
        out += "theta";
    else if (c == U'ϕ')
        out += "phi";
    else if (c == U'′' || c == U'’')
        out += '\'';
    else
        appendUtf8(out, c);
}

std::string listOfNames(const Question& question) {
    std::string list;
    constexpr std::size_t most = 24;
    for (std::size_t i = 0; i < question.quantities.size() && i < most; ++i)
        list += (i == 0 ? "" : ", ") + question.quantities[i].name;
    return list + (question.quantities.size() > most ? ", ..." : "");
}

AttemptFault unknownName(const Question& question, std::string_view name) {
    return {Code::unknownName, std::string(name),
            quoted(name) + " is no quantity of this question; there are " + listOfNames(question)};
}

/// At a semicolon, 'or' and 'and'.
std::vector<std::string> partsOf(std::string_view value) {
    std::vector<std::string> parts;
    for (std::size_t begin = 0; begin <= value.size();) {
        std::size_t end = value.size(), next = value.size() + 1;
        for (const std::string_view between : {";", " or ", " and "})
            if (const std::size_t at = value.find(between, begin); at < end)
                end = at, next = at + between.size();
        parts.push_back(trimmed(value.substr(begin, end - begin)));
        begin = next;
    }
    return parts;
}

/// Without "R =" in front, where that is the quantity's own name.
std::string_view withoutName(const Question& question, const Answerable& of, std::string_view text) {
    const std::size_t sign = text.find('=');
    return sign != std::string_view::npos && named(question, text.substr(0, sign)) == &of
               ? text.substr(sign + 1)
               : text;
}

Readable<GivenNumber> readNumber(const Question& question, const Answerable& of, std::string_view text) {
    const Sketch& sketch = question.sketch();
    if (of.dimension == Dimension::force)
        return readSensed(text, sketch, of.id.what == What::magnitude && hasFreeSense(question, of.id.of));
    const bool isDirection = of.id.what == What::direction || of.id.what == What::fromX;
    return isDirection ? readDirection(text, sketch, of.id.what == What::fromX) : readAngle(text, sketch);
}

AttemptFault tooMany(const Answerable& of, std::size_t values, std::size_t answers) {
    return {Code::manyValues, of.name,
            of.name + " has " + std::to_string(values) + " values, and the question has " +
                (answers == 1 ? "one answer; give one value" : "two answers; give one value or two")};
}

/// Two values go with two, where both answers are given.
std::optional<AttemptFault> unevenPair(const Attempt& attempt) {
    const GivenValue* pair = nullptr;
    for (const GivenValue& value : attempt.values)
        if (value.numbers.size() == 2)
            pair = &value;
    for (const GivenValue& value : attempt.values)
        if (pair != nullptr && value.numbers.size() == 1 && dimensionOf(value.id.what) != Dimension::number &&
            value.id.what != What::between && value.id.what != What::opposite)
            return AttemptFault{Code::manyValues, value.name,
                                pair->name + " has two values and " + value.name +
                                    " one; give one value each, or two each, with a semicolon between"};
    return std::nullopt;
}

} // namespace

std::string trimmed(std::string_view text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t'))
        text.remove_prefix(1);
    while (!text.empty() &&
           (text.back() == ' ' || text.back() == '\t' || text.back() == '\r' || text.back() == '\n'))
        text.remove_suffix(1);
    return std::string(text);
}

std::string spelledName(std::string_view name) {
    std::string out;
    for (const char32_t c : codePoints(trimmed(name)))
        appendSpelled(out, c);
    return out;
}

const Answerable* named(const Question& question, std::string_view typed) {
    const std::string name = trimmed(typed);
    for (const Answerable& one : question.quantities)
        if (one.name == name)
            return &one;
    const std::string spelled = spelledName(name);
    for (const Answerable& one : question.quantities)
        if (spelledName(one.name) == spelled ||
            spelledName(inPrint(question.things.symbol(one.id))) == spelled)
            return &one;
    return nullptr;
}

Readable<GivenValue> readValue(const Question& question, std::string_view name, std::string_view text) {
    if (question.refusal)
        return AttemptFault{Code::noAnswer, std::string(name), *question.refusal};
    const Answerable* of = named(question, name);
    if (of == nullptr)
        return unknownName(question, trimmed(name));
    GivenValue value{of->id, of->name, {}};
    const std::vector<std::string> parts = partsOf(withoutName(question, *of, text));
    if (parts.size() > question.answers)
        return tooMany(*of, parts.size(), question.answers);
    for (const std::string& part : parts) {
        if (part.empty())
            return AttemptFault{Code::noValue, of->name,
                                of->name + " has no value; give one or leave it out"};
        auto number = readNumber(question, *of, part);
        if (auto* fault = std::get_if<AttemptFault>(&number)) {
            fault->name = of->name;
            fault->message = of->name + ": " + fault->message;
            return std::move(*fault);
        }
        value.numbers.push_back(std::get<GivenNumber>(std::move(number)));
    }
    return value;
}

Readable<Attempt> readAnswers(const Question& question, const std::vector<std::string>& answers) {
    Attempt attempt;
    for (const std::string& answer : answers) {
        const std::size_t sign = answer.find('=');
        if (sign == std::string::npos)
            return AttemptFault{Code::noEqualsSign,
                                {},
                                quoted(answer) + " has no '='; give a name and its value, as in R = 335 N"};
        auto value = readValue(question, std::string_view(answer).substr(0, sign),
                               std::string_view(answer).substr(sign + 1));
        if (auto* fault = std::get_if<AttemptFault>(&value))
            return std::move(*fault);
        auto& given = std::get<GivenValue>(value);
        for (const GivenValue& other : attempt.values)
            if (other.id == given.id)
                return AttemptFault{Code::twice, given.name,
                                    given.name + " is given twice; give one value for it"};
        attempt.values.push_back(std::move(given));
    }
    if (auto fault = unevenPair(attempt))
        return std::move(*fault);
    return attempt;
}

} // namespace tailpoint::marking
