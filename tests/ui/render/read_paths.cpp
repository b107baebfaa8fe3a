// SPDX-License-Identifier: MIT
#include "tests/ui/render/read_paths.h"

#include <QMap>
#include <QPainterPath>
#include <QRegularExpression>
#include <QTransform>
#include <QXmlStreamReader>

namespace tailpoint::testing {
namespace {

using Attributes = QMap<QString, QString>;

Attributes attributesOf(const QXmlStreamReader& reader) {
    Attributes out;
    for (const auto& attribute : reader.attributes())
        out[attribute.name().toString()] = attribute.value().toString();
    for (const QString& declaration : out.value(QStringLiteral("style")).split(QLatin1Char(';')))
        if (const qsizetype colon = declaration.indexOf(QLatin1Char(':')); colon > 0)
            out[declaration.left(colon).trimmed()] = declaration.mid(colon + 1).trimmed();
    return out;
}

std::vector<double> numbersOf(const QString& text) {
    static const QRegularExpression number(QStringLiteral("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?"));
    std::vector<double> out;
    for (auto it = number.globalMatch(text); it.hasNext();)
        out.push_back(it.next().captured().toDouble());
    return out;
}

QColor colourOf(const QString& text) {
    if (text.isEmpty() || text == QLatin1String("none"))
        return {};
    if (!text.startsWith(QLatin1String("rgb")))
        return QColor(text);
    const auto parts = numbersOf(text);
    if (parts.size() != 3)
        return {};
    const double unit = text.contains(QLatin1Char('%')) ? 2.55 : 1;
    return QColor(qRound(parts[0] * unit), qRound(parts[1] * unit), qRound(parts[2] * unit));
}

QTransform transformOf(const QString& text) {
    const auto n = numbersOf(text);
    if (text.startsWith(QLatin1String("matrix")) && n.size() == 6)
        return {n[0], n[1], n[2], n[3], n[4], n[5]};
    if (text.startsWith(QLatin1String("translate")) && !n.empty())
        return QTransform::fromTranslate(n[0], n.size() > 1 ? n[1] : 0);
    return {};
}

/// An elliptical arc that is a circle's: by its centre, as SVG 1.1 (appendix F.6) finds it.
void arcTo(QPainterPath& path, double radius, bool large, bool clockwise, QPointF to) {
    const QPointF from = path.currentPosition(), middle = (from + to) / 2, chord = to - from;
    const double half = std::hypot(chord.x(), chord.y()) / 2;
    if (half == 0)
        return;
    const double away = std::sqrt(std::max(0.0, radius * radius - half * half));
    const QPointF normal(-chord.y() / (2 * half), chord.x() / (2 * half));
    const QPointF centre = middle + (large == clockwise ? -away : away) * normal;
    const auto degrees = [&](QPointF p) {
        return std::atan2(-(p.y() - centre.y()), p.x() - centre.x()) * 180 / M_PI;
    };
    double sweep = degrees(to) - degrees(from);
    if (clockwise && sweep > 0)
        sweep -= 360;
    if (!clockwise && sweep < 0)
        sweep += 360;
    path.arcTo(QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius), degrees(from),
               sweep);
}

/// M, L, H, V, C, A and Z with absolute coordinates: what figures are written with.
QPainterPath pathOf(const QString& data) {
    static const QRegularExpression command(QStringLiteral("([MLHVCAZ])([^MLHVCAZ]*)"));
    QPainterPath path;
    for (auto it = command.globalMatch(data); it.hasNext();) {
        const auto match = it.next();
        const QChar kind = match.captured(1).at(0);
        const auto n = numbersOf(match.captured(2));
        if (kind == QLatin1Char('Z'))
            path.closeSubpath();
        else if (kind == QLatin1Char('H') && !n.empty())
            path.lineTo(n[0], path.currentPosition().y());
        else if (kind == QLatin1Char('V') && !n.empty())
            path.lineTo(path.currentPosition().x(), n[0]);
        else if (kind == QLatin1Char('A') && n.size() == 7)
            arcTo(path, n[0], n[3] != 0, n[4] != 0, {n[5], n[6]});
        else if (kind == QLatin1Char('C'))
            for (std::size_t i = 0; i + 5 < n.size(); i += 6)
                path.cubicTo(n[i], n[i + 1], n[i + 2], n[i + 3], n[i + 4], n[i + 5]);
        else
            for (std::size_t i = 0; i + 1 < n.size(); i += 2)
                if (kind == QLatin1Char('M') && i == 0)
                    path.moveTo(n[0], n[1]);
                else
                    path.lineTo(n[i], n[i + 1]);
    }
    return path;
}

QPainterPath shapeOf(const QString& name, const Attributes& a) {
    const auto value = [&](const char* key) { return a.value(QLatin1String(key)).toDouble(); };
    QPainterPath path;
    if (name == QLatin1String("path"))
        return pathOf(a.value(QStringLiteral("d")));
    if (name == QLatin1String("line")) {
        path.moveTo(value("x1"), value("y1"));
        path.lineTo(value("x2"), value("y2"));
    } else if (name == QLatin1String("circle")) {
        path.addEllipse(QPointF(value("cx"), value("cy")), value("r"), value("r"));
    } else if (name == QLatin1String("rect")) {
        path.addRect(value("x"), value("y"), value("width"), value("height"));
    } else if (name.startsWith(QLatin1String("poly"))) {
        const auto n = numbersOf(a.value(QStringLiteral("points")));
        for (std::size_t i = 0; i + 1 < n.size(); i += 2)
            i == 0 ? path.moveTo(n[0], n[1]) : path.lineTo(n[i], n[i + 1]);
        if (name == QLatin1String("polygon"))
            path.closeSubpath();
    }
    return path;
}

bool isHidden(const QString& name) {
    return name == QLatin1String("defs") || name == QLatin1String("clipPath") ||
           name == QLatin1String("symbol") || name == QLatin1String("mask");
}

} // namespace

std::vector<Trace> tracesOf(const QByteArray& svg) {
    std::vector<Trace> out;
    std::vector<QTransform> transforms{QTransform()};
    int hidden = 0;
    QXmlStreamReader reader(svg);
    while (!reader.atEnd()) {
        const auto token = reader.readNext();
        const QString name = reader.name().toString();
        if (token == QXmlStreamReader::EndElement) {
            hidden -= isHidden(name) ? 1 : 0;
            transforms.pop_back();
        }
        if (token != QXmlStreamReader::StartElement)
            continue;
        const Attributes a = attributesOf(reader);
        hidden += isHidden(name) ? 1 : 0;
        transforms.push_back(transformOf(a.value(QStringLiteral("transform"))) * transforms.back());
        if (hidden > 0)
            continue;
        const QTransform& t = transforms.back();
        for (const QPolygonF& polygon : shapeOf(name, a).toSubpathPolygons(t)) {
            Trace& trace = out.emplace_back();
            trace.stroke = colourOf(a.value(QStringLiteral("stroke")));
            trace.fill = colourOf(a.value(QStringLiteral("fill")));
            const double scale = std::sqrt(std::abs(t.determinant()));
            trace.width = a.value(QStringLiteral("stroke-width")).toDouble() * scale;
            for (const double part : numbersOf(a.value(QStringLiteral("stroke-dasharray"))))
                trace.dash.push_back(part * scale);
            for (const QPointF p : polygon)
                trace.points.push_back({p.x(), p.y()});
        }
    }
    return out;
}

} // namespace tailpoint::testing
