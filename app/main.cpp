#include "app/common.h"
#include "app/display.h"
#include "app/verbs.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QFileInfo>
#include <QHashFunctions>
#include <algorithm>
#include <memory>

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

/// What is answered without a window: help, or a fault. Empty: the window is wanted.
std::optional<int> answered(const std::variant<Arguments, QString>& parsed) {
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(*fault);
    return std::get<Arguments>(parsed).help ? std::optional(print(generalHelp())) : std::nullopt;
}

/// What would be wrong with a display too; kDone: nothing.
int faultOfFile(const Arguments& arguments) {
    const QString word = arguments.files.value(0);
    const bool couldBeFile = QFileInfo::exists(word) || word.contains(QLatin1Char('.')) ||
                             word.contains(QLatin1Char('/')) || word == QLatin1String("-");
    if (!couldBeFile)
        return complain(QStringLiteral("'%1' is no verb and no file; see tailpoint --help").arg(word));
    const auto read = readQuestion(arguments, QString());
    const int* status = std::get_if<int>(&read);
    return status ? *status : kDone;
}

/// Qt takes most of its own options out before it looks for a display, but these only once it has one.
QStringList withoutStyle(QStringList words) {
    for (const char* option : {"-style", "-stylesheet"})
        if (const auto at = words.indexOf(QLatin1String(option)); at >= 0)
            words.remove(at, std::min<qsizetype>(2, words.size() - at)); // with its value
    return words;
}

/// A window was asked for where none can be.
int answerWithoutDisplay(int argc, char** argv) {
    const auto parsed = windowArguments(withoutStyle(wordsFrom(1, argc, argv)));
    if (const auto status = answered(parsed))
        return *status;
    const auto& arguments = std::get<Arguments>(parsed);
    if (const int fault = arguments.files.isEmpty() ? kDone : faultOfFile(arguments); fault != kDone)
        return fault;
    return complain(
        QStringLiteral("there is no display for the window; use a verb (tailpoint --help lists them)"));
}

std::unique_ptr<QApplication> applicationOnDisplay(int& argc, char** argv) {
    const InsteadOfAborting standing([&] { return answerWithoutDisplay(argc, argv); });
    return std::make_unique<QApplication>(argc, argv);
}

int openWindow(int argc, char** argv) {
    const auto application = applicationOnDisplay(argc, argv);
    const auto parsed = windowArguments(application->arguments().mid(1));
    if (const auto status = answered(parsed))
        return *status;
    MainWindow window;
    window.show();
    if (const auto& files = std::get<Arguments>(parsed).files; !files.isEmpty())
        window.openPath(files[0]);
    return application->exec();
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
        return print(generalHelp());
    if (first == QLatin1String("--version"))
        return print(QStringLiteral("tailpoint " TAILPOINT_VERSION "\n"));
    const Verb* verb = verbNamed(first);
    if (!verb)
        return openWindow(argc, argv);
    silenceQt();
    return verb->run(argc, argv);
}
