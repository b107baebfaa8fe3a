// SPDX-License-Identifier: MIT
#include "ui/style/symbols.h"

#include "core/figure/words.h"
#include "core/sketch/shown.h"
#include "ui/style/theme.h"

namespace tailpoint {

namespace {

QString partInSerif(const Run& run) {
    const QString html = text(run.text).toHtmlEscaped();
    return run.italic ? QStringLiteral("<i>%1</i>").arg(html) : html;
}

QString inSerif(const QString& html) {
    return QStringLiteral("<span style=\"font-family:%1;font-size:large\">%2</span>")
        .arg(QString(serifFont().family()).replace(u'"', u'\''), html);
}

} // namespace

QString symbolHtml(const Symbol& symbol) {
    return inSerif(symbolInSerif(symbol));
}

QString symbolInSerif(const Symbol& symbol) {
    QString line, below;
    for (const Run& run : symbolRuns(symbol)) {
        (run.script == Script::sub ? below : line) += partInSerif(run);
    }
    return below.isEmpty() ? line : line + QStringLiteral("<sub>%1</sub>").arg(below);
}

Words symbolWords(const Things& things, VectorId vector) {
    return {things.name(vector), true, false, things.symbol(vector)};
}

Words symbolWords(const Things& things, const std::string& name) {
    return {name, true, false, things.symbolNamed(name)};
}

Sentence sentence(const QString& text) {
    return {{text.toStdString()}};
}

Sentence sentence(const QString& pattern, const Words& symbol) {
    Sentence whole;
    for (const QString& part : pattern.split(QStringLiteral("%1"))) {
        if (!whole.empty()) {
            whole.push_back(symbol);
        }
        whole.push_back({part.toStdString()});
    }
    return whole;
}

QString htmlOf(const Sentence& sentence) {
    QString html;
    for (const Words& words : sentence) {
        html += words.symbol ? symbolHtml(words.printed) : onScreen(words.text).toHtmlEscaped();
    }
    return html;
}

namespace {

QString htmlOf(const Formula& formula) {
    switch (formula.kind) {
    case FormulaKind::symbol: {
        const QString html = symbolHtml({formula.text, formula.sub, formula.slant});
        return formula.bold ? QStringLiteral("<b>%1</b>").arg(html) : html;
    }
    case FormulaKind::number: // no break before the unit
        return text(toText(formula)).toHtmlEscaped().replace(u' ', QChar::Nbsp);
    case FormulaKind::relation:
        if (formula.parts.size() == 2 && formula.relations[0] == Relation::equal) {
            return htmlOf(formula.parts[0]) + QStringLiteral("&nbsp;=&nbsp;") + htmlOf(formula.parts[1]);
        }
        break;
    default:
        break;
    }
    return text(toText(formula)).toHtmlEscaped();
}

} // namespace

QString htmlOf(const Prose& prose) {
    QString html;
    for (const Piece& piece : prose.pieces) {
        const auto* words = std::get_if<std::string>(&piece);
        html += words != nullptr ? text(*words).toHtmlEscaped() : htmlOf(std::get<Formula>(piece));
    }
    return html;
}

QString phraseHtml(const Phrase& phrase, const Things& things) {
    QString html;
    for (const PhrasePiece& piece : phrase.pieces()) {
        html += piece.isName() ? symbolHtml(symbolOf(piece, things)) : onScreen(piece.text).toHtmlEscaped();
    }
    return html;
}

QString onScreen(std::string_view shown) {
    return text(withMinusSigns(shown));
}

QString onScreen(const QString& shown) {
    return onScreen(shown.toStdString());
}

QString text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

} // namespace tailpoint
