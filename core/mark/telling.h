// SPDX-License-Identifier: MIT
// A finding in words and formulas. Internal to mark/.
#pragma once

#include "core/derive/printed.h"
#include "core/mark/findings.h"

namespace tailpoint::marking {

class Telling {
public:
    Telling(const Question& question, const Alternatives& alternatives);

    Finding finding(const Fitting& fitting, const std::vector<Given>& givens) const;
    Prose ask(const Fitting& fitting) const;
    /// As the sheet shows it: "520 N", "3.6° clockwise from +x".
    std::string shown(std::size_t cell, double value) const;
    std::string stated(const Given& given) const;                    ///< as it was typed, or as it was drawn
    void addRange(std::size_t cell, MarkedQuantity& quantity) const; ///< of what is right

    const Slip& slipOf(std::size_t single) const;
    /// Whether that slip by itself makes a cell wrong.
    bool changes(std::size_t single, std::size_t cell) const {
        return m_alternatives.at(single).changed[cell];
    }

private:
    const tolerance::VectorRange* rangeFor(std::size_t cell) const;
    std::string asGiven(std::size_t cell, const GivenNumber& number) const;
    void addEqual(Prose& prose, std::size_t cell, const std::string& value) const;
    void addSecond(const Fitting& fitting, Finding& out) const;
    void addAlso(const Fitting& fitting, Finding& out) const;
    double withItsSign(std::size_t cell, double value, const std::vector<Given>& givens) const;
    void addNumbers(const Fitting& fitting, std::size_t answer, const std::vector<Given>& givens,
                    Finding& out) const;
    Prose say(const Wording& wording, const SlipOrigin& origin) const;
    const SlipOrigin& originOf(std::size_t single) const;
    std::vector<ChangedLine> linesOf(std::size_t single) const;
    std::vector<ChangedLine> rewritten(const SlipOrigin& origin) const;
    std::vector<ChangedLine> readOtherwise(const SlipOrigin& origin) const;
    std::optional<StepKey> stepOf(const SlipOrigin& origin) const;

    Formula numberOf(const QuantityId& id, long double value, bool isGiven) const;
    using ValueOf = std::function<std::optional<long double>(const QuantityId&)>;
    Formula inNumbers(const Formula& formula, const ValueOf& valueOf) const;
    Working working(const QuantityId& subject, const Formula& formula, const ValueOf& valueOf) const;
    bool isGivenQuantity(const QuantityId& id) const;

    const Question& m_question;
    const Alternatives& m_alternatives;
    double m_scale = 0;
    Paper m_paper;
};

} // namespace tailpoint::marking
