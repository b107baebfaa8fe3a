// SPDX-License-Identifier: MIT
// mark/: which slip gives exactly this number. An answer is compared with what is right and, where it is
// wrong, with what the usual slips give. A slip is a rewrite: of the question (it is read wrongly and solved
// as ever), of lines of the chain of calculation (every later line is computed anew), or of the answer's
// form. The table of them is slips.h; no slip has an arithmetic of its own but for the few short cuts.
//
//   const Marker marker(sketch, solve(sketch));         // once; serves a whole class
//   const auto read = marker.read({"R = 335 N", "theta_R = 12.3"});
//   if (const auto* fault = std::get_if<AttemptFault>(&read)) ...fault->message
//   const Marking marking = marker.mark(std::get<Attempt>(read));
//
// A Marker is immutable but for what it keeps of work done (pairs of slips, when first needed): one thread at
// a time. It refers to nothing outside itself.
#pragma once

#include "core/derive/chain.h"
#include "core/explain/explain.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace tailpoint {

/// Of one quantity, and of the whole.
enum class Verdict : std::uint8_t {
    right,
    rounded,    ///< right to fewer figures than asked, cut off, or as far as rounding on the way explains
    unit,       ///< right but for the unit
    axis,       ///< the right direction, counted from another axis or in the other turning sense
    follows,    ///< wrong, and right for an earlier wrong value; of a quantity only
    slip,       ///< wrong, and a usual slip gives exactly this
    other,      ///< wrong, and nothing known gives it
    missing,    ///< not given; of a quantity only
    incomplete, ///< an asked quantity, or the second answer, is missing; of the whole only
    unread      ///< can't be read; of a whole: one of its quantities
};
std::string_view nameOf(Verdict verdict); ///< "right", "rounded", ...

enum class SlipPlace : std::uint8_t { reading, calculation, shortCut, reporting };
std::string_view nameOf(SlipPlace place); ///< "reading", "calculation", "short cut", "reporting"

/// How a question is marked: the key "marking" of a sketch's file.
struct MarkOptions {
    /// By plain name, of asked quantities; one point for those that aren't there. Others are heeded not.
    std::vector<std::pair<std::string, double>> points;
    bool followThrough = true; ///< what follows from an earlier wrong value earns its points
    bool bothAnswers = false;  ///< of a question with two answers one pair alone is incomplete
    bool unitRequired = false; ///< a magnitude without a unit is `unit`
    /// A magnitude along a line that leaves its sense open is stated with its sign: negative where the vector
    /// acts against the sense drawn. Without this either sign is right there.
    bool signedSenses = false;
    /// Share of the points, 0 to 1, for such a verdict; `slip` for strong evidence in reading and
    /// calculation.
    double creditUnit = 0, creditAxis = 0, creditSlip = 0;
    const Sentences* sentences = nullptr; ///< of another language; kept alive by the caller
    /// Ids of the slips that are looked for; empty: all. With a few a Marker is made in a tenth of the time,
    /// and evidence looks stronger than it is.
    std::vector<std::string> onlySlips{};
    bool saysWhy = true; ///< false: verdicts and points alone, no slips and no question back, in less time
};

/// One number as given, in the sheet's units; a direction from the question's axis, in its sense.
struct GivenReading {
    double value = 0;
    double half = 0;  ///< half a unit of its last digit (a drawn one's tolerance)
    int figures = 15; ///< significant figures of a magnitude, decimals of an angle
    double unit = 1;  ///< of a magnitude: the unit in which it is written, in the sheet's
};
struct GivenNumber {
    std::string text; ///< as typed: "335 N"
    /// More than one where a comma before three digits reads two ways (1,234).
    std::vector<GivenReading> readings;
    bool hasUnit = false; ///< a unit was written, or a form that needs none (slope, bearing, words)
    bool drawn = false;   ///< `half` is the drawing's tolerance
    bool isMass = false;  ///< kilograms or tonnes for a force; `readings` are of their weight
};
/// The line of calculation that a number is given for, where it is asked for that line and no other: right is
/// what the chain of that route has there, and of two answers the subject's own.
struct GivenLine {
    QuantityId subject;
    Route route;
    std::optional<double> printed{}; ///< right where no chain has the line: one that leads to no answer
};
/// A value for a named quantity. `id` is common to both answers of a question that has two.
struct GivenValue {
    QuantityId id;
    std::string name;
    std::vector<GivenNumber> numbers; ///< one; two, in the order in which they stand, for both answers
    std::optional<GivenLine> line{}; ///< empty: by whatever route, in whichever answer; with one number alone
};
/// What stands for a quantity and can't be read.
struct UnreadValue {
    QuantityId id; ///< common to both answers
    std::string text;
};
struct Attempt {
    std::vector<GivenValue> values; ///< each quantity once
    /// Besides these: what is marked `unread` while the rest is marked as ever.
    std::vector<UnreadValue> unread{};
};

/// Why an answer can't be read: one line, with the mend.
struct AttemptFault {
    enum class Code : std::uint8_t {
        noEqualsSign,
        unknownName, ///< the message lists the names that there are
        twice,       ///< one name given twice
        noValue,
        unreadable,
        wrongUnit,  ///< degrees for a force, newtons for an angle
        manyValues, ///< two values where there is one answer, more than two, or two against one
        noAnswer    ///< of the question
    };
    Code code = Code::unreadable;
    std::string name;
    std::string message;
};
template <class T>
using Readable = std::variant<T, AttemptFault>;

/// A quantity beside the value that is right.
struct MarkedQuantity {
    QuantityId id; ///< of the answer against which it was marked
    std::string name;
    bool asked = false;
    int answer = 0;              ///< 1, 2: which of two given pairs it stands in; 0: there is but one
    std::optional<double> given; ///< in the sheet's units; empty: missing
    std::optional<double> expected;
    Verdict verdict = Verdict::missing;
    bool isLastFigure = false; ///< rounded, with all the figures that are asked: the last of them is off
    double points = 0, of = 0;
    std::string givenText, expectedText; ///< "335 N"; "520 N", "3.6° clockwise from +x"
    /// What is right can be, where given values have tolerances: "509 to 530 N"; see `ranged`.
    std::string rangeText;
    /// Whether it has a range of its own; an angle on the way, say, is of the stated values.
    enum class Ranged : std::uint8_t { none, known, unknown, ofStated } ranged = Ranged::none;
    std::vector<std::string> followsFrom; ///< names of the wrong values
    std::vector<Prose> remarks;
};

/// A line of calculation as it should be and as the slip has it, in letters and in numbers. Without a subject
/// on the right side where a short cut or the answer's form has no line of the chain.
struct ChangedLine {
    std::optional<Working> right;
    Working changed;
};

/// A slip, or two at once, that gives given numbers.
struct Finding {
    std::string id;     ///< stable, never translated: "supplement-in-cosines"
    std::string second; ///< of a pair the other slip's; else empty
    SlipPlace place = SlipPlace::calculation;
    std::optional<StepKey> step; ///< of the worked solution, where the line is told; calculation only
    bool isStrong = false;
    std::vector<std::string> explains;                 ///< names
    std::vector<std::pair<std::string, double>> gives; ///< full numbers, what is asked first
    /// Every number that the slip leads to, what is right in it too: what is asked, then what is on the way.
    std::vector<std::pair<QuantityId, double>> numbers;
    std::shared_ptr<const Sketch> read; ///< the question as it was read, where it was read wrongly
    Prose about;                        ///< the given numbers that it explains: "R = 335 N, θ_R = −23.1°"
    Prose sentence; ///< "This is what you get if …", of weak evidence "One way to get this number is …"
    Prose mend;     ///< what to do instead
    std::vector<std::string> also; ///< ids of slips that give the same numbers
    std::vector<Prose> readings;   ///< the first three's sentences, in the same order
    std::vector<ChangedLine> lines;
    double covered = 0;        ///< share of random wrong answers that some slip would fit as well
    std::vector<Route> routes; ///< the chains in which it is; empty for reading, reporting, short cuts
};
std::string_view evidenceOf(const Finding& finding); ///< "strong", "weak"

struct Marking {
    Verdict verdict = Verdict::incomplete;
    double points = 0, of = 0;
    std::vector<MarkedQuantity> quantities; ///< what is asked first, in the question's order, then the others
    std::vector<Finding> slips;             ///< likeliest first
    std::optional<Prose> ask;               ///< one question that tells the likeliest readings apart
    std::vector<Prose> remarks;             ///< on the whole: that a second answer exists
    std::string caution;                    ///< where the question's scene asks for it (core/explain/caution)
    /// All right or rounded: exit status 0.
    bool isRight() const { return verdict == Verdict::right || verdict == Verdict::rounded; }
};

/// A quantity that can be answered.
struct Answerable {
    QuantityId id; ///< common to both answers
    std::string name;
    bool asked = false;
    Dimension dimension = Dimension::force;
    double points = 0; ///< 0 for those that aren't asked
};

class MarkerParts;
struct SlipTable;

class Marker {
public:
    /// Precondition: `solved` belongs to `sketch`.
    Marker(const Sketch& sketch, const Solved& solved, const MarkOptions& options = {});
    ~Marker();
    Marker(Marker&&) noexcept;
    Marker& operator=(Marker&&) noexcept;

    /// Why nothing can be marked, in one line; empty where the question has an answer.
    const std::optional<std::string>& refusal() const;
    /// What is asked first, then the quantities on the way as the worked solutions print them.
    const std::vector<Answerable>& quantities() const;
    /// Points that can be had.
    double of() const;
    /// 1 or 2; 0 where there is none.
    std::size_t answers() const;

    /// By its plain name ("theta_R"), Greek letters and lowered digits as well; spaces at the ends don't
    /// count.
    const Answerable* named(std::string_view name) const;
    /// One value, or two with a semicolon, 'or' or 'and' between; the quantity's own name and '=' may stand
    /// in front. Numbers as parseMagnitude() and parseDirection() take them, a comma before three digits both
    /// ways, a sign in front of a magnitude, and of a direction every text that the report prints.
    Readable<GivenValue> read(std::string_view name, std::string_view value) const;
    /// "NAME = VALUE" each.
    Readable<Attempt> read(const std::vector<std::string>& answers) const;
    /// A vector drawn on the sheet, from the common point to (x, y) in force units; its magnitude and its
    /// direction as far as they can be answered. The tolerance is kDrawnMagnitude of the right magnitude and
    /// kDrawnDegrees.
    std::vector<GivenValue> drawn(VectorId vector, double x, double y) const;
    /// An angle pointed at, in the sheet's unit.
    GivenValue pointed(const QuantityId& quantity, double angle) const;

    /// Precondition: the question has an answer, and the attempt's ids are quantities().
    Marking mark(const Attempt& attempt) const;

private:
    friend std::optional<SlipTable> slipTable(const Marker& marker); ///< slip_numbers.h
    std::unique_ptr<MarkerParts> m_parts;
};

/// What a hand draws is so near: of the magnitude, and in degrees.
inline constexpr double kDrawnMagnitude = 0.02, kDrawnDegrees = 1;

/// All slips of the table, in its order: for guides and tallies.
struct SlipEntry {
    std::string_view id;
    SlipPlace place;
    int common; ///< a prior: 5 among the most frequent, 1 rare
};
std::vector<SlipEntry> slipEntries();
/// A slip's id in a few words, without a full stop: "supplement in the law of cosines"; an unknown id as it
/// is.
std::string slipName(std::string_view id, const Sentences* sentences = nullptr);

/// "within the tolerances 509 to 530 N", "of the stated values", behind the value that is right; empty where
/// no tolerance moves it.
std::string rangeWords(const MarkedQuantity& quantity, const Sentences* sentences = nullptr);

/// Plain text of a marking: a line for each quantity, a sentence for each finding with its changed line, the
/// caution.
std::string toText(const Marking& marking, Minus minus = Minus::ascii, std::size_t width = 96);
std::string toText(const ChangedLine& line, Minus minus = Minus::ascii);

} // namespace tailpoint
