// SPDX-License-Identifier: MIT
#include "ui/document/recovery.h"

#include "ui/document/copy_writer.h"
#include "ui/files/json_text.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QRandomGenerator>
#include <QSysInfo>
#include <algorithm>
#include <utility>

namespace tailpoint {

namespace {

constexpr std::string_view kRecoveryFormat = "tailpoint-recovery";
constexpr int kMostAtTheEndMs = 4000; ///< for a disk that is slow; the session waits no longer

std::string textUnder(const JsonValue& object, std::string_view key) {
    const JsonValue* value = object.find(key);
    return value && value->kind == JsonValue::Kind::string ? value->text : std::string();
}

std::optional<Recovery> readCopy(const QString& file) {
    const auto bytes = readBytes(file);
    const auto* text = std::get_if<QByteArray>(&bytes);
    if (!text)
        return std::nullopt;
    const auto parsed = parseJson(text->toStdString());
    const auto* object = std::get_if<JsonValue>(&parsed);
    if (!object || textUnder(*object, "format") != kRecoveryFormat)
        return std::nullopt;
    const auto sketch = readSketch(QByteArray::fromStdString(textUnder(*object, "sketch")));
    if (!std::holds_alternative<Sketch>(sketch))
        return std::nullopt;
    return Recovery{
        file,
        QString::fromStdString(textUnder(*object, "path")),
        QDateTime::fromString(QString::fromStdString(textUnder(*object, "saved")), Qt::ISODateWithMs),
        QByteArray::fromHex(QByteArray::fromStdString(textUnder(*object, "known"))),
        std::get<Sketch>(sketch),
        {}};
}

} // namespace

QString recoveryFolder() {
    const QString stated = qEnvironmentVariable("XDG_STATE_HOME");
    const QString state =
        QDir::isAbsolutePath(stated) ? stated : QDir::homePath() + QStringLiteral("/.local/state");
    return state + QStringLiteral("/tailpoint/recovery");
}

Autosave::Autosave(SketchDocument& document, const QString& folder, QObject* parent)
    : QObject(parent), m_document(document) {
    m_file = QStringLiteral("%1/%2-%3.json")
                 .arg(folder)
                 .arg(QCoreApplication::applicationPid())
                 .arg(QRandomGenerator::system()->generate64(), 0, 36);
    // Until stop() the writer tells; a call that is on its way then finds no receiver.
    m_writer = CopyWriter::start(m_file, [this, before = QString()](const QString& why) mutable {
        if (!why.isEmpty() && before.isEmpty())
            QMetaObject::invokeMethod(
                this, [this, why] { emit failed(why); }, Qt::QueuedConnection);
        before = why;
    });
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &Autosave::writeSnapshot);
    connect(&m_document, &SketchDocument::changed, this, &Autosave::schedule);
    connect(&m_document, &SketchDocument::fileChanged, this, &Autosave::schedule);
    schedule(); // what was changed before
}

Autosave::~Autosave() {
    if (!m_writer)
        return;
    removeCopy();
    m_writer->waitForDone(kMostAtTheEndMs);
    m_writer->stop();
}

void Autosave::schedule() {
    if (!m_writer)
        return;
    if (!m_document.isModified())
        return removeCopy();
    if (!m_timer.isActive())
        m_since.start();
    m_timer.start(std::clamp(kLongestMs - static_cast<int>(m_since.elapsed()), 0, kPauseMs));
}

void Autosave::writeSnapshot() {
    if (!m_writer || !m_document.isModified())
        return;
    m_hasCopy = true;
    m_writer->write({m_document.whole(), m_document.path(), m_document.file().known()});
}

void Autosave::takeOver(const Recovery& left) {
    m_timer.stop();
    m_writer->takeOver(left.file);
    writeSnapshot();
}

void Autosave::removeCopy() {
    m_timer.stop();
    if (std::exchange(m_hasCopy, false))
        m_writer->remove();
}

void Autosave::flush() {
    if (!m_writer)
        return;
    if (m_timer.isActive()) {
        m_timer.stop();
        writeSnapshot();
    }
    m_writer->waitForDone(kMostAtTheEndMs);
}

void Autosave::leave() {
    flush();
    if (!m_writer)
        return;
    m_writer->leave();
    m_writer->waitForDone(kMostAtTheEndMs);
    std::exchange(m_writer, nullptr)->stop();
}

QList<Recovery> findRecoveries(const QString& folder) {
    QList<Recovery> found;
    const QDir dir(folder);
    for (const QString& name : dir.entryList({QStringLiteral("*.json")}, QDir::Files)) {
        const QString file = dir.filePath(name);
        LockFile lock(file + QStringLiteral(".lock"));
        const bool isHeld = lock.take() == LockFile::Taking::others;
        const auto holder = isHeld ? lock.holder() : std::nullopt;
        if (isHeld && (!holder || holder->host.isEmpty() || holder->host == QSysInfo::machineHostName()))
            continue; // its window is open
        if (auto copy = readCopy(file)) {
            copy->holder = holder ? holder->words() : QString();
            found.append(*copy);
        }
    }
    std::sort(found.begin(), found.end(), [](const Recovery& a, const Recovery& b) {
        return a.holder.isEmpty() != b.holder.isEmpty() ? a.holder.isEmpty() : a.saved > b.saved;
    });
    return found;
}

void sweepRecoveries(const QString& folder) {
    sweepLeftLocks(folder);
    sweepStaleTemporaries(folder);
}

void discard(const Recovery& recovery) {
    QFile::remove(recovery.file);
}

} // namespace tailpoint
