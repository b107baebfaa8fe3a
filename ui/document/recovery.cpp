#include "ui/document/recovery.h"

#include "ui/document/json_text.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QRandomGenerator>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr std::string_view kRecoveryFormat = "tailpoint-recovery";

QString lockOf(const QString& copy) {
    return copy + QStringLiteral(".lock");
}

std::unique_ptr<QLockFile> lockFor(const QString& copy) {
    auto lock = std::make_unique<QLockFile>(lockOf(copy));
    lock->setStaleLockTime(0); // stale with its process, not with the clock
    return lock->tryLock(0) ? std::move(lock) : nullptr;
}

QByteArray snapshotText(const Sketch& sketch, const QString& path, const QByteArray& known) {
    const QDateTime now = QDateTime::currentDateTimeUtc();
    return QByteArray::fromStdString(
        writeJson(jsonObject({{"format", jsonText(kRecoveryFormat)},
                              {"version", jsonNumber(1)},
                              {"path", jsonText(path.toStdString())},
                              {"saved", jsonText(now.toString(Qt::ISODateWithMs).toStdString())},
                              {"known", jsonText(known.toHex().toStdString())},
                              {"sketch", jsonText(writeSketch(sketch).toStdString())}})));
}

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
        file, QString::fromStdString(textUnder(*object, "path")),
        QDateTime::fromString(QString::fromStdString(textUnder(*object, "saved")), Qt::ISODateWithMs),
        QByteArray::fromHex(QByteArray::fromStdString(textUnder(*object, "known"))),
        std::get<Sketch>(sketch)};
}

} // namespace

struct Autosave::Left {
    QString file;
    std::unique_ptr<QLockFile> lock; ///< other windows don't offer it meanwhile
    void discard() {
        QFile::remove(file);
        lock.reset();
    }
};

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
    m_pool.setMaxThreadCount(1);
    m_timer.setSingleShot(true);
    m_timer.setInterval(kDelayMs);
    connect(&m_timer, &QTimer::timeout, this, &Autosave::writeSnapshot);
    connect(&m_document, &SketchDocument::changed, this, &Autosave::schedule);
    connect(&m_document, &SketchDocument::fileChanged, this, &Autosave::schedule);
}

Autosave::~Autosave() {
    removeCopy();
    m_pool.waitForDone();
}

void Autosave::schedule() {
    if (!m_document.isModified())
        removeCopy();
    else if (!m_timer.isActive())
        m_timer.start();
}

void Autosave::writeSnapshot() {
    if (!m_document.isModified())
        return;
    if (!m_lock) {
        QDir().mkpath(QFileInfo(m_file).absolutePath());
        m_lock = lockFor(m_file);
    }
    m_pool.start([file = m_file, path = m_document.path(), sketch = m_document.whole(),
                  known = m_document.file().known(), left = m_left] {
        if (saveBytes(file, snapshotText(sketch, path, known)))
            return; // what there was stays
        for (const auto& copy : left)
            copy->discard();
    });
}

void Autosave::takeOver(const Recovery& left) {
    m_left.push_back(std::make_shared<Left>(Left{left.file, lockFor(left.file)}));
    m_timer.stop();
    writeSnapshot();
}

void Autosave::removeCopy() {
    m_timer.stop();
    if (!m_lock && m_left.empty())
        return;
    m_pool.start([file = m_file, left = std::move(m_left)] {
        QFile::remove(file);
        for (const auto& copy : left)
            copy->discard();
    });
    m_pool.waitForDone(); // the lock may go only after the copy
    m_left.clear();
    m_lock.reset();
}

void Autosave::flush() {
    if (m_timer.isActive()) {
        m_timer.stop();
        writeSnapshot();
    }
    m_pool.waitForDone();
}

QList<Recovery> findRecoveries(const QString& folder) {
    QList<Recovery> found;
    const QDir dir(folder);
    for (const QString& name : dir.entryList({QStringLiteral("*.json")}, QDir::Files)) {
        const QString file = dir.filePath(name);
        if (!lockFor(file))
            continue; // its window is open
        if (auto copy = readCopy(file))
            found.append(*copy);
    }
    std::sort(found.begin(), found.end(),
              [](const Recovery& a, const Recovery& b) { return a.saved > b.saved; });
    return found;
}

void discard(const Recovery& recovery) {
    QFile::remove(recovery.file);
}

} // namespace tailpoint
