// SPDX-License-Identifier: MIT
// window/: menus, bar, hint line and files around the canvas and the panel. Holds no number of the sketch.
#pragma once

#include "ui/style/theme.h"

#include <QMainWindow>
#include <memory>

namespace tailpoint {

class Canvas;
class Panel;
class SketchDocument;

/// The program's window. Starts on `path`; without one, or where it can't be read, on the welcome sketch of
/// the resources until somebody has opened or saved one of their own, afterwards on an empty sheet.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    explicit MainWindow(const QString& path = {}, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens a sketch (JSON, or SVG that carries one). False: it could not be read; the open sketch stays and
    /// the window says why in one line. Asks nothing: unsaved changes are the caller's to settle.
    bool openPath(const QString& path);
    /// What is not saved, and what is being typed, is on the disk when this returns.
    void keepUnsavedWork();
    /// The process ends and nobody can be asked: what is not saved is there for the next start. Touches no
    /// widget.
    void leaveUnsavedWork();
    /// As openPath, for saving.
    bool saveTo(const QString& path);

    SketchDocument& document();
    Canvas& canvas();
    Panel& panel();
    void setTheme(ThemeName name);

protected:
    bool event(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void watchUnsavedWork();
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace tailpoint
