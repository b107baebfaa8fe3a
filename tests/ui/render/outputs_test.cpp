// SPDX-License-Identifier: MIT
// One list, many outputs: the figure is rendered as SVG, PDF and TikZ, read back from what other programs
// made of it (pdftocairo, pdflatex), and its strokes must lie where the list has them, within half a point.
#include "tests/ui/render/outputs.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

struct Named {
    const char* name;
    Sketch sketch;
    FigureOptions options;
};

std::vector<Named> figures() {
    FigureOptions triangle, polygon, marks, pairs;
    marks.parallelMarks = true;
    pairs.pair = kAllPairs;
    triangle.construction = ConstructionKind::triangle;
    polygon.construction = ConstructionKind::polygon;
    const Sketch two = sketch({force("P", kToFind, 60), force("Q", 260, kToFind)}, force("R", 280, 10));
    return {
        {"two forces", raft(), {}},
        {"right angle", sketch({force("P", 340, 110), force("Q", 275, 20)}), {}},
        {"two answers", two, {}},
        {"two answers as triangles", two, triangle},
        {"five forces",
         sketch({force("F1", 220, 15), slope("F2", 300, 3, 4), force("F3", 180, 140), force("F4", 260, -150),
                 force("F5", 12, -60)}),
         polygon},
        {"no answer", sketch({force("P", kToFind, 60), force("Q", 100, kToFind)}, force("R", 280, -50)), {}},
        {"parallel marks", sketch({force("P", 300, 130), force("Q", 275, 20)}), marks},
        {"two at a time", sketch({force("F_1", 300, 0), force("F_2", 200, 70), force("F_3", 150, 160)}),
         pairs},
        {"a small force and a great one", sketch({force("P", 500, 25), force("Q", 10, 30)}), {}}};
}
class Outputs : public ::testing::TestWithParam<std::size_t> {
protected:
    Named figure() const { return figures().at(GetParam()); }
    DisplayList list() const { return listOf(figure().sketch, figure().options); }
    const Theme& theme() const {
        constexpr ThemeName themes[] = {ThemeName::paper, ThemeName::slate, ThemeName::contrast};
        return themeOf(themes[GetParam() % 3]);
    }
    QTemporaryDir m_folder;
};

TEST_P(Outputs, SvgHasTheGeometryOfTheList) {
    expectSame(list(), theme(), toSvg(list(), theme(), writeSketch(figure().sketch)), "SVG");
}

TEST_P(Outputs, PdfHasTheGeometryOfTheList) {
    put(m_folder.filePath(QStringLiteral("figure.pdf")), toPdf(list(), theme()));
    expectSame(list(), theme(), svgOfPdf(m_folder, QStringLiteral("figure.pdf")), "PDF");
    expectWordsInBoxes(list(), wordsOf(m_folder, QStringLiteral("figure.pdf")), "PDF");
}

TEST_P(Outputs, TikzHasTheGeometryOfTheListOncePdflatexHasSetIt) {
    put(m_folder.filePath(QStringLiteral("figure.tex")), toTikzDocument(list(), theme()));
    outputOf(QStringLiteral("pdflatex"),
             {QStringLiteral("-halt-on-error"), QStringLiteral("-interaction=nonstopmode"),
              QStringLiteral("-no-shell-escape"), QStringLiteral("figure.tex")},
             m_folder.path());
    expectSame(list(), theme(), svgOfPdf(m_folder, QStringLiteral("figure.pdf")), "TikZ");
    expectWordsInBoxes(list(), wordsOf(m_folder, QStringLiteral("figure.pdf")), "TikZ");
}
INSTANTIATE_TEST_SUITE_P(Figures, Outputs, ::testing::Range<std::size_t>(0, figures().size()),
                         [](const auto& instance) {
                             std::string name = figures().at(instance.param).name;
                             std::replace(name.begin(), name.end(), ' ', '_');
                             return name;
                         });

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
