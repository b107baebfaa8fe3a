#include "ui/style/symbols.h"

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

Symbol symbolOf(std::string_view name) {
    const QString whole = text(name);
    qsizetype digits = whole.size();
    while (digits > 0 && whole[digits - 1] >= u'0' && whole[digits - 1] <= u'9') {
        --digits;
    }
    if (digits == 0) {
        return {whole, {}};
    }
    return {whole.left(digits), whole.mid(digits)};
}

QString symbolHtml(std::string_view name) {
    return symbolHtml(name, {});
}

QString symbolHtml(std::string_view name, const QString& subscript) {
    const Symbol symbol = symbolOf(name);
    return italic(symbol.letters) + lowered(symbol.subscript + subscript);
}

QString symbolInSerif(std::string_view name) {
    const Symbol symbol = symbolOf(name);
    return QStringLiteral("<i>%1</i>").arg(symbol.letters.toHtmlEscaped()) + lowered(symbol.subscript);
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
