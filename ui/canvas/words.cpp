// SPDX-License-Identifier: MIT
#include "ui/canvas/words.h"

#include "core/sketch/shown.h"
#include "ui/document/given_edits.h"

namespace tailpoint {

QString words::shown(const std::string& text) {
    QString out = QString::fromStdString(text);
    for (qsizetype i = 0; i + 1 < out.size(); ++i) {
        const bool inWord = i > 0 && (out[i - 1].isLetterOrNumber());
        if (out[i] == QLatin1Char('-') && out[i + 1].isDigit() && !inWord) {
            out[i] = QChar(0x2212);
        }
    }
    return out;
}

QString words::magnitude(const Force& force, const Sketch& sketch) {
    return force.magnitude.value ? asStated(force.magnitude, sketch) : tr("to find");
}

QString words::direction(const Force& force, const Sketch& sketch) {
    return isGiven(force.direction) ? asStated(force.direction, sketch)
                                    : shown(shownAsGiven(force.direction, sketch));
}

QString words::given(const Force& force, const Sketch& sketch) {
    if (!isGiven(force.direction)) {
        return magnitude(force, sketch);
    }
    return isGiven(force.magnitude) ? tr("%1 at %2").arg(magnitude(force, sketch), direction(force, sketch))
                                    : direction(force, sketch);
}

QString words::place(double magnitude, double referred, const Sketch& sketch) {
    const QString size = shown(shownForceWithUnit(magnitude, sketch));
    return magnitude > 0 ? tr("%1 at %2").arg(size, shown(shownAngle(referred, sketch))) : size;
}

} // namespace tailpoint
