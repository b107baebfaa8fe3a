// SPDX-License-Identifier: MIT
// The verb `mark` on a class: reading the table, marking it row by row, writing what was asked.
#pragma once

#include "app/arguments.h"
#include "app/common.h"
#include "core/mark/mark.h"

#include <QByteArray>
#include <QList>
#include <QPair>

namespace tailpoint {

struct MarkedQuestion {
    const Sketch& sketch;
    Marker marker;
};

/// Marks the table of --answers; the exit status, with what is wrong already said.
int markClass(const Arguments& arguments, const MarkedQuestion& question);

/// An input by its name, and what it is.
using Input = QPair<QString, QString>;
/// One of the outputs is one of the inputs, or two of them are one file; empty: nothing is lost.
QString faultOfOutputs(const QStringList& outputs, const QList<Input>& inputs);

/// To a file, or to standard output where it is "-". The exit status, with what is wrong already said.
int writeMarking(const QString& out, const QByteArray& bytes);

} // namespace tailpoint
