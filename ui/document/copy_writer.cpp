// SPDX-License-Identifier: MIT
#include "ui/document/copy_writer.h"

#include "ui/files/json_text.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace tailpoint {

QByteArray copyText(const CopyContent& content) {
    const QDateTime now = QDateTime::currentDateTimeUtc();
    return QByteArray::fromStdString(
        writeJson(jsonObject({{"format", jsonText("tailpoint-recovery")},
                              {"version", jsonNumber(1)},
                              {"path", jsonText(content.path.toStdString())},
                              {"saved", jsonText(now.toString(Qt::ISODateWithMs).toStdString())},
                              {"known", jsonText(content.known.toHex().toStdString())},
                              {"sketch", jsonText(writeSketch(content.sketch).toStdString())}})));
}

/// The thread keeps what it works on alive, so that a disk that hangs holds up nobody's end.
std::shared_ptr<CopyWriter> CopyWriter::start(const QString& file, Tell tell) {
    std::shared_ptr<CopyWriter> writer(new CopyWriter(file, std::move(tell)));
    std::thread([writer] { writer->run(); }).detach();
    return writer;
}

void CopyWriter::write(CopyContent content) {
    const std::lock_guard held(m_mutex);
    m_next = std::move(content);
    m_remove = false;
    m_wake.notify_all();
}

void CopyWriter::remove() {
    const std::lock_guard held(m_mutex);
    m_next.reset();
    m_remove = true;
    m_wake.notify_all();
}

void CopyWriter::takeOver(const QString& left) {
    auto lock = std::make_unique<LockFile>(lockOf(left));
    lock->take();
    const std::lock_guard held(m_mutex);
    m_taken.push_back({left, std::move(lock)});
    m_wake.notify_all();
}

bool CopyWriter::waitForDone(int milliseconds) {
    std::unique_lock held(m_mutex);
    return m_done.wait_for(held, std::chrono::milliseconds(milliseconds),
                           [this] { return !m_next && !m_remove && !m_leave && m_taken.empty() && !m_busy; });
}

void CopyWriter::leave() {
    const std::lock_guard held(m_mutex);
    m_leave = true;
    m_wake.notify_all();
}

void CopyWriter::stop() {
    const std::lock_guard held(m_mutex);
    m_stop = true;
    m_tell = nullptr;
    m_wake.notify_all();
}

void CopyWriter::run() {
    std::unique_lock held(m_mutex);
    for (;;) {
        m_wake.wait(held, [this] { return m_next || m_remove || m_leave || m_stop || !m_taken.empty(); });
        m_busy = true;
        for (Left& taken : m_taken)
            m_left.push_back(std::move(taken));
        m_taken.clear();
        const auto next = std::exchange(m_next, std::nullopt);
        const bool remove = std::exchange(m_remove, false);
        const bool leave = std::exchange(m_leave, false);
        const bool stop = m_stop;
        held.unlock();
        const QString why = next ? written(*next) : QString();
        if (remove) {
            QFile::remove(m_file);
            discardLeft();
        }
        if (remove || leave || stop) { // the lock goes after the copy
            m_lock.giveUp();
            m_left.clear();
        }
        held.lock();
        if (next && m_tell)
            m_tell(why);
        m_busy = false;
        m_done.notify_all();
        if (stop && !m_next && !m_remove)
            return;
    }
}

/// Why it isn't on the disk; empty: it is.
QString CopyWriter::written(const CopyContent& content) {
    const QString folder = QFileInfo(m_file).absolutePath();
    QDir().mkpath(folder);
    const bool held = m_lock.take() == LockFile::Taking::held;
    if (const auto error = saveBytes(m_file, copyText(content))) // what there was stays
        return QStringLiteral("%1: %2").arg(folder, error->line());
    discardLeft();
    return held ? QString() : QStringLiteral("%1: takes no lock").arg(folder);
}

void CopyWriter::discardLeft() {
    for (const Left& left : m_left)
        QFile::remove(left.file);
    m_left.clear();
}

} // namespace tailpoint
