// SPDX-License-Identifier: MIT
// Who drew and checked the sketch, and its revision: told in every report and copy.
#pragma once

#include <QDialog>

class QFormLayout;
class QLabel;
class QLineEdit;

namespace tailpoint {

class SketchDocument;

/// One undo step when it is accepted; what can't be taken is said and the dialog stays.
class TitleBlockDialog : public QDialog {
    Q_OBJECT
public:
    TitleBlockDialog(SketchDocument& document, QWidget* parent);

public slots:
    void accept() override;

private:
    QLineEdit* addField(QFormLayout& form, const QString& title, const char* name, const std::string& now);

    SketchDocument& m_document;
    QLineEdit *m_title, *m_drawn, *m_checked, *m_revision;
    QLabel* m_fault;
};

} // namespace tailpoint
