// SPDX-License-Identifier: MIT
// How it went: the sitting in plain words, and whether its record is kept on this machine.
#pragma once

#include <QDialog>

class QCheckBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace tailpoint {

class Settings;
class Sitting;

class PracticeSummary : public QDialog {
    Q_OBJECT
public:
    PracticeSummary(Sitting& sitting, Settings& settings, QWidget* parent);
    void ask();

private:
    void build();
    void refresh();
    void keep(bool on);
    void forget();

    Sitting& m_sitting;
    Settings& m_settings;
    QPlainTextEdit* m_words;
    QCheckBox* m_keep;
    QLabel *m_where, *m_fault;
    QPushButton* m_forget;
};

} // namespace tailpoint
