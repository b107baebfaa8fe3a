// SPDX-License-Identifier: MIT
// Our window up to its first paint, by the same steps as the program's main.
#include "tests/benchmarks/first_paint.h"
#include "ui/style/tuned_style.h"
#include "ui/window/main_window.h"

#include <QApplication>

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QApplication::setStyle(new tailpoint::TunedStyle);
    tailpoint::MainWindow window(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString());
    window.resize(1366, 768);
    tailpoint::bench::quitAfterFirstPaint(window);
    window.show();
    return QApplication::exec();
}
