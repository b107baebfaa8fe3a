// SPDX-License-Identifier: MIT
// Question: what is asked of the forces on the sheet. Each command is one undo step.
#pragma once

#include "ui/window/window_parts.h"

#include <QObject>

class QAction;
class QMenu;

namespace tailpoint {

class CasesMenu;
struct Sketch;
class SweepDialog;

class QuestionMenu : public QObject {
    Q_OBJECT
public:
    QuestionMenu(const WindowParts& parts, QMenu* menu);

    CasesMenu* cases;

private:
    void prepare();
    void showAdding();
    void addMethods(QMenu* menu);
    void addUncertainties(QMenu* menu);
    void apply(const Sketch& after, const QString& step);
    void askSmallest();
    void openSweep();

    WindowParts m_parts;
    QAction *m_components, *m_smallest, *m_other, *m_pairs, *m_sweep;
    SweepDialog* m_sweepDialog = nullptr; ///< belongs to the window
};

} // namespace tailpoint
