// SPDX-License-Identifier: MIT
// The floor of starting: a main window with one label.
#include "tests/benchmarks/first_paint.h"

#include <QApplication>
#include <QLabel>
#include <QMainWindow>

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QMainWindow window;
    window.resize(1366, 768);
    window.setCentralWidget(new QLabel(QStringLiteral("340 N at 25.0°")));
    tailpoint::bench::quitAfterFirstPaint(window);
    window.show();
    return QApplication::exec();
}
