// SPDX-License-Identifier: MIT
#include "ui/render/tikz.h"

#include "ui/render/tikz_writer.h"

#include <string>

namespace tailpoint {

namespace {

/// The figure's arrowhead as a tip of TikZ: the very polygon, so that head and shaft follow a moved
/// coordinate. The outline of an open one is drawn inside, its mitre ends at the tip.
constexpr const char* kHead =
    R"(\pgfdeclarearrow{name=tailpoint, defaults={length=10bp, width=5bp, inset=2bp},%
 parameters={\the\pgfarrowlength,\the\pgfarrowwidth,\the\pgfarrowinset,%
  \the\pgfarrowlinewidth,\ifpgfarrowopen o\fi},%
 setup code={\pgfutil@tempdima=0pt\ifpgfarrowopen\pgfmathsetlength\pgfutil@tempdima{%
   \pgfarrowlinewidth*veclen(\pgfarrowlength,\pgfarrowwidth/2)/\pgfarrowwidth}\fi%
  \pgfmathsetlength\pgfutil@tempdimb{-\pgfarrowlength-\pgfutil@tempdima}%
  \pgfarrowssettipend{0pt}\pgfarrowssetbackend{\pgfutil@tempdimb}%
  \advance\pgfutil@tempdimb by\ifpgfarrowopen1\else1.25\fi\pgfarrowinset%
  \pgfarrowssetlineend{\pgfutil@tempdimb}%
  \pgfarrowssave\pgfutil@tempdima\pgfarrowssavethe\pgfarrowlength\pgfarrowssavethe\pgfarrowwidth%
  \pgfarrowssavethe\pgfarrowinset\pgfarrowssavethe\pgfarrowlinewidth},%
 drawing code={\pgfsetdash{}{0pt}\pgfsetmiterjoin\pgfsetlinewidth{\pgfarrowlinewidth}%
  \pgftransformxshift{-\pgfutil@tempdima}\pgfpathmoveto{\pgfpointorigin}%
  \pgfpathlineto{\pgfpoint{-\pgfarrowlength}{.5\pgfarrowwidth}}%
  \pgfpathlineto{\pgfpoint{-\pgfarrowlength+\pgfarrowinset}{0pt}}%
  \pgfpathlineto{\pgfpoint{-\pgfarrowlength}{-.5\pgfarrowwidth}}\pgfpathclose%
  \ifpgfarrowopen\pgfusepathqstroke\else\pgfusepathqfill\fi}}%
)";

/// A label is no wider than it was measured, whatever the document's fonts.
constexpr const char* kFit = "\\def\\tpfit#1#2{\\setbox0=\\hbox{#2}\\ifdim\\wd0>#1\\relax"
                             "\\resizebox{#1}{\\height}{\\box0}\\else\\box0\\fi}%\n";
} // namespace

QByteArray toTikz(const DisplayList& list, const Theme& theme) {
    TikzWriter writer(list, theme);
    const std::string colours = writer.colours();
    const std::string head = "\\makeatletter%\n" + std::string(kHead) + "\\makeatother%\n" + kFit;
    return QByteArray::fromStdString("\\begingroup%\n" + head + colours + writer.picture() + "\\endgroup%\n");
}

QByteArray toTikzDocument(const DisplayList& list, const Theme& theme) {
    const std::string width = tikzNumber(list.width) + "bp", height = tikzNumber(list.height) + "bp";
    std::string out = "% pdflatex or lualatex makes one page of " + width + " by " + height + " of this.\n";
    out += "\\documentclass{article}\n\\usepackage[T1]{fontenc}\n\\usepackage[utf8]{inputenc}\n"
           "\\usepackage{amsmath}\n\\usepackage{tikz}\n\\usetikzlibrary{angles,arrows.meta,calc}\n";
    out += "\\paperwidth=" + width + " \\paperheight=" + height + "\n";
    // Shipped out as one box at the page's corner: no line or paragraph moves it.
    out += "\\hoffset=-1in \\voffset=-1in\n\\begin{document}\n"
           "\\ifdefined\\pdfpagewidth \\pdfpagewidth=\\paperwidth \\pdfpageheight=\\paperheight\n"
           "\\else \\pagewidth=\\paperwidth \\pageheight=\\paperheight \\fi % lualatex\n\\setbox0=\\hbox{%\n";
    out += toTikz(list, theme).toStdString();
    out += "}\n\\shipout\\box0\n\\end{document}\n";
    return QByteArray::fromStdString(out);
}

} // namespace tailpoint
