// The worked solution as a document to hand out: one self-contained HTML file, or LaTeX.
//
//   Handout handout{sketch.title, question(sketch), svgOrTikz, answers, caution};
//   toHtml(handout)    figure: the figure's SVG document (its XML head is dropped), set into the page
//   toLatex(handout)   figure: a tikzpicture
#pragma once

#include "core/explain/explain.h"
#include "core/explain/question.h"

#include <string>
#include <vector>

namespace tailpoint {

struct Handout {
    std::string title;           ///< empty: "Untitled sketch"
    Sentence question;           ///< the statement in words
    std::string figure;          ///< empty: none
    std::vector<Worked> answers; ///< one, or one for each of two answers; shared steps are told once
    std::string caution;         ///< empty: none
    bool solution = true;        ///< false: statement and figure alone
};

/// HTML 5, UTF-8, MathML, no script, nothing from the network; prints on A4 and Letter.
std::string toHtml(const Handout& handout);

/// A whole document for pdflatex with amsmath and tikz.
std::string toLatex(const Handout& handout);

/// One working as an aligned display, without the surrounding environment: "R &= ... \\ &= ...".
std::string alignedLatex(const Working& working);

} // namespace tailpoint
