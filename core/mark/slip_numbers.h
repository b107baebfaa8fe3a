// SPDX-License-Identifier: MIT
// The numbers that slips give for what is asked: for questions that are to tell slips apart, and for the
// margin of a key. Nothing is marked here.
#pragma once

#include "core/mark/mark.h"

#include <span>

namespace tailpoint {

/// By cell: the asked quantities in the question's order, of each the first answer's value and, where there
/// are two, the second's. In the sheet's units.
struct AskedNumbers {
    std::vector<std::optional<double>> values; ///< empty: the slip says nothing of it
    /// How far an answer written to the asked figures may lie off: half a unit of its last digit and what
    /// rounding on the way can move. Of what is right at least a unit of the second figure, or a degree:
    /// marking takes what is cut off there for rounded.
    std::vector<double> reach;
};

/// One way to make a slip.
struct SlipNumbers {
    std::string_view id;
    AskedNumbers numbers;
    bool changes = false; ///< an asked quantity
    /// Of a slip in the calculation: the values of the lines that it rewrites, and the chain they are of.
    Overrides lines;
    std::optional<Route> route;
    /// Where it is made, as far as that is one place: an angle between two forces or in the triangle, a
    /// component, what is given of a vector.
    std::optional<QuantityId> at;
    /// By cell: of a magnitude along a line that leaves the sense open, whether the slip has it act against
    /// the sense drawn; empty: it says nothing of that.
    std::vector<std::optional<bool>> against;
};

struct SlipTable {
    std::vector<Answerable> asked;
    std::size_t answers = 1; ///< 1 or 2
    AskedNumbers right;
    std::vector<SlipNumbers> slips; ///< in the order of the table of slips
    double turn = 360;              ///< a full turn in the sheet's unit

    std::size_t cells() const { return asked.size() * answers; }
    /// How far two values lie apart; of directions without whole turns.
    double apart(std::size_t cell, double a, double b) const;
    /// Some asked quantity, in one answer of the question at least, tells the two apart. Where one of them
    /// says nothing of a quantity, it is right there.
    bool tellsApart(const AskedNumbers& a, const AskedNumbers& b) const;
};

/// For slips of these ids, or for all where there are none. Empty where nothing can be marked. Costs what
/// those slips cost: about a millisecond for six.
std::optional<SlipTable> slipTable(const Sketch& sketch, const Solved& solved,
                                   std::span<const std::string_view> ids = {});

/// The same of a question that is marked anyway, for the slips that its marker looks for: costs little beside
/// the marker.
std::optional<SlipTable> slipTable(const Marker& marker);

} // namespace tailpoint
