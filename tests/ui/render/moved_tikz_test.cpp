// SPDX-License-Identifier: MIT
// The TikZ as a lecturer changes it by hand: what hangs on a named coordinate follows it.
#include "tests/ui/render/outputs.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// "\coordinate (NAME) at (x,y);", y up.
Point coordinateIn(const QByteArray& tikz, const QByteArray& name) {
    static const QRegularExpression numbers(QStringLiteral("^\\(([-0-9.]+),([-0-9.]+)\\);"));
    const QByteArray begin = "\\coordinate (" + name + ") at ";
    const qsizetype at = tikz.indexOf(begin);
    const auto match = numbers.match(QString::fromLatin1(tikz.mid(at + begin.size(), 60)));
    EXPECT_TRUE(at >= 0 && match.hasMatch()) << name.toStdString();
    return {match.captured(1).toDouble(), match.captured(2).toDouble()};
}

QByteArray withCoordinate(QByteArray tikz, const QByteArray& name, Point p) {
    const QByteArray begin = "\\coordinate (" + name + ") at ";
    const qsizetype at = tikz.indexOf(begin) + begin.size();
    const QByteArray where = "(" + QByteArray::number(p.x) + "," + QByteArray::number(p.y) + ")";
    return tikz.replace(at, tikz.indexOf(';', at) - at, where);
}

/// Where the label of a group stands: its baseline's anchor.
Point baselineIn(const DisplayList& list, const char* id) {
    for (const Group& group : list.groups)
        for (const Item& item : group.items)
            if (const auto* text = std::get_if<Text>(&item); text != nullptr && group.id == id)
                return text->baseline;
    ADD_FAILURE() << id << " has no label";
    return {};
}

/// The straight stroke of that colour from one place to another.
bool hasStroke(const std::vector<Trace>& traces, const QColor& colour, Point a, Point b) {
    const auto at = [](Point p, Point q) { return length(p - q) < kTolerance; };
    return std::any_of(traces.begin(), traces.end(), [&](const Trace& trace) {
        return alike(trace.stroke, colour) && trace.points.size() >= 2 &&
               ((at(trace.points.front(), a) && at(trace.points.back(), b)) ||
                (at(trace.points.front(), b) && at(trace.points.back(), a)));
    });
}

class MovedTikz : public ::testing::Test {
protected:
    /// What pdflatex makes of the figure once a coordinate has been moved in its source by hand.
    std::vector<Trace> tracesOfMoved(const QByteArray& tikz, const QByteArray& name, Point by) {
        const Point was = coordinateIn(tikz, name);
        put(m_folder.filePath(QStringLiteral("moved.tex")),
            withCoordinate(tikz, name, {was.x + by.x, was.y - by.y}));
        outputOf(QStringLiteral("pdflatex"),
                 {QStringLiteral("-halt-on-error"), QStringLiteral("-interaction=nonstopmode"),
                  QStringLiteral("moved.tex")},
                 m_folder.path());
        m_words = wordsOf(m_folder, QStringLiteral("moved.pdf"));
        return tracesOf(svgOfPdf(m_folder, QStringLiteral("moved.pdf")));
    }
    Point placeOf(const char* word, const std::vector<std::pair<QString, Box>>& words) const {
        for (const auto& [text, box] : words)
            if (text == QLatin1String(word))
                return {box.left, box.top};
        ADD_FAILURE() << word << " is not among the words";
        return {};
    }
    QTemporaryDir m_folder;
    std::vector<std::pair<QString, Box>> m_words;
};

/// Of the raft: the sides of the parallelogram, the resultant and the labels go where the tip of P goes.
TEST_F(MovedTikz, TheParallelogramAndTheLabelsFollowTheTipOfAForce) {
    const Theme& theme = themeOf(ThemeName::paper);
    const DisplayList list = listOf(raft());
    const QByteArray tikz = toTikzDocument(list, theme);
    const Point by{-60, -30};
    tracesOfMoved(tikz, "force-P-tip", {0, 0});
    const Point label = placeOf("340", m_words);
    const auto ends = [&](const char* id) {
        return *std::find_if(list.groups.begin(), list.groups.end(), [&](const Group& g) {
                    return g.id == id;
                })->ends;
    };
    const Point p = ends("force-P")[1], q = ends("force-Q")[1], r = ends("sum")[1];
    const auto traces = tracesOfMoved(tikz, "force-P-tip", by);
    const QColor dashed = theme.colour(Role::construction);
    EXPECT_TRUE(hasStroke(traces, dashed, p + by, r + by));
    EXPECT_TRUE(hasStroke(traces, dashed, q, r + by));
    EXPECT_FALSE(hasStroke(traces, dashed, p, r));
    // A label goes with the place of the shaft that it stands beside; where that is, is the layout's affair.
    const Point tail = ends("force-P")[0], shaft = p - tail;
    const double part = dot(baselineIn(list, "force-P") - tail, shaft) / dot(shaft, shaft);
    const Point went = placeOf("340", m_words) - label;
    EXPECT_LT(length(went - part * by), kTolerance) << went.x << " " << went.y << " at " << part;
}

/// How many marks of parallel sides have their points on this side.
int marksOn(const std::vector<Trace>& traces, const QColor& colour, Point a, Point b) {
    return static_cast<int>(std::count_if(traces.begin(), traces.end(), [&](const Trace& trace) {
        return alike(trace.stroke, colour) && trace.dash.empty() && trace.points.size() == 3 &&
               distance(trace.points[1], a, b) < kTolerance;
    }));
}

TEST_F(MovedTikz, MarksOfParallelSidesStayOnTheirSides) {
    const Theme& theme = themeOf(ThemeName::paper);
    FigureOptions options;
    options.parallelMarks = true;
    const DisplayList list = listOf(raft(), options);
    const auto ends = [&](const char* id) {
        return *std::find_if(list.groups.begin(), list.groups.end(), [&](const Group& g) {
                    return g.id == id;
                })->ends;
    };
    const Point by{-80, -20}, tail = ends("sum")[0];
    const Point p = ends("force-P")[1] + by, q = ends("force-Q")[1], r = ends("sum")[1] + by;
    const auto traces = tracesOfMoved(toTikzDocument(list, theme), "force-P-tip", by);
    const QColor colour = theme.colour(Role::construction);
    EXPECT_EQ(marksOn(traces, colour, tail, p), 1);
    EXPECT_EQ(marksOn(traces, colour, q, r), 1);
    EXPECT_EQ(marksOn(traces, colour, tail, q), 2);
    EXPECT_EQ(marksOn(traces, colour, p, r), 2);
}

/// Of the polygon of five: the copy of Q keeps its length and direction, and the chain behind goes with it.
TEST_F(MovedTikz, ThePolygonFollowsTheTipOfAForce) {
    FigureOptions polygon;
    polygon.construction = ConstructionKind::polygon;
    const DisplayList list =
        listOf(sketch({force("F1", 220, 15), slope("F2", 300, 3, 4), force("F3", 180, 140),
                       force("F4", 260, -150), force("F5", 12, -60)}),
               polygon);
    const QByteArray tikz = toTikzDocument(list, themeOf(ThemeName::paper));
    const Point by{25, 40};
    const auto tipsOf = [&](const QColor& colour, const std::vector<Trace>& traces) {
        std::vector<Point> tips;
        for (const Trace& trace : traces)
            if (alike(trace.fill, colour) || alike(trace.stroke, colour))
                tips.insert(tips.end(), trace.points.begin(), trace.points.end());
        return tips;
    };
    const auto traces = tracesOfMoved(tikz, "force-F2-tip", by);
    const auto drawn = tipsOf(themeOf(ThemeName::paper).colour(Role::construction), traces);
    int copies = 0;
    for (const Group& group : list.groups)
        if (group.id.starts_with("polygon-")) {
            double least = 1e9;
            for (const Item& item : group.items)
                if (const auto* head = std::get_if<Path>(&item); head && head->closed)
                    for (const Point at : drawn)
                        for (const Point corner : head->points)
                            least = std::min(least, length(at - (corner + by)));
            EXPECT_LT(least, kTolerance) << group.id;
            ++copies;
        }
    EXPECT_EQ(copies, 4); // of F2 to F5; the first stands where it is
}

TEST_F(MovedTikz, AlsoLualatexMakesOnePageOfTheFigure) {
    const DisplayList list = listOf(raft());
    put(m_folder.filePath(QStringLiteral("figure.tex")), toTikzDocument(list, themeOf(ThemeName::paper)));
    outputOf(QStringLiteral("lualatex"),
             {QStringLiteral("-halt-on-error"), QStringLiteral("-interaction=nonstopmode"),
              QStringLiteral("figure.tex")},
             m_folder.path());
    expectSame(list, themeOf(ThemeName::paper), svgOfPdf(m_folder, QStringLiteral("figure.pdf")), "lualatex");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
