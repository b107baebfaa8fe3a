// SPDX-License-Identifier: MIT
// The open sketch's cases beside the sheet: what differs, and the envelope. It stays open while one works
// there.
#pragma once

#include <QDialog>
#include <vector>

class QMimeData;
class QPushButton;
class QTextBrowser;

namespace tailpoint {

class SketchDocument;
struct TableTold;

/// As tables for a page or the clipboard; and as lines with tabs between their cells.
QString casesHtml(const std::vector<TableTold>& told);
QString casesText(const std::vector<TableTold>& told);

class CasesDialog : public QDialog {
    Q_OBJECT
public:
    explicit CasesDialog(SketchDocument& document, QWidget* parent = nullptr);
    QString shown() const; ///< as plain text

public slots:
    void copy();

protected:
    void showEvent(QShowEvent* event) override;

private:
    std::vector<TableTold> told() const;
    void follow();

    SketchDocument& m_document;
    QTextBrowser* m_text;
    QPushButton* m_copy;
};

} // namespace tailpoint
