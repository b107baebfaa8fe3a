// SPDX-License-Identifier: MIT
// What the verbs share: reading the sketch, saying what is wrong, the exit status.
#pragma once

#include "app/arguments.h"
#include "ui/files/files.h"
#include "ui/files/report.h"

namespace tailpoint {

/// One line on standard error; control characters become spaces. Returns kBad.
int complain(const QString& line);

/// The words from the `first` on, as text; behind a verb it is 2.
QStringList wordsFrom(int first, int argc, char** argv);

/// Qt's own remarks would be more lines on standard error than the one that is promised.
void silenceQt();

/// For a verb that makes much on several threads and then ends: what one lets go the next takes, rather than
/// the system in between. Two fifths of the time of a thousand problem sheets.
void keepMemory();

/// The one FILE of a verb, read and solved; or the exit status, with its line already said.
std::variant<Result, int> readQuestion(const Arguments& arguments, const QString& verb);

/// "--case NAME" of a verb: the question as that case has it, or what is wrong in one line that lists the
/// cases there are. Without the option the question itself.
std::variant<Result, QString> inCaseAsked(const Arguments& arguments, const Result& question);

/// "--tolerances shown|hidden": hidden leaves the stated values alone, or says why it can't. Shown without
/// it.
inline constexpr const char* kTolerancesOption = "--tolerances";
bool hidesTolerances(const Arguments& arguments);
std::variant<Result, QString> withTolerancesAsked(const Arguments& arguments, const Result& question);

/// Both together: the question as the options ask it.
std::variant<Result, QString> asAsked(const Arguments& arguments, const Result& question);

/// To the file, or to standard output where `out` is empty or "-". kDone, or kBad with its line said.
int writeOut(const QByteArray& bytes, const QString& out);

/// A FILE read and solved, or what is wrong with it, without its name.
std::variant<Result, FileError> resultFrom(const QString& file);
QString nameOfInput(const QString& file); ///< "standard input" for "-"
QString nameOfOutput(const QString& file);

int exitStatus(Status status);

} // namespace tailpoint
