// Two lines of text: the quiet hint at the window's foot, and a notice under the bar when something went
// wrong.
#pragma once

#include "ui/style/theme.h"

#include <QWidget>

class QLabel;
class QToolButton;

namespace tailpoint {

/// One line of what to do, and the pointer's value at the right.
class HintLine : public QWidget {
    Q_OBJECT
public:
    explicit HintLine(QWidget* parent = nullptr);

public slots:
    void setHint(const QString& hint);
    void setReadout(const QString& readout);

private:
    QLabel *m_hint, *m_readout;
};

/// Says what could not be done, until it is dismissed or something else is said. Never takes the focus.
class Notice : public QWidget {
    Q_OBJECT
public:
    explicit Notice(QWidget* parent = nullptr);
    void say(const QString& line);
    void setTheme(const Theme& theme);

private:
    QLabel *m_mark, *m_line;
    QToolButton* m_close;
};

} // namespace tailpoint
