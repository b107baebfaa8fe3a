#include "app/common.h"
#include "app/verbs.h"
#include "ui/window/main_window.h"

#include <QApplication>

namespace {

using namespace tailpoint;

int print(const QString& text) {
    const auto error = writeStandardOutput(text.toUtf8());
    return error ? complain(QStringLiteral("standard output: ") + error->line()) : kDone;
}

/// Qt would end the process with an abort where there is no display.
bool hasDisplay(int argc, char** argv) {
    for (int i = 1; i < argc; ++i)
        if (qstrcmp(argv[i], "-platform") == 0 || qstrcmp(argv[i], "--platform") == 0)
            return true;
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

int openWindow(int argc, char** argv) {
    if (!hasDisplay(argc, argv))
        return complain(
            QStringLiteral("there is no display for the window; use a verb (tailpoint --help lists them)"));
    QApplication application(argc, argv);
    const QStringList words = application.arguments().mid(1);
    const auto parsed = parseArguments(words, {});
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(*fault);
    const QStringList files = std::get<Arguments>(parsed).files;
    if (files.size() > 1)
        return complain(QStringLiteral("'%1' is no verb, and the window opens one FILE; see tailpoint --help")
                            .arg(files[0]));
    MainWindow window;
    window.show();
    if (!files.isEmpty())
        window.openPath(files[0]);
    return application.exec();
}

} // namespace

int main(int argc, char** argv) {
    turnFileSignalsIntoErrors();
    QCoreApplication::setApplicationName(QStringLiteral("tailpoint"));
    QCoreApplication::setApplicationVersion(QStringLiteral(TAILPOINT_VERSION));
    const QString first = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString();
    if (first == QLatin1String("--help") || first == QLatin1String("-h"))
        return print(generalHelp());
    if (first == QLatin1String("--version"))
        return print(QStringLiteral("tailpoint " TAILPOINT_VERSION "\n"));
    const Verb* verb = verbNamed(first);
    if (!verb)
        return openWindow(argc, argv);
    silenceQt();
    return verb->run(argc, argv);
}
