// SPDX-License-Identifier: MIT
// Over the sheet: the sketch as drawn and its cases, and what the one that is shown gives differently. There
// only where the sketch has cases, and not while the answer is hidden.
#pragma once

#include <QWidget>

class QAction;
class QLabel;
class QTabBar;

namespace tailpoint {

class SketchDocument;
struct Theme;

class CaseBar : public QWidget {
    Q_OBJECT
public:
    explicit CaseBar(SketchDocument& document, QWidget* parent = nullptr);
    void setTheme(const Theme& theme);
    void addButton(QAction* add); ///< behind the last case

signals:
    void renameAsked(); ///< of the case that is shown

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void follow();
    void fillTabs();
    void showChanges();

    SketchDocument& m_document;
    QTabBar* m_tabs;
    QLabel* m_changes;
    QString m_told; ///< what m_changes says, in full
};

} // namespace tailpoint
