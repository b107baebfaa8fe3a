// SPDX-License-Identifier: MIT
#include "app/many.h"

#include "app/common.h"
#include "app/verbs.h"
#include "ui/problems/in_order.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QHash>
#include <QSet>

#include <csignal>
#include <cstdio>
#include <unistd.h>

namespace tailpoint {

namespace {

QString folderOf(const Arguments& arguments) {
    return arguments.value(QStringLiteral("-o"));
}

/// "plans/raft.v2.json" to "raft.v2".
QString baseOf(const QString& file) {
    const QFileInfo info(file);
    return info.completeBaseName().isEmpty() ? info.fileName() : info.completeBaseName();
}

/// One line on a terminal that is written over, and is gone in the end.
class Progress {
public:
    explicit Progress(qsizetype count) : m_count(count), m_isSeen(::isatty(STDERR_FILENO) == 1) {
        m_since.start();
    }
    ~Progress() { clear(); }
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    void show(qsizetype done) {
        constexpr qint64 steps = 100; // milliseconds: often enough to be seen moving
        if (!m_isSeen || (m_shown > 0 && m_since.elapsed() < steps))
            return;
        m_since.restart();
        const QByteArray line = QStringLiteral("%1 of %2").arg(done).arg(m_count).toUtf8();
        write('\r' + line);
        m_shown = line.size();
    }
    void clear() {
        if (m_shown > 0)
            write('\r' + QByteArray(m_shown, ' ') + '\r');
        m_shown = 0;
    }

private:
    static void write(const QByteArray& bytes) {
        std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stderr);
        std::fflush(stderr);
    }

    qsizetype m_count, m_shown = 0;
    bool m_isSeen;
    QElapsedTimer m_since;
};

/// What the signals that end a program set; asked between two files.
std::atomic<bool> isInterrupted = false;
volatile std::sig_atomic_t interruptedBy = 0;
void interrupt(int signal) {
    interruptedBy = signal;
    isInterrupted = true; // lock-free, so a signal may
}

QString standsInPlace(const QString& folder) {
    const QFileInfo info(folder);
    if (info.exists() && !info.isDir())
        return QStringLiteral("-o %1: is a file; several FILEs want a folder").arg(folder);
    return {};
}

/// Two outputs of one name, or one that would replace a FILE.
QString doubled(const Arguments& arguments, const OutputNames& outputs) {
    const QDir folder(folderOf(arguments));
    QSet<QString> inputs;
    for (const QString& file : arguments.files)
        inputs.insert(finalPath(file));
    QHash<QString, QString> from; // by output
    for (const QString& file : arguments.files)
        for (const QString& name : outputs(baseOf(file))) {
            const QString path = folder.filePath(name);
            if (from.contains(name))
                return QStringLiteral(
                           "%1 and %2 would both become %3; write them to two folders, or call one of "
                           "them otherwise")
                    .arg(from.value(name), file, path);
            if (inputs.contains(finalPath(path)))
                return QStringLiteral("-o %1: %2 would replace one of the FILEs; name another folder")
                    .arg(folderOf(arguments), path);
            from.insert(name, file);
        }
    return {};
}

/// Makes and saves one; `folder` is there.
OneOfMany madeOne(const QString& file, const QDir& folder, const MakeOne& make) {
    OneOfMany one = make(file, baseOf(file));
    if (!one.fault.isEmpty())
        return one;
    for (FileBytes& output : one.files)
        output.path = folder.filePath(output.path);
    if (const auto failed = saveTogether(one.files))
        one.fault = failed->path + ": " + failed->error.line();
    one.files.clear();
    return one;
}

} // namespace

bool isForMany(const Arguments& arguments) {
    const QString out = folderOf(arguments);
    return arguments.files.size() > 1 || out.endsWith(QLatin1Char('/')) || QFileInfo(out).isDir();
}

QString clashOfMany(const Arguments& arguments, const OutputNames& outputs) {
    const QString folder = folderOf(arguments);
    if (arguments.files.isEmpty())
        return QStringLiteral("name one FILE or more");
    if (folder.isEmpty() || folder == QLatin1String("-"))
        return QStringLiteral("several FILEs want a folder for an output each; name it with -o DIR");
    if (arguments.files.contains(QStringLiteral("-")))
        return QStringLiteral("standard input has no name to call its output by; name its output with -o, in "
                              "a call of its own");
    if (const QString fault = standsInPlace(folder); !fault.isEmpty())
        return fault;
    return doubled(arguments, outputs);
}

int writeMany(const Arguments& arguments, const MakeOne& make) {
    keepMemory();
    const QString name = folderOf(arguments);
    const QDir folder(name);
    const bool isNew = !folder.exists();
    if (isNew && !QDir().mkdir(name))
        return complain(nameOfOutput(name) + QStringLiteral(": the folder can't be made; is the one above it "
                                                            "there, and may you write to it?"));
    for (const int signal : {SIGINT, SIGTERM, SIGHUP})
        std::signal(signal, interrupt);
    int worst = kDone;
    Progress progress(arguments.files.size());
    const auto count = static_cast<std::size_t>(arguments.files.size());
    const auto fileAt = [&](std::size_t i) { return arguments.files[static_cast<qsizetype>(i)]; };
    madeInOrder(
        count, isInterrupted, [&](std::size_t i) { return madeOne(fileAt(i), folder, make); },
        [&](std::size_t i, const OneOfMany& one) {
            if (!one.fault.isEmpty()) {
                progress.clear();
                worst = std::max(worst, complain(fileAt(i) + ": " + one.fault));
            }
            worst = std::max(worst, one.status);
            progress.show(static_cast<qsizetype>(i) + 1);
            return true;
        });
    if (isNew)
        QDir().rmdir(name); // stands where anything is in it
    return interruptedBy != 0 ? 128 + static_cast<int>(interruptedBy) : worst; // as a shell says it
}

} // namespace tailpoint
