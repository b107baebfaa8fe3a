// SPDX-License-Identifier: MIT
// What the tests of panel and window share: the raft, and waiting by condition.
#pragma once

#include "ui/document/sketch_document.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QLabel>
#include <QTableView>
#include <QTextDocumentFragment>
#include <QWidget>

#include <functional>
#include <gtest/gtest.h>
#include <ostream>

/// Texts in failures as they read, not as bytes.
inline void PrintTo(const QString& text, std::ostream* out) {
    *out << '"' << text.toStdString() << '"';
}

namespace tailpoint::test {

/// The survey raft: P = 340 N at 25 degrees, Q = 275 N at -40 degrees, R to find.
inline Sketch raft() {
    Sketch sketch = emptySketch();
    sketch.title = "Survey raft on two lines";
    Force p, q;
    p.name.assign(1, 'P');
    p.magnitude.value = 340;
    p.direction.form = AngleForm{25};
    q.name.assign(1, 'Q');
    q.magnitude.value = 275;
    q.direction.form = AngleForm{-40};
    sketch.forces = {p, q};
    return sketch;
}

/// A form of direction, to compare with.
using Form = decltype(Direction::form);

inline bool waitFor(const std::function<bool()>& condition, int milliseconds = 5000) {
    QElapsedTimer timer;
    timer.start();
    while (!condition()) {
        if (timer.elapsed() > milliseconds) {
            return false;
        }
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents, 20);
        QCoreApplication::sendPostedEvents();
    }
    return true;
}

template <class Widget>
Widget* child(QWidget& parent, const char* name) {
    auto* found = parent.findChild<Widget*>(QLatin1String(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
}

/// What a label says, without its markup.
inline QString plainOf(QWidget& parent, const char* name) {
    auto* label = child<QLabel>(parent, name);
    return label ? QTextDocumentFragment::fromHtml(label->text()).toPlainText().replace(QChar::Nbsp, u' ')
                 : QString();
}

inline QString cellText(QWidget& parent, const char* table, int row, int column) {
    auto* view = child<QTableView>(parent, table);
    return view ? view->model()->index(row, column).data().toString() : QString();
}

} // namespace tailpoint::test
