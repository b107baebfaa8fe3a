// SPDX-License-Identifier: MIT
// The sketch out of a SVG's <metadata>, after whatever optimisers and editors have put around it. The file
// may be anybody's: time and memory stay in proportion to its length.
#include "ui/files/svg_read.h"

#include <QXmlStreamReader>
#include <string_view>

namespace tailpoint {
namespace {

constexpr int kDeepest = 1000; ///< elements in one another; drawings of editors nest by the dozen
/// The reader compares the attributes of a tag each with each; editors write some thirty.
constexpr int kMostAttributes = 1000;
const QLatin1String kMark("tailpoint-sketch");

/// Where a part of the markup that holds no tags ends, from `at`; `at` itself where none begins.
std::size_t behindPart(std::string_view text, std::size_t at) {
    static constexpr std::string_view parts[][2] = {{"<![CDATA[", "]]>"}, {"<!--", "-->"}, {"<?", "?>"}};
    for (const auto& [begin, end] : parts)
        if (text.substr(at).starts_with(begin)) {
            const std::size_t close = text.find(end, at + begin.size());
            return close == std::string_view::npos ? text.size() : close + end.size();
        }
    return at;
}

/// Behind the tag that begins at `at`, or a document type's first bracket; `equals` counts the attributes.
std::size_t behindTag(std::string_view text, std::size_t at, int& equals) {
    const bool isDeclaration = text.substr(at).starts_with("<!");
    char quote = 0;
    for (equals = 0; at < text.size(); ++at) {
        const char c = text[at];
        if (quote != 0)
            quote = c == quote ? '\0' : quote;
        else if (c == '"' || c == '\'')
            quote = c;
        else if (c == '>' || (c == '[' && isDeclaration))
            return at + 1;
        else if (c == '=')
            ++equals;
    }
    return at;
}

bool hasEndlessTag(std::string_view text) {
    for (std::size_t at = text.find('<'); at != std::string_view::npos; at = text.find('<', at)) {
        if (const std::size_t behind = behindPart(text, at); behind != at) {
            at = behind;
            continue;
        }
        int attributes = 0;
        at = behindTag(text, at, attributes);
        if (attributes > kMostAttributes)
            return true;
    }
    return false;
}

/// From the first brace to the last; empty without.
QString inBraces(const QString& text) {
    const qsizetype begin = text.indexOf(QLatin1Char('{')), end = text.lastIndexOf(QLatin1Char('}'));
    return begin >= 0 && end > begin ? text.mid(begin, end - begin + 1) : QString();
}

/// The text of the <metadata> that the reader has entered, its own before that of elements in it.
QString sketchIn(QXmlStreamReader& reader) {
    QString own, all;
    for (int depth = 1; depth > 0 && depth < kDeepest && !reader.atEnd();) {
        const auto token = reader.readNext();
        if (token == QXmlStreamReader::StartElement)
            ++depth;
        else if (token == QXmlStreamReader::EndElement)
            --depth;
        if (token != QXmlStreamReader::Characters && token != QXmlStreamReader::EntityReference)
            continue;
        all += reader.text();
        if (depth == 1)
            own += reader.text();
    }
    return inBraces(own.contains(kMark) ? own : all);
}

bool isMetadata(const QXmlStreamReader& reader) {
    const auto name = reader.qualifiedName();
    return name == QLatin1String("metadata") || name.endsWith(QLatin1String(":metadata"));
}

} // namespace

QByteArray sketchJsonFromSvg(const QByteArray& svg) {
    if (hasEndlessTag({svg.constData(), static_cast<std::size_t>(svg.size())}))
        return {};
    QXmlStreamReader reader(svg);
    reader.setNamespaceProcessing(false); // it would search all open elements for each name
    QString first;
    for (int depth = 0; depth < kDeepest && !reader.atEnd();) {
        const auto token = reader.readNext();
        if (token == QXmlStreamReader::EndElement)
            --depth;
        if (token != QXmlStreamReader::StartElement)
            continue;
        if (!isMetadata(reader)) {
            ++depth;
            continue;
        }
        const QString json = sketchIn(reader);
        if (json.contains(kMark))
            return json.toUtf8();
        if (first.isEmpty())
            first = json;
    }
    return first.toUtf8();
}

} // namespace tailpoint
