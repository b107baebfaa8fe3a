// SPDX-License-Identifier: MIT
// Sets a formula's parts in type. Internal to render/.
#pragma once

#include "ui/render/formula.h"

namespace tailpoint {

class Typesetter {
public:
    explicit Typesetter(TypeSize size) : m_size(size), m_em(size.pixels) {}

    Setting set(const Formula& formula) const;
    Setting text(const QString& string, bool italic = false, bool bold = false) const;
    Setting sign(Relation relation) const;

    /// Terms of a sum, each with its sign in front: where a long sum may be broken.
    std::vector<Setting> terms(const Formula& sum) const;
    /// Of a row: what no space parts stays together.
    std::vector<Setting> words(const Formula& row) const;

    /// Puts `more` to the right, `space` ems off.
    void append(Setting& out, Setting more, double space = 0) const;
    /// Broken into lines where it is wider than `room`: sums before a sign, also under roots, in fractions
    /// and in arguments; products before a factor; rows at their spaces.
    Setting broken(const Formula& formula, double room) const;
    Setting brokenTerm(const Formula& sum, std::size_t index, double room) const;

    double em() const { return m_em; }
    TypeSize size() const { return m_size; }

private:
    Typesetter script() const;
    double scriptPart() const;
    double drop() const;
    Setting part(const Formula& parent, std::size_t index) const;
    Setting negative(const Formula& formula) const;
    Setting number(const Formula& formula) const;
    Setting powerOfTen(const QString& digits, std::string_view exponent, const Formula& formula) const;
    Setting symbol(const Formula& formula) const;
    Setting subscript(const Formula& symbol) const;
    Setting term(const Formula& sum, std::size_t index) const;
    Setting sum(const Formula& formula) const;
    Setting product(const Formula& formula) const;
    Setting fraction(const Formula& formula) const;
    Setting over(Setting above, Setting below) const;
    Setting power(const Formula& formula) const;
    Setting root(const Formula& formula) const;
    Setting rootOver(const Setting& radicand) const;
    Setting function(const Formula& formula) const;
    Setting relation(const Formula& formula) const;
    Setting row(const Formula& formula) const;
    Setting parentheses(Setting inner) const;
    Setting bars(const Setting& inner) const;
    QPainterPath crescent(double top, double bottom, double bulge) const;

    TypeSize m_size;
    double m_em;
};

} // namespace tailpoint
