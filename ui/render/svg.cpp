// SPDX-License-Identifier: MIT
// SVG 1.1 from the display list. Presentation attributes only: every reader and editor understands them.
#include "ui/render/dashes.h"
#include "ui/render/fonts.h"
#include "ui/render/render.h"

#include <QXmlStreamWriter>
#include <charconv>
#include <cmath>
#include <numbers>
#include <utility>

namespace tailpoint {
namespace {

/// At most four decimals, no exponent, never "-0".
QString number(double value) {
    const double rounded = std::round(value * 1e4) / 1e4;
    char text[64];
    const auto end =
        std::to_chars(text, text + sizeof text, rounded == 0 ? 0.0 : rounded, std::chars_format::fixed);
    return QString::fromLatin1(text, static_cast<qsizetype>(end.ptr - text));
}

/// Without the characters that XML 1.0 can't hold.
QString xmlText(const std::string& text) {
    QString out;
    for (const char32_t c : QString::fromStdString(text).toUcs4()) {
        const bool allowed = c == 0x9 || c == 0xA || c == 0xD || (c >= 0x20 && c < 0xD800) ||
                             (c >= 0xE000 && c < 0xFFFE) || (c >= 0x10000 && c <= 0x10FFFF);
        out += QString::fromUcs4(allowed ? &c : U"\uFFFD", 1);
    }
    return out;
}

/// A JSON text in which characters that XML can't hold are escaped as \uXXXX.
QString xmlJson(const QByteArray& json) {
    QString out;
    for (const QChar c : QString::fromUtf8(json)) {
        const ushort u = c.unicode();
        if (u == 0xFFFE || u == 0xFFFF)
            out += QStringLiteral("\\u%1").arg(u, 4, 16, QLatin1Char('0'));
        else
            out += c;
    }
    return out;
}

class Writer {
public:
    Writer(QByteArray& bytes, const DisplayList& list, const Theme& theme)
        : m_xml(&bytes), m_list(list), m_theme(theme) {
        m_xml.setAutoFormatting(true);
        m_xml.setAutoFormattingIndent(1);
    }

    void write(const QByteArray& sketchJson) {
        m_xml.writeStartDocument();
        m_xml.writeStartElement(QStringLiteral("svg"));
        m_xml.writeDefaultNamespace(QStringLiteral("http://www.w3.org/2000/svg"));
        attribute("version", QStringLiteral("1.1"));
        attribute("width", number(m_list.width) + QStringLiteral("pt"));
        attribute("height", number(m_list.height) + QStringLiteral("pt"));
        attribute("viewBox", QStringLiteral("0 0 %1 %2").arg(number(m_list.width), number(m_list.height)));
        attribute("role", QStringLiteral("img"));
        attribute("aria-labelledby", QStringLiteral("title desc"));
        textElement("title", "title", m_list.title);
        textElement("desc", "desc", m_list.description);
        if (!sketchJson.isEmpty()) {
            m_xml.writeStartElement(QStringLiteral("metadata"));
            m_xml.writeCDATA(xmlJson(sketchJson));
            m_xml.writeEndElement();
        }
        for (const Group& group : m_list.groups)
            write(group);
        m_xml.writeEndElement();
        m_xml.writeEndDocument();
    }

    void operator()(const Path& path) {
        if (isRectangle(path)) {
            rectangle(path.role, path.points[0], path.points[2]);
        } else if (path.points.size() == 2) {
            start("line", path.role);
            attribute("x1", path.points[0].x);
            attribute("y1", path.points[0].y);
            attribute("x2", path.points[1].x);
            attribute("y2", path.points[1].y);
        } else {
            start(path.closed ? "polygon" : "polyline", path.role);
            attribute("points", pointList(path.points));
        }
        paintOf(path.role, path.filled ? std::optional(path.role) : std::nullopt, path.width, path.dash);
        m_xml.writeEndElement();
    }

    void operator()(const Arc& arc) {
        if (std::abs(arc.sweepDegrees) >= 360) {
            circle(arc.role, arc.centre, arc.radius);
        } else {
            start("path", arc.role);
            attribute("d", arcData(arc));
        }
        paintOf(arc.role, std::nullopt, arc.width, arc.dash);
        m_xml.writeEndElement();
    }

    void operator()(const Disc& disc) {
        circle(disc.role, disc.centre, disc.radius);
        paintOf(disc.role, disc.filledWithSheet ? Role::sheet : disc.role, disc.width, Dash::solid);
        m_xml.writeEndElement();
    }

    void operator()(const Text& text) {
        if (text.halo)
            halo(text.box);
        start("text", text.role);
        attribute("x", text.baseline.x);
        attribute("y", text.baseline.y);
        attribute("text-anchor", anchorName(text.anchor));
        attribute("font-family", QString::fromLatin1(text.face == Face::serif ? serifStack() : sansStack()));
        attribute("font-size", text.size);
        attribute("fill", m_theme.colour(text.ink).name());
        m_xml.writeAttribute(QStringLiteral("xml:space"), QStringLiteral("preserve"));
        m_xml.setAutoFormatting(false); // spaces inside a text count
        double shift = 0;
        int line = 0;
        for (const Run& run : text.runs)
            tspan(text, run, shift, std::exchange(line, run.line) != run.line);
        m_xml.writeEndElement();
        m_xml.setAutoFormatting(true);
    }

private:
    void attribute(const char* name, const QString& value) {
        m_xml.writeAttribute(QString::fromLatin1(name), value);
    }
    void attribute(const char* name, double value) { attribute(name, number(value)); }
    void start(const char* name, Role role) {
        m_xml.writeStartElement(QString::fromLatin1(name));
        attribute("class", className(role));
    }
    static QString anchorName(Anchor anchor) {
        return anchor == Anchor::start    ? QStringLiteral("start")
               : anchor == Anchor::middle ? QStringLiteral("middle")
                                          : QStringLiteral("end");
    }
    static QString className(Role role) {
        const std::string_view name = nameOf(role);
        return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
    }
    void textElement(const char* name, const char* id, const std::string& text) {
        m_xml.writeStartElement(QString::fromLatin1(name));
        if (id)
            attribute("id", QString::fromLatin1(id));
        m_xml.writeCharacters(xmlText(text));
        m_xml.writeEndElement();
    }

    void write(const Group& group) {
        start("g", group.role);
        if (!group.id.empty())
            attribute("id", xmlText(group.id));
        if (!group.title.name.empty())
            textElement("title", nullptr, group.title.whole());
        if (group.role == Role::grid)
            grid(group);
        else
            for (const Item& item : group.items)
                std::visit(*this, item);
        m_xml.writeEndElement();
    }

    void paintOf(Role stroke, std::optional<Role> fill, double width, Dash dash) {
        attribute("fill", fill ? m_theme.colour(*fill).name() : QStringLiteral("none"));
        if (width <= 0)
            return;
        attribute("stroke", m_theme.colour(stroke).name());
        attribute("stroke-width", width);
        QString pattern;
        for (const double part : patternOf(dash))
            pattern += (pattern.isEmpty() ? QString() : QStringLiteral(" ")) + number(part * width);
        if (!pattern.isEmpty())
            attribute("stroke-dasharray", pattern);
    }

    void circle(Role role, Point centre, double radius) {
        start("circle", role);
        attribute("cx", centre.x);
        attribute("cy", centre.y);
        attribute("r", radius);
    }

    static bool isRectangle(const Path& path) {
        const auto& p = path.points;
        return path.closed && p.size() == 4 && p[0].y == p[1].y && p[1].x == p[2].x && p[2].y == p[3].y &&
               p[3].x == p[0].x && p[0].x < p[2].x && p[0].y < p[2].y;
    }

    void rectangle(Role role, Point topLeft, Point bottomRight) {
        start("rect", role);
        attribute("x", topLeft.x);
        attribute("y", topLeft.y);
        attribute("width", bottomRight.x - topLeft.x);
        attribute("height", bottomRight.y - topLeft.y);
    }

    void halo(const Box& box) {
        rectangle(Role::halo, {box.left - kHaloPad, box.top - kHaloPad},
                  {box.right() + kHaloPad, box.bottom() + kHaloPad});
        attribute("fill", m_theme.colour(Role::halo).name());
        m_xml.writeEndElement();
    }

    /// All lines of the grid as one path.
    void grid(const Group& group) {
        QString data;
        double width = 0;
        for (const Item& item : group.items)
            if (const auto* path = std::get_if<Path>(&item)) {
                width = path->width;
                data += QLatin1Char('M') + pointPair(path->points.front()) + QLatin1Char('L') +
                        pointPair(path->points.back());
            }
        start("path", group.role);
        attribute("d", data);
        paintOf(group.role, std::nullopt, width, Dash::solid);
        m_xml.writeEndElement();
    }

    /// `isBelow`: the first of a lower line, which is anchored anew.
    void tspan(const Text& text, const Run& run, double& shift, bool isBelow) {
        start("tspan", text.role);
        if (isBelow)
            attribute("x", text.baseline.x);
        if (run.italic)
            attribute("font-style", QStringLiteral("italic"));
        if (run.bold)
            attribute("font-weight", QStringLiteral("bold"));
        if (run.script != Script::normal || run.line > 0)
            attribute("font-size", sizeOf(run, text.size));
        const double wanted = shiftOf(run, text.size);
        if (wanted != shift)
            attribute("dy", wanted - shift);
        shift = wanted;
        m_xml.writeCharacters(xmlText(run.text));
        m_xml.writeEndElement();
    }

    static QString pointPair(Point p) { return number(p.x) + QLatin1Char(',') + number(p.y); }

    static QString pointList(const std::vector<Point>& points) {
        QString out;
        for (const Point p : points)
            out += (out.isEmpty() ? QString() : QStringLiteral(" ")) + pointPair(p);
        return out;
    }

    static QString arcData(const Arc& arc) {
        const auto at = [&](double degrees) {
            const double t = degrees * std::numbers::pi / 180;
            return number(arc.centre.x + arc.radius * std::cos(t)) + QLatin1Char(' ') +
                   number(arc.centre.y - arc.radius * std::sin(t));
        };
        return QStringLiteral("M%1 A%2 %2 0 %3 %4 %5")
            .arg(at(arc.startDegrees), number(arc.radius),
                 QString::number(std::abs(arc.sweepDegrees) > 180 ? 1 : 0),
                 QString::number(arc.sweepDegrees < 0 ? 1 : 0), at(arc.startDegrees + arc.sweepDegrees));
    }

    QXmlStreamWriter m_xml;
    const DisplayList& m_list;
    const Theme& m_theme;
};

} // namespace

QByteArray toSvg(const DisplayList& list, const Theme& theme, const QByteArray& sketchJson) {
    QByteArray bytes;
    Writer(bytes, list, theme).write(sketchJson);
    return bytes;
}

} // namespace tailpoint
