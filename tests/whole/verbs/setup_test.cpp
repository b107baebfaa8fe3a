// SPDX-License-Identifier: MIT
// What app/run and tests/run say while they build and install: the tools are stand-ins, the script is the
// real one.
#include "tests/whole/verbs/driver.h"

#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

class Setup : public Verbs {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }

    /// A program of this name, found before the real one.
    void standIn(const char* name, const QByteArray& script) const {
        const QString file = put(QString::fromLatin1(name), "#!/bin/sh\n" + script);
        ASSERT_TRUE(QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
    }
    /// Runs `commands` after app/setup.sh, with every step told.
    Ran sourced(const QByteArray& commands, const char* secondsBetweenLines = "0") const {
        QProcess bash;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("PATH"),
                           m_folder.path() + u':' + environment.value(QStringLiteral("PATH")));
        environment.insert(QStringLiteral("TAILPOINT_PROGRESS_SECONDS"),
                           QString::fromLatin1(secondsBetweenLines));
        bash.setProcessEnvironment(environment);
        bash.start(QStringLiteral("bash"),
                   {QStringLiteral("-euo"), QStringLiteral("pipefail"), QStringLiteral("-c"),
                    QStringLiteral("root='" TAILPOINT_SOURCE "'; source \"$root/app/setup.sh\"; ") +
                        QString::fromUtf8(commands)});
        EXPECT_TRUE(bash.waitForFinished());
        return {bash.exitCode(), bash.readAllStandardOutput(), bash.readAllStandardError()};
    }
};

TEST_F(Setup, BuildingTellsHowFarItIsOnStandardErrorAlone) {
    standIn("cmake", "echo '[0/2] Re-checking globbed directories...'\n"
                     "echo '[0/40] Building CXX object a.o'\n"
                     "echo '[10/40] Building CXX object b.o'\n"
                     "echo '[40/40] Linking CXX executable tailpoint'\n");
    const Ran ran = sourced("build tailpoint; echo values");
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.out, "values\n");
    EXPECT_TRUE(ran.err.contains("Building: 0 of 40 steps (0 %)\n")) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.contains("Building: 10 of 40 steps (25 %)\n")) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.contains("Building: 40 of 40 steps (100 %)\n")) << ran.err.toStdString();
    EXPECT_FALSE(ran.err.contains("of 2 steps")) << "that is not the build";
    EXPECT_FALSE(ran.err.contains("a.o")) << "ninja's own lines";
}

TEST_F(Setup, ABuildWithNothingToDoSaysNothing) {
    standIn("cmake", "echo 'ninja: no work to do.'\n");
    EXPECT_EQ(sourced("build tailpoint").err, "");
}

TEST_F(Setup, LinesComeSecondsApartAndNotWithEveryStep) {
    standIn("cmake", "i=0; while [ $i -lt 500 ]; do i=$((i+1)); echo \"[$i/500] Building\"; done\n");
    const Ran ran = sourced("build tailpoint", "1000");
    EXPECT_EQ(ran.err, "Building: 1 of 500 steps (0 %)\n");
}

/// 30 of 40 steps are left and 10 took 20 s: 60 s more; by the same rule 300 s and 29 s.
TEST_F(Setup, WhatIsLeftIsEstimatedFromWhatWasDone) {
    const Ran ran =
        sourced("build_line 10 40 20; build_line 100 200 300; build_line 90 100 261; build_line 1 "
                "1000 5");
    EXPECT_EQ(ran.out, "Building: 10 of 40 steps (25 %), about a minute left\n"
                       "Building: 100 of 200 steps (50 %), about 5 minutes left\n"
                       "Building: 90 of 100 steps (90 %), less than a minute left\n"
                       "Building: 1 of 1000 steps (0 %)\n")
        << "after five seconds nothing can be said";
}

TEST_F(Setup, WhatFailedIsInOneLineAfterTheCompilersOwnWords) {
    standIn("cmake", "echo '[1/3] Building CXX object a.o'\n"
                     "echo 'a.cpp:1:1: warning: of a step that went well'\n"
                     "echo '[2/3] Building CXX object b.o'\n"
                     "echo 'FAILED: b.o'\n"
                     "echo '/usr/bin/c++ -o b.o -c b.cpp'\n"
                     "echo 'b.cpp: In function main:'\n"
                     "echo 'b.cpp:7:3: error: expected ; before return'\n"
                     "echo 'ninja: build stopped: subcommand failed.'\n"
                     "exit 1\n");
    const Ran ran = sourced("build tailpoint; echo values");
    EXPECT_EQ(ran.status, 1);
    EXPECT_EQ(ran.out, "");
    EXPECT_TRUE(ran.err.contains("b.cpp: In function main:\n")) << ran.err.toStdString();
    EXPECT_FALSE(ran.err.contains("went well")) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.endsWith("\nThe build failed: b.cpp:7:3: error: expected ; before return\n"))
        << ran.err.toStdString();
}

/// The forms of apt-get's status lines are in apt's own README.progress-reporting.
TEST_F(Setup, InstallingTellsWhatItDoes) {
    standIn("dpkg-query", "exit 1\n");
    standIn("apt-cache", "exit 0\n");
    standIn("sudo", "while [ \"$1\" = -- ] || [ \"$1\" = -n ]; do shift; done; exec \"$@\"\n");
    standIn("apt-get", "fd=$(printf '%s\\n' \"$@\" | sed -n 's/^APT::Status-Fd=//p')\n"
                       "echo Reading package lists...\n"
                       "case \"$*\" in *install*)\n"
                       "echo 'dlstatus:1:9.55:Retrieving file 1 of 40 (2min 3s remaining)' >&$fd\n"
                       "echo 'pmstatus:libeigen3-dev:50.0000:Unpacking libeigen3-dev (all)' >&$fd\n"
                       "eval \"exec $fd>&-\" # apt-get closes it before dpkg and the packages' scripts\n"
                       "echo 'Regenerating fonts cache...' || exit 100\n"
                       "esac\n");
    const Ran ran = sourced("install_missing libeigen3-dev 'old-name|new-name'; echo values");
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.out, "values\n");
    for (const char* line :
         {"Refreshing the package lists.\n", "Installing what is missing: libeigen3-dev old-name\n",
          "Fetching packages (9 %): Retrieving file 1 of 40 (2min 3s remaining)\n",
          "Installing packages (50 %): Unpacking libeigen3-dev (all)\n"})
        EXPECT_TRUE(ran.err.contains(line)) << line << "is not in: " << ran.err.toStdString();
    EXPECT_FALSE(ran.err.contains("Reading package lists"));
}

TEST_F(Setup, PackagesThatCannotBeInstalledAreNamedInTheLastLine) {
    standIn("dpkg-query", "exit 1\n");
    standIn("sudo", "while [ \"$1\" = -- ] || [ \"$1\" = -n ]; do shift; done; exec \"$@\"\n");
    standIn("apt-get",
            "case \"$*\" in *install*) echo 'E: Unable to locate package libeigen3-dev'; exit 100; esac\n");
    const Ran ran = sourced("install_missing libeigen3-dev; echo values");
    EXPECT_EQ(ran.status, 1);
    EXPECT_EQ(ran.out, "");
    EXPECT_TRUE(ran.err.endsWith("E: Unable to locate package libeigen3-dev\n"
                                 "apt-get could not install: libeigen3-dev\n"))
        << ran.err.toStdString();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
