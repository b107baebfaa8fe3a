// SPDX-License-Identifier: MIT
// While a hand drags, sheet and panel are painted of one result, once a frame, however many moves come.
#include "core/figure/hit.h"
#include "panel_support.h"
#include "ui/canvas/canvas.h"
#include "ui/panel/given_model.h"
#include "ui/panel/panel.h"
#include "window_fixture.h"

#include <QMouseEvent>
#include <QPaintEvent>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

QString spelt(const Text& text) {
    QString out;
    for (const Run& run : text.runs)
        out += QString::fromStdString(run.text);
    return out;
}

/// At every paint of the sheet and of the panel: what the one says of P and R, and what the other.
class Witness : public QObject {
public:
    Witness(MainWindow& window, QTableView& values) : m_window(window), m_values(values) {
        window.canvas().installEventFilter(this);
        values.viewport()->installEventFilter(this);
        QObject::connect(&window.document(), &SketchDocument::changed, this, [this] { ++changes; });
    }
    int changes = 0, paints = 0;
    std::set<QString> seen; ///< magnitudes of P
    QStringList differing;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint) {
            paints += watched == &m_window.canvas() ? 1 : 0;
            const QString sheet = onSheet(forceVector(0)), sum = onSheet(kSumVector);
            const QString panel = inPanel(1), total = inPanel(3);
            seen.insert(sheet);
            if (sheet != panel || sum != total)
                differing << QStringLiteral("%1, %2 on the sheet and %3, %4 in the panel")
                                 .arg(sheet, sum, panel, total);
        }
        return QObject::eventFilter(watched, event);
    }

private:
    /// "340", of "P = 340 N".
    QString onSheet(VectorId vector) const {
        for (const SheetLabel& label : labelsOn(m_window.canvas().figure().list))
            if (label.vector == vector && !label.ofDirection)
                return spelt(*label.text).section(QStringLiteral(" = "), 1).section(u' ', 0, 0);
        return {};
    }
    QString inPanel(int row) const { return m_values.model()->index(row, 1).data().toString(); }

    MainWindow& m_window;
    QTableView& m_values;
};

class OneResult : public OpenWindow {
protected:
    QPointF tipOfP() const {
        const auto& p = window->document().result().solved.solutions.at(0).forces.at(0).vector;
        const Point at = window->canvas().view().toSheet(p);
        return QPointF(at.x, at.y) * window->canvas().pixelsPerPoint();
    }
    void send(QEvent::Type type, QPointF at) {
        Canvas& canvas = window->canvas();
        const bool moves = type == QEvent::MouseMove, released = type == QEvent::MouseButtonRelease;
        QMouseEvent event(type, at, canvas.mapToGlobal(at), moves ? Qt::NoButton : Qt::LeftButton,
                          released ? Qt::NoButton : Qt::LeftButton, {});
        QCoreApplication::sendEvent(&canvas, &event);
    }
    /// As an event queue that is behind has them: one after the other, with no frame between.
    void flood(QPointF from, int moves, int round) {
        for (int i = 0; i < moves; ++i) {
            const double turn = 0.05 * (i + 1) + round;
            send(QEvent::MouseMove, from + QPointF(-60 + 40 * std::cos(turn), 30 * std::sin(turn)));
        }
    }
};

TEST_F(OneResult, AFloodOfMovesIsOneChangeAFrameAndOnePictureOfSheetAndPanel) {
    auto* values = child<QTableView>(*window, "vectorTable");
    Witness witness(*window, *values);
    const QPointF tip = tipOfP();
    send(QEvent::MouseButtonPress, tip);
    constexpr int kRounds = 40, kMoves = 25;
    for (int round = 0; round < kRounds; ++round) {
        flood(tip, kMoves, round);
        const int before = witness.changes;
        QCoreApplication::processEvents();
        EXPECT_LE(witness.changes - before, 1) << "of " << kMoves << " moves the last one counts";
    }
    EXPECT_LE(witness.changes, kRounds);
    EXPECT_GE(witness.changes, kRounds / 2) << "the drag is seen while it lasts";
    EXPECT_GE(witness.paints, kRounds / 2);
    EXPECT_GT(witness.seen.size(), 10U);
    EXPECT_TRUE(witness.differing.isEmpty()) << witness.differing.join(u'\n').toStdString();
    send(QEvent::MouseButtonRelease, tip);
}

TEST_F(OneResult, TheLastMoveIsNotLostWhereTheButtonIsReleasedBeforeTheFrame) {
    const QPointF tip = tipOfP();
    send(QEvent::MouseButtonPress, tip);
    flood(tip, 30, 0);
    EXPECT_FALSE(window->document().isPreviewing()) << "nothing is worked out before the frame";
    send(QEvent::MouseButtonRelease, tip + QPointF(-60 + 40 * std::cos(1.5), 30 * std::sin(1.5)));
    EXPECT_EQ(window->document().history().count(), 1);
    const Point at = window->canvas().view().toSheet(
        window->document().result().solved.solutions.at(0).forces.at(0).vector);
    const QPointF now = QPointF(at.x, at.y) * window->canvas().pixelsPerPoint();
    const QPointF last = tip + QPointF(-60 + 40 * std::cos(1.5), 30 * std::sin(1.5));
    EXPECT_LT(QLineF(now, last).length(), 12) << "but for snapping";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
