// SPDX-License-Identifier: MIT
#include "app/common.h"
#include "app/gui.h"
#include "app/verbs.h"

#include <QCoreApplication>
#include <QHashFunctions>

namespace {

using namespace tailpoint;

int openWindow(int argc, char** argv) {
    const Gui* part = gui();
    return part ? part->window(argc, argv) : kBad;
}

} // namespace

int main(int argc, char** argv) {
    // Qt writes the fonts of a PDF in the order of a hash: the same pages are to be the same bytes.
    QHashSeed::setDeterministicGlobalSeed();
    turnFileSignalsIntoErrors();
    QCoreApplication::setApplicationName(QStringLiteral("tailpoint"));
    QCoreApplication::setApplicationVersion(QStringLiteral(TAILPOINT_VERSION));
    const QString first = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString();
    if (first == QLatin1String("--help") || first == QLatin1String("-h"))
        return writeOut(generalHelp().toUtf8(), {});
    if (first == QLatin1String("--version"))
        return writeOut("tailpoint " TAILPOINT_VERSION "\n", {});
    const Verb* verb = verbNamed(first);
    if (!verb)
        return openWindow(argc, argv);
    silenceQt();
    return verb->run(argc, argv);
}
