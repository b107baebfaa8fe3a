// SPDX-License-Identifier: MIT
// A dialog for what a force may be at most and where it may point.
#pragma once

#include "ui/document/bound_edits.h"

#include <QDialog>

class QFormLayout;
class QLineEdit;

namespace tailpoint {

class SketchDocument;
class SpokenLine;

/// One undo step when it is accepted; what can't be taken keeps it open, with the reason. The vector is found
/// by its name when it matters: the sketch may change while the dialog is open.
class BoundDialog : public QDialog {
    Q_OBJECT
public:
    BoundDialog(SketchDocument& document, int vector, QWidget* parent = nullptr);
    void accept() override;

private:
    QLineEdit* addField(QFormLayout& form, const QString& title, const char* name, const QString& text,
                        const QString& empty);
    BoundTexts typed() const;
    void refuse(const QString& message);

    SketchDocument& m_document;
    std::string m_name;
    QLineEdit *m_limit = nullptr, *m_axis = nullptr, *m_within = nullptr;
    SpokenLine* m_fault = nullptr;
};

} // namespace tailpoint
