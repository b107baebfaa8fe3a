// SPDX-License-Identifier: MIT
#include "app/common.h"
#include "app/gui/calls.h"
#include "app/gui/display.h"
#include "app/gui/ended.h"
#include "app/verbs.h"
#include "ui/style/tuned_style.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QFileInfo>
#include <QScreen>
#include <memory>

namespace tailpoint {

namespace {

QString noVerb(const QString& word, const char* nor) {
    return QStringLiteral("'%1' is no verb%2; the verbs are %3 (see tailpoint --help)")
        .arg(word, QLatin1String(nor), verbNames());
}

/// What the words ask of the window; the fault, if any.
std::variant<Arguments, QString> windowArguments(const QStringList& words) {
    auto parsed = parseArguments(words, {});
    const auto* arguments = std::get_if<Arguments>(&parsed);
    if (arguments && arguments->files.size() > 1)
        return noVerb(arguments->files[0], ", and the window opens one FILE");
    return parsed;
}

bool couldBeFile(const QString& word) {
    return QFileInfo::exists(word) || word.contains(QLatin1Char('.')) || word.contains(QLatin1Char('/')) ||
           word == QLatin1String("-");
}

/// What is answered without a window: help, or a fault. Empty: the window is wanted.
std::optional<int> answered(const std::variant<Arguments, QString>& parsed) {
    if (const auto* fault = std::get_if<QString>(&parsed))
        return complain(*fault);
    const auto& arguments = std::get<Arguments>(parsed);
    if (arguments.help)
        return writeOut(generalHelp().toUtf8(), {});
    if (!arguments.files.isEmpty() && !couldBeFile(arguments.files[0]))
        return complain(noVerb(arguments.files[0], " and no file"));
    return std::nullopt;
}

/// A window was asked for where none can be. What would be wrong with a display too is said first.
int answerWithoutDisplay(const Arguments& arguments) {
    if (!arguments.files.isEmpty()) {
        const auto read = readQuestion(arguments, QString());
        if (const int* status = std::get_if<int>(&read))
            return *status;
    }
    return complain(
        QStringLiteral("there is no display for the window; use a verb (tailpoint --help lists them)"));
}

std::unique_ptr<QApplication> applicationOnDisplay(int& argc, char** argv, const Arguments& arguments) {
    InsteadOfAborting standing([&] { return answerWithoutDisplay(arguments); });
    auto application = std::make_unique<QApplication>(argc, argv);
    // a frame buffer that isn't there is no fault to Qt, and its Vulkan display shows no widgets, and waits
    if (QGuiApplication::primaryScreen() == nullptr ||
        QGuiApplication::platformName() == QLatin1String("vkkhrdisplay"))
        standing.end();
    return application;
}

} // namespace

int openWindow(int argc, char** argv) {
    const auto parsed = windowArguments(withoutToolkitOptions(wordsFrom(1, argc, argv)));
    if (const auto status = answered(parsed))
        return *status;
    const auto& arguments = std::get<Arguments>(parsed);
    QGuiApplication::setDesktopFileName(QStringLiteral("tailpoint")); // whose icon a Wayland session shows
    const auto application = applicationOnDisplay(argc, argv, arguments);
    if (const auto status = withoutFonts())
        return *status;
    QApplication::setStyle(new TunedStyle); // the application's from now on
    MainWindow window(arguments.files.isEmpty() ? QString() : arguments.files[0]);
    const EndedFromOutside endings([&] { window.keepUnsavedWork(); }, [&] { window.leaveUnsavedWork(); });
    window.show();
    const int status = application->exec();
    return endings.signal() == 0 ? status : 128 + endings.signal(); // as a shell says it
}

} // namespace tailpoint
