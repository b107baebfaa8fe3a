#include "app/common.h"
#include "app/display.h"
#include "app/verbs.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QFileInfo>

namespace {

using namespace tailpoint;

int print(const QString& text) {
    const auto error = writeStandardOutput(text.toUtf8());
    return error ? complain(QStringLiteral("standard output: ") + error->line()) : kDone;
}

/// What the words ask of the window; the fault, if any.
std::variant<Arguments, QString> windowArguments(const QStringList& words) {
    auto parsed = parseArguments(words, {});
    const auto* arguments = std::get_if<Arguments>(&parsed);
    if (arguments && arguments->files.size() > 1)
        return QStringLiteral("'%1' is no verb, and the window opens one FILE; see tailpoint --help")
            .arg(arguments->files[0]);
    return parsed;
}

/// A window was asked for where none can be: first what would be wrong with a display too.
int sayThereIsNoDisplay(const Arguments& arguments) {
    if (const QString word = arguments.files.value(0); !word.isEmpty()) {
        const bool couldBeFile = QFileInfo::exists(word) || word.contains(QLatin1Char('.')) ||
                                 word.contains(QLatin1Char('/')) || word == QLatin1String("-");
        if (!couldBeFile)
            return complain(QStringLiteral("'%1' is no verb and no file; see tailpoint --help").arg(word));
        const auto read = readQuestion(arguments, QString());
        if (const int* status = std::get_if<int>(&read))
            return *status;
    }
    return complain(
        QStringLiteral("there is no display for the window; use a verb (tailpoint --help lists them)"));
}

int openWindow(int argc, char** argv) {
    const bool canOpen = hasDisplay(argc, argv);
    if (!canOpen) {
        silenceQt();
        qputenv("QT_QPA_PLATFORM", "offscreen"); // only to take Qt's own options out of the words
    }
    QApplication application(argc, argv);
    const auto parsed = windowArguments(application.arguments().mid(1));
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(*fault);
    const auto& arguments = std::get<Arguments>(parsed);
    if (arguments.help)
        return print(generalHelp());
    if (!canOpen)
        return sayThereIsNoDisplay(arguments);
    MainWindow window;
    window.show();
    if (!arguments.files.isEmpty())
        window.openPath(arguments.files[0]);
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
