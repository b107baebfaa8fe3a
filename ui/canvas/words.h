// SPDX-License-Identifier: MIT
// Numbers and names as the window writes them: core's texts with a true minus, translated.
#pragma once

#include "core/sketch/sketch.h"

#include <QCoreApplication>
#include <QString>

namespace tailpoint {

/// All of the canvas's own words, one context for the translators.
struct words {
    Q_DECLARE_TR_FUNCTIONS(tailpoint::Canvas)
public:
    static QString name(const Force& force) { return QString::fromStdString(force.name); }
    /// UTF-8 from core; '-' before a digit becomes U+2212.
    static QString shown(const std::string& text);
    /// "340 N", "to find".
    static QString magnitude(const Force& force, const Sketch& sketch);
    /// "25.0°", "N30°E", "3 : 4", "to find".
    static QString direction(const Force& force, const Sketch& sketch);
    /// What is given of both: "340 N at 25.0°", "340 N", "25.0°".
    static QString given(const Force& force, const Sketch& sketch);
    /// A place on the sheet as the force that would reach it: "212 N at 61.3°"; "0 N" at the common point.
    static QString place(double magnitude, double referred, const Sketch& sketch);
};

} // namespace tailpoint
