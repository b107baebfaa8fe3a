#include "ui/style/symbols.h"

#include "core/formula/formula.h"
#include "core/sketch/shown.h"
#include "ui/style/theme.h"

namespace tailpoint {

namespace {

QString italic(const QString& letters) {
    return QStringLiteral("<span style=\"font-family:%1;font-style:italic;font-size:large\">%2</span>")
        .arg(QString(serifFont().family()).replace(u'"', u'\''), letters.toHtmlEscaped());
}

QString lowered(const QString& letters) {
    return letters.isEmpty() ? QString() : QStringLiteral("<sub>%1</sub>").arg(letters.toHtmlEscaped());
}

} // namespace

QString symbolHtml(std::string_view name) {
    return symbolHtml(name, {});
}

QString symbolHtml(std::string_view name, const QString& subscript) {
    const Symbol symbol = symbolOfName(name);
    return italic(text(symbol.base)) + lowered(text(symbol.sub) + subscript);
}

QString symbolInSerif(std::string_view name) {
    const Symbol symbol = symbolOfName(name);
    return QStringLiteral("<i>%1</i>").arg(text(symbol.base).toHtmlEscaped()) + lowered(text(symbol.sub));
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
