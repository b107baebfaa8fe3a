// SPDX-License-Identifier: MIT
// app/: the command line. A verb reads a sketch, writes what was asked and says how it went.
#pragma once

#include <QString>
#include <QStringList>

namespace tailpoint {

inline constexpr int kDone = 0;     ///< one answer or two
inline constexpr int kNoAnswer = 1; ///< none, infinitely many, too few or too many unknowns
inline constexpr int kNotRight = 1; ///< of `mark`: an answer that is neither right nor rounded
inline constexpr int kBad = 2;      ///< bad input or usage: one line on standard error

/// A verb of the command line; `run` gets what stands behind it.
struct Verb {
    const char* name;
    int (*run)(int argc, char** argv);
};
const Verb* verbNamed(const QString& name); ///< nullptr: no verb
QString verbNames();                        ///< "report, figure, …"
QString generalHelp();

int runReport(int argc, char** argv);

} // namespace tailpoint
