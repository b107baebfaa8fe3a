// One list, many outputs: the figure is rendered as SVG, PDF and TikZ, read back from what other programs
// made of it (pdftocairo, pdflatex), and its strokes must lie where the list has them, within half a point.
#include "tests/core/figure/any_figure.h"
#include "tests/ui/render/read_paths.h"
#include "tests/ui/render/render_support.h"
#include "ui/document/sketch_json.h"
#include "ui/render/dashes.h"
#include "ui/render/tikz.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <map>

namespace tailpoint::testing {
namespace {

constexpr double kTolerance = 0.5;        ///< points
constexpr double kStray = kTolerance + 1; ///< samples of the list are two points apart
constexpr int kPatienceMs = 60'000;

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

/// What a program wrote to standard output; empty where it failed.
QByteArray outputOf(const QString& program, const QStringList& arguments, const QString& folder) {
    QProcess process;
    process.setWorkingDirectory(folder);
    process.start(program, arguments);
    const bool done = process.waitForFinished(kPatienceMs) && process.exitStatus() == QProcess::NormalExit &&
                      process.exitCode() == 0;
    EXPECT_TRUE(done) << program.toStdString() << ": " << process.errorString().toStdString() << "\n"
                      << process.readAllStandardError().toStdString();
    return done ? process.readAllStandardOutput() : QByteArray();
}

QByteArray svgOfPdf(const QTemporaryDir& folder, const QString& name) {
    return outputOf(QStringLiteral("pdftocairo"), {QStringLiteral("-svg"), name, QStringLiteral("-")},
                    folder.path());
}

void put(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
}

// ---- What the list says

/// A point of a stroke or a filled shape, and the colour that must be there; of a stroke its weight and
/// dashes too.
struct Sample {
    Point at;
    QColor colour;
    std::string of;
    double width = 0; ///< 0: of no stroke
    std::vector<double> dash;
};

/// What all samples of one stroke have in common.
Sample sampleOf(const std::string& id, const QColor& colour, double width, Dash dash) {
    Sample sample{{}, colour, id, width, {}};
    for (const double part : patternOf(dash))
        sample.dash.push_back(part * width);
    return sample;
}

bool isHead(const Path& path) {
    return path.closed && path.role != Role::sheet && path.role != Role::titleblock;
}

void sampleLine(std::vector<Sample>& out, Point a, Point b, Sample sample) {
    const int steps = std::max(1, static_cast<int>(length(b - a) / 2));
    for (int i = 0; i <= steps; ++i) {
        sample.at = a + (static_cast<double>(i) / steps) * (b - a);
        out.push_back(sample);
    }
}

void sampleArc(std::vector<Sample>& out, const Arc& arc, Sample sample) {
    const int steps = std::max(2, static_cast<int>(std::abs(arc.sweepDegrees) / 180 * M_PI * arc.radius / 2));
    for (int i = 0; i <= steps; ++i) {
        sample.at = onCircle(arc.centre, arc.radius, arc.startDegrees + arc.sweepDegrees * i / steps);
        out.push_back(sample);
    }
}

/// The corners of the rectangle behind a label.
void sampleHalo(std::vector<Sample>& out, const Text& text, const QColor& colour, const std::string& id) {
    const double left = text.box.left - kHaloPad, right = text.box.right() + kHaloPad,
                 top = text.box.top - kHaloPad, bottom = text.box.bottom() + kHaloPad;
    for (const Point corner : {Point{left, top}, {right, top}, {right, bottom}, {left, bottom}})
        out.push_back({corner, colour, id + "'s halo", 0, {}});
}

/// Every open stroke, frame and ring, and of every head its corners: tip, wings and notch.
std::vector<Sample> samplesOf(const DisplayList& list, const Theme& theme) {
    std::vector<Sample> out;
    const Box sheet{0, 0, list.width, list.height};
    for (const Group& group : list.groups) {
        if (group.role == Role::sheet)
            continue;
        for (const Item& item : group.items) {
            if (const auto* arc = std::get_if<Arc>(&item))
                sampleArc(out, *arc, sampleOf(group.id, theme.colour(arc->role), arc->width, arc->dash));
            if (const auto* disc = std::get_if<Disc>(&item))
                sampleArc(out, {disc->role, disc->centre, disc->radius, 0, 360},
                          sampleOf(group.id, theme.colour(disc->role), disc->width, Dash::solid));
            if (const auto* text = std::get_if<Text>(&item); text && text->halo)
                sampleHalo(out, *text, theme.colour(Role::halo), group.id);
            const auto* path = std::get_if<Path>(&item);
            if (!path || path->role == Role::sheet)
                continue;
            const auto& p = path->points;
            const QColor colour = theme.colour(path->role);
            if (isHead(*path)) {
                for (const Point corner : p)
                    out.push_back({corner, colour, group.id + "'s head", 0, {}});
                continue;
            }
            for (std::size_t i = 0; i + 1 < p.size() + (path->closed ? 1 : 0); ++i)
                sampleLine(out, p[i], p[(i + 1) % p.size()],
                           sampleOf(group.id, colour, path->width, path->dash));
        }
    }
    std::erase_if(out, [&](const Sample& s) { return !contains(sheet, s.at); });
    return out;
}

// ---- What the output has

bool alike(const QColor& a, const QColor& b) {
    return a.isValid() && std::abs(a.red() - b.red()) < 3 && std::abs(a.green() - b.green()) < 3 &&
           std::abs(a.blue() - b.blue()) < 3;
}

double distance(Point p, Point a, Point b) {
    const Point d = b - a;
    const double square = dot(d, d), t = square > 0 ? std::clamp(dot(p - a, d) / square, 0.0, 1.0) : 0;
    return length(p - (a + t * d));
}

constexpr double kSameWeight = 0.06; ///< points, of a stroke's width
constexpr double kSameDash = 0.1;    ///< points, of a dash or a gap

bool isOfStyle(const Trace& trace, const Sample& sample) {
    return std::abs(trace.width - sample.width) < kSameWeight &&
           std::equal(trace.dash.begin(), trace.dash.end(), sample.dash.begin(), sample.dash.end(),
                      [](double a, double b) { return std::abs(a - b) < kSameDash; });
}

/// To the nearest line of that colour, weight and dash, or edge of a filled shape; a thick line's ink counts
/// to its middle.
double distanceTo(const std::vector<Trace>& traces, const Sample& sample) {
    double least = 1e9;
    for (const Trace& trace : traces)
        if (sample.width > 0 ? alike(trace.stroke, sample.colour) && isOfStyle(trace, sample)
                             : alike(trace.stroke, sample.colour) || alike(trace.fill, sample.colour))
            for (std::size_t i = 0; i + 1 < trace.points.size(); ++i)
                least = std::min(least, distance(sample.at, trace.points[i], trace.points[i + 1]));
    return least;
}

/// Everything that the list says is there; and nothing else is.
void expectSame(const DisplayList& list, const Theme& theme, const QByteArray& svg, const std::string& name) {
    const auto traces = tracesOf(svg);
    const auto samples = samplesOf(list, theme);
    ASSERT_GT(samples.size(), 200U) << name;
    std::map<std::string, double> worst;
    for (const Sample& sample : samples)
        worst[sample.of] = std::max(worst[sample.of], distanceTo(traces, sample));
    for (const auto& [id, away] : worst)
        EXPECT_LE(away, kTolerance) << name << ": " << id;
    const Box sheet{0, 0, list.width, list.height};
    double stray = 0;
    for (const Trace& trace : traces)
        if (trace.stroke.isValid() && !trace.fill.isValid() && trace.points.size() < 400)
            for (const Point p : trace.points) {
                double least = 1e9;
                for (const Sample& sample : samples)
                    if (alike(trace.stroke, sample.colour))
                        least = std::min(least, length(p - sample.at));
                if (contains(sheet, p))
                    stray = std::max(stray, least);
            }
    EXPECT_LE(stray, kStray) << name << " has strokes that the list has not";
}

/// Words of a PDF with their boxes, as pdftotext finds them.
std::vector<std::pair<QString, Box>> wordsOf(const QTemporaryDir& folder, const QString& pdf) {
    static const QRegularExpression word(QStringLiteral(
        "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<"));
    const QString html = QString::fromUtf8(outputOf(
        QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), pdf, QStringLiteral("-")}, folder.path()));
    std::vector<std::pair<QString, Box>> out;
    for (auto it = word.globalMatch(html); it.hasNext();) {
        const auto m = it.next();
        const auto n = [&](int i) { return m.captured(i).toDouble(); };
        out.push_back({m.captured(5), {n(1), n(2), n(3) - n(1), n(4) - n(2)}});
    }
    return out;
}

/// Every word stands within the measured box of a label, sideways; and at its height.
void expectWordsInBoxes(const DisplayList& list, const std::vector<std::pair<QString, Box>>& words,
                        const std::string& name) {
    std::size_t texts = 0;
    for (const Group& group : list.groups)
        for (const Item& item : group.items)
            texts += std::holds_alternative<Text>(item) ? 1 : 0;
    EXPECT_GE(words.size(), texts) << name;
    for (const auto& [word, box] : words) {
        const double middle = box.top + box.height / 2;
        bool inside = false;
        for (const Group& group : list.groups)
            for (const Item& item : group.items)
                if (const auto* text = std::get_if<Text>(&item))
                    inside =
                        inside || (box.left > text->box.left - 1 && box.right() < text->box.right() + 1 &&
                                   middle > text->box.top - 3 && middle < text->box.bottom() + 3);
        EXPECT_TRUE(inside) << name << ": " << word.toStdString() << " from " << box.left << " to "
                            << box.right();
    }
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
    const Point half = placeOf("340", m_words) - label;
    EXPECT_LT(length(half - 0.5 * by), kTolerance) << half.x << " " << half.y;
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
    const Named five = figures().at(4);
    const DisplayList list = listOf(five.sketch, five.options);
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

INSTANTIATE_TEST_SUITE_P(Figures, Outputs, ::testing::Range<std::size_t>(0, figures().size()),
                         [](const auto& instance) {
                             std::string name = figures().at(instance.param).name;
                             std::replace(name.begin(), name.end(), ' ', '_');
                             return name;
                         });

} // namespace
} // namespace tailpoint::testing
