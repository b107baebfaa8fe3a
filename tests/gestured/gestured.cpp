// SPDX-License-Identifier: MIT
// Seeded hands on the window for as long as is asked: no warning of Qt's, undo leads back to the start, and
// the memory is told.
//
//     gestured COUNT SEED [MINUTES [FROM]]
//
// As far as gesture COUNT; with MINUTES they go on until these are over. FROM (a multiple of 250) begins at
// that gesture, to come back to one that failed.
#include "tests/ui/hands/round.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QHashFunctions>
#include <QSettings>
#include <QTemporaryDir>

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <unistd.h>

extern "C" __attribute__((weak)) void __sanitizer_set_death_callback(void (*)());

using namespace tailpoint;
using namespace tailpoint::test;

namespace {

constexpr int kAtATime = 250; ///< gestures between two looks at undo
constexpr int kTold = 1000;   ///< gestures between two looks at the memory
constexpr double kMiB = 1024 * 1024;

/// For the line of a process that dies: which gesture it was.
char whereNow[64];
void note(unsigned seed, int step) {
    std::snprintf(whereNow, sizeof whereNow, "died at seed %u, gesture %d\n", seed, step);
}
void sayWhere() {
    [[maybe_unused]] const auto written =
        ::write(STDERR_FILENO, whereNow, ::strnlen(whereNow, sizeof whereNow));
}
void onSignal(int signal) {
    sayWhere();
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

void sayWhereOnDeath() {
    if (__sanitizer_set_death_callback)
        return __sanitizer_set_death_callback(sayWhere);
    for (const int signal : {SIGSEGV, SIGBUS, SIGFPE, SIGILL, SIGABRT})
        std::signal(signal, onSignal);
}

/// Nothing is read or written elsewhere.
void liveIn(const QString& folder) {
    const QByteArray path = QFile::encodeName(folder);
    for (const char* name :
         {"HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_RUNTIME_DIR"})
        qputenv(name, path);
    QDir::setCurrent(folder);
}

double residentMiB() {
    long pages = 0, resident = 0;
    std::ifstream("/proc/self/statm") >> pages >> resident;
    return double(resident) * double(::sysconf(_SC_PAGESIZE)) / kMiB;
}

class LongRun {
public:
    LongRun(int count, unsigned seed, double minutes, int from, const QString& folder)
        : m_count(count), m_from(from / kAtATime * kAtATime), m_seed(seed), m_minutes(minutes),
          m_sketches(sketchesIn(folder)) {}

    int go() {
        MainWindow window;
        window.resize(1100, 700);
        window.show();
        Warnings warnings;
        Round round(window, warnings);
        Hands hands(window, m_seed);
        round.beforeStep = [this](int step) { note(m_seed, step); };
        m_clock.start();
        for (int done = m_from; isWanted(done); done += kAtATime) {
            const QString file = m_sketches[done / kAtATime % m_sketches.size()];
            const QString fault = round.play(hands, file, done, kAtATime);
            if (!fault.isEmpty())
                return fail(round, hands, file, fault);
            if ((done + kAtATime) % kTold == 0)
                tell(done + kAtATime, round);
        }
        return 0;
    }

private:
    bool isWanted(int done) const { return done < m_count || double(m_clock.elapsed()) < m_minutes * 60000; }
    void tell(int done, const Round& round) const {
        std::printf("%d gestures, %.0f s, %.1f MiB, %d undo steps taken back, %d sketches begun\n", done,
                    double(m_clock.elapsed()) / 1000, residentMiB(), round.undone(), round.replaced());
        std::fflush(stdout);
    }
    int fail(const Round& round, const Hands& hands, const QString& file, const QString& fault) const {
        std::fprintf(stderr, "seed %u, gesture %d of %s (%s): %s\n", m_seed, round.step(), qPrintable(file),
                     qPrintable(hands.told()), qPrintable(fault));
        return 1;
    }
    int m_count, m_from;
    unsigned m_seed;
    double m_minutes;
    QStringList m_sketches;
    QElapsedTimer m_clock;
};

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) {
        std::fprintf(stderr, "gestured COUNT SEED [MINUTES [FROM]]\n");
        return 2;
    }
    const int count = std::atoi(argv[1]);
    const auto seed = static_cast<unsigned>(std::strtoul(argv[2], nullptr, 10));
    const double minutes = argc > 3 ? std::atof(argv[3]) : 0;
    const QTemporaryDir home;
    liveIn(home.path());
    QHashSeed::setDeterministicGlobalSeed();
    QLocale::setDefault(QLocale::c());
    QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("tailpoint"));
    QGuiApplication::setQuitOnLastWindowClosed(false);
    sayWhereOnDeath();
    return LongRun(count, seed, minutes, argc > 4 ? std::atoi(argv[4]) : 0, home.path()).go();
}
