// SPDX-License-Identifier: MIT
#include "ui/marking/feedback_names.h"

#include <algorithm>

namespace tailpoint {

namespace {

QString stemOf(std::string_view who) {
    const QString text = QString::fromUtf8(who.data(), static_cast<qsizetype>(who.size()))
                             .normalized(QString::NormalizationForm_C);
    QString stem;
    for (const char32_t c : text.toUcs4()) {
        const QString one = QString::fromUcs4(&c, 1);
        const bool isKept = QChar::isLetterOrNumber(c) || QChar::isMark(c) || c == U'_';
        if (!isKept && (stem.isEmpty() || stem.endsWith(QLatin1Char('-'))))
            continue;
        if ((stem + one).toUtf8().size() > FeedbackNames::kLongestStem)
            break;
        stem += isKept ? one : QStringLiteral("-");
    }
    while (stem.endsWith(QLatin1Char('-')))
        stem.chop(1);
    return stem;
}

/// Devices of Windows, which no file there can be named after, whatever its ending.
bool isDevice(const QString& stem) {
    static const QStringList devices{QStringLiteral("con"), QStringLiteral("prn"), QStringLiteral("aux"),
                                     QStringLiteral("nul")};
    const QString small = stem.toLower();
    return devices.contains(small) ||
           (small.size() == 4 && small[3].isDigit() &&
            (small.startsWith(QLatin1String("com")) || small.startsWith(QLatin1String("lpt"))));
}

} // namespace

QString FeedbackNames::next(std::string_view who, std::size_t line) {
    QString stem = stemOf(who);
    if (stem.isEmpty() || isDevice(stem))
        stem = QStringLiteral("line-%1").arg(line) + (stem.isEmpty() ? QString() : QLatin1Char('-') + stem);
    QString name = stem;
    const auto folded = [](const QString& text) {
        return text.normalized(QString::NormalizationForm_KC).toCaseFolded();
    };
    int last = std::max(1, m_taken.value(folded(stem)));
    while (m_taken.contains(folded(name)))
        name = stem + QLatin1Char('-') + QString::number(++last);
    m_taken.insert(folded(stem), last);
    m_taken.insert(folded(name), name == stem ? last : 1);
    return name + QStringLiteral(".html");
}

} // namespace tailpoint
