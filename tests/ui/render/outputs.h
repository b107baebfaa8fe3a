// SPDX-License-Identifier: MIT
// What a display list says and what an output has of it, read back from what other programs made of the
// output.
#pragma once

#include "tests/core/figure/any_figure.h"
#include "tests/ui/render/read_paths.h"
#include "tests/ui/render/render_support.h"
#include "ui/files/sketch_json.h"
#include "ui/render/dashes.h"
#include "ui/render/tikz.h"
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>

namespace tailpoint::testing {

inline constexpr double kTolerance = 0.5;        ///< points
inline constexpr double kStray = kTolerance + 1; ///< samples of the list are two points apart
inline constexpr int kPatienceMs = 60'000;

/// What a program wrote to standard output; empty where it failed.
inline QByteArray outputOf(const QString& program, const QStringList& arguments, const QString& folder) {
    QProcess process;
    process.setWorkingDirectory(folder);
    process.start(program, arguments);
    const bool done = process.waitForFinished(kPatienceMs) && process.exitStatus() == QProcess::NormalExit &&
                      process.exitCode() == 0;
    EXPECT_TRUE(done) << program.toStdString() << ": " << process.errorString().toStdString() << "\n"
                      << process.readAllStandardError().toStdString();
    return done ? process.readAllStandardOutput() : QByteArray();
}

inline QByteArray svgOfPdf(const QTemporaryDir& folder, const QString& name) {
    return outputOf(QStringLiteral("pdftocairo"), {QStringLiteral("-svg"), name, QStringLiteral("-")},
                    folder.path());
}

inline void put(const QString& path, const QByteArray& bytes) {
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
inline Sample sampleOf(const std::string& id, const QColor& colour, double width, Dash dash) {
    Sample sample{{}, colour, id, width, {}};
    for (const double part : patternOf(dash))
        sample.dash.push_back(part * width);
    return sample;
}

inline bool isHead(const Path& path) {
    return path.closed && path.role != Role::sheet && path.role != Role::titleblock;
}

inline void sampleLine(std::vector<Sample>& out, Point a, Point b, Sample sample) {
    const int steps = std::max(1, static_cast<int>(length(b - a) / 2));
    for (int i = 0; i <= steps; ++i) {
        sample.at = a + (static_cast<double>(i) / steps) * (b - a);
        out.push_back(sample);
    }
}

inline void sampleArc(std::vector<Sample>& out, const Arc& arc, Sample sample) {
    const int steps = std::max(2, static_cast<int>(std::abs(arc.sweepDegrees) / 180 * M_PI * arc.radius / 2));
    for (int i = 0; i <= steps; ++i) {
        sample.at = onCircle(arc.centre, arc.radius, arc.startDegrees + arc.sweepDegrees * i / steps);
        out.push_back(sample);
    }
}

/// The corners of the rectangle behind a label.
inline void sampleHalo(std::vector<Sample>& out, const Text& text, const QColor& colour,
                       const std::string& id) {
    const double left = text.box.left - kHaloPad, right = text.box.right() + kHaloPad,
                 top = text.box.top - kHaloPad, bottom = text.box.bottom() + kHaloPad;
    for (const Point corner : {Point{left, top}, {right, top}, {right, bottom}, {left, bottom}})
        out.push_back({corner, colour, id + "'s halo", 0, {}});
}

/// Every open stroke, frame and ring, and of every head its corners: tip, wings and notch.
inline std::vector<Sample> samplesOf(const DisplayList& list, const Theme& theme) {
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

inline bool alike(const QColor& a, const QColor& b) {
    return a.isValid() && std::abs(a.red() - b.red()) < 3 && std::abs(a.green() - b.green()) < 3 &&
           std::abs(a.blue() - b.blue()) < 3;
}

inline double distance(Point p, Point a, Point b) {
    const Point d = b - a;
    const double square = dot(d, d), t = square > 0 ? std::clamp(dot(p - a, d) / square, 0.0, 1.0) : 0;
    return length(p - (a + t * d));
}

inline constexpr double kSameWeight = 0.06; ///< points, of a stroke's width
inline constexpr double kSameDash = 0.1;    ///< points, of a dash or a gap

inline bool isOfStyle(const Trace& trace, const Sample& sample) {
    return std::abs(trace.width - sample.width) < kSameWeight &&
           std::equal(trace.dash.begin(), trace.dash.end(), sample.dash.begin(), sample.dash.end(),
                      [](double a, double b) { return std::abs(a - b) < kSameDash; });
}

/// To the nearest line of that colour, weight and dash, or edge of a filled shape; a thick line's ink counts
/// to its middle.
inline double distanceTo(const std::vector<Trace>& traces, const Sample& sample) {
    double least = 1e9;
    for (const Trace& trace : traces)
        if (sample.width > 0 ? alike(trace.stroke, sample.colour) && isOfStyle(trace, sample)
                             : alike(trace.stroke, sample.colour) || alike(trace.fill, sample.colour))
            for (std::size_t i = 0; i + 1 < trace.points.size(); ++i)
                least = std::min(least, distance(sample.at, trace.points[i], trace.points[i + 1]));
    return least;
}

/// Everything that the list says is there; and nothing else is.
inline void expectSame(const DisplayList& list, const Theme& theme, const QByteArray& svg,
                       const std::string& name) {
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
inline std::vector<std::pair<QString, Box>> wordsOf(const QTemporaryDir& folder, const QString& pdf) {
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
inline void expectWordsInBoxes(const DisplayList& list, const std::vector<std::pair<QString, Box>>& words,
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

} // namespace tailpoint::testing
