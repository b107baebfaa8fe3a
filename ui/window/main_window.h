// window/: menus, bar, hint line and files around the canvas and the panel. Holds no number of the sketch.
#pragma once

#include <QMainWindow>
#include <memory>

namespace tailpoint {

class Canvas;
class SketchDocument;

/// The program's window. Starts on the welcome sketch of the resources, or on an empty sheet where there is
/// none.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    explicit MainWindow(QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens a sketch (JSON, or SVG that carries one). False: it could not be read; the open sketch stays and
    /// the window says why in one line. Asks nothing: unsaved changes are the caller's to settle.
    bool openPath(const QString& path);

    SketchDocument& document();

private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace tailpoint
