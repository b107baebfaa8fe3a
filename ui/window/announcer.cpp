// SPDX-License-Identifier: MIT
#include "ui/window/announcer.h"

#include "ui/document/sketch_document.h"
#include "ui/panel/panel.h"
#include "ui/panel/spoken_line.h"

#include <utility>

namespace tailpoint {

namespace {
constexpr int kRest = 400; // milliseconds without a change
}

Announcer::Announcer(const SketchDocument& document, const Panel& panel, SpokenLine& status, QObject* parent)
    : QObject(parent), m_panel(panel), m_status(status) {
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRest);
    connect(&m_rest, &QTimer::timeout, this, &Announcer::rested);
    connect(&document, &SketchDocument::replaced, this, [this] { m_result.clear(); }); // all of it is news
    connect(&document, &SketchDocument::changed, this, [this, &document] {
        const bool withheld = document.withholdsAnswer();
        if (std::exchange(m_withheld, withheld) != withheld)
            forget(); // at once: what was said may be read again
        m_rest.start();
    });
}

void Announcer::forget() {
    m_result.clear();
    m_status.say({}, {});
}

void Announcer::say(const QString& line) {
    if (!line.isEmpty())
        m_status.say({}, line);
}

void Announcer::sayAtRest(const QString& line) {
    m_line = line;
    if (line.isEmpty())
        m_lastLine.clear(); // the same again is news then
    else
        m_rest.start();
}

/// Of a result only what is other than before.
void Announcer::rested() {
    QStringList news;
    if (!m_line.isEmpty() && m_line != m_lastLine)
        news << m_line;
    m_lastLine = m_line;
    const QStringList result = m_panel.resultTold();
    for (const QString& sentence : result)
        if (!m_result.contains(sentence))
            news << sentence;
    m_result = result;
    say(news.join(u' '));
}

} // namespace tailpoint
