// SPDX-License-Identifier: MIT
// What stands behind the doors of app/gui.h.
#pragma once

#include <QCoreApplication>
#include <memory>
#include <optional>
#include <variant>

namespace tailpoint {

int openWindow(int argc, char** argv);
int runFigure(int argc, char** argv);
int runMark(int argc, char** argv);
int runSweep(int argc, char** argv);
int runProblems(int argc, char** argv);

std::variant<std::unique_ptr<QCoreApplication>, int> lettersApplication(int& argc, char** argv);

/// A figure without a font would be one without words; the status with its line said, empty: there is one.
/// Asks the QGuiApplication.
std::optional<int> withoutFonts();

} // namespace tailpoint
