// SPDX-License-Identifier: MIT
// Processes that work on a sketch are killed at random moments: what is on the disk then is whole, is offered
// again, and is no older than two seconds.
//
//     killed [ROUNDS] [SEED]
#include "ui/document/recovery.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QTimer>

#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <poll.h>
#include <random>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

using namespace tailpoint;

namespace {

using Clock = std::chrono::steady_clock;
constexpr auto kOldest = std::chrono::seconds(2); ///< what is older may not be lost
constexpr int kAtOnce = 6;                        ///< processes
constexpr int kLongestMs = 3200;                  ///< a process lives

/// A hand on the sketch, in a process of its own: drags that go on and on, steps with pauses, a save now and
/// then. Each state has a number, which it tells once the state is there.
class Hand {
public:
    Hand(const QString& folder, unsigned seed)
        : m_dice(seed), m_file(folder + QStringLiteral("/work.json")),
          m_autosave(m_document, folder + QStringLiteral("/recovery")) {
        QObject::connect(&m_timer, &QTimer::timeout, [this] { move(); });
        m_timer.setSingleShot(true);
        move();
    }

private:
    int upTo(int most) { return std::uniform_int_distribution(0, most)(m_dice); }
    void move() {
        Sketch next = m_document.sketch();
        next.title = std::to_string(++m_number);
        if (upTo(400) == 0) {
            m_document.edit(next, QStringLiteral("step"));
            m_document.save(m_file);
        } else if (m_left > 0) {
            m_document.preview(next, QStringLiteral("drag"));
            if (--m_left == 0)
                m_document.commit();
        } else {
            m_document.edit(next, QStringLiteral("step"));
            if (upTo(5) == 0)
                m_left = upTo(600);
        }
        std::printf("%d\n", m_number);
        std::fflush(stdout);
        m_timer.start(m_left > 0 ? 4 : upTo(400));
    }
    std::mt19937 m_dice;
    QString m_file;
    SketchDocument m_document;
    Autosave m_autosave;
    QTimer m_timer;
    int m_number = 0, m_left = 0;
};

int work(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    const Hand hand(QString::fromLocal8Bit(argv[2]), static_cast<unsigned>(std::atoi(argv[3])));
    return application.exec();
}

/// A process at work, until it is killed.
class Worker {
public:
    Worker(const char* self, unsigned seed, Clock::duration life) : m_death(Clock::now() + life) {
        int ends[2];
        if (::pipe(ends) != 0)
            std::abort();
        const std::string folder = m_folder.path().toStdString(), dice = std::to_string(seed);
        m_process = ::fork();
        if (m_process == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            ::close(ends[0]);
            ::execl(self, self, "--work", folder.c_str(), dice.c_str(), static_cast<char*>(nullptr));
            ::_exit(127);
        }
        ::close(ends[1]);
        m_out = ends[0];
    }
    ~Worker() { ::close(m_out); }
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    int out() const { return m_out; }
    Clock::time_point death() const { return m_death; }
    void hear() {
        char part[4096];
        const ssize_t got = ::read(m_out, part, sizeof part);
        for (ssize_t i = 0; i < got; ++i)
            if (part[i] == '\n')
                m_told.push_back({std::exchange(m_reading, 0), Clock::now()});
            else
                m_reading = m_reading * 10 + (part[i] - '0');
    }
    void kill() {
        m_killed = Clock::now();
        ::kill(m_process, SIGKILL);
        ::waitpid(m_process, nullptr, 0);
    }
    /// What is wrong with what was left; empty: nothing.
    std::string fault() const {
        const QString recovery = m_folder.filePath(QStringLiteral("recovery"));
        int copied = 0, saved = 0;
        for (const Recovery& left : findRecoveries(recovery))
            copied = std::max(copied, std::atoi(left.sketch.title.c_str()));
        if (!QDir(recovery).entryList({QStringLiteral("*.json")}).isEmpty() && copied == 0)
            return "a copy that is not offered";
        SketchDocument document;
        const QString file = m_folder.filePath(QStringLiteral("work.json"));
        if (QFileInfo::exists(file) && document.open(file))
            return "a file that can't be read";
        saved = std::atoi(document.sketch().title.c_str());
        int owed = 0;
        for (const Told& told : m_told)
            owed = told.when <= m_killed - kOldest ? told.number : owed;
        if (std::max(copied, saved) >= owed)
            return {};
        return "owed " + std::to_string(owed) + ", copied " + std::to_string(copied) + ", saved " +
               std::to_string(saved) + ", told " + std::to_string(m_told.back().number);
    }

private:
    struct Told {
        int number;
        Clock::time_point when;
    };
    QTemporaryDir m_folder;
    Clock::time_point m_death, m_killed;
    pid_t m_process = -1;
    int m_out = -1, m_reading = 0;
    std::vector<Told> m_told;
};

/// Hears them all until each met its end.
void letThemWork(std::vector<std::unique_ptr<Worker>>& workers) {
    std::vector<Worker*> alive;
    for (const auto& worker : workers)
        alive.push_back(worker.get());
    while (!alive.empty()) {
        std::vector<pollfd> waited;
        for (const Worker* worker : alive)
            waited.push_back({worker->out(), POLLIN, 0});
        ::poll(waited.data(), waited.size(), 2);
        for (std::size_t i = 0; i < alive.size(); ++i)
            if ((waited[i].revents & POLLIN) != 0)
                alive[i]->hear();
        std::erase_if(alive, [](Worker* worker) {
            const bool isOver = Clock::now() >= worker->death();
            if (isOver)
                worker->kill();
            return isOver;
        });
    }
}

} // namespace

int main(int argc, char** argv) {
    QCoreApplication::setApplicationName(QStringLiteral("tailpoint"));
    if (argc == 4 && std::string(argv[1]) == "--work")
        return work(argc, argv);
    const int rounds = argc > 1 ? std::atoi(argv[1]) : 30;
    const unsigned seed = argc > 2 ? static_cast<unsigned>(std::atoi(argv[2])) : std::random_device()();
    std::printf("killed %d %u\n", rounds, seed);
    std::mt19937 dice(seed);
    int lost = 0;
    for (int done = 0; done < rounds;) {
        std::vector<std::unique_ptr<Worker>> workers;
        for (; done < rounds && workers.size() < kAtOnce; ++done) {
            const std::chrono::milliseconds life(std::uniform_int_distribution(20, kLongestMs)(dice));
            workers.push_back(std::make_unique<Worker>(argv[0], dice() & 0xFFFF, life));
        }
        letThemWork(workers);
        for (const auto& worker : workers)
            if (const std::string fault = worker->fault(); !fault.empty()) {
                std::printf("lost: %s\n", fault.c_str());
                ++lost;
            }
    }
    std::printf("%d rounds, %d with a loss\n", rounds, lost);
    return rounds > 0 && lost == 0 ? 0 : 1;
}
