// SPDX-License-Identifier: MIT
// The application is made when tests run, not when they are listed: listing needs no display.
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <memory>

namespace {

class Application : public ::testing::Environment {
public:
    Application(int& count, char** values) : m_count(count), m_values(values) {}
    void SetUp() override {
        if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
            qputenv("QT_QPA_PLATFORM", "offscreen");
        }
        QStandardPaths::setTestModeEnabled(true);
        // A home of its own: nobody's own copies and versions, and no settings or record shared with the test
        // that runs beside this one. What the fonts' library keeps stays where it is.
        if (qEnvironmentVariableIsEmpty("XDG_CACHE_HOME"))
            qputenv("XDG_CACHE_HOME", QFile::encodeName(QDir::homePath() + QStringLiteral("/.cache")));
        qputenv("HOME", QFile::encodeName(m_state.path()));
        qputenv("XDG_STATE_HOME", QFile::encodeName(m_state.path()));
        QLocale::setDefault(QLocale::c());
        m_application = std::make_unique<QApplication>(m_count, m_values);
        QCoreApplication::setOrganizationName(QStringLiteral("tailpoint-tests"));
        QCoreApplication::setApplicationName(QStringLiteral("tailpoint-tests"));
    }
    void TearDown() override { m_application.reset(); }

private:
    QTemporaryDir m_state;
    int& m_count;
    char** m_values;
    std::unique_ptr<QApplication> m_application;
};

} // namespace

int main(int count, char** values) {
    ::testing::InitGoogleTest(&count, values);
    ::testing::AddGlobalTestEnvironment(new Application(count, values)); // owned by GoogleTest
    return RUN_ALL_TESTS();
}
