// SPDX-License-Identifier: MIT
#include "tests/whole/window/x_server.h"

#include <QFile>
#include <QGuiApplication>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <memory>

namespace {

/// Server and application start only when tests run, so that listing them needs no display.
class ScreenOfItsOwn : public ::testing::Environment {
public:
    void SetUp() override {
        if (qEnvironmentVariableIsEmpty("XDG_RUNTIME_DIR"))
            qputenv("XDG_RUNTIME_DIR", QFile::encodeName(m_runtime.path()));
        qputenv("QT_QPA_PLATFORM", "xcb");
        start(kWidth, kHeight);
    }
    void TearDown() override { stop(); }

    void start(int width, int height) {
        stop();
        m_server = std::make_unique<whole::XServer>(width, height);
        ASSERT_FALSE(m_server->display().empty()) << "Xvfb did not start";
        qputenv("DISPLAY", QByteArray::fromStdString(m_server->display()));
        static int count = 1;
        static std::string name = "test_window";
        static char* arguments[] = {name.data(), nullptr};
        m_application = std::make_unique<QGuiApplication>(count, arguments);
    }
    static constexpr int kWidth = 1366, kHeight = 768;

private:
    void stop() {
        m_application.reset();
        m_server.reset();
    }
    QTemporaryDir m_runtime; ///< Qt asks for one
    std::unique_ptr<whole::XServer> m_server;
    std::unique_ptr<QGuiApplication> m_application;
};

ScreenOfItsOwn* theScreen = nullptr; // GoogleTest owns it

} // namespace

void whole::takeScreen(int width, int height) {
    theScreen->start(width, height);
}
void whole::takeUsualScreen() {
    theScreen->start(ScreenOfItsOwn::kWidth, ScreenOfItsOwn::kHeight);
}

int main(int argc, char** argv) {
    ::testing::InitGoogleTest(&argc, argv);
    theScreen = new ScreenOfItsOwn;
    ::testing::AddGlobalTestEnvironment(theScreen);
    return RUN_ALL_TESTS();
}
