// SPDX-License-Identifier: MIT
// The main window with a settings folder of its own.
#pragma once

#include "ui/document/sketch_document.h"
#include "ui/window/main_window.h"

#include <QAction>
#include <QApplication>
#include <QCoreApplication>
#include <QFile>
#include <QMessageBox>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <gtest/gtest.h>
#include <memory>

namespace tailpoint::test {

class OpenWindow : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(folder.isValid());
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, folder.path());
        qputenv("XDG_STATE_HOME", folder.filePath(QStringLiteral("state")).toUtf8());
        open();
    }
    /// Anew, with the settings as the last one left them.
    void open() {
        window.reset();
        window = std::make_unique<MainWindow>();
        window->resize(1200, 760);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    template <class T>
    static T* child(QWidget& parent, const char* name) {
        auto* found = parent.findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    void trigger(const char* name) {
        auto* action = child<QAction>(*window, name);
        ASSERT_TRUE(action);
        ASSERT_TRUE(action->isEnabled()) << name;
        action->trigger();
    }
    /// The dialog that a command opens.
    template <class Dialog>
    Dialog& ask(const char* command) {
        trigger(command);
        auto* dialog = window->findChild<Dialog*>();
        EXPECT_TRUE(dialog && dialog->isVisible());
        return *dialog;
    }
    void change() {
        Sketch sketch = window->document().sketch();
        sketch.forces.at(0).magnitude.value = 360;
        ASSERT_FALSE(window->document().edit(sketch, QStringLiteral("change")));
    }
    /// Answers the next question with one of its buttons.
    void answerNext(QMessageBox::StandardButton button, bool& asked) {
        auto* timer = new QTimer(window.get());
        QObject::connect(timer, &QTimer::timeout, window.get(), [timer, button, &asked] {
            if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
                asked = true;
                timer->deleteLater();
                box->button(button)->click();
            }
        });
        timer->start(5);
    }
    QString file(const char* name) const { return folder.filePath(QLatin1String(name)); }
    static QByteArray bytesOf(const QString& path) {
        QFile in(path);
        return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
    }

    QTemporaryDir folder;
    std::unique_ptr<MainWindow> window;
};

} // namespace tailpoint::test
