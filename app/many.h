// SPDX-License-Identifier: MIT
// One call for many sketches: an output each in a folder, made on all cores, in one process.
#pragma once

#include "app/arguments.h"
#include "ui/files/files.h"

#include <functional>

namespace tailpoint {

/// Several FILEs, or -o names a folder: one that is there, or a name with a slash at its end.
bool isForMany(const Arguments& arguments);

/// What is wrong with FILEs and -o where an output each is asked for, in one line with the mend: -o is
/// missing or a file, a FILE is standard input, two outputs would have one name, or one would replace a FILE.
/// Empty: nothing. `outputs`: the names of a FILE's outputs in the folder, by its own name without folder and
/// ending.
using OutputNames = std::function<QStringList(const QString& base)>;
QString clashOfMany(const Arguments& arguments, const OutputNames& outputs);

/// What a FILE comes to.
struct OneOfMany {
    std::vector<FileBytes> files; ///< by their names in the folder
    int status = 0;
    QString fault; ///< its line without the FILE's name; empty: there is none
};

/// Makes the folder where it isn't there, and in it the outputs of every FILE, each whole or not at all.
/// `make` is called on several threads, with the FILE and its name without folder and ending. What is wrong
/// with a FILE is its one line, in the order of the FILEs; the others go on. How far it is stands on standard
/// error where that is a terminal. The worst status, or 128 and the signal that interrupted it between two
/// FILEs. Precondition: clashOfMany() says nothing.
using MakeOne = std::function<OneOfMany(const QString& file, const QString& base)>;
int writeMany(const Arguments& arguments, const MakeOne& make);

} // namespace tailpoint
