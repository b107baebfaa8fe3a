// SPDX-License-Identifier: MIT
#include "ui/document/readings.h"

#include <QKeyEvent>

namespace tailpoint {

QString withReadings(const Refused& refused) {
    QString rich = refused.message.toHtmlEscaped();
    for (qsizetype i = 0; i < refused.readings.size(); ++i) {
        const QString reading = refused.readings[i].toHtmlEscaped().replace(u' ', QChar::Nbsp);
        rich += QStringLiteral("%1<a href=\"%2\">%3</a>&nbsp;(Alt+%4)")
                    .arg(i == 0 ? QStringLiteral(" &nbsp;") : QStringLiteral(", "), QString::number(i),
                         reading, QString::number(i + 1));
    }
    return rich;
}

std::optional<qsizetype> readingOf(const QKeyEvent& key, const QStringList& readings) {
    const qsizetype which = key.key() - Qt::Key_1;
    const bool alt = (key.modifiers() & ~Qt::KeypadModifier) == Qt::AltModifier;
    return alt && which >= 0 && which < readings.size() ? std::optional(which) : std::nullopt;
}

} // namespace tailpoint
