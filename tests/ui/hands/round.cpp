// SPDX-License-Identifier: MIT
#include "tests/ui/hands/round.h"

#include "ui/document/sketch_document.h"
#include "ui/window/main_window.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>

namespace tailpoint::test {

QStringList sketchesIn(const QString& folder) {
    const QDir samples(QStringLiteral(TAILPOINT_SAMPLES));
    QStringList files;
    for (const QString& name : samples.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        files << QDir(folder).filePath(name);
        QFile::copy(samples.filePath(name), files.back());
        QFile::setPermissions(files.back(), QFile::ReadOwner | QFile::WriteOwner);
    }
    return files;
}

QString Round::play(Hands& hands, const QString& file, int first, int count) {
    SketchDocument& document = m_window.document();
    m_step = first;
    if (!m_window.openPath(file))
        return QStringLiteral("%1 can't be opened").arg(file);
    m_start = writeSketch(document.whole());
    QObject watch;
    QObject::connect(&document, &SketchDocument::replaced, &watch, [this, &document] {
        m_start = writeSketch(document.whole());
        ++m_replaced;
    });
    for (m_step = first; m_step < first + count; ++m_step) {
        beforeStep(m_step);
        hands.step(m_step);
        if (const QString fault = faultNow(); !fault.isEmpty())
            return fault;
    }
    m_step = first + count - 1;
    hands.letGo();
    const QString fault = faultNow();
    return fault.isEmpty() ? faultOfUndo() : fault;
}

QString Round::faultNow() {
    if (const QStringList said = m_warnings.take(); !said.isEmpty())
        return said.join(QStringLiteral(" | "));
    if (!m_window.isVisible())
        return QStringLiteral("the window is closed");
    if (const auto fault = firstFault(m_window.document().whole()))
        return QStringLiteral("a sketch that can't be saved: ") + QString::fromStdString(fault->message);
    return {};
}

/// Back to the start and forth again, each step seen by the window.
QString Round::faultOfUndo() {
    SketchDocument& document = m_window.document();
    document.commit();
    const QByteArray last = writeSketch(document.whole());
    const int made = document.history().index();
    m_undone += made;
    while (document.canUndo())
        document.undo();
    QCoreApplication::processEvents();
    if (const QByteArray back = writeSketch(document.whole()); back != m_start)
        return QStringLiteral("undo leads to\n%1\nfrom\n%2")
            .arg(QString::fromUtf8(back), QString::fromUtf8(m_start));
    while (document.history().index() < made)
        document.redo();
    QCoreApplication::processEvents();
    if (const QByteArray forth = writeSketch(document.whole()); forth != last)
        return QStringLiteral("redo leads to\n%1\ninstead of\n%2")
            .arg(QString::fromUtf8(forth), QString::fromUtf8(last));
    return faultNow();
}

} // namespace tailpoint::test
