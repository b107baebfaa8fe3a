// SPDX-License-Identifier: MIT
#include "core/explain/handout.h"
#include "core/explain/rows.h"
#include "core/quantity/decimals.h"

namespace tailpoint {

namespace {

constexpr std::string_view kPreamble = R"(\documentclass[11pt,fleqn]{article}
\usepackage[T1]{fontenc}
\usepackage[utf8]{inputenc}
\usepackage{amsmath}
\usepackage{tikz}
\usetikzlibrary{angles,arrows.meta,calc}
\setlength{\oddsidemargin}{-5mm}\setlength{\textwidth}{170mm}
\setlength{\topmargin}{-15mm}\setlength{\textheight}{235mm}
\setlength{\mathindent}{2em}\setlength{\abovedisplayskip}{4pt plus 2pt}\setlength{\belowdisplayskip}{4pt plus 2pt}
\allowdisplaybreaks[1]
\setlength{\parindent}{0pt}\setlength{\parskip}{3pt plus 1pt}
\newcounter{step}
\newcommand{\heading}[2]{\par\bigskip{\large\bfseries #1\par}\setcounter{step}{#2}}
\newcommand{\step}[1]{\filbreak\refstepcounter{step}\medskip\textbf{\thestep\quad #1}\par\nopagebreak}
\newcommand{\trap}[1]{\par\smallskip\begin{tabular}{@{\quad}|@{\quad}p{0.85\textwidth}}\small #1\end{tabular}\par}
)";

constexpr std::size_t kWidestLatex = 60; ///< characters of a sum that stand in a line

/// A long sum's later rows stand under its first.
std::string brokenSum(const Formula& formula) {
    std::string out;
    for (const Formula& row : explaining::rowsOf(formula, kWidestLatex)) {
        out += out.empty() ? "" : " \\\\\n  &\\quad {}";
        out += toLatex(row);
    }
    return out;
}

void appendParagraphs(std::string& out, const std::vector<Prose>& paragraphs) {
    for (const Prose& prose : paragraphs)
        out += toLatex(prose) + "\n\n";
}

void appendRow(std::string& out, const std::vector<Formula>& row) {
    for (std::size_t c = 0; c < row.size(); ++c) {
        out += c == 0 ? "" : " & ";
        const Formula& cell = row[c];
        if (cell.kind == FormulaKind::words)
            out += latexEscaped(cell.text);
        else
            out += '$' + toLatex(cell) + '$';
    }
    out += " \\\\\n";
}

void appendLatexTable(std::string& out, const Table& table) {
    out += "\\par\\smallskip\\quad\\begin{tabular}{l" + std::string(table.head.size() - 1, 'r') + "}\n";
    appendRow(out, table.head);
    out += "\\hline\n";
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        if (table.hasTotal && r + 1 == table.rows.size())
            out += "\\hline\n";
        appendRow(out, table.rows[r]);
    }
    out += "\\end{tabular}\\par\n";
}

void appendWorkings(std::string& out, const std::vector<Working>& workings) {
    if (workings.empty())
        return;
    while (out.ends_with("\n\n")) // an empty line would make a paragraph of its own before the display
        out.pop_back();
    out += "\\begin{align*}\n";
    for (std::size_t i = 0; i < workings.size(); ++i)
        out += (i == 0 ? "  " : " \\\\\n  ") + alignedLatex(workings[i]);
    out += "\n\\end{align*}\n";
}

void appendLatexStep(std::string& out, const Step& step) {
    out += "\\step{" + latexEscaped(step.title) + "}\n";
    appendParagraphs(out, step.reasoning);
    if (step.table)
        appendLatexTable(out, *step.table);
    appendWorkings(out, step.workings);
    appendParagraphs(out, step.conclusion);
    for (const Prose& note : step.notes)
        out += "\\trap{" + toLatex(note) + "}\n";
}

void appendStatement(std::string& out, const Handout& handout) {
    if (!handout.given.sentence.pieces.empty())
        out += toLatex(handout.given.sentence) + "\n\n";
    if (handout.given.table)
        appendLatexTable(out, *handout.given.table);
    if (!handout.question.empty())
        out += toLatex(proseOf(handout.question)) + "\n\n";
}

std::string place(double x, double y) {
    return '(' + fixedDecimals(x, 4) + ',' + fixedDecimals(y, 4) + ')';
}

/// Unit lengths: the bar's own width and height.
constexpr double kBarMillimetres = 40, kBarHeightMillimetres = 3, kHatchShare = 0.04, kStandsOut = 0.3;

std::string barLatex(const LimitBar& bar) {
    std::string out = "\\begin{tikzpicture}[x=" + fixedDecimals(kBarMillimetres, 0) +
                      "mm,y=" + fixedDecimals(kBarHeightMillimetres, 0) + "mm,baseline=0.6mm]";
    if (bar.certain > 0)
        out += "\\fill[black!70] (0,0) rectangle " + place(bar.certain, 1) + ';';
    const double high = kBarHeightMillimetres / kBarMillimetres; // a hatch is slanted on paper
    for (const HatchStroke& each : hatch(bar.certain, 0, bar.possible - bar.certain, high, kHatchShare))
        out += "\\draw[black!70,line width=0.5pt] " + place(each.x1, 1 - each.y1 / high) + "--" +
               place(each.x2, 1 - each.y2 / high) + ';';
    out += "\\draw[black!70,line width=0.4pt] (0,0) rectangle (1,1);";
    for (const char* pen : {"white,line width=2.4pt", "line width=1.2pt"})
        out += "\\draw[" + std::string(pen) + "] " + place(bar.limit, -kStandsOut) + "--" +
               place(bar.limit, 1 + kStandsOut) + ';';
    return out + "\\end{tikzpicture}";
}

void appendLimits(std::string& out, const Handout& handout, std::size_t answer) {
    out += "\\medskip\\textbf{" + latexEscaped(limitsHeading(handout, answer)) +
           "}\\par\\nopagebreak\\smallskip\n" + "\\begin{tabular}{@{}lll@{}}\n";
    for (const LimitShown& limit : handout.limits[answer]) {
        const std::string word = latexEscaped(verdictWord(limit.verdict, handout.sentences));
        out += barLatex(limit.bar) + " & " +
               (limit.verdict == Bound::within ? word : "\\textbf{" + word + "}") +
               " & \\parbox[t]{98mm}{\\raggedright " + toLatex(limit.sentence) + "\\strut} \\\\\n";
    }
    out += "\\end{tabular}\\par\n" + toLatex(limitsRemark(Voice(handout.sentences))) + "\n\n";
}

} // namespace

std::string alignedLatex(const Working& working) {
    std::string out;
    bool first = true;
    for (const Formula* part : sidesOf(working)) {
        out += first ? "" : " \\\\\n  ";
        if (!working.subject)
            out += "&\\phantom{=}\\;" + toLatex(*part);
        else
            out += (first ? toLatex(*working.subject) : std::string()) + " &= " + brokenSum(*part);
        first = false;
    }
    return out;
}

std::string toLatex(const Handout& handout) {
    std::string out(kPreamble);
    out +=
        "\\begin{document}\n{\\Large\\bfseries " + latexEscaped(titleOf(handout)) + "\\par}\n\n\\medskip\n";
    appendStatement(out, handout);
    if (!handout.figure.empty())
        out += "\\begin{center}\n" + handout.figure + "\\end{center}\n\n";
    for (const HandoutPart& part : partsOf(handout)) {
        out += "\\heading{" + latexEscaped(part.heading) + "}{" + std::to_string(part.first - 1) + "}\n";
        for (const Step* step : part.steps)
            appendLatexStep(out, *step);
    }
    for (std::size_t i = 0; i < handout.limits.size(); ++i)
        appendLimits(out, handout, i);
    for (const auto* tables : {&handout.legs, &handout.tables})
        for (const TableTold& told : *tables) {
            out += "\\medskip\\textbf{" + latexEscaped(told.heading) + "}\\par\\nopagebreak\n";
            appendLatexTable(out, told.table);
            appendParagraphs(out, told.remarks);
        }
    if (!handout.caution.empty())
        out += "\\bigskip\\fbox{\\parbox{0.95\\textwidth}{\\small " + latexEscaped(handout.caution) + "}}\n";
    for (const std::string& line : handout.record)
        out += (&line == &handout.record.front() ? "\n\\bigskip\\noindent\n" : "\\noindent\n") +
               std::string("{\\footnotesize ") + latexEscaped(line) + "\\par}\n";
    out += "\\end{document}\n";
    return out;
}

} // namespace tailpoint
