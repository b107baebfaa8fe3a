// SPDX-License-Identifier: MIT
// Formulas too wide for their room, broken by the trade's rule: before a sign or a factor, never within a
// number.
#include "ui/render/typesetter.h"

#include <QFontInfo>
#include <algorithm>
#include <utility>

namespace tailpoint {

namespace {

constexpr double kBrokenLeading = 0.3, kBrokenGap = 0.22, kIndent = 1.0; // ems

/// How far later rows stand to the right: less where a piece would not fit behind it.
double indentFor(const Typesetter& set, const std::vector<Setting>& pieces, double room) {
    double widest = 0;
    for (std::size_t i = 1; i < pieces.size(); ++i)
        widest = std::max(widest, pieces[i].width);
    return std::clamp(room - widest, 0.0, kIndent * set.em());
}

/// Pieces filled into rows; the first baseline stays where it is.
Setting filled(const Typesetter& set, std::vector<Setting> pieces, double gap, double room) {
    const double indent = indentFor(set, pieces, room);
    Setting out, row;
    double baseline = 0, start = 0, descent = 0;
    bool any = false;
    const auto flush = [&] {
        if (any)
            baseline += descent + kBrokenLeading * set.em() + row.ascent;
        descent = row.descent;
        out.add(std::exchange(row, {}), {start, baseline});
        any = true;
    };
    for (Setting& piece : pieces) {
        if (!row.isEmpty() && start + row.width + gap + piece.width > room) {
            flush();
            start = indent;
        }
        set.append(row, std::move(piece), row.isEmpty() ? 0 : gap / set.em());
    }
    flush();
    return out;
}

} // namespace

/// A term that is too wide by itself: its sign stays with its first factor.
Setting Typesetter::brokenTerm(const Formula& sum, std::size_t i, double room) const {
    const Formula& whole = sum.parts[i];
    const bool minus = i > 0 && whole.kind == FormulaKind::negative;
    const Formula& inner = minus ? whole.parts[0] : whole;
    const bool fenced = minus ? isFenced(whole, 0) : isFenced(sum, i);
    Setting out = i == 0 ? Setting() : text(minus ? QStringLiteral("\u2212") : QStringLiteral("+"));
    const double gap = out.isEmpty() ? 0 : kBrokenGap, fence = fenced ? 0.7 * m_em : 0;
    Setting rest = broken(inner, room - out.width - gap * m_em - fence);
    append(out, fenced ? parentheses(std::move(rest)) : std::move(rest), gap);
    return out;
}

Setting Typesetter::broken(const Formula& f, double room) const {
    Setting whole = set(f);
    if (whole.width <= room)
        return whole;
    switch (f.kind) {
    case FormulaKind::sum: {
        std::vector<Setting> pieces;
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            Setting one = term(f, i);
            if (const double within = room - (i == 0 ? 0 : kIndent * m_em); one.width > within)
                one = brokenTerm(f, i, within);
            pieces.push_back(std::move(one));
        }
        return filled(*this, std::move(pieces), kBrokenGap * m_em, room);
    }
    case FormulaKind::negative: { // the first term of a sum, say
        Setting out = text(QStringLiteral("\u2212"));
        const bool fenced = isFenced(f, 0);
        Setting inner = broken(f.parts[0], room - out.width - (fenced ? 0.7 * m_em : 0));
        append(out, fenced ? parentheses(std::move(inner)) : std::move(inner));
        return out;
    }
    case FormulaKind::root:
        return rootOver(broken(f.parts[0], room - 0.8 * m_em));
    case FormulaKind::fraction: {
        const Typesetter inner(m_size.scaled(0.94));
        const double within = room - 0.3 * m_em;
        return over(inner.broken(f.parts[0], within), inner.broken(f.parts[1], within));
    }
    case FormulaKind::function: {
        Setting out = text(QString::fromStdString(f.text));
        const double rest = room - out.width - 0.7 * m_em;
        Setting argument = broken(f.parts[0], rest);
        append(out, isFenced(f, 0) ? parentheses(std::move(argument)) : std::move(argument),
               isFenced(f, 0) ? 0 : 0.167);
        return out;
    }
    case FormulaKind::relation: {
        std::vector<Setting> pieces;
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            Setting piece;
            if (i > 0) {
                piece = sign(f.relations[i - 1]);
                piece.width += 0.28 * m_em;
            }
            append(piece, broken(f.parts[i], room - piece.width - kIndent * m_em));
            pieces.push_back(std::move(piece));
        }
        return filled(*this, std::move(pieces), 0.28 * m_em, room);
    }
    case FormulaKind::row:
        return filled(*this, words(f), kBrokenGap * m_em, room);
    case FormulaKind::product: {
        std::vector<Setting> pieces;
        for (std::size_t i = 0; i < f.parts.size(); ++i) {
            Setting piece = part(f, i);
            if (!isFenced(f, i) && piece.width > room - kIndent * m_em)
                piece = broken(f.parts[i], room - kIndent * m_em);
            if (i + 1 < f.parts.size() && jointAfter(f, i) == Joint::dot)
                append(piece, text(QStringLiteral("\u00b7")), 0.06);
            pieces.push_back(std::move(piece));
        }
        return filled(*this, std::move(pieces), 0.1 * m_em, room);
    }
    default:
        return whole;
    }
}

namespace {

struct Band {
    double top = 0, bottom = 0;
};

/// Letters without the air round them.
Band inkOf(const Setting::Text& text) {
    constexpr double kOver = 0.8, kUnder = 0.25;
    const double size = QFontInfo(*text.font).pixelSize();
    return {text.at.y() - kOver * size, text.at.y() + kUnder * size};
}

Band inkOf(const Setting::Shape& shape) {
    const QRectF bounds = shape.path.boundingRect();
    return {bounds.top(), bounds.bottom()};
}

std::vector<Band> bandsOf(const Setting& setting) {
    std::vector<Band> all, bands;
    for (const Setting::Text& text : setting.texts)
        all.push_back(inkOf(text));
    for (const Setting::Shape& shape : setting.shapes)
        all.push_back(inkOf(shape));
    std::sort(all.begin(), all.end(), [](const Band& a, const Band& b) { return a.top < b.top; });
    for (const Band& band : all)
        if (bands.empty() || band.top > bands.back().bottom)
            bands.push_back(band);
        else
            bands.back().bottom = std::max(bands.back().bottom, band.bottom);
    return bands;
}

} // namespace

std::vector<Setting> rowsOf(const Setting& setting) {
    const std::vector<Band> bands = bandsOf(setting);
    if (bands.size() < 2)
        return {setting};
    std::vector<Setting> rows(bands.size());
    const auto startOf = [&](std::size_t i) { return i == 0 ? -setting.ascent : bands[i].top; };
    const auto rowAt = [&](double top) {
        std::size_t i = bands.size() - 1;
        while (i > 0 && top < bands[i].top)
            --i;
        return i;
    };
    for (std::size_t i = 0; i < bands.size(); ++i) {
        rows[i].width = setting.width;
        rows[i].descent = (i + 1 < bands.size() ? bands[i + 1].top : setting.descent) - startOf(i);
    }
    for (Setting::Text text : setting.texts) {
        const std::size_t i = rowAt(inkOf(text).top);
        text.at.ry() -= startOf(i);
        rows[i].texts.push_back(std::move(text));
    }
    for (Setting::Shape shape : setting.shapes) {
        const std::size_t i = rowAt(inkOf(shape).top);
        shape.path.translate(0, -startOf(i));
        rows[i].shapes.push_back(std::move(shape));
    }
    return rows;
}

std::vector<Setting> setWorkingByLine(const Working& working, TypeSize size, double width, bool* broken) {
    constexpr double kRelationGap = 0.28;
    const Typesetter set(size);
    std::vector<Setting> lines;
    const Setting subject = working.subject ? set.set(*working.subject) : Setting();
    // A long subject on a narrow sheet: the lines below it begin further to the left.
    const double deepest = 0.3 * width;
    for (const Formula* part : sidesOf(working)) {
        Setting line;
        if (working.subject) {
            if (lines.empty())
                line.add(subject, {0, 0});
            const double at = lines.empty() ? subject.width : std::min(subject.width, deepest);
            line.width = at + kRelationGap * set.em();
            line.add(set.sign(Relation::equal), {line.width, 0});
            line.width += kRelationGap * set.em();
        }
        const double room = width - line.width;
        if (broken != nullptr && set.set(*part).width > room)
            *broken = true;
        line.add(set.broken(*part, room), {line.width, 0});
        lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace tailpoint
