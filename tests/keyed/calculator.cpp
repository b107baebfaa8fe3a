// SPDX-License-Identifier: MIT
#include "tests/keyed/calculator.h"

#include <array>
#include <boost/math/constants/constants.hpp>

namespace tailpoint::keyed {

namespace {

using boost::multiprecision::abs;

constexpr std::array<std::string_view, 10> kRaised{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
constexpr std::array<std::string_view, 5> kForces{"kgf", "kip", "lbf", "kN", "N"};
constexpr std::array<std::string_view, 6> kFunctions{"arcsin", "arccos", "arctan", "sin", "cos", "tan"};

Big pi() {
    return boost::math::constants::pi<Big>();
}

Big halfTurn(Angles angles) {
    return angles == Angles::degrees ? Big(180) : angles == Angles::gon ? Big(200) : pi();
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
/// Letters, and every byte of a character beyond ASCII but for the signs that end a number.
bool isOfWord(std::string_view rest) {
    if (rest.empty())
        return false;
    const auto c = static_cast<unsigned char>(rest.front());
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_';
}

struct Stop {
    Outcome::Kind why;
};

class Reader {
public:
    Reader(std::string_view text, Angles angles, const Memory& memory)
        : m_rest(text), m_angles(angles), m_memory(memory) {}

    Amount whole() {
        const Amount amount = sum();
        space();
        if (!m_rest.empty())
            throw Stop{Outcome::Kind::unread};
        return amount;
    }

    PrintedNumber number() {
        PrintedNumber out;
        const bool minus = take("-");
        std::string digits;
        readDigits(digits, out);
        if (digits.empty() && !m_rest.starts_with("π"))
            throw Stop{Outcome::Kind::unread};
        out.amount.value = digits.empty() ? Big(1) : Big(digits);
        if (take("π"))
            out.amount.value *= pi();
        if (take(" × 10"))
            shift(out);
        if (minus)
            out.amount.value = -out.amount.value;
        out.amount.force = unit();
        out.amount.largest = abs(out.amount.value);
        return out;
    }
    bool isAtEnd() const { return m_rest.empty(); }

private:
    bool take(std::string_view sign) {
        if (!m_rest.starts_with(sign))
            return false;
        m_rest.remove_prefix(sign.size());
        return true;
    }
    void space() {
        while (m_rest.starts_with(' '))
            m_rest.remove_prefix(1);
    }

    void readDigits(std::string& digits, PrintedNumber& out) {
        bool leading = true;
        while (!m_rest.empty() && (isDigit(m_rest.front()) || m_rest.front() == '.')) {
            const char c = m_rest.front();
            if (c == '.') {
                out.hasPoint = true;
            } else {
                leading = leading && c == '0';
                out.digits += leading ? 0 : 1;
                out.decimals += out.hasPoint ? 1 : 0;
            }
            digits += c;
            m_rest.remove_prefix(1);
        }
    }
    std::optional<int> raised() {
        for (int d = 0; d < 10; ++d)
            if (take(kRaised[static_cast<std::size_t>(d)]))
                return d;
        return std::nullopt;
    }
    void shift(PrintedNumber& out) {
        const bool below = take("⁻");
        int exponent = 0;
        while (const auto digit = raised())
            exponent = 10 * exponent + *digit;
        exponent = below ? -exponent : exponent;
        out.amount.value *= powerOfTen(exponent);
        out.decimals -= exponent;
        out.hasPoint = true; // all its digits are meant
    }
    /// Consumes a unit; the power of force in it.
    int unit() {
        if (take("°"))
            return expectAngle(Angles::degrees);
        if (!m_rest.starts_with(' '))
            return 0;
        std::string_view behind = m_rest.substr(1);
        const auto isUnit = [&](std::string_view sign) {
            return behind.starts_with(sign) && !isOfWord(behind.substr(sign.size()));
        };
        for (const std::string_view force : kForces)
            if (isUnit(force)) {
                m_rest = behind.substr(force.size());
                return 1;
            }
        for (const auto& [sign, angles] : {std::pair{"rad", Angles::radians}, std::pair{"gon", Angles::gon}})
            if (isUnit(sign)) {
                m_rest = behind.substr(3);
                return expectAngle(angles);
            }
        return 0;
    }
    int expectAngle(Angles angles) const {
        if (angles != m_angles)
            throw Stop{Outcome::Kind::unread};
        return 0;
    }

    Amount sum() {
        space();
        const bool minus = take("-");
        Amount total = term();
        if (minus)
            total.value = -total.value;
        while (true) {
            const std::string_view before = m_rest;
            space();
            const bool plus = m_rest.starts_with("+ "), less = m_rest.starts_with("- ");
            if (!plus && !less) {
                m_rest = before;
                return total;
            }
            m_rest.remove_prefix(2);
            Amount next = term();
            if (next.force != total.force && next.value != 0 && total.value != 0)
                throw Stop{Outcome::Kind::unread};
            total.value += plus ? next.value : -next.value;
            total.largest = std::max(total.largest, next.largest);
        }
    }

    Amount term() {
        Amount total = factor();
        while (true) {
            const std::string_view before = m_rest;
            space();
            if (take("/")) {
                space();
                const Amount by = factor();
                if (by.value == 0)
                    throw Stop{Outcome::Kind::undefined};
                total.value /= by.value;
                total.force -= by.force;
                total.largest = std::max(total.largest, Big(abs(total.value)));
                continue;
            }
            take("·");
            if (!startsFactor()) {
                m_rest = before;
                return total;
            }
            const Amount by = factor();
            total.value *= by.value;
            total.force += by.force;
            total.largest = std::max(total.largest, Big(abs(total.value)));
        }
    }
    bool startsFactor() const {
        if (m_rest.empty())
            return false;
        const char c = m_rest.front();
        if (c == '|')
            return m_bars == 0;
        return isDigit(c) || c == '(' || m_rest.starts_with("√") || m_rest.starts_with("π") || function() ||
               symbol() != nullptr;
    }

    std::optional<std::string_view> function() const {
        for (const std::string_view name : kFunctions)
            if (m_rest.starts_with(name) && m_rest.size() > name.size() &&
                (m_rest[name.size()] == ' ' || m_rest[name.size()] == '('))
                return name;
        return std::nullopt;
    }
    const Memory::value_type* symbol() const {
        const Memory::value_type* longest = nullptr;
        for (const auto& one : m_memory)
            if (m_rest.starts_with(one.first) && (!longest || one.first.size() > longest->first.size()))
                longest = &one;
        return longest;
    }

    Amount factor() {
        Amount base = atom();
        if (const auto exponent = raised()) {
            base.value = pow(base.value, *exponent);
            base.force *= *exponent;
            base.largest = std::max(base.largest, Big(abs(base.value)));
        }
        return base;
    }

    Amount atom() {
        if (take("√"))
            return root();
        if (take("(")) {
            const int bars = std::exchange(m_bars, 0);
            const Amount inner = sum();
            m_bars = bars;
            return expect(")"), inner;
        }
        if (take("|")) {
            ++m_bars;
            Amount inner = sum();
            --m_bars;
            expect("|");
            inner.value = abs(inner.value);
            return inner;
        }
        if (const auto name = function())
            return applied(*name);
        if (const auto* known = symbol()) {
            m_rest.remove_prefix(known->first.size());
            return known->second;
        }
        return number().amount;
    }
    void expect(std::string_view sign) {
        if (!take(sign))
            throw Stop{Outcome::Kind::unread};
    }

    Amount root() {
        const Amount inner = factor();
        if (inner.force % 2 != 0)
            throw Stop{Outcome::Kind::unread};
        if (inner.value < 0)
            throw Stop{Outcome::Kind::undefined};
        return {sqrt(inner.value), inner.force / 2, sqrt(inner.largest)};
    }

    Amount applied(std::string_view name) {
        m_rest.remove_prefix(name.size());
        space();
        const Amount of = atom();
        if (of.force != 0)
            throw Stop{Outcome::Kind::unread};
        const Big value = name.starts_with("arc") ? inverse(name, of.value) : direct(name, of.value);
        return {value, 0, Big(1)};
    }
    Big direct(std::string_view name, const Big& angle) const {
        const Big radians = angle / halfTurn(m_angles) * pi();
        return name == "sin" ? Big(sin(radians)) : name == "cos" ? Big(cos(radians)) : Big(tan(radians));
    }
    Big inverse(std::string_view name, const Big& x) const {
        if (name != "arctan" && abs(x) > 1)
            throw Stop{Outcome::Kind::undefined};
        const Big radians = name == "arcsin" ? Big(asin(x)) : name == "arccos" ? Big(acos(x)) : Big(atan(x));
        return radians / pi() * halfTurn(m_angles);
    }

    std::string_view m_rest;
    Angles m_angles;
    const Memory& m_memory;
    int m_bars = 0; ///< open ones: within them a bar closes
};

} // namespace

Outcome keyIn(std::string_view text, Angles angles, const Memory& memory) {
    try {
        return {Outcome::Kind::value, Reader(text, angles, memory).whole()};
    } catch (const Stop& stop) {
        return {stop.why, {}};
    }
}

std::optional<PrintedNumber> printedNumber(std::string_view text, Angles angles) {
    static const Memory nothing;
    try {
        Reader reader(text, angles, nothing);
        const PrintedNumber number = reader.number();
        return reader.isAtEnd() ? std::optional(number) : std::nullopt;
    } catch (const Stop&) {
        return std::nullopt;
    }
}

Big powerOfTen(int exponent) {
    Big power = 1;
    for (int i = 0; i < std::abs(exponent); ++i)
        power *= 10;
    return exponent < 0 ? Big(1 / power) : power;
}

} // namespace tailpoint::keyed
