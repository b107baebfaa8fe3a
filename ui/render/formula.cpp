// SPDX-License-Identifier: MIT
#include "ui/render/formula.h"

#include "core/formula/letters.h"
#include "core/quantity/utf8.h"
#include "ui/render/fonts.h"
#include "ui/render/typesetter.h"

#include <QFontMetricsF>
#include <algorithm>
#include <iterator>
#include <utility>

namespace tailpoint {

namespace {

// In ems of the size at hand.
constexpr double kAscent = 0.74, kDescent = 0.22; // of a line of text, parentheses included
constexpr double kAxis = 0.25;                    // height of fraction bars above the baseline
constexpr double kRule = 0.05;                    // thickness of bars
constexpr double kGap = 0.12;                     // between a bar and what it covers
constexpr double kScript = 0.72, kRaise = 0.36, kDrop = 0.2;
constexpr double kThin = 0.167, kRelation = 0.28, kOperator = 0.22; // spaces
constexpr double kTall = 1.15;                                      // above it parentheses are drawn

QString fromView(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString withMinus(std::string_view digits) {
    QString shown = fromView(digits);
    shown.replace(QLatin1Char('-'), QChar(0x2212));
    return shown;
}

void addRule(Setting& out, const QRectF& bar) {
    QPainterPath path;
    path.addRect(bar);
    out.shapes.push_back({path, 0});
}

} // namespace

Setting Typesetter::set(const Formula& f) const {
    switch (f.kind) {
    case FormulaKind::number:
        return number(f);
    case FormulaKind::symbol:
        return symbol(f);
    case FormulaKind::words:
        return text(fromView(f.text));
    case FormulaKind::negative:
        return negative(f);
    case FormulaKind::sum:
        return sum(f);
    case FormulaKind::product:
        return product(f);
    case FormulaKind::fraction:
        return fraction(f);
    case FormulaKind::power:
        return power(f);
    case FormulaKind::root:
        return root(f);
    case FormulaKind::function:
        return function(f);
    case FormulaKind::absolute:
        return bars(set(f.parts[0]));
    case FormulaKind::relation:
        return relation(f);
    case FormulaKind::row:
        return row(f);
    }
    return {};
}

Setting Typesetter::row(const Formula& f) const {
    Setting out;
    for (const Formula& one : f.parts)
        append(out, set(one));
    return out;
}

Setting Typesetter::text(const QString& string, bool italic, bool bold) const {
    Setting out;
    out.ascent = kAscent * m_em;
    out.descent = kDescent * m_em;
    if (string.isEmpty())
        return out;
    Run run;
    run.italic = italic;
    run.bold = bold;
    const SharedFont& font = FontShelf::ofThread().font(run, Face::serif, m_em * 72 / m_size.dotsPerInch);
    out.width = advanceOf(*font, string);
    if (italic) // a slanted letter leans over its advance
        out.width += 0.04 * m_em;
    out.texts.push_back({{0, 0}, string, font});
    return out;
}

Setting Typesetter::sign(Relation relation) const {
    return text(fromView(signOf(relation)));
}

void Typesetter::append(Setting& out, Setting more, double space) const {
    out.add(std::move(more), {out.width + space * m_em, 0});
}

double Typesetter::scriptPart() const {
    return std::max(kScript, std::min(m_size.least / m_em, 1.0));
}

Typesetter Typesetter::script() const {
    return Typesetter(m_size.scaled(scriptPart()));
}

/// A larger subscript hangs lower, or it would pass for a letter of the line.
double Typesetter::drop() const {
    return (kDrop + 0.4 * (scriptPart() - kScript)) * m_em;
}

Setting Typesetter::part(const Formula& parent, std::size_t index) const {
    Setting inner = set(parent.parts[index]);
    return isFenced(parent, index) ? parentheses(std::move(inner)) : inner;
}

Setting Typesetter::negative(const Formula& f) const {
    Setting out = text(QStringLiteral("−"));
    append(out, part(f, 0));
    return out;
}

Setting Typesetter::number(const Formula& f) const {
    const auto [digits, exponent] = splitExponent(f.text);
    QString shown = withMinus(digits);
    if (!exponent.empty())
        return powerOfTen(shown, exponent, f);
    if (f.sub == "°")
        shown += QStringLiteral("°");
    else if (!f.sub.empty())
        shown += QChar(0x2009) + QString::fromStdString(f.sub);
    return text(shown);
}

Setting Typesetter::powerOfTen(const QString& digits, std::string_view exponent, const Formula& f) const {
    Setting out = text(digits + QStringLiteral(" × 10"));
    out.add(script().text(withMinus(exponent)), {out.width, -kRaise * m_em});
    if (!f.sub.empty())
        append(out, text(QString::fromStdString(f.sub)), kThin);
    return out;
}

Setting Typesetter::symbol(const Formula& f) const {
    QString letters = fromView(f.text), primes;
    while (letters.size() > 1 && (letters.back() == QChar(0x2032) || letters.back() == QChar(0x2033))) {
        primes.prepend(letters.back());
        letters.chop(1);
    }
    Setting out = text(letters, true, f.bold);
    const double right = out.width;
    if (!primes.isEmpty())
        append(out, text(primes), 0.03);
    if (!f.sub.empty())
        out.add(script().subscript(f), {right - 0.03 * m_em, drop()});
    return out;
}

Setting Typesetter::subscript(const Formula& f) const {
    Setting out;
    for (const SubscriptPiece& piece : subscriptPieces(f.sub, f.slant))
        append(out, text(fromView(piece.text), piece.italic));
    return out;
}

Setting Typesetter::term(const Formula& f, std::size_t i) const {
    const Formula& whole = f.parts[i];
    if (i == 0)
        return part(f, 0);
    const bool minus = whole.kind == FormulaKind::negative;
    Setting out = text(minus ? QStringLiteral("−") : QStringLiteral("+"));
    append(out, minus ? part(whole, 0) : part(f, i), kOperator);
    return out;
}

std::vector<Setting> Typesetter::terms(const Formula& f) const {
    std::vector<Setting> all;
    all.reserve(f.parts.size());
    for (std::size_t i = 0; i < f.parts.size(); ++i)
        all.push_back(term(f, i));
    return all;
}

std::vector<Setting> Typesetter::words(const Formula& f) const {
    std::vector<Setting> all(1);
    for (const Formula& one : f.parts) {
        if (one.kind != FormulaKind::words) {
            append(all.back(), set(one));
            continue;
        }
        const QStringList parts = fromView(one.text).split(QLatin1Char(' '));
        for (qsizetype i = 0; i < parts.size(); ++i) {
            if (i > 0)
                all.emplace_back();
            append(all.back(), text(parts[i]));
        }
    }
    return all;
}

Setting Typesetter::sum(const Formula& f) const {
    Setting out;
    for (std::size_t i = 0; i < f.parts.size(); ++i)
        append(out, term(f, i), i == 0 ? 0 : kOperator);
    return out;
}

Setting Typesetter::product(const Formula& f) const {
    Setting out;
    for (std::size_t i = 0; i < f.parts.size(); ++i) {
        append(out, part(f, i));
        if (i + 1 == f.parts.size())
            break;
        const Joint joint = jointAfter(f, i);
        if (joint == Joint::dot) {
            append(out, text(QStringLiteral("·")), 0.06);
            out.width += 0.06 * m_em;
        } else if (joint == Joint::space) {
            out.width += kThin * m_em;
        } else if (isFenced(f, i) || isFenced(f, i + 1)) {
            out.width += 0.04 * m_em;
        }
    }
    return out;
}

Setting Typesetter::fraction(const Formula& f) const {
    const Typesetter inner(m_size.scaled(0.94));
    return over(inner.set(f.parts[0]), inner.set(f.parts[1]));
}

Setting Typesetter::over(Setting above, Setting below) const {
    Setting out;
    const double wide = std::max(above.width, below.width) + 0.24 * m_em;
    const double bar = -kAxis * m_em;
    out.width = wide;
    out.add(std::move(above), {(wide - above.width) / 2, bar - kGap * m_em - above.descent});
    out.add(std::move(below), {(wide - below.width) / 2, bar + kGap * m_em + below.ascent});
    addRule(out, {0.04 * m_em, bar - kRule * m_em / 2, wide - 0.08 * m_em, kRule * m_em});
    return out;
}

Setting Typesetter::power(const Formula& f) const {
    Setting out = part(f, 0);
    const double lift = std::max(kRaise * m_em, out.ascent - 0.4 * m_em);
    out.add(script().set(f.parts[1]), {out.width + 0.02 * m_em, -lift});
    return out;
}

Setting Typesetter::root(const Formula& f) const {
    return rootOver(set(f.parts[0]));
}

Setting Typesetter::rootOver(const Setting& inner) const {
    const double top = -(inner.ascent + kGap * m_em * 0.6), bottom = inner.descent;
    const double hook = 0.62 * m_em, line = kRule * m_em;
    Setting out;
    out.add(inner, {hook + 0.06 * m_em, 0});
    out.width += 0.08 * m_em;
    out.ascent = std::max(out.ascent, -top + 2 * line);
    const QPointF shoulder(0.15 * m_em, -0.38 * m_em), foot(0.33 * m_em, bottom - 0.02 * m_em);
    QPainterPath thin, thick;
    thin.moveTo(0.02 * m_em, -0.3 * m_em);
    thin.lineTo(shoulder);
    thin.moveTo(foot);
    thin.lineTo(hook, top);
    thin.lineTo(out.width, top);
    thick.moveTo(shoulder);
    thick.lineTo(foot);
    out.shapes.push_back({thin, line});
    out.shapes.push_back({thick, 2 * line});
    return out;
}

Setting Typesetter::function(const Formula& f) const {
    Setting out = text(fromView(f.text));
    append(out, part(f, 0), isFenced(f, 0) ? 0 : kThin);
    return out;
}

Setting Typesetter::relation(const Formula& f) const {
    Setting out;
    for (std::size_t i = 0; i < f.parts.size(); ++i) {
        if (i > 0) {
            append(out, sign(f.relations[i - 1]), out.isEmpty() ? 0 : kRelation);
            out.width += kRelation * m_em;
        }
        append(out, set(f.parts[i]));
    }
    return out;
}

/// Bulging to the left, filled; mirrored where `bulge` is negative.
QPainterPath Typesetter::crescent(double top, double bottom, double bulge) const {
    const double middle = (top + bottom) / 2, thick = 0.085 * m_em * (bulge < 0 ? -1 : 1);
    QPainterPath path;
    path.moveTo(0, top);
    path.quadTo(-2 * bulge, middle, 0, bottom);
    path.quadTo(-2 * bulge + 2 * thick, middle, 0, top);
    return path;
}

Setting Typesetter::parentheses(Setting inner) const {
    Setting out;
    if (inner.height() <= kTall * m_em) {
        out = text(QStringLiteral("("));
        append(out, std::move(inner));
        append(out, text(QStringLiteral(")")));
        return out;
    }
    const double bulge = 0.16 * m_em, side = 0.3 * m_em;
    QPainterPath open = crescent(-inner.ascent, inner.descent, bulge);
    QPainterPath close = crescent(-inner.ascent, inner.descent, -bulge);
    open.translate(side - 0.06 * m_em, 0);
    close.translate(side + inner.width + 0.06 * m_em, 0);
    const double width = inner.width + 2 * side;
    out.add(std::move(inner), {side, 0});
    out.width = width;
    out.shapes.push_back({open, 0});
    out.shapes.push_back({close, 0});
    return out;
}

Setting Typesetter::bars(const Setting& inner) const {
    Setting out;
    out.add(inner, {0.16 * m_em, 0});
    for (const double x : {0.06 * m_em, inner.width + 0.22 * m_em})
        addRule(out, {x, -inner.ascent, kRule * m_em, inner.height()});
    out.width = inner.width + 0.34 * m_em;
    return out;
}

namespace {

template <class One>
void moveBehind(std::vector<One>& all, std::vector<One>& more) {
    if (all.empty())
        all = std::move(more);
    else
        all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

} // namespace

void Setting::add(const Setting& other, QPointF at) {
    for (const Text& item : other.texts)
        texts.push_back({item.at + at, item.text, item.font});
    for (const Shape& shape : other.shapes)
        shapes.push_back({shape.path.translated(at), shape.width});
    grow(other, at);
}

void Setting::add(Setting&& other, QPointF at) {
    for (Text& item : other.texts)
        item.at += at;
    for (Shape& shape : other.shapes)
        shape.path.translate(at);
    moveBehind(texts, other.texts);
    moveBehind(shapes, other.shapes);
    grow(other, at);
}

void Setting::grow(const Setting& by, QPointF at) {
    width = std::max(width, at.x() + by.width);
    ascent = std::max(ascent, by.ascent - at.y());
    descent = std::max(descent, by.descent + at.y());
}

void Setting::paint(QPainter& painter, QPointF baseline) const {
    const QColor ink = painter.pen().color();
    for (const Text& item : texts)
        drawWords(painter, baseline + item.at, item.text, *item.font);
    if (shapes.empty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(baseline);
    for (const Shape& shape : shapes) {
        const bool stroked = shape.width > 0;
        painter.setPen(stroked ? QPen(ink, shape.width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin)
                               : QPen(Qt::NoPen));
        painter.setBrush(stroked ? QBrush(Qt::NoBrush) : QBrush(ink));
        painter.drawPath(shape.path);
    }
    painter.restore();
}

Setting setFormula(const Formula& formula, TypeSize size) {
    return Typesetter(size).set(formula);
}

} // namespace tailpoint
