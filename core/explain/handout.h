// SPDX-License-Identifier: MIT
// The worked solution as a document to hand out: one self-contained HTML file, or LaTeX.
//
//   Handout handout{sketch.title, statement(sketch), question(sketch), svgOrTikz, answers, caution};
//   toHtml(handout)    figure: the figure's SVG document (its XML head is dropped), set into the page
//   toLatex(handout)   figure: a tikzpicture
//   partsOf(handout)   the solution in the order in which it is set, for any other output
#pragma once

#include "core/explain/explain.h"
#include "core/explain/legs.h"
#include "core/explain/limit_bar.h"
#include "core/explain/question.h"
#include "core/explain/statement.h"

#include <string>
#include <vector>

namespace tailpoint {

struct Handout {
    std::string title;            ///< empty: "Untitled sketch"
    Statement given;              ///< what is given, in words
    Sentence question;            ///< what is to be found; empty where `given` says that too
    std::string figure;           ///< empty: none
    std::vector<Worked> answers;  ///< one, or one for each of two answers; shared steps are told once;
                                  ///< an exercise needs none
    std::vector<LegsTold> legs{}; ///< of each answer that has legs
    std::vector<std::vector<LimitShown>> limits{}; ///< of each answer, where any are stated
    std::vector<TableTold> tables{};               ///< of the sketch's cases (core/explain/cases.h)
    std::string caution{};                         ///< empty: none
    bool solution = true;                          ///< false: statement and figure alone
    std::vector<std::string> record{};    ///< whence it comes and what it assumes: core/explain/record.h
    const Sentences* sentences = nullptr; ///< of another language, for headings
};

/// A run of steps under one heading.
struct HandoutPart {
    std::string heading;            ///< "Solution", "Answer 2 of 2"
    std::vector<const Step*> steps; ///< of the handout's answers; they live as long as it does
    std::size_t first = 1;          ///< number of the first step: numbers run through
};

/// How many steps all answers begin with, word for word. Precondition: at least one answer.
std::size_t sharedSteps(const std::vector<Worked>& answers);

/// The steps that all answers share stand once, under "Solution"; then each answer's own. Empty without the
/// solution.
std::vector<HandoutPart> partsOf(const Handout& handout);

/// "Untitled sketch" where the title is empty.
std::string titleOf(const Handout& handout);

/// "Limits", "Limits, answer 2 of 2". Precondition: answer < handout.limits.size().
std::string limitsHeading(const Handout& handout, std::size_t answer);

/// HTML 5, UTF-8, well-formed as XML too, MathML, no script, nothing from the network; prints on A4 and
/// Letter.
std::string toHtml(const Handout& handout);

/// Parts of such a page, for other pages of the same kind: from the first line to the head's end; what is
/// given and asked; a working, its signs of equality one below the other; the steps under their heading
/// (block elements).
std::string htmlHead(std::string_view title, std::string_view moreStyle = {});
std::string toHtml(const Statement& given, const Sentence& asked);
std::string toHtml(const Working& working);
std::string toHtml(const HandoutPart& part);
std::string toHtml(const LegsTold& legs);
std::string toHtml(const std::vector<LimitShown>& limits, std::string_view heading,
                   const Sentences* sentences = nullptr);

/// A whole document for pdflatex with amsmath and tikz.
std::string toLatex(const Handout& handout);

/// One working as an aligned display, without the surrounding environment: "R &= ... \\ &= ...".
std::string alignedLatex(const Working& working);

} // namespace tailpoint
