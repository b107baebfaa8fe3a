#include "tests/whole/window/x_server.h"

#include <QFile>
#include <QGuiApplication>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <memory>

namespace {

/// Server and application start only when tests run, so that listing them needs no display.
class ScreenOfItsOwn : public testing::Environment {
public:
    void SetUp() override {
        if (qEnvironmentVariableIsEmpty("XDG_RUNTIME_DIR"))
            qputenv("XDG_RUNTIME_DIR", QFile::encodeName(m_runtime.path()));
        m_server = std::make_unique<whole::XServer>(1366, 768);
        ASSERT_FALSE(m_server->display().empty()) << "Xvfb did not start";
        qputenv("DISPLAY", QByteArray::fromStdString(m_server->display()));
        qputenv("QT_QPA_PLATFORM", "xcb");
        static int count = 1;
        static std::string name = "test_window";
        static char* arguments[] = {name.data(), nullptr};
        m_application = std::make_unique<QGuiApplication>(count, arguments);
    }
    void TearDown() override {
        m_application.reset();
        m_server.reset();
    }

private:
    QTemporaryDir m_runtime; ///< Qt asks for one
    std::unique_ptr<whole::XServer> m_server;
    std::unique_ptr<QGuiApplication> m_application;
};

} // namespace

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    testing::AddGlobalTestEnvironment(new ScreenOfItsOwn);
    return RUN_ALL_TESTS();
}
