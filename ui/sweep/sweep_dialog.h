// SPDX-License-Identifier: MIT
// One given value of the open sketch varied, beside the sheet: it stays open while one works there.
#pragma once

#include "core/solve/sweep.h"
#include "ui/files/files.h"
#include "ui/style/theme.h"

#include <QDialog>
#include <QHash>
#include <QTimer>
#include <QVariantMap>
#include <functional>
#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace tailpoint {

class SketchDocument;
class SweepView;

class SweepDialog : public QDialog {
    Q_OBJECT
public:
    SweepDialog(SketchDocument& document, std::function<ThemeName()> theme, QWidget* parent = nullptr);

    /// How it was used last: what was varied, from, to, steps, size; names as choices() gives them.
    void take(const QVariantMap& choices);
    QVariantMap choices() const;

    /// Written by its ending: csv, svg or json. Empty: done.
    std::optional<FileError> saveTo(const QString& path) const;
    const SweepView& view() const { return *m_view; }

signals:
    void closed();

public slots:
    void copy();
    void done(int result) override;

private:
    void build();
    QWidget* buildRow();
    QWidget* buildButtons();
    void fillVaried();
    void takeVaried();
    void showEnds();
    void takeEnds();
    void follow();
    void compute(std::size_t steps);
    void showPresent();
    void refuse(const QString& fault);
    void chooseAndSave();
    std::optional<double> typedEnd(const QLineEdit& field, QString& fault) const;
    std::optional<Scalar> varied() const;
    std::optional<Sweep> told() const; ///< with the steps that are asked for
    static SweepRange firstRange(const Scalar& scalar, const Sketch& sketch);

    SketchDocument& m_document;
    QComboBox* m_varied;
    QLineEdit *m_from, *m_to;
    QSpinBox* m_steps;
    SweepView* m_view;
    QLabel *m_present, *m_fault;
    QPushButton *m_copy, *m_save;
    QTimer m_rest;
    QHash<QString, QPair<double, double>> m_ends; ///< by what is varied, as it was used last
    SweepRange m_range;
    std::optional<Sketch> m_shown; ///< the sketch that the curves are of, without the varied value
};

} // namespace tailpoint
