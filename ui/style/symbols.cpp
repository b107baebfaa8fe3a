#include "ui/style/symbols.h"

#include "core/figure/words.h"
#include "core/sketch/shown.h"
#include "ui/style/theme.h"

namespace tailpoint {

namespace {

QString italic(const QString& letters) {
    return QStringLiteral("<span style=\"font-family:%1;font-style:italic;font-size:large\">%2</span>")
        .arg(QString(serifFont().family()).replace(u'"', u'\''), letters.toHtmlEscaped());
}

QString lowered(const QString& letters, bool italics) {
    const QString escaped = letters.toHtmlEscaped();
    return QStringLiteral("<sub>%1</sub>").arg(italics ? QStringLiteral("<i>%1</i>").arg(escaped) : escaped);
}

QString htmlOf(const Run& run) {
    return run.script == Script::sub ? lowered(text(run.text), run.italic)
           : run.italic              ? italic(text(run.text))
                                     : text(run.text).toHtmlEscaped();
}

} // namespace

QString symbolHtml(const Symbol& symbol) {
    QString html;
    for (const Run& run : symbolRuns(symbol)) {
        html += htmlOf(run);
    }
    return html;
}

QString symbolInSerif(const Symbol& symbol) {
    QString html;
    for (const Run& run : symbolRuns(symbol)) {
        html += run.script == Script::sub ? lowered(text(run.text), run.italic)
                                          : QStringLiteral("<i>%1</i>").arg(text(run.text).toHtmlEscaped());
    }
    return html;
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

QString proseHtml(std::string_view prose, const Sketch& sketch, const Things& things) {
    QString html;
    for (const Run& run : proseRuns(prose, sketch, things)) {
        html += htmlOf(run);
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
