// SPDX-License-Identifier: MIT
// Figures for the render tests, measured with the fonts that paint.
#pragma once

#include "core/figure/compose.h"
#include "tests/support/sketches.h"
#include "ui/render/render.h"

#include <QXmlStreamReader>
#include <QtTest>
#include <gtest/gtest.h>

namespace tailpoint::testing {

inline DisplayList listOf(const Sketch& sketch, const FigureOptions& options = {}, double width = 720,
                          double height = 480) {
    const QtTextMeasure measure;
    const Solved solved = solve(sketch);
    const Construction construction = construct(sketch, solved, options.solution);
    const View view = fittedView(sketch, solved, construction, options, width, height, &measure);
    return compose(sketch, solved, construction, view, options, measure).list;
}

inline Sketch raft() {
    Sketch made = sketch({force("P", 340, 25), force("Q", 275, -40)});
    made.title = "Survey raft on two lines";
    return made;
}

/// One element of a SVG with what a test asks of it.
struct Element {
    QString name, className, id, text; ///< text: its own and its children's
    QXmlStreamAttributes attributes;
};

/// All elements in document order. Adds a failure where the text is no XML.
inline std::vector<Element> elementsOf(const QByteArray& svg) {
    std::vector<Element> out;
    std::vector<std::size_t> open;
    QXmlStreamReader reader(svg);
    while (!reader.atEnd()) {
        switch (reader.readNext()) {
        case QXmlStreamReader::StartElement:
            open.push_back(out.size());
            out.push_back({reader.name().toString(),
                           reader.attributes().value(QLatin1String("class")).toString(),
                           reader.attributes().value(QLatin1String("id")).toString(),
                           {},
                           reader.attributes()});
            break;
        case QXmlStreamReader::EndElement:
            open.pop_back();
            break;
        case QXmlStreamReader::Characters:
            for (const std::size_t i : open)
                out[i].text += reader.text();
            break;
        default:
            break;
        }
    }
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    return out;
}

} // namespace tailpoint::testing
