// SPDX-License-Identifier: MIT
// The SVG in other people's programs: valid to xmllint, the same picture in librsvg and Chromium as in Qt's
// own renderer, and still a sketch after another XML writer has saved it again.
#include "tests/core/figure/any_figure.h"
#include "tests/ui/render/render_support.h"
#include "ui/files/sketch_json.h"
#include "ui/files/svg_read.h"

#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>
#include <QSvgRenderer>
#include <QTemporaryDir>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr int kWidth = 1440, kHeight = 960, kPatienceMs = 60'000;

class Viewers : public ::testing::Test {
protected:
    QString path(const char* name) const { return m_folder.filePath(QLatin1String(name)); }

    void put(const char* name, const QByteArray& bytes) const {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }

    QByteArray get(const char* name) const {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    /// False, and a failure, where the program didn't do it.
    bool run(const char* program, const QStringList& arguments, const QString& output = {}) const {
        QProcess process;
        if (!output.isEmpty())
            process.setStandardOutputFile(output);
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("HOME"), m_folder.path());
        process.setProcessEnvironment(environment);
        process.setWorkingDirectory(m_folder.path());
        process.start(QLatin1String(program), arguments);
        const bool done = process.waitForFinished(kPatienceMs) && process.exitCode() == 0;
        EXPECT_TRUE(done) << program << ": " << process.errorString().toStdString() << "\n"
                          << process.readAllStandardError().toStdString();
        return done;
    }

    QImage byQt(const QByteArray& svg) const {
        QSvgRenderer renderer(svg);
        EXPECT_TRUE(renderer.isValid());
        QImage image(kWidth, kHeight, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        renderer.render(&painter, QRectF(0, 0, kWidth, kHeight));
        return image;
    }

    QImage byLibrsvg(const QByteArray& svg) const {
        put("figure.svg", svg);
        run("rsvg-convert",
            {QStringLiteral("-w"), QString::number(kWidth), QStringLiteral("-h"), QString::number(kHeight),
             QStringLiteral("-o"), path("rsvg.png"), path("figure.svg")});
        return QImage(path("rsvg.png"));
    }

    /// All on one page, one below the other, since the browser takes seconds to start. 720 pt are 960 px of
    /// CSS; one and a half of them to a pixel of the screen.
    QList<QImage> byChromium(const QList<QByteArray>& all) const {
        QByteArray page =
            "<!doctype html><style>body{margin:0}img{display:block;width:960px;height:640px}</style>";
        for (qsizetype i = 0; i < all.size(); ++i) {
            const QByteArray name = "figure" + QByteArray::number(i) + ".svg";
            put(name.constData(), all[i]);
            page += "<img src=\"" + name + "\">";
        }
        put("page.html", page);
        run("chromium",
            {QStringLiteral("--headless"), QStringLiteral("--no-sandbox"), QStringLiteral("--disable-gpu"),
             QStringLiteral("--disable-dev-shm-usage"), QStringLiteral("--hide-scrollbars"),
             QStringLiteral("--force-device-scale-factor=1.5"),
             QStringLiteral("--window-size=960,%1").arg(640 * all.size()),
             QStringLiteral("--user-data-dir=") + path("profile"),
             QStringLiteral("--screenshot=") + path("chromium.png"),
             QStringLiteral("file://") + path("page.html")});
        const QImage seen(path("chromium.png"));
        QList<QImage> images;
        for (qsizetype i = 0; i < all.size(); ++i)
            images << seen.copy(0, static_cast<int>(i) * kHeight, kWidth, kHeight);
        return images;
    }

    QImage byPoppler(const QByteArray& pdf) const {
        put("figure.pdf", pdf);
        run("pdftoppm", {QStringLiteral("-r"), QStringLiteral("144"), QStringLiteral("-png"),
                         QStringLiteral("-singlefile"), path("figure.pdf"), path("pdf")});
        return QImage(path("pdf.png"));
    }

    QTemporaryDir m_folder;
};

struct Difference {
    double mean = 0, most = 0; ///< grey levels; of all, and of the worst of the blocks of 24 x 24 pixels
};

/// Blocks forgive antialiasing and a letter's last pixel; a stroke that is missing or moved they don't.
Difference between(const QImage& a, const QImage& b) {
    EXPECT_EQ(a.size(), QSize(kWidth, kHeight));
    EXPECT_EQ(b.size(), a.size());
    if (a.size() != b.size())
        return {255, 255};
    constexpr int block = 24;
    const QSize small(kWidth / block, kHeight / block);
    const QImage one = a.convertToFormat(QImage::Format_RGB32)
                           .scaled(small, Qt::IgnoreAspectRatio, Qt::SmoothTransformation),
                 two = b.convertToFormat(QImage::Format_RGB32)
                           .scaled(small, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    Difference out;
    for (int y = 0; y < small.height(); ++y)
        for (int x = 0; x < small.width(); ++x) {
            const double d = std::abs(qGray(one.pixel(x, y)) - qGray(two.pixel(x, y)));
            out.mean += d / (small.width() * small.height());
            out.most = std::max(out.most, d);
        }
    return out;
}

/// Strokes alone: antialiasing differs, nothing else. With texts, whose letters each program rounds to pixels
/// in its own way, the mean alone counts.
constexpr double kMean = 0.35, kMost = 14, kMeanWithTexts = 0.8;

/// Poppler's painter bends the coverage of edges by a power, so thin lines come out lighter all over.
constexpr double kMeanOfPoppler = 0.45;

DisplayList withoutTexts(DisplayList list) {
    for (Group& group : list.groups)
        std::erase_if(group.items, [](const Item& item) { return std::holds_alternative<Text>(item); });
    return list;
}

QByteArray svgOf(const DisplayList& list, ThemeName theme) {
    return toSvg(list, themeOf(theme), {});
}

TEST_F(Viewers, ShowTheSameFigureAsQt) {
    const Sketch two = sketch({force("P", kToFind, 60), force("Q", 260, kToFind)}, force("R", 280, 10));
    QList<QByteArray> strokes, whole;
    for (const Sketch& given : {raft(), two})
        for (const ThemeName theme : {ThemeName::paper, ThemeName::slate, ThemeName::contrast}) {
            const DisplayList list = listOf(given);
            strokes << svgOf(withoutTexts(list), theme);
            whole << svgOf(list, theme);
        }
    const QList<QImage> chromium = byChromium(strokes + whole);
    ASSERT_EQ(chromium.size(), 12);
    for (qsizetype i = 0; i < strokes.size(); ++i) {
        const QImage qt = byQt(strokes[i]);
        const Difference rsvg = between(qt, byLibrsvg(strokes[i])), browser = between(qt, chromium[i]);
        EXPECT_LT(rsvg.mean, kMean);
        EXPECT_LT(rsvg.most, kMost);
        EXPECT_LT(browser.mean, kMean);
        EXPECT_LT(browser.most, kMost);
        const QImage withTexts = byQt(whole[i]);
        EXPECT_LT(between(withTexts, byLibrsvg(whole[i])).mean, kMeanWithTexts);
        EXPECT_LT(between(withTexts, chromium[i + strokes.size()]).mean, kMeanWithTexts);
    }
}

/// What the screen and a PNG are painted with, and the PDF.
TEST_F(Viewers, ShowTheSameFigureAsTheScreenAndThePdf) {
    const Sketch two = sketch({force("P", kToFind, 60), force("Q", 260, kToFind)}, force("R", 280, 10));
    for (const Sketch& given : {raft(), two})
        for (const ThemeName name : {ThemeName::paper, ThemeName::slate, ThemeName::contrast}) {
            const Theme& theme = themeOf(name);
            const DisplayList list = listOf(given), strokes = withoutTexts(list);
            const double scale = kWidth / list.width;
            const QImage screen = toImage(strokes, theme, scale), whole = toImage(list, theme, scale);
            const Difference svg = between(screen, byQt(svgOf(strokes, name))),
                             pdf = between(screen, byPoppler(toPdf(strokes, theme)));
            EXPECT_LT(svg.mean, kMean);
            EXPECT_LT(svg.most, kMost);
            EXPECT_LT(pdf.mean, kMeanOfPoppler);
            EXPECT_LT(pdf.most, kMost);
            EXPECT_LT(between(whole, byQt(svgOf(list, name))).mean, kMeanWithTexts);
            EXPECT_LT(between(whole, byPoppler(toPdf(list, theme))).mean, kMeanWithTexts);
        }
}

/// The check above would see it.
TEST_F(Viewers, AMissingArrowIsSeenByTheComparison) {
    DisplayList list = withoutTexts(listOf(raft()));
    const QImage whole = byQt(svgOf(list, ThemeName::paper));
    std::erase_if(list.groups, [](const Group& group) { return group.id == "sum"; });
    const Difference without = between(whole, byQt(svgOf(list, ThemeName::paper)));
    EXPECT_GT(without.mean, 1.5 * kMean);
    EXPECT_GT(without.most, 2 * kMost);
}

TEST_F(Viewers, XmllintFindsNothingToComplainAbout) {
    constexpr std::uint64_t seed = 12;
    for (std::uint64_t i = 0; i < 20; ++i) {
        AnyFigure any = anyFigure(seed, i);
        any.sketch.title = "A & B <\"ring\"> ]]> at \xC3\x86r\xC3\xB8";
        put("figure.svg",
            toSvg(listOf(any.sketch, any.options), themeOf(ThemeName::paper), writeSketch(any.sketch)));
        EXPECT_TRUE(
            run("xmllint", {QStringLiteral("--noout"), QStringLiteral("--nonet"), path("figure.svg")}))
            << "seed " << seed << " case " << i;
    }
}

/// Indented anew, without blanks, in canonical form (no CDATA, other order of attributes), in another
/// encoding.
TEST_F(Viewers, TheSketchSurvivesASavingByAnotherXmlWriter) {
    constexpr std::uint64_t seed = 13;
    const QStringList ways{QStringLiteral("--format"), QStringLiteral("--noblanks"), QStringLiteral("--c14n"),
                           QStringLiteral("--encode UTF-16")};
    for (std::uint64_t i = 0; i < 24; ++i) {
        AnyFigure any = anyFigure(seed, i);
        any.sketch.title = i % 2 == 0 ? "]]> & <b> \xC3\x86" : any.sketch.title;
        put("figure.svg",
            toSvg(listOf(any.sketch, any.options), themeOf(ThemeName::slate), writeSketch(any.sketch)));
        QStringList arguments = ways.at(static_cast<qsizetype>(i) % ways.size()).split(QLatin1Char(' '));
        arguments << path("figure.svg");
        ASSERT_TRUE(run("xmllint", arguments, path("again.svg")))
            << arguments.join(QLatin1Char(' ')).toStdString();
        const auto back = readSketch(sketchJsonFromSvg(get("again.svg")));
        ASSERT_TRUE(std::holds_alternative<Sketch>(back)) << "seed " << seed << " case " << i;
        EXPECT_EQ(std::get<Sketch>(back), any.sketch) << "seed " << seed << " case " << i;
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
