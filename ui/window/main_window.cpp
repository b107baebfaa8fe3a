#include "ui/window/main_window.h"

#include "ui/document/sketch_document.h"

namespace tailpoint {

class MainWindow::Private {
public:
    explicit Private(MainWindow* window) : document(window) {}
    SketchDocument document;
};

MainWindow::MainWindow(QWidget* parent) : QMainWindow(parent), d(std::make_unique<Private>(this)) {
    setObjectName(QStringLiteral("mainWindow"));
}

MainWindow::~MainWindow() = default;

SketchDocument& MainWindow::document() {
    return d->document;
}

bool MainWindow::openPath(const QString& path) {
    return !d->document.open(path);
}

} // namespace tailpoint
